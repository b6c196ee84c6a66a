//! Next to the limits inside the formulas: steps of a scale, lengths of nothing, shares of nearly all.

use tablerig::advice::elevation_for_contents_deg;
use tablerig::brief::Shot;
use tablerig::fault::{Fault, FaultKind};
use tablerig::optics::focus::{third_stop_down, third_stop_up};
use tablerig::optics::sensor::UsedArea;
use tablerig::plan::{Plan, plan};
use tablerig::rig::ballast::{BallastWish, ballast};
use tablerig::rig::feet::Feet;
use tablerig::rig::sag::sag;
use tablerig::rig::stability::{stability, standing};
use tablerig::rig::support::Boom;
use tablerig::rig::weights::{RigState, loads};
use tablerig::scene::subject::Vessel;
use tablerig::vector::Point;
use tablerig::view::projection::{PicturePoint, View};

use crate::workshop::{overhead, slanting, stand};

/// One last place above a stop the next one is needed, at it and below it this one: there the logarithm alone
/// cannot tell them apart.
#[test]
fn third_stops_are_told_apart_to_the_last_place() {
    let stops: Vec<f64> = (-6..=54).map(|sixths| stop_at(f64::from(sixths) / 6.0)).collect();
    for pair in stops.windows(2) {
        let [stop, next] = *pair else { unreachable!() };
        assert_eq!(third_stop_up(stop).f_number, stop);
        assert_eq!(third_stop_up(stop.next_up()).f_number, next);
        assert_eq!(third_stop_up(next.next_down()).f_number, next);
        assert_eq!(third_stop_down(next).f_number, next);
        assert_eq!(third_stop_down(next.next_down()).f_number, stop);
        assert_eq!(third_stop_down(stop.next_up()).f_number, stop);
    }
    // The scale ends where the range of f-numbers ends.
    assert_eq!((third_stop_up(0.1).engraved, third_stop_down(0.1).engraved), (0.5, 0.5));
    assert_eq!((third_stop_up(600.0).engraved, third_stop_down(600.0).engraved), (512.0, 512.0));
}

/// The exact value of a stop, found on the scale: the platform's power may be off in its last place.
fn stop_at(power: f64) -> f64 {
    // Within a few last places of the power, the stop is the value that is its own stop.
    let near = power.exp2();
    let found = third_stop_up(near * (1.0 - 1e-12)).f_number;
    assert!((found / near - 1.0).abs() < 1e-15, "{found} {near}");
    found
}

/// As a fault's fields say: what has no bound is not named.
#[test]
fn a_fault_names_only_the_bounds_that_there_are() {
    let told = |least, most| {
        Fault { kind: FaultKind::TooSmall, field: "bay.ceiling_mm", value: 1.5, least, most }.to_string()
    };
    let (none, endless) = (f64::NEG_INFINITY, f64::INFINITY);
    assert_eq!(told(2.0, 9.0), "bay.ceiling_mm = 1.5 is too small (allowed: 2 to 9)");
    assert_eq!(told(2.0, endless), "bay.ceiling_mm = 1.5 is too small (allowed: 2 or more)");
    assert_eq!(told(none, 9.0), "bay.ceiling_mm = 1.5 is too small (allowed: up to 9)");
    assert_eq!(told(none, endless), "bay.ceiling_mm = 1.5 is too small");
}

/// A boom that ends at its clamp on both sides does not bend, and what does not bend does not swing.
#[test]
fn a_boom_of_no_length_does_not_sag() {
    let boom = Boom { tail_mm: 0.0, ..stand().boom.unwrap() };
    let told = sag(&boom, 0.0, 2.0, 1500.0, 0.01).unwrap();
    assert_eq!((told.deflection_mm, told.height_lost_mm, told.end_slope_deg), (0.0, 0.0, 0.0));
    assert_eq!((told.aim_shift_mm, told.frequency_hz), (0.0, f64::INFINITY));
    assert_eq!(told.settling_s, Some(0.0));
    // Nor does one of next to none, whose weight by the metre would have no bound.
    for length_mm in [f64::MIN_POSITIVE, 1e-310, 5e-324] {
        let told = sag(&boom, length_mm, 2.0, 1500.0, 0.01).unwrap();
        assert_eq!((told.deflection_mm, told.end_slope_deg, told.aim_shift_mm), (0.0, 0.0, 0.0));
    }
}

/// All but all of the contents show from all but overhead.
#[test]
fn nearly_all_of_the_contents_show_from_nearly_overhead() {
    let vessel = Vessel { inside_diameter_mm: 100.0, contents_below_rim_mm: 100.0 };
    let mut before = 0.0;
    for share in [1e-9, 0.5, 0.9, 0.999, 1.0 - 1e-9, 1.0 - 1e-12, 1.0_f64.next_down()] {
        let elevation = elevation_for_contents_deg(&vessel, share);
        assert!(elevation > before && elevation <= 90.0, "{share}: {elevation}");
        before = elevation;
    }
    // 1 - share = (4/π) g cot e / d to first order: at 1e-16 of it, 90 but for 1e-14 degrees.
    assert!(before > 90.0 - 1e-12, "{before}");
}

/// A diagonal is as many times larger as its sides are, down to where squares are lost and up to where they
/// pass every number.
#[test]
fn a_diagonal_grows_with_its_sides() {
    for power in -300..=300 {
        let unit = format!("1e{power}").parse::<f64>().unwrap();
        for sides in [[3.0, 4.0], [4.0, 3.0], [5.0, 12.0]] {
            let [width_mm, height_mm] = sides.map(|side| side * unit);
            let diagonal = if sides[1] == 12.0 { 13.0 } else { 5.0 } * unit;
            let told = UsedArea { width_mm, height_mm }.diagonal_mm();
            // A rounding for each side, its square, the sum and the root.
            assert!((told / diagonal - 1.0).abs() < 1e-15, "{power}: {told}");
        }
    }
    for side in [0.0, 1e-200, 1.0, 1e200] {
        assert_eq!(UsedArea { width_mm: side, height_mm: 0.0 }.diagonal_mm(), side);
    }
}

