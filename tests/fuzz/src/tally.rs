//! How much of what was drawn was answered: printed now and then, so that a run shows that it is not only
//! refused.

use std::sync::atomic::{AtomicU64, Ordering};

/// What one target counts.
pub struct Tally {
    name: &'static str,
    asked: AtomicU64,
    answered: AtomicU64,
}

impl Tally {
    /// Nothing counted yet.
    pub const fn new(name: &'static str) -> Tally {
        Tally { name, asked: AtomicU64::new(0), answered: AtomicU64::new(0) }
    }

    /// Counts one question; whether it was answered.
    pub fn count(&self, answered: bool) {
        self.asked.fetch_add(1, Ordering::Relaxed);
        self.answered.fetch_add(u64::from(answered), Ordering::Relaxed);
    }

    /// Asked and answered so far.
    pub fn so_far(&self) -> (u64, u64) {
        (self.asked.load(Ordering::Relaxed), self.answered.load(Ordering::Relaxed))
    }

    /// Prints the counts, ever more rarely.
    pub fn print_now_and_then(&self) {
        let (asked, answered) = self.so_far();
        if asked >= 64 && (asked.is_power_of_two() || asked.is_multiple_of(65536)) {
            eprintln!("{}: {answered} of {asked} answered", self.name);
        }
    }
}
