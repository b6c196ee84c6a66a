//! JSON in, JSON out: every operation by its name, for hosts that prefer text to structs.
//!
//! A request is one object: `{"operation": "plan", "shoot": ..., "shot": "soup"}`. [`answer`] gives
//! `{"ok": ...}`, or `{"mistakes": [...]}` where something was wrong or a question has no answer; each mistake
//! with its code, the path to the value, the value and its range. `{"operation": "operations"}` lists
//! everything that can be asked, with the keys that each takes.
//!
//! A shoot is given as the text of a shoot file, TOML or JSON, or as the object that the JSON would be. Where a
//! number is wanted, a text with a unit will do as well, as in the file: `"60 cm"`.
//!
//! Numbers come out with as many digits as it takes to read the same bits again; infinity is `"infinite"`.

mod asked;
#[allow(unsafe_code, reason = "reads and writes its caller's memory")]
pub mod c_entry;
mod catalogue;
#[cfg(feature = "text-door-drawings")]
mod drawing;
mod file;
mod given;
mod inverse;
mod optics;
mod parts;
mod places;
mod planner;
#[cfg(feature = "text-door-drawings")]
mod printed;
mod refusal;
mod set;
mod shots;
mod sweep;
#[cfg(target_arch = "wasm32")]
#[allow(unsafe_code, reason = "reads and writes its caller's memory")]
mod wasm;

use std::borrow::ToOwned;
use std::format;
use std::prelude::rust_2024::*;

use serde::Serialize;

use self::asked::{Asked, KEYS};
use self::given::Question;
use self::refusal::{Refusal, mistakes};
use crate::shootfile::field::{Field, Standing, listed};
use crate::shootfile::problem::{Problem, ProblemKind};
use crate::shootfile::reading::Reading;
use crate::shootfile::tree::{Node, Value};
use crate::shootfile::{Form, parse, suggest};

/// The answer's JSON, or why there is none.
type Answer = Result<String, Refusal>;

/// Something that can be asked.
pub(crate) struct Operation {
    name: &'static str,
    meaning: &'static str,
    /// The keys it takes; what it is when left out.
    takes: &'static [(&'static str, Standing)],
    /// The name of the answer's type.
    answers: &'static str,
    answer: How,
}

/// How an operation is answered.
enum How {
    /// From what is asked alone.
    Asked(fn(&Asked) -> Answer),
    /// With the shoot read and planned.
    Question(fn(&Question) -> Answer),
}

const REQUIRED: Standing = Standing::Required;

/// All operations, in the order in which they are listed.
fn operations() -> impl Iterator<Item = &'static Operation> {
    let all = [
        catalogue::OPERATIONS,
        file::OPERATIONS,
        shots::OPERATIONS,
        sweep::OPERATIONS,
        #[cfg(feature = "text-door-drawings")]
        drawing::OPERATIONS,
        places::OPERATIONS,
        optics::OPERATIONS,
        inverse::OPERATIONS,
        set::OPERATIONS,
        planner::OPERATIONS,
        #[cfg(feature = "text-door-drawings")]
        printed::OPERATIONS,
    ];
    all.into_iter().flatten()
}

/// Answers a request. Whatever the request is, the answer is JSON: `{"ok": ...}` or `{"mistakes": [...]}`.
///
/// ```
/// # #[cfg(feature = "text-door")] {
/// use tablerig::doors::text::answer;
///
/// let asked = r#"{"operation": "focal_length_for", "pupil_distance_mm": "1.5 m", "frame_width_mm": "60 cm",
///                 "used_width_mm": 36}"#;
/// // f = s / (W / w + 1).
/// assert_eq!(answer(asked), r#"{"ok":{"focal_length_mm":84.90566037735849}}"#);
///
/// let refused = answer(r#"{"operation": "third_stop", "f_number": 1e400}"#);
/// assert!(refused.starts_with(r#"{"mistakes":[{"kind":"not_finite","number":101,"#));
/// # }
/// ```
pub fn answer(request: &str) -> String {
    let parsed = parse(request, Form::Json);
    let answered = match &parsed {
        Ok(node) => asked_in(node),
        Err(problems) => Err(Refusal::Request(problems.clone())),
    };
    match answered {
        Ok(answer) => format!("{{\"ok\":{answer}}}"),
        Err(refusal) => refused(&refusal, parsed.as_ref().ok(), request),
    }
}

/// The same of bytes, as other languages hand them over. What is not UTF-8 is refused: with a sign for each byte
/// that is none, a text that is to be handed back would be another.
fn answer_to_bytes(request: &[u8]) -> String {
    let bytes = match core::str::from_utf8(request) {
        Ok(text) => return answer(text),
        Err(error) => request.split_at(error.valid_up_to()),
    };
    let (readable, rest) = bytes;
    let readable = String::from_utf8_lossy(readable);
    let byte = rest.first().copied().unwrap_or_default();
    let at = readable.len();
    let label = format!("byte 0x{byte:02x} is no character");
    let problem = Problem::new(ProblemKind::NotReadable, "the request is not UTF-8 text", at..at + 1, label);
    refused(&Refusal::one(problem), None, &readable)
}

fn refused(refusal: &Refusal, node: Option<&Node>, request: &str) -> String {
    let all = mistakes(refusal, node, request);
    let all = serde_json::to_string(&all).unwrap_or_else(|_| "[]".to_owned());
    format!("{{\"mistakes\":{all}}}")
}

/// Reads the request and answers it.
fn asked_in(node: &Node) -> Answer {
    let operation = find(node)?;
    let mut fields = Vec::from([Field::text("operation", "what is asked", |_: &mut Asked, _| {})]);
    for (key, standing) in operation.takes {
        let known = KEYS.iter().map(|key| key.field).find(|field| field.slot.key == *key);
        fields.extend(known.map(|field| field.standing(*standing)));
    }
    let mut asked = Asked::default();
    let mut reading = Reading::default();
    reading.table("the request", &node.span, node, &fields, &mut asked);
    let mut problems = reading.problems;
    if !problems.is_empty() {
        problems.sort_by_key(Problem::start);
        for problem in &mut problems {
            problem.find_path(node);
        }
        return Err(Refusal::Request(problems));
    }
    match operation.answer {
        How::Asked(answer) => answer(&asked),
        How::Question(answer) => answer(&Question::new(asked)?),
    }
}

/// The operation that a request names.
fn find(node: &Node) -> Result<&'static Operation, Refusal> {
    let names: Vec<&str> = operations().map(|operation| operation.name).collect();
    let Some(entry) = node.get("operation") else {
        let problem = Problem::general(ProblemKind::Lacking, "the request names no operation");
        let help = format!("there are {}", listed(&names, "and"));
        return Err(Refusal::one(problem.lacks(["operation"]).help(help)));
    };
    let name = match &entry.node.value {
        Value::Text(name) => name.as_str(),
        _ => "",
    };
    operations().find(|operation| operation.name == name).ok_or_else(|| {
        let title = format!("there is no operation \"{name}\"");
        let problem = Problem::new(ProblemKind::UnknownName, title, entry.node.span.clone(), "not known");
        let mut problem = suggest::advise(problem, name, &names, "there are");
        problem.find_path(node);
        Refusal::one(problem)
    })
}

/// An answer as JSON.
fn told<T: Serialize + ?Sized>(answer: &T) -> Answer {
    serde_json::to_string(answer)
        .map_err(|error| Refusal::one(Problem::general(ProblemKind::NotReadable, format_args!("{error}"))))
}
