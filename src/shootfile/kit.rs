//! The rows of `[kit]`, and what a shot that leaves its lens, support or side open is chosen from.

use std::borrow::ToOwned;
use std::format;
use std::prelude::rust_2024::*;

use super::Gear;
use super::field::{Field, Name, listed};
use super::problem::{Problem, ProblemKind};
use super::reading::Reading;
use super::several::{Several, several, sides};
use super::shelf::Shelf;
use super::shot::SIDES;
use super::tree::{Node, Span};
use crate::brief::Brief;
use crate::optics::lens::Lens;
use crate::rig::support::Support;
use crate::scene::table::Side;
use crate::shoot::choose::choose;
use crate::shoot::kit::{Candidate, Combination, Kit, Outcome};

/// What is said under `[kit]`.
#[derive(Clone, Debug, Default)]
pub(crate) struct KitDraft {
    lenses: Option<Several>,
    supports: Option<Several>,
    sides: Option<Vec<Side>>,
}

const LENSES: &str = "the names of lenses";
const SUPPORTS: &str = "the names of supports";

pub(crate) static KIT: &[Field<KitDraft>] = &[
    Field::own(
        "lenses",
        LENSES,
        "what shots that name no lens, or \"any\", choose from",
        |reading, _, entry, kit: &mut KitDraft| {
            kit.lenses = several(reading, entry, LENSES, "what shots that name no lens choose from");
        },
    )
    .otherwise("every lens of the file"),
    Field::own("supports", SUPPORTS, "... for supports", |reading, _, entry, kit: &mut KitDraft| {
        kit.supports = several(reading, entry, SUPPORTS, "what shots that name no support choose from");
    })
    .otherwise("every support of the file"),
    Field::own(
        "sides",
        "a list of front, right, back and left",
        "... for the stand's side",
        |reading, _, entry, kit: &mut KitDraft| {
            kit.sides = sides(reading, entry, SIDES, None, "the sides on which the stand may be");
        },
    )
    .otherwise("all four for \"any\"; a shot that names none has the one of the shortest reach"),
];

/// Gear by name, to choose from. An empty list is not open.
#[derive(Clone, Debug, Default, serde::Serialize)]
pub struct OpenKit {
    /// Lenses, the preferred first.
    pub lenses: Vec<String>,
    /// Supports.
    pub supports: Vec<String>,
    /// Sides of the table.
    pub sides: Vec<Side>,
    /// Each of `lenses`.
    #[serde(skip)]
    pub lens: Vec<Lens>,
    /// Each of `supports`.
    #[serde(skip)]
    pub support: Vec<Support>,
}

impl OpenKit {
    /// To choose from.
    pub fn kit(&self) -> Kit<'_> {
        Kit { lenses: &self.lens, supports: &self.support, sides: &self.sides }
    }

    /// Whether nothing is open.
    pub fn is_closed(&self) -> bool {
        self.lenses.is_empty() && self.supports.is_empty() && self.sides.is_empty()
    }

    /// The name of a combination's lens; `None` where the shot names its own.
    pub fn lens_name(&self, combination: &Combination) -> Option<&str> {
        self.lenses.get(combination.lens_index?).map(String::as_str)
    }

    /// The name of a combination's support.
    pub fn support_name(&self, combination: &Combination) -> Option<&str> {
        self.supports.get(combination.support_index?).map(String::as_str)
    }
}

/// What a shot left open, and out of how much the best was taken.
#[derive(Clone, Debug, serde::Serialize)]
pub struct Chosen {
    /// What there was to choose from.
    pub from: OpenKit,
    /// How many combinations were planned.
    pub planned: usize,
    /// How many of them can be done. Where none can, the least stopped was taken.
    pub possible: usize,
}

impl Chosen {
    /// What was left open and how it was chosen, in a sentence.
    pub fn sentence(&self) -> String {
        let OpenKit { lenses, supports, sides, .. } = &self.from;
        let kinds =
            [(!lenses.is_empty(), "lens"), (!supports.is_empty(), "support"), (!sides.is_empty(), "side")];
        let kinds: Vec<&str> = kinds.iter().filter(|(open, _)| *open).map(|(_, word)| *word).collect();
        let how = match (self.possible, self.planned) {
            (0, planned) => format!("none of {planned} combinations can be done; this one is stopped least"),
            (1, planned) => format!("the only one of {planned} combinations that can be done"),
            (possible, planned) => {
                format!("the best of {planned} combinations, {possible} of which can be done")
            }
        };
        format!("Chosen: {}, {how}.", listed(&kinds, "and"))
    }
}

/// What `[kit]` offers.
#[derive(Clone, Debug, Default)]
pub(crate) struct Offer {
    /// Whether there is a `[kit]` at all: shots that name nothing then choose.
    pub(crate) given: bool,
    pub(crate) kit: OpenKit,
    /// Whether it names sides.
    pub(crate) sides_given: bool,
}

