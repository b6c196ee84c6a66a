//! Will it stand: weights, feet, margins and factors.

use super::reach::Placement;
use super::support::{MOST_LEGS, MOST_SANDBAGS, Support};
use crate::doors::c::border::argument;
use crate::doors::c::border::call::{Door, entered};
use crate::doors::c::border::mirror::mirror;
use crate::doors::c::border::refusal::{Refusal, name};
use crate::doors::c::optics::camera::Camera;
use crate::doors::c::optics::lens::Lens;
use crate::doors::c::point::Point;
use crate::doors::c::status::Fault;
use crate::doors::c::view::pose::Pose;
use crate::range;
use crate::rig::{feet, stability, weights};
use crate::view::pose;

/// Weights on a rig besides payload, boom and counterweight: column and legs, base, sandbags.
pub const RESTING_WEIGHTS: usize = 6;

const _: () = assert!(RESTING_WEIGHTS == 2 + MOST_SANDBAGS);

/// Camera, lens and head as one weight on the lens axis.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Payload {
    /// Mass of camera, lens and head.
    pub mass_kg: f64,
    /// Their centre of gravity ahead of the sensor, on the axis.
    pub centre_ahead_mm: f64,
    /// That centre in the room.
    pub centre: Point,
    /// Moment at the head's pivot: payload weight x its centre's horizontal distance from the pivot.
    pub head_moment_n_m: f64,
}
mirror!(both Payload "payload" weights::Payload { mass_kg, centre_ahead_mm, centre, head_moment_n_m });

/// A weight in the rig's own coordinates: x from the column's axis along the boom (without one: towards the
/// table), y to its left, z up from the floor.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
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
mirror!(both Weight "weight" weights::Weight { mass_kg, x_mm, y_mm, z_mm });

/// What hangs on the rig.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Loads {
    /// Camera, lens and head.
    pub payload: Weight,
    /// The boom; without mass if there is none.
    pub boom: Weight,
    /// The counterweight; without mass if there is none.
    pub counterweight: Weight,
    /// Column and legs, the weight on the base, and the sandbags.
    pub rest: [Weight; RESTING_WEIGHTS],
}
mirror!(both Loads "loads" weights::Loads { payload, boom, counterweight, rest });

/// An edge of the polygon of feet: its outward direction in the rig's own coordinates.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Edge {
    /// Component along the boom.
    pub x: f64,
    /// Component to the boom's left.
    pub y: f64,
}
mirror!(both Edge "edge" feet::Edge { x, y });

/// The feet as a polygon around the column.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Feet {
    /// How many.
    pub count: u32,
    /// 0.
    pub reserved: i32,
    /// The edges, the first `count` of them: number 1 lies between the first leg and the next.
    pub edges: [Edge; MOST_LEGS],
    /// From the column's axis to each edge.
    pub apothem_mm: f64,
    /// The first leg's direction from the boom's, counter-clockwise.
    pub first_leg_deg: f64,
}
mirror!(both Feet "feet" feet::Feet { edges, count, apothem_mm, first_leg_deg } spare reserved);

/// How the rig stands in one state.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Standing {
    /// The edge with the smallest margin, counted from 1: between the leg of that number and the next.
    pub margin_edge: u32,
    /// The edge with the smallest factor; that of the margin where the factor is infinite.
    pub factor_edge: u32,
    /// Everything that stands on the feet.
    pub total_mass_kg: f64,
    /// The whole centre of gravity, in the room.
    pub centre: Point,
    /// The centre of gravity inside the nearest edge; negative: it tips.
    pub margin_mm: f64,
    /// Smallest restoring over overturning moment about an edge; infinite where no weight hangs outside.
    pub factor: f64,
    /// The outward direction of the edge of that factor, counter-clockwise from the boom's.
    pub factor_edge_direction_deg: f64,
    /// Moment that restores about that edge.
    pub restoring_moment_n_m: f64,
    /// Moment that overturns about that edge.
    pub overturning_moment_n_m: f64,
    /// The tilt of the floor that tips it, in the worst direction.
    pub tilt_to_tip_deg: f64,
    /// The sideways push at the pivot that tips it, in the worst direction; infinite at floor height.
    pub push_to_tip_n: f64,
    /// What the boom leaves unbalanced at the clamp; 0 without a boom.
    pub clamp_moment_n_m: f64,
}
mirror!(out Standing "standing" stability::Standing {
    total_mass_kg,
    centre,
    margin_mm,
    margin_edge,
    factor,
    factor_edge,
    factor_edge_direction_deg,
    restoring_moment_n_m,
    overturning_moment_n_m,
    tilt_to_tip_deg,
    push_to_tip_n,
    clamp_moment_n_m,
});

