//! Cautions: their codes, and how they stand in a plan.

use core::ffi::c_char;

use super::border::mirror::{Leave, LeaveApart, mirror};
use super::code::stands_for;
use crate::caution;

/// Most cautions that a plan has room for; each code comes once at most.
pub const MOST_CAUTIONS: usize = 64;

/// What a caution is about. The numbers are never used again for something else: 1xx lens and focus, 2xx the
/// picture, 3xx reach and room, 4xx standing. Later versions may add some. tablerig_caution_text gives the
/// sentence, tablerig_caution_unit the unit of value and limit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum CautionCode {
    /// The lens does not focus this near: sensor to aim point is under its closest focus.
    NearerThanFocus = 101,
    /// The frame is smaller than the lens can magnify.
    MagnificationBeyondLens = 102,
    /// The focal length at this distance is taken on a straight line between the lens's two published
    /// points; the limit is the marked one.
    FocalLengthAssumed = 103,
    /// The lens's front comes nearer to the aim point than the light needs.
    LightClearance = 104,
    /// The lens's front would touch the subject.
    LensMeetsSubject = 105,
    /// The f-number asked for does not hold the whole subject; the limit is the one that just does.
    SubjectNotHeld = 106,
    /// No opening of the lens both holds the subject and keeps diffraction under the limit of blur: the
    /// value is the number of pictures of a focus stack.
    StackNeeded = 107,
    /// The diffraction disc is larger than the limit of blur.
    DiffractionShows = 108,
    /// The lens does not have this f-number; the limit is the nearest it has.
    FNumberNotOnLens = 109,
    /// No tilt lays the plane of focus on the table: the hinge is nearer than the focal length.
    TiltImpossible = 110,
    /// The lens does not tilt as far as the plane of focus on the table needs.
    TiltBeyondLens = 111,
    /// The top of the frame looks over the table's plane: the horizon, or the wall behind, is in the
    /// picture.
    HorizonInFrame = 201,
    /// The entrance pupil is not above the table top: nothing on the table's plane can be told.
    TableFromBelow = 202,
    /// The table's near edge hides this much of the subject's foot.
    NearEdgeHidesFoot = 203,
    /// The table does not fill the picture; the value is the share it covers.
    TableEndsInFrame = 204,
    /// The frame cuts the subject; the value is the least room left.
    SubjectCut = 205,
    /// Straight-on, a lens this wide visibly stretches what is near the corners.
    StretchShows = 206,
    /// The elevation lies outside what usually suits such a subject.
    ElevationOutsideAdvice = 207,
    /// The subject stands over the table's edge.
    SubjectOverhangsTable = 208,
    /// The support does not go this high.
    PivotTooHigh = 301,
    /// The support does not go this low.
    PivotTooLow = 302,
    /// The camera hangs where the column cannot stand, and the support has no boom.
    BoomMissing = 303,
    /// The boom does not reach this far.
    BoomTooShort = 304,
    /// The highest point of camera and rig does not fit under the ceiling.
    CeilingTooLow = 305,
    /// A foot of the support would stand in a wall; the value is the room left.
    FeetOutsideBay = 306,
    /// The boom's tail would meet a wall; the value is the room left.
    TailOutsideBay = 307,
    /// The camera would be in a wall; the value is the room left.
    CameraOutsideBay = 308,
    /// There is too little room behind the camera for a person.
    NoRoomBehindCamera = 309,
    /// The column would be in the picture over this length.
    ColumnInPicture = 310,
    /// The boom would be in the picture over this length.
    BoomInPicture = 311,
    /// Camera or pivot would be in the table: the value is the lowest point over the table top.
    CameraMeetsTable = 312,
    /// The boom would pass through the camera: the value is its distance from the lens axis, the limit the
    /// socket's. Turn the camera, or stand on another side.
    BoomMeetsCamera = 313,
    /// The payload is this share of the payload that would tip the stand.
    PayloadShare = 401,
    /// As shot, the restoring moment is only this many times the overturning one.
    FactorAsShot = 402,
    /// With the camera off and the counterweight on, the restoring moment is only this many times the
    /// overturning one: the stand can fall backwards.
    FactorCameraOff = 403,
    /// With the counterweight off and the camera on, the restoring moment is only this many times the
    /// overturning one.
    FactorCounterweightOff = 404,
    /// This little tilt, the floor's slope taken off, tips the stand.
    TiltToTip = 405,
    /// This little push sideways tips the stand.
    PushToTip = 406,
    /// The boom is springy, so what is let go by hand loads it twice; the restoring moment is only this
    /// many times the overturning one.
    SpringyBoom = 407,
    /// The column carries more than its rating.
    SupportLoadRating = 408,
    /// The boom carries more than its rating.
    BoomLoadRating = 409,
    /// The clamp holds more moment than its rating.
    ClampMomentRating = 410,
    /// The head carries more than its rating.
    HeadLoadRating = 411,
    /// The head holds more moment than its rating.
    HeadMomentRating = 412,
    /// The floor is not level; its slope has been taken off the tilt margin.
    FloorNotLevel = 413,
    /// The boom's sag moves the aim point further than the frame width may be off.
    SagMovesAim = 414,
    /// This payload hangs over the table or over people: the cautions for overhead work apply.
    LoadOverhead = 415,
}

