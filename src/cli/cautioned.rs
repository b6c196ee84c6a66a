//! Cautions in plain words with what helps, and the usual ones for loads and overhead work.

use std::format;
use std::prelude::rust_2024::*;

use super::page::Page;
use super::setting::{is_stopped, stacked};
use super::wording::{Units, decimals, degrees, f_number, kilograms};
use crate::caution::overhead::OVERHEAD_CAUTIONS;
use crate::caution::{Caution, CautionCode as Code, Level};
use crate::sheet::cautions::{figure, figures, sentence};
use crate::sheet::changes::change_in_words;
use crate::shoot::smallest::smallest_changes;
use crate::shootfile::NamedShot;

/// All cautions of a shot in full, what stops it first.
pub(crate) fn print(page: &mut Page, shot: &NamedShot) {
    stops(page, shot);
    let units = page.units;
    let mut rest = of(shot, |level| level < Level::Stop);
    rest.sort_by_key(|caution| core::cmp::Reverse(caution.level));
    let lines: Vec<(Level, String)> =
        rest.iter().map(|caution| (caution.level, helped(caution, shot, units))).collect();
    page.levels(&lines);
    if is_stopped(&shot.plan) {
        page.paragraph("Cannot be set up as asked: every figure below is only what it would come to.");
    }
}

/// What stops a shot, in full, and the smallest changes that would make it possible. Nothing where nothing stops
/// it.
pub(crate) fn stops(page: &mut Page, shot: &NamedShot) {
    if !is_stopped(&shot.plan) {
        return;
    }
    let units = page.units;
    let stops = of(shot, |level| level == Level::Stop);
    let lines: Vec<(Level, String)> =
        stops.iter().map(|caution| (caution.level, helped(caution, shot, units))).collect();
    page.levels(&lines);
    // A brief that was planned is not refused.
    let changes = smallest_changes(&shot.brief).into_iter().flatten().flatten();
    let mut told: Vec<(&'static str, String)> = changes
        .enumerate()
        .map(|(place, change)| {
            (if place == 0 { "instead" } else { "or" }, change_in_words(&change, &shot.brief, units))
        })
        .collect();
    let choose = "`tablerig choose` looks for another lens, support or side.";
    if told.is_empty() {
        told.push(("instead", format!("No one change alone clears what stops it; {choose}")));
    } else {
        told.push(("or", choose.into()));
        told.push(("then", "Plan it again: each change only just clears what stops the shot.".into()));
    }
    page.short_pairs(&told);
}

/// The warnings of a shot in full, and its notes in short.
pub(crate) fn beside(page: &mut Page, shot: &NamedShot) {
    let units = page.units;
    let warned = of(shot, |level| level == Level::Warn);
    let noted = of(shot, |level| level == Level::Note);
    let warned = warned.iter().map(|caution| (Level::Warn, helped(caution, shot, units)));
    let noted = noted.iter().map(|caution| (Level::Note, in_short(caution, shot, units)));
    page.levels(&warned.chain(noted).collect::<Vec<_>>());
}

fn of(shot: &NamedShot, level: impl Fn(Level) -> bool) -> Vec<&Caution> {
    shot.plan.cautions.iter().filter(|caution| level(caution.level)).collect()
}

/// A caution's sentence with value, limit and, where it is known, what helps.
fn helped(caution: &Caution, shot: &NamedShot, units: Units) -> String {
    let told = sentence(caution, units);
    match remedy(caution, shot, units) {
        Some(remedy) => format!("{told} What helps: {remedy}."),
        None => told,
    }
}

/// What the plan knows to help against a caution.
fn remedy(caution: &Caution, shot: &NamedShot, units: Units) -> Option<String> {
    let plan = &shot.plan;
    let criteria = &shot.brief.criteria;
    let added = plan.ballast.base_to_add_kg;
    let keeps = || {
        let (added, factor) = (kilograms(added), decimals(criteria.wanted_factor, 2));
        (plan.ballast.base_to_add_kg > 0.0)
            .then(|| format!("{added} more on the base, on the column's axis, for a factor of {factor}"))
    };
    match caution.code {
        Code::SubjectNotHeld => {
            let stack =
                plan.focus.stack.map(|stack| format!("the focus stack at {}", f_number(stack.engraved)));
            let stop = plan.focus.f_number_to_hold.map(|stop| f_number(stop.engraved));
            match (stop, stack) {
                // A stack is told of only where that opening is past the limit of diffraction.
                (Some(stop), Some(stack)) => Some(format!("{stop}, where diffraction shows, or {stack}")),
                (stop, stack) => stop.or(stack),
            }
        }
        Code::StackNeeded => stacked(plan, units),
        Code::PayloadShare | Code::FactorAsShot | Code::SpringyBoom if criteria.hold_as_shot => keeps(),
        Code::FactorCameraOff if criteria.hold_camera_off => keeps(),
        Code::FactorCounterweightOff if criteria.hold_counterweight_off => keeps(),
        Code::ElevationOutsideAdvice => {
            let advice = &plan.advice;
            Some(format!("{} to {}", degrees(advice.least_deg), degrees(advice.most_deg)))
        }
        _ => None,
    }
}

/// A note in a few words, with its value and its limit.
fn in_short(note: &Caution, shot: &NamedShot, units: Units) -> String {
    let value = figure(note.code, note.value, units);
    let limit = figure(note.code, note.limit, units);
    let told = match note.code {
        Code::FocalLengthAssumed => {
            format!("focal length taken as {value} at this distance (marked {limit})")
        }
        Code::StackNeeded => format!("focus stack of {value} for the whole subject (limit 1)"),
        Code::DiffractionShows => format!("diffraction shows: a disc of {value} (limit {limit})"),
        Code::HorizonInFrame => {
            let over = if note.value < 0.0 { "above" } else { "below" };
            format!(
                "horizon in frame: its top edge looks {} {over} level (limit 0°)",
                degrees(note.value.abs())
            )
        }
        Code::TableEndsInFrame => format!("table ends in frame: covers {value} of it (limit {limit})"),
        Code::ElevationOutsideAdvice => {
            let advice = &shot.plan.advice;
            let (least, most) = (degrees(advice.least_deg), degrees(advice.most_deg));
            format!("elevation {value} outside what is advised ({least} to {most})")
        }
        Code::FloorNotLevel => format!("floor slopes by {value} (limit {limit})"),
        Code::SagMovesAim => format!("boom's sag moves the aim by {value} (limit {limit})"),
        Code::LoadOverhead => format!("{value} overhead: the cautions at the end apply"),
        code => format!("{} {}", name(code), figures(note, units)),
    };
    match (note.code, remedy(note, shot, units)) {
        (Code::StackNeeded | Code::ElevationOutsideAdvice, _) | (_, None) => told,
        (_, Some(remedy)) => format!("{told}; what helps: {remedy}"),
    }
}

/// A code as words: `FactorCameraOff` is "factor camera off".
fn name(code: Code) -> String {
    let mut words = String::new();
    for letter in format!("{code:?}").chars() {
        if letter.is_uppercase() && !words.is_empty() {
            words.push(' ');
        }
        words.extend(letter.to_lowercase());
    }
    words
}

/// The usual cautions: all of them with a load above the table or a person, and otherwise that ratings,
/// local codes and riggers come before any figure printed here.
pub(crate) fn usual(page: &mut Page, overhead: bool) {
    page.heading("Usual cautions for loads and overhead work");
    if overhead {
        page.list(&OVERHEAD_CAUTIONS);
    } else {
        let [first, .., last] = OVERHEAD_CAUTIONS;
        page.list(&[first, last]);
    }
}
