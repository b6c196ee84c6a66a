//! The sheet to print.

use std::prelude::rust_2024::*;

use serde::Serialize;

use super::given::Question;
use super::planner::{LEAVE_OUT, not_ordered};
use super::shots::FORM;
use super::{Answer, How, Operation, REQUIRED, told};
use crate::draw::LengthUnit;
use crate::sheet::Paper;
use crate::shootfile::field::Standing;

pub(super) static OPERATIONS: &[Operation] = &[Operation {
    name: "sheet",
    meaning: "The sheet that hangs on the stand, all shots with their drawings: one HTML text with nothing to fetch.",
    takes: &[
        ("shoot", REQUIRED),
        FORM,
        LEAVE_OUT,
        ("unit", Standing::Otherwise("millimetres")),
        ("paper", Standing::Otherwise("as the printer has it")),
    ],
    answers: "Printed",
    answer: How::Question(sheet),
}];

/// A sheet.
#[derive(Serialize)]
pub(super) struct Printed {
    /// The HTML's text.
    html: String,
}

fn sheet(question: &Question) -> Answer {
    let asked = &question.asked;
    let unit = asked.unit.and_then(|index| LengthUnit::ALL.get(index)).copied().unwrap_or_default();
    let paper = asked.paper.and_then(|index| [Paper::A4, Paper::Letter].get(index).copied());
    let html = question.whole()?.sheet(unit, paper).map_err(not_ordered)?;
    // None only without shots, which a question has.
    told(&Printed { html: html.unwrap_or_default() })
}
