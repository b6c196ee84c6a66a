//! A tilting lens: the tilt that lays the plane of focus on the table.
//!
//! Hinge rule, J = f / sin tilt (Merklinger, View Camera, Jul/Aug 1996; Scheimpflug principle): the plane
//! of focus passes through the line J below the front principal point, in the plane parallel to the
//! sensor. The pivot is the front principal point, not the pupil.

use super::lens::FocusedLens;
use crate::number::asin_deg;

/// The tilt that lays the plane of focus on the table.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Tilt {
    /// From the front principal point to the table's plane, parallel to the sensor, downwards in the
    /// picture; infinite straight overhead, negative where the point lies under the table.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub hinge_distance_mm: f64,
    /// The tilt: 0 straight overhead; `None` where no tilt does it, the hinge being nearer than the focal
    /// length or the camera under the table.
    pub tilt_deg: Option<f64>,
}

/// The tilt for an elevation (its sine and cosine, the cosine not negative), the aim point lying
/// `aim_height_mm` above the table.
pub fn tilt_onto_table(lens: &FocusedLens, aim_height_mm: f64, sin: f64, cos: f64) -> Tilt {
    let height_mm = aim_height_mm + lens.object_distance_mm * sin;
    if cos <= 0.0 {
        return Tilt { hinge_distance_mm: f64::INFINITY, tilt_deg: Some(0.0) };
    }
    let hinge_distance_mm = height_mm / cos;
    let tilt_deg = if hinge_distance_mm >= lens.focal_length_mm {
        Some(asin_deg(lens.focal_length_mm / hinge_distance_mm))
    } else {
        None
    };
    Tilt { hinge_distance_mm, tilt_deg }
}
