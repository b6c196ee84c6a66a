//! Chooses lens, support and side for a shot that leaves them open.
//!
//! Every combination of the kit is planned. Those that cannot be done drop out with the reason; the rest
//! are ranked by [`super::merits::Criterion`], in its order.

use core::cmp::Ordering;

use super::kit::{Candidate, Combination, Kit, Lost, Outcome};
use super::merits::Merits;
use super::stops::Stops;
use crate::brief::Brief;
use crate::fault::Fault;
use crate::plan::{Plan, plan};
use crate::rig::reach::placement;

/// What came of planning a kit.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Choice<'s> {
    /// The best first, then the other possible ones, each with what it lost on; then what is stopped, the
    /// least stopped first; then what was refused. As many as the caller's list holds.
    pub candidates: &'s [Candidate],
    /// How many combinations were planned.
    pub planned: usize,
    /// How many of them can be done.
    pub possible: usize,
}

impl Choice<'_> {
    /// The best combination; `None` where none can be done.
    pub fn best(&self) -> Option<&Candidate> {
        self.candidates.first().filter(|first| first.merits().is_some())
    }
}

/// Each of a list with its place in it; what the brief has, where the list is empty.
fn each<'a, T>(list: &'a [T], own: &'a T) -> impl Iterator<Item = (Option<usize>, &'a T)> {
    let own = if list.is_empty() { Some((None, own)) } else { None };
    list.iter().enumerate().map(|(index, item)| (Some(index), item)).chain(own)
}

/// Plans every combination of a kit for a shot and ranks them into `places`.
///
/// A list shorter than [`Kit::most_combinations`] keeps the best. Where every side listed would take a
/// boom, but the camera stands beside a corner of the table so that the column fits directly under it, that
/// is planned too.
///
/// Refused: a brief that is wrong in anything but what is open. A lens or support of the kit that is
/// described wrongly drops out as [`Outcome::Refused`].
pub fn choose<'s>(brief: &Brief, kit: &Kit<'_>, places: &'s mut [Candidate]) -> Result<Choice<'s>, Fault> {
    brief.shot.check()?;
    brief.camera.check()?;
    brief.table.check()?;
    brief.subject.check()?;
    brief.bay.check()?;
    brief.criteria.check()?;
    if kit.lenses.is_empty() {
        brief.lens.check()?;
    }
    if kit.supports.is_empty() {
        brief.support.check()?;
    }
    let mut planning = Planning { places, listed: 0, planned: 0, possible: 0 };
    let mut with = *brief;
    for (lens_index, lens) in each(kit.lenses, &brief.lens) {
        with.lens = *lens;
        for (support_index, support) in each(kit.supports, &brief.support) {
            with.support = *support;
            let mut combination = Combination { lens_index, support_index, side: brief.shot.side };
            if kit.sides.is_empty() {
                planning.take(&with, combination);
                continue;
            }
            let mut hung = None;
            let mut always_boom = true;
            for side in kit.sides {
                combination.side = Some(*side);
                with.shot.side = combination.side;
                if let Some(taken) = planning.take(&with, combination) {
                    hung = Some((taken.pose.pivot, taken.pose.body_top_mm));
                    always_boom &= taken.placement.boom_used;
                }
            }
            if let (true, Some((pivot, body_top_mm))) = (always_boom, hung)
                && !placement(support, &brief.table, pivot, body_top_mm, None).boom_used
            {
                combination.side = None;
                with.shot.side = None;
                planning.take(&with, combination);
            }
        }
    }
    Ok(planning.finish())
}

/// The combinations planned so far, the best of them in the caller's list.
struct Planning<'s> {
    places: &'s mut [Candidate],
    /// How many places are taken. Once all are, they are kept in order.
    listed: usize,
    planned: usize,
    possible: usize,
}

impl<'s> Planning<'s> {
    /// Plans a combination and lists it. The plan, unless it was refused.
    fn take(&mut self, with: &Brief, combination: Combination) -> Option<Plan> {
        let planned = plan(with);
        let outcome = match &planned {
            Err(fault) => Outcome::Refused(*fault),
            Ok(plan) => match Stops::among(&plan.cautions) {
                Some(stops) => Outcome::Stopped(stops),
                None => Outcome::Possible { merits: Merits::of(with, plan), lost: None },
            },
        };
        self.planned += 1;
        self.possible += usize::from(matches!(outcome, Outcome::Possible { .. }));
        self.list(Candidate { combination, outcome });
        planned.ok()
    }

    fn list(&mut self, candidate: Candidate) {
        if let Some(place) = self.places.get_mut(self.listed) {
            *place = candidate;
            self.listed += 1;
            if self.listed == self.places.len() {
                self.places.sort_unstable_by(order);
            }
            return;
        }
        let at = self.places.partition_point(|listed| order(listed, &candidate) == Ordering::Less);
        if let Some(after) = self.places.get_mut(at..) {
            after.rotate_right(usize::from(!after.is_empty()));
            if let Some(place) = after.first_mut() {
                *place = candidate;
            }
        }
    }

    /// In order, each that lost with why.
    fn finish(self) -> Choice<'s> {
        let Planning { places, listed, planned, possible } = self;
        let candidates = places.get_mut(..listed).unwrap_or_default();
        candidates.sort_unstable_by(order);
        if let Some((best, others)) = candidates.split_first_mut() {
            for other in others {
                if let (Some(best), Outcome::Possible { merits, lost }) = (best.merits(), &mut other.outcome)
                {
                    let (_, on) = best.compare(merits);
                    *lost = Some(Lost { on, value: merits.value(on), best: best.value(on) });
                }
            }
        }
        Choice { candidates, planned, possible }
    }
}

/// The better first; equals in the order of the kit.
fn order(one: &Candidate, other: &Candidate) -> Ordering {
    let class = |candidate: &Candidate| match candidate.outcome {
        Outcome::Possible { .. } => 0,
        Outcome::Stopped(_) => 1,
        Outcome::Refused(_) => 2,
        Outcome::Vacant => 3,
    };
    let within = match (&one.outcome, &other.outcome) {
        (Outcome::Possible { merits, .. }, Outcome::Possible { merits: others, .. }) => {
            merits.compare(others).0
        }
        (Outcome::Stopped(stops), Outcome::Stopped(others)) => {
            stops.count.cmp(&others.count).then(stops.overshoot_share.total_cmp(&others.overshoot_share))
        }
        _ => class(one).cmp(&class(other)),
    };
    let place = |candidate: &Candidate| {
        let Combination { lens_index, support_index, side } = candidate.combination;
        // A stand on no one side comes after those on one.
        (lens_index, support_index, side.map_or(4, |side| side as i32))
    };
    within.then_with(|| place(one).cmp(&place(other)))
}
