//! Where the camera must be for a tabletop picture, and whether what holds it will stand.
//!
//! A photographer's plan names an elevation, a lens and how much of the table the frame takes in. This
//! library computes the rest: heights, distances and boom reach, what the frame then takes in, what is
//! sharp, how it looks, whether the rig reaches, fits the room and stands, and how exactly to set it.
//!
//! ```
//! use tablerig::brief::{Brief, Criteria, Shot};
//! use tablerig::optics::{camera::Camera, lens::Lens};
//! use tablerig::plan::plan;
//! use tablerig::rig::support::{Head, Sandbag, Support};
//! use tablerig::scene::{bay::Bay, subject::*, table::*};
//!
//! // A jar on a table, seen from 20 degrees above, the frame 400 mm wide.
//! let brief = Brief {
//!     shot: Shot::new(20.0, 400.0),
//!     camera: Camera {
//!         sensor_width_mm: 36.0,
//!         sensor_height_mm: 24.0,
//!         circle_of_confusion_mm: None,
//!         socket_ahead_mm: 30.0,
//!         socket_below_mm: 45.0,
//!         body_above_mm: 60.0,
//!         body_behind_mm: 40.0,
//!         mass_kg: 0.7,
//!         centre_ahead_mm: 10.0,
//!     },
//!     lens: Lens {
//!         focal_length_mm: 90.0,
//!         closest_focus_mm: None,
//!         largest_magnification: None,
//!         pupil_ratio: 1.0,
//!         principal_separation_mm: 0.0,
//!         least_f_number: 2.8,
//!         most_f_number: 22.0,
//!         front_from_sensor_mm: None,
//!         largest_tilt_deg: 0.0,
//!         mass_kg: 0.6,
//!         centre_ahead_mm: 70.0,
//!     },
//!     table: Table { width_mm: 1200.0, depth_mm: 700.0, height_mm: 740.0, underside: Underside::Open },
//!     subject: Subject {
//!         shape: Shape::Round { diameter_mm: 80.0 },
//!         height_mm: 120.0,
//!         vessel: None,
//!         judged_by: JudgedBy::Form,
//!     },
//!     support: Support {
//!         lowest_pivot_mm: 300.0,
//!         highest_pivot_mm: 1700.0,
//!         column_radius_mm: 15.0,
//!         leg_count: 3,
//!         foot_radius_mm: 450.0,
//!         legs_top_mm: 1100.0,
//!         first_leg_deg: None,
//!         table_clearance_mm: 20.0,
//!         mass_kg: 2.5,
//!         centre_height_mm: 700.0,
//!         base_mass_kg: 0.0,
//!         base_height_mm: 0.0,
//!         sandbags: [Sandbag::NONE; 4],
//!         rated_load_kg: Some(8.0),
//!         head: Head {
//!             mass_kg: 0.5,
//!             pivot_below_socket_mm: 90.0,
//!             rated_load_kg: None,
//!             rated_moment_n_m: None,
//!         },
//!         boom: None,
//!     },
//!     bay: Bay::OPEN,
//!     criteria: Criteria::DEFAULT,
//! };
//! let plan = plan(&brief)?;
//! // m = 36 / 400; sensor to aim point f (1 + m)² / m; aimed at half the jar's height.
//! assert_eq!(plan.pose.aim.z_mm, 800.0);
//! assert!((plan.lens.sensor_distance_mm - 1188.1).abs() < 1e-9);
//! assert!((plan.pose.sensor.z_mm - (800.0 + 1188.1 * 20f64.to_radians().sin())).abs() < 1e-9);
//! for caution in plan.cautions.iter() {
//!     println!("{:?}: {}", caution.level, caution.code.sentence());
//! }
//! # Ok::<(), tablerig::fault::Fault>(())
//! ```
//!
//! # Conventions
//! - Lengths in millimetres, angles in degrees, masses in kilograms, forces in newtons, moments in
//!   newton-metres; every field's name carries its unit.
//! - The origin is on the floor under the centre of the table: x to the right seen from the front edge, y
//!   away from it, z up. Elevation 0 is straight-on, 90 straight overhead. Bearing is counter-clockwise seen
//!   from above: 0 in front (-y), 90 to the right (+x).
//! - All inputs are plain structs; [`plan::plan`] and each part's `check` refuse what is not finite or out
//!   of its range ([`range`]) with a [`fault::Fault`] that names the field. The parts below `plan` take
//!   values that have been checked.
//! - A brief that cannot be met is not an error: its plan is complete, with [`caution`]s.
//! - Where a result can be infinite or absent, its documentation says when.
//! - No state, no allocation, no panic, no `unsafe`; everything transcendental comes from `libm`, so that
//!   the same input gives the same bits on every processor.
//!
//! # Rooms, in the order a brief passes through them
//! [`brief`], [`optics`], [`scene`], [`view`], [`rig`], [`advice`], [`tolerance`], [`caution`], [`plan`].
//!
//! # What rules
//! These are computed figures for a rigid rig on a floor as level as the brief says. The makers' ratings
//! rule over them; local codes apply; a qualified rigger decides.
#![no_std]
#![deny(unsafe_code)]

#[cfg(feature = "alloc")]
extern crate alloc;
#[cfg(feature = "std")]
extern crate std;

pub mod advice;
pub mod brief;
pub mod caution;
#[cfg(feature = "alloc")]
pub mod draw;
pub mod fault;
mod number;
pub mod optics;
pub mod plan;
pub mod range;
pub mod rig;
pub mod scene;
#[cfg(feature = "sheet")]
pub mod sheet;
pub mod shoot;
pub mod tolerance;
pub mod vector;
pub mod view;

#[cfg(feature = "shootfile")]
pub mod shootfile;

#[cfg(feature = "cli")]
pub mod cli;
#[cfg(any(feature = "capi", feature = "text-door"))]
pub mod doors;
