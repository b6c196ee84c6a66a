//! Quantities drawn at random: bounds from the library's own table of ranges, leaning towards trouble.

use proptest::prelude::*;
use proptest::test_runner::RngSeed;
use tablerig::range::{self, Range};

/// How one quantity is drawn, by its field's name.
pub(crate) type Draw = fn(&str) -> BoxedStrategy<f64>;

/// The same cases in every run; PROPTEST_CASES and PROPTEST_RNG_SEED draw more, or others.
pub(crate) fn runs(cases: u32) -> ProptestConfig {
    let mut config = ProptestConfig { failure_persistence: None, ..ProptestConfig::default() };
    if std::env::var_os("PROPTEST_CASES").is_none() {
        config.cases = cases;
    }
    if config.rng_seed == RngSeed::Random {
        config.rng_seed = RngSeed::Fixed(760);
    }
    config
}

/// A field's range in the library's table.
pub(crate) fn range_of(field: &str) -> Range {
    *range::ALL.iter().find(|range| range.field == field).unwrap_or_else(|| panic!("no range {field}"))
}

/// A choice among `ways` and a place from 0 to 1: one draw instead of a union of strategies, whose trees
/// take a hundred times as long to grow.
fn choice(ways: u8) -> (std::ops::Range<u8>, std::ops::RangeInclusive<f64>) {
    (0..ways, 0.0..=1.0)
}

/// Left out in one case of two.
pub(crate) fn maybe<T: std::fmt::Debug>(
    strategy: impl Strategy<Value = T>,
) -> impl Strategy<Value = Option<T>> {
    (any::<bool>(), strategy).prop_map(|(given, value)| given.then_some(value))
}

/// The whole range: its ends, nothing, next to nothing, all sizes, and evenly.
pub(crate) fn whole(field: &str) -> BoxedStrategy<f64> {
    let Range { least, most, .. } = range_of(field);
    let largest = least.abs().max(most.abs());
    choice(20)
        .prop_map(move |(way, share)| {
            let size = 1e-9 * (largest / 1e-9).powf(share);
            let value = match way {
                0 | 1 => least,
                2 | 3 => most,
                4 => 0.0,
                5 => -0.0,
                6 => 1e-300,
                7 => -1e-300,
                8..12 => size,
                12 | 13 => -size,
                _ => least + share * (most - least),
            };
            value.clamp(least, most)
        })
        .boxed()
}

