//! Walks over every number of a plan under its name. Each struct is taken apart without `..`, so a field
//! that is added to a plan does not compile here until it is walked too.

use tablerig::advice::{Advice, AdviceReason};
use tablerig::caution::overhead::Removal;
use tablerig::caution::{Caution, Cautions};
use tablerig::optics::focus::{DepthOfField, Focus, FocusStack, ThirdStop};
use tablerig::optics::lens::{FieldAngles, FocusedLens};
use tablerig::optics::sensor::UsedArea;
use tablerig::optics::tilt::Tilt;
use tablerig::plan::Plan;
use tablerig::rig::ballast::Ballast;
use tablerig::rig::reach::{BayRoom, Placement, SupportInPicture};
use tablerig::rig::sag::Sag;
use tablerig::rig::stability::{Stability, Standing};
use tablerig::rig::weights::Payload;
use tablerig::scene::table::Side;
use tablerig::tolerance::Tolerance;
use tablerig::vector::{Direction, FloorPoint, Point};
use tablerig::view::footprint::{Backdrop, Board, Footprint};
use tablerig::view::outline::{Outline, Shares, SubjectDepth};
use tablerig::view::perspective::Perspective;
use tablerig::view::pose::Pose;

/// Where a walk is, and what it hands each number to.
pub(crate) struct Walk<'a> {
    path: String,
    each: &'a mut dyn FnMut(&str, f64),
}

impl Walk<'_> {
    fn into<T: Numbers>(&mut self, name: &str, value: &T) {
        let before = self.path.len();
        if before > 0 {
            self.path.push('.');
        }
        self.path.push_str(name);
        value.walk(self);
        self.path.truncate(before);
    }

    fn number(&mut self, value: f64) {
        (self.each)(&self.path, value);
    }
}

