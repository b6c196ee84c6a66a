//! Every operation is answered, and says what it says it does.

use serde_json::{Value, json};
use tablerig::doors::text::answer;

use crate::ask::{asked, demo, place};

/// One request of each operation.
pub(crate) fn one_of_each() -> Vec<(&'static str, Value)> {
    let shoot = demo();
    let with = |keys: Value| {
        let mut keys = keys;
        keys["shoot"] = json!(shoot);
        keys
    };
    vec![
        ("version", json!({})),
        ("operations", json!({})),
        ("fields", json!({ "kind": "lens" })),
        ("ranges", json!({})),
        ("codes", json!({})),
        ("demo", json!({})),
        ("read", with(json!({}))),
        ("write", with(json!({ "form": "json" }))),
        (
            "edit",
            with(json!({ "edits": [{ "path": ["shot", place("soup"), "elevation_deg"], "value": "65°" }] })),
        ),
        ("plan", with(json!({ "shot": "soup" }))),
        ("plan_shoot", with(json!({}))),
        ("advice", with(json!({ "shot": "soup" }))),
        (
            "sweep",
            with(json!({ "shot": "soup", "quantity": "elevation_deg", "from": 30, "to": "90°", "step": 20 })),
        ),
        ("draw", with(json!({ "shot": "soup", "view": "side", "unit": "inches", "id": "a" }))),
        ("plan_and_draw", with(json!({ "shot": "soup", "views": ["side", "picture"] }))),
        ("project", with(json!({ "shot": "soup", "points": [{ "x_mm": 0, "y_mm": 0, "z_mm": "80 cm" }] }))),
        ("cast_onto_level", with(json!({ "shot": "soup", "places": [{ "right_mm": 0, "up_mm": 10 }] }))),
        ("used_area", with(json!({ "shot": "tumbler" }))),
        ("lens_focused", with(json!({ "shot": "soup" }))),
        ("depth_of_field", with(json!({ "shot": "soup", "f_number": "f/8" }))),
        ("f_number_to_hold", with(json!({ "shot": "soup", "nearest_mm": 40, "farthest_mm": 40 }))),
        ("focus_stack", with(json!({ "shot": "soup", "f_number": 4, "nearest_mm": 40, "farthest_mm": 40 }))),
        ("blur", with(json!({ "shot": "soup", "f_number": 4, "distance_mm": "2 m" }))),
        ("tilt_onto_table", with(json!({ "lens": "tilt-90", "frame_width_mm": 500, "elevation_deg": 45 }))),
        ("third_stop", json!({ "f_number": 7 })),
        ("magnification_at", with(json!({ "lens": "macro-100", "sensor_distance_mm": "60 cm" }))),
        (
            "focal_length_for",
            json!({ "pupil_distance_mm": "1.5 m", "frame_width_mm": "60 cm", "used_width_mm": 36 }),
        ),
        (
            "viewpoint",
            json!({
                "hand_focal_length_mm": 6.9, "hand_sensor_width_mm": 9.8, "hand_distance_mm": "62 cm",
                "used_width_mm": 36,
            }),
        ),
        ("frame_width_for_fill", with(json!({ "shot": "tumbler", "fill_height": "60 %" }))),
        ("largest_frame_width", with(json!({ "shot": "breakfast-long" }))),
        (
            "real_shot",
            with(json!({
                "shot": "soup",
                "measured": { "sensor_distance_mm": "155 cm ± 5 mm", "elevation_deg": { "value": 60, "uncertainty": 0.3 } },
            })),
        ),
        (
            "on_set",
            with(json!({
                "shot": "soup",
                "measured": { "sensor_height_mm": "213.5 cm ± 5 mm", "horizontal_distance_mm": 780 },
                "roll_deg": "0.2° +- 0.1°",
            })),
        ),
        ("choose", with(json!({ "shot": "soup", "open": ["lens", "side"] }))),
        ("smallest_changes", with(json!({ "shot": "breakfast-long" }))),
        ("fit", with(json!({}))),
        ("book", with(json!({ "leave_out": ["breakfast-long"] }))),
        ("order", with(json!({}))),
        (
            "whole_pieces",
            json!({ "needed_kg": "3.2 kg", "sizes": [{ "mass_kg": 1.25 }, { "mass_kg": "500 g", "at_hand": 2 }] }),
        ),
        ("sheet", with(json!({ "unit": "centimetres", "paper": "a4", "leave_out": ["breakfast-long"] }))),
    ]
}

