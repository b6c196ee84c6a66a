//! One shot's page.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use maud::{Markup, PreEscaped, html};

use super::cautions::sentence;
use super::changes::change_in_words;
use super::setting::{Row, rows};
use super::topic::{Topic, topic};
use super::wording::{
    FALLS, Units, column_degrees, decimals, degrees, kilograms, percent, trimmed, with_unit,
};
use super::{Sheet, SheetShot};
use crate::caution::overhead::OVERHEAD_CAUTIONS;
use crate::caution::{Caution, Level};
use crate::draw::{self, Style};
use crate::rig::stability::Standing;
use crate::shoot::onset::{OnSet, Verdict};
use crate::shoot::smallest::smallest_changes;

/// Width and most height of the drawings of the rig, in quarter millimetres of paper: with a boom there are
/// more numbers above them and more cautions below.
const RIG: (f64, f64) = (480.0, 410.0);
const RIG_WITH_BOOM: (f64, f64) = (480.0, 340.0);
/// The same of the picture.
const PICTURE: (f64, f64) = (480.0, 240.0);

/// The page of a shot, the `place`-th to be taken, counted from 0.
pub(super) fn shot(sheet: &Sheet<'_>, shot: &SheetShot<'_>, place: usize, units: Units) -> Markup {
    let plan = shot.listed.plan;
    let stopped = plan.cautions.worst() == Some(Level::Stop);
    let id = format!("shot-{}", place + 1);
    let style = |(width, height)| Style { unit: sheet.unit, width, height, id: &id, name: "" };
    let (rig, picture) = (style(if plan.placement.boom_used { RIG_WITH_BOOM } else { RIG }), style(PICTURE));
    let drawing = |svg: String, class: &str| html! { div class={ "drawing " (class) } { (PreEscaped(svg)) } };
    html! {
        section.page.shot.stopped[stopped] id=(id) {
            (heading(sheet, shot, place))
            @if stopped {
                p.stop { strong { "Not as asked: do not rig it so." } " " (changes(shot, units)) }
            }
            (numbers(sheet, shot, units))
            div.drawings {
                (drawing(draw::side(shot.listed.brief, plan, &rig), "side"))
                (drawing(draw::above(shot.listed.brief, plan, &rig), "above"))
                (drawing(draw::picture(shot.listed.brief, plan, &picture), "picture"))
            }
            (usual(plan.overhead))
            div.written { span { "Changed, and why" } }
        }
    }
}

fn heading(sheet: &Sheet<'_>, shot: &SheetShot<'_>, place: usize) -> Markup {
    let listed = &shot.listed;
    html! {
        header {
            div.place { (place + 1) small { "of " (sheet.order.sequence.len()) } }
            div.title {
                h2 { (shot.name) }
                @if let Some(note) = shot.note { p.note { (note) } }
                @if let Some(chosen) = &shot.chosen { p.note { (chosen) } }
            }
            dl.uses {
                div { dt { "Camera" } dd { (listed.camera) } }
                div { dt { "Lens" } dd { (listed.lens) } }
                div { dt { "Support" } dd { (listed.support) } }
                div { dt { "Table" } dd { (listed.table) @if let Some(surface) = listed.surface { ", " (surface) } } }
                div { dt { "Subject" } dd { (shot.subject.unwrap_or("its own")) } }
                @if let Some(backdrop) = listed.backdrop { div { dt { "Backdrop" } dd { (backdrop) } } }
                @if let Some(bay) = shot.bay { div { dt { "Bay" } dd { (bay) } } }
            }
        }
    }
}

/// What would make it possible.
fn changes(shot: &SheetShot<'_>, units: Units) -> Markup {
    let brief = shot.listed.brief;
    let found = smallest_changes(brief).ok();
    let found: Vec<String> =
        found.into_iter().flatten().flatten().map(|change| change_in_words(&change, brief, units)).collect();
    html! {
        @if found.is_empty() {
            "No one change alone clears what stops it."
        } @else {
            "Each alone just clears what stops it: " (found.join(" "))
        }
    }
}

fn numbers(sheet: &Sheet<'_>, shot: &SheetShot<'_>, units: Units) -> Markup {
    let rows = rows(shot, sheet.pull, units);
    let stopped = shot.listed.plan.cautions.worst() == Some(Level::Stop);
    html! {
        table.numbers.many[rows.len() > 8] {
            thead {
                tr {
                    th.tick { "Set" }
                    th { "What" }
                    th.value { (if stopped { "Would be" } else { "To" }) }
                    th { "Within" }
                    th.real { "Really set" }
                }
            }
            @for group in [Topic::Camera, Topic::Stand, Topic::Focus, Topic::Weights] {
                tbody {
                    @for row in rows.iter().filter(|row| row.topic == group) { (number(row, shot, stopped)) }
                    @if group == Topic::Weights { (standing(shot, units)) }
                    @for caution in cautions(shot, group) {
                        tr.caution.(word(caution.level)) {
                            td.tick { (sign(caution.level)) }
                            td colspan="4" { strong { (word(caution.level)) } " " (sentence(caution, units)) }
                        }
                    }
                }
            }
        }
    }
}

