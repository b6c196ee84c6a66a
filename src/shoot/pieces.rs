//! Weights in whole pieces of the sizes at hand: the smallest sum that is enough.

use alloc::collections::VecDeque;
use alloc::vec;
use alloc::vec::Vec;

use crate::fault::Fault;
use crate::number::{ceil, floor};
pub use crate::range::{PIECE_MASS_KG, PIECES_NEEDED_KG};

/// Pieces of one size that are at hand.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct PieceSize {
    /// What one weighs; taken to the gram.
    pub mass_kg: f64,
    /// How many there are; as many as it takes, where `None`.
    pub at_hand: Option<u32>,
}

/// Pieces taken.
#[derive(Clone, Debug, Default, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Pieces {
    /// How many of each size, in the order of the sizes.
    pub counts: Vec<u32>,
    /// What they weigh together.
    pub mass_kg: f64,
}

/// The pieces that together weigh at least `needed_kg`, and as little over it as the sizes allow; of equal
/// sums the one of the fewest pieces, then the one with more of the sizes listed first. `None` where all
/// that is at hand weighs less.
///
/// Exact: every sum that the sizes can make is looked at, in whole grams. What is needed is rounded up to
/// the gram but for a millionth of one.
///
/// Refused: a size out of its range ([`PIECE_MASS_KG`]), a need that is not finite, negative or over
/// [`PIECES_NEEDED_KG`].
pub fn whole_pieces(needed_kg: f64, sizes: &[PieceSize]) -> Result<Option<Pieces>, Fault> {
    PIECES_NEEDED_KG.check(needed_kg)?;
    let mut masses_g = Vec::with_capacity(sizes.len());
    for size in sizes {
        masses_g.push(floor(1000.0 * PIECE_MASS_KG.check(size.mass_kg)? + 0.5) as usize);
    }
    let needed_g = ceil(1000.0 * needed_kg - 1e-6).max(0.0) as usize;
    // Sums are multiples of the largest common measure of the sizes.
    let unit_g = masses_g.iter().copied().fold(0, common_measure).max(1);
    let needed = needed_g.div_ceil(unit_g);
    let heaviest = masses_g.iter().copied().max().unwrap_or(0) / unit_g;
    // A sum of the heaviest over what is needed has a piece too many.
    let sums = needed + heaviest + 1;
    // Fewest pieces of the sizes so far for each sum, one row a size, above them the row of no size.
    let mut rows: Vec<Vec<u32>> = Vec::with_capacity(sizes.len() + 1);
    let mut row = vec![NEVER; sums];
    if let Some(nothing) = row.first_mut() {
        *nothing = 0;
    }
    rows.push(row.clone());
    for (size, mass_g) in sizes.iter().zip(&masses_g) {
        row = with_more(&row, mass_g / unit_g, size.at_hand);
        rows.push(row.clone());
    }
    let Some(sum) = (needed..sums).find(|sum| at(&row, *sum) != NEVER) else { return Ok(None) };
    Ok(Some(taken(sum, unit_g, &masses_g, &rows)))
}

/// A sum that no pieces make.
const NEVER: u32 = u32::MAX;

fn at(row: &[u32], sum: usize) -> u32 {
    row.get(sum).copied().unwrap_or(NEVER)
}

fn common_measure(a: usize, b: usize) -> usize {
    if b == 0 { a } else { common_measure(b, a % b) }
}

/// Fewest pieces for each sum, with up to so many more of one size on the sums of the sizes before it.
///
/// Sums a whole number of pieces apart belong together; along them, what is fewest within reach is kept in a
/// queue, its first the fewest, so that each sum is looked at once.
fn with_more(above: &[u32], mass: usize, at_hand: Option<u32>) -> Vec<u32> {
    let reach = at_hand.map_or(usize::MAX, |count| count as usize);
    let mut row = above.to_vec();
    for least in 0..mass.min(above.len()) {
        // Places along these sums, and the fewest pieces there less the place.
        let mut within: VecDeque<(usize, i64)> = VecDeque::new();
        for (place, known) in row.iter_mut().skip(least).step_by(mass).enumerate() {
            if *known != NEVER {
                let less = i64::from(*known) - place as i64;
                while within.back().is_some_and(|(_, last)| *last >= less) {
                    within.pop_back();
                }
                within.push_back((place, less));
            }
            while within.front().is_some_and(|(first, _)| place - first > reach) {
                within.pop_front();
            }
            if let Some((_, less)) = within.front() {
                *known = (less + place as i64) as u32;
            }
        }
    }
    row
}

/// The pieces that make a sum, from the last size back to the first.
fn taken(mut sum: usize, unit_g: usize, masses_g: &[usize], rows: &[Vec<u32>]) -> Pieces {
    let mass_kg = (sum * unit_g) as f64 / 1000.0;
    let mut counts = Vec::with_capacity(masses_g.len());
    for (place, mass_g) in masses_g.iter().enumerate().rev() {
        let mass = mass_g / unit_g;
        let (Some(row), Some(above)) = (rows.get(place + 1), rows.get(place)) else { continue };
        let fewest = at(row, sum);
        let mut count = 0;
        while at(above, sum).saturating_add(count) != fewest && sum >= mass {
            sum -= mass;
            count += 1;
        }
        counts.push(count);
    }
    counts.reverse();
    Pieces { counts, mass_kg }
}
