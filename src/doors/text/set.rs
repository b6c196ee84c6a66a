//! What was really set, and how to correct it.

use std::format;
use std::prelude::rust_2024::*;

use serde::Serialize;

use super::given::Question;
use super::inverse::{ASPECT, GIVEN, HOLD, NO_SHOT, SHOOT, USED};
use super::refusal::Refusal;
use super::shots::{FORM, ONE};
use super::{Answer, How, Operation, REQUIRED, told};
use crate::caution::overhead::OVERHEAD_CAUTIONS;
use crate::shoot::onset::{OnSet, on_set as held_against_plan};
use crate::shootfile::Step;
use crate::shootfile::field::Standing;
use crate::shootfile::log::SETS;
use crate::shootfile::problem::{Problem, ProblemKind};
use crate::tolerance::{Measured, Measurement, RealShot, real_shot as really_set};

pub(super) static OPERATIONS: &[Operation] = &[
    Operation {
        name: "real_shot",
        meaning: "What was really set, from what was measured on the set, and how surely.",
        takes: &[
            ("measured", REQUIRED),
            ("lens", GIVEN),
            ("camera", GIVEN),
            SHOOT,
            FORM,
            NO_SHOT,
            HOLD,
            ASPECT,
            USED,
        ],
        answers: "RealShot",
        answer: How::Question(real_shot),
    },
    Operation {
        name: "on_set",
        meaning: "What was measured on the set held against a shot's plan: which way to correct, and whether it is within its tolerances.",
        takes: &[
            ("shoot", REQUIRED),
            FORM,
            ("shot", ONE),
            ("measured", Standing::Otherwise("the last of the file's log")),
            ("roll_deg", Standing::Otherwise("not measured")),
        ],
        answers: "HeldAgainstPlan",
        answer: How::Question(on_set),
    },
];

/// Which of the three sets was measured; a shot's planned aim point stands in where its height was not.
fn measured(question: &Question) -> Result<Measured, Refusal> {
    let asked = &question.asked;
    let Some(draft) = &asked.measured else {
        return Err(Refusal::lacks("what was measured?", &["measured"]));
    };
    let shot = if asked.shot.is_some() { Some(question.shot()?) } else { None };
    draft.set(shot.map(|shot| shot.plan.pose.aim.z_mm)).ok_or_else(|| {
        let problem =
            Problem::general(ProblemKind::Conflicting, "these measurements make none of the three sets");
        let path = [Step::Key("measured".into())].into();
        Refusal::one(Problem { path, ..problem }.help(format!("give {SETS}")))
    })
}

fn real_shot(question: &Question) -> Answer {
    let measured = measured(question)?;
    let real: RealShot = really_set(&measured, &question.lens()?, question.used_area()?.width_mm)?;
    told(&real)
}

/// A shot held against its plan.
#[derive(Serialize)]
pub(super) struct HeldAgainstPlan<'a> {
    shot: &'a str,
    given: Measured,
    roll_deg: Option<Measurement>,
    on_set: OnSet,
    /// Whether what was measured is the last of the file's log.
    from_log: bool,
    /// What goes with every load above a table or a person.
    usual_cautions: [&'static str; 8],
}

fn on_set(question: &Question) -> Answer {
    let (shot, asked) = (question.shot()?, &question.asked);
    let mut log = question.file()?.log.iter().rev().filter(|entry| entry.shot == shot.name);
    let last = log.find_map(|entry| Some((entry.measured?, entry.roll_deg)));
    let (given, roll_deg, from_log) = match (&asked.measured, last) {
        (Some(draft), _) => {
            let planned = Some(shot.plan.pose.aim.z_mm);
            (draft.set(planned).map_or_else(|| measured(question), Ok)?, asked.roll_deg, false)
        }
        (None, Some((given, roll_deg))) => (given, roll_deg, true),
        (None, None) => (measured(question)?, None, false),
    };
    let on_set = held_against_plan(&shot.brief.shot, &shot.brief.lens, &shot.plan, &given, roll_deg)?;
    told(&HeldAgainstPlan {
        shot: &shot.name,
        given,
        roll_deg,
        on_set,
        from_log,
        usual_cautions: OVERHEAD_CAUTIONS,
    })
}
