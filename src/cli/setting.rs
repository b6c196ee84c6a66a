//! The few numbers with which a shot is set up, a line each.

use std::format;
use std::prelude::rust_2024::*;

use super::wording::{
    Units, bearing, column_degrees, decimals, degrees, f_number, hold, kilograms, percent, side, trimmed,
};
use crate::brief::Criteria;
use crate::caution::Level;
use crate::plan::Plan;
use crate::shootfile::{NamedShot, Weights};

/// Whether something stops the shot, so that its figures are not to be set.
pub(crate) fn is_stopped(plan: &Plan) -> bool {
    plan.cautions.worst() == Some(Level::Stop)
}

/// What stands over the figures of such a shot.
pub(crate) const NOT_SO: &str = "Cannot be set up as asked. In brackets: what it would come to.";

/// What the brackets mean.
pub(crate) const BRACKETS: &str = "In brackets: figures of a shot that cannot be set up as asked.";

/// A figure, in brackets where it is not to be set.
pub(crate) fn marked(stopped: bool, figure: String) -> String {
    if stopped { format!("({figure})") } else { figure }
}

/// What the tilt that tips a stand is held against.
pub(crate) fn tilt_limits(criteria: &Criteria, public_passes: bool) -> String {
    let public = match public_passes {
        true => format!(" ({} where the public passes)", degrees(criteria.tilt_public_warn_deg)),
        false => String::new(),
    };
    format!(
        "less the floor's own slope, a warning under {}{public}, a stop under {}",
        degrees(criteria.tilt_warn_deg),
        degrees(criteria.tilt_stop_deg)
    )
}

/// The lines, their labels in brackets where the figures are not to be set.
pub(crate) fn lines(shot: &NamedShot, weights: &Weights, units: Units) -> Vec<(&'static str, String)> {
    let plan = &shot.plan;
    let label = |plain, bracketed| if is_stopped(plan) { bracketed } else { plain };
    let mut lines = Vec::from([
        (label("Camera", "(Camera)"), camera(shot, units)),
        (label("Frame", "(Frame)"), frame(plan, units)),
        (label("Stand", "(Stand)"), stand(shot, units)),
    ]);
    lines.extend(counterweight(shot, weights).map(|text| (label("Weight", "(Weight)"), text)));
    lines.push((label("Tips", "(Tips)"), standing(plan, units)));
    lines.push((label("Focus", "(Focus)"), focus(shot, units)));
    lines
}

fn camera(shot: &NamedShot, units: Units) -> String {
    let asked = &shot.brief.shot;
    format!(
        "axis {} up at the sensor, {} to the aim point; {}, {}",
        units.length(shot.plan.pose.sensor.z_mm),
        units.length(shot.plan.lens.sensor_distance_mm),
        bearing(asked.bearing_deg),
        hold(asked.hold),
    )
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
        let edge = match plan.pose.pivot_from_edge_mm {
            mm if mm < 0.0 => format!("{} in under the table", units.length(-mm)),
            mm => format!("{} from the table", units.length(mm)),
        };
        return format!("column on the {on} side, {edge}, no boom; head's pivot {pivot} up");
    }
    let edge = units.length(placement.stand_off_mm);
    let reach = units.length(placement.reach_mm);
    let clamp = units.length(placement.clamp_height_mm);
    let heights = if clamp == pivot {
        format!("clamp and head's pivot {clamp} up")
    } else {
        format!("clamp {clamp} up, head's pivot {pivot} up")
    };
    format!("column on the {on} side, {edge} from the table; boom reaches {reach}, {heights}")
}

