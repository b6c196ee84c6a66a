//! Points into the picture, rays out of it, and what of a shape lies inside the frame.
//!
//! Everything is drawn from the entrance pupil: the frame is a rectangle of the frame's width and height
//! at the pupil distance, square to the axis, its centre the aim point. Places in the picture are given in
//! that plane, in millimetres from its centre.

use super::pose::Pose;
use crate::number::Extremes;
use crate::vector::Point;

/// A place in the picture, measured in the plane through the aim point.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct PicturePoint {
    /// To the right of the frame's centre.
    pub right_mm: f64,
    /// Above the frame's centre.
    pub up_mm: f64,
}

/// The frame as seen from the entrance pupil.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct View {
    /// The camera's place and directions.
    pub pose: Pose,
    /// Aim point to entrance pupil.
    pub pupil_distance_mm: f64,
    /// Width of the frame in the plane through the aim point.
    pub frame_width_mm: f64,
    /// Height of the frame in that plane.
    pub frame_height_mm: f64,
}

/// A place in the camera's own coordinates: right, up, and depth along the axis from the pupil.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Seen {
    right: f64,
    up: f64,
    depth: f64,
}

impl Seen {
    /// The place so far to the right.
    #[inline]
    pub(crate) fn beside(&self, right: f64) -> Seen {
        Seen { right: self.right + right, ..*self }
    }

    /// The place so much higher, given the upward direction in the same coordinates: no part of it lies to
    /// the right.
    #[inline]
    pub(crate) fn higher(&self, upright: &Seen, by: f64) -> Seen {
        Seen { up: self.up + by * upright.up, depth: self.depth + by * upright.depth, ..*self }
    }

    #[inline]
    fn dot(&self, other: &Seen) -> f64 {
        self.right * other.right + self.up * other.up + self.depth * other.depth
    }

    #[inline]
    fn cross(&self, other: &Seen) -> Seen {
        Seen {
            right: self.up * other.depth - self.depth * other.up,
            up: self.depth * other.right - self.right * other.depth,
            depth: self.right * other.up - self.up * other.right,
        }
    }
}

/// The planes through the pupil and each side of a flat convex four-cornered shape, by their directions
/// into it.
fn sides_of(corners: &[Seen; 4]) -> [Seen; 4] {
    let [a, b, c, d] = corners;
    [(a, b, c), (b, c, d), (c, d, a), (d, a, b)].map(|(from, to, within)| {
        let normal = from.cross(to);
        if normal.dot(within) < 0.0 {
            Seen { right: -normal.right, up: -normal.up, depth: -normal.depth }
        } else {
            normal
        }
    })
}

/// Enough for a quadrilateral cut by the four sides of the frame.
const MOST_CORNERS: usize = 8;

/// A convex polygon inside the frame, in its plane: all corners lie equally deep.
#[derive(Clone, Copy, Debug)]
struct Polygon {
    corners: [Seen; MOST_CORNERS],
    count: usize,
}

impl Polygon {
    const EMPTY: Polygon =
        Polygon { corners: [Seen { right: 0.0, up: 0.0, depth: 0.0 }; MOST_CORNERS], count: 0 };

    fn push(&mut self, corner: Seen) {
        if let Some(slot) = self.corners.get_mut(self.count) {
            *slot = corner;
            self.count += 1;
        }
    }

    /// The part where `inside` is not negative (Sutherland and Hodgman, Communications of the ACM 1974).
    fn clipped(&self, inside: impl Fn(&Seen) -> f64) -> Polygon {
        let mut kept = Polygon::EMPTY;
        let Some(mut before) = self.corners.iter().take(self.count).next_back().copied() else { return kept };
        let mut before_inside = inside(&before);
        for corner in self.corners.iter().take(self.count) {
            let corner_inside = inside(corner);
            if (before_inside < 0.0) != (corner_inside < 0.0) {
                let t = before_inside / (before_inside - corner_inside);
                kept.push(Seen {
                    right: before.right + t * (corner.right - before.right),
                    up: before.up + t * (corner.up - before.up),
                    ..before
                });
            }
            if corner_inside >= 0.0 {
                kept.push(*corner);
            }
            (before, before_inside) = (*corner, corner_inside);
        }
        kept
    }
}

impl View {
    /// The upward direction in the camera's own coordinates.
    pub(crate) fn upright(&self) -> Seen {
        Seen { right: self.pose.right.z, up: self.pose.up.z, depth: self.pose.forward.z }
    }

    pub(crate) fn seen(&self, point: Point) -> Seen {
        let from_aim = self.pose.aim.to(point);
        Seen {
            right: from_aim.dot(self.pose.right),
            up: from_aim.dot(self.pose.up),
            depth: self.pupil_distance_mm + from_aim.dot(self.pose.forward),
        }
    }

    /// Distance along the axis from the entrance pupil to a place; negative behind the camera.
    pub fn depth_mm(&self, point: Point) -> f64 {
        self.seen(point).depth
    }

