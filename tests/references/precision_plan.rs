//! Each output of a plan beside its column; the patterns name every field, so that none is forgotten.

use crate::precision_rig::{
    compare_ballast, compare_placement, compare_sag, compare_stability, compare_tolerance,
};
use crate::rows::{Row, Tally};
use tablerig::advice::Advice;
use tablerig::optics::focus::{DepthOfField, Focus, FocusStack};
use tablerig::optics::lens::{FieldAngles, FocusedLens};
use tablerig::optics::sensor::UsedArea;
use tablerig::optics::tilt::Tilt;
use tablerig::plan::Plan;
use tablerig::rig::reach::{BayRoom, SupportInPicture};
use tablerig::rig::weights::Payload;
use tablerig::vector::{Direction, FloorPoint, Point};
use tablerig::view::footprint::{Backdrop, Board, Footprint};
use tablerig::view::outline::{Outline, Shares, SubjectDepth};
use tablerig::view::perspective::Perspective;
use tablerig::view::pose::Pose;

/// One row of the reference beside the library's plan.
pub(crate) struct Beside<'a> {
    pub(crate) row: &'a Row<'a>,
    pub(crate) case: &'a str,
    pub(crate) tally: &'a mut Tally,
}

impl Beside<'_> {
    pub(crate) fn maybe_on(&mut self, name: &str, got: Option<f64>, scale: f64) {
        match (got, self.row.given(name)) {
            (Some(got), Some(want)) => self.tally.close(name, got, want, scale, self.case),
            (None, None) => {}
            (got, want) => {
                println!("{name} in case {}: {got:?} for {want:?}", self.case);
                self.tally.note(name, f64::INFINITY, self.case);
            }
        }
    }

    pub(crate) fn maybe(&mut self, name: &str, got: Option<f64>) {
        self.maybe_on(name, got, 0.0);
    }

    pub(crate) fn number(&mut self, name: &str, got: f64) {
        self.maybe_on(name, Some(got), 0.0);
    }

    /// Off by a share of the size of what the quantity is the sum or difference of, where it may be 0.
    pub(crate) fn on(&mut self, name: &str, got: f64, scale: &str) {
        let scale = self.row.number(scale).abs();
        self.maybe_on(name, Some(got), scale);
    }

    pub(crate) fn flag(&mut self, name: &str, got: bool) {
        let want = self.row.flag(name);
        self.tally.note(name, if got == want { 0.0 } else { f64::INFINITY }, self.case);
    }

    /// A number of an edge, or a name: one of those that the reference allows.
    pub(crate) fn one_of(&mut self, name: &str, got: &str) {
        let allowed = self.row.word(name);
        let right = allowed.split('|').any(|word| word == got);
        self.tally.note(name, if right { 0.0 } else { f64::INFINITY }, self.case);
    }

    pub(crate) fn point(&mut self, name: &str, unit: &str, at: Point, scale: &str) {
        for (part, value) in [("x", at.x_mm), ("y", at.y_mm), ("z", at.z_mm)] {
            self.on(&format!("{name}_{part}{unit}"), value, scale);
        }
    }
}

