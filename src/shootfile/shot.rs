//! The rows of a shot, of the shoot as a whole and of the criteria.

use std::format;
use std::prelude::rust_2024::*;

use super::field::{Field, Name, give, set};
use super::order::After;
use super::problem::{Problem, ProblemKind};
use super::reading::Reading;
use super::several::{Several, several, sides};

use super::tree::{Entry, Node, Span};
use crate::brief::{Criteria, Framing, Shot};
use crate::optics::sensor::Hold;
use crate::range;
use crate::scene::subject::Subject;
use crate::scene::table::Side;

/// The gear a shot, or the shoot as a whole, names.
#[derive(Clone, Debug, Default)]
pub(crate) struct Names {
    pub(crate) camera: Option<Name>,
    pub(crate) lens: Option<Name>,
    pub(crate) table: Option<Name>,
    pub(crate) subject: Option<Name>,
    pub(crate) support: Option<Name>,
    pub(crate) bay: Option<Name>,
}

/// A shot while it is being read.
#[derive(Clone, Debug)]
pub(crate) struct ShotDraft {
    pub(crate) name: Option<Name>,
    pub(crate) note: Option<String>,
    pub(crate) names: Names,
    pub(crate) lens: Option<Several>,
    pub(crate) support: Option<Several>,
    /// The sides named as a list, or any.
    pub(crate) sides: Option<Vec<Side>>,
    pub(crate) surface: Option<Name>,
    pub(crate) backdrop: Option<Name>,
    pub(crate) after: After,
    /// A subject written in the shot itself; `None` inside if something is wrong with it.
    pub(crate) own_subject: Option<Option<Subject>>,
    frame_width_mm: Option<f64>,
    fill_width: Option<f64>,
    fill_height: Option<f64>,
    shot: Shot,
}

impl ShotDraft {
    pub(crate) fn blank() -> ShotDraft {
        ShotDraft {
            name: None,
            note: None,
            names: Names::default(),
            lens: None,
            support: None,
            sides: None,
            surface: None,
            backdrop: None,
            after: After::default(),
            own_subject: None,
            frame_width_mm: None,
            fill_width: None,
            fill_height: None,
            shot: Shot::new(0.0, 0.0),
        }
    }
}

const FRAME: &str = "exactly one of frame_width_mm, fill_width and fill_height";
const ONE: &str = "the only one in the file, or the one named under [shoot]";

const CHOSEN: &str =
    "the one named under [shoot]; or, with a [kit], the best of it; or the only one in the file";
const LENS: &str = "the name of a lens, a list of names, or \"any\"";
const SUPPORT: &str = "the name of a support, a list of names, or \"any\"";
const SIDE: &str = "front, right, back or left, a list of them, or \"any\"";
const SHOTS: &str = "the name of a shot, or a list of names";

pub(crate) static HOLDS: &[&str] = &["across", "upright"];
pub(crate) static SIDES: &[&str] = &["front", "right", "back", "left"];

