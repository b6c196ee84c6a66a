//! `tablerig sweep`: one quantity of a shot varied, everything else as it is.

use std::format;
use std::path::PathBuf;
use std::prelude::rust_2024::*;
use std::vec;

use clap::{Args, ValueEnum};
use serde_json::json;

use super::failure::Failure;
use super::flags::pick_shot;
use super::load;
use super::page::{Page, left, right, word};
use super::setting::{BRACKETS, is_stopped, marked, tilt_limits};
use super::wording::{Units, column_degrees, degrees, f_number, factor, on_sensor, tips_at};
use crate::brief::{Brief, Framing};
use crate::caution::Level;
use crate::caution::overhead::OVERHEAD_CAUTIONS;
use crate::fault::Fault;
use crate::plan::{Plan, plan};
use crate::range;
use crate::sheet::cautions::sentence;
use crate::shootfile::field::plain;
use crate::shootfile::quantity;
use crate::shootfile::unit::Dimension;
use crate::shootfile::{NamedShot, ShootFile};

/// More rows than this nobody reads, and a slip of the finger should not fill the disk.
const MOST_ROWS: u32 = 1000;

const EXAMPLES: &str = "\
Examples:
  tablerig sweep elevation --from 30 --to 90 --step 10 --shot soup
  tablerig sweep frame-width --from '20 cm' --to '60 cm' --steps 8 --shot soup shoot.toml
  tablerig sweep lens --shot breakfast shoot.toml

A swept focal length belongs to a lens that keeps it as it focuses: closest focus and largest magnification \
of the shot's lens are left out. The exit status is 0 even if some rows cannot be done.";

/// What is varied.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Quantity {
    /// How high the camera stands
    #[value(alias = "elevation_deg")]
    Elevation,
    /// How much the frame takes in
    #[value(alias = "frame_width_mm")]
    FrameWidth,
    /// The lens, by any focal length
    #[value(alias = "focal_length_mm")]
    FocalLength,
    /// The lens, by every lens of the file
    Lens,
}

#[derive(Debug, Args)]
#[command(after_help = EXAMPLES)]
pub(crate) struct SweepFlags {
    /// What to vary
    #[arg(value_enum)]
    quantity: Quantity,
    /// Shoot file, TOML or JSON; - for standard input; the built-in demo when left out
    #[arg(value_name = "FILE")]
    file: Option<PathBuf>,
    /// The shot to vary; the first of the file when left out
    #[arg(long, value_name = "NAME")]
    shot: Option<String>,
    /// First value
    #[arg(long, value_name = "VALUE")]
    from: Option<String>,
    /// Last value
    #[arg(long, value_name = "VALUE")]
    to: Option<String>,
    /// From one value to the next
    #[arg(long, value_name = "VALUE", conflicts_with = "steps")]
    step: Option<String>,
    /// How many steps from the first value to the last
    #[arg(long, value_name = "COUNT", value_parser = count)]
    steps: Option<u32>,
}

fn count(text: &str) -> Result<u32, String> {
    let whole = text.trim().parse().ok().filter(|count| (1..MOST_ROWS).contains(count));
    whole.ok_or_else(|| format!("expected a whole number, 1 to {}", MOST_ROWS - 1))
}

/// A varied shot.
#[derive(Debug)]
pub(crate) struct Swept {
    quantity: Quantity,
    shot: String,
    rows: Vec<SweptRow>,
}

#[derive(Debug)]
struct SweptRow {
    value: f64,
    lens: Option<String>,
    brief: Brief,
    plan: Plan,
}

/// Varies a shot.
pub(crate) fn sweep(flags: &SweepFlags) -> Result<Swept, Failure> {
    let file = load(flags.file.as_deref())?;
    let shot = match &flags.shot {
        Some(name) => pick_shot(&file, name)?,
        None => file.shots.first().ok_or_else(|| Failure::input("the file has no shots"))?,
    };
    let rows = match flags.quantity {
        Quantity::Lens => lenses(flags, &file, shot)?,
        _ => values(flags)?
            .into_iter()
            .enumerate()
            // Whatever lies outside a range does so at one of its ends.
            .map(|(index, value)| {
                varied(flags.quantity, shot, value, if index == 0 { "--from" } else { "--to" })
            })
            .collect::<Result<_, _>>()?,
    };
    Ok(Swept { quantity: flags.quantity, shot: shot.name.clone(), rows })
}

