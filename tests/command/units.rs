//! A length, mass or angle is the same to the last bit in whatever unit it is written, and comes back in
//! whatever unit it is printed.

use serde_json::Value;

use super::run::{demo, run, run_with};

fn brief_of(text: &str, shot: &str) -> Value {
    let run = run_with(&["shot", shot, "-", "--json"], text);
    assert!(run.status < 2, "{}", run.err);
    let mut value: Value = serde_json::from_str(&run.out).expect("it is JSON");
    value["brief"].take()
}

fn same(key: &str, from: &str, ways: &[&str], shot: &str) {
    let demo = demo();
    let line = format!("{key} = {from}");
    assert!(demo.contains(&line), "the demo has no `{line}`");
    let briefs: Vec<Value> =
        ways.iter().map(|way| brief_of(&demo.replacen(&line, &format!("{key} = {way}"), 1), shot)).collect();
    for (way, brief) in ways.iter().zip(&briefs) {
        assert_eq!(brief, &briefs[0], "{way} is not {}", ways[0]);
    }
}

// 1 in = 25.4 mm and 1 lb = 0.45359237 kg exactly (international yard and pound agreement, 1959).
#[test]
fn one_length_in_many_units() {
    let ways = [
        "609.6",
        "\"609.6 mm\"",
        "\"60.96 cm\"",
        "\"0.6096 m\"",
        "\"24 in\"",
        "\"2 ft\"",
        "\"2'\"",
        "'24\"'",
        "\"23 2/2 in\"",
        "\"609600 µm\"",
    ];
    same("frame_width_mm", "\"60 cm\"", &ways, "row-of-jars");
    let ways = ["2387.6", "\"7 ft 10 in\"", "\"7'10\\\"\"", "\"7′ 10″\"", "\"94 in\"", "\"7 ft 9 4/4 in\""];
    same("front_mm", "\"3.4 m\"", &ways, "row-of-jars");
    same(
        "socket_below_mm",
        "42",
        &["38.1", "\"1 1/2 in\"", "\"1-1/2 in\"", "\"1½ in\"", "\"3/2 in\"", "\"3.81 cm\""],
        "soup",
    );
}

#[test]
fn one_mass_angle_moment_and_share_in_many_units() {
    same("mass_kg", "\"740 g\"", &["0.90718474", "\"2 lb\"", "\"32 oz\"", "\"907.18474 g\""], "soup");
    same("elevation_deg", "60", &["60", "60.0", "\"60°\"", "\"60 deg\"", "\"60 degrees\""], "soup");
    same(
        "rated_moment_n_m",
        "\"9 N m\"",
        &["9.80665", "\"1 kgf m\"", "\"980.665 N cm\"", "\"9.80665 N·m\""],
        "glaze",
    );
    same(
        "tube_modulus_n_per_mm2",
        "\"69 GPa\"",
        &["69000", "\"69 GPa\"", "\"69000 N/mm2\"", "\"69000 MPa\""],
        "glaze",
    );
    same("damping_ratio", "\"2 %\"", &["0.02", "\"2 %\"", "\"1:50\""], "glaze");
    same("floor_slope_percent", "\"0.5 %\"", &["0.5", "\"0.5 %\""], "soup");
    same("largest_magnification", "0.16", &["0.16", "\"16 %\"", "\"0.16\"", "\"4:25\""], "breakfast");
    same("f_number", "\"f/11\"", &["11", "\"f/11\"", "\"11\""], "row-of-jars");
}

#[test]
fn what_is_printed_is_what_was_asked() {
    // The frame is 500 mm wide; each unit prints it to half its last place.
    let widths = [
        ("mm", "frame 500 mm"),
        ("cm", "frame 50.0 cm"),
        ("m", "frame 0.500 m"),
        ("in", "frame 19 11/16 in"),
        ("ft-in", "frame 1 ft 7 11/16 in"),
    ];
    for (units, words) in widths {
        let text = run(&["shot", "tiles", "--units", units]).out;
        assert!(text.contains(words), "--units {units} does not print `{words}`:\n{text}");
    }
}

/// Whoever holds a tape has one unit before them, however small a length is.
#[test]
fn one_answer_has_one_unit() {
    let told = |units: &str| {
        let text = run(&["plan", "--units", units]).out;
        let lines = text.lines().map(str::trim_start).filter(|line| {
            ["Camera", "Frame", "Stand", "Focus"]
                .iter()
                .any(|label| line.trim_start_matches('(').starts_with(label))
        });
        lines.collect::<Vec<_>>().join("\n")
    };
    for units in ["cm", "m", "in", "ft-in"] {
        assert!(!told(units).contains(" mm"), "--units {units}:\n{}", told(units));
    }
    for units in ["in", "ft-in"] {
        // Fractions, as on the tape: no decimals but of f-numbers.
        let text = told(units).replace("f/", "f-");
        let words: Vec<&str> = text.split_whitespace().collect();
        let before_in = words.windows(2).filter(|pair| pair[1].starts_with("in")).map(|pair| pair[0]);
        assert!(before_in.clone().count() > 50);
        assert!(before_in.clone().all(|number| !number.contains('.')), "{text}");
    }
}

/// A length that the last place does not show is not printed as nothing.
#[test]
fn a_little_is_not_nothing() {
    let text = demo().replacen("height_mm = 4\n", "height_mm = 0.05\n", 1);
    assert_ne!(text, demo());
    // Half of 0.05 mm on either side of the aim point.
    for (units, least) in [
        ("mm", "under 0.1 mm"),
        ("cm", "under 0.01 cm"),
        ("m", "under 0.0001 m"),
        ("in", "under 1/32 in"),
        ("ft-in", "under 1/32 in"),
    ] {
        let told = run_with(&["shot", "glaze", "-", "--units", units], &text).out;
        let told = told.split_whitespace().collect::<Vec<_>>().join(" ");
        let words = format!("from {least} in front of the aim point to {least} behind it");
        assert!(told.contains(&words), "--units {units} lacks `{words}`:\n{told}");
    }
}

#[test]
fn units_change_no_json() {
    assert_eq!(run(&["plan", "--json"]).out, run(&["plan", "--json", "--units", "ft-in"]).out);
}
