//! Centre of gravity against the feet: margins, factors, tilt, push, and the moment in the clamp.
//!
//! Rigid bodies on a level floor. About each edge of the polygon of feet the weights inside restore and
//! those outside overturn.

use super::feet::{EdgeMoments, Feet, Turning};
use super::reach::Placement;
use super::support::MOST_LEGS;
use super::weights::{Loads, RigState, Weight};
use crate::number::{Extremes, STANDARD_GRAVITY, atan2_deg, hypot, turn_deg};
use crate::vector::{Direction, Point};

/// How the rig stands in one state.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Standing {
    /// Everything that stands on the feet.
    pub total_mass_kg: f64,
    /// The whole centre of gravity, in the room.
    pub centre: Point,
    /// The centre of gravity inside the nearest edge; negative: it tips.
    pub margin_mm: f64,
    /// The edge with that margin, counted from 1: between the leg of that number and the next.
    pub margin_edge: u32,
    /// Smallest restoring over overturning moment about an edge; infinite where no weight hangs outside.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub factor: f64,
    /// The edge over which that is; that of the margin where the factor is infinite.
    pub factor_edge: u32,
    /// That edge's outward direction, counter-clockwise from the boom's.
    pub factor_edge_direction_deg: f64,
    /// Moment that restores about that edge.
    pub restoring_moment_n_m: f64,
    /// Moment that overturns about that edge.
    pub overturning_moment_n_m: f64,
    /// The tilt of the floor that tips it, in the worst direction.
    pub tilt_to_tip_deg: f64,
    /// The sideways push at the pivot that tips it, in the worst direction.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub push_to_tip_n: f64,
    /// What the boom leaves unbalanced at the clamp; 0 without a boom.
    pub clamp_moment_n_m: f64,
}

/// How the rig stands: the three states, and the payload against the one that would tip it.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Stability {
    /// Everything on.
    pub as_shot: Standing,
    /// Camera, lens and head off, counterweight on.
    pub camera_off: Standing,
    /// Counterweight off, camera on.
    pub counterweight_off: Standing,
    /// The payload (the whole of it) that would tip the rig; infinite where it hangs inside the feet.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub payload_to_tip_kg: f64,
    /// The payload over that; infinite where the rig tips without any.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub payload_share: f64,
}

/// Moments in newton metres from kilogram millimetres.
const NEWTON_METRES: f64 = STANDARD_GRAVITY / 1000.0;

/// How the rig stands with the weights of one state on, a push being taken `push_height_mm` above the
/// floor.
pub fn standing(
    feet: &Feet,
    loads: &Loads,
    state: RigState,
    placement: &Placement,
    push_height_mm: f64,
) -> Standing {
    let [as_shot, camera_off, counterweight_off] = loads.centres();
    let centre = match state {
        RigState::AsShot => as_shot,
        RigState::CameraOff => camera_off,
        RigState::CounterweightOff => counterweight_off,
    };
    let moments = &feet.moments(loads);
    standing_by(&Found { feet, moments, loads, placement, push_height_mm }, state, &centre)
}

/// Where the centre of gravity of a state is, and the moments about every edge.
struct Found<'a> {
    feet: &'a Feet,
    moments: &'a [EdgeMoments; MOST_LEGS],
    loads: &'a Loads,
    placement: &'a Placement,
    push_height_mm: f64,
}

