//! Where the stand goes: feet clear of the table, the boom from column to pivot, and the room around them.

use proptest::prelude::*;
use tablerig::brief::Brief;
use tablerig::plan::Plan;
use tablerig::scene::table::{Side, Underside};
use tablerig::view::projection::View;

use crate::briefs::{plan_of, studio_brief};
use crate::draws::runs;
use crate::picture::view_of;
use crate::space::{Vector, agree, at, dot, length, minus, on_floor, plus, turned, way};

/// Pieces into which a line is cut to be counted.
const PIECES: u32 = 400;

/// Outward from the table on a side, and how far out its edge lies.
fn edge(brief: &Brief, side: Side) -> (Vector, f64) {
    let (w, d) = (0.5 * brief.table.width_mm, 0.5 * brief.table.depth_mm);
    match side {
        Side::Front => ([0.0, -1.0, 0.0], d),
        Side::Right => ([1.0, 0.0, 0.0], w),
        Side::Back => ([0.0, 1.0, 0.0], d),
        Side::Left => ([-1.0, 0.0, 0.0], w),
    }
}

/// How far outside a side's edge a place lies.
fn outside(brief: &Brief, side: Side, place: Vector) -> f64 {
    let (outward, half) = edge(brief, side);
    dot(place, outward) - half
}

/// How far outside the table a place lies, to its nearest point; over it, how far to the nearest edge, as a
/// negative.
fn from_table(brief: &Brief, place: Vector) -> f64 {
    let beyond = Side::ALL.map(|side| outside(brief, side, place));
    let most = beyond.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    if most <= 0.0 {
        return most;
    }
    let nearest = [
        place[0].clamp(-0.5 * brief.table.width_mm, 0.5 * brief.table.width_mm),
        place[1].clamp(-0.5 * brief.table.depth_mm, 0.5 * brief.table.depth_mm),
        place[2],
    ];
    length(minus(place, nearest))
}

/// The room to the nearest wall.
fn within_walls(brief: &Brief, place: Vector) -> f64 {
    let bay = &brief.bay;
    let walls = [
        (bay.front_mm, -place[1]),
        (bay.right_mm, place[0]),
        (bay.back_mm, place[1]),
        (bay.left_mm, -place[0]),
    ];
    walls
        .iter()
        .fold(f64::INFINITY, |room, (wall, out)| room.min(wall.map_or(f64::INFINITY, |wall| wall - out)))
}

fn feet(plan: &Plan) -> Vec<Vector> {
    plan.placement.feet[..plan.placement.leg_count as usize].iter().map(|foot| on_floor(*foot, 0.0)).collect()
}

/// Whether the table top lies in the line of sight from a place above it.
fn hidden(brief: &Brief, pupil: Vector, place: Vector) -> bool {
    let top = brief.table.height_mm;
    if pupil[2] <= top || place[2] >= top {
        return false;
    }
    let met = plus(pupil, minus(place, pupil), (pupil[2] - top) / (pupil[2] - place[2]));
    from_table(brief, met) < 0.0
}

/// Length of a straight line that the picture shows, piece by piece, less what `behind` hides.
fn counted(view: &View, [from, to]: [Vector; 2], behind: impl Fn(Vector) -> bool) -> f64 {
    let inside = (0..PIECES).filter(|piece| {
        let place = plus(from, minus(to, from), (f64::from(*piece) + 0.5) / f64::from(PIECES));
        let [x_mm, y_mm, z_mm] = place;
        let seen = view.project(tablerig::vector::Point { x_mm, y_mm, z_mm });
        let (w, h) = (0.5 * view.frame_width_mm, 0.5 * view.frame_height_mm);
        seen.is_some_and(|seen| seen.right_mm.abs() <= w && seen.up_mm.abs() <= h) && !behind(place)
    });
    inside.count() as f64 / f64::from(PIECES) * length(minus(to, from))
}