/// How the rig stands: the three states, and the payload against the one that would tip it. These are
/// computed figures: the makers' ratings rule, and local codes and a qualified rigger decide.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Stability {
    /// Everything on.
    pub as_shot: Standing,
    /// Camera, lens and head off, counterweight on.
    pub camera_off: Standing,
    /// Counterweight off, camera on.
    pub counterweight_off: Standing,
    /// The payload (the whole of it) that would tip the rig; infinite where it hangs inside the feet.
    pub payload_to_tip_kg: f64,
    /// The payload over that; infinite where the rig tips without any.
    pub payload_share: f64,
}
mirror!(out Stability "stability" stability::Stability {
    as_shot,
    camera_off,
    counterweight_off,
    payload_to_tip_kg,
    payload_share,
});

impl Door {
    /// Feet as many as a support may have, around the column.
    pub(crate) fn feet(&mut self, feet: *const Feet) -> Result<feet::Feet, Refusal> {
        let feet: feet::Feet = self.value(feet, name!("feet"))?;
        argument::FEET_COUNT.check(f64::from(feet.count))?;
        argument::APOTHEM_MM.check(feet.apothem_mm)?;
        Ok(feet)
    }
}

/// Camera, lens and head as one weight for a camera's pose; the head is taken to hang on the axis at the
/// socket.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_payload(
    camera: *const Camera,
    lens: *const Lens,
    head_mass_kg: f64,
    pose: *const Pose,
    payload: *mut Payload,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(payload, name!("payload"))?;
        let camera = door.part(camera)?;
        let lens = door.part(lens)?;
        let pose: pose::Pose = door.value(pose, name!("pose"))?;
        let head = range::HEAD_MASS_KG.check(head_mass_kg)?;
        out.put(&weights::payload(&camera, &lens, head, &pose))
    })
}

/// The weights of a placed rig in its own coordinates.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_loads(
    support: *const Support,
    placement: *const Placement,
    payload: *const Payload,
    loads: *mut Loads,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(loads, name!("loads"))?;
        let support = door.part(support)?;
        let placement = door.placement(placement)?;
        let payload: weights::Payload = door.value(payload, name!("payload"))?;
        argument::PAYLOAD_MASS_KG.check(payload.mass_kg)?;
        out.put(&weights::loads(&support, &placement, &payload))
    })
}

/// The polygon of `leg_count` feet, 3 to 8, evenly spaced on a circle, the first leg in a direction
/// counter-clockwise from the boom's.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_feet(
    leg_count: u32,
    foot_radius_mm: f64,
    first_leg_deg: f64,
    feet: *mut Feet,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(feet, name!("feet"))?;
        range::LEG_COUNT.check(f64::from(leg_count))?;
        let radius = range::FOOT_RADIUS_MM.check(foot_radius_mm)?;
        let first = range::FIRST_LEG_DEG.check(first_leg_deg)?;
        out.put(&feet::Feet::new(leg_count, radius, first))
    })
}

/// How the rig stands with the weights of one state on (a TablerigRigState), a push being taken
/// `push_height_mm` above the floor. The usual cautions for loads above tables and people go with it.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_standing(
    feet: *const Feet,
    loads: *const Loads,
    rig_state: i32,
    placement: *const Placement,
    push_height_mm: f64,
    standing: *mut Standing,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(standing, name!("standing"))?;
        let feet = door.feet(feet)?;
        let loads: weights::Loads = door.value(loads, name!("loads"))?;
        let placement = door.placement(placement)?;
        let state: weights::RigState = entered(&rig_state, name!("rig_state"))?;
        let height = argument::PIVOT_HEIGHT_MM.check(push_height_mm)?;
        out.put(&stability::standing(&feet, &loads, state, &placement, height))
    })
}

/// How a placed rig stands in its three states, a push being taken at the pivot, and the payload against the
/// one that would tip it. The usual cautions for loads above tables and people go with it.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_stability(
    feet: *const Feet,
    loads: *const Loads,
    placement: *const Placement,
    pivot_height_mm: f64,
    stability: *mut Stability,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(stability, name!("stability"))?;
        let feet = door.feet(feet)?;
        let loads: weights::Loads = door.value(loads, name!("loads"))?;
        let placement = door.placement(placement)?;
        let height = argument::PIVOT_HEIGHT_MM.check(pivot_height_mm)?;
        out.put(&stability::stability(&feet, &loads, &placement, height))
    })
}
