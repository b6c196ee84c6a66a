//! Centre of gravity against the feet: margins, factors, tilt, push, and the moments in clamp and head.
//!
//! Rigid bodies on a level floor. The feet span a regular polygon around the column; about each of its
//! edges the weights inside restore and those outside overturn. In the rig's own coordinates x points from
//! the column along the boom (without a boom: to the table) and y to its left, z up from the floor.

use super::reach::Placement;
use super::support::{MOST_LEGS, MOST_SANDBAGS, Support};
use crate::number::{STANDARD_GRAVITY, atan2_deg, hypot, sin_cos_deg, turn_deg};
use crate::optics::camera::Camera;
use crate::optics::lens::Lens;
use crate::vector::{Direction, Point};
use crate::view::pose::Pose;

/// Camera, lens and head as one weight on the lens axis.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Payload {
    /// Mass of camera, lens and head.
    pub mass_kg: f64,
    /// Their centre of gravity ahead of the sensor, on the axis.
    pub centre_ahead_mm: f64,
    /// That centre in the room.
    pub centre: Point,
    /// Moment at the head's pivot: payload weight × its centre's horizontal distance from the pivot.
    pub head_moment_n_m: f64,
}

/// A weight in the rig's own coordinates.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Weight {
    /// Mass.
    pub mass_kg: f64,
    /// Along the boom from the column's axis.
    pub x_mm: f64,
    /// To the boom's left.
    pub y_mm: f64,
    /// Above the floor.
    pub z_mm: f64,
}

/// What hangs on the rig.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Loads {
    /// Camera, lens and head.
    pub payload: Weight,
    /// The boom; without mass if there is none.
    pub boom: Weight,
    /// The counterweight; without mass if there is none.
    pub counterweight: Weight,
    /// Column and legs, the weight on the base, and the sandbags.
    pub rest: [Weight; 2 + MOST_SANDBAGS],
}

/// Which of the weights are on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "text", derive(serde::Serialize), serde(rename_all = "snake_case"))]
#[repr(i32)]
pub enum RigState {
    /// Everything on.
    AsShot = 0,
    /// Camera, lens and head off, counterweight on.
    CameraOff = 1,
    /// Counterweight off, camera on.
    CounterweightOff = 2,
}

/// An edge of the polygon of feet.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Edge {
    /// The outward direction's component along x.
    pub x: f64,
    /// Along y.
    pub y: f64,
}

/// The feet as a polygon around the column.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Feet {
    /// The edges' outward directions, the first `count` of them.
    pub edges: [Edge; MOST_LEGS],
    /// How many.
    pub count: u32,
    /// From the column's axis to each edge.
    pub apothem_mm: f64,
    /// The first leg's direction from x, counter-clockwise.
    pub first_leg_deg: f64,
}

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

/// Camera, lens and head as one weight, its centre on the axis: the head is taken to hang at the socket.
pub fn payload(camera: &Camera, lens: &Lens, head_mass_kg: f64, pose: &Pose) -> Payload {
    let mass_kg = camera.mass_kg + lens.mass_kg + head_mass_kg;
    let moment = camera.mass_kg * camera.centre_ahead_mm
        + lens.mass_kg * lens.centre_ahead_mm
        + head_mass_kg * camera.socket_ahead_mm;
    let centre_ahead_mm = if mass_kg > 0.0 { moment / mass_kg } else { 0.0 };
    let centre = pose.sensor.along(pose.forward, centre_ahead_mm);
    let off = pose.pivot.to(centre);
    let head_moment_n_m = mass_kg * STANDARD_GRAVITY * hypot(off.x, off.y) / 1000.0;
    Payload { mass_kg, centre_ahead_mm, centre, head_moment_n_m }
}

