//! The picture: lines of sight there and back, and areas and lengths against sampling.

use proptest::prelude::*;
use tablerig::brief::Brief;
use tablerig::plan::Plan;
use tablerig::scene::subject::Shape;
use tablerig::scene::table::Side;
use tablerig::vector::{FloorPoint, Point};
use tablerig::view::projection::{PicturePoint, View};

use crate::briefs::{plan_of, studio_brief};
use crate::draws::runs;
use crate::space::{Vector, agree, at, dot, length, minus, on_floor, plus, way};

pub(crate) fn view_of(plan: &Plan) -> View {
    View {
        pose: plan.pose,
        pupil_distance_mm: plan.lens.pupil_distance_mm,
        frame_width_mm: plan.frame_width_mm,
        frame_height_mm: plan.frame_height_mm,
    }
}

/// The place in the room of a place in the picture, in the plane through the aim point.
fn in_plane(plan: &Plan, right: f64, up: f64) -> Vector {
    let aim = at(plan.pose.aim);
    plus(plus(aim, way(plan.pose.right), right), way(plan.pose.up), up)
}

fn point([x_mm, y_mm, z_mm]: Vector) -> Point {
    Point { x_mm, y_mm, z_mm }
}

/// Rounding of a place in the picture: of the room's coordinates, seen from a depth.
fn blur(plan: &Plan, place: Vector, depth: f64) -> f64 {
    let s = plan.lens.pupil_distance_mm;
    let reach = length(place) + length(at(plan.pose.pupil)) + s;
    8.0 * f64::EPSILON * reach * (s / depth) * (1.0 + plan.frame_width_mm.hypot(plan.frame_height_mm) / s)
}

