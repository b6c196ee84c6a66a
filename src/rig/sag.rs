//! The boom bends and swings.
//!
//! A cantilever of constant section from the clamp, loaded by the payload at its end and by its own weight:
//! P l³/3EI + w l⁴/8EI, end slope P l²/2EI + w l³/6EI (Strength of Materials, open textbook, appendix B.2).
//! First frequency √(3EI / (l³ (M + 33/140 m))) / 2π (Rayleigh; within 0.06 % of the exact root). On a
//! pitched boom the loads' parts square to it bend it.

use super::support::Boom;
use crate::number::{PI, STANDARD_GRAVITY, degrees, ln, sin_cos_deg, sqrt};

/// What bending does to the picture.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Sag {
    /// The boom's end moves, square to the boom.
    pub deflection_mm: f64,
    /// Height lost by the camera.
    pub height_lost_mm: f64,
    /// The boom's end turns down.
    pub end_slope_deg: f64,
    /// The aim point moves in the picture's plane: sensor distance × slope.
    pub aim_shift_mm: f64,
    /// First bending frequency; infinite without any mass.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub frequency_hz: f64,
    /// How long to wait after touching it until the swing has died down to the settled share; `None`
    /// without a damping ratio.
    pub settling_s: Option<f64>,
}

/// A cantilever under an end load and a uniform load: the end's deflection and slope (radians), in metres
/// and newtons.
pub fn cantilever(end_load_n: f64, load_n_per_m: f64, length_m: f64, stiffness_n_m2: f64) -> (f64, f64) {
    bent(end_load_n, load_n_per_m * length_m, length_m, stiffness_n_m2)
}

/// As [`cantilever`], by the whole of the uniform load: a length next to nothing has no load by the metre.
fn bent(end_load_n: f64, uniform_load_n: f64, length_m: f64, stiffness_n_m2: f64) -> (f64, f64) {
    let flexibility = length_m * length_m / stiffness_n_m2;
    let deflection = flexibility * length_m * (end_load_n / 3.0 + uniform_load_n / 8.0);
    let slope = flexibility * (end_load_n / 2.0 + uniform_load_n / 6.0);
    (deflection, slope)
}

/// First bending frequency in hertz of a cantilever of `beam_kg` with `end_kg` at its end; infinite without
/// mass or length.
pub fn first_frequency_hz(end_kg: f64, beam_kg: f64, length_m: f64, stiffness_n_m2: f64) -> f64 {
    let mass = end_kg + 33.0 / 140.0 * beam_kg;
    let l = length_m;
    let compliance = l * l * l * mass;
    if compliance > 0.0 { sqrt(3.0 * stiffness_n_m2 / compliance) / (2.0 * PI) } else { f64::INFINITY }
}

/// Sag of a boom of known stiffness, `boom_length_mm` from clamp to pivot; `None` without a stiffness.
pub fn sag(
    boom: &Boom,
    boom_length_mm: f64,
    payload_kg: f64,
    sensor_distance_mm: f64,
    settled_share: f64,
) -> Option<Sag> {
    let stiffness = boom.stiffness?.bending_stiffness_n_m2();
    let length = boom_length_mm / 1000.0;
    let whole_mm = boom_length_mm + boom.tail_mm;
    let outer_kg = if whole_mm > 0.0 { boom.mass_kg * (boom_length_mm / whole_mm) } else { 0.0 };
    let (_, cos) = sin_cos_deg(boom.pitch_deg);
    let across = STANDARD_GRAVITY * cos;
    let (deflection, slope) = bent(payload_kg * across, outer_kg * across, length, stiffness);
    let frequency_hz = first_frequency_hz(payload_kg, outer_kg, length, stiffness);
    let settling_s = boom.damping_ratio.map(|ratio| {
        // The envelope falls as exp(-ζ ω t).
        -ln(settled_share) / (ratio * 2.0 * PI * frequency_hz)
    });
    let deflection_mm = deflection * 1000.0;
    Some(Sag {
        deflection_mm,
        height_lost_mm: deflection_mm * cos,
        end_slope_deg: degrees(slope),
        aim_shift_mm: sensor_distance_mm * slope,
        frequency_hz,
        settling_s,
    })
}
