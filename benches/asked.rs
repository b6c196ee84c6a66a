//! Choosing over a kit and the text door, each with the floor of the plans that it makes.

use std::hint::black_box;

use tablerig::doors::text::answer;
use tablerig::scene::table::Side;
use tablerig::shoot::choose::choose;
use tablerig::shoot::kit::{Candidate, Kit};
use tablerig::shootfile::{DEMO, Form, read};

use super::parts::Case;
use super::turns::in_turns;
use super::{Table, together, workshop};

/// Six lenses, two supports and every side for one shot.
pub(crate) fn choosing(table: &Table, turns: usize) {
    let lenses = [24.0, 35.0, 50.0, 60.0, 90.0, 105.0].map(workshop::lens);
    let supports = [workshop::stand(), workshop::tripod()];
    let kit = Kit { lenses: &lenses, supports: &supports, sides: &Side::ALL };
    let shot = workshop::overhead();
    let mut places = vec![Candidate::VACANT; kit.most_combinations()];
    let Ok(choice) = choose(&shot, &kit, &mut places) else { return };
    let planned = choice.planned;
    let of_kit = choice.candidates.iter().map(|candidate| kit.brief_with(&shot, &candidate.combination));
    let cases: Vec<Case> = of_kit.filter_map(|brief| Case::new(&brief)).collect();
    assert_eq!(cases.len(), planned, "a combination was refused");
    let calls = together(&cases, None);
    let timed = in_turns(
        turns,
        &mut [
            &mut || {
                black_box(choose(black_box(&shot), &kit, &mut places).is_ok());
            },
            &mut || {
                black_box(black_box(&calls).make());
            },
        ],
    );
    let [chosen, floor] = &timed[..] else { return };
    table.head(&format!("Choosing over a kit, {planned} combinations planned and ranked"));
    table.row("choose.least_ns", "choosing, a combination, least", chosen.least_ns(planned), "ns");
    table.row("choose.floor_ns", "its floor, a combination, least", floor.least_ns(planned), "ns");
    table.row("choose.over_floor", "choosing / floor, least of each", chosen.least_over(floor), "");
}

/// The plan of one shot as JSON, the whole demo file given with the question.
pub(crate) fn by_text(table: &Table, turns: usize) {
    let Ok(file) = read(DEMO, Form::Toml) else { return };
    let cases: Vec<Case> = file.shots.iter().filter_map(|shot| Case::new(&shot.brief)).collect();
    let calls = together(&cases, None);
    let request =
        |operation: &str, shot: &str| format!(r#"{{"operation": "{operation}", "shoot": {DEMO:?}{shot}}}"#);
    let first = file.shots.first().map_or("", |shot| &shot.name);
    let (plan, read) = (request("plan", &format!(r#", "shot": "{first}""#)), request("read", ""));
    let timed = in_turns(
        turns,
        &mut [
            &mut || {
                black_box(answer(black_box(&plan)));
            },
            &mut || {
                black_box(answer(black_box(&read)));
            },
            &mut || {
                black_box(black_box(&calls).make());
            },
        ],
    );
    let [planned, reading, floor] = &timed[..] else { return };
    table.head(&format!("The text door, a file of {} shots in, JSON out", file.shots.len()));
    table.row("text.plan_us", "plan of one shot, the file read, least", planned.least_ns(1000), "us");
    table.row("text.read_us", "the file read, least", reading.least_ns(1000), "us");
    table.row("text.floor_us", "floor of its shots' plans, least", floor.least_ns(1000), "us");
    table.row("text.over_floor", "plan of one shot / floor, least of each", planned.least_over(floor), "");
}
