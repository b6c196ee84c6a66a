//! Where the column can stand, and how far the boom must go.

use super::support::{MOST_LEGS, Support};
use crate::doors::c::border::argument;
use crate::doors::c::border::call::{Door, entered};
use crate::doors::c::border::mirror::mirror;
use crate::doors::c::border::refusal::{Refusal, name};
use crate::doors::c::point::{Direction, FloorPoint, Point};
use crate::doors::c::scene::bay::Bay;
use crate::doors::c::scene::table::Table;
use crate::doors::c::status::Fault;
use crate::doors::c::view::projection::View;
use crate::range;
use crate::rig::reach;
use crate::scene::table;
use crate::vector;

/// Where the support stands, and how its boom lies.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Placement {
    /// 1 where a boom carries the camera; 0 where the column stands under the pivot.
    pub boom_used: i32,
    /// The side of the table on which the column stands, a TablerigSide; without a boom, of the nearest edge.
    pub side: i32,
    /// 1 where a boom is used and the support has one: `tail_end` is there.
    pub has_tail_end: i32,
    /// How many of `feet` there are.
    pub leg_count: u32,
    /// Where the column stands.
    pub column: FloorPoint,
    /// The level direction from the column in which the boom points; without a boom, towards the table.
    pub towards: Direction,
    /// Nearest that the column's axis can come to the edge on that side.
    pub stand_off_mm: f64,
    /// From the column's axis to the pivot, horizontally; 0 without a boom.
    pub reach_mm: f64,
    /// The reach it would take from each side: front, right, back, left.
    pub reach_from_sides_mm: [f64; 4],
    /// Along the boom from the clamp to the pivot, reach / cos pitch.
    pub boom_length_mm: f64,
    /// The clamp above the floor, reach x tan pitch under the pivot; without a boom, the pivot itself.
    pub clamp_height_mm: f64,
    /// The tail's end.
    pub tail_end: Point,
    /// The first leg's direction, counter-clockwise from `towards`.
    pub first_leg_deg: f64,
    /// The feet on the floor, the first `leg_count` of them; the rest repeat the column's place.
    pub feet: [FloorPoint; MOST_LEGS],
    /// The highest point of camera and rig above the floor.
    pub highest_point_mm: f64,
}
mirror!(both Placement "placement" reach::Placement {
    boom_used,
    side,
    column,
    towards,
    stand_off_mm,
    reach_mm,
    reach_from_sides_mm,
    boom_length_mm,
    clamp_height_mm,
    tail_end: (has_tail_end, tail_end),
    first_leg_deg,
    leg_count,
    feet,
    highest_point_mm,
});

/// What the bay leaves around camera and rig; negative where they do not fit, infinite where there is no wall
/// or ceiling.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct BayRoom {
    /// From the outermost foot to the nearest wall.
    pub feet_mm: f64,
    /// From the tail's end to the nearest wall; infinite without a boom.
    pub tail_mm: f64,
    /// From the camera (body's back, pupil and pivot) to the nearest wall.
    pub camera_mm: f64,
    /// From the highest point to the ceiling less the clearance.
    pub ceiling_mm: f64,
    /// Behind the camera, in the direction of its bearing, from the camera's back or from the table's edge
    /// if that lies further out.
    pub behind_camera_mm: f64,
}
mirror!(out BayRoom "bay_room" reach::BayRoom { feet_mm, tail_mm, camera_mm, ceiling_mm, behind_camera_mm });

/// How much of the support shows in the picture, were nothing before it.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct SupportInPicture {
    /// Length of the column inside the frame.
    pub column_mm: f64,
    /// Length of the boom and its tail inside the frame.
    pub boom_mm: f64,
}
mirror!(out SupportInPicture "support_in_picture" reach::SupportInPicture { column_mm, boom_mm });

impl Door {
    /// A placement with as many feet as a support may have.
    pub(crate) fn placement(&mut self, placement: *const Placement) -> Result<reach::Placement, Refusal> {
        let placement: reach::Placement = self.value(placement, name!("placement"))?;
        argument::FEET_PLACED.check(f64::from(placement.leg_count))?;
        Ok(placement)
    }
}

/// Where the support stands to carry a pivot, and how far its boom goes. A pivot that lies outside the table
/// by the stand-off needs no boom; otherwise the boom reaches square over an edge, that of the shortest reach,
/// or over `side` (a TablerigSide) where `has_side` is 1. A support without a boom is placed as if one reached
/// over. `body_top_mm` is the highest point of camera and lens.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_placement(
    support: *const Support,
    table: *const Table,
    pivot: *const Point,
    body_top_mm: f64,
    has_side: i32,
    side: i32,
    placement: *mut Placement,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(placement, name!("placement"))?;
        let support = door.part(support)?;
        let table = door.part(table)?;
        let pivot: vector::Point = door.value(pivot, name!("pivot"))?;
        let body_top = argument::BODY_TOP_MM.check(body_top_mm)?;
        let has: bool = entered(&has_side, name!("has_side"))?;
        let side: Option<table::Side> = entered(&(i32::from(has), side), name!("side"))?;
        out.put(&reach::placement(&support, &table, pivot, body_top, side))
    })
}

/// What the bay leaves around a placed camera and rig; infinite where there is no wall or ceiling.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_bay_room(
    bay: *const Bay,
    table: *const Table,
    view: *const View,
    placement: *const Placement,
    body_behind_mm: f64,
    bay_room: *mut BayRoom,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(bay_room, name!("bay_room"))?;
        let bay = door.part(bay)?;
        let table = door.part(table)?;
        let view = door.view(view)?;
        let placement = door.placement(placement)?;
        let behind = range::BODY_BEHIND_MM.check(body_behind_mm)?;
        out.put(&reach::bay_room(&bay, &table, &view, &placement, behind))
    })
}

/// How much of column and boom lies inside the frame.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_support_in_picture(
    view: *const View,
    table: *const Table,
    support: *const Support,
    placement: *const Placement,
    support_in_picture: *mut SupportInPicture,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(support_in_picture, name!("support_in_picture"))?;
        let view = door.view(view)?;
        let table = door.part(table)?;
        let support = door.part(support)?;
        let placement = door.placement(placement)?;
        out.put(&reach::support_in_picture(&view, &table, &support, &placement))
    })
}
