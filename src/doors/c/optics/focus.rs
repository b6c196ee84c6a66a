//! What is sharp: depth of field, the opening that holds the subject, the focus stack.

use crate::doors::c::border::argument;
use crate::doors::c::border::call::{Door, entered};
use crate::doors::c::border::mirror::mirror;
use crate::doors::c::border::refusal::{Refusal, name};
use crate::doors::c::optics::camera::Camera;
use crate::doors::c::optics::lens::Lens;
use crate::doors::c::status::{Fault, Status};
use crate::doors::c::view::outline::SubjectDepth;
use crate::optics::focus;
use crate::range;
use crate::view::outline;

/// An f-number of the third-stop scale.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct ThirdStop {
    /// The exact value, a power of 2^(1/6); this is what is reckoned with.
    pub f_number: f64,
    /// What is engraved for it.
    pub engraved: f64,
}
mirror!(out ThirdStop "third_stop" focus::ThirdStop { f_number, engraved });

/// What is sharp around the plane through the aim point.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct DepthOfField {
    /// Nearest sharp distance from the entrance pupil.
    pub near_limit_mm: f64,
    /// Farthest sharp distance from the entrance pupil; infinite from the hyperfocal distance on.
    pub far_limit_mm: f64,
    /// Sharp in front of the aim point.
    pub in_front_mm: f64,
    /// Sharp behind the aim point; infinite with the far limit.
    pub behind_mm: f64,
}
mirror!(out DepthOfField "depth_of_field" focus::DepthOfField {
    near_limit_mm,
    far_limit_mm,
    in_front_mm,
    behind_mm,
});

/// A focus stack that holds the subject.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct FocusStack {
    /// Pictures needed; 4294967295 stands for that many or more.
    pub pictures: u32,
    /// 0.
    pub reserved: i32,
    /// The opening to shoot it at: the smallest that stays under the diffraction limit, or the lens's
    /// widest.
    pub f_number: f64,
    /// That opening as engraved.
    pub engraved: f64,
    /// From one slice's plane of focus to the next, at the aim point. May be infinite.
    pub step_mm: f64,
}
mirror!(out FocusStack "stack" focus::FocusStack { pictures, f_number, engraved, step_mm } spare reserved);

/// What is sharp, for one opening and one subject.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Focus {
    /// 1 where the limit of blur is the default, the sensor's diagonal / 1500.
    pub circle_of_confusion_assumed: i32,
    /// 1 where the brief named the opening, 0 where it was chosen.
    pub f_number_given: i32,
    /// 1 where the subject lies within the depth of field at `f_number`.
    pub subject_held: i32,
    /// 1 where an opening of the lens holds the subject: `f_number_to_hold` is there.
    pub has_f_number_to_hold: i32,
    /// 1 where no opening of the lens both holds the subject and stays under the diffraction limit: `stack`
    /// is there, unless the subject reaches the lens.
    pub has_stack: i32,
    /// 0.
    pub reserved: i32,
    /// The limit of blur on the sensor that everything here is reckoned with.
    pub circle_of_confusion_mm: f64,
    /// The opening: the brief's, or else the one chosen to hold the subject.
    pub f_number: f64,
    /// That opening as engraved.
    pub engraved: f64,
    /// Depth of field at that opening.
    pub depth_of_field: DepthOfField,
    /// The f-number that just holds the subject; 0 where the subject has no depth, infinite where it
    /// reaches the lens.
    pub f_number_needed: f64,
    /// The third stop that holds the subject, among those of the lens.
    pub f_number_to_hold: ThirdStop,
    /// The opening's effective f-number, N (1 + m/p).
    pub effective_f_number: f64,
    /// Light lost to the lens's extension, 2 log2 (1 + m/p) stops.
    pub exposure_loss_stops: f64,
    /// Diffraction disc's diameter on the sensor at the opening.
    pub diffraction_disc_mm: f64,
    /// The f-number at which that disc is as large as the limit of blur.
    pub diffraction_limit_f_number: f64,
    /// The focus stack.
    pub stack: FocusStack,
}
mirror!(out Focus "focus" focus::Focus {
    circle_of_confusion_mm,
    circle_of_confusion_assumed,
    f_number,
    engraved,
    f_number_given,
    depth_of_field,
    subject_held,
    f_number_needed,
    f_number_to_hold: (has_f_number_to_hold, f_number_to_hold),
    effective_f_number,
    exposure_loss_stops,
    diffraction_disc_mm,
    diffraction_limit_f_number,
    stack: (has_stack, stack),
} spare reserved);

