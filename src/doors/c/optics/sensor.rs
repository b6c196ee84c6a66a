//! The part of the sensor that the delivered picture uses.

use crate::doors::c::border::mirror::mirror;
use crate::optics::sensor;

/// The shape in which a picture is delivered, such as 4 to 5.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Aspect {
    /// The width's part of the ratio, 0.01 to 100.
    pub width: f64,
    /// The height's part of the ratio, 0.01 to 100.
    pub height: f64,
}
mirror!(both Aspect "shot.delivered_aspect" sensor::Aspect { width, height });

/// The part of the sensor that the delivered picture uses, as the camera is held.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct UsedArea {
    /// Level side.
    pub width_mm: f64,
    /// Upright side.
    pub height_mm: f64,
}
mirror!(both UsedArea "used" sensor::UsedArea { width_mm, height_mm });
