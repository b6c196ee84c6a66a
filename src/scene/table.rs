//! The table: a rectangle above the origin, its front edge towards -y.

use crate::fault::Fault;
use crate::number::{Extremes, hypot};
use crate::range;
use crate::vector::{Direction, FloorPoint};

/// What is under the table top.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "text", derive(serde::Serialize), serde(rename_all = "snake_case"))]
#[repr(i32)]
pub enum Underside {
    /// Feet of a stand pass under the top.
    Open = 0,
    /// A plinth or a cabinet: feet stay outside.
    Closed = 1,
}

/// One of the table's edges, and the side of it on which a stand can be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "text", derive(serde::Serialize), serde(rename_all = "snake_case"))]
#[repr(i32)]
pub enum Side {
    /// Towards -y.
    Front = 0,
    /// Towards +x.
    Right = 1,
    /// Towards +y.
    Back = 2,
    /// Towards -x.
    Left = 3,
}

impl Side {
    /// All four, counter-clockwise from the front.
    pub const ALL: [Side; 4] = [Side::Front, Side::Right, Side::Back, Side::Left];

    /// The direction from this side into the table, square to the edge.
    pub fn inwards(self) -> Direction {
        match self {
            Side::Front => Direction { x: 0.0, y: 1.0, z: 0.0 },
            Side::Right => Direction { x: -1.0, y: 0.0, z: 0.0 },
            Side::Back => Direction { x: 0.0, y: -1.0, z: 0.0 },
            Side::Left => Direction { x: 1.0, y: 0.0, z: 0.0 },
        }
    }
}

/// A rectangular table, its centre above the origin.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Table {
    /// Along the front edge.
    pub width_mm: f64,
    /// From the front edge to the back edge.
    pub depth_mm: f64,
    /// The top above the floor.
    pub height_mm: f64,
    /// What is under the top.
    pub underside: Underside,
}

impl Table {
    /// Refuses a field that is not finite or out of its range (see [`crate::range`]).
    pub fn check(&self) -> Result<(), Fault> {
        range::TABLE_WIDTH_MM.check(self.width_mm)?;
        range::TABLE_DEPTH_MM.check(self.depth_mm)?;
        range::TABLE_HEIGHT_MM.check(self.height_mm).map(|_| ())
    }

    /// How far a place seen from above lies outside the edge of a side: positive outside, negative over
    /// the table or beyond.
    pub fn outside_edge_mm(&self, side: Side, place: FloorPoint) -> f64 {
        match side {
            Side::Front => -place.y_mm - 0.5 * self.depth_mm,
            Side::Right => place.x_mm - 0.5 * self.width_mm,
            Side::Back => place.y_mm - 0.5 * self.depth_mm,
            Side::Left => -place.x_mm - 0.5 * self.width_mm,
        }
    }

    /// Distance from a place seen from above to the nearest edge: positive outside the table, negative
    /// over it.
    pub fn from_nearest_edge_mm(&self, place: FloorPoint) -> f64 {
        let across = place.x_mm.abs() - 0.5 * self.width_mm;
        let along = place.y_mm.abs() - 0.5 * self.depth_mm;
        if across > 0.0 && along > 0.0 { hypot(across, along) } else { across.larger(along) }
    }

    /// Where a level line from a place, `direction` being its unit, comes over the table and leaves it, as
    /// distances along it; `None` where it misses it or has left it behind. From over the table it enters
    /// at 0.
    pub(crate) fn crossing_mm(&self, from: FloorPoint, direction: Direction) -> Option<(f64, f64)> {
        let (mut enter, mut leave) = (0.0_f64, f64::INFINITY);
        for (at, per_mm, half) in
            [(from.x_mm, direction.x, 0.5 * self.width_mm), (from.y_mm, direction.y, 0.5 * self.depth_mm)]
        {
            if per_mm == 0.0 {
                if at.abs() > half {
                    return None;
                }
            } else {
                let (a, b) = ((-half - at) / per_mm, (half - at) / per_mm);
                enter = enter.larger(a.smaller(b));
                leave = leave.smaller(a.larger(b));
            }
        }
        if enter < leave { Some((enter, leave)) } else { None }
    }

    /// The four corners of the top, counter-clockwise seen from above from the front left one.
    pub fn corners(&self) -> [FloorPoint; 4] {
        let (x, y) = (0.5 * self.width_mm, 0.5 * self.depth_mm);
        [
            FloorPoint { x_mm: -x, y_mm: -y },
            FloorPoint { x_mm: x, y_mm: -y },
            FloorPoint { x_mm: x, y_mm: y },
            FloorPoint { x_mm: -x, y_mm: y },
        ]
    }

    /// The two ends of a side's edge.
    pub fn edge(&self, side: Side) -> (FloorPoint, FloorPoint) {
        let [a, b, c, d] = self.corners();
        match side {
            Side::Front => (a, b),
            Side::Right => (b, c),
            Side::Back => (c, d),
            Side::Left => (d, a),
        }
    }
}
