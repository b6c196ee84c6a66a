//! Every quantity that comes in: its name, unit, least and most, and why.
//!
//! The checks, the messages, the command's list of fields and the tests' generators all read this table.
//! The bounds keep the arithmetic within what it was checked for; they are far wider than a studio. Where
//! a bound is the physics (an elevation, a share), the reason says so.

use crate::fault::{Fault, FaultKind};

/// What one input may be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Range {
    /// The field's name with what it belongs to, as in the shoot file.
    pub field: &'static str,
    /// The unit of the bare number: `mm`, `deg`, `kg`, `n_m`, or empty for a pure number.
    pub unit: &'static str,
    /// The least value accepted.
    pub least: f64,
    /// The most.
    pub most: f64,
    /// What the quantity is, and why the bounds are where they are if that is not plain.
    pub meaning: &'static str,
}

impl Range {
    /// The fault of `kind` for `value` in this field, with the field's own bounds.
    pub(crate) fn fault(&self, kind: FaultKind, value: f64) -> Fault {
        Fault { kind, field: self.field, value, least: self.least, most: self.most }
    }

    /// The value, or a fault where it is not finite or lies outside the bounds.
    #[inline]
    pub fn check(&self, value: f64) -> Result<f64, Fault> {
        // No NaN lies between two bounds, and every bound is finite.
        if value >= self.least && value <= self.most { Ok(value) } else { Err(self.refused(value)) }
    }

    /// Why a value outside the bounds is refused.
    #[cold]
    fn refused(&self, value: f64) -> Fault {
        let kind = if !value.is_finite() {
            FaultKind::NotFinite
        } else if value < self.least {
            FaultKind::TooSmall
        } else {
            FaultKind::TooLarge
        };
        self.fault(kind, value)
    }

    /// As [`Range::check`], for a value that may be left out.
    pub fn check_given(&self, value: Option<f64>) -> Result<(), Fault> {
        match value {
            Some(value) => self.check(value).map(|_| ()),
            None => Ok(()),
        }
    }
}

/// The row of a field, in either table.
pub fn find(field: &str) -> Option<&'static Range> {
    ALL.iter().chain(WHOLE_SHOOT).find(|row| row.field == field)
}

macro_rules! ranges {
    ($table:ident, $order:literal, $($name:ident: $field:literal, $unit:literal, $least:literal, $most:literal, $meaning:literal;)*) => {
        $(
            #[doc = concat!("`", $field, "`, ", stringify!($least), " to ", stringify!($most), " ", $unit, ": ", $meaning)]
            pub const $name: Range =
                Range { field: $field, unit: $unit, least: $least, most: $most, meaning: $meaning };
        )*
        #[doc = $order]
        pub const $table: &[Range] = &[$($name),*];
    };
}

