//! The view from the side: which elevations it takes, what is written beside them.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::dimension::Row;
use super::elevation::{ARC_RADIUS, Elevation};
use super::label::{Beside, Label};
use super::length::LengthUnit;
use super::shape::{Extent, Spot};
use super::sheet::Sheet;
use super::{RIG_NOTE, Style};
use crate::brief::Brief;
use crate::caution::CautionCode;
use crate::number::sin_cos_deg;
use crate::plan::Plan;
use crate::vector::Direction;

/// The level direction in which the camera looks; straight overhead, that of the top of the frame.
fn level_forward(plan: &Plan) -> Direction {
    Direction { x: -plan.pose.right.y, y: plan.pose.right.x, z: 0.0 }
}

pub(super) fn side(brief: &Brief, plan: &Plan, style: &Style<'_>) -> String {
    let forward = level_forward(plan);
    let placement = &plan.placement;
    // Without a boom everything but the feet lies in the camera's own plane.
    let across = placement.towards.x * forward.y - placement.towards.y * forward.x;
    let one = !placement.boom_used || across.abs() < 1e-9;
    let view = Elevation { brief, plan, along: forward, shows_view: true, shows_rig: one };
    // The boom always points away from where its column stands, to the right.
    let rig = Elevation { brief, plan, along: placement.towards, shows_view: false, shows_rig: true };

    let mut areas = Vec::new();
    let mut labels = Vec::new();
    let mut rows = Vec::new();
    let mut notes = Vec::new();
    let unit = style.unit;
    let extent = view.extent();
    if one {
        areas.push(extent);
        view_labels(&view, &extent, unit, &mut labels);
        rig_labels(&view, &extent, unit, &mut labels);
        view_rows(&view, unit, &mut rows);
        if placement.boom_used {
            rig_rows(&view, 0, unit, &mut rows);
        }
    } else {
        let other = rig.extent();
        let bottom = extent.bottom.min(other.bottom);
        let top = extent.top.max(other.top);
        areas.push(Extent { bottom, top, ..extent });
        areas.push(Extent { bottom, top, ..other });
        let mut left = Vec::new();
        view_labels(&view, &extent, unit, &mut left);
        let mut right = Vec::new();
        rig_labels(&rig, &other, unit, &mut right);
        labels.extend(left.into_iter().map(|label| label.beside(Beside::Left, 0)));
        labels.extend(right.into_iter().map(|label| label.beside(Beside::Right, 1)));
        view_rows(&view, unit, &mut rows);
        rig_rows(&rig, 1, unit, &mut rows);
        notes.push(
            "On the left, square to the way the camera looks; on the right, square to the boom.".into(),
        );
    }
    if let Some(ceiling) = brief.bay.ceiling_mm
        && areas.iter().all(|area| ceiling > area.top)
    {
        notes.push(format!("The ceiling, at {}, is above the drawing.", unit.write(ceiling)));
    }
    notes.push(RIG_NOTE.into());
    let told = told(&labels, &rows, &notes);
    let sheet = Sheet {
        kind: "side",
        heading: "From the side",
        told,
        areas,
        labels,
        rows,
        notes,
        enlarged: false,
        round_scale: true,
    };
    let mut drawing = sheet.lay(style);
    view.draw(&mut drawing, 0, "bearing");
    if !one {
        rig.draw(&mut drawing, 1, "boom");
    }
    drawing.finish()
}

/// Everything that is written, as sentences.
pub(super) fn told(labels: &[Label], rows: &[Row], notes: &[String]) -> String {
    let mut told = String::new();
    for label in labels {
        let sentence = match (label.value.is_empty(), label.name.is_empty()) {
            (true, _) => label.name.clone(),
            (_, true) => label.value.clone(),
            _ => format!("{}: {}", label.name, label.value),
        };
        told.push_str(&sentence);
        told.push_str(". ");
    }
    for row in rows {
        told.push_str(&format!("{}: {}. ", row.name, row.value));
    }
    told.push_str(&notes.join(" "));
    told
}

