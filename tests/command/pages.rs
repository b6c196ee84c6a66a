//! What the command prints of the demo, held against the files in `tests/golden`. After a wanted change
//! run the tests with `TABLERIG_BLESS=1` and read what git shows.

use std::path::Path;

use super::run::{run, run_unread};

fn golden(name: &str, arguments: &[&str], status: i32) {
    let run = run(arguments);
    assert_eq!((run.status, run.err.as_str()), (status, ""), "{arguments:?}");
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/golden").join(name);
    if std::env::var_os("TABLERIG_BLESS").is_some() {
        std::fs::write(&path, &run.out).expect("the golden file can be written");
    }
    let kept = std::fs::read_to_string(&path).expect("the golden file is there");
    assert_eq!(run.out, kept, "{name} is not what `tablerig {}` prints", arguments.join(" "));
}

#[test]
fn demo_plan() {
    golden("plan.txt", &[], 1);
}

#[test]
fn shots_in_full() {
    golden("shot-row-of-jars.txt", &["shot", "row-of-jars"], 0);
    golden("shot-glaze.txt", &["shot", "glaze"], 0);
    golden("shot-breakfast-long-ft-in.txt", &["shot", "breakfast-long", "--units", "ft-in"], 1);
}

#[test]
fn sweeps() {
    let elevation = ["sweep", "elevation", "--from", "0", "--to", "90", "--step", "15", "--shot", "soup"];
    golden("sweep-elevation.txt", &elevation, 0);
    golden("sweep-lens-in.txt", &["sweep", "lens", "--shot", "breakfast", "--units", "in"], 0);
}

#[test]
fn questions() {
    golden("ask-ceiling.txt", &["ask", "ceiling", "--shot", "breakfast-long"], 0);
    golden("advise-soup-bowl.txt", &["advise", "--subject", "soup-bowl"], 0);
}

#[test]
fn fields() {
    golden("fields-subject.txt", &["fields", "subject"], 0);
    golden("fields-shot.txt", &["fields", "shot"], 0);
}

#[test]
fn whole_shoot() {
    golden("choose-loaf.txt", &["choose", "loaf"], 0);
    golden("choose-breakfast-long.txt", &["choose", "breakfast-long", "--open", "side"], 1);
    golden("fit.txt", &["fit"], 1);
    golden("book.txt", &["book"], 0);
    golden("order.txt", &["order"], 0);
    let measured = [
        "--sensor-height",
        "213.5 cm ± 3 mm",
        "--horizontal-distance",
        "79 cm ± 4 mm",
        "--roll",
        "0.7° ± 0.1°",
    ];
    golden("set-soup.txt", &[&["set", "soup"][..], &measured].concat(), 1);
    golden("fields-kit.txt", &["fields", "kit"], 0);
    golden("fields-log.txt", &["fields", "log"], 0);
}

#[test]
fn the_demo_is_one_file_and_one_plan() {
    assert_eq!(run(&[]).out, run(&["plan"]).out);
    let path = super::run::file("demo.toml", super::run::demo().as_bytes());
    let own = run(&["plan", path.to_str().expect("a plain path")]);
    assert_eq!((own.status, own.out), (1, run(&[]).out));
}

#[test]
fn cautions_stand_beside_the_loads() {
    for arguments in [
        &["plan"][..],
        &["shot", "glaze"],
        &["shot", "row-of-jars"],
        &["sweep", "lens"],
        &["choose", "loaf"],
        &["fit"],
        &["book"],
        &["sheet"],
    ] {
        let text = run(arguments).out;
        for words in ["makers' ratings", "local codes apply", "qualified rigger decides"] {
            assert!(text.contains(words), "{arguments:?} lacks `{words}`");
        }
    }
    for arguments in [
        &["plan", "--json"][..],
        &["shot", "glaze", "--json"],
        &["choose", "loaf", "--json"],
        &["fit", "--json"],
        &["book", "--json"],
    ] {
        assert!(run(arguments).out.contains("qualified rigger decides"), "{arguments:?}");
    }
}

#[test]
fn no_line_is_wider_than_asked_for() {
    for columns in ["80", "100", "110"] {
        for arguments in [
            &["plan"][..],
            &["shot", "glaze"],
            &["fields"],
            &["sweep", "lens"],
            &["choose", "loaf"],
            &["choose", "breakfast-long", "--open", "side"],
            &["fit"],
            &["book"],
            &["order"],
            &["plan", "--units", "ft-in"],
            &["sweep", "elevation", "--from", "0", "--to", "90", "--step", "15", "--units", "ft-in"],
        ] {
            let mut command = std::process::Command::new(env!("CARGO_BIN_EXE_tablerig"));
            let output = command.args(arguments).env("COLUMNS", columns).output().expect("it runs");
            let text = String::from_utf8(output.stdout).expect("it prints UTF-8");
            let most: usize = columns.parse().expect("a number");
            for line in text.lines() {
                assert!(line.chars().count() <= most, "{arguments:?} at {columns}: {line}");
                assert_eq!(line, line.trim_end(), "{arguments:?}");
            }
        }
    }
}

#[test]
fn colour_only_where_wanted() {
    let escape = '\u{1b}';
    assert!(!run(&["plan"]).out.contains(escape), "a pipe is no terminal");
    assert!(run(&["plan", "--color", "always"]).out.contains(escape));
    assert!(!run(&["plan", "--color", "never"]).out.contains(escape));
    assert!(!run(&["plan", "missing.toml"]).err.contains(escape));
    assert!(run(&["plan", "missing.toml", "--color", "always"]).err.contains(escape));
    assert!(!run(&["plan", "--json", "--color", "always"]).out.contains(escape), "JSON has no colours");
}

#[test]
fn nobody_reading_is_no_failure() {
    let run = run_unread(&["fields", "--json"]);
    assert_eq!((run.status, run.err.as_str()), (0, ""));
}
