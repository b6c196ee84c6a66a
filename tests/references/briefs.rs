//! A brief from its row.

use crate::rows::Row;
use tablerig::brief::{Brief, Criteria, Framing, Shot};
use tablerig::optics::camera::Camera;
use tablerig::optics::lens::Lens;
use tablerig::optics::sensor::{Aspect, Hold};
use tablerig::rig::support::{Boom, Head, MOST_SANDBAGS, Sandbag, Stiffness, Support};
use tablerig::scene::bay::Bay;
use tablerig::scene::subject::{JudgedBy, Shape, Subject, Vessel};
use tablerig::scene::table::{Side, Table as Tabletop, Underside};

fn side(word: &str) -> Side {
    match word {
        "front" => Side::Front,
        "right" => Side::Right,
        "back" => Side::Back,
        "left" => Side::Left,
        _ => panic!("no side {word}"),
    }
}

fn shot(row: &Row) -> Shot {
    let framings = [
        row.given("frame_width_mm").map(Framing::FrameWidthMm),
        row.given("fill_width").map(Framing::FillWidth),
        row.given("fill_height").map(Framing::FillHeight),
    ];
    let mut given = framings.into_iter().flatten();
    let framing = given.next().expect("a framing");
    assert!(given.next().is_none(), "two framings");
    Shot {
        elevation_deg: row.number("elevation_deg"),
        bearing_deg: row.number("bearing_deg"),
        framing,
        hold: match row.word("hold") {
            "across" => Hold::Across,
            "upright" => Hold::Upright,
            word => panic!("no hold {word}"),
        },
        delivered_aspect: row
            .given("aspect_width")
            .map(|width| Aspect { width, height: row.number("aspect_height") }),
        aim_x_mm: row.number("aim_x_mm"),
        aim_y_mm: row.number("aim_y_mm"),
        aim_height_mm: row.given("aim_height_mm"),
        f_number: row.given("f_number"),
        focus_on_table: false,
        backdrop_behind_mm: row.given("backdrop_behind_mm"),
        side: match row.word("side") {
            "" => None,
            word => Some(side(word)),
        },
        light_clearance_mm: 0.0,
        stack_overlap: row.number("stack_overlap"),
        elevation_tolerance_deg: row.number("elevation_tolerance_deg"),
        frame_width_tolerance: row.number("frame_width_tolerance"),
        roll_tolerance_deg: row.number("roll_tolerance_deg"),
    }
}

fn camera(row: &Row) -> Camera {
    Camera {
        sensor_width_mm: row.number("sensor_width_mm"),
        sensor_height_mm: row.number("sensor_height_mm"),
        circle_of_confusion_mm: row.given("circle_of_confusion_mm"),
        socket_ahead_mm: row.number("socket_ahead_mm"),
        socket_below_mm: row.number("socket_below_mm"),
        body_above_mm: row.number("body_above_mm"),
        body_behind_mm: row.number("body_behind_mm"),
        mass_kg: row.number("camera_mass_kg"),
        centre_ahead_mm: row.number("camera_centre_ahead_mm"),
    }
}

fn lens(row: &Row) -> Lens {
    Lens {
        focal_length_mm: row.number("focal_length_mm"),
        closest_focus_mm: row.given("closest_focus_mm"),
        largest_magnification: row.given("largest_magnification"),
        pupil_ratio: row.number("pupil_ratio"),
        principal_separation_mm: row.number("principal_separation_mm"),
        least_f_number: row.number("least_f_number"),
        most_f_number: row.number("most_f_number"),
        front_from_sensor_mm: row.given("front_from_sensor_mm"),
        largest_tilt_deg: 0.0,
        mass_kg: row.number("lens_mass_kg"),
        centre_ahead_mm: row.number("lens_centre_ahead_mm"),
    }
}

fn subject(row: &Row) -> Subject {
    let [width_mm, depth_mm, diameter_mm] =
        ["subject_width_mm", "subject_depth_mm", "subject_diameter_mm"].map(|name| row.number(name));
    Subject {
        shape: match row.word("shape") {
            "box" => Shape::Box { width_mm, depth_mm },
            "round" => Shape::Round { diameter_mm },
            word => panic!("no shape {word}"),
        },
        height_mm: row.number("subject_height_mm"),
        vessel: row.given("vessel_inside_diameter_mm").map(|inside_diameter_mm| Vessel {
            inside_diameter_mm,
            contents_below_rim_mm: row.number("vessel_contents_below_rim_mm"),
        }),
        judged_by: match row.word("judged_by") {
            "form" => JudgedBy::Form,
            "top_detail" => JudgedBy::TopDetail,
            "side_layers" => JudgedBy::SideLayers,
            "contents" => JudgedBy::Contents,
            "clear_layers" => JudgedBy::ClearLayers,
            "decorated_glass" => JudgedBy::DecoratedGlass,
            "laid_table" => JudgedBy::LaidTable,
            word => panic!("judged by {word}"),
        },
    }
}

