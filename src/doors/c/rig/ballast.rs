//! Solved for: counterweight, base weight, longest reach, and the best and worst direction of the legs.

use super::stability::{Feet, Loads};
use super::support::Support;
use crate::brief;
use crate::doors::c::border::argument;
use crate::doors::c::border::call::{Door, entered};
use crate::doors::c::border::mirror::mirror;
use crate::doors::c::border::refusal::name;
use crate::doors::c::brief::Criteria;
use crate::doors::c::status::Fault;
use crate::rig::{ballast, weights};

/// What would make the rig stand better.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Ballast {
    /// 0 without a boom, or where the counterweight would hang at the clamp itself; else 1.
    pub has_counterweight_to_balance_kg: i32,
    /// 1 where some reach keeps the wanted factor, 0 where none does or without a boom.
    pub has_longest_reach_mm: i32,
    /// The counterweight that balances the boom at the clamp.
    pub counterweight_to_balance_kg: f64,
    /// Weight to add on the column's axis so that the wanted factor is kept in the states asked for.
    pub base_to_add_kg: f64,
    /// The longest reach that keeps the wanted factor as shot, everything else as it is, the pivot staying
    /// where it is and the column moving; no longer than the boom reaches.
    pub longest_reach_mm: f64,
    /// Direction of the first leg, counter-clockwise from the boom's, that gives the largest margin as shot:
    /// a leg under the centre of gravity.
    pub best_first_leg_deg: f64,
    /// That margin.
    pub best_margin_mm: f64,
    /// Direction of the first leg that gives the smallest margin as shot: an edge square to the centre of
    /// gravity.
    pub worst_first_leg_deg: f64,
    /// That margin.
    pub worst_margin_mm: f64,
}
mirror!(out Ballast "ballast" ballast::Ballast {
    counterweight_to_balance_kg: (has_counterweight_to_balance_kg, counterweight_to_balance_kg),
    base_to_add_kg,
    longest_reach_mm: (has_longest_reach_mm, longest_reach_mm),
    best_first_leg_deg,
    best_margin_mm,
    worst_first_leg_deg,
    worst_margin_mm,
});

/// Everything solved for, for a placed rig, from a placement's `boom_used` and `reach_mm`. The wanted factor
/// and the states in which the base weight keeps it are those of `criteria`, which may be null for the
/// documented defaults.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_ballast(
    feet: *const Feet,
    loads: *const Loads,
    support: *const Support,
    boom_used: i32,
    reach_mm: f64,
    criteria: *const Criteria,
    ballast: *mut Ballast,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(ballast, name!("ballast"))?;
        let feet = door.feet(feet)?;
        let loads: weights::Loads = door.value(loads, name!("loads"))?;
        let support = door.part(support)?;
        let criteria = if criteria.is_null() { brief::Criteria::DEFAULT } else { door.part(criteria)? };
        let boom_used: bool = entered(&boom_used, name!("boom_used"))?;
        let reach = argument::REACH_MM.check(reach_mm)?;
        let wish = ballast::BallastWish {
            factor: criteria.wanted_factor,
            states: [criteria.hold_as_shot, criteria.hold_camera_off, criteria.hold_counterweight_off],
        };
        out.put(&ballast::ballast(&feet, &loads, &support, boom_used, reach, &wish))
    })
}
