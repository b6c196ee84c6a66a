//! How to ask for each input quantity with a value: one entry for every entry of the library's table.

use tablerig::brief::{Brief, Framing};
use tablerig::fault::Fault;
use tablerig::optics::inverse::{focal_length_for, magnification_at};
use tablerig::optics::sensor::{Aspect, UsedArea};
use tablerig::plan::plan;
use tablerig::range;
use tablerig::rig::support::{Boom, Sandbag, Stiffness};
use tablerig::scene::subject::{JudgedBy, Shape, Subject, Vessel};
use tablerig::tolerance::{Measured, Measurement, real_shot};
use tablerig::view::framing::largest_frame_width_mm;
use tablerig::view::pose::Orientation;

use crate::workshop::{camera, flat_subject, lens, overhead};

/// Sets a field of a brief.
pub(crate) type Setter = fn(&mut Brief, f64);

/// How a quantity comes in.
#[derive(Clone, Copy)]
pub(crate) enum Ask {
    /// With a brief.
    Brief(Setter),
    /// With a question of its own.
    Question(fn(f64) -> Result<(), Fault>),
}

/// A brief with everything in it that can be left out, and room around each field for its whole range.
pub(crate) fn full() -> Brief {
    let mut brief = overhead();
    brief.shot.delivered_aspect = Some(Aspect { width: 1.0, height: 1.0 });
    brief.shot.backdrop_behind_mm = Some(500.0);
    brief.subject = Subject {
        shape: Shape::Round { diameter_mm: 10000.0 },
        height_mm: 5000.0,
        vessel: Some(Vessel { inside_diameter_mm: 100.0, contents_below_rim_mm: 10.0 }),
        judged_by: JudgedBy::Contents,
    };
    brief.lens.least_f_number = 0.5;
    brief.lens.most_f_number = 512.0;
    let support = &mut brief.support;
    (support.lowest_pivot_mm, support.highest_pivot_mm) = (0.0, 20000.0);
    (support.column_radius_mm, support.foot_radius_mm) = (0.0, 5000.0);
    support.first_leg_deg = Some(0.0);
    support.sandbags = [Sandbag { mass_kg: 5.0, out_mm: 300.0, direction_deg: 180.0, height_mm: 300.0 }; 4];
    let boom = boom(&mut brief);
    boom.tail_mm = 10000.0;
    boom.counterweight_out_mm = Some(400.0);
    let bay = &mut brief.bay;
    for wall in [&mut bay.left_mm, &mut bay.right_mm, &mut bay.front_mm, &mut bay.back_mm] {
        *wall = Some(3000.0);
    }
    bay.ceiling_mm = Some(3000.0);
    brief
}

fn boom(brief: &mut Brief) -> &mut Boom {
    brief.support.boom.as_mut().unwrap()
}

fn vessel(brief: &mut Brief) -> &mut Vessel {
    brief.subject.vessel.get_or_insert(Vessel { inside_diameter_mm: 100.0, contents_below_rim_mm: 10.0 })
}

fn framed(brief: &mut Brief, framing: Framing) {
    brief.subject = Subject { height_mm: 100.0, ..flat_subject() };
    brief.shot.elevation_deg = 45.0;
    brief.shot.framing = framing;
}

fn tube(brief: &mut Brief, outside: f64, inside: f64, modulus: f64) {
    boom(brief).stiffness = Some(Stiffness::Tube {
        tube_outside_mm: outside,
        tube_inside_mm: inside,
        tube_modulus_n_per_mm2: modulus,
    });
}

fn exact(value: f64) -> Measurement {
    Measurement { value, uncertainty: 0.0 }
}

