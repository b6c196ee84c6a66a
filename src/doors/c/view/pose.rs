//! Where the camera is.

use crate::doors::c::border::argument;
use crate::doors::c::border::call::Door;
use crate::doors::c::border::mirror::mirror;
use crate::doors::c::border::refusal::name;
use crate::doors::c::optics::camera::Camera;
use crate::doors::c::optics::lens::Lens;
use crate::doors::c::point::{Direction, Point};
use crate::doors::c::scene::table::Table;
use crate::doors::c::status::Fault;
use crate::range;
use crate::vector;
use crate::view::pose;

/// Where the camera is. All heights are above the floor.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Pose {
    /// 1 where the lens's front is known: `front_clearance_mm` is there.
    pub has_front_clearance_mm: i32,
    /// 0.
    pub reserved: i32,
    /// The viewing direction.
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
    /// From the aim point to the pivot, seen from above, towards the camera; straight overhead, how far the
    /// pivot stands beside the axis.
    pub pivot_from_aim_mm: f64,
    /// From the nearest table edge to the sensor, seen from above; negative over the table.
    pub sensor_from_edge_mm: f64,
    /// From the nearest table edge to the pivot, seen from above; negative over the table.
    pub pivot_from_edge_mm: f64,
    /// Lens front to aim point.
    pub front_clearance_mm: f64,
}
mirror!(both Pose "pose" pose::Pose {
    forward,
    right,
    up,
    aim,
    pupil,
    sensor,
    socket,
    pivot,
    body_top_mm,
    sensor_from_aim_mm,
    pivot_from_aim_mm,
    sensor_from_edge_mm,
    pivot_from_edge_mm,
    front_clearance_mm: (has_front_clearance_mm, front_clearance_mm),
} spare reserved);

/// Where the camera is for a lens focused at a magnification on the aim point, seen from an elevation (-60
/// to 90) and a bearing, its head's pivot `pivot_below_socket_mm` below the socket.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_pose(
    camera: *const Camera,
    lens: *const Lens,
    table: *const Table,
    magnification: f64,
    elevation_deg: f64,
    bearing_deg: f64,
    aim: *const Point,
    pivot_below_socket_mm: f64,
    pose: *mut Pose,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(pose, name!("pose"))?;
        let camera = door.part(camera)?;
        let lens = door.part(lens)?;
        let table = door.part(table)?;
        let aim: vector::Point = door.value(aim, name!("aim"))?;
        let focused = lens.focused(argument::MAGNIFICATION.check(magnification)?);
        let elevation = range::ELEVATION_DEG.check(elevation_deg)?;
        let at = pose::Orientation::new(elevation, range::BEARING_DEG.check(bearing_deg)?);
        let below = range::PIVOT_BELOW_SOCKET_MM.check(pivot_below_socket_mm)?;
        out.put(&pose::pose(&at, aim, &focused, lens.front_from_sensor_mm, &camera, below, &table))
    })
}
