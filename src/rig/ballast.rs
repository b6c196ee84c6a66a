//! Solved for: counterweight, base weight, longest reach, and the best and worst direction of the legs.

use super::feet::{EdgeMoments, Feet, Turning};
use super::support::{Boom, MOST_LEGS, Support};
use super::weights::{Loads, RigState, Weight};
use crate::number::{Extremes, atan2_deg, hypot, sin_cos_deg, turn_deg};

/// What would make the rig stand better.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Ballast {
    /// The counterweight that balances the boom at the clamp, along it; `None` without a boom, or where it
    /// would hang at the clamp itself.
    pub counterweight_to_balance_kg: Option<f64>,
    /// Weight to add on the column's axis so that the wanted factor is kept in the states asked for.
    pub base_to_add_kg: f64,
    /// The longest reach that keeps the wanted factor as shot, everything else as it is, the pivot staying
    /// where it is and the column moving; no longer than the boom reaches. `None` where no reach does, or
    /// without a boom.
    pub longest_reach_mm: Option<f64>,
    /// Direction of the first leg, counter-clockwise from the boom's, that gives the largest margin as
    /// shot: a leg under the centre of gravity.
    pub best_first_leg_deg: f64,
    /// That margin.
    pub best_margin_mm: f64,
    /// Direction of the first leg that gives the smallest margin as shot: an edge square to the centre of
    /// gravity.
    pub worst_first_leg_deg: f64,
    /// That margin.
    pub worst_margin_mm: f64,
}

/// What the solved weights are to keep.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BallastWish {
    /// Restoring over overturning moment, at least 1.
    pub factor: f64,
    /// The states in which the base weight is to keep it: as shot, camera off, counterweight off.
    pub states: [bool; 3],
}

/// The counterweight that balances boom and payload at the clamp; 0 where the tail already outweighs
/// them.
pub fn counterweight_to_balance_kg(loads: &Loads, boom: &Boom) -> Option<f64> {
    let (_, cos) = sin_cos_deg(boom.pitch_deg);
    let arm = boom.counterweight_arm_mm() * cos;
    let moment = loads.payload.mass_kg * loads.payload.x_mm + loads.boom.mass_kg * loads.boom.x_mm;
    let balances = (moment / arm).larger(0.0);
    if arm > 0.0 && balances.is_finite() { Some(balances) } else { None }
}

/// Weight to add on the column's axis so that the factor is kept about every edge in the states asked for.
pub fn base_to_add_kg(feet: &Feet, loads: &Loads, wish: &BallastWish) -> f64 {
    base_to_add_by(feet, &feet.moments(loads), wish)
}

fn base_to_add_by(feet: &Feet, moments: &[EdgeMoments; MOST_LEGS], wish: &BallastWish) -> f64 {
    let states = [RigState::AsShot, RigState::CameraOff, RigState::CounterweightOff];
    let mut missing = 0.0_f64;
    for (_, about) in (1..=feet.count).zip(moments) {
        for (state, asked) in states.into_iter().zip(wish.states) {
            if asked {
                let Turning { restoring, overturning } = about.in_state(state);
                missing = missing.larger(wish.factor * overturning - restoring);
            }
        }
    }
    missing / feet.apothem_mm
}

/// The longest reach within `longest_mm` that keeps the factor about every edge as shot, from a rig of
/// `reach_mm`; `None` where none does.
///
/// The pivot stays and the column moves away from it: the payload goes out by the whole change, the
/// boom's middle by half.
pub fn longest_reach_mm(
    feet: &Feet,
    loads: &Loads,
    factor: f64,
    reach_mm: f64,
    longest_mm: f64,
) -> Option<f64> {
    longest_reach_by(feet, &feet.moments(loads), loads, factor, reach_mm, longest_mm)
}

