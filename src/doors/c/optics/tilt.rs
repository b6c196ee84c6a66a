//! A tilting lens.

use crate::doors::c::border::argument;
use crate::doors::c::border::call::Door;
use crate::doors::c::border::mirror::mirror;
use crate::doors::c::border::refusal::name;
use crate::doors::c::optics::lens::Lens;
use crate::doors::c::status::Fault;
use crate::optics::tilt;
use crate::range;
use crate::view::pose::Orientation;

/// The tilt that lays the plane of focus on the table.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Tilt {
    /// 1 where some tilt does it: `tilt_deg` is there. 0 where the hinge is nearer than the focal length or
    /// the camera is under the table.
    pub has_tilt_deg: i32,
    /// 0.
    pub reserved: i32,
    /// From the front principal point to the table's plane, parallel to the sensor, downwards in the
    /// picture; infinite straight overhead, negative where the point lies under the table.
    pub hinge_distance_mm: f64,
    /// The tilt; 0 straight overhead.
    pub tilt_deg: f64,
}
mirror!(out Tilt "tilt" tilt::Tilt { hinge_distance_mm, tilt_deg: (has_tilt_deg, tilt_deg) } spare reserved);

/// The tilt that lays the plane of focus on the table, for a lens focused at a magnification on an aim point
/// `aim_height_mm` above the table, from an elevation. By the hinge rule, tilt = asin (f / J).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_tilt_onto_table(
    lens: *const Lens,
    magnification: f64,
    aim_height_mm: f64,
    elevation_deg: f64,
    tilt: *mut Tilt,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(tilt, name!("tilt"))?;
        let lens = door.part(lens)?;
        let magnification = argument::MAGNIFICATION.check(magnification)?;
        let aim_height = range::AIM_HEIGHT_MM.check(aim_height_mm)?;
        let at = Orientation::new(range::ELEVATION_DEG.check(elevation_deg)?, 0.0);
        let focused = lens.focused(magnification);
        out.put(&tilt::tilt_onto_table(&focused, aim_height, at.sin_elevation, at.cos_elevation))
    })
}
