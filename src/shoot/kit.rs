//! The gear at hand, and one combination of it as planned.

use super::merits::{Criterion, Merits};
use super::stops::Stops;
use crate::brief::Brief;
use crate::fault::Fault;
use crate::optics::lens::Lens;
use crate::rig::support::Support;
use crate::scene::table::Side;

/// The gear that a shot may be taken with. A list left empty is not open: the shot keeps what its brief
/// says.
#[derive(Clone, Copy, Debug)]
pub struct Kit<'a> {
    /// The lenses, in the order in which equals are preferred.
    pub lenses: &'a [Lens],
    /// The supports, in that order.
    pub supports: &'a [Support],
    /// The sides of the table on which the stand may be, in that order; [`Side::ALL`] for any.
    pub sides: &'a [Side],
}

/// One combination of a kit.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Combination {
    /// Which of the kit's lenses, counted from 0; `None`: the brief's own.
    pub lens_index: Option<usize>,
    /// Which of the kit's supports; `None`: the brief's own.
    pub support_index: Option<usize>,
    /// The side of the table that the shot then names. `None`: the brief's own, or, with sides to choose
    /// from, a stand directly under the camera beside a corner of the table, which is on no one side.
    pub side: Option<Side>,
}

/// What became of a combination.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize), serde(rename_all = "snake_case"))]
pub enum Outcome {
    /// It can be done.
    Possible {
        /// What it is ranked by.
        merits: Merits,
        /// Why it is not the best; `None` for the best.
        lost: Option<Lost>,
    },
    /// Its plan has cautions that stop it.
    Stopped(Stops),
    /// It cannot be planned: the lens or the support is described wrongly, or the share of the frame that
    /// the subject is to fill cannot be had.
    Refused(Fault),
    /// Nothing: a place in the caller's list that no combination took.
    Vacant,
}

/// On what a combination lost against the best.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Lost {
    /// The first criterion on which they differ.
    pub on: Criterion,
    /// What this combination has there, in the criterion's unit.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub value: f64,
    /// What the best has.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub best: f64,
}

/// A combination with what became of it.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Candidate {
    /// What it is made of.
    pub combination: Combination,
    /// What became of it.
    pub outcome: Outcome,
}

impl Candidate {
    /// A vacant place, to make lists of.
    pub const VACANT: Candidate = Candidate {
        combination: Combination { lens_index: None, support_index: None, side: None },
        outcome: Outcome::Vacant,
    };

    /// Its merits, if it can be done.
    pub fn merits(&self) -> Option<&Merits> {
        match &self.outcome {
            Outcome::Possible { merits, .. } => Some(merits),
            _ => None,
        }
    }
}

impl Kit<'_> {
    /// How many combinations there are at most: an empty list counts as one. Where sides are open, a stand
    /// beside a corner of the table adds one for each lens and support.
    pub fn most_combinations(&self) -> usize {
        let sides = if self.sides.is_empty() { 1 } else { self.sides.len() + 1 };
        self.lenses.len().max(1) * self.supports.len().max(1) * sides
    }

    /// The brief with a combination's lens, support and side in place of its own. An index that the kit
    /// does not have leaves the brief's own.
    pub fn brief_with(&self, brief: &Brief, combination: &Combination) -> Brief {
        let lens = combination.lens_index.and_then(|index| self.lenses.get(index));
        let support = combination.support_index.and_then(|index| self.supports.get(index));
        let mut with = *brief;
        with.lens = *lens.unwrap_or(&brief.lens);
        with.support = *support.unwrap_or(&brief.support);
        if !self.sides.is_empty() {
            with.shot.side = combination.side;
        }
        with
    }
}