/// The weights of a placed rig in its own coordinates.
pub fn loads(support: &Support, placement: &Placement, payload: &Payload) -> Loads {
    let towards = placement.towards;
    let left = Direction { x: -towards.y, y: towards.x, z: 0.0 };
    let from_column = placement.column.at_height(0.0).to(payload.centre);
    let none = Weight { mass_kg: 0.0, x_mm: 0.0, y_mm: 0.0, z_mm: 0.0 };
    let (boom, counterweight) = match &support.boom {
        Some(boom) if placement.boom_used => {
            let (sin, cos) = sin_cos_deg(boom.pitch_deg);
            let middle = 0.5 * (placement.boom_length_mm - boom.tail_mm);
            let arm = boom.counterweight_arm_mm();
            let along = |mass_kg, out: f64| Weight {
                mass_kg,
                x_mm: out * cos,
                y_mm: 0.0,
                z_mm: placement.clamp_height_mm + out * sin,
            };
            (along(boom.mass_kg, middle), along(boom.counterweight_kg, -arm))
        }
        _ => (none, none),
    };
    let axis = |mass_kg, z_mm| Weight { mass_kg, x_mm: 0.0, y_mm: 0.0, z_mm };
    let [a, b, c, d] = support.sandbags.map(|bag| {
        let (sin, cos) = sin_cos_deg(bag.direction_deg);
        Weight { mass_kg: bag.mass_kg, x_mm: bag.out_mm * cos, y_mm: bag.out_mm * sin, z_mm: bag.height_mm }
    });
    Loads {
        payload: Weight {
            mass_kg: payload.mass_kg,
            x_mm: from_column.dot(towards),
            y_mm: from_column.dot(left),
            z_mm: from_column.z,
        },
        boom,
        counterweight,
        rest: [
            axis(support.mass_kg, support.centre_height_mm),
            axis(support.base_mass_kg, support.base_height_mm),
            a,
            b,
            c,
            d,
        ],
    }
}

impl Loads {
    /// The weights that are on in a state; the others without mass.
    pub fn in_state(&self, state: RigState) -> [Weight; 5 + MOST_SANDBAGS] {
        let off = |weight: Weight| Weight { mass_kg: 0.0, ..weight };
        let payload = if state == RigState::CameraOff { off(self.payload) } else { self.payload };
        let counterweight =
            if state == RigState::CounterweightOff { off(self.counterweight) } else { self.counterweight };
        let [a, b, c, d, e, f] = self.rest;
        [payload, self.boom, counterweight, a, b, c, d, e, f]
    }
}

impl Feet {
    /// The polygon of `leg_count` feet on a circle, the first leg at an angle from x.
    pub fn new(leg_count: u32, foot_radius_mm: f64, first_leg_deg: f64) -> Feet {
        let spacing = 360.0 / f64::from(leg_count);
        let mut edges = [Edge { x: 0.0, y: 0.0 }; MOST_LEGS];
        for (index, edge) in edges.iter_mut().enumerate().take(leg_count as usize) {
            let (sin, cos) = sin_cos_deg(first_leg_deg + (index as f64 + 0.5) * spacing);
            *edge = Edge { x: cos, y: sin };
        }
        let (_, cos_half) = sin_cos_deg(0.5 * spacing);
        Feet { edges, count: leg_count, apothem_mm: foot_radius_mm * cos_half, first_leg_deg }
    }

    /// The edges with their numbers, counted from 1.
    pub fn numbered(&self) -> impl Iterator<Item = (u32, &Edge)> {
        (1..=self.count).zip(self.edges.iter())
    }

    /// How far inside an edge a place is.
    pub fn inside_mm(&self, edge: &Edge, x_mm: f64, y_mm: f64) -> f64 {
        self.apothem_mm - (x_mm * edge.x + y_mm * edge.y)
    }
}

