//! The session planner, over kits, bays, shots and weights of any kind: what it says is held against planning
//! itself.

use tablerig::brief::Brief;
use tablerig::caution::{CautionCode as Code, Level};
use tablerig::doors::c;
use tablerig::doors::c::border::mirror::Leave;
use tablerig::optics::lens::Lens;
use tablerig::plan::{Plan, plan};
use tablerig::range;
use tablerig::rig::support::Support;
use tablerig::scene::bay::Bay;
use tablerig::scene::table::Side;
use tablerig::shoot::booking::{Listed, booking};
use tablerig::shoot::change::ChangeKind;
use tablerig::shoot::choose::choose;
use tablerig::shoot::fit::fit;
use tablerig::shoot::kit::{Candidate, Kit, Outcome};
use tablerig::shoot::merits::Merits;
use tablerig::shoot::pieces::PieceSize;
use tablerig::shoot::pull::pull_list;
use tablerig::shoot::room::RoomNeed;
use tablerig::shoot::smallest::{smallest_changes, smallest_changes_in_kit};
use tablerig::shoot::stops::Stops;
use tablerig::shoot::weights::{Stock, shot_weights};

use super::draw::Draw;
use super::tally::Tally;
use super::{briefs, cautions, finite, gear, sequence};

/// How many briefs were planned.
pub static TALLY: Tally = Tally::new("planner");

/// Asks one question of the planner, drawn from the bytes.
pub fn run(data: &[u8]) {
    let mut of = Draw::new(data);
    match of.below(8) {
        0 | 1 => one_plan(&mut of),
        2 => changes(&mut of),
        3 => chosen(&mut of),
        4 | 5 => listed(&mut of),
        6 => weighed(&mut of),
        _ => sequence::ordered(&mut of),
    }
}

/// A brief's plan, if it has one, looked at.
fn planned(brief: &Brief) -> Option<Plan> {
    let planned = plan(brief);
    TALLY.count(planned.is_ok());
    match planned {
        Ok(plan) => {
            let in_c: c::plan::Plan = Leave::leave(&plan);
            finite::check(&in_c);
            cautions::check(brief, &plan);
            let again: c::plan::Plan = Leave::leave(&tablerig::plan::plan(brief).expect("once more"));
            assert!(super::memory::plain(&again) == super::memory::plain(&in_c), "another plan");
            Some(plan)
        }
        Err(fault) => {
            assert!(!fault.field.is_empty() && !fault.least.is_nan() && !fault.most.is_nan(), "{fault:?}");
            let told = fault.to_string();
            assert!(told.contains(fault.field) && !told.contains("NaN"), "{told}");
            None
        }
    }
}

fn one_plan(of: &mut Draw) {
    let brief = briefs::brief(of);
    planned(&brief);
}

fn stopped(plan: &Plan) -> bool {
    plan.cautions.worst() == Some(Level::Stop)
}

/// Each smallest change works, and is one of what is asked for.
fn changes(of: &mut Draw) {
    let brief = briefs::brief(of);
    let Some(plan) = planned(&brief) else { return assert!(smallest_changes(&brief).is_err()) };
    let changes = smallest_changes(&brief).expect("a brief that is planned");
    assert!(stopped(&plan) || changes.iter().all(Option::is_none), "nothing stops it: {changes:?}");
    for (change, kind) in changes.iter().zip(ChangeKind::ALL) {
        let Some(change) = change else { continue };
        assert!(change.kind == kind);
        assert!(kind.range().check(change.to).is_ok(), "out of its range: {change:?}");
        let (less, more) = (change.to < change.from, change.to > change.from);
        let towards = match kind {
            ChangeKind::NarrowerFrame | ChangeKind::LowerElevation => less,
            ChangeKind::OtherFocalLength => less || more,
            _ => more,
        };
        assert!(towards, "the wrong way: {change:?}");
        let changed = change.applied(&brief);
        let after = tablerig::plan::plan(&changed).unwrap_or_else(|fault| panic!("{change:?}: {fault}"));
        assert!(!stopped(&after), "still stopped: {change:?} {:?}", after.cautions);
        if let Some(rounded) = change.rounded(&brief, 1.0) {
            let after = tablerig::plan::plan(&rounded.applied(&brief)).expect("a rounded change");
            assert!(!stopped(&after) && rounded.by().abs() >= change.by().abs(), "{rounded:?} {change:?}");
        }
    }
}