/// Something with numbers in it.
pub(crate) trait Numbers {
    fn walk(&self, walk: &mut Walk<'_>);
}

/// Hands every number of a plan to `each`, under its name: `pose.pupil.x_mm`.
pub(crate) fn each_number(plan: &Plan, mut each: impl FnMut(&str, f64)) {
    plan.walk(&mut Walk { path: String::new(), each: &mut each });
}

/// Every number of a plan with its name.
pub(crate) fn numbers(plan: &Plan) -> Vec<(String, f64)> {
    let mut all = Vec::with_capacity(400);
    each_number(plan, |name, value| all.push((name.to_owned(), value)));
    all
}

impl Numbers for f64 {
    fn walk(&self, walk: &mut Walk<'_>) {
        walk.number(*self);
    }
}

impl Numbers for u32 {
    fn walk(&self, walk: &mut Walk<'_>) {
        walk.number(f64::from(*self));
    }
}

impl Numbers for bool {
    fn walk(&self, walk: &mut Walk<'_>) {
        walk.number(f64::from(u8::from(*self)));
    }
}

/// What is not there is told too, so that two plans can be compared number by number.
impl<T: Numbers> Numbers for Option<T> {
    fn walk(&self, walk: &mut Walk<'_>) {
        walk.into("given", &self.is_some());
        if let Some(value) = self {
            value.walk(walk);
        }
    }
}

impl<T: Numbers, const N: usize> Numbers for [T; N] {
    fn walk(&self, walk: &mut Walk<'_>) {
        for (index, value) in self.iter().enumerate() {
            walk.into(&index.to_string(), value);
        }
    }
}

impl Numbers for Caution {
    fn walk(&self, walk: &mut Walk<'_>) {
        let Caution { code, level, value, limit } = self;
        walk.number(f64::from(*level as i32));
        // The unit is a caution's own, so it stands in the name.
        let unit = code.unit();
        walk.into(&format!("value_{unit}"), value);
        walk.into(&format!("limit_{unit}"), limit);
    }
}

impl Numbers for Cautions {
    fn walk(&self, walk: &mut Walk<'_>) {
        for caution in self.iter() {
            walk.into(&format!("{:?}", caution.code), caution);
        }
    }
}

macro_rules! by_number {
    ($($type:ident)*) => {$(
        impl Numbers for $type {
            fn walk(&self, walk: &mut Walk<'_>) {
                walk.number(f64::from(*self as i32));
            }
        }
    )*};
}

by_number! { Side Removal AdviceReason }

macro_rules! by_field {
    ($($type:ident { $($field:ident)* })*) => {$(
        impl Numbers for $type {
            fn walk(&self, walk: &mut Walk<'_>) {
                let $type { $($field),* } = self;
                $(walk.into(stringify!($field), $field);)*
            }
        }
    )*};
}

by_field! {
    Plan {
        used_area frame_width_mm frame_height_mm aim_height_mm lens field_angles pose footprint backdrop
        subject_depth outline shares focus tilt perspective advice payload placement bay_room
        support_in_picture stability ballast sag tolerance overhead removal cautions
    }
    UsedArea { width_mm height_mm }
    FocusedLens {
        magnification focal_length_mm focal_length_assumed pupil_ratio sensor_distance_mm
        image_distance_mm object_distance_mm pupil_distance_mm
    }
    FieldAngles { horizontal_deg vertical_deg diagonal_deg }
    Pose {
        forward right up aim pupil sensor socket pivot body_top_mm sensor_from_aim_mm pivot_from_aim_mm
        sensor_from_edge_mm pivot_from_edge_mm front_clearance_mm
    }
    Point { x_mm y_mm z_mm }
    FloorPoint { x_mm y_mm }
    Direction { x y z }
    Footprint {
        corners near_width_mm far_width_mm keystone_ratio depth_mm from_below edges_in_frame table_share
        board
    }
    Board { width_mm depth_mm centre turned_deg }
    Backdrop { behind_mm width_mm height_mm share }
    SubjectDepth { nearest_mm farthest_mm }
    Outline {
        left_mm right_mm bottom_mm top_mm fill_width fill_height room_above_mm room_below_mm room_left_mm
        room_right_mm
    }
    Shares { top side contents contents_from_far }
    ThirdStop { f_number engraved }
    DepthOfField { near_limit_mm far_limit_mm in_front_mm behind_mm }
    FocusStack { f_number engraved pictures step_mm }
    Focus {
        circle_of_confusion_mm circle_of_confusion_assumed f_number engraved f_number_given depth_of_field
        subject_held f_number_needed f_number_to_hold effective_f_number exposure_loss_stops
        diffraction_disc_mm diffraction_limit_f_number stack
    }
    Tilt { hinge_distance_mm tilt_deg }
    Perspective { side_stretch corner_stretch size_ratio convergence }
    Advice {
        least_deg most_deg start_deg reasons top_share_at_start contents_at_start half_top_from_deg
        half_contents_from_deg
    }
    Payload { mass_kg centre_ahead_mm centre head_moment_n_m }
    Placement {
        boom_used side column towards stand_off_mm reach_mm reach_from_sides_mm boom_length_mm
        clamp_height_mm tail_end first_leg_deg leg_count feet highest_point_mm
    }
    BayRoom { feet_mm tail_mm camera_mm ceiling_mm behind_camera_mm }
    SupportInPicture { column_mm boom_mm }
    Standing {
        total_mass_kg centre margin_mm margin_edge factor factor_edge factor_edge_direction_deg
        restoring_moment_n_m overturning_moment_n_m tilt_to_tip_deg push_to_tip_n clamp_moment_n_m
    }
    Stability { as_shot camera_off counterweight_off payload_to_tip_kg payload_share }
    Ballast {
        counterweight_to_balance_kg base_to_add_kg longest_reach_mm best_first_leg_deg best_margin_mm
        worst_first_leg_deg worst_margin_mm
    }
    Sag { deflection_mm height_lost_mm end_slope_deg aim_shift_mm frequency_hz settling_s }
    Tolerance { up_mm down_mm away_mm closer_mm roll_drift_mm }
}