/// What was measured on the set with heights and level distance, then with heights and tape.
fn measured(top: Measurement, aim: Measurement, level: Measurement, tape: Measurement) -> Result<(), Fault> {
    let (sensor_height_mm, aim_height_above_floor_mm) = (top, aim);
    let with_level = Measured::HeightAndDistance {
        sensor_height_mm,
        aim_height_above_floor_mm,
        horizontal_distance_mm: level,
    };
    real_shot(&with_level, &lens(1.0), 36.0)?;
    let with_tape =
        Measured::HeightAndTape { sensor_height_mm, aim_height_above_floor_mm, sensor_distance_mm: tape };
    real_shot(&with_tape, &lens(1.0), 36.0).map(|_| ())
}

fn inclined(distance: Measurement, elevation: Measurement) -> Result<(), Fault> {
    let measured = Measured::TapeAndInclinometer { sensor_distance_mm: distance, elevation_deg: elevation };
    real_shot(&measured, &lens(1.0), 36.0).map(|_| ())
}

/// An uncertain value in each place that takes one.
fn uncertain(uncertainty: f64) -> Result<(), Fault> {
    let with = |value| Measurement { value, uncertainty };
    let places = [1000.0, 500.0, 1000.0, 2000.0];
    for place in 0..4 {
        let at = |index: usize| if index == place { with(places[index]) } else { exact(places[index]) };
        measured(at(0), at(1), at(2), at(3))?;
    }
    inclined(with(1000.0), exact(45.0))
}

fn under_ceiling(ceiling: f64, aim: f64, used: f64, below: f64) -> Result<(), Fault> {
    let used = UsedArea { width_mm: used, height_mm: 24.0 };
    let at = Orientation::new(45.0, 0.0);
    largest_frame_width_mm(ceiling, aim, &at, &lens(1.0), &used, &camera(), below).map(|_| ())
}