proptest! {
    #![proptest_config(runs(600))]

    #[test]
    fn the_stand_keeps_clear_of_the_table(brief in studio_brief()) {
        let plan = plan_of(&brief);
        let placement = &plan.placement;
        let support = &brief.support;
        let column = on_floor(placement.column, 0.0);
        let towards = way(placement.towards);
        // What keeps away from the table: the feet before a plinth, the legs at its height under an open top.
        let share = match brief.table.underside {
            Underside::Closed => 1.0,
            Underside::Open => 1.0 - brief.table.height_mm / support.legs_top_mm,
        };
        let circle = (share * support.foot_radius_mm).max(support.column_radius_mm);
        for (leg, foot) in feet(&plan).iter().enumerate() {
            let angle = placement.first_leg_deg + 360.0 * leg as f64 / f64::from(support.leg_count);
            let out = turned(towards, [0.0, 0.0, 1.0], angle);
            agree("foot", length(minus(*foot, plus(column, out, support.foot_radius_mm))), 0.0, 1e-10)?;
            if placement.boom_used {
                let leg_there = plus(column, out, circle);
                let clear = outside(&brief, placement.side, leg_there);
                prop_assert!(clear >= support.table_clearance_mm - 1e-9, "{clear}");
            }
        }
        let out = |foot: &Vector| dot(minus(*foot, column), towards);
        let reaching = feet(&plan).iter().map(out).fold(f64::MIN, f64::max);
        let needed = (circle * reaching / support.foot_radius_mm).max(support.column_radius_mm);
        agree("stand-off", placement.stand_off_mm, needed + support.table_clearance_mm, 1e-9)?;
        let first = match support.first_leg_deg {
            Some(given) => given,
            // A leg under the load; without a boom the gap to the table.
            None if placement.boom_used => 0.0,
            None => 180.0 / f64::from(support.leg_count),
        };
        agree("first leg", placement.first_leg_deg, first, 1e-13)?;
    }

    #[test]
    fn the_boom_reaches_from_column_to_pivot(brief in studio_brief()) {
        let plan = plan_of(&brief);
        let placement = &plan.placement;
        let pivot = at(plan.pose.pivot);
        let column = on_floor(placement.column, pivot[2]);
        let out = minus(pivot, column);
        agree("reach", length(out), placement.reach_mm, 1e-9)?;
        if !placement.boom_used {
            agree("under the pivot", length(out), 0.0, 0.0)?;
            prop_assert!(from_table(&brief, pivot) >= placement.stand_off_mm - 1e-9);
            prop_assert!(placement.tail_end.is_none());
            // Towards the nearest point of the table.
            if from_table(&brief, pivot) > 1e-6 {
                let step = from_table(&brief, plus(pivot, way(placement.towards), 1e-3));
                agree("towards", step, from_table(&brief, pivot) - 1e-3, 1e-8)?;
            }
            return Ok(());
        }
        // Square over the edge, from as near as the column may stand.
        let towards = way(placement.towards);
        agree("square", dot(edge(&brief, placement.side).0, towards), -1.0, 1e-15)?;
        agree("along it", dot(out, towards), placement.reach_mm, 1e-9)?;
        for side in Side::ALL {
            let reach = (placement.stand_off_mm - outside(&brief, side, pivot)).max(0.0);
            agree("from each side", placement.reach_from_sides_mm[side as usize], reach, 1e-9)?;
            let longer = reach >= placement.reach_mm - 1e-9;
            prop_assert!(longer || brief.shot.side.is_some(), "the shortest wins");
        }
        prop_assert!(brief.shot.side.is_none_or(|side| side == placement.side));
        let Some(boom) = brief.support.boom else { return Ok(()) };
        // Down the pitch from the pivot to the clamp, and on to the tail's end.
        let pitch = boom.pitch_deg.to_radians();
        let down = |from: Vector, along: f64| {
            plus(plus(from, towards, -along * pitch.cos()), [0.0, 0.0, 1.0], -along * pitch.sin())
        };
        let clamp = down(pivot, placement.boom_length_mm);
        let found = on_floor(placement.column, placement.clamp_height_mm);
        agree("clamp", length(minus(clamp, found)), 0.0, 1e-9)?;
        let tail = down(clamp, boom.tail_mm);
        agree("tail", length(minus(tail, at(placement.tail_end.unwrap()))), 0.0, 1e-9)?;
        let highest = plan.pose.body_top_mm.max(pivot[2]).max(clamp[2]).max(tail[2]);
        agree("highest", placement.highest_point_mm, highest, 1e-9)?;
    }

    #[test]
    fn rooms_and_distances_are_measured_from_the_parts(brief in studio_brief()) {
        let plan = plan_of(&brief);
        let room = &plan.bay_room;
        let (sensor, pivot) = (at(plan.pose.sensor), at(plan.pose.pivot));
        agree("sensor", plan.pose.sensor_from_edge_mm, from_table(&brief, sensor), 1e-9)?;
        agree("pivot", plan.pose.pivot_from_edge_mm, from_table(&brief, pivot), 1e-9)?;
        let nearest = |places: &[Vector]| {
            places.iter().fold(f64::INFINITY, |room, place| room.min(within_walls(&brief, *place)))
        };
        agree("feet", room.feet_mm, nearest(&feet(&plan)), 1e-9)?;
        let back = plus(sensor, way(plan.pose.forward), -brief.camera.body_behind_mm);
        agree("camera", room.camera_mm, nearest(&[back, at(plan.pose.pupil), pivot]), 1e-9)?;
        let tail: Vec<Vector> = plan.placement.tail_end.iter().map(|end| at(*end)).collect();
        agree("tail", room.tail_mm, nearest(&tail), 1e-9)?;
        let ceiling = brief.bay.ceiling_mm.unwrap_or(f64::INFINITY) - brief.bay.ceiling_clearance_mm;
        agree("ceiling", room.ceiling_mm, ceiling - plan.placement.highest_point_mm, 1e-9)?;
        // Walking back from the camera: the wall is met there, and over the table nobody stands.
        if room.behind_camera_mm.is_finite() && within_walls(&brief, back) > 0.0 {
            let away = [plan.pose.right.y, -plan.pose.right.x, 0.0];
            let mut table = 0.0;
            if from_table(&brief, back) < 0.0 {
                let (mut low, mut high) = (0.0, 5000.0);
                for _ in 0..80 {
                    let middle = 0.5 * (low + high);
                    let over = from_table(&brief, plus(back, away, middle)) < 0.0;
                    if over { low = middle } else { high = middle }
                }
                table = high;
            }
            let wall = plus(back, away, table + room.behind_camera_mm);
            agree("wall behind", within_walls(&brief, wall), 0.0, 1e-6)?;
        }
    }

    #[test]
    fn what_shows_of_the_stand_is_counted(brief in studio_brief()) {
        let plan = plan_of(&brief);
        let view = view_of(&plan);
        let placement = &plan.placement;
        let (right, pupil) = (way(plan.pose.right), at(plan.pose.pupil));
        let most = [-1.0, 0.0, 1.0].into_iter().fold(0.0, |most: f64, beside| {
            let foot = plus(on_floor(placement.column, 0.0), right, beside * brief.support.column_radius_mm);
            let line = [foot, plus(foot, [0.0, 0.0, 1.0], placement.clamp_height_mm.max(0.0))];
            most.max(counted(&view, line, |place| hidden(&brief, pupil, place)))
        });
        // The piece at each end of what shows, and of what is hidden, may count or not.
        let coarse = 2.02 * placement.clamp_height_mm.abs() / f64::from(PIECES);
        agree("column", plan.support_in_picture.column_mm, most, coarse)?;
        let line = placement.tail_end.map(|end| [at(end), at(plan.pose.pivot)]);
        let boom = line.map_or(0.0, |line| counted(&view, line, |_| false));
        let whole = line.map_or(0.0, |[end, pivot]| length(minus(end, pivot)));
        agree("boom", plan.support_in_picture.boom_mm, boom, 1.01 * whole / f64::from(PIECES))?;
    }
}
