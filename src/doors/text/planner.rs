//! Questions about a whole shoot: which gear takes a shot, where the table may stand, what to book and to
//! bring, and in which order to shoot.

use std::prelude::rust_2024::*;
use std::vec;

use serde::Serialize;

use super::asked::Asked;
use super::given::Question;
use super::refusal::Refusal;
use super::shots::{FORM, ONE};
use super::{Answer, How, Operation, REQUIRED, told};
use crate::caution::overhead::OVERHEAD_CAUTIONS;
use crate::scene::table::Side;
use crate::shoot::booking::Booking;
use crate::shoot::change::Change;
use crate::shoot::choose::choose as chosen;
use crate::shoot::kit::{Candidate, Combination, Outcome};
use crate::shoot::minutes::{Minutes, Rerig};
use crate::shoot::order::Order;
use crate::shoot::pieces::{Pieces, whole_pieces as whole};
use crate::shoot::precedence::OrderFault;
use crate::shoot::pull::PullList;
use crate::shoot::smallest::{smallest_changes as smallest, smallest_changes_in_kit};
use crate::shootfile::field::Standing;
use crate::shootfile::kit::OpenKit;
use crate::shootfile::problem::{Problem, ProblemKind};
use crate::shootfile::whole::{BayFit, Whole};
use crate::shootfile::{NamedShot, ShootFile};

pub(super) const LEAVE_OUT: (&str, Standing) = ("leave_out", Standing::Otherwise("none: all shots count"));

pub(super) static OPERATIONS: &[Operation] = &[
    Operation {
        name: "choose",
        meaning: "Which lens, support and side of the file's kit take a shot best: every combination planned and ranked, and the smallest changes where none can be done.",
        takes: &[
            ("shoot", REQUIRED),
            FORM,
            ("shot", ONE),
            ("open", Standing::Otherwise("what the shot leaves open, or all")),
        ],
        answers: "Ranked",
        answer: How::Question(choose),
    },
    Operation {
        name: "smallest_changes",
        meaning: "The smallest changes that, each alone, let a stopped shot be taken.",
        takes: &[("shoot", REQUIRED), FORM, ("shot", ONE)],
        answers: "SmallestChanges",
        answer: How::Question(smallest_changes),
    },
    Operation {
        name: "fit",
        meaning: "Whether the shots fit their bays as the table stands, and where in it the table may stand.",
        takes: &[("shoot", REQUIRED), FORM, LEAVE_OUT],
        answers: "Fitted",
        answer: How::Question(fit),
    },
    Operation {
        name: "book",
        meaning: "The smallest room in which all the shots can be taken, and everything they need from the shelves.",
        takes: &[("shoot", REQUIRED), FORM, LEAVE_OUT],
        answers: "Booked",
        answer: How::Question(book),
    },
    Operation {
        name: "order",
        meaning: "The order of shots that needs the least re-rigging.",
        takes: &[("shoot", REQUIRED), FORM, LEAVE_OUT],
        answers: "Ordered",
        answer: How::Question(order),
    },
    Operation {
        name: "whole_pieces",
        meaning: "The pieces that together weigh at least so much, and as little over it as their sizes allow.",
        takes: &[("needed_kg", REQUIRED), ("sizes", REQUIRED)],
        answers: "WholePieces",
        answer: How::Asked(whole_pieces),
    },
];

/// The shots that an answer counts, by name: what it tells of a shot by number means these, from 0.
fn names<'a>(whole: &Whole<'a>) -> Vec<&'a str> {
    whole.shots.iter().map(|shot| shot.name.as_str()).collect()
}

/// A combination by its names.
#[derive(Serialize)]
pub(super) struct With<'a> {
    lens: &'a str,
    support: &'a str,
    /// The side of the table; `None`: the shot's own, or directly under the camera, on no one side.
    side: Option<Side>,
}

/// A combination with what became of it.
#[derive(Serialize)]
pub(super) struct RankedCombination<'a> {
    with: With<'a>,
    outcome: Outcome,
    /// On what it lost against the best, or what stops it, in one sentence.
    in_words: Option<&'static str>,
}

/// A change that makes a combination work.
#[derive(Serialize)]
pub(super) struct ChangeWith<'a> {
    with: With<'a>,
    change: Change,
}

/// The combinations of what is open, the best first.
#[derive(Serialize)]
pub(super) struct Ranked<'a> {
    shot: &'a str,
    open: &'a OpenKit,
    /// How many were planned.
    planned: usize,
    /// How many of them can be done.
    possible: usize,
    candidates: Vec<RankedCombination<'a>>,
    /// The smallest changes, each alone; none where some combination can be done as it is.
    changes: Vec<ChangeWith<'a>>,
    /// What goes with every load above a table or a person.
    usual_cautions: [&'static str; 8],
}

/// What is open: as asked, or as the shot leaves it, or all.
fn opened(file: &ShootFile, shot: &NamedShot, asked: &[&str]) -> OpenKit {
    let own = shot.chosen.as_ref().map(|chosen| &chosen.from);
    let from = |what: &str, has: fn(&OpenKit) -> bool| {
        let own = own.filter(|own| has(own));
        let is_open = match (asked, &shot.chosen) {
            ([], Some(_)) => own.is_some(),
            ([], None) => true,
            (asked, _) => asked.contains(&what),
        };
        is_open.then(|| own.unwrap_or(&file.kit))
    };
    let mut open = OpenKit::default();
    if let Some(kit) = from("lens", |kit| !kit.lenses.is_empty()) {
        (open.lenses, open.lens) = (kit.lenses.clone(), kit.lens.clone());
    }
    if let Some(kit) = from("support", |kit| !kit.supports.is_empty()) {
        (open.supports, open.support) = (kit.supports.clone(), kit.support.clone());
    }
    if let Some(kit) = from("side", |kit| !kit.sides.is_empty()) {
        open.sides = kit.sides.clone();
    }
    open
}

