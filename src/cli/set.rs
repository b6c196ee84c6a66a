//! `tablerig set`: what a shot now is from what was measured, which way to correct it, and the file's log.

use std::format;
use std::path::PathBuf;
use std::prelude::rust_2024::*;
use std::vec;

use clap::Args;
use serde_json::{Value, json};

use super::arguments::File;
use super::failure::{Failure, NOT_AS_ASKED};
use super::flags::{about_measured, measured_angle, measured_length, pick_shot};
use super::page::{Page, left, right};
use super::setting::is_stopped;
use super::wording::{Units, decimals, degrees, percent};
use super::{cautioned, load, write};
use crate::caution::overhead::OVERHEAD_CAUTIONS;
use crate::shoot::onset::{Correction, Deviation, OnSet, Verdict, on_set};
use crate::shootfile::append::with_log_entry;
use crate::shootfile::log::MeasuredDraft;
use crate::shootfile::{Form, LogEntry, NamedShot, ShootFile};
use crate::tolerance::{Measured, Measurement};

const EXAMPLES: &str = "\
Give one of three sets, each value with its uncertainty (one standard deviation) after +- or ±:
  --sensor-height and --horizontal-distance
  --sensor-distance and --elevation
  --sensor-height and --sensor-distance
The aim point's height is taken as planned unless it was measured too. Without any measurement the \
last one in the file's log is shown.

Examples:
  tablerig set soup --sensor-height '213.5 cm +- 5 mm' --horizontal-distance '78 cm +- 1 cm' \\
      --roll '0.2° +- 0.1°'
  tablerig set soup shoot.toml --sensor-distance '155 cm +- 5 mm' \\
      --elevation '59.8° +- 0.3°' --write

Exit status: 0 within the tolerances, 1 outside them or not to be told.";

#[derive(Clone, Debug, Args)]
#[command(after_help = EXAMPLES)]
pub(crate) struct SetFlags {
    /// The shot's name
    name: String,
    #[command(flatten)]
    file: File,
    /// Lens axis at the sensor, above the floor
    #[arg(long, value_parser = measured_length, value_name = "LENGTH±LENGTH")]
    sensor_height: Option<Measurement>,
    /// Aim point above the floor; as planned when left out
    #[arg(long, value_parser = measured_length, value_name = "LENGTH±LENGTH")]
    aim_height_above_floor: Option<Measurement>,
    /// From the aim point to the sensor, level
    #[arg(long, value_parser = measured_length, value_name = "LENGTH±LENGTH")]
    horizontal_distance: Option<Measurement>,
    /// From the aim point to the sensor, straight
    #[arg(long, value_parser = measured_length, value_name = "LENGTH±LENGTH")]
    sensor_distance: Option<Measurement>,
    /// Of the lens axis, by an inclinometer on the camera
    #[arg(long, value_parser = measured_angle, value_name = "ANGLE±ANGLE")]
    elevation: Option<Measurement>,
    /// Of the camera, by an inclinometer across it
    #[arg(long, value_parser = measured_angle, value_name = "ANGLE±ANGLE")]
    roll: Option<Measurement>,
    /// Add what was measured to the file's log; the file is exchanged whole, or left as it is
    #[arg(long)]
    write: bool,
    /// What else to write there
    #[arg(long, value_name = "TEXT", requires = "write", value_parser = note)]
    note: Option<String>,
}

/// As the log takes it.
fn note(text: &str) -> Result<String, String> {
    if text.trim().is_empty() { Err("a note is a text, not empty".into()) } else { Ok(text.into()) }
}