fn lenses(flags: &SweepFlags, file: &ShootFile, shot: &NamedShot) -> Result<Vec<SweptRow>, Failure> {
    if flags.from.is_some() || flags.to.is_some() || flags.step.is_some() || flags.steps.is_some() {
        return Err(Failure::input(
            "a sweep over the file's lenses takes no --from, --to, --step or --steps",
        ));
    }
    let mut rows = Vec::new();
    for name in file.gear.lenses.names() {
        let Some(lens) = file.gear.lenses.get(name) else { continue };
        let brief = Brief { lens, ..shot.brief };
        let plan = plan(&brief).map_err(|fault| Failure::about(&fault, fault.field))?;
        rows.push(SweptRow { value: lens.focal_length_mm, lens: Some(name.into()), brief, plan });
    }
    rows.sort_by(|a, b| a.value.total_cmp(&b.value));
    Ok(rows)
}

/// The shot at one value, which was given by `option`.
fn varied(quantity: Quantity, shot: &NamedShot, value: f64, option: &str) -> Result<SweptRow, Failure> {
    let mut brief = shot.brief;
    let field = match quantity {
        Quantity::Elevation => {
            brief.shot.elevation_deg = value;
            range::ELEVATION_DEG.field
        }
        Quantity::FrameWidth => {
            brief.shot.framing = Framing::FrameWidthMm(value);
            range::FRAME_WIDTH_MM.field
        }
        Quantity::FocalLength | Quantity::Lens => {
            brief.lens.focal_length_mm = value;
            brief.lens.closest_focus_mm = None;
            brief.lens.largest_magnification = None;
            range::FOCAL_LENGTH_MM.field
        }
    };
    // What is refused besides is the file's own.
    let refused =
        |fault: Fault| Failure::about(&fault, if fault.field == field { option } else { fault.field });
    Ok(SweptRow { value, lens: None, brief, plan: plan(&brief).map_err(refused)? })
}

/// The values of a sweep, each computed from the first, so that nothing adds up.
fn values(flags: &SweepFlags) -> Result<Vec<f64>, Failure> {
    let dimension = match flags.quantity {
        Quantity::Elevation => Dimension::Angle,
        _ => Dimension::Length,
    };
    let read = |name: &str, text: &Option<String>| -> Result<f64, Failure> {
        let Some(text) = text else { return Err(Failure::input(format!("--{name} is needed"))) };
        let bare = text.trim().parse::<f64>().ok().filter(|value| value.is_finite());
        match bare {
            Some(value) => Ok(value),
            None => quantity::parse(text, dimension)
                .map_err(|wrong| Failure::input(format!("--{name} \"{text}\": {wrong}"))),
        }
    };
    let (from, to) = (read("from", &flags.from)?, read("to", &flags.to)?);
    let (count, step) = match (&flags.step, flags.steps) {
        (Some(_), _) => {
            let step = read("step", &flags.step)?;
            if step <= 0.0 {
                return Err(Failure::input(format!(
                    "--step {} is not over 0; the direction goes by --from and --to",
                    plain(step)
                )));
            }
            // The last value counts as reached where only rounding keeps it from it.
            let count = crate::number::floor((to - from).abs() / step + 1e-9);
            (count, if to < from { -step } else { step })
        }
        (None, Some(steps)) => (f64::from(steps), (to - from) / f64::from(steps)),
        (None, None) => return Err(Failure::input("--step or --steps is needed")),
    };
    if count >= f64::from(MOST_ROWS) || count.is_nan() {
        return Err(Failure::input(format!("that makes more than {MOST_ROWS} rows: take a longer --step")));
    }
    Ok((0..=count as u32).map(|index| from + step * f64::from(index)).collect())
}

