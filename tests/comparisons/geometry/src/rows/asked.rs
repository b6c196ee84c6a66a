//! A brief, for those who cannot read the library's own struct.

use tablerig::brief::{Brief, Framing};
use tablerig::optics::sensor::Hold;
use tablerig::rig::support::Stiffness;
use tablerig::scene::subject::Shape;
use tablerig::scene::table::Underside;

use super::Row;

/// Every number of it, codes among them.
pub(crate) fn brief(b: &Brief) -> Row {
    let mut row = Row::default();
    let Brief { shot, camera, lens, table, subject, support, bay, criteria } = b;
    let Framing::FrameWidthMm(frame_width) = shot.framing else { panic!("a frame width is asked for") };
    row.all([
        ("elevation", shot.elevation_deg),
        ("bearing", shot.bearing_deg),
        ("frame_width", frame_width),
        ("upright", f64::from(shot.hold == Hold::Upright)),
        ("aim_x", shot.aim_x_mm),
        ("aim_y", shot.aim_y_mm),
        ("overlap", shot.stack_overlap),
        ("elevation_tolerance", shot.elevation_tolerance_deg),
        ("width_tolerance", shot.frame_width_tolerance),
        ("roll_tolerance", shot.roll_tolerance_deg),
        ("sensor_width", camera.sensor_width_mm),
        ("sensor_height", camera.sensor_height_mm),
        ("socket_ahead", camera.socket_ahead_mm),
        ("socket_below", camera.socket_below_mm),
        ("body_above", camera.body_above_mm),
        ("body_behind", camera.body_behind_mm),
        ("camera_mass", camera.mass_kg),
        ("camera_centre", camera.centre_ahead_mm),
        ("focal_length", lens.focal_length_mm),
        ("pupil_ratio", lens.pupil_ratio),
        ("principal_separation", lens.principal_separation_mm),
        ("least_f", lens.least_f_number),
        ("most_f", lens.most_f_number),
        ("lens_mass", lens.mass_kg),
        ("lens_centre", lens.centre_ahead_mm),
        ("table_width", table.width_mm),
        ("table_depth", table.depth_mm),
        ("table_height", table.height_mm),
        ("open_underside", f64::from(table.underside == Underside::Open)),
        ("subject_height", subject.height_mm),
        ("column_radius", support.column_radius_mm),
        ("legs", f64::from(support.leg_count)),
        ("foot_radius", support.foot_radius_mm),
        ("legs_top", support.legs_top_mm),
        ("clearance", support.table_clearance_mm),
        ("support_mass", support.mass_kg),
        ("centre_height", support.centre_height_mm),
        ("base_mass", support.base_mass_kg),
        ("base_height", support.base_height_mm),
        ("head_mass", support.head.mass_kg),
        ("pivot_below", support.head.pivot_below_socket_mm),
        ("ceiling_clearance", bay.ceiling_clearance_mm),
        ("wanted_factor", criteria.wanted_factor),
        ("hold_as_shot", f64::from(criteria.hold_as_shot)),
        ("hold_camera_off", f64::from(criteria.hold_camera_off)),
        ("hold_counterweight_off", f64::from(criteria.hold_counterweight_off)),
        ("settled_share", criteria.settled_share),
    ]);
    for (name, bag) in ["bag1", "bag2"].into_iter().zip(&support.sandbags) {
        row.put(&format!("{name}_mass"), bag.mass_kg);
        row.put(&format!("{name}_out"), bag.out_mm);
        row.put(&format!("{name}_direction"), bag.direction_deg);
        row.put(&format!("{name}_height"), bag.height_mm);
    }
    let wall = |wall: Option<f64>| wall.unwrap_or(f64::INFINITY);
    row.all([
        ("right", wall(bay.right_mm)),
        ("left", wall(bay.left_mm)),
        ("back", wall(bay.back_mm)),
        ("front", wall(bay.front_mm)),
        ("ceiling", wall(bay.ceiling_mm)),
    ]);
    let (round, sizes) = match subject.shape {
        Shape::Box { width_mm, depth_mm } => (0.0, [Some(width_mm), Some(depth_mm), None]),
        Shape::Round { diameter_mm } => (1.0, [None, None, Some(diameter_mm)]),
    };
    row.put("round", round);
    let boom = support.boom;
    let tube = boom.and_then(|boom| match boom.stiffness {
        Some(Stiffness::Tube { tube_outside_mm, tube_inside_mm, tube_modulus_n_per_mm2 }) => {
            Some([tube_outside_mm, tube_inside_mm, tube_modulus_n_per_mm2])
        }
        _ => None,
    });
    row.put("boom", f64::from(boom.is_some()));
    row.maybe([
        ("subject_width", sizes[0]),
        ("subject_depth", sizes[1]),
        ("subject_diameter", sizes[2]),
        ("aspect_width", shot.delivered_aspect.map(|aspect| aspect.width)),
        ("aspect_height", shot.delivered_aspect.map(|aspect| aspect.height)),
        ("aim_height", shot.aim_height_mm),
        ("f_number", shot.f_number),
        ("backdrop", shot.backdrop_behind_mm),
        ("circle", camera.circle_of_confusion_mm),
        ("closest_focus", lens.closest_focus_mm),
        ("largest_magnification", lens.largest_magnification),
        ("front_from_sensor", lens.front_from_sensor_mm),
        ("vessel_diameter", subject.vessel.map(|vessel| vessel.inside_diameter_mm)),
        ("vessel_below", subject.vessel.map(|vessel| vessel.contents_below_rim_mm)),
        ("first_leg", support.first_leg_deg),
        ("tail", boom.map(|boom| boom.tail_mm)),
        ("boom_mass", boom.map(|boom| boom.mass_kg)),
        ("pitch", boom.map(|boom| boom.pitch_deg)),
        ("counterweight", boom.map(|boom| boom.counterweight_kg)),
        ("counterweight_out", boom.and_then(|boom| boom.counterweight_out_mm)),
        (
            "stiffness",
            boom.and_then(|boom| match boom.stiffness {
                Some(Stiffness::Bending { bending_stiffness_n_m2 }) => Some(bending_stiffness_n_m2),
                _ => None,
            }),
        ),
        ("tube_outside", tube.map(|tube| tube[0])),
        ("tube_inside", tube.map(|tube| tube[1])),
        ("tube_modulus", tube.map(|tube| tube[2])),
        ("damping", boom.and_then(|boom| boom.damping_ratio)),
    ]);
    row
}
