//! The smallest change of each kind that makes an impossible shot possible.
//!
//! Ceiling, boom and column follow in closed form from where the rig is. The others are followed from the
//! value at hand outwards, in steps fine enough that each caution comes or goes at most once within one;
//! where all that stopped before has gone, the place is halved in on to the last bit. Every answer has been
//! planned again and raises no stop.

use super::change::{CHANGE_KINDS, Change, ChangeKind};
use super::kit::{Candidate, Combination, Kit};
use super::stops::StopSet;
use crate::brief::Brief;
use crate::caution::CautionCode as Code;
use crate::fault::Fault;
use crate::number::{exp2, ln};
use crate::plan::{Plan, plan};

/// Frames and focal lengths are followed to this many times as much or as little.
pub const FARTHEST_RATIO: f64 = 10.0;
/// From one frame or focal length to the next: 24 steps double it.
const RATIO_STEPS: i32 = 24;
/// From one elevation to the next.
const ELEVATION_STEP_DEG: f64 = 1.0;
/// The first weight tried on the base; each further one is twice as much.
const FIRST_WEIGHT_KG: f64 = 0.5;
/// Within one step, so often may what stops the shot give way to something else.
const MOST_CLEARED: usize = 16;

/// The smallest change of every kind, in the order of [`ChangeKind::ALL`].
///
/// `None` where that kind of change alone does not do it: what stops the shot does not depend on it, more
/// than one thing stops it, or what would do it lies out of the field's range. Frames and focal lengths are
/// looked for up to [`FARTHEST_RATIO`] times as large or small; elevations down to 0 from above, down to
/// the lowest from below, and up to 90. All `None` where nothing stops the shot.
///
/// Refused: a brief that is wrong.
pub fn smallest_changes(brief: &Brief) -> Result<[Option<Change>; CHANGE_KINDS], Fault> {
    let planned = plan(brief)?;
    Ok(ChangeKind::ALL.map(|kind| smallest(brief, &planned, kind)))
}

/// The smallest change of one kind; see [`smallest_changes`].
pub fn smallest_change(brief: &Brief, kind: ChangeKind) -> Result<Option<Change>, Fault> {
    Ok(smallest(brief, &plan(brief)?, kind))
}

/// A change that makes one combination of a kit work.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct KitChange {
    /// The combination.
    pub combination: Combination,
    /// What makes it work.
    pub change: Change,
}

/// The smallest change of every kind among the candidates of a kit, in the order of [`ChangeKind::ALL`]; of
/// equals the one listed first. Focal lengths are compared by their ratio, everything else by how much it
/// is changed. Candidates that were refused are passed over.
pub fn smallest_changes_in_kit(
    brief: &Brief,
    kit: &Kit<'_>,
    candidates: &[Candidate],
) -> [Option<KitChange>; CHANGE_KINDS] {
    let mut smallest_of: [Option<KitChange>; CHANGE_KINDS] = [None; CHANGE_KINDS];
    for candidate in candidates {
        let combination = candidate.combination;
        let Ok(changes) = smallest_changes(&kit.brief_with(brief, &combination)) else { continue };
        for (known, change) in smallest_of.iter_mut().zip(changes) {
            let Some(change) = change else { continue };
            if known.is_none_or(|known| size(&change) < size(&known.change)) {
                *known = Some(KitChange { combination, change });
            }
        }
    }
    smallest_of
}

fn size(change: &Change) -> f64 {
    match change.kind {
        ChangeKind::OtherFocalLength => ln(change.to / change.from).abs(),
        _ => change.by().abs(),
    }
}

