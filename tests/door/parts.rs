//! Each part by itself: joined by hand, they give the plan, bit for bit.

use std::ptr;

use tablerig::doors::c::advice::tablerig_advice;
use tablerig::doors::c::code::RigState;
use tablerig::doors::c::optics::aperture::*;
use tablerig::doors::c::optics::camera::{tablerig_blur_limit, tablerig_used_area};
use tablerig::doors::c::optics::focus::*;
use tablerig::doors::c::optics::lens::{tablerig_field_angles, tablerig_lens_focused};
use tablerig::doors::c::optics::tilt::tablerig_tilt_onto_table;
use tablerig::doors::c::plan::Plan;
use tablerig::doors::c::point::PicturePoint;
use tablerig::doors::c::rig::ballast::tablerig_ballast;
use tablerig::doors::c::rig::reach::{tablerig_bay_room, tablerig_placement, tablerig_support_in_picture};
use tablerig::doors::c::rig::sag::tablerig_sag;
use tablerig::doors::c::rig::stability::*;
use tablerig::doors::c::status::Status;
use tablerig::doors::c::tolerance::tablerig_tolerance;
use tablerig::doors::c::view::footprint::{tablerig_backdrop, tablerig_footprint};
use tablerig::doors::c::view::outline::{tablerig_outline, tablerig_shares, tablerig_subject_depth};
use tablerig::doors::c::view::perspective::tablerig_perspective;
use tablerig::doors::c::view::pose::tablerig_pose;
use tablerig::doors::c::view::projection::{tablerig_depth, tablerig_project};

use crate::ask::{ask, view};
use crate::memory::bytes;
use crate::seeded::{self, Seeded};
use crate::set::Set;

/// A result holds the same bits as the plan's.
macro_rules! same {
    ($found:expr, $planned:expr, $brief:expr) => {
        assert!(bytes(&$found.unwrap()) == bytes(&$planned), "{} {:#?}", stringify!($planned), $brief)
    };
}

#[test]
fn the_parts_joined_by_hand_are_the_plan() {
    let mut of = Seeded::new(3);
    let mut joined = 0;
    while joined < 300 {
        let brief = seeded::brief(&mut of);
        let set = Set::new(&brief);
        let answer = set.plan();
        if answer.status == 0 {
            optics(&set, &answer.plan);
            picture(&set, &answer.plan);
            rig(&set, &answer.plan);
            joined += 1;
        }
    }
}

fn optics(set: &Set, plan: &Plan) {
    let (shot, camera, lens) = (&set.shot, &raw const set.camera, &raw const set.lens);
    let m = plan.lens.magnification;
    let aspect: *const _ =
        if shot.has_delivered_aspect == 1 { &raw const shot.delivered_aspect } else { ptr::null() };
    same!(ask!(tablerig_used_area(camera, shot.hold, aspect)), plan.used_area, set.shot);
    same!(ask!(tablerig_lens_focused(lens, m)), plan.lens, set.lens);
    let (width, height) = (plan.frame_width_mm, plan.frame_height_mm);
    same!(ask!(tablerig_field_angles(lens, m, width, height)), plan.field_angles, set.lens);
    same!(ask!(tablerig_blur_limit(camera)), plan.focus.circle_of_confusion_mm, set.camera);
    let depth = &raw const plan.subject_depth;
    let focus =
        ask!(tablerig_focus(camera, lens, m, depth, shot.has_f_number, shot.f_number, shot.stack_overlap));
    same!(focus, plan.focus, set.lens);
    let (n, c) = (plan.focus.f_number, plan.focus.circle_of_confusion_mm);
    if (0.5..=512.0).contains(&n) && (0.0001..=5.0).contains(&c) {
        same!(ask!(tablerig_depth_of_field(lens, m, n, c)), plan.focus.depth_of_field, set.lens);
        let (nearest, farthest) = (plan.subject_depth.nearest_mm, plan.subject_depth.farthest_mm);
        let needed = ask!(tablerig_f_number_to_hold(lens, m, nearest, farthest, c));
        same!(needed, plan.focus.f_number_needed, set.lens);
        same!(ask!(tablerig_effective_f_number(lens, m, n)), plan.focus.effective_f_number, set.lens);
        same!(ask!(tablerig_diffraction_disc(lens, m, n)), plan.focus.diffraction_disc_mm, set.lens);
        same!(ask!(tablerig_diffraction_limit(lens, m, c)), plan.focus.diffraction_limit_f_number, set.lens);
        // At its near limit, a point blurs to the limit of blur.
        let near = plan.focus.depth_of_field.near_limit_mm;
        if near > 1.0 {
            let blur: f64 = ask!(tablerig_blur(lens, m, n, near)).unwrap();
            // The distance to the focus is a difference: it loses as many digits as it is small.
            let lost = plan.lens.pupil_distance_mm / plan.focus.depth_of_field.in_front_mm;
            assert!((blur / c - 1.0).abs() < 1e-14 * (lost + 10.0), "{blur} {c}");
        }
    }
    same!(ask!(tablerig_exposure_loss(lens, m)), plan.focus.exposure_loss_stops, set.lens);
    let tilt = ask!(tablerig_tilt_onto_table(lens, m, plan.aim_height_mm, shot.elevation_deg));
    same!(tilt, plan.tilt, set.lens);
    if plan.focus.has_stack == 1 {
        let (n, overlap) = (plan.focus.stack.f_number, shot.stack_overlap);
        let stack: FocusStack = ask!(tablerig_focus_stack(camera, lens, m, depth, n, overlap)).unwrap();
        assert_eq!((stack.pictures, stack.step_mm), (plan.focus.stack.pictures, plan.focus.stack.step_mm));
    }
}

