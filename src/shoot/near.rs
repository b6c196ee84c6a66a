//! A good order of many blocks of shots.
//!
//! From the order as written (put right where precedence forbids it) and from the nearest next block after
//! each of the first that may begin, the order is bettered as long as one of two moves betters it: taking
//! one to three blocks elsewhere (Or-opt), or turning a stretch round (2-opt), precedence kept. The best of
//! these local optima is the answer; the same list gives the same order.

use alloc::vec;
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
    // How many must still come before each block; `None` once it is in the order.
    let mut waits: Vec<Option<usize>> = vec![Some(0); blocks.count()];
    for (_, then) in &blocks.pairs {
        if let Some(Some(count)) = waits.get_mut(*then) {
            *count += 1;
        }
    }
    let mut order = Vec::with_capacity(blocks.count());
    let mut next = start;
    loop {
        let last = order.last().copied();
        let open = waits.iter().enumerate().filter(|(_, waits)| **waits == Some(0)).map(|(block, _)| block);
        let taken = next.take().or_else(|| {
            let mut open = open;
            match last {
                None => open.next(),
                Some(last) => open.min_by_key(|block| seconds(last, *block)),
            }
        });
        // There is always one until all are in it: the blocks have no cycle.
        let Some(block) = taken else { return order };
        order.push(block);
        if let Some(waits) = waits.get_mut(block) {
            *waits = None;
        }
        for (_, then) in blocks.pairs.iter().filter(|(first, _)| *first == block) {
            if let Some(Some(count)) = waits.get_mut(*then) {
                *count -= 1;
            }
        }
    }
}

/// The order after every move that betters it, each time the first one found.
fn bettered(blocks: &Blocks, order: Vec<usize>) -> Vec<usize> {
    let mut walk = Walk::new(blocks, order);
    while walk.better() {}
    walk.order
}

/// An order, with what it takes along it so far: so what a move changes is seen without going through it all.
struct Walk<'a> {
    blocks: &'a Blocks,
    order: Vec<usize>,
    /// From the first block up to each, and the same the other way round.
    onwards: Vec<u64>,
    backwards: Vec<u64>,
}

impl<'a> Walk<'a> {
    fn new(blocks: &'a Blocks, order: Vec<usize>) -> Walk<'a> {
        let mut walk = Walk { blocks, order, onwards: Vec::new(), backwards: Vec::new() };
        walk.sum();
        walk
    }

    fn sum(&mut self) {
        let (mut onwards, mut backwards) = (0, 0);
        self.onwards.clear();
        self.backwards.clear();
        for (place, block) in self.order.iter().enumerate() {
            if let Some(before) = place.checked_sub(1).and_then(|before| self.order.get(before)) {
                onwards += u64::from(self.blocks.seconds(*before, *block));
                backwards += u64::from(self.blocks.seconds(*block, *before));
            }
            self.onwards.push(onwards);
            self.backwards.push(backwards);
        }
    }

    /// From the block at one place to the block at another; nothing before the first and after the last.
    fn step(&self, from: Option<usize>, to: usize) -> u64 {
        let at = |place: usize| self.order.get(place).copied();
        match (from.and_then(at), at(to)) {
            (Some(from), Some(to)) => u64::from(self.blocks.seconds(from, to)),
            _ => 0,
        }
    }

    /// Whether it takes less with the stretches from `first` to `second` and from there to `end` exchanged.
    fn better_exchanged(&self, first: usize, second: usize, end: usize) -> bool {
        let before = first.checked_sub(1);
        let now =
            self.step(before, first) + self.step(Some(second - 1), second) + self.step(Some(end - 1), end);
        let then =
            self.step(before, second) + self.step(Some(end - 1), first) + self.step(Some(second - 1), end);
        then < now
    }

    /// Whether it takes less with the stretch from `first` to before `end` turned round.
    fn better_turned(&self, first: usize, end: usize) -> bool {
        let before = first.checked_sub(1);
        let along = |sums: &[u64]| match (sums.get(first), sums.get(end - 1)) {
            (Some(from), Some(to)) => to - from,
            _ => 0,
        };
        let now = self.step(before, first) + along(&self.onwards) + self.step(Some(end - 1), end);
        let then = self.step(before, end - 1) + along(&self.backwards) + self.step(Some(first), end);
        then < now
    }

    /// Makes a change, unless precedence forbids it.
    fn made(&mut self, change: impl Fn(&mut [usize])) -> bool {
        let mut changed = self.order.clone();
        change(&mut changed);
        let allowed = self.blocks.allows(&changed);
        if allowed {
            self.order = changed;
            self.sum();
        }
        allowed
    }

    /// Makes the first move that betters it; whether there was one.
    fn better(&mut self) -> bool {
        let count = self.order.len();
        for length in 1..=LONGEST_MOVED.min(count.saturating_sub(1)) {
            for from in 0..=count - length {
                for to in (0..=count - length).filter(|to| *to != from) {
                    // A stretch moved changes places with what lies between.
                    let (first, second, end) = if to < from {
                        (to, from, from + length)
                    } else {
                        (from, from + length, to + length)
                    };
                    let exchanged = |order: &mut [usize]| {
                        if let Some(part) = order.get_mut(first..end) {
                            part.rotate_left(second - first);
                        }
                    };
                    if self.better_exchanged(first, second, end) && self.made(exchanged) {
                        return true;
                    }
                }
            }
        }
        for from in 0..count {
            for to in from + 2..=count {
                let turned = |order: &mut [usize]| {
                    if let Some(part) = order.get_mut(from..to) {
                        part.reverse();
                    }
                };
                if self.better_turned(from, to) && self.made(turned) {
                    return true;
                }
            }
        }
        false
    }
}
