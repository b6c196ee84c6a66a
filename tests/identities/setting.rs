//! How exactly to set it: moved by what is allowed the camera is at a limit, by less inside; and what was
//! measured on the set gives back what was planned.

use proptest::prelude::*;
use tablerig::brief::{Brief, Framing};
use tablerig::optics::inverse::magnification_at;
use tablerig::optics::lens::Lens;
use tablerig::plan::Plan;
use tablerig::tolerance::{Measured, Measurement, RealShot, real_shot};

use crate::briefs::{plan_of, studio_brief};
use crate::draws::runs;
use crate::space::{agree, answer};

/// The largest magnification to which a lens focuses.
fn largest_magnification(brief: &Brief) -> f64 {
    match (brief.lens.closest_focus_mm, brief.lens.largest_magnification) {
        (Some(_), Some(largest)) => largest,
        (Some(closest), None) => magnification_at(&brief.lens, closest).unwrap_or(1.0),
        _ => 1.0,
    }
}

/// How far a camera at a level distance and a height from the aim point is from what was planned, in
/// allowances: of elevation and of frame width.
fn off(brief: &Brief, plan: &Plan, level: f64, height: f64) -> Result<f64, TestCaseError> {
    let elevation = height.atan2(level).to_degrees();
    let m = answer(magnification_at(&brief.lens, level.hypot(height)))?;
    let width = plan.used_area.width_mm / m;
    let turned = (elevation - brief.shot.elevation_deg).abs() / brief.shot.elevation_tolerance_deg;
    let wider = (width / plan.frame_width_mm - 1.0).abs() / brief.shot.frame_width_tolerance;
    Ok(turned.max(wider))
}

fn exact(value: f64) -> Measurement {
    Measurement { value, uncertainty: 0.0 }
}

/// The three ways to measure a planned camera: heights and level distance, tape and inclinometer, heights
/// and tape.
fn measured(plan: &Plan, elevation_deg: f64) -> [Measured; 3] {
    let sensor_height_mm = exact(plan.pose.sensor.z_mm);
    let aim_height_above_floor_mm = exact(plan.pose.aim.z_mm);
    let sensor_distance_mm = exact(plan.lens.sensor_distance_mm);
    let horizontal_distance_mm = exact(plan.pose.sensor_from_aim_mm);
    [
        Measured::HeightAndDistance { sensor_height_mm, aim_height_above_floor_mm, horizontal_distance_mm },
        Measured::TapeAndInclinometer { sensor_distance_mm, elevation_deg: exact(elevation_deg) },
        Measured::HeightAndTape { sensor_height_mm, aim_height_above_floor_mm, sensor_distance_mm },
    ]
}

/// The parts of a measurement, to be changed one at a time.
fn parts(measured: &mut Measured) -> Vec<&mut Measurement> {
    match measured {
        Measured::HeightAndDistance {
            sensor_height_mm: a,
            aim_height_above_floor_mm: b,
            horizontal_distance_mm: c,
        }
        | Measured::HeightAndTape {
            sensor_height_mm: a,
            aim_height_above_floor_mm: b,
            sensor_distance_mm: c,
        } => {
            vec![a, b, c]
        }
        Measured::TapeAndInclinometer { sensor_distance_mm, elevation_deg } => {
            vec![sensor_distance_mm, elevation_deg]
        }
    }
}

/// From life size on the distance stands still or grows with the magnification: what is then allowed must
/// not come out as nothing, or less.
#[test]
fn at_and_above_life_size_there_is_still_room() {
    for magnification in [0.97, 0.99, 1.0, 1.01, 1.03, 2.0, 5.0] {
        let mut brief = crate::workshop::overhead();
        brief.lens = crate::workshop::lens(60.0);
        brief.shot.framing = Framing::FrameWidthMm(36.0 / magnification);
        brief.shot.elevation_deg = 40.0;
        let set = plan_of(&brief).tolerance;
        for room in [set.up_mm, set.down_mm, set.away_mm, set.closer_mm] {
            // At life size itself nothing is nearer.
            assert!(room > 0.0 || (room == 0.0 && magnification == 1.0), "{room} at {magnification}");
        }
    }
}

