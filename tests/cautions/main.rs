//! Every caution: raised by one brief just past its limit, not by one just short of it, at each of its
//! levels, with the plan's own number as its value.
#![allow(clippy::disallowed_methods, reason = "the platform's functions are the second opinion here")]

#[path = "../workshop/mod.rs"]
mod workshop;

mod apart;
mod picture;
mod room;
mod standing;

use tablerig::brief::Brief;
use tablerig::caution::{CautionCode, Level};
use tablerig::plan::{Plan, plan};

/// Two briefs on either side of a limit.
struct Case {
    code: CautionCode,
    level: Level,
    past: Brief,
    short: Brief,
    /// The number that the caution is about, from the plan.
    value: Box<dyn Fn(&Plan) -> f64>,
    limit: f64,
}

/// Next to one: a billionth is far more than rounding and far less than anyone sets.
const JUST: f64 = 1e-9;

fn case(
    code: CautionCode,
    level: Level,
    [past, short]: [Brief; 2],
    value: impl Fn(&Plan) -> f64 + 'static,
    limit: f64,
) -> Case {
    Case { code, level, past, short, value: Box::new(value), limit }
}

/// The brief with something changed.
fn with(mut brief: Brief, change: impl FnOnce(&mut Brief)) -> Brief {
    change(&mut brief);
    brief
}

/// The brief with two values of one thing: past the limit and short of it.
fn both(brief: Brief, [past, short]: [f64; 2], change: impl Fn(&mut Brief, f64)) -> [Brief; 2] {
    [past, short].map(|value| with(brief, |brief| change(brief, value)))
}

/// Just over and just under a value.
fn over_under(value: f64) -> [f64; 2] {
    [value + JUST * value.abs(), value - JUST * value.abs()]
}

/// Just under and just over a value.
fn under_over(value: f64) -> [f64; 2] {
    let [over, under] = over_under(value);
    [under, over]
}

fn planned(brief: &Brief) -> Plan {
    plan(brief).unwrap_or_else(|fault| panic!("{fault}"))
}

/// The codes that come at more than one level, with all of them.
const GRADED: &[(CautionCode, &[Level])] = &[
    (CautionCode::PayloadShare, &[Level::Note, Level::Warn, Level::Stop]),
    (CautionCode::FactorAsShot, &[Level::Note, Level::Warn, Level::Stop]),
    (CautionCode::FactorCameraOff, &[Level::Note, Level::Warn]),
    (CautionCode::FactorCounterweightOff, &[Level::Note, Level::Warn]),
    (CautionCode::TiltToTip, &[Level::Warn, Level::Stop]),
];

fn cases() -> Vec<Case> {
    let mut all = picture::cases();
    all.extend(room::cases());
    all.extend(standing::cases());
    all
}

#[test]
fn each_is_raised_just_past_its_limit_and_not_just_short() {
    for Case { code, level, past, short, value, limit } in cases() {
        let plan = planned(&past);
        let Some(raised) = plan.cautions.find(code) else { panic!("{code:?} {level:?} is not raised") };
        assert_eq!(raised.level, level, "{code:?}");
        let expected = value(&plan);
        // Rounding of metres, where the value is what is left of them; a limit is set just beside the value.
        let allowed = 1e-11 * expected.abs() + 1e-10;
        assert!((raised.value - expected).abs() <= allowed, "{code:?}: {raised:?}, {expected}");
        let allowed = 2.0 * JUST * limit.abs() + 2e-6;
        assert!((raised.limit - limit).abs() <= allowed, "{code:?}: {raised:?}, {limit}");
        let short = planned(&short);
        let there = short.cautions.find(code).map(|caution| caution.level);
        assert!(there < Some(level), "{code:?} {level:?} is raised short of its limit: {there:?}");
        // Nothing but the one step lies between the two: the plans are otherwise alike.
        assert!((short.frame_width_mm / plan.frame_width_mm - 1.0).abs() < 1e-3, "{code:?}");
    }
}

/// Where the limit can be set to the very value, it is not yet passed: "over" and "under" mean what they say.
#[test]
fn at_the_limit_itself_nothing_is_raised() {
    let exact: Vec<(CautionCode, Brief)> =
        [picture::exact(), room::exact(), standing::exact()].into_iter().flatten().collect();
    for (code, brief) in exact {
        let raised = planned(&brief).cautions.find(code).copied();
        assert_eq!(raised, None);
    }
}

#[test]
fn every_code_has_a_case_at_every_level() {
    let cases = cases();
    for code in CautionCode::ALL {
        let covered: Vec<Level> =
            cases.iter().filter(|case| case.code == *code).map(|case| case.level).collect();
        assert!(!covered.is_empty(), "{code:?} has no case");
        if let Some((_, levels)) = GRADED.iter().find(|(graded, _)| graded == code) {
            assert!(levels.iter().all(|level| covered.contains(level)), "{code:?} has only {covered:?}");
        } else {
            assert!(covered.iter().all(|level| *level == covered[0]), "{code:?} is graded: {covered:?}");
        }
    }
}

/// No caution comes at a level that has no case.
#[test]
fn no_other_levels_are_raised() {
    let cases = cases();
    for brief in cases.iter().flat_map(|case| [&case.past, &case.short]) {
        for raised in planned(brief).cautions.iter() {
            let known = cases.iter().any(|case| case.code == raised.code && case.level == raised.level);
            assert!(known, "{raised:?}");
        }
    }
}

#[test]
fn numbers_are_in_families_and_ascend() {
    let numbers: Vec<i32> = CautionCode::ALL.iter().map(|code| *code as i32).collect();
    assert!(numbers.windows(2).all(|pair| pair[0] < pair[1]));
    for code in CautionCode::ALL {
        assert!(code.sentence().ends_with('.') && code.sentence().len() > 20, "{code:?}");
        assert!((1..=4).contains(&(*code as i32 / 100)), "{code:?}");
    }
}

/// Cautions come in the order of their codes, each once, and the worst is the weightiest of them.
#[test]
fn they_come_in_order_and_the_worst_is_told() {
    for case in cases() {
        let cautions = planned(&case.past).cautions;
        let codes: Vec<i32> = cautions.iter().map(|caution| caution.code as i32).collect();
        assert!(codes.windows(2).all(|pair| pair[0] < pair[1]), "{codes:?}");
        assert_eq!(cautions.len(), codes.len());
        assert_eq!(cautions.worst(), cautions.iter().map(|caution| caution.level).max());
        assert_eq!(cautions.is_empty(), codes.is_empty());
    }
}

/// The brief that the tests vary stands, and asks for nothing but a look.
#[test]
fn the_workshops_own_briefs_raise_no_stop() {
    assert!(planned(&workshop::overhead()).cautions.worst() < Some(Level::Stop));
}
