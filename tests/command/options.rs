//! Mistakes in options are told by the option that was typed, to people and to programs; negative values are values.

use serde_json::{Value, json};

use super::run::{demo, run, run_on, run_with};

fn told(arguments: &[&str], words: &[&str]) {
    let run = run(arguments);
    assert_ne!(run.status, 0, "{}", run.out);
    for word in words {
        assert!(run.err.contains(word), "lacks `{word}`:\n{}", run.err);
    }
}

/// What a program reads where its answer would be.
fn mistakes(arguments: &[&str], input: &str) -> Vec<Value> {
    let run = run_with(arguments, input);
    assert!(run.status == 2 || run.status == 1, "{}", run.out);
    assert!(!run.err.is_empty());
    let mut reply: Value =
        serde_json::from_str(&run.out).unwrap_or_else(|error| panic!("{error}: {}", run.out));
    assert_eq!(reply.as_object().unwrap().len(), 1);
    let Value::Array(mistakes) = reply["mistakes"].take() else { panic!("no list: {reply}") };
    assert!(!mistakes.is_empty());
    mistakes
}

#[test]
fn the_option_typed_is_named() {
    let sweep = ["sweep", "elevation", "--step", "10", "--shot", "soup"];
    told(
        &[&sweep[..], &["--from", "-70", "--to", "0"]].concat(),
        &["--from -70 deg is too small", "-60 to 90 deg"],
    );
    told(&[&sweep[..], &["--from", "60", "--to", "100"]].concat(), &["--to 100 deg is too large"]);
    told(
        &["sweep", "frame-width", "--from", "0 mm", "--to", "1 m", "--steps", "4"],
        &["--from 0 mm is too small", "1 to 100000 mm"],
    );
    let vessel = ["advise", "--diameter", "8cm", "--height", "10cm", "--contents-below-rim", "1cm"];
    told(&[&vessel[..], &["--vessel-inside", "9cm"]].concat(), &["--vessel-inside 90 mm is wider than"]);
    told(&[&vessel[..], &["--vessel-inside", "0"]].concat(), &["--vessel-inside 0 mm is too small"]);
    told(
        &["set", "soup", "--sensor-height", "2 m ± 20 m", "--horizontal-distance", "78 cm"],
        &["--sensor-height: the uncertainty 20000 mm is too large", "expected 0 to 10000 mm"],
    );
    told(
        &["set", "soup", "--sensor-distance", "0", "--elevation", "60"],
        &["--sensor-distance 0 mm is too small"],
    );
    // The distance follows from the heights: no option was typed for it.
    let near = ["set", "soup", "--sensor-height", "85 cm", "--horizontal-distance", "5 cm"];
    let run = run(&near);
    assert!(!run.err.contains("--sensor-distance"), "{}", run.err);
}

#[test]
fn negative_values_need_no_equals_sign() {
    for value in ["-5", "-5mm", "-5 mm", "−5 mm", "-0.2 in"] {
        told(
            &["set", "soup", "--sensor-height", value, "--horizontal-distance", "78 cm"],
            &["--sensor-height -5"],
        );
    }
    told(
        &["ask", "magnification", "--sensor-distance", "-1 m", "--focal-length", "50", "--sensor", "36"],
        &["-1000 mm"],
    );
    let advised =
        run(&["advise", "--width", "30cm", "--depth", "20cm", "--height", "5cm", "--bearing", "-30°"]);
    assert_eq!(advised.status, 0, "{}", advised.err);
    let swept =
        run(&["sweep", "elevation", "--from", "-10°", "--to", "0", "--step", "5", "--shot", "row-of-jars"]);
    assert_eq!(swept.status, 0, "{}", swept.err);
    // What is no quantity is still an option's name.
    told(&["plan", "--unit", "cm"], &["--units"]);
}

