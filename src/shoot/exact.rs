//! The best order of up to 15 blocks of shots: dynamic programming over subsets (Held and Karp, Journal of
//! the Society for Industrial and Applied Mathematics 10, 1962), with precedence.

use alloc::vec;
use alloc::vec::Vec;

use super::blocks::Blocks;

/// Most blocks that are ordered exactly: 2^15 subsets times 15 last blocks.
pub(crate) const MOST_EXACT: usize = 15;

const NEVER: u32 = u32::MAX;

/// The order that takes least; of equals the one nearest to the order as written (the earlier block first).
/// Blocks must be no more than [`MOST_EXACT`], without a cycle.
pub(crate) fn best_order(blocks: &Blocks) -> Vec<usize> {
    let count = blocks.count();
    let all = (1_usize << count) - 1;
    let earlier: Vec<usize> = (0..count)
        .map(|block| {
            (0..count).filter(|first| blocks.goes_before(*first, block)).map(|first| 1 << first).sum()
        })
        .collect();
    // What may come next once the blocks of a set are done.
    let next = |done: usize| {
        let open = move |(_, earlier): &(usize, &usize)| *earlier & !done == 0;
        let free = move |(block, _): &(usize, &usize)| done & (1 << block) == 0;
        earlier.iter().enumerate().filter(free).filter(open).map(|(block, _)| block)
    };
    // Seconds from having done a set, the given block last, to the end.
    let mut rest = vec![NEVER; (all + 1) * count];
    let place = |done: usize, last: usize| done * count + last;
    let read = |rest: &[u32], done: usize, last: usize| rest.get(place(done, last)).copied().unwrap_or(NEVER);
    let onwards = |rest: &[u32], done: usize, last: usize, block: usize| {
        let after = read(rest, done | 1 << block, block);
        if after == NEVER { NEVER } else { after + blocks.seconds(last, block) }
    };
    for done in (1..=all).rev() {
        for last in (0..count).filter(|last| done & (1 << last) != 0) {
            let least = if done == all {
                0
            } else {
                next(done).map(|block| onwards(&rest, done, last, block)).min().unwrap_or(NEVER)
            };
            if let Some(known) = rest.get_mut(place(done, last)) {
                *known = least;
            }
        }
    }
    let mut order = Vec::with_capacity(count);
    let mut done = 0;
    while order.len() < count {
        let taken = match order.last() {
            None => next(0).min_by_key(|block| read(&rest, 1 << block, *block)),
            Some(last) => next(done).min_by_key(|block| onwards(&rest, done, *last, *block)),
        };
        // There is always one: the blocks have no cycle.
        let Some(block) = taken else { break };
        done |= 1 << block;
        order.push(block);
    }
    order
}
