//! Where the column can stand, and how far the boom must go.

use super::support::{MOST_LEGS, Support};
use crate::number::{Extremes, floor, hypot, sin_cos_deg};
use crate::scene::bay::Bay;
use crate::scene::table::{Side, Table, Underside};
use crate::vector::{Direction, FloorPoint, Point};
use crate::view::projection::View;

/// Where the support stands, and how its boom lies.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Placement {
    /// Whether a boom carries the camera; without one the column stands under the pivot.
    pub boom_used: bool,
    /// The side of the table on which the column stands; without a boom, of the nearest edge.
    pub side: Side,
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
    /// The clamp above the floor, reach × tan pitch under the pivot; without a boom, the pivot itself.
    pub clamp_height_mm: f64,
    /// The tail's end, if a boom is used.
    pub tail_end: Option<Point>,
    /// The first leg's direction, counter-clockwise from `towards`.
    pub first_leg_deg: f64,
    /// How many of `feet` there are.
    pub leg_count: u32,
    /// The feet on the floor, the first `leg_count` of them; the rest repeat the column's place.
    pub feet: [FloorPoint; MOST_LEGS],
    /// The highest point of camera and rig above the floor.
    pub highest_point_mm: f64,
}

/// What the bay leaves around camera and rig; negative where they do not fit, infinite where there is no
/// wall or ceiling.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct BayRoom {
    /// From the outermost foot to the nearest wall.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub feet_mm: f64,
    /// From the tail's end to the nearest wall; infinite without a boom.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub tail_mm: f64,
    /// From the camera (body's back, pupil and pivot) to the nearest wall.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub camera_mm: f64,
    /// From the highest point to the ceiling less the clearance.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub ceiling_mm: f64,
    /// Behind the camera, in the direction of its bearing, from the camera's back or from the table's
    /// edge if that lies further out.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub behind_camera_mm: f64,
}

/// How much of the support shows in the picture, were nothing before it.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct SupportInPicture {
    /// Length of the column inside the frame.
    pub column_mm: f64,
    /// Length of the boom and its tail inside the frame.
    pub boom_mm: f64,
}

/// The first leg's direction from the boom's: the one given, or a leg under the load with a boom and half
/// a spacing without.
fn first_leg_deg(support: &Support, boom: bool) -> f64 {
    match support.first_leg_deg {
        Some(given) => given,
        None if boom => 0.0,
        None => 0.5 * support.leg_spacing_deg(),
    }
}

/// Nearest that the column's axis can come to an edge that the legs face at `first_leg_deg`.
///
/// Closed underside: foot circle × the largest cosine of a leg's direction towards the table + clearance.
/// Open underside: the same with the leg circle at the table's height, since feet pass under it.
fn stand_off_mm(support: &Support, table: &Table, first_leg_deg: f64) -> f64 {
    // The leg nearest to the direction towards the table is at most half a spacing off it.
    let spacing = support.leg_spacing_deg();
    let (_, largest_cosine) = sin_cos_deg(first_leg_deg - spacing * floor(first_leg_deg / spacing + 0.5));
    let circle = match table.underside {
        Underside::Closed => support.foot_radius_mm,
        Underside::Open => support.leg_circle_mm(table.height_mm),
    };
    (circle * largest_cosine).larger(support.column_radius_mm) + support.table_clearance_mm
}

/// The level direction from a place to the table, and the side it lies on: to the nearest point of the
/// top from outside; square to the nearest edge from above it.
fn towards_table(table: &Table, place: FloorPoint) -> (Side, Direction) {
    let mut nearest = Side::Front;
    let mut outside = f64::NEG_INFINITY;
    for side in Side::ALL {
        let out = table.outside_edge_mm(side, place);
        if out > outside {
            (nearest, outside) = (side, out);
        }
    }
    let x = (place.x_mm.abs() - 0.5 * table.width_mm).larger(0.0);
    let y = (place.y_mm.abs() - 0.5 * table.depth_mm).larger(0.0);
    if x > 0.0 && y > 0.0 {
        let away = hypot(x, y);
        let direction =
            Direction { x: (x / away).copysign(-place.x_mm), y: (y / away).copysign(-place.y_mm), z: 0.0 };
        return (nearest, direction);
    }
    (nearest, nearest.inwards())
}

