//! `tablerig advise`: which elevation suits a subject.

use std::format;
use std::path::PathBuf;
use std::prelude::rust_2024::*;

use clap::Args;
use clap::builder::PossibleValuesParser;
use serde_json::json;

use super::failure::Failure;
use super::flags::{angle, length, pick, pick_shot};
use super::full::advice_pairs;
use super::load;
use super::page::{Page, given};
use super::wording::{degrees, percent};
use crate::advice::{Advice, advice};
use crate::range;
use crate::scene::subject::{JudgedBy, Shape, Subject, Vessel};
use crate::shootfile::subject::{JUDGED, JUDGED_WORDS};

const EXAMPLES: &str = "\
Examples:
  tablerig advise --diameter 19cm --height 85mm --vessel-inside 178mm \\
      --contents-below-rim 22mm --judged-by contents
  tablerig advise --width 30cm --depth 20cm --height 5cm
  tablerig advise --subject soup-bowl shoot.toml";

#[derive(Debug, Args)]
#[command(after_help = EXAMPLES)]
pub(crate) struct AdviseFlags {
    /// Shoot file, TOML or JSON; - for standard input; the built-in demo when left out
    #[arg(value_name = "FILE")]
    file: Option<PathBuf>,
    /// A subject of the file
    #[arg(long, value_name = "NAME", conflicts_with_all = ["width", "depth", "diameter", "height"])]
    subject: Option<String>,
    /// The subject of a shot of the file, seen from its bearing
    #[arg(long, value_name = "NAME", conflicts_with_all = ["subject", "width", "depth", "diameter", "height"])]
    shot: Option<String>,
    /// Width of a box, along the table's width
    #[arg(long, value_parser = length, requires = "depth", value_name = "LENGTH")]
    width: Option<f64>,
    /// Depth of a box
    #[arg(long, value_parser = length, requires = "width", value_name = "LENGTH")]
    depth: Option<f64>,
    /// Diameter of something round
    #[arg(long, value_parser = length, conflicts_with_all = ["width", "depth"], value_name = "LENGTH")]
    diameter: Option<f64>,
    /// Height
    #[arg(long, value_parser = length, value_name = "LENGTH")]
    height: Option<f64>,
    /// Inside diameter of a vessel
    #[arg(long, value_parser = length, requires = "contents_below_rim", value_name = "LENGTH")]
    vessel_inside: Option<f64>,
    /// From a vessel's rim down to its contents
    #[arg(long, value_parser = length, requires = "vessel_inside", value_name = "LENGTH")]
    contents_below_rim: Option<f64>,
    /// What the picture lives by
    #[arg(long, value_parser = PossibleValuesParser::new(JUDGED_WORDS.iter().copied()), value_name = "WORD")]
    judged_by: Option<String>,
    /// Bearing from which it is seen
    #[arg(long, value_parser = angle, value_name = "ANGLE")]
    bearing: Option<f64>,
}

/// What was advised on, and the advice.
#[derive(Debug)]
pub(crate) struct Advised {
    name: String,
    subject: Subject,
    bearing_deg: f64,
    asked_deg: Option<f64>,
    advice: Advice,
}

/// Finds the subject and advises.
pub(crate) fn advise(flags: &AdviseFlags) -> Result<Advised, Failure> {
    let (name, mut subject, bearing, asked_deg) = find(flags)?;
    if let Some(word) = &flags.judged_by {
        let index = JUDGED_WORDS.iter().position(|known| known == word);
        subject.judged_by = index.map_or(JudgedBy::Form, |index| JUDGED[index]);
    }
    if let (Some(inside_diameter_mm), Some(contents_below_rim_mm)) =
        (flags.vessel_inside, flags.contents_below_rim)
    {
        subject.vessel = Some(Vessel { inside_diameter_mm, contents_below_rim_mm });
    }
    subject.check()?;
    let bearing_deg = range::BEARING_DEG.check(flags.bearing.unwrap_or(bearing))?;
    Ok(Advised { name, subject, bearing_deg, asked_deg, advice: advice(&subject, bearing_deg) })
}

fn find(flags: &AdviseFlags) -> Result<(String, Subject, f64, Option<f64>), Failure> {
    if let Some(name) = &flags.subject {
        let file = load(flags.file.as_deref())?;
        return Ok((format!("subject {name}"), pick(&file.gear.subjects, name)?, 0.0, None));
    }
    if let Some(name) = &flags.shot {
        let file = load(flags.file.as_deref())?;
        let brief = &pick_shot(&file, name)?.brief;
        let (bearing, elevation) = (brief.shot.bearing_deg, brief.shot.elevation_deg);
        return Ok((format!("the subject of shot {name}"), brief.subject, bearing, Some(elevation)));
    }
    let shape = match (flags.width, flags.depth, flags.diameter) {
        (Some(width_mm), Some(depth_mm), _) => Shape::Box { width_mm, depth_mm },
        (_, _, Some(diameter_mm)) => Shape::Round { diameter_mm },
        _ => {
            return Err(Failure::input(
                "which subject? Give --width and --depth, or --diameter, with --height; or --subject or --shot of a shoot file",
            ));
        }
    };
    let height_mm = flags.height.ok_or_else(|| Failure::input("how high is it? Give --height"))?;
    let subject = Subject { shape, height_mm, vessel: None, judged_by: JudgedBy::Form };
    Ok(("this subject".into(), subject, 0.0, None))
}

impl Advised {
    /// With everything it rests on.
    pub(crate) fn json(&self) -> serde_json::Value {
        json!({
            "subject": self.subject,
            "bearing_deg": self.bearing_deg,
            "advice": self.advice,
            "reasons_in_words": self.advice.reasons.iter().flatten().map(|reason| reason.sentence()).collect::<Vec<_>>(),
        })
    }

    /// For people.
    pub(crate) fn print(&self, page: &mut Page) {
        page.heading(&format!("Elevation for {}", self.name));
        let advice = &self.advice;
        let mut pairs = advice_pairs(advice, self.asked_deg);
        pairs.push(("from there it shows", format!("{} top", percent(advice.top_share_at_start))));
        pairs.extend(given("contents visible from there", advice.contents_at_start.map(percent)));
        pairs.push(("top and side alike from", degrees(advice.half_top_from_deg)));
        pairs.extend(given("half the contents from", advice.half_contents_from_deg.map(degrees)));
        page.pairs(&pairs);
        page.gap();
        page.paragraph("Advice is common practice joined with what was computed; the brief decides.");
    }
}