fn number(row: &Row, shot: &SheetShot<'_>, stopped: bool) -> Markup {
    // Feet, inches and sixteenths are long.
    let long = row.value.chars().count() > 9;
    html! {
        tr {
            td.tick { span.box {} }
            td.what { span.label { (row.label) } span.beside { (row.beside) } }
            td.value.long[long] { @if stopped { "(" (row.value) ")" } @else { (row.value) } }
            td.within { (row.allowed) }
            td.real { (real(row, shot.measured.as_ref())) }
        }
    }
}

/// What was measured for a row, where it was.
fn real(row: &Row, measured: Option<&OnSet>) -> Markup {
    let Some(measured) = measured else { return html! {} };
    let told = match row.label {
        "Elevation" => {
            Some((column_degrees(measured.real.elevation_deg.value), measured.elevation_deg.verdict))
        }
        "Frame width, through the aim point" => {
            let off = &measured.frame_width_share;
            let sign = if off.off > 0.0 { "+" } else { "" };
            Some((format!("{sign}{}", percent(off.off)), off.verdict))
        }
        _ => None,
    };
    html! {
        @if let Some((told, verdict)) = told {
            span.measured { (told) " " (verdict_word(verdict)) }
        }
    }
}

fn verdict_word(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Inside => "within",
        Verdict::Undecided => "undecided",
        Verdict::Outside => "outside",
    }
}

/// The cautions beside a group, the weightiest first.
fn cautions<'a>(shot: &'a SheetShot<'_>, group: Topic) -> Vec<&'a Caution> {
    let cautions = &shot.listed.plan.cautions;
    let mut beside: Vec<&Caution> = cautions.iter().filter(|caution| topic(caution.code) == group).collect();
    beside.sort_by_key(|caution| core::cmp::Reverse(caution.level));
    beside
}

pub(super) fn word(level: Level) -> &'static str {
    match level {
        Level::Note => "note",
        Level::Warn => "warn",
        Level::Stop => "stop",
    }
}

/// A sign for the level, so that it needs no colour.
pub(super) fn sign(level: Level) -> &'static str {
    match level {
        Level::Note => "•",
        Level::Warn => "▲",
        Level::Stop => "■",
    }
}

/// How it stands, in the states it passes through, and in which order it is taken down.
fn standing(shot: &SheetShot<'_>, units: Units) -> Markup {
    let plan = shot.listed.plan;
    let stability = &plan.stability;
    let factor = |factor: f64| if factor > 99.0 { String::from("over 99") } else { decimals(factor, 1) };
    let state = |name: &str, state: &Standing| {
        if state.tilt_to_tip_deg <= 0.0 {
            return format!("{name} it {FALLS}, factor {}", factor(state.factor));
        }
        let push = with_unit(&decimals(state.push_to_tip_n, 0), "N");
        let tilt = degrees(state.tilt_to_tip_deg);
        format!("{name} {tilt} or {push}, factor {}", factor(state.factor))
    };
    let criteria = &shot.listed.brief.criteria;
    let tilt = match shot.listed.brief.bay.public_passes {
        true => criteria.tilt_public_warn_deg,
        false => criteria.tilt_warn_deg,
    };
    let margin = match stability.as_shot.margin_mm {
        mm if mm < 0.0 => format!("{} outside", units.length(-mm)),
        mm => format!("{} inside", units.length(mm)),
    };
    let mut states =
        Vec::from([state("as shot", &stability.as_shot), state("camera off", &stability.camera_off)]);
    if plan.placement.boom_used {
        states.push(state("counterweight off", &stability.counterweight_off));
    }
    html! {
        tr.stands {
            td.tick {}
            td colspan="4" {
                strong { "Tips at" } " " (states.join("; "))
                span.quiet {
                    " (tilt of the floor, push at the pivot, restoring to overturning moment). As shot, margin "
                    (margin) " the feet, " (kilograms(plan.payload.mass_kg)) " on the pivot; less the floor's slope, warning under "
                    (degrees(tilt)) ", stop under " (degrees(criteria.tilt_stop_deg)) "; factor wanted: "
                    (trimmed(criteria.wanted_factor, 2)) ". Makers' ratings rule. "
                }
                strong { (plan.removal.sentence()) }
            }
        }
    }
}

/// The usual cautions: all of them with a load above the table or a person.
pub(super) fn usual(overhead: bool) -> Markup {
    let [first, .., last] = OVERHEAD_CAUTIONS;
    let short = [first, last];
    let told: &[&str] = if overhead { &OVERHEAD_CAUTIONS } else { &short };
    html! {
        ul.usual { @for caution in told { li { (caution) } } }
    }
}
