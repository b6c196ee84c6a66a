//! `tablerig book`: the room to ask for, and everything to pull from the shelves.

use std::format;
use std::prelude::rust_2024::*;
use std::vec;

use serde_json::{Value, json};

use super::{WholeFlags, name, names, stopped};
use crate::caution::overhead::OVERHEAD_CAUTIONS;
use crate::cli::cautioned;
use crate::cli::failure::Failure;
use crate::cli::page::{Page, left};
use crate::sheet::lists;
use crate::shoot::booking::Booking;
use crate::shootfile::whole::Whole;

/// Finds the room and the list.
pub(crate) fn book(page: &mut Page, flags: &WholeFlags) -> Result<(Value, u8), Failure> {
    let file = flags.load()?;
    let whole = flags.whole(&file)?;
    let booking = whole.booking();
    let pull = whole.pull_list()?;
    if let Some(booking) = &booking {
        request(page, &whole, booking);
    }
    page.heading("Pull list");
    let rows = lists::pulled(&pull, page.units)
        .into_iter()
        .map(|line| vec![line.kind.into(), line.what, line.extent, names(&whole, &line.shots)]);
    page.texts(&[left("Kind"), left("What"), left("How much"), left("For")], rows.collect());
    if !pull.weights_lacking.is_empty() {
        page.paragraph(&format!(
            "The weights at hand are not enough for {}.",
            names(&whole, &pull.weights_lacking)
        ));
    }
    if file.weights.is_empty() {
        page.paragraph(
            "What weights are at hand is not said: list them under [weights], and they are counted here.",
        );
    }
    if let Some(stopped) = stopped(&whole) {
        page.gap();
        page.paragraph(&stopped);
    }
    cautioned::usual(page, whole.shots.iter().any(|shot| shot.plan.overhead));
    let shots: Vec<&str> = whole.shots.iter().map(|shot| shot.name.as_str()).collect();
    let value =
        json!({ "shots": shots, "booking": booking, "pull_list": pull, "usual_cautions": OVERHEAD_CAUTIONS });
    Ok((value, 0))
}

fn request(page: &mut Page, whole: &Whole<'_>, booking: &Booking) {
    page.heading("Booking request");
    page.pairs(&lists::requested(booking, page.units, |shot| name(whole, shot)));
}
