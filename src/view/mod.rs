//! From the camera's place to the picture.

pub mod footprint;
pub mod framing;
pub mod outline;
pub mod perspective;
pub mod pose;
pub mod projection;