fn picture(set: &Set, plan: &Plan) {
    let (shot, table, subject) = (&set.shot, &raw const set.table, &raw const set.subject);
    let (lens, camera) = (&raw const set.lens, &raw const set.camera);
    let (elevation, bearing, aim) = (shot.elevation_deg, shot.bearing_deg, plan.aim_height_mm);
    let (s, width, height) = (plan.lens.pupil_distance_mm, plan.frame_width_mm, plan.frame_height_mm);
    let (m, below) = (plan.lens.magnification, set.support.head.pivot_below_socket_mm);
    let at = &raw const plan.pose.aim;
    same!(ask!(tablerig_pose(camera, lens, table, m, elevation, bearing, at, below)), plan.pose, shot);
    let view = &view(plan);
    same!(ask!(tablerig_footprint(view, table, bearing)), plan.footprint, shot);
    if shot.has_backdrop_behind_mm == 1 {
        same!(ask!(tablerig_backdrop(view, table, shot.backdrop_behind_mm)), plan.backdrop, shot);
    }
    same!(ask!(tablerig_subject_depth(subject, aim, elevation, bearing)), plan.subject_depth, shot);
    let outline = ask!(tablerig_outline(subject, aim, elevation, bearing, s, width, height));
    if plan.has_outline == 1 {
        same!(outline, plan.outline, shot);
    } else {
        assert_eq!(outline.unwrap_err(), (Status::BehindCamera as i32, "subject"));
    }
    same!(ask!(tablerig_shares(subject, aim, elevation, bearing, s)), plan.shares, shot);
    let looks = ask!(tablerig_perspective(subject, aim, elevation, bearing, s, width, height));
    same!(looks, plan.perspective, shot);
    same!(ask!(tablerig_advice(subject, bearing)), plan.advice, shot);
    let [t, w, r] = [shot.elevation_tolerance_deg, shot.frame_width_tolerance, shot.roll_tolerance_deg];
    same!(ask!(tablerig_tolerance(lens, m, elevation, width, t, w, r)), plan.tolerance, shot);
    // The aim point is the middle of the picture, and lies where it should along the axis.
    let middle: PicturePoint = ask!(tablerig_project(view, at)).unwrap();
    assert_eq!((middle.right_mm, middle.up_mm), (0.0, 0.0));
    same!(ask!(tablerig_depth(view, at)), s, shot);
}

fn rig(set: &Set, plan: &Plan) {
    let (support, table) = (&raw const set.support, &raw const set.table);
    let (camera, lens) = (&raw const set.camera, &raw const set.lens);
    let (pose, placed) = (&raw const plan.pose, &raw const plan.placement);
    let view = &view(plan);
    let pivot = &raw const plan.pose.pivot;
    let (top, shot) = (plan.pose.body_top_mm, &set.shot);
    let placement = ask!(tablerig_placement(support, table, pivot, top, shot.has_side, shot.side));
    same!(placement, plan.placement, set.support);
    let (bay, behind) = (&raw const set.bay, set.camera.body_behind_mm);
    same!(ask!(tablerig_bay_room(bay, table, view, placed, behind)), plan.bay_room, set.bay);
    let seen = ask!(tablerig_support_in_picture(view, table, support, placed));
    same!(seen, plan.support_in_picture, set.support);
    let payload = ask!(tablerig_payload(camera, lens, set.support.head.mass_kg, pose));
    same!(payload, plan.payload, set.support);
    let loads: Loads = ask!(tablerig_loads(support, placed, &raw const plan.payload)).unwrap();
    let (count, radius, first) =
        (set.support.leg_count, set.support.foot_radius_mm, plan.placement.first_leg_deg);
    let feet: Feet = ask!(tablerig_feet(count, radius, first)).unwrap();
    let (feet, loads) = (&raw const feet, &raw const loads);
    let height = plan.pose.pivot.z_mm;
    same!(ask!(tablerig_stability(feet, loads, placed, height)), plan.stability, set.support);
    for (state, planned) in [
        (RigState::AsShot, plan.stability.as_shot),
        (RigState::CameraOff, plan.stability.camera_off),
        (RigState::CounterweightOff, plan.stability.counterweight_off),
    ] {
        same!(ask!(tablerig_standing(feet, loads, state as i32, placed, height)), planned, set.support);
    }
    let (used, reach, criteria) =
        (plan.placement.boom_used, plan.placement.reach_mm, &raw const set.criteria);
    let ballast = ask!(tablerig_ballast(feet, loads, support, used, reach, criteria));
    same!(ballast, plan.ballast, set.support);
    let boom = &raw const set.support.boom;
    let (length, distance) = (plan.placement.boom_length_mm, plan.lens.sensor_distance_mm);
    if plan.has_sag == 1 {
        let settled = set.criteria.settled_share;
        same!(
            ask!(tablerig_sag(boom, length, plan.payload.mass_kg, distance, settled)),
            plan.sag,
            set.support
        );
    }
}
