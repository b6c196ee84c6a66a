//! A mistake in a shoot file: what is wrong, where it stands, and what was expected.

use std::fmt::Display;
use std::prelude::rust_2024::*;
use std::string::ToString;

use super::tree::{Node, Span, Step};
use crate::fault::Fault;

/// What sort of mistake it is. The numbers are part of the interface and are never used again for something
/// else; those of [`crate::fault::FaultKind`] lie under 400.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "snake_case")]
#[repr(i32)]
#[non_exhaustive]
pub enum ProblemKind {
    /// A number was refused: the fault says why.
    Refused = 400,
    /// The text is not what TOML or JSON is.
    NotReadable = 401,
    /// A key is not known there.
    UnknownKey = 402,
    /// A word is none of those that may stand there.
    UnknownWord = 403,
    /// A name stands for nothing in the file.
    UnknownName = 404,
    /// Something is of the wrong kind: a text for a number, a value for a table.
    WrongKind = 405,
    /// A text cannot be read as the quantity that is wanted.
    NoQuantity = 406,
    /// Something that must be given is not.
    Lacking = 407,
    /// Things are given that exclude each other.
    Conflicting = 408,
    /// A name or a key is taken already.
    Repeated = 409,
    /// There are more than can be told apart.
    TooMany = 410,
    /// It is not clear which of several things is meant.
    Undecided = 411,
}

/// One mistake: what is wrong, where, and what was expected.
#[derive(Clone, Debug)]
pub struct Problem {
    /// What sort of mistake it is.
    pub kind: ProblemKind,
    /// One sentence, without a full stop.
    pub title: String,
    /// The place in the text, in bytes, and what stands beside it. `None` where the text as a whole is meant.
    pub place: Option<(Span, String)>,
    /// A second place that has to do with it.
    pub also: Option<(Span, String)>,
    /// The number that was refused, with field and range.
    pub fault: Option<Fault>,
    /// The keys that must be there and are not.
    pub lacks: Vec<&'static str>,
    /// The way to the place through tables and lists, where it is one of the file's values.
    pub path: Vec<Step>,
    /// What the reader may need to know.
    pub notes: Vec<String>,
    /// What to do about it.
    pub helps: Vec<String>,
}

impl Problem {
    /// A mistake at a place of the text.
    pub(crate) fn new(kind: ProblemKind, title: impl Display, span: Span, label: impl Display) -> Problem {
        Problem { place: Some((span, label.to_string())), ..Problem::general(kind, title) }
    }

    /// A mistake that has no place in the text.
    pub(crate) fn general(kind: ProblemKind, title: impl Display) -> Problem {
        Problem {
            kind,
            title: title.to_string(),
            place: None,
            also: None,
            fault: None,
            lacks: Vec::new(),
            path: Vec::new(),
            notes: Vec::new(),
            helps: Vec::new(),
        }
    }

    /// Names a second place.
    pub(crate) fn also(mut self, span: Span, label: impl Display) -> Problem {
        self.also = Some((span, label.to_string()));
        self
    }

    /// Names the fault that it is.
    pub(crate) fn fault(mut self, fault: &Fault) -> Problem {
        self.fault = Some(*fault);
        self
    }

    /// Names the keys that are not there.
    pub(crate) fn lacks(mut self, keys: impl IntoIterator<Item = &'static str>) -> Problem {
        self.lacks.extend(keys);
        self
    }

    /// Adds what the reader may need to know.
    pub(crate) fn note(mut self, note: impl Display) -> Problem {
        self.notes.push(note.to_string());
        self
    }

    /// Adds what to do about it.
    pub(crate) fn help(mut self, help: impl Display) -> Problem {
        self.helps.push(help.to_string());
        self
    }

    /// Where it stands in the text; what has no place comes first.
    pub fn start(&self) -> usize {
        self.place.as_ref().map_or(0, |(span, _)| span.start)
    }

    /// Finds the way to the place in the tree that it was found in.
    pub(crate) fn find_path(&mut self, root: &Node) {
        if let Some((span, _)) = &self.place {
            self.path = root.path_to(span).unwrap_or_default();
        }
    }
}

/// Line and column of a byte of a text, both counted from 1; columns count characters.
pub fn line_and_column(text: &str, at: usize) -> (usize, usize) {
    let mut at = at.min(text.len());
    while !text.is_char_boundary(at) {
        at -= 1;
    }
    let before = &text[..at];
    let line_start = before.rfind('\n').map_or(0, |newline| newline + 1);
    (before.matches('\n').count() + 1, before[line_start..].chars().count() + 1)
}
