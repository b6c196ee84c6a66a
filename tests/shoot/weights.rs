//! Counterweight and base weight in whole pieces, planned again.

use tablerig::caution::Level;
use tablerig::plan::plan;
use tablerig::shoot::pieces::PieceSize;
use tablerig::shoot::weights::{Stock, shot_weights};

use crate::briefs::{Seeded, brief};
use crate::workshop;

const PLATES: [PieceSize; 2] =
    [PieceSize { mass_kg: 1.0, at_hand: None }, PieceSize { mass_kg: 2.5, at_hand: None }];
const BAGS: [PieceSize; 2] =
    [PieceSize { mass_kg: 7.0, at_hand: None }, PieceSize { mass_kg: 11.0, at_hand: None }];

#[test]
fn with_the_pieces_the_wanted_factor_is_kept() {
    let mut seeded = Seeded::new(31);
    let stock = Stock { counterweights: &PLATES, base_weights: &BAGS };
    let mut weighted = 0;
    for _ in 0..150 {
        let mut brief = brief(&mut seeded);
        // Nothing but standing stops it.
        brief.bay.ceiling_mm = None;
        let found = shot_weights(&brief, &stock).unwrap();
        let with = plan(&found.brief).unwrap();
        assert_eq!(with.cautions.worst(), found.worst);
        let Some(base) = &found.base_weight else { panic!() };
        let Some(pieces) = &base.pieces else { continue };
        weighted += usize::from(pieces.mass_kg > 0.0);
        assert!(pieces.mass_kg >= base.needed_kg - 1e-9);
        assert_eq!(found.brief.support.base_mass_kg, pieces.mass_kg);
        // To the rounding of the pieces' grams; more weight on the column only helps.
        assert!(with.stability.as_shot.factor >= 2.0 - 1e-9);
        assert!(with.stability.camera_off.factor >= 2.0 - 1e-9);
        // The smallest piece less would not have done.
        if pieces.mass_kg > brief.support.base_mass_kg {
            assert!(pieces.mass_kg - 7.0 < base.needed_kg);
        }
        if let Some(counterweight) = &found.counterweight {
            let on = found.brief.support.boom.unwrap().counterweight_kg;
            assert!(on >= counterweight.needed_kg - 1e-9);
            // Plates of 1 kg make every whole kilogram.
            assert!(on < counterweight.needed_kg + 1.0 + 1e-9);
        }
    }
    assert!(weighted > 50, "{weighted}");
}

#[test]
fn without_a_stock_the_brief_keeps_its_own() {
    let stock = Stock { counterweights: &[], base_weights: &[] };
    let found = shot_weights(&workshop::overhead(), &stock).unwrap();
    assert_eq!((found.counterweight, found.base_weight), (None, None));
    assert_eq!(found.brief, workshop::overhead());
}

#[test]
fn too_little_at_hand_is_said() {
    let few = [PieceSize { mass_kg: 0.5, at_hand: Some(1) }];
    let mut brief = workshop::overhead();
    brief.shot.aim_y_mm = 100.0;
    brief.support.base_mass_kg = 0.0;
    let found = shot_weights(&brief, &Stock { counterweights: &few, base_weights: &few }).unwrap();
    let counterweight = found.counterweight.unwrap();
    assert!(counterweight.needed_kg > 0.5);
    assert_eq!(counterweight.pieces, None);
    assert_eq!(found.brief.support.boom, brief.support.boom);
    assert!(found.worst >= Some(Level::Note));
}

#[test]
fn a_rounding_error_is_no_lack() {
    // 0.1 + 0.2 is a little over the 0.3 that three pieces weigh.
    let mut brief = workshop::slanting();
    brief.support.base_mass_kg = 0.1 + 0.2;
    let sizes = [PieceSize { mass_kg: 0.1, at_hand: Some(3) }];
    let found = shot_weights(&brief, &Stock { counterweights: &[], base_weights: &sizes }).unwrap();
    assert_eq!(found.base_weight.unwrap().pieces.unwrap().counts, [3]);
    assert_eq!(found.brief.support.base_mass_kg, 0.3);
}

#[test]
fn more_than_a_stand_may_carry_is_not_promised() {
    let mut brief = workshop::slanting();
    brief.support.base_mass_kg = 999.0;
    let sizes = [PieceSize { mass_kg: 150.0, at_hand: None }];
    let found = shot_weights(&brief, &Stock { counterweights: &[], base_weights: &sizes }).unwrap();
    assert_eq!(found.base_weight.unwrap().pieces, None);
    assert_eq!(found.brief, brief);
}