impl Swept {
    /// With every row in full.
    pub(crate) fn json(&self) -> serde_json::Value {
        let quantity = match self.quantity {
            Quantity::Elevation => "elevation_deg",
            Quantity::FrameWidth => "frame_width_mm",
            Quantity::FocalLength | Quantity::Lens => "focal_length_mm",
        };
        let row = |row: &SweptRow| json!({ "value": row.value, "lens": row.lens, "brief": row.brief, "plan": row.plan });
        json!({
            "shot": self.shot,
            "quantity": quantity,
            "rows": self.rows.iter().map(row).collect::<Vec<_>>(),
            "usual_cautions": OVERHEAD_CAUTIONS,
        })
    }

    /// Whether any row has a load above the table or a person.
    pub(crate) fn overhead(&self) -> bool {
        self.rows.iter().any(|row| row.plan.overhead)
    }

    /// For people.
    pub(crate) fn print(&self, page: &mut Page) {
        let units = page.units;
        let (what, first) = match self.quantity {
            Quantity::Elevation => ("elevation", right("Elevation")),
            Quantity::FrameWidth => ("frame width", right("Frame")),
            Quantity::FocalLength => ("focal length", right("Focal length")),
            Quantity::Lens => ("lens", left("Lens")),
        };
        page.heading(&format!("{} by {what}, lengths in {}", self.shot, units.plural()));
        let columns = [
            first,
            right("Frame").spare(2),
            right("Axis up"),
            right("To aim"),
            right("Pivot up").spare(3),
            right("Reach"),
            left("Opening").spare(4),
            right("Sharp").spare(5),
            right("Factor").spare(1),
            right("Tips at"),
            left("Worst"),
        ];
        let gone = page.figures(&columns, self.rows.iter().map(|row| self.row(row, units)).collect());
        let public = self.rows.iter().any(|row| row.brief.bay.public_passes);
        let limits =
            self.rows.first().map(|row| tilt_limits(&row.brief.criteria, public)).unwrap_or_default();
        page.legend(
            &gone,
            &[
                ("", "Axis up: the lens axis at the sensor. To aim: from the sensor, straight."),
                ("Sharp", "Sharp: in front of and behind the aim point together."),
                ("Factor", "Factor: restoring over overturning moment as shot."),
                (
                    "",
                    &format!(
                        "Tips at: the tilt of the floor that tips it; {limits}. The makers' ratings rule."
                    ),
                ),
                ("", if self.rows.iter().any(|row| is_stopped(&row.plan)) { BRACKETS } else { "" }),
            ],
        );
        let stopped: Vec<(Level, String)> = self.rows.iter().filter_map(|row| self.why(row, units)).collect();
        if !stopped.is_empty() {
            page.gap();
            page.levels(&stopped);
        }
    }

    fn value(&self, row: &SweptRow, units: Units) -> String {
        match (self.quantity, &row.lens) {
            (Quantity::Elevation, _) => degrees(row.value),
            (Quantity::FrameWidth, _) => units.bare(row.value),
            (_, Some(lens)) => lens.clone(),
            (_, None) => on_sensor(row.value),
        }
    }

    fn row(&self, row: &SweptRow, units: Units) -> Vec<String> {
        let plan = &row.plan;
        let set = |figure| marked(is_stopped(plan), figure);
        let reach = match plan.placement.boom_used {
            true => set(units.bare(plan.placement.reach_mm)),
            false => "-".into(),
        };
        let depth = &plan.focus.depth_of_field;
        vec![
            self.value(row, units),
            units.bare(plan.frame_width_mm),
            set(units.bare(plan.pose.sensor.z_mm)),
            set(units.bare(plan.lens.sensor_distance_mm)),
            set(units.bare(plan.pose.pivot.z_mm)),
            reach,
            f_number(plan.focus.engraved),
            units.bare(depth.in_front_mm + depth.behind_mm),
            factor(plan.stability.as_shot.factor),
            set(tips_at(plan.stability.as_shot.tilt_to_tip_deg, column_degrees)),
            plan.cautions.worst().map_or("-", word).into(),
        ]
    }

    /// What stops a row.
    fn why(&self, row: &SweptRow, units: Units) -> Option<(Level, String)> {
        let stops = row.plan.cautions.iter().filter(|caution| caution.level == Level::Stop);
        let sentences: Vec<String> = stops.map(|caution| sentence(caution, units)).collect();
        if sentences.is_empty() {
            return None;
        }
        Some((Level::Stop, format!("{}: {}", self.value(row, units), sentences.join(" "))))
    }
}
