//! What hangs on a rig as forces in the room, taken from the brief and the placed parts, and their moments
//! about the lines between the feet by vector products.

use tablerig::brief::Brief;
use tablerig::plan::Plan;
use tablerig::rig::weights::RigState;

use crate::space::{Vector, at, cross, dot, minus, on_floor, plus, turned, unit, way};

/// Standard gravity (3rd CGPM, 1901).
pub(crate) const GRAVITY: f64 = 9.80665;

/// A mass in the room.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Mass {
    pub(crate) kg: f64,
    pub(crate) place: Vector,
}

/// The three states, in the library's order.
pub(crate) const STATES: [RigState; 3] = [RigState::AsShot, RigState::CameraOff, RigState::CounterweightOff];

/// The centre of several masses, as one.
pub(crate) fn together(masses: &[Mass]) -> Mass {
    let kg = masses.iter().map(|mass| mass.kg).sum();
    let sum = masses.iter().fold([0.0; 3], |sum, mass| plus(sum, mass.place, mass.kg));
    Mass { kg, place: if kg > 0.0 { sum.map(|part| part / kg) } else { sum } }
}

/// Camera, lens and head, each at its own place on the axis.
pub(crate) fn payload(brief: &Brief, plan: &Plan) -> Mass {
    let (sensor, forward) = (at(plan.pose.sensor), way(plan.pose.forward));
    let ahead = |kg, ahead_mm| Mass { kg, place: plus(sensor, forward, ahead_mm) };
    together(&[
        ahead(brief.camera.mass_kg, brief.camera.centre_ahead_mm),
        ahead(brief.lens.mass_kg, brief.lens.centre_ahead_mm),
        ahead(brief.support.head.mass_kg, brief.camera.socket_ahead_mm),
    ])
}

/// Where boom and column meet.
pub(crate) fn clamp(plan: &Plan) -> Vector {
    on_floor(plan.placement.column, plan.placement.clamp_height_mm)
}

/// Boom and counterweight, without mass where there is none.
pub(crate) fn boom_and_counterweight(brief: &Brief, plan: &Plan) -> [Mass; 2] {
    let (Some(boom), Some(end)) = (&brief.support.boom, plan.placement.tail_end) else {
        return [Mass { kg: 0.0, place: clamp(plan) }; 2];
    };
    let (end, pivot) = (at(end), at(plan.pose.pivot));
    let middle = plus(end, minus(pivot, end), 0.5);
    let pitch = boom.pitch_deg.to_radians();
    let towards = way(plan.placement.towards);
    let along = [towards[0] * pitch.cos(), towards[1] * pitch.cos(), pitch.sin()];
    let out = boom.counterweight_out_mm.unwrap_or(boom.tail_mm);
    [
        Mass { kg: boom.mass_kg, place: middle },
        Mass { kg: boom.counterweight_kg, place: plus(clamp(plan), along, -out) },
    ]
}

/// Everything that is on in a state, the payload as one.
pub(crate) fn masses(brief: &Brief, plan: &Plan, state: RigState) -> Vec<Mass> {
    let support = &brief.support;
    let column = |kg, height_mm| Mass { kg, place: on_floor(plan.placement.column, height_mm) };
    let [boom, counterweight] = boom_and_counterweight(brief, plan);
    let mut all = vec![
        column(support.mass_kg, support.centre_height_mm),
        column(support.base_mass_kg, support.base_height_mm),
        boom,
    ];
    if state != RigState::CameraOff {
        all.push(payload(brief, plan));
    }
    if state != RigState::CounterweightOff {
        all.push(counterweight);
    }
    for bag in &support.sandbags {
        let out = turned(way(plan.placement.towards), [0.0, 0.0, 1.0], bag.direction_deg);
        all.push(Mass { kg: bag.mass_kg, place: plus(column(0.0, bag.height_mm).place, out, bag.out_mm) });
    }
    all
}

/// A line over which the rig may fall: from one foot to the next, the rig on its left.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Line {
    pub(crate) foot: Vector,
    pub(crate) along: Vector,
}

impl Line {
    /// Moment in newton metres of a weight about the line, positive where it holds the rig down.
    pub(crate) fn holds(&self, mass: &Mass) -> f64 {
        let weight = [0.0, 0.0, -mass.kg * GRAVITY];
        -dot(cross(minus(mass.place, self.foot), weight), self.along) / 1000.0
    }

    /// Restoring and overturning moment of several weights.
    pub(crate) fn moments(&self, masses: &[Mass]) -> [f64; 2] {
        let each = || masses.iter().map(|mass| self.holds(mass));
        [each().filter(|moment| *moment > 0.0).sum(), -each().filter(|moment| *moment < 0.0).sum::<f64>()]
    }
}

/// The lines between the feet as they stand on the floor.
pub(crate) fn lines(plan: &Plan) -> Vec<Line> {
    let count = plan.placement.leg_count as usize;
    let foot = |leg: usize| on_floor(plan.placement.feet[leg % count], 0.0);
    (0..count).map(|leg| Line { foot: foot(leg), along: unit(minus(foot(leg + 1), foot(leg))) }).collect()
}
