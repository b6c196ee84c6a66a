//! A shoot file in TOML.

use std::prelude::rust_2024::*;
use std::string::ToString;

use toml::de::{DeInteger, DeTable, DeValue};

use super::problem::{Problem, ProblemKind};
use super::tree::{Entry, Node, Value};

/// Reads the text, or says everything that is not TOML about it.
pub(crate) fn read(text: &str) -> Result<Node, Vec<Problem>> {
    let (document, errors) = DeTable::parse_recoverable(text);
    if errors.is_empty() {
        return Ok(Node { span: 0..0, value: table(document.get_ref()) });
    }
    // What is left open inside something left open is said by the outermost.
    let mut problems: Vec<Problem> = Vec::new();
    for error in &errors {
        let problem = problem(error, text);
        if problems.last().is_none_or(|last| last.start() != problem.start()) {
            problems.push(problem);
        }
    }
    Err(problems)
}

fn problem(error: &toml::de::Error, text: &str) -> Problem {
    let span = error.span().unwrap_or(text.len()..text.len());
    let message = error.message();
    let at_end = text.get(span.start..).is_none_or(|rest| rest.trim().is_empty());
    if message == "duplicate key" {
        let name = text.get(span.clone()).unwrap_or_default();
        return Problem::new(
            ProblemKind::Repeated,
            format_args!("`{name}` is given twice"),
            span,
            "already given above",
        )
        .help("give every camera, lens, table, subject, support and bay its own name, and every key once");
    }
    let problem = Problem::new(ProblemKind::NotReadable, "this is not TOML", span, message);
    if message.starts_with("string values must be quoted") {
        problem.help("put a text, or a number with a unit, between quotes: \"60 cm\"")
    } else if at_end {
        problem.help("the file may have been cut short here")
    } else {
        problem
    }
}

fn table(table: &DeTable<'_>) -> Value {
    let entry = |(key, value): (&toml::Spanned<_>, &toml::Spanned<DeValue<'_>>)| -> Entry {
        let key: &toml::Spanned<std::borrow::Cow<'_, str>> = key;
        Entry { key: key.get_ref().to_string(), key_span: key.span(), node: node(value) }
    };
    Value::Table(table.iter().map(entry).collect())
}

fn node(value: &toml::Spanned<DeValue<'_>>) -> Node {
    let span = value.span();
    let value = match value.get_ref() {
        DeValue::String(text) => Value::Text(text.to_string()),
        DeValue::Integer(integer) => Value::Number(whole(integer)),
        // Every TOML float is one of Rust's; if one were not, it would be refused as not finite.
        DeValue::Float(float) => Value::Number(float.as_str().parse().unwrap_or(f64::NAN)),
        DeValue::Boolean(flag) => Value::Flag(*flag),
        DeValue::Datetime(_) => Value::Other("a date"),
        DeValue::Array(list) => Value::List(list.iter().map(node).collect()),
        DeValue::Table(inner) => table(inner),
    };
    Node { span, value }
}

fn whole(integer: &DeInteger<'_>) -> f64 {
    if integer.radix() == 10 {
        return integer.as_str().parse().unwrap_or(f64::NAN);
    }
    i64::from_str_radix(integer.as_str(), integer.radix()).map_or(f64::INFINITY, |value| value as f64)
}
