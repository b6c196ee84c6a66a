//! The rows of camera, lens, table and bay.

use super::field::{Field, give, set};
use crate::optics::camera::Camera;
use crate::optics::lens::Lens;
use crate::range;
use crate::scene::bay::Bay;
use crate::scene::table::{Table, Underside};

/// What a note is for, in any table.
pub(crate) const NOTE: &str = "for whoever reads the file";

/// Left out, it is not there.
const NONE: &str = "none";

pub(crate) const BLANK_CAMERA: Camera = Camera {
    sensor_width_mm: 0.0,
    sensor_height_mm: 0.0,
    circle_of_confusion_mm: None,
    socket_ahead_mm: 0.0,
    socket_below_mm: 0.0,
    body_above_mm: 0.0,
    body_behind_mm: 0.0,
    mass_kg: 0.0,
    centre_ahead_mm: 0.0,
};

pub(crate) static CAMERA: &[Field<Camera>] = &[
    Field::number(range::SENSOR_WIDTH_MM, set!(Camera, sensor_width_mm)),
    Field::number(range::SENSOR_HEIGHT_MM, set!(Camera, sensor_height_mm)),
    Field::number(range::CIRCLE_OF_CONFUSION_MM, give!(Camera, circle_of_confusion_mm))
        .otherwise("the sensor's diagonal / 1500"),
    Field::number(range::SOCKET_AHEAD_MM, set!(Camera, socket_ahead_mm)),
    Field::number(range::SOCKET_BELOW_MM, set!(Camera, socket_below_mm)),
    Field::number(range::BODY_ABOVE_MM, set!(Camera, body_above_mm)),
    Field::number(range::BODY_BEHIND_MM, set!(Camera, body_behind_mm)).otherwise("0"),
    Field::number(range::CAMERA_MASS_KG, set!(Camera, mass_kg)),
    Field::number(range::CAMERA_CENTRE_AHEAD_MM, set!(Camera, centre_ahead_mm)).otherwise("0, at the sensor"),
    Field::text("note", NOTE, |_: &mut Camera, _| {}).otherwise(NONE),
];

pub(crate) const BLANK_LENS: Lens = Lens {
    focal_length_mm: 0.0,
    closest_focus_mm: None,
    largest_magnification: None,
    pupil_ratio: 1.0,
    principal_separation_mm: 0.0,
    least_f_number: 0.0,
    most_f_number: 0.0,
    front_from_sensor_mm: None,
    largest_tilt_deg: 0.0,
    mass_kg: 0.0,
    centre_ahead_mm: 0.0,
};

pub(crate) static LENS: &[Field<Lens>] = &[
    Field::number(range::FOCAL_LENGTH_MM, set!(Lens, focal_length_mm)),
    Field::number(range::CLOSEST_FOCUS_MM, give!(Lens, closest_focus_mm))
        .otherwise("no limit but the lens formula's"),
    Field::number(range::LARGEST_MAGNIFICATION, give!(Lens, largest_magnification))
        .otherwise("the focal length stays as marked"),
    Field::number(range::PUPIL_RATIO, set!(Lens, pupil_ratio)).otherwise("1"),
    Field::number(range::PRINCIPAL_SEPARATION_MM, set!(Lens, principal_separation_mm)).otherwise("0"),
    Field::number(range::LEAST_F_NUMBER, set!(Lens, least_f_number)),
    Field::number(range::MOST_F_NUMBER, set!(Lens, most_f_number)),
    Field::number(range::FRONT_FROM_SENSOR_MM, give!(Lens, front_from_sensor_mm))
        .otherwise("room for the light is not checked"),
    Field::number(range::LARGEST_TILT_DEG, set!(Lens, largest_tilt_deg)).otherwise("0"),
    Field::number(range::LENS_MASS_KG, set!(Lens, mass_kg)),
    Field::number(range::LENS_CENTRE_AHEAD_MM, set!(Lens, centre_ahead_mm)),
    Field::text("note", NOTE, |_: &mut Lens, _| {}).otherwise(NONE),
];

pub(crate) const BLANK_TABLE: Table =
    Table { width_mm: 0.0, depth_mm: 0.0, height_mm: 0.0, underside: Underside::Open };

pub(crate) static TABLE: &[Field<Table>] = &[
    Field::number(range::TABLE_WIDTH_MM, set!(Table, width_mm)),
    Field::number(range::TABLE_DEPTH_MM, set!(Table, depth_mm)),
    Field::number(range::TABLE_HEIGHT_MM, set!(Table, height_mm)),
    Field::choice(
        "underside",
        &["open", "closed"],
        "open: a stand's feet pass under the top; closed: a plinth or a cabinet keeps them outside",
        |table: &mut Table, index| table.underside = [Underside::Open, Underside::Closed][index],
    )
    .otherwise("open"),
    Field::text("note", NOTE, |_: &mut Table, _| {}).otherwise(NONE),
];

const NO_WALL: &str = "no wall";

pub(crate) static BAY: &[Field<Bay>] = &[
    Field::number_as(
        "left_mm",
        range::WALL_MM,
        "from the table's centre to the wall on the left",
        give!(Bay, left_mm),
    )
    .otherwise(NO_WALL),
    Field::number_as(
        "right_mm",
        range::WALL_MM,
        "from the table's centre to the wall on the right",
        give!(Bay, right_mm),
    )
    .otherwise(NO_WALL),
    Field::number_as(
        "front_mm",
        range::WALL_MM,
        "from the table's centre to the wall in front",
        give!(Bay, front_mm),
    )
    .otherwise(NO_WALL),
    Field::number_as(
        "back_mm",
        range::WALL_MM,
        "from the table's centre to the wall behind",
        give!(Bay, back_mm),
    )
    .otherwise(NO_WALL),
    Field::number(range::CEILING_MM, give!(Bay, ceiling_mm)).otherwise("no ceiling"),
    Field::number(range::CEILING_CLEARANCE_MM, set!(Bay, ceiling_clearance_mm)).otherwise("0"),
    Field::number(range::PERSON_ROOM_MM, set!(Bay, person_room_mm)).otherwise("0"),
    Field::number(range::FLOOR_SLOPE_PERCENT, set!(Bay, floor_slope_percent)).otherwise("0, level"),
    Field::flag("public_passes", "whether children or the public pass", set!(Bay, public_passes))
        .otherwise("false"),
    Field::flag(
        "people_under",
        "whether people are under the load; makers' ratings are then divided",
        set!(Bay, people_under),
    )
    .otherwise("false"),
    Field::text("note", NOTE, |_: &mut Bay, _| {}).otherwise(NONE),
];
