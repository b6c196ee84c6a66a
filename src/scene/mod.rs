//! What stands in the room, with its checks.

pub mod bay;
pub mod subject;
pub mod table;
