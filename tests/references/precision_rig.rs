//! What holds the camera, and how exactly it must be set, beside its columns.

use crate::precision_plan::{Beside, snake};
use tablerig::rig::ballast::Ballast;
use tablerig::rig::reach::Placement;
use tablerig::rig::sag::Sag;
use tablerig::rig::stability::{Stability, Standing};
use tablerig::tolerance::Tolerance;

pub(crate) fn compare_placement(placement: &Placement, b: &mut Beside) {
    let Placement {
        boom_used,
        side,
        column,
        towards,
        stand_off_mm,
        reach_mm,
        reach_from_sides_mm,
        boom_length_mm,
        clamp_height_mm,
        tail_end,
        first_leg_deg,
        leg_count: _,
        feet,
        highest_point_mm,
    } = *placement;
    b.flag("boom_used", boom_used);
    b.one_of("side", &snake(&format!("{side:?}")));
    b.on("column_x", column.x_mm, "bay_scale");
    b.on("column_y", column.y_mm, "bay_scale");
    b.maybe_on("towards_x", Some(towards.x), 1.0);
    b.maybe_on("towards_y", Some(towards.y), 1.0);
    b.number("stand_off", stand_off_mm);
    b.on("reach", reach_mm, "bay_scale");
    for (side, reach) in ["front", "right", "back", "left"].into_iter().zip(reach_from_sides_mm) {
        b.on(&format!("reach_{side}"), reach, "bay_scale");
    }
    b.on("boom_length", boom_length_mm, "bay_scale");
    b.on("clamp_height", clamp_height_mm, "bay_scale");
    let scale = b.row.number("bay_scale");
    b.maybe_on("tail_x", tail_end.map(|at| at.x_mm), scale);
    b.maybe_on("tail_y", tail_end.map(|at| at.y_mm), scale);
    b.maybe_on("tail_z", tail_end.map(|at| at.z_mm), scale);
    b.number("first_leg_deg", first_leg_deg);
    for (number, foot) in (1..=3).zip(feet) {
        b.on(&format!("foot{number}_x"), foot.x_mm, "bay_scale");
        b.on(&format!("foot{number}_y"), foot.y_mm, "bay_scale");
    }
    b.on("highest_point", highest_point_mm, "bay_scale");
}

fn compare_standing(name: &str, standing: &Standing, b: &mut Beside) {
    let Standing {
        total_mass_kg,
        centre,
        margin_mm,
        margin_edge,
        factor,
        factor_edge,
        factor_edge_direction_deg,
        restoring_moment_n_m,
        overturning_moment_n_m,
        tilt_to_tip_deg,
        push_to_tip_n,
        clamp_moment_n_m,
    } = *standing;
    let key = |part: &str| format!("{name}_{part}");
    b.number(&key("mass"), total_mass_kg);
    b.point(&key("centre"), "", centre, "bay_scale");
    b.on(&key("margin"), margin_mm, &key("margin_scale"));
    b.one_of(&key("margin_edge"), &margin_edge.to_string());
    b.number(&key("factor"), factor);
    b.one_of(&key("factor_edge"), &factor_edge.to_string());
    if b.row.word(&key("edge_direction")) != "any" {
        let off = (factor_edge_direction_deg - b.row.number(&key("edge_direction"))).abs();
        b.tally.note(&key("edge_direction"), off.min((off - 360.0).abs()) / 360.0, b.case);
    }
    for (part, got) in [("restoring", restoring_moment_n_m), ("overturning", overturning_moment_n_m)] {
        if b.row.word(&key(part)) != "any" {
            b.number(&key(part), got);
        }
    }
    b.on(&key("tilt"), tilt_to_tip_deg, &key("tilt_scale"));
    b.on(&key("push"), push_to_tip_n, &key("push_scale"));
    b.on(&key("clamp_moment"), clamp_moment_n_m, &key("clamp_moment_scale"));
}

pub(crate) fn compare_stability(stability: &Stability, b: &mut Beside) {
    let Stability { as_shot, camera_off, counterweight_off, payload_to_tip_kg, payload_share } = stability;
    compare_standing("as_shot", as_shot, b);
    compare_standing("camera_off", camera_off, b);
    compare_standing("counterweight_off", counterweight_off, b);
    b.number("payload_to_tip", *payload_to_tip_kg);
    b.number("payload_share", *payload_share);
}

pub(crate) fn compare_ballast(ballast: &Ballast, b: &mut Beside) {
    let Ballast {
        counterweight_to_balance_kg,
        base_to_add_kg,
        longest_reach_mm,
        best_first_leg_deg,
        best_margin_mm,
        worst_first_leg_deg,
        worst_margin_mm,
    } = *ballast;
    b.maybe("counterweight_to_balance", counterweight_to_balance_kg);
    b.on("base_to_add", base_to_add_kg, "base_scale");
    let scale = b.row.number("bay_scale");
    b.maybe_on("longest_reach", longest_reach_mm, scale);
    let spacing = b.row.number("leg_spacing");
    for (name, got) in [("best_first_leg", best_first_leg_deg), ("worst_first_leg", worst_first_leg_deg)] {
        // Alike but for whole spacings.
        let off = (got - b.row.number(name)).abs();
        b.tally.note(name, off.min((off - spacing).abs()) / spacing, b.case);
    }
    b.on("best_margin", best_margin_mm, "as_shot_margin_scale");
    b.on("worst_margin", worst_margin_mm, "as_shot_margin_scale");
}

pub(crate) fn compare_sag(sag: Option<&Sag>, b: &mut Beside) {
    let values = sag.map(|sag| {
        let Sag { deflection_mm, height_lost_mm, end_slope_deg, aim_shift_mm, frequency_hz, settling_s } =
            *sag;
        ([deflection_mm, height_lost_mm, end_slope_deg, aim_shift_mm, frequency_hz], settling_s)
    });
    for (at, name) in ["deflection", "height_lost", "slope", "aim_shift", "frequency"].into_iter().enumerate()
    {
        b.maybe(&format!("sag_{name}"), values.map(|values| values.0[at]));
    }
    b.maybe("sag_settling", values.and_then(|values| values.1));
}

pub(crate) fn compare_tolerance(tolerance: &Tolerance, b: &mut Beside) {
    let Tolerance { up_mm, down_mm, away_mm, closer_mm, roll_drift_mm } = *tolerance;
    // At 1:1 the distance is at its least: the range to stay in has no nearer end.
    let beyond = b.row.flag("at_the_least_distance");
    for (name, got) in [("up", up_mm), ("down", down_mm), ("away", away_mm), ("closer", closer_mm)] {
        let name = format!("set_{name}");
        if beyond {
            b.row.given(&name);
        } else {
            b.number(&name, got);
        }
    }
    b.number("roll_drift", roll_drift_mm);
}
