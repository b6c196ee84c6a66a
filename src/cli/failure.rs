//! Why a command could not answer, and with which exit status it ends.

use std::borrow::ToOwned;
use std::format;
use std::prelude::rust_2024::*;
use std::vec;

use super::json::mistakes;
use super::problem_page::render;
use super::source::Source;
use crate::fault::Fault;
use crate::range;
use crate::shootfile::field::bounds;
use crate::shootfile::problem::{Problem, ProblemKind};
use crate::shootfile::unit::Dimension;

/// What is printed instead of an answer.
#[derive(Clone, Debug)]
pub(crate) struct Failure {
    problems: Vec<Problem>,
    source: Source,
    pub(crate) status: u8,
}

/// The input is wrong.
pub(crate) const WRONG_INPUT: u8 = 2;
/// It cannot be done as asked.
pub(crate) const NOT_AS_ASKED: u8 = 1;
/// The answer could not be written or printed.
pub(crate) const NOT_WRITTEN: u8 = 3;

impl Failure {
    /// Wrong input, in a sentence.
    pub(crate) fn input(text: impl Into<String>) -> Failure {
        let problem = Problem::general(ProblemKind::WrongKind, text.into());
        Failure { problems: vec![problem], source: Source::text("", String::new()), status: WRONG_INPUT }
    }

    /// A name that stands for nothing in the file, in a sentence.
    pub(crate) fn unknown_name(text: String) -> Failure {
        let problems = vec![Problem::general(ProblemKind::UnknownName, text)];
        Failure { problems, ..Failure::input("") }
    }

    /// Wrong arguments, as they are told to people: what is wrong, and in what, then tips, usage and help.
    pub(crate) fn arguments(told: &str) -> Failure {
        let told = told.trim_start_matches("error: ");
        let mut parts = told.split("\n\n").map(|part| {
            let lines: Vec<&str> = part.lines().map(str::trim).filter(|line| !line.is_empty()).collect();
            lines.join(" ")
        });
        let mut failure = Failure::input(parts.next().unwrap_or_default());
        let tips: Vec<String> =
            parts.filter_map(|part| Some(part.strip_prefix("tip: ")?.to_owned())).collect();
        for problem in &mut failure.problems {
            problem.helps.extend_from_slice(&tips);
        }
        failure
    }

    /// An answer that could not be written, in a sentence.
    pub(crate) fn unwritten(text: impl Into<String>) -> Failure {
        Failure { status: NOT_WRITTEN, ..Failure::input(text) }
    }

    /// Mistakes in a shoot file.
    pub(crate) fn file(problems: &[Problem], source: &Source) -> Failure {
        Failure { problems: problems.to_vec(), source: source.clone(), status: WRONG_INPUT }
    }

    /// A value that the library refused, or a question without an answer; `name` is what the user calls it.
    pub(crate) fn about(fault: &Fault, name: &str) -> Failure {
        let row = range::find(fault.field);
        let dimension = Dimension::of(row.map_or("", |row| row.unit), fault.field);
        let symbol = dimension.symbol();
        let unit = if symbol.is_empty() { String::new() } else { format!(" {symbol}") };
        let value = crate::shootfile::field::plain(fault.value);
        let title = format!("{name} {value}{unit} {}", fault.kind.sentence());
        let mut problem = Problem::general(ProblemKind::Refused, title).fault(fault);
        // Of what no number gives no range is told.
        if fault.least.is_finite() || fault.most.is_finite() {
            let allowed = bounds(fault.least, fault.most, dimension);
            problem = problem.note(format_args!("expected {allowed}"));
        }
        if let Some(row) = row {
            problem = problem.note(row.meaning);
        }
        let no_answer = (fault.kind as i32) / 100 == 3;
        let status = if no_answer { NOT_AS_ASKED } else { WRONG_INPUT };
        Failure { problems: vec![problem], source: Source::text("", String::new()), status }
    }

    /// For people.
    pub(crate) fn text(&self) -> String {
        render(&self.problems, &self.source)
    }

    /// For programs: what the text door says of the same mistakes.
    pub(crate) fn json(&self) -> serde_json::Value {
        mistakes(&self.problems, &self.source)
    }
}

impl From<Fault> for Failure {
    /// A value from the command line that the library refused, or a question without an answer.
    fn from(fault: Fault) -> Failure {
        Failure::about(&fault, &flag(fault.field))
    }
}

/// The flag that takes a field: its key without the unit.
pub(crate) fn flag(field: &str) -> String {
    if field == "subject.vessel.inside_diameter_mm" {
        return "--vessel-inside".into();
    }
    if matches!(field, "camera.sensor_width_mm" | "camera.sensor_height_mm") || field.starts_with("used.") {
        return "--sensor".into();
    }
    let key = field.rsplit('.').next().unwrap_or(field);
    let key = key.strip_suffix("_mm").or_else(|| key.strip_suffix("_deg")).unwrap_or(key);
    format!("--{}", key.replace('_', "-"))
}
