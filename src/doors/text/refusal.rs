//! Why there is no answer, as JSON: every mistake with its code, its place, its value and its range.

use std::format;
use std::prelude::rust_2024::*;
use std::vec;

use serde::Serialize;

use crate::fault::{Fault, FaultKind};
use crate::range;
use crate::shootfile::Step;
use crate::shootfile::problem::{Problem, ProblemKind, line_and_column};
use crate::shootfile::tree::Node;

/// Why there is no answer.
#[derive(Debug)]
pub(super) enum Refusal {
    /// Mistakes in the request itself.
    Request(Vec<Problem>),
    /// Mistakes in the shoot that came with it, and its text, if it came as one.
    Shoot(Vec<Problem>, Option<String>),
    /// A value that the library refused, or a question without an answer.
    Fault(Fault),
}

impl From<Fault> for Refusal {
    fn from(fault: Fault) -> Refusal {
        Refusal::Fault(fault)
    }
}

impl Refusal {
    /// One mistake in the request.
    pub(super) fn one(problem: Problem) -> Refusal {
        Refusal::Request(vec![problem])
    }

    /// Keys that are needed for this question.
    pub(super) fn lacks(title: &str, keys: &[&'static str]) -> Refusal {
        Refusal::one(Problem::general(ProblemKind::Lacking, title).lacks(keys.iter().copied()))
    }
}

/// Where a mistake is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub(super) enum Where {
    /// In the request.
    Request,
    /// In the shoot.
    Shoot,
}

/// The kind of a mistake: one of the library's faults, or what is wrong with a text.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(untagged)]
pub(super) enum Kind {
    /// A value, or a question, that was refused.
    Fault(FaultKind),
    /// A mistake in writing.
    Problem(ProblemKind),
}

/// A stretch of a text, in bytes of UTF-8.
#[derive(Clone, Copy, Debug, Serialize)]
pub(super) struct Stretch {
    /// Its first byte.
    pub(super) start: usize,
    /// The byte after its last.
    pub(super) end: usize,
}

/// One mistake.
#[derive(Clone, Debug, Serialize)]
pub(super) struct Mistake {
    /// What sort it is.
    pub(super) kind: Kind,
    /// The number of that.
    pub(super) number: i32,
    /// What is wrong, in one sentence.
    pub(super) sentence: String,
    /// What stands beside the place: what was expected there.
    pub(super) label: Option<String>,
    /// The field's name with what it belongs to, where it is about a number.
    pub(super) field: Option<&'static str>,
    /// The value that was given.
    #[serde(serialize_with = "given")]
    pub(super) value: Option<f64>,
    /// The least that would have been accepted.
    #[serde(serialize_with = "given")]
    pub(super) least: Option<f64>,
    /// The most that would have been accepted.
    #[serde(serialize_with = "given")]
    pub(super) most: Option<f64>,
    /// The unit of these: `mm`, `deg`, `kg` and so on, empty for a pure number.
    pub(super) unit: Option<&'static str>,
    /// Whether it is in the request or in the shoot.
    #[serde(rename = "in")]
    pub(super) within: Where,
    /// The way to the value through keys and places counted from 0; empty where no one value is meant.
    pub(super) path: Vec<Step>,
    /// The keys that must be given there and are not.
    pub(super) lacks: Vec<&'static str>,
    /// Its line in the text, from 1, where it came as a text.
    pub(super) line: Option<usize>,
    /// Its column, in characters from 1.
    pub(super) column: Option<usize>,
    /// Its place in the text.
    pub(super) stretch: Option<Stretch>,
    /// What else there is to know.
    pub(super) notes: Vec<String>,
    /// What to do about it.
    pub(super) helps: Vec<String>,
}

fn given<S: serde::Serializer>(value: &Option<f64>, to: S) -> Result<S::Ok, S::Error> {
    match value {
        // What a fault refused may be no number at all.
        Some(value) if value.is_nan() => to.serialize_str("not_a_number"),
        Some(value) => crate::number::number_or_infinite(value, to),
        None => to.serialize_none(),
    }
}

/// The mistakes of a refusal; `request` is what was read of the request.
pub(super) fn mistakes(refusal: &Refusal, request: Option<&Node>, request_text: &str) -> Vec<Mistake> {
    match refusal {
        Refusal::Request(problems) => {
            // A request that could be read is a value like any other: only its path says something.
            let text = if request.is_none() { Some(request_text) } else { None };
            problems.iter().map(|problem| mistake(problem, Where::Request, text)).collect()
        }
        Refusal::Shoot(problems, text) => {
            problems.iter().map(|problem| mistake(problem, Where::Shoot, text.as_deref())).collect()
        }
        Refusal::Fault(fault) => vec![of_fault(fault, request)],
    }
}

/// One mistake of a text.
pub(super) fn mistake(problem: &Problem, within: Where, text: Option<&str>) -> Mistake {
    let place = problem.place.as_ref().and_then(|(span, _)| Some((span, text?)));
    let at = place.map(|(span, text)| line_and_column(text, span.start));
    let about = match &problem.fault {
        Some(fault) => of_fault(fault, None),
        None => Mistake {
            kind: Kind::Problem(problem.kind),
            number: problem.kind as i32,
            sentence: String::new(),
            label: None,
            field: None,
            value: None,
            least: None,
            most: None,
            unit: None,
            within,
            path: Vec::new(),
            lacks: Vec::new(),
            line: None,
            column: None,
            stretch: None,
            notes: Vec::new(),
            helps: Vec::new(),
        },
    };
    Mistake {
        sentence: problem.title.clone(),
        label: problem.place.as_ref().map(|(_, label)| label.clone()),
        within,
        path: problem.path.clone(),
        lacks: problem.lacks.clone(),
        line: at.map(|(line, _)| line),
        column: at.map(|(_, column)| column),
        stretch: place.map(|(span, _)| Stretch { start: span.start, end: span.end }),
        notes: problem.notes.clone(),
        helps: problem.helps.clone(),
        ..about
    }
}

/// A fault, placed at the key of the request that bears its field's name, if one does.
fn of_fault(fault: &Fault, request: Option<&Node>) -> Mistake {
    let row = range::find(fault.field);
    let key = fault.field.rsplit('.').next().unwrap_or(fault.field);
    let path = request.and_then(|request| request.get(key)).map(|entry| Step::Key(entry.key.clone()));
    Mistake {
        kind: Kind::Fault(fault.kind),
        number: fault.kind as i32,
        sentence: format!("`{key}` {}", fault.kind.sentence()),
        label: None,
        field: Some(fault.field),
        value: Some(fault.value),
        least: Some(fault.least),
        most: Some(fault.most),
        unit: row.map(|row| row.unit),
        within: Where::Request,
        path: path.into_iter().collect(),
        lacks: Vec::new(),
        line: None,
        column: None,
        stretch: None,
        notes: row.map(|row| row.meaning.into()).into_iter().collect(),
        helps: Vec::new(),
    }
}
