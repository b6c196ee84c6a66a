//! What is solved for is put in, and must come to what was wanted: counterweight, base weight, reach, legs.

use proptest::prelude::*;
use tablerig::brief::{Brief, Criteria, Shot};
use tablerig::plan::Plan;
use tablerig::rig::feet::Feet;
use tablerig::rig::stability::standing;
use tablerig::rig::support::{Boom, Support};
use tablerig::rig::weights::{RigState, loads};

use crate::briefs::{plan_of, studio_brief};
use crate::draws::{range_of, runs};
use crate::space::{agree, dot, minus, way};
use crate::weights::{boom_and_counterweight, clamp, payload};

fn wanting(brief: Brief, wanted_factor: f64, [as_shot, camera_off, counterweight_off]: [bool; 3]) -> Brief {
    let criteria = Criteria {
        wanted_factor,
        hold_as_shot: as_shot,
        hold_camera_off: camera_off,
        hold_counterweight_off: counterweight_off,
        ..brief.criteria
    };
    Brief { criteria, ..brief }
}

fn factors(plan: &Plan) -> [f64; 3] {
    let stability = &plan.stability;
    [stability.as_shot.factor, stability.camera_off.factor, stability.counterweight_off.factor]
}

/// The plan with that much more on the base.
fn based(brief: &Brief, kg: f64) -> Plan {
    let mut heavier = *brief;
    heavier.support.base_mass_kg += kg;
    plan_of(&heavier)
}

/// The plan with the column that much further out and all else as it is: the boom's side kept, the room
/// between stand and table changed. `None` where no such room can be asked for.
fn at_reach(brief: &Brief, plan: &Plan, reach_mm: f64) -> Option<Plan> {
    let clearance = brief.support.table_clearance_mm + reach_mm - plan.placement.reach_mm;
    let range = range_of("support.table_clearance_mm");
    if clearance < range.least || clearance > range.most {
        return None;
    }
    let support = Support { table_clearance_mm: clearance, ..brief.support };
    let shot = Shot { side: Some(plan.placement.side), ..brief.shot };
    let moved = plan_of(&Brief { shot, support, ..*brief });
    (moved.placement.boom_used && moved.placement.reach_mm > 0.0).then_some(moved)
}

proptest! {
    #![proptest_config(runs(500))]

    #[test]
    fn the_counterweight_found_leaves_no_moment_along_the_boom(brief in studio_brief()) {
        let plan = plan_of(&brief);
        let Some(found) = plan.ballast.counterweight_to_balance_kg else {
            let arm = brief.support.boom.map_or(0.0, |boom| boom.counterweight_arm_mm());
            prop_assert!(!plan.placement.boom_used || arm == 0.0);
            return Ok(());
        };
        prop_assert!(found >= 0.0);
        let boom = brief.support.boom.unwrap();
        if found > range_of("support.boom.counterweight_kg").most {
            return Ok(());
        }
        let support = Support { boom: Some(Boom { counterweight_kg: found, ..boom }), ..brief.support };
        let balanced = Brief { support, ..brief };
        let plan = plan_of(&balanced);
        let along = way(plan.placement.towards);
        let [middle, counterweight] = boom_and_counterweight(&balanced, &plan);
        let parts = [payload(&balanced, &plan), middle, counterweight];
        let moment = |mass: &crate::weights::Mass| mass.kg * dot(minus(mass.place, clamp(&plan)), along);
        let sum: f64 = parts.iter().map(moment).sum();
        let scale: f64 = parts.iter().map(|part| part.kg * 3000.0).sum();
        if found > 0.0 {
            agree("moment", sum, 0.0, 1e-13 * scale)?;
        } else {
            prop_assert!(sum <= 1e-13 * scale, "the tail already outweighs");
        }
    }

    #[test]
    fn the_base_weight_found_keeps_the_factor(
        brief in studio_brief(),
        wanted in 1.0..4.0_f64,
        states in any::<[bool; 3]>(),
    ) {
        let brief = wanting(brief, wanted, states);
        let plan = plan_of(&brief);
        let least = |plan: &Plan| {
            let asked = factors(plan).into_iter().zip(states).filter(|(_, asked)| *asked);
            asked.fold(f64::INFINITY, |least, (factor, _)| least.min(factor))
        };
        let add = plan.ballast.base_to_add_kg;
        prop_assert!(add >= 0.0);
        if brief.support.base_mass_kg + add > range_of("support.base_mass_kg").most {
            return Ok(());
        }
        let kept = least(&based(&brief, add));
        if add > 0.0 {
            // The moments' rounding over the overturning one: next to a line it is a small part of all.
            let heavy = plan.stability.as_shot.total_mass_kg + add;
            agree("factor", kept, wanted, 1e-12 * wanted * (1.0 + heavy / add))?;
        } else {
            prop_assert!(kept >= wanted * (1.0 - 1e-12));
        }
    }

    /// The column moved out to the reach found keeps the factor; any further it does not.
    #[test]
    fn the_longest_reach_just_keeps_the_factor(brief in studio_brief(), wanted in 1.0..4.0_f64) {
        let brief = wanting(brief, wanted, [true, false, false]);
        let plan = plan_of(&brief);
        let Some(boom) = brief.support.boom.filter(|_| plan.placement.boom_used) else {
            prop_assert!(plan.ballast.longest_reach_mm.is_none());
            return Ok(());
        };
        let most = boom.longest_reach_mm;
        let keeps = |reach: f64| at_reach(&brief, &plan, reach).map(|moved| moved.stability.as_shot.factor);
        match plan.ballast.longest_reach_mm {
            Some(found) => {
                prop_assert!((0.0..=most).contains(&found));
                if let Some(factor) = keeps(found) {
                    if found < most {
                        agree("factor", factor, wanted, 1e-9 * wanted)?;
                    } else {
                        prop_assert!(factor >= wanted * (1.0 - 1e-9));
                    }
                }
                for step in 1..=10 {
                    let further = found + (most - found) * f64::from(step) / 10.0;
                    if further > found + 1e-6 {
                        prop_assert!(keeps(further).is_none_or(|factor| factor < wanted), "{further}");
                    }
                }
            }
            None => {
                for step in 0..=20 {
                    let reach = most * f64::from(step) / 20.0;
                    prop_assert!(keeps(reach).is_none_or(|factor| factor < wanted * (1.0 + 1e-9)), "{reach}");
                }
            }
        }
    }

    /// Over all directions of the first leg, the margin is best and worst where it is said to be.
    #[test]
    fn legs_stand_best_and_worst_as_said(brief in studio_brief()) {
        let plan = plan_of(&brief);
        let loads = loads(&brief.support, &plan.placement, &plan.payload);
        let margin = |first_leg: f64| {
            let feet = Feet::new(brief.support.leg_count, brief.support.foot_radius_mm, first_leg);
            standing(&feet, &loads, RigState::AsShot, &plan.placement, 1000.0).margin_mm
        };
        let ballast = &plan.ballast;
        let spacing = 360.0 / f64::from(brief.support.leg_count);
        for (name, direction, expected) in [
            ("best", ballast.best_first_leg_deg, ballast.best_margin_mm),
            ("worst", ballast.worst_first_leg_deg, ballast.worst_margin_mm),
        ] {
            prop_assert!((0.0..spacing).contains(&direction));
            agree(name, margin(direction), expected, 1e-11 * (1000.0 + expected.abs()))?;
        }
        for step in 0..60 {
            let here = margin(f64::from(step) * spacing / 60.0);
            prop_assert!(here <= ballast.best_margin_mm + 1e-9 && here >= ballast.worst_margin_mm - 1e-9);
        }
    }
}
