//! What stands in the room.

pub mod table;

pub mod subject;

pub mod bay;
