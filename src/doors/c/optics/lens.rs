//! The lens, and the lens focused.

use crate::doors::c::border::argument;
use crate::doors::c::border::call::Door;
use crate::doors::c::border::mirror::{Leave, mirror};
use crate::doors::c::border::part::{UNSET, part, sized};
use crate::doors::c::border::refusal::name;
use crate::doors::c::status::Fault;
use crate::optics::lens;
use crate::range;

/// A lens as its maker specifies it. Begin with tablerig_lens_init. Must be set: focal length, both
/// f-numbers, mass and centre of gravity.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Lens {
    /// sizeof (TablerigLens).
    pub size: u32,
    /// 1 where `closest_focus_mm` is given, else 0.
    pub has_closest_focus_mm: i32,
    /// 1 where `largest_magnification` is given, else 0.
    pub has_largest_magnification: i32,
    /// 1 where `front_from_sensor_mm` is given, else 0.
    pub has_front_from_sensor_mm: i32,
    /// The marked focal length, for infinity, 1 to 3000.
    pub focal_length_mm: f64,
    /// The widest opening's engraved f-number, 0.5 to 512.
    pub least_f_number: f64,
    /// The smallest opening's engraved f-number, 0.5 to 512, not under `least_f_number`.
    pub most_f_number: f64,
    /// Mass, 0 to 100.
    pub mass_kg: f64,
    /// Centre of gravity ahead of the sensor, on the axis, -1000 to 5000.
    pub centre_ahead_mm: f64,
    /// Closest focus, sensor to object, 1 to 100000. Left out, only the lens formula limits it.
    pub closest_focus_mm: f64,
    /// Magnification at the closest focus, 0.0001 to 20. With both given, the focal length changes as the
    /// lens focuses; with one or none it does not (unit focusing).
    pub largest_magnification: f64,
    /// Exit pupil / entrance pupil, 0.05 to 20. Default 1, a symmetric lens.
    pub pupil_ratio: f64,
    /// From the front principal plane to the rear one, -1000 to 1000. Default 0, a thin lens.
    pub principal_separation_mm: f64,
    /// The lens's front ahead of the sensor, 1 to 5000. Left out, room for the light is not checked.
    pub front_from_sensor_mm: f64,
    /// How far a tilting lens tilts, 0 to 45. Default 0.
    pub largest_tilt_deg: f64,
}
mirror!(both Lens "lens" lens::Lens {
    focal_length_mm,
    closest_focus_mm: (has_closest_focus_mm, closest_focus_mm),
    largest_magnification: (has_largest_magnification, largest_magnification),
    pupil_ratio,
    principal_separation_mm,
    least_f_number,
    most_f_number,
    front_from_sensor_mm: (has_front_from_sensor_mm, front_from_sensor_mm),
    largest_tilt_deg,
    mass_kg,
    centre_ahead_mm,
} sized size);
sized!(Lens "lens", up_to closest_focus_mm, Lens::leave(&lens::Lens {
    focal_length_mm: UNSET,
    closest_focus_mm: None,
    largest_magnification: None,
    pupil_ratio: 1.0,
    principal_separation_mm: 0.0,
    least_f_number: UNSET,
    most_f_number: UNSET,
    front_from_sensor_mm: None,
    largest_tilt_deg: 0.0,
    mass_kg: UNSET,
    centre_ahead_mm: UNSET,
}));
part!(Lens lens::Lens);

/// A lens focused so that the plane through the aim point is pictured at a magnification.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct FocusedLens {
    /// 1 where the focal length rests on the straight line between the lens's two published points.
    pub focal_length_assumed: i32,
    /// 0.
    pub reserved: i32,
    /// Picture size on the sensor / size in the plane through the aim point.
    pub magnification: f64,
    /// Focal length at this magnification.
    pub focal_length_mm: f64,
    /// The lens's pupil ratio, exit / entrance.
    pub pupil_ratio: f64,
    /// Sensor to aim point.
    pub sensor_distance_mm: f64,
    /// Rear principal plane to sensor.
    pub image_distance_mm: f64,
    /// Aim point to front principal plane.
    pub object_distance_mm: f64,
    /// Aim point to entrance pupil, the centre of perspective.
    pub pupil_distance_mm: f64,
}
mirror!(out FocusedLens "lens" lens::FocusedLens {
    focal_length_assumed,
    magnification,
    focal_length_mm,
    pupil_ratio,
    sensor_distance_mm,
    image_distance_mm,
    object_distance_mm,
    pupil_distance_mm,
} spare reserved);

/// How wide the lens sees, drawn from the entrance pupil.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct FieldAngles {
    /// Across the frame's width.
    pub horizontal_deg: f64,
    /// Across the frame's height.
    pub vertical_deg: f64,
    /// From corner to corner.
    pub diagonal_deg: f64,
}
mirror!(out FieldAngles "field_angles" lens::FieldAngles { horizontal_deg, vertical_deg, diagonal_deg });

/// Fills a lens of `size` bytes, sizeof (TablerigLens), with its defaults; what has none becomes
/// TABLERIG_UNSET.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_lens_init(lens: *mut Lens, size: u32) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(core::ptr::null_mut()) };
    door.answer(|door| door.fill(lens, size))
}

/// Refuses a lens with a field out of its range, f-numbers the wrong way round, and a closest focus that
/// does not fit the largest magnification; says which in `fault`, which may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_lens_check(lens: *const Lens, fault: *mut Fault) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| door.part(lens).map(|_| ()))
}

/// The lens focused at a magnification (used sensor width / frame width), 1e-12 to 1e6: where sensor,
/// principal planes and entrance pupil are. By the thick lens's formulas: f (1 + 1/m) to the front principal
/// plane, f (1 + m) behind the rear one, f (1/m + 1/p) to the entrance pupil. Beyond the lens's largest
/// magnification the focal length stays what it is there.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_lens_focused(
    lens: *const Lens,
    magnification: f64,
    focused: *mut FocusedLens,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(focused, name!("focused"))?;
        let lens = door.part(lens)?;
        let magnification = argument::MAGNIFICATION.check(magnification)?;
        out.put(&lens.focused(magnification))
    })
}

/// How wide the lens sees, focused at a magnification, for a frame of this size in the plane through the aim
/// point: 2 atan (size / 2s) from the entrance pupil at distance s.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_field_angles(
    lens: *const Lens,
    magnification: f64,
    frame_width_mm: f64,
    frame_height_mm: f64,
    field_angles: *mut FieldAngles,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(field_angles, name!("field_angles"))?;
        let lens = door.part(lens)?;
        let magnification = argument::MAGNIFICATION.check(magnification)?;
        let width = range::FRAME_WIDTH_MM.check(frame_width_mm)?;
        let height = argument::FRAME_HEIGHT_MM.check(frame_height_mm)?;
        out.put(&lens.focused(magnification).field_angles(width, height))
    })
}
