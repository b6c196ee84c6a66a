//! The brief that the tests vary: an invented overhead shot with a boom that raises no stop.
#![allow(dead_code, reason = "each test file uses its part")]

pub(crate) mod numbers;

use tablerig::brief::{Brief, Criteria, Shot};
use tablerig::optics::camera::Camera;
use tablerig::optics::lens::Lens;
use tablerig::rig::support::{Boom, Head, Sandbag, Stiffness, Support};
use tablerig::scene::bay::Bay;
use tablerig::scene::subject::{JudgedBy, Shape, Subject};
use tablerig::scene::table::{Table, Underside};

/// A camera of 36 x 24 mm, its socket 30 mm ahead of the sensor and 45 mm below the axis.
pub(crate) fn camera() -> Camera {
    Camera {
        sensor_width_mm: 36.0,
        sensor_height_mm: 24.0,
        circle_of_confusion_mm: Some(0.030),
        socket_ahead_mm: 30.0,
        socket_below_mm: 45.0,
        body_above_mm: 60.0,
        body_behind_mm: 40.0,
        mass_kg: 0.7,
        centre_ahead_mm: 10.0,
    }
}

/// A unit-focusing, symmetric lens.
pub(crate) fn lens(focal_length_mm: f64) -> Lens {
    Lens {
        focal_length_mm,
        closest_focus_mm: None,
        largest_magnification: None,
        pupil_ratio: 1.0,
        principal_separation_mm: 0.0,
        least_f_number: 2.8,
        most_f_number: 22.0,
        front_from_sensor_mm: Some(120.0),
        largest_tilt_deg: 0.0,
        mass_kg: 0.6,
        centre_ahead_mm: 70.0,
    }
}

/// A table top 1200 x 800 mm, 760 mm up, open underneath.
pub(crate) fn table() -> Table {
    Table { width_mm: 1200.0, depth_mm: 800.0, height_mm: 760.0, underside: Underside::Open }
}

/// A flat round thing without height: the aim point lies on the table.
pub(crate) fn flat_subject() -> Subject {
    Subject {
        shape: Shape::Round { diameter_mm: 200.0 },
        height_mm: 0.0,
        vessel: None,
        judged_by: JudgedBy::Form,
    }
}

/// A heavy stand with a boom and a counterweight.
pub(crate) fn stand() -> Support {
    Support {
        lowest_pivot_mm: 900.0,
        highest_pivot_mm: 3000.0,
        column_radius_mm: 20.0,
        leg_count: 3,
        foot_radius_mm: 500.0,
        legs_top_mm: 900.0,
        first_leg_deg: None,
        table_clearance_mm: 20.0,
        mass_kg: 7.0,
        centre_height_mm: 600.0,
        base_mass_kg: 10.0,
        base_height_mm: 150.0,
        sandbags: [Sandbag::NONE; 4],
        rated_load_kg: Some(20.0),
        head: Head {
            mass_kg: 0.5,
            pivot_below_socket_mm: 90.0,
            rated_load_kg: Some(6.0),
            rated_moment_n_m: Some(10.0),
        },
        boom: Some(Boom {
            longest_reach_mm: 1200.0,
            tail_mm: 500.0,
            mass_kg: 1.6,
            pitch_deg: 0.0,
            counterweight_kg: 4.0,
            counterweight_out_mm: None,
            stiffness: Some(Stiffness::Tube {
                tube_outside_mm: 35.0,
                tube_inside_mm: 31.0,
                tube_modulus_n_per_mm2: 69000.0,
            }),
            damping_ratio: Some(0.02),
            rated_load_kg: Some(5.0),
            rated_clamp_moment_n_m: Some(60.0),
        }),
    }
}

/// A tripod: three legs, no boom.
pub(crate) fn tripod() -> Support {
    Support {
        lowest_pivot_mm: 300.0,
        highest_pivot_mm: 2000.0,
        mass_kg: 3.0,
        base_mass_kg: 0.0,
        legs_top_mm: 1200.0,
        boom: None,
        ..stand()
    }
}

/// Overhead, 600 mm wide, 90 mm lens, everything of the bay open.
pub(crate) fn overhead() -> Brief {
    Brief {
        shot: Shot { aim_height_mm: Some(0.0), f_number: Some(8.0), ..Shot::new(90.0, 600.0) },
        camera: camera(),
        lens: lens(90.0),
        table: table(),
        subject: flat_subject(),
        support: stand(),
        bay: Bay::OPEN,
        criteria: Criteria::DEFAULT,
    }
}

/// From 50 degrees in front, 900 mm wide, 35 mm lens, on a tripod.
pub(crate) fn slanting() -> Brief {
    Brief {
        shot: Shot { aim_height_mm: Some(0.0), f_number: Some(8.0), ..Shot::new(50.0, 900.0) },
        lens: lens(35.0),
        support: tripod(),
        ..overhead()
    }
}
