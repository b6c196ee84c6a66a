//! The first page: order, booking request, pull list, cautions.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use maud::{Markup, html};

use super::cautions::sentence;
use super::lists::{pulled, requested};
use super::shot::{sign, usual, word};
use super::wording::{Units, trimmed};
use super::{Sheet, SheetShot, in_order};
use crate::caution::{Caution, Level};

/// An order of more shots than this is as long as the pull list.
const LONG: usize = 15;

/// The page.
pub(super) fn overview(sheet: &Sheet<'_>, units: Units) -> Markup {
    // Beside a long order the booking request goes where there is room.
    let long = sheet.shots.len() > LONG;
    html! {
        section.page.overview {
            header {
                div.title {
                    h1 { (sheet.title.unwrap_or("Shoot")) }
                    @if let Some(note) = sheet.note { p.note { (note) } }
                }
            }
            div.columns {
                div {
                    (order(sheet))
                    @if !long { (request(sheet, units)) }
                }
                div {
                    (pull(sheet, units))
                    @if long { (request(sheet, units)) }
                }
            }
            (cautions(sheet, units))
        }
    }
}

fn order(sheet: &Sheet<'_>) -> Markup {
    let order = sheet.order;
    let min = |minutes: f64| format!("{} min", trimmed(minutes, 1));
    let saved = match (order.as_written_allowed, order.saved_minutes) {
        (true, saved) if saved > 0.0 => format!(", {} less than as written", min(saved)),
        (true, _) => String::new(),
        (false, _) => ", as written it breaks what must come first".into(),
    };
    let known = match order.is_best {
        true => "no order takes less".into(),
        false => format!("no order takes less than {}", min(order.at_least_minutes)),
    };
    html! {
        h2 { "Order" }
        p.small { (min(order.rerigging_minutes)) " of re-rigging" (saved) "; " (known) "." }
        table.order {
            thead { tr { th.tick { "Done" } th { "" } th { "Shot" } th { "To change before it" } th.minutes { "min" } } }
            tbody {
                @for (place, step) in order.steps(sheet.setups, &sheet.minutes).iter().enumerate() {
                    tr {
                        td.tick { span.box {} }
                        td.place { (place + 1) }
                        td {
                            a href={ "#shot-" (place + 1) } { (name(sheet, step.shot)) }
                            @if stopped(sheet, step.shot) { span.stop { " " (sign(Level::Stop)) " not as asked" } }
                        }
                        td {
                            @if place == 0 { "set up" } @else {
                                (step.rerig.changed().collect::<Vec<_>>().join(", "))
                            }
                        }
                        td.minutes { @if place > 0 { (trimmed(step.minutes, 1)) } }
                    }
                }
            }
        }
    }
}

fn request(sheet: &Sheet<'_>, units: Units) -> Markup {
    html! {
        h2 { "Booking request" }
        dl.request {
            @for (label, value) in requested(sheet.booking, units, |shot| name(sheet, shot)) {
                div { dt { (label) } dd { (value) } }
            }
        }
    }
}

fn pull(sheet: &Sheet<'_>, units: Units) -> Markup {
    html! {
        div {
            h2 { "Pull list" }
            table.pull {
                thead { tr { th.tick { "Here" } th { "Kind" } th { "What" } th { "For" } } }
                tbody {
                    @for line in pulled(sheet.pull, units) {
                        tr {
                            td.tick { span.box {} }
                            td { (line.kind) }
                            td { (line.what) @if !line.extent.is_empty() { span.beside { (line.extent) } } }
                            td.for { (places(sheet, &line.shots)) }
                        }
                    }
                }
            }
            p.small { "For: the shots by their place in the order." }
            @if !sheet.pull.weights_lacking.is_empty() {
                p.warn {
                    (sign(Level::Warn)) " The weights at hand are not enough for "
                    (sheet.pull.weights_lacking.iter().map(|shot| name(sheet, *shot)).collect::<Vec<_>>().join(", ")) "."
                }
            }
        }
    }
}

fn name<'a>(sheet: &Sheet<'a>, shot: usize) -> &'a str {
    sheet.shots.get(shot).map_or("", |shot| shot.name)
}

/// Whether something stops a shot.
fn stopped(sheet: &Sheet<'_>, shot: usize) -> bool {
    let shot = sheet.shots.get(shot);
    shot.is_some_and(|shot| shot.listed.plan.cautions.worst() == Some(Level::Stop))
}

/// Shots by their places in the order.
fn places(sheet: &Sheet<'_>, shots: &[usize]) -> String {
    if shots.len() == sheet.shots.len() {
        return "all".into();
    }
    let mut places: Vec<usize> =
        shots.iter().filter_map(|shot| sheet.order.sequence.iter().position(|at| at == shot)).collect();
    places.sort_unstable();
    let places: Vec<String> = places.iter().map(|place| format!("{}", place + 1)).collect();
    places.join(", ")
}

/// The weightier cautions of all shots, and the usual ones.
fn cautions(sheet: &Sheet<'_>, units: Units) -> Markup {
    let weighty = |shot: &SheetShot<'_>| -> Vec<Caution> {
        let cautions = shot.listed.plan.cautions.iter().filter(|caution| caution.level > Level::Note);
        cautions.copied().collect()
    };
    let shots: Vec<(usize, &SheetShot<'_>)> =
        in_order(sheet).enumerate().filter(|(_, shot)| !weighty(shot).is_empty()).collect();
    html! {
        div.cautions {
            h2 { "Cautions" }
            @if shots.is_empty() { p { "No shot is stopped or warned of; notes stand on the shots' pages." } }
            ul.levels {
                @for (place, shot) in shots {
                    @for caution in weighty(shot) {
                        li.(word(caution.level)) {
                            (sign(caution.level)) " " strong { (word(caution.level)) " · " (place + 1) " " (shot.name) } " "
                            (sentence(&caution, units))
                        }
                    }
                }
            }
            (usual(sheet.shots.iter().any(|shot| shot.listed.plan.overhead)))
        }
    }
}
