//! What a shoot file says, whether it was TOML or JSON: tables, lists and values, each with its place.

use std::ops::Range;
use std::prelude::rust_2024::*;

/// A stretch of the file, in bytes.
pub(crate) type Span = Range<usize>;

/// A value and where it stands. A table's place is its heading in TOML and its brace in JSON.
#[derive(Debug)]
pub(crate) struct Node {
    pub(crate) span: Span,
    pub(crate) value: Value,
}

#[derive(Debug)]
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
#[derive(Debug)]
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
