//! Shots planned: one, or all of a shoot; and advice on the elevation.

use std::prelude::rust_2024::*;

use serde::Serialize;

use super::given::Question;
use super::{Answer, How, Operation, REQUIRED, told};
use crate::advice::{Advice, advice};
use crate::brief::Brief;
use crate::caution::Level;
use crate::caution::overhead::OVERHEAD_CAUTIONS;
use crate::plan::Plan;
use crate::scene::subject::Subject;
use crate::shootfile::field::Standing;
use crate::shootfile::{Chosen, NamedShot, Uses};

pub(super) const ONE: Standing = Standing::Otherwise("the only shot of the file");
pub(super) const FORM: (&str, Standing) =
    ("form", Standing::Otherwise("JSON where the text begins with a brace"));

pub(super) static OPERATIONS: &[Operation] = &[
    Operation {
        name: "plan",
        meaning: "One shot of a shoot, planned.",
        takes: &[("shoot", REQUIRED), FORM, ("shot", ONE)],
        answers: "PlannedShot",
        answer: How::Question(plan),
    },
    Operation {
        name: "plan_shoot",
        meaning: "All shots of a shoot, planned.",
        takes: &[("shoot", REQUIRED), FORM],
        answers: "PlannedShoot",
        answer: How::Question(plan_shoot),
    },
    Operation {
        name: "advice",
        meaning: "Which elevation suits a subject, and why.",
        takes: &[
            ("subject", Standing::Among("a subject, or a shoot with one, or with a shot")),
            ("shoot", Standing::Among("a subject, or a shoot with one, or with a shot")),
            FORM,
            ("shot", Standing::Otherwise("none")),
            ("bearing_deg", Standing::Otherwise("the shot's, or 0")),
        ],
        answers: "Advised",
        answer: How::Question(advised),
    },
];

/// A shot, planned.
#[derive(Serialize)]
pub(super) struct PlannedShot<'a> {
    name: &'a str,
    note: Option<&'a str>,
    uses: &'a Uses,
    /// What it left open, and out of how much the best was taken; `None` where it names everything.
    chosen: Option<&'a Chosen>,
    /// Whether no caution stops it.
    can_be_rigged: bool,
    brief: &'a Brief,
    plan: &'a Plan,
    removal_in_words: &'static str,
    /// What goes with every load above a table or a person.
    #[serde(skip_serializing_if = "Option::is_none")]
    usual_cautions: Option<[&'static str; 8]>,
}

impl<'a> PlannedShot<'a> {
    pub(super) fn of(shot: &'a NamedShot, usual_cautions: Option<[&'static str; 8]>) -> PlannedShot<'a> {
        PlannedShot {
            name: &shot.name,
            note: shot.note.as_deref(),
            uses: &shot.uses,
            chosen: shot.chosen.as_ref(),
            can_be_rigged: shot.plan.cautions.worst() != Some(Level::Stop),
            brief: &shot.brief,
            plan: &shot.plan,
            removal_in_words: shot.plan.removal.sentence(),
            usual_cautions,
        }
    }
}

fn plan(question: &Question) -> Answer {
    told(&PlannedShot::of(question.shot()?, Some(OVERHEAD_CAUTIONS)))
}

/// A shoot, planned.
#[derive(Serialize)]
pub(super) struct PlannedShoot<'a> {
    title: Option<&'a str>,
    note: Option<&'a str>,
    shots: Vec<PlannedShot<'a>>,
    /// What goes with every load above a table or a person.
    usual_cautions: [&'static str; 8],
}

fn plan_shoot(question: &Question) -> Answer {
    let file = question.file()?;
    told(&PlannedShoot {
        title: file.title.as_deref(),
        note: file.note.as_deref(),
        shots: file.shots.iter().map(|shot| PlannedShot::of(shot, None)).collect(),
        usual_cautions: OVERHEAD_CAUTIONS,
    })
}

/// Which elevation suits a subject.
#[derive(Serialize)]
pub(super) struct Advised {
    subject: Subject,
    bearing_deg: f64,
    advice: Advice,
    reasons_in_words: Vec<&'static str>,
}

fn advised(question: &Question) -> Answer {
    let subject = question.subject()?;
    let bearing_deg = match (question.asked.bearing_deg, &question.asked.shot) {
        (Some(bearing), _) => bearing,
        (None, Some(_)) => question.shot()?.brief.shot.bearing_deg,
        (None, None) => 0.0,
    };
    let advice = advice(&subject, bearing_deg);
    let reasons_in_words = advice.reasons.iter().flatten().map(|reason| reason.sentence()).collect();
    told(&Advised { subject, bearing_deg, advice, reasons_in_words })
}
