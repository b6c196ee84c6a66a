//! Reads a table of a shoot file by its rows, and collects every mistake on the way.

use std::format;
use std::prelude::rust_2024::*;

use super::field::{Field, Filled, Filling, Found, Name, Slot, Standing, Takes, bounds, listed, plain};
use super::problem::{Problem, ProblemKind};
use super::quantity;
use super::suggest;
use super::tree::{Entry, Node, Span, Value};
use super::unit::Dimension;
use crate::fault::{Fault, FaultKind};
use crate::optics::sensor::Aspect;
use crate::range::{self, Range};

/// The mistakes found so far.
#[derive(Debug, Default)]
pub(crate) struct Reading {
    pub(crate) problems: Vec<Problem>,
    /// The kinds of which the file has none: said once, not by every shot.
    lacking: Vec<&'static str>,
}

impl Reading {
    pub(crate) fn report(&mut self, problem: Problem) {
        self.problems.push(problem);
    }

    /// Reports that the file has nothing of a kind, the first time.
    pub(crate) fn report_lacking(&mut self, kind: &'static str, problem: Problem) {
        if !self.lacking.contains(&kind) {
            self.lacking.push(kind);
            self.report(problem);
        }
    }

    /// Reads a table into `into`. True if nothing was wrong with it; `whose` says what it describes, `at`
    /// where it begins.
    pub(crate) fn table<T>(
        &mut self,
        whose: &str,
        at: &Span,
        node: &Node,
        fields: &[Field<T>],
        into: &mut T,
    ) -> bool {
        self.fill(whose, at, node, &mut Filled { fields, into })
    }

    fn fill(&mut self, whose: &str, at: &Span, node: &Node, into: &mut dyn Filling) -> bool {
        let before = self.problems.len();
        let Value::Table(entries) = &node.value else {
            let label = format!("this is {}", node.value.kind());
            self.report(Problem::new(
                ProblemKind::WrongKind,
                format_args!("{whose} is described in a table"),
                node.span.clone(),
                label,
            ));
            return false;
        };
        let slots = into.slots();
        let keys: Vec<&str> = slots.iter().map(|slot| slot.key).collect();
        let mut misspelt = Vec::new();
        for entry in entries {
            match slots.iter().enumerate().find(|(_, slot)| slot.key == entry.key) {
                Some((index, slot)) => {
                    if let Some(found) = self.found(whose, entry, slot) {
                        into.put(index, found);
                    }
                }
                None => {
                    misspelt.extend(suggest::nearest(&entry.key, &keys));
                    self.report(suggest::unknown_key(whose, entry, &keys));
                }
            }
        }
        // What stands there misspelt is not missing as well.
        let required = slots.iter().filter(|slot| slot.standing == Standing::Required);
        let absent = |key| node.get(key).is_none() && !misspelt.contains(&key);
        let missing: Vec<_> = required.filter(|slot| absent(slot.key)).collect();
        if !missing.is_empty() {
            let keys: Vec<_> = missing.iter().map(|slot| format!("`{}`", slot.key)).collect();
            let title = format!("{whose} lacks {}", listed(&keys, "and"));
            let mut problem = Problem::new(ProblemKind::Lacking, title, at.clone(), "to be given here");
            problem = problem.lacks(missing.iter().map(|slot| slot.key));
            for slot in missing {
                problem = problem.note(format_args!("{}: {}; {}", slot.key, slot.meaning, slot.allowed()));
            }
            self.report(problem);
        }
        self.problems.len() == before
    }

