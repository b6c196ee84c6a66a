//! Writes a shoot file's tree down as TOML: values first, then tables under their headings, in the tree's
//! order.

use std::borrow::ToOwned;
use std::format;
use std::prelude::rust_2024::*;

use toml_writer::{ToTomlKey, ToTomlValue, TomlKeyBuilder, TomlStringBuilder};

use super::tree::{Entry, Node, Value, whole};

/// The tree as TOML. What TOML has no word for is left out: JSON's null.
pub(crate) fn toml_text(root: &Node) -> String {
    let mut text = String::new();
    table(&mut text, "", root.entries());
    text
}

/// A key as it stands in TOML, in quotes where it needs them.
pub(super) fn key(key: &str) -> String {
    TomlKeyBuilder::new(key).as_default().to_toml_key()
}

/// A value on one line; `None` where TOML has no word for it.
pub(super) fn value(node: &Node) -> Option<String> {
    Some(match &node.value {
        Value::Text(text) => TomlStringBuilder::new(text).as_default().to_toml_value(),
        Value::Number(number) => match whole(*number) {
            Some(whole) => format!("{whole}"),
            None => number.to_toml_value(),
        },
        Value::Flag(flag) => flag.to_toml_value(),
        Value::List(list) => {
            let values: Vec<String> = list.iter().filter_map(value).collect();
            format!("[{}]", values.join(", "))
        }
        Value::Table(entries) => {
            let pair = |entry: &Entry| Some(format!("{} = {}", key(&entry.key), value(&entry.node)?));
            let pairs: Vec<String> = entries.iter().filter_map(pair).collect();
            if pairs.is_empty() { "{}".to_owned() } else { format!("{{ {} }}", pairs.join(", ")) }
        }
        Value::Other(_) => return None,
    })
}

/// Whether a node stands under a heading of its own.
pub(super) fn has_heading(node: &Node) -> bool {
    match &node.value {
        Value::Table(_) => true,
        Value::List(list) => {
            !list.is_empty() && list.iter().all(|item| matches!(item.value, Value::Table(_)))
        }
        _ => false,
    }
}

fn heading(text: &mut String, heading: &str) {
    if !text.is_empty() {
        text.push('\n');
    }
    text.push_str(heading);
    text.push('\n');
}

fn table(text: &mut String, path: &str, entries: &[Entry]) {
    for entry in entries.iter().filter(|entry| !has_heading(&entry.node)) {
        if let Some(value) = value(&entry.node) {
            text.push_str(&format!("{} = {value}\n", key(&entry.key)));
        }
    }
    for entry in entries.iter().filter(|entry| has_heading(&entry.node)) {
        let dot = if path.is_empty() { "" } else { "." };
        let path = format!("{path}{dot}{}", key(&entry.key));
        under_heading(text, &path, &entry.node);
    }
}

/// A table, or a list of them, under the heading of that path.
pub(super) fn under_heading(text: &mut String, path: &str, node: &Node) {
    match &node.value {
        Value::List(list) => {
            for item in list {
                heading(text, &format!("[[{path}]]"));
                table(text, path, item.entries());
            }
        }
        _ => {
            let inner = node.entries();
            // A table of nothing but tables needs no heading.
            if inner.is_empty() || inner.iter().any(|entry| !has_heading(&entry.node)) {
                heading(text, &format!("[{path}]"));
            }
            table(text, path, inner);
        }
    }
}