proptest! {
    #![proptest_config(runs(500))]

    #[test]
    fn a_line_of_sight_leads_back_to_its_place(
        brief in studio_brief(),
        x in -0.5..=0.5_f64,
        y in -0.5..=0.5_f64,
        level in -200.0..3000.0_f64,
    ) {
        let plan = plan_of(&brief);
        let view = view_of(&plan);
        let place = PicturePoint { right_mm: x * plan.frame_width_mm, up_mm: y * plan.frame_height_mm };
        let pupil = at(plan.pose.pupil);
        let sight = minus(in_plane(&plan, place.right_mm, place.up_mm), pupil);
        let Some(found) = view.cast_onto_level(place, level) else {
            // It runs level or away: the pupil's height and the sight's fall have the same sign.
            prop_assert!((level - pupil[2]) * sight[2] <= 1e-9 * length(sight));
            return Ok(());
        };
        let depth = view.depth_mm(found);
        prop_assert!(depth > 0.0);
        let reach = length(at(found)) + length(pupil);
        let from_pupil = minus(at(found), pupil);
        agree("depth", depth, dot(from_pupil, way(plan.pose.forward)), 1e-14 * reach)?;
        agree("level", found.z_mm, level, 1e-14 * (reach + level.abs()))?;
        let back = view.project(found).unwrap();
        let allowed = blur(&plan, at(found), depth);
        agree("right", back.right_mm, place.right_mm, allowed)?;
        agree("up", back.up_mm, place.up_mm, allowed)?;
    }

    #[test]
    fn the_footprint_is_the_frames_corners(brief in studio_brief()) {
        let plan = plan_of(&brief);
        let view = view_of(&plan);
        let print = &plan.footprint;
        let z = brief.table.height_mm;
        let (w, h) = (0.5 * plan.frame_width_mm, 0.5 * plan.frame_height_mm);
        let mut places = [None; 4];
        for (index, (right, up)) in [(-w, -h), (w, -h), (w, h), (-w, h)].into_iter().enumerate() {
            let sight = minus(in_plane(&plan, right, up), at(plan.pose.pupil));
            let Some(corner) = print.corners[index] else {
                prop_assert!(sight[2] >= -1e-9 * length(sight) || print.from_below);
                continue;
            };
            let corner = on_floor(corner, z);
            places[index] = Some(corner);
            let depth = view.depth_mm(point(corner));
            let seen = view.project(point(corner)).unwrap();
            let allowed = blur(&plan, corner, depth);
            agree("corner's right", seen.right_mm, right, allowed)?;
            agree("corner's up", seen.up_mm, up, allowed)?;
        }
        if let [Some(a), Some(b), Some(c), Some(d)] = places {
            let largest = [a, b, c, d].map(length).into_iter().fold(0.0, f64::max);
            let height = plan.pose.pupil.z_mm - z;
            // Far out, a line's place hangs on small differences of slope.
            let allowed = 1e-14 * largest * (1.0 + largest / height);
            let (near, far) = (length(minus(b, a)), length(minus(c, d)));
            agree("near width", print.near_width_mm.unwrap(), near, allowed)?;
            agree("far width", print.far_width_mm.unwrap(), far, allowed)?;
            let ratio = far / near;
            agree("keystone", print.keystone_ratio.unwrap(), ratio, 4.0 * allowed / near * (1.0 + ratio))?;
            // Between the middles of two lines that lie level and across.
            let middle = |p: Vector, q: Vector| plus(p, minus(q, p), 0.5);
            let along = minus(middle(c, d), middle(a, b));
            agree("depth", print.depth_mm.unwrap(), length(along), 4.0 * allowed)?;
            let board = print.board.unwrap();
            agree("board's width", board.width_mm, near.max(far), allowed)?;
            agree("board's depth", board.depth_mm, length(along), 4.0 * allowed)?;
            let centre = minus(middle(middle(a, b), middle(c, d)), on_floor(board.centre, z));
            agree("board's centre", length(centre), 0.0, 4.0 * allowed)?;
            prop_assert_eq!(board.turned_deg, brief.shot.bearing_deg);
        } else {
            prop_assert!(print.board.is_none() && print.keystone_ratio.is_none());
        }
    }

    /// Row by row: where the line of the picture meets the table, and how much of it lies between its edges.
    #[test]
    fn the_tables_share_is_that_of_its_rows(brief in studio_brief()) {
        let plan = plan_of(&brief);
        let Some(share) = plan.footprint.table_share else {
            prop_assert!(plan.pose.pupil.z_mm <= brief.table.height_mm + 1e-9);
            return Ok(());
        };
        let rows = 400;
        let up = |row: u32| (f64::from(row) + 0.5) / f64::from(rows) - 0.5;
        let sum: f64 = (0..rows).map(|row| row_on_table(&brief, &plan, up(row))).sum();
        // The midpoint rule over a line with a few corners and jumps: at most a few rows.
        agree("share", share, sum / f64::from(rows), 3.0 / f64::from(rows))?;
    }

    #[test]
    fn a_length_in_frame_is_that_of_its_pieces(brief in studio_brief()) {
        let plan = plan_of(&brief);
        let view = view_of(&plan);
        let (w, h) = (0.5 * plan.frame_width_mm, 0.5 * plan.frame_height_mm);
        for side in Side::ALL {
            let (from, to) = brief.table.edge(side);
            let [from, to] = [from, to].map(|end| on_floor(end, brief.table.height_mm));
            let whole = length(minus(to, from));
            let pieces = 1000;
            let inside = (0..pieces).filter(|piece| {
                let place = plus(from, minus(to, from), (f64::from(*piece) + 0.5) / f64::from(pieces));
                let seen = view.project(point(place));
                seen.is_some_and(|seen| seen.right_mm.abs() <= w && seen.up_mm.abs() <= h)
            });
            let counted = inside.count() as f64 / f64::from(pieces) * whole;
            let found = view.length_in_frame_mm(point(from), point(to));
            agree("length", found, counted, 1.01 * whole / f64::from(pieces))?;
            if !plan.footprint.from_below && counted > 0.0 {
                prop_assert!(plan.footprint.edges_in_frame[side as usize]);
            }
        }
    }

    #[test]
    fn the_outline_bounds_every_point_of_the_subject(brief in studio_brief()) {
        let plan = plan_of(&brief);
        let view = view_of(&plan);
        let foot = brief.table.height_mm;
        let [x, y] = [brief.shot.aim_x_mm, brief.shot.aim_y_mm];
        let rim = 720;
        let around: Vec<[f64; 2]> = match brief.subject.shape {
            Shape::Box { width_mm: w, depth_mm: d } => {
                [[-0.5, -0.5], [0.5, -0.5], [0.5, 0.5], [-0.5, 0.5]].map(|[i, j]| [i * w, j * d]).to_vec()
            }
            Shape::Round { diameter_mm } => (0..rim)
                .map(|step| (f64::from(step) * std::f64::consts::TAU / f64::from(rim)).sin_cos())
                .map(|(sin, cos)| [0.5 * diameter_mm * sin, 0.5 * diameter_mm * cos])
                .collect(),
        };
        let mut bounds = [f64::INFINITY, f64::NEG_INFINITY, f64::INFINITY, f64::NEG_INFINITY];
        let (mut nearest, mut farthest) = (f64::INFINITY, f64::NEG_INFINITY);
        for z in [foot, foot + brief.subject.height_mm] {
            for [i, j] in &around {
                let place = point([x + i, y + j, z]);
                let depth = view.depth_mm(place);
                (nearest, farthest) = (nearest.min(depth), farthest.max(depth));
                if let Some(seen) = view.project(place) {
                    bounds = [
                        bounds[0].min(seen.right_mm),
                        bounds[1].max(seen.right_mm),
                        bounds[2].min(seen.up_mm),
                        bounds[3].max(seen.up_mm),
                    ];
                }
            }
        }
        let s = plan.lens.pupil_distance_mm;
        // 720 points of a circle leave out at most 1e-5 of its radius.
        let breadth = brief.subject.breadth_mm();
        let missed = 1e-5 * breadth + 1e-12 * (s + 5000.0);
        agree("nearest", s - plan.subject_depth.nearest_mm, nearest, missed)?;
        agree("farthest", s + plan.subject_depth.farthest_mm, farthest, missed)?;
        let Some(outline) = plan.outline else {
            prop_assert!(nearest <= missed);
            return Ok(());
        };
        // Next to the lens the picture grows without bound, and with it what the points leave out.
        if nearest < 0.05 * s {
            return Ok(());
        }
        let allowed = missed * (s / nearest) * (1.0 + (breadth + brief.subject.height_mm) / nearest);
        agree("left", outline.left_mm, bounds[0], allowed)?;
        agree("right", outline.right_mm, bounds[1], allowed)?;
        agree("bottom", outline.bottom_mm, bounds[2], allowed)?;
        agree("top", outline.top_mm, bounds[3], allowed)?;
        let (w, h) = (plan.frame_width_mm, plan.frame_height_mm);
        agree("fill", outline.fill_width, (bounds[1] - bounds[0]) / w, 2.0 * allowed / w)?;
        agree("fill", outline.fill_height, (bounds[3] - bounds[2]) / h, 2.0 * allowed / h)?;
        agree("above", outline.room_above_mm, 0.5 * h - bounds[3], allowed)?;
        agree("below", outline.room_below_mm, 0.5 * h + bounds[2], allowed)?;
        agree("left of it", outline.room_left_mm, 0.5 * w + bounds[0], allowed)?;
        agree("right of it", outline.room_right_mm, 0.5 * w - bounds[1], allowed)?;
        let ratio = farthest / nearest;
        agree("size ratio", plan.perspective.size_ratio.unwrap(), ratio, 4.0 * ratio * missed / nearest)?;
        let scale = |z: f64| s / view.depth_mm(point([x, y, z]));
        let convergence = scale(foot + brief.subject.height_mm) / scale(foot);
        let found = plan.perspective.convergence.unwrap();
        agree("convergence", found, convergence, convergence * missed / nearest)?;
    }
}