/// A lens whose closest focus and largest magnification are published comes nearer as far as that, beyond life
/// size: there too what is allowed ends at a limit, on either side of the closest focus.
#[test]
fn a_published_lens_turns_back_at_its_largest_magnification() {
    for magnification in [0.9, 0.999_999, 1.0, 1.5, 1.9] {
        let mut brief = crate::workshop::overhead();
        // Twice life size at 3.2 times the focal length, sensor to object.
        brief.lens = Lens {
            closest_focus_mm: Some(192.0),
            largest_magnification: Some(2.0),
            ..crate::workshop::lens(60.0)
        };
        brief.shot.framing = Framing::FrameWidthMm(36.0 / magnification);
        brief.shot.elevation_deg = 40.0;
        // Wider the limit is a real place; narrower than the largest magnification allows there is none.
        let ends = magnification / (1.0 - brief.shot.frame_width_tolerance) < 2.0;
        let plan = plan_of(&brief);
        let (sin, cos) = 40.0_f64.to_radians().sin_cos();
        let (d, set) = (plan.lens.sensor_distance_mm, plan.tolerance);
        for (away, level, height) in [
            (true, 0.0, set.up_mm),
            (true, set.away_mm, 0.0),
            (ends, 0.0, -set.down_mm),
            (ends, -set.closer_mm, 0.0),
        ] {
            let place = (d * cos + level, d * sin + height);
            // Where nothing ends it, it may come as near as the lens focuses.
            let found = if away { off(&brief, &plan, place.0, place.1).unwrap() } else { 1.0 };
            let nearest = place.0.hypot(place.1);
            assert!(
                (found - 1.0).abs() < 1e-9 && nearest > 192.0 * (1.0 - 1e-12),
                "{magnification}: {found}"
            );
        }
    }
}

