//! The bay: walls and ceiling around the table, and who passes there.

use crate::fault::Fault;
use crate::number::Extremes;
use crate::range;
use crate::scene::table::Side;
use crate::vector::FloorPoint;

/// The room around the table. A wall or ceiling left out is not there.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Bay {
    /// From the table's centre to the wall on the left (-x).
    pub left_mm: Option<f64>,
    /// From the table's centre to the wall on the right (+x).
    pub right_mm: Option<f64>,
    /// From the table's centre to the wall in front (-y).
    pub front_mm: Option<f64>,
    /// From the table's centre to the wall behind (+y).
    pub back_mm: Option<f64>,
    /// The ceiling above the floor.
    pub ceiling_mm: Option<f64>,
    /// Room kept under the ceiling.
    pub ceiling_clearance_mm: f64,
    /// Room wanted behind the camera for a person.
    pub person_room_mm: f64,
    /// The floor's steepest slope, in hundredths; up to 1 counts as level.
    pub floor_slope_percent: f64,
    /// Whether children or the public pass.
    pub public_passes: bool,
    /// Whether people are under the load: makers' ratings are then divided.
    pub people_under: bool,
}

impl Bay {
    /// No walls, no ceiling, a level floor, nobody passing.
    pub const OPEN: Bay = Bay {
        left_mm: None,
        right_mm: None,
        front_mm: None,
        back_mm: None,
        ceiling_mm: None,
        ceiling_clearance_mm: 0.0,
        person_room_mm: 0.0,
        floor_slope_percent: 0.0,
        public_passes: false,
        people_under: false,
    };

    /// Refuses a field that is not finite or out of its range (see [`crate::range`]).
    pub fn check(&self) -> Result<(), Fault> {
        for (field, wall) in [
            ("bay.left_mm", self.left_mm),
            ("bay.right_mm", self.right_mm),
            ("bay.front_mm", self.front_mm),
            ("bay.back_mm", self.back_mm),
        ] {
            range::WALL_MM.check_given(wall).map_err(|fault| Fault { field, ..fault })?;
        }
        range::CEILING_MM.check_given(self.ceiling_mm)?;
        range::CEILING_CLEARANCE_MM.check(self.ceiling_clearance_mm)?;
        range::PERSON_ROOM_MM.check(self.person_room_mm)?;
        range::FLOOR_SLOPE_PERCENT.check(self.floor_slope_percent).map(|_| ())
    }

    /// The wall on a side of the table, from the table's centre; infinite where there is none.
    pub fn wall_mm(&self, side: Side) -> f64 {
        let wall = match side {
            Side::Front => self.front_mm,
            Side::Right => self.right_mm,
            Side::Back => self.back_mm,
            Side::Left => self.left_mm,
        };
        wall.unwrap_or(f64::INFINITY)
    }

    /// How far a place seen from above is inside the nearest wall; negative outside the bay, infinite
    /// without walls.
    pub fn inside_walls_mm(&self, place: FloorPoint) -> f64 {
        (self.wall_mm(Side::Right) - place.x_mm)
            .smaller(self.wall_mm(Side::Left) + place.x_mm)
            .smaller(self.wall_mm(Side::Back) - place.y_mm)
            .smaller(self.wall_mm(Side::Front) + place.y_mm)
    }

    /// Room from a place to the wall in a horizontal direction (components along x and y); infinite where
    /// no wall is met.
    pub(crate) fn room_towards_mm(&self, place: FloorPoint, x: f64, y: f64) -> f64 {
        let mut room = f64::INFINITY;
        for (towards, gap) in [
            (x, self.wall_mm(Side::Right) - place.x_mm),
            (-x, self.wall_mm(Side::Left) + place.x_mm),
            (y, self.wall_mm(Side::Back) - place.y_mm),
            (-y, self.wall_mm(Side::Front) + place.y_mm),
        ] {
            if towards > 0.0 && gap / towards < room {
                room = gap / towards;
            }
        }
        room
    }
}
