//! The shots of a shoot file, each joined with everything it uses, what it leaves open chosen, and planned.

use std::borrow::ToOwned;
use std::format;
use std::prelude::rust_2024::*;

use super::kit::{Chosen, Offer, OpenKit, Wanted, backdrop_without_place, chosen};
use super::order::{After, precedences};
use super::problem::{Problem, ProblemKind};
use super::reading::Reading;
use super::shot::{self, Names, SHOT, ShotDraft};
use super::stock::Weights;
use super::tree::{Node, Span, Value};
use super::{Gear, NamedShot, Uses};
use crate::brief::{Brief, Criteria};
use crate::fault::Fault;
use crate::plan::plan;
use crate::scene::bay::Bay;
use crate::scene::table::Side;
use crate::shoot::precedence::Precedence;
use crate::shoot::weights::shot_weights;

/// What all shots share.
pub(crate) struct Common<'a> {
    pub(crate) gear: &'a Gear,
    pub(crate) names: &'a Names,
    pub(crate) criteria: Criteria,
    pub(crate) offer: &'a Offer,
    pub(crate) weights: &'a Weights,
}

/// Reads and plans every shot, and finds which must come before which.
pub(crate) fn shots(
    reading: &mut Reading,
    root: &Node,
    common: &Common<'_>,
) -> (Vec<NamedShot>, Vec<Precedence>) {
    let Some(entry) = root.get("shot") else { return (Vec::new(), Vec::new()) };
    let Value::List(list) = &entry.node.value else {
        let label = format!("this is {}", entry.node.value.kind());
        let problem = Problem::new(
            ProblemKind::WrongKind,
            "shots are a list of tables",
            entry.node.span.clone(),
            label,
        );
        reading.report(problem.help("in TOML every shot has its own [[shot]], with two brackets"));
        return (Vec::new(), Vec::new());
    };
    let mut shots = Vec::new();
    let mut seen: Vec<(String, Span)> = Vec::new();
    let mut afters: Vec<After> = Vec::new();
    for (index, node) in list.iter().enumerate() {
        let name = match node.get("name").map(|entry| &entry.node.value) {
            Some(Value::Text(name)) => Some(name.as_str()),
            _ => None,
        };
        let whose = match name {
            Some(name) => format!("shot \"{name}\""),
            None => format!("shot {}", index + 1),
        };
        let mut draft = ShotDraft::blank();
        let read = reading.table(&whose, &node.span, node, SHOT, &mut draft);
        let (text, span) = match &draft.name {
            Some(name) => (name.text.clone(), name.span.clone()),
            None => (whose.clone(), node.span.clone()),
        };
        if let Some((_, first)) = seen.iter().find(|(known, _)| *known == text) {
            let title = format!("two shots are called \"{text}\"");
            let problem = Problem::new(ProblemKind::Repeated, title, span.clone(), "taken");
            reading.report(problem.also(first.clone(), "by this one"));
        }
        seen.push((text, span));
        afters.push(draft.after.clone());
        let named = shot(reading, common, (&whose, node), &draft);
        if let (true, Some(named)) = (read, named) {
            shots.push(named);
        }
    }
    let names: Vec<&str> = seen.iter().map(|(name, _)| name.as_str()).collect();
    let precedences = precedences(reading, &names, &afters);
    (shots, precedences)
}