/// The gear to choose from.
struct Gear {
    lenses: Vec<Lens>,
    supports: Vec<Support>,
    sides: Vec<Side>,
}

impl Gear {
    fn new(of: &mut Draw) -> Gear {
        let (lenses, supports) = (of.below(4), of.below(3));
        let first = of.below(5);
        Gear {
            lenses: (0..lenses).map(|_| gear::lens(of)).collect(),
            supports: (0..supports).map(|_| gear::support(of)).collect(),
            sides: Side::ALL.into_iter().skip(first).collect(),
        }
    }
}

/// Every combination is planned as it would be alone, and stands where the rule puts it.
fn chosen(of: &mut Draw) {
    let brief = briefs::brief(of);
    let gear = Gear::new(of);
    let kit = Kit { lenses: &gear.lenses, supports: &gear.supports, sides: &gear.sides };
    let mut places = vec![Candidate::VACANT; kit.most_combinations()];
    let Ok(choice) = choose(&brief, &kit, &mut places) else {
        return assert!(brief.check().is_err(), "refused without a reason");
    };
    let (planned, possible) = (choice.planned, choice.possible);
    assert_eq!(choice.candidates.len(), planned);
    let mut class = 0;
    let mut before: Option<Merits> = None;
    for (at, candidate) in choice.candidates.iter().enumerate() {
        let with = kit.brief_with(&brief, &candidate.combination);
        let alone = self::planned(&with);
        let own = match (&candidate.outcome, alone) {
            (Outcome::Possible { merits, lost }, Some(plan)) => {
                assert!(!stopped(&plan) && *merits == Merits::of(&with, &plan));
                assert_eq!(lost.is_none(), at == 0);
                assert!(before.is_none_or(|before| before.compare(merits).0.is_le()), "not in order");
                before = Some(*merits);
                0
            }
            (Outcome::Stopped(stops), Some(plan)) => {
                assert_eq!(Stops::among(&plan.cautions).as_ref(), Some(stops));
                assert!(!stops.overshoot_share.is_nan() && stops.worst.level == Level::Stop);
                1
            }
            (Outcome::Refused(fault), None) => {
                assert_eq!(tablerig::plan::plan(&with).unwrap_err().kind, fault.kind);
                2
            }
            other => panic!("another outcome alone: {other:?}"),
        };
        assert!(own >= class, "not in order");
        class = own;
    }
    let able = choice.candidates.iter().filter(|candidate| candidate.merits().is_some()).count();
    assert_eq!((able, choice.best().is_some()), (possible, possible > 0));
    let all = choice.candidates.to_vec();
    // A shorter list holds the best of it.
    let mut few = vec![Candidate::VACANT; 1 + of.below(4)];
    let best = choose(&brief, &kit, &mut few).expect("the same once more");
    let outcomes = |list: &[Candidate]| list.iter().map(|it| it.combination).collect::<Vec<_>>();
    assert_eq!(outcomes(best.candidates), outcomes(&all[..best.candidates.len()]));
    assert_eq!((best.planned, best.possible), (planned, possible));
    if possible == 0 && planned < 3 {
        for change in smallest_changes_in_kit(&brief, &kit, &all).into_iter().flatten() {
            let with = kit.brief_with(&brief, &change.combination);
            let after = tablerig::plan::plan(&change.change.applied(&with)).expect("a change that works");
            assert!(!stopped(&after), "still stopped: {change:?}");
        }
    }
}

