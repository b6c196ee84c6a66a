//! Every key of a shoot file, for `tablerig fields`.

use std::prelude::rust_2024::*;

use super::field::{Field, Slot, Standing, Takes, slots};
use super::gear::{BAY, CAMERA, LENS, TABLE};
use super::kit::KIT;
use super::log::LOG;
use super::order::ORDER;
use super::shot::{CRITERIA, SHOOT, SHOT};
use super::stock::{PIECE, WEIGHTS};
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
    #[cfg(feature = "text-door")]
    pub(crate) takes: Takes,
    pub(crate) standing: Standing,
    pub(crate) meaning: &'static str,
}

/// What is told of a key.
pub(crate) fn row(slot: &Slot) -> Row {
    let range = match &slot.takes {
        Takes::Number(range) | Takes::Whole(range) | Takes::Aspect(range) => Some(range),
        _ => None,
    };
    Row {
        key: slot.key,
        allowed: slot.allowed(),
        unit: range.map(|range| range.unit),
        least: range.map(|range| range.least),
        most: range.map(|range| range.most),
        #[cfg(feature = "text-door")]
        takes: slot.takes,
        standing: slot.standing,
        meaning: slot.meaning,
    }
}

fn section<T>(kind: &'static str, heading: &'static str, fields: &[Field<T>]) -> Section {
    Section { kind, heading, rows: slots(fields).iter().map(row).collect() }
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
        section("kit", "[kit]", KIT),
        section("weights", "[weights]", WEIGHTS),
        section("weights", "[[weights.counterweights]], [[weights.base_weights]]", PIECE),
        section("order", "[order]", ORDER),
        section("shot", "[[shot]]", SHOT),
        section("log", "[[log]]", LOG),
    ])
}
