//! The keys of a request that hold more than one value.

use std::format;
use std::prelude::rust_2024::*;

use super::asked::{Asked, VIEWS, door};
use crate::range;
use crate::shoot::pieces::PieceSize;
use crate::shootfile::edit::Edit;
use crate::shootfile::field::{Field, Name, listed, set};
use crate::shootfile::log::{MeasuredDraft, SETS, measurement};
use crate::shootfile::problem::{Problem, ProblemKind};
use crate::shootfile::reading::Reading;
use crate::shootfile::shelf;
use crate::shootfile::stock::PIECE;
use crate::shootfile::tree::{Entry, Node, Step, Value};
use crate::vector::Point;
use crate::view::projection::PicturePoint;

/// Something written out, or called by its name in the shoot file.
#[derive(Clone, Debug)]
pub(super) enum Given<T> {
    Named(Name),
    Own(T),
}

macro_rules! gear {
    ($($name:ident, $named:ident;)*) => {
        $(
            pub(super) fn $name(reading: &mut Reading, _: &str, entry: &Entry, asked: &mut Asked) {
                let read = shelf::$name(reading, concat!("the ", stringify!($name)), &entry.key_span, &entry.node);
                asked.$name = read.map(Given::Own);
            }

            pub(super) fn $named(asked: &mut Asked, name: Name) {
                asked.$name = Some(Given::Named(name));
            }
        )*
    };
}

gear! {
    camera, camera_name;
    lens, lens_name;
    subject, subject_name;
    bay, bay_name;
}

fn wrong(reading: &mut Reading, entry: &Entry, wanted: &str) {
    let label = format!("expected {wanted}, found {}", entry.node.value.kind());
    let title = format!("`{}` is {wanted}", entry.key);
    reading.report(Problem::new(ProblemKind::WrongKind, title, entry.node.span.clone(), label));
}

/// Kept as it is: what it says is read when it is needed.
pub(super) fn shoot(reading: &mut Reading, _: &str, entry: &Entry, asked: &mut Asked) {
    match &entry.node.value {
        Value::Text(_) | Value::Table(_) => asked.shoot = Some(entry.node.clone()),
        _ => wrong(reading, entry, "a text or an object"),
    }
}

fn list<'a>(reading: &mut Reading, entry: &'a Entry, of: &str) -> &'a [Node] {
    match &entry.node.value {
        Value::List(list) => list,
        _ => {
            wrong(reading, entry, &format!("a list of {of}"));
            &[]
        }
    }
}

fn names(reading: &mut Reading, entry: &Entry) -> Vec<Name> {
    let mut names = Vec::new();
    for node in list(reading, entry, "names") {
        match &node.value {
            Value::Text(text) => names.push(Name { text: text.clone(), span: node.span.clone() }),
            _ => wrong(reading, entry, "a list of names"),
        }
    }
    names
}

pub(super) fn leave_out(reading: &mut Reading, _: &str, entry: &Entry, asked: &mut Asked) {
    asked.leave_out = names(reading, entry);
}

/// The places of a list's words among those that may stand there.
fn words(reading: &mut Reading, entry: &Entry, known: &[&str]) -> Vec<usize> {
    let mut places = Vec::new();
    for name in names(reading, entry) {
        match known.iter().position(|word| *word == name.text) {
            Some(place) => places.push(place),
            None => {
                let title = format!("`{}` cannot have \"{}\"", entry.key, name.text);
                let label = format!("expected {}", listed(known, "or"));
                reading.report(Problem::new(ProblemKind::UnknownWord, title, name.span, label));
            }
        }
    }
    places
}

/// What may be left open.
const OPEN: &[&str] = &["lens", "support", "side"];

pub(super) fn open(reading: &mut Reading, _: &str, entry: &Entry, asked: &mut Asked) {
    let places = words(reading, entry, OPEN);
    asked.open = places.into_iter().filter_map(|place| OPEN.get(place).copied()).collect();
}

pub(super) fn views(reading: &mut Reading, _: &str, entry: &Entry, asked: &mut Asked) {
    asked.views = words(reading, entry, VIEWS);
}

pub(super) fn edits(reading: &mut Reading, _: &str, entry: &Entry, asked: &mut Asked) {
    for node in list(reading, entry, "edits") {
        let path = node.get("path").and_then(|path| steps(&path.node));
        let value = node.get("value").map(|value| &value.node);
        match (path, value) {
            (Some(path), Some(value)) => {
                let taken = matches!(value.value, Value::Other(_));
                asked.edits.push(Edit { path, value: (!taken).then(|| value.clone()) });
            }
            _ => wrong(reading, entry, "a list of a path and a value each"),
        }
    }
}

