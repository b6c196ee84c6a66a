//! The boom's sag against the beam equation integrated step by step, and its swing against energies.

use proptest::prelude::*;
use tablerig::rig::sag::{Sag, cantilever, first_frequency_hz, sag};

use crate::briefs::{plan_of, studio_brief};
use crate::draws::{runs, studio};
use crate::gear::boom;
use crate::space::agree;
use crate::weights::GRAVITY;

const STEPS: u32 = 400;

/// EI y'' = M(x) from the clamp out, the moment being that of what hangs further out: end's deflection and
/// slope. The classic fourth-order rule is exact for the polynomials that come in here.
fn integrated(end_n: f64, per_m: f64, length: f64, stiffness: f64) -> [f64; 2] {
    let bend = |x: f64| (end_n * (length - x) + per_m * (length - x) * (length - x) / 2.0) / stiffness;
    let h = length / f64::from(STEPS);
    let [mut y, mut slope] = [0.0, 0.0];
    for step in 0..STEPS {
        let x = f64::from(step) * h;
        let [start, middle, end] = [bend(x), bend(x + 0.5 * h), bend(x + h)];
        y += h * slope + h * h / 6.0 * (start + 2.0 * middle);
        slope += h / 6.0 * (start + 4.0 * middle + end);
    }
    [y, slope]
}

/// Lord Rayleigh's quotient: the shape under the end load, its energies integrated step by step.
fn rayleigh_hz(end_kg: f64, beam_kg: f64, length: f64, stiffness: f64) -> f64 {
    let h = length / f64::from(STEPS);
    let (mut bending, mut moving) = (0.0, end_kg);
    for step in 0..STEPS {
        let x = (f64::from(step) + 0.5) * h;
        // Deflection of one at the end.
        let y = (3.0 * length * x * x - x * x * x) / (2.0 * length * length * length);
        let bend = 3.0 * (length - x) / (length * length * length);
        bending += stiffness * bend * bend * h;
        moving += beam_kg / length * y * y * h;
    }
    (bending / moving).sqrt() / std::f64::consts::TAU
}

proptest! {
    #![proptest_config(runs(500))]

    #[test]
    fn the_beam_bends_as_integrated(
        end in 0.0..100.0_f64,
        per_m in 0.0..100.0_f64,
        length in 0.1..5.0_f64,
        stiffness in 10.0..1e6_f64,
    ) {
        let (deflection, slope) = cantilever(end, per_m, length, stiffness);
        let [y, turned] = integrated(end, per_m, length, stiffness);
        agree("deflection", deflection, y, 1e-12 * y)?;
        agree("slope", slope, turned, 1e-12 * turned)?;
    }

    #[test]
    fn the_boom_swings_as_its_energies_say(
        end in 0.1..20.0_f64,
        beam in 0.0..20.0_f64,
        length in 0.1..5.0_f64,
        stiffness in 10.0..1e6_f64,
    ) {
        let found = first_frequency_hz(end, beam, length, stiffness);
        // The midpoint rule on 400 steps is good to a millionth.
        agree("frequency", found, rayleigh_hz(end, beam, length, stiffness), 1e-5 * found)?;
    }

    #[test]
    fn a_boom_is_the_beam_out_from_its_clamp(
        boom in boom(studio),
        length in 1.0..2500.0_f64,
        payload in 0.0..8.0_f64,
        distance in 100.0..3000.0_f64,
        settled in 0.001..0.5_f64,
    ) {
        let Some(found) = sag(&boom, length, payload, distance, settled) else {
            prop_assert!(boom.stiffness.is_none());
            return Ok(());
        };
        let Sag { deflection_mm, height_lost_mm, end_slope_deg, aim_shift_mm, .. } = found;
        let (frequency_hz, settling_s) = (found.frequency_hz, found.settling_s);
        let pitch = boom.pitch_deg.to_radians();
        let stiffness = boom.stiffness.unwrap().bending_stiffness_n_m2();
        let kg_per_mm = boom.mass_kg / (length + boom.tail_mm);
        let [y, slope] = integrated(
            payload * GRAVITY * pitch.cos(),
            1000.0 * kg_per_mm * GRAVITY * pitch.cos(),
            length / 1000.0,
            stiffness,
        );
        agree("deflection", deflection_mm, 1000.0 * y, 1e-12 * 1000.0 * y)?;
        agree("height lost", height_lost_mm, deflection_mm * pitch.cos(), 1e-14 * deflection_mm)?;
        agree("slope", end_slope_deg, slope.to_degrees(), 1e-12 * end_slope_deg)?;
        agree("aim", aim_shift_mm, distance * slope, 1e-12 * aim_shift_mm)?;
        let hz = rayleigh_hz(payload, kg_per_mm * length, length / 1000.0, stiffness);
        agree("frequency", frequency_hz, hz, 1e-5 * hz)?;
        prop_assert_eq!(settling_s.is_some(), boom.damping_ratio.is_some());
        if let (Some(wait), Some(ratio)) = (settling_s, boom.damping_ratio) {
            // The swing's envelope at that time.
            let left = (-ratio * std::f64::consts::TAU * frequency_hz * wait).exp();
            agree("left of the swing", left, settled, 1e-13)?;
        }
    }

    #[test]
    fn a_plans_sag_is_that_of_its_own_boom(brief in studio_brief()) {
        let plan = plan_of(&brief);
        let Some(found) = plan.sag else {
            let stiff = brief.support.boom.is_some_and(|boom| boom.stiffness.is_some());
            prop_assert!(!stiff || !plan.placement.boom_used);
            return Ok(());
        };
        let mass = brief.camera.mass_kg + brief.lens.mass_kg + brief.support.head.mass_kg;
        let boom = brief.support.boom.unwrap();
        let pitch = boom.pitch_deg.to_radians();
        let length = plan.placement.reach_mm / pitch.cos();
        agree("length", plan.placement.boom_length_mm, length, 1e-14 * length)?;
        let (distance, settled) = (plan.lens.sensor_distance_mm, brief.criteria.settled_share);
        let alone = sag(&boom, length, mass, distance, settled).unwrap();
        agree("deflection", found.deflection_mm, alone.deflection_mm, 1e-12 * alone.deflection_mm)?;
        agree("aim", found.aim_shift_mm, alone.aim_shift_mm, 1e-12 * alone.aim_shift_mm.abs())?;
    }
}
