//! Every kind of mistake has its own clear text, at its place, and status 2.

use super::run::{Run, demo, file, run, run_on, run_with};

/// The demo with one piece of it exchanged.
fn changed(from: &str, to: &str) -> String {
    let demo = demo();
    assert!(demo.contains(from), "the demo has no `{from}`");
    demo.replacen(from, to, 1)
}

fn refused(run: &Run, words: &[&str]) {
    assert_eq!((run.status, run.out.as_str()), (2, ""), "{}", run.err);
    for word in words {
        assert!(run.err.contains(word), "lacks `{word}`:\n{}", run.err);
    }
    assert!(!run.err.contains("panicked"), "{}", run.err);
}

#[test]
fn a_wrong_value() {
    let text = changed("elevation_deg = 60", "elevation_deg = 600");
    let line = text.lines().position(|line| line == "elevation_deg = 600").expect("it is there") + 1;
    let place = format!("shoot.toml:{line}:17");
    refused(
        &run_on(&["plan"], "shoot.toml", &text),
        &["`elevation_deg` is too large", "^^^ expected -60 to 90 deg", &place],
    );
    let text = changed("mass_kg = \"740 g\"", "mass_kg = \"-740 g\"");
    let words =
        ["`mass_kg` is too small", "this is -0.74 kg; expected 0 to 100 kg", "the camera without its lens"];
    refused(&run_on(&["plan"], "shoot.toml", &text), &words);
    let text = changed("mass_kg = \"740 g\"", "mass_kg = \"740 mm\"");
    refused(
        &run_on(&["plan"], "shoot.toml", &text),
        &["`mm` makes it a length, where a mass is wanted", "\"850 g\""],
    );
    let text = changed("width_mm = \"140 cm\"", "width_mm = \"1,4 m\"");
    refused(&run_on(&["plan"], "shoot.toml", &text), &["a decimal comma: write a point"]);
    let text = changed("width_mm = \"140 cm\"", "width_mm = \"140\"");
    refused(&run_on(&["plan"], "shoot.toml", &text), &["says its unit: write 140, or \"140 mm\""]);
}

#[test]
fn a_wrong_type() {
    refused(
        &run_on(&["plan"], "s.toml", &changed("elevation_deg = 60", "elevation_deg = true")),
        &["`elevation_deg` is an angle", "found true or false"],
    );
    refused(
        &run_on(&["plan"], "s.toml", &changed("leg_count = 3", "leg_count = 3.5")),
        &["`leg_count` is a whole number", "expected 3 to 8"],
    );
    refused(
        &run_on(&["plan"], "s.toml", &changed("hold = \"upright\"", "hold = \"uprigt\"")),
        &["`hold` cannot be \"uprigt\"", "did you mean \"upright\"?"],
    );
    refused(
        &run_on(&["plan"], "s.toml", &changed("focus_on_table = true", "focus_on_table = \"yes\"")),
        &["`focus_on_table` is true or false"],
    );
    refused(
        &run_on(&["plan"], "s.toml", &changed("delivered_aspect = \"4:5\"", "delivered_aspect = \"4\"")),
        &["`delivered_aspect` is width to height", "such as \"4:5\", each number 0.01 to 100"],
    );
}

#[test]
fn a_misspelt_key() {
    let run = run_on(&["plan"], "shoot.toml", &changed("socket_below_mm = 42", "socket_blow_mm = 42"));
    refused(
        &run,
        &["camera \"full-frame\" has no `socket_blow_mm`", "did you mean `socket_below_mm`?", "1 mistake"],
    );
    let run = run_on(&["plan"], "shoot.toml", &changed("socket_below_mm = 42", "socket_below_in = 2"));
    refused(&run, &["did you mean `socket_below_mm`?", "another unit goes into the value"]);
    let run = run_on(&["plan"], "shoot.toml", &changed("[shoot]", "[setup]\nx = 1\n[shoot]"));
    refused(&run, &["a shoot file has no `setup`", "known here: shoot, camera, lens"]);
}

#[test]
fn a_missing_key() {
    let run = run_on(&["plan"], "shoot.toml", &changed("focal_length_mm = 35\n", ""));
    refused(
        &run,
        &["lens \"wide-35\" lacks `focal_length_mm`", "the marked focal length, for infinity; 1 to 3000 mm"],
    );
    let run = run_on(&["plan"], "shoot.toml", &changed("frame_width_mm = \"60 cm\"\n", ""));
    refused(&run, &["shot \"row-of-jars\" does not say how much the frame takes in"]);
}

#[test]
fn both_framings() {
    let text = changed("fill_height = 0.6", "fill_height = 0.6\nframe_width_mm = 200");
    let words = [
        "shot \"tumbler\" says in 2 ways how much the frame takes in",
        "exactly one of frame_width_mm, fill_width and fill_height",
    ];
    refused(&run_on(&["plan"], "shoot.toml", &text), &words);
}

