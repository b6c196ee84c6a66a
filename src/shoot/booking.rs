//! The booking request: the smallest room in which all shots of a list can be taken.

use super::room::RoomNeed;
use crate::brief::Brief;
use crate::plan::Plan;

/// One shot of a list, with the names of what it uses.
#[derive(Clone, Copy, Debug)]
pub struct Listed<'a> {
    /// The camera's name.
    pub camera: &'a str,
    /// The lens's.
    pub lens: &'a str,
    /// The support's.
    pub support: &'a str,
    /// The table's.
    pub table: &'a str,
    /// The board's or cloth's on the table; `None`: some surface without a name.
    pub surface: Option<&'a str>,
    /// The backdrop's; `None`: some backdrop without a name, if the shot has one.
    pub backdrop: Option<&'a str>,
    /// The shot.
    pub brief: &'a Brief,
    /// Its plan.
    pub plan: &'a Plan,
}

/// A length that one shot of the list decides.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Decided {
    /// The length.
    pub mm: f64,
    /// The shot that needs it, counted from 0; of equals the first.
    pub by_shot: usize,
}

/// The room to book. The walls of the bays that the briefs have do not enter it; the clearance under the
/// ceiling and the room for a person behind the camera do, as each brief has them.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Booking {
    /// Smallest floor from side to side.
    pub floor_across_mm: f64,
    /// Smallest floor from front to back.
    pub floor_along_mm: f64,
    /// Where in it the table's centre stands: from the front, right, back and left wall.
    pub table_from_walls: [Decided; 4],
    /// Smallest ceiling, clearance included.
    pub ceiling: Decided,
    /// Lowest pivot of the head above the floor.
    pub lowest_pivot: Decided,
    /// Highest.
    pub highest_pivot: Decided,
    /// Shortest reach of a boom; `None` where no shot takes one.
    pub shortest_reach: Option<Decided>,
    /// Longest.
    pub longest_reach: Option<Decided>,
}

/// The smallest room for a list of shots, the table staying where it is among them; `None` for an empty
/// list.
pub fn booking(shots: &[Listed<'_>]) -> Option<Booking> {
    let needs = || shots.iter().map(|shot| RoomNeed::of(shot.brief, shot.plan)).enumerate();
    let from_wall = |wall: usize| {
        most(needs().filter_map(|(shot, need)| Some((shot, *need.walls_with_person_mm.get(wall)?))))
    };
    let table_from_walls = [from_wall(0)?, from_wall(1)?, from_wall(2)?, from_wall(3)?];
    let [front, right, back, left] = table_from_walls;
    let pivots = || shots.iter().map(|shot| shot.plan.pose.pivot.z_mm).enumerate();
    let booms = || {
        let with_boom = shots.iter().enumerate().filter(|(_, shot)| shot.plan.placement.boom_used);
        with_boom.map(|(index, shot)| (index, shot.plan.placement.reach_mm))
    };
    Some(Booking {
        floor_across_mm: left.mm + right.mm,
        floor_along_mm: front.mm + back.mm,
        table_from_walls,
        ceiling: most(needs().map(|(shot, need)| (shot, need.ceiling_mm)))?,
        lowest_pivot: least(pivots())?,
        highest_pivot: most(pivots())?,
        shortest_reach: least(booms()),
        longest_reach: most(booms()),
    })
}

fn most(lengths: impl Iterator<Item = (usize, f64)>) -> Option<Decided> {
    lengths.fold(None, |most: Option<Decided>, (by_shot, mm)| match most {
        Some(most) if most.mm >= mm => Some(most),
        _ => Some(Decided { mm, by_shot }),
    })
}

fn least(lengths: impl Iterator<Item = (usize, f64)>) -> Option<Decided> {
    most(lengths.map(|(shot, mm)| (shot, -mm))).map(|least| Decided { mm: -least.mm, ..least })
}