/// What a studio has, within each range; a field that is not named here has no narrower bounds.
const STUDIO: &[(&str, f64, f64)] = &[
    ("shot.elevation_deg", -30.0, 90.0),
    ("shot.aim_x_mm", -500.0, 500.0),
    ("shot.aim_y_mm", -300.0, 300.0),
    ("shot.aim_height_mm", 0.0, 200.0),
    ("shot.f_number", 1.4, 32.0),
    ("shot.backdrop_behind_mm", 300.0, 3000.0),
    ("shot.light_clearance_mm", 0.0, 300.0),
    ("shot.elevation_tolerance_deg", 0.1, 5.0),
    ("shot.frame_width_tolerance", 0.001, 0.1),
    ("camera.sensor_width_mm", 13.0, 60.0),
    ("camera.sensor_height_mm", 9.0, 45.0),
    ("camera.circle_of_confusion_mm", 0.005, 0.06),
    ("camera.socket_ahead_mm", -20.0, 100.0),
    ("camera.socket_below_mm", 20.0, 60.0),
    ("camera.body_above_mm", 20.0, 90.0),
    ("camera.body_behind_mm", 10.0, 60.0),
    ("camera.mass_kg", 0.3, 2.5),
    ("camera.centre_ahead_mm", -10.0, 60.0),
    ("lens.focal_length_mm", 14.0, 200.0),
    ("lens.largest_magnification", 0.1, 2.0),
    ("lens.pupil_ratio", 0.4, 2.5),
    ("lens.principal_separation_mm", -20.0, 40.0),
    ("lens.least_f_number", 1.4, 5.6),
    ("lens.most_f_number", 11.0, 45.0),
    ("lens.front_from_sensor_mm", 60.0, 250.0),
    ("lens.largest_tilt_deg", 0.0, 12.0),
    ("lens.mass_kg", 0.2, 2.5),
    ("lens.centre_ahead_mm", 40.0, 150.0),
    ("table.width_mm", 400.0, 2400.0),
    ("table.depth_mm", 400.0, 1200.0),
    ("table.height_mm", 400.0, 1100.0),
    ("subject.width_mm", 20.0, 400.0),
    ("subject.depth_mm", 20.0, 400.0),
    ("subject.diameter_mm", 20.0, 400.0),
    ("subject.height_mm", 0.0, 350.0),
    ("subject.vessel.inside_diameter_mm", 20.0, 400.0),
    ("subject.vessel.contents_below_rim_mm", 0.0, 200.0),
    ("support.lowest_pivot_mm", 0.0, 900.0),
    ("support.highest_pivot_mm", 1500.0, 3500.0),
    ("support.column_radius_mm", 10.0, 40.0),
    ("support.foot_radius_mm", 300.0, 800.0),
    ("support.legs_top_mm", 300.0, 1500.0),
    ("support.table_clearance_mm", 0.0, 100.0),
    ("support.mass_kg", 1.5, 20.0),
    ("support.centre_height_mm", 200.0, 900.0),
    ("support.base_mass_kg", 0.0, 40.0),
    ("support.base_height_mm", 50.0, 300.0),
    ("support.sandbags.mass_kg", 0.0, 15.0),
    ("support.sandbags.out_mm", 0.0, 700.0),
    ("support.sandbags.height_mm", 100.0, 700.0),
    ("support.head.mass_kg", 0.2, 1.5),
    ("support.head.pivot_below_socket_mm", 0.0, 150.0),
    ("support.boom.longest_reach_mm", 400.0, 2500.0),
    ("support.boom.tail_mm", 100.0, 900.0),
    ("support.boom.mass_kg", 0.3, 6.0),
    ("support.boom.pitch_deg", -30.0, 40.0),
    ("support.boom.counterweight_kg", 0.0, 20.0),
    ("support.boom.counterweight_out_mm", 50.0, 900.0),
    ("support.boom.stiffness.bending_stiffness_n_m2", 50.0, 50000.0),
    ("support.boom.stiffness.tube_outside_mm", 20.0, 60.0),
    ("support.boom.stiffness.tube_inside_mm", 0.0, 58.0),
    ("support.boom.stiffness.tube_modulus_n_per_mm2", 50000.0, 210000.0),
    ("support.boom.damping_ratio", 0.002, 0.2),
    ("bay.wall", 1500.0, 5000.0),
    ("bay.ceiling_mm", 2200.0, 5000.0),
    ("bay.ceiling_clearance_mm", 0.0, 200.0),
    ("bay.person_room_mm", 0.0, 900.0),
    ("bay.floor_slope_percent", 0.0, 4.0),
    ("magnification", 0.004, 5.0),
];

/// A studio's part of the range, evenly and at its ends; the trouble of each kind of angle half the time.
pub(crate) fn studio(field: &str) -> BoxedStrategy<f64> {
    let Range { least, most, .. } = range_of(field);
    let (from, to) = STUDIO
        .iter()
        .find(|(named, ..)| *named == field)
        .map_or((least, most), |(_, from, to)| (from.max(least), to.min(most)));
    // Level, overhead, next to both; square and slanting exactly, and next to it.
    let elevations = [90.0, 90.0, 90.0, 0.0, 90.0 - 1e-9, 90.0 - 1e-5, 89.0, 1e-9, 45.0, -5.0];
    let bearings = [0.0, 0.0, 90.0, 180.0, 270.0, 360.0, -90.0, 45.0, 1e-9];
    let special = match field {
        "shot.elevation_deg" => elevations.to_vec(),
        "shot.bearing_deg" => bearings.to_vec(),
        _ => vec![from, to],
    };
    let by_size = field == "magnification";
    choice(20)
        .prop_map(move |(way, share)| match special.get(usize::from(way)) {
            Some(value) => *value,
            None if by_size => (from * (to / from).powf(share)).clamp(from, to),
            None => (from + share * (to - from)).min(to),
        })
        .boxed()
}
