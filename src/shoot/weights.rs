//! Counterweight and base weight of one shot in whole pieces of what is at hand, planned again with them.

use super::change::ChangeKind;
use super::pieces::{PieceSize, Pieces, whole_pieces};
use super::smallest::smallest_change;
use crate::brief::Brief;
use crate::caution::Level;
use crate::fault::Fault;
use crate::plan::plan;
use crate::range;

/// The sizes of weights at hand. A list left empty is not open: the brief's own weight stays.
#[derive(Clone, Copy, Debug)]
pub struct Stock<'a> {
    /// For the boom's tail.
    pub counterweights: &'a [PieceSize],
    /// For the base: plates or bags laid on it, where the support's base weight lies.
    pub base_weights: &'a [PieceSize],
}

/// One weight in whole pieces.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct WholeWeight {
    /// What is needed at least.
    pub needed_kg: f64,
    /// The pieces; `None` where all that is at hand is not enough.
    pub pieces: Option<Pieces>,
}

/// The weights that one shot needs.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct ShotWeights {
    /// The counterweight that balances the boom, rounded up to whole pieces; `None` without a boom, with
    /// nowhere on it to hang one, or with no pieces to choose from.
    pub counterweight: Option<WholeWeight>,
    /// The weight on the base in all (what the brief has on it included) with which, after the
    /// counterweight, the stand keeps the wanted factor and is not stopped, rounded up to whole pieces;
    /// `None` with no pieces to choose from.
    pub base_weight: Option<WholeWeight>,
    /// The brief with these weights on it; where pieces are lacking, with what it had.
    pub brief: Brief,
    /// The weightiest caution of its plan.
    pub worst: Option<Level>,
}

/// The weights of a shot in whole pieces.
///
/// The counterweight first, since the base must hold the stand also with the camera off and the
/// counterweight on; then the base. Both are rounded up: a little too much on the tail pulls the boom's tail
/// down, not the camera.
///
/// Refused: a brief that is wrong, and pieces that are ([`whole_pieces`]).
pub fn shot_weights(brief: &Brief, stock: &Stock<'_>) -> Result<ShotWeights, Fault> {
    let mut with = *brief;
    let planned = plan(&with)?;
    let mut counterweight = None;
    if let (Some(needed_kg), Some(boom), false) = (
        planned.ballast.counterweight_to_balance_kg,
        with.support.boom.as_mut(),
        stock.counterweights.is_empty(),
    ) {
        let pieces = enough(needed_kg, stock.counterweights, range::COUNTERWEIGHT_KG.most)?;
        if let Some(pieces) = &pieces {
            boom.counterweight_kg = pieces.mass_kg;
        }
        counterweight = Some(WholeWeight { needed_kg, pieces });
    }
    let mut base_weight = None;
    if !stock.base_weights.is_empty() {
        let mut needed_kg = with.support.base_mass_kg + plan(&with)?.ballast.base_to_add_kg;
        if let Some(change) = smallest_change(&with, ChangeKind::HeavierBase)? {
            needed_kg = needed_kg.max(change.to);
        }
        let pieces = enough(needed_kg, stock.base_weights, range::BASE_MASS_KG.most)?;
        if let Some(pieces) = &pieces {
            with.support.base_mass_kg = pieces.mass_kg;
        }
        base_weight = Some(WholeWeight { needed_kg, pieces });
    }
    let worst = plan(&with)?.cautions.worst();
    Ok(ShotWeights { counterweight, base_weight, brief: with, worst })
}

/// Whole pieces, unless more is needed, or taken, than a brief may have.
fn enough(needed_kg: f64, sizes: &[PieceSize], most_kg: f64) -> Result<Option<Pieces>, Fault> {
    // The sizes are checked in any case.
    let pieces = whole_pieces(needed_kg.min(range::PIECES_NEEDED_KG.most), sizes)?;
    Ok(pieces.filter(|pieces| needed_kg <= most_kg && pieces.mass_kg <= most_kg))
}
