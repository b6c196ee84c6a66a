//! The order of shots, against trying every order.

use tablerig::scene::table::Side;
use tablerig::shoot::minutes::{Minutes, Setup};
use tablerig::shoot::order::{Order, good_order_of, order};
use tablerig::shoot::precedence::{OrderFault, Precedence};

use crate::briefs::Seeded;

fn setup(seeded: &mut Seeded) -> Setup {
    Setup {
        support: seeded.below(3) as u32,
        side: Side::ALL[seeded.below(4)],
        lens: seeded.below(4) as u32,
        height_mm: seeded.between(900.0, 2600.0),
        surface: seeded.below(3) as u32,
    }
}

fn minutes(seeded: &mut Seeded) -> Minutes {
    Minutes {
        support_minutes: seeded.between(3.0, 15.0),
        side_minutes: seeded.between(1.0, 8.0),
        lens_minutes: seeded.between(0.5, 4.0),
        height_minutes: seeded.between(0.5, 5.0),
        height_threshold_mm: seeded.between(0.0, 400.0),
        surface_minutes: seeded.between(1.0, 10.0),
    }
}

/// A few precedences that cannot go round in a circle: each along a random order of the shots.
fn precedences(seeded: &mut Seeded, count: usize, most: usize) -> Vec<Precedence> {
    let mut line: Vec<usize> = (0..count).collect();
    for place in (1..count).rev() {
        line.swap(place, seeded.below(place + 1));
    }
    let mut pairs: Vec<Precedence> = Vec::new();
    for _ in 0..seeded.below(most + 1) {
        let at = seeded.below(count - 1);
        let at_once = seeded.chance(0.3);
        let after = if at_once { at + 1 } else { at + 1 + seeded.below(count - 1 - at) };
        let pair = Precedence { first: line[at], then: line[after], at_once };
        let clash = |known: &Precedence| {
            known.at_once && at_once && (known.first == pair.first) != (known.then == pair.then)
        };
        // Neighbours along the line never clash; shots in between of two at once would.
        if !pairs.iter().any(clash) {
            pairs.push(pair);
        }
    }
    pairs
}

fn keeps(sequence: &[usize], precedences: &[Precedence]) -> bool {
    let place = |shot: usize| sequence.iter().position(|at| *at == shot).unwrap();
    precedences.iter().all(|pair| {
        let (first, then) = (place(pair.first), place(pair.then));
        if pair.at_once { first + 1 == then } else { first < then }
    })
}

fn seconds(sequence: &[usize], setups: &[Setup], minutes: &Minutes) -> u32 {
    let between = |pair: &[usize]| minutes.seconds(&minutes.rerig(&setups[pair[0]], &setups[pair[1]]));
    sequence.windows(2).map(between).sum()
}

/// Every order of the shots that keeps the precedences, in the order of the dictionary; the first of the
/// shortest.
fn tried(setups: &[Setup], minutes: &Minutes, precedences: &[Precedence]) -> (u32, Vec<usize>) {
    let row = |from| setups.iter().map(|to| minutes.seconds(&minutes.rerig(from, to))).collect();
    let table: Vec<Vec<u32>> = setups.iter().map(row).collect();
    let mut best = (u32::MAX, Vec::new());
    on(&mut Vec::new(), 0, 0, &mut best, &table, precedences);
    best
}

fn on(
    sequence: &mut Vec<usize>,
    taken: u32,
    so_far: u32,
    best: &mut (u32, Vec<usize>),
    table: &[Vec<u32>],
    precedences: &[Precedence],
) {
    if sequence.len() == table.len() {
        if so_far < best.0 && keeps(sequence, precedences) {
            *best = (so_far, sequence.clone());
        }
        return;
    }
    for shot in 0..table.len() {
        if taken & 1 << shot == 0 {
            let further = sequence.last().map_or(0, |last| table[*last][shot]);
            sequence.push(shot);
            on(sequence, taken | 1 << shot, so_far + further, best, table, precedences);
            sequence.pop();
        }
    }
}

fn same_shots(order: &Order, count: usize) -> bool {
    let mut shots = order.sequence.clone();
    shots.sort_unstable();
    shots == (0..count).collect::<Vec<_>>()
}

