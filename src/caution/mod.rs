//! Cautions: what cannot be done as asked, or should be looked at, each with a code, a level, its value,
//! its limit and one sentence.
//!
//! A brief that cannot be met is not an error: its plan is complete, and says so here.

pub mod overhead;
mod picture;
mod rigging;

pub(crate) use picture::{PictureFindings, picture};
pub(crate) use rigging::{RiggingFindings, rigging};

/// How weighty a caution is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
#[cfg_attr(feature = "text", derive(serde::Serialize), serde(rename_all = "snake_case"))]
#[repr(i32)]
pub enum Level {
    /// Worth knowing.
    Note = 1,
    /// To be looked at before shooting.
    Warn = 2,
    /// Cannot be done as asked, or must not.
    Stop = 3,
}

macro_rules! codes {
    ($($name:ident = $number:literal, $unit:literal, $sentence:literal;)*) => {
        /// What a caution is about. The numbers are part of the interface and are never used again for
        /// something else: 1xx lens and focus, 2xx the picture, 3xx reach and room, 4xx standing.
        #[derive(Clone, Copy, Debug, PartialEq, Eq)]
        #[cfg_attr(feature = "text", derive(serde::Serialize), serde(rename_all = "snake_case"))]
        #[repr(i32)]
        #[non_exhaustive]
        pub enum CautionCode {
            $(#[doc = $sentence] $name = $number,)*
        }

        impl CautionCode {
            /// Every code, in the order of their numbers.
            pub const ALL: &'static [CautionCode] = &[$(CautionCode::$name),*];

            /// One sentence, without the numbers.
            pub const fn sentence(self) -> &'static str {
                match self {
                    $(CautionCode::$name => $sentence,)*
                }
            }

            /// The unit of value and limit: `mm`, `deg`, `kg`, `n`, `n_m`, `percent`, or empty.
            pub const fn unit(self) -> &'static str {
                match self {
                    $(CautionCode::$name => $unit,)*
                }
            }
        }
    };
}

codes! {
    NearerThanFocus = 101, "mm", "The lens does not focus this near: sensor to aim point is under its closest focus.";
    MagnificationBeyondLens = 102, "", "The frame is smaller than the lens can magnify.";
    FocalLengthAssumed = 103, "mm", "The focal length at this distance is taken on a straight line between the lens's two published points; the limit is the marked one.";
    LightClearance = 104, "mm", "The lens's front comes nearer to the aim point than the light needs.";
    LensMeetsSubject = 105, "mm", "The lens's front would touch the subject.";
    SubjectNotHeld = 106, "", "The f-number asked for does not hold the whole subject; the limit is the one that just does.";
    StackNeeded = 107, "", "No opening of the lens both holds the subject and keeps diffraction under the limit of blur: the value is the number of pictures of a focus stack.";
    DiffractionShows = 108, "mm", "The diffraction disc is larger than the limit of blur.";
    FNumberNotOnLens = 109, "", "The lens does not have this f-number; the limit is the nearest it has.";
    TiltImpossible = 110, "mm", "No tilt lays the plane of focus on the table: the hinge is nearer than the focal length.";
    TiltBeyondLens = 111, "deg", "The lens does not tilt as far as the plane of focus on the table needs.";

    HorizonInFrame = 201, "deg", "The top of the frame looks over the table's plane: the horizon, or the wall behind, is in the picture.";
    TableFromBelow = 202, "mm", "The entrance pupil is not above the table top: nothing on the table's plane can be told.";
    NearEdgeHidesFoot = 203, "mm", "The table's near edge hides this much of the subject's foot.";
    TableEndsInFrame = 204, "", "The table does not fill the picture; the value is the share it covers.";
    SubjectCut = 205, "mm", "The frame cuts the subject; the value is the least room left.";
    StretchShows = 206, "", "Straight-on, a lens this wide visibly stretches what is near the corners.";
    ElevationOutsideAdvice = 207, "deg", "The elevation lies outside what usually suits such a subject.";
    SubjectOverhangsTable = 208, "mm", "The subject stands over the table's edge.";

    PivotTooHigh = 301, "mm", "The support does not go this high.";
    PivotTooLow = 302, "mm", "The support does not go this low.";
    BoomMissing = 303, "mm", "The camera hangs where the column cannot stand, and the support has no boom.";
    BoomTooShort = 304, "mm", "The boom does not reach this far.";
    CeilingTooLow = 305, "mm", "The highest point of camera and rig does not fit under the ceiling.";
    FeetOutsideBay = 306, "mm", "A foot of the support would stand in a wall; the value is the room left.";
    TailOutsideBay = 307, "mm", "The boom's tail would meet a wall; the value is the room left.";
    CameraOutsideBay = 308, "mm", "The camera would be in a wall; the value is the room left.";
    NoRoomBehindCamera = 309, "mm", "There is too little room behind the camera for a person.";
    ColumnInPicture = 310, "mm", "The column would be in the picture over this length.";
    BoomInPicture = 311, "mm", "The boom would be in the picture over this length.";
    CameraMeetsTable = 312, "mm", "Camera or pivot would be in the table: the value is the lowest point over the table top.";
    BoomMeetsCamera = 313, "mm", "The boom would pass through the camera: the value is its distance from the lens axis, the limit the socket's. Turn the camera, or stand on another side.";

    PayloadShare = 401, "", "The payload is this share of the payload that would tip the stand.";
    FactorAsShot = 402, "", "As shot, the restoring moment is only this many times the overturning one.";
    FactorCameraOff = 403, "", "With the camera off and the counterweight on, the restoring moment is only this many times the overturning one: the stand can fall backwards.";
    FactorCounterweightOff = 404, "", "With the counterweight off and the camera on, the restoring moment is only this many times the overturning one.";
    TiltToTip = 405, "deg", "This little tilt, the floor's slope taken off, tips the stand.";
    PushToTip = 406, "n", "This little push sideways tips the stand.";
    SpringyBoom = 407, "", "The boom is springy, so what is let go by hand loads it twice; the restoring moment is only this many times the overturning one.";
    SupportLoadRating = 408, "kg", "The column carries more than its rating.";
    BoomLoadRating = 409, "kg", "The boom carries more than its rating.";
    ClampMomentRating = 410, "n_m", "The clamp holds more moment than its rating.";
    HeadLoadRating = 411, "kg", "The head carries more than its rating.";
    HeadMomentRating = 412, "n_m", "The head holds more moment than its rating.";
    FloorNotLevel = 413, "percent", "The floor is not level; its slope has been taken off the tilt margin.";
    SagMovesAim = 414, "mm", "The boom's sag moves the aim point further than the frame width may be off.";
    LoadOverhead = 415, "kg", "This payload hangs over the table or over people: the cautions for overhead work apply.";
}