/// The counterweight, and how it came to be that much.
fn counterweight(shot: &NamedShot, weights: &Weights) -> Option<String> {
    let boom = shot.brief.support.boom.filter(|_| shot.plan.placement.boom_used)?;
    let mass = kilograms(boom.counterweight_kg);
    let balance = shot.plan.ballast.counterweight_to_balance_kg.map(kilograms);
    let taken = shot.weights.as_ref().and_then(|weights| weights.counterweight.as_ref());
    Some(match (taken.map(|taken| &taken.pieces), balance) {
        (Some(Some(pieces)), Some(balance)) => {
            let counted = pieces.counts.iter().zip(&weights.counterweights).filter(|(count, _)| **count > 0);
            let counted: Vec<String> =
                counted.map(|(count, size)| format!("{count} × {}", kilograms(size.mass_kg))).collect();
            match counted.as_slice() {
                [] => "no counterweight: the boom balances without".into(),
                counted => format!(
                    "counterweight {mass} ({}): the {balance} that balances the boom, rounded up to pieces at hand",
                    counted.join(" + ")
                ),
            }
        }
        (Some(None), Some(balance)) => {
            format!("counterweight {mass}: {balance} would balance the boom, more than the pieces at hand")
        }
        (_, Some(balance)) if boom.counterweight_kg == 0.0 => {
            format!("no counterweight; {balance} would balance the boom")
        }
        (_, Some(balance)) => {
            format!("counterweight {mass}, as the shoot file has it; {balance} would balance the boom")
        }
        (_, None) => format!("counterweight {mass}"),
    })
}

/// How well it stands; the yardsticks are printed once for all shots.
fn standing(plan: &Plan, units: Units) -> String {
    let (as_shot, off) = (&plan.stability.as_shot, &plan.stability.camera_off);
    let margin = match as_shot.margin_mm {
        mm if mm < 0.0 => format!("{} outside", units.length(-mm)),
        mm => format!("{} inside", units.length(mm)),
    };
    let factor = match as_shot.factor {
        factor if factor.is_infinite() => String::new(),
        factor => format!("; factor {}", decimals(factor, 1)),
    };
    let camera_off = match plan.placement.boom_used {
        true if off.tilt_to_tip_deg > 0.0 => {
            format!("; with the camera off at {}", column_degrees(off.tilt_to_tip_deg))
        }
        true => "; with the camera off it falls".into(),
        false => String::new(),
    };
    let tilt = match as_shot.tilt_to_tip_deg {
        deg if deg > 0.0 => format!("at {} of tilt", column_degrees(deg)),
        _ => "it falls".into(),
    };
    format!("{tilt}; margin {margin} the feet{factor}{camera_off}")
}

fn focus(shot: &NamedShot, units: Units) -> String {
    let plan = &shot.plan;
    let focus = &plan.focus;
    let depth = &focus.depth_of_field;
    let mut text = format!(
        "on the aim point, {} from the sensor; at {} {} is sharp, {} before that point to {} behind it",
        units.length(plan.lens.sensor_distance_mm),
        f_number(focus.engraved),
        if focus.subject_held { "the whole subject" } else { "only part of the subject" },
        units.length(depth.in_front_mm),
        units.length(depth.behind_mm),
    );
    if let Some(stacked) = stacked(plan, units) {
        text.push_str(&format!("; all of it takes {stacked}"));
    }
    match plan.tilt.tilt_deg {
        Some(tilt) if shot.brief.shot.focus_on_table && tilt > 0.0 => {
            format!("with {} of tilt the plane of focus lies on the table; without it {text}", degrees(tilt))
        }
        _ => text,
    }
}

/// With how many pictures the whole subject becomes sharp.
pub(crate) fn stacked(plan: &Plan, units: Units) -> Option<String> {
    let stack = plan.focus.stack.as_ref()?;
    let stop = f_number(stack.engraved);
    let from = plan.lens.sensor_distance_mm;
    let depth = &plan.subject_depth;
    Some(match stack.pictures {
        1 => format!(
            "one picture at {stop}, focused between the subject's ends ({} and {} from the sensor)",
            units.length(from - depth.nearest_mm),
            units.length(from + depth.farthest_mm)
        ),
        pictures => format!(
            "a focus stack: {} pictures at {stop}, focus moved by {} from one to the next",
            trimmed(f64::from(pictures), 0),
            units.length(stack.step_mm)
        ),
    })
}
