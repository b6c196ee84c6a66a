//! A shoot file: the gear named once, and the shots that refer to it, in TOML or as the same in JSON.
//!
//! The text becomes a tree of values with their places (`toml_tree`, `json_tree`); the rows of `gear`,
//! `subject`, `support` and `shot` say what may stand where (`field`); `reading` goes through the tree by
//! them and collects what is wrong; `shots` joins each shot with what it uses, chooses what it leaves open
//! (`kit`) and plans it. `whole` asks what all of them need together. `toml_text` writes a tree down again,
//! `edit` changes single values in a text.

pub mod append;
#[cfg(feature = "text-door")]
pub(crate) mod edit;
pub(crate) mod field;
pub(crate) mod gear;
mod json_tree;
pub(crate) mod kit;
#[cfg(feature = "sheet")]
mod leaf;
#[cfg(any(feature = "cli", feature = "text-door"))]
pub(crate) mod listing;
pub(crate) mod log;
pub(crate) mod order;
pub mod problem;
pub(crate) mod quantity;
pub(crate) mod reading;
mod several;
pub(crate) mod shelf;
pub(crate) mod shot;
mod shots;
pub(crate) mod stock;
pub(crate) mod subject;
pub(crate) mod suggest;
pub(crate) mod support;
#[cfg(feature = "text-door")]
mod toml_text;
mod toml_tree;
pub(crate) mod tree;
pub(crate) mod unit;
pub mod whole;

use std::prelude::rust_2024::*;

use self::kit::Offer;
pub use self::kit::{Chosen, OpenKit};
pub use self::log::LogEntry;
use self::order::ORDER;
use self::problem::Problem;
use self::reading::Reading;
pub use self::shelf::Shelf;
use self::shot::{CRITERIA, Names, SHOOT, ShootDraft};
use self::shots::{Common, shots};
use self::stock::WEIGHTS;
pub use self::stock::Weights;
use self::tree::Node;
pub use self::tree::{Span, Step};
use crate::brief::{Brief, Criteria};
use crate::optics::camera::Camera;
use crate::optics::lens::Lens;
use crate::plan::Plan;
use crate::rig::support::Support;
use crate::scene::bay::Bay;
use crate::scene::subject::Subject;
use crate::scene::table::Table;
use crate::shoot::minutes::Minutes;
use crate::shoot::precedence::Precedence;
use crate::shoot::weights::ShotWeights;

/// An invented shoot to begin with, in TOML.
pub const DEMO: &str = include_str!("demo.toml");

/// How a shoot file is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Form {
    /// As TOML.
    Toml,
    /// As JSON.
    Json,
}

impl Form {
    /// JSON where the text begins with a brace.
    pub fn of(text: &str) -> Form {
        if text.trim_start().starts_with('{') { Form::Json } else { Form::Toml }
    }
}

/// What a shoot file says, checked.
#[derive(Clone, Debug)]
pub struct ShootFile {
    /// Its title.
    pub title: Option<String>,
    /// Its note.
    pub note: Option<String>,
    /// What is named in it.
    pub gear: Gear,
    /// What shots that leave something open choose from.
    pub kit: OpenKit,
    /// The pieces of weight at hand.
    pub weights: Weights,
    /// What each kind of change between shots takes; `None` where the file does not say.
    pub minutes: Option<Minutes>,
    /// Its shots, planned, in the order of the file.
    pub shots: Vec<NamedShot>,
    /// Which of them must come before which.
    pub precedences: Vec<Precedence>,
    /// What was measured on the set, in the order in which it was written down.
    pub log: Vec<LogEntry>,
}

/// The named things of a shoot file.
#[derive(Clone, Debug)]
pub struct Gear {
    /// Cameras.
    pub cameras: Shelf<Camera>,
    /// Lenses.
    pub lenses: Shelf<Lens>,
    /// Tables.
    pub tables: Shelf<Table>,
    /// Subjects.
    pub subjects: Shelf<Subject>,
    /// Supports.
    pub supports: Shelf<Support>,
    /// Bays.
    pub bays: Shelf<Bay>,
}

impl Gear {
    /// Whether nothing is named at all.
    pub fn is_empty(&self) -> bool {
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
pub struct NamedShot {
    /// Its name.
    pub name: String,
    /// Its note.
    pub note: Option<String>,
    /// What it is shot with, by name.
    pub uses: Uses,
    /// What it left open, and how the choice was made; `None` where it names everything.
    pub chosen: Option<Chosen>,
    /// Its weights in whole pieces; `None` where the file says nothing of what is at hand.
    pub weights: Option<ShotWeights>,
    /// The shot with everything it is to be shot with, what was open chosen and the weights on.
    pub brief: Brief,
    /// Its plan.
    pub plan: Plan,
}

/// The names of what a shot is shot with.
#[derive(Clone, Debug, serde::Serialize)]
pub struct Uses {
    /// The camera.
    pub camera: String,
    /// The lens.
    pub lens: String,
    /// The table.
    pub table: String,
    /// `None` where the subject is written in the shot itself.
    pub subject: Option<String>,
    /// The support.
    pub support: String,
    /// `None` where the file describes no bay.
    pub bay: Option<String>,
    /// The board or cloth on the table; `None` where it has no name.
    pub surface: Option<String>,
    /// The backdrop; `None` where it has no name, or there is none.
    pub backdrop: Option<String>,
}

/// The tables a shoot file may have.
const TOP: &[&str] = &[
    "shoot", "camera", "lens", "table", "subject", "support", "bay", "criteria", "kit", "weights", "order",
    "shot", "log",
];

/// Reads a shoot file, or says everything that is wrong with it.
pub fn read(text: &str, form: Form) -> Result<ShootFile, Vec<Problem>> {
    understand(&parse(text, form)?)
}

/// What the text says, not yet understood.
pub(crate) fn parse(text: &str, form: Form) -> Result<Node, Vec<Problem>> {
    match form {
        Form::Json => json_tree::read(text),
        Form::Toml => toml_tree::read(text),
    }
}

/// What a tree says, checked and planned.
pub(crate) fn understand(root: &Node) -> Result<ShootFile, Vec<Problem>> {
    let mut reading = Reading::default();
    let file = shoot_file(&mut reading, root);
    let mut problems = reading.problems;
    problems.sort_by_key(Problem::start);
    for problem in &mut problems {
        problem.find_path(root);
    }
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
    let offer = Offer::read(reading, root, &gear);
    let mut weights = Weights::default();
    if let Some(entry) = root.get("weights") {
        reading.table("the weights", &entry.key_span, &entry.node, WEIGHTS, &mut weights);
    }
    let mut minutes = Minutes::TO_BEGIN_WITH;
    let order = root.get("order");
    if let Some(entry) = order {
        reading.table("the order", &entry.key_span, &entry.node, ORDER, &mut minutes);
    }
    let common = Common { gear: &gear, names: &shoot.names, criteria, offer: &offer, weights: &weights };
    let (shots, precedences) = shots(reading, root, &common);
    let planned: Vec<(&str, f64)> =
        shots.iter().map(|shot| (shot.name.as_str(), shot.plan.pose.aim.z_mm)).collect();
    // Without the shots nothing can be said of what was measured.
    let log = if reading.problems.is_empty() { log::entries(reading, root, &planned) } else { Vec::new() };
    ShootFile {
        title: shoot.title,
        note: shoot.note,
        gear,
        kit: offer.kit,
        weights,
        minutes: order.map(|_| minutes),
        shots,
        precedences,
        log,
    }
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