fn steps(node: &Node) -> Option<Vec<Step>> {
    let Value::List(list) = &node.value else { return None };
    let step = |node: &Node| match &node.value {
        Value::Text(key) => Some(Step::Key(key.clone())),
        Value::Number(number) if *number >= 0.0 && crate::number::floor(*number) == *number => {
            Some(Step::Index(*number as usize))
        }
        _ => None,
    };
    list.iter().map(step).collect()
}

const LENGTH: &str = "a length with its uncertainty, such as \"213.5 cm ± 5 mm\"";
const ANGLE: &str = "an angle with its uncertainty, such as \"59.6° ± 0.3°\"";

macro_rules! measured {
    ($key:ident, $range:ident, $allowed:ident) => {
        Field::own(
            stringify!($key),
            $allowed,
            range::$range.meaning,
            |reading, _, entry, draft: &mut MeasuredDraft| {
                draft.$key = measurement(reading, entry, &range::$range);
            },
        )
    };
}

/// What was measured, as in an entry of a shoot file's log.
pub(super) static MEASURED: &[Field<MeasuredDraft>] = &[
    measured!(sensor_height_mm, MEASURED_HEIGHT_MM, LENGTH).among(SETS),
    measured!(aim_height_above_floor_mm, MEASURED_AIM_HEIGHT_MM, LENGTH).otherwise("as planned, with a shot"),
    measured!(horizontal_distance_mm, MEASURED_DISTANCE_MM, LENGTH).among(SETS),
    measured!(sensor_distance_mm, MEASURED_SENSOR_DISTANCE_MM, LENGTH).among(SETS),
    measured!(elevation_deg, MEASURED_ELEVATION_DEG, ANGLE).among(SETS),
];

pub(super) fn measured(reading: &mut Reading, _: &str, entry: &Entry, asked: &mut Asked) {
    let mut draft = MeasuredDraft::default();
    if reading.table("what was measured", &entry.key_span, &entry.node, MEASURED, &mut draft) {
        asked.measured = Some(draft);
    }
}

pub(super) fn roll(reading: &mut Reading, _: &str, entry: &Entry, asked: &mut Asked) {
    asked.roll_deg = measurement(reading, entry, &range::MEASURED_ROLL_DEG);
}

/// Reads every table of a list by the same rows.
fn tables<T: Clone>(
    reading: &mut Reading,
    whose: &str,
    entry: &Entry,
    fields: &[Field<T>],
    blank: &T,
) -> Vec<T> {
    let mut all = Vec::new();
    for (index, node) in list(reading, entry, "objects").iter().enumerate() {
        let mut one = blank.clone();
        if reading.table(&format!("{whose} {}", index + 1), &node.span, node, fields, &mut one) {
            all.push(one);
        }
    }
    all
}

const ROOM: (f64, f64) = (-1_000_000.0, 1_000_000.0);

static POINT: &[Field<Point>] = &[
    Field::number(door("point.x_mm", "mm", ROOM, "to the right of the table's centre"), set!(Point, x_mm)),
    Field::number(door("point.y_mm", "mm", ROOM, "behind the table's centre"), set!(Point, y_mm)),
    Field::number(door("point.z_mm", "mm", ROOM, "above the floor"), set!(Point, z_mm)),
];

pub(super) fn points(reading: &mut Reading, _: &str, entry: &Entry, asked: &mut Asked) {
    asked.points = tables(reading, "point", entry, POINT, &Point { x_mm: 0.0, y_mm: 0.0, z_mm: 0.0 });
}

static PLACE: &[Field<PicturePoint>] = &[
    Field::number(
        door("place.right_mm", "mm", ROOM, "right of the frame's centre"),
        set!(PicturePoint, right_mm),
    ),
    Field::number(door("place.up_mm", "mm", ROOM, "above the frame's centre"), set!(PicturePoint, up_mm)),
];

pub(super) fn places(reading: &mut Reading, _: &str, entry: &Entry, asked: &mut Asked) {
    asked.places = tables(reading, "place", entry, PLACE, &PicturePoint { right_mm: 0.0, up_mm: 0.0 });
}

pub(super) fn sizes(reading: &mut Reading, _: &str, entry: &Entry, asked: &mut Asked) {
    asked.sizes = tables(reading, "size", entry, PIECE, &PieceSize { mass_kg: 0.0, at_hand: None });
}
