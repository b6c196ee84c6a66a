//! `tablerig shot`: one shot with every result of its plan.

mod focus;
mod picture;
mod place;
mod standing;

use std::format;
use std::prelude::rust_2024::*;

pub(crate) use self::picture::advice_pairs;
use super::cautioned;
use super::overview::title;
use super::page::Page;
use super::wording::{bearing, elevation, framing, hold, trimmed};
use crate::shootfile::NamedShot;

/// A shot in full.
pub(crate) fn print(page: &mut Page, shot: &NamedShot) {
    page.heading(&title(shot));
    if let Some(note) = &shot.note {
        page.paragraph(note);
    }
    page.paragraph(&asked(shot, page));
    if let Some(chosen) = &shot.chosen {
        page.paragraph(&chosen.sentence());
    }
    page.heading("Cautions");
    if shot.plan.cautions.is_empty() {
        page.paragraph("  none");
    }
    cautioned::print(page, shot);
    place::print(page, shot);
    picture::print(page, shot);
    focus::print(page, shot);
    standing::print(page, shot);
    cautioned::usual(page, shot.plan.overhead);
}

/// What was asked for, in a sentence.
fn asked(shot: &NamedShot, page: &Page) -> String {
    let asked = &shot.brief.shot;
    let aspect = match asked.delivered_aspect {
        Some(aspect) => format!("delivered {}:{}", trimmed(aspect.width, 3), trimmed(aspect.height, 3)),
        None => "delivered in the sensor's shape".into(),
    };
    let subject = shot.uses.subject.as_deref().unwrap_or("its own subject");
    let bay = shot.uses.bay.as_deref().map_or_else(|| "no bay".into(), |bay| format!("bay {bay}"));
    format!(
        "Asked for: {}, {}; {}; {}, {aspect}. Subject {subject}, table {}, {bay}.",
        elevation(asked.elevation_deg),
        bearing(asked.bearing_deg),
        framing(asked, page.units),
        hold(asked.hold),
        shot.uses.table,
    )
}
