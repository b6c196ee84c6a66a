//! A lens, and where it stands when focused at a magnification.
//!
//! Gaussian optics of a thick lens: Greenleaf, *Photographic Optics*, and the usual textbooks. Distances
//! from the sensor, from the principal plane and from the entrance pupil are three different things here,
//! each under its own name.

use super::sensor::UsedArea;
use crate::fault::{Fault, FaultKind};
use crate::number::{degrees, hypot, square};
use crate::range;

/// A lens as its maker specifies it.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Lens {
    /// The marked focal length, for infinity.
    pub focal_length_mm: f64,
    /// Closest focus, sensor to object.
    pub closest_focus_mm: Option<f64>,
    /// Magnification at the closest focus. With both given, the focal length changes as the lens focuses
    /// ([`Lens::focal_length_at`]); with one or none it does not (unit focusing).
    pub largest_magnification: Option<f64>,
    /// Exit pupil / entrance pupil; 1 for a symmetric lens.
    pub pupil_ratio: f64,
    /// From the front principal plane to the rear one; may be negative; 0 for a thin lens.
    pub principal_separation_mm: f64,
    /// The widest opening's engraved f-number.
    pub least_f_number: f64,
    /// The smallest opening's engraved f-number.
    pub most_f_number: f64,
    /// The lens's front ahead of the sensor, for the room left to the light.
    pub front_from_sensor_mm: Option<f64>,
    /// How far a tilting lens tilts; 0 for any other.
    pub largest_tilt_deg: f64,
    /// Mass.
    pub mass_kg: f64,
    /// Centre of gravity ahead of the sensor, on the axis.
    pub centre_ahead_mm: f64,
}

/// A lens focused so that the plane through the aim point is pictured at a magnification.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct FocusedLens {
    /// Picture size on the sensor / size in the plane through the aim point.
    pub magnification: f64,
    /// Focal length at this magnification.
    pub focal_length_mm: f64,
    /// Whether that focal length rests on the straight line between the lens's two published points.
    pub focal_length_assumed: bool,
    /// The lens's pupil ratio, exit / entrance.
    pub pupil_ratio: f64,
    /// Sensor to aim point.
    pub sensor_distance_mm: f64,
    /// Rear principal plane to sensor, f (1 + m).
    pub image_distance_mm: f64,
    /// Aim point to front principal plane, f (1 + 1/m).
    pub object_distance_mm: f64,
    /// Aim point to entrance pupil, the centre of perspective, f (1/m + 1/p).
    pub pupil_distance_mm: f64,
}

/// How wide the lens sees, drawn from the entrance pupil.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct FieldAngles {
    /// Across the frame's width.
    pub horizontal_deg: f64,
    /// Across the frame's height.
    pub vertical_deg: f64,
    /// From corner to corner.
    pub diagonal_deg: f64,
}

impl Lens {
    /// Refuses a field that is not finite or out of its range (see [`crate::range`]), f-numbers the wrong
    /// way round, and a closest focus that does not fit the largest magnification: where the focal length
    /// there would not be positive, or above the marked one by more than a tenth, or where the distance
    /// would not fall all the way as the magnification grows.
    pub fn check(&self) -> Result<(), Fault> {
        range::FOCAL_LENGTH_MM.check(self.focal_length_mm)?;
        range::CLOSEST_FOCUS_MM.check_given(self.closest_focus_mm)?;
        range::LARGEST_MAGNIFICATION.check_given(self.largest_magnification)?;
        range::PUPIL_RATIO.check(self.pupil_ratio)?;
        range::PRINCIPAL_SEPARATION_MM.check(self.principal_separation_mm)?;
        range::LEAST_F_NUMBER.check(self.least_f_number)?;
        range::MOST_F_NUMBER.check(self.most_f_number)?;
        range::FRONT_FROM_SENSOR_MM.check_given(self.front_from_sensor_mm)?;
        range::LARGEST_TILT_DEG.check(self.largest_tilt_deg)?;
        range::LENS_MASS_KG.check(self.mass_kg)?;
        range::LENS_CENTRE_AHEAD_MM.check(self.centre_ahead_mm)?;
        if self.most_f_number < self.least_f_number {
            return Err(Fault {
                least: self.least_f_number,
                ..range::MOST_F_NUMBER.fault(FaultKind::FNumbersReversed, self.most_f_number)
            });
        }
        match (self.closest_focus_mm, self.largest_magnification) {
            (Some(closest), Some(largest)) => self.check_focus_range(closest, largest),
            _ => Ok(()),
        }
    }

