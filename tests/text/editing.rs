//! A shoot file's text is edited and nothing else in it changes.

use serde_json::{Value, json};

use crate::ask::{asked, demo, place, refused};

/// The lines that one text has and the other has not, in order.
fn changed(before: &str, after: &str) -> (Vec<String>, Vec<String>) {
    let only = |one: &str, other: &str| {
        let mut rest: Vec<&str> = other.lines().collect();
        let lines = one.lines().filter(|line| match rest.iter().position(|known| known == line) {
            Some(place) => {
                rest.remove(place);
                false
            }
            None => true,
        });
        lines.map(str::to_owned).collect::<Vec<_>>()
    };
    (only(before, after), only(after, before))
}

fn edit(path: Value, value: Value) -> (Vec<String>, Vec<String>) {
    let edited = asked("edit", json!({ "shoot": demo(), "edits": [{ "path": path, "value": value }] }));
    assert_eq!(edited["rest_kept"], true, "{path}");
    changed(&demo(), edited["text"].as_str().unwrap())
}

fn lines(lines: &[&str]) -> Vec<String> {
    lines.iter().map(|line| (*line).to_owned()).collect()
}

#[test]
fn one_value_changes_one_line() {
    assert_eq!(
        edit(json!(["shot", place("soup"), "elevation_deg"]), json!(65)),
        (lines(&["elevation_deg = 60"]), lines(&["elevation_deg = 65"]))
    );
    // The comment after the value stays.
    let (before, after) = edit(json!(["table", "worktop", "underside"]), json!("closed"));
    assert_eq!(before.len(), 1);
    assert_eq!(after[0], before[0].replace("open\"", "closed\""));
    assert_eq!(
        edit(json!(["shot", place("soup"), "f_number"]), json!("f/8")),
        (lines(&[]), lines(&["f_number = \"f/8\""]))
    );
    assert_eq!(
        edit(json!(["shot", place("row-of-jars"), "support"]), Value::Null),
        (lines(&["support = \"tripod\""]), lines(&[]))
    );
    // Quotes and backslashes are still themselves.
    let title = "a \"b\" \\ c\n½";
    let edited =
        asked("edit", json!({ "shoot": demo(), "edits": [{ "path": ["shoot", "title"], "value": title }] }));
    assert_eq!(asked("read", json!({ "shoot": edited["text"] }))["shoot"]["shoot"]["title"], title);
}

#[test]
fn tables_come_and_go() {
    let lens = json!({ "focal_length_mm": 60, "mass_kg": "1 kg" });
    let new = ["[lens.\"a new one\"]", "focal_length_mm = 60", "mass_kg = \"1 kg\"", ""];
    assert_eq!(edit(json!(["lens", "a new one"]), lens), (lines(&[]), lines(&new)));
    let shot = json!({ "name": "new", "elevation_deg": 5.5 });
    let new = ["", "[[shot]]", "name = \"new\"", "elevation_deg = 5.5"];
    let count = asked("read", json!({ "shoot": demo() }))["shoot"]["shot"].as_array().unwrap().len();
    assert_eq!(edit(json!(["shot", count]), shot), (lines(&[]), lines(&new)));
    let (gone, new) = edit(json!(["table", "dining"]), Value::Null);
    assert_eq!(new, lines(&[]));
    assert_eq!(gone[0], "[table.dining]");
    assert!(gone.iter().all(|line| !line.starts_with('#')), "{gone:?}");
}

/// The lines around a heading that was added to the invented shoot.
fn around(path: Value, value: Value, heading: &str) -> Vec<String> {
    let edited = asked("edit", json!({ "shoot": demo(), "edits": [{ "path": path, "value": value }] }));
    assert_eq!(edited["rest_kept"], true, "{path}");
    let text = edited["text"].as_str().unwrap();
    let (before, after) = changed(&demo(), text);
    assert_eq!(before, lines(&[]), "{path}");
    assert!(after.contains(&heading.to_owned()), "{after:?}");
    let all: Vec<&str> = text.lines().collect();
    let at = all.iter().rposition(|line| *line == heading).unwrap();
    lines(&all[at - 2..(at + 3).min(all.len())])
}

