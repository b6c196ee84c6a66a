//! Questions asked the other way round: from what was measured or found to what it means.

use std::format;
use std::prelude::rust_2024::*;

use serde::Serialize;

use super::given::Question;
use super::refusal::Refusal;
use super::shots::FORM;
use super::{Answer, How, Operation, REQUIRED, told};
use crate::caution::overhead::OVERHEAD_CAUTIONS;
use crate::fault::Fault;
use crate::optics::inverse::{
    Viewpoint, focal_length_for as focal_length, magnification_at as magnification, viewpoint as seen_from,
};
use crate::optics::lens::{FocusedLens, Lens};
use crate::range;
use crate::shootfile::Step;
use crate::shootfile::field::Standing;
use crate::shootfile::gear::{BLANK_CAMERA, BLANK_LENS};
use crate::shootfile::problem::{Problem, ProblemKind};
use crate::view::framing::{Fill, frame_width_for_fill as for_fill, largest_frame_width_mm};
use crate::view::pose::Orientation;

pub(super) const GIVEN: Standing = Standing::Otherwise("the shot's, or the file's only one");
pub(super) const SHOOT: (&str, Standing) = ("shoot", Standing::Otherwise("none: everything is given here"));
pub(super) const NO_SHOT: (&str, Standing) = ("shot", Standing::Otherwise("none"));
const OF_SHOT: Standing = Standing::Otherwise("the shot's");
pub(super) const HOLD: (&str, Standing) = ("hold", Standing::Otherwise("the shot's, or across"));
pub(super) const ASPECT: (&str, Standing) =
    ("delivered_aspect", Standing::Otherwise("the shot's, or the sensor's own"));
pub(super) const USED: (&str, Standing) = ("used_width_mm", Standing::Otherwise("the camera's"));
const SHARE: Standing = Standing::Among("fill_width or fill_height");

pub(super) static OPERATIONS: &[Operation] = &[
    Operation {
        name: "magnification_at",
        meaning: "The magnification of a lens at a distance, and the frame it shows there.",
        takes: &[
            ("lens", GIVEN),
            ("camera", GIVEN),
            SHOOT,
            FORM,
            NO_SHOT,
            HOLD,
            ASPECT,
            USED,
            ("sensor_distance_mm", REQUIRED),
        ],
        answers: "AtDistance",
        answer: How::Question(magnification_at),
    },
    Operation {
        name: "focal_length_for",
        meaning: "The focal length that shows a frame from a distance, of a lens that keeps it as it focuses.",
        takes: &[
            ("camera", GIVEN),
            SHOOT,
            FORM,
            NO_SHOT,
            HOLD,
            ASPECT,
            USED,
            ("pupil_distance_mm", REQUIRED),
            ("frame_width_mm", REQUIRED),
            ("pupil_ratio", Standing::Otherwise("1")),
        ],
        answers: "FocalLength",
        answer: How::Question(focal_length_for),
    },
    Operation {
        name: "viewpoint",
        meaning: "The lens that repeats on the stand a viewpoint found with another camera in the hand.",
        takes: &[
            ("hand_focal_length_mm", REQUIRED),
            ("hand_sensor_width_mm", REQUIRED),
            ("hand_distance_mm", REQUIRED),
            ("camera", GIVEN),
            SHOOT,
            FORM,
            NO_SHOT,
            HOLD,
            ASPECT,
            USED,
            ("pupil_ratio", Standing::Otherwise("1")),
        ],
        answers: "Repeated",
        answer: How::Question(viewpoint),
    },
    Operation {
        name: "frame_width_for_fill",
        meaning: "The frame width at which a subject fills a share of the frame.",
        takes: &[
            ("lens", GIVEN),
            ("camera", GIVEN),
            ("subject", GIVEN),
            SHOOT,
            FORM,
            NO_SHOT,
            HOLD,
            ASPECT,
            ("fill_width", SHARE),
            ("fill_height", SHARE),
            ("elevation_deg", OF_SHOT),
            ("bearing_deg", Standing::Otherwise("the shot's, or 0")),
            ("aim_height_mm", Standing::Otherwise("half the subject's height")),
        ],
        answers: "FrameWidth",
        answer: How::Question(frame_width_for_fill),
    },
    Operation {
        name: "largest_frame_width",
        meaning: "The largest frame that keeps the camera under a ceiling; whether stand and boom reach there, a plan says.",
        takes: &[
            ("lens", GIVEN),
            ("camera", GIVEN),
            ("bay", GIVEN),
            SHOOT,
            FORM,
            NO_SHOT,
            HOLD,
            ASPECT,
            USED,
            ("ceiling_mm", Standing::Otherwise("the bay's")),
            ("ceiling_clearance_mm", Standing::Otherwise("the bay's, or 0")),
            ("elevation_deg", OF_SHOT),
            ("bearing_deg", Standing::Otherwise("the shot's, or 0")),
            ("aim_height_above_floor_mm", OF_SHOT),
            ("pivot_below_socket_mm", Standing::Otherwise("the shot's, or 0")),
        ],
        answers: "LargestFrame",
        answer: How::Question(largest_frame_width),
    },
];

/// A lens at a distance.
#[derive(Serialize)]
pub(super) struct AtDistance {
    magnification: f64,
    viewpoint: Viewpoint,
    lens: FocusedLens,
}

fn magnification_at(question: &Question) -> Answer {
    let lens = question.lens()?;
    let used = question.used_area()?;
    let distance = Question::need(question.asked.sensor_distance_mm, "sensor_distance_mm")?;
    let magnification = magnification(&lens, distance)?;
    told(&AtDistance {
        magnification,
        viewpoint: seen_from(&lens, used.width_mm, distance)?,
        lens: lens.focused(magnification),
    })
}