/// Everything about focus for a lens at a magnification and a subject whose depth along the axis is
/// `subject_depth`. `f_number` counts where `has_f_number` is 1; else the opening is chosen: the next third
/// stop that holds the subject, or the best for a stack. `stack_overlap` is 0 to 0.95; a brief's default
/// is 0.3. The limit of blur is the camera's.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_focus(
    camera: *const Camera,
    lens: *const Lens,
    magnification: f64,
    subject_depth: *const SubjectDepth,
    has_f_number: i32,
    f_number: f64,
    stack_overlap: f64,
    focus: *mut Focus,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(focus, name!("focus"))?;
        let camera = door.part(camera)?;
        let lens = door.part(lens)?;
        let depth: outline::SubjectDepth = door.value(subject_depth, name!("subject_depth"))?;
        let magnification = argument::MAGNIFICATION.check(magnification)?;
        let has: bool = entered(&has_f_number, name!("has_f_number"))?;
        let f_number = if has { Some(range::F_NUMBER.check(f_number)?) } else { None };
        let wish = focus::FocusWish {
            nearest_mm: argument::NEAREST_MM.check(depth.nearest_mm)?,
            farthest_mm: argument::FARTHEST_MM.check(depth.farthest_mm)?,
            circle_of_confusion_mm: camera.blur_limit_mm(),
            f_number,
            stack_overlap: range::STACK_OVERLAP.check(stack_overlap)?,
        };
        let assumed = camera.circle_of_confusion_mm.is_none();
        out.put(&focus::focus(&lens, &lens.focused(magnification), &wish, assumed))
    })
}

/// Depth of field of a lens at a magnification, for an f-number and a limit of blur. Far limit and depth
/// behind are infinite from the hyperfocal distance on.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_depth_of_field(
    lens: *const Lens,
    magnification: f64,
    f_number: f64,
    circle_of_confusion_mm: f64,
    depth_of_field: *mut DepthOfField,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(depth_of_field, name!("depth_of_field"))?;
        let lens = door.part(lens)?;
        let magnification = argument::MAGNIFICATION.check(magnification)?;
        let f_number = range::F_NUMBER.check(f_number)?;
        let circle = range::CIRCLE_OF_CONFUSION_MM.check(circle_of_confusion_mm)?;
        out.put(&focus::depth_of_field(&lens.focused(magnification), f_number, circle))
    })
}

/// The f-number that just holds what lies from `nearest_mm` in front of the aim point (negative: behind it)
/// to `farthest_mm` behind it; 0 where neither needs any, infinite where the nearest reaches the entrance
/// pupil.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_f_number_to_hold(
    lens: *const Lens,
    magnification: f64,
    nearest_mm: f64,
    farthest_mm: f64,
    circle_of_confusion_mm: f64,
    f_number: *mut f64,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(f_number, name!("f_number"))?;
        let lens = door.part(lens)?;
        let magnification = argument::MAGNIFICATION.check(magnification)?;
        let nearest = argument::NEAREST_MM.check(nearest_mm)?;
        let farthest = argument::FARTHEST_MM.check(farthest_mm)?;
        let circle = range::CIRCLE_OF_CONFUSION_MM.check(circle_of_confusion_mm)?;
        out.put(&focus::f_number_to_hold(&lens.focused(magnification), nearest, farthest, circle))
    })
}

/// How many pictures a focus stack needs at an f-number, and how far its planes of focus lie apart.
/// TABLERIG_STATUS_NO_STACK where the subject reaches the lens.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_focus_stack(
    camera: *const Camera,
    lens: *const Lens,
    magnification: f64,
    subject_depth: *const SubjectDepth,
    f_number: f64,
    stack_overlap: f64,
    stack: *mut FocusStack,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(stack, name!("stack"))?;
        let camera = door.part(camera)?;
        let lens = door.part(lens)?;
        let depth: outline::SubjectDepth = door.value(subject_depth, name!("subject_depth"))?;
        let magnification = argument::MAGNIFICATION.check(magnification)?;
        let f_number = range::F_NUMBER.check(f_number)?;
        let wish = focus::FocusWish {
            nearest_mm: argument::NEAREST_MM.check(depth.nearest_mm)?,
            farthest_mm: argument::FARTHEST_MM.check(depth.farthest_mm)?,
            circle_of_confusion_mm: camera.blur_limit_mm(),
            f_number: Some(f_number),
            stack_overlap: range::STACK_OVERLAP.check(stack_overlap)?,
        };
        let stop = focus::ThirdStop { f_number, engraved: f_number };
        match focus::stack(&lens.focused(magnification), stop, &wish) {
            Some(stack) => out.put(&stack),
            None => Err(Refusal::plain(Status::NoStack, name!("subject_depth"))),
        }
    })
}
