//! Shots drawn.

use std::prelude::rust_2024::*;

use serde::Serialize;

use super::given::Question;
use super::shots::{FORM, ONE};
use super::{Answer, How, Operation, REQUIRED, told};
use crate::draw::{LengthUnit, Style, above, picture, side};
use crate::shootfile::field::Standing;

pub(super) static OPERATIONS: &[Operation] = &[Operation {
    name: "draw",
    meaning: "A shot drawn to scale, as SVG: from the side, from above, or as the lens will see it.",
    takes: &[
        ("shoot", REQUIRED),
        FORM,
        ("shot", ONE),
        ("view", REQUIRED),
        ("unit", Standing::Otherwise("millimetres")),
        ("width", Standing::Otherwise("720")),
        ("height", Standing::Otherwise("460")),
        ("id", Standing::Otherwise("shot")),
    ],
    answers: "Drawn",
    answer: How::Question(draw),
}];

/// A drawing.
#[derive(Serialize)]
pub(super) struct Drawn {
    /// The SVG's text.
    svg: String,
}

fn draw(question: &Question) -> Answer {
    let shot = question.shot()?;
    let asked = &question.asked;
    let unit = asked.unit.and_then(|index| LengthUnit::ALL.get(index)).copied();
    let style = Style {
        unit: unit.unwrap_or_default(),
        width: asked.width.unwrap_or(Style::DEFAULT.width),
        height: asked.height.unwrap_or(Style::DEFAULT.height),
        id: asked.id.as_ref().map_or(Style::DEFAULT.id, |id| id.text.as_str()),
        name: &shot.name,
    };
    let svg = match asked.view {
        Some(0) => side(&shot.brief, &shot.plan, &style),
        Some(1) => above(&shot.brief, &shot.plan, &style),
        _ => picture(&shot.brief, &shot.plan, &style),
    };
    told(&Drawn { svg })
}