/// A table is put where a person would write it: with what it belongs to.
#[test]
fn a_table_stands_with_what_it_belongs_to() {
    assert_eq!(
        around(
            json!(["support", "tripod", "boom"]),
            json!({ "longest_reach_mm": "90 cm", "mass_kg": 1 }),
            "[support.tripod.boom]"
        ),
        [
            "rated_load_kg = \"8 kg\"",
            "",
            "[support.tripod.boom]",
            "longest_reach_mm = \"90 cm\"",
            "mass_kg = 1"
        ]
    );
    assert_eq!(
        around(
            json!(["support", "tripod", "sandbags"]),
            json!([{ "mass_kg": 7, "out_mm": 0 }]),
            "[[support.tripod.sandbags]]"
        ),
        ["rated_load_kg = \"8 kg\"", "", "[[support.tripod.sandbags]]", "mass_kg = 7", "out_mm = 0"]
    );
    // The comment after the last value of its owner stays on its line.
    assert_eq!(
        around(json!(["table", "stool"]), json!({ "width_mm": 400, "depth_mm": 400 }), "[table.stool]"),
        [
            "underside = \"closed\"        # a box: feet stay outside",
            "",
            "[table.stool]",
            "width_mm = 400",
            "depth_mm = 400"
        ]
    );
    // Inside one shot of several.
    assert_eq!(
        around(
            json!(["shot", place("tiles"), "note_of_its_own"]),
            json!({ "a": 1, "b": 2 }),
            "[shot.note_of_its_own]"
        ),
        ["height_mm = 9", "", "[shot.note_of_its_own]", "a = 1", "b = 2"]
    );
    // The first entry of a log is written as the next ones are.
    assert_eq!(
        around(json!(["log"]), json!([{ "shot": "soup", "note": "one" }]), "[[log]]")[1..],
        ["", "[[log]]", "shot = \"soup\"", "note = \"one\""]
    );
}

/// Edits one after another say what the tree says, whatever of the text is kept.
#[test]
fn every_edit_says_what_was_asked() {
    let edits = json!([
        { "path": ["lens", "wide-35"], "value": null },
        { "path": ["shot", 2], "value": null },
        { "path": ["shot", place("row-of-jars"), "subject"], "value": { "diameter_mm": 10, "height_mm": "2 cm" } },
        { "path": ["shot", place("row-of-jars"), "subject", "height_mm"], "value": 30 },
        { "path": ["bay"], "value": null },
    ]);
    let mut wanted = asked("read", json!({ "shoot": demo() }))["shoot"].clone();
    wanted["lens"].as_object_mut().unwrap().shift_remove("wide-35");
    wanted["shot"].as_array_mut().unwrap().remove(2);
    wanted["shot"][0]["subject"] = json!({ "diameter_mm": 10, "height_mm": 30 });
    wanted.as_object_mut().unwrap().shift_remove("bay");
    for form in ["toml", "json"] {
        let text = asked("write", json!({ "shoot": demo(), "form": form }))["text"].clone();
        let edited = asked("edit", json!({ "shoot": text, "edits": edits }));
        let read = asked("read", json!({ "shoot": edited["text"] }));
        assert_eq!(read["shoot"], wanted, "{form}");
    }
}

#[test]
fn edits_without_a_place_are_refused() {
    for path in
        [json!([]), json!(["shot", 99, "name"]), json!(["shot", "name"]), json!(["lens", "no", "mass_kg"])]
    {
        let keys = json!({ "shoot": demo(), "edits": [{ "path": path, "value": 1 }] });
        let mistakes = refused("edit", keys);
        assert_eq!(mistakes[0]["path"], json!(["edits", 0, "path"]), "{path}");
    }
    assert_eq!(
        refused("edit", json!({ "shoot": demo(), "edits": [{ "path": ["a"] }] }))[0]["kind"],
        "wrong_kind"
    );
    assert_eq!(refused("edit", json!({ "shoot": "a = ", "edits": [] }))[0]["in"], "shoot");
}