/// Compares a plan with its row.
pub(crate) fn compare(plan: &Plan, row: &Row, case: &str, tally: &mut Tally) {
    let b = &mut Beside { row, case, tally };
    // Cautions are words about these numbers; they are tested at their limits elsewhere.
    let Plan {
        used_area: UsedArea { width_mm, height_mm },
        frame_width_mm,
        frame_height_mm,
        aim_height_mm,
        lens,
        field_angles: FieldAngles { horizontal_deg, vertical_deg, diagonal_deg },
        pose,
        footprint,
        backdrop,
        subject_depth: SubjectDepth { nearest_mm, farthest_mm },
        outline,
        shares: Shares { top, side, contents, contents_from_far },
        focus,
        tilt: Tilt { hinge_distance_mm, tilt_deg },
        perspective: Perspective { side_stretch, corner_stretch, size_ratio, convergence },
        advice,
        payload,
        placement,
        bay_room,
        support_in_picture: SupportInPicture { column_mm, boom_mm },
        stability,
        ballast,
        sag,
        tolerance,
        overhead,
        removal,
        cautions: _,
    } = plan;
    b.number("used_width_mm", *width_mm);
    b.number("used_height_mm", *height_mm);
    b.number("frame_width_mm", *frame_width_mm);
    b.number("frame_height_mm", *frame_height_mm);
    b.number("aim_height_mm", *aim_height_mm);
    compare_lens(lens, b);
    b.number("horizontal_deg", *horizontal_deg);
    b.number("vertical_deg", *vertical_deg);
    b.number("diagonal_deg", *diagonal_deg);
    compare_pose(pose, b);
    compare_footprint(footprint, b);
    let backdrop =
        backdrop.map(|Backdrop { behind_mm: _, width_mm, height_mm, share }| (width_mm, height_mm, share));
    let room = row.number("room_scale");
    b.maybe("backdrop_width", backdrop.map(|b| b.0));
    b.maybe_on("backdrop_height", backdrop.map(|b| b.1), room);
    b.maybe_on("backdrop_share", backdrop.map(|b| b.2), 1.0);
    b.on("nearest_mm", *nearest_mm, "depth_scale");
    b.on("farthest_mm", *farthest_mm, "depth_scale");
    compare_outline(outline.as_ref(), b);
    b.number("top_share", *top);
    b.maybe_on("side_share", Some(*side), 1.0);
    b.maybe("contents", *contents);
    b.maybe("contents_from_far", *contents_from_far);
    compare_focus(focus, b);
    b.number("hinge_distance_mm", *hinge_distance_mm);
    b.maybe("tilt_deg", *tilt_deg);
    b.number("side_stretch", *side_stretch);
    b.number("corner_stretch", *corner_stretch);
    b.maybe("size_ratio", *size_ratio);
    b.maybe("convergence", *convergence);
    compare_advice(advice, b);
    let Payload { mass_kg, centre_ahead_mm, centre, head_moment_n_m } = payload;
    b.number("payload_kg", *mass_kg);
    b.number("payload_ahead", *centre_ahead_mm);
    b.point("payload", "", *centre, "room_scale");
    b.on("head_moment", *head_moment_n_m, "head_moment_scale");
    compare_placement(placement, b);
    let BayRoom { feet_mm, tail_mm, camera_mm, ceiling_mm, behind_camera_mm } = bay_room;
    b.on("room_feet", *feet_mm, "bay_scale");
    b.on("room_tail", *tail_mm, "bay_scale");
    b.on("room_camera", *camera_mm, "bay_scale");
    b.on("room_ceiling", *ceiling_mm, "bay_scale");
    b.on("room_behind", *behind_camera_mm, "bay_scale");
    b.on("column_in_picture", *column_mm, "room_scale");
    b.on("boom_in_picture", *boom_mm, "room_scale");
    compare_stability(stability, b);
    compare_ballast(ballast, b);
    compare_sag(sag.as_ref(), b);
    compare_tolerance(tolerance, b);
    b.flag("overhead", *overhead);
    b.one_of("removal", &snake(&format!("{removal:?}")));
}

/// A name in capitals as a word with underscores.
pub(crate) fn snake(name: &str) -> String {
    let mut word = String::new();
    for letter in name.chars() {
        if letter.is_uppercase() && !word.is_empty() {
            word.push('_');
        }
        word.push(letter.to_ascii_lowercase());
    }
    word
}

fn compare_lens(lens: &FocusedLens, b: &mut Beside) {
    let FocusedLens {
        magnification,
        focal_length_mm,
        focal_length_assumed: _,
        pupil_ratio: _,
        sensor_distance_mm,
        image_distance_mm,
        object_distance_mm,
        pupil_distance_mm,
    } = *lens;
    b.number("magnification", magnification);
    b.number("focal_length_mm", focal_length_mm);
    b.number("sensor_distance_mm", sensor_distance_mm);
    b.number("image_distance_mm", image_distance_mm);
    b.number("object_distance_mm", object_distance_mm);
    b.number("pupil_distance_mm", pupil_distance_mm);
}

