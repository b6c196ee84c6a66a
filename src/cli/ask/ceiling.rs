//! The largest frame that keeps the camera under a ceiling.

use std::format;
use std::prelude::rust_2024::*;
use std::vec;

use clap::Args;
use serde_json::json;

use super::Answer;
use crate::caution::overhead::OVERHEAD_CAUTIONS;
use crate::cli::failure::Failure;
use crate::cli::flags::{GearFlags, angle, length};
use crate::cli::wording::{Units, degrees, magnification};
use crate::range;
use crate::view::framing::largest_frame_width_mm;
use crate::view::pose::Orientation;

const EXAMPLES: &str = "\
With --shot everything comes from the shot and its bay; what is given here overrules it. Without a \
shot, what is not given counts as 0: the socket, the body above the axis, the head.

Examples:
  tablerig ask ceiling --shot breakfast-long
  tablerig ask ceiling --ceiling '2.5 m' --clearance '5 cm' --elevation 90 \\
      --aim-height-above-floor '76 cm' --body-above '6 cm' --focal-length 50mm --sensor 36x24";

#[derive(Debug, Args)]
#[command(after_help = EXAMPLES)]
pub(crate) struct CeilingFlags {
    /// Ceiling above the floor
    #[arg(long, value_parser = length, value_name = "LENGTH")]
    ceiling: Option<f64>,
    /// Room kept under it
    #[arg(long, value_parser = length, value_name = "LENGTH")]
    clearance: Option<f64>,
    /// Elevation of the camera
    #[arg(long, value_parser = angle, value_name = "ANGLE")]
    elevation: Option<f64>,
    /// Aim point above the floor
    #[arg(long, value_parser = length, value_name = "LENGTH")]
    aim_height_above_floor: Option<f64>,
    /// Top of the camera's body above the axis
    #[arg(long, value_parser = length, value_name = "LENGTH")]
    body_above: Option<f64>,
    /// Head's pivot below the socket
    #[arg(long, value_parser = length, value_name = "LENGTH")]
    pivot_below_socket: Option<f64>,
    #[command(flatten)]
    gear: GearFlags,
}

pub(super) fn answer(flags: &CeilingFlags, units: Units) -> Result<Answer, Failure> {
    let gear = flags.gear.find()?;
    let lens = gear.lens()?;
    let shot = gear.shot.as_ref();
    let bay = shot.map(|shot| &shot.brief.bay);
    let lacks = |what: &str| Failure::input(format!("how about {what}? Give it, or --shot of a shoot file"));
    let ceiling = flags.ceiling.or(bay.and_then(|bay| bay.ceiling_mm)).ok_or_else(|| lacks("--ceiling"))?;
    let clearance = flags.clearance.or(bay.map(|bay| bay.ceiling_clearance_mm)).unwrap_or(0.0);
    let elevation = flags
        .elevation
        .or(shot.map(|shot| shot.brief.shot.elevation_deg))
        .ok_or_else(|| lacks("--elevation"))?;
    let aim = flags
        .aim_height_above_floor
        .or(shot.map(|shot| shot.plan.pose.aim.z_mm))
        .ok_or_else(|| lacks("--aim-height-above-floor"))?;
    range::CEILING_MM.check(ceiling)?;
    range::CEILING_CLEARANCE_MM.check(clearance)?;
    range::ELEVATION_DEG.check(elevation)?;
    range::MEASURED_AIM_HEIGHT_MM.check(aim)?;
    let mut camera = gear.camera;
    camera.body_above_mm = flags.body_above.unwrap_or(camera.body_above_mm);
    let pivot = flags
        .pivot_below_socket
        .or(shot.map(|shot| shot.brief.support.head.pivot_below_socket_mm))
        .unwrap_or(0.0);
    range::BODY_ABOVE_MM.check(camera.body_above_mm)?;
    range::PIVOT_BELOW_SOCKET_MM.check(pivot)?;
    let bearing = shot.map_or(0.0, |shot| shot.brief.shot.bearing_deg);
    let at = Orientation::new(elevation, bearing);
    let width = largest_frame_width_mm(ceiling - clearance, aim, &at, &lens, &gear.used, &camera, pivot)?;
    let focused = lens.focused(gear.used.width_mm / width);
    let height = gear.used.height_mm / focused.magnification;
    let frame =
        if height > 0.0 { units.size(width, height) } else { format!("{} wide", units.length(width)) };
    let mut pairs = vec![
        ("largest frame", frame),
        ("sensor to aim point", units.length(focused.sensor_distance_mm)),
        ("magnification", magnification(focused.magnification)),
        (
            "under",
            format!(
                "a ceiling of {}{}, elevation {}",
                units.length(ceiling),
                match clearance {
                    0.0 => String::new(),
                    kept => format!(" less {} kept under it", units.length(kept)),
                },
                degrees(elevation)
            ),
        ),
    ];
    if let Some(shot) = shot {
        pairs.push(("the shot asks for", units.size(shot.plan.frame_width_mm, shot.plan.frame_height_mm)));
    }
    let json = json!({
        "question": "ceiling",
        "given": {
            "ceiling_mm": ceiling,
            "ceiling_clearance_mm": clearance,
            "elevation_deg": elevation,
            "aim_height_above_floor_mm": aim,
            "pivot_below_socket_mm": pivot,
            "camera": camera,
            "lens": lens,
            "used_area": gear.used,
        },
        "answer": { "frame_width_mm": width, "lens": focused },
        "usual_cautions": OVERHEAD_CAUTIONS,
    });
    let remark = Some("The camera alone was fitted under the ceiling: whether stand and boom reach there, `tablerig shot` says.".into());
    Ok(Answer { json, heading: "The largest frame under this ceiling", pairs, remark, overhead: true })
}
