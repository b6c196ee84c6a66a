//! A shoot file: the gear named once, and the shots that refer to it.
//!
//! The text becomes a tree of values with their places ([`toml_tree`], [`json_tree`]); the rows of
//! [`gear`], [`subject`], [`support`] and [`shot`] say what may stand where ([`field`]); [`reading`] goes
//! through the tree by them and collects what is wrong.

pub(crate) mod field;
pub(crate) mod gear;
mod json_tree;
pub(crate) mod listing;
pub(crate) mod problem;
mod reading;
mod shelf;
pub(crate) mod shot;
pub(crate) mod source;
pub(crate) mod subject;
pub(crate) mod suggest;
pub(crate) mod support;
mod toml_tree;
mod tree;

use std::borrow::ToOwned;
use std::format;
use std::prelude::rust_2024::*;

use self::problem::Problem;
use self::reading::Reading;
pub(crate) use self::shelf::Shelf;
use self::shot::{CRITERIA, Names, SHOOT, SHOT, ShootDraft, ShotDraft};
use self::source::Source;
use self::tree::{Node, Span, Value};
use crate::brief::{Brief, Criteria};
use crate::optics::camera::Camera;
use crate::optics::lens::Lens;
use crate::plan::{Plan, plan};
use crate::rig::support::Support;
use crate::scene::bay::Bay;
use crate::scene::subject::Subject;
use crate::scene::table::Table;

/// What a shoot file says, checked.
#[derive(Clone, Debug)]
pub(crate) struct ShootFile {
    pub(crate) title: Option<String>,
    pub(crate) note: Option<String>,
    pub(crate) gear: Gear,
    pub(crate) shots: Vec<NamedShot>,
}

/// The named things of a shoot file.
#[derive(Clone, Debug)]
pub(crate) struct Gear {
    pub(crate) cameras: Shelf<Camera>,
    pub(crate) lenses: Shelf<Lens>,
    pub(crate) tables: Shelf<Table>,
    pub(crate) subjects: Shelf<Subject>,
    pub(crate) supports: Shelf<Support>,
    pub(crate) bays: Shelf<Bay>,
}

impl Gear {
    /// Whether nothing is named at all.
    pub(crate) fn is_empty(&self) -> bool {
        self.cameras.is_empty()
            && self.lenses.is_empty()
            && self.tables.is_empty()
            && self.subjects.is_empty()
            && self.supports.is_empty()
            && self.bays.is_empty()
    }
}

/// One shot with everything it refers to.
#[derive(Clone, Debug)]
pub(crate) struct NamedShot {
    pub(crate) name: String,
    pub(crate) note: Option<String>,
    pub(crate) uses: Uses,
    pub(crate) brief: Brief,
    pub(crate) plan: Plan,
}

/// The names of what a shot is shot with.
#[derive(Clone, Debug, serde::Serialize)]
pub(crate) struct Uses {
    pub(crate) camera: String,
    pub(crate) lens: String,
    pub(crate) table: String,
    /// `None` where the subject is written in the shot itself.
    pub(crate) subject: Option<String>,
    pub(crate) support: String,
    /// `None` where the file describes no bay.
    pub(crate) bay: Option<String>,
}

/// The tables a shoot file may have.
const TOP: &[&str] = &["shoot", "camera", "lens", "table", "subject", "support", "bay", "criteria", "shot"];

/// Reads a shoot file, or says everything that is wrong with it.
pub(crate) fn read(source: &Source) -> Result<ShootFile, Vec<Problem>> {
    let root = if source.json { json_tree::read(&source.text) } else { toml_tree::read(&source.text) }?;
    let mut reading = Reading::default();
    let file = shoot_file(&mut reading, &root);
    let mut problems = reading.problems;
    problems.sort_by_key(Problem::start);
    if problems.is_empty() { Ok(file) } else { Err(problems) }
}

fn shoot_file(reading: &mut Reading, root: &Node) -> ShootFile {
    for entry in root.entries() {
        if !TOP.contains(&entry.key.as_str()) {
            reading.report(suggest::unknown_key("a shoot file", entry, TOP));
        }
    }
    let mut shoot = ShootDraft::default();
    if let Some(entry) = root.get("shoot") {
        reading.table("the shoot", &entry.key_span, &entry.node, SHOOT, &mut shoot);
    }
    let mut criteria = Criteria::DEFAULT;
    if let Some(entry) = root.get("criteria") {
        reading.table("the criteria", &entry.key_span, &entry.node, CRITERIA, &mut criteria);
    }
    let gear = Gear {
        cameras: Shelf::read(reading, root, "camera", shelf::camera),
        lenses: Shelf::read(reading, root, "lens", shelf::lens),
        tables: Shelf::read(reading, root, "table", shelf::table),
        subjects: Shelf::read(reading, root, "subject", shelf::subject),
        supports: Shelf::read(reading, root, "support", shelf::support),
        bays: Shelf::read(reading, root, "bay", shelf::bay),
    };
    check_shoot_names(reading, &gear, &shoot.names);
    let shots = shots(reading, root, &gear, &shoot.names, criteria);
    ShootFile { title: shoot.title, note: shoot.note, gear, shots }
}

