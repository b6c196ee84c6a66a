//! What holds the camera: where it can stand, and whether it does.

pub mod ballast;
pub mod feet;
pub mod reach;
pub mod sag;
pub mod stability;
pub mod support;
pub mod weights;
