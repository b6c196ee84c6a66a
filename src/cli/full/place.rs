//! Where camera and stand go.

use std::format;
use std::prelude::rust_2024::*;
use std::vec;

use crate::cli::page::{Page, given, left, right};
use crate::cli::setting::is_stopped;
use crate::cli::wording::{Units, decimals, degrees, side};
use crate::scene::table::Side;
use crate::shootfile::NamedShot;
use crate::vector::{FloorPoint, Point};

pub(super) fn print(page: &mut Page, shot: &NamedShot) {
    points(page, shot);
    distances(page, shot);
    stand(page, shot);
    room(page, shot);
    exactness(page, shot);
}

fn points(page: &mut Page, shot: &NamedShot) {
    let units = page.units;
    let (pose, placement) = (&shot.plan.pose, &shot.plan.placement);
    let goes = if is_stopped(&shot.plan) { "would go" } else { "goes" };
    page.heading(&format!("Where the camera {goes}, in {}", units.plural()));
    let mut rows = vec![
        row("aim point", pose.aim, units),
        row("entrance pupil", pose.pupil, units),
        row("lens axis at the sensor", pose.sensor, units),
        row("mounting socket", pose.socket, units),
        row("head's pivot", pose.pivot, units),
        vec!["top of the body".into(), units.bare(pose.body_top_mm), String::new(), String::new()],
    ];
    if placement.boom_used {
        let FloorPoint { x_mm, y_mm } = placement.column;
        rows.push(row("boom's clamp", Point { x_mm, y_mm, z_mm: placement.clamp_height_mm }, units));
    }
    if let Some(tail) = placement.tail_end {
        rows.push(row("tail's end", tail, units));
    }
    let columns = [left(""), right("above floor"), right("right of table's centre"), right("behind it")];
    page.figures(&columns, rows);
}

fn row(name: &str, point: Point, units: Units) -> Vec<String> {
    vec![name.into(), units.bare(point.z_mm), units.bare(point.x_mm), units.bare(point.y_mm)]
}

fn distances(page: &mut Page, shot: &NamedShot) {
    let units = page.units;
    let (plan, pose) = (&shot.plan, &shot.plan.pose);
    page.gap();
    let edge = |mm: f64| {
        let over = if mm < 0.0 { "over the table, " } else { "" };
        let inside = if mm < 0.0 { " inside its nearest edge" } else { " outside the table's nearest edge" };
        format!("{over}{}{inside}", units.length(mm.abs()))
    };
    let mut pairs = vec![
        ("sensor to aim point", format!("{}, straight", units.length(plan.lens.sensor_distance_mm))),
        ("entrance pupil to aim point", format!("{}, straight", units.length(plan.lens.pupil_distance_mm))),
        ("sensor from aim point", format!("{}, level", units.length(pose.sensor_from_aim_mm))),
        ("pivot from aim point", format!("{}, level", units.length(pose.pivot_from_aim_mm))),
        ("sensor", edge(pose.sensor_from_edge_mm)),
        ("pivot", edge(pose.pivot_from_edge_mm)),
    ];
    pairs.extend(given("lens front to aim point", pose.front_clearance_mm.map(|mm| units.length(mm))));
    page.pairs(&pairs);
}

