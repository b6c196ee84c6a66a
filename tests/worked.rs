//! Worked examples: figures that can be followed with a pocket calculator.

mod workshop;

use approx::assert_abs_diff_eq as close;
use tablerig::optics::focus::{f_number_to_hold, third_stop_up};
use tablerig::optics::lens::Lens;
use tablerig::plan::plan;
use tablerig::rig::feet::Feet;
use tablerig::rig::stability::standing;
use tablerig::rig::weights::{Loads, RigState, Weight};
use tablerig::scene::subject::Vessel;
use tablerig::view::outline::contents_from_far;

#[test]
fn overhead_with_a_long_lens() {
    let plan = plan(&workshop::overhead()).unwrap();
    // Tolerances: half a unit of the last digit given.
    close!(plan.lens.pupil_distance_mm, 1590.0, epsilon = 0.05);
    close!(plan.lens.sensor_distance_mm, 1685.4, epsilon = 0.05);
    close!(plan.pose.pivot.z_mm, 2415.4, epsilon = 0.05);
    close!(plan.pose.pivot_from_aim_mm, 135.0, epsilon = 0.05);
    close!(plan.pose.pivot.y_mm, -135.0, epsilon = 0.05);
    close!(plan.focus.depth_of_field.in_front_mm, 67.66, epsilon = 0.005);
    close!(plan.focus.depth_of_field.behind_mm, 73.95, epsilon = 0.005);
    let needed = f_number_to_hold(&plan.lens, 60.0, 60.0, 0.030);
    close!(needed, 7.06, epsilon = 0.005);
    assert_eq!(third_stop_up(needed).engraved, 7.1);
}

#[test]
fn slanting_with_a_wide_lens() {
    let plan = plan(&workshop::slanting()).unwrap();
    close!(plan.lens.pupil_distance_mm, 910.0, epsilon = 0.05);
    close!(plan.lens.sensor_distance_mm, 946.4, epsilon = 0.05);
    close!(plan.pose.pupil.x_mm, 0.0, epsilon = 0.005);
    close!(plan.pose.pupil.y_mm, -584.94, epsilon = 0.005);
    close!(plan.pose.pupil.z_mm, 1457.10, epsilon = 0.005);
    let expect = [(-352.49, -306.76), (352.49, -306.76), (622.09, 541.38), (-622.09, 541.38)];
    for (corner, (x, y)) in plan.footprint.corners.iter().zip(expect) {
        let corner = corner.unwrap();
        close!(corner.x_mm, x, epsilon = 0.005);
        close!(corner.y_mm, y, epsilon = 0.005);
    }
}

#[test]
fn a_macro_lens_whose_focal_length_shrinks() {
    let lens =
        Lens { closest_focus_mm: Some(300.0), largest_magnification: Some(1.0), ..workshop::lens(100.0) };
    lens.check().unwrap();
    let at = lens.focused(0.18);
    close!(at.focal_length_mm, 95.5, epsilon = 1e-9);
    close!(at.sensor_distance_mm, 738.75, epsilon = 0.005);
    let closest = lens.focused(1.0);
    close!(closest.focal_length_mm, 75.0, epsilon = 1e-9);
    close!(closest.sensor_distance_mm, 300.0, epsilon = 1e-9);
}

#[test]
fn a_vessel_seen_from_far_off() {
    let vessel = Vessel { inside_diameter_mm: 200.0, contents_below_rim_mm: 30.0 };
    let half = core::f64::consts::FRAC_1_SQRT_2;
    close!(contents_from_far(&vessel, half, half), 0.80973, epsilon = 0.000005);
}

#[test]
fn a_column_with_a_load_and_a_counterweight() {
    let weight = |mass_kg, x_mm, z_mm| Weight { mass_kg, x_mm, y_mm: 0.0, z_mm };
    let none = weight(0.0, 0.0, 0.0);
    let loads = Loads {
        payload: weight(3.0, 600.0, 1500.0),
        boom: none,
        counterweight: weight(4.5, -400.0, 1500.0),
        rest: [weight(5.0, 0.0, 500.0), none, none, none, none, none],
    };
    let feet = Feet::new(3, 450.0, 0.0);
    let placement = plan(&workshop::overhead()).unwrap().placement;
    let stands = standing(&feet, &loads, RigState::AsShot, &placement, 1500.0);
    close!(stands.margin_mm, 225.0, epsilon = 1e-9);
    close!(stands.factor, 4.571, epsilon = 0.0005);
    close!(stands.tilt_to_tip_deg, 11.56, epsilon = 0.005);
    // Over the edge behind, between the second leg and the third.
    assert_eq!(stands.factor_edge, 2);
    close!(stands.factor_edge_direction_deg, 180.0, epsilon = 1e-9);
}
