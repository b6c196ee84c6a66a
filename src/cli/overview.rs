//! `tablerig plan`: every shot of a file in one table, then what each needs to be set up, and its cautions.

use std::format;
use std::prelude::rust_2024::*;
use std::vec;

use super::cautioned;
use super::page::{Page, left, right, word};
use super::wording::{
    Units, bearing, column_degrees, degrees, f_number, hold, kilograms, percent, side, trimmed,
};
use crate::caution::Level;
use crate::plan::Plan;
use crate::shootfile::{NamedShot, ShootFile};

/// All shots of a file.
pub(crate) fn print(page: &mut Page, file: &ShootFile) {
    if let Some(title) = &file.title {
        page.heading(title);
    }
    if let Some(note) = &file.note {
        page.paragraph(note);
    }
    page.gap();
    table(page, &file.shots);
    page.gap();
    verdict(page, &file.shots);
    for shot in &file.shots {
        page.heading(&title(shot));
        if let Some(note) = &shot.note {
            page.paragraph(note);
        }
        if let Some(chosen) = &shot.chosen {
            page.paragraph(&chosen.sentence());
        }
        page.short_pairs(&setting(shot, page.units));
        cautioned::print_short(page, &shot.plan.cautions);
    }
    cautioned::usual(page, file.shots.iter().any(|shot| shot.plan.overhead));
}

/// A shot's name with what it is shot with.
pub(crate) fn title(shot: &NamedShot) -> String {
    format!("{}: {} with {} on {}", shot.name, shot.uses.camera, shot.uses.lens, shot.uses.support)
}

fn table(page: &mut Page, shots: &[NamedShot]) {
    let units = page.units;
    let row = |shot: &NamedShot| {
        let plan = &shot.plan;
        let reach = match plan.placement.boom_used {
            true => units.bare(plan.placement.reach_mm),
            false => "-".into(),
        };
        let worst = plan.cautions.worst().map_or("-", word);
        vec![
            shot.name.clone(),
            degrees(shot.brief.shot.elevation_deg),
            format!("{} × {}", units.bare(plan.frame_width_mm), units.bare(plan.frame_height_mm)),
            shot.uses.lens.clone(),
            f_number(plan.focus.engraved),
            units.bare(plan.pose.sensor.z_mm),
            units.bare(plan.lens.sensor_distance_mm),
            reach,
            column_degrees(plan.stability.as_shot.tilt_to_tip_deg),
            worst.into(),
        ]
    };
    let columns = [
        left("Shot"),
        right("Elev."),
        right("Frame"),
        left("Lens").spare(),
        left("Opening").spare(),
        right("Axis up"),
        right("To aim"),
        right("Reach"),
        right("Tips at").spare(),
        left("Worst"),
    ];
    page.figures(&columns, shots.iter().map(row).collect());
    page.paragraph(&format!(
        "Lengths in {}. Axis up: the lens axis at the sensor, above the floor. To aim: from the sensor to the \
         aim point, straight. Reach: of the boom, level. Tips at: the tilt of the floor that tips it, in the \
         worst direction.",
        units.plural()
    ));
}

fn verdict(page: &mut Page, shots: &[NamedShot]) {
    let stopped: Vec<&str> = shots
        .iter()
        .filter(|shot| shot.plan.cautions.worst() == Some(Level::Stop))
        .map(|shot| shot.name.as_str())
        .collect();
    let all = shots.len();
    page.paragraph(&match (stopped.as_slice(), all) {
        ([], 1) => "The shot can be rigged.".into(),
        ([], _) => format!("All {all} shots can be rigged."),
        ([name], _) => format!("{} of {all} shots can be rigged; not as asked: {name}.", all - 1),
        (names, _) => {
            format!("{} of {all} shots can be rigged; not as asked: {}.", all - names.len(), names.join(", "))
        }
    });
}

/// The few numbers with which a shot is set up.
fn setting(shot: &NamedShot, units: Units) -> [(&'static str, String); 4] {
    let plan = &shot.plan;
    let asked = &shot.brief.shot;
    let camera = format!(
        "axis {} up at the sensor, {} to the aim point; {}, {}",
        units.length(plan.pose.sensor.z_mm),
        units.length(plan.lens.sensor_distance_mm),
        bearing(asked.bearing_deg),
        hold(asked.hold),
    );
    let focus = focus(shot, units);
    [("Camera", camera), ("Frame", frame(plan, units)), ("Stand", stand(shot, units)), ("Focus", focus)]
}

fn frame(plan: &Plan, units: Units) -> String {
    let fill = match &plan.outline {
        Some(outline) => {
            format!("the subject fills {} × {}", percent(outline.fill_width), percent(outline.fill_height))
        }
        None => "the subject reaches the lens".into(),
    };
    let aim = units.length(plan.aim_height_mm);
    format!("{}, aimed {aim} above the table; {fill}", units.size(plan.frame_width_mm, plan.frame_height_mm))
}

fn stand(shot: &NamedShot, units: Units) -> String {
    let plan = &shot.plan;
    let placement = &plan.placement;
    let pivot = units.length(plan.pose.pivot.z_mm);
    let on = side(placement.side);
    if !placement.boom_used {
        let edge = units.length(plan.pose.pivot_from_edge_mm);
        return format!("on the {on} side, {edge} from the edge, no boom; pivot {pivot} up");
    }
    let edge = units.length(placement.stand_off_mm);
    let reach = units.length(placement.reach_mm);
    let clamp = units.length(placement.clamp_height_mm);
    let heights = if clamp == pivot {
        format!("clamp and pivot {clamp} up")
    } else {
        format!("clamp {clamp} up, pivot {pivot} up")
    };
    let weight = match (shot.brief.support.boom, plan.ballast.counterweight_to_balance_kg) {
        (Some(boom), Some(balance)) if balance > 0.0 => {
            format!(
                "; counterweight {} ({} would balance)",
                kilograms(boom.counterweight_kg),
                kilograms(balance)
            )
        }
        (Some(boom), _) => format!("; counterweight {}", kilograms(boom.counterweight_kg)),
        (None, _) => String::new(),
    };
    format!("on the {on} side, {edge} from the edge; boom reaches {reach}, {heights}{weight}")
}

fn focus(shot: &NamedShot, units: Units) -> String {
    let focus = &shot.plan.focus;
    let depth = &focus.depth_of_field;
    let held = if focus.subject_held { "holds the subject" } else { "does not hold the subject" };
    let mut text = format!(
        "{} {held}: sharp {} in front to {} behind",
        f_number(focus.engraved),
        units.length(depth.in_front_mm),
        units.length(depth.behind_mm),
    );
    if let Some(stack) = &focus.stack {
        let (pictures, step) = (trimmed(f64::from(stack.pictures), 0), units.length(stack.step_mm));
        text.push_str(&match stack.pictures {
            1 => format!("; focused between its ends, one picture at {} does", f_number(stack.engraved)),
            _ => format!("; or {pictures} pictures at {}, {step} apart", f_number(stack.engraved)),
        });
    }
    match shot.plan.tilt.tilt_deg {
        Some(tilt) if shot.brief.shot.focus_on_table && tilt > 0.0 => {
            format!("tilted by {} the plane of focus lies on the table; without tilt {text}", degrees(tilt))
        }
        _ => text,
    }
}
