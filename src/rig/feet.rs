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

/// What restores and what overturns about an edge, in kilogram millimetres, neither under 0.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Turning {
    pub(crate) restoring: f64,
    pub(crate) overturning: f64,
}

impl Turning {
    const NONE: Turning = Turning { restoring: 0.0, overturning: 0.0 };

    /// Of a weight's moment, positive inside the edge.
    #[inline]
    pub(crate) fn of(moment: f64) -> Turning {
        Turning { restoring: moment.larger(0.0), overturning: (-moment).larger(0.0) }
    }

    #[inline]
    pub(crate) fn and(self, other: Turning) -> Turning {
        Turning {
            restoring: self.restoring + other.restoring,
            overturning: self.overturning + other.overturning,
        }
    }
}

/// Moments about one edge, by what can come off or move.
#[derive(Clone, Copy, Debug)]
pub(crate) struct EdgeMoments {
    payload: Turning,
    boom: Turning,
    counterweight: Turning,
    rest: Turning,
}

impl EdgeMoments {
    const NONE: EdgeMoments = EdgeMoments {
        payload: Turning::NONE,
        boom: Turning::NONE,
        counterweight: Turning::NONE,
        rest: Turning::NONE,
    };

    fn new(feet: &Feet, edge: &Edge, loads: &Loads) -> EdgeMoments {
        let of = |weight: &Weight| Turning::of(feet.moment(edge, weight));
        let mut rest = Turning::NONE;
        for weight in loads.rest.iter().filter(|weight| weight.mass_kg > 0.0) {
            rest = rest.and(of(weight));
        }
        EdgeMoments {
            payload: of(&loads.payload),
            boom: of(&loads.boom),
            counterweight: of(&loads.counterweight),
            rest,
        }
    }

    /// Restoring and overturning moment in a state.
    #[inline]
    pub(crate) fn in_state(&self, state: RigState) -> Turning {
        let fixed = self.rest.and(self.boom);
        match state {
            RigState::AsShot => fixed.and(self.payload).and(self.counterweight),
            RigState::CameraOff => fixed.and(self.counterweight),
            RigState::CounterweightOff => fixed.and(self.payload),
        }
    }

    /// What stays where it is when the reach changes.
    pub(crate) fn staying(&self) -> Turning {
        self.rest.and(self.counterweight)
    }
}

impl Feet {
    /// A weight's moment about an edge, positive inside it.
    #[inline]
    pub(crate) fn moment(&self, edge: &Edge, weight: &Weight) -> f64 {
        weight.mass_kg * self.inside_mm(edge, weight.x_mm, weight.y_mm)
    }

    /// The moments about every edge, the first `count` of them.
    pub(crate) fn moments(&self, loads: &Loads) -> [EdgeMoments; MOST_LEGS] {
        let mut moments = [EdgeMoments::NONE; MOST_LEGS];
        for ((_, edge), about) in self.numbered().zip(moments.iter_mut()) {
            *about = EdgeMoments::new(self, edge, loads);
        }
        moments
    }
}
