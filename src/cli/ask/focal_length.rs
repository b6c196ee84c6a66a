//! The focal length that shows a frame from a distance.

use std::format;
use std::prelude::rust_2024::*;
use std::vec;

use clap::Args;
use serde_json::json;

use super::Answer;
use crate::cli::failure::Failure;
use crate::cli::flags::{Gear, GearFlags, length};
use crate::cli::wording::{Units, on_sensor};
use crate::optics::inverse::focal_length_for;

const EXAMPLES: &str = "\
The distance is the entrance pupil's: seen into the lens from the front, the iris seems to stand there.

Example:
  tablerig ask focal-length --pupil-distance '1.5 m' --frame-width '60 cm' --sensor 36";

#[derive(Debug, Args)]
#[command(after_help = EXAMPLES)]
pub(crate) struct FocalLengthFlags {
    /// From the aim point to the entrance pupil, straight
    #[arg(long, value_parser = length, value_name = "LENGTH")]
    pupil_distance: f64,
    /// Frame width at the aim point
    #[arg(long, value_parser = length, value_name = "LENGTH")]
    frame_width: f64,
    #[command(flatten)]
    gear: GearFlags,
}

pub(super) fn answer(flags: &FocalLengthFlags, units: Units) -> Result<Answer, Failure> {
    let gear = flags.gear.find()?;
    let ratio = gear.lens.map_or(1.0, |lens| lens.pupil_ratio);
    let (s, width) = (flags.pupil_distance, flags.frame_width);
    let focal_length_mm = focal_length_for(s, width, gear.used.width_mm, ratio)?;
    let mut pairs = vec![
        ("focal length", on_sensor(focal_length_mm)),
        ("for", format!("a frame {} wide from {}", units.length(width), units.length(s))),
    ];
    pairs.extend(nearest(&gear, focal_length_mm));
    let json = json!({
        "question": "focal_length",
        "given": {
            "pupil_distance_mm": s,
            "frame_width_mm": width,
            "used_width_mm": gear.used.width_mm,
            "pupil_ratio": ratio,
        },
        "answer": { "focal_length_mm": focal_length_mm },
    });
    let remark = Some("For a lens that keeps its focal length as it focuses.".into());
    Ok(Answer { json, heading: "The lens for this distance", pairs, remark, overhead: false })
}

/// The lens of the file that comes nearest to a focal length.
pub(super) fn nearest(gear: &Gear, focal_length_mm: f64) -> Option<(&'static str, String)> {
    let lenses = &gear.file.as_ref()?.gear.lenses;
    let off = |focal: f64| (focal / focal_length_mm).max(focal_length_mm / focal);
    let mut best: Option<(&str, f64)> = None;
    for name in lenses.names() {
        let focal = lenses.get(name)?.focal_length_mm;
        if best.is_none_or(|(_, known)| off(focal) < off(known)) {
            best = Some((name, focal));
        }
    }
    best.map(|(name, focal)| ("nearest lens of the file", format!("{name} ({})", on_sensor(focal))))
}
