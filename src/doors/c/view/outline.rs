//! The subject in the picture, and what shows of its top and contents.

use crate::doors::c::border::argument;
use crate::doors::c::border::call::Door;
use crate::doors::c::border::mirror::mirror;
use crate::doors::c::border::refusal::{Refusal, name};
use crate::doors::c::scene::subject::Subject;
use crate::doors::c::status::{Fault, Status};
use crate::range;
use crate::view::outline;
use crate::view::pose::Orientation;

/// Where the subject lies along the axis, from the aim point.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct SubjectDepth {
    /// Towards the camera to the subject's nearest part; negative where all of it lies behind.
    pub nearest_mm: f64,
    /// Away from the camera to its farthest part.
    pub farthest_mm: f64,
}
mirror!(both SubjectDepth "subject_depth" outline::SubjectDepth { nearest_mm, farthest_mm });

/// The subject's bounds in the picture, measured in the plane through the aim point from the frame's centre,
/// and what they leave.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Outline {
    /// Its leftmost part, positive to the right.
    pub left_mm: f64,
    /// Its rightmost part.
    pub right_mm: f64,
    /// Its lowest part, positive upwards.
    pub bottom_mm: f64,
    /// Its highest part.
    pub top_mm: f64,
    /// Its width / the frame's.
    pub fill_width: f64,
    /// Its height / the frame's.
    pub fill_height: f64,
    /// Frame left above it; negative where it is cut.
    pub room_above_mm: f64,
    /// Frame left below it.
    pub room_below_mm: f64,
    /// Frame left on its left.
    pub room_left_mm: f64,
    /// Frame left on its right.
    pub room_right_mm: f64,
}
mirror!(out Outline "outline" outline::Outline {
    left_mm,
    right_mm,
    bottom_mm,
    top_mm,
    fill_width,
    fill_height,
    room_above_mm,
    room_below_mm,
    room_left_mm,
    room_right_mm,
});

/// How much of what is seen is top, side or contents.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Shares {
    /// 1 where the subject is a vessel: `contents` is there.
    pub has_contents: i32,
    /// 1 where the subject is a vessel: `contents_from_far` is there.
    pub has_contents_from_far: i32,
    /// Top: sin e x top area / (sin e x top area + cos e x side area as seen from the bearing); 0 where the
    /// top is not seen.
    pub top: f64,
    /// Side: the rest.
    pub side: f64,
    /// Share of a vessel's contents that shows past the near wall, for the real camera.
    pub contents: f64,
    /// The same from far off.
    pub contents_from_far: f64,
}
mirror!(out Shares "shares" outline::Shares {
    top,
    side,
    contents: (has_contents, contents),
    contents_from_far: (has_contents_from_far, contents_from_far),
});

/// The subject's extent along the axis, seen from an elevation and a bearing; it stands centred under the
/// aim point, which is `aim_height_mm` above its foot.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_subject_depth(
    subject: *const Subject,
    aim_height_mm: f64,
    elevation_deg: f64,
    bearing_deg: f64,
    subject_depth: *mut SubjectDepth,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(subject_depth, name!("subject_depth"))?;
        let subject = door.part(subject)?;
        let aim_height = range::AIM_HEIGHT_MM.check(aim_height_mm)?;
        let at = orientation(elevation_deg, bearing_deg)?;
        out.put(&outline::subject_depth(&subject, aim_height, &at))
    })
}

/// The subject's outline in a frame of this size, drawn from an entrance pupil `pupil_distance_mm` from the
/// aim point. TABLERIG_STATUS_BEHIND_CAMERA where it reaches the entrance pupil's plane.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_outline(
    subject: *const Subject,
    aim_height_mm: f64,
    elevation_deg: f64,
    bearing_deg: f64,
    pupil_distance_mm: f64,
    frame_width_mm: f64,
    frame_height_mm: f64,
    outline: *mut Outline,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(outline, name!("outline"))?;
        let subject = door.part(subject)?;
        let aim_height = range::AIM_HEIGHT_MM.check(aim_height_mm)?;
        let at = orientation(elevation_deg, bearing_deg)?;
        let distance = argument::PUPIL_DISTANCE_MM.check(pupil_distance_mm)?;
        let width = range::FRAME_WIDTH_MM.check(frame_width_mm)?;
        let height = argument::FRAME_HEIGHT_MM.check(frame_height_mm)?;
        match outline::outline(&subject, aim_height, &at, distance, width, height) {
            Some(outline) => out.put(&outline),
            None => Err(Refusal::plain(Status::BehindCamera, name!("subject"))),
        }
    })
}

/// What shows of the subject's top, side and contents, from an entrance pupil `pupil_distance_mm` from the
/// aim point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_shares(
    subject: *const Subject,
    aim_height_mm: f64,
    elevation_deg: f64,
    bearing_deg: f64,
    pupil_distance_mm: f64,
    shares: *mut Shares,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(shares, name!("shares"))?;
        let subject = door.part(subject)?;
        let aim_height = range::AIM_HEIGHT_MM.check(aim_height_mm)?;
        let at = orientation(elevation_deg, bearing_deg)?;
        let distance = argument::PUPIL_DISTANCE_MM.check(pupil_distance_mm)?;
        out.put(&outline::shares(&subject, aim_height, &at, distance))
    })
}

/// The directions of a camera at an elevation and a bearing within their ranges.
pub(crate) fn orientation(elevation_deg: f64, bearing_deg: f64) -> Result<Orientation, Refusal> {
    let elevation = range::ELEVATION_DEG.check(elevation_deg)?;
    Ok(Orientation::new(elevation, range::BEARING_DEG.check(bearing_deg)?))
}
