//! How much room a planned shot takes around the table's centre.

use crate::brief::Brief;
use crate::plan::Plan;
use crate::rig::reach::{BayRoom, bay_room};
use crate::scene::bay::Bay;
use crate::scene::table::Side;
use crate::view::projection::View;

/// The room that a shot takes: how far each wall must at least be from the table's centre.
///
/// Each limit is a straight one along x or y, also that for the person behind a camera that looks across
/// the bay: they need their room up to each of the walls that they face, and along the slanting line to a
/// wall it grows evenly with that wall's distance. So any combination of these limits is a rectangle.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct RoomNeed {
    /// For table, feet, tail and camera: front, right, back, left.
    pub walls_mm: [f64; 4],
    /// The same with room for a person behind the camera, as the brief's bay wants it.
    pub walls_with_person_mm: [f64; 4],
    /// The ceiling above the floor: the highest point and the clearance that the brief's bay wants over it.
    pub ceiling_mm: f64,
}

impl RoomNeed {
    /// Takes nothing.
    pub const NONE: RoomNeed =
        RoomNeed { walls_mm: [0.0; 4], walls_with_person_mm: [0.0; 4], ceiling_mm: 0.0 };

    /// Of a planned shot.
    pub fn of(brief: &Brief, plan: &Plan) -> RoomNeed {
        let view = View {
            pose: plan.pose,
            pupil_distance_mm: plan.lens.pupil_distance_mm,
            frame_width_mm: plan.frame_width_mm,
            frame_height_mm: plan.frame_height_mm,
        };
        // With nothing but one wall through the table's centre, what is left is what is lacking.
        let left_by = |side: Side| -> BayRoom {
            let mut bay = Bay::OPEN;
            match side {
                Side::Front => bay.front_mm = Some(0.0),
                Side::Right => bay.right_mm = Some(0.0),
                Side::Back => bay.back_mm = Some(0.0),
                Side::Left => bay.left_mm = Some(0.0),
            }
            bay_room(&bay, &brief.table, &view, &plan.placement, brief.camera.body_behind_mm)
        };
        let lefts = Side::ALL.map(left_by);
        let half = |side| match side {
            Side::Front | Side::Back => 0.5 * brief.table.depth_mm,
            Side::Right | Side::Left => 0.5 * brief.table.width_mm,
        };
        let mut walls_mm = Side::ALL.map(half);
        for (wall, left) in walls_mm.iter_mut().zip(&lefts) {
            *wall = wall.max(-left.feet_mm.min(left.tail_mm).min(left.camera_mm));
        }
        let mut walls_with_person_mm = walls_mm;
        for ((wall, left), side) in walls_with_person_mm.iter_mut().zip(&lefts).zip(Side::ALL) {
            // How far the wall must recede for a millimetre more behind the camera.
            let (inwards, right) = (side.inwards(), plan.pose.right);
            let towards = right.x * inwards.y - right.y * inwards.x;
            if left.behind_camera_mm.is_finite() {
                *wall = wall.max((brief.bay.person_room_mm - left.behind_camera_mm) * towards);
            }
        }
        RoomNeed {
            walls_mm,
            walls_with_person_mm,
            ceiling_mm: plan.placement.highest_point_mm + brief.bay.ceiling_clearance_mm,
        }
    }

    /// What two shots take together.
    pub fn with(&self, other: &RoomNeed) -> RoomNeed {
        RoomNeed {
            walls_mm: larger(self.walls_mm, other.walls_mm),
            walls_with_person_mm: larger(self.walls_with_person_mm, other.walls_with_person_mm),
            ceiling_mm: self.ceiling_mm.max(other.ceiling_mm),
        }
    }

    /// Side to side and front to back, with room for the person: the smallest floor.
    pub fn floor_mm(&self) -> (f64, f64) {
        let [front, right, back, left] = self.walls_with_person_mm;
        (left + right, front + back)
    }
}

fn larger(mut walls: [f64; 4], others: [f64; 4]) -> [f64; 4] {
    for (wall, other) in walls.iter_mut().zip(others) {
        *wall = wall.max(other);
    }
    walls
}
