//! A shoot file in JSON: the same tables and keys as in TOML.

use std::borrow::ToOwned;
use std::format;
use std::prelude::rust_2024::*;
use std::vec;

use jsonc_parser::ast;
use jsonc_parser::common::Ranged;
use jsonc_parser::{CollectOptions, ParseOptions, parse_to_ast};

use super::problem::{Problem, ProblemKind};
use super::tree::{Entry, Node, Value};

const STRICT: ParseOptions = ParseOptions {
    allow_comments: false,
    allow_loose_object_property_names: false,
    allow_trailing_commas: false,
    allow_missing_commas: false,
    allow_single_quoted_strings: false,
    allow_hexadecimal_numbers: false,
    allow_unary_plus_numbers: false,
    allow_bare_decimal_point_numbers: false,
    allow_non_finite_numbers: false,
    allow_extended_string_escapes: false,
};

/// Reads the text, or says what is not JSON about it.
pub(crate) fn read(text: &str) -> Result<Node, Vec<Problem>> {
    let parsed = parse_to_ast(text, &CollectOptions::default(), &STRICT).map_err(|error| {
        let span = error.range().start..error.range().end;
        let rest = text.get(span.end..).unwrap_or_default();
        // An unterminated object is reported where it begins, which says nothing about a short file.
        let message = format!("{}", error.kind());
        let cut = message.starts_with("Unterminated") || rest.trim().is_empty();
        let problem = Problem::new(ProblemKind::NotReadable, "this is not JSON", span, message);
        vec![if cut { problem.help("the file may have been cut short") } else { problem }]
    })?;
    let mut problems: Vec<Problem> = not_allowed(text).into_iter().collect();
    let root = match &parsed.value {
        Some(value) => node(value, &mut problems),
        None => Node { span: 0..0, value: Value::Table(Vec::new()) },
    };
    if !matches!(root.value, Value::Table(_)) {
        let label = format!("this is {}", root.value.kind());
        problems.push(Problem::new(
            ProblemKind::WrongKind,
            "a shoot file in JSON is one object",
            root.span.clone(),
            label,
        ));
    }
    if problems.is_empty() { Ok(root) } else { Err(problems) }
}

/// The first character that JSON does not allow where it stands, though the parser lets it pass: a control character
/// as it is in a text between quotes, and outside any white space but JSON's own four.
fn not_allowed(text: &str) -> Option<Problem> {
    let (mut inside, mut escaped) = (false, false);
    for (at, c) in text.char_indices() {
        let wants = if inside && c < ' ' {
            "must be written as an escape"
        } else if !inside && c.is_whitespace() && !matches!(c, ' ' | '\t' | '\n' | '\r') {
            "is no white space to JSON"
        } else {
            if c == '"' && !escaped {
                inside = !inside;
            }
            escaped = inside && c == '\\' && !escaped;
            continue;
        };
        let label = format!("U+{:04X} {wants}", u32::from(c));
        let span = at..at + c.len_utf8();
        return Some(Problem::new(ProblemKind::NotReadable, "this is not JSON", span, label));
    }
    None
}

fn node(value: &ast::Value<'_>, problems: &mut Vec<Problem>) -> Node {
    let mut span = value.range().start..value.range().end;
    let value = match value {
        ast::Value::StringLit(text) => Value::Text(text.value.clone().into_owned()),
        // What JSON calls a number Rust reads; 1e999 becomes infinite and is refused as such.
        ast::Value::NumberLit(number) => Value::Number(number.value.parse().unwrap_or(f64::NAN)),
        ast::Value::BooleanLit(flag) => Value::Flag(flag.value),
        ast::Value::NullKeyword(_) => Value::Other("null"),
        ast::Value::Array(list) => {
            Value::List(list.elements.iter().map(|element| node(element, problems)).collect())
        }
        ast::Value::Object(object) => {
            span.end = span.start + 1;
            table(object, problems)
        }
    };
    Node { span, value }
}

fn table(object: &ast::Object<'_>, problems: &mut Vec<Problem>) -> Value {
    let mut entries: Vec<Entry> = Vec::new();
    for property in &object.properties {
        let key = property.name.as_str().to_owned();
        let key_span = property.name.range().start..property.name.range().end;
        if entries.iter().any(|entry| entry.key == key) {
            problems.push(Problem::new(
                ProblemKind::Repeated,
                format_args!("`{key}` is given twice"),
                key_span,
                "already given above",
            ));
            continue;
        }
        let node = node(&property.value, problems);
        entries.push(Entry { key, key_span, node });
    }
    Value::Table(entries)
}
