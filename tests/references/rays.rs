//! Thick lenses traced ray by ray (Optiland) beside the Gaussian model: stand-off, viewpoint and blur for
//! rays near the axis, and how far off the frame's corner is for a real one.

use crate::rows::{Row, Table, Tally};
use tablerig::optics::focus::blur_mm;
use tablerig::optics::lens::Lens;

/// Lenses, and distances at which each is traced.
pub(crate) const LENSES: usize = 5;
pub(crate) const DISTANCES: usize = 4;
/// The traced rays stand a ten-thousandth off the axis: their own aberration is this small.
pub(crate) const NEAR_AXIS: f64 = 2e-6;
/// What these lenses' distortion does to the corner of the frame; the model knows of none.
pub(crate) const CORNER: f64 = 0.02;

fn lens(row: &Row) -> Lens {
    Lens {
        focal_length_mm: row.number("focal_length_mm"),
        closest_focus_mm: None,
        largest_magnification: None,
        pupil_ratio: row.number("pupil_ratio"),
        principal_separation_mm: row.number("rear_principal_mm") - row.number("front_principal_mm"),
        least_f_number: 2.0,
        most_f_number: 22.0,
        front_from_sensor_mm: None,
        largest_tilt_deg: 0.0,
        mass_kg: 1.0,
        centre_ahead_mm: 0.0,
    }
}

pub(crate) fn run() -> Tally {
    let lenses = Table::new(include_str!("rays/lenses.tsv"));
    let traces = Table::new(include_str!("rays/traces.tsv"));
    let mut tally = Tally::default();
    for specified in lenses.rows() {
        let name = specified.word("lens");
        let lens = lens(&specified);
        let (f, p) = (lens.focal_length_mm, lens.pupil_ratio);
        // Where a lens of that pupil ratio must have its pupils: f (1/p - 1) behind the front principal
        // plane, f (1 - p) behind the rear one.
        let [front, rear, entrance, exit] =
            ["front_principal_mm", "rear_principal_mm", "entrance_pupil_mm", "exit_pupil_mm"]
                .map(|name| specified.number(name));
        tally.close("pupils' places", entrance, front + f * (1.0 / p - 1.0), f, name);
        tally.close("pupils' places", exit, rear + f * (1.0 - p), f, name);
        let mut distances = 0;
        for trace in traces.rows().filter(|trace| trace.word("lens") == name) {
            distances += 1;
            let m = trace.number("magnification");
            let case = format!("{name} at {m:.2}");
            let focused = lens.focused(m);
            let s = trace.number("pupil_distance_mm");
            tally.close(
                "sensor to aim point",
                focused.sensor_distance_mm,
                trace.number("sensor_distance_mm"),
                0.0,
                &case,
            );
            tally.close("entrance pupil to aim point", focused.pupil_distance_mm, s, 0.0, &case);
            for (column, distance) in [("blur_near_per_opening", 0.9 * s), ("blur_far_per_opening", 1.1 * s)]
            {
                // An f-number of f makes the opening 1 mm.
                let blur = blur_mm(&focused, focused.focal_length_mm, distance);
                tally.close("blur", blur, trace.number(column), 0.0, &case);
            }
            let half_diagonal = specified.number("half_diagonal_mm");
            tally.close(
                "frame's corner, with distortion",
                half_diagonal / m,
                trace.number("corner_mm"),
                0.0,
                &case,
            );
        }
        assert_eq!(distances, DISTANCES, "{name}");
    }
    assert_eq!((lenses.rows().count(), traces.rows().count()), (LENSES, LENSES * DISTANCES));
    lenses.all_asked();
    traces.all_asked();
    tally
}

/// What is allowed of a quantity.
pub(crate) fn allowed(name: &str) -> f64 {
    if name == "frame's corner, with distortion" { CORNER } else { NEAR_AXIS }
}

#[test]
fn five_lenses_at_four_distances() {
    let tally = run();
    for (name, error, count, case) in tally.entries() {
        println!("{name:36} {error:9.1e} {count:6} worst in {case}");
        assert!(error <= allowed(name), "{name} is off by {error:e} in {case}");
    }
}