proptest! {
    #![proptest_config(runs(800))]

    #[test]
    fn moved_by_the_allowance_the_camera_is_at_a_limit(brief in studio_brief()) {
        let plan = plan_of(&brief);
        let nearest = plan.lens.magnification / (1.0 - brief.shot.frame_width_tolerance);
        // Where the lens still focuses when it is too near, and the distance does not yet stand still.
        if nearest > 0.95 * largest_magnification(&brief).min(1.0) {
            return Ok(());
        }
        let d = plan.lens.sensor_distance_mm;
        let (sin, cos) = brief.shot.elevation_deg.to_radians().sin_cos();
        let set = &plan.tolerance;
        for (name, way, most) in [
            ("up", [0.0, 1.0], set.up_mm),
            ("down", [0.0, -1.0], set.down_mm),
            ("away", [1.0, 0.0], set.away_mm),
            ("closer", [-1.0, 0.0], set.closer_mm),
        ] {
            prop_assert!(most > 0.0 && most.is_finite(), "{name} {most}");
            let moved = |by: f64| off(&brief, &plan, d * cos + by * way[0], d * sin + by * way[1]);
            // What rounding of the distance is worth in the smaller of the two allowances.
            let small = brief.shot.elevation_tolerance_deg.to_radians().min(brief.shot.frame_width_tolerance);
            agree(name, moved(most)?, 1.0, 1e-11 / small)?;
            for share in [0.1, 0.5, 0.9, 0.999] {
                prop_assert!(moved(share * most)? < 1.0, "{name} at {share}");
            }
        }
        let roll = brief.shot.roll_tolerance_deg.to_radians().tan() * plan.frame_width_mm;
        agree("roll", set.roll_drift_mm, roll, 1e-14 * plan.frame_width_mm)?;
    }

    #[test]
    fn what_is_measured_gives_back_the_plan(brief in studio_brief()) {
        let plan = plan_of(&brief);
        if plan.lens.magnification > 0.999 * largest_magnification(&brief) || plan.pose.sensor.z_mm < 0.0 {
            return Ok(());
        }
        let d = plan.lens.sensor_distance_mm;
        let rounding = 4e-16 * (plan.pose.sensor.z_mm + plan.pose.aim.z_mm + d) / d;
        for (way, measured) in measured(&plan, brief.shot.elevation_deg).iter().enumerate() {
            let real = match real_shot(measured, &brief.lens, plan.used_area.width_mm) {
                Ok(real) => real,
                // Overhead the tape is the height, and rounding may make it the shorter of the two.
                Err(_) if way == 2 && brief.shot.elevation_deg > 89.999 => continue,
                Err(fault) => return Err(TestCaseError::fail(fault.to_string())),
            };
            let RealShot { elevation_deg, frame_width_mm, sensor_distance_mm, magnification } = real;
            // Heights and a tape hardly tell an elevation near 90: its sine stands still.
            let cos = brief.shot.elevation_deg.to_radians().cos();
            let allowed = if way == 2 { rounding.sqrt().min(rounding / cos) } else { rounding };
            let allowed = (2.0 * allowed).to_degrees() + 2e-14;
            agree("elevation", elevation_deg.value, brief.shot.elevation_deg, allowed)?;
            agree("distance", sensor_distance_mm.value, d, 4.0 * rounding * d)?;
            // Next to life size a small part of the distance is a large one of the width.
            let m = plan.lens.magnification;
            let steep = 1.0 / (1.0 - m / largest_magnification(&brief).max(1.0)).abs().max(1e-3);
            let allowed = 1e-12 * steep * steep;
            agree("magnification", magnification / m, 1.0, allowed)?;
            agree("frame width", frame_width_mm.value / plan.frame_width_mm, 1.0, allowed)?;
            prop_assert_eq!((elevation_deg.uncertainty, frame_width_mm.uncertainty), (0.0, 0.0));
        }
    }

    /// One standard deviation in each measured value, changed by itself, and the changes squared and summed.
    #[test]
    fn uncertainties_are_those_of_small_changes(brief in studio_brief(), spread in 0.01..1.0_f64) {
        let mut brief = brief;
        brief.shot.elevation_deg = brief.shot.elevation_deg.min(80.0);
        let plan = plan_of(&brief);
        if plan.lens.magnification > 0.8 * largest_magnification(&brief) || plan.pose.sensor.z_mm < 1.0 {
            return Ok(());
        }
        let used = plan.used_area.width_mm;
        for measured in measured(&plan, brief.shot.elevation_deg) {
            let mut uncertain = measured;
            let spreads: Vec<f64> = parts(&mut uncertain)
                .into_iter()
                .enumerate()
                .map(|(index, part)| {
                    part.uncertainty = spread * (1.0 + index as f64);
                    part.uncertainty
                })
                .collect();
            let found = answer(real_shot(&uncertain, &brief.lens, used))?;
            let (mut elevation, mut width, mut distance) = (0.0_f64, 0.0_f64, 0.0_f64);
            for (index, spread) in spreads.iter().enumerate() {
                let at = |by: f64| {
                    let mut changed = measured;
                    parts(&mut changed)[index].value += by;
                    answer(real_shot(&changed, &brief.lens, used))
                };
                // A thousandth of it each way: the differential, to a millionth.
                let (more, less) = (at(1e-3 * spread)?, at(-1e-3 * spread)?);
                let change = |more: Measurement, less: Measurement| (more.value - less.value) / 2e-3;
                elevation = elevation.hypot(change(more.elevation_deg, less.elevation_deg));
                width = width.hypot(change(more.frame_width_mm, less.frame_width_mm));
                distance = distance.hypot(change(more.sensor_distance_mm, less.sensor_distance_mm));
            }
            agree("elevation", found.elevation_deg.uncertainty, elevation, 1e-4 * elevation)?;
            agree("width", found.frame_width_mm.uncertainty, width, 1e-4 * width)?;
            agree("distance", found.sensor_distance_mm.uncertainty, distance, 1e-4 * distance)?;
        }
    }
}
