//! Whether it stands: every number against forces in the room and vector products.

use proptest::prelude::*;
use tablerig::caution::overhead::Removal;
use tablerig::plan::Plan;
use tablerig::rig::stability::Standing;
use tablerig::rig::weights::RigState;

use crate::briefs::{plan_of, studio_brief};
use crate::draws::runs;
use crate::space::{Vector, agree, at, cross, length, minus, plus, turned, way};
use crate::weights::{
    GRAVITY, Mass, STATES, boom_and_counterweight, clamp, lines, masses, payload, together,
};

fn standing(plan: &Plan, state: RigState) -> &Standing {
    match state {
        RigState::AsShot => &plan.stability.as_shot,
        RigState::CameraOff => &plan.stability.camera_off,
        RigState::CounterweightOff => &plan.stability.counterweight_off,
    }
}

/// Rounding of the moments: metres from the origin, about lines metres from it.
fn moment_error(masses: &[Mass]) -> f64 {
    let each = |mass: &Mass| mass.kg * GRAVITY * (length(mass.place) + 1000.0) / 1000.0;
    1e-14 * masses.iter().map(each).sum::<f64>()
}

proptest! {
    #![proptest_config(runs(500))]

    #[test]
    fn moments_about_every_line_are_the_sums_of_the_forces(brief in studio_brief()) {
        let plan = plan_of(&brief);
        for state in STATES {
            let masses = masses(&brief, &plan, state);
            let found = standing(&plan, state);
            let all = together(&masses);
            let off = moment_error(&masses);
            agree("mass", found.total_mass_kg, all.kg, 1e-14 * all.kg)?;
            let apart = length(minus(at(found.centre), all.place));
            agree("centre", apart, 0.0, 1e-13 * (length(all.place) + 3000.0))?;
            let weight = all.kg * GRAVITY;
            let each: Vec<[f64; 2]> = lines(&plan).iter().map(|line| line.moments(&masses)).collect();
            let margins: Vec<f64> = each.iter().map(|[hold, fall]| (hold - fall) / weight * 1000.0).collect();
            let least = margins.iter().copied().fold(f64::INFINITY, f64::min);
            let allowed = 4.0 * off / weight * 1000.0;
            agree("margin", found.margin_mm, least, allowed)?;
            agree("margin's edge", margins[found.margin_edge as usize - 1], least, allowed)?;
            // Outwards over that line, from the boom's direction counter-clockwise.
            let line = &lines(&plan)[found.factor_edge as usize - 1];
            let over = cross(line.along, [0.0, 0.0, 1.0]);
            let towards = way(plan.placement.towards);
            let told = turned(towards, [0.0, 0.0, 1.0], found.factor_edge_direction_deg);
            agree("direction over the edge", length(minus(told, over)), 0.0, 1e-12)?;
            prop_assert!((0.0..360.0).contains(&found.factor_edge_direction_deg));
            let [hold, fall] = each[found.factor_edge as usize - 1];
            agree("restoring", found.restoring_moment_n_m, hold, 4.0 * off)?;
            agree("overturning", found.overturning_moment_n_m, fall, 4.0 * off)?;
            // Weights that hang in the line itself may come out on either side of it.
            let factors = each.iter().filter(|[_, fall]| *fall > 4.0 * off).map(|[hold, fall]| hold / fall);
            let factor = factors.fold(f64::INFINITY, f64::min);
            if factor.is_finite() {
                agree("factor", found.factor, factor, 8.0 * off / fall * (1.0 + factor))?;
            } else {
                prop_assert!(found.factor.is_infinite() || found.overturning_moment_n_m <= 4.0 * off);
            }
        }
    }

    #[test]
    fn a_factor_under_one_is_a_margin_under_nothing(brief in studio_brief()) {
        let plan = plan_of(&brief);
        for state in STATES {
            let found = standing(&plan, state);
            prop_assert_eq!(found.factor < 1.0, found.margin_mm < 0.0, "{:?}", found);
            prop_assert_eq!(found.tilt_to_tip_deg < 0.0, found.margin_mm < 0.0);
            // At floor height and under it no push tips.
            let pushed = found.margin_mm < 0.0 && plan.pose.pivot.z_mm > 0.0;
            prop_assert_eq!(found.push_to_tip_n < 0.0, pushed);
            if found.factor.is_finite() {
                let ratio = found.restoring_moment_n_m / found.overturning_moment_n_m;
                agree("factor", found.factor, ratio, 4e-16 * ratio)?;
            }
        }
        // Together with the share of the payload: over one where it tips because of it.
        if plan.stability.camera_off.margin_mm > 0.0 && plan.stability.as_shot.margin_mm < -1e-9 {
            prop_assert!(plan.stability.payload_share > 1.0);
        }
    }

    /// Tilted by that much, the rig's weights about the line of the least margin come to nothing.
    #[test]
    fn the_tilt_brings_the_centre_over_the_line(brief in studio_brief()) {
        let plan = plan_of(&brief);
        for state in STATES {
            let found = standing(&plan, state);
            let line = lines(&plan)[found.margin_edge as usize - 1];
            let masses = masses(&brief, &plan, state);
            let tilted: Vec<Mass> = masses
                .iter()
                .map(|mass| {
                    let about = turned(minus(mass.place, line.foot), line.along, found.tilt_to_tip_deg);
                    Mass { place: plus(line.foot, about, 1.0), ..*mass }
                })
                .collect();
            let sum: f64 = tilted.iter().map(|mass| line.holds(mass)).sum();
            agree("moment when tilted", sum, 0.0, 10.0 * moment_error(&masses))?;
            prop_assert!(found.tilt_to_tip_deg <= 90.0 || found.centre.z_mm < 0.0);
        }
    }

    /// Pushed at the pivot that hard, the rig is about to go over the line.
    #[test]
    fn the_push_is_balanced_by_the_weights(brief in studio_brief()) {
        let plan = plan_of(&brief);
        let pivot = at(plan.pose.pivot);
        if pivot[2] <= 1.0 {
            return Ok(());
        }
        for state in STATES {
            let found = standing(&plan, state);
            let line = lines(&plan)[found.margin_edge as usize - 1];
            let masses = masses(&brief, &plan, state);
            let outwards: Vector = cross(line.along, [0.0, 0.0, 1.0]);
            let push = outwards.map(|part| part * found.push_to_tip_n);
            let moment = cross(minus(pivot, line.foot), push);
            let over: f64 = (0..3).map(|axis| moment[axis] * line.along[axis]).sum::<f64>() / 1000.0;
            let sum: f64 = masses.iter().map(|mass| line.holds(mass)).sum();
            agree("moments", over, sum, 10.0 * moment_error(&masses))?;
        }
    }

    #[test]
    fn the_payload_to_tip_leaves_no_margin(brief in studio_brief()) {
        let plan = plan_of(&brief);
        let own = payload(&brief, &plan);
        let rest = masses(&brief, &plan, RigState::CameraOff);
        let (to_tip, share) = (plan.stability.payload_to_tip_kg, plan.stability.payload_share);
        let off = 10.0 * moment_error(&masses(&brief, &plan, RigState::AsShot));
        let lines = lines(&plan);
        // Only lines that the payload hangs out over can be tipped over by more of it.
        let outside: Vec<_> = lines.iter().filter(|line| line.holds(&own) < -off).collect();
        if to_tip.is_infinite() {
            prop_assert!(outside.is_empty() && share == 0.0);
            return Ok(());
        }
        let held = |line: &&crate::weights::Line| rest.iter().map(|mass| line.holds(mass)).sum::<f64>();
        if to_tip == 0.0 {
            prop_assert!(lines.iter().any(|line| held(&line) <= off) && share.is_infinite());
            return Ok(());
        }
        agree("share", share * to_tip, own.kg, 1e-14 * own.kg)?;
        let heavier = Mass { kg: to_tip, ..own };
        let left = outside.iter().map(|line| held(line) + line.holds(&heavier));
        let left = left.fold(f64::INFINITY, f64::min);
        if left.is_finite() {
            agree("moment left", left, 0.0, off * (1.0 + to_tip / own.kg))?;
        }
    }

    #[test]
    fn clamp_and_head_hold_the_vector_sum(brief in studio_brief()) {
        let plan = plan_of(&brief);
        let about = |point: Vector, masses: &[Mass]| {
            let weight = |mass: &Mass| [0.0, 0.0, -mass.kg * GRAVITY / 1000.0];
            let moment = |mass: &Mass| cross(minus(mass.place, point), weight(mass));
            length(masses.iter().fold([0.0; 3], |sum, mass| plus(sum, moment(mass), 1.0)))
        };
        let own = payload(&brief, &plan);
        let [boom, counterweight] = boom_and_counterweight(&brief, &plan);
        let off = moment_error(&[own, boom, counterweight]);
        agree("head", plan.payload.head_moment_n_m, about(at(plan.pose.pivot), &[own]), 4.0 * off)?;
        let apart = length(minus(at(plan.payload.centre), own.place));
        agree("payload", apart, 0.0, 1e-14 * (1000.0 + length(own.place)))?;
        for (state, on) in STATES.into_iter().zip([
            vec![own, boom, counterweight],
            vec![boom, counterweight],
            vec![own, boom],
        ]) {
            let expected = if plan.placement.boom_used { about(clamp(&plan), &on) } else { 0.0 };
            agree("clamp", standing(&plan, state).clamp_moment_n_m, expected, 4.0 * off)?;
        }
    }

    #[test]
    fn the_state_that_stands_worse_is_avoided(brief in studio_brief()) {
        let plan = plan_of(&brief);
        let weighted = brief.support.boom.is_some_and(|boom| boom.counterweight_kg > 0.0);
        let on = weighted && plan.placement.boom_used;
        let camera = plan.stability.camera_off.margin_mm;
        let counterweight = plan.stability.counterweight_off.margin_mm;
        match plan.removal {
            Removal::NoCounterweight => prop_assert!(!on),
            Removal::CameraFirst => prop_assert!(on && camera > 0.0 && camera >= counterweight),
            Removal::CounterweightFirst => prop_assert!(on && counterweight > 0.0 && counterweight > camera),
            Removal::HoldBoth => prop_assert!(on && camera <= 0.0 && counterweight <= 0.0),
        }
    }
}
