//! Sizes and offsets of the C structs as recorded: the same on every machine for all without pointers, and
//! those with pointers where a pointer has 8 bytes. A change here is a change of the binary interface.

use std::fs;
use std::mem::offset_of;
use std::path::Path;

use tablerig::doors::c::advice::Advice;
use tablerig::doors::c::brief::{Brief, Criteria, Shot};
use tablerig::doors::c::caution::Caution;
use tablerig::doors::c::optics::camera::Camera;
use tablerig::doors::c::optics::focus::{DepthOfField, Focus, FocusStack, ThirdStop};
use tablerig::doors::c::optics::lens::{FieldAngles, FocusedLens, Lens};
use tablerig::doors::c::optics::sensor::{Aspect, UsedArea};
use tablerig::doors::c::optics::tilt::Tilt;
use tablerig::doors::c::plan::Plan;
use tablerig::doors::c::point::{Direction, FloorPoint, PicturePoint, Point};
use tablerig::doors::c::range::Range;
use tablerig::doors::c::rig::ballast::Ballast;
use tablerig::doors::c::rig::reach::{BayRoom, Placement, SupportInPicture};
use tablerig::doors::c::rig::sag::Sag;
use tablerig::doors::c::rig::stability::{Edge, Feet, Loads, Payload, Stability, Standing, Weight};
use tablerig::doors::c::rig::support::{Boom, Head, Sandbag, Stiffness, Support};
use tablerig::doors::c::scene::bay::Bay;
use tablerig::doors::c::scene::subject::{Subject, Vessel};
use tablerig::doors::c::scene::table::Table;
use tablerig::doors::c::status::Fault;
use tablerig::doors::c::tolerance::{Measured, Measurement, RealShot, Tolerance};
use tablerig::doors::c::view::footprint::{Backdrop, Board, Footprint};
use tablerig::doors::c::view::outline::{Outline, Shares, SubjectDepth};
use tablerig::doors::c::view::perspective::Perspective;
use tablerig::doors::c::view::pose::Pose;
use tablerig::doors::c::view::projection::View;

/// `Struct size { field offset, ... }`: checked while this file is compiled, for the machine it is compiled for.
macro_rules! layout {
    ($($name:ident $size:literal { $($field:ident $offset:literal),+ $(,)? })+) => {$(
        const _: () = {
            assert!(size_of::<$name>() == $size, concat!(stringify!($name), " has another size"));
            assert!(align_of::<$name>() <= 8);
            $(assert!(
                offset_of!($name, $field) == $offset,
                concat!(stringify!($name), ".", stringify!($field), " has moved"),
            );)+
            // Names every field.
            let _ = |c: $name| {
                let $name { $($field: _),+ } = c;
            };
        };
    )+};
}

