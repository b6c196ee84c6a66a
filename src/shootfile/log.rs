//! The rows of `[[log]]`: what was measured on the set; and measured values with their uncertainty.

use std::format;
use std::prelude::rust_2024::*;

use super::field::{Field, Name, give};
use super::problem::{Problem, ProblemKind};
use super::quantity;
use super::reading::Reading;
use super::suggest;
use super::tree::{Entry, Node, Value};
use super::unit::Dimension;
use crate::range::{self, Range};
use crate::tolerance::{Measured, Measurement};

/// One entry: what a shot was measured to be.
#[derive(Clone, Debug, PartialEq, serde::Serialize)]
pub struct LogEntry {
    /// The shot's name.
    pub shot: String,
    /// What was measured; `None` where only a note or the roll was written down.
    pub measured: Option<Measured>,
    /// How far the camera was rolled.
    pub roll_deg: Option<Measurement>,
    /// What was noted.
    pub note: Option<String>,
}

/// Measurements while they are being collected.
#[derive(Clone, Copy, Debug, Default)]
pub(crate) struct MeasuredDraft {
    pub(crate) sensor_height_mm: Option<Measurement>,
    pub(crate) aim_height_above_floor_mm: Option<Measurement>,
    pub(crate) horizontal_distance_mm: Option<Measurement>,
    pub(crate) sensor_distance_mm: Option<Measurement>,
    pub(crate) elevation_deg: Option<Measurement>,
}

/// Which measurements go together.
pub(crate) const SETS: &str = "sensor_height_mm and horizontal_distance_mm, or sensor_distance_mm and elevation_deg, \
                               or sensor_height_mm and sensor_distance_mm";

impl MeasuredDraft {
    /// Whether there is nothing.
    pub(crate) fn is_empty(&self) -> bool {
        self.sensor_height_mm.is_none()
            && self.aim_height_above_floor_mm.is_none()
            && self.horizontal_distance_mm.is_none()
            && self.sensor_distance_mm.is_none()
            && self.elevation_deg.is_none()
    }

    /// The set that they make; `None` where they make none. A planned aim point's height stands in where
    /// none was measured.
    pub(crate) fn set(&self, planned_aim_mm: Option<f64>) -> Option<Measured> {
        let planned = planned_aim_mm.map(|value| Measurement { value, uncertainty: 0.0 });
        let aim = self.aim_height_above_floor_mm.or(planned);
        match (
            self.sensor_height_mm,
            self.horizontal_distance_mm,
            self.sensor_distance_mm,
            self.elevation_deg,
        ) {
            (Some(sensor_height_mm), Some(horizontal_distance_mm), None, None) => {
                Some(Measured::HeightAndDistance {
                    sensor_height_mm,
                    aim_height_above_floor_mm: aim?,
                    horizontal_distance_mm,
                })
            }
            (None, None, Some(sensor_distance_mm), Some(elevation_deg))
                if self.aim_height_above_floor_mm.is_none() =>
            {
                Some(Measured::TapeAndInclinometer { sensor_distance_mm, elevation_deg })
            }
            (Some(sensor_height_mm), None, Some(sensor_distance_mm), None) => Some(Measured::HeightAndTape {
                sensor_height_mm,
                aim_height_above_floor_mm: aim?,
                sensor_distance_mm,
            }),
            _ => None,
        }
    }
}

/// An entry while it is being read.
#[derive(Clone, Debug, Default)]
pub(crate) struct LogDraft {
    shot: Option<Name>,
    note: Option<String>,
    measured: MeasuredDraft,
    roll_deg: Option<Measurement>,
}

const LENGTH: &str = "a length with its uncertainty, such as \"213.5 cm ± 5 mm\"";
const ANGLE: &str = "an angle with its uncertainty, such as \"59.6° ± 0.3°\"";

macro_rules! measured {
    ($key:literal, $range:ident, $allowed:ident, $($field:ident).+) => {
        Field::own($key, $allowed, range::$range.meaning, |reading, _, entry, draft: &mut LogDraft| {
            draft.$($field).+ = measurement(reading, entry, &range::$range);
        })
    };
}

pub(crate) static LOG: &[Field<LogDraft>] = &[
    Field::text("shot", "the name of the shot that was measured", give!(LogDraft, shot)),
    Field::text("note", "what else there is to say", |d: &mut LogDraft, note| d.note = Some(note.text))
        .otherwise("none"),
    measured!("sensor_height_mm", MEASURED_HEIGHT_MM, LENGTH, measured.sensor_height_mm).among(SETS),
    measured!(
        "aim_height_above_floor_mm",
        MEASURED_AIM_HEIGHT_MM,
        LENGTH,
        measured.aim_height_above_floor_mm
    )
    .otherwise("as planned"),
    measured!("horizontal_distance_mm", MEASURED_DISTANCE_MM, LENGTH, measured.horizontal_distance_mm)
        .among(SETS),
    measured!("sensor_distance_mm", MEASURED_SENSOR_DISTANCE_MM, LENGTH, measured.sensor_distance_mm)
        .among(SETS),
    measured!("elevation_deg", MEASURED_ELEVATION_DEG, ANGLE, measured.elevation_deg).among(SETS),
    measured!("roll_deg", MEASURED_ROLL_DEG, ANGLE, roll_deg).otherwise("not measured"),
];

