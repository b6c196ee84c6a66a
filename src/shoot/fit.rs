//! Whether shots fit a bay as the table stands, and where in it the table may stand.

use super::room::RoomNeed;
use crate::scene::bay::Bay;
use crate::scene::table::Side;

/// How far the table, and everything around it, may be moved from where it stands. Infinite towards a side
/// without a wall. Where the least exceeds the most there is no such place.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct TableMoves {
    /// To the right (negative: to the left), at least.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub least_right_mm: f64,
    /// To the right, at most.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub most_right_mm: f64,
    /// To the back (negative: to the front), at least.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub least_back_mm: f64,
    /// To the back, at most.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub most_back_mm: f64,
}

/// How one or several shots fit a bay.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Fit {
    /// How often the table, with everything around it, is turned by 90 degrees, counter-clockwise seen from
    /// above: 0 to 3.
    pub quarter_turns: u32,
    /// Whether everything fits as the table stands, with room for the person.
    pub fits: bool,
    /// Room left to each of the bay's walls as the table stands: front, right, back, left; negative where
    /// it does not fit, infinite without a wall.
    #[cfg_attr(feature = "text", serde(serialize_with = "rooms"))]
    pub walls_left_mm: [f64; 4],
    /// Room left under the ceiling; negative where it does not fit, infinite without a ceiling.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub ceiling_left_mm: f64,
    /// Where the table may stand so that table, feet, tail and camera are inside the walls.
    pub moves: TableMoves,
    /// Where it may stand so that there is room for the person behind the camera too.
    pub moves_with_person: TableMoves,
}

#[cfg(feature = "text")]
fn rooms<S: serde::Serializer>(rooms: &[f64; 4], to: S) -> Result<S::Ok, S::Error> {
    #[derive(serde::Serialize)]
    struct Room(#[serde(serialize_with = "crate::number::number_or_infinite")] f64);
    to.collect_seq(rooms.map(Room))
}

impl TableMoves {
    /// Whether there is no place at all.
    pub fn is_empty(&self) -> bool {
        self.lacking_across_mm() > 0.0 || self.lacking_along_mm() > 0.0
    }

    /// By how much the bay is too narrow from side to side; 0 where it is not.
    pub fn lacking_across_mm(&self) -> f64 {
        (self.least_right_mm - self.most_right_mm).max(0.0)
    }

    /// By how much it is too short from front to back.
    pub fn lacking_along_mm(&self) -> f64 {
        (self.least_back_mm - self.most_back_mm).max(0.0)
    }

    /// The places that are in both.
    pub fn and(&self, other: &TableMoves) -> TableMoves {
        TableMoves {
            least_right_mm: self.least_right_mm.max(other.least_right_mm),
            most_right_mm: self.most_right_mm.min(other.most_right_mm),
            least_back_mm: self.least_back_mm.max(other.least_back_mm),
            most_back_mm: self.most_back_mm.min(other.most_back_mm),
        }
    }

    /// The shortest move into the region, right and back; 0 along what already fits. `None` where it is
    /// empty.
    pub fn nearest_mm(&self) -> Option<(f64, f64)> {
        if self.is_empty() {
            return None;
        }
        let into = |least: f64, most: f64| 0.0_f64.max(least).min(most);
        Some((into(self.least_right_mm, self.most_right_mm), into(self.least_back_mm, self.most_back_mm)))
    }

    /// Moves within the walls: each wall's room must stay 0 or more.
    fn within(left_mm: [f64; 4]) -> TableMoves {
        let [front, right, back, left] = left_mm;
        TableMoves {
            least_right_mm: 0.0 - left,
            most_right_mm: right,
            least_back_mm: 0.0 - front,
            most_back_mm: back,
        }
    }
}

/// How a shot, or several taken together ([`RoomNeed::with`]), fits a bay, the table standing as it does or
/// turned by quarter turns (taken modulo 4) about its centre, the bay's walls staying where they are.
///
/// Moving the table moves everything around it alike, so the region for several shots is the part that
/// their regions share.
pub fn fit(bay: &Bay, need: &RoomNeed, quarter_turns: u32) -> Fit {
    let quarter_turns = quarter_turns % 4;
    let left = |need: [f64; 4]| {
        let mut turned = need;
        turned.rotate_right(quarter_turns as usize);
        let mut left = Side::ALL.map(|side| bay.wall_mm(side));
        for (left, need) in left.iter_mut().zip(turned) {
            *left -= need;
        }
        left
    };
    let walls_left_mm = left(need.walls_with_person_mm);
    let ceiling_left_mm = bay.ceiling_mm.unwrap_or(f64::INFINITY) - need.ceiling_mm;
    Fit {
        quarter_turns,
        fits: ceiling_left_mm >= 0.0 && walls_left_mm.iter().all(|room| *room >= 0.0),
        walls_left_mm,
        ceiling_left_mm,
        moves: TableMoves::within(left(need.walls_mm)),
        moves_with_person: TableMoves::within(walls_left_mm),
    }
}
