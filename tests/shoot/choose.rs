//! Choosing from a kit: every combination, ranked by the rule, the same whatever the list's length.

use core::cmp::Ordering;

use tablerig::brief::{Brief, Framing};
use tablerig::caution::{Caution, CautionCode, Level};
use tablerig::fault::FaultKind;
use tablerig::optics::lens::Lens;
use tablerig::plan::plan;
use tablerig::rig::support::Support;
use tablerig::scene::table::Side;
use tablerig::shoot::choose::choose;
use tablerig::shoot::kit::{Candidate, Kit, Outcome};
use tablerig::shoot::merits::{Criterion, Merits, WIDE_STRETCH};
use tablerig::shoot::stops::{Stops, overshoot};

use crate::briefs::{Seeded, brief, lens};
use crate::workshop;

fn kit_of(seeded: &mut Seeded) -> (Vec<Lens>, Vec<Support>) {
    let lenses = (0..4).map(|_| lens(seeded)).collect();
    let supports = (0..3).map(|_| brief(seeded).support).collect();
    (lenses, supports)
}

fn chosen(brief: &Brief, kit: &Kit<'_>, places: usize) -> (Vec<Candidate>, usize, usize) {
    let mut places = vec![Candidate::VACANT; places];
    let choice = choose(brief, kit, &mut places).unwrap();
    let (planned, possible) = (choice.planned, choice.possible);
    (choice.candidates.to_vec(), planned, possible)
}

#[test]
fn every_combination_is_planned_and_told_as_its_plan_says() {
    let mut seeded = Seeded::new(3);
    let (mut done, mut stopped) = (0, 0);
    for _ in 0..25 {
        let brief = brief(&mut seeded);
        let (lenses, supports) = kit_of(&mut seeded);
        let kit = Kit { lenses: &lenses, supports: &supports, sides: &Side::ALL };
        let (all, planned, possible) = chosen(&brief, &kit, kit.most_combinations());
        assert_eq!(all.len(), planned);
        let sided = all.iter().filter(|candidate| candidate.combination.side.is_some()).count();
        assert_eq!(sided, 4 * 3 * 4);
        for candidate in &all {
            let with = kit.brief_with(&brief, &candidate.combination);
            let plan = plan(&with).unwrap();
            match candidate.outcome {
                Outcome::Possible { merits, .. } => {
                    done += 1;
                    assert_ne!(plan.cautions.worst(), Some(Level::Stop));
                    assert_eq!(merits, Merits::of(&with, &plan));
                }
                Outcome::Stopped(Stops { count, worst, .. }) => {
                    stopped += 1;
                    let stopping = plan.cautions.iter().filter(|caution| caution.level == Level::Stop);
                    assert_eq!(count as usize, stopping.count());
                    assert_eq!(plan.cautions.find(worst.code), Some(&worst));
                    let further = |caution: &Caution| overshoot(caution) > overshoot(&worst);
                    assert!(!plan.cautions.iter().any(|at| at.level == Level::Stop && further(at)));
                }
                _ => panic!("{candidate:?}"),
            }
        }
        let in_front = all.iter().take_while(|candidate| candidate.merits().is_some()).count();
        assert_eq!(in_front, possible);
        assert!(all.iter().skip(possible).all(|candidate| candidate.merits().is_none()));
    }
    assert!(done > 100 && stopped > 100, "{done} done, {stopped} stopped");
}

#[test]
fn the_best_loses_to_none_and_each_other_on_what_it_says() {
    let mut seeded = Seeded::new(4);
    let mut lost_on = Vec::new();
    for _ in 0..60 {
        let brief = brief(&mut seeded);
        let (lenses, supports) = kit_of(&mut seeded);
        let kit = Kit { lenses: &lenses, supports: &supports, sides: &Side::ALL };
        let (all, ..) = chosen(&brief, &kit, 100);
        let Some(best) = all[0].merits() else { continue };
        for candidate in &all[1..] {
            let Outcome::Possible { merits, lost } = &candidate.outcome else { continue };
            let lost = lost.unwrap();
            assert_ne!(merits.compare(best).0, Ordering::Less);
            for earlier in Criterion::ALL.iter().take_while(|criterion| **criterion != lost.on) {
                // Compared as read: within the coarsest step of any criterion.
                let (one, other) = (merits.value(*earlier), best.value(*earlier));
                assert!(one == other || (one - other).abs() < 1.0, "{earlier:?}: {one} and {other}");
            }
            let worse = match lost.on {
                Criterion::Factor | Criterion::Tilt => lost.value < lost.best,
                Criterion::KitOrder => candidate.combination.lens_index >= all[0].combination.lens_index,
                _ => lost.value > lost.best,
            };
            assert!(worse, "{lost:?}");
            lost_on.push(lost.on);
        }
        assert!(matches!(all[0].outcome, Outcome::Possible { lost: None, .. }));
    }
    for criterion in [Criterion::Warnings, Criterion::Notes, Criterion::PayloadShare] {
        assert!(lost_on.contains(&criterion), "nothing lost on {criterion:?}");
    }
}