layout! {
    Camera 80 {
        size 0, has_circle_of_confusion_mm 4, sensor_width_mm 8, sensor_height_mm 16, socket_ahead_mm 24,
        socket_below_mm 32, body_above_mm 40, mass_kg 48, body_behind_mm 56, centre_ahead_mm 64,
        circle_of_confusion_mm 72
    }
    Aspect 16 { width 0, height 8 }
    UsedArea 16 { width_mm 0, height_mm 8 }
    Lens 104 {
        size 0, has_closest_focus_mm 4, has_largest_magnification 8, has_front_from_sensor_mm 12,
        focal_length_mm 16, least_f_number 24, most_f_number 32, mass_kg 40, centre_ahead_mm 48,
        closest_focus_mm 56, largest_magnification 64, pupil_ratio 72, principal_separation_mm 80,
        front_from_sensor_mm 88, largest_tilt_deg 96
    }
    FocusedLens 64 {
        focal_length_assumed 0, reserved 4, magnification 8, focal_length_mm 16, pupil_ratio 24,
        sensor_distance_mm 32, image_distance_mm 40, object_distance_mm 48, pupil_distance_mm 56
    }
    FieldAngles 24 { horizontal_deg 0, vertical_deg 8, diagonal_deg 16 }
    SubjectDepth 16 { nearest_mm 0, farthest_mm 8 }
    DepthOfField 32 { near_limit_mm 0, far_limit_mm 8, in_front_mm 16, behind_mm 24 }
    ThirdStop 16 { f_number 0, engraved 8 }
    FocusStack 32 { pictures 0, reserved 4, f_number 8, engraved 16, step_mm 24 }
    Focus 168 {
        circle_of_confusion_assumed 0, f_number_given 4, subject_held 8, has_f_number_to_hold 12,
        has_stack 16, reserved 20, circle_of_confusion_mm 24, f_number 32, engraved 40, depth_of_field 48,
        f_number_needed 80, f_number_to_hold 88, effective_f_number 104, exposure_loss_stops 112,
        diffraction_disc_mm 120, diffraction_limit_f_number 128, stack 136
    }
    Tilt 24 { has_tilt_deg 0, reserved 4, hinge_distance_mm 8, tilt_deg 16 }
    Table 32 { size 0, underside 4, width_mm 8, depth_mm 16, height_mm 24 }
    Vessel 16 { inside_diameter_mm 0, contents_below_rim_mm 8 }
    Subject 64 {
        size 0, shape 4, judged_by 8, has_vessel 12, width_mm 16, depth_mm 24, diameter_mm 32, height_mm 40,
        vessel 48
    }
    Bay 96 {
        size 0, has_left_mm 4, has_right_mm 8, has_front_mm 12, has_back_mm 16, has_ceiling_mm 20,
        public_passes 24, people_under 28, left_mm 32, right_mm 40, front_mm 48, back_mm 56, ceiling_mm 64,
        ceiling_clearance_mm 72, person_room_mm 80, floor_slope_percent 88
    }
    Point 24 { x_mm 0, y_mm 8, z_mm 16 }
    Direction 24 { x 0, y 8, z 16 }
    Pose 248 {
        has_front_clearance_mm 0, reserved 4, forward 8, right 32, up 56, aim 80, pupil 104, sensor 128,
        socket 152, pivot 176, body_top_mm 200, sensor_from_aim_mm 208, pivot_from_aim_mm 216,
        sensor_from_edge_mm 224, pivot_from_edge_mm 232, front_clearance_mm 240
    }
    View 272 { pose 0, pupil_distance_mm 248, frame_width_mm 256, frame_height_mm 264 }
    PicturePoint 16 { right_mm 0, up_mm 8 }
    FloorPoint 16 { x_mm 0, y_mm 8 }
    Board 40 { width_mm 0, depth_mm 8, centre 16, turned_deg 32 }
    Footprint 208 {
        has_corners 0, edges_in_frame 16, has_near_width_mm 32, has_far_width_mm 36, has_keystone_ratio 40,
        has_depth_mm 44, from_below 48, has_table_share 52, has_board 56, reserved 60, corners 64,
        near_width_mm 128, far_width_mm 136, keystone_ratio 144, depth_mm 152, table_share 160, board 168
    }
    Backdrop 32 { behind_mm 0, width_mm 8, height_mm 16, share 24 }
    Outline 80 {
        left_mm 0, right_mm 8, bottom_mm 16, top_mm 24, fill_width 32, fill_height 40, room_above_mm 48,
        room_below_mm 56, room_left_mm 64, room_right_mm 72
    }
    Shares 40 { has_contents 0, has_contents_from_far 4, top 8, side 16, contents 24, contents_from_far 32 }
    Perspective 40 {
        has_size_ratio 0, has_convergence 4, side_stretch 8, corner_stretch 16, size_ratio 24,
        convergence 32
    }
    Head 40 {
        has_rated_load_kg 0, has_rated_moment_n_m 4, mass_kg 8, pivot_below_socket_mm 16, rated_load_kg 24,
        rated_moment_n_m 32
    }
    Sandbag 32 { mass_kg 0, out_mm 8, direction_deg 16, height_mm 24 }
    Stiffness 40 {
        kind 0, reserved 4, bending_stiffness_n_m2 8, tube_outside_mm 16, tube_inside_mm 24,
        tube_modulus_n_per_mm2 32
    }
    Boom 128 {
        has_counterweight_out_mm 0, has_damping_ratio 4, has_rated_load_kg 8, has_rated_clamp_moment_n_m 12,
        longest_reach_mm 16, tail_mm 24, mass_kg 32, pitch_deg 40, counterweight_kg 48,
        counterweight_out_mm 56, damping_ratio 64, rated_load_kg 72, rated_clamp_moment_n_m 80, stiffness 88
    }
    Support 416 {
        size 0, leg_count 4, has_first_leg_deg 8, has_rated_load_kg 12, has_boom 16, reserved 20,
        lowest_pivot_mm 24, highest_pivot_mm 32, column_radius_mm 40, foot_radius_mm 48, legs_top_mm 56,
        mass_kg 64, centre_height_mm 72, head 80, table_clearance_mm 120, base_mass_kg 128,
        base_height_mm 136, first_leg_deg 144, rated_load_kg 152, sandbags 160, boom 288
    }
    Placement 288 {
        boom_used 0, side 4, has_tail_end 8, leg_count 12, column 16, towards 32, stand_off_mm 56,
        reach_mm 64, reach_from_sides_mm 72, boom_length_mm 104, clamp_height_mm 112, tail_end 120,
        first_leg_deg 144, feet 152, highest_point_mm 280
    }
    BayRoom 40 { feet_mm 0, tail_mm 8, camera_mm 16, ceiling_mm 24, behind_camera_mm 32 }
    SupportInPicture 16 { column_mm 0, boom_mm 8 }
    Payload 48 { mass_kg 0, centre_ahead_mm 8, centre 16, head_moment_n_m 40 }
    Weight 32 { mass_kg 0, x_mm 8, y_mm 16, z_mm 24 }
    Loads 288 { payload 0, boom 32, counterweight 64, rest 96 }
    Edge 16 { x 0, y 8 }
    Feet 152 { count 0, reserved 4, edges 8, apothem_mm 136, first_leg_deg 144 }
    Standing 104 {
        margin_edge 0, factor_edge 4, total_mass_kg 8, centre 16, margin_mm 40, factor 48,
        factor_edge_direction_deg 56, restoring_moment_n_m 64, overturning_moment_n_m 72,
        tilt_to_tip_deg 80, push_to_tip_n 88, clamp_moment_n_m 96
    }
    Stability 328 {
        as_shot 0, camera_off 104, counterweight_off 208, payload_to_tip_kg 312, payload_share 320
    }
    Criteria 152 {
        size 0, hold_as_shot 4, hold_camera_off 8, hold_counterweight_off 12, payload_share_note 16,
        payload_share_warn 24, payload_share_stop 32, factor_note 40, factor_warn 48, factor_stop 56,
        springy_frequency_hz 64, springy_factor_warn 72, tilt_warn_deg 80, tilt_stop_deg 88,
        tilt_public_warn_deg 96, push_share_warn 104, push_most_n 112, push_height_most_mm 120,
        people_rating_divisor 128, wanted_factor 136, settled_share 144
    }
    Ballast 64 {
        has_counterweight_to_balance_kg 0, has_longest_reach_mm 4, counterweight_to_balance_kg 8,
        base_to_add_kg 16, longest_reach_mm 24, best_first_leg_deg 32, best_margin_mm 40,
        worst_first_leg_deg 48, worst_margin_mm 56
    }
    Sag 56 {
        has_settling_s 0, reserved 4, deflection_mm 8, height_lost_mm 16, end_slope_deg 24, aim_shift_mm 32,
        frequency_hz 40, settling_s 48
    }
    Advice 80 {
        reasons 0, has_contents_at_start 12, has_half_contents_from_deg 16, reserved 20, least_deg 24,
        most_deg 32, start_deg 40, top_share_at_start 48, contents_at_start 56, half_top_from_deg 64,
        half_contents_from_deg 72
    }
    Measurement 16 { value 0, uncertainty 8 }
    Measured 88 {
        size 0, kind 4, sensor_height_mm 8, aim_height_above_floor_mm 24, horizontal_distance_mm 40,
        sensor_distance_mm 56, elevation_deg 72
    }
    Tolerance 40 { up_mm 0, down_mm 8, away_mm 16, closer_mm 24, roll_drift_mm 32 }
    RealShot 56 { elevation_deg 0, frame_width_mm 16, sensor_distance_mm 32, magnification 48 }
    Shot 176 {
        size 0, framing 4, hold 8, focus_on_table 12, has_delivered_aspect 16, has_aim_height_mm 20,
        has_f_number 24, has_backdrop_behind_mm 28, has_side 32, side 36, elevation_deg 40,
        frame_width_mm 48, fill_width 56, fill_height 64, bearing_deg 72, aim_x_mm 80, aim_y_mm 88,
        aim_height_mm 96, f_number 104, backdrop_behind_mm 112, light_clearance_mm 120, stack_overlap 128,
        elevation_tolerance_deg 136, frame_width_tolerance 144, roll_tolerance_deg 152, delivered_aspect 160
    }
    Caution 24 { code 0, level 4, value 8, limit 16 }
    Plan 3512 {
        size 0, overhead 4, removal 8, caution_count 12, has_backdrop 16, has_outline 20, has_sag 24,
        reserved 28, frame_width_mm 32, frame_height_mm 40, aim_height_mm 48, used_area 56, lens 72,
        field_angles 136, pose 160, footprint 408, backdrop 616, subject_depth 648, outline 664, shares 744,
        focus 784, tilt 952, perspective 976, advice 1016, payload 1096, placement 1144, bay_room 1432,
        support_in_picture 1472, stability 1488, ballast 1816, sag 1880, tolerance 1936, cautions 1976
    }
}

