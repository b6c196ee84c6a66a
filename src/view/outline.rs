//! The subject in the picture, and what shows of its top and of its contents.

use super::pose::Orientation;
use crate::number::{Extremes, PI, atan2, sqrt};
use crate::scene::subject::{Shape, Subject, Vessel};

/// Where the subject lies along the axis, from the aim point.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct SubjectDepth {
    /// Towards the camera to the subject's nearest part; negative where all of it lies behind.
    pub nearest_mm: f64,
    /// Away from the camera to its farthest part.
    pub farthest_mm: f64,
}

/// The subject's bounds in the picture, measured in the plane through the aim point from the frame's
/// centre, and what they leave.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Outline {
    /// Its leftmost part, positive to the right.
    pub left_mm: f64,
    /// Its rightmost part.
    pub right_mm: f64,
    /// Its lowest part, positive upwards.
    pub bottom_mm: f64,
    /// Its highest part.
    pub top_mm: f64,
    /// Its width / the frame's.
    pub fill_width: f64,
    /// Its height / the frame's.
    pub fill_height: f64,
    /// Frame left above it; negative where it is cut.
    pub room_above_mm: f64,
    /// Frame left below it.
    pub room_below_mm: f64,
    /// Frame left on its left.
    pub room_left_mm: f64,
    /// Frame left on its right.
    pub room_right_mm: f64,
}

/// How much of what is seen is top, side or contents.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Shares {
    /// Top: sin e × top area / (sin e × top area + cos e × side area as seen from the bearing); 0 where the
    /// top is not seen.
    pub top: f64,
    /// Side: the rest.
    pub side: f64,
    /// Share of a vessel's contents that shows past the near wall, for the real camera.
    pub contents: Option<f64>,
    /// The same from far off.
    pub contents_from_far: Option<f64>,
}

/// The subject's extent along the axis; it stands centred under the aim point, which is `aim_height_mm`
/// above its foot.
pub fn subject_depth(subject: &Subject, aim_height_mm: f64, at: &Orientation) -> SubjectDepth {
    let level = at.cos_elevation * subject.half_extent_mm(at.sin_bearing, at.cos_bearing);
    let foot = aim_height_mm * at.sin_elevation;
    let top = (subject.height_mm - aim_height_mm) * at.sin_elevation;
    SubjectDepth { nearest_mm: level + top.larger(-foot), farthest_mm: level + foot.larger(-top) }
}

/// The subject's bounds in a picture drawn from `pupil_distance_mm`: left, right, bottom and top, or
/// `None` where it reaches the entrance pupil's plane.
fn bounds(
    subject: &Subject,
    aim_height_mm: f64,
    at: &Orientation,
    pupil_distance_mm: f64,
) -> Option<[f64; 4]> {
    let s = pupil_distance_mm;
    let (se, ce) = (at.sin_elevation, at.cos_elevation);
    if subject_depth(subject, aim_height_mm, at).nearest_mm >= s {
        return None;
    }
    let mut bounds = [f64::INFINITY, f64::NEG_INFINITY, f64::INFINITY, f64::NEG_INFINITY];
    let mut take = |right: f64, up: f64| {
        let [left, rightmost, bottom, top] = bounds;
        bounds = [left.smaller(right), rightmost.larger(right), bottom.smaller(up), top.larger(up)];
    };
    for z in [-aim_height_mm, subject.height_mm - aim_height_mm] {
        // Depth on the subject's own upright axis at this height, and the height's part of "up".
        let (middle, lift) = (s - z * se, z * ce);
        match subject.shape {
            Shape::Round { diameter_mm } => {
                let r = 0.5 * diameter_mm;
                // A level circle's picture: widest where the line of sight touches it.
                let across = s * r / sqrt((middle - r * ce) * (middle + r * ce));
                take(-across, s * (lift - r * se) / (middle - r * ce));
                take(across, s * (lift + r * se) / (middle + r * ce));
            }
            Shape::Box { width_mm, depth_mm } => {
                for x in [-0.5 * width_mm, 0.5 * width_mm] {
                    for y in [-0.5 * depth_mm, 0.5 * depth_mm] {
                        let right = x * at.cos_bearing + y * at.sin_bearing;
                        let level = y * at.cos_bearing - x * at.sin_bearing;
                        let scale = s / (middle + level * ce);
                        take(scale * right, scale * (lift + level * se));
                    }
                }
            }
        }
    }
    Some(bounds)
}

