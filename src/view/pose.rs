//! Where entrance pupil, sensor, socket and pivot are.

use crate::number::{Extremes, sin_cos_deg};
use crate::optics::camera::Camera;
use crate::optics::lens::FocusedLens;
use crate::scene::table::Table;
use crate::vector::{Direction, Point};

/// The camera's own directions in the room, for an elevation and a bearing. Roll is zero: `right` is
/// level.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Orientation {
    /// Sine of the elevation.
    pub sin_elevation: f64,
    /// Cosine of the elevation, not negative; exactly 0 at 90 degrees.
    pub cos_elevation: f64,
    /// Sine of the bearing.
    pub sin_bearing: f64,
    /// Cosine of the bearing.
    pub cos_bearing: f64,
    /// The viewing direction.
    pub forward: Direction,
    /// To the right in the picture.
    pub right: Direction,
    /// Up in the picture.
    pub up: Direction,
}

impl Orientation {
    /// For an elevation in -60 to 90 degrees and any bearing in degrees.
    pub fn new(elevation_deg: f64, bearing_deg: f64) -> Orientation {
        Orientation::of(sin_cos_deg(elevation_deg), sin_cos_deg(bearing_deg))
    }

    /// From sine and cosine of elevation and bearing.
    #[inline]
    pub(crate) fn of((se, ce): (f64, f64), (sb, cb): (f64, f64)) -> Orientation {
        Orientation {
            sin_elevation: se,
            cos_elevation: ce,
            sin_bearing: sb,
            cos_bearing: cb,
            // Differences from 0, so that nothing comes out as -0.
            forward: Direction { x: 0.0 - sb * ce, y: cb * ce, z: 0.0 - se },
            right: Direction { x: cb, y: sb, z: 0.0 },
            up: Direction { x: 0.0 - sb * se, y: cb * se, z: ce },
        }
    }
}

/// Where the camera is. All heights are above the floor.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Pose {
    /// The viewing direction, length one.
    pub forward: Direction,
    /// To the right in the picture.
    pub right: Direction,
    /// Up in the picture.
    pub up: Direction,
    /// The point aimed at: on the axis and in the plane of focus.
    pub aim: Point,
    /// The entrance pupil, the centre of perspective.
    pub pupil: Point,
    /// The axis at the sensor.
    pub sensor: Point,
    /// The mounting socket.
    pub socket: Point,
    /// The head's pivot, which the support carries.
    pub pivot: Point,
    /// The highest point of body and lens; what meets the ceiling.
    pub body_top_mm: f64,
    /// From the aim point to the sensor, seen from above.
    pub sensor_from_aim_mm: f64,
    /// From the aim point to the pivot, seen from above, along the level direction from the aim point
    /// towards the camera; straight overhead, how far the pivot stands beside the axis.
    pub pivot_from_aim_mm: f64,
    /// From the nearest table edge to the sensor, seen from above; negative over the table.
    pub sensor_from_edge_mm: f64,
    /// From the nearest table edge to the pivot, seen from above; negative over the table.
    pub pivot_from_edge_mm: f64,
    /// Lens front to aim point, where the lens's front is known.
    pub front_clearance_mm: Option<f64>,
}

/// Where the camera is for a lens focused on the aim point: pupil E = T - s a, sensor S = T - D a, socket
/// S + ahead a - below u, pivot as far again below the socket.
pub fn pose(
    orientation: &Orientation,
    aim: Point,
    lens: &FocusedLens,
    front_from_sensor_mm: Option<f64>,
    camera: &Camera,
    pivot_below_socket_mm: f64,
    table: &Table,
) -> Pose {
    let Orientation { forward, right, up, sin_elevation: se, cos_elevation: ce, .. } = *orientation;
    let distance = lens.sensor_distance_mm;
    let sensor = aim.along(forward, -distance);
    let socket = sensor.along(forward, camera.socket_ahead_mm).along(up, -camera.socket_below_mm);
    let pivot = socket.along(up, -pivot_below_socket_mm);
    let below = camera.socket_below_mm + pivot_below_socket_mm;
    let back = camera.body_behind_mm * se;
    let front = -front_from_sensor_mm.unwrap_or(0.0) * se;
    Pose {
        forward,
        right,
        up,
        aim,
        pupil: aim.along(forward, -lens.pupil_distance_mm),
        sensor,
        socket,
        pivot,
        body_top_mm: sensor.z_mm + back.larger(front) + camera.body_above_mm * ce,
        sensor_from_aim_mm: distance * ce,
        pivot_from_aim_mm: (distance - camera.socket_ahead_mm) * ce + below * se,
        sensor_from_edge_mm: table.from_nearest_edge_mm(sensor.floor()),
        pivot_from_edge_mm: table.from_nearest_edge_mm(pivot.floor()),
        front_clearance_mm: front_from_sensor_mm.map(|front| distance - front),
    }
}