ranges! {
    ALL, "What one brief, and the questions around it, may hold, in the order of the shoot file.",
    ELEVATION_DEG: "shot.elevation_deg", "deg", -60.0, 90.0, "how far the camera stands above the horizontal through the aim point: 0 straight-on, 90 straight overhead, negative from below";
    BEARING_DEG: "shot.bearing_deg", "deg", -360.0, 360.0, "where the camera stands around the subject seen from above, counter-clockwise: 0 in front, 90 to the right, 180 behind, 270 to the left; at 90 elevation it still says where the top of the frame points";
    FRAME_WIDTH_MM: "shot.frame_width_mm", "mm", 1.0, 100000.0, "width of the delivered picture in the plane through the aim point square to the axis";
    FILL_WIDTH: "shot.fill_width", "", 0.01, 1.0, "share of the frame's width that the subject is to fill";
    FILL_HEIGHT: "shot.fill_height", "", 0.01, 1.0, "share of the frame's height that the subject is to fill";
    ASPECT_SIDE: "shot.delivered_aspect", "", 0.01, 100.0, "one of the two numbers of the delivered picture's aspect, width to height";
    AIM_X_MM: "shot.aim_x_mm", "mm", -10000.0, 10000.0, "the aim point, and the subject's centre, to the right of the table's centre";
    AIM_Y_MM: "shot.aim_y_mm", "mm", -10000.0, 10000.0, "the aim point, and the subject's centre, behind the table's centre";
    AIM_HEIGHT_MM: "shot.aim_height_mm", "mm", -1000.0, 5000.0, "the aim point above the table top; half the subject's height when left out";
    F_NUMBER: "shot.f_number", "", 0.5, 512.0, "the engraved f-number to shoot at; when left out, the one that holds the subject";
    BACKDROP_BEHIND_MM: "shot.backdrop_behind_mm", "mm", 1.0, 20000.0, "how far behind the aim point a backdrop stands upright";
    LIGHT_CLEARANCE_MM: "shot.light_clearance_mm", "mm", 0.0, 10000.0, "the least room the light needs between the lens's front and the aim point";
    STACK_OVERLAP: "shot.stack_overlap", "", 0.0, 0.95, "share of each slice of a focus stack that the next one overlaps";
    ELEVATION_TOLERANCE_DEG: "shot.elevation_tolerance_deg", "deg", 0.001, 20.0, "how far the elevation may be off";
    FRAME_WIDTH_TOLERANCE: "shot.frame_width_tolerance", "", 0.0001, 0.5, "share by which the frame width may be off";
    ROLL_TOLERANCE_DEG: "shot.roll_tolerance_deg", "deg", 0.0, 20.0, "how far from level the camera may be rolled";

    SENSOR_WIDTH_MM: "camera.sensor_width_mm", "mm", 1.0, 500.0, "the sensor's longer side, held across";
    SENSOR_HEIGHT_MM: "camera.sensor_height_mm", "mm", 1.0, 500.0, "the sensor's shorter side, held across";
    CIRCLE_OF_CONFUSION_MM: "camera.circle_of_confusion_mm", "mm", 0.0001, 5.0, "largest blur on the sensor that counts as sharp; the sensor's diagonal / 1500 when left out";
    SOCKET_AHEAD_MM: "camera.socket_ahead_mm", "mm", -500.0, 2000.0, "the mounting socket ahead of the sensor, along the axis";
    SOCKET_BELOW_MM: "camera.socket_below_mm", "mm", -500.0, 1000.0, "the mounting socket below the axis, square to it";
    BODY_ABOVE_MM: "camera.body_above_mm", "mm", 0.0, 1000.0, "the body's top above the axis, square to it";
    BODY_BEHIND_MM: "camera.body_behind_mm", "mm", 0.0, 1000.0, "the body's back behind the sensor";
    CAMERA_MASS_KG: "camera.mass_kg", "kg", 0.0, 100.0, "the camera without its lens";
    CAMERA_CENTRE_AHEAD_MM: "camera.centre_ahead_mm", "mm", -1000.0, 2000.0, "the camera's centre of gravity ahead of the sensor, on the axis";

    FOCAL_LENGTH_MM: "lens.focal_length_mm", "mm", 1.0, 3000.0, "the marked focal length, for infinity";
    CLOSEST_FOCUS_MM: "lens.closest_focus_mm", "mm", 1.0, 100000.0, "sensor to object, as lenses are specified";
    LARGEST_MAGNIFICATION: "lens.largest_magnification", "", 0.0001, 20.0, "at the closest focus";
    PUPIL_RATIO: "lens.pupil_ratio", "", 0.05, 20.0, "exit pupil / entrance pupil; 1 when left out";
    PRINCIPAL_SEPARATION_MM: "lens.principal_separation_mm", "mm", -1000.0, 1000.0, "from the front to the rear principal plane; 0 when left out";
    LEAST_F_NUMBER: "lens.least_f_number", "", 0.5, 512.0, "the widest opening's engraved f-number";
    MOST_F_NUMBER: "lens.most_f_number", "", 0.5, 512.0, "the smallest opening's engraved f-number";
    FRONT_FROM_SENSOR_MM: "lens.front_from_sensor_mm", "mm", 1.0, 5000.0, "the lens's front ahead of the sensor";
    LARGEST_TILT_DEG: "lens.largest_tilt_deg", "deg", 0.0, 45.0, "how far a tilting lens tilts; 0 for any other";
    LENS_MASS_KG: "lens.mass_kg", "kg", 0.0, 100.0, "the lens";
    LENS_CENTRE_AHEAD_MM: "lens.centre_ahead_mm", "mm", -1000.0, 5000.0, "the lens's centre of gravity ahead of the sensor, on the axis";

    TABLE_WIDTH_MM: "table.width_mm", "mm", 1.0, 20000.0, "the table top along its front edge";
    TABLE_DEPTH_MM: "table.depth_mm", "mm", 1.0, 20000.0, "the table top from its front edge to its back edge";
    TABLE_HEIGHT_MM: "table.height_mm", "mm", 0.0, 3000.0, "the table top above the floor";

    SUBJECT_WIDTH_MM: "subject.width_mm", "mm", 0.1, 10000.0, "along the table's width";
    SUBJECT_DEPTH_MM: "subject.depth_mm", "mm", 0.1, 10000.0, "along the table's depth";
    SUBJECT_DIAMETER_MM: "subject.diameter_mm", "mm", 0.1, 10000.0, "of a round subject";
    SUBJECT_HEIGHT_MM: "subject.height_mm", "mm", 0.0, 5000.0, "above the table top";
    VESSEL_INSIDE_DIAMETER_MM: "subject.vessel.inside_diameter_mm", "mm", 0.1, 10000.0, "the vessel's opening; no wider than the subject";
    VESSEL_CONTENTS_BELOW_RIM_MM: "subject.vessel.contents_below_rim_mm", "mm", 0.0, 5000.0, "from the rim, which is at the subject's height, down to the contents";

    LOWEST_PIVOT_MM: "support.lowest_pivot_mm", "mm", 0.0, 20000.0, "the lowest the column carries the head's pivot, or the boom's clamp";
    HIGHEST_PIVOT_MM: "support.highest_pivot_mm", "mm", 0.0, 20000.0, "the highest the column carries the head's pivot, or the boom's clamp";
    COLUMN_RADIUS_MM: "support.column_radius_mm", "mm", 0.0, 1000.0, "half the column's thickness";
    LEG_COUNT: "support.leg_count", "", 3.0, 8.0, "feet, evenly spaced on a circle; fewer than three do not stand";
    FOOT_RADIUS_MM: "support.foot_radius_mm", "mm", 1.0, 5000.0, "radius of the circle on which the feet stand";
    LEGS_TOP_MM: "support.legs_top_mm", "mm", 1.0, 20000.0, "the height at which the legs meet the column";
    FIRST_LEG_DEG: "support.first_leg_deg", "deg", -360.0, 360.0, "the first leg's direction, counter-clockwise from the boom's; when left out 0 with a boom (a leg under the load), and without one half a leg spacing (the gap faces the table)";
    TABLE_CLEARANCE_MM: "support.table_clearance_mm", "mm", 0.0, 2000.0, "room kept between the stand and the table";
    SUPPORT_MASS_KG: "support.mass_kg", "kg", 0.0, 500.0, "column and legs";
    SUPPORT_CENTRE_HEIGHT_MM: "support.centre_height_mm", "mm", 0.0, 20000.0, "centre of gravity of column and legs above the floor, on the column's axis";
    BASE_MASS_KG: "support.base_mass_kg", "kg", 0.0, 1000.0, "weight added to the base, on the column's axis";
    BASE_HEIGHT_MM: "support.base_height_mm", "mm", 0.0, 20000.0, "that weight's height above the floor";
    SANDBAG_MASS_KG: "support.sandbags.mass_kg", "kg", 0.0, 200.0, "one bag, hung clear of the floor";
    SANDBAG_OUT_MM: "support.sandbags.out_mm", "mm", 0.0, 5000.0, "how far from the column's axis it hangs";
    SANDBAG_DIRECTION_DEG: "support.sandbags.direction_deg", "deg", -360.0, 360.0, "in which direction it hangs, counter-clockwise from the boom's: 0 under the load, 180 behind";
    SANDBAG_HEIGHT_MM: "support.sandbags.height_mm", "mm", 0.0, 20000.0, "its centre of gravity above the floor";
    RATED_LOAD_KG: "support.rated_load_kg", "kg", 0.0, 1000.0, "the maker's rating of what the column may carry in all";

    HEAD_MASS_KG: "support.head.mass_kg", "kg", 0.0, 100.0, "the head, taken to hang on the axis at the socket";
    PIVOT_BELOW_SOCKET_MM: "support.head.pivot_below_socket_mm", "mm", -500.0, 1000.0, "from the socket to the head's pivot, square to the axis";
    HEAD_RATED_LOAD_KG: "support.head.rated_load_kg", "kg", 0.0, 1000.0, "the maker's rating";
    HEAD_RATED_MOMENT_N_M: "support.head.rated_moment_n_m", "n_m", 0.0, 10000.0, "the maker's rating";

    LONGEST_REACH_MM: "support.boom.longest_reach_mm", "mm", 1.0, 10000.0, "horizontally, from the column's axis to the head's pivot";
    TAIL_MM: "support.boom.tail_mm", "mm", 0.0, 10000.0, "the boom's length behind the clamp";
    BOOM_MASS_KG: "support.boom.mass_kg", "kg", 0.0, 200.0, "from the tail's end to the head, its centre of gravity at mid-length";
    PITCH_DEG: "support.boom.pitch_deg", "deg", -60.0, 60.0, "how far the boom rises towards the camera";
    COUNTERWEIGHT_KG: "support.boom.counterweight_kg", "kg", 0.0, 500.0, "on the tail";
    COUNTERWEIGHT_OUT_MM: "support.boom.counterweight_out_mm", "mm", 0.0, 10000.0, "along the tail from the clamp; the tail's end when left out";
    BOOM_RATED_LOAD_KG: "support.boom.rated_load_kg", "kg", 0.0, 1000.0, "the maker's rating of the load at full reach";
    RATED_CLAMP_MOMENT_N_M: "support.boom.rated_clamp_moment_n_m", "n_m", 0.0, 100000.0, "the maker's rating of what the clamp may hold unbalanced";
    BENDING_STIFFNESS_N_M2: "support.boom.stiffness.bending_stiffness_n_m2", "n_m2", 0.001, 1e12, "EI of the boom's section";
    TUBE_OUTSIDE_MM: "support.boom.stiffness.tube_outside_mm", "mm", 1.0, 1000.0, "outside diameter of a round tube";
    TUBE_INSIDE_MM: "support.boom.stiffness.tube_inside_mm", "mm", 0.0, 1000.0, "inside diameter of the tube; 0 for a solid bar";
    TUBE_MODULUS_N_PER_MM2: "support.boom.stiffness.tube_modulus_n_per_mm2", "n_per_mm2", 1.0, 2000000.0, "Young's modulus of the tube: aluminium 69000, steel 207000";
    DAMPING_RATIO: "support.boom.damping_ratio", "", 0.0001, 0.99, "share of critical damping with which the boom's swing dies down";

    WALL_MM: "bay.wall", "mm", 0.0, 100000.0, "from the table's centre to a wall: left_mm, right_mm, front_mm, back_mm";
    CEILING_MM: "bay.ceiling_mm", "mm", 500.0, 100000.0, "above the floor";
    CEILING_CLEARANCE_MM: "bay.ceiling_clearance_mm", "mm", 0.0, 5000.0, "room kept under the ceiling";
    PERSON_ROOM_MM: "bay.person_room_mm", "mm", 0.0, 10000.0, "room for a person behind the camera";
    FLOOR_SLOPE_PERCENT: "bay.floor_slope_percent", "percent", 0.0, 30.0, "the floor's steepest slope, taken off the tilt margin";

    PAYLOAD_SHARE_NOTE: "criteria.payload_share_note", "", 0.0, 10.0, "payload over the payload that tips the stand: a note above this";
    PAYLOAD_SHARE_WARN: "criteria.payload_share_warn", "", 0.0, 10.0, "... a warning above this";
    PAYLOAD_SHARE_STOP: "criteria.payload_share_stop", "", 0.0, 10.0, "... a stop from this on";
    FACTOR_NOTE: "criteria.factor_note", "", 0.0, 100.0, "restoring over overturning moment: a note under this";
    FACTOR_WARN: "criteria.factor_warn", "", 0.0, 100.0, "... a warning under this";
    FACTOR_STOP: "criteria.factor_stop", "", 0.0, 100.0, "... a stop under this";
    SPRINGY_FREQUENCY_HZ: "criteria.springy_frequency_hz", "hz", 0.0, 1000.0, "a boom that swings slower than this is springy";
    SPRINGY_FACTOR_WARN: "criteria.springy_factor_warn", "", 0.0, 100.0, "the factor under which a springy boom gets a warning";
    TILT_WARN_DEG: "criteria.tilt_warn_deg", "deg", 0.0, 90.0, "tilt that tips the stand: a warning under this";
    TILT_STOP_DEG: "criteria.tilt_stop_deg", "deg", 0.0, 90.0, "... a stop under this";
    TILT_PUBLIC_WARN_DEG: "criteria.tilt_public_warn_deg", "deg", 0.0, 90.0, "... a warning under this where children or the public pass";
    PUSH_SHARE_WARN: "criteria.push_share_warn", "", 0.0, 10.0, "sideways push that tips the stand, as a share of its weight: a warning under this";
    PUSH_MOST_N: "criteria.push_most_n", "n", 0.0, 100000.0, "a push above this is never asked for";
    PUSH_HEIGHT_MOST_MM: "criteria.push_height_most_mm", "mm", 1.0, 20000.0, "the push is taken at the pivot, but no higher than this";
    PEOPLE_RATING_DIVISOR: "criteria.people_rating_divisor", "", 1.0, 100.0, "makers' ratings are divided by this where people are under the load";
    WANTED_FACTOR: "criteria.wanted_factor", "", 1.0, 100.0, "the factor that the solved base weight and longest reach keep";
    SETTLED_SHARE: "criteria.settled_share", "", 0.000001, 0.99, "a touched boom counts as settled when its swing has died down to this share";

    MEASURED_HEIGHT_MM: "measured.sensor_height_mm", "mm", 0.0, 100000.0, "height of the axis at the sensor above the floor";
    MEASURED_AIM_HEIGHT_MM: "measured.aim_height_above_floor_mm", "mm", 0.0, 100000.0, "height of the aim point above the floor";
    MEASURED_DISTANCE_MM: "measured.horizontal_distance_mm", "mm", 0.0, 100000.0, "from the aim point to the sensor, seen from above";
    MEASURED_SENSOR_DISTANCE_MM: "measured.sensor_distance_mm", "mm", 0.001, 1000000.0, "straight from the aim point to the sensor";
    MEASURED_ELEVATION_DEG: "measured.elevation_deg", "deg", -90.0, 90.0, "of the axis, by an inclinometer";
    MEASURED_UNCERTAINTY_MM: "measured.uncertainty_mm", "mm", 0.0, 10000.0, "standard uncertainty of a measured length";
    MEASURED_UNCERTAINTY_DEG: "measured.uncertainty_deg", "deg", 0.0, 45.0, "standard uncertainty of a measured angle";
    PUPIL_DISTANCE_MM: "viewpoint.pupil_distance_mm", "mm", 0.001, 1000000.0, "from the aim point to the entrance pupil";
    USED_WIDTH_MM: "used.width_mm", "mm", 0.01, 500.0, "width of the part of the sensor that the delivered picture uses";
    USED_HEIGHT_MM: "used.height_mm", "mm", 0.01, 500.0, "height of the part of the sensor that the delivered picture uses";
    MAGNIFICATION: "magnification", "", 0.00001, 500.0, "used sensor width / frame width";
}

