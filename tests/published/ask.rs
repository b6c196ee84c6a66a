//! From a row's quantity to the library's functions.

use crate::ask_optics::optics;
use crate::ask_rigs::rigs;
use crate::rows::Row;

/// The library's answer; `None` for a row that needs a feature that is off.
pub(crate) fn answer(row: &Row) -> Option<f64> {
    #[cfg(not(feature = "alloc"))]
    if row.quantity == "whole_pieces" {
        return None;
    }
    let found = optics(row).or_else(|| rigs(row));
    let found = found.unwrap_or_else(|| panic!("no such quantity: {}", row.text));
    row.all_used();
    Some(found)
}

/// Where a falling or rising function of one number takes a value, by halving.
pub(crate) fn solve(wanted: f64, low: f64, high: f64, of: impl Fn(f64) -> f64) -> f64 {
    let (mut low, mut high) = (low, high);
    let rises = of(high) > of(low);
    for _ in 0..200 {
        let middle = 0.5 * (low + high);
        if (of(middle) < wanted) == rises {
            low = middle;
        } else {
            high = middle;
        }
    }
    0.5 * (low + high)
}