fn compare_pose(pose: &Pose, b: &mut Beside) {
    let Pose {
        forward,
        right,
        up,
        aim,
        pupil,
        sensor,
        socket,
        pivot,
        body_top_mm,
        sensor_from_aim_mm,
        pivot_from_aim_mm,
        sensor_from_edge_mm,
        pivot_from_edge_mm,
        front_clearance_mm,
    } = *pose;
    for (name, Direction { x, y, z }) in [("forward", forward), ("right", right), ("up", up)] {
        for (part, value) in [("x", x), ("y", y), ("z", z)] {
            b.number(&format!("{name}_{part}"), value);
        }
    }
    for (name, at) in
        [("aim", aim), ("pupil", pupil), ("sensor", sensor), ("socket", socket), ("pivot", pivot)]
    {
        b.point(name, "_mm", at, "room_scale");
    }
    b.on("body_top_mm", body_top_mm, "room_scale");
    b.number("sensor_from_aim_mm", sensor_from_aim_mm);
    b.on("pivot_from_aim_mm", pivot_from_aim_mm, "room_scale");
    b.on("sensor_from_edge_mm", sensor_from_edge_mm, "bay_scale");
    b.on("pivot_from_edge_mm", pivot_from_edge_mm, "bay_scale");
    let room = b.row.number("room_scale");
    b.maybe_on("front_clearance_mm", front_clearance_mm, room);
}

fn compare_footprint(footprint: &Footprint, b: &mut Beside) {
    let Footprint {
        corners,
        near_width_mm,
        far_width_mm,
        keystone_ratio,
        depth_mm,
        from_below,
        edges_in_frame,
        table_share,
        board,
    } = *footprint;
    let room = b.row.number("room_scale");
    for (name, corner) in ["near_left", "near_right", "far_right", "far_left"].into_iter().zip(corners) {
        // Each coordinate against the size of the place: a far corner may lie near an axis.
        let far = corner.map_or(room, |at: FloorPoint| room.max(at.x_mm.abs()).max(at.y_mm.abs()));
        b.maybe_on(&format!("{name}_x_mm"), corner.map(|at| at.x_mm), far);
        b.maybe_on(&format!("{name}_y_mm"), corner.map(|at| at.y_mm), far);
    }
    b.maybe("near_width", near_width_mm);
    b.maybe("far_width", far_width_mm);
    b.maybe("keystone_ratio", keystone_ratio);
    b.maybe("footprint_depth", depth_mm);
    b.flag("from_below", from_below);
    for (side, shows) in ["front", "right", "back", "left"].into_iter().zip(edges_in_frame) {
        b.flag(&format!("edge_{side}"), shows);
    }
    b.maybe_on("table_share", table_share, 1.0);
    let board = board.map(|Board { width_mm, depth_mm, centre, turned_deg: _ }| (width_mm, depth_mm, centre));
    b.maybe("board_width", board.map(|board| board.0));
    b.maybe("board_depth", board.map(|board| board.1));
    let far = board.map_or(room, |board| room.max(board.1));
    b.maybe_on("board_x", board.map(|board| board.2.x_mm), far);
    b.maybe_on("board_y", board.map(|board| board.2.y_mm), far);
}

