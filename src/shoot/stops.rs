//! Which cautions stop a plan, and which of them is passed furthest.

use crate::brief::Brief;
use crate::caution::{Caution, CautionCode, Cautions, Level};
use crate::plan::plan;

/// How far a caution's limit is passed: the difference over the limit; over a metre, or over one unit,
/// where the limit is 0.
pub fn overshoot(caution: &Caution) -> f64 {
    let whole = if caution.limit != 0.0 {
        caution.limit.abs()
    } else if caution.code.unit() == "mm" {
        1000.0
    } else {
        1.0
    };
    (caution.value - caution.limit).abs() / whole
}

/// The cautions that stop a plan.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Stops {
    /// How many.
    pub count: u32,
    /// The one that is passed furthest ([`overshoot`]); the first of equals in the order of their codes.
    pub worst: Caution,
    /// How far that one is passed, as a share of its limit.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub overshoot_share: f64,
}

impl Stops {
    /// Among a plan's cautions; `None` where nothing stops.
    pub fn among(cautions: &Cautions) -> Option<Stops> {
        let mut stops: Option<Stops> = None;
        for caution in cautions.iter().filter(|caution| caution.level == Level::Stop) {
            let overshoot_share = overshoot(caution);
            stops = match stops {
                Some(known) if overshoot_share <= known.overshoot_share => {
                    Some(Stops { count: known.count + 1, ..known })
                }
                known => {
                    let count = known.map_or(1, |known| known.count + 1);
                    Some(Stops { count, worst: *caution, overshoot_share })
                }
            };
        }
        stops
    }
}

/// The codes that stop a plan, as a set; a brief that is refused counts as one more.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct StopSet(u128);

impl StopSet {
    /// The bit of a refused brief; the codes take theirs from 0 on.
    const REFUSED: StopSet = StopSet(1 << 127);

    /// What stops a brief.
    pub(crate) fn of(brief: &Brief) -> StopSet {
        match plan(brief) {
            Ok(plan) => StopSet::in_cautions(&plan.cautions),
            Err(_) => StopSet::REFUSED,
        }
    }

    /// What stops among the cautions.
    pub(crate) fn in_cautions(cautions: &Cautions) -> StopSet {
        let stops = cautions.iter().filter(|caution| caution.level == Level::Stop);
        stops.fold(StopSet(0), |set, caution| set.and(caution.code))
    }

    /// The set of these codes.
    pub(crate) fn these(codes: &[CautionCode]) -> StopSet {
        codes.iter().fold(StopSet(0), |set, code| set.and(*code))
    }

    fn and(self, code: CautionCode) -> StopSet {
        let place = CautionCode::ALL.iter().position(|known| *known == code);
        StopSet(self.0 | place.map_or(0, |place| 1 << place))
    }

    /// Nothing stops.
    pub(crate) fn is_empty(self) -> bool {
        self.0 == 0
    }

    /// Whether both have something in common.
    pub(crate) fn meets(self, other: StopSet) -> bool {
        self.0 & other.0 != 0
    }

    /// Whether everything in here is in the other too.
    pub(crate) fn within(self, other: StopSet) -> bool {
        self.0 & !other.0 == 0
    }
}

// Each code has a bit of its own under the refused brief's.
const _: () = assert!(CautionCode::ALL.len() < 127);
