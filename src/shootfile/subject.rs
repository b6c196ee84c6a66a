//! The rows of a subject and its vessel.

use std::prelude::rust_2024::*;

use super::field::{Field, give, set};
use super::gear::NOTE;
use super::problem::{Problem, ProblemKind};
use super::reading::Reading;
use super::tree::{Entry, Node, Span};
use crate::range;
use crate::scene::subject::{JudgedBy, Shape, Subject, Vessel};

/// A subject while it is being read.
#[derive(Clone, Debug)]
pub(crate) struct SubjectDraft {
    width_mm: Option<f64>,
    depth_mm: Option<f64>,
    diameter_mm: Option<f64>,
    height_mm: f64,
    vessel: Option<Vessel>,
    judged_by: JudgedBy,
}

pub(crate) const BLANK_SUBJECT: SubjectDraft = SubjectDraft {
    width_mm: None,
    depth_mm: None,
    diameter_mm: None,
    height_mm: 0.0,
    vessel: None,
    judged_by: JudgedBy::Form,
};

const SHAPE: &str = "a box has width_mm and depth_mm, a round one diameter_mm";

/// The words for what a picture lives by, in the order of [`JUDGED`].
pub(crate) static JUDGED_WORDS: &[&str] =
    &["form", "top_detail", "side_layers", "contents", "clear_layers", "decorated_glass", "laid_table"];
pub(crate) static JUDGED: &[JudgedBy] = &[
    JudgedBy::Form,
    JudgedBy::TopDetail,
    JudgedBy::SideLayers,
    JudgedBy::Contents,
    JudgedBy::ClearLayers,
    JudgedBy::DecoratedGlass,
    JudgedBy::LaidTable,
];

pub(crate) static SUBJECT: &[Field<SubjectDraft>] = &[
    Field::number(range::SUBJECT_WIDTH_MM, give!(SubjectDraft, width_mm)).among(SHAPE),
    Field::number(range::SUBJECT_DEPTH_MM, give!(SubjectDraft, depth_mm)).among(SHAPE),
    Field::number(range::SUBJECT_DIAMETER_MM, give!(SubjectDraft, diameter_mm)).among(SHAPE),
    Field::number(range::SUBJECT_HEIGHT_MM, set!(SubjectDraft, height_mm)),
    Field::choice(
        "judged_by",
        JUDGED_WORDS,
        "what the picture lives by, for the advice on elevation",
        |subject: &mut SubjectDraft, index| subject.judged_by = JUDGED[index],
    )
    .otherwise("form"),
    Field::part("vessel", "a round opening at the subject's height, with contents below the rim", vessel)
        .otherwise("no vessel"),
    Field::text("note", NOTE, |_: &mut SubjectDraft, _| {}).otherwise("none"),
];

pub(crate) static VESSEL: &[Field<Vessel>] = &[
    Field::number(range::VESSEL_INSIDE_DIAMETER_MM, set!(Vessel, inside_diameter_mm)),
    Field::number(range::VESSEL_CONTENTS_BELOW_RIM_MM, set!(Vessel, contents_below_rim_mm)),
];

fn vessel(reading: &mut Reading, whose: &str, entry: &Entry, subject: &mut SubjectDraft) {
    let mut vessel = Vessel { inside_diameter_mm: 0.0, contents_below_rim_mm: 0.0 };
    let whose = std::format!("the vessel of {whose}");
    if reading.table(&whose, &entry.key_span, &entry.node, VESSEL, &mut vessel) {
        subject.vessel = Some(vessel);
    }
}

/// The subject with its shape, which is either a box's or a round's.
pub(crate) fn finish(
    draft: SubjectDraft,
    reading: &mut Reading,
    whose: &str,
    at: &Span,
    node: &Node,
) -> Option<Subject> {
    let key = |key: &str| node.get(key).map(|entry| entry.key_span.clone());
    let shape = match (draft.width_mm, draft.depth_mm, draft.diameter_mm) {
        (Some(width_mm), Some(depth_mm), None) => Shape::Box { width_mm, depth_mm },
        (None, None, Some(diameter_mm)) => Shape::Round { diameter_mm },
        (width, _, Some(_)) => {
            let side = if width.is_some() { "width_mm" } else { "depth_mm" };
            let span = key("diameter_mm").unwrap_or_else(|| at.clone());
            let problem = Problem::new(
                ProblemKind::Conflicting,
                format_args!("{whose} is both a box and round"),
                span,
                "either this ...",
            )
            .also(key(side).unwrap_or_else(|| at.clone()), "... or this")
            .help(SHAPE);
            reading.report(problem);
            return None;
        }
        (None, None, None) => {
            let title = std::format!("{whose} has no shape");
            reading.report(
                Problem::new(ProblemKind::Lacking, title, at.clone(), "to be given here")
                    .lacks(["width_mm", "depth_mm", "diameter_mm"])
                    .help(SHAPE),
            );
            return None;
        }
        (width, ..) => {
            let (lacks, has) =
                if width.is_some() { ("depth_mm", "width_mm") } else { ("width_mm", "depth_mm") };
            let span = key(has).unwrap_or_else(|| at.clone());
            let title = std::format!("{whose} lacks `{lacks}`");
            reading.report(
                Problem::new(ProblemKind::Lacking, title, span, "a box needs both")
                    .lacks([lacks])
                    .help(SHAPE),
            );
            return None;
        }
    };
    let SubjectDraft { height_mm, vessel, judged_by, .. } = draft;
    Some(Subject { shape, height_mm, vessel, judged_by })
}
