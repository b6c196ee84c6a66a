//! How exactly to set it; what was really set.

use crate::fault::{Fault, FaultKind};
use crate::number::{Extremes, atan2_deg, degrees, hypot, sin_cos_deg, sqrt, square, tan_deg};
use crate::optics::inverse::magnification_at;
use crate::optics::lens::{FocusedLens, Lens};
use crate::range;
use crate::view::pose::Orientation;

/// How far the sensor may be moved from its planned place, the camera always aimed at the aim point, so
/// that elevation and frame width stay within their tolerances. Each move alone; exact, not first order;
/// infinite where no move in that direction leaves them.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Tolerance {
    /// Up.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub up_mm: f64,
    /// Down.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub down_mm: f64,
    /// Level, away from the aim point.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub away_mm: f64,
    /// Level, towards the aim point.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub closer_mm: f64,
    /// Drift across the frame from side to side of the roll tolerance, W tan ρ.
    pub roll_drift_mm: f64,
}

/// The wanted tolerances.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ToleranceWish {
    /// How far the elevation may be off.
    pub elevation_deg: f64,
    /// Share by which the frame width may be off.
    pub frame_width: f64,
    /// How far from level the camera may be rolled.
    pub roll_deg: f64,
}

/// How exactly a planned camera must be set.
pub fn tolerance(
    lens: &Lens,
    focused: &FocusedLens,
    elevation_deg: f64,
    at: &Orientation,
    frame_width_mm: f64,
    wish: &ToleranceWish,
) -> Tolerance {
    let d = focused.sensor_distance_mm;
    let (h, x) = (d * at.sin_elevation, d * at.cos_elevation);
    let m = focused.magnification;
    // The distance falls as the magnification grows as far as `turn` (life size, or the lens's own closest
    // focus) and rises again beyond it: the nearer end of the tolerance lies at `turn` or before it.
    let turn = match (lens.closest_focus_mm, lens.largest_magnification) {
        (Some(_), Some(largest)) => largest.larger(1.0),
        _ => 1.0,
    };
    let share = wish.frame_width;
    let narrow = (m / (1.0 - share), m * share / (1.0 - share));
    let wide = (m / (1.0 + share), -m * share / (1.0 + share));
    let at_turn = (turn, turn - m);
    let (toward, away) = if m <= turn {
        (if narrow.0 < turn { narrow } else { at_turn }, wide)
    } else {
        (if wide.0 > turn { wide } else { at_turn }, narrow)
    };
    let nearer = (-distance_change_mm(lens, m, toward)).larger(0.0);
    let farther = distance_change_mm(lens, m, away).larger(0.0);
    let (near, far) = (d - nearer, d + farther);
    let t = wish.elevation_deg;
    let (sin_t, _) = sin_cos_deg(t);
    let (sin_more, cos_more) = sin_cos_deg(elevation_deg + t);
    let (sin_less, cos_less) = sin_cos_deg(elevation_deg - t);
    // Where the circle of a sensor distance is met, moving from the coordinate `from` in its positive
    // direction, the other coordinate being `across`: first the inner circle, if the way leads into it.
    let to_circle = |from: f64, across: f64| {
        if from < 0.0 && near > across.abs() {
            return nearer * (d + near) / (sqrt((near - across) * (near + across)) - from);
        }
        // √(D² - a²) - from, as above without the cancellation: the squares' difference over the sum.
        let half = sqrt((far - across) * (far + across));
        if from > 0.0 { farther * (far + d) / (half + from) } else { half - from }
    };
    // Where the ray of the elevation's limit is met: moving by D sin t / cos(e ± t), or / sin(e ± t).
    let to_ray = |toward: f64| if toward > 0.0 { d * sin_t / toward } else { f64::INFINITY };
    let (away_ray, closer_ray) = if h > 0.0 {
        (to_ray(sin_less), to_ray(sin_more))
    } else if h < 0.0 {
        (to_ray(-sin_more), to_ray(-sin_less))
    } else {
        (f64::INFINITY, f64::INFINITY)
    };
    Tolerance {
        up_mm: to_ray(cos_more).smaller(to_circle(h, x)),
        down_mm: to_ray(cos_less).smaller(to_circle(-h, x)),
        away_mm: away_ray.smaller(to_circle(x, h)),
        closer_mm: closer_ray.smaller(to_circle(-x, h)),
        roll_drift_mm: frame_width_mm * tan_deg(wish.roll_deg),
    }
}

