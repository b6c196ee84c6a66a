//! Points and directions in the room.
//!
//! The origin is on the floor under the centre of the table: x to the right as seen from the table's
//! front edge, y away from the front edge, z up. Lengths are millimetres.

use crate::number::{sin_cos_deg, sqrt};

/// A place in the room.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Point {
    /// Along the table's width, to the right seen from the front edge.
    pub x_mm: f64,
    /// Along the table's depth, away from the front edge.
    pub y_mm: f64,
    /// Above the floor.
    pub z_mm: f64,
}

/// A place seen from above, on the floor or on the table.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct FloorPoint {
    /// Along the table's width, to the right seen from the front edge.
    pub x_mm: f64,
    /// Along the table's depth, away from the front edge.
    pub y_mm: f64,
}

/// A direction, or a difference of two places, without unit of its own.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Direction {
    /// Component along the table's width.
    pub x: f64,
    /// Component along the table's depth.
    pub y: f64,
    /// Upward component.
    pub z: f64,
}

impl Point {
    /// The place `distance_mm` from here along `direction` (a direction of length one).
    pub fn along(self, direction: Direction, distance_mm: f64) -> Point {
        Point {
            x_mm: self.x_mm + distance_mm * direction.x,
            y_mm: self.y_mm + distance_mm * direction.y,
            z_mm: self.z_mm + distance_mm * direction.z,
        }
    }

    /// The difference from this place to `other`, in millimetres.
    pub fn to(self, other: Point) -> Direction {
        Direction { x: other.x_mm - self.x_mm, y: other.y_mm - self.y_mm, z: other.z_mm - self.z_mm }
    }

    /// The place seen from above.
    pub fn floor(self) -> FloorPoint {
        FloorPoint { x_mm: self.x_mm, y_mm: self.y_mm }
    }
}

impl FloorPoint {
    /// The origin: under the centre of the table.
    pub const ORIGIN: FloorPoint = FloorPoint { x_mm: 0.0, y_mm: 0.0 };

    /// The place `distance_mm` from here along the horizontal part of `direction`.
    pub fn along(self, direction: Direction, distance_mm: f64) -> FloorPoint {
        FloorPoint {
            x_mm: self.x_mm + distance_mm * direction.x,
            y_mm: self.y_mm + distance_mm * direction.y,
        }
    }

    /// The same place at a height above the floor.
    pub fn at_height(self, z_mm: f64) -> Point {
        Point { x_mm: self.x_mm, y_mm: self.y_mm, z_mm }
    }
}

impl Direction {
    /// The scalar product.
    pub fn dot(self, other: Direction) -> f64 {
        self.x * other.x + self.y * other.y + self.z * other.z
    }

    /// This direction turned about the vertical by `angle_deg`, counter-clockwise seen from above.
    pub fn turned(self, angle_deg: f64) -> Direction {
        let (sin, cos) = sin_cos_deg(angle_deg);
        Direction { x: cos * self.x - sin * self.y, y: sin * self.x + cos * self.y, z: self.z }
    }
}

/// The shortest distance between two straight pieces, each given by its ends (Ericson, Real-Time Collision
/// Detection, 5.1.9).
pub(crate) fn between_pieces_mm(first: (Point, Point), second: (Point, Point)) -> f64 {
    let (u, v) = (first.0.to(first.1), second.0.to(second.1));
    let w = second.0.to(first.0);
    let (a, b, c, d, e) = (u.dot(u), u.dot(v), v.dot(v), u.dot(w), v.dot(w));
    let share = |of: f64, whole: f64| if whole > 0.0 { (of / whole).clamp(0.0, 1.0) } else { 0.0 };
    // Nearest on the first to the other's line; on the second to that; and on the first again, in case the
    // second's place had to move to an end.
    let along = share(b * e - c * d, a * c - b * b);
    let across = share(b * along + e, c);
    let along = share(b * across - d, a);
    let gap = second.0.along(v, across).to(first.0.along(u, along));
    sqrt(gap.dot(gap))
}
