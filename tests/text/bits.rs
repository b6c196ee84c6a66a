//! The door's numbers are the library's, bit for bit, and the command's are the same.

use serde_json::{Value, json};
use tablerig::optics::focus::{depth_of_field, third_stop_down, third_stop_up};
use tablerig::optics::inverse::{focal_length_for, magnification_at};
use tablerig::plan::plan;
use tablerig::shootfile::{DEMO, Form, read};

use crate::ask::asked;

/// A value as JSON, by way of text.
fn json_of(value: &impl serde::Serialize) -> Value {
    serde_json::from_str(&serde_json::to_string(value).unwrap()).unwrap()
}

/// Every number of both is the same bits.
fn same_bits(one: &Value, other: &Value, path: &str) {
    match (one, other) {
        (Value::Object(one), Value::Object(other)) => {
            assert_eq!(one.len(), other.len(), "{path}");
            for (key, value) in one {
                same_bits(value, &other[key], &format!("{path}.{key}"));
            }
        }
        (Value::Array(one), Value::Array(other)) => {
            assert_eq!(one.len(), other.len(), "{path}");
            for (index, (one, other)) in one.iter().zip(other).enumerate() {
                same_bits(one, other, &format!("{path}.{index}"));
            }
        }
        (Value::Number(one), Value::Number(other)) => {
            let bits = |number: &serde_json::Number| number.as_f64().unwrap().to_bits();
            assert_eq!(bits(one), bits(other), "{path}: {one} {other}");
        }
        _ => assert_eq!(one, other, "{path}"),
    }
}

#[test]
fn plans_are_the_librarys() {
    let file = read(DEMO, Form::Toml).unwrap();
    assert_eq!(file.shots.len(), 11);
    for shot in &file.shots {
        let answer = asked("plan", json!({ "shoot": DEMO, "shot": shot.name }));
        let planned = plan(&shot.brief).unwrap();
        same_bits(&answer["plan"], &json_of(&planned), &shot.name);
        same_bits(&answer["brief"], &json_of(&shot.brief), &shot.name);
    }
}

#[test]
fn questions_are_the_librarys() {
    let file = read(DEMO, Form::Toml).unwrap();
    let lens = file.gear.lenses.get("macro-100").unwrap();
    let bits = |value: &Value| value.as_f64().unwrap().to_bits();
    for number in [0.5, 1.3, 7.0, 8.0, 45.0, 511.0] {
        let answer = asked("third_stop", json!({ "f_number": number }));
        assert_eq!(bits(&answer["up"]["f_number"]), third_stop_up(number).f_number.to_bits());
        assert_eq!(bits(&answer["down"]["f_number"]), third_stop_down(number).f_number.to_bits());
    }
    for distance in [310.5, 600.1, 12_345.678] {
        let keys = json!({ "shoot": DEMO, "lens": "macro-100", "sensor_distance_mm": distance });
        let magnification = magnification_at(&lens, distance).unwrap();
        assert_eq!(bits(&asked("magnification_at", keys)["magnification"]), magnification.to_bits());
        let keys = json!({
            "shoot": DEMO, "lens": "macro-100", "magnification": magnification, "f_number": 8,
            "circle_of_confusion_mm": 0.03,
        });
        let sharp = depth_of_field(&lens.focused(magnification), 8.0, 0.03);
        same_bits(&asked("depth_of_field", keys)["depth_of_field"], &json_of(&sharp), "depth");
        let keys = json!({ "pupil_distance_mm": distance, "frame_width_mm": 333.3, "used_width_mm": 36 });
        let focal = focal_length_for(distance, 333.3, 36.0, 1.0).unwrap();
        assert_eq!(bits(&asked("focal_length_for", keys)["focal_length_mm"]), focal.to_bits());
    }
}

/// What the command prints as JSON is what the door answers.
#[cfg(feature = "cli")]
#[test]
fn the_command_says_the_same() {
    let run = |arguments: &[&str]| -> Value {
        let output =
            std::process::Command::new(env!("CARGO_BIN_EXE_tablerig")).args(arguments).output().unwrap();
        serde_json::from_slice(&output.stdout).unwrap()
    };
    let shot = json!({ "shoot": DEMO, "shot": "soup" });
    for (arguments, operation, keys) in [
        (&["plan", "--json"][..], "plan_shoot", json!({ "shoot": DEMO })),
        (&["shot", "soup", "--json"], "plan", shot.clone()),
        (&["advise", "--shot", "soup", "--json"], "advice", shot.clone()),
        (&["fit", "--json"], "fit", json!({ "shoot": DEMO })),
        (&["book", "--json"], "book", json!({ "shoot": DEMO })),
        (&["order", "--json"], "order", json!({ "shoot": DEMO })),
    ] {
        same_bits(&asked(operation, keys), &run(arguments), operation);
    }
}
