//! Plans as JSON, every number in full; and mistakes.

use std::prelude::rust_2024::*;

use serde_json::{Value, json};

use super::source::Source;
use crate::caution::Level;
use crate::caution::overhead::OVERHEAD_CAUTIONS;
use crate::range;
use crate::shootfile::problem::{Problem, line_and_column};
use crate::shootfile::{NamedShot, ShootFile};

/// All shots of a file.
pub(crate) fn file(file: &ShootFile) -> Value {
    json!({
        "title": file.title,
        "note": file.note,
        "shots": file.shots.iter().map(shot).collect::<Vec<_>>(),
        "usual_cautions": OVERHEAD_CAUTIONS,
    })
}

/// One shot, with the brief as it was understood.
pub(crate) fn one(named: &NamedShot) -> Value {
    let mut value = shot(named);
    if let Value::Object(map) = &mut value {
        map.insert("usual_cautions".into(), json!(OVERHEAD_CAUTIONS));
    }
    value
}

fn shot(named: &NamedShot) -> Value {
    json!({
        "name": named.name,
        "note": named.note,
        "uses": named.uses,
        "chosen": named.chosen,
        "can_be_rigged": named.plan.cautions.worst() != Some(Level::Stop),
        "brief": named.brief,
        "plan": named.plan,
        "removal_in_words": named.plan.removal.sentence(),
    })
}

/// Mistakes, each with its code, its place, its value and its range, as the text door tells them.
pub(crate) fn mistakes(problems: &[Problem], source: &Source) -> Value {
    let within = if source.text.is_empty() { "request" } else { "shoot" };
    let mistake = |problem: &Problem| {
        let fault = problem.fault.as_ref();
        let place = problem.place.as_ref().filter(|_| !source.text.is_empty());
        let at = place.map(|(span, _)| line_and_column(&source.text, span.start));
        let row = fault.and_then(|fault| range::find(fault.field));
        json!({
            "kind": fault.map_or_else(|| json!(problem.kind), |fault| json!(fault.kind)),
            "number": fault.map_or(problem.kind as i32, |fault| fault.kind as i32),
            "sentence": problem.title,
            "label": problem.place.as_ref().map(|(_, label)| label),
            "field": fault.map(|fault| fault.field),
            "value": fault.map(|fault| number(fault.value)),
            "least": fault.map(|fault| number(fault.least)),
            "most": fault.map(|fault| number(fault.most)),
            "unit": row.map(|row| row.unit),
            "in": within,
            "path": problem.path,
            "lacks": problem.lacks,
            "line": at.map(|(line, _)| line),
            "column": at.map(|(_, column)| column),
            "stretch": place.map(|(span, _)| json!({ "start": span.start, "end": span.end })),
            "notes": problem.notes,
            "helps": problem.helps,
        })
    };
    json!({ "mistakes": problems.iter().map(mistake).collect::<Vec<_>>() })
}

/// A number, or the word for what JSON has no number for.
fn number(value: f64) -> Value {
    if value.is_nan() {
        json!("not_a_number")
    } else if value.is_infinite() {
        json!(if value > 0.0 { "infinite" } else { "-infinite" })
    } else {
        json!(value)
    }
}