fn standing_by(found: &Found<'_>, state: RigState, centre: &Weight) -> Standing {
    let Found { feet, moments, loads, placement, push_height_mm } = *found;
    let mass = centre.mass_kg;
    let mut least = (f64::INFINITY, 1, 0.0);
    let mut factor = (f64::INFINITY, 0, 0.0, 0.0);
    for (number, edge_moments) in (1..=feet.count).zip(moments) {
        let Turning { restoring, overturning } = edge_moments.in_state(state);
        // The difference of the moments keeps its digits next to tipping, where the centre's place less the
        // edge's would not.
        let inside = restoring - overturning;
        if inside < least.0 {
            least = (inside, number, restoring);
        }
        if overturning > 0.0 && restoring / overturning < factor.0 {
            factor = (restoring / overturning, number, restoring, overturning);
        }
    }
    if factor.1 == 0 {
        (factor.1, factor.2) = (least.1, least.2);
    }
    let margin_mm = if mass > 0.0 { least.0 / mass } else { feet.apothem_mm };
    let spacing = 360.0 / f64::from(feet.count);
    let clamp_moment_n_m = if placement.boom_used { clamp_moment_n_m(loads, state) } else { 0.0 };
    let towards = placement.towards;
    let left = Direction { x: -towards.y, y: towards.x, z: 0.0 };
    Standing {
        total_mass_kg: mass,
        centre: placement.column.along(towards, centre.x_mm).along(left, centre.y_mm).at_height(centre.z_mm),
        margin_mm,
        margin_edge: least.1,
        factor: factor.0,
        factor_edge: factor.1,
        factor_edge_direction_deg: turn_deg(feet.first_leg_deg + (f64::from(factor.1) - 0.5) * spacing),
        restoring_moment_n_m: factor.2 * NEWTON_METRES,
        overturning_moment_n_m: factor.3 * NEWTON_METRES,
        tilt_to_tip_deg: atan2_deg(margin_mm, centre.z_mm),
        push_to_tip_n: push_to_tip_n(mass, margin_mm, push_height_mm),
        clamp_moment_n_m,
    }
}

/// What boom, payload and counterweight leave unbalanced at the clamp in a state.
fn clamp_moment_n_m(loads: &Loads, state: RigState) -> f64 {
    let (mut x, mut y) = (0.0, 0.0);
    for (weight, on) in loads.on_the_boom(state) {
        if on {
            x += weight.mass_kg * weight.x_mm;
            y += weight.mass_kg * weight.y_mm;
        }
    }
    hypot(x, y) * NEWTON_METRES
}

/// The sideways push at a height that tips a mass standing with a margin: m g × margin / height; infinite
/// at floor height.
pub fn push_to_tip_n(mass_kg: f64, margin_mm: f64, height_mm: f64) -> f64 {
    if height_mm > 0.0 { mass_kg * STANDARD_GRAVITY * margin_mm / height_mm } else { f64::INFINITY }
}

/// The payload that would tip the rig, and the share of it used.
pub fn payload_to_tip(feet: &Feet, loads: &Loads) -> (f64, f64) {
    payload_to_tip_by(feet, &feet.moments(loads), loads)
}

fn payload_to_tip_by(feet: &Feet, moments: &[EdgeMoments; MOST_LEGS], loads: &Loads) -> (f64, f64) {
    let payload = &loads.payload;
    let mut to_tip = f64::INFINITY;
    for ((_, edge), edge_moments) in feet.numbered().zip(moments) {
        let outside = -feet.inside_mm(edge, payload.x_mm, payload.y_mm);
        if outside > 0.0 {
            let Turning { restoring, overturning } = edge_moments.in_state(RigState::CameraOff);
            to_tip = to_tip.smaller((restoring - overturning).larger(0.0) / outside);
        }
    }
    let share = if payload.mass_kg > 0.0 { payload.mass_kg / to_tip } else { 0.0 };
    (to_tip, share)
}

/// How a placed rig stands in its three states, a push being taken at the pivot.
pub fn stability(feet: &Feet, loads: &Loads, placement: &Placement, pivot_height_mm: f64) -> Stability {
    stability_by(feet, &feet.moments(loads), &loads.centres(), loads, placement, pivot_height_mm)
}

/// As [`stability`], the moments about the edges and the centres of gravity being known.
pub(crate) fn stability_by(
    feet: &Feet,
    moments: &[EdgeMoments; MOST_LEGS],
    centres: &[Weight; 3],
    loads: &Loads,
    placement: &Placement,
    pivot_height_mm: f64,
) -> Stability {
    let found = Found { feet, moments, loads, placement, push_height_mm: pivot_height_mm };
    let [as_shot, camera_off, counterweight_off] = centres;
    let (payload_to_tip_kg, payload_share) = payload_to_tip_by(feet, moments, loads);
    Stability {
        as_shot: standing_by(&found, RigState::AsShot, as_shot),
        camera_off: standing_by(&found, RigState::CameraOff, camera_off),
        counterweight_off: standing_by(&found, RigState::CounterweightOff, counterweight_off),
        payload_to_tip_kg,
        payload_share,
    }
}
