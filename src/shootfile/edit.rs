//! Changes single values in a shoot file's text and leaves the rest, with its comments, as it is.
//!
//! Every change is made in the tree, which is what counts, and in the text. Where the changed text does not
//! say what the changed tree says, the tree is written down anew, without the comments.

use std::borrow::ToOwned;
use std::format;
use std::prelude::rust_2024::*;

use super::problem::Problem;
use super::toml_text::{has_heading, key, toml_text, under_heading, value as toml_value};
use super::tree::{Entry, Node, Step, Value};
use super::{Form, parse};

/// A value to be put somewhere, or taken away where it is `None`.
#[derive(Debug)]
pub(crate) struct Edit {
    pub(crate) path: Vec<Step>,
    pub(crate) value: Option<Node>,
}

/// A changed text.
#[derive(Debug, serde::Serialize)]
pub(crate) struct Edited {
    /// The text.
    pub(crate) text: String,
    /// Whether everything that was not changed is as it was, comments too.
    pub(crate) rest_kept: bool,
}

/// Why an edit could not be made: its number, counted from 0.
#[derive(Debug)]
pub(crate) enum NotEdited {
    Text(Vec<Problem>),
    NoSuchPlace(usize),
}

/// The text with the edits made one after another.
pub(crate) fn edited(text: &str, form: Form, edits: &[Edit]) -> Result<Edited, NotEdited> {
    let mut edited = Edited { text: text.to_owned(), rest_kept: true };
    for (index, edit) in edits.iter().enumerate() {
        let before = parse(&edited.text, form).map_err(NotEdited::Text)?;
        let in_place = match form {
            Form::Toml => in_toml(&edited.text, &before, edit),
            // JSON has no comments to be kept.
            Form::Json => None,
        };
        let mut wanted = before;
        put(&mut wanted, &edit.path, edit.value.clone()).ok_or(NotEdited::NoSuchPlace(index))?;
        let says_so = |text: &String| parse(text, form).is_ok_and(|tree| same(&tree, &wanted));
        edited.text = match in_place.filter(says_so) {
            Some(text) => text,
            None => {
                edited.rest_kept &= form == Form::Json;
                written(&wanted, form)
            }
        };
    }
    Ok(edited)
}

/// A tree as text.
pub(crate) fn written(root: &Node, form: Form) -> String {
    match form {
        Form::Toml => toml_text(root),
        // A tree of texts, numbers, flags, lists and tables can always be written as JSON.
        Form::Json => serde_json::to_string_pretty(root).unwrap_or_default() + "\n",
    }
}

/// Puts a value into the tree, or takes it away.
fn put(root: &mut Node, path: &[Step], value: Option<Node>) -> Option<()> {
    let (last, way) = path.split_last()?;
    let parent = way.iter().try_fold(root, |node, step| match (step, &mut node.value) {
        (Step::Key(key), Value::Table(entries)) => {
            entries.iter_mut().find(|entry| entry.key == *key).map(|entry| &mut entry.node)
        }
        (Step::Index(index), Value::List(list)) => list.get_mut(*index),
        _ => None,
    })?;
    match (last, &mut parent.value) {
        (Step::Key(key), Value::Table(entries)) => {
            let place = entries.iter().position(|entry| entry.key == *key);
            match (place, value) {
                (Some(place), Some(value)) => entries.get_mut(place)?.node = value,
                (Some(place), None) => drop(entries.remove(place)),
                (None, Some(node)) => entries.push(Entry { key: key.clone(), key_span: 0..0, node }),
                (None, None) => return None,
            }
        }
        (Step::Index(index), Value::List(list)) => match value {
            Some(value) if *index == list.len() => list.push(value),
            Some(value) => *list.get_mut(*index)? = value,
            None if *index < list.len() => drop(list.remove(*index)),
            None => return None,
        },
        _ => return None,
    }
    Some(())
}

/// Whether two trees say the same, wherever and in whatever order.
fn same(one: &Node, other: &Node) -> bool {
    match (&one.value, &other.value) {
        (Value::Table(entries), Value::Table(others)) => {
            entries.len() == others.len()
                && entries
                    .iter()
                    .all(|entry| other.get(&entry.key).is_some_and(|other| same(&entry.node, &other.node)))
        }
        (Value::List(list), Value::List(others)) => {
            list.len() == others.len() && list.iter().zip(others).all(|(one, other)| same(one, other))
        }
        (Value::Text(one), Value::Text(other)) => one == other,
        (Value::Number(one), Value::Number(other)) => one.to_bits() == other.to_bits(),
        (Value::Flag(one), Value::Flag(other)) => one == other,
        (Value::Other(one), Value::Other(other)) => one == other,
        _ => false,
    }
}

