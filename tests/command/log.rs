//! `tablerig set --write`: adds to the file's log and touches nothing else.

use super::run::{demo, file, run, run_on, run_with};

const MEASURED: [&str; 4] = ["--sensor-distance", "1552 mm +- 2", "--elevation", "60.4 +- 0.1"];

fn set<'a>(shot: &'a str, path: &'a str, more: &[&'a str]) -> Vec<&'a str> {
    let mut arguments = Vec::from(["set", shot, path]);
    arguments.extend(MEASURED);
    arguments.extend(more);
    arguments
}

/// Everything that was there stands there still, byte for byte, and what follows says what was measured.
fn appended(name: &str, text: &str) -> String {
    let path = file(name, text.as_bytes());
    let to = path.to_str().expect("a plain path");
    let first =
        run(&set("soup", to, &["--roll", "-0.2 +- 0.05", "--write", "--note", "after \"tea\"\\ & more"]));
    assert_eq!((first.status, first.err.as_str()), (0, ""), "{}", first.out);
    let written = std::fs::read_to_string(&path).expect("it is there");
    let shown = run(&["set", "soup", to]);
    assert_eq!(shown.status, 0, "{}", shown.err);
    assert!(shown.out.contains("As last written in the file's log"), "{}", shown.out);
    // The same verdict, to the last figure.
    assert_eq!(
        shown.out.split("To correct").next().expect("a part"),
        first.out.split("To correct").next().expect("a part"),
    );
    let second = run(&set("soup", to, &["--write"]));
    assert!(second.out.contains("entry 2"), "{}{}", second.out, second.err);
    assert_eq!(std::fs::read_dir(path.parent().expect("a folder")).expect("it can be read").count(), 1);
    written
}

#[test]
fn toml_is_kept_byte_for_byte() {
    for (name, text) in [
        ("plain.toml", demo()),
        ("dos.toml", demo().replace('\n', "\r\n")),
        ("open.toml", demo().trim_end().to_owned()),
        ("mark.toml", format!("\u{feff}{}", demo())),
    ] {
        let written = appended(name, &text);
        let added =
            written.strip_prefix(&text).unwrap_or_else(|| panic!("{name} was changed before its end"));
        assert!(
            added.contains("[[log]]") && added.contains("sensor_distance_mm = \"1552 mm ± 2 mm\""),
            "{added}"
        );
        assert_eq!(name == "dos.toml", added.contains("\r\n"), "the file's own line ends");
    }
}

/// In JSON the entry goes into the object: what stands before it and after it is kept.
#[test]
fn json_is_kept_byte_for_byte() {
    let text = r#"{
  "camera": {"c": {"sensor_width_mm": 36, "sensor_height_mm": 24, "socket_ahead_mm": 1, "socket_below_mm": 40, "body_above_mm": 60, "mass_kg": 0.7}},
  "lens":   {"l": {"focal_length_mm": 100, "least_f_number": 2.8, "most_f_number": 32, "mass_kg": 0.6, "centre_ahead_mm": 80}},
  "table":  {"t": {"width_mm": 1400, "depth_mm": 800, "height_mm": 760}},
  "support": {"s": {"lowest_pivot_mm": 300, "highest_pivot_mm": 2500, "column_radius_mm": 15, "leg_count": 3, "foot_radius_mm": 600,
     "legs_top_mm": 1100, "mass_kg": 4, "centre_height_mm": 600, "head": {"mass_kg": 0.5, "pivot_below_socket_mm": 90}}},
  "shot": [{"name": "soup", "elevation_deg": 60, "frame_width_mm": 500, "subject": {"diameter_mm": 190, "height_mm": 85}}]
}
"#;
    let path = file("shoot.json", text.as_bytes());
    let to = path.to_str().expect("a plain path");
    for entry in ["entry 1", "entry 2"] {
        let run = run(&set("soup", to, &["--write"]));
        assert!(run.err.is_empty() && run.out.contains(entry), "{}{}", run.out, run.err);
    }
    let written = std::fs::read_to_string(&path).expect("it is there");
    let start = text.trim_end().trim_end_matches('}').trim_end();
    assert!(written.starts_with(start) && written.ends_with("]\n}\n"), "{written}");
    assert_eq!(written.matches("\"shot\": \"soup\"").count(), 2);
}