/// What a candidate lost on, or what stops or refuses it.
fn in_words(outcome: &Outcome) -> Option<&'static str> {
    match outcome {
        Outcome::Possible { lost, .. } => lost.map(|lost| lost.on.sentence()),
        Outcome::Stopped(stops) => Some(stops.worst.code.sentence()),
        Outcome::Refused(fault) => Some(fault.kind.sentence()),
        Outcome::Vacant => None,
    }
}

fn choose(question: &Question) -> Answer {
    let shot = question.shot()?;
    let open = opened(question.file()?, shot, &question.asked.open);
    let kit = open.kit();
    let mut places = vec![Candidate::VACANT; kit.most_combinations()];
    let choice = chosen(&shot.brief, &kit, &mut places)?;
    let with = |combination: &Combination| With {
        lens: open.lens_name(combination).unwrap_or(&shot.uses.lens),
        support: open.support_name(combination).unwrap_or(&shot.uses.support),
        side: combination.side,
    };
    let candidate = |candidate: &Candidate| RankedCombination {
        with: with(&candidate.combination),
        outcome: candidate.outcome,
        in_words: in_words(&candidate.outcome),
    };
    let mut changes = Vec::new();
    if choice.possible == 0 {
        let found = smallest_changes_in_kit(&shot.brief, &kit, choice.candidates);
        let change = found
            .iter()
            .flatten()
            .map(|found| ChangeWith { with: with(&found.combination), change: found.change });
        changes.extend(change);
    }
    told(&Ranked {
        shot: &shot.name,
        open: &open,
        planned: choice.planned,
        possible: choice.possible,
        candidates: choice.candidates.iter().map(candidate).collect(),
        changes,
        usual_cautions: OVERHEAD_CAUTIONS,
    })
}

/// Changes that let a shot be taken.
#[derive(Serialize)]
pub(super) struct SmallestChanges {
    changes: Vec<Change>,
}

fn smallest_changes(question: &Question) -> Answer {
    let changes = smallest(&question.shot()?.brief)?;
    told(&SmallestChanges { changes: changes.into_iter().flatten().collect() })
}

/// How shots fit their bays.
#[derive(Serialize)]
pub(super) struct Fitted<'a> {
    /// Their names; wherever they are counted, from 0, it is along this list.
    shots: Vec<&'a str>,
    bays: Vec<BayFit<'a>>,
    /// What goes with every load above a table or a person.
    usual_cautions: [&'static str; 8],
}

fn fit(question: &Question) -> Answer {
    let whole = question.whole()?;
    told(&Fitted { shots: names(&whole), bays: whole.fits(), usual_cautions: OVERHEAD_CAUTIONS })
}

/// What to book, and to pull.
#[derive(Serialize)]
pub(super) struct Booked<'a> {
    /// Their names; wherever they are counted, from 0, it is along this list.
    shots: Vec<&'a str>,
    booking: Option<Booking>,
    pull_list: PullList<'a>,
    /// What goes with every load above a table or a person.
    usual_cautions: [&'static str; 8],
}

fn book(question: &Question) -> Answer {
    let whole = question.whole()?;
    told(&Booked {
        shots: names(&whole),
        booking: whole.booking(),
        pull_list: whole.pull_list()?,
        usual_cautions: OVERHEAD_CAUTIONS,
    })
}

/// One shot in the order.
#[derive(Serialize)]
pub(super) struct OrderedShot<'a> {
    name: &'a str,
    /// What is changed before it.
    change: Rerig,
    minutes: f64,
}

/// The shots in order.
#[derive(Serialize)]
pub(super) struct Ordered<'a> {
    shots: Vec<OrderedShot<'a>>,
    order: Order,
    /// What each kind of change takes.
    minutes: Minutes,
}

/// Why there is no order.
pub(super) fn not_ordered(fault: OrderFault) -> Refusal {
    match fault {
        OrderFault::Minutes(fault) => Refusal::Fault(fault),
        // What else can be wrong with an order is said where the file is read.
        other => Refusal::one(Problem::general(ProblemKind::Conflicting, format_args!("{other}"))),
    }
}

fn order(question: &Question) -> Answer {
    let whole = question.whole()?;
    let order = whole.order().map_err(not_ordered)?;
    let steps = order.steps(&whole.setups(), &whole.minutes());
    let name = |shot: usize| whole.shots.get(shot).map_or("", |shot| shot.name.as_str());
    let step = |step: &crate::shoot::order::OrderStep| OrderedShot {
        name: name(step.shot),
        change: step.rerig,
        minutes: step.minutes,
    };
    told(&Ordered { shots: steps.iter().map(step).collect(), order, minutes: whole.minutes() })
}

/// Pieces that are enough.
#[derive(Serialize)]
pub(super) struct WholePieces {
    /// `None` where all that is at hand weighs less.
    pieces: Option<Pieces>,
}

fn whole_pieces(asked: &Asked) -> Answer {
    let needed = Question::need(asked.needed_kg, "needed_kg")?;
    told(&WholePieces { pieces: whole(needed, &asked.sizes)? })
}
