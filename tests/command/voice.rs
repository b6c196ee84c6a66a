//! In what voice figures are told: what is not to be set, what does not stand, and what a figure is held
//! against.

use super::run::{demo, run, run_on, run_with};

/// What stops a shot is met before its figures, which are in brackets, and so is what would help.
#[test]
fn an_impossible_shots_figures_are_marked() {
    let text = run(&["plan"]).out;
    let blocks: Vec<&str> =
        text.split("\n\n").filter(|block| block.contains("  Camera") || block.contains("(Camera)")).collect();
    assert_eq!(blocks.len(), 11);
    for block in blocks {
        let stopped = block.contains("\n  stop ");
        assert_eq!(stopped, block.starts_with("breakfast-long:"), "{block}");
        assert_eq!(stopped, block.contains("Cannot be set up as asked."), "{block}");
        for label in ["Camera", "Frame", "Stand", "Tips", "Focus"] {
            assert_eq!(stopped, block.contains(&format!("\n  ({label})")), "{label}: {block}");
            assert_eq!(!stopped, block.contains(&format!("\n  {label} ")), "{label}: {block}");
        }
        if stopped {
            let at = |words: &str| block.find(words).unwrap_or_else(|| panic!("no `{words}`:\n{block}"));
            assert!(at("\n  stop ") < at("\n  instead ") && at("\n  instead ") < at("(Camera)"), "{block}");
        }
    }
    let row = text.lines().find(|line| line.starts_with("  breakfast-long ")).expect("it has a row");
    assert_eq!(row.matches('(').count(), 4, "{row}");
    let measured = ["set", "breakfast-long", "--sensor-distance", "365 cm", "--elevation", "90"];
    let set = run(&measured).out;
    assert!(
        set.find("\n  stop ") < set.find("if it could be set up")
            && set.contains("Cannot be set up as asked"),
        "{set}"
    );
}

/// What is left out for want of room is not explained, is named, and is never the tilt that tips a stand.
#[test]
fn a_legend_tells_of_the_columns_that_are_there() {
    for (arguments, gone, left) in [
        (&["plan", "--units", "ft-in"][..], "No room here for: Opening, Lens", "Tips at"),
        (&["sweep", "lens", "--units", "ft-in"], "No room here for: Sharp, Opening", "Tips at"),
    ] {
        let text = run(arguments).out;
        let flowing = text.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(flowing.contains(gone), "{arguments:?} lacks `{gone}`:\n{text}");
        let heads = text.lines().find(|line| line.contains("Worst")).expect("a row of headings");
        assert!(heads.contains(left) && flowing.contains("Tips at: the tilt"), "{heads}");
        assert!(!flowing.contains("Sharp: in front"), "{text}");
        assert!(flowing.contains("a warning under 10°, a stop under 5°"), "{text}");
    }
    let roomy = run(&["plan"]).out;
    assert!(!roomy.contains("No room here"), "{roomy}");
}

/// Each note has its value and its limit.
#[test]
fn notes_have_their_figures() {
    let text = run(&["plan"]).out;
    let notes: Vec<&str> = text.lines().filter(|line| line.starts_with("  note ")).collect();
    assert!(notes.len() > 15);
    for note in notes {
        // With its limit, but for a load overhead, where any is worth knowing.
        let limited = note.contains('(') || note.contains(" overhead: ");
        assert!(note.chars().any(|c| c.is_ascii_digit()) && limited, "{note}");
    }
}

/// The demo with far too much on the tail of its stand, and no pieces at hand to put in its place.
fn unbalanced() -> String {
    let demo = demo();
    let pieces = |line: &&str| line.starts_with("counterweights =") || line.starts_with("base_weights =");
    assert_eq!(demo.lines().filter(pieces).count(), 2);
    let rest: Vec<&str> = demo.lines().filter(|line| !pieces(line)).collect();
    rest.join("\n").replace("counterweight_kg = \"1.5 kg\"", "counterweight_kg = \"60 kg\"")
}

