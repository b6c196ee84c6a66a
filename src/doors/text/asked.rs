//! What a request may hold: one row a key, the same in every operation that takes it.

use std::prelude::rust_2024::*;

use super::parts::{self, Given};
use crate::optics::camera::Camera;
use crate::optics::lens::Lens;
use crate::optics::sensor::{Aspect, Hold};
use crate::range::{self, Range};
use crate::scene::bay::Bay;
use crate::scene::subject::Subject;
use crate::shoot::pieces::PieceSize;
use crate::shootfile::Form;
use crate::shootfile::edit::Edit;
use crate::shootfile::field::{Field, Name, give};
use crate::shootfile::log::MeasuredDraft;
use crate::shootfile::shot::HOLDS;
use crate::shootfile::tree::{Entry, Node};
use crate::tolerance::Measurement;
use crate::vector::Point;
use crate::view::projection::PicturePoint;

/// A request as it was read.
#[derive(Debug, Default)]
pub(super) struct Asked {
    pub(super) shoot: Option<Node>,
    pub(super) form: Option<Form>,
    pub(super) shot: Option<Name>,
    pub(super) kind: Option<Name>,
    pub(super) edits: Vec<Edit>,
    pub(super) camera: Option<Given<Camera>>,
    pub(super) lens: Option<Given<Lens>>,
    pub(super) subject: Option<Given<Subject>>,
    pub(super) bay: Option<Given<Bay>>,
    pub(super) hold: Option<Hold>,
    pub(super) delivered_aspect: Option<Aspect>,
    pub(super) used_width_mm: Option<f64>,
    pub(super) magnification: Option<f64>,
    pub(super) frame_width_mm: Option<f64>,
    pub(super) fill_width: Option<f64>,
    pub(super) fill_height: Option<f64>,
    pub(super) sensor_distance_mm: Option<f64>,
    pub(super) pupil_distance_mm: Option<f64>,
    pub(super) pupil_ratio: Option<f64>,
    pub(super) f_number: Option<f64>,
    pub(super) circle_of_confusion_mm: Option<f64>,
    pub(super) nearest_mm: Option<f64>,
    pub(super) farthest_mm: Option<f64>,
    pub(super) distance_mm: Option<f64>,
    pub(super) stack_overlap: Option<f64>,
    pub(super) elevation_deg: Option<f64>,
    pub(super) bearing_deg: Option<f64>,
    pub(super) aim_height_mm: Option<f64>,
    pub(super) aim_height_above_floor_mm: Option<f64>,
    pub(super) ceiling_mm: Option<f64>,
    pub(super) ceiling_clearance_mm: Option<f64>,
    pub(super) pivot_below_socket_mm: Option<f64>,
    pub(super) hand_focal_length_mm: Option<f64>,
    pub(super) hand_sensor_width_mm: Option<f64>,
    pub(super) hand_distance_mm: Option<f64>,
    pub(super) measured: Option<MeasuredDraft>,
    pub(super) roll_deg: Option<Measurement>,
    pub(super) quantity: Option<usize>,
    pub(super) from: Option<Entry>,
    pub(super) to: Option<Entry>,
    pub(super) step: Option<Entry>,
    pub(super) steps: Option<u32>,
    pub(super) points: Vec<Point>,
    pub(super) places: Vec<PicturePoint>,
    pub(super) z_mm: Option<f64>,
    pub(super) view: Option<usize>,
    pub(super) views: Vec<usize>,
    pub(super) unit: Option<usize>,
    pub(super) width: Option<f64>,
    pub(super) height: Option<f64>,
    pub(super) id: Option<Name>,
    pub(super) paper: Option<usize>,
    pub(super) leave_out: Vec<Name>,
    pub(super) open: Vec<&'static str>,
    pub(super) sizes: Vec<PieceSize>,
    pub(super) needed_kg: Option<f64>,
}

/// A key with the name of its type in TypeScript.
pub(super) struct Key {
    pub(super) field: Field<Asked>,
    pub(super) typed: &'static str,
}

const fn key(field: Field<Asked>, typed: &'static str) -> Key {
    Key { field, typed }
}

const fn number(key: &'static str, range: Range, meaning: &'static str, put: fn(&mut Asked, f64)) -> Key {
    Key { field: Field::number_as(key, range, meaning, put), typed: "Quantity" }
}