/// By how much the sensor distance changes from magnification `m` to another, given with its difference
/// from m: f' (m' - m)(1 - 1/(m m')) + (f' - f)(1 + m)²/m, which keeps its digits next to life size, where
/// the two distances hardly differ.
fn distance_change_mm(lens: &Lens, m: f64, (to, change): (f64, f64)) -> f64 {
    let (focal_length, _) = lens.focal_length_at(to);
    let (here, _) = lens.focal_length_at(m);
    let slope = lens.focal_length_slope_mm(m.smaller(to));
    // Across the closest focus the focal length stops changing.
    let stops = lens.focal_length_slope_mm(m.larger(to)) != slope;
    let growth = if stops { focal_length - here } else { slope * change };
    focal_length * change * (1.0 - 1.0 / (m * to)) + growth * square(1.0 + m) / m
}

/// A measured value with its standard uncertainty, in the unit of the field that holds it.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Measurement {
    /// What was read.
    pub value: f64,
    /// One standard deviation, 0 or more.
    pub uncertainty: f64,
}

/// What was measured on the set. Heights are above the floor; the sensor's place is its mark on the body.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize), serde(rename_all = "snake_case"))]
pub enum Measured {
    /// Two heights and the level distance between sensor and aim point.
    HeightAndDistance {
        /// Height of the axis at the sensor.
        sensor_height_mm: Measurement,
        /// Height of the aim point.
        aim_height_above_floor_mm: Measurement,
        /// From the aim point to the sensor, seen from above.
        horizontal_distance_mm: Measurement,
    },
    /// A tape from the aim point to the sensor, and an inclinometer on the camera.
    TapeAndInclinometer {
        /// Straight from the aim point to the sensor.
        sensor_distance_mm: Measurement,
        /// Of the axis.
        elevation_deg: Measurement,
    },
    /// Two heights and a tape from the aim point to the sensor. Near 90 degrees the elevation is hardly
    /// determined by these: its uncertainty grows without bound.
    HeightAndTape {
        /// Height of the axis at the sensor.
        sensor_height_mm: Measurement,
        /// Height of the aim point.
        aim_height_above_floor_mm: Measurement,
        /// Straight from the aim point to the sensor.
        sensor_distance_mm: Measurement,
    },
}

/// What the shot really is. Uncertainties are first order, the measured values taken as independent.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct RealShot {
    /// Elevation; its uncertainty may be infinite (see [`Measured::HeightAndTape`]).
    pub elevation_deg: Measurement,
    /// Frame width in the plane through the aim point; its uncertainty is infinite at 1:1 with unit
    /// focusing, where the distance hardly depends on the magnification.
    pub frame_width_mm: Measurement,
    /// Straight from the aim point to the sensor.
    pub sensor_distance_mm: Measurement,
    /// Picture size on the sensor / size in the plane through the aim point.
    pub magnification: f64,
}

fn length(range: &range::Range, measured: &Measurement) -> Result<(f64, f64), Fault> {
    Ok((range.check(measured.value)?, range::MEASURED_UNCERTAINTY_MM.check(measured.uncertainty)?))
}

