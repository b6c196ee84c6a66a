//! What to book and what to pull, over a list.

use tablerig::brief::{Brief, Framing};
use tablerig::caution::CautionCode;
use tablerig::plan::{Plan, plan};
use tablerig::rig::support::Sandbag;
use tablerig::scene::bay::Bay;
use tablerig::shoot::booking::{Listed, booking};
use tablerig::shoot::pieces::PieceSize;
use tablerig::shoot::pull::{BagCount, pull_list};
use tablerig::shoot::weights::Stock;

use crate::briefs::{Seeded, brief};
use crate::workshop;

fn planned(briefs: Vec<Brief>) -> Vec<(Brief, Plan)> {
    briefs.into_iter().map(|brief| (brief, plan(&brief).unwrap())).collect()
}

fn listed(planned: &[(Brief, Plan)]) -> Vec<Listed<'_>> {
    let list = |(brief, plan)| Listed {
        camera: "body",
        lens: "long",
        support: "stand",
        table: "oak",
        surface: None,
        backdrop: None,
        brief,
        plan,
    };
    planned.iter().map(|(brief, plan)| list((brief, plan))).collect()
}

#[test]
fn every_shot_fits_the_room_booked_and_none_smaller() {
    let mut seeded = Seeded::new(41);
    for _ in 0..40 {
        let shots = planned((0..5).map(|_| brief(&mut seeded)).collect());
        let room = booking(&listed(&shots)).unwrap();
        let [front, right, back, left] = room.table_from_walls;
        assert_eq!(room.floor_across_mm, left.mm + right.mm);
        assert_eq!(room.floor_along_mm, front.mm + back.mm);
        let raised = |brief: &Brief, bay: Bay| {
            let cautions = plan(&Brief { bay, ..*brief }).unwrap().cautions;
            [
                CautionCode::CeilingTooLow,
                CautionCode::FeetOutsideBay,
                CautionCode::TailOutsideBay,
                CautionCode::CameraOutsideBay,
                CautionCode::NoRoomBehindCamera,
            ]
            .into_iter()
            .any(|code| cautions.find(code).is_some())
        };
        // A thousandth of a millimetre: far above the rounding of the walls' sums.
        let bay = |brief: &Brief, more: [f64; 5]| Bay {
            front_mm: Some(front.mm + more[0]),
            right_mm: Some(right.mm + more[1]),
            back_mm: Some(back.mm + more[2]),
            left_mm: Some(left.mm + more[3]),
            ceiling_mm: Some(room.ceiling.mm + more[4]),
            ..brief.bay
        };
        for (brief, _) in &shots {
            assert!(!raised(brief, bay(brief, [1e-3; 5])));
        }
        let deciding = [front, right, back, left, room.ceiling];
        for (limit, decided) in deciding.iter().enumerate() {
            let (brief, _) = &shots[decided.by_shot];
            let half = 0.5 * if limit % 2 == 0 { brief.table.depth_mm } else { brief.table.width_mm };
            if limit < 4 && decided.mm == half {
                // The table itself decides.
                continue;
            }
            let mut less = [1e-3; 5];
            less[limit] = -1e-3;
            assert!(raised(brief, bay(brief, less)), "limit {limit} of {room:?}");
        }
        let pivots = shots.iter().map(|(_, plan)| plan.pose.pivot.z_mm);
        assert_eq!(room.highest_pivot.mm, pivots.clone().fold(f64::MIN, f64::max));
        assert_eq!(room.lowest_pivot.mm, pivots.fold(f64::MAX, f64::min));
        if let Some(longest) = room.longest_reach {
            assert_eq!(longest.mm, shots[longest.by_shot].1.placement.reach_mm);
            assert!(room.shortest_reach.unwrap().mm <= longest.mm);
        }
    }
    assert_eq!(booking(&[]), None);
}