/// Pieces of weight.
fn sizes(of: &mut Draw) -> Vec<PieceSize> {
    let count = of.below(5);
    let usual = [7.0, 11.0, 2.5, 0.5];
    let mut size = |at: usize| {
        let mass_kg = of.near(range::PIECE_MASS_KG, usual[at]);
        // Whole hundred grams most of the time, as weights are.
        let mass_kg = if of.below(4) > 0 { (mass_kg * 10.0).round().max(1.0) / 10.0 } else { mass_kg };
        PieceSize { mass_kg, at_hand: if of.yes() { Some(of.below(6) as u32) } else { None } }
    };
    (0..count).map(|at| size(at % 4)).collect()
}

/// Weights in whole pieces hold what they are to hold.
fn weighed(of: &mut Draw) {
    let brief = briefs::brief(of);
    let (counterweights, base_weights) = (sizes(of), sizes(of));
    let stock = Stock { counterweights: &counterweights, base_weights: &base_weights };
    let Ok(weights) = shot_weights(&brief, &stock) else {
        let wrong = counterweights
            .iter()
            .chain(&base_weights)
            .any(|size| range::PIECE_MASS_KG.check(size.mass_kg).is_err());
        return assert!(planned(&brief).is_none() || wrong, "refused without a reason");
    };
    for (weight, sizes) in [(&weights.counterweight, &counterweights), (&weights.base_weight, &base_weights)]
    {
        let Some(weight) = weight else { continue };
        assert!(weight.needed_kg >= 0.0, "{weight:?}");
        let Some(pieces) = &weight.pieces else { continue };
        // The gram is the last digit of a weight.
        assert!(pieces.mass_kg >= weight.needed_kg - 1.1e-6, "{weight:?}");
        let taken = pieces.counts.iter().zip(sizes);
        let sum: f64 =
            taken.clone().map(|(count, size)| f64::from(*count) * (size.mass_kg * 1000.0).round()).sum();
        assert!((sum / 1000.0 - pieces.mass_kg).abs() < 1e-6, "{pieces:?} of {sizes:?}");
        assert!(taken.into_iter().all(|(count, size)| size.at_hand.is_none_or(|most| *count <= most)));
    }
    let plan = planned(&weights.brief).expect("the brief with weights on");
    assert_eq!(weights.worst, plan.cautions.worst());
}

/// What a list of shots needs together.
fn listed(of: &mut Draw) {
    let count = 1 + of.below(4);
    let bay = briefs::bay(of);
    let shots: Vec<(Brief, Plan)> = (0..count)
        .filter_map(|_| {
            let mut brief = briefs::brief(of);
            brief.bay = Bay { people_under: brief.bay.people_under, ..bay };
            planned(&brief).map(|plan| (brief, plan))
        })
        .collect();
    let names = ["", "a", "b\u{301}", "<c&\">"];
    let list: Vec<Listed> = shots
        .iter()
        .map(|(brief, plan)| Listed {
            camera: of.one_of(&names),
            lens: of.one_of(&names),
            support: of.one_of(&names),
            table: of.one_of(&names),
            surface: of.one_of(&[None, Some("a"), Some("b")]),
            backdrop: of.one_of(&[None, Some("a"), Some("b")]),
            brief,
            plan,
        })
        .collect();
    let Some(room) = booking(&list) else { return assert!(list.is_empty()) };
    assert!(finite::odd_fields(&format!("{room:?},")).is_empty(), "{room:?}");
    let deciding =
        room.table_from_walls.iter().chain([&room.ceiling, &room.lowest_pivot, &room.highest_pivot]);
    assert!(deciding.clone().all(|decided| decided.by_shot < list.len()));
    let mut all = RoomNeed::NONE;
    for (brief, plan) in &shots {
        all = all.with(&RoomNeed::of(brief, plan));
        fits_as_planned(brief, plan);
        in_the_room_booked(brief, &room);
    }
    for turns in 0..5 {
        let fit = fit(&bay, &all, turns);
        assert_eq!(fit.quarter_turns, turns % 4);
        assert!(finite::odd_fields(&format!("{fit:?},")).iter().all(|(_, _, number)| number != "NaN"));
        if fit.fits {
            assert!(!fit.moves.is_empty() && !fit.moves_with_person.is_empty());
            assert!(fit.moves_with_person.nearest_mm() == Some((0.0, 0.0)), "{fit:?}");
        }
    }
    let (counterweights, base_weights) = (sizes(of), sizes(of));
    let stock = Stock { counterweights: &counterweights, base_weights: &base_weights };
    let pull = pull_list(&list, &stock).expect("sound pieces and briefs");
    let told = format!("{pull:?},");
    assert!(finite::odd_fields(&told).iter().all(|(_, _, number)| number != "NaN"), "{told}");
    let items =
        |items: &[tablerig::shoot::pull::Item]| items.iter().map(|item| item.shots.len()).sum::<usize>();
    for sum in [items(&pull.cameras), items(&pull.lenses), items(&pull.tables)] {
        assert_eq!(sum, list.len());
    }
    assert_eq!(pull.shot_weights.len(), list.len());
}

