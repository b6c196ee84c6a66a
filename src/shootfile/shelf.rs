//! The named things of a shoot file: read once, picked by name.

use std::format;
use std::prelude::rust_2024::*;

use super::field::{Field, Name, listed};
use super::gear::{BAY, BLANK_CAMERA, BLANK_LENS, BLANK_TABLE, CAMERA, LENS, TABLE};
use super::problem::{Problem, ProblemKind};
use super::reading::Reading;
use super::subject::{self as subject_rows, BLANK_SUBJECT, SUBJECT};
use super::suggest;
use super::support::{BLANK_SUPPORT, SUPPORT};
use super::tree::{Node, Span, Value};
use crate::fault::Fault;
use crate::optics::camera::Camera;
use crate::optics::lens::Lens;
use crate::rig::support::Support;
use crate::scene::bay::Bay;
use crate::scene::subject::Subject;
use crate::scene::table::Table;

/// All things of one kind, in the order of the file.
#[derive(Clone, Debug)]
pub struct Shelf<T> {
    kind: &'static str,
    /// Each name with its thing; `None` where something was wrong with it.
    things: Vec<(String, Option<T>)>,
}

impl<T: Copy> Shelf<T> {
    /// Reads the tables under the kind's key.
    pub(crate) fn read(
        reading: &mut Reading,
        root: &Node,
        kind: &'static str,
        read: fn(&mut Reading, &str, &Span, &Node) -> Option<T>,
    ) -> Shelf<T> {
        let mut shelf = Shelf { kind, things: Vec::new() };
        let Some(entry) = root.get(kind) else { return shelf };
        let Value::Table(named) = &entry.node.value else {
            let label = format!("this is {}", entry.node.value.kind());
            let problem = Problem::new(
                ProblemKind::WrongKind,
                format_args!("every {kind} has a name"),
                entry.node.span.clone(),
                label,
            );
            reading
                .report(problem.help(format_args!(
                    "in TOML: [{kind}.NAME], in JSON: \"{kind}\": {{\"NAME\": {{...}}}}"
                )));
            return shelf;
        };
        for thing in named {
            let value = if matches!(thing.node.value, Value::Table(_)) {
                read(reading, &format!("{kind} \"{}\"", thing.key), &thing.key_span, &thing.node)
            } else {
                let label = format!("a {kind}'s name is to stand here");
                let problem = Problem::new(
                    ProblemKind::WrongKind,
                    format_args!("every {kind} has a name"),
                    thing.key_span.clone(),
                    label,
                );
                reading.report(
                    problem.help(format_args!("put it under [{kind}.NAME], with a name of your own")),
                );
                // One such message is enough: the other keys beside it are in the same wrong place.
                shelf.things.push((thing.key.clone(), None));
                break;
            };
            shelf.things.push((thing.key.clone(), value));
        }
        shelf
    }