#[test]
fn things_are_pulled_once_with_their_shots() {
    let mut low = workshop::slanting();
    low.shot.elevation_deg = 5.0;
    low.shot.backdrop_behind_mm = Some(500.0);
    let mut bagged = workshop::overhead();
    let bag = Sandbag { mass_kg: 7.0, out_mm: 100.0, direction_deg: 180.0, height_mm: 300.0 };
    bagged.support.sandbags = [bag, bag, Sandbag { mass_kg: 11.0, ..bag }, Sandbag::NONE];
    let wide = Brief {
        shot: tablerig::brief::Shot { framing: Framing::FrameWidthMm(800.0), ..bagged.shot },
        ..bagged
    };
    let shots = planned(vec![bagged, workshop::slanting(), low, wide]);
    let mut list = listed(&shots);
    for shot in [1, 2] {
        list[shot].support = "tripod";
        list[shot].lens = "wide";
    }
    (list[0].surface, list[3].surface) = (Some("slate"), Some("slate"));
    let stock = Stock { counterweights: &[], base_weights: &[] };
    let pull = pull_list(&list, &stock).unwrap();
    let told: Vec<_> = pull.lenses.iter().map(|item| (item.name, item.shots.clone())).collect();
    assert_eq!(told, [("long", vec![0, 3]), ("wide", vec![1, 2])]);
    assert_eq!(pull.cameras[0].shots, [0, 1, 2, 3]);
    let stand = &pull.supports[0];
    assert_eq!(stand.shots, [0, 3]);
    assert_eq!(stand.sandbags, [BagCount { mass_kg: 7.0, count: 2 }, BagCount { mass_kg: 11.0, count: 1 }]);
    let clamp = |shot: usize| shots[shot].1.placement.clamp_height_mm;
    assert_eq!((stand.lowest_mm, stand.highest_mm), (clamp(0), clamp(3)));
    assert_eq!(pull.supports[1].longest_reach_mm, None);
    // Straight overhead the board is the frame itself: the larger one is 800 x 533.3 mm.
    let slate = &pull.surfaces[0];
    assert_eq!((slate.name, slate.shots.clone()), (Some("slate"), vec![0, 3]));
    approx::assert_abs_diff_eq!(slate.width_mm, 800.0, epsilon = 1e-9);
    approx::assert_abs_diff_eq!(slate.depth_or_height_mm, 800.0 * 24.0 / 36.0, epsilon = 1e-9);
    // From 5 degrees the horizon is in the frame: no board fills it, a backdrop does.
    let unnamed = &pull.surfaces[1];
    assert_eq!((unnamed.shots.clone(), unnamed.never_filled.clone()), (vec![1, 2], vec![2]));
    let backdrop = &pull.backdrops[0];
    assert_eq!(backdrop.shots, [2]);
    let planned = shots[2].1.backdrop.unwrap();
    assert_eq!((backdrop.width_mm, backdrop.depth_or_height_mm), (planned.width_mm, planned.height_mm));
}

#[test]
fn pieces_are_pulled_for_the_shot_that_takes_most() {
    let mut seeded = Seeded::new(43);
    let shots = planned((0..6).map(|_| brief(&mut seeded)).collect());
    let list = listed(&shots);
    let sizes = [7.0, 11.0].map(|mass_kg| PieceSize { mass_kg, at_hand: Some(2) });
    let pull = pull_list(&list, &Stock { counterweights: &sizes, base_weights: &sizes }).unwrap();
    for (place, pulled) in pull.base_weights.iter().enumerate() {
        let taken = pull.shot_weights.iter().filter_map(|shot| shot.base_weight.as_ref()?.pieces.as_ref());
        assert_eq!(Some(pulled.count), taken.map(|pieces| pieces.counts[place]).max());
        assert!(pulled.count <= 2);
    }
    for (shot, weights) in pull.shot_weights.iter().enumerate() {
        let short = |weight: &Option<tablerig::shoot::weights::WholeWeight>| {
            weight.as_ref().is_some_and(|weight| weight.pieces.is_none())
        };
        let lacking = short(&weights.counterweight) || short(&weights.base_weight);
        assert_eq!(pull.weights_lacking.contains(&shot), lacking);
    }
}