/// Where the support stands to carry a pivot, and how far its boom goes.
///
/// A pivot that lies outside the table by the stand-off needs no boom. Otherwise the boom reaches square
/// over an edge from the nearest allowed place of the column, over the edge of the shortest reach unless
/// `side` names one. A support without a boom is placed as if one reached over; the plan says that it is
/// missing.
pub fn placement(
    support: &Support,
    table: &Table,
    pivot: Point,
    body_top_mm: f64,
    side: Option<Side>,
) -> Placement {
    let place = pivot.floor();
    let (nearest_side, nearest_direction) = towards_table(table, place);
    let upright_first = first_leg_deg(support, false);
    let upright_stand_off = stand_off_mm(support, table, upright_first);
    let boom_first = first_leg_deg(support, true);
    let boom_stand_off = stand_off_mm(support, table, boom_first);
    // From a side beyond which the pivot already lies, the column moves out to under it.
    let reach_from = |side| (boom_stand_off - table.outside_edge_mm(side, place)).larger(0.0);
    let reaches = Side::ALL.map(reach_from);

    let outside = table.from_nearest_edge_mm(place) >= upright_stand_off;
    let wanted = match side {
        Some(side) => table.outside_edge_mm(side, place) >= upright_stand_off,
        None => true,
    };
    let boom_used = !(outside && wanted);
    let (chosen, reach_mm, towards, first_leg_deg, stand_off_mm) = if boom_used {
        let mut best = (Side::Front, f64::INFINITY);
        for (at, reach) in Side::ALL.into_iter().zip(reaches) {
            let allowed = side.is_none() || side == Some(at);
            if allowed && reach < best.1 {
                best = (at, reach);
            }
        }
        (best.0, best.1, best.0.inwards(), boom_first, boom_stand_off)
    } else {
        (side.unwrap_or(nearest_side), 0.0, nearest_direction, upright_first, upright_stand_off)
    };

    let (sin_pitch, cos_pitch, tail) = match support.boom {
        Some(boom) if boom_used => {
            let (sin, cos) = sin_cos_deg(boom.pitch_deg);
            (sin, cos, Some(boom.tail_mm))
        }
        _ => (0.0, 1.0, None),
    };
    let column = place.along(towards, -reach_mm);
    let clamp_height_mm = pivot.z_mm - reach_mm * (sin_pitch / cos_pitch);
    let tail_end = tail
        .map(|tail| column.along(towards, -tail * cos_pitch).at_height(clamp_height_mm - tail * sin_pitch));
    let mut feet = [column; MOST_LEGS];
    for (leg, foot) in feet.iter_mut().enumerate().take(support.leg_count as usize) {
        let angle = first_leg_deg + leg as f64 * support.leg_spacing_deg();
        *foot = column.along(towards.turned(angle), support.foot_radius_mm);
    }
    let tail_top = tail_end.map_or(f64::NEG_INFINITY, |end| end.z_mm);
    Placement {
        boom_used,
        side: chosen,
        column,
        towards,
        stand_off_mm,
        reach_mm,
        reach_from_sides_mm: reaches,
        boom_length_mm: reach_mm / cos_pitch,
        clamp_height_mm,
        tail_end,
        first_leg_deg,
        leg_count: support.leg_count,
        feet,
        highest_point_mm: body_top_mm.larger(pivot.z_mm).larger(clamp_height_mm).larger(tail_top),
    }
}

