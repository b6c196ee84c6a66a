//! What a shoot file says, whether it was TOML or JSON: tables, lists and values, each with its place.

use std::ops::Range;
use std::prelude::rust_2024::*;
use std::vec;

use serde::ser::{Serialize, SerializeMap, Serializer};

/// A stretch of the file, in bytes.
pub type Span = Range<usize>;

/// A step on the way from a file to one of its values: into a table, or into a list, counted from 0.
#[derive(Clone, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(untagged)]
pub enum Step {
    /// The key in a table.
    Key(String),
    /// The place in a list.
    Index(usize),
}

/// A value and where it stands. A table's place is its heading in TOML and its brace in JSON.
#[derive(Clone, Debug)]
pub(crate) struct Node {
    pub(crate) span: Span,
    pub(crate) value: Value,
}

#[derive(Clone, Debug)]
pub(crate) enum Value {
    Table(Vec<Entry>),
    List(Vec<Node>),
    Text(String),
    Number(f64),
    Flag(bool),
    /// Something no field takes: a date, or JSON's null.
    Other(&'static str),
}

/// A key with its value.
#[derive(Clone, Debug)]
pub(crate) struct Entry {
    pub(crate) key: String,
    pub(crate) key_span: Span,
    pub(crate) node: Node,
}

impl Value {
    /// What it is, for a message.
    pub(crate) fn kind(&self) -> &'static str {
        match self {
            Value::Table(_) => "a table",
            Value::List(_) => "a list",
            Value::Text(_) => "a text",
            Value::Number(_) => "a number",
            Value::Flag(_) => "true or false",
            Value::Other(kind) => kind,
        }
    }
}

impl Node {
    /// The entries of a table; none of anything else.
    pub(crate) fn entries(&self) -> &[Entry] {
        match &self.value {
            Value::Table(entries) => entries,
            _ => &[],
        }
    }

    /// The entry of that key, if this is a table that has it.
    pub(crate) fn get(&self, key: &str) -> Option<&Entry> {
        self.entries().iter().find(|entry| entry.key == key)
    }

    /// The place of the value under a dotted path of keys, as far down as the file goes.
    pub(crate) fn find(&self, path: &str) -> Option<&Node> {
        let mut node = self;
        for key in path.split('.') {
            node = &node.get(key)?.node;
        }
        Some(node)
    }
}

impl Node {
    /// The value at the end of a way.
    #[cfg(feature = "text-door")]
    pub(crate) fn at(&self, path: &[Step]) -> Option<&Node> {
        path.iter().try_fold(self, |node, step| match (step, &node.value) {
            (Step::Key(key), _) => node.get(key).map(|entry| &entry.node),
            (Step::Index(index), Value::List(list)) => list.get(*index),
            _ => None,
        })
    }

    /// The way to the value that stands at a place, or whose key does.
    pub(crate) fn path_to(&self, span: &Span) -> Option<Vec<Step>> {
        let inside = |step: Step, node: &Node| {
            let mut path = node.path_to(span)?;
            path.insert(0, step);
            Some(path)
        };
        match &self.value {
            Value::Table(entries) => entries.iter().find_map(|entry| {
                let here = entry.key_span == *span || entry.node.span == *span;
                // Several tables share a heading's place: the innermost is meant.
                inside(Step::Key(entry.key.clone()), &entry.node)
                    .or_else(|| here.then(|| vec![Step::Key(entry.key.clone())]))
            }),
            Value::List(list) => list.iter().enumerate().find_map(|(index, node)| {
                inside(Step::Index(index), node)
                    .or_else(|| (node.span == *span).then(|| vec![Step::Index(index)]))
            }),
            _ => None,
        }
    }
}

/// The most that a whole number may be to be exact as an `f64`.
const MOST_WHOLE: f64 = 9_007_199_254_740_992.0;

/// The number, if it is a whole one that is exactly that as an integer.
pub(crate) fn whole(number: f64) -> Option<i64> {
    let whole = number.abs() <= MOST_WHOLE
        && crate::number::floor(number) == number
        && !(number == 0.0 && number.is_sign_negative());
    whole.then_some(number as i64)
}

/// As the file's JSON form: values as they are written, places left out.
impl Serialize for Node {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        match &self.value {
            Value::Table(entries) => {
                let mut map = to.serialize_map(Some(entries.len()))?;
                for entry in entries {
                    map.serialize_entry(&entry.key, &entry.node)?;
                }
                map.end()
            }
            Value::List(list) => to.collect_seq(list),
            Value::Text(text) => to.serialize_str(text),
            Value::Number(number) => match whole(*number) {
                Some(whole) => to.serialize_i64(whole),
                None => crate::number::number_or_infinite(number, to),
            },
            Value::Flag(flag) => to.serialize_bool(*flag),
            Value::Other(_) => to.serialize_unit(),
        }
    }
}