/// The changed TOML; `None` where it is not as simple as that.
fn in_toml(text: &str, root: &Node, edit: &Edit) -> Option<String> {
    let (last, way) = edit.path.split_last()?;
    match (root.at(&edit.path), &edit.value) {
        (Some(old), Some(new)) => {
            if matches!(old.value, Value::Table(_)) {
                return None;
            }
            let (before, after) = (text.get(..old.span.start)?, text.get(old.span.end..)?);
            Some(format!("{before}{}{after}", toml_value(new)?))
        }
        (Some(old), None) => taken_away(text, root, old),
        (None, Some(new)) => {
            if has_heading(new) || matches!(last, Step::Index(_)) {
                return added(text, root, &edit.path, new);
            }
            let Step::Key(new_key) = last else { return None };
            let heading = &root.at(way)?.span;
            let line_end = if way.is_empty() {
                return Some(format!("{} = {}\n{text}", key(new_key), toml_value(new)?));
            } else {
                let rest = text.get(heading.end..)?;
                heading.end + rest.find('\n').map_or(rest.len(), |newline| newline + 1)
            };
            let (before, after) = (text.get(..line_end)?, text.get(line_end..)?);
            let newline = if before.ends_with('\n') { "" } else { "\n" };
            Some(format!("{before}{newline}{} = {}\n{after}", key(new_key), toml_value(new)?))
        }
        (None, None) => None,
    }
}

/// A table, or several, under headings of their own: after what there is of what they belong to, or at the
/// end of the text.
fn added(text: &str, root: &Node, path: &[Step], new: &Node) -> Option<String> {
    let (last, way) = path.split_last()?;
    let mut block = String::new();
    let heading = path.iter().filter_map(|step| match step {
        Step::Key(name) => Some(key(name)),
        Step::Index(_) => None,
    });
    let heading = heading.collect::<Vec<_>>().join(".");
    match last {
        Step::Key(_) => under_heading(&mut block, &heading, new),
        Step::Index(_) => {
            let list = Node { span: 0..0, value: Value::List([new.clone()].into()) };
            under_heading(&mut block, &heading, &list);
        }
    }
    let end = match root.at(way) {
        Some(owner) if !way.is_empty() => {
            let end = end_of(owner);
            let rest = text.get(end..)?;
            end + rest.find('\n').unwrap_or(rest.len())
        }
        _ => text.trim_end().len(),
    };
    let (before, after) = text.split_at_checked(end)?;
    let after = if after.trim().is_empty() { "\n" } else { after };
    Some(format!("{before}\n\n{}{after}", block.trim_end()))
}

/// Where the last thing ends that is part of a node.
fn end_of(node: &Node) -> usize {
    let inside = match &node.value {
        Value::Table(entries) => entries.iter().map(|entry| end_of(&entry.node)).max(),
        Value::List(list) => list.iter().map(end_of).max(),
        _ => None,
    };
    inside.unwrap_or(0).max(node.span.end)
}

/// The text without a value's line, or without a table from its heading to the next table's.
fn taken_away(text: &str, root: &Node, old: &Node) -> Option<String> {
    let start = text.get(..old.span.start)?.rfind('\n').map_or(0, |newline| newline + 1);
    let end = if matches!(old.value, Value::Table(_)) {
        let mut next = text.len();
        nearest_heading(root, old, &mut next);
        // The comments right above the next heading are about that table.
        let between = text.get(old.span.end..next)?;
        let about_next =
            between.lines().rev().take_while(|line| line.starts_with('#')).map(|line| line.len() + 1);
        next - if next == text.len() { 0 } else { about_next.sum::<usize>() }
    } else {
        let rest = text.get(old.span.end..)?;
        old.span.end + rest.find('\n').map_or(rest.len(), |newline| newline + 1)
    };
    Some(format!("{}{}", text.get(..start)?, text.get(end..)?))
}

/// Finds where the first table begins that stands after `old` and is not part of it.
fn nearest_heading(node: &Node, old: &Node, nearest: &mut usize) {
    if core::ptr::eq(node, old) {
        return;
    }
    if matches!(node.value, Value::Table(_)) && node.span.start > old.span.start {
        *nearest = node.span.start.min(*nearest);
    }
    match &node.value {
        Value::Table(entries) => entries.iter().for_each(|entry| nearest_heading(&entry.node, old, nearest)),
        Value::List(list) => list.iter().for_each(|item| nearest_heading(item, old, nearest)),
        _ => {}
    }
}