/// A measured value as it is written: `162 cm ± 5 mm`, `1620 mm +- 5 mm`; without the second half it counts
/// as exact.
pub(crate) fn parse(text: &str, parse: impl Fn(&str) -> Result<f64, String>) -> Result<Measurement, String> {
    let (value, uncertainty) = match halves(text) {
        Some((value, uncertainty)) => (parse(value)?, parse(uncertainty)?),
        None => (parse(text)?, 0.0),
    };
    Ok(Measurement { value, uncertainty })
}

/// Value and uncertainty, where both are written.
fn halves(text: &str) -> Option<(&str, &str)> {
    ["±", "+-", "+/-"].iter().find_map(|sign| text.split_once(sign))
}

static PAIR: &[Field<(Option<Entry>, Option<Entry>)>] = &[
    Field::own(
        "value",
        "a number",
        "what was read",
        |_, _, entry, pair: &mut (Option<Entry>, Option<Entry>)| {
            pair.0 = Some(entry.clone());
        },
    ),
    Field::own(
        "uncertainty",
        "a number",
        "one standard deviation",
        |_, _, entry, pair: &mut (Option<Entry>, Option<Entry>)| {
            pair.1 = Some(entry.clone());
        },
    )
    .otherwise("0"),
];

/// A bare number, a text with its unit and uncertainty, or a table of `value` and `uncertainty`.
pub(crate) fn measurement(reading: &mut Reading, entry: &Entry, range: &Range) -> Option<Measurement> {
    let dimension = Dimension::of(range.unit, range.field);
    let of_uncertainty = match dimension {
        Dimension::Angle => &range::MEASURED_UNCERTAINTY_DEG,
        _ => &range::MEASURED_UNCERTAINTY_MM,
    };
    let written = match &entry.node.value {
        Value::Table(_) => {
            let mut pair = (None, None);
            let whose = format!("`{}`", entry.key);
            reading.table(&whose, &entry.key_span, &entry.node, PAIR, &mut pair);
            let value = reading.number(&pair.0?, range, range.meaning)?;
            let uncertainty = match &pair.1 {
                Some(entry) => reading.number(entry, of_uncertainty, of_uncertainty.meaning)?,
                None => 0.0,
            };
            return Some(Measurement { value, uncertainty });
        }
        Value::Text(text) if halves(text).is_some() => {
            match parse(text, |half| quantity::parse(half, dimension)) {
                Ok(measurement) => measurement,
                Err(wrong) => {
                    let title = format!("`{}` cannot be read as {}", entry.key, dimension.noun());
                    let problem =
                        Problem::new(ProblemKind::NoQuantity, title, entry.node.span.clone(), wrong);
                    let how = if dimension == Dimension::Angle { ANGLE } else { LENGTH };
                    let problem = problem.note(format_args!("{}: {}", entry.key, range.meaning));
                    reading.report(problem.help(format_args!("write {how}")));
                    return None;
                }
            }
        }
        // As any other quantity, with its messages.
        _ => Measurement { value: reading.number(entry, range, range.meaning)?, uncertainty: 0.0 },
    };
    let half = |value: f64| Entry {
        node: Node { value: Value::Number(value), ..entry.node.clone() },
        ..entry.clone()
    };
    let value = reading.number(&half(written.value), range, range.meaning)?;
    let key = format!("{}: the uncertainty", entry.key);
    let uncertainty = Entry { key, ..half(written.uncertainty) };
    let uncertainty = reading.number(&uncertainty, of_uncertainty, of_uncertainty.meaning)?;
    Some(Measurement { value, uncertainty })
}

/// Reads the log. `planned` tells each shot's name with the height of its aim point above the floor.
pub(crate) fn entries(reading: &mut Reading, root: &Node, planned: &[(&str, f64)]) -> Vec<LogEntry> {
    let Some(entry) = root.get("log") else { return Vec::new() };
    let Value::List(list) = &entry.node.value else {
        let label = format!("this is {}", entry.node.value.kind());
        let problem = Problem::new(
            ProblemKind::WrongKind,
            "the log is a list of tables",
            entry.node.span.clone(),
            label,
        );
        reading.report(problem.help("in TOML every entry has its own [[log]], with two brackets"));
        return Vec::new();
    };
    let names: Vec<&str> = planned.iter().map(|(name, _)| *name).collect();
    let mut entries = Vec::new();
    for (index, node) in list.iter().enumerate() {
        let whose = format!("entry {} of the log", index + 1);
        let mut draft = LogDraft::default();
        if !reading.table(&whose, &node.span, node, LOG, &mut draft) {
            continue;
        }
        let Some(shot) = &draft.shot else { continue };
        let Some((_, aim)) = planned.iter().find(|(name, _)| *name == shot.text) else {
            let title = format!("there is no shot \"{}\"", shot.text);
            let problem =
                Problem::new(ProblemKind::UnknownName, title, shot.span.clone(), "no [[shot]] has this name");
            reading.report(suggest::advise(problem, &shot.text, &names, "the file has"));
            continue;
        };
        let measured = draft.measured.set(Some(*aim));
        if measured.is_none() && !draft.measured.is_empty() {
            let title = format!("the measurements of {whose} make no set");
            let problem = Problem::new(ProblemKind::Conflicting, title, node.span.clone(), "measured here");
            reading.report(problem.help(format_args!("give {SETS}")));
            continue;
        }
        let (roll_deg, note) = (draft.roll_deg, draft.note.clone());
        entries.push(LogEntry { shot: shot.text.clone(), measured, roll_deg, note });
    }
    entries
}
