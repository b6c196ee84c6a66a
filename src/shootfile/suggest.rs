//! The nearest known word for one that is not known.

use std::format;
use std::prelude::rust_2024::*;

use super::field::listed;
use super::problem::{Problem, ProblemKind};
use super::tree::Entry;

/// The known word that a misspelt one most likely stands for.
pub(crate) fn nearest<'a>(word: &str, known: &[&'a str]) -> Option<&'a str> {
    let lower = word.to_ascii_lowercase().replace([' ', '-'], "_");
    // A key without its unit, or with a unit of the reader's own.
    let stem = lower.rsplit_once('_').map_or("", |(stem, _)| stem);
    let extends = |known: &str, stem: &str| {
        !stem.is_empty() && known.strip_prefix(stem).is_some_and(|rest| rest.starts_with('_'))
    };
    let direct = known.iter().find(|known| **known == lower || extends(known, &lower));
    let restemmed = || known.iter().find(|known| known.rsplit_once('_').is_some_and(|(s, _)| s == stem));
    if let Some(found) = direct.or_else(restemmed) {
        return Some(found);
    }
    let likeness = |known: &str| strsim::normalized_damerau_levenshtein(&lower, &known.to_ascii_lowercase());
    let best = known.iter().map(|known| (likeness(known), *known)).max_by(|a, b| a.0.total_cmp(&b.0))?;
    (best.0 >= 0.6).then_some(best.1)
}

/// Says what to write instead of an unknown word, or what there is.
pub(crate) fn advise(problem: Problem, word: &str, known: &[&str], what: &str) -> Problem {
    match nearest(word, known) {
        Some(near) => problem.help(format_args!("did you mean `{near}`?")),
        None if known.is_empty() => problem,
        None => problem.help(format_args!("{what}: {}", listed(known, "and"))),
    }
}

/// A key that no row of the table has.
pub(crate) fn unknown_key(whose: &str, entry: &Entry, known: &[&str]) -> Problem {
    let key = &entry.key;
    let problem = Problem::new(
        ProblemKind::UnknownKey,
        format_args!("{whose} has no `{key}`"),
        entry.key_span.clone(),
        "not known here",
    );
    let problem = advise(problem, key, known, "known here");
    let suffix = key.rsplit_once('_').map_or("", |(_, suffix)| suffix);
    let bare = match suffix {
        "cm" | "m" | "in" | "ft" => Some("60 cm"),
        "g" | "lb" | "oz" => Some("850 g"),
        _ => None,
    };
    match (bare, nearest(key, known)) {
        (Some(example), Some(near)) => problem
            .help(format_args!("another unit goes into the value, between quotes: {near} = \"{example}\"")),
        _ => problem,
    }
}

/// A word that a choice does not offer.
pub(crate) fn unknown_word(entry: &Entry, word: &str, known: &[&str], meaning: &str) -> Problem {
    let quoted: Vec<_> = known.iter().map(|word| format!("\"{word}\"")).collect();
    let label = format!("expected {}", listed(&quoted, "or"));
    let problem = Problem::new(
        ProblemKind::UnknownWord,
        format_args!("`{}` cannot be \"{word}\"", entry.key),
        entry.node.span.clone(),
        label,
    );
    let problem = problem.note(format_args!("{}: {meaning}", entry.key));
    match nearest(word, known) {
        Some(near) => problem.help(format_args!("did you mean \"{near}\"?")),
        None => problem,
    }
}
