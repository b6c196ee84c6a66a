//! What hangs on the rig: camera, lens and head as one weight, boom, counterweight, column, base and bags.
//!
//! In the rig's own coordinates x points from the column along the boom (without a boom: to the table) and
//! y to its left, z up from the floor.

use super::reach::Placement;
use super::support::{MOST_SANDBAGS, Support};
use crate::number::{STANDARD_GRAVITY, hypot, sin_cos_deg};
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
        if bag.mass_kg == 0.0 {
            return none;
        }
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
    /// Payload, boom and counterweight, each with whether it is on in a state.
    pub(crate) fn on_the_boom(&self, state: RigState) -> [(&Weight, bool); 3] {
        [
            (&self.payload, state != RigState::CameraOff),
            (&self.boom, true),
            (&self.counterweight, state != RigState::CounterweightOff),
        ]
    }

    /// Whole mass and centre of gravity in each state, by its number.
    pub(crate) fn centres(&self) -> [Weight; 3] {
        let mut fixed = Sum::of(&self.boom);
        for weight in self.rest.iter().filter(|weight| weight.mass_kg > 0.0) {
            fixed = fixed.and(Sum::of(weight));
        }
        let (payload, counterweight) = (Sum::of(&self.payload), Sum::of(&self.counterweight));
        [
            fixed.and(payload).and(counterweight).centre(),
            fixed.and(counterweight).centre(),
            fixed.and(payload).centre(),
        ]
    }
}

/// Weights together: their mass, and each coordinate times the mass.
#[derive(Clone, Copy)]
struct Sum {
    mass: f64,
    x: f64,
    y: f64,
    z: f64,
}

impl Sum {
    #[inline]
    fn of(weight: &Weight) -> Sum {
        let mass = weight.mass_kg;
        Sum { mass, x: mass * weight.x_mm, y: mass * weight.y_mm, z: mass * weight.z_mm }
    }

    #[inline]
    fn and(self, other: Sum) -> Sum {
        Sum { mass: self.mass + other.mass, x: self.x + other.x, y: self.y + other.y, z: self.z + other.z }
    }

    /// The whole at its centre of gravity; at the column's foot without mass.
    #[inline]
    fn centre(self) -> Weight {
        let Sum { mass, x, y, z } = self;
        if mass > 0.0 {
            Weight { mass_kg: mass, x_mm: x / mass, y_mm: y / mass, z_mm: z / mass }
        } else {
            Weight { mass_kg: 0.0, x_mm: 0.0, y_mm: 0.0, z_mm: 0.0 }
        }
    }
}
