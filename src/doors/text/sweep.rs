//! One quantity of a shot varied.

use std::prelude::rust_2024::*;

use serde::Serialize;

use super::asked::{MOST_STEPS, QUANTITIES};
use super::given::Question;
use super::refusal::{Mistake, Refusal, mistakes};
use super::shots::{FORM, ONE};
use super::{Answer, How, Operation, REQUIRED, told};
use crate::brief::{Brief, Framing};
use crate::caution::overhead::OVERHEAD_CAUTIONS;
use crate::number::floor;
use crate::plan::{Plan, plan as planned};
use crate::range;
use crate::shootfile::Step;
use crate::shootfile::field::Standing;
use crate::shootfile::problem::{Problem, ProblemKind};
use crate::shootfile::reading::Reading;
use crate::shootfile::tree::Entry;

const HOW_FAR: Standing = Standing::Among("from and to with step or steps, but for lens");

pub(super) static OPERATIONS: &[Operation] = &[Operation {
    name: "sweep",
    meaning: "One quantity of a shot varied, everything else as it is. A swept focal length belongs to a lens that keeps it as it focuses.",
    takes: &[
        ("shoot", REQUIRED),
        FORM,
        ("shot", ONE),
        ("quantity", REQUIRED),
        ("from", HOW_FAR),
        ("to", HOW_FAR),
        ("step", HOW_FAR),
        ("steps", HOW_FAR),
    ],
    answers: "Swept",
    answer: How::Question(sweep),
}];

/// A shot with one quantity varied.
#[derive(Serialize)]
pub(super) struct Swept<'a> {
    shot: &'a str,
    /// What is varied.
    quantity: &'static str,
    rows: Vec<SweptRow>,
    /// What goes with every load above a table or a person.
    usual_cautions: [&'static str; 8],
}

/// One of them.
#[derive(Serialize)]
pub(super) struct SweptRow {
    value: f64,
    /// The lens's name, in a sweep over lenses.
    lens: Option<String>,
    brief: Brief,
    /// Its plan; `None` where it was refused.
    plan: Option<Plan>,
    /// Why.
    refused: Option<Mistake>,
}

fn row(value: f64, lens: Option<String>, brief: Brief) -> SweptRow {
    let (plan, refused) = match planned(&brief) {
        Ok(plan) => (Some(plan), None),
        Err(fault) => (None, mistakes(&Refusal::Fault(fault), None, "").pop()),
    };
    SweptRow { value, lens, brief, plan, refused }
}

fn sweep(question: &Question) -> Answer {
    let shot = question.shot()?;
    let asked = &question.asked;
    let quantity = QUANTITIES.get(asked.quantity.unwrap_or(0)).copied().unwrap_or_default();
    let mut rows = Vec::new();
    if quantity == "lens" {
        let lenses = &question.file()?.gear.lenses;
        for name in lenses.names() {
            let Some(lens) = lenses.get(name) else { continue };
            rows.push(row(lens.focal_length_mm, Some(name.into()), Brief { lens, ..shot.brief }));
        }
        rows.sort_by(|one, other| one.value.total_cmp(&other.value));
    } else {
        for value in values(question, quantity)? {
            let mut brief = shot.brief;
            match quantity {
                "elevation_deg" => brief.shot.elevation_deg = value,
                "frame_width_mm" => brief.shot.framing = Framing::FrameWidthMm(value),
                _ => {
                    brief.lens.focal_length_mm = value;
                    brief.lens.closest_focus_mm = None;
                    brief.lens.largest_magnification = None;
                }
            }
            rows.push(row(value, None, brief));
        }
    }
    // The focal length is what orders the lenses.
    let quantity = if quantity == "lens" { "focal_length_mm" } else { quantity };
    told(&Swept { shot: &shot.name, quantity, rows, usual_cautions: OVERHEAD_CAUTIONS })
}

/// The values of a sweep, each computed from the first, so that nothing adds up.
fn values(question: &Question, quantity: &str) -> Result<Vec<f64>, Refusal> {
    let asked = &question.asked;
    let range = match quantity {
        "elevation_deg" => range::ELEVATION_DEG,
        "frame_width_mm" => range::FRAME_WIDTH_MM,
        _ => range::FOCAL_LENGTH_MM,
    };
    let number = |key: &'static str, entry: &Option<Entry>, range: &range::Range| {
        let Some(entry) = entry else { return Question::need(None, key) };
        let mut reading = Reading::default();
        reading.number(entry, range, range.meaning).ok_or_else(|| {
            let path = || [Step::Key(key.into())].into();
            let at_key = |problem| Problem { path: path(), ..problem };
            Refusal::Request(reading.problems.into_iter().map(at_key).collect())
        })
    };
    let (from, to) = (number("from", &asked.from, &range)?, number("to", &asked.to, &range)?);
    let whole = (to - from).abs();
    let (count, step) = match (&asked.step, asked.steps) {
        (Some(_), None) => {
            let least = whole / MOST_STEPS;
            let steps = range::Range { field: "sweep.step", least, most: f64::INFINITY, ..range };
            let step = number("step", &asked.step, &steps)?;
            // The last value counts as reached where only rounding keeps it from it.
            let count = if step > 0.0 { floor(whole / step + 1e-9) } else { 0.0 };
            (count.min(MOST_STEPS - 1.0), if to < from { -step } else { step })
        }
        (None, Some(steps)) => (f64::from(steps), (to - from) / f64::from(steps)),
        (None, None) => {
            return Err(Refusal::lacks("how far from one value to the next?", &["step", "steps"]));
        }
        (Some(_), Some(_)) => {
            let title = "how far from one value to the next is said in two ways";
            let problem = Problem::general(ProblemKind::Conflicting, title);
            let path = [Step::Key("steps".into())].into();
            return Err(Refusal::one(Problem { path, ..problem }.help("give step or steps")));
        }
    };
    Ok((0..=count as u32).map(|index| from + step * f64::from(index)).collect())
}
