//! The subject.

use crate::doors::c::border::call::Door;
use crate::doors::c::border::mirror::{Leave, mirror};
use crate::doors::c::border::part::{UNSET, part, sized};
use crate::doors::c::status::Fault;
use crate::scene::subject;

/// A round opening at the subject's height, with contents below the rim.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Vessel {
    /// Diameter inside, 0.1 to 10000; no wider than the subject.
    pub inside_diameter_mm: f64,
    /// From the rim down to the contents, 0 to 5000; no deeper than the subject is high.
    pub contents_below_rim_mm: f64,
}
mirror!(both Vessel "subject.vessel" subject::Vessel { inside_diameter_mm, contents_below_rim_mm });

/// A subject on the table, standing under the aim point. Begin with tablerig_subject_init. Must be set: the
/// height, and width and depth of a box or the diameter of a round.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Subject {
    /// sizeof (TablerigSubject).
    pub size: u32,
    /// Its outer shape, a TablerigShape. Default TABLERIG_SHAPE_BOX.
    pub shape: i32,
    /// What its picture lives by, a TablerigJudgedBy. Default TABLERIG_JUDGED_BY_FORM.
    pub judged_by: i32,
    /// 1 where `vessel` is given, else 0.
    pub has_vessel: i32,
    /// A box's side along the table's width, 0.1 to 10000.
    pub width_mm: f64,
    /// A box's side along the table's depth, 0.1 to 10000.
    pub depth_mm: f64,
    /// A round's diameter, 0.1 to 10000.
    pub diameter_mm: f64,
    /// Height above the table top, 0 to 5000; 0 for something flat.
    pub height_mm: f64,
    /// Its opening, if it is a vessel.
    pub vessel: Vessel,
}
mirror!(both Subject "subject" subject::Subject {
    shape: (shape, width_mm, depth_mm, diameter_mm),
    height_mm,
    vessel: (has_vessel, vessel),
    judged_by,
} sized size);
sized!(Subject "subject", up_to vessel, Subject {
    diameter_mm: UNSET,
    vessel: Vessel { inside_diameter_mm: UNSET, contents_below_rim_mm: UNSET },
    ..Subject::leave(&subject::Subject {
        shape: subject::Shape::Box { width_mm: UNSET, depth_mm: UNSET },
        height_mm: UNSET,
        vessel: None,
        judged_by: subject::JudgedBy::Form,
    })
});
part!(Subject subject::Subject);

/// Fills a subject of `size` bytes, sizeof (TablerigSubject), with its defaults; what has none becomes
/// TABLERIG_UNSET.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_subject_init(subject: *mut Subject, size: u32) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(core::ptr::null_mut()) };
    door.answer(|door| door.fill(subject, size))
}

/// Refuses a subject with a field out of its range, contents under the vessel's foot and a vessel wider
/// inside than outside; says which in `fault`, which may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_subject_check(subject: *const Subject, fault: *mut Fault) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| door.part(subject).map(|_| ()))
}