const fn own(range: Range, put: fn(&mut Asked, f64)) -> Key {
    Key { field: Field::number(range, put), typed: "Quantity" }
}

/// A range of the door's own: what the library takes without one.
pub(super) const fn door(
    field: &'static str,
    unit: &'static str,
    (least, most): (f64, f64),
    meaning: &'static str,
) -> Range {
    Range { field, unit, least, most, meaning }
}

/// Most steps of a sweep.
pub(super) const MOST_STEPS: f64 = 1000.0;

pub(super) static FORMS: &[&str] = &["toml", "json"];
pub(super) static QUANTITIES: &[&str] = &["elevation_deg", "frame_width_mm", "focal_length_mm", "lens"];
pub(super) static PAPERS: &[&str] = &["a4", "letter"];
pub(super) static VIEWS: &[&str] = &["side", "above", "picture"];
pub(super) static UNITS: &[&str] = &["millimetres", "centimetres", "metres", "inches", "feet_inches"];

#[rustfmt::skip]
pub(super) static KEYS: &[Key] = &[
    key(Field::part("shoot", "a shoot file: its text, or its JSON form", parts::shoot), "Shoot | string"),
    key(Field::choice("form", FORMS, "how the text is written", |a: &mut Asked, i| {
        a.form = [Form::Toml, Form::Json].get(i).copied();
    }), "\"toml\" | \"json\""),
    key(Field::text("shot", "the name of a shot of the file", give!(Asked, shot)), "string"),
    key(Field::text("kind", "one kind of table: shoot, camera, lens and so on", give!(Asked, kind)), "string"),
    key(Field::part("edits", "what to put where: a path of keys and places, and a value or null", parts::edits), "Edit[]"),
    key(Field::reference_or_part("camera", "a camera, or the name of one of the file", parts::camera_name, parts::camera), "CameraEntry | string"),
    key(Field::reference_or_part("lens", "a lens, or the name of one of the file", parts::lens_name, parts::lens), "LensEntry | string"),
    key(Field::reference_or_part("subject", "a subject, or the name of one of the file", parts::subject_name, parts::subject), "SubjectEntry | string"),
    key(Field::reference_or_part("bay", "a bay, or the name of one of the file", parts::bay_name, parts::bay), "BayEntry | string"),
    key(Field::choice("hold", HOLDS, "how the camera is held", |a: &mut Asked, i| {
        a.hold = [Hold::Across, Hold::Upright].get(i).copied();
    }), "\"across\" | \"upright\""),
    key(Field::aspect(range::ASPECT_SIDE, "the delivered picture's shape, width to height", give!(Asked, delivered_aspect)), "`${number}:${number}`"),
    number("used_width_mm", range::USED_WIDTH_MM, "width of the part of the sensor that the delivered picture uses", give!(Asked, used_width_mm)),
    number("magnification", range::MAGNIFICATION, "used sensor width / frame width", give!(Asked, magnification)),
    own(range::FRAME_WIDTH_MM, give!(Asked, frame_width_mm)),
    own(range::FILL_WIDTH, give!(Asked, fill_width)),
    own(range::FILL_HEIGHT, give!(Asked, fill_height)),
    own(range::MEASURED_SENSOR_DISTANCE_MM, give!(Asked, sensor_distance_mm)),
    own(range::PUPIL_DISTANCE_MM, give!(Asked, pupil_distance_mm)),
    own(range::PUPIL_RATIO, give!(Asked, pupil_ratio)),
    own(range::F_NUMBER, give!(Asked, f_number)),
    own(range::CIRCLE_OF_CONFUSION_MM, give!(Asked, circle_of_confusion_mm)),
    number("nearest_mm", door("depth.nearest_mm", "mm", (-100_000.0, 100_000.0), ""), "how far the nearest point lies before the aim point, along the axis", give!(Asked, nearest_mm)),
    number("farthest_mm", door("depth.farthest_mm", "mm", (-100_000.0, 100_000.0), ""), "how far the farthest point lies behind the aim point, along the axis", give!(Asked, farthest_mm)),
    number("distance_mm", door("blur.distance_mm", "mm", (0.001, 1_000_000.0), ""), "from the entrance pupil to a point, along the axis", give!(Asked, distance_mm)),
    own(range::STACK_OVERLAP, give!(Asked, stack_overlap)),
    own(range::ELEVATION_DEG, give!(Asked, elevation_deg)),
    own(range::BEARING_DEG, give!(Asked, bearing_deg)),
    own(range::AIM_HEIGHT_MM, give!(Asked, aim_height_mm)),
    own(range::MEASURED_AIM_HEIGHT_MM, give!(Asked, aim_height_above_floor_mm)),
    own(range::CEILING_MM, give!(Asked, ceiling_mm)),
    own(range::CEILING_CLEARANCE_MM, give!(Asked, ceiling_clearance_mm)),
    own(range::PIVOT_BELOW_SOCKET_MM, give!(Asked, pivot_below_socket_mm)),
    number("hand_focal_length_mm", range::FOCAL_LENGTH_MM, "marked focal length of the camera in the hand: its real one, not an equivalent", give!(Asked, hand_focal_length_mm)),
    number("hand_sensor_width_mm", range::USED_WIDTH_MM, "width of the part of its sensor that the picture used", give!(Asked, hand_sensor_width_mm)),
    number("hand_distance_mm", range::MEASURED_SENSOR_DISTANCE_MM, "from the aim point to its sensor, straight", give!(Asked, hand_distance_mm)),
    key(Field::part("measured", "what was measured on the set: one of three sets, each value alone or with its uncertainty", parts::measured), "MeasuredEntry"),
    key(Field::part("roll_deg", "what an inclinometer across the camera says, alone or with its uncertainty", parts::roll), "MeasuredQuantity"),
    key(Field::choice("quantity", QUANTITIES, "what is varied", give!(Asked, quantity)), "\"elevation_deg\" | \"frame_width_mm\" | \"focal_length_mm\" | \"lens\""),
    key(Field::part("from", "the first value, as the quantity is written", |_, _, entry, a: &mut Asked| a.from = Some(entry.clone())), "Quantity"),
    key(Field::part("to", "the last value", |_, _, entry, a: &mut Asked| a.to = Some(entry.clone())), "Quantity"),
    key(Field::part("step", "from one value to the next", |_, _, entry, a: &mut Asked| a.step = Some(entry.clone())), "Quantity"),
    key(Field::whole(door("sweep.steps", "", (1.0, MOST_STEPS - 1.0), "how many steps from the first value to the last"), give!(Asked, steps)), "number"),
    key(Field::part("points", "places in the room", parts::points), "PointEntry[]"),
    key(Field::part("places", "places in the picture, from its centre, in the plane through the aim point", parts::places), "PicturePointEntry[]"),
    number("z_mm", door("plane.z_mm", "mm", (-100_000.0, 100_000.0), ""), "a level plane above the floor", give!(Asked, z_mm)),
    key(Field::choice("view", VIEWS, "from where it is drawn", give!(Asked, view)), "\"side\" | \"above\" | \"picture\""),
    key(Field::part("views", "from where it is drawn", parts::views), "(\"side\" | \"above\" | \"picture\")[]"),
    key(Field::choice("unit", UNITS, "the unit in which lengths are written", give!(Asked, unit)), "\"millimetres\" | \"centimetres\" | \"metres\" | \"inches\" | \"feet_inches\""),
    number("width", door("drawing.width", "", (480.0, 4000.0), ""), "width in quarter millimetres of paper", give!(Asked, width)),
    number("height", door("drawing.height", "", (240.0, 4000.0), ""), "most height, in the same", give!(Asked, height)),
    key(Field::text("id", "what identifiers inside the drawing begin with: another for each drawing on a page", give!(Asked, id)), "string"),
    key(Field::choice("paper", PAPERS, "the paper that it is printed on", give!(Asked, paper)), "\"a4\" | \"letter\""),
    key(Field::part("leave_out", "the names of shots that do not count", parts::leave_out), "string[]"),
    key(Field::part("open", "what is to be chosen", parts::open), "(\"lens\" | \"support\" | \"side\")[]"),
    key(Field::part("sizes", "pieces at hand", parts::sizes), "PieceSizeEntry[]"),
    number("needed_kg", crate::shoot::pieces::PIECES_NEEDED_KG, "what pieces must weigh together at least", give!(Asked, needed_kg)),
];