fn stand(page: &mut Page, shot: &NamedShot) {
    let units = page.units;
    let placement = &shot.plan.placement;
    page.heading(if is_stopped(&shot.plan) { "Where the stand would go" } else { "Where the stand goes" });
    let on = side(placement.side);
    let column = from_centre(placement.column, units);
    let mut pairs = vec![("side", on.into()), ("column", column)];
    if placement.boom_used {
        pairs.push(("column from that edge", format!("{} or more", units.length(placement.stand_off_mm))));
        pairs.push(("boom's reach", format!("{}, level", units.length(placement.reach_mm))));
        let along = format!("{} along it from clamp to pivot", units.length(placement.boom_length_mm));
        pairs.push(("boom's length", along));
        pairs.push(("clamp", format!("{} above the floor", units.length(placement.clamp_height_mm))));
        let reaches = Side::ALL.iter().zip(placement.reach_from_sides_mm);
        let reaches: Vec<String> =
            reaches.map(|(from, mm)| format!("{} {}", side(*from), units.length(mm))).collect();
        pairs.push(("reach from each side", reaches.join(", ")));
    } else {
        pairs.push(("boom", "none needed: the column stands under the pivot".into()));
    }
    let towards = if placement.boom_used { "the boom" } else { "the direction to the table" };
    let leg = match placement.first_leg_deg {
        0.0 => format!("under {towards}"),
        deg => format!("{} counter-clockwise from {towards}", degrees(deg)),
    };
    pairs.push(("legs", format!("{}, the first {leg}", placement.leg_count)));
    let feet = placement.feet.iter().take(placement.leg_count as usize);
    let feet: Vec<String> = feet.map(|foot| units.place(foot.x_mm, foot.y_mm)).collect();
    pairs.push(("feet (right, behind)", format!("{}{}", feet.join(" "), units.after())));
    pairs.push(("highest point", format!("{} above the floor", units.length(placement.highest_point_mm))));
    let seen = &shot.plan.support_in_picture;
    if seen.column_mm > 0.0 || seen.boom_mm > 0.0 {
        let text =
            format!("column over {}, boom over {}", units.length(seen.column_mm), units.length(seen.boom_mm));
        pairs.push(("in the picture", text));
    }
    page.pairs(&pairs);
}

/// A place seen from above, from the table's centre.
fn from_centre(place: FloorPoint, units: Units) -> String {
    let FloorPoint { x_mm, y_mm } = place;
    let across = if x_mm < 0.0 { "left" } else { "right" };
    let along = if y_mm < 0.0 { "in front" } else { "behind" };
    let (x, y) = (units.length(x_mm.abs()), units.length(y_mm.abs()));
    match (x_mm == 0.0, y_mm == 0.0) {
        (true, true) => "at the table's centre".into(),
        (true, false) => format!("{y} {along} of the table's centre").replace("behind of", "behind"),
        (false, true) => format!("{x} {across} of the table's centre"),
        (false, false) => {
            format!("{x} {across} and {y} {along} of the table's centre").replace("behind of", "behind")
        }
    }
}

fn room(page: &mut Page, shot: &NamedShot) {
    if shot.uses.bay.is_none() {
        return;
    }
    let units = page.units;
    let room = &shot.plan.bay_room;
    page.heading("Room left in the bay");
    let left = |mm: f64, of: &str| match mm {
        mm if mm.is_infinite() => format!("no {of}"),
        mm if mm < 0.0 => format!("{} too little", units.length(-mm)),
        mm => units.length(mm),
    };
    let mut pairs = vec![
        ("under the ceiling", left(room.ceiling_mm, "ceiling")),
        ("behind the camera", left(room.behind_camera_mm, "wall there")),
        ("camera to nearest wall", left(room.camera_mm, "walls")),
        ("feet to nearest wall", left(room.feet_mm, "walls")),
    ];
    if shot.plan.placement.boom_used {
        pairs.push(("tail to nearest wall", left(room.tail_mm, "walls")));
    }
    page.pairs(&pairs);
}

fn exactness(page: &mut Page, shot: &NamedShot) {
    let units = page.units;
    let (asked, tolerance) = (&shot.brief.shot, &shot.plan.tolerance);
    page.heading(match is_stopped(&shot.plan) {
        true => "How exactly it would have to be set",
        false => "How exactly it must be set",
    });
    page.paragraph(&format!(
        "Each alone keeps the elevation within {} and the frame width within {} %:",
        degrees(asked.elevation_tolerance_deg),
        decimals(100.0 * asked.frame_width_tolerance, 1)
    ));
    let pairs = [
        (
            "height",
            format!("{} up or {} down", units.length(tolerance.up_mm), units.length(tolerance.down_mm)),
        ),
        (
            "level distance",
            format!(
                "{} away or {} closer",
                units.length(tolerance.away_mm),
                units.length(tolerance.closer_mm)
            ),
        ),
        (
            "roll",
            format!(
                "{} of it moves one side of the frame {} against the other",
                degrees(asked.roll_tolerance_deg),
                units.length(tolerance.roll_drift_mm)
            ),
        ),
    ];
    page.pairs(&pairs);
}
