//! The magnification of a lens at a distance, and the frame it shows there.

use std::prelude::rust_2024::*;
use std::vec;

use clap::Args;
use serde_json::json;

use super::Answer;
use crate::cli::failure::Failure;
use crate::cli::flags::{GearFlags, length};
use crate::cli::wording::{Units, magnification, on_sensor};
use crate::optics::inverse::{magnification_at, viewpoint};

const EXAMPLES: &str = "\
Example:
  tablerig ask magnification --sensor-distance '60 cm' --focal-length 100mm --sensor 36
  tablerig ask magnification --sensor-distance '60 cm' --lens macro-100 shoot.toml";

#[derive(Debug, Args)]
#[command(after_help = EXAMPLES)]
pub(crate) struct MagnificationFlags {
    /// From the aim point to the sensor, straight
    #[arg(long, value_parser = length, value_name = "LENGTH")]
    sensor_distance: f64,
    #[command(flatten)]
    gear: GearFlags,
}

pub(super) fn answer(flags: &MagnificationFlags, units: Units) -> Result<Answer, Failure> {
    let gear = flags.gear.find()?;
    let lens = gear.lens()?;
    let m = magnification_at(&lens, flags.sensor_distance)?;
    let focused = lens.focused(m);
    let seen = viewpoint(&lens, gear.used.width_mm, flags.sensor_distance)?;
    let pairs = vec![
        ("magnification", magnification(m)),
        ("frame width", units.length(seen.frame_width_mm)),
        ("focal length there", on_sensor(focused.focal_length_mm)),
        ("entrance pupil to aim point", units.length(seen.pupil_distance_mm)),
    ];
    let json = json!({
        "question": "magnification",
        "given": { "sensor_distance_mm": flags.sensor_distance, "lens": lens, "used_area": gear.used },
        "answer": { "magnification": m, "viewpoint": seen, "lens": focused },
    });
    Ok(Answer { json, heading: "At this distance", pairs, remark: None, overhead: false })
}
