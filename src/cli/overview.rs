//! `tablerig plan`: every shot of a file in one table, then what each needs to be set up, and its cautions.

use std::format;
use std::prelude::rust_2024::*;
use std::vec;

use super::cautioned;
use super::page::{Page, left, right, word};
use super::setting::{self, BRACKETS, NOT_SO, is_stopped, marked, tilt_limits};
use super::wording::{column_degrees, decimals, degrees, f_number, tips_at};
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
        if is_stopped(&shot.plan) {
            cautioned::stops(page, shot);
            page.paragraph(NOT_SO);
        }
        page.short_pairs(&setting::lines(shot, &file.weights, page.units));
        cautioned::beside(page, shot);
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
        let set = |figure| marked(is_stopped(plan), figure);
        let reach = match plan.placement.boom_used {
            true => set(units.bare(plan.placement.reach_mm)),
            false => "-".into(),
        };
        let worst = plan.cautions.worst().map_or("-", word);
        vec![
            shot.name.clone(),
            degrees(shot.brief.shot.elevation_deg),
            format!("{} × {}", units.bare(plan.frame_width_mm), units.bare(plan.frame_height_mm)),
            shot.uses.lens.clone(),
            f_number(plan.focus.engraved),
            set(units.bare(plan.pose.sensor.z_mm)),
            set(units.bare(plan.lens.sensor_distance_mm)),
            reach,
            set(tips_at(plan.stability.as_shot.tilt_to_tip_deg, column_degrees)),
            worst.into(),
        ]
    };
    let columns = [
        left("Shot"),
        right("Elev."),
        right("Frame").spare(2),
        left("Lens").spare(3),
        left("Opening").spare(4),
        right("Axis up"),
        right("To aim").spare(1),
        right("Reach"),
        right("Tips at"),
        left("Worst"),
    ];
    let gone = page.figures(&columns, shots.iter().map(row).collect());
    page.legend(
        &gone,
        &[
            ("", &format!("Lengths in {}.", units.plural())),
            ("Axis up", "Axis up: the lens axis at the sensor, above the floor."),
            ("To aim", "To aim: from the sensor to the aim point, straight."),
            ("Reach", "Reach: of the boom, level."),
            ("Tips at", &yardsticks(shots)),
            (
                "Worst",
                "Worst: its weightiest caution; stop: cannot be done as asked, warn: look at it before shooting, \
                 note: worth knowing.",
            ),
            ("", if shots.iter().any(|shot| is_stopped(&shot.plan)) { BRACKETS } else { "" }),
        ],
    );
}

/// What the tilt that tips a stand is held against.
fn yardsticks(shots: &[NamedShot]) -> String {
    // A file has one set of criteria.
    let Some(criteria) = shots.first().map(|shot| &shot.brief.criteria) else { return String::new() };
    let public = shots.iter().any(|shot| shot.brief.bay.public_passes);
    format!(
        "Tips at: the tilt of the floor that tips it, in the worst direction (falls: it does not stand); {}. Margin: from the centre of gravity \
         to the nearest line between two feet. Factor: restoring over overturning moment, where weight hangs outside \
         the feet; {} is wanted. The makers' ratings rule over all three.",
        tilt_limits(criteria, public),
        decimals(criteria.wanted_factor, 1),
    )
}

fn verdict(page: &mut Page, shots: &[NamedShot]) {
    let stopped: Vec<&str> =
        shots.iter().filter(|shot| is_stopped(&shot.plan)).map(|shot| shot.name.as_str()).collect();
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