/// Whether a shot fits its bay by itself is what its plan says.
fn fits_as_planned(brief: &Brief, plan: &Plan) {
    let fit = fit(&brief.bay, &RoomNeed::of(brief, plan), 0);
    let raised = |code| plan.cautions.find(code).is_some();
    let table = &brief.table;
    let outside = |wall: Option<f64>, half: f64| wall.is_some_and(|wall| wall < half);
    let bay = &brief.bay;
    let table_outside = outside(bay.left_mm, 0.5 * table.width_mm)
        || outside(bay.right_mm, 0.5 * table.width_mm)
        || outside(bay.front_mm, 0.5 * table.depth_mm)
        || outside(bay.back_mm, 0.5 * table.depth_mm);
    let rooms =
        [plan.bay_room.ceiling_mm, plan.bay_room.feet_mm, plan.bay_room.tail_mm, plan.bay_room.camera_mm];
    let person = plan.bay_room.behind_camera_mm - bay.person_room_mm;
    // Where a wall is met to the rounding of the sums, either may be said.
    let size = plan.placement.highest_point_mm.abs().max(1e4) * 1e-9;
    let close = rooms.into_iter().chain([person]).any(|room| room.abs() < size);
    let out = table_outside
        || raised(Code::CeilingTooLow)
        || raised(Code::FeetOutsideBay)
        || raised(Code::TailOutsideBay)
        || raised(Code::CameraOutsideBay)
        || raised(Code::NoRoomBehindCamera);
    assert!(close || fit.fits != out, "{fit:?} {:?} {table_outside}", plan.bay_room);
}

/// Every shot can be taken in the room that was booked for all.
fn in_the_room_booked(brief: &Brief, room: &tablerig::shoot::booking::Booking) {
    let [front, right, back, left] = room.table_from_walls.map(|wall| wall.mm);
    // Far above the rounding of the walls' sums, and far under what matters.
    let more = |mm: f64| Some(mm + 1e-3 + 1e-9 * mm);
    let bay = Bay {
        front_mm: more(front),
        right_mm: more(right),
        back_mm: more(back),
        left_mm: more(left),
        ceiling_mm: more(room.ceiling.mm),
        ..brief.bay
    };
    // A room beyond the ranges cannot be planned in.
    let Ok(there) = tablerig::plan::plan(&Brief { bay, ..*brief }) else { return };
    for code in [
        Code::CeilingTooLow,
        Code::FeetOutsideBay,
        Code::TailOutsideBay,
        Code::CameraOutsideBay,
        Code::NoRoomBehindCamera,
    ] {
        let raised = there.cautions.find(code);
        assert!(raised.is_none(), "{raised:?} in {bay:?}, booked by {room:?}");
    }
}
