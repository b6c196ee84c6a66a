//! Whether it stands, what would help, and how the boom bends.

use std::format;
use std::prelude::rust_2024::*;
use std::vec;

use crate::cli::page::{Page, given, left, right};
use crate::cli::setting::is_stopped;
use crate::cli::wording::{
    Units, column_degrees, decimals, degrees, factor, kilograms, percent, seconds, tips_at, trimmed,
    with_unit,
};
use crate::rig::stability::Standing;
use crate::shootfile::NamedShot;

pub(super) fn print(page: &mut Page, shot: &NamedShot) {
    states(page, shot);
    weights(page, shot);
    ballast(page, shot);
    sag(page, shot);
}

fn newtons(n: f64) -> String {
    if n.is_infinite() { "∞".into() } else { with_unit(&decimals(n, 0), "N") }
}

fn newton_metres(n_m: f64) -> String {
    with_unit(&decimals(n_m, 1), "N m")
}

fn states(page: &mut Page, shot: &NamedShot) {
    let units = page.units;
    let plan = &shot.plan;
    page.heading(if is_stopped(plan) { "Would it stand" } else { "Will it stand" });
    let boom = plan.placement.boom_used;
    let row = |name: &str, standing: &Standing| {
        vec![
            name.into(),
            with_unit(&decimals(standing.total_mass_kg, 1), "kg"),
            units.length(standing.margin_mm),
            factor(standing.factor),
            over(standing, plan.placement.leg_count),
            tips_at(standing.tilt_to_tip_deg, column_degrees),
            tips_at(standing.push_to_tip_n, newtons),
            if boom { newton_metres(standing.clamp_moment_n_m) } else { "-".into() },
        ]
    };
    let stability = &plan.stability;
    let mut rows = vec![row("as shot", &stability.as_shot), row("camera off", &stability.camera_off)];
    if boom {
        rows.push(row("counterweight off", &stability.counterweight_off));
    }
    let columns = [
        left(""),
        right("weighs"),
        right("margin"),
        right("factor"),
        left("over legs").spare(1),
        right("tips at"),
        right("push"),
        right("clamp"),
    ];
    let gone = page.figures(&columns, rows);
    page.legend(
        &gone,
        &[
            ("", "Margin: the centre of gravity inside the nearest edge between two feet; negative: outside."),
            ("", "Factor: restoring over overturning moment; ∞ where no weight hangs outside the feet."),
            ("over legs", "Over legs: between which two it would go over, counted from the first, and in which direction \
              from the boom."),
            (
                "",
                "Tips at: tilt of the floor. Push: sideways at the head's pivot. Falls: it does not stand. Clamp: the \
                 moment it holds.",
            ),
        ],
    );
    page.gap();
    page.pairs(&yardsticks(shot));
}

/// What the table's figures are held against.
fn yardsticks(shot: &NamedShot) -> Vec<(&'static str, String)> {
    let criteria = &shot.brief.criteria;
    let tilt = match shot.brief.bay.public_passes {
        true => criteria.tilt_public_warn_deg,
        false => criteria.tilt_warn_deg,
    };
    vec![
        (
            "cautions as shot",
            format!(
                "factor: note under {}, warning under {}, stop under {}; tips at, less the floor's slope: warning under \
                 {}, stop under {}; push: warning under {} of what it weighs, but never over {}",
                trimmed(criteria.factor_note, 2),
                trimmed(criteria.factor_warn, 2),
                trimmed(criteria.factor_stop, 2),
                degrees(tilt),
                degrees(criteria.tilt_stop_deg),
                percent(criteria.push_share_warn),
                newtons(criteria.push_most_n),
            ),
        ),
        (
            "with camera or weight off",
            format!(
                "factor: note under {}, warning under {}",
                trimmed(criteria.factor_warn, 2),
                trimmed(criteria.factor_stop, 2)
            ),
        ),
        ("over all of these", "the makers' ratings of stand, boom, clamp and head".into()),
    ]
}

/// Between which legs it would go over, and in which direction from the boom.
fn over(standing: &Standing, legs: u32) -> String {
    let first = standing.factor_edge;
    let second = if first >= legs { 1 } else { first + 1 };
    format!("{first} and {second}, {}", degrees(standing.factor_edge_direction_deg))
}

