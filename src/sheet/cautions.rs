//! Cautions in plain words, with value and limit in the unit asked for.

use alloc::format;
use alloc::string::String;

use super::wording::{Units, decimals, degrees, f_number, kilograms, on_sensor, percent, trimmed, with_unit};
use crate::caution::{Caution, CautionCode};

/// A caution's sentence with its value and limit.
pub(crate) fn sentence(caution: &Caution, units: Units) -> String {
    format!("{} {}", caution.code.sentence(), figures(caution, units))
}

/// A caution's value and limit, in brackets.
pub(crate) fn figures(caution: &Caution, units: Units) -> String {
    let value = figure(caution.code, caution.value, units);
    match caution.code {
        CautionCode::BoomMissing => format!("(it would have to reach {value})"),
        CautionCode::HorizonInFrame => {
            let over = if caution.value < 0.0 { "above" } else { "below" };
            format!("(its top edge looks {} {over} level)", degrees(caution.value.abs()))
        }
        // Where anything over nothing, or under everything, is too much, the limit says nothing.
        CautionCode::StackNeeded | CautionCode::TableEndsInFrame => format!("({value})"),
        _ if caution.limit == 0.0 => format!("({value})"),
        code => format!("({value}; limit {})", figure(code, caution.limit, units)),
    }
}

/// A caution's value, or its limit, in its unit.
pub(crate) fn figure(code: CautionCode, value: f64, units: Units) -> String {
    match (code, code.unit()) {
        (
            CautionCode::FocalLengthAssumed | CautionCode::DiffractionShows | CautionCode::TiltImpossible,
            _,
        ) => on_sensor(value),
        (CautionCode::SubjectNotHeld | CautionCode::FNumberNotOnLens, _) => f_number(value),
        (CautionCode::StackNeeded, _) => with_unit(&trimmed(value, 0), "pictures"),
        // Not all of it, or there would be no caution.
        (CautionCode::TableEndsInFrame, _) if (0.995..1.0).contains(&value) => with_unit("over 99", "%"),
        (CautionCode::TableEndsInFrame | CautionCode::PayloadShare, _) => percent(value),
        (CautionCode::MagnificationBeyondLens, _) => trimmed(value, 3),
        (_, "mm") => units.length(value),
        (_, "deg") => degrees(value),
        (_, "kg") => kilograms(value),
        (_, "n") => with_unit(&decimals(value, 0), "N"),
        (_, "n_m") => with_unit(&decimals(value, 1), "N m"),
        (_, "percent") => with_unit(&trimmed(value, 1), "%"),
        _ => decimals(value, 2),
    }
}
