//! The rows of `[order]`, and what shots say about which comes first.

use std::format;
use std::prelude::rust_2024::*;
use std::string::ToString;

use super::field::{Field, Name, set};
use super::problem::{Problem, ProblemKind};
use super::reading::Reading;
use super::several::Several;
use super::suggest;
use crate::range;
use crate::shoot::minutes::Minutes;
use crate::shoot::order::check;
use crate::shoot::precedence::{OrderFault, Precedence};

pub(crate) static ORDER: &[Field<Minutes>] = &[
    Field::number(range::SUPPORT_MINUTES, set!(Minutes, support_minutes)).otherwise("10"),
    Field::number(range::SIDE_MINUTES, set!(Minutes, side_minutes)).otherwise("6"),
    Field::number(range::LENS_MINUTES, set!(Minutes, lens_minutes)).otherwise("2"),
    Field::number(range::HEIGHT_MINUTES, set!(Minutes, height_minutes)).otherwise("3"),
    Field::number(range::HEIGHT_THRESHOLD_MM, set!(Minutes, height_threshold_mm)).otherwise("100"),
    Field::number(range::SURFACE_MINUTES, set!(Minutes, surface_minutes)).otherwise("5"),
];

/// What one shot says about those before it.
#[derive(Clone, Debug, Default)]
pub(crate) struct After {
    pub(crate) after: Option<Several>,
    pub(crate) right_after: Option<Name>,
}

/// The precedences of the shots, named in their order. Where no order keeps to them, that is reported at
/// the shot where the knot is found.
pub(crate) fn precedences(reading: &mut Reading, names: &[&str], afters: &[After]) -> Vec<Precedence> {
    let mut found: Vec<(Precedence, &Name)> = Vec::new();
    let before = reading.problems.len();
    for (then, after) in afters.iter().enumerate() {
        let others = after.after.iter().flat_map(|after| &after.names).map(|name| (name, false));
        for (name, at_once) in others.chain(after.right_after.iter().map(|name| (name, true))) {
            match names.iter().position(|known| *known == name.text) {
                Some(first) if first == then => {
                    let title = format!("shot \"{}\" cannot come after itself", name.text);
                    reading.report(Problem::new(
                        ProblemKind::Conflicting,
                        title,
                        name.span.clone(),
                        "this is itself",
                    ));
                }
                Some(first) => found.push((Precedence { first, then, at_once }, name)),
                None => {
                    let title = format!("there is no shot \"{}\"", name.text);
                    let problem = Problem::new(
                        ProblemKind::UnknownName,
                        title,
                        name.span.clone(),
                        "no [[shot]] has this name",
                    );
                    reading.report(suggest::advise(problem, &name.text, names, "the file has"));
                }
            }
        }
    }
    let precedences: Vec<Precedence> = found.iter().map(|(precedence, _)| *precedence).collect();
    if reading.problems.len() > before {
        return precedences;
    }
    let called = |shot: usize| names.get(shot).copied().unwrap_or_default();
    match check(names.len(), &precedences) {
        Ok(()) => {}
        Err(OrderFault::Circle(shots)) => {
            let way: Vec<String> = shots.iter().map(|shot| format!("\"{}\"", called(*shot))).collect();
            let first = shots.first().copied().unwrap_or_default();
            let title = format!("what must come first goes round in a circle: {}", way.join(" before "));
            let place = found.iter().find(|(pair, _)| pair.then == first && shots.contains(&pair.first));
            let span = place.map_or(0..0, |(_, name)| name.span.clone());
            let label = format!(
                "but \"{}\" is to come before \"{}\"",
                called(first),
                place.map_or("it", |(_, name)| name.text.as_str())
            );
            reading.report(Problem::new(ProblemKind::Conflicting, title, span, label));
        }
        Err(OrderFault::TwoAtOnce { shot }) => {
            let mut both =
                found.iter().filter(|(pair, _)| pair.at_once && (pair.first == shot || pair.then == shot));
            let title =
                format!("no two shots can both come right after, or right before, \"{}\"", called(shot));
            let first = both.next().map_or(0..0, |(_, name)| name.span.clone());
            let second = both.next().map_or(first.clone(), |(_, name)| name.span.clone());
            let problem = Problem::new(ProblemKind::Conflicting, title, second, "... or this, not both");
            reading.report(problem.also(first, "either this ..."));
        }
        Err(other) => reading.report(Problem::general(ProblemKind::Conflicting, other.to_string())),
    }
    precedences
}