/// A focal length.
#[derive(Serialize)]
pub(super) struct FocalLength {
    focal_length_mm: f64,
}

fn focal_length_for(question: &Question) -> Answer {
    let asked = &question.asked;
    let used = question.used_area()?;
    let distance = Question::need(asked.pupil_distance_mm, "pupil_distance_mm")?;
    let width = Question::need(asked.frame_width_mm, "frame_width_mm")?;
    let focal_length_mm = focal_length(distance, width, used.width_mm, asked.pupil_ratio.unwrap_or(1.0))?;
    told(&FocalLength { focal_length_mm })
}

/// A viewpoint repeated.
#[derive(Serialize)]
pub(super) struct Repeated {
    viewpoint: Viewpoint,
    focal_length_mm: f64,
}

fn viewpoint(question: &Question) -> Answer {
    let asked = &question.asked;
    let used = question.used_area()?;
    let hand = Lens {
        focal_length_mm: Question::need(asked.hand_focal_length_mm, "hand_focal_length_mm")?,
        least_f_number: 1.0,
        most_f_number: 64.0,
        ..BLANK_LENS
    };
    let sensor = Question::need(asked.hand_sensor_width_mm, "hand_sensor_width_mm")?;
    let distance = Question::need(asked.hand_distance_mm, "hand_distance_mm")?;
    let seen = seen_from(&hand, sensor, distance).map_err(of_hand)?;
    let ratio = asked.pupil_ratio.unwrap_or(1.0);
    let focal_length_mm = focal_length(seen.pupil_distance_mm, seen.frame_width_mm, used.width_mm, ratio)?;
    told(&Repeated { viewpoint: seen, focal_length_mm })
}

/// A refusal of what belongs to the camera in the hand, under the key that it was given by.
fn of_hand(fault: Fault) -> Refusal {
    let key = match fault.field.rsplit('.').next() {
        Some("sensor_distance_mm") => "hand_distance_mm",
        Some("width_mm") => "hand_sensor_width_mm",
        _ => "hand_focal_length_mm",
    };
    let title = format!("`{key}` {}", fault.kind.sentence());
    let mut problem = Problem::general(ProblemKind::Refused, title).fault(&fault);
    problem.path.push(Step::Key(key.into()));
    Refusal::one(problem)
}

/// A frame width.
#[derive(Serialize)]
pub(super) struct FrameWidth {
    frame_width_mm: f64,
}

/// The shot's orientation, overruled by what is given.
fn orientation(question: &Question) -> Result<Orientation, Refusal> {
    let asked = &question.asked;
    let shot = if asked.shot.is_some() { Some(&question.shot()?.brief.shot) } else { None };
    let elevation =
        Question::need(asked.elevation_deg.or(shot.map(|shot| shot.elevation_deg)), "elevation_deg")?;
    let bearing = asked.bearing_deg.or(shot.map(|shot| shot.bearing_deg)).unwrap_or(0.0);
    Ok(Orientation::new(elevation, bearing))
}

fn frame_width_for_fill(question: &Question) -> Answer {
    let asked = &question.asked;
    let (lens, subject, used) = (question.lens()?, question.subject()?, question.used_area()?);
    let at = orientation(question)?;
    let aim = asked.aim_height_mm.unwrap_or(0.5 * subject.height_mm);
    let (fill, share) = match (asked.fill_width, asked.fill_height) {
        (Some(share), None) => (Fill::Width, share),
        (None, Some(share)) => (Fill::Height, share),
        _ => return Err(Refusal::lacks("give fill_width or fill_height", &["fill_width", "fill_height"])),
    };
    let frame_width_mm = for_fill(fill, share, &lens, &used, &subject, aim, &at)?;
    told(&FrameWidth { frame_width_mm })
}

/// The largest frame under a ceiling.
#[derive(Serialize)]
pub(super) struct LargestFrame {
    frame_width_mm: f64,
    lens: FocusedLens,
    /// What goes with every load above a table or a person.
    usual_cautions: [&'static str; 8],
}

fn largest_frame_width(question: &Question) -> Answer {
    let asked = &question.asked;
    let (lens, used, bay) = (question.lens()?, question.used_area()?, question.bay()?);
    let shot = if asked.shot.is_some() { Some(question.shot()?) } else { None };
    let ceiling = asked.ceiling_mm.or(bay.and_then(|bay| bay.ceiling_mm));
    let ceiling = Question::need(ceiling, "ceiling_mm")?;
    let clearance = asked.ceiling_clearance_mm.or(bay.map(|bay| bay.ceiling_clearance_mm)).unwrap_or(0.0);
    let aim = asked.aim_height_above_floor_mm.or(shot.map(|shot| shot.plan.pose.aim.z_mm));
    let aim = Question::need(aim, "aim_height_above_floor_mm")?;
    let pivot =
        asked.pivot_below_socket_mm.or(shot.map(|shot| shot.brief.support.head.pivot_below_socket_mm));
    // A camera of which only the used width is known: as if it were no larger than a point.
    let camera = question.camera()?.unwrap_or(crate::optics::camera::Camera {
        sensor_width_mm: used.width_mm.max(range::SENSOR_WIDTH_MM.least),
        sensor_height_mm: range::SENSOR_HEIGHT_MM.least,
        mass_kg: range::CAMERA_MASS_KG.least,
        ..BLANK_CAMERA
    });
    let at = orientation(question)?;
    let frame_width_mm =
        largest_frame_width_mm(ceiling - clearance, aim, &at, &lens, &used, &camera, pivot.unwrap_or(0.0))?;
    told(&LargestFrame {
        frame_width_mm,
        lens: lens.focused(used.width_mm / frame_width_mm),
        usual_cautions: OVERHEAD_CAUTIONS,
    })
}
