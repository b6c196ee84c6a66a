//! Results as JSON: names with units, infinity as a word.

use serde_json::Value;
use tablerig::plan::plan;
use tablerig::scene::bay::Bay;
use tablerig::shoot::booking::{Listed, booking};
use tablerig::shoot::change::ChangeKind;
use tablerig::shoot::choose::choose;
use tablerig::shoot::fit::fit;
use tablerig::shoot::kit::{Candidate, Kit};
use tablerig::shoot::pieces::PieceSize;
use tablerig::shoot::pull::pull_list;
use tablerig::shoot::room::RoomNeed;
use tablerig::shoot::smallest::smallest_change;
use tablerig::shoot::weights::Stock;

use crate::workshop;

fn told(value: impl serde::Serialize) -> Value {
    serde_json::to_value(value).unwrap()
}

#[test]
fn infinity_is_a_word() {
    let brief = workshop::slanting();
    let need = RoomNeed::of(&brief, &plan(&brief).unwrap());
    let fits = told(fit(&Bay::OPEN, &need, 0));
    assert_eq!(fits["walls_left_mm"][0], "infinite");
    assert_eq!(fits["moves"]["least_right_mm"], "-infinite");
    assert_eq!(fits["fits"], true);
    // A tripod whose weights all hang inside its feet.
    let kit = Kit { lenses: &[], supports: &[], sides: &[] };
    let mut places = [Candidate::VACANT; 1];
    let choice = told(choose(&brief, &kit, &mut places).unwrap());
    let merits = &choice["candidates"][0]["outcome"]["possible"]["merits"];
    assert_eq!((&merits["factor"], &merits["reach_mm"]), (&Value::from("infinite"), &Value::from(0.0)));
}

#[test]
fn stops_and_changes_say_what_they_are_about() {
    let mut brief = workshop::overhead();
    brief.bay.ceiling_mm = Some(2300.0);
    let kit = Kit { lenses: &[workshop::lens(90.0)], supports: &[], sides: &[] };
    let mut places = [Candidate::VACANT; 1];
    let choice = told(choose(&brief, &kit, &mut places).unwrap());
    let stopped = &choice["candidates"][0]["outcome"]["stopped"];
    assert_eq!((&stopped["count"], &stopped["worst"]["code"]), (&1.into(), &"ceiling_too_low".into()));
    let change = told(smallest_change(&brief, ChangeKind::HigherCeiling).unwrap());
    assert_eq!((&change["kind"], &change["field"]), (&"higher_ceiling".into(), &"bay.ceiling_mm".into()));
    assert_eq!((&change["unit"], &change["from"]), (&"mm".into(), &2300.0.into()));
    assert_eq!(change["by"], change["to"].as_f64().unwrap() - 2300.0);
}

#[test]
fn lists_are_told_whole() {
    let brief = workshop::overhead();
    let plan = plan(&brief).unwrap();
    let shot = Listed {
        camera: "body",
        lens: "long",
        support: "stand",
        table: "oak",
        surface: Some("slate"),
        backdrop: None,
        brief: &brief,
        plan: &plan,
    };
    let room = told(booking(&[shot]));
    assert_eq!(room["ceiling"]["mm"], plan.placement.highest_point_mm);
    let sizes = [PieceSize { mass_kg: 2.5, at_hand: None }];
    let pull = told(pull_list(&[shot], &Stock { counterweights: &sizes, base_weights: &sizes }).unwrap());
    assert_eq!(pull["lenses"][0]["name"], "long");
    assert_eq!(pull["surfaces"][0]["name"], "slate");
    assert_eq!(pull["counterweights"][0]["size"]["mass_kg"], 2.5);
    assert_eq!(pull["counterweights"][0]["size"]["at_hand"], Value::Null);
}
