//! Places in the room and in the picture.

use std::prelude::rust_2024::*;

use serde::Serialize;

use super::given::Question;
use super::shots::{FORM, ONE};
use super::{Answer, How, Operation, REQUIRED, told};
use crate::plan::Plan;
use crate::shootfile::NamedShot;
use crate::shootfile::field::Standing;
use crate::vector::Point;
use crate::view::projection::{PicturePoint, View};

pub(super) static OPERATIONS: &[Operation] = &[
    Operation {
        name: "project",
        meaning: "Where places in the room appear in the picture of a shot.",
        takes: &[("shoot", REQUIRED), FORM, ("shot", ONE), ("points", REQUIRED)],
        answers: "Projected",
        answer: How::Question(project),
    },
    Operation {
        name: "cast_onto_level",
        meaning: "Which places of a level plane appear at places in the picture of a shot.",
        takes: &[
            ("shoot", REQUIRED),
            FORM,
            ("shot", ONE),
            ("places", REQUIRED),
            ("z_mm", Standing::Otherwise("the table top")),
        ],
        answers: "Cast",
        answer: How::Question(cast_onto_level),
    },
];

fn view(shot: &NamedShot) -> View {
    let Plan { pose, lens, frame_width_mm, frame_height_mm, .. } = shot.plan;
    View { pose, pupil_distance_mm: lens.pupil_distance_mm, frame_width_mm, frame_height_mm }
}

/// Places in the picture.
#[derive(Serialize)]
pub(super) struct Projected {
    /// For each place in the room; `None` at or behind the entrance pupil's plane.
    places: Vec<Option<PicturePoint>>,
}

fn project(question: &Question) -> Answer {
    let view = view(question.shot()?);
    let places = question.asked.points.iter().map(|point| view.project(*point)).collect();
    told(&Projected { places })
}

/// Places in the room.
#[derive(Serialize)]
pub(super) struct Cast {
    /// For each place in the picture; `None` where the line of sight does not meet the plane.
    points: Vec<Option<Point>>,
}

fn cast_onto_level(question: &Question) -> Answer {
    let shot = question.shot()?;
    let view = view(shot);
    let z_mm = question.asked.z_mm.unwrap_or(shot.brief.table.height_mm);
    let cast = |place: &PicturePoint| view.cast_onto_level(*place, z_mm).filter(finite);
    told(&Cast { points: question.asked.places.iter().map(cast).collect() })
}

/// A line of sight that all but runs along the plane meets it nowhere that a number can say.
fn finite(point: &Point) -> bool {
    point.x_mm.is_finite() && point.y_mm.is_finite() && point.z_mm.is_finite()
}
