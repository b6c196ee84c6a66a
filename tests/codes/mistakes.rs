//! Every sort of mistake in a shoot file, each out of a file that has it, by the library and by the text door.

use serde_json::{Value, json};
use tablerig::doors::text::answer;
use tablerig::shootfile::problem::ProblemKind;
use tablerig::shootfile::{DEMO, Form, read};

use crate::sources::{all_reached, variants};

fn asked(request: &Value) -> Value {
    serde_json::from_str(&answer(&request.to_string())).unwrap()
}

/// One piece of the demo exchanged, and the mistake that this makes.
const MISTAKES: &[(ProblemKind, &str, &str)] = &[
    (ProblemKind::Refused, "elevation_deg = 60", "elevation_deg = 600"),
    (ProblemKind::NotReadable, "[shoot]", "[shoot"),
    (ProblemKind::UnknownKey, "socket_below_mm = 42", "socket_blow_mm = 42"),
    (ProblemKind::UnknownWord, "hold = \"upright\"", "hold = \"uprigt\""),
    (ProblemKind::UnknownName, "lens = \"macro-100\"", "lens = \"makro-100\""),
    (ProblemKind::WrongKind, "elevation_deg = 60", "elevation_deg = true"),
    (ProblemKind::NoQuantity, "mass_kg = \"740 g\"", "mass_kg = \"740 mm\""),
    (ProblemKind::Lacking, "focal_length_mm = 35\n", ""),
    (ProblemKind::Conflicting, "fill_height = 0.6", "fill_height = 0.6\nframe_width_mm = 200"),
    (ProblemKind::Repeated, "name = \"toast\"", "name = \"layers\""),
    (
        ProblemKind::TooMany,
        "[[support.boom-stand.sandbags]]",
        "BAG\nBAG\nBAG\n[[support.boom-stand.sandbags]]",
    ),
    (ProblemKind::Undecided, "table = \"worktop\"\n", ""),
];
const BAG: &str =
    "[[support.boom-stand.sandbags]]\nmass_kg = 1\nout_mm = 0\ndirection_deg = 0\nheight_mm = 100";

#[test]
fn every_sort_of_mistake_is_made_in_some_file() {
    assert!(read(DEMO, Form::Toml).is_ok());
    let mut told = Vec::new();
    for (kind, from, to) in MISTAKES {
        assert!(DEMO.contains(from), "the demo has no `{from}`");
        let text = DEMO.replacen(from, &to.replace("BAG", BAG), 1);
        let problems = read(&text, Form::Toml).expect_err(to);
        assert!(problems.iter().any(|problem| problem.kind == *kind), "{kind:?}: {problems:?}");
        let reply = asked(&json!({ "operation": "plan_shoot", "shoot": text }));
        let numbers: Vec<i64> =
            reply["mistakes"].as_array().unwrap().iter().map(|it| it["number"].as_i64().unwrap()).collect();
        // A refused number comes out of the text door under the number of its fault.
        let number = if *kind == ProblemKind::Refused { 103 } else { *kind as i64 };
        assert!(numbers.contains(&number), "{kind:?}: {numbers:?}");
        told.push(*kind as i32);
    }
    all_reached("src/shootfile/problem.rs", "ProblemKind", told);
}

/// The numbers of mistakes and of faults are two families: none is in both.
#[test]
fn mistakes_and_faults_do_not_share_numbers() {
    let faults = variants("src/fault.rs", "FaultKind");
    let mistakes = variants("src/shootfile/problem.rs", "ProblemKind");
    assert!(
        faults.iter().all(|(_, number)| *number < 400) && mistakes.iter().all(|(_, number)| *number >= 400)
    );
    let mut numbers: Vec<i32> = mistakes.iter().map(|(_, number)| *number).collect();
    numbers.dedup();
    assert_eq!(numbers.len(), mistakes.len());
}