/// What needs no tilt to tip has none: a negative angle would be read over.
#[test]
fn what_does_not_stand_falls() {
    let plan = run_with(&["plan", "-"], &unbalanced());
    let glaze =
        plan.out.split("\n\n").find(|block| block.starts_with("glaze:")).expect("it is there").to_string();
    assert!(glaze.contains("it falls"), "{glaze}");
    let shot = run_with(&["shot", "glaze", "-"], &unbalanced()).out;
    let states: Vec<&str> = shot.lines().filter(|line| line.starts_with("  camera off ")).collect();
    assert!(states.len() == 1 && states[0].matches("falls").count() == 2, "{states:?}");
    for text in [&plan.out, &shot] {
        assert!(!text.contains("at -") && !text.contains("-1 N"), "{text}");
    }
}

/// The smallest change only clears what stops: where planning again still warns, it says so.
#[test]
fn a_change_that_leaves_a_warning_says_so() {
    let told = run_with(&["plan", "-"], &unbalanced()).out;
    let flowing = told.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(flowing.contains("Warnings remain.") && flowing.contains("then Plan it again"), "{told}");
    // Of the demo's two changes one cuts the subject.
    let told = run(&["plan"]).out;
    let remaining = told.lines().filter(|line| line.contains("Warnings remain."));
    assert!(
        remaining.clone().count() == 1 && remaining.clone().all(|line| line.contains("A narrower frame"))
    );
}

/// A bay booked as it was asked for, in whatever unit it was printed, holds the shots: rounded to the nearest the
/// ceiling could be a hair too low.
#[test]
fn a_booked_bay_is_large_enough() {
    for (index, units) in ["cm", "in", "ft-in", "m"].into_iter().enumerate() {
        for width in [121.03_f64, 122.17, 123.31, 124.48] {
            let text = demo().replace("1.25 m", &format!("{} cm", width + index as f64 * 0.07));
            let arguments = ["book", "--units", units, "--leave-out", "breakfast-long"];
            let asked = run_on(&arguments, "shoot.toml", &text).out.replace('\u{a0}', " ");
            let after = |label: &str| {
                let line = asked.lines().find(|line| line.contains(label)).expect("it is asked for");
                let value = line[line.find(label).expect("there") + label.len()..].trim();
                value.split(" (").next().expect("a value").to_owned()
            };
            let booked = text
                .replace("ceiling_mm = \"9 ft\"", &format!("ceiling_mm = \"{}\"", after("ceiling, at least")))
                .replace("front_mm = \"3.4 m\"", &format!("front_mm = \"{}\"", after("to front wall")))
                .replace("right_mm = \"3.1 m\"", &format!("right_mm = \"{}\"", after("to right wall")))
                .replace("back_mm = \"2.2 m\"", &format!("back_mm = \"{}\"", after("to back wall")))
                .replace("left_mm = \"2.6 m\"", &format!("left_mm = \"{}\"", after("to left wall")));
            assert!(!booked.contains("9 ft\""), "the ceiling was exchanged");
            let fit = run_on(&["fit", "--leave-out", "breakfast-long"], "shoot.toml", &booked);
            assert_eq!(fit.status, 0, "{units}, {width}: {asked}\n{}{}", fit.out, fit.err);
        }
    }
}

/// A change that helps only between two printed digits says so: set as printed it may still be stopped.
#[test]
fn a_change_with_no_room_beyond_it_says_so() {
    let text = demo();
    let (before, tiles) = text.split_once("name = \"tiles\"").expect("a shot");
    let (tiles, after) = tiles.split_once("[[shot]]").expect("another after it");
    let tiles = tiles
        .replace("elevation_deg = 45", "elevation_deg = 0")
        .replace("\"tilt-90\"", "\"macro-180\"")
        .replace("frame_width_mm = \"50 cm\"", "frame_width_mm = 544.1");
    let text = format!("{before}name = \"tiles\"{tiles}[[shot]]{after}");
    let told = run_on(&["shot", "tiles"], "shoot.toml", &text).out;
    let told: Vec<&str> = told.split_whitespace().collect();
    let told = told.join(" ");
    assert!(
        told.contains(
            "A higher elevation: 21.5°, now 0° (21.5° more). Only just: any further, something else stops it."
        ),
        "{told}"
    );
    assert!(told.contains("A narrower frame: 51.0 cm, now 54.4 cm (3.4 cm less). Warnings"), "{told}");
}