#[cfg(target_pointer_width = "64")]
layout! {
    Fault 40 { status 0, reserved 4, value 8, least 16, most 24, field 32 }
    Brief 72 {
        size 0, reserved 4, shot 8, camera 16, lens 24, table 32, subject 40, support 48, bay 56,
        criteria 64
    }
    Range 40 { least 0, most 8, field 16, unit 24, meaning 32 }
}

/// The functions that the header declares.
fn declared(header: &str) -> Vec<String> {
    let mut names: Vec<String> = header
        .lines()
        .filter(|line| line.starts_with(|c: char| c.is_ascii_lowercase()) && line.contains("tablerig_"))
        .filter_map(|line| {
            let begin = line.find("tablerig_")?;
            let end = begin + line[begin..].find('(')?;
            Some(line[begin..end].to_owned())
        })
        .collect();
    names.sort();
    names
}

/// The shared library's own symbols are held against the same list where it is built.
#[test]
fn the_functions_are_those_recorded() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let header = fs::read_to_string(root.join("include/tablerig.h")).unwrap();
    let recorded = fs::read_to_string(root.join("tests/layout/symbols.txt")).unwrap();
    let recorded: Vec<&str> = recorded.lines().collect();
    assert!(recorded.is_sorted());
    assert_eq!(declared(&header), recorded);
}