/// One caution.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Caution {
    /// What it is about.
    pub code: CautionCode,
    /// How weighty it is.
    pub level: Level,
    /// The value that was found, in the code's unit.
    pub value: f64,
    /// The limit it is held against, in the same unit.
    pub limit: f64,
}

#[cfg(feature = "text")]
impl serde::Serialize for Caution {
    fn serialize<S: serde::Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        #[derive(serde::Serialize)]
        struct Told {
            code: CautionCode,
            number: i32,
            level: Level,
            #[serde(serialize_with = "crate::number::number_or_infinite")]
            value: f64,
            #[serde(serialize_with = "crate::number::number_or_infinite")]
            limit: f64,
            unit: &'static str,
            sentence: &'static str,
        }
        let Caution { code, level, value, limit } = *self;
        let told = Told {
            code,
            number: code as i32,
            level,
            value,
            limit,
            unit: code.unit(),
            sentence: code.sentence(),
        };
        told.serialize(to)
    }
}

/// Most cautions that one plan can have: each code comes once.
pub const MOST_CAUTIONS: usize = CautionCode::ALL.len();

/// The cautions of a plan, in the order of their codes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cautions {
    items: [Caution; MOST_CAUTIONS],
    count: usize,
}

impl Cautions {
    /// None.
    pub const NONE: Cautions = Cautions {
        items: [Caution { code: CautionCode::NearerThanFocus, level: Level::Note, value: 0.0, limit: 0.0 };
            MOST_CAUTIONS],
        count: 0,
    };

    /// The cautions.
    pub fn iter(&self) -> impl Iterator<Item = &Caution> {
        self.items.iter().take(self.count)
    }

    /// How many.
    pub fn len(&self) -> usize {
        self.count
    }

    /// Whether there are none.
    pub fn is_empty(&self) -> bool {
        self.count == 0
    }

    /// The level of the weightiest.
    pub fn worst(&self) -> Option<Level> {
        self.iter().map(|caution| caution.level).max()
    }

    /// The caution of a code, if it was raised.
    pub fn find(&self, code: CautionCode) -> Option<&Caution> {
        self.iter().find(|caution| caution.code == code)
    }

    fn add(&mut self, code: CautionCode, level: Level, value: f64, limit: f64) {
        if let Some(slot) = self.items.get_mut(self.count) {
            *slot = Caution { code, level, value, limit };
            self.count += 1;
        }
    }

    /// Raises a caution where the value is over the limit.
    fn over(&mut self, code: CautionCode, level: Level, value: f64, limit: f64) {
        if value > limit {
            self.add(code, level, value, limit);
        }
    }

    /// Raises a caution where the value is under the limit.
    fn under(&mut self, code: CautionCode, level: Level, value: f64, limit: f64) {
        if value < limit {
            self.add(code, level, value, limit);
        }
    }

    /// Raises a caution of the first level whose limit is passed downwards, the weightiest first.
    fn under_graded(&mut self, code: CautionCode, value: f64, limits: &[(Level, f64)]) {
        for (level, limit) in limits {
            if value < *limit {
                return self.add(code, *level, value, *limit);
            }
        }
    }
}

#[cfg(feature = "text")]
impl serde::Serialize for Cautions {
    fn serialize<S: serde::Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        to.collect_seq(self.iter())
    }
}
