//! Cases of standing and ratings.

use tablerig::brief::Brief;
use tablerig::caution::CautionCode as Code;
use tablerig::caution::Level;
use tablerig::plan::Plan;
use tablerig::rig::support::Boom;

use crate::workshop::{overhead, slanting};
use crate::{Case, JUST, both, case, over_under, planned, under_over, with};

fn boom(brief: &mut Brief) -> &mut Boom {
    brief.support.boom.as_mut().unwrap()
}

pub(crate) fn cases() -> Vec<Case> {
    [share_and_factors(), tilt_and_push(), ratings(), rest()].into_iter().flatten().collect()
}

/// The workshop's boom far out, so that every part of it is near its limits.
fn far_out() -> Brief {
    with(overhead(), |brief| {
        brief.support.table_clearance_mm = 300.0;
        boom(brief).counterweight_kg = 3.0;
    })
}

/// Briefs that stand at a limit exactly.
pub(crate) fn exact() -> Vec<(Code, Brief)> {
    // No other limit in the way.
    let base = with(far_out(), |brief| {
        let criteria = &mut brief.criteria;
        (criteria.factor_note, criteria.factor_warn, criteria.factor_stop) = (0.0, 0.0, 0.0);
        (criteria.payload_share_warn, criteria.payload_share_stop) = (9.0, 9.0);
        (criteria.tilt_warn_deg, criteria.tilt_stop_deg) = (0.0, 0.0);
    });
    let plan = planned(&base);
    let stability = plan.stability;
    let camera_off = stability.camera_off.factor;
    let mut all = vec![
        (Code::FactorAsShot, with(base, |brief| brief.criteria.factor_note = stability.as_shot.factor)),
        (Code::FactorCameraOff, with(base, |brief| brief.criteria.factor_warn = camera_off)),
        (
            Code::FactorCounterweightOff,
            with(base, |brief| brief.criteria.factor_warn = stability.counterweight_off.factor),
        ),
        (Code::PayloadShare, with(base, |brief| brief.criteria.payload_share_note = stability.payload_share)),
        (
            Code::TiltToTip,
            with(base, |brief| brief.criteria.tilt_warn_deg = stability.as_shot.tilt_to_tip_deg),
        ),
        (
            Code::SpringyBoom,
            with(base, |brief| {
                brief.criteria.springy_frequency_hz = 1000.0;
                brief.criteria.springy_factor_warn = stability.as_shot.factor;
            }),
        ),
        (
            Code::SpringyBoom,
            with(base, |brief| {
                brief.criteria.springy_frequency_hz = plan.sag.unwrap().frequency_hz;
                brief.criteria.springy_factor_warn = 50.0;
            }),
        ),
        (Code::FloorNotLevel, with(base, |brief| brief.bay.floor_slope_percent = 1.0)),
    ];
    for (code, rate) in RATINGS {
        // Rated at nothing, each tells what it carries.
        let carried = planned(&with(base, |brief| rate(brief, 0.0))).cautions.find(*code).unwrap().value;
        all.push((*code, with(base, |brief| rate(brief, carried))));
    }
    all
}

/// Sets a maker's rating.
type Rate = fn(&mut Brief, f64);

const RATINGS: &[(Code, Rate)] = &[
    (Code::SupportLoadRating, |brief, most| brief.support.rated_load_kg = Some(most)),
    (Code::BoomLoadRating, |brief, most| boom(brief).rated_load_kg = Some(most)),
    (Code::ClampMomentRating, |brief, most| boom(brief).rated_clamp_moment_n_m = Some(most)),
    (Code::HeadLoadRating, |brief, most| brief.support.head.rated_load_kg = Some(most)),
    (Code::HeadMomentRating, |brief, most| brief.support.head.rated_moment_n_m = Some(most)),
];

