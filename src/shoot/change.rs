//! One change to a brief that cannot be met as it stands.

use crate::brief::{Brief, Framing};
use crate::number::{ceil, floor};
use crate::range::{self, Range};

use super::stops::StopSet;

/// How many kinds of change there are.
pub const CHANGE_KINDS: usize = 9;

macro_rules! kinds {
    ($($name:ident = $number:literal, $range:ident, $sentence:literal;)*) => {
        /// What is changed, everything else staying as it is. The numbers are part of the interface and
        /// are never used again for something else.
        #[derive(Clone, Copy, Debug, PartialEq, Eq)]
        #[cfg_attr(feature = "text", derive(serde::Serialize), serde(rename_all = "snake_case"))]
        #[repr(i32)]
        #[non_exhaustive]
        pub enum ChangeKind {
            $(#[doc = $sentence] $name = $number,)*
        }

        impl ChangeKind {
            /// Every kind, in the order of their numbers.
            pub const ALL: [ChangeKind; CHANGE_KINDS] = [$(ChangeKind::$name),*];

            /// One sentence, without the numbers.
            pub fn sentence(self) -> &'static str {
                match self {
                    $(ChangeKind::$name => $sentence,)*
                }
            }

            /// The field that is changed, with its unit and bounds.
            pub fn range(self) -> &'static Range {
                match self {
                    $(ChangeKind::$name => &range::$range,)*
                }
            }
        }
    };
}

kinds! {
    HigherCeiling = 1, CEILING_MM, "A higher ceiling.";
    LongerBoom = 2, LONGEST_REACH_MM, "A boom that reaches further, of the same mass.";
    HigherColumn = 3, HIGHEST_PIVOT_MM, "A column that goes higher, of the same mass.";
    HeavierBase = 4, BASE_MASS_KG, "More weight on the base, where the base's weight lies already.";
    NarrowerFrame = 5, FRAME_WIDTH_MM, "A narrower frame.";
    WiderFrame = 6, FRAME_WIDTH_MM, "A wider frame.";
    LowerElevation = 7, ELEVATION_DEG, "A lower elevation.";
    HigherElevation = 8, ELEVATION_DEG, "A higher elevation.";
    OtherFocalLength = 9, FOCAL_LENGTH_MM, "Another focal length; the lens's closest focus and principal planes in proportion, its mass and front as they are.";
}

/// A change that makes a brief work.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Change {
    /// What is changed.
    pub kind: ChangeKind,
    /// What it is now, in the unit of the kind's field. A frame that is asked for by the subject's share of
    /// it has the width that this comes to.
    pub from: f64,
    /// What it must become.
    pub to: f64,
}

#[cfg(feature = "text")]
impl serde::Serialize for Change {
    fn serialize<S: serde::Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        #[derive(serde::Serialize)]
        struct Told {
            kind: ChangeKind,
            number: i32,
            field: &'static str,
            from: f64,
            to: f64,
            by: f64,
            unit: &'static str,
            sentence: &'static str,
        }
        let Range { field, unit, .. } = *self.kind.range();
        let told = Told {
            kind: self.kind,
            number: self.kind as i32,
            field,
            from: self.from,
            to: self.to,
            by: self.by(),
            unit,
            sentence: self.kind.sentence(),
        };
        told.serialize(to)
    }
}

impl ChangeKind {
    /// The brief with the kind's field at a value. A boom's reach is left alone where there is no boom.
    pub fn set(self, brief: &Brief, value: f64) -> Brief {
        let mut with = *brief;
        match self {
            ChangeKind::HigherCeiling => with.bay.ceiling_mm = Some(value),
            ChangeKind::LongerBoom => {
                if let Some(boom) = &mut with.support.boom {
                    boom.longest_reach_mm = value;
                }
            }
            ChangeKind::HigherColumn => with.support.highest_pivot_mm = value,
            ChangeKind::HeavierBase => with.support.base_mass_kg = value,
            ChangeKind::NarrowerFrame | ChangeKind::WiderFrame => {
                with.shot.framing = Framing::FrameWidthMm(value);
            }
            ChangeKind::LowerElevation | ChangeKind::HigherElevation => with.shot.elevation_deg = value,
            ChangeKind::OtherFocalLength => {
                let share = value / brief.lens.focal_length_mm;
                with.lens.focal_length_mm = value;
                with.lens.closest_focus_mm = brief.lens.closest_focus_mm.map(|closest| closest * share);
                with.lens.principal_separation_mm *= share;
            }
        }
        with
    }
}

impl Change {
    /// How much it is changed: negative downwards.
    pub fn by(&self) -> f64 {
        self.to - self.from
    }

    /// The brief with the change made.
    pub fn applied(&self, brief: &Brief) -> Brief {
        self.kind.set(brief, self.to)
    }

    /// The change made a little larger, to the next multiple of `step` (over 0, in the unit of the field),
    /// so that it can be said and set; `None` where planning with that would be stopped.
    pub fn rounded(&self, brief: &Brief, step: f64) -> Option<Change> {
        let steps = self.to / step;
        let to = step * if self.to >= self.from { ceil(steps) } else { floor(steps) };
        let rounded = Change { to, ..*self };
        if StopSet::of(&rounded.applied(brief)).is_empty() { Some(rounded) } else { None }
    }
}