fn smallest(brief: &Brief, planned: &Plan, kind: ChangeKind) -> Option<Change> {
    let stops = StopSet::in_cautions(&planned.cautions);
    if stops.is_empty() {
        return None;
    }
    let only = |codes: &[Code]| stops.within(StopSet::these(codes));
    let (from, to) = match kind {
        ChangeKind::HigherCeiling if only(&[Code::CeilingTooLow]) => {
            let from = brief.bay.ceiling_mm?;
            (from, clearing(brief, kind, from, from - planned.bay_room.ceiling_mm)?)
        }
        ChangeKind::LongerBoom if only(&[Code::BoomTooShort]) => {
            let from = brief.support.boom?.longest_reach_mm;
            (from, clearing(brief, kind, from, planned.placement.reach_mm)?)
        }
        ChangeKind::HigherColumn if only(&[Code::PivotTooHigh]) => {
            let from = brief.support.highest_pivot_mm;
            (from, clearing(brief, kind, from, planned.placement.clamp_height_mm)?)
        }
        ChangeKind::HeavierBase if only(&[Code::PayloadShare, Code::FactorAsShot, Code::TiltToTip]) => {
            let from = brief.support.base_mass_kg;
            let most = kind.range().most;
            let added = (0..32).map(|doubling| FIRST_WEIGHT_KG * exp2(f64::from(doubling)));
            (from, follow(brief, kind, from, added.map(|add| (from + add).min(most)))?)
        }
        ChangeKind::NarrowerFrame | ChangeKind::WiderFrame => {
            let from = planned.frame_width_mm;
            let sign = if kind == ChangeKind::WiderFrame { 1 } else { -1 };
            (from, follow(brief, kind, from, ratios(kind, from, sign))?)
        }
        ChangeKind::LowerElevation => {
            let from = brief.shot.elevation_deg;
            let least = if from > 0.0 { 0.0 } else { kind.range().least };
            let lower = (1..=180).map(|step| (from - ELEVATION_STEP_DEG * f64::from(step)).max(least));
            (from, follow(brief, kind, from, lower)?)
        }
        ChangeKind::HigherElevation => {
            let from = brief.shot.elevation_deg;
            let most = kind.range().most;
            let higher = (1..=180).map(|step| (from + ELEVATION_STEP_DEG * f64::from(step)).min(most));
            (from, follow(brief, kind, from, higher)?)
        }
        ChangeKind::OtherFocalLength => {
            let from = brief.lens.focal_length_mm;
            let shorter = follow(brief, kind, from, ratios(kind, from, -1));
            let longer = follow(brief, kind, from, ratios(kind, from, 1));
            let to = match (shorter, longer) {
                // The nearer by its ratio.
                (Some(shorter), Some(longer)) if longer / from < from / shorter => longer,
                (Some(shorter), _) => shorter,
                (None, longer) => longer?,
            };
            (from, to)
        }
        _ => return None,
    };
    Some(Change { kind, from, to })
}

/// The least value at which nothing stops, known in closed form but for rounding.
fn clearing(brief: &Brief, kind: ChangeKind, from: f64, to: f64) -> Option<f64> {
    // A rounding error of the sums that lead to it is far below this share.
    follow(brief, kind, from, [to, to * (1.0 + 1e-12)].into_iter())
}

/// Multiples of a value, in equal steps of its logarithm, within the field's range.
fn ratios(kind: ChangeKind, from: f64, sign: i32) -> impl Iterator<Item = f64> {
    let range = kind.range();
    let step = move |step: i32| exp2(f64::from(sign * step) / f64::from(RATIO_STEPS));
    let within = move |ratio: &f64| *ratio <= FARTHEST_RATIO && *ratio >= 1.0 / FARTHEST_RATIO;
    (1..).map(step).take_while(within).map(move |ratio| (from * ratio).clamp(range.least, range.most))
}

/// Follows a field along `steps` to the first value at which nothing stops, to the last bit.
///
/// Where what stopped at one step has all gone at the next, the value at which it has just gone is halved
/// in on: there the shot works, or only what has come meanwhile still stops it.
fn follow(brief: &Brief, kind: ChangeKind, from: f64, steps: impl Iterator<Item = f64>) -> Option<f64> {
    let stops_at = |value: f64| StopSet::of(&kind.set(brief, value));
    let (mut before, mut stops_before) = (from, stops_at(from));
    for at in steps {
        if at == before {
            break;
        }
        let stops = stops_at(at);
        for _ in 0..MOST_CLEARED {
            if stops_before.meets(stops) {
                break;
            }
            let past = halved(before, at, |value| stops_at(value).meets(stops_before));
            let stops_past = stops_at(past);
            if stops_past.is_empty() {
                return Some(past);
            }
            (before, stops_before) = (past, stops_past);
        }
        (before, stops_before) = (at, stops);
    }
    None
}

/// The value next to the last one that still stops, between one that does and one that does not.
fn halved(stopping: f64, clear: f64, stops: impl Fn(f64) -> bool) -> f64 {
    let (mut stopping, mut clear) = (ordered(stopping), ordered(clear));
    loop {
        // Without overflow.
        let middle = (stopping & clear) + ((stopping ^ clear) >> 1);
        if middle == stopping || middle == clear {
            // The halved sum rounds down: from above, the lower neighbour is the clear one itself.
            return value(clear);
        }
        if stops(value(middle)) {
            stopping = middle;
        } else {
            clear = middle;
        }
    }
}

/// The floating-point numbers counted in their order.
fn ordered(value: f64) -> i64 {
    let bits = value.to_bits() as i64;
    bits ^ (((bits >> 63) as u64) >> 1) as i64
}

fn value(ordered: i64) -> f64 {
    f64::from_bits((ordered ^ (((ordered >> 63) as u64) >> 1) as i64) as u64)
}
