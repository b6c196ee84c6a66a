//! Points into the picture, lines of sight out of it, and what of a shape lies inside the frame.

use crate::doors::c::border::argument;
use crate::doors::c::border::call::Door;
use crate::doors::c::border::mirror::mirror;
use crate::doors::c::border::refusal::{Refusal, name};
use crate::doors::c::point::{PicturePoint, Point};
use crate::doors::c::status::{Fault, Status};
use crate::doors::c::view::pose::Pose;
use crate::range;
use crate::vector;
use crate::view::projection;

/// The frame as seen from the entrance pupil. Made from a plan by `{ plan.pose, plan.lens.pupil_distance_mm,
/// plan.frame_width_mm, plan.frame_height_mm }`.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct View {
    /// The camera's place and directions.
    pub pose: Pose,
    /// Aim point to entrance pupil.
    pub pupil_distance_mm: f64,
    /// Width of the frame in the plane through the aim point.
    pub frame_width_mm: f64,
    /// Height of the frame in that plane.
    pub frame_height_mm: f64,
}
mirror!(both View "view" projection::View { pose, pupil_distance_mm, frame_width_mm, frame_height_mm });

impl Door {
    /// A view whose distances are over 0.
    pub(crate) fn view(&mut self, view: *const View) -> Result<projection::View, Refusal> {
        let view: projection::View = self.value(view, name!("view"))?;
        argument::PUPIL_DISTANCE_MM.check(view.pupil_distance_mm)?;
        range::FRAME_WIDTH_MM.check(view.frame_width_mm)?;
        argument::FRAME_HEIGHT_MM.check(view.frame_height_mm)?;
        Ok(view)
    }
}

/// Where a place in the room appears in the picture. TABLERIG_STATUS_BEHIND_CAMERA at or behind the entrance
/// pupil's plane. It may lie outside the frame.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_project(
    view: *const View,
    place: *const Point,
    picture: *mut PicturePoint,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(picture, name!("picture"))?;
        let view = door.view(view)?;
        let place: vector::Point = door.value(place, name!("place"))?;
        match view.project(place) {
            Some(point) => out.put(&point),
            None => Err(Refusal::plain(Status::BehindCamera, name!("place"))),
        }
    })
}

/// Distance along the axis from the entrance pupil to a place; negative behind the camera.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_depth(
    view: *const View,
    place: *const Point,
    depth_mm: *mut f64,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(depth_mm, name!("depth_mm"))?;
        let view = door.view(view)?;
        let place: vector::Point = door.value(place, name!("place"))?;
        out.put(&view.depth_mm(place))
    })
}

/// Where the line of sight through a place in the picture meets the level plane `z_mm` above the floor.
/// TABLERIG_STATUS_NOT_MET where it runs level or away from it, or the entrance pupil lies in it.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_cast_onto_level(
    view: *const View,
    picture: *const PicturePoint,
    z_mm: f64,
    place: *mut Point,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(place, name!("place"))?;
        let view = door.view(view)?;
        let picture: projection::PicturePoint = door.value(picture, name!("picture"))?;
        let z = argument::Z_MM.check(z_mm)?;
        match view.cast_onto_level(picture, z) {
            Some(point) => out.put(&point),
            None => Err(Refusal::plain(Status::NotMet, name!("z_mm"))),
        }
    })
}

/// Share of the picture, 0 to 1, that a flat convex shape of four corners in the room covers, were nothing
/// before it. The corners go around it; `corners` is an array of four.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_covered_share(
    view: *const View,
    corners: *const Point,
    share: *mut f64,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(share, name!("share"))?;
        let view = door.view(view)?;
        let corners: [vector::Point; 4] = door.value(corners.cast::<[Point; 4]>(), name!("corners"))?;
        out.put(&view.covered_share(corners))
    })
}

/// Length of the part of a straight line between two places that lies inside the frame and in front of the
/// entrance pupil; 0 where none does.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_length_in_frame(
    view: *const View,
    from: *const Point,
    to: *const Point,
    length_mm: *mut f64,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(length_mm, name!("length_mm"))?;
        let view = door.view(view)?;
        let from: vector::Point = door.value(from, name!("from"))?;
        let to: vector::Point = door.value(to, name!("to"))?;
        out.put(&view.length_in_frame_mm(from, to))
    })
}
