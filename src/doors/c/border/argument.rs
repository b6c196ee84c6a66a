//! Ranges of arguments that no brief has: what a part takes from another part's result. They are as wide as
//! the results of all briefs.

use crate::range::Range;

macro_rules! arguments {
    ($($name:ident: $field:literal, $unit:literal, $least:literal, $most:literal, $meaning:literal;)*) => {
        $(pub(crate) const $name: Range =
            Range { field: $field, unit: $unit, least: $least, most: $most, meaning: $meaning };)*
        /// All of them.
        pub(crate) const ALL: &[Range] = &[$($name),*];
    };
}

arguments! {
    MAGNIFICATION: "magnification", "", 1e-12, 1e6, "picture size on the sensor / size in the plane through the aim point";
    PUPIL_DISTANCE_MM: "pupil_distance_mm", "mm", 1e-6, 1e12, "from the aim point to the entrance pupil";
    SENSOR_DISTANCE_MM: "sensor_distance_mm", "mm", -1e12, 1e12, "from the aim point to the sensor";
    FRAME_HEIGHT_MM: "frame_height_mm", "mm", 1e-6, 1e12, "height of the frame in the plane through the aim point";
    NEAREST_MM: "nearest_mm", "mm", -1e9, 1e9, "from the aim point towards the camera";
    FARTHEST_MM: "farthest_mm", "mm", -1e9, 1e9, "from the aim point away from the camera";
    DISTANCE_MM: "distance_mm", "mm", 0.001, 1e9, "from the entrance pupil along the axis";
    Z_MM: "z_mm", "mm", -1e6, 1e6, "a level plane above the floor";
    BODY_TOP_MM: "body_top_mm", "mm", -1e9, 1e9, "the highest point of body and lens above the floor";
    PIVOT_HEIGHT_MM: "pivot_height_mm", "mm", -1e9, 1e9, "the pivot above the floor";
    REACH_MM: "reach_mm", "mm", 0.0, 1e9, "from the column's axis to the pivot, horizontally";
    BOOM_LENGTH_MM: "boom_length_mm", "mm", 0.0, 1e9, "along the boom from the clamp to the pivot";
    PAYLOAD_KG: "payload_kg", "kg", 0.0, 1000.0, "camera, lens and head together";
    SHARE: "share", "", 0.0, 1.0, "a share of a whole";
    PAYLOAD_MASS_KG: "payload.mass_kg", "kg", 0.0, 1000.0, "camera, lens and head together";
    APOTHEM_MM: "feet.apothem_mm", "mm", 1e-6, 1e9, "from the column's axis to each edge";
    FEET_COUNT: "feet.count", "", 3.0, 8.0, "how many edges";
    FEET_PLACED: "placement.leg_count", "", 3.0, 8.0, "how many feet";
}
