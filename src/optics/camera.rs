//! The camera: its sensor, and what of its body matters to whoever mounts it.

use super::sensor::{Aspect, Hold, UsedArea, default_circle_of_confusion_mm};
use crate::fault::Fault;
use crate::range;

/// A camera body. Lengths are along the lens axis ("ahead", "behind") or square to it ("above", "below"),
/// as the camera is held for the shot.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Camera {
    /// The sensor's longer side, 1 to 500.
    pub sensor_width_mm: f64,
    /// The sensor's shorter side, 1 to 500.
    pub sensor_height_mm: f64,
    /// Largest blur on the sensor that counts as sharp; the sensor's diagonal / 1500 when `None`.
    pub circle_of_confusion_mm: Option<f64>,
    /// The mounting socket ahead of the sensor.
    pub socket_ahead_mm: f64,
    /// The mounting socket below the axis.
    pub socket_below_mm: f64,
    /// The body's top above the axis.
    pub body_above_mm: f64,
    /// The body's back behind the sensor.
    pub body_behind_mm: f64,
    /// Mass without the lens.
    pub mass_kg: f64,
    /// Centre of gravity ahead of the sensor, on the axis.
    pub centre_ahead_mm: f64,
}

impl Camera {
    /// Refuses a field that is not finite or out of its range (see [`crate::range`]).
    pub fn check(&self) -> Result<(), Fault> {
        range::SENSOR_WIDTH_MM.check(self.sensor_width_mm)?;
        range::SENSOR_HEIGHT_MM.check(self.sensor_height_mm)?;
        range::CIRCLE_OF_CONFUSION_MM.check_given(self.circle_of_confusion_mm)?;
        range::SOCKET_AHEAD_MM.check(self.socket_ahead_mm)?;
        range::SOCKET_BELOW_MM.check(self.socket_below_mm)?;
        range::BODY_ABOVE_MM.check(self.body_above_mm)?;
        range::BODY_BEHIND_MM.check(self.body_behind_mm)?;
        range::CAMERA_MASS_KG.check(self.mass_kg)?;
        range::CAMERA_CENTRE_AHEAD_MM.check(self.centre_ahead_mm).map(|_| ())
    }

    /// The part of the sensor that a picture of this aspect uses, the camera held so.
    pub fn used_area(&self, hold: Hold, aspect: Option<Aspect>) -> UsedArea {
        UsedArea::new(self.sensor_width_mm, self.sensor_height_mm, hold, aspect)
    }

    /// The limit of blur: the one given, or the sensor's diagonal / 1500.
    pub fn blur_limit_mm(&self) -> f64 {
        match self.circle_of_confusion_mm {
            Some(limit) => limit,
            None => default_circle_of_confusion_mm(self.sensor_width_mm, self.sensor_height_mm),
        }
    }
}