fn view_labels(elevation: &Elevation<'_>, extent: &Extent, unit: LengthUnit, labels: &mut Vec<Label>) {
    let Elevation { brief, plan, .. } = elevation;
    let pose = &plan.pose;
    let write = |mm: f64| format!("{}", unit.write(mm));
    let height = |place: Spot, name: &str| Label::height_of(place, place, write(place.y), name);
    labels.push(height(elevation.spot(pose.sensor), "sensor height").measure());
    if !elevation.shows_rig {
        labels.push(height(elevation.spot(pose.pivot), "pivot height").measure());
    }
    let (left, right) = elevation.table();
    let top = brief.table.height_mm;
    labels.push(Label::height_of(Spot::new(left, top), Spot::new(right, top), write(top), "table top"));
    let aim = elevation.spot(pose.aim);
    if plan.aim_height_mm != 0.0 {
        labels.push(height(aim, "aim point height"));
    }
    let [inner, outer] = elevation.beside_axis();
    let beside = |ahead: f64, (mm, units): (f64, f64)| {
        let place = pose.sensor.along(pose.forward, ahead).along(pose.up, mm);
        (elevation.spot(place), elevation.up_by(units))
    };
    let distance = plan.lens.sensor_distance_mm;
    let (place, shift) = beside(0.35 * distance, outer);
    labels.push(Label::new(place, write(distance), "sensor to aim point").shifted(shift).measure());
    if let Some(clearance) = pose.front_clearance_mm {
        let (place, shift) = beside(distance - 0.4 * clearance, inner);
        labels.push(Label::new(place, write(clearance), "lens front to aim point").shifted(shift).measure());
    }
    let arc = Label::new(aim, degrees(brief.shot.elevation_deg), "elevation").measure();
    let (sin, cos) = sin_cos_deg(0.5 * brief.shot.elevation_deg);
    labels.push(arc.shifted(Spot::new(-ARC_RADIUS * cos, -ARC_RADIUS * sin)));
    let frame = unit.by(plan.frame_width_mm, plan.frame_height_mm);
    let edge = elevation.spot(pose.aim.along(pose.up, 0.35 * plan.frame_height_mm));
    labels.push(Label::new(edge, frame, "frame at the aim point"));
    let depth = &plan.focus.depth_of_field;
    let sharp = if depth.behind_mm.is_finite() {
        format!("{} + {}", write(depth.in_front_mm), write(depth.behind_mm))
    } else {
        format!("{} + no limit", write(depth.in_front_mm))
    };
    let near = plan.lens.pupil_distance_mm - depth.in_front_mm;
    let near = near / plan.lens.pupil_distance_mm;
    let place = pose.pupil.along(pose.forward, depth.near_limit_mm);
    let place = place.along(pose.up, -0.5 * plan.frame_height_mm * near);
    labels.push(Label::new(elevation.spot(place), sharp, "sharp before + behind aim"));
    if let Some(ceiling) = brief.bay.ceiling_mm
        && ceiling <= extent.top
        && !plan.placement.boom_used
    {
        let (left, right) = (Spot::new(extent.left, ceiling), Spot::new(extent.right, ceiling));
        labels.push(Label::height_of(left, right, write(ceiling), "ceiling"));
    }
    if let Some(backdrop) = &plan.backdrop
        && backdrop.behind_mm <= extent.right
    {
        let place = Spot::new(backdrop.behind_mm, top);
        labels.push(Label::new(place, write(backdrop.behind_mm), "backdrop behind aim"));
    }
}