/// What lies edge-on fills none of a frame's height, so no range can be expected of the share.
#[test]
fn no_range_is_told_where_none_helps() {
    let text = demo();
    let gear = &text[..text.find("[[shot]]").expect("shots")];
    let shot = "[[shot]]\nname = \"slip\"\nelevation_deg = 0\naim_height_mm = 0\nfill_height = 0.5\nlens = \"tilt-90\"\n\
                support = \"tripod\"\nsubject = { width_mm = 400, depth_mm = 20, height_mm = 0 }\n";
    let run = run_on(&["plan"], "edge-on.toml", &format!("{gear}{shot}"));
    assert_eq!(run.status, 2, "{}", run.out);
    for words in ["`fill_height` cannot be had with any frame width", "^^^ no value will do here"] {
        assert!(run.err.contains(words), "{}", run.err);
    }
}

#[test]
fn programs_are_told_as_json() {
    let text = demo().replacen("elevation_deg = 60", "elevation_deg = 600", 1);
    let all = mistakes(&["plan", "-", "--json"], &text);
    let line = text.lines().position(|line| line == "elevation_deg = 600").unwrap() + 1;
    let first = &all[0];
    assert_eq!(first["kind"], "too_large");
    assert_eq!((&first["number"], &first["field"]), (&json!(103), &json!("shot.elevation_deg")));
    assert_eq!(
        (&first["value"], &first["least"], &first["most"]),
        (&json!(600.0), &json!(-60.0), &json!(90.0))
    );
    assert_eq!((&first["line"], &first["column"]), (&json!(line), &json!(17)));
    assert_eq!((&first["in"], &first["unit"]), (&json!("shoot"), &json!("deg")));
    assert!(first["path"].as_array().unwrap().contains(&json!("elevation_deg")));
    // A value that was typed, a question without an answer, a file that is not there, a wrong command line.
    let typed = mistakes(&["sweep", "elevation", "--from", "0", "--to", "99", "--step", "99", "--json"], "");
    assert_eq!((&typed[0]["value"], &typed[0]["in"]), (&json!(99.0), &json!("request")));
    let near = [
        "ask",
        "magnification",
        "--sensor-distance",
        "1 cm",
        "--focal-length",
        "50",
        "--sensor",
        "36",
        "--json",
    ];
    assert_eq!(mistakes(&near, "")[0]["kind"], "no_focus");
    assert_eq!(mistakes(&["plan", "no-such-file.toml", "--json"], "")[0]["kind"], "not_readable");
    let usage = mistakes(&["plan", "--ells", "--json"], "");
    assert!(usage[0]["sentence"].as_str().unwrap().contains("--ells"));
    // Nothing but the answer without it.
    assert_eq!(run(&["plan", "no-such-file.toml"]).out, "");
}

/// The same mistakes, key by key, as the text door tells them.
#[cfg(feature = "text-door")]
#[test]
fn the_text_door_tells_the_same() {
    for (from, to) in [
        ("elevation_deg = 60", "elevation_deg = 600"),
        ("elevation_deg = 60", "elevation_deg = nan"),
        ("hold = \"upright\"", "hold = \"left\""),
        ("name = \"toast\"", "name = \"layers\""),
        ("leg_count = 3", "leg_cuont = 3"),
        ("[shoot]", "[shoot"),
    ] {
        let text = demo().replacen(from, to, 1);
        let asked = json!({ "operation": "plan_shoot", "shoot": text }).to_string();
        let door: Value = serde_json::from_str(&tablerig::doors::text::answer(&asked)).unwrap();
        assert_eq!(Value::from(mistakes(&["plan", "-", "--json"], &text)), door["mistakes"], "{to}");
    }
}

/// Names and notes reach the terminal without what would steer it.
#[test]
fn control_characters_are_shown() {
    let steering = ['\u{1b}', '\u{7}', '\u{8}', '\u{9b}', '\u{202e}', '\u{2066}', '\r'];
    let odd = "soup\\u001b[2J\\u0007\\u0008\\u009b\\u202e\\u2066\\r";
    let text = demo().replacen("name = \"soup\"", &format!("name = \"{odd}\""), 1);
    let text = text.replacen("right_after = \"soup\"", &format!("right_after = \"{odd}\""), 1);
    let text = text.replacen("title = \"", "title = \"\\u001b]0;x\\u0007", 1);
    let wrong = text.replacen("elevation_deg = 60", "elevation_deg = 600", 1);
    let wrong = wrong.replacen("lens = \"wide-35\"", "lens = \"\\u001b[31m\\u202e\"", 1);
    let raw = wrong
        .replacen("# A bare number", "# \u{202e} \u{9b} A bare number", 1)
        .replacen("[shoot]", "[shoot", 1);
    for arguments in [&["plan"][..], &["order"], &["book"], &["fit"], &["shot", "nothing\u{1b}[2J"]] {
        for text in [&text, &wrong, &raw] {
            let run = run_on(arguments, "odd.toml", text);
            for c in steering {
                assert!(
                    !run.out.contains(c) && !run.err.contains(c),
                    "{arguments:?} prints {c:?}: {}{}",
                    run.out,
                    run.err
                );
            }
        }
    }
    assert!(run_on(&["plan"], "odd.toml", &text).out.contains("soup␛[2J␇␈"));
}

