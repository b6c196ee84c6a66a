//! What combinations of gear are ranked by.

use core::cmp::Ordering;

use crate::brief::Brief;
use crate::caution::{CautionCode, Level};
use crate::number::floor;
use crate::plan::Plan;

/// The rule, in this order: the first criterion on which two combinations differ decides. Combinations
/// that cannot be done come after all that can.
///
/// Numbers that are read off an instrument or a page are compared as they are read, so that a difference
/// nobody can see does not outweigh the next criterion: lengths in whole millimetres, the payload's share
/// in hundredths, factor and tilt in tenths.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "text", derive(serde::Serialize), serde(rename_all = "snake_case"))]
#[repr(i32)]
pub enum Criterion {
    /// Fewer cautions to be looked at before shooting.
    Warnings = 1,
    /// Fewer notes of concern: all but those that no choice of gear changes or betters
    /// ([`NOTES_WITHOUT_CONCERN`]).
    Notes = 2,
    /// No visible stretch for the elevation ([`WIDE_STRETCH`]); 0 or 1.
    Stretch = 3,
    /// Room for the light: less lacking between lens front and aim point.
    LightRoom = 4,
    /// A smaller share of the payload that tips the stand.
    PayloadShare = 5,
    /// A larger restoring over overturning moment as shot.
    Factor = 6,
    /// A shorter reach.
    Reach = 7,
    /// More tilt that it takes to tip it.
    Tilt = 8,
    /// Equal in everything: earlier in the kit, by lens, then support, then side.
    KitOrder = 9,
}

/// Notes that do not count against a combination: they say how a figure was come by, or what the shot and
/// the bay bring along with any gear.
pub const NOTES_WITHOUT_CONCERN: [CautionCode; 4] = [
    CautionCode::FocalLengthAssumed,
    CautionCode::ElevationOutsideAdvice,
    CautionCode::FloorNotLevel,
    CautionCode::LoadOverhead,
];

/// Corner stretch from which a picture taken from above shows it: that of a 35 mm lens on 36 x 24 mm,
/// √(1 + (36² + 24²) / 70²) (common practice, no source: such a lens visibly stretches what is near the
/// edges). Straight-on, the caution's own limit holds.
pub const WIDE_STRETCH: f64 = 1.175_602_320_653_770_5;

/// What speaks for and against a combination that can be done.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Merits {
    /// Cautions to be looked at before shooting.
    pub warnings: u32,
    /// Notes of concern.
    pub notes: u32,
    /// Whether stretch shows, for the shot's elevation.
    pub stretch_shows: bool,
    /// What the light lacks between lens front and aim point; 0 where it has room, or where the lens's
    /// front is not known.
    pub light_room_lacking_mm: f64,
    /// Share of the payload that tips the stand.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub payload_share: f64,
    /// Restoring over overturning moment as shot.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub factor: f64,
    /// The boom's reach; 0 without one.
    pub reach_mm: f64,
    /// The tilt that tips it.
    pub tilt_to_tip_deg: f64,
}

impl Criterion {
    /// Every criterion, in the order in which they decide.
    pub const ALL: &'static [Criterion] = &[
        Criterion::Warnings,
        Criterion::Notes,
        Criterion::Stretch,
        Criterion::LightRoom,
        Criterion::PayloadShare,
        Criterion::Factor,
        Criterion::Reach,
        Criterion::Tilt,
        Criterion::KitOrder,
    ];

    /// The unit of its value: `mm`, `deg`, or empty.
    pub fn unit(self) -> &'static str {
        match self {
            Criterion::LightRoom | Criterion::Reach => "mm",
            Criterion::Tilt => "deg",
            _ => "",
        }
    }

    /// How a combination loses on it, in one sentence without the numbers.
    pub fn sentence(self) -> &'static str {
        match self {
            Criterion::Warnings => "It brings more warnings.",
            Criterion::Notes => "It brings more notes of concern.",
            Criterion::Stretch => "The lens is so wide that it visibly stretches what is near the corners.",
            Criterion::LightRoom => "It comes nearer than the light needs.",
            Criterion::PayloadShare => "It uses more of the payload that would tip the stand.",
            Criterion::Factor => "Less restores the stand against what overturns it.",
            Criterion::Reach => "The boom must reach further.",
            Criterion::Tilt => "Less tilt tips the stand.",
            Criterion::KitOrder => "It is as good; the other stands earlier in the kit.",
        }
    }
}

impl Merits {
    /// Of a plan for a brief.
    pub fn of(brief: &Brief, plan: &Plan) -> Merits {
        let count = |level: Level| {
            let counts = |code: &CautionCode| level != Level::Note || !NOTES_WITHOUT_CONCERN.contains(code);
            let raised =
                plan.cautions.iter().filter(|caution| caution.level == level && counts(&caution.code));
            raised.count() as u32
        };
        let straight_on = plan.cautions.find(CautionCode::StretchShows).is_some();
        let lacking = plan.pose.front_clearance_mm.map_or(0.0, |room| brief.shot.light_clearance_mm - room);
        Merits {
            warnings: count(Level::Warn),
            notes: count(Level::Note),
            stretch_shows: straight_on || plan.perspective.corner_stretch >= WIDE_STRETCH,
            light_room_lacking_mm: lacking.max(0.0),
            payload_share: plan.stability.payload_share,
            factor: plan.stability.as_shot.factor,
            reach_mm: plan.placement.reach_mm,
            tilt_to_tip_deg: plan.stability.as_shot.tilt_to_tip_deg,
        }
    }

    /// What they are for a criterion, in its unit; 0 for the order of the kit.
    pub fn value(&self, criterion: Criterion) -> f64 {
        match criterion {
            Criterion::Warnings => f64::from(self.warnings),
            Criterion::Notes => f64::from(self.notes),
            Criterion::Stretch => f64::from(u8::from(self.stretch_shows)),
            Criterion::LightRoom => self.light_room_lacking_mm,
            Criterion::PayloadShare => self.payload_share,
            Criterion::Factor => self.factor,
            Criterion::Reach => self.reach_mm,
            Criterion::Tilt => self.tilt_to_tip_deg,
            Criterion::KitOrder => 0.0,
        }
    }

    /// The criterion's value as it is compared, the smaller the better.
    fn key(&self, criterion: Criterion) -> f64 {
        let value = self.value(criterion);
        match criterion {
            Criterion::PayloadShare => floor(100.0 * value + 0.5),
            Criterion::Factor | Criterion::Tilt => 0.0 - floor(10.0 * value + 0.5),
            _ => floor(value + 0.5),
        }
    }

    /// Which of two is better (less), and on which criterion.
    pub fn compare(&self, other: &Merits) -> (Ordering, Criterion) {
        for criterion in Criterion::ALL {
            let order = self.key(*criterion).total_cmp(&other.key(*criterion));
            if order != Ordering::Equal {
                return (order, *criterion);
            }
        }
        (Ordering::Equal, Criterion::KitOrder)
    }
}
