//! Points and directions.

use super::border::mirror::mirror;
use crate::vector;
use crate::view::projection;

/// A place in the room: the origin is on the floor under the centre of the table.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Point {
    /// Along the table's width, to the right seen from the front edge.
    pub x_mm: f64,
    /// Along the table's depth, away from the front edge.
    pub y_mm: f64,
    /// Above the floor.
    pub z_mm: f64,
}
mirror!(both Point "point" vector::Point { x_mm, y_mm, z_mm });

/// A place seen from above, on the floor or on the table.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct FloorPoint {
    /// Along the table's width, to the right seen from the front edge.
    pub x_mm: f64,
    /// Along the table's depth, away from the front edge.
    pub y_mm: f64,
}
mirror!(both FloorPoint "floor_point" vector::FloorPoint { x_mm, y_mm });

/// A direction in the room, of length one.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Direction {
    /// Component along the table's width, to the right seen from the front edge.
    pub x: f64,
    /// Component along the table's depth, away from the front edge.
    pub y: f64,
    /// Upward component.
    pub z: f64,
}
mirror!(both Direction "direction" vector::Direction { x, y, z });

/// A place in the picture, measured in the plane through the aim point from the frame's centre.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct PicturePoint {
    /// To the right of the frame's centre.
    pub right_mm: f64,
    /// Above the frame's centre.
    pub up_mm: f64,
}
mirror!(both PicturePoint "picture_point" projection::PicturePoint { right_mm, up_mm });
