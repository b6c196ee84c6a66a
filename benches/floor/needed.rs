//! Which calls the results of one brief need, part by part, from the brief and its plan.

use std::f64::consts::PI;

use tablerig::advice::AdviceReason;
use tablerig::brief::Brief;
use tablerig::caution::CautionCode;
use tablerig::plan::Plan;
use tablerig::rig::stability::Standing;
use tablerig::rig::weights::loads;
use tablerig::scene::subject::{Shape, Vessel};
use tablerig::vector::FloorPoint;

use super::Calls;

/// A part of a plan.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Part {
    Lens,
    Pose,
    Outline,
    Shares,
    Focus,
    Tilt,
    Perspective,
    Advice,
    Support,
    Stability,
    Ballast,
    Sag,
    Tolerance,
    Cautions,
}

/// The calls that the results of this brief need.
pub(crate) fn needed(brief: &Brief, plan: &Plan) -> Vec<(Part, Calls)> {
    let with = |of: fn(&Brief, &Plan, &mut Calls)| {
        let mut calls = Calls::default();
        of(brief, plan, &mut calls);
        calls
    };
    vec![
        (Part::Lens, with(lens)),
        (Part::Pose, with(pose)),
        (Part::Outline, with(outline)),
        (Part::Shares, with(shares)),
        (Part::Focus, with(focus)),
        (Part::Tilt, with(tilt)),
        (Part::Perspective, with(perspective)),
        (Part::Advice, with(advice)),
        (Part::Support, with(support)),
        (Part::Stability, with(stability)),
        (Part::Ballast, with(ballast)),
        (Part::Sag, with(sag)),
        (Part::Tolerance, with(tolerance)),
        (Part::Cautions, with(cautions)),
    ]
}

fn lens(_: &Brief, plan: &Plan, calls: &mut Calls) {
    let (w, h, s) = (plan.frame_width_mm, plan.frame_height_mm, plan.lens.pupil_distance_mm);
    calls.diagonal(w, h);
    let diagonal = plan.field_angles.diagonal_deg.to_radians();
    calls.atan.extend([0.5 * w / s, 0.5 * h / s, libm::tan(0.5 * diagonal)]);
}

fn pose(brief: &Brief, _: &Plan, calls: &mut Calls) {
    calls.degrees(brief.shot.elevation_deg);
    calls.degrees(brief.shot.bearing_deg);
}

fn outline(brief: &Brief, plan: &Plan, calls: &mut Calls) {
    let (Shape::Round { diameter_mm }, Some(outline)) = (brief.subject.shape, plan.outline) else { return };
    calls.sqrt.push((plan.lens.pupil_distance_mm * diameter_mm / outline.right_mm).abs());
}

/// Two circles of which one is the other's size, from far off: the half angle's cosine.
fn from_far(vessel: &Vessel, elevation_deg: f64, share: f64, calls: &mut Calls) {
    if share > 0.0 && share < 1.0 {
        let cos = vessel.contents_below_rim_mm
            / (libm::tan(elevation_deg.to_radians()) * vessel.inside_diameter_mm);
        calls.sqrt.push(1.0 - cos * cos);
        calls.atan2.push((libm::sqrt((1.0 - cos * cos).abs()), cos));
    }
}

fn shares(brief: &Brief, plan: &Plan, calls: &mut Calls) {
    let Some(vessel) = &brief.subject.vessel else { return };
    if let Some(share) = plan.shares.contents
        && share > 0.0
        && share < 1.0
    {
        // Any half angles that cover so much: what they are does not change what the call takes.
        calls.sqrt.push(share);
        calls.atan2.extend([(share, 0.5 - share), (share, 1.0 - 0.5 * share)]);
    }
    if let Some(share) = plan.shares.contents_from_far {
        from_far(vessel, brief.shot.elevation_deg, share, calls);
    }
}

fn focus(brief: &Brief, plan: &Plan, calls: &mut Calls) {
    let spread = plan.lens.magnification / plan.lens.pupil_ratio;
    calls.log1p.push(spread);
    if brief.camera.circle_of_confusion_mm.is_none() {
        calls.diagonal(brief.camera.sensor_width_mm, brief.camera.sensor_height_mm);
    }
    if let Some(stack) = &plan.focus.stack {
        let slice = stack.step_mm / plan.lens.pupil_distance_mm;
        calls.log1p.extend([slice, slice * f64::from(stack.pictures)]);
    }
}

fn tilt(_: &Brief, plan: &Plan, calls: &mut Calls) {
    if plan.tilt.tilt_deg.is_some() && plan.tilt.hinge_distance_mm.is_finite() {
        calls.asin.push(plan.lens.focal_length_mm / plan.tilt.hinge_distance_mm);
    }
}

fn perspective(_: &Brief, plan: &Plan, calls: &mut Calls) {
    calls.sqrt.push(plan.perspective.side_stretch * plan.perspective.side_stretch);
    calls.sqrt.push(plan.perspective.corner_stretch * plan.perspective.corner_stretch);
}

