//! A viewpoint found with another camera in the hand: the lens that repeats it on the stand.

use std::format;
use std::prelude::rust_2024::*;
use std::vec;

use clap::Args;
use serde_json::json;

use super::Answer;
use super::focal_length::nearest;
use crate::cli::failure::Failure;
use crate::cli::flags::{GearFlags, length};
use crate::cli::wording::{Units, on_sensor};
use crate::fault::Fault;
use crate::optics::inverse::{focal_length_for, viewpoint};
use crate::optics::lens::Lens;
use crate::shootfile::gear::BLANK_LENS;

const EXAMPLES: &str = "\
The same entrance pupil and the same frame give the same perspective, whatever the camera.

Example: found with a small camera in the hand, 62 cm away; which lens on 36 x 24 mm repeats it?
  tablerig ask viewpoint --hand-focal-length 6.9mm --hand-sensor-width 9.8mm \\
      --hand-distance '62 cm' --sensor 36";

#[derive(Debug, Args)]
#[command(after_help = EXAMPLES)]
pub(crate) struct ViewpointFlags {
    /// Marked focal length of the camera in the hand (its real one, not an equivalent)
    #[arg(long, value_parser = length, value_name = "LENGTH")]
    hand_focal_length: f64,
    /// Width of the part of its sensor that the picture used
    #[arg(long, value_parser = length, value_name = "LENGTH")]
    hand_sensor_width: f64,
    /// From the aim point to its sensor, straight
    #[arg(long, value_parser = length, value_name = "LENGTH")]
    hand_distance: f64,
    #[command(flatten)]
    gear: GearFlags,
}

pub(super) fn answer(flags: &ViewpointFlags, units: Units) -> Result<Answer, Failure> {
    let gear = flags.gear.find()?;
    let hand = Lens {
        focal_length_mm: flags.hand_focal_length,
        least_f_number: 1.0,
        most_f_number: 64.0,
        ..BLANK_LENS
    };
    hand.check().map_err(of_hand)?;
    let seen = viewpoint(&hand, flags.hand_sensor_width, flags.hand_distance).map_err(of_hand)?;
    let ratio = gear.lens.map_or(1.0, |lens| lens.pupil_ratio);
    let (s, width) = (seen.pupil_distance_mm, seen.frame_width_mm);
    let focal_length_mm = focal_length_for(s, width, gear.used.width_mm, ratio)?;
    let mut pairs = vec![
        ("focal length", on_sensor(focal_length_mm)),
        ("viewpoint", format!("entrance pupil {} from the aim point", units.length(s))),
        ("frame width", units.length(width)),
    ];
    pairs.extend(nearest(&gear, focal_length_mm));
    let json = json!({
        "question": "viewpoint",
        "given": {
            "hand_focal_length_mm": flags.hand_focal_length,
            "hand_sensor_width_mm": flags.hand_sensor_width,
            "hand_distance_mm": flags.hand_distance,
            "used_width_mm": gear.used.width_mm,
            "pupil_ratio": ratio,
        },
        "answer": { "viewpoint": seen, "focal_length_mm": focal_length_mm },
    });
    let remark = Some("For lenses that keep their focal length as they focus.".into());
    Ok(Answer { json, heading: "The lens that repeats this viewpoint", pairs, remark, overhead: false })
}

/// A refusal of what belongs to the camera in the hand, by its own option.
fn of_hand(fault: Fault) -> Failure {
    let option = match fault.field.rsplit('.').next() {
        Some("sensor_distance_mm") => "--hand-distance",
        Some("width_mm") => "--hand-sensor-width",
        _ => "--hand-focal-length",
    };
    Failure::about(&fault, option)
}