    /// What the things are.
    pub fn kind(&self) -> &'static str {
        self.kind
    }

    /// The thing, where there is exactly one.
    pub fn only(&self) -> Option<T> {
        match self.things.as_slice() {
            [(_, thing)] => *thing,
            _ => None,
        }
    }

    /// The names, in the order of the file.
    pub fn names(&self) -> Vec<&str> {
        self.things.iter().map(|(name, _)| name.as_str()).collect()
    }

    /// The thing of that name.
    pub fn get(&self, name: &str) -> Option<T> {
        self.things.iter().find(|(known, _)| known == name).and_then(|(_, thing)| *thing)
    }

    /// The thing a name stands for, or a problem at its place.
    pub(crate) fn pick(&self, reading: &mut Reading, name: &Name) -> Option<(String, T)> {
        if !self.things.iter().any(|(known, _)| *known == name.text) {
            let kind = self.kind;
            let title = format!("there is no {kind} \"{}\"", name.text);
            let label = format!("no [{kind}.{}] in this file", name.text);
            let problem = Problem::new(ProblemKind::UnknownName, title, name.span.clone(), label);
            let what = format!("under `{kind}` this file has");
            reading.report(suggest::advise(problem, &name.text, &self.names(), &what));
        }
        self.get(&name.text).map(|thing| (name.text.clone(), thing))
    }

    /// The thing that a shot uses: the one it names, the one the shoot names, or the only one.
    pub(crate) fn resolve(
        &self,
        reading: &mut Reading,
        whose: &str,
        at: &Span,
        own: Option<&Name>,
        shoot: Option<&Name>,
    ) -> Option<(String, T)> {
        if let Some(name) = own {
            return self.pick(reading, name);
        }
        if let Some(name) = shoot {
            // A wrong name under [shoot] is reported once, where it stands.
            return self.get(&name.text).map(|thing| (name.text.clone(), thing));
        }
        let kind = self.kind;
        match self.things.as_slice() {
            [(name, thing)] => thing.map(|thing| (name.clone(), thing)),
            [] => {
                let title = format!("{whose} has no {kind}");
                let problem = Problem::new(
                    ProblemKind::Lacking,
                    title,
                    at.clone(),
                    format!("this file describes no {kind}"),
                );
                let problem = problem.lacks([kind]).help(format_args!(
                    "describe one under [{kind}.NAME]; `tablerig fields {kind}` lists what it takes"
                ));
                reading.report_lacking(kind, problem);
                None
            }
            several => {
                let title = format!("{whose} does not say which {kind}");
                let label = format!("this file has {}", several.len());
                let names: Vec<_> = self.names().iter().map(|name| format!("\"{name}\"")).collect();
                let problem = Problem::new(ProblemKind::Undecided, title, at.clone(), label).lacks([kind]);
                reading.report(
                    problem
                        .help(format_args!("add {kind} = {}, here or under [shoot]", listed(&names, "or"))),
                );
                None
            }
        }
    }

    /// Whether there is none of the kind.
    pub fn is_empty(&self) -> bool {
        self.things.is_empty()
    }
}

/// Reads a thing by its rows and has it check itself.
fn checked<T>(
    reading: &mut Reading,
    whose: &str,
    at: &Span,
    node: &Node,
    (fields, mut thing): (&[Field<T>], T),
    check: fn(&T) -> Result<(), Fault>,
) -> Option<T> {
    if !reading.table(whose, at, node, fields, &mut thing) {
        return None;
    }
    match check(&thing) {
        Ok(()) => Some(thing),
        Err(fault) => {
            reading.fault(whose, at, node, &fault);
            None
        }
    }
}

pub(crate) fn camera(reading: &mut Reading, whose: &str, at: &Span, node: &Node) -> Option<Camera> {
    checked(reading, whose, at, node, (CAMERA, BLANK_CAMERA), Camera::check)
}

pub(crate) fn lens(reading: &mut Reading, whose: &str, at: &Span, node: &Node) -> Option<Lens> {
    checked(reading, whose, at, node, (LENS, BLANK_LENS), Lens::check)
}

pub(crate) fn table(reading: &mut Reading, whose: &str, at: &Span, node: &Node) -> Option<Table> {
    checked(reading, whose, at, node, (TABLE, BLANK_TABLE), Table::check)
}

pub(crate) fn support(reading: &mut Reading, whose: &str, at: &Span, node: &Node) -> Option<Support> {
    checked(reading, whose, at, node, (SUPPORT, BLANK_SUPPORT), Support::check)
}

pub(crate) fn bay(reading: &mut Reading, whose: &str, at: &Span, node: &Node) -> Option<Bay> {
    checked(reading, whose, at, node, (BAY, Bay::OPEN), Bay::check)
}

pub(crate) fn subject(reading: &mut Reading, whose: &str, at: &Span, node: &Node) -> Option<Subject> {
    let mut draft = BLANK_SUBJECT;
    if !reading.table(whose, at, node, SUBJECT, &mut draft) {
        return None;
    }
    let subject = subject_rows::finish(draft, reading, whose, at, node)?;
    match subject.check() {
        Ok(()) => Some(subject),
        Err(fault) => {
            reading.fault(whose, at, node, &fault);
            None
        }
    }
}
