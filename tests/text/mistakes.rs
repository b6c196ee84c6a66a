//! Every kind of mistake comes out with its code, its place, its value and its range.

use serde_json::{Value, json};
use tablerig::fault::FaultKind;

use crate::ask::{asked, demo, place, refused};

/// The mistakes of the demo with some values changed.
fn edited(edits: Value) -> Vec<Value> {
    let text = asked("edit", json!({ "shoot": demo(), "edits": edits }))["text"].clone();
    refused("plan_shoot", json!({ "shoot": text }))
}

fn set(path: Value, value: Value) -> Vec<Value> {
    edited(json!([{ "path": path, "value": value }]))
}

/// The one of a kind, with what must be true of each.
fn only<'a>(mistakes: &'a [Value], kind: &str, number: i64) -> &'a Value {
    let found: Vec<&Value> = mistakes.iter().filter(|mistake| mistake["kind"] == kind).collect();
    let [mistake] = found.as_slice() else { panic!("{kind}: {mistakes:?}") };
    assert_eq!(mistake["number"], number, "{kind}");
    assert!(!mistake["sentence"].as_str().unwrap().is_empty(), "{kind}");
    mistake
}

/// Each of the library's faults, out of a shoot or a question.
#[test]
fn every_fault_comes_out() {
    let macro_100 = |key: &str, value: Value| set(json!(["lens", "macro-100", key]), value);
    let shot = |keys: Value| {
        let mut keys = keys;
        keys["shoot"] = json!(demo());
        keys
    };
    let cases = [
        (FaultKind::NotFinite, refused("third_stop", json!({ "f_number": "1e400" })), "f_number"),
        (
            FaultKind::TooSmall,
            set(json!(["shot", place("row-of-jars"), "elevation_deg"]), json!(-61)),
            "shot.elevation_deg",
        ),
        (
            FaultKind::TooLarge,
            set(json!(["shot", place("row-of-jars"), "elevation_deg"]), json!("91°")),
            "shot.elevation_deg",
        ),
        (
            FaultKind::NoFocalLengthAtClosestFocus,
            edited(json!([
                { "path": ["lens", "macro-100", "closest_focus_mm"], "value": 100 },
                { "path": ["lens", "macro-100", "principal_separation_mm"], "value": 100 },
            ])),
            "lens.closest_focus_mm",
        ),
        (
            FaultKind::FocalLengthGrows,
            edited(json!([
                { "path": ["lens", "macro-100", "largest_magnification"], "value": 0.2 },
                { "path": ["lens", "macro-100", "closest_focus_mm"], "value": "90 cm" },
            ])),
            "lens.closest_focus_mm",
        ),
        (
            FaultKind::FocusTurnsBack,
            edited(json!([
                { "path": ["lens", "macro-100", "largest_magnification"], "value": 3 },
                { "path": ["lens", "macro-100", "closest_focus_mm"], "value": "50 cm" },
            ])),
            "lens.closest_focus_mm",
        ),
        (
            FaultKind::HighestUnderLowest,
            set(json!(["support", "tripod", "highest_pivot_mm"]), json!("40 cm")),
            "support.highest_pivot_mm",
        ),
        (
            FaultKind::ContentsUnderVessel,
            set(json!(["subject", "soup-bowl", "vessel", "contents_below_rim_mm"]), json!(90)),
            "subject.vessel.contents_below_rim_mm",
        ),
        (
            FaultKind::VesselWiderInside,
            set(json!(["subject", "soup-bowl", "vessel", "inside_diameter_mm"]), json!(195)),
            "subject.vessel.inside_diameter_mm",
        ),
        (
            FaultKind::TubeWiderInside,
            set(json!(["support", "boom-stand", "boom", "stiffness", "tube_inside_mm"]), json!(41)),
            "support.boom.stiffness.tube_inside_mm",
        ),
        (
            FaultKind::FeetInsideColumn,
            set(json!(["support", "tripod", "foot_radius_mm"]), json!(10)),
            "support.foot_radius_mm",
        ),
        (FaultKind::FNumbersReversed, macro_100("most_f_number", json!("f/2")), "lens.most_f_number"),
        (
            FaultKind::NoFrameWidth,
            edited(json!([
                { "path": ["shot", place("layers"), "elevation_deg"], "value": 90 },
                { "path": ["shot", place("layers"), "subject"], "value": { "width_mm": 1, "depth_mm": 1, "height_mm": 0 } },
                { "path": ["shot", place("layers"), "fill_height"], "value": 0.99 },
                { "path": ["lens", "macro-100", "closest_focus_mm"], "value": null },
                { "path": ["lens", "macro-100", "largest_magnification"], "value": null },
                { "path": ["lens", "macro-100", "focal_length_mm"], "value": 1 },
                { "path": ["lens", "macro-100", "pupil_ratio"], "value": 0.1 },
            ])),
            "shot.fill_height",
        ),
        (
            FaultKind::NoFocus,
            refused("magnification_at", shot(json!({ "lens": "macro-100", "sensor_distance_mm": 200 }))),
            "measured.sensor_distance_mm",
        ),
        (
            FaultKind::NoFocalLength,
            refused(
                "focal_length_for",
                json!({ "pupil_distance_mm": 1, "frame_width_mm": "50 m", "used_width_mm": 36 }),
            ),
            "viewpoint.pupil_distance_mm",
        ),
        (
            FaultKind::NoRoomUnderCeiling,
            refused("largest_frame_width", shot(json!({ "shot": "breakfast-long", "ceiling_mm": "60 cm" }))),
            "bay.ceiling_mm",
        ),
        (
            FaultKind::NoViewpoint,
            refused(
                "real_shot",
                shot(json!({
                    "lens": "macro-100", "measured": {
                        "sensor_height_mm": 800, "aim_height_above_floor_mm": 800, "horizontal_distance_mm": 0,
                    },
                })),
            ),
            "measured.horizontal_distance_mm",
        ),
    ];
    let mut seen: Vec<FaultKind> = Vec::new();
    for (kind, mistakes, field) in cases {
        let name = serde_json::to_value(kind).unwrap();
        if kind == FaultKind::NotFinite {
            seen.push(kind);
            continue;
        }
        let mistake = only(&mistakes, name.as_str().unwrap(), kind as i64);
        assert_eq!(mistake["field"], field, "{kind:?}");
        let value = mistake["value"].as_f64().unwrap_or_else(|| panic!("{kind:?}: no value"));
        let (least, most) = (mistake["least"].as_f64(), mistake["most"].as_f64());
        let inside = least.is_none_or(|least| value > least) && most.is_none_or(|most| value < most);
        assert!(!inside || least.is_none() && most.is_none(), "{kind:?}: {mistake}");
        seen.push(kind);
    }
    assert_eq!(seen, FaultKind::ALL, "every kind, in the order of their numbers");
}