#[test]
fn two_hundred_lists_of_eight_against_every_order() {
    let mut seeded = Seeded::new(7);
    let mut constrained = 0;
    for list in 0..200 {
        let setups: Vec<Setup> = (0..8).map(|_| setup(&mut seeded)).collect();
        let minutes = minutes(&mut seeded);
        let precedences = if list % 2 == 0 { Vec::new() } else { precedences(&mut seeded, 8, 5) };
        constrained += usize::from(!precedences.is_empty());
        let (least, sequence) = tried(&setups, &minutes, &precedences);
        let found = order(&setups, &minutes, &precedences).unwrap();
        assert!(found.is_best && keeps(&found.sequence, &precedences) && same_shots(&found, 8));
        assert_eq!(seconds(&found.sequence, &setups, &minutes), least, "list {list}");
        assert_eq!(found.rerigging_minutes, f64::from(least) / 60.0);
        assert_eq!(found.at_least_minutes, found.rerigging_minutes);
        let written: Vec<usize> = (0..8).collect();
        assert_eq!(found.as_written_minutes, f64::from(seconds(&written, &setups, &minutes)) / 60.0);
        assert_eq!(found.as_written_allowed, keeps(&written, &precedences));
        if precedences.iter().all(|pair| !pair.at_once) {
            // Of equals the first in the dictionary.
            assert_eq!(found.sequence, sequence, "list {list}");
        }
        // The method for long lists keeps to the rules and is never better.
        let good = good_order_of(&setups, &minutes, &precedences).unwrap();
        assert!(keeps(&good.sequence, &precedences) && same_shots(&good, 8));
        assert!(good.rerigging_minutes >= found.rerigging_minutes);
        assert!(good.at_least_minutes <= found.rerigging_minutes);
    }
    assert!(constrained > 60, "{constrained}");
}

#[test]
fn long_lists_come_near_the_best() {
    // On lists short enough for both methods the one for long lists is held against the best; what it
    // misses is printed, and bounded well above what was seen.
    let mut seeded = Seeded::new(9);
    let (mut equal, mut worst) = (0, 1.0_f64);
    for _ in 0..40 {
        let setups: Vec<Setup> = (0..12).map(|_| setup(&mut seeded)).collect();
        let minutes = minutes(&mut seeded);
        let precedences = precedences(&mut seeded, 12, 6);
        let best = order(&setups, &minutes, &precedences).unwrap();
        let good = good_order_of(&setups, &minutes, &precedences).unwrap();
        equal += usize::from(best.rerigging_minutes == good.rerigging_minutes);
        worst = worst.max(good.rerigging_minutes / best.rerigging_minutes);
    }
    println!("the best in {equal} of 40 lists of 12; at worst {worst} times as long");
    assert!(equal >= 20 && worst < 1.15, "{equal} {worst}");
}

#[test]
fn forty_shots_keep_their_precedences_and_save() {
    let mut seeded = Seeded::new(10);
    for _ in 0..3 {
        let setups: Vec<Setup> = (0..40).map(|_| setup(&mut seeded)).collect();
        let minutes = minutes(&mut seeded);
        let precedences = precedences(&mut seeded, 40, 12);
        let found = order(&setups, &minutes, &precedences).unwrap();
        assert!(keeps(&found.sequence, &precedences) && same_shots(&found, 40));
        assert!(found.saved_minutes > 0.0 && found.at_least_minutes <= found.rerigging_minutes);
        assert_eq!(found, order(&setups, &minutes, &precedences).unwrap());
    }
}

/// No single move of those that are tried betters a good order: each is made and timed from end to end.
#[test]
fn no_single_move_betters_a_good_order() {
    let mut seeded = Seeded::new(34);
    for _ in 0..30 {
        let count = 3 + seeded.below(22);
        let setups: Vec<Setup> = (0..count).map(|_| setup(&mut seeded)).collect();
        let minutes = minutes(&mut seeded);
        let mut precedences = precedences(&mut seeded, count, 5);
        // Shots at once would move together.
        precedences.retain(|pair| !pair.at_once);
        let good = good_order_of(&setups, &minutes, &precedences).unwrap().sequence;
        let takes = seconds(&good, &setups, &minutes);
        let worse = |moved: &[usize]| {
            assert!(
                !keeps(moved, &precedences) || seconds(moved, &setups, &minutes) >= takes,
                "{good:?} {moved:?}"
            );
        };
        for from in 0..count {
            for to in from + 2..=count {
                let mut turned = good.clone();
                turned[from..to].reverse();
                worse(&turned);
            }
            for length in 1..=3.min(count - from) {
                let mut rest = good.clone();
                let part: Vec<usize> = rest.drain(from..from + length).collect();
                for to in 0..=rest.len() {
                    let mut moved = rest.clone();
                    moved.splice(to..to, part.iter().copied());
                    worse(&moved);
                }
            }
        }
    }
}

