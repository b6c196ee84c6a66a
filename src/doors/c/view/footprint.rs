//! The frame on the table, and the backdrop beyond it.

use crate::doors::c::border::call::Door;
use crate::doors::c::border::mirror::mirror;
use crate::doors::c::border::refusal::name;
use crate::doors::c::point::FloorPoint;
use crate::doors::c::scene::table::Table;
use crate::doors::c::status::Fault;
use crate::doors::c::view::projection::View;
use crate::range;
use crate::view::footprint;

/// The smallest board or cloth on the table that fills the frame.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Board {
    /// Across the picture.
    pub width_mm: f64,
    /// Along the picture.
    pub depth_mm: f64,
    /// Its centre on the table.
    pub centre: FloorPoint,
    /// How far it is turned on the table, counter-clockwise: the bearing.
    pub turned_deg: f64,
}
mirror!(out Board "board" footprint::Board { width_mm, depth_mm, centre, turned_deg });

/// What of the table's plane the frame takes in.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Footprint {
    /// 1 for each corner that has a point. A corner whose line of sight does not descend has none: there the
    /// horizon, or the wall behind, is in the frame.
    pub has_corners: [i32; 4],
    /// 1 for each edge of the table that shows: front, right, back, left.
    pub edges_in_frame: [i32; 4],
    /// 1 where the bottom of the picture meets the table's plane: `near_width_mm` is there.
    pub has_near_width_mm: i32,
    /// 1 where the top of the picture meets the table's plane: `far_width_mm` is there.
    pub has_far_width_mm: i32,
    /// 1 where both do: `keystone_ratio` is there.
    pub has_keystone_ratio: i32,
    /// 1 where both do: `depth_mm` is there.
    pub has_depth_mm: i32,
    /// 1 where the table's plane is seen from below: then nothing else here is an answer.
    pub from_below: i32,
    /// 0 seen from below, else 1: `table_share` is there.
    pub has_table_share: i32,
    /// 1 where bottom and top of the picture meet the table's plane: `board` is there.
    pub has_board: i32,
    /// 0.
    pub reserved: i32,
    /// The frame's corners on the table's plane: near left, near right, far right, far left, where near is
    /// the bottom of the picture.
    pub corners: [FloorPoint; 4],
    /// Width at the bottom of the picture.
    pub near_width_mm: f64,
    /// Width at the top of the picture.
    pub far_width_mm: f64,
    /// Far width / near width.
    pub keystone_ratio: f64,
    /// From the near to the far line.
    pub depth_mm: f64,
    /// Share of the picture that the table top covers, were nothing on it.
    pub table_share: f64,
    /// The smallest board or cloth that fills the frame.
    pub board: Board,
}
mirror!(out Footprint "footprint" footprint::Footprint {
    corners: (has_corners, corners),
    near_width_mm: (has_near_width_mm, near_width_mm),
    far_width_mm: (has_far_width_mm, far_width_mm),
    keystone_ratio: (has_keystone_ratio, keystone_ratio),
    depth_mm: (has_depth_mm, depth_mm),
    from_below,
    edges_in_frame,
    table_share: (has_table_share, table_share),
    board: (has_board, board),
} spare reserved);

/// A backdrop standing upright behind the aim point, square to the level viewing direction, its foot on the
/// table's plane.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Backdrop {
    /// Its level distance behind the aim point.
    pub behind_mm: f64,
    /// Width it needs; 0 where it is not seen, infinite where no width is enough.
    pub width_mm: f64,
    /// Height it needs above the table; 0 where it is not seen, infinite where no height is enough.
    pub height_mm: f64,
    /// Share of the picture it covers.
    pub share: f64,
}
mirror!(out Backdrop "backdrop" footprint::Backdrop { behind_mm, width_mm, height_mm, share });

/// The frame cast from the entrance pupil onto the table's plane. `bearing_deg` is only handed on to the
/// board.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_footprint(
    view: *const View,
    table: *const Table,
    bearing_deg: f64,
    footprint: *mut Footprint,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(footprint, name!("footprint"))?;
        let view = door.view(view)?;
        let table = door.part(table)?;
        let bearing = range::BEARING_DEG.check(bearing_deg)?;
        out.put(&footprint::footprint(&view, &table, bearing))
    })
}

/// The backdrop that fills the frame behind the table, 1 to 20000 mm behind the aim point.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_backdrop(
    view: *const View,
    table: *const Table,
    behind_mm: f64,
    backdrop: *mut Backdrop,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(backdrop, name!("backdrop"))?;
        let view = door.view(view)?;
        let table = door.part(table)?;
        let behind = range::BACKDROP_BEHIND_MM.check(behind_mm)?;
        out.put(&footprint::backdrop(&view, &table, behind))
    })
}