/// What the bay leaves around a placed camera and rig. `body_behind_mm` is the body's back behind the
/// sensor.
pub fn bay_room(
    bay: &Bay,
    table: &Table,
    view: &View,
    placement: &Placement,
    body_behind_mm: f64,
) -> BayRoom {
    let pose = &view.pose;
    let back = pose.sensor.along(pose.forward, -body_behind_mm).floor();
    let mut feet_mm = f64::INFINITY;
    for foot in placement.feet.iter().take(placement.leg_count as usize) {
        feet_mm = feet_mm.smaller(bay.inside_walls_mm(*foot));
    }
    let camera_mm = bay
        .inside_walls_mm(back)
        .smaller(bay.inside_walls_mm(pose.pupil.floor()))
        .smaller(bay.inside_walls_mm(pose.pivot.floor()));
    // The level direction towards whoever stands behind the camera.
    let behind = Direction { x: pose.right.y, y: -pose.right.x, z: 0.0 };
    let to_wall = bay.room_towards_mm(back, behind.x, behind.y);
    let table_left = over_table_mm(table, back, behind);
    BayRoom {
        feet_mm,
        tail_mm: placement.tail_end.map_or(f64::INFINITY, |end| bay.inside_walls_mm(end.floor())),
        camera_mm,
        ceiling_mm: match bay.ceiling_mm {
            Some(ceiling) => ceiling - bay.ceiling_clearance_mm - placement.highest_point_mm,
            None => f64::INFINITY,
        },
        behind_camera_mm: to_wall - table_left,
    }
}

/// How far the table goes on from a place over it in a level direction; 0 from outside.
fn over_table_mm(table: &Table, place: FloorPoint, direction: Direction) -> f64 {
    if table.from_nearest_edge_mm(place) >= 0.0 {
        return 0.0;
    }
    let mut left = f64::INFINITY;
    for side in Side::ALL {
        let inwards = side.inwards();
        let outwards = -(inwards.x * direction.x + inwards.y * direction.y);
        if outwards > 0.0 {
            left = left.smaller(-table.outside_edge_mm(side, place) / outwards);
        }
    }
    left
}

/// How much of column and boom lies inside the frame and is not hidden by the table top: the column's
/// axis and its two sides as seen from the camera, from the floor to the clamp, and the boom from the
/// tail's end to the pivot.
pub fn support_in_picture(
    view: &View,
    table: &Table,
    support: &Support,
    placement: &Placement,
) -> SupportInPicture {
    let top = placement.clamp_height_mm.larger(0.0);
    let (foot, upright) = (view.seen(placement.column.at_height(0.0)), view.upright());
    let mut column_mm = 0.0_f64;
    for beside in [-support.column_radius_mm, 0.0, support.column_radius_mm] {
        let foot = foot.beside(beside);
        let length = |from: f64, to: f64| {
            let (start, end) = view.part_in_frame(&foot.higher(&upright, from), &foot.higher(&upright, to));
            if from < to && start < end { (end - start) * (to - from) } else { 0.0 }
        };
        let all = length(0.0, top);
        if all > column_mm {
            let at = placement.column.along(view.pose.right, beside);
            let seen = match hidden_by_table_mm(view.pose.pupil, table, at) {
                Some((from, to)) => length(0.0, top.smaller(from)) + length(to.larger(0.0), top),
                None => all,
            };
            column_mm = column_mm.larger(seen);
        }
    }
    let boom_mm = match placement.tail_end {
        Some(end) => view.length_in_frame_mm(end, view.pose.pivot),
        None => 0.0,
    };
    SupportInPicture { column_mm, boom_mm }
}

/// The heights between which the table top hides an upright line at a place from a pupil above it.
fn hidden_by_table_mm(pupil: Point, table: &Table, place: FloorPoint) -> Option<(f64, f64)> {
    let above = pupil.z_mm - table.height_mm;
    let (dx, dy) = (pupil.x_mm - place.x_mm, pupil.y_mm - place.y_mm);
    let level = hypot(dx, dy);
    if above <= 0.0 || level <= 0.0 {
        return None;
    }
    let to_pupil = Direction { x: dx / level, y: dy / level, z: 0.0 };
    let (enter, leave) = table.crossing_mm(place, to_pupil)?;
    // The sight of height z crosses the top's plane at the share 1 - above / (pupil - z) of the way.
    let height = |way: f64| {
        let rest = 1.0 - way / level;
        if rest > 0.0 { pupil.z_mm - above / rest } else { f64::NEG_INFINITY }
    };
    Some((height(leave), height(enter)))
}