#[test]
fn nothing_is_written_where_something_is_wrong() {
    let text = demo();
    let path = file("shoot.toml", text.as_bytes());
    let to = path.to_str().expect("a plain path");
    for (arguments, words) in [
        (set("soop", to, &["--write"]), "did you mean soup?"),
        (Vec::from(["set", "soup", to, "--elevation", "60", "--write"]), "do not tell where the camera is"),
        (
            Vec::from(["set", "soup", to, "--sensor-distance", "50", "--elevation", "95", "--write"]),
            "--elevation 95 deg is too large",
        ),
        (Vec::from(["set", "soup", to]), "the log has nothing of soup"),
        (Vec::from(["set", "soup", to, "--note", "n"]), "--write"),
        (set("soup", to, &["--write", "--note", " \u{2028}"]), "a note is a text, not empty"),
    ] {
        let run = run(&arguments);
        assert!(run.status == 2 && run.err.contains(words), "{arguments:?}: {}", run.err);
        assert_eq!(std::fs::read_to_string(&path).expect("it is there"), text);
    }
    let own = run(&[&["set", "soup"][..], &MEASURED, &["--write"]].concat());
    assert!(own.status == 2 && own.err.contains("--write needs a shoot file of your own"), "{}", own.err);
    let piped = run_with(&set("soup", "-", &["--write"]), &text);
    assert!(
        piped.status == 2 && piped.err.contains("--write needs a shoot file of your own"),
        "{}",
        piped.err
    );
}

/// A log in one line cannot be added to without rewriting it: refused, not mangled.
#[test]
fn a_log_in_one_line_is_left_alone() {
    let text = format!("log = [{{ shot = \"soup\", roll_deg = 0.1 }}]\n{}", demo());
    let path = file("shoot.toml", text.as_bytes());
    let run = run(&set("soup", path.to_str().expect("a plain path"), &["--write"]));
    assert!(run.status == 2 && run.err.contains("cannot be added to as it is written"), "{}", run.err);
    assert_eq!(std::fs::read_to_string(&path).expect("it is there"), text);
}

/// A folder in which nothing can be made: the file stays, and nothing is left beside it.
#[cfg(unix)]
#[test]
fn a_folder_that_cannot_be_written_to() {
    use std::os::unix::fs::PermissionsExt;
    let text = demo();
    let path = file("shoot.toml", text.as_bytes());
    let folder = path.parent().expect("a folder").to_path_buf();
    let allow =
        |mode| std::fs::set_permissions(&folder, std::fs::Permissions::from_mode(mode)).expect("it is ours");
    allow(0o555);
    // Whoever may do everything is not kept out.
    let kept_out = std::fs::write(folder.join("try"), b"").is_err();
    let run = run(&set("soup", path.to_str().expect("a plain path"), &["--write"]));
    allow(0o755);
    if kept_out {
        assert!(run.status == 3 && run.err.contains("nothing was changed"), "{}", run.err);
        assert_eq!(std::fs::read_to_string(&path).expect("it is there"), text);
        assert_eq!(std::fs::read_dir(&folder).expect("it can be read").count(), 1);
    }
}

#[cfg(unix)]
#[test]
fn links_and_permissions_are_kept() {
    use std::os::unix::fs::PermissionsExt;
    let path = file("shoot.toml", demo().as_bytes());
    std::fs::set_permissions(&path, std::fs::Permissions::from_mode(0o640)).expect("it is ours");
    let link = path.with_file_name("link.toml");
    std::os::unix::fs::symlink(&path, &link).expect("a link can be made");
    let run = run(&set("soup", link.to_str().expect("a plain path"), &["--write"]));
    assert_eq!((run.status, run.err.as_str()), (0, ""));
    assert!(std::fs::symlink_metadata(&link).expect("it is there").is_symlink());
    assert!(std::fs::read_to_string(&path).expect("it is there").contains("[[log]]"));
    assert_eq!(std::fs::metadata(&path).expect("it is there").permissions().mode() & 0o777, 0o640);
}

/// Within is 0; outside, and what cannot be told, is 1.
#[test]
fn verdicts_and_their_status() {
    let judged = |elevation: &str| {
        let run = run(&["set", "soup", "--sensor-distance", "1554 +- 1", "--elevation", elevation]);
        (run.status, run.out.lines().next().unwrap_or_default().to_owned())
    };
    assert_eq!(judged("60 +- 0.1"), (0, "soup: within its tolerances".into()));
    assert_eq!(judged("63 +- 0.1"), (1, "soup: outside its tolerances".into()));
    let (status, told) = judged("60.9 +- 0.5");
    assert!(status == 1 && told.contains("too coarsely"), "{told}");
    // The correction leads back: a shot measured as planned needs none.
    let text =
        run_on(&["set", "soup", "--sensor-distance", "1554", "--elevation", "62"], "shoot.toml", &demo()).out;
    assert!(text.contains("down") && text.contains("further up"), "{text}");
}
