//! The straightforward plan.

use nalgebra::{Point3, Vector3};

use super::{CORNERS, EDGES, OUTLINE, ROOMS, Row, SAG, STANDING, STATES, TOLERANCES, listed};
use crate::whole::Whole;

/// The straightforward plan, under the same names in the same order.
pub(crate) fn whole(w: &Whole) -> Row {
    let mut row = Row::default();
    let of = |point: &Point3<f64>| [point.x, point.y, point.z];
    let way = |vector: &Vector3<f64>| [vector.x, vector.y, vector.z];
    let (lens, pose, focus) = (&w.lens, &w.pose, &w.sharp);
    row.all([
        ("used_width", lens.used.0),
        ("used_height", lens.used.1),
        ("frame_height", lens.frame.1),
        ("magnification", lens.m),
        ("focal_length", lens.f),
        ("sensor_distance", lens.sensor_distance),
        ("image_distance", lens.image_distance),
        ("object_distance", lens.object_distance),
        ("pupil_distance", lens.s),
        ("horizontal", lens.angles[0]),
        ("vertical", lens.angles[1]),
        ("diagonal", lens.angles[2]),
        ("aim_height", pose.aim_height),
        ("body_top", pose.body_top),
        ("sensor_from_aim", pose.sensor_from_aim),
        ("pivot_from_aim", pose.pivot_from_aim),
        ("sensor_from_edge", pose.sensor_from_edge),
        ("pivot_from_edge", pose.pivot_from_edge),
    ]);
    row.put("front_clearance", pose.front_clearance);
    row.vector("forward", way(&pose.forward));
    row.vector("right", way(&pose.right));
    row.vector("up", way(&pose.up));
    for (name, point) in [
        ("aim", &pose.aim),
        ("pupil", &pose.pupil),
        ("sensor", &pose.sensor),
        ("socket", &pose.socket),
        ("pivot", &pose.pivot),
    ] {
        row.vector(name, of(point));
    }
    for (name, corner) in CORNERS.into_iter().zip(&w.frame.corners) {
        row.place(name, corner.map(|corner| [corner.x, corner.y]));
    }
    let board = w.frame.board;
    row.maybe([
        ("near_width", w.frame.near_width),
        ("far_width", w.frame.far_width),
        ("keystone", w.frame.keystone),
        ("footprint_depth", w.frame.depth),
        ("table_share", w.frame.table_share),
        ("board_width", board.map(|board| board.0)),
        ("board_x", board.map(|board| board.1)),
        ("board_y", board.map(|board| board.2)),
        ("backdrop_width", w.frame.backdrop.map(|backdrop| backdrop[0])),
        ("backdrop_height", w.frame.backdrop.map(|backdrop| backdrop[1])),
        ("backdrop_share", w.frame.backdrop.map(|backdrop| backdrop[2])),
    ]);
    listed(&mut row, EDGES, w.frame.edges.map(f64::from));
    row.all([("nearest", w.outline.0), ("farthest", w.outline.1)]);
    listed(&mut row, OUTLINE, w.outline.2.unwrap_or([f64::NAN; 10]));
    row.maybe([
        ("top_share", Some(w.shares.0)),
        ("side_share", Some(w.shares.1)),
        ("contents", w.shares.2),
        ("contents_far", w.shares.3),
        ("circle", Some(focus.circle)),
        ("f_number", Some(focus.n)),
        ("f_needed", Some(focus.needed)),
        ("f_hold", focus.hold),
        ("f_effective", Some(focus.effective)),
        ("stops_lost", Some(focus.stops_lost)),
        ("disc", Some(focus.disc)),
        ("f_diffraction", Some(focus.limit)),
        ("near_limit", Some(focus.near_limit)),
        ("in_front", Some(focus.in_front)),
        ("far_limit", Some(focus.far_limit)),
        ("behind", Some(focus.behind)),
        ("pictures", focus.stack.map(|stack| stack.0)),
        ("step", focus.stack.map(|stack| stack.1)),
        ("hinge", Some(w.tilt.0)),
        ("tilt", w.tilt.1),
        ("side_stretch", Some(w.look.0)),
        ("corner_stretch", Some(w.look.1)),
        ("size_ratio", w.look.2.map(|ratios| ratios.0)),
        ("convergence", w.look.2.map(|ratios| ratios.1)),
    ]);
    listed(&mut row, TOLERANCES, w.tolerance);
    let placed = &w.placed;
    row.all([
        ("hung", f64::from(placed.hung)),
        ("side", placed.side as f64),
        ("reach", placed.reach),
        ("stand_off", placed.stand_off),
        ("boom_length", placed.boom_length),
        ("clamp", placed.clamp),
        ("first_leg", placed.first_leg),
        ("highest", placed.highest),
        ("column_shown", w.shown.0),
        ("boom_shown", w.shown.1),
    ]);
    row.place("column", Some([placed.column.x, placed.column.y]));
    row.place("towards", Some([placed.towards.x, placed.towards.y]));
    for (index, foot) in placed.feet.iter().take(3).enumerate() {
        row.place(&format!("foot{index}"), Some([foot.x, foot.y]));
    }
    row.vector("tail_end", placed.tail_end.as_ref().map_or([f64::NAN; 3], of));
    listed(&mut row, ROOMS, w.room);
    row.all([
        ("payload", w.payload.mass),
        ("payload_ahead", w.payload.ahead),
        ("head_moment", w.payload.head_moment),
    ]);
    row.vector("payload_centre", of(&w.payload.centre));
    for (name, s) in STATES.into_iter().zip(&w.stability.states) {
        let values = [
            s.mass,
            s.centre.x,
            s.centre.y,
            s.centre.z,
            s.margin,
            s.factor,
            s.restoring,
            s.overturning,
            s.tilt,
            s.push,
            s.clamp_moment,
        ];
        STANDING.into_iter().zip(values).for_each(|(part, value)| row.put(&format!("{name}_{part}"), value));
    }
    row.all([
        ("to_tip", w.stability.to_tip),
        ("share_of_tipping", w.stability.share),
        ("base_to_add", w.ballast.0),
    ]);
    row.put("to_balance", w.ballast.1);
    let sag = w.sag.map(|([a, b, c, d, e], settling)| [a, b, c, d, e, settling.unwrap_or(f64::NAN)]);
    listed(&mut row, SAG, sag.unwrap_or([f64::NAN; 6]));
    row
}