#[test]
fn a_shorter_list_is_the_longer_ones_beginning() {
    let mut seeded = Seeded::new(8);
    for _ in 0..10 {
        let brief = brief(&mut seeded);
        let (lenses, supports) = kit_of(&mut seeded);
        let kit = Kit { lenses: &lenses, supports: &supports, sides: &Side::ALL };
        let (all, planned, possible) = chosen(&brief, &kit, 100);
        for places in [0, 1, 2, 7, 47, 48] {
            let (some, also_planned, also_possible) = chosen(&brief, &kit, places);
            assert_eq!((also_planned, also_possible), (planned, possible));
            assert_eq!(some, all[..places.min(all.len())]);
        }
    }
}

#[test]
fn what_is_not_open_stays() {
    let brief = workshop::overhead();
    let kit = Kit { lenses: &[], supports: &[], sides: &[] };
    let (all, planned, _) = chosen(&brief, &kit, 3);
    assert_eq!((all.len(), planned), (1, 1));
    let combination = all[0].combination;
    assert_eq!((combination.lens_index, combination.support_index, combination.side), (None, None, None));
    assert_eq!(kit.brief_with(&brief, &combination), brief);
}

#[test]
fn stretch_is_looked_for_from_above_as_well() {
    // The corner of 36 x 24 mm seen through 35 mm: atan(√(18² + 12²) / 35) off the axis.
    let off_axis = (18_f64.hypot(12.0) / 35.0).atan();
    approx::assert_relative_eq!(WIDE_STRETCH, 1.0 / off_axis.cos(), max_relative = 1e-14);
    // Of two lenses that raise the same cautions the one that stretches less wins.
    let mut brief = workshop::slanting();
    brief.shot.framing = Framing::FrameWidthMm(1500.0);
    brief.support.base_mass_kg = 60.0;
    brief.support.highest_pivot_mm = 4000.0;
    let lenses =
        [workshop::lens(24.0), workshop::lens(60.0)].map(|lens| Lens { front_from_sensor_mm: None, ..lens });
    let kit = Kit { lenses: &lenses, supports: &[], sides: &[] };
    let (all, _, possible) = chosen(&brief, &kit, 2);
    assert_eq!(possible, 2);
    assert_eq!(all[0].combination.lens_index, Some(1));
    let Outcome::Possible { lost: Some(lost), .. } = all[1].outcome else { panic!() };
    assert_eq!((lost.on, lost.value, lost.best), (Criterion::Stretch, 1.0, 0.0));
}

#[test]
fn a_tripod_beside_the_corner_is_on_no_side() {
    // From 45 degrees in front and to the right: outside the corner, but beyond neither edge by the
    // stand-off.
    let mut brief = workshop::slanting();
    brief.support.foot_radius_mm = 700.0;
    brief.support.legs_top_mm = 2000.0;
    brief.table.width_mm = 820.0;
    brief.table.depth_mm = 820.0;
    brief.shot.elevation_deg = 25.0;
    brief.shot.bearing_deg = 45.0;
    let placed = plan(&brief).unwrap().placement;
    assert!(!placed.boom_used);
    let kit = Kit { lenses: &[], supports: &[], sides: &Side::ALL };
    let (all, planned, possible) = chosen(&brief, &kit, 5);
    assert_eq!((planned, possible), (5, 1));
    assert_eq!(all[0].combination.side, None);
    assert!(all[1..].iter().all(|candidate| match candidate.outcome {
        Outcome::Stopped(stops) => stops.worst.code == CautionCode::BoomMissing,
        _ => false,
    }));
}

#[test]
fn a_wrong_lens_drops_out_and_a_wrong_brief_is_refused() {
    let mut brief = workshop::overhead();
    let wrong = Lens { focal_length_mm: 0.0, ..workshop::lens(90.0) };
    let kit = Kit { lenses: &[wrong, workshop::lens(90.0)], supports: &[], sides: &[] };
    let (all, _, possible) = chosen(&brief, &kit, 2);
    assert_eq!(possible, 1);
    let Outcome::Refused(fault) = all[1].outcome else { panic!() };
    assert_eq!((fault.kind, fault.field), (FaultKind::TooSmall, "lens.focal_length_mm"));
    // A brief's own lens does not matter where others are to choose from.
    brief.lens = wrong;
    assert!(choose(&brief, &kit, &mut [Candidate::VACANT]).unwrap().best().is_some());
    brief.bay.ceiling_mm = Some(f64::NAN);
    let fault = choose(&brief, &kit, &mut [Candidate::VACANT]).unwrap_err();
    assert_eq!((fault.kind, fault.field), (FaultKind::NotFinite, "bay.ceiling_mm"));
}
