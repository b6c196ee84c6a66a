//! One name, a list of names, or `"any"`.

use std::format;
use std::prelude::rust_2024::*;

use super::field::{Name, listed};
use super::problem::{Problem, ProblemKind};
use super::reading::{Reading, name};
use super::suggest;
use super::tree::{Entry, Value};
use crate::scene::table::Side;

/// The word that leaves something open.
pub(crate) const ANY: &str = "any";

/// Names as they were written, in their order.
#[derive(Clone, Debug)]
pub(crate) struct Several {
    pub(crate) names: Vec<Name>,
    /// Whether they stood in a list, even a list of one.
    pub(crate) as_list: bool,
}

impl Several {
    /// The name, where there is just one and not as a list.
    pub(crate) fn one(&self) -> Option<&Name> {
        match self.names.as_slice() {
            [name] if !self.as_list => Some(name),
            _ => None,
        }
    }

    /// Whether it is the word for any.
    pub(crate) fn is_any(&self) -> bool {
        self.one().is_some_and(|name| name.text == ANY)
    }
}

/// Reads one name or a list of them, each once.
pub(crate) fn several(
    reading: &mut Reading,
    entry: &Entry,
    expected: &str,
    meaning: &str,
) -> Option<Several> {
    let items = match &entry.node.value {
        Value::List(list) if !list.is_empty() => list.iter().map(name).collect::<Option<Vec<Name>>>(),
        Value::Text(_) => name(&entry.node).map(|name| Vec::from([name])),
        _ => None,
    };
    let Some(names) = items else {
        reading.wrong(entry, "takes names", expected, meaning);
        return None;
    };
    for (index, name) in names.iter().enumerate() {
        if let Some(first) = names.iter().take(index).find(|first| first.text == name.text) {
            let title = format!("`{}` names \"{}\" twice", entry.key, name.text);
            let problem = Problem::new(ProblemKind::Repeated, title, name.span.clone(), "named already");
            reading.report(problem.also(first.span.clone(), "here"));
            return None;
        }
    }
    Some(Several { names, as_list: matches!(entry.node.value, Value::List(_)) })
}

/// The sides that were named; all of them for `"any"`.
pub(crate) fn sides(
    reading: &mut Reading,
    entry: &Entry,
    words: &[&str],
    any: Option<&[Side]>,
    meaning: &str,
) -> Option<Vec<Side>> {
    let quoted: Vec<String> = words.iter().map(|word| format!("\"{word}\"")).collect();
    let expected = format!("{}, or a list of them", listed(&quoted, "or"));
    let several = several(reading, entry, &expected, meaning)?;
    if let (true, Some(any)) = (several.is_any(), any) {
        return Some(any.to_vec());
    }
    let mut sides = Vec::new();
    for name in &several.names {
        let Some(place) = words.iter().position(|word| *word == name.text) else {
            let title = format!("`{}` cannot be \"{}\"", entry.key, name.text);
            let problem = Problem::new(
                ProblemKind::UnknownWord,
                title,
                name.span.clone(),
                format!("expected {expected}"),
            );
            reading.report(suggest::advise(problem, &name.text, words, "there are").note(meaning));
            return None;
        };
        sides.extend(Side::ALL.get(place));
    }
    Some(sides)
}