/// A number beyond all numbers is refused by its key, in a request as in a shoot.
#[test]
fn no_number_may_be_infinite() {
    let text = tablerig::doors::text::answer(r#"{"operation":"third_stop","f_number":1e400}"#);
    let reply: Value = serde_json::from_str(&text).unwrap();
    let mistake = only(reply["mistakes"].as_array().unwrap(), "not_finite", 101);
    assert_eq!((&mistake["path"], &mistake["value"]), (&json!(["f_number"]), &json!("infinite")));
    for (value, told) in
        [("inf", "infinite"), ("-inf", "-infinite"), ("nan", "not_a_number"), ("1e999", "infinite")]
    {
        let broken = demo().replace("elevation_deg = 60", &format!("elevation_deg = {value}"));
        let mistakes = refused("plan", json!({ "shoot": broken, "shot": "soup" }));
        let mistake = only(&mistakes, "not_finite", 101);
        assert_eq!(mistake["path"], json!(["shot", place("soup"), "elevation_deg"]));
        assert_eq!(mistake["value"], told);
    }
}

/// Each kind of mistake in writing.
#[test]
fn every_mistake_in_writing_comes_out() {
    let replaced = |from: &str, to: &str| {
        assert!(demo().contains(from), "{from}");
        refused("plan_shoot", json!({ "shoot": demo().replacen(from, to, 1) }))
    };
    // Every shot that names no table then says so; the first will do.
    let undecided = set(json!(["shoot", "table"]), Value::Null).into_iter().take(1).collect();
    let cases: [(&str, i64, Vec<Value>, Value); 11] = [
        ("not_readable", 401, replaced("[shoot]", "[shoot"), json!([])),
        (
            "unknown_key",
            402,
            set(json!(["lens", "wide-35", "focal_length"]), json!(3)),
            json!(["lens", "wide-35", "focal_length"]),
        ),
        (
            "unknown_word",
            403,
            set(json!(["table", "plinth", "underside"]), json!("opn")),
            json!(["table", "plinth", "underside"]),
        ),
        (
            "unknown_name",
            404,
            set(json!(["shot", place("soup"), "subject"]), json!("soup-bowls")),
            json!(["shot", place("soup"), "subject"]),
        ),
        (
            "wrong_kind",
            405,
            set(json!(["shot", place("soup"), "elevation_deg"]), json!(true)),
            json!(["shot", place("soup"), "elevation_deg"]),
        ),
        (
            "no_quantity",
            406,
            set(json!(["shot", place("soup"), "frame_width_mm"]), json!("13 kg")),
            json!(["shot", place("soup"), "frame_width_mm"]),
        ),
        ("lacking", 407, set(json!(["lens", "wide-35", "mass_kg"]), Value::Null), json!(["lens", "wide-35"])),
        (
            "conflicting",
            408,
            set(json!(["shot", place("soup"), "fill_width"]), json!(0.5)),
            json!(["shot", place("soup"), "fill_width"]),
        ),
        (
            "repeated",
            409,
            set(json!(["shot", place("soup"), "name"]), json!("toast")),
            json!(["shot", place("soup"), "name"]),
        ),
        (
            "too_many",
            410,
            edited(json!([2, 3, 4].map(|index| json!({
                "path": ["support", "boom-stand", "sandbags", index],
                "value": { "mass_kg": 1, "out_mm": 0, "direction_deg": 0, "height_mm": 100 },
            })))),
            json!(["support", "boom-stand", "sandbags", 4]),
        ),
        ("undecided", 411, undecided, json!(["shot", place("row-of-jars")])),
    ];
    for (kind, number, mistakes, path) in cases {
        let mistake = only(&mistakes, kind, number);
        assert_eq!(mistake["path"], path, "{kind}");
        assert_eq!(mistake["in"], "shoot");
        assert!(mistake["line"].as_u64().unwrap() > 0 && mistake["column"].as_u64().unwrap() > 0, "{kind}");
        if kind == "lacking" {
            assert_eq!(mistake["lacks"], json!(["mass_kg"]));
        }
    }
}

/// The line and the column are those of the value in the text, columns counted in characters.
#[test]
fn places_are_those_of_the_text() {
    let broken = demo().replace("elevation_deg = 60", "note = \"höher – ½\"\nelevation_deg = 600");
    let mistakes = refused("plan_shoot", json!({ "shoot": broken }));
    let mistake = only(&mistakes, "too_large", 103);
    let line = broken.lines().position(|line| line == "elevation_deg = 600").unwrap() + 1;
    assert_eq!((mistake["line"].as_u64(), mistake["column"].as_u64()), (Some(line as u64), Some(17)));
    let stretch = &mistake["stretch"];
    let at = |key: &str| stretch[key].as_u64().unwrap() as usize;
    assert_eq!(&broken[at("start")..at("end")], "600");
    let two = demo().replace("name = \"soup\"", "name = \"½\" x = 1");
    let mistakes = refused("plan_shoot", json!({ "shoot": two }));
    assert_eq!(mistakes[0]["kind"], "not_readable");
    assert_eq!(mistakes[0]["column"], 12);
}

/// What a request lacks, or has too much, is said of its keys.
#[test]
fn requests_are_checked_like_files() {
    let mistake = |operation: &str, keys: Value| refused(operation, keys)[0].clone();
    let unknown = mistake("plam", json!({}));
    assert_eq!((&unknown["kind"], &unknown["path"]), (&json!("unknown_name"), &json!(["operation"])));
    assert_eq!(unknown["helps"], json!(["did you mean `plan`?"]));
    let misspelt = mistake("third_stop", json!({ "f_numbr": 8 }));
    assert_eq!((&misspelt["kind"], &misspelt["path"]), (&json!("unknown_key"), &json!(["f_numbr"])));
    let lacking = mistake("third_stop", json!({}));
    assert_eq!((&lacking["kind"], &lacking["lacks"]), (&json!("lacking"), &json!(["f_number"])));
    let shot = mistake("plan", json!({ "shoot": demo() }));
    assert_eq!((&shot["kind"], &shot["lacks"]), (&json!("undecided"), &json!(["shot"])));
    let shot = mistake("plan", json!({ "shoot": demo(), "shot": "soop" }));
    assert_eq!((&shot["kind"], &shot["path"]), (&json!("unknown_name"), &json!(["shot"])));
    let lens =
        refused("magnification_at", json!({ "lens": { "focal_length_mm": 0 }, "sensor_distance_mm": 1 }));
    assert_eq!(only(&lens, "too_small", 102)["path"], json!(["lens", "focal_length_mm"]));
    assert_eq!(only(&lens, "lacking", 407)["path"], json!(["lens"]));
    let set = mistake(
        "real_shot",
        json!({ "shoot": demo(), "shot": "soup", "measured": { "sensor_height_mm": 1 } }),
    );
    assert_eq!((&set["kind"], &set["path"]), (&json!("conflicting"), &json!(["measured"])));
    let distance =
        mistake("magnification_at", json!({ "shoot": demo(), "lens": "tilt-90", "sensor_distance_mm": 5 }));
    assert_eq!((&distance["kind"], &distance["path"]), (&json!("no_focus"), &json!(["sensor_distance_mm"])));
}

/// What the camera in the hand is refused for has the key that it was given by.
#[test]
fn the_hand_has_its_own_keys() {
    let asked = json!({ "hand_focal_length_mm": 50, "hand_sensor_width_mm": 36, "hand_distance_mm": 60, "used_width_mm": 36 });
    let mistake = &refused("viewpoint", asked)[0];
    assert_eq!(mistake["path"], json!(["hand_distance_mm"]));
    assert_eq!(mistake["sentence"], "`hand_distance_mm` is nearer than the lens can focus");
}
