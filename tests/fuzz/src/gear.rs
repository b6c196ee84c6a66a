//! Lenses and supports drawn from bytes.

use tablerig::optics::lens::Lens;
use tablerig::range;
use tablerig::rig::support::{Boom, Head, Sandbag, Stiffness, Support};

use super::draw::Draw;
use super::workshop;

pub(crate) fn lens(of: &mut Draw) -> Lens {
    let focal_length_mm = of.near_one_of(range::FOCAL_LENGTH_MM, &[90.0, 35.0, 60.0, 180.0]);
    // The magnification that such a lens has at a closest focus, (k - 2 - sqrt (k (k - 4))) / 2 of k focal
    // lengths: both fit, or are drawn apart.
    let k = of.between(4.5, 14.5);
    let fitting = 0.5 * (k - 2.0 - (k * (k - 4.0)).sqrt());
    let closest_focus_mm = of.maybe(range::CLOSEST_FOCUS_MM, k * focal_length_mm);
    let largest_magnification = of.maybe(range::LARGEST_MAGNIFICATION, fitting);
    let (closest_focus_mm, largest_magnification) = match of.below(3) {
        0 => (closest_focus_mm, None),
        1 => (
            Some((k * focal_length_mm).clamp(1.0, 100_000.0)),
            Some((fitting * of.between(0.95, 1.05)).clamp(0.0001, 20.0)),
        ),
        _ => (closest_focus_mm, largest_magnification),
    };
    let least_f_number = of.near(range::LEAST_F_NUMBER, 2.8);
    Lens {
        closest_focus_mm,
        largest_magnification,
        pupil_ratio: of.near(range::PUPIL_RATIO, 1.0),
        principal_separation_mm: of.near_one_of(range::PRINCIPAL_SEPARATION_MM, &[0.0, 5.0, -10.0]),
        least_f_number,
        most_f_number: of.near(range::MOST_F_NUMBER, 22.0).max(if of.below(8) > 0 {
            least_f_number
        } else {
            0.5
        }),
        front_from_sensor_mm: of.maybe(range::FRONT_FROM_SENSOR_MM, 110.0),
        largest_tilt_deg: of.near(range::LARGEST_TILT_DEG, 8.0),
        mass_kg: of.near(range::LENS_MASS_KG, 0.6),
        centre_ahead_mm: of.near(range::LENS_CENTRE_AHEAD_MM, 70.0),
        ..workshop::lens(focal_length_mm)
    }
}

pub(crate) fn support(of: &mut Draw) -> Support {
    let usual = if of.below(3) == 2 { workshop::tripod() } else { workshop::stand() };
    let lowest_pivot_mm = of.near(range::LOWEST_PIVOT_MM, usual.lowest_pivot_mm);
    let highest_pivot_mm = of.near(range::HIGHEST_PIVOT_MM, usual.highest_pivot_mm);
    let mut support = Support {
        lowest_pivot_mm,
        highest_pivot_mm: if of.below(8) > 0 {
            highest_pivot_mm.max(lowest_pivot_mm)
        } else {
            highest_pivot_mm
        },
        column_radius_mm: of.near(range::COLUMN_RADIUS_MM, usual.column_radius_mm),
        leg_count: [3, 4, 5, 6, 7, 8][of.below(6)],
        foot_radius_mm: of.near(range::FOOT_RADIUS_MM, usual.foot_radius_mm),
        legs_top_mm: of.near(range::LEGS_TOP_MM, usual.legs_top_mm),
        first_leg_deg: of.maybe(range::FIRST_LEG_DEG, 45.0),
        table_clearance_mm: of.near(range::TABLE_CLEARANCE_MM, usual.table_clearance_mm),
        mass_kg: of.near(range::SUPPORT_MASS_KG, usual.mass_kg),
        centre_height_mm: of.near(range::SUPPORT_CENTRE_HEIGHT_MM, usual.centre_height_mm),
        base_mass_kg: of.near(range::BASE_MASS_KG, usual.base_mass_kg),
        base_height_mm: of.near(range::BASE_HEIGHT_MM, usual.base_height_mm),
        rated_load_kg: of.maybe(range::RATED_LOAD_KG, 20.0),
        head: Head {
            mass_kg: of.near(range::HEAD_MASS_KG, 0.5),
            pivot_below_socket_mm: of.near(range::PIVOT_BELOW_SOCKET_MM, 90.0),
            rated_load_kg: of.maybe(range::HEAD_RATED_LOAD_KG, 6.0),
            rated_moment_n_m: of.maybe(range::HEAD_RATED_MOMENT_N_M, 10.0),
        },
        ..usual
    };
    for bag in 0..of.below(5) {
        support.sandbags[bag] = Sandbag {
            mass_kg: of.near(range::SANDBAG_MASS_KG, 7.0),
            out_mm: of.near(range::SANDBAG_OUT_MM, 300.0),
            direction_deg: of.near(range::SANDBAG_DIRECTION_DEG, 180.0),
            height_mm: of.near(range::SANDBAG_HEIGHT_MM, 200.0),
        };
    }
    if let Some(boom) = &mut support.boom {
        *boom = drawn_boom(of, boom);
    }
    support
}

fn drawn_boom(of: &mut Draw, usual: &Boom) -> Boom {
    let tail_mm = of.near(range::TAIL_MM, usual.tail_mm);
    let stiffness = match of.below(3) {
        0 => None,
        1 => Some(Stiffness::Bending {
            bending_stiffness_n_m2: of.near(range::BENDING_STIFFNESS_N_M2, 3000.0),
        }),
        _ => Some(Stiffness::Tube {
            tube_outside_mm: of.near(range::TUBE_OUTSIDE_MM, 35.0),
            tube_inside_mm: of.near(range::TUBE_INSIDE_MM, 16.0),
            tube_modulus_n_per_mm2: of.near(range::TUBE_MODULUS_N_PER_MM2, 69000.0),
        }),
    };
    Boom {
        longest_reach_mm: of.near(range::LONGEST_REACH_MM, usual.longest_reach_mm),
        tail_mm,
        mass_kg: of.near(range::BOOM_MASS_KG, usual.mass_kg),
        pitch_deg: of.near_one_of(range::PITCH_DEG, &[0.0, 10.0, -10.0]),
        counterweight_kg: of.near(range::COUNTERWEIGHT_KG, usual.counterweight_kg),
        counterweight_out_mm: of.maybe(range::COUNTERWEIGHT_OUT_MM, 0.8 * tail_mm),
        stiffness,
        damping_ratio: of.maybe(range::DAMPING_RATIO, 0.02),
        rated_load_kg: of.maybe(range::BOOM_RATED_LOAD_KG, 5.0),
        rated_clamp_moment_n_m: of.maybe(range::RATED_CLAMP_MOMENT_N_M, 60.0),
    }
}
