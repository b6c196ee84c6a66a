//! Solids and planes of the room as the lens sees them, cut to what the drawing shows.

use alloc::vec::Vec;

use super::shape::{Between, Spot, cut, cut_line};
use crate::number::{sin_cos_deg, sqrt};
use crate::plan::Plan;
use crate::vector::Point;

/// What the drawing shows: a rectangle around the aim point, in the plane through it.
#[derive(Clone, Copy)]
pub(super) struct Window<'a> {
    pub(super) plan: &'a Plan,
    pub(super) half_width_mm: f64,
    pub(super) half_height_mm: f64,
}

impl Between for Point {
    fn between(self, other: Point, share: f64) -> Point {
        let way = self.to(other);
        Point {
            x_mm: self.x_mm + share * way.x,
            y_mm: self.y_mm + share * way.y,
            z_mm: self.z_mm + share * way.z,
        }
    }
}

/// A level circle on the subject's axis as the lens sees it: an ellipse upright in the picture.
#[derive(Clone, Copy, Debug)]
pub(super) struct Ellipse {
    pub(super) up: f64,
    pub(super) half_width: f64,
    pub(super) half_height: f64,
}

impl Window<'_> {
    /// To the right, upwards and along the axis from the entrance pupil.
    fn seen(&self, place: Point) -> (f64, f64, f64) {
        let pose = &self.plan.pose;
        let from_aim = pose.aim.to(place);
        let depth = self.plan.lens.pupil_distance_mm + from_aim.dot(pose.forward);
        (from_aim.dot(pose.right), from_aim.dot(pose.up), depth)
    }

    /// Along the axis from the entrance pupil.
    pub(super) fn depth(&self, place: Point) -> f64 {
        self.seen(place).2
    }

    /// Where a place appears, if it lies before the entrance pupil.
    pub(super) fn spot(&self, place: Point) -> Option<Spot> {
        let (right, up, depth) = self.seen(place);
        let scale = self.plan.lens.pupil_distance_mm / depth;
        if depth > 0.0 { Some(Spot::new(right * scale, up * scale)) } else { None }
    }

    /// How far inside one of the four sides of the window a place is, times its depth.
    pub(super) fn inside(&self, side: usize, place: Point) -> f64 {
        let (right, up, depth) = self.seen(place);
        let s = self.plan.lens.pupil_distance_mm;
        let (across, upright) = (self.half_width_mm / s * depth, self.half_height_mm / s * depth);
        match side {
            0 => across - right,
            1 => across + right,
            2 => upright - up,
            _ => upright + up,
        }
    }

    /// The part of a flat convex shape that the window shows, still in the room.
    pub(super) fn cut(&self, corners: &[Point]) -> Vec<Point> {
        let mut kept = corners.to_vec();
        for side in 0..4 {
            kept = cut(&kept, |place| self.inside(side, place));
        }
        kept
    }

    /// Places as they appear, those at the pupil itself left out.
    pub(super) fn spots(&self, places: &[Point]) -> Vec<Spot> {
        places.iter().filter_map(|place| self.spot(*place)).collect()
    }

    /// The part of a straight line that the window shows.
    pub(super) fn line(&self, from: Point, to: Point) -> Option<(Spot, Spot)> {
        let mut line = Some((from, to));
        for side in 0..4 {
            line = cut_line(line, |place| self.inside(side, place));
        }
        let (from, to) = line?;
        Some((self.spot(from)?, self.spot(to)?))
    }

    /// A level circle around the axis of a subject under the aim point, `above_aim_mm` above the aim point;
    /// `None` where it reaches the entrance pupil's plane.
    pub(super) fn circle(&self, above_aim_mm: f64, radius_mm: f64) -> Option<Ellipse> {
        let s = self.plan.lens.pupil_distance_mm;
        let (sin, cos) = (-self.plan.pose.forward.z, self.plan.pose.up.z);
        let (middle, lift) = (s - above_aim_mm * sin, above_aim_mm * cos);
        let (near, far) = (middle - radius_mm * cos, middle + radius_mm * cos);
        if near <= 0.0 {
            return None;
        }
        let near_up = s * (lift - radius_mm * sin) / near;
        let far_up = s * (lift + radius_mm * sin) / far;
        Some(Ellipse {
            up: 0.5 * (near_up + far_up),
            half_width: s * radius_mm / sqrt(near * far),
            half_height: 0.5 * (far_up - near_up).abs(),
        })
    }
}

impl Ellipse {
    /// Places around it; its four outermost are among them.
    pub(super) fn places(&self) -> impl Iterator<Item = Spot> {
        let Ellipse { up, half_width, half_height } = *self;
        (0..72).map(move |step| {
            let (sin, cos) = sin_cos_deg(5.0 * f64::from(step));
            Spot::new(half_width * cos, up + half_height * sin)
        })
    }
}
