//! Shots drawn.

use std::prelude::rust_2024::*;

use serde::Serialize;

use super::given::Question;
use super::shots::{FORM, ONE, PlannedShot};
use super::{Answer, How, Operation, REQUIRED, told};
use crate::caution::overhead::OVERHEAD_CAUTIONS;
use crate::draw::{LengthUnit, Style, above, picture, side};
use crate::shootfile::NamedShot;
use crate::shootfile::field::Standing;

const UNIT: (&str, Standing) = ("unit", Standing::Otherwise("millimetres"));
const WIDTH: (&str, Standing) = ("width", Standing::Otherwise("720"));
const HEIGHT: (&str, Standing) = ("height", Standing::Otherwise("460"));
const ID: (&str, Standing) = ("id", Standing::Otherwise("shot"));

pub(super) static OPERATIONS: &[Operation] = &[
    Operation {
        name: "draw",
        meaning: "A shot drawn to scale, as SVG: from the side, from above, or as the lens will see it.",
        takes: &[("shoot", REQUIRED), FORM, ("shot", ONE), ("view", REQUIRED), UNIT, WIDTH, HEIGHT, ID],
        answers: "Drawn",
        answer: How::Question(draw),
    },
    Operation {
        name: "plan_and_draw",
        meaning: "One shot planned and drawn at once, for a page that follows every change.",
        takes: &[("shoot", REQUIRED), FORM, ("shot", ONE), ("views", REQUIRED), UNIT, WIDTH, HEIGHT, ID],
        answers: "PlannedAndDrawn",
        answer: How::Question(plan_and_draw),
    },
];

/// A drawing.
#[derive(Serialize)]
pub(super) struct Drawn {
    /// The SVG's text.
    svg: String,
}

/// The view of that place in [`super::asked::VIEWS`], as SVG.
fn drawn(question: &Question, shot: &NamedShot, view: usize) -> String {
    let asked = &question.asked;
    let unit = asked.unit.and_then(|index| LengthUnit::ALL.get(index)).copied();
    let style = Style {
        unit: unit.unwrap_or_default(),
        width: asked.width.unwrap_or(Style::DEFAULT.width),
        height: asked.height.unwrap_or(Style::DEFAULT.height),
        id: asked.id.as_ref().map_or(Style::DEFAULT.id, |id| id.text.as_str()),
        name: &shot.name,
    };
    match view {
        0 => side(&shot.brief, &shot.plan, &style),
        1 => above(&shot.brief, &shot.plan, &style),
        _ => picture(&shot.brief, &shot.plan, &style),
    }
}

fn draw(question: &Question) -> Answer {
    told(&Drawn { svg: drawn(question, question.shot()?, question.asked.view.unwrap_or_default()) })
}

/// A shot, planned and drawn.
#[derive(Serialize)]
pub(super) struct PlannedAndDrawn<'a> {
    planned: PlannedShot<'a>,
    drawings: Drawings,
}

/// Drawings of a shot, each an SVG's text; `None` where it was not asked for.
#[derive(Serialize)]
pub(super) struct Drawings {
    side: Option<String>,
    above: Option<String>,
    picture: Option<String>,
}

fn plan_and_draw(question: &Question) -> Answer {
    let shot = question.shot()?;
    let view = |view: usize| question.asked.views.contains(&view).then(|| drawn(question, shot, view));
    told(&PlannedAndDrawn {
        planned: PlannedShot::of(shot, Some(OVERHEAD_CAUTIONS)),
        drawings: Drawings { side: view(0), above: view(1), picture: view(2) },
    })
}
