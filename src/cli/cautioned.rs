//! Cautions in plain words, and the usual ones for loads and overhead work.

use std::format;
use std::prelude::rust_2024::*;

use super::page::Page;
use crate::caution::overhead::OVERHEAD_CAUTIONS;
use crate::caution::{Caution, CautionCode, Cautions, Level};
use crate::sheet::cautions::sentence;

/// The cautions of a plan, the weightiest first.
pub(crate) fn print(page: &mut Page, cautions: &Cautions) {
    let mut sorted: Vec<&Caution> = cautions.iter().collect();
    sorted.sort_by_key(|caution| core::cmp::Reverse(caution.level));
    let units = page.units;
    let lines: Vec<(Level, String)> =
        sorted.iter().map(|caution| (caution.level, sentence(caution, units))).collect();
    page.levels(&lines);
}

/// The weightier cautions of a plan in full, and its notes by name.
pub(crate) fn print_short(page: &mut Page, cautions: &Cautions) {
    let mut sorted: Vec<&Caution> = cautions.iter().filter(|caution| caution.level > Level::Note).collect();
    sorted.sort_by_key(|caution| core::cmp::Reverse(caution.level));
    let units = page.units;
    let mut lines: Vec<(Level, String)> =
        sorted.iter().map(|caution| (caution.level, sentence(caution, units))).collect();
    let notes: Vec<String> =
        cautions.iter().filter(|caution| caution.level == Level::Note).map(|note| name(note.code)).collect();
    if !notes.is_empty() {
        lines.push((Level::Note, notes.join(", ")));
    }
    page.levels(&lines);
}

/// A code as words: `HorizonInFrame` is "horizon in frame".
pub(crate) fn name(code: CautionCode) -> String {
    let mut words = String::new();
    for letter in format!("{code:?}").chars() {
        if letter.is_uppercase() && !words.is_empty() {
            words.push(' ');
        }
        words.extend(letter.to_lowercase());
    }
    words
}

/// The usual cautions: all of them with a load above the table or a person, and otherwise that ratings,
/// local codes and riggers come before any figure printed here.
pub(crate) fn usual(page: &mut Page, overhead: bool) {
    page.heading("Usual cautions for loads and overhead work");
    if overhead {
        page.list(&OVERHEAD_CAUTIONS);
    } else {
        let [first, .., last] = OVERHEAD_CAUTIONS;
        page.list(&[first, last]);
    }
}