/// Far beyond what is ordered exactly, with what must come first.
#[test]
fn a_long_list_is_ordered() {
    let mut seeded = Seeded::new(35);
    let count = 120;
    let setups: Vec<Setup> = (0..count).map(|_| setup(&mut seeded)).collect();
    let precedences = precedences(&mut seeded, count, 60);
    let found = order(&setups, &Minutes::TO_BEGIN_WITH, &precedences).unwrap();
    assert!(same_shots(&found, count) && keeps(&found.sequence, &precedences));
    // Seen 15 % over what joins all shots, which is less than any order takes.
    assert!(found.rerigging_minutes <= 1.25 * found.at_least_minutes, "{found:?}");
}

#[test]
fn a_list_that_cannot_be_bettered_stays() {
    let mut seeded = Seeded::new(1);
    let same = setup(&mut seeded);
    let found = order(&[same; 6], &Minutes::TO_BEGIN_WITH, &[]).unwrap();
    assert_eq!(found.sequence, [0, 1, 2, 3, 4, 5]);
    assert_eq!((found.rerigging_minutes, found.saved_minutes), (0.0, 0.0));
    let long = order(&[same; 30], &Minutes::TO_BEGIN_WITH, &[]).unwrap();
    assert!(long.is_best);
    assert_eq!(long.sequence, (0..30).collect::<Vec<_>>());
    assert!(order(&[], &Minutes::TO_BEGIN_WITH, &[]).unwrap().sequence.is_empty());
    assert_eq!(order(&[same], &Minutes::TO_BEGIN_WITH, &[]).unwrap().sequence, [0]);
}

#[test]
fn a_change_of_support_takes_side_and_height_with_it() {
    let minutes = Minutes::TO_BEGIN_WITH;
    let one = Setup { support: 0, side: Side::Front, lens: 0, height_mm: 1000.0, surface: 0 };
    let seconds = |other: Setup| minutes.seconds(&minutes.rerig(&one, &other));
    assert_eq!(seconds(Setup { side: Side::Left, height_mm: 2000.0, ..one }), 9 * 60);
    assert_eq!(seconds(Setup { support: 1, side: Side::Left, height_mm: 2000.0, ..one }), 10 * 60);
    assert_eq!(seconds(Setup { height_mm: 1100.0, ..one }), 0);
    assert_eq!(seconds(Setup { height_mm: 1100.1, lens: 1, surface: 2, ..one }), (3 + 2 + 5) * 60);
}

fn refused(count: usize, pairs: &[(usize, usize, bool)]) -> OrderFault {
    let mut seeded = Seeded::new(1);
    let setups: Vec<Setup> = (0..count).map(|_| setup(&mut seeded)).collect();
    let pairs: Vec<_> = pairs
        .iter()
        .map(|(first, then, at_once)| Precedence { first: *first, then: *then, at_once: *at_once })
        .collect();
    order(&setups, &Minutes::TO_BEGIN_WITH, &pairs).unwrap_err()
}

#[test]
fn circles_are_told() {
    let fault = refused(5, &[(0, 1, false), (1, 3, false), (3, 1, false)]);
    let OrderFault::Circle(circle) = &fault else { panic!("{fault}") };
    assert!(*circle == [1, 3] || *circle == [3, 1]);
    assert_eq!(refused(3, &[(2, 2, false)]), OrderFault::Circle(vec![2]));
    assert!(matches!(refused(3, &[(0, 1, true), (1, 2, true), (2, 0, true)]), OrderFault::Circle(_)));
    // Inside what follows at once.
    assert!(matches!(refused(4, &[(0, 1, true), (1, 2, true), (2, 0, false)]), OrderFault::Circle(_)));
    // By way of it: 3 between 0 and 1, which follow each other at once.
    assert!(matches!(refused(4, &[(0, 1, true), (0, 3, false), (3, 1, false)]), OrderFault::Circle(_)));
    let told = refused(4, &[(0, 1, false), (1, 2, false), (2, 0, false)]).to_string();
    assert!(told.starts_with("what must come first goes round in a circle: shot "), "{told}");
    assert!(told.matches(" before ").count() == 3, "{told}");
}

#[test]
fn other_faults_are_told() {
    assert_eq!(refused(3, &[(0, 7, false)]), OrderFault::UnknownShot { shot: 7, count: 3 });
    assert_eq!(refused(3, &[(0, 1, true), (0, 2, true)]), OrderFault::TwoAtOnce { shot: 0 });
    assert_eq!(refused(3, &[(0, 2, true), (1, 2, true)]), OrderFault::TwoAtOnce { shot: 2 });
    let wrong = Minutes { lens_minutes: f64::NAN, ..Minutes::TO_BEGIN_WITH };
    let OrderFault::Minutes(fault) = order(&[], &wrong, &[]).unwrap_err() else { panic!() };
    assert_eq!(fault.field, "order.lens_minutes");
}
