//! Third stops, blur, effective f-numbers and diffraction.

use crate::doors::c::border::argument;
use crate::doors::c::border::call::Door;
use crate::doors::c::border::refusal::name;
use crate::doors::c::optics::focus::ThirdStop;
use crate::doors::c::optics::lens::Lens;
use crate::doors::c::status::Fault;
use crate::optics::focus;
use crate::range;

/// The smallest third stop at or above an f-number of 0.5 to 512: 7.06 gives the one engraved 7.1.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_third_stop_up(
    f_number: f64,
    third_stop: *mut ThirdStop,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(third_stop, name!("third_stop"))?;
        out.put(&focus::third_stop_up(range::F_NUMBER.check(f_number)?))
    })
}

/// The largest third stop at or under an f-number of 0.5 to 512: 7.06 gives the one engraved 6.3.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_third_stop_down(
    f_number: f64,
    third_stop: *mut ThirdStop,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(third_stop, name!("third_stop"))?;
        out.put(&focus::third_stop_down(range::F_NUMBER.check(f_number)?))
    })
}

/// Diameter of the blur on the sensor of a point `distance_mm` from the entrance pupil along the axis, for a
/// lens focused at a magnification: (f / N) m |x - s| / x.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_blur(
    lens: *const Lens,
    magnification: f64,
    f_number: f64,
    distance_mm: f64,
    blur_mm: *mut f64,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(blur_mm, name!("blur_mm"))?;
        let lens = door.part(lens)?;
        let magnification = argument::MAGNIFICATION.check(magnification)?;
        let f_number = range::F_NUMBER.check(f_number)?;
        let distance = argument::DISTANCE_MM.check(distance_mm)?;
        out.put(&focus::blur_mm(&lens.focused(magnification), f_number, distance))
    })
}

/// Effective f-number N (1 + m/p) of a lens focused at a magnification.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_effective_f_number(
    lens: *const Lens,
    magnification: f64,
    f_number: f64,
    effective_f_number: *mut f64,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(effective_f_number, name!("effective_f_number"))?;
        let lens = door.part(lens)?;
        let magnification = argument::MAGNIFICATION.check(magnification)?;
        let f_number = range::F_NUMBER.check(f_number)?;
        out.put(&focus::effective_f_number(&lens.focused(magnification), f_number))
    })
}

/// Light lost to the extension of a lens focused at a magnification, 2 log2 (1 + m/p) stops.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_exposure_loss(
    lens: *const Lens,
    magnification: f64,
    exposure_loss_stops: *mut f64,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(exposure_loss_stops, name!("exposure_loss_stops"))?;
        let lens = door.part(lens)?;
        let magnification = argument::MAGNIFICATION.check(magnification)?;
        out.put(&focus::exposure_loss_stops(&lens.focused(magnification)))
    })
}

/// Diameter of the diffraction disc on the sensor at an f-number, 2.44 x 550 nm x N (1 + m/p).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_diffraction_disc(
    lens: *const Lens,
    magnification: f64,
    f_number: f64,
    diffraction_disc_mm: *mut f64,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(diffraction_disc_mm, name!("diffraction_disc_mm"))?;
        let lens = door.part(lens)?;
        let magnification = argument::MAGNIFICATION.check(magnification)?;
        let f_number = range::F_NUMBER.check(f_number)?;
        out.put(&focus::diffraction_disc_mm(&lens.focused(magnification), f_number))
    })
}

/// The f-number at which the diffraction disc is as large as a limit of blur.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_diffraction_limit(
    lens: *const Lens,
    magnification: f64,
    circle_of_confusion_mm: f64,
    diffraction_limit_f_number: *mut f64,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(diffraction_limit_f_number, name!("diffraction_limit_f_number"))?;
        let lens = door.part(lens)?;
        let magnification = argument::MAGNIFICATION.check(magnification)?;
        let circle = range::CIRCLE_OF_CONFUSION_MM.check(circle_of_confusion_mm)?;
        out.put(&focus::diffraction_limit_f_number(&lens.focused(magnification), circle))
    })
}
