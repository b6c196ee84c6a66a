//! What is sharp, and what it costs.

use std::format;
use std::prelude::rust_2024::*;
use std::vec;

use crate::cli::page::Page;
use crate::cli::wording::{Units, degrees, f_number, on_sensor, trimmed};
use crate::plan::Plan;
use crate::shootfile::NamedShot;

pub(super) fn print(page: &mut Page, shot: &NamedShot) {
    let units = page.units;
    let focus = &shot.plan.focus;
    page.heading("Focus and opening");
    let by = if focus.f_number_given { "as asked for" } else { "chosen" };
    let held = if focus.subject_held { "holds the subject" } else { "does not hold the whole subject" };
    let assumed = if focus.circle_of_confusion_assumed { ", the sensor's diagonal / 1500" } else { "" };
    let depth = &focus.depth_of_field;
    let limits = format!(
        "{} to {} from the entrance pupil",
        units.length(depth.near_limit_mm),
        units.length(depth.far_limit_mm)
    );
    let sharp = format!(
        "{} in front of the aim point, {} behind it",
        units.length(depth.in_front_mm),
        units.length(depth.behind_mm)
    );
    let mut pairs = vec![
        ("opening", format!("{}, {by}; it {held}", f_number(focus.engraved))),
        ("sharp", format!("{sharp}: {limits}")),
        ("to hold the subject", to_hold(&shot.plan)),
        ("largest blur allowed", format!("{}{assumed}", on_sensor(focus.circle_of_confusion_mm))),
        (
            "diffraction",
            format!(
                "disc of {}; as large as the blur allowed at {}",
                on_sensor(focus.diffraction_disc_mm),
                f_number(focus.diffraction_limit_f_number)
            ),
        ),
        (
            "exposure",
            format!(
                "effective {}: {} stops lost to extension",
                f_number(focus.effective_f_number),
                trimmed(focus.exposure_loss_stops, 2)
            ),
        ),
    ];
    if let Some(stack) = &focus.stack {
        let text = match stack.pictures {
            1 => format!("one picture at {}, focused between the subject's ends", f_number(stack.engraved)),
            pictures => format!(
                "{} pictures at {}, focus moved by {} from one to the next",
                trimmed(f64::from(pictures), 0),
                f_number(stack.engraved),
                units.length(stack.step_mm)
            ),
        };
        pairs.push(("or a focus stack", text));
    }
    pairs.push(("plane of focus on the table", tilt(shot, units)));
    page.pairs(&pairs);
}

fn to_hold(plan: &Plan) -> String {
    let focus = &plan.focus;
    let needed = focus.f_number_needed;
    match focus.f_number_to_hold {
        _ if needed == 0.0 => "any opening: it has no depth".into(),
        _ if needed.is_infinite() => "no opening: it reaches the lens".into(),
        Some(stop) => format!("{} needed, so {}", f_number(needed), f_number(stop.engraved)),
        None => format!("{} needed, which the lens does not have", f_number(needed)),
    }
}

fn tilt(shot: &NamedShot, units: Units) -> String {
    let tilt = &shot.plan.tilt;
    let has = shot.brief.lens.largest_tilt_deg;
    let lens = if has == 0.0 {
        "this lens does not tilt".into()
    } else {
        format!("this lens tilts up to {}", degrees(has))
    };
    match tilt.tilt_deg {
        Some(0.0) => "without tilt: the sensor is level with the table".into(),
        Some(deg) => format!(
            "tilt {}, the hinge {} under the lens; {lens}",
            degrees(deg),
            units.length(tilt.hinge_distance_mm)
        ),
        None => "no tilt does it from here".into(),
    }
}