fn compare_outline(outline: Option<&Outline>, b: &mut Beside) {
    let values = outline.map(|outline| {
        let Outline {
            left_mm,
            right_mm,
            bottom_mm,
            top_mm,
            fill_width,
            fill_height,
            room_above_mm,
            room_below_mm,
            room_left_mm,
            room_right_mm,
        } = *outline;
        let edges = [left_mm, right_mm, bottom_mm, top_mm];
        (edges, [fill_width, fill_height], [room_above_mm, room_below_mm, room_left_mm, room_right_mm])
    });
    let size = values.map_or(0.0, |(edges, ..)| edges.into_iter().fold(0.0, |a: f64, e| a.max(e.abs())));
    let frame = b.row.number("frame_scale");
    for (at, name) in ["left", "right", "bottom", "top"].into_iter().enumerate() {
        b.maybe_on(&format!("outline_{name}"), values.map(|values| values.0[at]), size);
    }
    b.maybe("fill_width", values.map(|values| values.1[0]));
    b.maybe("fill_height", values.map(|values| values.1[1]));
    for (at, name) in ["above", "below", "left", "right"].into_iter().enumerate() {
        b.maybe_on(&format!("room_{name}"), values.map(|values| values.2[at]), frame);
    }
}

fn compare_focus(focus: &Focus, b: &mut Beside) {
    let Focus {
        circle_of_confusion_mm,
        circle_of_confusion_assumed: _,
        f_number,
        engraved,
        f_number_given: _,
        depth_of_field: DepthOfField { near_limit_mm, far_limit_mm, in_front_mm, behind_mm },
        subject_held,
        f_number_needed,
        f_number_to_hold,
        effective_f_number,
        exposure_loss_stops,
        diffraction_disc_mm,
        diffraction_limit_f_number,
        stack,
    } = *focus;
    b.number("circle_of_confusion_mm", circle_of_confusion_mm);
    b.number("f_number", f_number);
    b.number("engraved", engraved);
    b.number("near_limit_mm", near_limit_mm);
    b.number("in_front_mm", in_front_mm);
    let far = b.row.number("far_limit_mm");
    let near = b.row.number("near_limit_mm");
    if far.is_finite() && far > 1e5 * near {
        // So near the hyperfocal distance the last bit of the magnification moves the far limit by more
        // than is asked of it; what keeps its digits is the reciprocal, against that of the near limit.
        b.tally.close("far_limit_reciprocal", 1.0 / far_limit_mm, 1.0 / far, 1.0 / near, b.case);
        let behind = b.row.number("behind_mm");
        b.tally.close("behind_reciprocal", 1.0 / behind_mm, 1.0 / behind, 1.0 / near, b.case);
    } else {
        b.number("far_limit_mm", far_limit_mm);
        b.number("behind_mm", behind_mm);
    }
    b.flag("subject_held", subject_held);
    b.number("f_number_needed", f_number_needed);
    b.maybe("hold_f_number", f_number_to_hold.map(|stop| stop.f_number));
    b.maybe("hold_engraved", f_number_to_hold.map(|stop| stop.engraved));
    b.number("effective_f_number", effective_f_number);
    b.number("exposure_loss_stops", exposure_loss_stops);
    b.number("diffraction_disc_mm", diffraction_disc_mm);
    b.number("diffraction_limit_f_number", diffraction_limit_f_number);
    let stack = stack.map(|FocusStack { f_number, engraved: _, pictures, step_mm }| {
        (f_number, f64::from(pictures), step_mm)
    });
    b.maybe("stack_f_number", stack.map(|stack| stack.0));
    b.maybe("stack_pictures", stack.map(|stack| stack.1));
    b.maybe("stack_step_mm", stack.map(|stack| stack.2));
}

fn compare_advice(advice: &Advice, b: &mut Beside) {
    let Advice {
        least_deg,
        most_deg,
        start_deg,
        reasons: _,
        top_share_at_start,
        contents_at_start,
        half_top_from_deg,
        half_contents_from_deg,
    } = *advice;
    b.number("advice_least", least_deg);
    b.number("advice_most", most_deg);
    b.number("advice_start", start_deg);
    b.number("advice_top_share", top_share_at_start);
    b.maybe("advice_contents", contents_at_start);
    b.number("advice_half_top", half_top_from_deg);
    b.maybe("advice_half_contents", half_contents_from_deg);
}
