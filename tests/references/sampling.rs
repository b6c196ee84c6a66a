//! First-order uncertainties against the spread of 100 000 samples (NumPy).

use crate::rows::{Row, Table, Tally};
use tablerig::optics::lens::Lens;
use tablerig::tolerance::{Measured, Measurement, real_shot};

/// Sets measured.
pub(crate) const SETTINGS: usize = 60;
/// A spread from 100 000 samples is itself uncertain by 0.22 %; four times that, and the second order.
pub(crate) const SPREAD: f64 = 0.012;
/// A mean is uncertain by 0.32 % of the spread; the second order shifts it by as much again.
pub(crate) const MEAN: f64 = 0.03;

fn measured(row: &Row) -> Measured {
    let of = |name: &str, uncertainty: &str| Measurement {
        value: row.number(name),
        uncertainty: row.number(uncertainty),
    };
    let sensor_height_mm = of("sensor_height_mm", "u_sensor_height_mm");
    let aim_height_above_floor_mm = of("aim_height_above_floor_mm", "u_aim_height_mm");
    let horizontal_distance_mm = of("horizontal_distance_mm", "u_horizontal_mm");
    let sensor_distance_mm = of("tape_mm", "u_tape_mm");
    let elevation_deg = of("inclinometer_deg", "u_inclinometer_deg");
    match row.word("kind") {
        "height_and_distance" => Measured::HeightAndDistance {
            sensor_height_mm,
            aim_height_above_floor_mm,
            horizontal_distance_mm,
        },
        "tape_and_inclinometer" => Measured::TapeAndInclinometer { sensor_distance_mm, elevation_deg },
        "height_and_tape" => {
            Measured::HeightAndTape { sensor_height_mm, aim_height_above_floor_mm, sensor_distance_mm }
        }
        kind => panic!("measured by {kind}"),
    }
}

pub(crate) fn run() -> Tally {
    let settings = Table::new(include_str!("sampling/settings.tsv"));
    let mut tally = Tally::default();
    for row in settings.rows() {
        let case = row.word("case");
        let lens = Lens {
            focal_length_mm: row.number("focal_length_mm"),
            closest_focus_mm: row.given("closest_focus_mm"),
            largest_magnification: row.given("largest_magnification"),
            pupil_ratio: 1.0,
            principal_separation_mm: row.number("principal_separation_mm"),
            least_f_number: 2.0,
            most_f_number: 22.0,
            front_from_sensor_mm: None,
            largest_tilt_deg: 0.0,
            mass_kg: 1.0,
            centre_ahead_mm: 0.0,
        };
        let shot = real_shot(&measured(&row), &lens, row.number("used_width_mm"));
        let shot = shot.unwrap_or_else(|fault| panic!("case {case}: {fault}"));
        for (name, got) in [
            ("elevation_deg", shot.elevation_deg),
            ("frame_width_mm", shot.frame_width_mm),
            ("sensor_distance_mm", shot.sensor_distance_mm),
        ] {
            let spread = row.number(&format!("spread_{name}"));
            tally.close(&format!("uncertainty of {name}"), got.uncertainty, spread, 0.0, case);
            let mean = row.number(&format!("mean_{name}"));
            tally.note(&format!("{name} / its spread"), (got.value - mean).abs() / spread, case);
        }
    }
    assert_eq!(settings.rows().count(), SETTINGS);
    settings.all_asked();
    tally
}

/// What is allowed of a quantity.
pub(crate) fn allowed(name: &str) -> f64 {
    if name.starts_with("uncertainty") { SPREAD } else { MEAN }
}

#[test]
fn sixty_measured_sets() {
    let tally = run();
    for (name, error, count, case) in tally.entries() {
        println!("{name:36} {error:9.1e} {count:6} worst in {case}");
        assert!(error <= allowed(name), "{name} is off by {error:e} in case {case}");
    }
}