/// Every quantity of [`range::ALL`] by name, with how it is asked for.
#[rustfmt::skip]
pub(crate) const FIELDS: &[(&str, Ask)] = {
    use Ask::{Brief as B, Question as Q};
    &[
        ("shot.elevation_deg", B(|b, v| b.shot.elevation_deg = v)),
        ("shot.bearing_deg", B(|b, v| b.shot.bearing_deg = v)),
        ("shot.frame_width_mm", B(|b, v| b.shot.framing = Framing::FrameWidthMm(v))),
        ("shot.fill_width", B(|b, v| framed(b, Framing::FillWidth(v)))),
        ("shot.fill_height", B(|b, v| framed(b, Framing::FillHeight(v)))),
        ("shot.delivered_aspect", B(|b, v| b.shot.delivered_aspect = Some(Aspect { width: v, height: 1.0 }))),
        ("shot.delivered_aspect", B(|b, v| b.shot.delivered_aspect = Some(Aspect { width: 1.0, height: v }))),
        ("shot.aim_x_mm", B(|b, v| b.shot.aim_x_mm = v)),
        ("shot.aim_y_mm", B(|b, v| b.shot.aim_y_mm = v)),
        ("shot.aim_height_mm", B(|b, v| b.shot.aim_height_mm = Some(v))),
        ("shot.f_number", B(|b, v| b.shot.f_number = Some(v))),
        ("shot.backdrop_behind_mm", B(|b, v| b.shot.backdrop_behind_mm = Some(v))),
        ("shot.light_clearance_mm", B(|b, v| b.shot.light_clearance_mm = v)),
        ("shot.stack_overlap", B(|b, v| b.shot.stack_overlap = v)),
        ("shot.elevation_tolerance_deg", B(|b, v| b.shot.elevation_tolerance_deg = v)),
        ("shot.frame_width_tolerance", B(|b, v| b.shot.frame_width_tolerance = v)),
        ("shot.roll_tolerance_deg", B(|b, v| b.shot.roll_tolerance_deg = v)),
        ("camera.sensor_width_mm", B(|b, v| b.camera.sensor_width_mm = v)),
        ("camera.sensor_height_mm", B(|b, v| b.camera.sensor_height_mm = v)),
        ("camera.circle_of_confusion_mm", B(|b, v| b.camera.circle_of_confusion_mm = Some(v))),
        ("camera.socket_ahead_mm", B(|b, v| b.camera.socket_ahead_mm = v)),
        ("camera.socket_below_mm", B(|b, v| b.camera.socket_below_mm = v)),
        ("camera.body_above_mm", B(|b, v| b.camera.body_above_mm = v)),
        ("camera.body_behind_mm", B(|b, v| b.camera.body_behind_mm = v)),
        ("camera.mass_kg", B(|b, v| b.camera.mass_kg = v)),
        ("camera.centre_ahead_mm", B(|b, v| b.camera.centre_ahead_mm = v)),
        ("lens.focal_length_mm", B(|b, v| b.lens.focal_length_mm = v)),
        ("lens.closest_focus_mm", B(|b, v| b.lens.closest_focus_mm = Some(v))),
        ("lens.largest_magnification", B(|b, v| b.lens.largest_magnification = Some(v))),
        ("lens.pupil_ratio", B(|b, v| b.lens.pupil_ratio = v)),
        (
            "lens.principal_separation_mm",
            // A lens so long that its principal planes may be crossed as far as the range allows.
            B(|b, v| {
                b.lens.focal_length_mm = 300.0;
                b.lens.principal_separation_mm = v;
            }),
        ),
        ("lens.least_f_number", B(|b, v| b.lens.least_f_number = v)),
        ("lens.most_f_number", B(|b, v| b.lens.most_f_number = v)),
        ("lens.front_from_sensor_mm", B(|b, v| b.lens.front_from_sensor_mm = Some(v))),
        ("lens.largest_tilt_deg", B(|b, v| b.lens.largest_tilt_deg = v)),
        ("lens.mass_kg", B(|b, v| b.lens.mass_kg = v)),
        ("lens.centre_ahead_mm", B(|b, v| b.lens.centre_ahead_mm = v)),
        ("table.width_mm", B(|b, v| b.table.width_mm = v)),
        ("table.depth_mm", B(|b, v| b.table.depth_mm = v)),
        ("table.height_mm", B(|b, v| b.table.height_mm = v)),
        ("subject.width_mm", B(|b, v| {
            b.subject.vessel = None;
            b.subject.shape = Shape::Box { width_mm: v, depth_mm: 100.0 };
        })),
        ("subject.depth_mm", B(|b, v| {
            b.subject.vessel = None;
            b.subject.shape = Shape::Box { width_mm: 100.0, depth_mm: v };
        })),
        ("subject.diameter_mm", B(|b, v| {
            b.subject.vessel = None;
            b.subject.shape = Shape::Round { diameter_mm: v };
        })),
        ("subject.height_mm", B(|b, v| {
            b.subject.vessel = None;
            b.subject.height_mm = v;
        })),
        ("subject.vessel.inside_diameter_mm", B(|b, v| vessel(b).inside_diameter_mm = v)),
        ("subject.vessel.contents_below_rim_mm", B(|b, v| vessel(b).contents_below_rim_mm = v)),
        ("support.lowest_pivot_mm", B(|b, v| b.support.lowest_pivot_mm = v)),
        ("support.highest_pivot_mm", B(|b, v| b.support.highest_pivot_mm = v)),
        ("support.column_radius_mm", B(|b, v| b.support.column_radius_mm = v)),
        ("support.foot_radius_mm", B(|b, v| b.support.foot_radius_mm = v)),
        ("support.legs_top_mm", B(|b, v| b.support.legs_top_mm = v)),
        ("support.first_leg_deg", B(|b, v| b.support.first_leg_deg = Some(v))),
        ("support.table_clearance_mm", B(|b, v| b.support.table_clearance_mm = v)),
        ("support.mass_kg", B(|b, v| b.support.mass_kg = v)),
        ("support.centre_height_mm", B(|b, v| b.support.centre_height_mm = v)),
        ("support.base_mass_kg", B(|b, v| b.support.base_mass_kg = v)),
        ("support.base_height_mm", B(|b, v| b.support.base_height_mm = v)),
        ("support.sandbags.mass_kg", B(|b, v| b.support.sandbags[3].mass_kg = v)),
        ("support.sandbags.out_mm", B(|b, v| b.support.sandbags[2].out_mm = v)),
        ("support.sandbags.direction_deg", B(|b, v| b.support.sandbags[1].direction_deg = v)),
        ("support.sandbags.height_mm", B(|b, v| b.support.sandbags[0].height_mm = v)),
        ("support.rated_load_kg", B(|b, v| b.support.rated_load_kg = Some(v))),
        ("support.head.mass_kg", B(|b, v| b.support.head.mass_kg = v)),
        ("support.head.pivot_below_socket_mm", B(|b, v| b.support.head.pivot_below_socket_mm = v)),
        ("support.head.rated_load_kg", B(|b, v| b.support.head.rated_load_kg = Some(v))),
        ("support.head.rated_moment_n_m", B(|b, v| b.support.head.rated_moment_n_m = Some(v))),
        ("support.boom.longest_reach_mm", B(|b, v| boom(b).longest_reach_mm = v)),
        ("support.boom.tail_mm", B(|b, v| {
            boom(b).counterweight_out_mm = None;
            boom(b).tail_mm = v;
        })),
        ("support.boom.mass_kg", B(|b, v| boom(b).mass_kg = v)),
        ("support.boom.pitch_deg", B(|b, v| boom(b).pitch_deg = v)),
        ("support.boom.counterweight_kg", B(|b, v| boom(b).counterweight_kg = v)),
        ("support.boom.counterweight_out_mm", B(|b, v| boom(b).counterweight_out_mm = Some(v))),
        ("support.boom.rated_load_kg", B(|b, v| boom(b).rated_load_kg = Some(v))),
        ("support.boom.rated_clamp_moment_n_m", B(|b, v| boom(b).rated_clamp_moment_n_m = Some(v))),
        ("support.boom.stiffness.bending_stiffness_n_m2", B(|b, v| {
            boom(b).stiffness = Some(Stiffness::Bending { bending_stiffness_n_m2: v });
        })),
        ("support.boom.stiffness.tube_outside_mm", B(|b, v| tube(b, v, 0.0, 69000.0))),
        ("support.boom.stiffness.tube_inside_mm", B(|b, v| tube(b, 1000.0, v, 69000.0))),
        ("support.boom.stiffness.tube_modulus_n_per_mm2", B(|b, v| tube(b, 35.0, 31.0, v))),
        ("support.boom.damping_ratio", B(|b, v| boom(b).damping_ratio = Some(v))),
        ("bay.left_mm", B(|b, v| b.bay.left_mm = Some(v))),
        ("bay.right_mm", B(|b, v| b.bay.right_mm = Some(v))),
        ("bay.front_mm", B(|b, v| b.bay.front_mm = Some(v))),
        ("bay.back_mm", B(|b, v| b.bay.back_mm = Some(v))),
        ("bay.ceiling_mm", B(|b, v| b.bay.ceiling_mm = Some(v))),
        ("bay.ceiling_mm", Q(|v| under_ceiling(v, 760.0, 36.0, 90.0))),
        ("bay.ceiling_clearance_mm", B(|b, v| b.bay.ceiling_clearance_mm = v)),
        ("bay.person_room_mm", B(|b, v| b.bay.person_room_mm = v)),
        ("bay.floor_slope_percent", B(|b, v| b.bay.floor_slope_percent = v)),
        ("criteria.payload_share_note", B(|b, v| b.criteria.payload_share_note = v)),
        ("criteria.payload_share_warn", B(|b, v| b.criteria.payload_share_warn = v)),
        ("criteria.payload_share_stop", B(|b, v| b.criteria.payload_share_stop = v)),
        ("criteria.factor_note", B(|b, v| b.criteria.factor_note = v)),
        ("criteria.factor_warn", B(|b, v| b.criteria.factor_warn = v)),
        ("criteria.factor_stop", B(|b, v| b.criteria.factor_stop = v)),
        ("criteria.springy_frequency_hz", B(|b, v| b.criteria.springy_frequency_hz = v)),
        ("criteria.springy_factor_warn", B(|b, v| b.criteria.springy_factor_warn = v)),
        ("criteria.tilt_warn_deg", B(|b, v| b.criteria.tilt_warn_deg = v)),
        ("criteria.tilt_stop_deg", B(|b, v| b.criteria.tilt_stop_deg = v)),
        ("criteria.tilt_public_warn_deg", B(|b, v| b.criteria.tilt_public_warn_deg = v)),
        ("criteria.push_share_warn", B(|b, v| b.criteria.push_share_warn = v)),
        ("criteria.push_most_n", B(|b, v| b.criteria.push_most_n = v)),
        ("criteria.push_height_most_mm", B(|b, v| b.criteria.push_height_most_mm = v)),
        ("criteria.people_rating_divisor", B(|b, v| b.criteria.people_rating_divisor = v)),
        ("criteria.wanted_factor", B(|b, v| b.criteria.wanted_factor = v)),
        ("criteria.settled_share", B(|b, v| b.criteria.settled_share = v)),
        ("measured.sensor_height_mm", Q(|v| measured(exact(v), exact(500.0), exact(1000.0), exact(1e6)))),
        ("measured.aim_height_above_floor_mm", Q(|v| measured(exact(1e3), exact(v), exact(1e3), exact(1e6)))),
        ("measured.aim_height_above_floor_mm", Q(|v| under_ceiling(1e5, v, 36.0, 90.0))),
        ("measured.horizontal_distance_mm", Q(|v| measured(exact(1e3), exact(500.0), exact(v), exact(1e6)))),
        ("measured.sensor_distance_mm", Q(|v| measured(exact(0.0), exact(0.0), exact(1000.0), exact(v)))),
        ("measured.sensor_distance_mm", Q(|v| inclined(exact(v), exact(45.0)))),
        ("measured.sensor_distance_mm", Q(|v| magnification_at(&lens(1.0), v).map(|_| ()))),
        ("measured.elevation_deg", Q(|v| inclined(exact(1000.0), exact(v)))),
        ("measured.uncertainty_mm", Q(uncertain)),
        ("measured.uncertainty_deg", Q(|v| {
            inclined(exact(1e3), Measurement { value: 45.0, uncertainty: v })
        })),
        ("viewpoint.pupil_distance_mm", Q(|v| focal_length_for(v, 600.0, 36.0, 1.0).map(|_| ()))),
        ("shot.frame_width_mm", Q(|v| focal_length_for(1000.0, v, 36.0, 1.0).map(|_| ()))),
        ("lens.pupil_ratio", Q(|v| focal_length_for(1000.0, 600.0, 36.0, v).map(|_| ()))),
        ("used.width_mm", Q(|v| focal_length_for(1000.0, 600.0, v, 1.0).map(|_| ()))),
        ("used.width_mm", Q(|v| under_ceiling(3000.0, 760.0, v, 90.0))),
        ("support.head.pivot_below_socket_mm", Q(|v| under_ceiling(3000.0, 760.0, 36.0, v))),
        // No question of the library's own takes these two; the doors do.
        ("used.height_mm", Q(|v| range::USED_HEIGHT_MM.check(v).map(|_| ()))),
        ("magnification", Q(|v| range::MAGNIFICATION.check(v).map(|_| ()))),
    ]
};

/// A field of a brief with its setter; `None` for a question of its own.
pub(crate) fn setter((field, ask): &(&'static str, Ask)) -> Option<(&'static str, Setter)> {
    match ask {
        Ask::Brief(set) => Some((*field, *set)),
        Ask::Question(_) => None,
    }
}

/// Asks for a field with a value.
pub(crate) fn asked(ask: Ask, value: f64) -> Result<(), Fault> {
    match ask {
        Ask::Question(question) => question(value),
        Ask::Brief(set) => {
            let mut brief = full();
            set(&mut brief, value);
            plan(&brief).map(|_| ())
        }
    }
}
