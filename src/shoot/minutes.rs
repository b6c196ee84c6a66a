//! What re-rigging from one shot to the next takes.

use crate::fault::Fault;
use crate::number::floor;
use crate::range;
pub use crate::range::{HEIGHT_THRESHOLD_MM, SUPPORT_MINUTES as CHANGE_MINUTES};
use crate::scene::table::Side;

/// How a shot is rigged, as far as changing from one to the next is concerned. Things are told apart by
/// numbers of the caller's.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Setup {
    /// Which support.
    pub support: u32,
    /// The side of the table on which it stands.
    pub side: Side,
    /// Which lens.
    pub lens: u32,
    /// Height of the pivot, or of the boom's clamp, above the floor.
    pub height_mm: f64,
    /// Which surface lies on the table.
    pub surface: u32,
}

/// The user's own minutes for each kind of change. What changes at once is added up.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Minutes {
    /// Another support. Setting it on its side and to its height is part of this.
    pub support_minutes: f64,
    /// The same support on another side of the table.
    pub side_minutes: f64,
    /// Another lens.
    pub lens_minutes: f64,
    /// The same support at a height that differs by more than the threshold.
    pub height_minutes: f64,
    /// Heights that differ by no more than this cost nothing.
    pub height_threshold_mm: f64,
    /// Another surface on the table.
    pub surface_minutes: f64,
}

/// What has to be changed between two shots.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Rerig {
    /// The support, with its side and height.
    pub support: bool,
    /// The side, of the same support.
    pub side: bool,
    /// The lens.
    pub lens: bool,
    /// The height, of the same support, by more than the threshold.
    pub height: bool,
    /// The surface on the table.
    pub surface: bool,
}

impl Rerig {
    /// What has to be changed, in words, what takes longest first.
    pub fn changed(self) -> impl Iterator<Item = &'static str> {
        let kinds = [
            (self.support, "support"),
            (self.side, "side of the table"),
            (self.height, "height"),
            (self.lens, "lens"),
            (self.surface, "surface"),
        ];
        kinds.into_iter().filter(|(changed, _)| *changed).map(|(_, word)| word)
    }
}

impl Minutes {
    /// A stand takes longer than a lens: 10 minutes for a support, 6 for a side, 2 for a lens, 3 for a
    /// height changed by more than 100 mm, 5 for a surface (invented, to begin with; each crew knows its
    /// own).
    pub const TO_BEGIN_WITH: Minutes = Minutes {
        support_minutes: 10.0,
        side_minutes: 6.0,
        lens_minutes: 2.0,
        height_minutes: 3.0,
        height_threshold_mm: 100.0,
        surface_minutes: 5.0,
    };

    /// Refuses minutes, or a threshold, that are not finite or out of their range (see [`crate::range`]).
    pub fn check(&self) -> Result<(), Fault> {
        range::SUPPORT_MINUTES.check(self.support_minutes)?;
        range::SIDE_MINUTES.check(self.side_minutes)?;
        range::LENS_MINUTES.check(self.lens_minutes)?;
        range::HEIGHT_MINUTES.check(self.height_minutes)?;
        range::HEIGHT_THRESHOLD_MM.check(self.height_threshold_mm)?;
        range::SURFACE_MINUTES.check(self.surface_minutes).map(|_| ())
    }

    /// What has to be changed from one shot to another.
    pub fn rerig(&self, from: &Setup, to: &Setup) -> Rerig {
        let support = from.support != to.support;
        Rerig {
            support,
            side: !support && from.side != to.side,
            lens: from.lens != to.lens,
            height: !support && (from.height_mm - to.height_mm).abs() > self.height_threshold_mm,
            surface: from.surface != to.surface,
        }
    }

    /// What that takes, each kind's minutes taken to the second: whole seconds add up exactly, so that
    /// orders can be compared.
    pub fn seconds(&self, rerig: &Rerig) -> u32 {
        let kinds = [
            (rerig.support, self.support_minutes),
            (rerig.side, self.side_minutes),
            (rerig.lens, self.lens_minutes),
            (rerig.height, self.height_minutes),
            (rerig.surface, self.surface_minutes),
        ];
        kinds
            .iter()
            .filter(|(needed, _)| *needed)
            .map(|(_, minutes)| floor(60.0 * minutes + 0.5) as u32)
            .sum()
    }
}
