//! Questions asked the other way round: from a distance to a lens or a magnification.

use crate::doors::c::border::call::Door;
use crate::doors::c::border::refusal::name;
use crate::doors::c::optics::lens::Lens;
use crate::doors::c::status::Fault;
use crate::optics::inverse;

/// The focal length (unit focusing) that shows a frame of `frame_width_mm` from an entrance pupil
/// `pupil_distance_mm` from the aim point, on a used sensor width: also the lens that reproduces a viewpoint
/// found with the camera in the hand. TABLERIG_STATUS_NO_FOCAL_LENGTH where it would lie outside 1 to
/// 3000 mm.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_focal_length_for(
    pupil_distance_mm: f64,
    frame_width_mm: f64,
    used_width_mm: f64,
    pupil_ratio: f64,
    focal_length_mm: *mut f64,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(focal_length_mm, name!("focal_length_mm"))?;
        let focal_length =
            inverse::focal_length_for(pupil_distance_mm, frame_width_mm, used_width_mm, pupil_ratio)?;
        out.put(&focal_length)
    })
}

/// The magnification at which a lens is focused on something `sensor_distance_mm` from the sensor.
/// TABLERIG_STATUS_NO_FOCUS where the lens does not focus so near.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_magnification_at(
    lens: *const Lens,
    sensor_distance_mm: f64,
    magnification: *mut f64,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(magnification, name!("magnification"))?;
        let lens = door.part(lens)?;
        let magnification = inverse::magnification_at(&lens, sensor_distance_mm)?;
        out.put(&magnification)
    })
}
