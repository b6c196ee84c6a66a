//! The smallest changes: they work, a little less does not, and where there is none nothing works.

use tablerig::brief::Brief;
use tablerig::caution::{CautionCode, Level};
use tablerig::plan::plan;
use tablerig::scene::bay::Bay;
use tablerig::scene::table::Side;
use tablerig::shoot::change::{Change, ChangeKind};
use tablerig::shoot::choose::choose;
use tablerig::shoot::kit::{Candidate, Kit};
use tablerig::shoot::smallest::{smallest_change, smallest_changes, smallest_changes_in_kit};

use crate::briefs::{Seeded, brief, lens};
use crate::workshop;

/// Whether planning raises no stop.
fn works(brief: &Brief) -> bool {
    plan(brief).is_ok_and(|plan| plan.cautions.worst() != Some(Level::Stop))
}

/// The impossible ones among seeded briefs.
fn impossible(seed: u64) -> impl Iterator<Item = Brief> {
    let mut seeded = Seeded::new(seed);
    core::iter::repeat_with(move || brief(&mut seeded)).filter(|brief| !works(brief))
}

fn change(brief: &Brief, kind: ChangeKind) -> Change {
    smallest_change(brief, kind).unwrap().unwrap()
}

#[test]
fn two_hundred_impossible_briefs() {
    let mut found = [0; 9];
    for (index, brief) in impossible(5).take(200).enumerate() {
        let changes = smallest_changes(&brief).unwrap();
        let mut seeded = Seeded::new(index as u64);
        for ((kind, change), found) in ChangeKind::ALL.into_iter().zip(changes).zip(&mut found) {
            let Some(change) = change else { continue };
            *found += 1;
            let told = format!("brief {index}, {change:?}");
            assert_eq!(change.kind, kind, "{told}");
            assert!(works(&change.applied(&brief)), "{told}");
            // A change smaller by a billionth of the value does not do: far above the last bit, far below
            // anything that could be set.
            let back = 1e-9 * change.to.abs().max(1.0);
            let less = change.to - back.copysign(change.by());
            assert!((less - change.from) * change.by() >= 0.0, "{told}: hardly a change");
            assert!(!works(&kind.set(&brief, less)), "{told}");
            // Nor does any other on the way.
            for _ in 0..40 {
                let between = seeded.between(change.from, less);
                assert!(!works(&kind.set(&brief, between)), "{told}: {between} does");
            }
        }
    }
    // Each kind was asked for often enough to mean something.
    println!("changes found, by kind: {found:?}");
    assert!(found.iter().all(|found| *found >= 3), "{found:?}");
}

#[test]
fn where_there_is_none_nothing_works() {
    for (index, brief) in impossible(17).take(80).enumerate() {
        let mut seeded = Seeded::new(index as u64);
        let width = plan(&brief).unwrap().frame_width_mm;
        let focal = brief.lens.focal_length_mm;
        let elevation = brief.shot.elevation_deg;
        for (kind, change) in ChangeKind::ALL.into_iter().zip(smallest_changes(&brief).unwrap()) {
            if change.is_some() {
                continue;
            }
            for _ in 0..60 {
                let tried = match kind {
                    ChangeKind::HigherCeiling => {
                        seeded.between(brief.bay.ceiling_mm.unwrap_or(2000.0), 9000.0)
                    }
                    ChangeKind::LongerBoom if brief.support.boom.is_none() => continue,
                    ChangeKind::LongerBoom => seeded.between(400.0, 10000.0),
                    ChangeKind::HigherColumn => seeded.between(brief.support.highest_pivot_mm, 20000.0),
                    ChangeKind::HeavierBase => seeded.between(brief.support.base_mass_kg, 1000.0),
                    ChangeKind::NarrowerFrame => seeded.between(0.1 * width, width),
                    ChangeKind::WiderFrame => seeded.between(width, 10.0 * width),
                    ChangeKind::LowerElevation => seeded.between(0.0, elevation),
                    ChangeKind::HigherElevation => seeded.between(elevation, 90.0),
                    ChangeKind::OtherFocalLength => focal * 10_f64.powf(seeded.between(-1.0, 1.0)),
                    _ => unreachable!(),
                };
                assert!(!works(&kind.set(&brief, tried)), "brief {index}, {kind:?}: {tried} does");
            }
        }
    }
}

#[test]
fn a_ceiling_is_asked_to_clear_the_highest_point() {
    let mut brief = workshop::overhead();
    let highest = plan(&brief).unwrap().placement.highest_point_mm;
    brief.bay = Bay { ceiling_mm: Some(2300.0), ceiling_clearance_mm: 120.0, ..Bay::OPEN };
    let ceiling = change(&brief, ChangeKind::HigherCeiling);
    // The only rounding is that of two additions.
    approx::assert_relative_eq!(ceiling.to, highest + 120.0, max_relative = 1e-15);
    assert_eq!(ceiling.from, 2300.0);
    let rounded = ceiling.rounded(&brief, 10.0).unwrap();
    assert_eq!(rounded.to, 10.0 * (ceiling.to / 10.0).ceil());
    // Everything but the height is as it should be, so a lower camera does as well.
    let frame = change(&brief, ChangeKind::NarrowerFrame);
    let lowered = plan(&frame.applied(&brief)).unwrap();
    approx::assert_abs_diff_eq!(lowered.placement.highest_point_mm, 2180.0, epsilon = 1e-9);
    let focal = change(&brief, ChangeKind::OtherFocalLength);
    assert!(focal.by() < 0.0);
    let shorter = plan(&focal.applied(&brief)).unwrap();
    approx::assert_abs_diff_eq!(shorter.placement.highest_point_mm, 2180.0, epsilon = 1e-9);
    assert_eq!(shorter.frame_width_mm, 600.0);
}

