//! Questions about glass and sensor alone.

use std::prelude::rust_2024::*;

use serde::Serialize;

use super::asked::Asked;
use super::given::Question;
use super::inverse::{ASPECT, HOLD, NO_SHOT, SHOOT, USED};
use super::refusal::Refusal;
use super::shots::FORM;
use super::{Answer, How, Operation, REQUIRED, told};
use crate::fault::{Fault, FaultKind};
use crate::number::sin_cos_deg;
use crate::optics::focus::{
    DepthOfField, FocusStack, FocusWish, ThirdStop, blur_mm, depth_of_field, diffraction_disc_mm,
    diffraction_limit_f_number, effective_f_number, exposure_loss_stops, f_number_to_hold, stack,
    third_stop_down, third_stop_up,
};
use crate::optics::lens::{FieldAngles, FocusedLens};
use crate::optics::sensor::UsedArea;
use crate::optics::tilt::{Tilt, tilt_onto_table};
use crate::range;
use crate::shootfile::field::Standing;

const LENS: (&str, Standing) = ("lens", Standing::Otherwise("the shot's, or the file's only one"));
const CAMERA: (&str, Standing) = ("camera", Standing::Otherwise("the shot's, or the file's only one"));
const AT: Standing = Standing::Among("magnification or frame_width_mm, or a shot");
const MAGNIFICATION: (&str, Standing) = ("magnification", AT);
const FRAME: (&str, Standing) = ("frame_width_mm", AT);
const BLUR: (&str, Standing) = ("circle_of_confusion_mm", Standing::Otherwise("the camera's"));

pub(super) static OPERATIONS: &[Operation] = &[
    Operation {
        name: "used_area",
        meaning: "The part of the sensor that the delivered picture uses.",
        takes: &[CAMERA, SHOOT, FORM, NO_SHOT, HOLD, ASPECT],
        answers: "UsedArea",
        answer: How::Question(used_area),
    },
    Operation {
        name: "lens_focused",
        meaning: "Where a lens stands when it is focused, and how wide it sees.",
        takes: &[LENS, CAMERA, SHOOT, FORM, NO_SHOT, HOLD, ASPECT, USED, MAGNIFICATION, FRAME],
        answers: "Focused",
        answer: How::Question(lens_focused),
    },
    Operation {
        name: "depth_of_field",
        meaning: "What is sharp at an f-number, and what that costs in light and diffraction.",
        takes: &[
            LENS,
            CAMERA,
            SHOOT,
            FORM,
            NO_SHOT,
            HOLD,
            ASPECT,
            USED,
            MAGNIFICATION,
            FRAME,
            ("f_number", REQUIRED),
            BLUR,
        ],
        answers: "Sharp",
        answer: How::Question(sharp),
    },
    Operation {
        name: "f_number_to_hold",
        meaning: "The f-number that holds everything from the nearest to the farthest point sharp, and the third stop above it.",
        takes: &[
            LENS,
            CAMERA,
            SHOOT,
            FORM,
            NO_SHOT,
            HOLD,
            ASPECT,
            USED,
            MAGNIFICATION,
            FRAME,
            ("nearest_mm", REQUIRED),
            ("farthest_mm", REQUIRED),
            BLUR,
        ],
        answers: "ToHold",
        answer: How::Question(to_hold),
    },
    Operation {
        name: "focus_stack",
        meaning: "How many pictures, and how far apart, hold everything from the nearest to the farthest point sharp.",
        takes: &[
            LENS,
            CAMERA,
            SHOOT,
            FORM,
            NO_SHOT,
            HOLD,
            ASPECT,
            USED,
            MAGNIFICATION,
            FRAME,
            ("f_number", REQUIRED),
            ("nearest_mm", REQUIRED),
            ("farthest_mm", REQUIRED),
            ("stack_overlap", Standing::Otherwise("0.3")),
            BLUR,
        ],
        answers: "Stacked",
        answer: How::Question(stacked),
    },
    Operation {
        name: "blur",
        meaning: "The blur on the sensor of a point at a distance.",
        takes: &[
            LENS,
            CAMERA,
            SHOOT,
            FORM,
            NO_SHOT,
            HOLD,
            ASPECT,
            USED,
            MAGNIFICATION,
            FRAME,
            ("f_number", REQUIRED),
            ("distance_mm", REQUIRED),
        ],
        answers: "Blurred",
        answer: How::Question(blurred),
    },
    Operation {
        name: "tilt_onto_table",
        meaning: "The tilt of the lens that lays the plane of focus on the table.",
        takes: &[
            LENS,
            CAMERA,
            SHOOT,
            FORM,
            NO_SHOT,
            HOLD,
            ASPECT,
            USED,
            MAGNIFICATION,
            FRAME,
            ("elevation_deg", REQUIRED),
            ("aim_height_mm", Standing::Otherwise("0, the table top")),
        ],
        answers: "Tilt",
        answer: How::Question(tilt),
    },
    Operation {
        name: "third_stop",
        meaning: "The third stops above and below an f-number, as they are and as they are engraved.",
        takes: &[("f_number", REQUIRED)],
        answers: "ThirdStops",
        answer: How::Asked(third_stop),
    },
];

fn used_area(question: &Question) -> Answer {
    let used: UsedArea = question.used_area()?;
    told(&used)
}

