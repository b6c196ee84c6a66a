//! Beside which of a shot's numbers a caution stands.

use crate::caution::CautionCode;

/// What a group of numbers is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Topic {
    Camera,
    Stand,
    Focus,
    Weights,
}

/// Where a caution belongs.
pub(super) fn topic(code: CautionCode) -> Topic {
    match code as i32 {
        // The lens too near its subject is a matter of where the camera goes.
        101 | 102 | 104 | 105 => Topic::Camera,
        100..=199 => Topic::Focus,
        200..=299 => Topic::Camera,
        300..=399 => Topic::Stand,
        _ => Topic::Weights,
    }
}