    fn check_focus_range(&self, closest_mm: f64, largest: f64) -> Result<(), Fault> {
        // The distance falls over (0, M] where f'(m) <= f (1 - m) / 2m² there; that bound is lowest at
        // m = 2, or at M before it.
        let m = if largest < 2.0 { largest } else { 2.0 };
        let steepest = self.focal_length_mm * (1.0 - m) / (2.0 * m * m);
        let stretch = square(1.0 + largest) / largest;
        let grows = self.principal_separation_mm + 1.1 * self.focal_length_mm * stretch;
        let turns = self.principal_separation_mm + (self.focal_length_mm + largest * steepest) * stretch;
        let (kind, most) = if turns < grows {
            (FaultKind::FocusTurnsBack, turns)
        } else {
            (FaultKind::FocalLengthGrows, grows)
        };
        let fault = |kind| {
            // A lens that no closest focus would suit has no range to name.
            let (least, most) = if self.principal_separation_mm <= most {
                (self.principal_separation_mm, most)
            } else {
                (f64::NEG_INFINITY, f64::INFINITY)
            };
            Fault { least, most, ..range::CLOSEST_FOCUS_MM.fault(kind, closest_mm) }
        };
        if closest_mm <= self.principal_separation_mm {
            return Err(fault(FaultKind::NoFocalLengthAtClosestFocus));
        }
        // A lens that meets the bound itself must not fail by the rounding of the bound.
        if closest_mm > most * (1.0 + 1e-12) {
            return Err(fault(kind));
        }
        Ok(())
    }

    /// The focal length at the closest focus, fM = (Dmin - k) M / (1 + M)², where both are published.
    fn closest_focal_length_mm(&self) -> Option<(f64, f64)> {
        match (self.closest_focus_mm, self.largest_magnification) {
            (Some(closest), Some(largest)) => {
                let focal = (closest - self.principal_separation_mm) * largest / square(1.0 + largest);
                Some((focal, largest))
            }
            _ => None,
        }
    }

    /// The focal length at a magnification, and whether it is an assumption.
    ///
    /// Unit focusing: the marked one. With closest focus and largest magnification M both published, the
    /// straight line from the marked one at 0 to (Dmin - k) M / (1 + M)² at M, which meets both published
    /// points. Beyond M, where the lens does not focus, it stays what it is at M.
    pub fn focal_length_at(&self, magnification: f64) -> (f64, bool) {
        match self.closest_focal_length_mm() {
            None => (self.focal_length_mm, false),
            Some((focal, largest)) => {
                let share = if magnification < largest { magnification / largest } else { 1.0 };
                (self.focal_length_mm + (focal - self.focal_length_mm) * share, true)
            }
        }
    }

    /// By how much the focal length changes with the magnification, per unit of it.
    pub(crate) fn focal_length_slope_mm(&self, magnification: f64) -> f64 {
        match self.closest_focal_length_mm() {
            Some((focal, largest)) if magnification < largest => (focal - self.focal_length_mm) / largest,
            _ => 0.0,
        }
    }

    /// The lens focused at a magnification over 0.
    pub fn focused(&self, magnification: f64) -> FocusedLens {
        let m = magnification;
        let (f, focal_length_assumed) = self.focal_length_at(m);
        let p = self.pupil_ratio;
        FocusedLens {
            magnification: m,
            focal_length_mm: f,
            focal_length_assumed,
            pupil_ratio: p,
            sensor_distance_mm: f * square(1.0 + m) / m + self.principal_separation_mm,
            image_distance_mm: f * (1.0 + m),
            object_distance_mm: f * (1.0 + 1.0 / m),
            pupil_distance_mm: f * (1.0 / m + 1.0 / p),
        }
    }
}

impl FocusedLens {
    /// Width of the frame in the plane through the aim point.
    pub fn frame_width_mm(&self, used: &UsedArea) -> f64 {
        used.width_mm / self.magnification
    }

    /// Field angles 2 atan(W / 2s) for a frame of this size in the plane through the aim point.
    pub fn field_angles(&self, frame_width_mm: f64, frame_height_mm: f64) -> FieldAngles {
        let full = |size_mm: f64| degrees(2.0 * crate::number::atan2(size_mm, 2.0 * self.pupil_distance_mm));
        FieldAngles {
            horizontal_deg: full(frame_width_mm),
            vertical_deg: full(frame_height_mm),
            diagonal_deg: full(hypot(frame_width_mm, frame_height_mm)),
        }
    }
}
