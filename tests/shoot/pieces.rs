//! Whole pieces of weight: against a printed example and every combination counted out.

use tablerig::fault::FaultKind;
use tablerig::shoot::pieces::{PieceSize, whole_pieces};

use crate::briefs::Seeded;

fn size(mass_kg: f64, at_hand: impl Into<Option<u32>>) -> PieceSize {
    PieceSize { mass_kg, at_hand: at_hand.into() }
}

const POUND_KG: f64 = 0.453_592_37;

#[test]
fn five_pieces_of_55_pounds_for_250() {
    // Suspended access equipment: counterweights (safety talk): 4000 ft lb over 16 ft of backspan, 250 lb, in
    // pieces of 55 lb: 5, rounded up.
    let needed = 4000.0 / 16.0 * POUND_KG;
    let taken = whole_pieces(needed, &[size(55.0 * POUND_KG, None)]).unwrap().unwrap();
    assert_eq!(taken.counts, [5]);
    // Pieces are taken to the gram.
    approx::assert_abs_diff_eq!(taken.mass_kg, 275.0 * POUND_KG, epsilon = 5.0 * 0.0005);
}

/// Every combination: the smallest sum that is enough, then the fewest pieces.
fn counted_out(needed_g: u64, masses_g: &[u64], at_hand: &[u32]) -> Option<(u64, u32)> {
    let Some((mass, masses)) = masses_g.split_first() else {
        return if needed_g == 0 { Some((0, 0)) } else { None };
    };
    let enough = needed_g.div_ceil(*mass) as u32;
    (0..=at_hand[0].min(enough))
        .filter_map(|count| {
            let taken = u64::from(count) * mass;
            let (sum, pieces) = counted_out(needed_g.saturating_sub(taken), masses, &at_hand[1..])?;
            Some((sum + taken, pieces + count))
        })
        .min()
}

#[test]
fn as_little_as_counting_every_combination_out_gives() {
    let mut seeded = Seeded::new(21);
    let mut not_enough = 0;
    for _ in 0..400 {
        let count = 1 + seeded.below(4);
        let masses_g: Vec<u64> = (0..count).map(|_| 250 * (1 + seeded.below(40) as u64)).collect();
        let at_hand: Vec<u32> = (0..count).map(|_| seeded.below(6) as u32).collect();
        let needed_g = seeded.below(40_000) as u64;
        let unlimited = seeded.chance(0.3);
        let sizes: Vec<PieceSize> = masses_g
            .iter()
            .zip(&at_hand)
            .map(|(mass, count)| size(*mass as f64 / 1000.0, if unlimited { None } else { Some(*count) }))
            .collect();
        let at_hand = if unlimited { vec![u32::MAX; count] } else { at_hand };
        let expect = counted_out(needed_g, &masses_g, &at_hand);
        let taken = whole_pieces(needed_g as f64 / 1000.0, &sizes).unwrap();
        not_enough += usize::from(taken.is_none());
        let sum = taken.map(|taken| {
            for (count, most) in taken.counts.iter().zip(&at_hand) {
                assert!(count <= most);
            }
            let sum: u64 =
                taken.counts.iter().zip(&masses_g).map(|(count, mass)| u64::from(*count) * mass).sum();
            assert_eq!(taken.mass_kg, sum as f64 / 1000.0);
            (sum, taken.counts.iter().sum::<u32>())
        });
        assert_eq!(sum, expect, "{needed_g} of {sizes:?}");
    }
    assert!(not_enough > 20);
}

#[test]
fn a_rounding_error_takes_no_further_piece() {
    // 0.1 + 0.2 is a little over 0.3.
    let taken = whole_pieces(0.1 + 0.2, &[size(0.1, None)]).unwrap().unwrap();
    assert_eq!(taken.counts, [3]);
    assert_eq!(whole_pieces(0.0, &[size(5.0, None)]).unwrap().unwrap().counts, [0]);
    assert_eq!(whole_pieces(0.0, &[]).unwrap().unwrap().mass_kg, 0.0);
    assert_eq!(whole_pieces(1.0, &[]).unwrap(), None);
}

#[test]
fn equal_sums_take_the_fewest_pieces() {
    let taken = whole_pieces(10.0, &[size(2.5, None), size(5.0, None), size(10.0, 0)]).unwrap().unwrap();
    assert_eq!(taken.counts, [0, 2, 0]);
}

#[test]
fn wrong_pieces_are_refused() {
    let fault = whole_pieces(1.0, &[size(0.0, None)]).unwrap_err();
    assert_eq!((fault.kind, fault.field), (FaultKind::TooSmall, "weights.mass_kg"));
    let fault = whole_pieces(f64::INFINITY, &[size(1.0, None)]).unwrap_err();
    assert_eq!((fault.kind, fault.field), (FaultKind::NotFinite, "weights.needed_kg"));
}
