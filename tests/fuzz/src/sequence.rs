//! The order of shots: a permutation that keeps what must come first, and, of a few, the best of all.

use tablerig::range;
use tablerig::scene::table::Side;
use tablerig::shoot::minutes::{Minutes, Setup};
use tablerig::shoot::order::{check, good_order_of, order};
use tablerig::shoot::precedence::{OrderFault, Precedence};

use super::draw::Draw;

/// Most shots of which every order is tried.
const FEW: usize = 6;

/// Orders a list of set-ups.
pub(crate) fn ordered(of: &mut Draw) {
    let count = match of.below(8) {
        0..=3 => of.below(FEW + 1),
        4..=6 => of.below(14),
        _ => 16 + of.below(30),
    };
    let kinds = 1 + of.below(4);
    let setups: Vec<Setup> = (0..count).map(|_| setup(of, kinds)).collect();
    let minutes = if of.yes() { Minutes::TO_BEGIN_WITH } else { minutes(of) };
    let pairs = of.below(5);
    let precedences: Vec<Precedence> = (0..pairs)
        .map(|_| Precedence {
            first: of.below(count + 1),
            then: of.below(count + 1),
            at_once: of.below(3) == 0,
        })
        .collect();
    let found = match order(&setups, &minutes, &precedences) {
        Ok(found) => found,
        Err(fault) => return refused(&fault, count, &minutes, &precedences),
    };
    assert!(check(count, &precedences).is_ok());
    let good = good_order_of(&setups, &minutes, &precedences).expect("the same list");
    for (order, name) in [(&found, "found"), (&good, "good")] {
        let mut sorted = order.sequence.clone();
        sorted.sort_unstable();
        assert!(sorted.into_iter().eq(0..count), "{name}: not each shot once: {order:?}");
        assert!(keeps(&order.sequence, &precedences), "{name}: {order:?} {precedences:?}");
        let seconds = seconds(&order.sequence, &setups, &minutes);
        assert!(order.rerigging_minutes == seconds as f64 / 60.0, "{name}: {order:?}");
        assert!(order.at_least_minutes <= order.rerigging_minutes);
        assert!(order.saved_minutes == order.as_written_minutes - order.rerigging_minutes);
        let written: Vec<usize> = (0..count).collect();
        assert_eq!(order.as_written_allowed, keeps(&written, &precedences));
        let sum: f64 = order.steps(&setups, &minutes).iter().map(|step| step.minutes * 60.0).sum();
        assert!((sum - seconds as f64).abs() < 1e-6 * (1.0 + sum));
        assert!(!order.as_written_allowed || order.saved_minutes >= 0.0, "worse than as written: {order:?}");
    }
    assert!(found.rerigging_minutes <= good.rerigging_minutes);
    assert!(good.at_least_minutes <= found.rerigging_minutes);
    if count <= FEW {
        let mut best = u64::MAX;
        each_order(&mut (0..count).collect::<Vec<_>>(), 0, &mut |sequence| {
            if keeps(sequence, &precedences) {
                best = best.min(seconds(sequence, &setups, &minutes));
            }
        });
        assert!(found.is_best && found.rerigging_minutes == best as f64 / 60.0, "{found:?} {best}");
    }
}

fn setup(of: &mut Draw, kinds: usize) -> Setup {
    Setup {
        support: of.below(kinds) as u32,
        side: of.one_of(&Side::ALL),
        lens: of.below(kinds) as u32,
        height_mm: of.between(800.0, 2400.0),
        surface: of.below(kinds) as u32,
    }
}

fn minutes(of: &mut Draw) -> Minutes {
    let mut value = |usual: f64| {
        let drawn = of.near(range::SUPPORT_MINUTES, usual);
        if of.below(16) == 15 { of.any_number() } else { drawn }
    };
    Minutes {
        support_minutes: value(10.0),
        side_minutes: value(6.0),
        lens_minutes: value(2.0),
        height_minutes: value(3.0),
        height_threshold_mm: value(100.0),
        surface_minutes: value(5.0),
    }
}

fn refused(fault: &OrderFault, count: usize, minutes: &Minutes, precedences: &[Precedence]) {
    let told = fault.to_string();
    assert!(!told.is_empty());
    match fault {
        OrderFault::Minutes(_) => assert!(minutes.check().is_err()),
        OrderFault::UnknownShot { shot, count: known } => assert!(*shot >= count && *known == count),
        OrderFault::Circle(shots) => {
            assert!(!shots.is_empty(), "{fault:?} {precedences:?}");
            if count <= FEW {
                each_order(&mut (0..count).collect::<Vec<_>>(), 0, &mut |sequence| {
                    assert!(!keeps(sequence, precedences), "{sequence:?} would do: {fault:?}");
                });
            }
        }
        OrderFault::TwoAtOnce { shot } => {
            let at_once = || precedences.iter().filter(|pair| pair.at_once);
            let before = at_once().filter(|pair| pair.then == *shot).count();
            let after = at_once().filter(|pair| pair.first == *shot).count();
            assert!(before > 1 || after > 1, "{fault:?} {precedences:?}");
        }
        other => panic!("a refusal that is not known: {other:?}"),
    }
}

fn keeps(sequence: &[usize], precedences: &[Precedence]) -> bool {
    let place = |shot: usize| sequence.iter().position(|at| *at == shot);
    precedences.iter().all(|pair| match (place(pair.first), place(pair.then)) {
        (Some(first), Some(then)) if pair.at_once => first + 1 == then,
        (Some(first), Some(then)) => first < then,
        _ => false,
    })
}

fn seconds(sequence: &[usize], setups: &[Setup], minutes: &Minutes) -> u64 {
    let step = |pair: &[usize]| minutes.seconds(&minutes.rerig(&setups[pair[0]], &setups[pair[1]]));
    sequence.windows(2).map(|pair| u64::from(step(pair))).sum()
}

fn each_order(sequence: &mut Vec<usize>, from: usize, each: &mut dyn FnMut(&[usize])) {
    if from == sequence.len() {
        return each(sequence);
    }
    for at in from..sequence.len() {
        sequence.swap(from, at);
        each_order(sequence, from + 1, each);
        sequence.swap(from, at);
    }
}
