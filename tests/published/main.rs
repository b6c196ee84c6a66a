//! Values in print, each with its source, beside what the library answers. One test a source.

#![allow(clippy::disallowed_methods, reason = "the platform's functions are the second opinion here")]

mod ask;
mod ask_optics;
mod ask_rigs;
mod rows;

use rows::{Expect, Source, sources};

/// Sources and rows in the text files; a row more or less must be meant.
const SOURCES: usize = 48;
const ROWS: usize = 219;

/// Asks every row of a source; the worst error as a share of the row's tolerance.
fn check(source: &Source) -> (f64, String) {
    let mut worst = (0.0, String::new());
    for row in &source.rows {
        let Some(got) = ask::answer(row) else { continue };
        let asked = format!("[{}] {}: {got}", source.id, row.text);
        match row.expect {
            Expect::Value(want) => {
                assert!((got - want).abs() <= row.within, "{asked}\n({})", source.source);
                let error = if row.within > 0.0 { (got - want).abs() / row.within } else { 0.0 };
                if error >= worst.0 {
                    worst = (error, asked);
                }
            }
            Expect::NotValue(trap) => assert!((got - trap).abs() > row.within, "{asked} falls into a trap"),
        }
    }
    worst
}

macro_rules! published {
    ($($name:ident: $id:literal,)*) => {
        $(
            #[test]
            fn $name() {
                let all = sources();
                let source = all.iter().find(|source| source.id == $id).expect("no such source");
                let (error, row) = check(source);
                println!("{} ({}, {}): worst {error:.2} of its tolerance, {row}", source.title, source.source, source.standing);
            }
        )*
        const TESTED: &[&str] = &[$($id),*];
    };
}

published! {
    a1_crane_counterweight: "A1",
    a2_counterweight_in_pieces: "A2",
    a3_walking_out_on_a_beam: "A3",
    a4_painter_on_a_plank: "A4",
    a5_reactions_of_three_feet: "A5",
    a6_three_quarters_of_tipping: "A6",
    a7_three_legged_table: "A7",
    b1_cantilever_tables: "B1",
    b2_end_and_uniform_load: "B2",
    b3_frequency_with_a_tip_mass: "B3",
    b4_moduli: "B4",
    b5_elastica: "B5",
    c1_payload_share: "C1",
    c2_moment_ratio: "C2",
    c3_springy_boom: "C3",
    c4_tilt: "C4",
    c5_tilt_where_the_public_passes: "C5",
    c6_push: "C6",
    c7_gear_over_people: "C7",
    c8_tether: "C8",
    d1_three_feet_on_a_circle: "D1",
    d2_where_a_sandbag_helps: "D2",
    f1_hyperfocal: "F1",
    f1x_half_hyperfocal: "F1x",
    f2_field_angles_at_infinity: "F2",
    f3_field_angle_close_up: "F3",
    f4_thin_lens_object: "F4",
    f5_thin_lens_image: "F5",
    f6_one_to_one: "F6",
    f7_bellows_factor: "F7",
    f8_near_and_far_limit: "F8",
    f9_macro_depth_of_field: "F9",
    f10_macro_with_pupil_ratio: "F10",
    f11_working_f_number: "F11",
    f12_third_stops_exact: "F12",
    f13_third_stops_engraved: "F13",
    f14_diffraction_disc: "F14",
    f15_hinge_rule: "F15",
    f16_depression_angle: "F16",
    f17_isocentre_scale: "F17",
    f18_rectilinear_stretch: "F18",
    f19_frame_on_a_plane: "F19",
    f20_two_lens_systems: "F20",
    f21_formats: "F21",
    f22_circle_of_confusion: "F22",
    f23_internal_focusing: "F23",
    g1_standard_gravity: "G1",
    t1_traps: "T1",
}

#[test]
fn every_source_is_tested_and_counted() {
    let all = sources();
    let ids: Vec<_> = all.iter().map(|source| source.id.as_str()).collect();
    for id in &ids {
        assert_eq!(TESTED.iter().filter(|tested| *tested == id).count(), 1, "[{id}] has no test of its own");
        assert_eq!(ids.iter().filter(|other| *other == id).count(), 1, "[{id}] stands twice");
    }
    let rows: usize = all.iter().map(|source| source.rows.len()).sum();
    assert_eq!((ids.len(), rows), (SOURCES, ROWS));
    let (mut worst, mut at) = (0.0, String::new());
    for source in &all {
        let (error, row) = check(source);
        if error > worst {
            (worst, at) = (error, row);
        }
    }
    println!("{rows} rows of {} sources; worst {worst:.3} of its tolerance: {at}", ids.len());
}
