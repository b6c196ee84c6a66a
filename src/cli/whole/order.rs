//! `tablerig order`: the sequence of shots that needs the least re-rigging.

use std::format;
use std::prelude::rust_2024::*;
use std::vec;

use serde_json::{Value, json};

use super::{WholeFlags, name, stopped};
use crate::cli::failure::Failure;
use crate::cli::page::{Page, left, right};
use crate::cli::setting::is_stopped;
use crate::cli::wording::{trimmed, with_unit};
use crate::shoot::order::{Order, OrderStep};
use crate::shootfile::whole::Whole;

/// Finds the order.
pub(crate) fn order(page: &mut Page, flags: &WholeFlags) -> Result<(Value, u8), Failure> {
    let file = flags.load()?;
    let whole = flags.whole(&file)?;
    let order = whole.order().map_err(|fault| Failure::input(format!("{fault}")))?;
    print(page, &whole, &order);
    let shots: Vec<Value> = order
        .steps(&whole.setups(), &whole.minutes())
        .iter()
        .map(|step| json!({ "name": name(&whole, step.shot), "change": step.rerig, "minutes": step.minutes }))
        .collect();
    Ok((json!({ "shots": shots, "order": order, "minutes": whole.minutes() }), 0))
}

fn print(page: &mut Page, whole: &Whole<'_>, order: &Order) {
    let minutes = |minutes: f64| with_unit(&trimmed(minutes, 1), "min");
    page.heading("Order of the shots");
    let written = minutes(order.as_written_minutes);
    let saved = match (order.as_written_allowed, order.saved_minutes) {
        (true, saved) if saved > 0.0 => format!("{} less than as written ({written})", minutes(saved)),
        (true, _) => "as much as as written".into(),
        (false, _) => format!("as written it would be {written}, but that breaks what must come first"),
    };
    page.paragraph(&format!("{} of re-rigging: {saved}.", minutes(order.rerigging_minutes)));
    page.gap();
    let steps = order.steps(&whole.setups(), &whole.minutes());
    let rows = steps.iter().enumerate().map(|(index, step)| {
        let change = match index {
            0 => "set up".into(),
            _ => change(step),
        };
        let took = if index == 0 { String::new() } else { trimmed(step.minutes, 1) };
        let stops = whole.shots.get(step.shot).is_some_and(|shot| is_stopped(&shot.plan));
        let name = name(whole, step.shot);
        let name = if stops { format!("{name} (not as asked)") } else { name.into() };
        vec![format!("{}", index + 1), name, change, took]
    });
    page.figures(&[right("#"), left("Shot"), left("To change before it"), right("Minutes")], rows.collect());
    page.paragraph(&method(order));
    if whole.file.minutes.is_none() {
        page.paragraph("The minutes are invented, to begin with: put your own under [order].");
    }
    if let Some(stopped) = stopped(whole) {
        page.paragraph(&stopped);
    }
}

/// What has to be changed, in words.
fn change(step: &OrderStep) -> String {
    let changed: Vec<&str> = step.rerig.changed().collect();
    if changed.is_empty() { "nothing".into() } else { changed.join(", ") }
}

/// How good it is, and how that is known.
fn method(order: &Order) -> String {
    if order.is_best {
        return "No order takes less: up to 15 shots every order is weighed (dynamic programming over sets of \
                shots); shots that follow each other directly count as one."
            .into();
    }
    let over = order.rerigging_minutes - order.at_least_minutes;
    format!(
        "A good order, not known to be the best: bettered by moving and turning stretches until no single move \
         helps. No order takes less than {} min (a spanning tree), so at most {} min could still be saved.",
        trimmed(order.at_least_minutes, 1),
        trimmed(over, 1)
    )
}