fn weights(page: &mut Page, shot: &NamedShot) {
    let units = page.units;
    let (plan, support) = (&shot.plan, &shot.brief.support);
    let payload = &plan.payload;
    let rated = |rating: Option<String>| {
        rating.map_or_else(|| "no rating given: not checked".into(), |r| format!("rated {r}"))
    };
    let load = payload.mass_kg - support.head.mass_kg;
    let mut pairs = vec![
        (
            "on the pivot",
            format!(
                "{} (camera, lens and head), centre of gravity {} ahead of the sensor",
                kilograms(payload.mass_kg),
                units.length(payload.centre_ahead_mm)
            ),
        ),
        ("that would tip it", to_tip(plan.stability.payload_to_tip_kg, plan.stability.payload_share)),
        (
            "head carries",
            format!(
                "{} ({}) and {} ({})",
                kilograms(load),
                rated(support.head.rated_load_kg.map(kilograms)),
                newton_metres(payload.head_moment_n_m),
                rated(support.head.rated_moment_n_m.map(newton_metres))
            ),
        ),
    ];
    let boom = support.boom.as_ref().filter(|_| plan.placement.boom_used);
    if let Some(boom) = boom {
        let text = format!(
            "{} ({}), clamp {}",
            kilograms(payload.mass_kg),
            rated(boom.rated_load_kg.map(kilograms)),
            rated(boom.rated_clamp_moment_n_m.map(newton_metres))
        );
        pairs.push(("boom carries", text));
    }
    let carried = payload.mass_kg + boom.map_or(0.0, |boom| boom.mass_kg + boom.counterweight_kg);
    pairs.push((
        "column carries",
        format!("{} ({})", kilograms(carried), rated(support.rated_load_kg.map(kilograms))),
    ));
    if shot.brief.bay.people_under {
        let divisor = trimmed(shot.brief.criteria.people_rating_divisor, 2);
        pairs.push(("people underneath", format!("every rating counts divided by {divisor}")));
    }
    pairs.push(("taking it down", plan.removal.sentence().into()));
    page.pairs(&pairs);
}

fn to_tip(kg: f64, share: f64) -> String {
    if kg.is_infinite() {
        "none: it hangs inside the feet".into()
    } else {
        format!("{}, of which {} is used", kilograms(kg), percent(share))
    }
}

fn ballast(page: &mut Page, shot: &NamedShot) {
    let units = page.units;
    let (ballast, criteria) = (&shot.plan.ballast, &shot.brief.criteria);
    page.heading("What would make it stand better");
    let wanted = factor(criteria.wanted_factor);
    let states = [
        (criteria.hold_as_shot, "as shot"),
        (criteria.hold_camera_off, "with the camera off"),
        (criteria.hold_counterweight_off, "with the counterweight off"),
    ];
    let states: Vec<&str> = states.iter().filter(|(held, _)| *held).map(|(_, word)| *word).collect();
    let states = if states.is_empty() { "in no state".into() } else { states.join(" and ") };
    let mut pairs = vec![];
    pairs.extend(given(
        "counterweight to balance",
        ballast.counterweight_to_balance_kg.map(|kg| {
            let now = shot.brief.support.boom.map_or(0.0, |boom| boom.counterweight_kg);
            if kg < 0.0 {
                format!("none: the tail is the heavier end already (now {})", kilograms(now))
            } else {
                format!("{} (now {})", kilograms(kg), kilograms(now))
            }
        }),
    ));
    let add = if ballast.base_to_add_kg > 0.0 {
        format!("{} on the column's axis", kilograms(ballast.base_to_add_kg))
    } else {
        "none needed".into()
    };
    pairs.push(("weight to add", format!("{add}, for a factor of {wanted} {states}")));
    pairs.extend(given(
        "longest reach",
        ballast.longest_reach_mm.map(|mm| format!("{}, for that factor as shot", units.length(mm))),
    ));
    let from = if shot.plan.placement.boom_used { "the boom" } else { "the direction to the table" };
    let leg =
        |deg: f64, margin: f64| format!("{} from {from}: margin {}", degrees(deg), units.length(margin));
    pairs.push(("first leg, best", leg(ballast.best_first_leg_deg, ballast.best_margin_mm)));
    pairs.push(("first leg, worst", leg(ballast.worst_first_leg_deg, ballast.worst_margin_mm)));
    page.pairs(&pairs);
}

fn sag(page: &mut Page, shot: &NamedShot) {
    let Some(sag) = &shot.plan.sag else { return };
    let units: Units = page.units;
    page.heading("How the boom bends");
    let mut pairs = vec![
        (
            "sag at its end",
            format!(
                "{}; the camera sinks by {}",
                units.fine(sag.deflection_mm),
                units.fine(sag.height_lost_mm)
            ),
        ),
        (
            "the picture moves",
            format!(
                "by {} at the aim point (the boom's end turns down by {}°)",
                units.fine(sag.aim_shift_mm),
                trimmed(sag.end_slope_deg, 2)
            ),
        ),
        ("swings at", with_unit(&trimmed(sag.frequency_hz, 1), "Hz")),
    ];
    pairs.extend(given(
        "after touching it wait",
        sag.settling_s.map(|s| {
            format!(
                "{}, until the swing is down to {}",
                seconds(s),
                percent(shot.brief.criteria.settled_share)
            )
        }),
    ));
    page.pairs(&pairs);
}