impl SetFlags {
    /// Each measurement under its option.
    fn given(&self) -> [(&'static str, Option<Measurement>); 6] {
        [
            ("--sensor-height", self.sensor_height),
            ("--aim-height-above-floor", self.aim_height_above_floor),
            ("--horizontal-distance", self.horizontal_distance),
            ("--sensor-distance", self.sensor_distance),
            ("--elevation", self.elevation),
            ("--roll", self.roll),
        ]
    }
}

/// Holds what was measured against the plan.
pub(crate) fn set(page: &mut Page, flags: &SetFlags) -> Result<(Value, u8), Failure> {
    let file = load(flags.file.path.as_deref())?;
    let shot = pick_shot(&file, &flags.name)?;
    let (measured, roll, from_log) = measured(flags, &file, shot)?;
    let on_set = on_set(&shot.brief.shot, &shot.brief.lens, &shot.plan, &measured, roll)
        .map_err(|fault| about_measured(&fault, &flags.given()))?;
    print(page, shot, &on_set);
    if from_log {
        page.gap();
        page.paragraph("As last written in the file's log.");
    }
    let mut written = None;
    if flags.write {
        let entry = LogEntry {
            shot: shot.name.clone(),
            measured: Some(measured),
            roll_deg: roll,
            note: flags.note.clone(),
        };
        let path = append(flags, &entry)?;
        page.gap();
        page.paragraph(&format!("Written to the log of {}, entry {}.", path.display(), file.log.len() + 1));
        written = Some(path);
    }
    cautioned::usual(page, shot.plan.overhead);
    let value = json!({
        "shot": shot.name,
        "given": measured,
        "roll_deg": roll,
        "on_set": on_set,
        "from_log": from_log,
        "written": written,
        "usual_cautions": OVERHEAD_CAUTIONS,
    });
    Ok((value, if on_set.verdict == Verdict::Inside { 0 } else { NOT_AS_ASKED }))
}

/// What was measured: given here, or last in the log.
fn measured(
    flags: &SetFlags,
    file: &ShootFile,
    shot: &NamedShot,
) -> Result<(Measured, Option<Measurement>, bool), Failure> {
    let draft = MeasuredDraft {
        sensor_height_mm: flags.sensor_height,
        aim_height_above_floor_mm: flags.aim_height_above_floor,
        horizontal_distance_mm: flags.horizontal_distance,
        sensor_distance_mm: flags.sensor_distance,
        elevation_deg: flags.elevation,
    };
    if draft.is_empty() && flags.roll.is_none() && !flags.write {
        let last = file.log.iter().rev().filter(|entry| entry.shot == shot.name);
        let last = last.filter_map(|entry| Some((entry.measured?, entry.roll_deg)));
        return last.map(|(measured, roll)| (measured, roll, true)).next().ok_or_else(|| {
            Failure::input(format!(
                "nothing was measured, and the log has nothing of {}; see --help",
                shot.name
            ))
        });
    }
    match draft.set(Some(shot.plan.pose.aim.z_mm)) {
        Some(measured) => Ok((measured, flags.roll, false)),
        None => Err(Failure::input(
            "these measurements do not tell where the camera is: give --sensor-distance and --elevation, or \
             --sensor-height and --horizontal-distance, or --sensor-height and --sensor-distance",
        )),
    }
}

/// Adds the entry to the file.
fn append(flags: &SetFlags, entry: &LogEntry) -> Result<PathBuf, Failure> {
    let path = match &flags.file.path {
        Some(path) if path.as_os_str() != "-" => path.clone(),
        _ => return Err(Failure::input("--write needs a shoot file of your own to write to")),
    };
    let unread = |error| Failure::input(format!("{} cannot be read: {error}", path.display()));
    // A pipe would be read twice, and never end.
    if !std::fs::metadata(&path).map_err(unread)?.is_file() {
        return Err(Failure::input(format!("--write needs an ordinary file; {} is none", path.display())));
    }
    let bytes = std::fs::read(&path).map_err(unread)?;
    let text = String::from_utf8_lossy(&bytes);
    let (mark, text) = match text.strip_prefix('\u{feff}') {
        Some(rest) => ("\u{feff}", rest),
        None => ("", text.as_ref()),
    };
    let named_json = path.extension().is_some_and(|extension| extension.eq_ignore_ascii_case("json"));
    let form = if named_json { Form::Json } else { Form::of(text) };
    let source = super::source::Source::text(&path.display().to_string(), text.into());
    let added = with_log_entry(text, form, entry).map_err(|problems| Failure::file(&problems, &source))?;
    write::exchanged(&path, &bytes, format!("{mark}{added}").as_bytes())?;
    Ok(path)
}

/// The verdict as a word.
fn word(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Inside => "within",
        Verdict::Undecided => "undecided",
        Verdict::Outside => "outside",
    }
}

