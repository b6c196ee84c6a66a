//! Flat shapes: places on the drawing, convex hulls, and polygons and lines cut by straight borders.

use alloc::vec::Vec;

/// A place on the drawing in its units, x to the right and y down; or in millimetres, y up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Spot {
    pub(super) x: f64,
    pub(super) y: f64,
}

impl Spot {
    pub(super) const fn new(x: f64, y: f64) -> Spot {
        Spot { x, y }
    }

    /// The place `share` of the way to another.
    pub(super) fn towards(self, other: Spot, share: f64) -> Spot {
        Spot { x: self.x + share * (other.x - self.x), y: self.y + share * (other.y - self.y) }
    }

    pub(super) fn moved(self, x: f64, y: f64) -> Spot {
        Spot { x: self.x + x, y: self.y + y }
    }
}

/// Twice the signed area of the triangle from `a` over `b` to `c`.
pub(super) fn turn(a: Spot, b: Spot, c: Spot) -> f64 {
    (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)
}

/// Whether two straight lines cross each other between their ends.
pub(super) fn crosses(a: (Spot, Spot), b: (Spot, Spot)) -> bool {
    let opposite = |p: f64, q: f64| (p > 0.0 && q < 0.0) || (p < 0.0 && q > 0.0);
    opposite(turn(a.0, a.1, b.0), turn(a.0, a.1, b.1)) && opposite(turn(b.0, b.1, a.0), turn(b.0, b.1, a.1))
}

/// The smallest convex outline around some places (Andrew's monotone chain, 1979).
pub(super) fn hull(places: &[Spot]) -> Vec<Spot> {
    let mut sorted: Vec<Spot> = places.to_vec();
    sorted.sort_by(|a, b| a.x.total_cmp(&b.x).then(a.y.total_cmp(&b.y)));
    let mut outline: Vec<Spot> = Vec::new();
    let mut chain = |places: &mut dyn Iterator<Item = Spot>| {
        let mut half: Vec<Spot> = Vec::new();
        for place in places {
            while let [.., before, last] = half.as_slice() {
                if turn(*before, *last, place) > 0.0 {
                    break;
                }
                half.pop();
            }
            half.push(place);
        }
        half.pop();
        outline.append(&mut half);
    };
    chain(&mut sorted.iter().copied());
    chain(&mut sorted.iter().rev().copied());
    outline
}

/// Something that has places between it and another.
pub(super) trait Between: Copy {
    /// The place `share` of the way to `other`.
    fn between(self, other: Self, share: f64) -> Self;
}

impl Between for Spot {
    fn between(self, other: Spot, share: f64) -> Spot {
        self.towards(other, share)
    }
}

/// The part of a convex polygon where `inside` is not negative (Sutherland and Hodgman, Communications of
/// the ACM 1974).
pub(super) fn cut<P: Between>(polygon: &[P], inside: impl Fn(P) -> f64) -> Vec<P> {
    let mut kept = Vec::new();
    let Some(mut before) = polygon.last().copied() else { return kept };
    let mut before_inside = inside(before);
    for corner in polygon.iter().copied() {
        let corner_inside = inside(corner);
        if (before_inside < 0.0) != (corner_inside < 0.0) {
            kept.push(before.between(corner, before_inside / (before_inside - corner_inside)));
        }
        if corner_inside >= 0.0 {
            kept.push(corner);
        }
        (before, before_inside) = (corner, corner_inside);
    }
    kept
}

/// The part of a straight line where `inside` is not negative.
pub(super) fn cut_line<P: Between>(line: Option<(P, P)>, inside: impl Fn(P) -> f64) -> Option<(P, P)> {
    let (from, to) = line?;
    let (at_from, at_to) = (inside(from), inside(to));
    let border = || from.between(to, at_from / (at_from - at_to));
    match (at_from >= 0.0, at_to >= 0.0) {
        (true, true) => Some((from, to)),
        (true, false) => Some((from, border())),
        (false, true) => Some((border(), to)),
        (false, false) => None,
    }
}

/// A rectangle that grows around places; in millimetres with y up.
#[derive(Clone, Copy, Debug)]
pub(super) struct Extent {
    pub(super) left: f64,
    pub(super) right: f64,
    pub(super) bottom: f64,
    pub(super) top: f64,
}

impl Extent {
    pub(super) const NOTHING: Extent = Extent {
        left: f64::INFINITY,
        right: f64::NEG_INFINITY,
        bottom: f64::INFINITY,
        top: f64::NEG_INFINITY,
    };

    pub(super) fn take(&mut self, place: Spot) {
        if place.x.is_finite() && place.y.is_finite() {
            self.left = self.left.min(place.x);
            self.right = self.right.max(place.x);
            self.bottom = self.bottom.min(place.y);
            self.top = self.top.max(place.y);
        }
    }

    pub(super) fn width(&self) -> f64 {
        self.right - self.left
    }

    pub(super) fn height(&self) -> f64 {
        self.top - self.bottom
    }

    /// Wider by as much on every side.
    pub(super) fn grown(&self, by: f64) -> Extent {
        Extent { left: self.left - by, right: self.right + by, bottom: self.bottom - by, top: self.top + by }
    }

    pub(super) fn corners(&self) -> [Spot; 4] {
        [
            Spot::new(self.left, self.bottom),
            Spot::new(self.right, self.bottom),
            Spot::new(self.right, self.top),
            Spot::new(self.left, self.top),
        ]
    }

    /// The part of a line inside.
    pub(super) fn line(&self, from: Spot, to: Spot) -> Option<(Spot, Spot)> {
        let line = cut_line(Some((from, to)), |at| at.x - self.left);
        let line = cut_line(line, |at| self.right - at.x);
        let line = cut_line(line, |at| at.y - self.bottom);
        cut_line(line, |at| self.top - at.y)
    }

    /// The part of a convex polygon inside.
    pub(super) fn polygon(&self, corners: &[Spot]) -> Vec<Spot> {
        let polygon = cut(corners, |at| at.x - self.left);
        let polygon = cut(&polygon, |at| self.right - at.x);
        let polygon = cut(&polygon, |at| at.y - self.bottom);
        cut(&polygon, |at| self.top - at.y)
    }

    /// Whether both ends of a line lie on one and the same border; cutting leaves them there but for
    /// rounding.
    pub(super) fn on_border(&self, from: Spot, to: Spot) -> bool {
        let rounding = 1e-9 * (self.width() + self.height());
        let on = |a: f64, b: f64, border: f64| (a - border).abs() < rounding && (b - border).abs() < rounding;
        on(from.x, to.x, self.left)
            || on(from.x, to.x, self.right)
            || on(from.y, to.y, self.bottom)
            || on(from.y, to.y, self.top)
    }
}