/// What is listed can be asked, with the keys that are listed.
#[test]
fn every_operation_is_answered() {
    let listed = asked("operations", json!({}));
    let listed: Vec<&str> =
        listed["operations"].as_array().unwrap().iter().map(|it| it["name"].as_str().unwrap()).collect();
    let requests = one_of_each();
    let asked_for: Vec<&str> = requests.iter().map(|(name, _)| *name).collect();
    assert_eq!(asked_for, listed);
    for (name, request) in requests {
        assert!(asked(name, request).is_object(), "{name}");
    }
    // For builds for other machines, which must reply with the same texts.
    if let Some(path) = std::env::var_os("TABLERIG_REPLIES") {
        let replies: Vec<[String; 2]> = one_of_each()
            .into_iter()
            .map(|(name, mut request)| {
                request["operation"] = json!(name);
                let request = request.to_string();
                let reply = answer(&request);
                [request, reply]
            })
            .collect();
        std::fs::write(path, serde_json::to_string(&replies).unwrap()).unwrap();
    }
}

/// The same shoot as text and as an object is the same.
#[test]
fn toml_and_json_are_one() {
    let read = asked("read", json!({ "shoot": demo() }));
    assert_eq!(read["mistakes"], json!([]));
    let by_text = asked("plan_shoot", json!({ "shoot": demo() }));
    let by_object = asked("plan_shoot", json!({ "shoot": read["shoot"] }));
    assert_eq!(by_text, by_object);
    for form in ["toml", "json"] {
        let written = asked("write", json!({ "shoot": read["shoot"], "form": form }));
        assert_eq!(asked("plan_shoot", json!({ "shoot": written["text"] })), by_text, "{form}");
        // Written once more, it is the same text.
        let again = asked("write", json!({ "shoot": written["text"], "form": form }));
        assert_eq!(again, written, "{form}");
    }
}

/// A shoot of one shot, as an object with the least that it takes.
#[test]
fn one_shot_needs_no_names() {
    let read = asked("read", json!({ "shoot": demo() }));
    let shoot = &read["shoot"];
    let one = json!({
        "camera": { "a": shoot["camera"]["full-frame"] },
        "lens": { "b": shoot["lens"]["macro-100"] },
        "table": { "c": shoot["table"]["worktop"] },
        "support": { "d": shoot["support"]["tripod"] },
        "shot": [{ "name": "e", "elevation_deg": 20, "frame_width_mm": "40 cm",
                   "subject": { "diameter_mm": 80, "height_mm": 120 } }],
    });
    let planned = asked("plan", json!({ "shoot": one }));
    assert_eq!(planned["name"], "e");
    // Aimed at half the subject's height over the table.
    assert_eq!(planned["plan"]["pose"]["aim"]["z_mm"], 760.0 + 60.0);
    assert_eq!(planned["plan"]["bay_room"]["ceiling_mm"], "infinite");
}

/// A point that is drawn where it is cast from.
#[test]
fn places_go_round() {
    let points = json!([{ "x_mm": 30, "y_mm": -20, "z_mm": 760 }]);
    let keys = |keys: Value| {
        let mut keys = keys;
        (keys["shoot"], keys["shot"]) = (json!(demo()), json!("soup"));
        keys
    };
    let places = asked("project", keys(json!({ "points": points })));
    let cast = asked("cast_onto_level", keys(json!({ "places": places["places"] })));
    for axis in ["x_mm", "y_mm", "z_mm"] {
        let (there, back) = (points[0][axis].as_f64().unwrap(), cast["points"][0][axis].as_f64().unwrap());
        // A few roundings of numbers about 1000.
        assert!((there - back).abs() < 1e-9, "{axis}: {there} {back}");
    }
}

