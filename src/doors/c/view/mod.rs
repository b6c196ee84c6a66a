//! From the camera's place to the picture.

pub mod pose;

pub mod projection;

pub mod footprint;

pub mod outline;

pub mod framing;

pub mod perspective;
