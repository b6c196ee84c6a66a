//! Shots that follow each other at once, as blocks; what it takes from one block to another, and which must
//! come first.

use alloc::vec;
use alloc::vec::Vec;

use super::minutes::{Minutes, Setup};
use super::precedence::{OrderFault, Precedence};

/// Shots that follow each other at once, as one; and what it takes from one block to another.
#[derive(Clone, Debug)]
pub(crate) struct Blocks {
    /// Each block's shots in their order. Blocks are in the order of their first shots.
    pub(crate) shots: Vec<Vec<usize>>,
    /// From the last shot of one block to the first of another, row by row.
    seconds: Vec<u32>,
    /// Whether one block must come before another, row by row.
    before: Vec<bool>,
    /// The same as pairs, each once.
    pub(crate) pairs: Vec<(usize, usize)>,
    /// Re-rigging inside the blocks.
    pub(crate) within_seconds: u64,
}

impl Blocks {
    pub(crate) fn new(
        setups: &[Setup],
        minutes: &Minutes,
        precedences: &[Precedence],
    ) -> Result<Blocks, OrderFault> {
        let shots = chained(setups.len(), precedences)?;
        let count = shots.len();
        let between = |from: usize, to: usize| match (setups.get(from), setups.get(to)) {
            (Some(from), Some(to)) => minutes.seconds(&minutes.rerig(from, to)),
            _ => 0,
        };
        let ends = |block: &Vec<usize>| (block.first().copied(), block.last().copied());
        let mut seconds = Vec::with_capacity(count * count);
        for (_, last) in shots.iter().map(ends) {
            for (first, _) in shots.iter().map(ends) {
                seconds.push(last.zip(first).map_or(0, |(from, to)| between(from, to)));
            }
        }
        let inner = shots.iter().flat_map(|block| block.iter().zip(block.iter().skip(1)));
        let within_seconds = inner.map(|(from, to)| u64::from(between(*from, *to))).sum();
        let before = vec![false; count * count];
        let mut blocks = Blocks { before, pairs: Vec::new(), shots, seconds, within_seconds };
        for pair in precedences {
            let place = |shot: usize| {
                let mut blocks = blocks.shots.iter().enumerate();
                blocks.find_map(|(block, shots)| Some((block, shots.iter().position(|at| *at == shot)?)))
            };
            let (Some((first, at)), Some((then, after))) = (place(pair.first), place(pair.then)) else {
                continue;
            };
            if first == then && at >= after {
                let inside = blocks.shots.get(first).and_then(|shots| shots.get(after..=at));
                return Err(OrderFault::Circle(inside.unwrap_or_default().to_vec()));
            }
            // Inside a block it is kept already.
            if first != then
                && let Some(before) = blocks.before.get_mut(first * count + then)
                && !core::mem::replace(before, true)
            {
                blocks.pairs.push((first, then));
            }
        }
        match blocks.circle() {
            Some(circle) => Err(OrderFault::Circle(circle)),
            None => Ok(blocks),
        }
    }

    pub(crate) fn count(&self) -> usize {
        self.shots.len()
    }

    /// From the end of one block to the beginning of another.
    pub(crate) fn seconds(&self, from: usize, to: usize) -> u32 {
        self.seconds.get(from * self.count() + to).copied().unwrap_or(0)
    }

    /// Whether one block must come before another (by a precedence of its own, not by way of a third).
    pub(crate) fn goes_before(&self, first: usize, then: usize) -> bool {
        self.before.get(first * self.count() + then).copied().unwrap_or(false)
    }

    /// All the way through blocks in an order.
    pub(crate) fn order_seconds(&self, order: &[usize]) -> u64 {
        order.iter().zip(order.iter().skip(1)).map(|(from, to)| u64::from(self.seconds(*from, *to))).sum()
    }

    /// Whether an order of all blocks keeps to what must come first.
    pub(crate) fn allows(&self, order: &[usize]) -> bool {
        if self.pairs.is_empty() {
            return true;
        }
        let mut places = vec![0; self.count()];
        for (place, block) in order.iter().enumerate() {
            if let Some(known) = places.get_mut(*block) {
                *known = place;
            }
        }
        self.pairs.iter().all(|(first, then)| places.get(*first) < places.get(*then))
    }

    /// The least that joins all blocks, either way round: a spanning tree (Prim's method). Any order is one.
    pub(crate) fn spanning_seconds(&self) -> u64 {
        let either = |a: usize, b: usize| self.seconds(a, b).min(self.seconds(b, a));
        let mut open: Vec<(usize, u32)> = (1..self.count()).map(|block| (block, either(0, block))).collect();
        let mut total = 0;
        while let Some(at) = (0..open.len()).min_by_key(|at| open.get(*at).map(|(_, seconds)| *seconds)) {
            let (joined, seconds) = open.swap_remove(at);
            total += u64::from(seconds);
            for (block, nearest) in &mut open {
                *nearest = (*nearest).min(either(joined, *block));
            }
        }
        total
    }

    /// Shots of blocks that must each come before the next and the last before the first, if there are any.
    fn circle(&self) -> Option<Vec<usize>> {
        // Blocks that nothing left must precede are taken away; what stays has a circle among it.
        let mut left: Vec<usize> = (0..self.count()).collect();
        while let Some(at) =
            left.iter().position(|block| !left.iter().any(|first| self.goes_before(*first, *block)))
        {
            left.remove(at);
        }
        let mut path = vec![*left.first()?];
        loop {
            let block = *path.last()?;
            let first = *left.iter().find(|first| self.goes_before(**first, block))?;
            if let Some(at) = path.iter().position(|known| *known == first) {
                let circle = path.get(at..)?.iter().rev();
                return Some(circle.filter_map(|block| self.shots.get(*block)?.first().copied()).collect());
            }
            path.push(first);
        }
    }
}

/// The shots as blocks of those that follow each other at once, in the order of their first shots.
fn chained(count: usize, precedences: &[Precedence]) -> Result<Vec<Vec<usize>>, OrderFault> {
    let mut next: Vec<Option<usize>> = vec![None; count];
    let mut follows: Vec<Option<usize>> = vec![None; count];
    for pair in precedences {
        if let Some(shot) = [pair.first, pair.then].into_iter().find(|shot| *shot >= count) {
            return Err(OrderFault::UnknownShot { shot, count });
        }
        if pair.first == pair.then {
            return Err(OrderFault::Circle(vec![pair.first]));
        }
        if pair.at_once {
            for (list, shot, other) in
                [(&mut next, pair.first, pair.then), (&mut follows, pair.then, pair.first)]
            {
                let Some(known) = list.get_mut(shot) else { continue };
                if known.is_some_and(|known| known != other) {
                    return Err(OrderFault::TwoAtOnce { shot });
                }
                *known = Some(other);
            }
        }
    }
    let mut blocks = Vec::with_capacity(count);
    let mut placed = vec![false; count];
    let place = |from: usize, placed: &mut Vec<bool>| {
        let mut block = Vec::new();
        let mut at = Some(from);
        while let Some(shot) = at.filter(|shot| placed.get(*shot) == Some(&false)) {
            if let Some(placed) = placed.get_mut(shot) {
                *placed = true;
            }
            block.push(shot);
            at = next.get(shot).copied().flatten();
        }
        block
    };
    for (shot, first) in follows.iter().enumerate() {
        if first.is_none() {
            blocks.push(place(shot, &mut placed));
        }
    }
    // What is left follows itself round.
    match placed.iter().position(|placed| !placed) {
        Some(shot) => Err(OrderFault::Circle(place(shot, &mut placed))),
        None => Ok(blocks),
    }
}