    /// Where a place in the room appears; `None` at or behind the entrance pupil's plane.
    pub fn project(&self, point: Point) -> Option<PicturePoint> {
        let seen = self.seen(point);
        if seen.depth > 0.0 {
            let scale = self.pupil_distance_mm / seen.depth;
            Some(PicturePoint { right_mm: seen.right * scale, up_mm: seen.up * scale })
        } else {
            None
        }
    }

    /// Where the line of sight through a place in the picture meets the level plane `z_mm` above the
    /// floor; `None` where it runs level, away from it, or the pupil lies in it.
    pub fn cast_onto_level(&self, place: PicturePoint, z_mm: f64) -> Option<Point> {
        let Pose { forward, up, aim, .. } = self.pose;
        let s = self.pupil_distance_mm;
        // The pupil's height above the plane, and the fall of the line of sight over its length; both from
        // the aim point, so that neither loses digits in the heights above the floor.
        let rise = aim.z_mm - z_mm;
        let height = rise - s * forward.z;
        let fall = -(s * forward.z + place.up_mm * up.z);
        if height * fall <= 0.0 {
            return None;
        }
        let t = height / fall;
        // t - 1, without the cancellation.
        let beyond = (rise + place.up_mm * up.z) / fall;
        let [right, up_part, along] = [t * place.right_mm, t * place.up_mm, beyond * s];
        Some(aim.along(forward, along).along(self.pose.right, right).along(up, up_part))
    }

    /// The frame's corners: lower left, lower right, upper right, upper left.
    fn frame_corners(&self) -> [Seen; 4] {
        let (x, y) = (0.5 * self.frame_width_mm, 0.5 * self.frame_height_mm);
        let depth = self.pupil_distance_mm;
        [(-x, -y), (x, -y), (x, y), (-x, y)].map(|(right, up)| Seen { right, up, depth })
    }

    /// Whether a flat convex four-cornered shape of which no side comes into the frame covers it; it is
    /// beside the frame otherwise.
    pub(crate) fn is_covered_by(&self, corners: &[Seen; 4]) -> bool {
        let [first, ..] = self.frame_corners();
        sides_of(corners).iter().all(|side| side.dot(&first) >= 0.0)
    }

    /// How far inside the frame's four sides a place is, each times its depth over the half frame.
    fn sides(&self) -> (f64, f64) {
        let s = self.pupil_distance_mm;
        (0.5 * self.frame_width_mm / s, 0.5 * self.frame_height_mm / s)
    }

    /// Share of the picture that a flat convex four-cornered shape covers, were nothing before it.
    pub fn covered_share(&self, corners: [Point; 4]) -> f64 {
        self.covered_by(&corners.map(|corner| self.seen(corner)))
    }

    /// As [`View::covered_share`], the corners being known as seen.
    pub(crate) fn covered_by(&self, corners: &[Seen; 4]) -> f64 {
        // The frame cut by the planes through the pupil and each side of the shape: linear all the way, so
        // that nothing is lost where the shape is seen nearly from its edge or reaches behind the camera.
        let mut polygon = Polygon::EMPTY;
        for corner in self.frame_corners() {
            polygon.push(corner);
        }
        for side in sides_of(corners) {
            if polygon.corners.iter().take(polygon.count).any(|corner| side.dot(corner) < 0.0) {
                polygon = polygon.clipped(|at| side.dot(at));
            }
        }
        // Shoelace formula in the plane through the aim point.
        let Some(mut before) = polygon.corners.iter().take(polygon.count).next_back() else { return 0.0 };
        let mut twice_area = 0.0;
        for corner in polygon.corners.iter().take(polygon.count) {
            twice_area += before.right * corner.up - corner.right * before.up;
            before = corner;
        }
        (0.5 * twice_area.abs() / (self.frame_width_mm * self.frame_height_mm)).smaller(1.0)
    }

    /// Length of the part of a straight line from `from` to `to` that lies inside the frame and in front
    /// of the entrance pupil.
    pub fn length_in_frame_mm(&self, from: Point, to: Point) -> f64 {
        let (start, end) = self.part_in_frame(&self.seen(from), &self.seen(to));
        let line = from.to(to);
        if end > start { (end - start) * crate::number::sqrt(line.dot(line)) } else { 0.0 }
    }

    /// Where a straight line enters the frame and where it leaves it, as shares of its length; it does not
    /// come into the frame unless it leaves after it enters.
    pub(crate) fn part_in_frame(&self, a: &Seen, b: &Seen) -> (f64, f64) {
        let (across, upright) = self.sides();
        let (mut start, mut end) = (0.0_f64, 1.0_f64);
        for (at_a, at_b) in [
            (across * a.depth - a.right, across * b.depth - b.right),
            (across * a.depth + a.right, across * b.depth + b.right),
            (upright * a.depth - a.up, upright * b.depth - b.up),
            (upright * a.depth + a.up, upright * b.depth + b.up),
        ] {
            if at_a < 0.0 && at_b < 0.0 {
                return (1.0, 0.0);
            } else if at_a < 0.0 {
                start = start.larger(at_a / (at_a - at_b));
            } else if at_b < 0.0 {
                end = end.smaller(at_a / (at_a - at_b));
            }
        }
        (start, end)
    }
}