pub(crate) static SHOT: &[Field<ShotDraft>] = &[
    Field::text("name", "what the shot is called; every shot has its own", give!(ShotDraft, name)),
    Field::text("note", "printed with the shot", |d: &mut ShotDraft, note| d.note = Some(note.text))
        .otherwise("none"),
    Field::reference("camera", "a camera of this file", give!(ShotDraft, names.camera)).otherwise(ONE),
    Field::own(
        "lens",
        LENS,
        "the lens, or those from which the best is chosen",
        |reading, _, entry, draft: &mut ShotDraft| {
            draft.lens = several(reading, entry, LENS, "the lens, or those from which the best is chosen");
        },
    )
    .otherwise(CHOSEN),
    Field::reference("table", "a table of this file", give!(ShotDraft, names.table)).otherwise(ONE),
    Field::reference_or_part(
        "subject",
        "a subject of this file, or one written here as [shot.subject]",
        give!(ShotDraft, names.subject),
        own_subject,
    )
    .otherwise(ONE),
    Field::own(
        "support",
        SUPPORT,
        "the support, or those from which the best is chosen",
        |reading, _, entry, draft: &mut ShotDraft| {
            draft.support =
                several(reading, entry, SUPPORT, "the support, or those from which the best is chosen");
        },
    )
    .otherwise(CHOSEN),
    Field::reference("bay", "a bay of this file", give!(ShotDraft, names.bay))
        .otherwise("as for the others; without any, no walls and no ceiling"),
    Field::number(range::ELEVATION_DEG, set!(ShotDraft, shot.elevation_deg)),
    Field::number(range::BEARING_DEG, set!(ShotDraft, shot.bearing_deg)).otherwise("0, from the front"),
    Field::number(range::FRAME_WIDTH_MM, give!(ShotDraft, frame_width_mm)).among(FRAME),
    Field::number(range::FILL_WIDTH, give!(ShotDraft, fill_width)).among(FRAME),
    Field::number(range::FILL_HEIGHT, give!(ShotDraft, fill_height)).among(FRAME),
    Field::choice("hold", HOLDS, "how the camera is held", |d: &mut ShotDraft, index| {
        d.shot.hold = [Hold::Across, Hold::Upright][index];
    })
    .otherwise("across"),
    Field::aspect(
        range::ASPECT_SIDE,
        "the delivered picture's shape, width to height",
        give!(ShotDraft, shot.delivered_aspect),
    )
    .otherwise("the sensor's own"),
    Field::number(range::AIM_X_MM, set!(ShotDraft, shot.aim_x_mm)).otherwise("0"),
    Field::number(range::AIM_Y_MM, set!(ShotDraft, shot.aim_y_mm)).otherwise("0"),
    Field::number(range::AIM_HEIGHT_MM, give!(ShotDraft, shot.aim_height_mm))
        .otherwise("half the subject's height"),
    Field::number(range::F_NUMBER, give!(ShotDraft, shot.f_number))
        .otherwise("the one that holds the subject"),
    Field::flag(
        "focus_on_table",
        "whether the plane of focus is to lie on the table, with a tilting lens",
        set!(ShotDraft, shot.focus_on_table),
    )
    .otherwise("false"),
    Field::number(range::BACKDROP_BEHIND_MM, give!(ShotDraft, shot.backdrop_behind_mm))
        .otherwise("no backdrop"),
    Field::text("backdrop", "the backdrop's name, for the pull list", give!(ShotDraft, backdrop))
        .otherwise("none"),
    Field::text(
        "surface",
        "the name of the board or cloth on the table, for order and pull list",
        give!(ShotDraft, surface),
    )
    .otherwise("none"),
    Field::own("side", SIDE, "the side of the table on which the stand is to be", side)
        .otherwise("where [kit] names sides, the best of them; else the one of the shortest reach"),
    Field::own(
        "after",
        SHOTS,
        "shots that come before this one: the whole loaf before it is cut",
        |reading, _, entry, draft: &mut ShotDraft| {
            draft.after.after = several(reading, entry, SHOTS, "shots that come before this one");
        },
    )
    .otherwise("any order"),
    Field::text(
        "right_after",
        "the shot that comes directly before this one: while it is hot",
        give!(ShotDraft, after.right_after),
    )
    .otherwise("any order"),
    Field::number(range::LIGHT_CLEARANCE_MM, set!(ShotDraft, shot.light_clearance_mm)).otherwise("100"),
    Field::number(range::STACK_OVERLAP, set!(ShotDraft, shot.stack_overlap)).otherwise("0.3"),
    Field::number(range::ELEVATION_TOLERANCE_DEG, set!(ShotDraft, shot.elevation_tolerance_deg))
        .otherwise("1"),
    Field::number(range::FRAME_WIDTH_TOLERANCE, set!(ShotDraft, shot.frame_width_tolerance))
        .otherwise("0.02"),
    Field::number(range::ROLL_TOLERANCE_DEG, set!(ShotDraft, shot.roll_tolerance_deg)).otherwise("0.5"),
];

fn side(reading: &mut Reading, _: &str, entry: &Entry, draft: &mut ShotDraft) {
    let meaning = "the side of the table on which the stand is to be";
    match sides(reading, entry, SIDES, Some(&[]), meaning).as_deref() {
        Some([only]) => draft.shot.side = Some(*only),
        // Any, for which there are none yet, or several.
        several => draft.sides = several.map(<[Side]>::to_vec),
    }
}

fn own_subject(reading: &mut Reading, whose: &str, entry: &Entry, draft: &mut ShotDraft) {
    let whose = format!("the subject of {whose}");
    let subject = super::shelf::subject(reading, &whose, &entry.key_span, &entry.node);
    draft.own_subject = Some(subject);
}

/// The shot with its framing, which is given in exactly one way.
pub(crate) fn finish(
    draft: &ShotDraft,
    reading: &mut Reading,
    whose: &str,
    at: &Span,
    node: &Node,
) -> Option<Shot> {
    let given: Vec<&Entry> =
        ["frame_width_mm", "fill_width", "fill_height"].iter().filter_map(|key| node.get(key)).collect();
    match given.as_slice() {
        [_] => {}
        [] => {
            let title = format!("{whose} does not say how much the frame takes in");
            reading.report(
                Problem::new(ProblemKind::Lacking, title, at.clone(), "to be given here")
                    .lacks(["frame_width_mm"])
                    .help(format_args!("give {FRAME}")),
            );
            return None;
        }
        [first, second, ..] => {
            let title = format!("{whose} says in {} ways how much the frame takes in", given.len());
            let problem = Problem::new(
                ProblemKind::Conflicting,
                title,
                second.key_span.clone(),
                "... or this, not both",
            );
            let problem = problem.also(first.key_span.clone(), "either this ...");
            reading.report(problem.help(format_args!("give {FRAME}")));
            return None;
        }
    }
    let framing = match (draft.frame_width_mm, draft.fill_width, draft.fill_height) {
        (Some(width), None, None) => Framing::FrameWidthMm(width),
        (None, Some(share), None) => Framing::FillWidth(share),
        (None, None, Some(share)) => Framing::FillHeight(share),
        // Given, but refused already.
        _ => return None,
    };
    Some(Shot { framing, ..draft.shot })
}