/// Elevation and frame width from what was measured, for a lens focused on the aim point.
///
/// Refused: a value out of its range, the sensor measured at the aim point itself or the heights further
/// apart than the tape ([`FaultKind::NoViewpoint`]), a distance at which the lens does not focus.
pub fn real_shot(measured: &Measured, lens: &Lens, used_width_mm: f64) -> Result<RealShot, Fault> {
    let used = range::USED_WIDTH_MM.check(used_width_mm)?;
    let (elevation_deg, sensor_distance_mm) = match measured {
        Measured::HeightAndDistance {
            sensor_height_mm,
            aim_height_above_floor_mm,
            horizontal_distance_mm,
        } => {
            let (top, u_top) = length(&range::MEASURED_HEIGHT_MM, sensor_height_mm)?;
            let (aim, u_aim) = length(&range::MEASURED_AIM_HEIGHT_MM, aim_height_above_floor_mm)?;
            let (x, u_x) = length(&range::MEASURED_DISTANCE_MM, horizontal_distance_mm)?;
            let h = top - aim;
            let u_h = hypot(u_top, u_aim);
            let d = hypot(x, h);
            if d <= 0.0 {
                return Err(range::MEASURED_DISTANCE_MM.fault(FaultKind::NoViewpoint, x));
            }
            let (sin, cos) = (h / d, x / d);
            (
                Measurement { value: atan2_deg(h, x), uncertainty: degrees(hypot(cos * u_h, sin * u_x) / d) },
                Measurement { value: d, uncertainty: hypot(sin * u_h, cos * u_x) },
            )
        }
        Measured::TapeAndInclinometer { sensor_distance_mm, elevation_deg } => {
            let (d, u_d) = length(&range::MEASURED_SENSOR_DISTANCE_MM, sensor_distance_mm)?;
            range::MEASURED_ELEVATION_DEG.check(elevation_deg.value)?;
            range::MEASURED_UNCERTAINTY_DEG.check(elevation_deg.uncertainty)?;
            (*elevation_deg, Measurement { value: d, uncertainty: u_d })
        }
        Measured::HeightAndTape { sensor_height_mm, aim_height_above_floor_mm, sensor_distance_mm } => {
            let (top, u_top) = length(&range::MEASURED_HEIGHT_MM, sensor_height_mm)?;
            let (aim, u_aim) = length(&range::MEASURED_AIM_HEIGHT_MM, aim_height_above_floor_mm)?;
            let (d, u_d) = length(&range::MEASURED_SENSOR_DISTANCE_MM, sensor_distance_mm)?;
            let h = top - aim;
            // A camera straight overhead measures as far by tape as by height, but for rounding.
            if h.abs() > d * (1.0 + 1e-12) {
                return Err(Fault {
                    least: h.abs(),
                    ..range::MEASURED_SENSOR_DISTANCE_MM.fault(FaultKind::NoViewpoint, d)
                });
            }
            let x = sqrt(((d - h) * (d + h)).larger(0.0));
            let spread = hypot(hypot(u_top, u_aim), h / d * u_d);
            // Nothing measured with error stays certain even straight overhead.
            let uncertainty = if spread > 0.0 { degrees(spread / x) } else { 0.0 };
            (Measurement { value: atan2_deg(h, x), uncertainty }, Measurement { value: d, uncertainty: u_d })
        }
    };
    let m = magnification_at(lens, sensor_distance_mm.value)?;
    let frame_width = used / m;
    let sensitivity = used / (m * m) / sensor_distance_per_magnification_mm(lens, m).abs();
    Ok(RealShot {
        elevation_deg,
        frame_width_mm: Measurement {
            value: frame_width,
            uncertainty: if sensor_distance_mm.uncertainty > 0.0 {
                sensitivity * sensor_distance_mm.uncertainty
            } else {
                0.0
            },
        },
        sensor_distance_mm,
        magnification: m,
    })
}

/// The derivative of D = f(m) (1 + m)² / m + k by m.
fn sensor_distance_per_magnification_mm(lens: &Lens, m: f64) -> f64 {
    let (f, _) = lens.focal_length_at(m);
    lens.focal_length_slope_mm(m) * square(1.0 + m) / m + f * (1.0 + m) * (m - 1.0) / (m * m)
}
