//! The part of the sensor that the delivered picture uses.

use crate::fault::Fault;
use crate::number::hypot;
use crate::range;

/// How the camera is held.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "text", derive(serde::Serialize), serde(rename_all = "snake_case"))]
#[repr(i32)]
pub enum Hold {
    /// The sensor's longer side level.
    Across = 0,
    /// The sensor's longer side upright: width and height swap.
    Upright = 1,
}

/// The shape in which a picture is delivered, such as 4 to 5.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Aspect {
    /// The width's part of the ratio, 0.01 to 100.
    pub width: f64,
    /// The height's part of the ratio, 0.01 to 100.
    pub height: f64,
}

/// The part of the sensor that the delivered picture uses, as the camera is held.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct UsedArea {
    /// Level side.
    pub width_mm: f64,
    /// Upright side.
    pub height_mm: f64,
}

impl Aspect {
    /// Refuses a side that is not finite or outside 0.01 to 100.
    pub fn check(&self) -> Result<(), Fault> {
        range::ASPECT_SIDE.check(self.width)?;
        range::ASPECT_SIDE.check(self.height).map(|_| ())
    }
}

impl UsedArea {
    /// The largest rectangle of the delivered aspect inside the sensor as held; the whole sensor without
    /// an aspect.
    ///
    /// `sensor_width_mm` and `sensor_height_mm` are the sensor's sides held across.
    pub fn new(sensor_width_mm: f64, sensor_height_mm: f64, hold: Hold, aspect: Option<Aspect>) -> UsedArea {
        let (width, height) = match hold {
            Hold::Across => (sensor_width_mm, sensor_height_mm),
            Hold::Upright => (sensor_height_mm, sensor_width_mm),
        };
        match aspect {
            None => UsedArea { width_mm: width, height_mm: height },
            Some(aspect) if aspect.width * height > aspect.height * width => {
                UsedArea { width_mm: width, height_mm: width * (aspect.height / aspect.width) }
            }
            Some(aspect) => UsedArea { width_mm: height * (aspect.width / aspect.height), height_mm: height },
        }
    }

    /// The diagonal of the used part.
    pub fn diagonal_mm(&self) -> f64 {
        hypot(self.width_mm, self.height_mm)
    }
}

/// The limit of blur where the brief names none: the sensor's diagonal / 1500. Handbooks print 0.024 to
/// 0.033 mm for 36 x 24 mm; this gives 0.0288.
pub fn default_circle_of_confusion_mm(sensor_width_mm: f64, sensor_height_mm: f64) -> f64 {
    hypot(sensor_width_mm, sensor_height_mm) / 1500.0
}
