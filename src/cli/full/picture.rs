//! What the picture takes in, and how it will look.

use std::format;
use std::prelude::rust_2024::*;
use std::vec;

use crate::advice::Advice;
use crate::cli::page::{Page, given};
use crate::cli::wording::{Units, decimals, degrees, factor, magnification, on_sensor, percent, side};
use crate::scene::table::Side;
use crate::shootfile::NamedShot;
use crate::view::footprint::Footprint;

pub(super) fn print(page: &mut Page, shot: &NamedShot) {
    frame(page, shot);
    on_table(page, shot);
    subject(page, shot);
    look(page, shot);
}

fn frame(page: &mut Page, shot: &NamedShot) {
    let units = page.units;
    let (plan, lens) = (&shot.plan, &shot.plan.lens);
    page.heading("The frame");
    let assumed =
        if lens.focal_length_assumed { ", on a straight line between its published points" } else { "" };
    let marked = shot.brief.lens.focal_length_mm;
    let angles = &plan.field_angles;
    page.pairs(&[
        ("at the aim point", units.size(plan.frame_width_mm, plan.frame_height_mm)),
        (
            "used part of the sensor",
            format!(
                "{} × {} mm",
                decimals(plan.used_area.width_mm, 2),
                decimals(plan.used_area.height_mm, 2)
            ),
        ),
        ("magnification", magnification(lens.magnification)),
        (
            "focal length there",
            format!("{} (marked {}){assumed}", on_sensor(lens.focal_length_mm), on_sensor(marked)),
        ),
        (
            "sees",
            format!(
                "{} across, {} upright, {} from corner to corner",
                degrees(angles.horizontal_deg),
                degrees(angles.vertical_deg),
                degrees(angles.diagonal_deg)
            ),
        ),
    ]);
}

fn on_table(page: &mut Page, shot: &NamedShot) {
    let units = page.units;
    let footprint = &shot.plan.footprint;
    page.heading("On the table and behind it");
    if footprint.from_below {
        page.paragraph("  The entrance pupil is not above the table top: there is no footprint.");
    } else {
        page.pairs(&footprint_pairs(footprint, units));
    }
    if let Some(backdrop) = &shot.plan.backdrop {
        let size = if backdrop.share > 0.0 {
            format!(
                "{} wide and {} high above the table, {} behind the aim point; {} of the picture",
                units.length(backdrop.width_mm),
                units.length(backdrop.height_mm),
                units.length(backdrop.behind_mm),
                percent(backdrop.share)
            )
        } else {
            "not seen".into()
        };
        page.pairs(&[("backdrop", size)]);
    }
}

fn footprint_pairs(footprint: &Footprint, units: Units) -> Vec<(&'static str, String)> {
    let mut pairs: Vec<(&'static str, String)> = Vec::new();
    let corner = |index: usize| match footprint.corners[index] {
        Some(point) => units.place(point.x_mm, point.y_mm),
        None => "over the horizon".into(),
    };
    pairs.push(("corners near (right, behind)", format!("left {}, right {}", corner(0), corner(1))));
    pairs.push(("corners far", format!("left {}, right {}", corner(3), corner(2))));
    let length = |mm: Option<f64>| mm.map(|mm| units.length(mm));
    pairs.extend(given("width near", length(footprint.near_width_mm)));
    pairs.extend(given("width far", length(footprint.far_width_mm)));
    pairs.extend(given("depth", length(footprint.depth_mm)));
    pairs.extend(given("keystone, far over near", footprint.keystone_ratio.map(factor)));
    let edges: Vec<&str> = Side::ALL
        .iter()
        .zip(footprint.edges_in_frame)
        .filter(|(_, shows)| *shows)
        .map(|(edge, _)| side(*edge))
        .collect();
    let edges = if edges.is_empty() { "none".into() } else { edges.join(", ") };
    pairs.push(("table edges in the picture", edges));
    pairs.extend(given(
        "table covers",
        footprint.table_share.map(|share| format!("{} of the picture", percent(share))),
    ));
    let board = footprint.board.map(|board| {
        let turned = if board.turned_deg == 0.0 {
            String::new()
        } else {
            format!(", turned by {}", degrees(board.turned_deg))
        };
        let centre = format!("centre at {}", units.place(board.centre.x_mm, board.centre.y_mm));
        format!("{}{turned}, {centre}", units.size(board.width_mm, board.depth_mm))
    });
    pairs.extend(given("smallest board or cloth", board));
    pairs
}

fn subject(page: &mut Page, shot: &NamedShot) {
    let units = page.units;
    let plan = &shot.plan;
    page.heading("The subject in the picture");
    let mut pairs = vec![];
    match &plan.outline {
        Some(outline) => {
            let fill = format!(
                "{} of the width, {} of the height",
                percent(outline.fill_width),
                percent(outline.fill_height)
            );
            pairs.push(("fills", fill));
            let room = format!(
                "{} above, {} below, {} left, {} right",
                units.length(outline.room_above_mm),
                units.length(outline.room_below_mm),
                units.length(outline.room_left_mm),
                units.length(outline.room_right_mm)
            );
            pairs.push(("room around it", room));
        }
        None => pairs.push(("fills", "it reaches the entrance pupil".into())),
    }
    let shares = &plan.shares;
    pairs.push(("shows", format!("{} top, {} side", percent(shares.top), percent(shares.side))));
    pairs.extend(given(
        "contents visible",
        shares.contents.map(|share| {
            let far = shares
                .contents_from_far
                .map_or_else(String::new, |far| format!(" ({} from far off)", percent(far)));
            format!("{}{far}", percent(share))
        }),
    ));
    let depth = &plan.subject_depth;
    let along = format!(
        "from {} in front of the aim point to {} behind it",
        units.length(depth.nearest_mm),
        units.length(depth.farthest_mm)
    );
    pairs.push(("along the axis", along));
    page.pairs(&pairs);
}

fn look(page: &mut Page, shot: &NamedShot) {
    let look = &shot.plan.perspective;
    page.heading("How it will look");
    let mut pairs = vec![(
        "stretch of a small ball",
        format!("{} at the side, {} in the corner", factor(look.side_stretch), factor(look.corner_stretch)),
    )];
    pairs.extend(given("nearest to farthest, size", look.size_ratio.map(factor)));
    pairs.extend(given("uprights, top over foot", look.convergence.map(factor)));
    page.pairs(&pairs);
    let elevation = shot.brief.shot.elevation_deg;
    page.pairs(&advice_pairs(&shot.plan.advice, Some(elevation)));
}

/// The advice on elevation with its reasons.
pub(crate) fn advice_pairs(advice: &Advice, asked_deg: Option<f64>) -> Vec<(&'static str, String)> {
    let range = if advice.least_deg == advice.most_deg {
        degrees(advice.least_deg)
    } else {
        format!("{} to {}", degrees(advice.least_deg), degrees(advice.most_deg))
    };
    let beside = match asked_deg {
        Some(asked) if asked < advice.least_deg => "; what is asked for is lower",
        Some(asked) if asked > advice.most_deg => "; what is asked for is higher",
        _ => "",
    };
    let begin = format!("{range}, beginning at {}{beside}", degrees(advice.start_deg));
    let mut pairs = vec![("advised elevation", begin)];
    for (index, reason) in advice.reasons.iter().flatten().enumerate() {
        pairs.push((if index == 0 { "because" } else { "" }, reason.sentence().into()));
    }
    pairs
}
