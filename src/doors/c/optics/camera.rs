//! The camera.

use crate::doors::c::border::call::{Door, entered};
use crate::doors::c::border::mirror::{Leave, mirror};
use crate::doors::c::border::part::{UNSET, part, sized};
use crate::doors::c::border::refusal::name;
use crate::doors::c::optics::sensor::{Aspect, UsedArea};
use crate::doors::c::status::Fault;
use crate::optics::{camera, sensor};

/// A camera body. Lengths are along the lens axis ("ahead", "behind") or square to it ("above", "below"), as
/// the camera is held for the shot. Begin with tablerig_camera_init. Must be set: both sensor sides, the
/// socket's place, the body's top and the mass.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Camera {
    /// sizeof (TablerigCamera).
    pub size: u32,
    /// 1 where `circle_of_confusion_mm` is given, else 0.
    pub has_circle_of_confusion_mm: i32,
    /// The sensor's longer side, 1 to 500.
    pub sensor_width_mm: f64,
    /// The sensor's shorter side, 1 to 500.
    pub sensor_height_mm: f64,
    /// The mounting socket ahead of the sensor, -500 to 2000.
    pub socket_ahead_mm: f64,
    /// The mounting socket below the axis, -500 to 1000.
    pub socket_below_mm: f64,
    /// The body's top above the axis, 0 to 1000.
    pub body_above_mm: f64,
    /// Mass without the lens, 0 to 100.
    pub mass_kg: f64,
    /// The body's back behind the sensor, 0 to 1000. Default 0.
    pub body_behind_mm: f64,
    /// Centre of gravity ahead of the sensor, on the axis, -1000 to 2000. Default 0.
    pub centre_ahead_mm: f64,
    /// Largest blur on the sensor that counts as sharp, 0.0001 to 5; left out, the sensor's diagonal / 1500.
    pub circle_of_confusion_mm: f64,
}
mirror!(both Camera "camera" camera::Camera {
    sensor_width_mm,
    sensor_height_mm,
    circle_of_confusion_mm: (has_circle_of_confusion_mm, circle_of_confusion_mm),
    socket_ahead_mm,
    socket_below_mm,
    body_above_mm,
    body_behind_mm,
    mass_kg,
    centre_ahead_mm,
} sized size);
sized!(Camera "camera", up_to body_behind_mm, Camera::leave(&camera::Camera {
    sensor_width_mm: UNSET,
    sensor_height_mm: UNSET,
    circle_of_confusion_mm: None,
    socket_ahead_mm: UNSET,
    socket_below_mm: UNSET,
    body_above_mm: UNSET,
    body_behind_mm: 0.0,
    mass_kg: UNSET,
    centre_ahead_mm: 0.0,
}));
part!(Camera camera::Camera);

/// Fills a camera of `size` bytes, sizeof (TablerigCamera), with its defaults; what has none becomes
/// TABLERIG_UNSET.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_camera_init(camera: *mut Camera, size: u32) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(core::ptr::null_mut()) };
    door.answer(|door| door.fill(camera, size))
}

/// Refuses a camera with a field out of its range, and says which in `fault`, which may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_camera_check(camera: *const Camera, fault: *mut Fault) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| door.part(camera).map(|_| ()))
}

/// The part of the sensor that the delivered picture uses: the largest rectangle of `delivered_aspect`
/// inside the sensor as held, the whole of it where `delivered_aspect` is null. `hold` is a TablerigHold.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_used_area(
    camera: *const Camera,
    hold: i32,
    delivered_aspect: *const Aspect,
    used: *mut UsedArea,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(used, name!("used"))?;
        let camera = door.part(camera)?;
        let aspect: Option<sensor::Aspect> = door.value_given(delivered_aspect, name!("delivered_aspect"))?;
        let hold: sensor::Hold = entered(&hold, name!("hold"))?;
        if let Some(aspect) = &aspect {
            aspect.check()?;
        }
        out.put(&camera.used_area(hold, aspect))
    })
}

/// The largest blur on the sensor that counts as sharp: the camera's own, or its sensor's diagonal / 1500.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_blur_limit(
    camera: *const Camera,
    circle_of_confusion_mm: *mut f64,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(circle_of_confusion_mm, name!("circle_of_confusion_mm"))?;
        let camera = door.part(camera)?;
        out.put(&camera.blur_limit_mm())
    })
}
