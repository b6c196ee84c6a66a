//! What was measured on the set: which elevation and frame width it means, and how surely.

use std::format;
use std::prelude::rust_2024::*;
use std::vec;

use clap::Args;
use serde_json::json;

use super::Answer;
use crate::cli::failure::Failure;
use crate::cli::flags::{GearFlags, about_measured, measured_angle, measured_length};
use crate::cli::wording::{Units, decimals, degrees, magnification};
use crate::tolerance::{Measured, Measurement, real_shot};

const EXAMPLES: &str = "\
Give one of three sets, each value with its uncertainty (one standard deviation) after +- or ±:
  --sensor-height, --aim-height-above-floor and --horizontal-distance
  --sensor-distance and --elevation
  --sensor-height, --aim-height-above-floor and --sensor-distance

Example:
  tablerig ask measured --shot soup --sensor-height '213.5 cm +- 5 mm' \\
      --aim-height-above-floor '80 cm +- 2 mm' --horizontal-distance '78 cm +- 1 cm'";

#[derive(Debug, Args)]
#[command(after_help = EXAMPLES)]
pub(crate) struct MeasuredFlags {
    /// Lens axis at the sensor, above the floor
    #[arg(long, value_parser = measured_length, value_name = "LENGTH±LENGTH")]
    sensor_height: Option<Measurement>,
    /// Aim point above the floor
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
    #[command(flatten)]
    gear: GearFlags,
}

pub(super) fn answer(flags: &MeasuredFlags, units: Units) -> Result<Answer, Failure> {
    let given = (flags.sensor_height, flags.aim_height_above_floor, flags.horizontal_distance);
    let measured = match (given, flags.sensor_distance, flags.elevation) {
        (
            (Some(sensor_height_mm), Some(aim_height_above_floor_mm), Some(horizontal_distance_mm)),
            None,
            None,
        ) => Measured::HeightAndDistance {
            sensor_height_mm,
            aim_height_above_floor_mm,
            horizontal_distance_mm,
        },
        ((None, None, None), Some(sensor_distance_mm), Some(elevation_deg)) => {
            Measured::TapeAndInclinometer { sensor_distance_mm, elevation_deg }
        }
        ((Some(sensor_height_mm), Some(aim_height_above_floor_mm), None), Some(sensor_distance_mm), None) => {
            Measured::HeightAndTape { sensor_height_mm, aim_height_above_floor_mm, sensor_distance_mm }
        }
        _ => return Err(Failure::input("these measurements make none of the three sets; see --help")),
    };
    let gear = flags.gear.find()?;
    let options = [
        ("--sensor-height", flags.sensor_height),
        ("--aim-height-above-floor", flags.aim_height_above_floor),
        ("--horizontal-distance", flags.horizontal_distance),
        ("--sensor-distance", flags.sensor_distance),
        ("--elevation", flags.elevation),
    ];
    let real = real_shot(&measured, &gear.lens()?, gear.used.width_mm)
        .map_err(|fault| about_measured(&fault, &options))?;
    let sure = |value: String, uncertainty: String| format!("{value} ± {uncertainty}");
    let mut pairs = vec![
        (
            "elevation",
            sure(
                degrees(real.elevation_deg.value),
                format!("{}°", decimals(real.elevation_deg.uncertainty, 2)),
            ),
        ),
        (
            "frame width",
            sure(units.length(real.frame_width_mm.value), units.length(real.frame_width_mm.uncertainty)),
        ),
        (
            "sensor to aim point",
            sure(
                units.length(real.sensor_distance_mm.value),
                units.length(real.sensor_distance_mm.uncertainty),
            ),
        ),
        ("magnification", magnification(real.magnification)),
    ];
    if let Some(shot) = &gear.shot {
        let (asked, plan) = (&shot.brief.shot, &shot.plan);
        pairs.push((
            "wanted",
            format!("{}, {}", degrees(asked.elevation_deg), units.length(plan.frame_width_mm)),
        ));
        let within = (real.elevation_deg.value - asked.elevation_deg).abs() <= asked.elevation_tolerance_deg
            && (real.frame_width_mm.value / plan.frame_width_mm - 1.0).abs() <= asked.frame_width_tolerance;
        let word = if within { "yes" } else { "no" };
        pairs.push(("within the shot's tolerances", word.into()));
    }
    let json = json!({ "question": "measured", "given": measured, "answer": real });
    Ok(Answer { json, heading: "What was really set", pairs, remark: None, overhead: false })
}