/// A focused lens, and its frame in the plane through the aim point.
#[derive(Serialize)]
pub(super) struct Focused {
    lens: FocusedLens,
    /// What the picture loses against infinity.
    exposure_loss_stops: f64,
    /// The frame; `None` where the used area is not known.
    frame: Option<Frame>,
}

/// A frame in the plane through the aim point.
#[derive(Serialize)]
pub(super) struct Frame {
    width_mm: f64,
    /// 0 where only the used width is known.
    height_mm: f64,
    field_angles: FieldAngles,
}

fn lens_focused(question: &Question) -> Answer {
    let lens = question.focused()?;
    let frame = question.used_area().ok().map(|used| {
        let (width_mm, height_mm) = (used.width_mm / lens.magnification, used.height_mm / lens.magnification);
        Frame { width_mm, height_mm, field_angles: lens.field_angles(width_mm, height_mm) }
    });
    told(&Focused { lens, exposure_loss_stops: exposure_loss_stops(&lens), frame })
}

/// What is sharp.
#[derive(Serialize)]
pub(super) struct Sharp {
    depth_of_field: DepthOfField,
    circle_of_confusion_mm: f64,
    effective_f_number: f64,
    diffraction_disc_mm: f64,
    diffraction_limit_f_number: f64,
}

fn sharp(question: &Question) -> Answer {
    let (lens, c) = (question.focused()?, question.blur_limit_mm()?);
    let n = Question::need(question.asked.f_number, "f_number")?;
    told(&Sharp {
        depth_of_field: depth_of_field(&lens, n, c),
        circle_of_confusion_mm: c,
        effective_f_number: effective_f_number(&lens, n),
        diffraction_disc_mm: diffraction_disc_mm(&lens, n),
        diffraction_limit_f_number: diffraction_limit_f_number(&lens, c),
    })
}

/// The nearest and the farthest point of a request.
fn depth(question: &Question) -> Result<(f64, f64), Refusal> {
    let asked = &question.asked;
    Ok((Question::need(asked.nearest_mm, "nearest_mm")?, Question::need(asked.farthest_mm, "farthest_mm")?))
}

/// The f-number that holds a depth.
#[derive(Serialize)]
pub(super) struct ToHold {
    /// Infinite where no f-number does.
    #[serde(serialize_with = "crate::number::number_or_infinite")]
    f_number_needed: f64,
    third_stop: Option<ThirdStop>,
    diffraction_limit_f_number: f64,
}

fn to_hold(question: &Question) -> Answer {
    let (lens, c) = (question.focused()?, question.blur_limit_mm()?);
    let (nearest, farthest) = depth(question)?;
    let f_number_needed = f_number_to_hold(&lens, nearest, farthest, c);
    let stop = third_stop_up(f_number_needed);
    told(&ToHold {
        f_number_needed,
        // Beyond the last engraved stop there is none that holds it.
        third_stop: (stop.f_number >= f_number_needed).then_some(stop),
        diffraction_limit_f_number: diffraction_limit_f_number(&lens, c),
    })
}

/// A focus stack.
#[derive(Serialize)]
pub(super) struct Stacked {
    /// `None` where the nearest point reaches the lens.
    stack: Option<FocusStack>,
}

fn stacked(question: &Question) -> Answer {
    let (lens, circle_of_confusion_mm) = (question.focused()?, question.blur_limit_mm()?);
    let n = Question::need(question.asked.f_number, "f_number")?;
    let (nearest_mm, farthest_mm) = depth(question)?;
    if farthest_mm < -nearest_mm {
        let fault = Fault {
            kind: FaultKind::TooSmall,
            field: "depth.farthest_mm",
            value: farthest_mm,
            least: -nearest_mm,
            most: 100_000.0,
        };
        return Err(fault.into());
    }
    let stack_overlap = question.asked.stack_overlap.unwrap_or(0.3);
    let wish =
        FocusWish { nearest_mm, farthest_mm, circle_of_confusion_mm, f_number: Some(n), stack_overlap };
    told(&Stacked { stack: stack(&lens, ThirdStop { f_number: n, engraved: n }, &wish) })
}

/// A blur on the sensor.
#[derive(Serialize)]
pub(super) struct Blurred {
    blur_mm: f64,
}

fn blurred(question: &Question) -> Answer {
    let lens = question.focused()?;
    let n = Question::need(question.asked.f_number, "f_number")?;
    let distance = Question::need(question.asked.distance_mm, "distance_mm")?;
    told(&Blurred { blur_mm: blur_mm(&lens, n, distance) })
}

fn tilt(question: &Question) -> Answer {
    let lens = question.focused()?;
    let elevation = Question::need(question.asked.elevation_deg, "elevation_deg")?;
    let (sin, cos) = sin_cos_deg(elevation);
    let tilt: Tilt = tilt_onto_table(&lens, question.asked.aim_height_mm.unwrap_or(0.0), sin, cos);
    told(&tilt)
}

/// Third stops.
#[derive(Serialize)]
pub(super) struct ThirdStops {
    up: ThirdStop,
    down: ThirdStop,
}

fn third_stop(asked: &Asked) -> Answer {
    let n = range::F_NUMBER.check(Question::need(asked.f_number, "f_number")?)?;
    told(&ThirdStops { up: third_stop_up(n), down: third_stop_down(n) })
}
