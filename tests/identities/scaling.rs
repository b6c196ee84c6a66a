//! A studio built twice as large has a plan twice as large: lengths doubled, angles and ratios the same to
//! the last bit. A hidden length anywhere would show.

use proptest::prelude::*;
use proptest::sample::select;
use tablerig::brief::{Brief, Framing};
use tablerig::plan::plan;
use tablerig::rig::support::Stiffness;
use tablerig::scene::subject::Shape;

use crate::briefs::{plan_of, studio_brief};
use crate::draws::runs;
use crate::workshop::numbers::numbers;

/// Everything with a length in it times k; masses, angles and shares as they are.
fn scaled(mut brief: Brief, k: f64) -> Brief {
    let times = |lengths: &mut [&mut f64]| lengths.iter_mut().for_each(|length| **length *= k);
    let given = |lengths: &mut [&mut Option<f64>]| {
        lengths.iter_mut().for_each(|length| **length = length.map(|length| length * k));
    };
    let Brief { shot, camera, lens, table, subject, support, bay, criteria } = &mut brief;
    if let Framing::FrameWidthMm(width) = &mut shot.framing {
        *width *= k;
    }
    times(&mut [&mut shot.aim_x_mm, &mut shot.aim_y_mm, &mut shot.light_clearance_mm]);
    given(&mut [&mut shot.aim_height_mm, &mut shot.backdrop_behind_mm]);
    times(&mut [&mut camera.sensor_width_mm, &mut camera.sensor_height_mm, &mut camera.socket_ahead_mm]);
    times(&mut [&mut camera.socket_below_mm, &mut camera.body_above_mm, &mut camera.body_behind_mm]);
    times(&mut [&mut camera.centre_ahead_mm, &mut lens.centre_ahead_mm, &mut lens.focal_length_mm]);
    times(&mut [&mut lens.principal_separation_mm]);
    given(&mut [
        &mut camera.circle_of_confusion_mm,
        &mut lens.closest_focus_mm,
        &mut lens.front_from_sensor_mm,
    ]);
    times(&mut [&mut table.width_mm, &mut table.depth_mm, &mut table.height_mm, &mut subject.height_mm]);
    match &mut subject.shape {
        Shape::Box { width_mm, depth_mm } => times(&mut [width_mm, depth_mm]),
        Shape::Round { diameter_mm } => times(&mut [diameter_mm]),
    }
    if let Some(vessel) = &mut subject.vessel {
        times(&mut [&mut vessel.inside_diameter_mm, &mut vessel.contents_below_rim_mm]);
    }
    times(&mut [&mut support.lowest_pivot_mm, &mut support.highest_pivot_mm, &mut support.column_radius_mm]);
    times(&mut [&mut support.foot_radius_mm, &mut support.legs_top_mm, &mut support.table_clearance_mm]);
    times(&mut [&mut support.centre_height_mm, &mut support.base_height_mm]);
    times(&mut [&mut support.head.pivot_below_socket_mm]);
    for bag in &mut support.sandbags {
        times(&mut [&mut bag.out_mm, &mut bag.height_mm]);
    }
    // The same weights on longer arms.
    let turning = |moment: &mut Option<f64>| *moment = moment.map(|moment| moment * k);
    turning(&mut support.head.rated_moment_n_m);
    if let Some(boom) = &mut support.boom {
        times(&mut [&mut boom.longest_reach_mm, &mut boom.tail_mm]);
        given(&mut [&mut boom.counterweight_out_mm]);
        turning(&mut boom.rated_clamp_moment_n_m);
        // P l³ / EI grows as k with EI as k²: stiffer, or of a softer stuff for its thickness.
        match &mut boom.stiffness {
            Some(Stiffness::Bending { bending_stiffness_n_m2 }) => *bending_stiffness_n_m2 *= k * k,
            Some(Stiffness::Tube { tube_outside_mm, tube_inside_mm, tube_modulus_n_per_mm2 }) => {
                times(&mut [tube_outside_mm, tube_inside_mm]);
                *tube_modulus_n_per_mm2 /= k * k;
            }
            None => {}
        }
    }
    // So the same boom swings more slowly, and counts as springy where it did.
    criteria.springy_frequency_hz /= k.sqrt();
    given(&mut [&mut bay.left_mm, &mut bay.right_mm, &mut bay.front_mm, &mut bay.back_mm]);
    given(&mut [&mut bay.ceiling_mm]);
    times(&mut [&mut bay.ceiling_clearance_mm, &mut bay.person_room_mm, &mut criteria.push_height_most_mm]);
    brief
}

/// By how much a number grows, by the unit at the end of its name.
fn growth(name: &str, k: f64) -> f64 {
    let last = name.rsplit('.').next().unwrap_or(name);
    match last {
        // Light does not grow with the studio.
        "diffraction_disc_mm" => 1.0,
        "diffraction_limit_f_number" => k,
        _ if last.ends_with("_n_m") || last.ends_with("_mm") => k,
        // A list of lengths has its unit one step up.
        _ if name.starts_with("placement.reach_from_sides_mm.") => k,
        _ if last.ends_with("_hz") => 1.0 / k.sqrt(),
        _ if last == "settling_s" || name.starts_with("sag.settling_s") && last != "given" => k.sqrt(),
        _ => 1.0,
    }
}

proptest! {
    #![proptest_config(runs(600))]

    #[test]
    fn lengths_grow_and_all_else_stays(brief in studio_brief(), k in select(vec![0.25, 0.5, 2.0, 4.0])) {
        let mut brief = brief;
        // Which opening diffraction allows does depend on the size, so it is given.
        brief.shot.f_number.get_or_insert(8.0);
        let Ok(large) = plan(&scaled(brief, k)) else {
            // Out of the ranges, which do not grow along.
            return Ok(());
        };
        let light = ["focus.stack", "cautions.StackNeeded", "cautions.DiffractionShows"];
        let of_light = |name: &str| light.iter().any(|of| name.starts_with(of));
        let both = [numbers(&plan_of(&brief)), numbers(&large)]
            .map(|all| all.into_iter().filter(|(name, _)| !of_light(name)).collect::<Vec<_>>());
        let [small, large] = both;
        prop_assert_eq!(small.len(), large.len());
        for ((name, before), (same, after)) in small.into_iter().zip(large) {
            prop_assert_eq!(&name, &same);
            let expected = before * growth(&name, k);
            // √k of a power of two need not be one.
            let swings = name.ends_with("_hz") || name.starts_with("sag.settling");
            let agrees = after == expected || (swings && (after / expected - 1.0).abs() <= 1e-15);
            prop_assert!(agrees, "{name}: {after} for {expected}");
        }
    }
}