/// Restoring and overturning moment of the weights about an edge, in kilogram millimetres.
pub(crate) fn moments_kg_mm(feet: &Feet, edge: &Edge, weights: &[Weight]) -> (f64, f64) {
    let (mut restoring, mut overturning) = (0.0, 0.0);
    for weight in weights {
        let moment = weight.mass_kg * feet.inside_mm(edge, weight.x_mm, weight.y_mm);
        if moment >= 0.0 {
            restoring += moment;
        } else {
            overturning -= moment;
        }
    }
    (restoring, overturning)
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
    let weights = loads.in_state(state);
    let (mut mass, mut mx, mut my, mut mz) = (0.0, 0.0, 0.0, 0.0);
    for weight in &weights {
        mass += weight.mass_kg;
        mx += weight.mass_kg * weight.x_mm;
        my += weight.mass_kg * weight.y_mm;
        mz += weight.mass_kg * weight.z_mm;
    }
    let (x, y, z) = if mass > 0.0 { (mx / mass, my / mass, mz / mass) } else { (0.0, 0.0, 0.0) };
    let mut margin = (f64::INFINITY, 1);
    let mut factor = (f64::INFINITY, 0, 0.0, 0.0);
    for (number, edge) in feet.numbered() {
        let (restoring, overturning) = moments_kg_mm(feet, edge, &weights);
        // The difference of the moments keeps its digits next to tipping, where the centre's place less the
        // edge's would not.
        let inside = if mass > 0.0 { (restoring - overturning) / mass } else { feet.apothem_mm };
        if inside < margin.0 {
            margin = (inside, number);
        }
        if overturning > 0.0 && restoring / overturning < factor.0 {
            factor = (restoring / overturning, number, restoring, overturning);
        }
    }
    if factor.1 == 0 {
        factor.1 = margin.1;
        let edge = feet.numbered().find(|(number, _)| *number == margin.1);
        factor.2 = edge.map_or(0.0, |(_, edge)| moments_kg_mm(feet, edge, &weights).0);
    }
    let spacing = 360.0 / f64::from(feet.count);
    let unbalanced = [loads.boom, weights[0], weights[2]];
    let moment = |of: fn(&Weight) -> f64| unbalanced.iter().map(|w| w.mass_kg * of(w)).sum::<f64>();
    let clamp = if placement.boom_used { hypot(moment(|w| w.x_mm), moment(|w| w.y_mm)) } else { 0.0 };
    let towards = placement.towards;
    let left = Direction { x: -towards.y, y: towards.x, z: 0.0 };
    Standing {
        total_mass_kg: mass,
        centre: placement.column.along(towards, x).along(left, y).at_height(z),
        margin_mm: margin.0,
        margin_edge: margin.1,
        factor: factor.0,
        factor_edge: factor.1,
        factor_edge_direction_deg: turn_deg(feet.first_leg_deg + (f64::from(factor.1) - 0.5) * spacing),
        restoring_moment_n_m: factor.2 * NEWTON_METRES,
        overturning_moment_n_m: factor.3 * NEWTON_METRES,
        tilt_to_tip_deg: atan2_deg(margin.0, z),
        push_to_tip_n: push_to_tip_n(mass, margin.0, push_height_mm),
        clamp_moment_n_m: clamp * NEWTON_METRES,
    }
}

/// The sideways push at a height that tips a mass standing with a margin: m g × margin / height; infinite
/// at floor height.
pub fn push_to_tip_n(mass_kg: f64, margin_mm: f64, height_mm: f64) -> f64 {
    if height_mm > 0.0 { mass_kg * STANDARD_GRAVITY * margin_mm / height_mm } else { f64::INFINITY }
}

/// The payload that would tip the rig, and the share of it used.
pub fn payload_to_tip(feet: &Feet, loads: &Loads) -> (f64, f64) {
    let payload = &loads.payload;
    let rest = loads.in_state(RigState::CameraOff);
    let mut to_tip = f64::INFINITY;
    for (_, edge) in feet.numbered() {
        let outside = -feet.inside_mm(edge, payload.x_mm, payload.y_mm);
        if outside > 0.0 {
            let (restoring, overturning) = moments_kg_mm(feet, edge, &rest);
            to_tip = to_tip.min((restoring - overturning).max(0.0) / outside);
        }
    }
    let share = if payload.mass_kg > 0.0 { payload.mass_kg / to_tip } else { 0.0 };
    (to_tip, share)
}

/// How a placed rig stands in its three states, a push being taken at the pivot.
pub fn stability(feet: &Feet, loads: &Loads, placement: &Placement, pivot_height_mm: f64) -> Stability {
    let state = |state| standing(feet, loads, state, placement, pivot_height_mm);
    let (payload_to_tip_kg, payload_share) = payload_to_tip(feet, loads);
    Stability {
        as_shot: state(RigState::AsShot),
        camera_off: state(RigState::CameraOff),
        counterweight_off: state(RigState::CounterweightOff),
        payload_to_tip_kg,
        payload_share,
    }
}
