//! On the set: what the shot now is, which way to correct and by how much, and whether it is still within
//! its tolerances.

use crate::brief::Shot;
use crate::fault::Fault;
use crate::number::sin_cos_deg;
use crate::optics::lens::Lens;
use crate::plan::Plan;
use crate::range;
use crate::tolerance::{Measured, Measurement, RealShot, real_shot};

/// Standard uncertainties on either side of what was measured that count as possible: about 95 % (coverage
/// factor 2, the usual one; JCGM 100:2008, 6.2, from memory).
pub const COVERAGE: f64 = 2.0;

/// Whether a measured value is within its tolerance.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "text", derive(serde::Serialize), serde(rename_all = "snake_case"))]
#[repr(i32)]
pub enum Verdict {
    /// Within it, the uncertainty taken into account.
    Inside = 1,
    /// The uncertainty is too large to say.
    Undecided = 2,
    /// Outside it, the uncertainty taken into account.
    Outside = 3,
}

/// A measured value against the planned one. Its unit is that of the field that holds it.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Deviation {
    /// Measured less planned.
    pub off: f64,
    /// Standard uncertainty of that.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub uncertainty: f64,
    /// How far it may be off, either way.
    pub tolerance: f64,
    /// Whether it is.
    pub verdict: Verdict,
}

/// How to move the camera from where it was measured to where it is planned. Moves are the sensor's, in the
/// upright plane through the aim point.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Correction {
    /// Up; negative: down.
    pub up_mm: f64,
    /// Level, away from the aim point; negative: closer.
    pub away_mm: f64,
    /// Elevation of the axis to be gained, the camera looking further down; negative: further up. A camera
    /// that is aimed at the aim point again after the move has it.
    pub look_down_deg: f64,
    /// Roll to be taken off: the measured one, the other way round; 0 where it was not measured.
    pub roll_deg: f64,
}

/// What was measured, against the plan.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct OnSet {
    /// What the shot now is.
    pub real: RealShot,
    /// Elevation, in degrees.
    pub elevation_deg: Deviation,
    /// Frame width, as a share of the planned one.
    pub frame_width_share: Deviation,
    /// Roll, in degrees, where it was measured.
    pub roll_deg: Option<Deviation>,
    /// Which way to correct.
    pub correction: Correction,
    /// All together: outside if one is, inside if all are.
    pub verdict: Verdict,
}

impl Deviation {
    /// Judges a value that is off by so much.
    pub fn new(off: f64, uncertainty: f64, tolerance: f64) -> Deviation {
        let spread = COVERAGE * uncertainty;
        let verdict = if off.abs() + spread <= tolerance {
            Verdict::Inside
        } else if off.abs() - spread > tolerance {
            Verdict::Outside
        } else {
            Verdict::Undecided
        };
        Deviation { off, uncertainty, tolerance, verdict }
    }
}

/// Holds what was measured against the plan of a shot. `roll_deg` is what an inclinometer across the camera
/// says, clockwise or counter-clockwise as the user pleases.
///
/// Refused: what [`real_shot`] refuses, and a roll or its uncertainty that is not finite or out of its
/// range.
pub fn on_set(
    shot: &Shot,
    lens: &Lens,
    plan: &Plan,
    measured: &Measured,
    roll_deg: Option<Measurement>,
) -> Result<OnSet, Fault> {
    let real = real_shot(measured, lens, plan.used_area.width_mm)?;
    let roll = match roll_deg {
        Some(roll) => {
            range::MEASURED_ROLL_DEG.check(roll.value)?;
            range::MEASURED_UNCERTAINTY_DEG.check(roll.uncertainty)?;
            Some(Deviation::new(roll.value, roll.uncertainty, shot.roll_tolerance_deg))
        }
        None => None,
    };
    let elevation = real.elevation_deg;
    let elevation_deg = Deviation::new(
        elevation.value - shot.elevation_deg,
        elevation.uncertainty,
        shot.elevation_tolerance_deg,
    );
    let width = real.frame_width_mm;
    let frame_width_share = Deviation::new(
        (width.value - plan.frame_width_mm) / plan.frame_width_mm,
        width.uncertainty / plan.frame_width_mm,
        shot.frame_width_tolerance,
    );
    let from_aim = |distance_mm: f64, elevation_deg: f64| {
        let (sin, cos) = sin_cos_deg(elevation_deg);
        (distance_mm * cos, distance_mm * sin)
    };
    let (now_away, now_up) = from_aim(real.sensor_distance_mm.value, elevation.value);
    let (away, up) = from_aim(plan.lens.sensor_distance_mm, shot.elevation_deg);
    let all = [Some(elevation_deg), Some(frame_width_share), roll];
    let verdicts = || all.iter().flatten().map(|deviation| deviation.verdict);
    let verdict = if verdicts().any(|verdict| verdict == Verdict::Outside) {
        Verdict::Outside
    } else if verdicts().any(|verdict| verdict == Verdict::Undecided) {
        Verdict::Undecided
    } else {
        Verdict::Inside
    };
    Ok(OnSet {
        real,
        elevation_deg,
        frame_width_share,
        roll_deg: roll,
        correction: Correction {
            up_mm: up - now_up,
            away_mm: away - now_away,
            look_down_deg: shot.elevation_deg - elevation.value,
            roll_deg: roll.map_or(0.0, |roll| 0.0 - roll.off),
        },
        verdict,
    })
}