fn print(page: &mut Page, shot: &NamedShot, on_set: &OnSet) {
    let units = page.units;
    page.heading(&format!(
        "{}: {}",
        shot.name,
        match on_set.verdict {
            Verdict::Inside => "within its tolerances",
            Verdict::Undecided => "measured too coarsely to tell whether it is within its tolerances",
            Verdict::Outside => "outside its tolerances",
        }
    ));
    let (asked, plan, real) = (&shot.brief.shot, &shot.plan, &on_set.real);
    if is_stopped(plan) {
        cautioned::stops(page, shot);
        page.paragraph("Cannot be set up as asked: what follows only says where the camera is.");
    }
    let off = |deviation: &Deviation, one: &dyn Fn(f64) -> String| {
        let sign = if deviation.off > 0.0 { "+" } else { "" };
        [
            format!("{sign}{} ± {}", one(deviation.off), one(deviation.uncertainty)),
            format!("± {}", one(deviation.tolerance)),
            word(deviation.verdict).into(),
        ]
    };
    let fine_degrees = |deg: f64| format!("{}°", decimals(deg, 2));
    let share = |share: f64| percent(share);
    let mut rows = Vec::new();
    let mut row = |name: &str, planned: String, now: String, off: [String; 3]| {
        let mut row = vec![name.into(), planned, now];
        row.extend(off);
        rows.push(row);
    };
    row(
        "elevation",
        degrees(asked.elevation_deg),
        fine_degrees(real.elevation_deg.value),
        off(&on_set.elevation_deg, &fine_degrees),
    );
    row(
        "frame width",
        units.length(plan.frame_width_mm),
        units.length(real.frame_width_mm.value),
        off(&on_set.frame_width_share, &share),
    );
    if let Some(roll) = &on_set.roll_deg {
        row("roll", degrees(0.0), fine_degrees(roll.off), off(roll, &fine_degrees));
    }
    let columns = [left(""), right("Planned"), right("Is"), right("Off"), right("Allowed"), left("Verdict")];
    page.figures(&columns, rows);
    page.paragraph("±: one standard deviation; two of them on either side count as possible.");
    page.heading(match is_stopped(plan) {
        true => "What correcting it would take, if it could be set up",
        false => "To correct",
    });
    page.list(&corrections(&on_set.correction, units));
}

/// Less than this no tape shows.
const TAPE_MM: f64 = 0.5;

/// How to move the camera, in words.
pub(crate) fn corrections(correction: &Correction, units: Units) -> Vec<String> {
    let Correction { up_mm, away_mm, look_down_deg, roll_deg } = *correction;
    let length = |what: &str, mm: f64, over: &str, under: &str| match mm {
        mm if mm.abs() < TAPE_MM => format!("{what}: as it is"),
        mm => format!("{what}: {} {}", units.length(mm.abs()), if mm < 0.0 { under } else { over }),
    };
    let mut lines = vec![
        length("height", up_mm, "up", "down"),
        length("level distance", away_mm, "away from the aim point", "closer to the aim point"),
    ];
    if look_down_deg != 0.0 {
        let way = if look_down_deg < 0.0 { "up" } else { "down" };
        lines.push(format!(
            "and aim at the aim point again: it then looks {}° further {way}",
            decimals(look_down_deg.abs(), 2)
        ));
    }
    if roll_deg != 0.0 {
        lines.push(format!(
            "roll it back by {}°, against the way it was measured",
            decimals(roll_deg.abs(), 2)
        ));
    }
    lines
}