fn advice(brief: &Brief, plan: &Plan, calls: &mut Calls) {
    let advice = &plan.advice;
    let computed = advice.start_deg > advice.least_deg && advice.start_deg < advice.most_deg;
    let why = advice.reasons.iter().flatten().next_back();
    if computed
        && matches!(
            why,
            Some(
                AdviceReason::StartShowsSide | AdviceReason::StartShowsTop | AdviceReason::StartShowsContents
            )
        )
    {
        calls.atan.push(libm::tan(advice.start_deg.to_radians()));
    }
    if advice.half_top_from_deg > 0.0 {
        calls.atan.push(libm::tan(advice.half_top_from_deg.to_radians()));
    }
    if let Some(half) = advice.half_contents_from_deg {
        calls.atan.push(libm::tan(half.to_radians()));
    }
    let found_by_contents = computed && why == Some(&AdviceReason::StartShowsContents);
    if let (Some(vessel), Some(share), false) =
        (&brief.subject.vessel, advice.contents_at_start, found_by_contents)
    {
        from_far(vessel, advice.start_deg, share, calls);
    }
}

/// How far a place lies off the table on both axes at once.
fn off_corner(brief: &Brief, place: FloorPoint, calls: &mut Calls) {
    let x = place.x_mm.abs() - 0.5 * brief.table.width_mm;
    let y = place.y_mm.abs() - 0.5 * brief.table.depth_mm;
    if x > 0.0 && y > 0.0 {
        calls.diagonal(x, y);
    }
}

fn support(brief: &Brief, plan: &Plan, calls: &mut Calls) {
    if let Some(first) = brief.support.first_leg_deg {
        calls.degrees(first);
    }
    if let (Some(boom), true) = (&brief.support.boom, plan.placement.boom_used) {
        calls.degrees(boom.pitch_deg);
    }
    for bag in &brief.support.sandbags {
        if bag.mass_kg > 0.0 && bag.out_mm > 0.0 {
            calls.degrees(bag.direction_deg);
        }
    }
    off_corner(brief, plan.pose.sensor.floor(), calls);
    off_corner(brief, plan.pose.pivot.floor(), calls);
}

fn stability(brief: &Brief, plan: &Plan, calls: &mut Calls) {
    let counterweight = matches!(&brief.support.boom, Some(boom) if boom.counterweight_kg > 0.0);
    let counterweight = counterweight && plan.placement.boom_used;
    let mut tips = |standing: &Standing| calls.atan.push(standing.margin_mm / standing.centre.z_mm);
    tips(&plan.stability.as_shot);
    tips(&plan.stability.camera_off);
    if counterweight {
        tips(&plan.stability.counterweight_off);
    }
    if plan.placement.boom_used {
        let payload = loads(&brief.support, &plan.placement, &plan.payload).payload;
        calls.diagonal(payload.x_mm, payload.y_mm);
        if counterweight {
            calls.diagonal(payload.x_mm, payload.y_mm);
        }
    }
}

fn ballast(_: &Brief, plan: &Plan, calls: &mut Calls) {
    let (centre, column) = (plan.stability.as_shot.centre, plan.placement.column);
    let (x, y) = (centre.x_mm - column.x_mm, centre.y_mm - column.y_mm);
    let towards = plan.placement.towards;
    let (along, beside) = (x * towards.x + y * towards.y, y * towards.x - x * towards.y);
    if beside != 0.0 {
        calls.diagonal(along, beside);
        calls.atan2.push((beside, along));
    }
}

fn sag(brief: &Brief, plan: &Plan, calls: &mut Calls) {
    let Some(sag) = &plan.sag else { return };
    let turns = 2.0 * PI * sag.frequency_hz;
    calls.sqrt.push(turns * turns);
    if sag.settling_s.is_some() {
        calls.log.push(brief.criteria.settled_share);
    }
}

fn tolerance(brief: &Brief, plan: &Plan, calls: &mut Calls) {
    calls.degrees(brief.shot.elevation_tolerance_deg);
    calls.degrees(brief.shot.roll_tolerance_deg);
    // How far off the aim point along the way that is measured, and square to it.
    let far = plan.lens.sensor_distance_mm * (1.0 + brief.shot.frame_width_tolerance);
    let near = plan.lens.sensor_distance_mm * (1.0 - brief.shot.frame_width_tolerance);
    let up = plan.pose.sensor.z_mm - plan.pose.aim.z_mm;
    for across in [up, plan.pose.sensor_from_aim_mm] {
        if across != 0.0 {
            calls.sqrt.push(far * far - across * across);
        }
        if across != 0.0 && near > across.abs() {
            calls.sqrt.push(near * near - across * across);
        }
    }
}

fn cautions(brief: &Brief, plan: &Plan, calls: &mut Calls) {
    if brief.bay.floor_slope_percent > 0.0 {
        calls.atan.push(0.01 * brief.bay.floor_slope_percent);
    }
    if let Some(caution) = plan.cautions.find(CautionCode::BoomMeetsCamera) {
        calls.sqrt.push(caution.value * caution.value);
    }
}