#[test]
fn a_boom_is_asked_for_exactly_the_reach() {
    let mut brief = workshop::overhead();
    brief.support.boom.as_mut().unwrap().longest_reach_mm = 300.0;
    let reach = plan(&brief).unwrap().placement.reach_mm;
    assert_eq!(change(&brief, ChangeKind::LongerBoom).to, reach);
    // No boom to lengthen.
    brief.support.boom = None;
    assert_eq!(smallest_change(&brief, ChangeKind::LongerBoom).unwrap(), None);
}

#[test]
fn a_column_is_asked_for_exactly_the_height() {
    let mut brief = workshop::overhead();
    brief.support.highest_pivot_mm = 2000.0;
    let height = plan(&brief).unwrap().placement.clamp_height_mm;
    assert_eq!(change(&brief, ChangeKind::HigherColumn).to, height);
}

#[test]
fn a_base_is_asked_for_the_weight_that_keeps_the_factor() {
    // A light stand that reaches far; only the factor is held against a limit, so the weight is the one that
    // restores so many times what overturns.
    let mut brief = workshop::overhead();
    brief.support.base_mass_kg = 0.0;
    brief.support.mass_kg = 0.4;
    (brief.shot.side, brief.shot.aim_y_mm) = (Some(Side::Front), 300.0);
    let boom = brief.support.boom.as_mut().unwrap();
    (boom.counterweight_kg, boom.rated_clamp_moment_n_m) = (0.0, None);
    brief.criteria.factor_stop = 1.7;
    brief.criteria.payload_share_stop = 10.0;
    brief.criteria.tilt_stop_deg = 0.0;
    let base = change(&brief, ChangeKind::HeavierBase);
    let with = plan(&base.applied(&brief)).unwrap();
    approx::assert_relative_eq!(with.stability.as_shot.factor, 1.7, max_relative = 1e-12);
    assert!(with.stability.as_shot.factor >= 1.7);
}

#[test]
fn two_things_at_once_have_no_single_weight_or_ceiling() {
    let mut brief = workshop::overhead();
    brief.bay.ceiling_mm = Some(2300.0);
    brief.support.boom.as_mut().unwrap().longest_reach_mm = 300.0;
    let stops = plan(&brief).unwrap().cautions;
    assert!(stops.find(CautionCode::CeilingTooLow).is_some());
    assert!(stops.find(CautionCode::BoomTooShort).is_some());
    for kind in [ChangeKind::HigherCeiling, ChangeKind::LongerBoom, ChangeKind::HeavierBase] {
        assert_eq!(smallest_change(&brief, kind).unwrap(), None);
    }
}

#[test]
fn nothing_to_change_where_nothing_stops() {
    assert!(works(&workshop::overhead()));
    assert_eq!(smallest_changes(&workshop::overhead()).unwrap(), [None; 9]);
}

#[test]
fn a_wrong_brief_is_refused() {
    let mut brief = workshop::overhead();
    brief.table.width_mm = -1.0;
    assert_eq!(smallest_changes(&brief).unwrap_err().field, "table.width_mm");
}

#[test]
fn the_smallest_over_a_kit_is_the_smallest_of_its_combinations() {
    let mut seeded = Seeded::new(23);
    let mut compared = 0;
    while compared < 10 {
        let brief = brief(&mut seeded);
        let lenses = [lens(&mut seeded), lens(&mut seeded)];
        let supports = [brief.support, workshop::stand()];
        let kit = Kit { lenses: &lenses, supports: &supports, sides: &[] };
        let mut places = [Candidate::VACANT; 4];
        let choice = choose(&brief, &kit, &mut places).unwrap();
        if choice.best().is_some() {
            continue;
        }
        compared += 1;
        let smallest = smallest_changes_in_kit(&brief, &kit, choice.candidates);
        for (kind, smallest) in ChangeKind::ALL.into_iter().zip(smallest) {
            let alone = choice.candidates.iter().filter_map(|candidate| {
                smallest_change(&kit.brief_with(&brief, &candidate.combination), kind).unwrap()
            });
            let size = |change: &Change| match kind {
                ChangeKind::OtherFocalLength => (change.to / change.from).ln().abs(),
                _ => change.by().abs(),
            };
            let least = alone.map(|change| size(&change)).min_by(f64::total_cmp);
            assert_eq!(smallest.map(|found| size(&found.change)), least);
            if let Some(found) = smallest {
                assert!(works(&found.change.applied(&kit.brief_with(&brief, &found.combination))));
            }
        }
    }
}
