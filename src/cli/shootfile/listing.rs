//! Every key of a shoot file, for `tablerig fields`.

use std::prelude::rust_2024::*;

use super::field::{Field, Standing, Take};
use super::gear::{BAY, CAMERA, LENS, TABLE};
use super::shot::{CRITERIA, SHOOT, SHOT};
use super::subject::{SUBJECT, VESSEL};
use super::support::{BOOM, HEAD, SANDBAG, STIFFNESS, SUPPORT};

/// A table of the file and what it may hold.
#[derive(Clone, Debug)]
pub(crate) struct Section {
    /// The kind it belongs to, by which it is asked for.
    pub(crate) kind: &'static str,
    /// Its heading in TOML.
    pub(crate) heading: &'static str,
    pub(crate) rows: Vec<Row>,
}

/// A key.
#[derive(Clone, Debug)]
pub(crate) struct Row {
    pub(crate) key: &'static str,
    pub(crate) allowed: String,
    /// Unit of a bare number, as in the table of ranges.
    pub(crate) unit: Option<&'static str>,
    pub(crate) least: Option<f64>,
    pub(crate) most: Option<f64>,
    pub(crate) standing: Standing,
    pub(crate) meaning: &'static str,
}

fn section<T>(kind: &'static str, heading: &'static str, fields: &[Field<T>]) -> Section {
    let row = |field: &Field<T>| {
        let range = match &field.take {
            Take::Number(range, _) | Take::Whole(range, _) | Take::Aspect(range, _) => Some(range),
            _ => None,
        };
        Row {
            key: field.key,
            allowed: field.allowed(),
            unit: range.map(|range| range.unit),
            least: range.map(|range| range.least),
            most: range.map(|range| range.most),
            standing: field.standing,
            meaning: field.meaning,
        }
    };
    Section { kind, heading, rows: fields.iter().map(row).collect() }
}

/// All tables, in the order in which a file is read best.
pub(crate) fn sections() -> Vec<Section> {
    Vec::from([
        section("shoot", "[shoot]", SHOOT),
        section("camera", "[camera.NAME]", CAMERA),
        section("lens", "[lens.NAME]", LENS),
        section("table", "[table.NAME]", TABLE),
        section("subject", "[subject.NAME]", SUBJECT),
        section("subject", "[subject.NAME.vessel]", VESSEL),
        section("support", "[support.NAME]", SUPPORT),
        section("support", "[support.NAME.head]", HEAD),
        section("support", "[support.NAME.boom]", BOOM),
        section("support", "[support.NAME.boom.stiffness]", STIFFNESS),
        section("support", "[[support.NAME.sandbags]]", SANDBAG),
        section("bay", "[bay.NAME]", BAY),
        section("criteria", "[criteria]", CRITERIA),
        section("shot", "[[shot]]", SHOT),
    ])
}