fn boom(row: &Row) -> Boom {
    let bending = row.given("bending_stiffness_n_m2");
    let tube = row.given("tube_outside_mm").map(|tube_outside_mm| Stiffness::Tube {
        tube_outside_mm,
        tube_inside_mm: row.number("tube_inside_mm"),
        tube_modulus_n_per_mm2: row.number("tube_modulus_n_per_mm2"),
    });
    Boom {
        longest_reach_mm: row.number("longest_reach_mm"),
        tail_mm: row.number("tail_mm"),
        mass_kg: row.number("boom_mass_kg"),
        pitch_deg: row.number("pitch_deg"),
        counterweight_kg: row.number("counterweight_kg"),
        counterweight_out_mm: row.given("counterweight_out_mm"),
        stiffness: bending
            .map(|bending_stiffness_n_m2| Stiffness::Bending { bending_stiffness_n_m2 })
            .or(tube),
        damping_ratio: row.given("damping_ratio"),
        rated_load_kg: None,
        rated_clamp_moment_n_m: None,
    }
}

fn support(row: &Row) -> Support {
    let mut sandbags = [Sandbag::NONE; MOST_SANDBAGS];
    for (bag, number) in sandbags.iter_mut().zip(1..) {
        let of = |name: &str| row.number(&format!("bag{number}_{name}"));
        *bag = Sandbag {
            mass_kg: of("kg"),
            out_mm: of("out_mm"),
            direction_deg: of("direction_deg"),
            height_mm: of("height_mm"),
        };
    }
    let boom = boom(row);
    Support {
        lowest_pivot_mm: 0.0,
        highest_pivot_mm: 20000.0,
        column_radius_mm: row.number("column_radius_mm"),
        leg_count: row.word("leg_count").parse().expect("a count"),
        foot_radius_mm: row.number("foot_radius_mm"),
        legs_top_mm: row.number("legs_top_mm"),
        first_leg_deg: row.given("first_leg_deg"),
        table_clearance_mm: row.number("table_clearance_mm"),
        mass_kg: row.number("support_mass_kg"),
        centre_height_mm: row.number("centre_height_mm"),
        base_mass_kg: row.number("base_mass_kg"),
        base_height_mm: row.number("base_height_mm"),
        sandbags,
        rated_load_kg: None,
        head: Head {
            mass_kg: row.number("head_mass_kg"),
            pivot_below_socket_mm: row.number("pivot_below_socket_mm"),
            rated_load_kg: None,
            rated_moment_n_m: None,
        },
        boom: row.flag("boom").then_some(boom),
    }
}

/// The brief of a row.
pub(crate) fn brief(row: &Row) -> Brief {
    Brief {
        shot: shot(row),
        camera: camera(row),
        lens: lens(row),
        table: Tabletop {
            width_mm: row.number("table_width_mm"),
            depth_mm: row.number("table_depth_mm"),
            height_mm: row.number("table_height_mm"),
            underside: match row.word("underside") {
                "open" => Underside::Open,
                "closed" => Underside::Closed,
                word => panic!("no underside {word}"),
            },
        },
        subject: subject(row),
        support: support(row),
        bay: Bay {
            left_mm: row.given("left_mm"),
            right_mm: row.given("right_mm"),
            front_mm: row.given("front_mm"),
            back_mm: row.given("back_mm"),
            ceiling_mm: row.given("ceiling_mm"),
            ceiling_clearance_mm: row.number("ceiling_clearance_mm"),
            ..Bay::OPEN
        },
        criteria: Criteria {
            wanted_factor: row.number("wanted_factor"),
            hold_as_shot: row.flag("hold_as_shot"),
            hold_camera_off: row.flag("hold_camera_off"),
            hold_counterweight_off: row.flag("hold_counterweight_off"),
            settled_share: row.number("settled_share"),
            ..Criteria::DEFAULT
        },
    }
}
