//! A good order of many blocks of shots.
//!
//! From the order as written (put right where precedence forbids it) and from the nearest next block after
//! each of the first that may begin, the order is bettered as long as one of two moves betters it: taking
//! one to three blocks elsewhere (Or-opt), or turning a stretch round (2-opt), precedence kept. The best of
//! these local optima is the answer; the same list gives the same order.

use alloc::vec::Vec;

use super::blocks::Blocks;

/// Most orders from which the bettering begins.
const MOST_STARTS: usize = 16;
/// Most blocks moved together.
const LONGEST_MOVED: usize = 3;

/// An order that no single move betters.
pub(crate) fn good_order(blocks: &Blocks) -> Vec<usize> {
    let mut best = bettered(blocks, as_written(blocks));
    let mut least = blocks.order_seconds(&best);
    let may_begin = |block: &usize| (0..blocks.count()).all(|first| !blocks.goes_before(first, *block));
    for start in (0..blocks.count()).filter(may_begin).take(MOST_STARTS) {
        let order = bettered(blocks, nearest_next(blocks, start));
        let seconds = blocks.order_seconds(&order);
        if seconds < least {
            (best, least) = (order, seconds);
        }
    }
    best
}

/// Always the first block as written that may come next.
fn as_written(blocks: &Blocks) -> Vec<usize> {
    one_by_one(blocks, None, |_, _| 0)
}

/// Always the block that takes least from the last; of equals the first as written.
fn nearest_next(blocks: &Blocks, start: usize) -> Vec<usize> {
    one_by_one(blocks, Some(start), |last, block| blocks.seconds(last, block))
}

fn one_by_one(blocks: &Blocks, start: Option<usize>, seconds: impl Fn(usize, usize) -> u32) -> Vec<usize> {
    let mut order: Vec<usize> = start.into_iter().collect();
    while order.len() < blocks.count() {
        let open = |block: &usize| {
            !order.contains(block)
                && (0..blocks.count())
                    .all(|first| !blocks.goes_before(first, *block) || order.contains(&first))
        };
        let last = order.last().copied();
        let next =
            (0..blocks.count()).filter(open).min_by_key(|block| last.map_or(0, |last| seconds(last, *block)));
        // There is always one: the blocks have no cycle.
        let Some(next) = next else { break };
        order.push(next);
    }
    order
}

/// The order after every move that betters it, each time the first one found.
fn bettered(blocks: &Blocks, mut order: Vec<usize>) -> Vec<usize> {
    let mut seconds = blocks.order_seconds(&order);
    let mut tried = Vec::with_capacity(order.len());
    while let Some(less) = better(blocks, &order, seconds, &mut tried) {
        core::mem::swap(&mut order, &mut tried);
        seconds = less;
    }
    order
}

/// The first move that betters an order: the bettered one in `tried`, and its seconds.
fn better(blocks: &Blocks, order: &[usize], seconds: u64, tried: &mut Vec<usize>) -> Option<u64> {
    let count = order.len();
    let betters = |tried: &mut Vec<usize>, change: &dyn Fn(&mut Vec<usize>)| {
        tried.clear();
        tried.extend_from_slice(order);
        change(tried);
        let less = blocks.order_seconds(tried);
        if less < seconds && blocks.allows(tried) { Some(less) } else { None }
    };
    for length in 1..=LONGEST_MOVED.min(count.saturating_sub(1)) {
        for from in 0..=count - length {
            for to in (0..=count - length).filter(|to| *to != from) {
                // Rotating what lies between takes the stretch there.
                let moved = |order: &mut Vec<usize>| {
                    if to < from {
                        if let Some(part) = order.get_mut(to..from + length) {
                            part.rotate_right(length);
                        }
                    } else if let Some(part) = order.get_mut(from..to + length) {
                        part.rotate_left(length);
                    }
                };
                if let Some(less) = betters(tried, &moved) {
                    return Some(less);
                }
            }
        }
    }
    for from in 0..count {
        for to in from + 2..=count {
            let turned = |order: &mut Vec<usize>| {
                if let Some(part) = order.get_mut(from..to) {
                    part.reverse();
                }
            };
            if let Some(less) = betters(tried, &turned) {
                return Some(less);
            }
        }
    }
    None
}
