//! How the picture will look.

use crate::doors::c::border::argument;
use crate::doors::c::border::call::Door;
use crate::doors::c::border::mirror::mirror;
use crate::doors::c::border::refusal::name;
use crate::doors::c::scene::subject::Subject;
use crate::doors::c::status::Fault;
use crate::doors::c::view::outline::orientation;
use crate::range;
use crate::view::{outline, perspective};

/// What perspective does to the picture.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Perspective {
    /// 0 where the subject reaches the entrance pupil, else 1: `size_ratio` is there.
    pub has_size_ratio: i32,
    /// 0 where the subject reaches the entrance pupil, else 1: `convergence` is there.
    pub has_convergence: i32,
    /// Stretch of a small sphere at the frame's side, 1 / cos of its angle off the axis.
    pub side_stretch: f64,
    /// Stretch at the frame's corner.
    pub corner_stretch: f64,
    /// Image size of the subject's nearest part over that of its farthest.
    pub size_ratio: f64,
    /// Convergence of uprights: image scale at the subject's top over that at its foot, on its axis.
    pub convergence: f64,
}
mirror!(out Perspective "perspective" perspective::Perspective {
    side_stretch,
    corner_stretch,
    size_ratio: (has_size_ratio, size_ratio),
    convergence: (has_convergence, convergence),
});

/// Perspective of a frame of this size seen from an entrance pupil `pupil_distance_mm` from the aim point,
/// and of a subject under it.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_perspective(
    subject: *const Subject,
    aim_height_mm: f64,
    elevation_deg: f64,
    bearing_deg: f64,
    pupil_distance_mm: f64,
    frame_width_mm: f64,
    frame_height_mm: f64,
    perspective: *mut Perspective,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(perspective, name!("perspective"))?;
        let subject = door.part(subject)?;
        let aim_height = range::AIM_HEIGHT_MM.check(aim_height_mm)?;
        let at = orientation(elevation_deg, bearing_deg)?;
        let distance = argument::PUPIL_DISTANCE_MM.check(pupil_distance_mm)?;
        let width = range::FRAME_WIDTH_MM.check(frame_width_mm)?;
        let height = argument::FRAME_HEIGHT_MM.check(frame_height_mm)?;
        let depth = outline::subject_depth(&subject, aim_height, &at);
        let (tall, sin) = (subject.height_mm, at.sin_elevation);
        out.put(&perspective::perspective(distance, width, height, &depth, tall, aim_height, sin))
    })
}

/// The corner stretch of a 60 mm lens on 36 x 24 mm: under it, a straight-on picture does not show stretch,
/// whatever the sensor (common practice, no source).
#[unsafe(no_mangle)]
pub extern "C" fn tablerig_straight_on_stretch_limit() -> f64 {
    perspective::straight_on_stretch_limit()
}