#[test]
fn an_unknown_reference() {
    let text = changed("lens = \"macro-100\"", "lens = \"makro-100\"");
    refused(
        &run_on(&["plan"], "shoot.toml", &text),
        &["there is no lens \"makro-100\"", "did you mean `macro-100`?"],
    );
    let text = changed("table = \"worktop\"", "table = \"altar\"");
    refused(
        &run_on(&["plan"], "shoot.toml", &text),
        &["there is no table \"altar\"", "worktop, dining and plinth", "1 mistake"],
    );
    let text = changed("camera = \"full-frame\"\n", "").replace("[camera.full-frame]", "[camera.a.b]");
    refused(&run_on(&["plan"], "shoot.toml", &text), &["camera \"a\" has no `b`"]);
}

#[test]
fn two_shots_of_one_name() {
    let text = changed("name = \"toast\"", "name = \"layers\"");
    refused(&run_on(&["plan"], "shoot.toml", &text), &["two shots are called \"layers\"", "by this one"]);
}

/// What cannot be read off a rule is a slip: thirteen inches in a foot, a fraction of fractions.
#[test]
fn parts_that_are_none() {
    for (written, told) in [
        ("7 ft 13 in", "`13 in` after `ft` makes another `ft`"),
        ("7 ft 12 in", "`12 in` after `ft` makes another `ft`"),
        ("2 m 250 cm", "`250 cm` after `m` makes another `m`"),
        ("7 in 1 ft", "`ft` cannot follow `in`"),
        ("1/2.5 in", "a fraction of a unit is made of whole numbers"),
        ("3 1.5/2 in", "a fraction of a unit is made of whole numbers"),
        ("2.5½ in", "a fraction of a unit is made of whole numbers"),
        ("5'3", "`3` lacks its unit"),
        ("5 cm 3", "`3` lacks its unit"),
        ("1/2", "`1/2` lacks its unit"),
        ("1 000 mm", "`000 mm` follows a number without a unit"),
        ("1e3 mm", "a power of ten: write the number out"),
        ("1E-3 m", "a power of ten: write the number out"),
        ("1,500 mm", "nothing between thousands"),
    ] {
        let text = changed("front_mm = \"3.4 m\"", &format!("front_mm = \"{written}\""));
        refused(&run_on(&["plan"], "shoot.toml", &text), &[told]);
    }
    let text = changed("mass_kg = \"740 g\"", "mass_kg = \"1 lb 16 oz\"");
    refused(&run_on(&["plan"], "shoot.toml", &text), &["`16 oz` after `lb` makes another `lb`"]);
}

#[test]
fn contradictions() {
    let text = changed("highest_pivot_mm = \"1.75 m\"", "highest_pivot_mm = \"30 cm\"");
    let words = [
        "`highest_pivot_mm` lies under the lowest position",
        "expected 450 to 20000 mm",
        "in support \"tripod\"",
    ];
    refused(&run_on(&["plan"], "shoot.toml", &text), &words);
    let text = changed("tube_inside_mm = 35", "tube_inside_mm = 45");
    refused(
        &run_on(&["plan"], "shoot.toml", &text),
        &["`tube_inside_mm` leaves the tube no wall", "tube_inside_mm = 45"],
    );
    let text = changed("inside_diameter_mm = 178", "inside_diameter_mm = 200");
    refused(
        &run_on(&["plan"], "shoot.toml", &text),
        &["`inside_diameter_mm` is wider than the vessel's outside", "expected 0.1 to 190 mm"],
    );
}

#[test]
fn several_at_once() {
    let text = changed("leg_count = 3", "leg_count = 2").replace("hold = \"upright\"", "hold = \"left\"");
    refused(
        &run_on(&["plan"], "shoot.toml", &text),
        &["`leg_count` is too small", "`hold` cannot be", "4 mistakes"],
    );
}

#[test]
fn nothing_but_numbers() {
    for wrong in ["nan", "inf", "-inf", "1e999"] {
        let text = changed("elevation_deg = 60", &format!("elevation_deg = {wrong}"));
        refused(&run_on(&["plan"], "shoot.toml", &text), &["elevation_deg"]);
    }
    let json = r#"{"table": {"t": {"width_mm": 1e999, "depth_mm": 1, "height_mm": 1}}}"#;
    refused(
        &run_on(&["plan"], "shoot.json", json),
        &["`width_mm` must be a finite number", "expected 1 to 20000 mm"],
    );
    let json = r#"{"table": {"t": {"width_mm": NaN}}}"#;
    refused(&run_on(&["plan"], "shoot.json", json), &["this is not JSON"]);
}