stands_for!(CautionCode caution::CautionCode {
    NearerThanFocus, MagnificationBeyondLens, FocalLengthAssumed, LightClearance, LensMeetsSubject,
    SubjectNotHeld, StackNeeded, DiffractionShows, FNumberNotOnLens, TiltImpossible, TiltBeyondLens,
    HorizonInFrame, TableFromBelow, NearEdgeHidesFoot, TableEndsInFrame, SubjectCut, StretchShows,
    ElevationOutsideAdvice, SubjectOverhangsTable, PivotTooHigh, PivotTooLow, BoomMissing, BoomTooShort,
    CeilingTooLow, FeetOutsideBay, TailOutsideBay, CameraOutsideBay, NoRoomBehindCamera,
    ColumnInPicture, BoomInPicture, CameraMeetsTable, BoomMeetsCamera, PayloadShare, FactorAsShot, FactorCameraOff,
    FactorCounterweightOff, TiltToTip, PushToTip, SpringyBoom, SupportLoadRating, BoomLoadRating,
    ClampMomentRating, HeadLoadRating, HeadMomentRating, FloorNotLevel, SagMovesAim, LoadOverhead,
});

/// One caution of a plan: what cannot be done as asked, or should be looked at.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Caution {
    /// What it is about, a TablerigCautionCode.
    pub code: i32,
    /// How weighty it is, a TablerigLevel.
    pub level: i32,
    /// The value that was found, in the code's unit. May be infinite.
    pub value: f64,
    /// The limit it is held against, in the same unit. May be infinite.
    pub limit: f64,
}
mirror!(out Caution "caution" caution::Caution { code, level, value, limit });

const _: () = assert!(caution::MOST_CAUTIONS <= MOST_CAUTIONS, "a plan has no room for so many cautions");

/// How many, and the cautions; those beyond are zero.
impl LeaveApart<caution::Cautions> for (&mut u32, &mut [Caution; MOST_CAUTIONS]) {
    fn leave_apart(self, inner: &caution::Cautions) {
        for (place, caution) in self.1.iter_mut().zip(inner.iter()) {
            Caution::leave_in(caution, place);
            *self.0 += 1;
        }
    }
}

/// One sentence for a TablerigCautionCode, without the numbers. Never null: for any other number a sentence
/// that says so.
#[unsafe(no_mangle)]
pub extern "C" fn tablerig_caution_text(code: i32) -> *const c_char {
    super::text::caution(code)
}

/// The unit of value and limit of a TablerigCautionCode: "mm", "deg", "kg", "n", "n_m", "percent", or ""
/// for a pure number. Never null.
#[unsafe(no_mangle)]
pub extern "C" fn tablerig_caution_unit(code: i32) -> *const c_char {
    super::text::caution_unit(code)
}

/// One word for a TablerigLevel: "note", "warn" or "stop". Never null.
#[unsafe(no_mangle)]
pub extern "C" fn tablerig_level_text(level: i32) -> *const c_char {
    super::text::level(level)
}

/// In one sentence, how camera and counterweight come off, for a TablerigRemoval. Never null.
#[unsafe(no_mangle)]
pub extern "C" fn tablerig_removal_text(removal: i32) -> *const c_char {
    super::text::removal(removal)
}

/// The cautions that go with every load above a table or a person, beginning with index 0: print all of
/// them beside the numbers of a plan whose `overhead` is 1. Null past the last.
#[unsafe(no_mangle)]
pub extern "C" fn tablerig_overhead_caution(index: u32) -> *const c_char {
    super::text::overhead_caution(index)
}
