//! The feet as a regular polygon around the column, and moments about its edges.

use super::support::MOST_LEGS;
use super::weights::{Loads, RigState, Weight};
use crate::number::{Extremes, sin_cos_deg};

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

/// Moments about one edge in the rig's three states, by the number of the state.
#[derive(Clone, Copy, Debug)]
pub(crate) struct EdgeMoments {
    states: [(f64, f64); 3],
}

impl EdgeMoments {
    /// Without any weight.
    pub(crate) const NONE: EdgeMoments = EdgeMoments { states: [(0.0, 0.0); 3] };

    /// Each weight's moment is reckoned once; the states differ in which they add.
    pub(crate) fn new(feet: &Feet, edge: &Edge, loads: &Loads) -> EdgeMoments {
        let moment = |weight: &Weight| weight.mass_kg * feet.inside_mm(edge, weight.x_mm, weight.y_mm);
        let split = |moment: f64| (moment.larger(0.0), (-moment).larger(0.0));
        let payload = split(moment(&loads.payload));
        let counterweight = split(moment(&loads.counterweight));
        let (mut restoring, mut overturning) = split(moment(&loads.boom));
        for weight in &loads.rest {
            let (restores, overturns) = split(moment(weight));
            restoring += restores;
            overturning += overturns;
        }
        let with = |a: (f64, f64), b: (f64, f64)| (restoring + a.0 + b.0, overturning + a.1 + b.1);
        let off = (0.0, 0.0);
        EdgeMoments { states: [with(payload, counterweight), with(off, counterweight), with(payload, off)] }
    }

    /// Restoring and overturning moment in a state, in kilogram millimetres.
    pub(crate) fn in_state(&self, state: RigState) -> (f64, f64) {
        match state {
            RigState::AsShot => self.states[0],
            RigState::CameraOff => self.states[1],
            RigState::CounterweightOff => self.states[2],
        }
    }
}
