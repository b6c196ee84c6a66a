//! The library's plan.

use tablerig::plan::Plan;
use tablerig::rig::stability::Standing;
use tablerig::vector::{Direction, Point};

use super::{CORNERS, EDGES, OUTLINE, ROOMS, Row, SAG, STANDING, STATES, TOLERANCES, listed};

/// Its outputs that the other ways have too.
pub(crate) fn plan(p: &Plan) -> Row {
    let mut row = Row::default();
    let of = |point: Point| [point.x_mm, point.y_mm, point.z_mm];
    let way = |direction: Direction| [direction.x, direction.y, direction.z];
    let (lens, pose, focus) = (&p.lens, &p.pose, &p.focus);
    row.all([
        ("used_width", p.used_area.width_mm),
        ("used_height", p.used_area.height_mm),
        ("frame_height", p.frame_height_mm),
        ("magnification", lens.magnification),
        ("focal_length", lens.focal_length_mm),
        ("sensor_distance", lens.sensor_distance_mm),
        ("image_distance", lens.image_distance_mm),
        ("object_distance", lens.object_distance_mm),
        ("pupil_distance", lens.pupil_distance_mm),
        ("horizontal", p.field_angles.horizontal_deg),
        ("vertical", p.field_angles.vertical_deg),
        ("diagonal", p.field_angles.diagonal_deg),
        ("aim_height", p.aim_height_mm),
        ("body_top", pose.body_top_mm),
        ("sensor_from_aim", pose.sensor_from_aim_mm),
        ("pivot_from_aim", pose.pivot_from_aim_mm),
        ("sensor_from_edge", pose.sensor_from_edge_mm),
        ("pivot_from_edge", pose.pivot_from_edge_mm),
    ]);
    row.put("front_clearance", pose.front_clearance_mm);
    row.vector("forward", way(pose.forward));
    row.vector("right", way(pose.right));
    row.vector("up", way(pose.up));
    for (name, point) in [
        ("aim", pose.aim),
        ("pupil", pose.pupil),
        ("sensor", pose.sensor),
        ("socket", pose.socket),
        ("pivot", pose.pivot),
    ] {
        row.vector(name, of(point));
    }
    for (name, corner) in CORNERS.into_iter().zip(p.footprint.corners) {
        row.place(name, corner.map(|corner| [corner.x_mm, corner.y_mm]));
    }
    let board = p.footprint.board;
    row.maybe([
        ("near_width", p.footprint.near_width_mm),
        ("far_width", p.footprint.far_width_mm),
        ("keystone", p.footprint.keystone_ratio),
        ("footprint_depth", p.footprint.depth_mm),
        ("table_share", p.footprint.table_share),
        ("board_width", board.map(|board| board.width_mm)),
        ("board_x", board.map(|board| board.centre.x_mm)),
        ("board_y", board.map(|board| board.centre.y_mm)),
        ("backdrop_width", p.backdrop.map(|backdrop| backdrop.width_mm)),
        ("backdrop_height", p.backdrop.map(|backdrop| backdrop.height_mm)),
        ("backdrop_share", p.backdrop.map(|backdrop| backdrop.share)),
    ]);
    listed(&mut row, EDGES, p.footprint.edges_in_frame.map(f64::from));
    row.all([("nearest", p.subject_depth.nearest_mm), ("farthest", p.subject_depth.farthest_mm)]);
    let outline = p.outline.map(|o| {
        let rooms = [o.room_above_mm, o.room_below_mm, o.room_left_mm, o.room_right_mm];
        let [above, below, left, right] = rooms;
        [o.left_mm, o.right_mm, o.bottom_mm, o.top_mm, o.fill_width, o.fill_height, above, below, left, right]
    });
    listed(&mut row, OUTLINE, outline.unwrap_or([f64::NAN; 10]));
    row.maybe([
        ("top_share", Some(p.shares.top)),
        ("side_share", Some(p.shares.side)),
        ("contents", p.shares.contents),
        ("contents_far", p.shares.contents_from_far),
        ("circle", Some(focus.circle_of_confusion_mm)),
        ("f_number", Some(focus.f_number)),
        ("f_needed", Some(focus.f_number_needed)),
        ("f_hold", focus.f_number_to_hold.map(|stop| stop.f_number)),
        ("f_effective", Some(focus.effective_f_number)),
        ("stops_lost", Some(focus.exposure_loss_stops)),
        ("disc", Some(focus.diffraction_disc_mm)),
        ("f_diffraction", Some(focus.diffraction_limit_f_number)),
        ("near_limit", Some(focus.depth_of_field.near_limit_mm)),
        ("in_front", Some(focus.depth_of_field.in_front_mm)),
        ("far_limit", Some(focus.depth_of_field.far_limit_mm)),
        ("behind", Some(focus.depth_of_field.behind_mm)),
        ("pictures", focus.stack.map(|stack| f64::from(stack.pictures))),
        ("step", focus.stack.map(|stack| stack.step_mm)),
        ("hinge", Some(p.tilt.hinge_distance_mm)),
        ("tilt", p.tilt.tilt_deg),
        ("side_stretch", Some(p.perspective.side_stretch)),
        ("corner_stretch", Some(p.perspective.corner_stretch)),
        ("size_ratio", p.perspective.size_ratio),
        ("convergence", p.perspective.convergence),
    ]);
    let t = &p.tolerance;
    listed(&mut row, TOLERANCES, [t.up_mm, t.down_mm, t.away_mm, t.closer_mm, t.roll_drift_mm]);
    let placed = &p.placement;
    row.all([
        ("hung", f64::from(placed.boom_used)),
        ("side", f64::from(placed.side as i32)),
        ("reach", placed.reach_mm),
        ("stand_off", placed.stand_off_mm),
        ("boom_length", placed.boom_length_mm),
        ("clamp", placed.clamp_height_mm),
        ("first_leg", placed.first_leg_deg),
        ("highest", placed.highest_point_mm),
        ("column_shown", p.support_in_picture.column_mm),
        ("boom_shown", p.support_in_picture.boom_mm),
    ]);
    row.place("column", Some([placed.column.x_mm, placed.column.y_mm]));
    row.place("towards", Some([placed.towards.x, placed.towards.y]));
    for (index, foot) in placed.feet.iter().take(3).enumerate() {
        row.place(&format!("foot{index}"), Some([foot.x_mm, foot.y_mm]));
    }
    row.vector("tail_end", placed.tail_end.map_or([f64::NAN; 3], of));
    let room = &p.bay_room;
    listed(
        &mut row,
        ROOMS,
        [room.feet_mm, room.tail_mm, room.camera_mm, room.ceiling_mm, room.behind_camera_mm],
    );
    row.all([
        ("payload", p.payload.mass_kg),
        ("payload_ahead", p.payload.centre_ahead_mm),
        ("head_moment", p.payload.head_moment_n_m),
    ]);
    row.vector("payload_centre", of(p.payload.centre));
    let stability = &p.stability;
    for (name, s) in
        STATES.into_iter().zip([&stability.as_shot, &stability.camera_off, &stability.counterweight_off])
    {
        let Standing { total_mass_kg, centre, margin_mm, factor, tilt_to_tip_deg, push_to_tip_n, .. } = *s;
        let moments = [s.restoring_moment_n_m, s.overturning_moment_n_m];
        let values = [
            total_mass_kg,
            centre.x_mm,
            centre.y_mm,
            centre.z_mm,
            margin_mm,
            factor,
            moments[0],
            moments[1],
            tilt_to_tip_deg,
            push_to_tip_n,
            s.clamp_moment_n_m,
        ];
        STANDING.into_iter().zip(values).for_each(|(part, value)| row.put(&format!("{name}_{part}"), value));
    }
    row.all([
        ("to_tip", stability.payload_to_tip_kg),
        ("share_of_tipping", stability.payload_share),
        ("base_to_add", p.ballast.base_to_add_kg),
    ]);
    row.put("to_balance", p.ballast.counterweight_to_balance_kg);
    let sag = p.sag.map(|s| {
        let settling = s.settling_s.unwrap_or(f64::NAN);
        [s.deflection_mm, s.height_lost_mm, s.end_slope_deg, s.aim_shift_mm, s.frequency_hz, settling]
    });
    listed(&mut row, SAG, sag.unwrap_or([f64::NAN; 6]));
    row
}
