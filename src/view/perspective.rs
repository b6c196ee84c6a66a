//! How the picture will look: stretch towards the edges, near against far, convergence.

use super::outline::SubjectDepth;
use crate::number::{sqrt, square};

/// What perspective does to the picture.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Perspective {
    /// Stretch of a small sphere at the frame's side, 1 / cos of its angle off the axis.
    pub side_stretch: f64,
    /// Stretch at the frame's corner.
    pub corner_stretch: f64,
    /// Image size of the subject's nearest part over that of its farthest; `None` where it reaches the
    /// entrance pupil.
    pub size_ratio: Option<f64>,
    /// Convergence of uprights: image scale at the subject's top over that at its foot, on its axis.
    pub convergence: Option<f64>,
}

/// The corner stretch of a 60 mm lens on 36 x 24 mm, under which a straight-on picture does not show it
/// (common practice, no source): it holds for every sensor.
pub fn straight_on_stretch_limit() -> f64 {
    sqrt(1.0 + (square(36.0) + square(24.0)) / square(2.0 * 60.0))
}

/// Perspective of a frame seen from `pupil_distance_mm`, and of a subject of `height_mm` whose foot lies
/// `aim_height_mm` under the aim point, at an elevation given by its sine.
pub fn perspective(
    pupil_distance_mm: f64,
    frame_width_mm: f64,
    frame_height_mm: f64,
    depth: &SubjectDepth,
    height_mm: f64,
    aim_height_mm: f64,
    sin_elevation: f64,
) -> Perspective {
    let s = pupil_distance_mm;
    let side = square(frame_width_mm / (2.0 * s));
    let corner = side + square(frame_height_mm / (2.0 * s));
    let nearest = s - depth.nearest_mm;
    let (size_ratio, convergence) = if nearest > 0.0 {
        let foot = s + aim_height_mm * sin_elevation;
        let top = s - (height_mm - aim_height_mm) * sin_elevation;
        (Some((s + depth.farthest_mm) / nearest), Some(foot / top))
    } else {
        (None, None)
    };
    Perspective {
        side_stretch: sqrt(1.0 + side),
        corner_stretch: sqrt(1.0 + corner),
        size_ratio,
        convergence,
    }
}
