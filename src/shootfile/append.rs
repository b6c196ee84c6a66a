//! Adds an entry to a shoot file's log, everything else staying as it is, byte for byte.

use std::borrow::ToOwned;
use std::format;
use std::prelude::rust_2024::*;
use std::string::ToString;

use toml_writer::{ToTomlValue, TomlStringBuilder};

use super::log::LogEntry;
use super::problem::{Problem, ProblemKind};
use super::tree::Value;
use super::{Form, parse, read};
use crate::tolerance::{Measured, Measurement};

/// The text with an entry added to its log, read again to be sure.
///
/// Refused: a text that is not a shoot file, and one whose log is written in a way that cannot be added to
/// without rewriting it.
pub fn with_log_entry(text: &str, form: Form, entry: &LogEntry) -> Result<String, Vec<Problem>> {
    let known = read(text, form)?.log.len();
    let added = match form {
        Form::Toml => in_toml(text, entry),
        Form::Json => in_json(text, entry)?,
    };
    match read(&added, form) {
        Ok(file) if file.log.len() == known + 1 && file.log.last() == Some(entry) => Ok(added),
        _ => {
            let problem = Problem::general(
                ProblemKind::Conflicting,
                "the file's log cannot be added to as it is written",
            );
            Err([problem.help("in TOML every entry has its own [[log]], at the end of the file")].into())
        }
    }
}

/// The entry's keys, each with its text.
fn values(entry: &LogEntry) -> Vec<(&'static str, String)> {
    let mut values = Vec::from([("shot", entry.shot.clone())]);
    let mut length = |key, measured: &Measurement| values.push((key, written(measured, "mm")));
    match &entry.measured {
        None => {}
        Some(Measured::HeightAndDistance {
            sensor_height_mm,
            aim_height_above_floor_mm,
            horizontal_distance_mm,
        }) => {
            length("sensor_height_mm", sensor_height_mm);
            length("aim_height_above_floor_mm", aim_height_above_floor_mm);
            length("horizontal_distance_mm", horizontal_distance_mm);
        }
        Some(Measured::HeightAndTape { sensor_height_mm, aim_height_above_floor_mm, sensor_distance_mm }) => {
            length("sensor_height_mm", sensor_height_mm);
            length("aim_height_above_floor_mm", aim_height_above_floor_mm);
            length("sensor_distance_mm", sensor_distance_mm);
        }
        Some(Measured::TapeAndInclinometer { sensor_distance_mm, elevation_deg }) => {
            length("sensor_distance_mm", sensor_distance_mm);
            values.push(("elevation_deg", written(elevation_deg, "deg")));
        }
    }
    if let Some(roll) = &entry.roll_deg {
        values.push(("roll_deg", written(roll, "deg")));
    }
    if let Some(note) = &entry.note {
        values.push(("note", note.clone()));
    }
    values
}

fn written(measured: &Measurement, unit: &str) -> String {
    let Measurement { value, uncertainty } = measured;
    if *uncertainty == 0.0 {
        format!("{value} {unit}")
    } else {
        format!("{value} {unit} ± {uncertainty} {unit}")
    }
}

/// At the end of the text, under its own heading, with the text's own kind of line end.
fn in_toml(text: &str, entry: &LogEntry) -> String {
    let end = if text.contains("\r\n") { "\r\n" } else { "\n" };
    let mut added = text.to_owned();
    if !added.is_empty() && !added.ends_with('\n') {
        added.push_str(end);
    }
    added.push_str(&format!("{end}[[log]]{end}"));
    for (key, value) in values(entry) {
        let value = TomlStringBuilder::new(&value).as_basic().to_toml_value();
        added.push_str(&format!("{key} = {value}{end}"));
    }
    added
}

/// At the end of the list `log`, or of the whole object.
fn in_json(text: &str, entry: &LogEntry) -> Result<String, Vec<Problem>> {
    let pairs: Vec<String> = values(entry)
        .iter()
        .map(|(key, value)| format!("\"{key}\": {}", serde_json::Value::from(value.as_str())))
        .collect();
    let object = format!("{{ {} }}", pairs.join(", "));
    let tree = parse(text, Form::Json)?;
    let (at, item) = match tree.get("log").map(|entry| &entry.node) {
        // Before the bracket that closes the list.
        Some(node) if matches!(node.value, Value::List(_)) => {
            let inside = text.get(..node.span.end.saturating_sub(1)).unwrap_or_default().trim_end();
            let comma = if inside.ends_with('[') { "" } else { "," };
            (inside.len(), format!("{comma}\n    {object}"))
        }
        _ => {
            let inside = text.trim_end().strip_suffix('}').unwrap_or_default().trim_end();
            let comma = if inside.ends_with('{') { "" } else { "," };
            (inside.len(), format!("{comma}\n  \"log\": [\n    {object}\n  ]"))
        }
    };
    let (before, after) = text.split_at_checked(at).unwrap_or((text, ""));
    Ok([before, &item, after].map(ToString::to_string).concat())
}