ranges! {
    WHOLE_SHOOT, "What planning a whole shoot takes beside its briefs, in the order of the shoot file.",
    SUPPORT_MINUTES: "order.support_minutes", "min", 0.0, 1440.0, "what it takes to bring another support, its side and height included";
    SIDE_MINUTES: "order.side_minutes", "min", 0.0, 1440.0, "... to take the same support to another side of the table";
    LENS_MINUTES: "order.lens_minutes", "min", 0.0, 1440.0, "... to change the lens";
    HEIGHT_MINUTES: "order.height_minutes", "min", 0.0, 1440.0, "... to take the same support to another height, beyond the threshold";
    HEIGHT_THRESHOLD_MM: "order.height_threshold_mm", "mm", 0.0, 20000.0, "how far the height of the pivot, or of the boom's clamp, may change at no cost";
    SURFACE_MINUTES: "order.surface_minutes", "min", 0.0, 1440.0, "... to lay another surface on the table, or to bring another table";
    PIECE_MASS_KG: "weights.mass_kg", "kg", 0.01, 200.0, "one piece of counterweight, or one bag, to the gram";
    PIECES_AT_HAND: "weights.at_hand", "", 0.0, 10000.0, "how many pieces of this size there are";
    PIECES_NEEDED_KG: "weights.needed_kg", "kg", 0.0, 2000.0, "what pieces must weigh together at least";
    MEASURED_ROLL_DEG: "measured.roll_deg", "deg", -90.0, 90.0, "how far the camera is rolled, by an inclinometer across it";
}