fn longest_reach_by(
    feet: &Feet,
    moments: &[EdgeMoments; MOST_LEGS],
    loads: &Loads,
    factor: f64,
    reach_mm: f64,
    longest_mm: f64,
) -> Option<f64> {
    let (mut least, mut most) = (0.0_f64, longest_mm);
    for ((_, edge), about) in feet.numbered().zip(moments) {
        // Restoring less wanted overturning moment at a reach: each weight's part is m d inside the edge and
        // factor × m d outside; the sum is concave in the reach and straight between the reaches at which
        // payload or boom cross the edge.
        let value = |reach: f64| {
            let moved = |weight: &Weight, share: f64| {
                let x_mm = weight.x_mm + share * (reach - reach_mm);
                Turning::of(feet.moment(edge, &Weight { x_mm, ..*weight }))
            };
            let all = about.staying().and(moved(&loads.payload, 1.0)).and(moved(&loads.boom, 0.5));
            all.restoring - factor * all.overturning
        };
        // Reaches at which payload or boom cross this edge, within the bounds.
        let crossing = |weight: &Weight, share: f64| {
            let inside = feet.inside_mm(edge, weight.x_mm, weight.y_mm);
            let per_mm = share * edge.x;
            if per_mm == 0.0 { 0.0 } else { (reach_mm + inside / per_mm).larger(0.0).smaller(longest_mm) }
        };
        let (a, b) = (crossing(&loads.payload, 1.0), crossing(&loads.boom, 0.5));
        let knots = [0.0, a.smaller(b), a.larger(b), longest_mm];
        let mut kept: Option<(f64, f64)> = None;
        let mut widen = |at: f64| {
            kept = Some(kept.map_or((at, at), |(from, to)| (from.smaller(at), to.larger(at))));
        };
        let mut before: Option<(f64, f64)> = None;
        for knot in knots {
            if before.is_some_and(|(from, _)| from == knot) {
                continue;
            }
            let at_knot = value(knot);
            if at_knot >= 0.0 {
                widen(knot);
            }
            if let Some((from, at_from)) = before
                && (at_from < 0.0) != (at_knot < 0.0)
            {
                widen(from + (knot - from) * (at_from / (at_from - at_knot)));
            }
            before = Some((knot, at_knot));
        }
        let (from, to) = kept?;
        least = least.larger(from);
        most = most.smaller(to);
    }
    if most >= least { Some(most) } else { None }
}

/// Everything solved for, for a placed rig.
pub fn ballast(
    feet: &Feet,
    loads: &Loads,
    support: &Support,
    boom_used: bool,
    reach_mm: f64,
    wish: &BallastWish,
) -> Ballast {
    let [as_shot, ..] = loads.centres();
    ballast_by(feet, &feet.moments(loads), &as_shot, loads, support, boom_used, reach_mm, wish)
}

/// As [`ballast`], the moments about the edges and the centre of gravity as shot being known.
#[allow(clippy::too_many_arguments, reason = "what the public function takes, and what it finds")]
pub(crate) fn ballast_by(
    feet: &Feet,
    moments: &[EdgeMoments; MOST_LEGS],
    as_shot: &Weight,
    loads: &Loads,
    support: &Support,
    boom_used: bool,
    reach_mm: f64,
    wish: &BallastWish,
) -> Ballast {
    let boom = match &support.boom {
        Some(boom) if boom_used => Some(boom),
        _ => None,
    };
    let Weight { x_mm, y_mm, .. } = *as_shot;
    let out = hypot(x_mm, y_mm);
    let direction = atan2_deg(y_mm, x_mm);
    let spacing = support.leg_spacing_deg();
    let (_, cos_half) = sin_cos_deg(0.5 * spacing);
    // Directions of the first leg are alike but for whole spacings.
    let within = |angle: f64| {
        let turned = turn_deg(angle);
        turned - spacing * crate::number::floor(turned / spacing)
    };
    Ballast {
        counterweight_to_balance_kg: boom.and_then(|boom| counterweight_to_balance_kg(loads, boom)),
        base_to_add_kg: base_to_add_by(feet, moments, wish),
        longest_reach_mm: boom.and_then(|boom| {
            longest_reach_by(feet, moments, loads, wish.factor, reach_mm, boom.longest_reach_mm)
        }),
        best_first_leg_deg: within(direction),
        best_margin_mm: feet.apothem_mm - out * cos_half,
        worst_first_leg_deg: within(direction + 0.5 * spacing),
        worst_margin_mm: feet.apothem_mm - out,
    }
}