fn shot(
    reading: &mut Reading,
    common: &Common<'_>,
    (whose, node): (&str, &Node),
    draft: &ShotDraft,
) -> Option<NamedShot> {
    let at = &node.span;
    let (own, shoot, gear, offer) = (&draft.names, common.names, common.gear, common.offer);
    let camera = gear.cameras.resolve(reading, whose, at, own.camera.as_ref(), shoot.camera.as_ref());
    let offered = |names: &[String]| names.to_vec();
    let lenses = offered(&offer.kit.lenses).into_iter().zip(offer.kit.lens.iter().copied()).collect();
    let lens = (draft.lens.as_ref(), shoot.lens.as_ref());
    let lens = Wanted::find(reading, (whose, at), &gear.lenses, lens.0, lens.1, (offer.given, lenses));
    let table = gear.tables.resolve(reading, whose, at, own.table.as_ref(), shoot.table.as_ref());
    let subject = match &draft.own_subject {
        Some(subject) => subject.map(|subject| (None, subject)),
        None => gear
            .subjects
            .resolve(reading, whose, at, own.subject.as_ref(), shoot.subject.as_ref())
            .map(|(name, subject)| (Some(name), subject)),
    };
    let supports = offered(&offer.kit.supports).into_iter().zip(offer.kit.support.iter().copied()).collect();
    let support = (draft.support.as_ref(), shoot.support.as_ref());
    let support =
        Wanted::find(reading, (whose, at), &gear.supports, support.0, support.1, (offer.given, supports));
    let bay = if own.bay.is_none() && shoot.bay.is_none() && gear.bays.is_empty() {
        Some((None, Bay::OPEN))
    } else {
        let bay = gear.bays.resolve(reading, whose, at, own.bay.as_ref(), shoot.bay.as_ref());
        bay.map(|(name, bay)| (Some(name), bay))
    };
    let shot = shot::finish(draft, reading, whose, at, node);
    let (camera, lens, table, support) = (camera?, lens?, table?, support?);
    let (subject, bay, shot) = (subject?, bay?, shot?);
    if let (Some(name), None) = (&draft.backdrop, shot.backdrop_behind_mm) {
        backdrop_without_place(reading, whose, name);
    }
    let sides: &[Side] = match &draft.sides {
        Some(several) if several.is_empty() => &offer.kit.sides,
        Some(several) => several,
        None if shot.side.is_none() && offer.sides_given => &offer.kit.sides,
        None => &[],
    };
    let ((mut lens_name, first_lens), (mut support_name, first_support)) = (lens.first()?, support.first()?);
    let mut brief = Brief {
        shot,
        camera: camera.1,
        lens: first_lens,
        table: table.1,
        subject: subject.1,
        support: first_support,
        bay: bay.1,
        criteria: common.criteria,
    };
    let ((lenses, lens), (supports, support)) = (lens.open(), support.open());
    let from = OpenKit { lenses, supports, sides: sides.to_vec(), lens, support };
    let mut choice: Option<Chosen> = None;
    if !from.is_closed() {
        let names = (&mut lens_name, &mut support_name);
        choice = Some(chosen(reading, (whose, at, node), from, &mut brief, names)?);
    }
    let (weights, plan) = match weighted(&mut brief, common.weights) {
        Ok(weighted) => weighted,
        Err(fault) => {
            reading.fault(whose, at, node, &fault);
            return None;
        }
    };
    let text = |name: &super::field::Name| name.text.clone();
    let uses = Uses {
        camera: camera.0,
        lens: lens_name,
        table: table.0,
        subject: subject.0,
        support: support_name,
        bay: bay.0,
        surface: draft.surface.as_ref().map(text),
        backdrop: draft.backdrop.as_ref().map(text),
    };
    let name = draft.name.as_ref().map_or_else(|| whose.to_owned(), text);
    Some(NamedShot { name, note: draft.note.clone(), uses, chosen: choice, weights, brief, plan })
}

type Weighted = (Option<crate::shoot::weights::ShotWeights>, crate::plan::Plan);

/// Puts the weights on in whole pieces, if there are any at hand, and plans.
fn weighted(brief: &mut Brief, at_hand: &Weights) -> Result<Weighted, Fault> {
    let mut weights = None;
    if !at_hand.is_empty() {
        let taken = shot_weights(brief, &at_hand.stock())?;
        *brief = taken.brief;
        weights = Some(taken);
    }
    Ok((weights, plan(brief)?))
}