impl Offer {
    /// Reads `[kit]`.
    pub(crate) fn read(reading: &mut Reading, root: &Node, gear: &Gear) -> Offer {
        let mut draft = KitDraft::default();
        let entry = root.get("kit");
        if let Some(entry) = entry {
            reading.table("the kit", &entry.key_span, &entry.node, KIT, &mut draft);
        }
        let lens = offered(reading, &gear.lenses, draft.lenses.as_ref());
        let support = offered(reading, &gear.supports, draft.supports.as_ref());
        let sides_given = draft.sides.is_some();
        let (lenses, lens) = lens.into_iter().unzip();
        let (supports, support) = support.into_iter().unzip();
        let sides = draft.sides.unwrap_or(Side::ALL.to_vec());
        Offer { given: entry.is_some(), kit: OpenKit { lenses, supports, sides, lens, support }, sides_given }
    }
}

fn offered<T: Copy>(reading: &mut Reading, shelf: &Shelf<T>, named: Option<&Several>) -> Vec<(String, T)> {
    match named {
        Some(several) => several.names.iter().filter_map(|name| shelf.pick(reading, name)).collect(),
        None => {
            let names = shelf.names().into_iter();
            names.filter_map(|name| Some((name.to_owned(), shelf.get(name)?))).collect()
        }
    }
}

/// One thing, or several to choose from.
pub(crate) enum Wanted<T> {
    One(String, T),
    Open(Vec<(String, T)>),
}

impl<T: Copy> Wanted<T> {
    /// What a shot is to use: what it names, what the shoot names, what the kit offers, or the only one.
    pub(crate) fn find(
        reading: &mut Reading,
        (whose, at): (&str, &Span),
        shelf: &Shelf<T>,
        own: Option<&Several>,
        shoot: Option<&Name>,
        offered: (bool, Vec<(String, T)>),
    ) -> Option<Wanted<T>> {
        let (kit_given, offered) = offered;
        let known = |name: &Name| shelf.names().contains(&name.text.as_str());
        let open = match own {
            Some(own) if own.is_any() && !own.one().is_some_and(known) => {
                if shelf.is_empty() {
                    shelf.resolve(reading, whose, at, None, None)?;
                }
                offered
            }
            Some(own) => match own.one() {
                Some(name) => return shelf.pick(reading, name).map(|(name, thing)| Wanted::One(name, thing)),
                None => own.names.iter().map(|name| shelf.pick(reading, name)).collect::<Option<_>>()?,
            },
            None if shoot.is_none() && kit_given && !shelf.is_empty() => offered,
            None => {
                let one = shelf.resolve(reading, whose, at, None, shoot);
                return one.map(|(name, thing)| Wanted::One(name, thing));
            }
        };
        match open.as_slice() {
            // Whatever is wrong with the kit has been said.
            [] => None,
            [(name, thing)] => Some(Wanted::One(name.clone(), *thing)),
            _ => Some(Wanted::Open(open)),
        }
    }

    /// The first, to begin the brief with.
    pub(crate) fn first(&self) -> Option<(String, T)> {
        match self {
            Wanted::One(name, thing) => Some((name.clone(), *thing)),
            Wanted::Open(things) => things.first().cloned(),
        }
    }

    /// What is open, names and things apart.
    pub(crate) fn open(self) -> (Vec<String>, Vec<T>) {
        match self {
            Wanted::One(..) => (Vec::new(), Vec::new()),
            Wanted::Open(things) => things.into_iter().unzip(),
        }
    }
}

/// Chooses the best combination for a shot into its brief and the names of what it uses.
pub(crate) fn chosen(
    reading: &mut Reading,
    (whose, at, node): (&str, &Span, &Node),
    from: OpenKit,
    brief: &mut Brief,
    names: (&mut String, &mut String),
) -> Option<Chosen> {
    let mut places = [Candidate::VACANT];
    let choice = match choose(brief, &from.kit(), &mut places) {
        Ok(choice) => choice,
        Err(fault) => {
            reading.fault(whose, at, node, &fault);
            return None;
        }
    };
    let (planned, possible) = (choice.planned, choice.possible);
    let first = choice.candidates.first()?;
    if let Outcome::Refused(fault) = &first.outcome {
        reading.fault(whose, at, node, fault);
        return None;
    }
    *brief = from.kit().brief_with(brief, &first.combination);
    if let Some(name) = from.lens_name(&first.combination) {
        *names.0 = name.to_owned();
    }
    if let Some(name) = from.support_name(&first.combination) {
        *names.1 = name.to_owned();
    }
    Some(Chosen { from, planned, possible })
}

/// A backdrop that is named, but stands nowhere.
pub(crate) fn backdrop_without_place(reading: &mut Reading, whose: &str, name: &Name) {
    let title = format!("{whose} names a backdrop, but not where it stands");
    let problem = Problem::new(ProblemKind::Lacking, title, name.span.clone(), "this one");
    reading.report(
        problem.lacks(["backdrop_behind_mm"]).help("give backdrop_behind_mm: how far behind the aim point"),
    );
}
