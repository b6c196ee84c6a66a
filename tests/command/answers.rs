//! Exit statuses and the inverse questions.

use serde_json::Value;

use super::run::{demo, run, run_on};

fn answer(arguments: &[&str]) -> Value {
    let mut arguments = arguments.to_vec();
    arguments.push("--json");
    let run = run(&arguments);
    assert_eq!((run.status, run.err.as_str()), (0, ""), "{arguments:?}");
    serde_json::from_str(&run.out).expect("it is JSON")
}

fn number(value: &Value) -> f64 {
    value.as_f64().expect("a number")
}

#[test]
fn statuses() {
    assert_eq!(run(&["shot", "soup"]).status, 0);
    assert_eq!(run(&["shot", "breakfast-long"]).status, 1);
    let demo = demo();
    let end = demo.find("# This one cannot be done").expect("the last shot has a comment");
    assert_eq!(run_on(&["plan"], "shoot.toml", &demo[..end]).status, 0);
    assert_eq!(run(&["--help"]).status, 0);
    assert_eq!(run(&["--version"]).out, format!("tablerig {}\n", env!("CARGO_PKG_VERSION")));
    assert_eq!(run(&["no-such-command"]).status, 2);
}

#[test]
fn a_question_without_an_answer() {
    let run = run(&[
        "ask",
        "magnification",
        "--sensor-distance",
        "20cm",
        "--focal-length",
        "100",
        "--sensor",
        "36",
    ]);
    assert_eq!((run.status, run.out.as_str()), (1, ""));
    assert!(run.err.contains("nearer than the lens can focus"), "{}", run.err);
    assert!(run.err.contains("400 to 1000000 mm"), "{}", run.err);
}

// NAVEDTRA 14209, p. 1-27: a lens of 50 mm at 1:1 has object and image both at 100 mm.
#[test]
fn one_to_one() {
    let told = answer(&[
        "ask",
        "magnification",
        "--sensor-distance",
        "200mm",
        "--focal-length",
        "50mm",
        "--sensor",
        "36x24",
    ]);
    // The smaller root is double there: the square root of a rounding error may be left of it.
    assert!((number(&told["answer"]["magnification"]) - 1.0).abs() < 1e-7);
}

#[test]
fn there_and_back() {
    let plan = serde_json::from_str::<Value>(&run(&["shot", "tiles", "--json"]).out).expect("it is JSON");
    let lens = &plan["plan"]["lens"];
    let distance = number(&lens["sensor_distance_mm"]).to_string();
    let told = answer(&["ask", "magnification", "--sensor-distance", &distance, "--shot", "tiles"]);
    assert!((number(&told["answer"]["viewpoint"]["frame_width_mm"]) - 500.0).abs() < 1e-9);
    let pupil = number(&lens["pupil_distance_mm"]).to_string();
    let told = answer(&[
        "ask",
        "focal-length",
        "--pupil-distance",
        &pupil,
        "--frame-width",
        "50cm",
        "--shot",
        "tiles",
    ]);
    assert!((number(&told["answer"]["focal_length_mm"]) - 90.0).abs() < 1e-9);
    let height = number(&plan["plan"]["pose"]["sensor"]["z_mm"]).to_string();
    let aim = number(&plan["plan"]["pose"]["aim"]["z_mm"]).to_string();
    let level = number(&plan["plan"]["pose"]["sensor_from_aim_mm"]).to_string();
    let told = answer(&[
        "ask",
        "measured",
        "--shot",
        "tiles",
        "--sensor-height",
        &height,
        "--aim-height-above-floor",
        &aim,
        "--horizontal-distance",
        &format!("{level}+-2mm"),
    ]);
    assert!((number(&told["answer"]["elevation_deg"]["value"]) - 45.0).abs() < 1e-9);
    assert!((number(&told["answer"]["frame_width_mm"]["value"]) - 500.0).abs() < 1e-9);
}

/// A viewpoint found with the same format and lens is repeated by that lens.
#[test]
fn a_viewpoint_repeated() {
    let told = answer(&[
        "ask",
        "viewpoint",
        "--hand-focal-length",
        "90",
        "--hand-sensor-width",
        "36",
        "--hand-distance",
        "1.5 m",
        "--sensor",
        "36x24",
    ]);
    assert!((number(&told["answer"]["focal_length_mm"]) - 90.0).abs() < 1e-9);
}

/// The largest frame under a ceiling brings the highest point of the camera just under it.
#[test]
fn under_the_ceiling() {
    let told = answer(&["ask", "ceiling", "--shot", "breakfast-long"]);
    let width = number(&told["answer"]["frame_width_mm"]);
    let text = demo().replace("frame_width_mm = \"1.25 m\"", &format!("frame_width_mm = {width}"));
    let run = run_on(&["shot", "breakfast-long", "--json"], "shoot.toml", &text);
    let plan = serde_json::from_str::<Value>(&run.out).expect("it is JSON");
    let room = number(&plan["plan"]["bay_room"]["ceiling_mm"]);
    // A nanometre: what is left of a root found by halving.
    assert!(room.abs() < 1e-6, "{room}");
}

#[test]
fn a_sweep_begins_and_ends_where_it_was_asked_to() {
    let told =
        answer(&["sweep", "elevation", "--from", "0", "--to", "0.9", "--step", "0.1", "--shot", "soup"]);
    let rows = told["rows"].as_array().expect("a list");
    assert_eq!(rows.len(), 10);
    let told =
        answer(&["sweep", "frame-width", "--from", "60cm", "--to", "20cm", "--steps", "4", "--shot", "soup"]);
    let values: Vec<f64> =
        told["rows"].as_array().expect("a list").iter().map(|row| number(&row["value"])).collect();
    assert_eq!(values, [600.0, 500.0, 400.0, 300.0, 200.0]);
    let told = answer(&["sweep", "lens", "--shot", "soup"]);
    assert_eq!(told["rows"].as_array().expect("a list").len(), 4);
}
