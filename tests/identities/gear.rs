//! Cameras, lenses and supports drawn at random, each consistent in itself.

use proptest::collection::vec;
use proptest::prelude::*;
use tablerig::optics::camera::Camera;
use tablerig::optics::lens::Lens;
use tablerig::rig::support::{Boom, Head, Sandbag, Stiffness, Support};

use crate::draws::{Draw, maybe};

pub(crate) fn camera(draw: Draw) -> BoxedStrategy<Camera> {
    (
        draw("camera.sensor_width_mm"),
        draw("camera.sensor_height_mm"),
        maybe(draw("camera.circle_of_confusion_mm")),
        draw("camera.socket_ahead_mm"),
        draw("camera.socket_below_mm"),
        draw("camera.body_above_mm"),
        draw("camera.body_behind_mm"),
        draw("camera.mass_kg"),
        draw("camera.centre_ahead_mm"),
    )
        .prop_map(|(width, height, circle, ahead, below, above, behind, mass_kg, centre)| Camera {
            sensor_width_mm: width,
            sensor_height_mm: height,
            circle_of_confusion_mm: circle,
            socket_ahead_mm: ahead,
            socket_below_mm: below,
            body_above_mm: above,
            body_behind_mm: behind,
            mass_kg,
            centre_ahead_mm: centre,
        })
        .boxed()
}

/// A lens, its closest focus in step with its largest magnification where it has both.
pub(crate) fn lens(draw: Draw) -> BoxedStrategy<Lens> {
    let focus = (maybe(draw("lens.largest_magnification")), maybe(0.3..1.1));
    let first = (
        draw("lens.focal_length_mm"),
        draw("lens.pupil_ratio"),
        draw("lens.principal_separation_mm"),
        draw("lens.least_f_number"),
        draw("lens.most_f_number"),
    );
    let second = (
        maybe(draw("lens.front_from_sensor_mm")),
        draw("lens.largest_tilt_deg"),
        draw("lens.mass_kg"),
        draw("lens.centre_ahead_mm"),
    );
    (focus, first, second)
        .prop_map(|((largest, share), (f, p, k, n1, n2), (front, tilt, mass_kg, centre))| {
            let m = largest.unwrap_or(0.5);
            // The aim point lies in front of the sensor.
            let k = k.max(-3.99 * f);
            let closest = share.map(|share| k + share * f * (1.0 + m) * (1.0 + m) / m);
            let lens = Lens {
                focal_length_mm: f,
                closest_focus_mm: closest,
                largest_magnification: largest,
                pupil_ratio: p,
                principal_separation_mm: k,
                least_f_number: n1.min(n2),
                most_f_number: n1.max(n2),
                front_from_sensor_mm: front,
                largest_tilt_deg: tilt,
                mass_kg,
                centre_ahead_mm: centre,
            };
            if lens.check().is_ok() { lens } else { Lens { closest_focus_mm: None, ..lens } }
        })
        .boxed()
}

fn stiffness(draw: Draw) -> BoxedStrategy<Stiffness> {
    (
        any::<bool>(),
        draw("support.boom.stiffness.bending_stiffness_n_m2"),
        draw("support.boom.stiffness.tube_outside_mm"),
        draw("support.boom.stiffness.tube_inside_mm"),
        draw("support.boom.stiffness.tube_modulus_n_per_mm2"),
    )
        .prop_map(|(tube, bending_stiffness_n_m2, outside, inside, modulus)| {
            if tube {
                Stiffness::Tube {
                    tube_outside_mm: outside,
                    tube_inside_mm: inside.min(0.999 * outside),
                    tube_modulus_n_per_mm2: modulus,
                }
            } else {
                Stiffness::Bending { bending_stiffness_n_m2 }
            }
        })
        .boxed()
}

pub(crate) fn boom(draw: Draw) -> BoxedStrategy<Boom> {
    (
        draw("support.boom.longest_reach_mm"),
        draw("support.boom.tail_mm"),
        draw("support.boom.mass_kg"),
        draw("support.boom.pitch_deg"),
        draw("support.boom.counterweight_kg"),
        maybe(draw("support.boom.counterweight_out_mm")),
        maybe(stiffness(draw)),
        maybe(draw("support.boom.damping_ratio")),
        maybe(draw("support.boom.rated_load_kg")),
        maybe(draw("support.boom.rated_clamp_moment_n_m")),
    )
        .prop_map(|(reach, tail, mass_kg, pitch_deg, counter, out, stiffness, damping, load, moment)| Boom {
            longest_reach_mm: reach,
            tail_mm: tail,
            mass_kg,
            pitch_deg,
            counterweight_kg: counter,
            counterweight_out_mm: out.map(|out| out.min(tail)),
            stiffness,
            damping_ratio: damping,
            rated_load_kg: load,
            rated_clamp_moment_n_m: moment,
        })
        .boxed()
}

fn sandbag(draw: Draw) -> BoxedStrategy<Sandbag> {
    (
        draw("support.sandbags.mass_kg"),
        draw("support.sandbags.out_mm"),
        draw("support.sandbags.direction_deg"),
        draw("support.sandbags.height_mm"),
    )
        .prop_map(|(mass_kg, out_mm, direction_deg, height_mm)| Sandbag {
            mass_kg,
            out_mm,
            direction_deg,
            height_mm,
        })
        .boxed()
}

fn head(draw: Draw) -> BoxedStrategy<Head> {
    (
        draw("support.head.mass_kg"),
        draw("support.head.pivot_below_socket_mm"),
        maybe(draw("support.head.rated_load_kg")),
        maybe(draw("support.head.rated_moment_n_m")),
    )
        .prop_map(|(mass_kg, pivot_below_socket_mm, rated_load_kg, rated_moment_n_m)| Head {
            mass_kg,
            pivot_below_socket_mm,
            rated_load_kg,
            rated_moment_n_m,
        })
        .boxed()
}

/// A tripod or a stand, more often with a boom, its sandbags in one case of two.
pub(crate) fn support(draw: Draw) -> BoxedStrategy<Support> {
    let column = (
        draw("support.lowest_pivot_mm"),
        draw("support.highest_pivot_mm"),
        draw("support.column_radius_mm"),
        3_u32..=8,
        draw("support.foot_radius_mm"),
        draw("support.legs_top_mm"),
        maybe(draw("support.first_leg_deg")),
        draw("support.table_clearance_mm"),
    );
    let masses = (
        draw("support.mass_kg"),
        draw("support.centre_height_mm"),
        draw("support.base_mass_kg"),
        draw("support.base_height_mm"),
        maybe(vec(sandbag(draw), 4)),
        maybe(draw("support.rated_load_kg")),
    );
    (column, masses, head(draw), maybe(boom(draw)))
        .prop_map(|(column, masses, head, boom)| {
            let (low, high, radius, leg_count, foot, legs_top, first_leg_deg, clearance) = column;
            let (mass_kg, centre, base_mass_kg, base, bags, rated_load_kg) = masses;
            let mut sandbags = [Sandbag::NONE; 4];
            sandbags.iter_mut().zip(bags.unwrap_or_default()).for_each(|(to, bag)| *to = bag);
            Support {
                lowest_pivot_mm: low.min(high),
                highest_pivot_mm: low.max(high),
                column_radius_mm: radius.min(foot),
                leg_count,
                foot_radius_mm: foot,
                legs_top_mm: legs_top,
                first_leg_deg,
                table_clearance_mm: clearance,
                mass_kg,
                centre_height_mm: centre,
                base_mass_kg,
                base_height_mm: base,
                sandbags,
                rated_load_kg,
                head,
                boom,
            }
        })
        .boxed()
}