fn share_and_factors() -> Vec<Case> {
    let base = far_out();
    let stability = planned(&base).stability;
    let share = stability.payload_share;
    let [as_shot, camera_off, counterweight_off] =
        [stability.as_shot, stability.camera_off, stability.counterweight_off].map(|state| state.factor);
    let mut cases = Vec::new();
    for level in [Level::Note, Level::Warn, Level::Stop] {
        let shares = |brief: &mut Brief, at: f64| {
            let criteria = &mut brief.criteria;
            criteria.payload_share_note = at;
            criteria.payload_share_warn = if level > Level::Note { at } else { 9.0 };
            criteria.payload_share_stop = if level > Level::Warn { at } else { 9.0 };
            if level == Level::Warn {
                criteria.payload_share_note = 0.0;
            }
        };
        let value = |plan: &Plan| plan.stability.payload_share;
        let briefs = both(base, under_over(share), shares);
        cases.push(case(Code::PayloadShare, level, briefs, value, share));
        let factors = |brief: &mut Brief, at: f64| {
            let criteria = &mut brief.criteria;
            criteria.factor_note = at;
            criteria.factor_warn = if level > Level::Note { at } else { 0.0 };
            criteria.factor_stop = if level > Level::Warn { at } else { 0.0 };
        };
        let value = |plan: &Plan| plan.stability.as_shot.factor;
        let briefs = both(base, over_under(as_shot), factors);
        cases.push(case(Code::FactorAsShot, level, briefs, value, as_shot));
    }
    // A stop comes at the limit itself.
    let at_limit =
        both(base, [share, share * (1.0 + JUST)], |brief, at| brief.criteria.payload_share_stop = at);
    cases.push(case(Code::PayloadShare, Level::Stop, at_limit, |plan| plan.stability.payload_share, share));
    // Passed through by hand: a stand that would tip is warned of, one that hardly stands noted.
    for level in [Level::Note, Level::Warn] {
        let factors = |brief: &mut Brief, at: f64| {
            brief.criteria.factor_warn = at;
            brief.criteria.factor_stop = if level == Level::Warn { at } else { 0.0 };
        };
        let value = |plan: &Plan| plan.stability.camera_off.factor;
        let briefs = both(base, over_under(camera_off), factors);
        cases.push(case(Code::FactorCameraOff, level, briefs, value, camera_off));
        let value = |plan: &Plan| plan.stability.counterweight_off.factor;
        let briefs = both(base, over_under(counterweight_off), factors);
        cases.push(case(Code::FactorCounterweightOff, level, briefs, value, counterweight_off));
    }
    assert!(share > 0.0 && as_shot.is_finite() && camera_off.is_finite() && counterweight_off.is_finite());
    cases
}

fn tilt_and_push() -> Vec<Case> {
    let slope = with(overhead(), |brief| brief.bay.floor_slope_percent = 3.0);
    let plan = planned(&slope);
    let tilt = plan.stability.as_shot.tilt_to_tip_deg - 0.03_f64.atan().to_degrees();
    let value = move |plan: &Plan| plan.stability.as_shot.tilt_to_tip_deg - 0.03_f64.atan().to_degrees();
    let warn = |brief: &mut Brief, at: f64| {
        brief.criteria.tilt_warn_deg = at;
        brief.criteria.tilt_stop_deg = 0.0;
    };
    let public = |brief: &mut Brief, at: f64| {
        brief.bay.public_passes = true;
        brief.criteria.tilt_public_warn_deg = at;
        brief.criteria.tilt_warn_deg = 0.0;
        brief.criteria.tilt_stop_deg = 0.0;
    };
    let stop = |brief: &mut Brief, at: f64| brief.criteria.tilt_stop_deg = at;
    let mut cases = vec![
        case(Code::TiltToTip, Level::Warn, both(slope, over_under(tilt), warn), value, tilt),
        case(Code::TiltToTip, Level::Warn, both(slope, over_under(tilt), public), value, tilt),
        case(Code::TiltToTip, Level::Stop, both(slope, over_under(tilt), stop), value, tilt),
    ];
    // The pivot hangs higher than a push is taken; the weight times the margin over that height.
    let base = overhead();
    let as_shot = planned(&base).stability.as_shot;
    let weight = as_shot.total_mass_kg * 9.80665;
    let push = weight * as_shot.margin_mm / 1500.0;
    let value = move |_: &Plan| push;
    let share = |brief: &mut Brief, at: f64| brief.criteria.push_share_warn = at / weight;
    let most = |brief: &mut Brief, at: f64| {
        brief.criteria.push_share_warn = 10.0;
        brief.criteria.push_most_n = at;
    };
    // Taken at the pivot itself where that is lower.
    let high = |brief: &mut Brief, at: f64| {
        brief.criteria.push_height_most_mm = 5000.0;
        brief.criteria.push_most_n = at;
        brief.criteria.push_share_warn = 10.0;
    };
    let at_pivot = as_shot.push_to_tip_n;
    cases.extend([
        case(Code::PushToTip, Level::Warn, both(base, over_under(push), share), value, push),
        case(Code::PushToTip, Level::Warn, both(base, over_under(push), most), value, push),
        case(
            Code::PushToTip,
            Level::Warn,
            both(base, over_under(at_pivot), high),
            move |_| at_pivot,
            at_pivot,
        ),
    ]);
    cases
}

