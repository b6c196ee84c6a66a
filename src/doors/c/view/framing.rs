//! Frame widths solved for.

use crate::doors::c::border::call::{Door, entered};
use crate::doors::c::border::refusal::name;
use crate::doors::c::optics::camera::Camera;
use crate::doors::c::optics::lens::Lens;
use crate::doors::c::optics::sensor::UsedArea;
use crate::doors::c::scene::subject::Subject;
use crate::doors::c::status::Fault;
use crate::doors::c::view::outline::orientation;
use crate::optics::sensor;
use crate::range;
use crate::view::framing;

/// The frame width at which the subject fills the wanted share, 0.01 to 1, of the frame's width or height;
/// `fill` is a TablerigFill. TABLERIG_STATUS_NO_FRAME_WIDTH where none of 1 to 100000 mm does.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_frame_width_for_fill(
    fill: i32,
    share: f64,
    lens: *const Lens,
    used: *const UsedArea,
    subject: *const Subject,
    aim_height_mm: f64,
    elevation_deg: f64,
    bearing_deg: f64,
    frame_width_mm: *mut f64,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(frame_width_mm, name!("frame_width_mm"))?;
        let lens = door.part(lens)?;
        let used: sensor::UsedArea = door.value(used, name!("used"))?;
        let subject = door.part(subject)?;
        let fill: framing::Fill = entered(&fill, name!("fill"))?;
        let share = match fill {
            framing::Fill::Width => range::FILL_WIDTH.check(share)?,
            framing::Fill::Height => range::FILL_HEIGHT.check(share)?,
        };
        range::USED_WIDTH_MM.check(used.width_mm)?;
        range::USED_HEIGHT_MM.check(used.height_mm)?;
        let aim_height = range::AIM_HEIGHT_MM.check(aim_height_mm)?;
        let at = orientation(elevation_deg, bearing_deg)?;
        let width = framing::frame_width_for_fill(fill, share, &lens, &used, &subject, aim_height, &at)?;
        out.put(&width)
    })
}

/// The largest frame width that keeps camera and pivot under a ceiling, from which its clearance has already
/// been taken off; infinite where the camera fits at any distance, level or looking up. A boom that rises
/// behind the camera, or its tail, may be higher still: a plan checks those.
/// TABLERIG_STATUS_NO_ROOM_UNDER_CEILING where the camera does not fit even at its closest focus.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_largest_frame_width(
    ceiling_mm: f64,
    aim_height_above_floor_mm: f64,
    elevation_deg: f64,
    camera: *const Camera,
    lens: *const Lens,
    used: *const UsedArea,
    pivot_below_socket_mm: f64,
    frame_width_mm: *mut f64,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(frame_width_mm, name!("frame_width_mm"))?;
        let camera = door.part(camera)?;
        let lens = door.part(lens)?;
        let used: sensor::UsedArea = door.value(used, name!("used"))?;
        let at = orientation(elevation_deg, 0.0)?;
        let width = framing::largest_frame_width_mm(
            ceiling_mm,
            aim_height_above_floor_mm,
            &at,
            &lens,
            &used,
            &camera,
            pivot_below_socket_mm,
        )?;
        out.put(&width)
    })
}
