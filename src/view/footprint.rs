//! The frame on the table, and the backdrop beyond it.

use super::projection::{PicturePoint, View};
use crate::number::Extremes;
use crate::scene::table::Table;
use crate::vector::{Direction, FloorPoint};

/// The smallest board or cloth on the table that fills the frame.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
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

/// What of the table's plane the frame takes in.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Footprint {
    /// The frame's corners on the table's plane: near left, near right, far right, far left, where near is
    /// the bottom of the picture. A corner whose line of sight does not descend has none: there the
    /// horizon, or the wall behind, is in the frame.
    pub corners: [Option<FloorPoint>; 4],
    /// Width at the bottom of the picture.
    pub near_width_mm: Option<f64>,
    /// Width at the top of the picture.
    pub far_width_mm: Option<f64>,
    /// Far width / near width.
    pub keystone_ratio: Option<f64>,
    /// From the near to the far line.
    pub depth_mm: Option<f64>,
    /// Whether the table's plane is seen from below: then nothing else here is an answer.
    pub from_below: bool,
    /// Whether each edge of the table shows: front, right, back, left.
    pub edges_in_frame: [bool; 4],
    /// Share of the picture that the table top covers, were nothing on it; `None` seen from below.
    pub table_share: Option<f64>,
    /// The smallest board or cloth that fills the frame; `None` with the horizon in it.
    pub board: Option<Board>,
}

/// A backdrop standing upright behind the aim point, square to the level viewing direction, its foot on
/// the table's plane.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Backdrop {
    /// Its level distance behind the aim point.
    pub behind_mm: f64,
    /// Width it needs; 0 where it is not seen, infinite where no width is enough.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub width_mm: f64,
    /// Height it needs above the table; 0 where it is not seen, infinite where no height is enough.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub height_mm: f64,
    /// Share of the picture it covers.
    pub share: f64,
}

/// The frame cast from the entrance pupil onto the table's plane. `bearing_deg` is only handed on.
pub fn footprint(view: &View, table: &Table, bearing_deg: f64) -> Footprint {
    let z = table.height_mm;
    let (x, y) = (0.5 * view.frame_width_mm, 0.5 * view.frame_height_mm);
    let pose = &view.pose;
    let pupil_height = pose.aim.z_mm - z - view.pupil_distance_mm * pose.forward.z;
    if pupil_height <= 0.0 {
        return Footprint {
            corners: [None; 4],
            near_width_mm: None,
            far_width_mm: None,
            keystone_ratio: None,
            depth_mm: None,
            from_below: true,
            edges_in_frame: [false; 4],
            table_share: None,
            board: None,
        };
    }
    let cast = |right_mm, up_mm| view.cast_onto_level(PicturePoint { right_mm, up_mm }, z);
    let corners = [cast(-x, -y), cast(x, -y), cast(x, y), cast(-x, y)];
    // No roll: a whole line of the picture lies at one depth, scaled by how far its sight goes.
    let scale = |up_mm: f64| {
        let fall = -(view.pupil_distance_mm * pose.forward.z + up_mm * pose.up.z);
        if fall > 0.0 { Some(pupil_height / fall) } else { None }
    };
    let (near, far) = (scale(-y), scale(y));
    let wide = |t: f64| t * view.frame_width_mm;
    // Level distance beyond the aim point of a line of the picture.
    let level = level_forward(view);
    let beyond = |corner: Option<crate::vector::Point>| {
        corner.map(|at| pose.aim.to(at)).map(|d| d.x * level.x + d.y * level.y)
    };
    let [near_left, _, far_right, _] = corners;
    let (near_line, far_line) = (beyond(near_left), beyond(far_right));
    let board = match (near, far, near_line, far_line) {
        (Some(near), Some(far), Some(from), Some(to)) => Some(Board {
            width_mm: wide(near.larger(far)),
            depth_mm: to - from,
            centre: pose.aim.floor().along(level, 0.5 * (from + to)),
            turned_deg: bearing_deg,
        }),
        _ => None,
    };
    let table_corners = table.corners().map(|corner| view.seen(corner.at_height(z)));
    // The edges run from each corner to the next, in the order of the sides.
    let [a, b, c, d] = &table_corners;
    let edges_in_frame = [(a, b), (b, c), (c, d), (d, a)].map(|(from, to)| {
        let (start, end) = view.part_in_frame(from, to);
        end > start
    });
    Footprint {
        corners: corners.map(|corner| corner.map(|at| at.floor())),
        near_width_mm: near.map(wide),
        far_width_mm: far.map(wide),
        keystone_ratio: match (near, far) {
            (Some(near), Some(far)) => Some(far / near),
            _ => None,
        },
        depth_mm: board.map(|board| board.depth_mm),
        from_below: false,
        edges_in_frame,
        table_share: Some(if edges_in_frame.contains(&true) {
            view.covered_by(&table_corners)
        } else if view.is_covered_by(&table_corners) {
            1.0
        } else {
            0.0
        }),
        board,
    }
}

/// The backdrop that fills the frame behind the table, `behind_mm` (over 0) behind the aim point.
pub fn backdrop(view: &View, table: &Table, behind_mm: f64) -> Backdrop {
    let pose = &view.pose;
    let s = view.pupil_distance_mm;
    let (se, ce) = (-pose.forward.z, pose.up.z);
    let half = 0.5 * view.frame_height_mm;
    let aim_height = pose.aim.z_mm - table.height_mm;
    let foot_depth = s + behind_mm * ce + aim_height * se;
    let foot = if foot_depth > 0.0 { s * (behind_mm * se - aim_height * ce) / foot_depth } else { -half };
    let foot = foot.larger(-half);
    if foot >= half {
        return Backdrop { behind_mm, width_mm: 0.0, height_mm: 0.0, share: 0.0 };
    }
    // How far the line of sight through a line of the picture goes to the backdrop, in pupil distances.
    let sight = |up_mm: f64| {
        let level = s * ce + up_mm * se;
        if level > 0.0 { (behind_mm + s * ce) / level } else { f64::INFINITY }
    };
    let top = sight(half);
    let height_mm =
        if top.is_finite() { aim_height + s * se + top * (half * ce - s * se) } else { f64::INFINITY };
    Backdrop {
        behind_mm,
        width_mm: view.frame_width_mm * top.larger(sight(foot)),
        height_mm,
        share: (half - foot) / view.frame_height_mm,
    }
}

/// The level viewing direction, from the picture's right: it stays defined straight overhead.
fn level_forward(view: &View) -> Direction {
    let right = view.pose.right;
    Direction { x: -right.y, y: right.x, z: 0.0 }
}