#[test]
fn files_that_are_none() {
    refused(&run(&["plan", "no-such-file.toml"]), &["no-such-file.toml cannot be read", "tablerig example"]);
    refused(&run_on(&["plan"], "empty.toml", " \n"), &["empty.toml is empty"]);
    refused(&run_with(&["plan", "-"], ""), &["standard input is empty"]);
    let gear = "[table.t]\nwidth_mm = 1\ndepth_mm = 1\nheight_mm = 1\n";
    refused(&run_on(&["plan"], "gear.toml", gear), &["the file has no shots"]);
    let path = file("latin.toml", b"[shoot]\ntitle = \"Caf\xe9\"\n");
    let run = run(&["plan", path.to_str().expect("a plain path")]);
    refused(&run, &["is not UTF-8 text", "latin.toml:2:13", "byte 0xe9"]);
    refused(&run_on(&["plan"], "list.json", "[1, 2]"), &["a shoot file in JSON is one object"]);
    refused(&run_on(&["plan"], "twice.json", r#"{"shoot": {}, "shoot": {}}"#), &["`shoot` is given twice"]);
    refused(&run_on(&["plan"], "twice.toml", "[shoot]\n[shoot]\n"), &["`shoot` is given twice"]);
    let long = format!("{}#{}\n", demo(), "x".repeat(16 << 20));
    refused(&run_on(&["plan"], "long.toml", &long), &["long.toml goes on after 16 MB"]);
    refused(&run_with(&["plan", "-"], &long), &["standard input goes on after 16 MB"]);
    let deep = format!("{{\"a\": {}", "[".repeat(100_000));
    refused(&run_on(&["plan"], "deep.json", &deep), &["nesting depth"]);
    refused(&run_on(&["plan"], "deep.toml", &deep[1..].replace("\"a\":", "a =")), &["recursion depth"]);
}

#[test]
fn a_file_cut_short() {
    let words = ["this is not TOML", "may have been cut short"];
    refused(&run_on(&["plan"], "cut.toml", "[camera.a]\nsensor_width_mm = \"36 m"), &words);
    refused(&run_on(&["plan"], "cut.toml", "[[sho"), &words);
    let words = ["this is not JSON", "may have been cut short"];
    refused(&run_on(&["plan"], "cut.json", r#"{"camera": {"a": {"sensor_width_mm": 36,"#), &words);
    refused(&run_on(&["plan"], "cut.json", r#"{"camera": {"a": {"sens"#), &words);
}

/// Wherever the demo is cut, the command says something and ends in an orderly way.
#[test]
fn cut_anywhere() {
    let demo = demo();
    let cuts = (0..demo.len()).step_by(97).filter(|cut| demo.is_char_boundary(*cut));
    for cut in cuts {
        let run = run_with(&["plan", "-"], &demo[..cut]);
        assert!((0..=2).contains(&run.status), "cut at {cut}: {} {}", run.status, run.err);
        assert_eq!(run.status == 2, run.out.is_empty(), "cut at {cut}: {}", run.err);
    }
}

/// Whatever value of the demo becomes no number, it is refused by its own name.
#[test]
fn no_value_may_be_no_number() {
    let demo = demo();
    let lines: Vec<&str> = demo.lines().collect();
    let mut tried = 0;
    for (index, line) in lines.iter().enumerate() {
        let Some((key, _)) = line.split_once(" = ").filter(|(key, _)| !key.starts_with('#')) else {
            continue;
        };
        let spoilt = format!("{key} = nan");
        let mut text = lines.clone();
        text[index] = &spoilt;
        let run = run_with(&["plan", "-"], &text.join("\n"));
        assert_eq!(run.status, 2, "line {}: {line}", index + 1);
        assert!(run.err.contains(&format!("`{key}`")), "line {}: {}", index + 1, run.err);
        tried += 1;
    }
    assert!(tried > 120, "only {tried} lines were tried");
}

#[test]
fn wrong_flags() {
    refused(&run(&["shot", "suop"]), &["there is no shot \"suop\"", "did you mean soup?"]);
    refused(&run(&["fields", "cam"]), &["there is no kind \"cam\""]);
    refused(&run(&["plan", "--units", "ells"]), &["invalid value 'ells'"]);
    refused(
        &run(&[
            "ask",
            "magnification",
            "--sensor-distance",
            "60 kg",
            "--focal-length",
            "50",
            "--sensor",
            "36",
        ]),
        &["where a length is wanted"],
    );
    refused(
        &run(&["ask", "magnification", "--sensor-distance", "60 cm", "--sensor", "36"]),
        &["which lens?"],
    );
    refused(
        &run(&["sweep", "elevation", "--from", "0", "--to", "100", "--step", "50"]),
        &["--to 100 deg is too large", "expected -60 to 90 deg"],
    );
    refused(
        &run(&["sweep", "elevation", "--from", "0", "--to", "90", "--step", "0.001"]),
        &["more than 1000 rows"],
    );
    refused(&run(&["advise", "--height", "10cm"]), &["which subject?"]);
}
