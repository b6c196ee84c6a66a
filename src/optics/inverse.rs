//! Questions asked the other way round: from a distance to a lens or a magnification. Each is tested as
//! the round trip of the forward formula in [`super::lens`].

use super::lens::Lens;
use crate::fault::{Fault, FaultKind};
use crate::number::{sqrt, square};
use crate::range;

/// A viewpoint: from where a picture is seen, and how much it takes in. The same viewpoint gives the same
/// perspective with any camera.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Viewpoint {
    /// Aim point to entrance pupil.
    pub pupil_distance_mm: f64,
    /// Width of the frame in the plane through the aim point.
    pub frame_width_mm: f64,
}

/// The viewpoint found with a camera in the hand: its lens focused on the aim point, `sensor_distance_mm`
/// from the sensor. [`focal_length_for`] then gives the lens that reproduces it on another camera.
///
/// Refused as [`magnification_at`], and a used width out of its range.
pub fn viewpoint(lens: &Lens, used_width_mm: f64, sensor_distance_mm: f64) -> Result<Viewpoint, Fault> {
    let used = range::USED_WIDTH_MM.check(used_width_mm)?;
    let focused = lens.focused(magnification_at(lens, sensor_distance_mm)?);
    Ok(Viewpoint {
        pupil_distance_mm: focused.pupil_distance_mm,
        frame_width_mm: used / focused.magnification,
    })
}

/// The focal length (unit focusing) that shows a frame of `frame_width_mm` from `pupil_distance_mm`:
/// f = s / (1/m + 1/p), with m = used width / frame width.
///
/// This is also the lens that reproduces a viewpoint found with the camera in the hand: the same entrance
/// pupil and frame give the same perspective.
///
/// Refused: a value out of its range, and a focal length that no lens has ([`FaultKind::NoFocalLength`]).
pub fn focal_length_for(
    pupil_distance_mm: f64,
    frame_width_mm: f64,
    used_width_mm: f64,
    pupil_ratio: f64,
) -> Result<f64, Fault> {
    let s = range::PUPIL_DISTANCE_MM.check(pupil_distance_mm)?;
    let frame = range::FRAME_WIDTH_MM.check(frame_width_mm)?;
    let used = range::USED_WIDTH_MM.check(used_width_mm)?;
    let p = range::PUPIL_RATIO.check(pupil_ratio)?;
    let per_mm = frame / used + 1.0 / p;
    let focal_length_mm = s / per_mm;
    if range::FOCAL_LENGTH_MM.check(focal_length_mm).is_err() {
        return Err(Fault {
            kind: FaultKind::NoFocalLength,
            field: range::PUPIL_DISTANCE_MM.field,
            value: s,
            least: range::FOCAL_LENGTH_MM.least * per_mm,
            most: range::FOCAL_LENGTH_MM.most * per_mm,
        });
    }
    Ok(focal_length_mm)
}

/// The magnification at which a lens is focused on something `sensor_distance_mm` from the sensor: the
/// smaller root of f m² + (2f - (D - k)) m + f = 0, or of the cubic that replaces it where the focal length
/// changes with focusing.
///
/// Refused: a distance out of its range, and one nearer than the lens focuses ([`FaultKind::NoFocus`]):
/// under 4f + k for unit focusing, under the closest focus where that is published.
pub fn magnification_at(lens: &Lens, sensor_distance_mm: f64) -> Result<f64, Fault> {
    lens.check()?;
    let distance = range::MEASURED_SENSOR_DISTANCE_MM.check(sensor_distance_mm)?;
    magnification_within(lens, distance)
}

/// As [`magnification_at`], the lens and the distance being known to be in their ranges.
pub(crate) fn magnification_within(lens: &Lens, sensor_distance_mm: f64) -> Result<f64, Fault> {
    let d = sensor_distance_mm - lens.principal_separation_mm;
    let f = lens.focal_length_mm;
    let no_focus = |least: f64| Fault {
        kind: FaultKind::NoFocus,
        field: range::MEASURED_SENSOR_DISTANCE_MM.field,
        value: sensor_distance_mm,
        least,
        most: range::MEASURED_SENSOR_DISTANCE_MM.most,
    };
    let closest = lens.closest_focus_mm.unwrap_or(0.0);
    let largest = match (lens.closest_focus_mm, lens.largest_magnification) {
        (Some(_), Some(largest)) => largest,
        _ => {
            let least = 4.0 * f + lens.principal_separation_mm;
            let least = if closest > least { closest } else { least };
            if sensor_distance_mm < least {
                return Err(no_focus(least));
            }
            // The smaller root as the reciprocal of the larger, so that nothing cancels.
            let middle = d - 2.0 * f;
            return Ok(2.0 * f / (middle + sqrt(d * (d - 4.0 * f))));
        }
    };
    if sensor_distance_mm < closest {
        return Err(no_focus(closest));
    }
    // D falls from infinity to the closest focus as m grows to M (the lens's check): m D(m) - m d changes its sign
    // once, and halving finds where, to the last digit.
    let slope = lens.focal_length_slope_mm(0.0);
    let (mut low, mut high) = (0.0, largest);
    loop {
        let m = 0.5 * (low + high);
        if m <= low || m >= high {
            return Ok(high);
        }
        if (f + slope * m) * square(1.0 + m) > d * m {
            low = m;
        } else {
            high = m;
        }
    }
}