/// An example that the help breaks in two where the shell does not is no longer a command.
#[test]
fn examples_can_be_pasted() {
    let mut examples = 0;
    for command in [
        &["--help"][..],
        &["advise", "--help"],
        &["sweep", "--help"],
        &["set", "--help"],
        &["ask", "measured", "--help"],
        &["ask", "viewpoint", "--help"],
        &["ask", "ceiling", "--help"],
        &["ask", "focal-length", "--help"],
        &["ask", "magnification", "--help"],
    ] {
        let help = run(command).out;
        let lines: Vec<&str> = help.lines().collect();
        for (place, line) in lines.iter().enumerate().filter(|(_, line)| line.starts_with("  tablerig ")) {
            examples += 1;
            let next = lines.get(place + 1).copied().unwrap_or_default();
            let goes_on = next.starts_with(' ') && !next.starts_with("  tablerig ");
            assert_eq!(goes_on, line.ends_with('\\'), "{command:?}: {line}\n{next}");
        }
    }
    assert!(examples > 20, "{examples}");
}

/// What a program is told of wrong arguments has the same names in it as what people are.
#[test]
fn wrong_arguments_as_json() {
    let mistake = |arguments: &[&str]| {
        let run = run(&[arguments, &["--json"]].concat());
        assert_eq!(run.status, 2, "{}", run.err);
        let told: serde_json::Value = serde_json::from_str(&run.out).expect("it is JSON");
        told["mistakes"][0].clone()
    };
    let lacking = mistake(&["ask", "viewpoint", "--hand-distance", "1m"]);
    assert_eq!(
        lacking["sentence"],
        "the following required arguments were not provided: --hand-focal-length <LENGTH> --hand-sensor-width <LENGTH>"
    );
    let wrong = mistake(&["sweep", "elevatoin"]);
    assert!(wrong["sentence"].as_str().is_some_and(|told| told.contains("frame-width")), "{wrong}");
    assert_eq!(wrong["helps"][0], "a similar value exists: 'elevation'");
    assert_eq!(mistake(&["shot", "suop"])["kind"], "unknown_name");
}

/// Nor is the camera in the hand mistaken for the one on the stand, a little for nothing, or a word for a count.
#[test]
fn mistakes_name_what_was_typed() {
    let hand = |length: &str, width: &str, distance: &str| {
        let (length, width) =
            (format!("--hand-focal-length={length}"), format!("--hand-sensor-width={width}"));
        let distance = format!("--hand-distance={distance}");
        run(&["ask", "viewpoint", &length, &width, &distance, "--sensor", "36"]).err
    };
    for (told, words) in [
        (hand("0", "36", "1m"), "--hand-focal-length 0 mm is too small"),
        (hand("50", "0.0000001", "1m"), "--hand-sensor-width 1e-7 mm is too small"),
        (hand("50", "36", "6cm"), "--hand-distance 60 mm is nearer than the lens can focus"),
        (run(&["sweep", "elevation", "--steps", "x"]).err, "expected a whole number, 1 to 999"),
        (
            run(&["sweep", "elevation", "--from", "0", "--to", "9", "--step=-3"]).err,
            "--step -3 is not over 0",
        ),
        (run(&["ask", "magnification", "--sensor", "36x"]).err, "no value is written"),
    ] {
        assert!(told.contains(words), "lacks `{words}`:\n{told}");
    }
}