/// A wrong name under `[shoot]` is wrong whether or not a shot comes to use it.
fn check_shoot_names(reading: &mut Reading, gear: &Gear, names: &Names) {
    let _ = names.camera.as_ref().map(|name| gear.cameras.pick(reading, name));
    let _ = names.lens.as_ref().map(|name| gear.lenses.pick(reading, name));
    let _ = names.table.as_ref().map(|name| gear.tables.pick(reading, name));
    let _ = names.subject.as_ref().map(|name| gear.subjects.pick(reading, name));
    let _ = names.support.as_ref().map(|name| gear.supports.pick(reading, name));
    let _ = names.bay.as_ref().map(|name| gear.bays.pick(reading, name));
}

fn shots(
    reading: &mut Reading,
    root: &Node,
    gear: &Gear,
    shoot: &Names,
    criteria: Criteria,
) -> Vec<NamedShot> {
    let Some(entry) = root.get("shot") else { return Vec::new() };
    let Value::List(list) = &entry.node.value else {
        let label = format!("this is {}", entry.node.value.kind());
        let problem = Problem::new("shots are a list of tables", entry.node.span.clone(), label);
        reading.report(problem.help("in TOML every shot has its own [[shot]], with two brackets"));
        return Vec::new();
    };
    let mut shots = Vec::new();
    let mut seen: Vec<(String, Span)> = Vec::new();
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
        if let Some(name) = &draft.name {
            match seen.iter().find(|(known, _)| *known == name.text) {
                Some((_, first)) => reading.report(
                    Problem::new(
                        format_args!("two shots are called \"{}\"", name.text),
                        name.span.clone(),
                        "taken",
                    )
                    .also(first.clone(), "by this one"),
                ),
                None => seen.push((name.text.clone(), name.span.clone())),
            }
        }
        let named = shot(reading, gear, shoot, criteria, (&whose, node), &draft);
        if let (true, Some(named)) = (read, named) {
            shots.push(named);
        }
    }
    shots
}

fn shot(
    reading: &mut Reading,
    gear: &Gear,
    shoot: &Names,
    criteria: Criteria,
    (whose, node): (&str, &Node),
    draft: &ShotDraft,
) -> Option<NamedShot> {
    let at = &node.span;
    let own = &draft.names;
    let camera = gear.cameras.resolve(reading, whose, at, own.camera.as_ref(), shoot.camera.as_ref());
    let lens = gear.lenses.resolve(reading, whose, at, own.lens.as_ref(), shoot.lens.as_ref());
    let table = gear.tables.resolve(reading, whose, at, own.table.as_ref(), shoot.table.as_ref());
    let subject = match &draft.own_subject {
        Some(subject) => subject.map(|subject| (None, subject)),
        None => gear
            .subjects
            .resolve(reading, whose, at, own.subject.as_ref(), shoot.subject.as_ref())
            .map(|(name, subject)| (Some(name), subject)),
    };
    let support = gear.supports.resolve(reading, whose, at, own.support.as_ref(), shoot.support.as_ref());
    let bay = if own.bay.is_none() && shoot.bay.is_none() && gear.bays.is_empty() {
        Some((None, Bay::OPEN))
    } else {
        let bay = gear.bays.resolve(reading, whose, at, own.bay.as_ref(), shoot.bay.as_ref());
        bay.map(|(name, bay)| (Some(name), bay))
    };
    let shot = shot::finish(draft, reading, whose, at, node);
    let (camera, lens, table, support) = (camera?, lens?, table?, support?);
    let (subject, bay) = (subject?, bay?);
    let brief = Brief {
        shot: shot?,
        camera: camera.1,
        lens: lens.1,
        table: table.1,
        subject: subject.1,
        support: support.1,
        bay: bay.1,
        criteria,
    };
    let plan = match plan(&brief) {
        Ok(plan) => plan,
        Err(fault) => {
            reading.fault(whose, at, node, &fault);
            return None;
        }
    };
    let uses = Uses {
        camera: camera.0,
        lens: lens.0,
        table: table.0,
        subject: subject.0,
        support: support.0,
        bay: bay.0,
    };
    let name = draft.name.as_ref().map_or_else(|| whose.to_owned(), |name| name.text.clone());
    Some(NamedShot { name, note: draft.note.clone(), uses, brief, plan })
}