/// The subject's outline in a frame; `None` where it reaches the entrance pupil's plane.
pub fn outline(
    subject: &Subject,
    aim_height_mm: f64,
    at: &Orientation,
    pupil_distance_mm: f64,
    frame_width_mm: f64,
    frame_height_mm: f64,
) -> Option<Outline> {
    let [left_mm, right_mm, bottom_mm, top_mm] = bounds(subject, aim_height_mm, at, pupil_distance_mm)?;
    Some(Outline {
        left_mm,
        right_mm,
        bottom_mm,
        top_mm,
        fill_width: (right_mm - left_mm) / frame_width_mm,
        fill_height: (top_mm - bottom_mm) / frame_height_mm,
        room_above_mm: 0.5 * frame_height_mm - top_mm,
        room_below_mm: 0.5 * frame_height_mm + bottom_mm,
        room_left_mm: 0.5 * frame_width_mm + left_mm,
        room_right_mm: 0.5 * frame_width_mm - right_mm,
    })
}

/// Share of what is seen that is the subject's top; 0 from level or below, and for something without
/// height seen level.
pub fn top_share(subject: &Subject, at: &Orientation) -> f64 {
    if at.sin_elevation <= 0.0 {
        return 0.0;
    }
    let top = at.sin_elevation * subject.top_area_mm2();
    let side = at.cos_elevation * subject.side_area_mm2(at.sin_bearing, at.cos_bearing);
    top / (top + side)
}

/// Area of the part of a disc of radius one cut off at the half angle θ from its middle, θ - sin θ cos θ,
/// with all its digits for small θ.
pub(crate) fn segment(theta: f64, sin: f64, cos: f64) -> f64 {
    if theta > 0.4 {
        return theta - sin * cos;
    }
    // Half of x - sin x for x = 2 θ, as its series: x³/3! - x⁵/5! + ...
    let square = 4.0 * theta * theta;
    let mut term = 2.0 * theta * square / 6.0;
    let mut sum = 0.0;
    for k in 0..12 {
        sum += term;
        let n = (2 * k + 4) as f64;
        term = -term * square / (n * (n + 1.0));
    }
    0.5 * sum
}

/// Share of a vessel's contents visible from far off at an elevation given as sine and cosine: two discs
/// of the same size, one shifted by g / tan e; 0 from level or below.
pub fn contents_from_far(vessel: &Vessel, sin_elevation: f64, cos_elevation: f64) -> f64 {
    if sin_elevation <= 0.0 {
        return 0.0;
    }
    let cos = vessel.contents_below_rim_mm * cos_elevation / (sin_elevation * vessel.inside_diameter_mm);
    if cos >= 1.0 {
        return 0.0;
    }
    let sin = sqrt((1.0 - cos) * (1.0 + cos));
    2.0 * segment(atan2(sin, cos), sin, cos) / PI
}

/// Share of a vessel's contents visible to a camera whose entrance pupil stands `level_mm` from the
/// vessel's axis, seen from above, and `above_rim_mm` above the rim: the contents' disc overlapped with the
/// rim projected from the pupil onto the contents' plane; 0 at or under the rim.
pub fn contents_visible(vessel: &Vessel, level_mm: f64, above_rim_mm: f64) -> f64 {
    if above_rim_mm <= 0.0 {
        return 0.0;
    }
    // In radii of the vessel: the projected rim's radius is 1 + k, its centre k l away. Every factor is
    // written so that nothing cancels where the two discs nearly touch or nearly cover.
    let k = vessel.contents_below_rim_mm / above_rim_mm;
    let l = level_mm / (0.5 * vessel.inside_diameter_mm);
    let hidden = k * (l - 1.0);
    if hidden <= 0.0 {
        return 1.0;
    }
    if hidden >= 2.0 {
        return 0.0;
    }
    let rim = 1.0 + k;
    let apart = k * l;
    let chord = sqrt((2.0 - hidden) * hidden * (k * (l + 1.0)) * (2.0 + k * (l + 1.0)));
    let (small_cos, rim_cos) = (k * (k * (l - 1.0) * (l + 1.0) - 2.0), k * (k * (l * l + 1.0) + 2.0));
    let twice = 2.0 * apart;
    let small = segment(atan2(chord, small_cos), chord / twice, small_cos / twice);
    let large = segment(atan2(chord, rim_cos), chord / (twice * rim), rim_cos / (twice * rim));
    ((small + rim * rim * large) / PI).smaller(1.0)
}

/// What shows of top, side and contents.
pub fn shares(subject: &Subject, aim_height_mm: f64, at: &Orientation, pupil_distance_mm: f64) -> Shares {
    let top = top_share(subject, at);
    let above_rim = aim_height_mm + pupil_distance_mm * at.sin_elevation - subject.height_mm;
    let level = pupil_distance_mm * at.cos_elevation;
    Shares {
        top,
        side: 1.0 - top,
        contents: subject.vessel.map(|vessel| contents_visible(&vessel, level, above_rim)),
        contents_from_far: subject
            .vessel
            .map(|vessel| contents_from_far(&vessel, at.sin_elevation, at.cos_elevation)),
    }
}