/// The drawings are SVG, each with the name and the identifiers it was asked for.
#[test]
fn drawings_are_drawn() {
    for view in ["side", "above", "picture"] {
        let drawn = asked("draw", json!({ "shoot": demo(), "shot": "soup", "view": view, "id": "mine" }));
        let svg = drawn["svg"].as_str().unwrap();
        let document = roxmltree::Document::parse(svg).unwrap();
        assert_eq!(document.root_element().tag_name().name(), "svg", "{view}");
        assert!(svg.contains("id=\"mine-") && svg.contains("soup"), "{view}");
    }
}

/// The sheet names every shot that is not left out, in the unit and for the paper asked for.
#[test]
fn sheets_are_printed() {
    let keys = |keys: Value| {
        let mut keys = keys;
        keys["shoot"] = json!(demo());
        asked("sheet", keys)["html"].as_str().unwrap().to_owned()
    };
    let html = keys(json!({ "unit": "feet_inches", "paper": "letter", "leave_out": ["breakfast-long"] }));
    assert!(html.starts_with("<!DOCTYPE html>") && html.contains("size:letter"));
    assert!(html.contains("tumbler") && !html.contains("breakfast-long"));
    assert!(html.contains(" ft "));
    let metric = keys(json!({ "unit": "centimetres" }));
    assert!(metric.contains("breakfast-long") && metric.contains(" cm") && !metric.contains(" ft "));
}

/// Planned and drawn at once is the same as one after the other.
#[test]
fn plans_are_drawn_at_once() {
    let keys = |keys: Value| {
        let mut keys = keys;
        (keys["shoot"], keys["shot"], keys["unit"]) = (json!(demo()), json!("soup"), json!("inches"));
        keys
    };
    let both = asked("plan_and_draw", keys(json!({ "views": ["picture", "side"] })));
    assert_eq!(both["planned"], asked("plan", json!({ "shoot": demo(), "shot": "soup" })));
    for view in ["side", "picture"] {
        assert_eq!(both["drawings"][view], asked("draw", keys(json!({ "view": view })))["svg"]);
    }
    assert!(both["drawings"]["above"].is_null());
}

/// Wherever loads or overhead work are reckoned, the usual cautions come along.
#[test]
fn cautions_come_along() {
    let usual = asked("codes", json!({}))["usual_cautions"].clone();
    for (name, request) in one_of_each() {
        let with = ["plan", "plan_shoot", "sweep", "largest_frame_width", "on_set", "choose", "fit", "book"];
        if with.contains(&name) {
            assert_eq!(asked(name, request)["usual_cautions"], usual, "{name}");
        }
    }
}

/// A sweep's rows are the plans of its values; one that cannot be planned says why.
#[test]
fn sweeps_go_on_past_what_is_refused() {
    let keys = json!({ "shoot": demo(), "shot": "soup", "quantity": "focal_length_mm", "from": 20, "to": 180, "steps": 4 });
    let swept = asked("sweep", keys);
    let rows = swept["rows"].as_array().unwrap();
    let values: Vec<f64> = rows.iter().map(|row| row["value"].as_f64().unwrap()).collect();
    assert_eq!(values, [20.0, 60.0, 100.0, 140.0, 180.0]);
    assert!(rows.iter().all(|row| row["plan"].is_object() != row["refused"].is_object()));
    let lenses = asked("sweep", json!({ "shoot": demo(), "shot": "soup", "quantity": "lens" }));
    let names: Vec<&str> =
        lenses["rows"].as_array().unwrap().iter().map(|row| row["lens"].as_str().unwrap()).collect();
    assert_eq!(names, ["wide-35", "tilt-90", "macro-100", "macro-180"]);
}
