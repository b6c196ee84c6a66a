//! The rows of `[weights]`: the pieces that are at hand.

use std::format;
use std::prelude::rust_2024::*;

use super::field::{Field, give, set};
use super::problem::{Problem, ProblemKind};
use super::reading::Reading;
use super::tree::{Entry, Value};
use crate::range;
use crate::shoot::pieces::PieceSize;
use crate::shoot::weights::Stock;

/// The weights at hand. An empty list is not open: the support's own weight stays.
#[derive(Clone, Debug, Default, serde::Serialize)]
pub struct Weights {
    /// For the boom's tail.
    pub counterweights: Vec<PieceSize>,
    /// For the base.
    pub base_weights: Vec<PieceSize>,
}

impl Weights {
    /// To take from.
    pub fn stock(&self) -> Stock<'_> {
        Stock { counterweights: &self.counterweights, base_weights: &self.base_weights }
    }

    /// Whether nothing is said of what is at hand.
    pub fn is_empty(&self) -> bool {
        self.counterweights.is_empty() && self.base_weights.is_empty()
    }
}

const PIECES: &str = "a list of { mass_kg, at_hand }";

pub(crate) static WEIGHTS: &[Field<Weights>] = &[
    Field::own(
        "counterweights",
        PIECES,
        "pieces for booms' tails: each shot takes what balances its boom, in place of its support's counterweight_kg",
        |reading, _, entry, weights: &mut Weights| weights.counterweights = pieces(reading, entry),
    )
    .otherwise("the support's own"),
    Field::own(
        "base_weights",
        PIECES,
        "bags or plates for bases: each shot takes what keeps wanted_factor, in place of its support's base_mass_kg",
        |reading, _, entry, weights: &mut Weights| weights.base_weights = pieces(reading, entry),
    )
    .otherwise("the support's own"),
];

pub(crate) static PIECE: &[Field<PieceSize>] = &[
    Field::number(range::PIECE_MASS_KG, set!(PieceSize, mass_kg)),
    Field::whole(range::PIECES_AT_HAND, give!(PieceSize, at_hand)).otherwise("as many as it takes"),
];

fn pieces(reading: &mut Reading, entry: &Entry) -> Vec<PieceSize> {
    let Value::List(list) = &entry.node.value else {
        let label = format!("this is {}", entry.node.value.kind());
        let title = format!("`{}` is a list of pieces", entry.key);
        let problem = Problem::new(ProblemKind::WrongKind, title, entry.node.span.clone(), label);
        reading.report(
            problem.help(format_args!("such as {} = [{{ mass_kg = 1.25, at_hand = 4 }}]", entry.key)),
        );
        return Vec::new();
    };
    let mut pieces = Vec::new();
    for (index, node) in list.iter().enumerate() {
        let mut piece = PieceSize { mass_kg: 0.0, at_hand: None };
        let whose = format!("piece {} of `{}`", index + 1, entry.key);
        if reading.table(&whose, &node.span, node, PIECE, &mut piece) {
            pieces.push(piece);
        }
    }
    pieces
}