fn ratings() -> Vec<Case> {
    let base = overhead();
    let plan = planned(&base);
    let stability = &plan.stability;
    // Camera 0.7, lens 0.6, head 0.5; boom 1.6, counterweight 4: what the column carries above its clamp.
    let carried = 0.7 + 0.6 + 0.5 + 1.6 + 4.0;
    let clamp = [stability.as_shot, stability.camera_off, stability.counterweight_off]
        .iter()
        .fold(0.0_f64, |most, state| most.max(state.clamp_moment_n_m));
    let head = plan.payload.head_moment_n_m;
    // The head carries what is on it, not itself.
    let values = [carried, 1.8, clamp, 1.3, head];
    let mut cases = Vec::new();
    for ((code, rate), value) in RATINGS.iter().copied().zip(values) {
        cases.push(case(code, Level::Stop, both(base, under_over(value), rate), move |_| value, value));
        // Over people half of it.
        let halved = move |brief: &mut Brief, most: f64| {
            brief.bay.people_under = true;
            rate(brief, 2.0 * most);
        };
        cases.push(case(code, Level::Stop, both(base, under_over(value), halved), move |_| value, value));
    }
    cases
}

fn rest() -> Vec<Case> {
    let base = overhead();
    let plan = planned(&base);
    let hz = plan.sag.unwrap().frequency_hz;
    let factor = plan.stability.as_shot.factor;
    let factor_of = |plan: &Plan| plan.stability.as_shot.factor;
    let shift = plan.sag.unwrap().aim_shift_mm / 600.0;
    let slow = with(base, |brief| brief.criteria.springy_factor_warn = 50.0);
    let springy = with(base, |brief| brief.criteria.springy_frequency_hz = 1000.0);
    // A tripod whose camera looks in over the edge: pushed forward until its sensor is over the table.
    let peeping = with(slanting(), |brief| {
        brief.shot.elevation_deg = 0.0;
        brief.shot.aim_height_mm = Some(200.0);
        brief.camera.socket_ahead_mm = -300.0;
    });
    let d = planned(&peeping).lens.sensor_distance_mm;
    let people = [true, false].map(|under| with(slanting(), |brief| brief.bay.people_under = under));
    let mass = |_: &Plan| 0.7 + 0.6 + 0.5;
    vec![
        case(
            Code::SpringyBoom,
            Level::Warn,
            both(slow, over_under(hz), |brief, hz| brief.criteria.springy_frequency_hz = hz),
            factor_of,
            50.0,
        ),
        case(
            Code::SpringyBoom,
            Level::Warn,
            both(springy, over_under(factor), |brief, at| brief.criteria.springy_factor_warn = at),
            factor_of,
            factor,
        ),
        case(
            Code::FloorNotLevel,
            Level::Note,
            both(base, [1.0 + JUST, 1.0], |brief, slope| brief.bay.floor_slope_percent = slope),
            |_| 1.0 + JUST,
            1.0,
        ),
        case(
            Code::SagMovesAim,
            Level::Note,
            both(base, under_over(shift), |brief, share| brief.shot.frame_width_tolerance = share),
            |plan| plan.sag.unwrap().aim_shift_mm,
            shift * 600.0,
        ),
        case(
            Code::LoadOverhead,
            Level::Note,
            both(peeping, over_under(d - 400.0), |brief, y| brief.shot.aim_y_mm = y),
            mass,
            0.0,
        ),
        case(Code::LoadOverhead, Level::Note, people, mass, 0.0),
        // A boom always hangs over something.
        case(
            Code::LoadOverhead,
            Level::Note,
            [true, false].map(|boomed| {
                with(slanting(), |brief| {
                    if boomed {
                        brief.support.boom = overhead().support.boom;
                        brief.support.table_clearance_mm = 800.0;
                    }
                })
            }),
            mass,
            0.0,
        ),
    ]
}
