//! The smallest changes that make a shot possible, in words.

use alloc::format;
use alloc::string::String;

use super::wording::{Units, degrees, kilograms, on_sensor};
use crate::brief::Brief;
use crate::caution::Level;
use crate::plan::plan;
use crate::shoot::change::{Change, ChangeKind};

/// In what steps a change is said, in the unit of its field.
fn step(kind: ChangeKind, units: Units) -> f64 {
    match kind {
        ChangeKind::HeavierBase => 0.5,
        ChangeKind::LowerElevation | ChangeKind::HigherElevation => 0.5,
        ChangeKind::OtherFocalLength => 1.0,
        _ => match units {
            Units::In | Units::FtIn => 6.35,
            Units::Mm | Units::Cm | Units::M => 10.0,
        },
    }
}

/// The last digit that is printed of it.
fn digit(kind: ChangeKind, units: Units) -> f64 {
    match kind {
        ChangeKind::HeavierBase => 0.01,
        ChangeKind::LowerElevation | ChangeKind::HigherElevation | ChangeKind::OtherFocalLength => 0.1,
        _ => match units {
            Units::In | Units::FtIn => 25.4 / 16.0,
            Units::Mm | Units::Cm | Units::M => 1.0,
        },
    }
}

/// A change of a brief, rounded up to what can be said and set where that works too, or to the last digit that is
/// printed; where no such value does, that is said.
pub(crate) fn change_in_words(change: &Change, brief: &Brief, units: Units) -> String {
    let steps = [step(change.kind, units), digit(change.kind, units)];
    let rounded = steps.iter().find_map(|step| change.rounded(brief, *step));
    let told = rounded.unwrap_or(*change);
    let value = |value: f64| match change.kind {
        ChangeKind::HeavierBase => kilograms(value),
        ChangeKind::LowerElevation | ChangeKind::HigherElevation => degrees(value),
        ChangeKind::OtherFocalLength => on_sensor(value),
        _ => units.length(value),
    };
    let by = told.by();
    let more = if by < 0.0 { "less" } else { "more" };
    let sentence = change.kind.sentence().trim_end_matches('.');
    let mut change =
        format!("{sentence}: {}, now {} ({} {more}).", value(told.to), value(told.from), value(by.abs()));
    if rounded.is_none() {
        change += " Only just: any further, something else stops it.";
    }
    // The smallest change only just clears what stops; whatever else there is to look at stays.
    let warned = plan(&told.applied(brief)).is_ok_and(|plan| plan.cautions.worst() == Some(Level::Warn));
    if warned { change + " Warnings remain." } else { change }
}
