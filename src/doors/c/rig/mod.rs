//! What holds the camera.

pub mod support;

pub mod reach;

pub mod stability;

pub mod ballast;

pub mod sag;