/// At life size the sensor stands four focal lengths from the aim point, and crossed planes bring it nearer: by
/// those four the distance is nothing, which is refused; by less it is there.
#[test]
fn planes_may_cross_by_less_than_the_distance() {
    let crossed = |separation: f64| {
        let mut brief = overhead();
        brief.shot = Shot::new(90.0, 36.0);
        brief.lens = crate::workshop::lens(50.0);
        brief.lens.principal_separation_mm = separation;
        plan(&brief)
    };
    let fault = crossed(-250.0).unwrap_err();
    assert_eq!((fault.kind, fault.field), (FaultKind::TooSmall, "lens.principal_separation_mm"));
    assert_eq!((fault.value, fault.least, fault.most), (-250.0, -200.0, 1000.0));
    assert_eq!(crossed(-200.0).unwrap_err().least, -200.0);
    assert_eq!(crossed(-199.0).unwrap().lens.sensor_distance_mm, 1.0);
}

fn view_of(plan: &Plan) -> View {
    View {
        pose: plan.pose,
        pupil_distance_mm: plan.lens.pupil_distance_mm,
        frame_width_mm: plan.frame_width_mm,
        frame_height_mm: plan.frame_height_mm,
    }
}

/// What lies beside the frame, beyond each of its sides or behind the camera, covers nothing of it.
#[test]
fn a_shape_outside_the_frame_covers_nothing() {
    for brief in [overhead(), slanting()] {
        let view = view_of(&plan(&brief).unwrap());
        let square = |x: f64, y: f64, z: f64| {
            [(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)].map(|(across, along)| Point {
                x_mm: x + 100.0 * across,
                y_mm: y + 100.0 * along,
                z_mm: z,
            })
        };
        for (x, y, z) in
            [(5000.0, 0.0, 760.0), (-5000.0, 0.0, 760.0), (0.0, -4000.0, 760.0), (0.0, 9e4, 760.0)]
        {
            assert_eq!(view.covered_share(square(x, y, z)), 0.0, "{x} {y} {z}");
        }
        let pupil = view.pose.pupil;
        let behind = pupil.along(view.pose.forward, -500.0);
        assert_eq!(view.covered_share(square(behind.x_mm, behind.y_mm, behind.z_mm + 200.0)), 0.0);
    }
}

/// What a plan says of a rig, its parts say when they are asked by themselves.
#[test]
fn parts_of_a_rig_asked_alone_say_what_the_plan_says() {
    for brief in [overhead(), slanting()] {
        let plan = plan(&brief).unwrap();
        let (support, placement, criteria) = (&brief.support, &plan.placement, &brief.criteria);
        let feet = Feet::new(support.leg_count, support.foot_radius_mm, placement.first_leg_deg);
        let loads = loads(support, placement, &plan.payload);
        let height = plan.pose.pivot.z_mm;
        assert_eq!(stability(&feet, &loads, placement, height), plan.stability);
        for (state, stands) in [
            (RigState::AsShot, plan.stability.as_shot),
            (RigState::CameraOff, plan.stability.camera_off),
            (RigState::CounterweightOff, plan.stability.counterweight_off),
        ] {
            assert_eq!(standing(&feet, &loads, state, placement, height), stands);
        }
        let wish = BallastWish {
            factor: criteria.wanted_factor,
            states: [criteria.hold_as_shot, criteria.hold_camera_off, criteria.hold_counterweight_off],
        };
        let solved = ballast(&feet, &loads, support, placement.boom_used, placement.reach_mm, &wish);
        assert_eq!(solved, plan.ballast);
    }
}

/// A line of sight that runs level meets no level plane, above the pupil or under it.
#[test]
fn a_level_line_of_sight_meets_nothing() {
    let mut brief = slanting();
    (brief.shot.elevation_deg, brief.shot.aim_height_mm) = (0.0, Some(300.0));
    let mut view = view_of(&plan(&brief).unwrap());
    for forward in [0.0, -0.0] {
        view.pose.forward.z = forward;
        for z in [760.0, 1059.0, 1061.0, 5000.0] {
            assert_eq!(view.cast_onto_level(PicturePoint { right_mm: 20.0, up_mm: 0.0 }, z), None, "{z}");
        }
    }
}

/// A shape covers the same picture whichever way round, and from whichever corner, it is told.
#[test]
fn a_shape_has_no_first_corner_and_no_sense() {
    for brief in [overhead(), slanting()] {
        let view = view_of(&plan(&brief).unwrap());
        let at = |x_mm, y_mm, z_mm| Point { x_mm, y_mm, z_mm };
        // Inside the frame, cut by its sides, and reaching behind the camera; none of them its own mirror image.
        for (x, y, z) in [(90.0, 80.0, 760.0), (330.0, 270.0, 700.0), (9000.0, 9000.0, 10.0)] {
            let around =
                [at(-0.3 * x, -0.5 * y, z), at(x, -y, z), at(0.6 * x, y, z), at(-0.2 * x, 0.7 * y, z)];
            let share = view.covered_share(around);
            assert!(share > 0.01, "{share}");
            for turn in 0..4 {
                let mut turned = around;
                turned.rotate_left(turn);
                let one_way = view.covered_share(turned);
                turned.reverse();
                for told in [one_way, view.covered_share(turned)] {
                    // A dozen roundings.
                    assert!((told / share - 1.0).abs() < 1e-14, "{told} {share}");
                }
            }
        }
    }
}