/// What is said of the shoot as a whole, and what its shots use where they name nothing.
#[derive(Clone, Debug, Default)]
pub(crate) struct ShootDraft {
    pub(crate) title: Option<String>,
    pub(crate) note: Option<String>,
    pub(crate) names: Names,
}

const EACH: &str = "each shot names its own, if there are several";

pub(crate) static SHOOT: &[Field<ShootDraft>] = &[
    Field::text("title", "what the shoot is called", |d: &mut ShootDraft, title| d.title = Some(title.text))
        .otherwise("none"),
    Field::text("note", "printed under the title", |d: &mut ShootDraft, note| d.note = Some(note.text))
        .otherwise("none"),
    Field::reference("camera", "for shots that name none", give!(ShootDraft, names.camera)).otherwise(EACH),
    Field::reference("lens", "for shots that name none", give!(ShootDraft, names.lens)).otherwise(EACH),
    Field::reference("table", "for shots that name none", give!(ShootDraft, names.table)).otherwise(EACH),
    Field::reference("subject", "for shots that name none", give!(ShootDraft, names.subject)).otherwise(EACH),
    Field::reference("support", "for shots that name none", give!(ShootDraft, names.support)).otherwise(EACH),
    Field::reference("bay", "for shots that name none", give!(ShootDraft, names.bay)).otherwise(EACH),
];

pub(crate) static CRITERIA: &[Field<Criteria>] = &[
    Field::number(range::PAYLOAD_SHARE_NOTE, set!(Criteria, payload_share_note)).otherwise("0.667"),
    Field::number(range::PAYLOAD_SHARE_WARN, set!(Criteria, payload_share_warn)).otherwise("0.75"),
    Field::number(range::PAYLOAD_SHARE_STOP, set!(Criteria, payload_share_stop)).otherwise("1"),
    Field::number(range::FACTOR_NOTE, set!(Criteria, factor_note)).otherwise("2"),
    Field::number(range::FACTOR_WARN, set!(Criteria, factor_warn)).otherwise("1.5"),
    Field::number(range::FACTOR_STOP, set!(Criteria, factor_stop)).otherwise("1"),
    Field::number(range::SPRINGY_FREQUENCY_HZ, set!(Criteria, springy_frequency_hz)).otherwise("3"),
    Field::number(range::SPRINGY_FACTOR_WARN, set!(Criteria, springy_factor_warn)).otherwise("2"),
    Field::number(range::TILT_WARN_DEG, set!(Criteria, tilt_warn_deg)).otherwise("10"),
    Field::number(range::TILT_STOP_DEG, set!(Criteria, tilt_stop_deg)).otherwise("5"),
    Field::number(range::TILT_PUBLIC_WARN_DEG, set!(Criteria, tilt_public_warn_deg)).otherwise("15"),
    Field::number(range::PUSH_SHARE_WARN, set!(Criteria, push_share_warn)).otherwise("0.13"),
    Field::number(range::PUSH_MOST_N, set!(Criteria, push_most_n)).otherwise("250"),
    Field::number(range::PUSH_HEIGHT_MOST_MM, set!(Criteria, push_height_most_mm)).otherwise("1500"),
    Field::number(range::PEOPLE_RATING_DIVISOR, set!(Criteria, people_rating_divisor)).otherwise("2"),
    Field::number(range::WANTED_FACTOR, set!(Criteria, wanted_factor)).otherwise("2"),
    Field::flag(
        "hold_as_shot",
        "whether the solved base weight is to keep the factor as shot",
        set!(Criteria, hold_as_shot),
    )
    .otherwise("true"),
    Field::flag(
        "hold_camera_off",
        "... with the camera off and the counterweight on",
        set!(Criteria, hold_camera_off),
    )
    .otherwise("true"),
    Field::flag(
        "hold_counterweight_off",
        "... with the counterweight off and the camera on",
        set!(Criteria, hold_counterweight_off),
    )
    .otherwise("false"),
    Field::number(range::SETTLED_SHARE, set!(Criteria, settled_share)).otherwise("0.01"),
];
