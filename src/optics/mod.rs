//! Glass and sensor: knows of no room.

pub mod camera;
pub mod focus;
pub mod inverse;
pub mod lens;
pub mod sensor;
pub mod tilt;