    /// The value of a key; `None` where it is wrong, which is then reported.
    fn found<'a>(&'a mut self, whose: &'a str, entry: &'a Entry, slot: &Slot) -> Option<Found<'a>> {
        let meaning = slot.meaning;
        match &slot.takes {
            Takes::Number(range) => return self.number(entry, range, meaning).map(Found::Number),
            Takes::Whole(range) => {
                let value = self.number(entry, range, meaning)?;
                if crate::number::floor(value) == value {
                    return Some(Found::Whole(value as u32));
                }
                self.wrong(entry, "is a whole number", &slot.allowed(), meaning);
            }
            Takes::Choice(words) => match &entry.node.value {
                Value::Text(text) => match words.iter().position(|word| word == text) {
                    Some(index) => return Some(Found::Choice(index)),
                    None => self.report(suggest::unknown_word(entry, text, words, meaning)),
                },
                _ => self.wrong(entry, "takes one of its words", &slot.allowed(), meaning),
            },
            Takes::Flag => match entry.node.value {
                Value::Flag(flag) => return Some(Found::Flag(flag)),
                _ => self.wrong(entry, "is true or false", "true or false, without quotes", meaning),
            },
            Takes::Text => match name(&entry.node) {
                Some(name) => return Some(Found::Name(name)),
                None => self.wrong(entry, "is a text", "a text between quotes, not empty", meaning),
            },
            Takes::Aspect(range) => match &entry.node.value {
                Value::Text(text) => match aspect(text, range) {
                    Some(aspect) => return Some(Found::Aspect(aspect)),
                    None => {
                        let each = bounds(range.least, range.most, Dimension::Pure);
                        let expected = format!("such as \"4:5\", each number {each}");
                        self.wrong(entry, "is width to height", &expected, meaning);
                    }
                },
                _ => self.wrong(entry, "is width to height", "between quotes, such as \"4:5\"", meaning),
            },
            Takes::Reference(kind) => match name(&entry.node) {
                Some(name) => return Some(Found::Name(name)),
                None => self.wrong(entry, "is a name", &format!("the name of a {kind}"), meaning),
            },
            Takes::Part | Takes::Own(_) => return Some(Found::Part(self, whose, entry)),
            Takes::ReferenceOrPart(kind) => match (&entry.node.value, name(&entry.node)) {
                (_, Some(name)) => return Some(Found::Name(name)),
                (Value::Table(_), _) => return Some(Found::Part(self, whose, entry)),
                _ => self.wrong(entry, "is a name or a table", &format!("the name of a {kind}"), meaning),
            },
        }
        None
    }

    pub(crate) fn wrong(&mut self, entry: &Entry, what: &str, expected: &str, meaning: &str) {
        let label = match &entry.node.value {
            Value::Text(_) | Value::Number(_) | Value::Flag(_) => format!("expected {expected}"),
            other => format!("expected {expected}, found {}", other.kind()),
        };
        let problem = Problem::new(
            ProblemKind::WrongKind,
            format_args!("`{}` {what}", entry.key),
            entry.node.span.clone(),
            label,
        );
        self.report(problem.note(meaning));
    }

    /// The number of an entry, within its range.
    pub(crate) fn number(&mut self, entry: &Entry, range: &Range, meaning: &str) -> Option<f64> {
        let dimension = Dimension::of(range.unit, range.field);
        let value = match &entry.node.value {
            Value::Number(value) => *value,
            Value::Text(text) => match quantity::parse(text, dimension) {
                Ok(value) => value,
                Err(wrong) => {
                    let title = format!("`{}` cannot be read as {}", entry.key, dimension.noun());
                    let problem =
                        Problem::new(ProblemKind::NoQuantity, title, entry.node.span.clone(), wrong);
                    let how = format!("write {}", dimension.how());
                    self.report(problem.note(format_args!("{}: {meaning}", entry.key)).help(how));
                    return None;
                }
            },
            other => {
                let label = format!("expected {}, found {}", dimension.noun(), other.kind());
                let problem = Problem::new(
                    ProblemKind::WrongKind,
                    format_args!("`{}` is {}", entry.key, dimension.noun()),
                    entry.node.span.clone(),
                    label,
                );
                self.report(
                    problem
                        .note(format_args!("{}: {meaning}", entry.key))
                        .help(format_args!("write {}", dimension.how())),
                );
                return None;
            }
        };
        match range.check(value) {
            Ok(value) => Some(value),
            Err(fault) => {
                let quoted = matches!(entry.node.value, Value::Text(_));
                let given = if quoted { Some(value) } else { None };
                self.report(refused(&entry.key, &entry.node.span, &fault, given, meaning));
                None
            }
        }
    }

    /// Shows a contradiction that a whole thing's check found at the field it names, or where the thing
    /// begins if that field was left out.
    pub(crate) fn fault(&mut self, whose: &str, at: &Span, node: &Node, fault: &Fault) {
        let path = fault.field.split_once('.').map_or(fault.field, |(_, path)| path);
        let key = path.rsplit('.').next().unwrap_or(path);
        let meaning = range::find(fault.field).map_or("", |range| range.meaning);
        let span = node.find(path).map_or_else(|| at.clone(), |found| found.span.clone());
        let problem = refused(key, &span, fault, None, meaning);
        self.report(problem.note(format_args!("in {whose}")));
    }
}

fn refused(key: &str, span: &Span, fault: &Fault, given: Option<f64>, meaning: &str) -> Problem {
    let unit = range::find(fault.field).map_or("", |range| range.unit);
    let dimension = Dimension::of(unit, fault.field);
    let allowed = bounds(fault.least, fault.most, dimension);
    let bounded = fault.least.is_finite() || fault.most.is_finite();
    let label = match given {
        // Of what no number gives no range can be told.
        _ if !bounded => "no value will do here".into(),
        Some(value) if fault.kind != FaultKind::NotFinite => {
            format!("this is {} {}; expected {allowed}", plain(value), dimension.symbol())
        }
        _ => format!("expected {allowed}"),
    };
    let problem = Problem::new(
        ProblemKind::Refused,
        format_args!("`{key}` {}", fault.kind.sentence()),
        span.clone(),
        label,
    )
    .fault(fault);
    if meaning.is_empty() { problem } else { problem.note(format_args!("{key}: {meaning}")) }
}

/// A text that is not empty.
pub(crate) fn name(node: &Node) -> Option<Name> {
    match &node.value {
        Value::Text(text) if !text.trim().is_empty() => {
            Some(Name { text: text.clone(), span: node.span.clone() })
        }
        _ => None,
    }
}

fn aspect(text: &str, range: &Range) -> Option<Aspect> {
    let (width, height) = text.split_once(':')?;
    let side = |text: &str| range.check(text.trim().parse().ok()?).ok();
    Some(Aspect { width: side(width)?, height: side(height)? })
}
