//! Several ways timed in turns: A, B, A, B, ... in one process, so that whatever else the machine does falls on all of
//! them. Of each the least and the median time is kept, and the median of the ratios within a turn.

use std::time::Instant;

/// What came of timing one way.
#[derive(Clone, Debug)]
pub(crate) struct Timed {
    /// Nanoseconds of each turn.
    turns: Vec<f64>,
}

impl Timed {
    /// The least of all turns, shared by so many items.
    pub(crate) fn least_ns(&self, items: usize) -> f64 {
        self.turns.iter().copied().fold(f64::INFINITY, f64::min) / items as f64
    }

    /// The median of all turns, shared by so many items.
    pub(crate) fn median_ns(&self, items: usize) -> f64 {
        median(self.turns.clone()) / items as f64
    }

    /// How many times the other's time this takes: the median over the turns, each with its neighbour.
    pub(crate) fn over(&self, other: &Timed) -> f64 {
        median(self.turns.iter().zip(&other.turns).map(|(a, b)| a / b).collect())
    }

    /// The same of the least times: what is left where nothing disturbs either.
    pub(crate) fn least_over(&self, other: &Timed) -> f64 {
        self.least_ns(1) / other.least_ns(1)
    }
}

fn median(mut values: Vec<f64>) -> f64 {
    values.sort_by(f64::total_cmp);
    values.get(values.len() / 2).copied().unwrap_or(f64::NAN)
}

/// Times each way once a turn, in an order that changes from turn to turn; two turns go by first.
pub(crate) fn in_turns(turns: usize, ways: &mut [&mut dyn FnMut()]) -> Vec<Timed> {
    let mut timed = vec![Timed { turns: Vec::with_capacity(turns) }; ways.len()];
    let count = ways.len();
    for turn in 0..turns + 2 {
        for step in 0..count {
            let index = (turn + step) % count;
            let begun = Instant::now();
            ways[index]();
            let took = begun.elapsed().as_secs_f64() * 1e9;
            if turn >= 2 {
                timed[index].turns.push(took);
            }
        }
    }
    timed
}