/// Share of one line of the picture, `up` of the frame's height above its middle, that lies on the table.
fn row_on_table(brief: &Brief, plan: &Plan, up: f64) -> f64 {
    let pupil = at(plan.pose.pupil);
    let height = pupil[2] - brief.table.height_mm;
    // Both ends of the line, cast onto the table: the line lies level, so both go equally far.
    let ends = [-0.5, 0.5].map(|right| {
        let sight = minus(in_plane(plan, right * plan.frame_width_mm, up * plan.frame_height_mm), pupil);
        (sight[2] < 0.0).then(|| plus(pupil, sight, height / -sight[2]))
    });
    let [Some(left), Some(right)] = ends else { return 0.0 };
    let (mut from, mut to) = (0.0_f64, 1.0_f64);
    let half = [0.5 * brief.table.width_mm, 0.5 * brief.table.depth_mm];
    for axis in 0..2 {
        let (start, change) = (left[axis], right[axis] - left[axis]);
        for sign in [-1.0, 1.0] {
            // sign × (start + t × change) <= half
            let (value, slope) = (sign * start - half[axis], sign * change);
            if slope > 0.0 {
                to = to.min(-value / slope);
            } else if slope < 0.0 {
                from = from.max(-value / slope);
            } else if value > 0.0 {
                return 0.0;
            }
        }
    }
    (to - from).max(0.0)
}

#[test]
fn a_line_through_the_pupils_plane_is_cut_there() {
    // Overhead at 1590 mm: a pole beside the axis from the floor to above the camera is seen up to the
    // frame's side, 100 / 300 of the pupil distance below the pupil.
    let plan = plan_of(&crate::workshop::overhead());
    let pole = FloorPoint { x_mm: 100.0, y_mm: 0.0 };
    let view = view_of(&plan);
    let seen = view.length_in_frame_mm(pole.at_height(0.0), pole.at_height(4000.0));
    let top = plan.pose.pupil.z_mm - 100.0 / 300.0 * plan.lens.pupil_distance_mm;
    agree("length", seen, top, 1e-9).unwrap();
}
