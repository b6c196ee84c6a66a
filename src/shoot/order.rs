//! The sequence of shots that needs the least re-rigging.
//!
//! Up to 15 shots (those that follow each other at once counting as one) the order is the best there is;
//! above that it is a good one, and the answer says how much better another could be at most.

use alloc::vec::Vec;

use super::blocks::Blocks;
use super::exact::{MOST_EXACT, best_order};
use super::minutes::{Minutes, Rerig, Setup};
use super::near::good_order;
use super::precedence::{OrderFault, Precedence};
use crate::scene::table::Side;

/// The order found.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Order {
    /// The shots, counted from 0 as written, in the order in which to take them. Of orders that take the
    /// same, one that is known to be best keeps shots that were written earlier earlier.
    pub sequence: Vec<usize>,
    /// Re-rigging in this order, from the first shot's set-up on.
    pub rerigging_minutes: f64,
    /// The same in the order as written.
    pub as_written_minutes: f64,
    /// What is saved; negative where the order as written is shorter, but not allowed.
    pub saved_minutes: f64,
    /// Whether the order as written keeps to what must come first.
    pub as_written_allowed: bool,
    /// Whether no order takes less.
    pub is_best: bool,
    /// No order takes less than this: that of the order itself if it is the best, or else the least that
    /// joins all shots (a spanning tree, precedence left aside).
    pub at_least_minutes: f64,
}

/// One step of an order.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct OrderStep {
    /// The shot, counted from 0 as written.
    pub shot: usize,
    /// What has to be changed before it; nothing before the first.
    pub rerig: Rerig,
    /// What that takes.
    pub minutes: f64,
}

impl Order {
    /// The order step by step. Set-ups and minutes are those that it was found for.
    pub fn steps(&self, setups: &[Setup], minutes: &Minutes) -> Vec<OrderStep> {
        let mut before: Option<&Setup> = None;
        let mut steps = Vec::with_capacity(self.sequence.len());
        for shot in &self.sequence {
            let Some(setup) = setups.get(*shot) else { continue };
            let rerig = minutes.rerig(before.unwrap_or(setup), setup);
            steps.push(OrderStep { shot: *shot, rerig, minutes: f64::from(minutes.seconds(&rerig)) / 60.0 });
            before = Some(setup);
        }
        steps
    }
}

/// The sequence of shots that needs the least re-rigging, keeping to what must come first: the best one for
/// up to 15 shots, a good one above ([`Order::is_best`]).
///
/// Refused: minutes out of their range, a precedence that names a shot that is not there, precedences that
/// go round in a circle, and two shots at once on the same side of one.
pub fn order(setups: &[Setup], minutes: &Minutes, precedences: &[Precedence]) -> Result<Order, OrderFault> {
    solve(setups, minutes, precedences, true)
}

/// As [`order`], by the method for long lists whatever the length: to see how good it is.
pub fn good_order_of(
    setups: &[Setup],
    minutes: &Minutes,
    precedences: &[Precedence],
) -> Result<Order, OrderFault> {
    solve(setups, minutes, precedences, false)
}

/// Whether there is an order that keeps to what must come first.
///
/// Refused: what [`order`] refuses, but for the minutes.
pub fn check(shot_count: usize, precedences: &[Precedence]) -> Result<(), OrderFault> {
    let alike = Setup { support: 0, side: Side::Front, lens: 0, height_mm: 0.0, surface: 0 };
    Blocks::new(&alloc::vec![alike; shot_count], &Minutes::TO_BEGIN_WITH, precedences).map(|_| ())
}

fn solve(
    setups: &[Setup],
    minutes: &Minutes,
    precedences: &[Precedence],
    exactly: bool,
) -> Result<Order, OrderFault> {
    minutes.check().map_err(OrderFault::Minutes)?;
    let blocks = Blocks::new(setups, minutes, precedences)?;
    let is_best = exactly && blocks.count() <= MOST_EXACT;
    let found = if is_best { best_order(&blocks) } else { good_order(&blocks) };
    let within = blocks.within_seconds;
    let seconds = within + blocks.order_seconds(&found);
    let pairs = setups.iter().zip(setups.iter().skip(1));
    let as_written: u64 = pairs.map(|(from, to)| u64::from(minutes.seconds(&minutes.rerig(from, to)))).sum();
    let at_least = if is_best { seconds } else { within + blocks.spanning_seconds() };
    let in_minutes = |seconds: u64| seconds as f64 / 60.0;
    Ok(Order {
        sequence: found.iter().filter_map(|block| blocks.shots.get(*block)).flatten().copied().collect(),
        rerigging_minutes: in_minutes(seconds),
        as_written_minutes: in_minutes(as_written),
        saved_minutes: in_minutes(as_written) - in_minutes(seconds),
        as_written_allowed: precedences
            .iter()
            .all(|pair| if pair.at_once { pair.first + 1 == pair.then } else { pair.first < pair.then }),
        is_best: is_best || at_least == seconds,
        at_least_minutes: in_minutes(at_least),
    })
}
