//! What a function returns, and the record of what was wrong.

use core::ffi::c_char;

use crate::fault::FaultKind;

/// What every function returns, as an int32_t. The numbers come in families and are never used again for
/// something else: 0 done; 1 to 99 how the function was called; 101 to 199 one value is out of its range;
/// 201 to 299 values contradict each other; 301 to 399 the geometry has no answer; from 901 internal.
/// Later versions may add numbers to each family.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum Status {
    /// Done; the outputs are written.
    Ok = 0,

    /// A pointer is null that must not be.
    NullPointer = 1,
    /// A pointer is not aligned for its type.
    Misaligned = 2,
    /// A size, a stride or a count that cannot be: a struct's size that was never set or that is not a
    /// multiple of 8, a stride shorter than its elements, more bytes than memory has.
    WrongSize = 3,
    /// A field is set that this version of the library does not know: a reserved one, or one in the tail of
    /// a later version's longer struct.
    UnknownField = 4,
    /// An output overlaps an input or another output.
    Overlapping = 5,
    /// An int32_t is none of its enumeration's numbers, a flag is neither 0 nor 1, or an index is past the
    /// end.
    UnknownCode = 6,

    /// The value is not a number, or infinite.
    NotFinite = 101,
    /// The value is under the least that the field may have.
    TooSmall = 102,
    /// The value is over the most that the field may have.
    TooLarge = 103,

    /// Closest focus and largest magnification give the lens no focal length there.
    NoFocalLengthAtClosestFocus = 201,
    /// Closest focus and largest magnification make the focal length grow by more than a tenth.
    FocalLengthGrows = 202,
    /// By closest focus and largest magnification the lens would come nearer and then recede again.
    FocusTurnsBack = 203,
    /// The highest position of a support lies under its lowest.
    HighestUnderLowest = 204,
    /// The contents of a vessel lie deeper than the vessel is high.
    ContentsUnderVessel = 205,
    /// The vessel is wider inside than outside.
    VesselWiderInside = 206,
    /// The tube of a boom is wider inside than outside, or as wide.
    TubeWiderInside = 207,
    /// The feet stand inside the column's own radius.
    FeetInsideColumn = 208,
    /// The lens's largest f-number is smaller than its smallest.
    FNumbersReversed = 209,

    /// No frame width gives the share of the frame that was asked for.
    NoFrameWidth = 301,
    /// The lens cannot focus at that distance.
    NoFocus = 302,
    /// No focal length gives that distance and that frame width.
    NoFocalLength = 303,
    /// No frame width keeps the camera under that ceiling.
    NoRoomUnderCeiling = 304,
    /// The measured place is the aim point itself, or no viewing distance.
    NoViewpoint = 305,
    /// The place, or part of the subject, lies at or behind the entrance pupil: it has no picture.
    BehindCamera = 391,
    /// The line of sight does not meet the plane.
    NotMet = 392,
    /// The boom's stiffness is not known, so its sag is not either.
    NoStiffness = 393,
    /// The subject reaches the lens: no focus stack holds it.
    NoStack = 394,

    /// A result would not be a number. Of results of this library handed back to it unchanged this never
    /// comes; coordinates made up beyond any room can lead here.
    Internal = 901,
}

/// What was wrong: which field, its value, and what it may be. Written only where a function refuses.
#[derive(Clone, Copy, Debug)]
#[repr(C)]
pub struct Fault {
    /// The status that the function returned, a TablerigStatus.
    pub status: i32,
    /// 0.
    pub reserved: i32,
    /// The value that was given; 0 where the fault is not about a number.
    pub value: f64,
    /// The least value that would have been accepted, the other fields being as they are; minus infinity
    /// where there is no least. Never over `most`: where nothing would be accepted, no range is named
    /// (minus infinity to infinity), but for NO_ROOM_UNDER_CEILING, whose least is the ceiling it would take.
    pub least: f64,
    /// The most that would have been accepted; infinity where there is no most.
    pub most: f64,
    /// The field's name with what it belongs to, such as "lens.focal_length_mm", or the argument's.
    /// A static string: never null in a fault that was written, never to be freed.
    pub field: *const c_char,
}

// SAFETY: a `repr(C)` struct of whole numbers, `f64`s and a pointer, of which every pattern of bits is one;
// it is only ever written, and a pointer of 4 bytes leaves padding at the end that no one reads.
unsafe impl super::border::mirror::Plain for Fault {
    const ZERO: Fault =
        Fault { status: 0, reserved: 0, value: 0.0, least: 0.0, most: 0.0, field: core::ptr::null() };

    fn find(
        &self,
        _: super::border::refusal::Name,
        _: fn(f64) -> bool,
    ) -> Option<(super::border::refusal::Name, f64)> {
        None
    }
}

/// The status of a fault of the library's own: the same number.
pub(crate) const fn of_kind(kind: FaultKind) -> Status {
    match kind {
        FaultKind::NotFinite => Status::NotFinite,
        FaultKind::TooSmall => Status::TooSmall,
        FaultKind::TooLarge => Status::TooLarge,
        FaultKind::NoFocalLengthAtClosestFocus => Status::NoFocalLengthAtClosestFocus,
        FaultKind::FocalLengthGrows => Status::FocalLengthGrows,
        FaultKind::FocusTurnsBack => Status::FocusTurnsBack,
        FaultKind::HighestUnderLowest => Status::HighestUnderLowest,
        FaultKind::ContentsUnderVessel => Status::ContentsUnderVessel,
        FaultKind::VesselWiderInside => Status::VesselWiderInside,
        FaultKind::TubeWiderInside => Status::TubeWiderInside,
        FaultKind::FeetInsideColumn => Status::FeetInsideColumn,
        FaultKind::FNumbersReversed => Status::FNumbersReversed,
        FaultKind::NoFrameWidth => Status::NoFrameWidth,
        FaultKind::NoFocus => Status::NoFocus,
        FaultKind::NoFocalLength => Status::NoFocalLength,
        FaultKind::NoRoomUnderCeiling => Status::NoRoomUnderCeiling,
        FaultKind::NoViewpoint => Status::NoViewpoint,
    }
}

const _: () = {
    let mut at = 0;
    while at < FaultKind::ALL.len() {
        let kind = FaultKind::ALL[at];
        assert!(of_kind(kind) as i32 == kind as i32, "a status differs from its fault's number");
        at += 1;
    }
};
