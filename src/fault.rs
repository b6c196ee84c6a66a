//! What was wrong with an input: which field, its value, and what it may be.

use core::fmt;

/// Why an input was refused. The numbers are part of the interface and are never used again for
/// something else: 1xx a single value, 2xx values that contradict each other, 3xx a question that the
/// geometry answers with "there is none".
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "text", derive(serde::Serialize), serde(rename_all = "snake_case"))]
#[repr(i32)]
#[non_exhaustive]
pub enum FaultKind {
    /// The value is not a number, or infinite.
    NotFinite = 101,
    /// The value is under the least that the field may have.
    TooSmall = 102,
    /// The value is over the most that the field may have.
    TooLarge = 103,
    /// Closest focus and largest magnification give the lens no focal length there (it would not be
    /// positive).
    NoFocalLengthAtClosestFocus = 201,
    /// Closest focus and largest magnification make the focal length grow by more than a tenth.
    FocalLengthGrows = 202,
    /// By closest focus and largest magnification the lens would come nearer and then recede again as
    /// the magnification grows.
    FocusTurnsBack = 203,
    /// The highest position of a support lies under its lowest.
    HighestUnderLowest = 204,
    /// The contents of a vessel lie deeper than the vessel is high.
    ContentsUnderVessel = 205,
    /// The vessel is wider inside than outside.
    VesselWiderInside = 206,
    /// The tube of a boom is wider inside than outside, or as wide.
    TubeWiderInside = 207,
    /// The legs meet the column inside the column's own radius.
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
}

/// An input that was refused: nothing has been computed.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Fault {
    /// Why.
    pub kind: FaultKind,
    /// The field's name, as in the shoot file, with what it belongs to: `lens.focal_length_mm`.
    pub field: &'static str,
    /// The value that was given.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub value: f64,
    /// The least value that would have been accepted, the other fields being as they are. Never over `most`:
    /// where nothing would be accepted, no range is named (minus infinity to infinity), but for
    /// [`FaultKind::NoRoomUnderCeiling`], whose least is the ceiling it would take.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub least: f64,
    /// The most that would have been accepted.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub most: f64,
}

impl FaultKind {
    /// Every kind, in the order of their numbers.
    pub const ALL: &'static [FaultKind] = &[
        FaultKind::NotFinite,
        FaultKind::TooSmall,
        FaultKind::TooLarge,
        FaultKind::NoFocalLengthAtClosestFocus,
        FaultKind::FocalLengthGrows,
        FaultKind::FocusTurnsBack,
        FaultKind::HighestUnderLowest,
        FaultKind::ContentsUnderVessel,
        FaultKind::VesselWiderInside,
        FaultKind::TubeWiderInside,
        FaultKind::FeetInsideColumn,
        FaultKind::FNumbersReversed,
        FaultKind::NoFrameWidth,
        FaultKind::NoFocus,
        FaultKind::NoFocalLength,
        FaultKind::NoRoomUnderCeiling,
        FaultKind::NoViewpoint,
    ];

    /// One sentence, without the numbers.
    pub const fn sentence(self) -> &'static str {
        match self {
            FaultKind::NotFinite => "must be a finite number",
            FaultKind::TooSmall => "is too small",
            FaultKind::TooLarge => "is too large",
            FaultKind::NoFocalLengthAtClosestFocus => {
                "does not fit the lens's largest magnification: no focal length gives both"
            }
            FaultKind::FocalLengthGrows => {
                "does not fit the lens's largest magnification: the focal length would grow by more than a tenth"
            }
            FaultKind::FocusTurnsBack => {
                "does not fit the lens's largest magnification: the distance would not fall all the way to it"
            }
            FaultKind::HighestUnderLowest => "lies under the lowest position",
            FaultKind::ContentsUnderVessel => "lies deeper than the vessel is high",
            FaultKind::VesselWiderInside => "is wider than the vessel's outside",
            FaultKind::TubeWiderInside => "leaves the tube no wall",
            FaultKind::FeetInsideColumn => "lies inside the column",
            FaultKind::FNumbersReversed => "is smaller than the lens's widest opening allows",
            FaultKind::NoFrameWidth => "cannot be had with any frame width",
            FaultKind::NoFocus => "is nearer than the lens can focus",
            FaultKind::NoFocalLength => "cannot be had with any focal length",
            FaultKind::NoRoomUnderCeiling => "leaves no room for the camera at this elevation",
            FaultKind::NoViewpoint => "is not a place to look from",
        }
    }
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} = {} {}", self.field, self.value, self.kind.sentence())?;
        match (self.least.is_finite(), self.most.is_finite()) {
            (true, true) => write!(f, " (allowed: {} to {})", self.least, self.most),
            (true, false) => write!(f, " (allowed: {} or more)", self.least),
            (false, true) => write!(f, " (allowed: up to {})", self.most),
            (false, false) => Ok(()),
        }
    }
}

impl core::error::Error for Fault {}
