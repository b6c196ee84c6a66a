//! Plain vectors, angles and comparisons, written without the library's.

use proptest::prelude::prop_assert;
use proptest::test_runner::{TestCaseError, TestCaseResult};
use tablerig::fault::Fault;
use tablerig::vector::{Direction, FloorPoint, Point};

pub(crate) type Vector = [f64; 3];

pub(crate) fn at(point: Point) -> Vector {
    [point.x_mm, point.y_mm, point.z_mm]
}

pub(crate) fn on_floor(point: FloorPoint, z_mm: f64) -> Vector {
    [point.x_mm, point.y_mm, z_mm]
}

pub(crate) fn way(direction: Direction) -> Vector {
    [direction.x, direction.y, direction.z]
}

pub(crate) fn minus(a: Vector, b: Vector) -> Vector {
    [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
}

/// a + factor × b.
pub(crate) fn plus(a: Vector, b: Vector, factor: f64) -> Vector {
    [a[0] + factor * b[0], a[1] + factor * b[1], a[2] + factor * b[2]]
}

pub(crate) fn dot(a: Vector, b: Vector) -> f64 {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

pub(crate) fn cross(a: Vector, b: Vector) -> Vector {
    [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
}

pub(crate) fn length(a: Vector) -> f64 {
    dot(a, a).sqrt()
}

pub(crate) fn unit(a: Vector) -> Vector {
    let length = length(a);
    a.map(|part| part / length)
}

/// The angle between two vectors in degrees, good at every size.
pub(crate) fn angle_deg(a: Vector, b: Vector) -> f64 {
    length(cross(a, b)).atan2(dot(a, b)).to_degrees()
}

/// `v` turned about the axis through the origin along the unit vector `axis` (Rodrigues).
pub(crate) fn turned(v: Vector, axis: Vector, angle_deg: f64) -> Vector {
    let (sin, cos) = angle_deg.to_radians().sin_cos();
    let along = dot(axis, v) * (1.0 - cos);
    plus(plus(v.map(|part| part * cos), cross(axis, v), sin), axis, along)
}

/// Fails unless `found` lies within `allowed` of `expected`; two equal infinities agree.
pub(crate) fn agree(what: &str, found: f64, expected: f64, allowed: f64) -> TestCaseResult {
    let off = (found - expected).abs();
    let agrees = off <= allowed || found == expected;
    prop_assert!(agrees, "{what}: {found} for {expected}, off by {off:e} > {allowed:e}");
    Ok(())
}

/// What was asked for, or a failed case that says why there is none.
pub(crate) fn answer<T>(asked: Result<T, Fault>) -> Result<T, TestCaseError> {
    asked.map_err(|fault| TestCaseError::fail(fault.to_string()))
}