fn rig_labels(elevation: &Elevation<'_>, extent: &Extent, unit: LengthUnit, labels: &mut Vec<Label>) {
    let Elevation { brief, plan, .. } = elevation;
    let Plan { pose, placement, .. } = plan;
    let support = &brief.support;
    let write = |mm: f64| format!("{}", unit.write(mm));
    let pivot = elevation.spot(pose.pivot);
    let level = |place: Spot, name: &str| Label::height_of(place, place, write(place.y), name).measure();
    let clamp = elevation.spot(elevation.clamp());
    if placement.boom_used {
        if (clamp.y - pivot.y).abs() < 0.05 {
            labels.push(level(pivot, "pivot and clamp height"));
        } else {
            labels.push(level(pivot, "pivot height"));
            labels.push(level(clamp, "clamp height"));
        }
        if let Some(ceiling) = brief.bay.ceiling_mm
            && ceiling <= extent.top
        {
            let (left, right) = (Spot::new(extent.left, ceiling), Spot::new(extent.right, ceiling));
            labels.push(Label::height_of(left, right, write(ceiling), "ceiling"));
        }
    } else {
        labels.push(level(pivot, "pivot height"));
    }
    if plan.cautions.find(CautionCode::PivotTooHigh).is_some() {
        let place = Spot::new(clamp.x, support.highest_pivot_mm);
        labels.push(Label::height_of(place, place, write(support.highest_pivot_mm), "the stand's highest"));
    }
    if let Some(boom) = elevation.boom() {
        let place = clamp.towards(pivot, 0.4);
        if placement.reach_mm > boom.longest_reach_mm {
            labels.push(Label::new(place, write(boom.longest_reach_mm), "is all the boom reaches"));
        }
        // A level boom is as long as the reach in the rows below.
        if boom.pitch_deg != 0.0 {
            let name = format!("along the boom, at {}", degrees(boom.pitch_deg));
            labels.push(Label::new(place, write(placement.boom_length_mm), name).measure());
        }
    } else if placement.boom_used {
        labels.push(Label::new(clamp.towards(pivot, 0.4), "no boom", "one is needed here"));
    }
    if let (Some(boom), Some(place)) = (elevation.boom(), elevation.counterweight()) {
        let name = format!("counterweight {} out", unit.write(boom.counterweight_arm_mm()));
        labels.push(Label::new(elevation.spot(place), kilograms(boom.counterweight_kg), name));
    }
    if support.base_mass_kg > 0.0 {
        let place = elevation.spot(placement.column.at_height(support.base_height_mm));
        labels.push(Label::new(place, kilograms(support.base_mass_kg), "on the base"));
    }
    for (mass_kg, place) in elevation.sandbags() {
        labels.push(Label::new(elevation.spot(place), kilograms(mass_kg), "sandbag"));
    }
}

/// An angle to a tenth of a degree.
fn degrees(angle_deg: f64) -> String {
    let sign = if angle_deg <= -0.05 { "−" } else { "" };
    format!("{sign}{:.1}°", angle_deg.abs())
}

/// A mass as it is written on a weight.
pub(super) fn kilograms(mass_kg: f64) -> String {
    let text = format!("{mass_kg:.2}");
    let short = text.trim_end_matches('0').trim_end_matches('.');
    format!("{} kg", if short.is_empty() { "0" } else { short })
}

fn view_rows(elevation: &Elevation<'_>, unit: LengthUnit, rows: &mut Vec<Row>) {
    let pose = &elevation.plan.pose;
    let mut row = |from: Spot, to: Spot, name, part| {
        let length = (to.x - from.x).abs();
        if length >= 0.05 {
            rows.push(Row { area: 0, from, to, value: format!("{}", unit.write(length)), name, part });
        }
    };
    let aim = elevation.spot(pose.aim);
    row(elevation.spot(pose.pivot), aim, "pivot to aim point, level", "pivot-level");
    row(elevation.spot(pose.sensor), aim, "sensor to aim point, level", "sensor-level");
}

fn rig_rows(elevation: &Elevation<'_>, area: usize, unit: LengthUnit, rows: &mut Vec<Row>) {
    let Elevation { brief, plan, .. } = elevation;
    let placement = &plan.placement;
    let column = elevation.spot(placement.column.at_height(0.0));
    let pivot = elevation.spot(plan.pose.pivot);
    let mut row = |from: Spot, to: Spot, name, part| {
        let value = format!("{}", unit.write((to.x - from.x).abs()));
        rows.push(Row { area, from, to, value, name, part });
    };
    row(column, pivot, "reach, column to pivot", "reach");
    let outside = brief.table.outside_edge_mm(placement.side, placement.column);
    let (left, right) = elevation.table();
    let edge = if (left - column.x).abs() < (right - column.x).abs() { left } else { right };
    if outside > 0.0 {
        let edge = Spot::new(edge, brief.table.height_mm);
        row(column, edge, "column to table edge", "column-to-edge");
    }
}
