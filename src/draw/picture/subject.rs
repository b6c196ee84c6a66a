//! The subject as the lens sees it, with its rim, its contents, and what of it is not sharp.

use alloc::format;
use alloc::vec::Vec;

use super::Picture;
use crate::draw::camera::subject_box;
use crate::draw::canvas::{Canvas, Element, Ink, Pen};
use crate::draw::plot::Plot;
use crate::draw::seen::Ellipse;
use crate::draw::shape::{Spot, cut, hull};
use crate::number::sin_cos_deg;
use crate::scene::subject::{Shape, Vessel};
use crate::vector::{Direction, Point};

/// Flat pieces around a round.
const PIECES: u32 = 48;

impl Picture<'_> {
    /// The subject's foot, and its top, over the aim point.
    fn levels(&self) -> (f64, f64) {
        (-self.plan.aim_height_mm, self.brief.subject.height_mm - self.plan.aim_height_mm)
    }

    /// Places on a level circle around the subject's axis.
    fn around(&self, level: f64, radius: f64) -> Vec<Point> {
        let aim = self.plan.pose.aim;
        let step = 360.0 / f64::from(PIECES);
        (0..PIECES)
            .map(|piece| {
                let (sin, cos) = sin_cos_deg(f64::from(piece) * step);
                let (x_mm, y_mm) = (aim.x_mm + radius * cos, aim.y_mm + radius * sin);
                Point { x_mm, y_mm, z_mm: aim.z_mm + level }
            })
            .collect()
    }

    /// The faces turned to the lens; a round in flat pieces.
    fn faces(&self) -> Vec<Vec<Point>> {
        let mut faces: Vec<Vec<Point>> = Vec::new();
        match self.brief.subject.shape {
            Shape::Box { .. } => {
                let [a, b, c, d, e, f, g, h] = subject_box(self.brief, self.plan);
                for face in
                    [[a, b, f, e], [b, c, g, f], [c, d, h, g], [d, a, e, h], [e, f, g, h], [d, c, b, a]]
                {
                    faces.push(face.to_vec());
                }
            }
            Shape::Round { diameter_mm } => {
                let (foot, top) = self.levels();
                let mut low = self.around(foot, 0.5 * diameter_mm);
                let high = self.around(top, 0.5 * diameter_mm);
                let next = low.iter().zip(&high).cycle().skip(1);
                for ((a, d), (b, c)) in low.iter().zip(&high).zip(next) {
                    faces.push([*a, *b, *c, *d].to_vec());
                }
                low.reverse();
                faces.push(high);
                faces.push(low);
            }
        }
        faces.retain(|face| turned_to(face, self.plan.pose.pupil));
        faces
    }

    /// What of some faces is too near to be sharp, and what is too far.
    fn not_sharp(&self, faces: &[Vec<Point>]) -> [(&'static str, Vec<Vec<Spot>>); 2] {
        let depth = &self.plan.focus.depth_of_field;
        let (near, far) = (depth.near_limit_mm, depth.far_limit_mm);
        if self.focus_on_table().is_some() {
            return [("near", Vec::new()), ("far", Vec::new())];
        }
        let kept = |inside: &dyn Fn(Point) -> f64| -> Vec<Vec<Spot>> {
            let parts = faces.iter().map(|face| self.window.spots(&self.window.cut(&cut(face, inside))));
            parts.filter(|part| part.len() > 2).collect()
        };
        let too_far =
            if far.is_finite() { kept(&|place| self.window.depth(place) - far) } else { Vec::new() };
        [("near", kept(&|place| near - self.window.depth(place))), ("far", too_far)]
    }

    /// Whether some of what is seen of the subject is not sharp.
    pub(super) fn subject_not_sharp(&self) -> Option<Spot> {
        let zones = self.not_sharp(&self.faces());
        let outermost = |zone: &[Vec<Spot>]| {
            let rightmost = zone.iter().flatten().copied().max_by(|a, b| a.x.total_cmp(&b.x))?;
            let part = zone.iter().find(|part| part.contains(&rightmost))?;
            Some(super::middle(part)?.towards(rightmost, 0.4))
        };
        zones.iter().find_map(|(_, zone)| outermost(zone))
    }

    /// Draws it.
    pub(super) fn subject(&self, canvas: &mut Canvas, plot: &Plot, id: &str) {
        if self.plan.outline.is_none() {
            return;
        }
        let (foot, top) = self.levels();
        let pupil_above = self.plan.pose.pupil.z_mm - self.plan.pose.aim.z_mm;
        let at = |places: &[Spot]| -> Vec<Spot> { places.iter().map(|place| plot.at(*place)).collect() };
        let faces = self.faces();
        match self.brief.subject.shape {
            Shape::Round { diameter_mm } => {
                let circles = [foot, top].map(|level| self.window.circle(level, 0.5 * diameter_mm));
                let places: Vec<Spot> = circles.iter().flatten().flat_map(Ellipse::places).collect();
                solid(canvas, &at(&hull(&places)), "subject");
                self.hatch_subject(canvas, plot, id, &faces);
                for (circle, shows) in circles.into_iter().zip([pupil_above < foot, pupil_above > top]) {
                    if let Some(circle) = circle.filter(|_| shows) {
                        ellipse(canvas, plot, &circle)
                            .tint(0.0)
                            .outline(Pen::LIGHT)
                            .part("subject-top")
                            .close();
                    }
                }
            }
            Shape::Box { .. } => {
                let corners = subject_box(self.brief, self.plan);
                solid(canvas, &at(&hull(&self.window.spots(&corners))), "subject");
                self.hatch_subject(canvas, plot, id, &faces);
                for face in &faces {
                    canvas.polygon(&at(&self.window.spots(face)), Some(Pen::LIGHT), 0.0, "");
                }
            }
        }
        if let Some(vessel) = &self.brief.subject.vessel
            && pupil_above > top
        {
            self.vessel(canvas, plot, id, vessel);
        }
    }

    fn hatch_subject(&self, canvas: &mut Canvas, plot: &Plot, id: &str, faces: &[Vec<Point>]) {
        for (zone, parts) in self.not_sharp(faces) {
            if !parts.is_empty() {
                let parts: Vec<Vec<Spot>> =
                    parts.iter().map(|part| part.iter().map(|place| plot.at(*place)).collect()).collect();
                let hatch = canvas.element("path").outlines(&parts);
                hatch.word("fill", &format!("url(#{id}-{zone})")).part("subject-not-sharp").close();
            }
        }
    }

    /// The opening, its inner wall, and the contents as far as the rim does not hide them.
    fn vessel(&self, canvas: &mut Canvas, plot: &Plot, id: &str, vessel: &Vessel) {
        let (_, top) = self.levels();
        let radius = 0.5 * vessel.inside_diameter_mm;
        let Some(rim) = self.window.circle(top, radius) else { return };
        canvas.element("clipPath").word("id", &format!("{id}-rim")).enter();
        ellipse(canvas, plot, &rim).close();
        canvas.leave();
        canvas.element("g").word("clip-path", &format!("url(#{id}-rim)")).enter();
        canvas.enter(Ink::Paper);
        ellipse(canvas, plot, &rim).tint(1.0).close();
        canvas.leave();
        ellipse(canvas, plot, &rim).tint(0.4).close();
        let level = top - vessel.contents_below_rim_mm;
        if let Some(contents) = self.window.circle(level, radius) {
            canvas.enter(Ink::Paper);
            ellipse(canvas, plot, &contents).tint(1.0).close();
            canvas.leave();
            let dotted = ellipse(canvas, plot, &contents).word("fill", &format!("url(#{id}-contents)"));
            dotted.outline(Pen::LIGHT).part("contents").close();
            self.hatch_subject(canvas, plot, id, &[self.around(level, radius)]);
        }
        canvas.leave();
        ellipse(canvas, plot, &rim).tint(0.0).outline(Pen::MEDIUM).part("rim").close();
    }
}

/// An outline that hides what lies behind it.
fn solid(canvas: &mut Canvas, outline: &[Spot], part: &str) {
    canvas.enter(Ink::Paper);
    canvas.polygon(outline, None, 1.0, "");
    canvas.leave();
    canvas.polygon(outline, Some(Pen::MEDIUM), 0.24, part);
}

fn ellipse<'a>(canvas: &'a mut Canvas, plot: &Plot, seen: &Ellipse) -> Element<'a> {
    let centre = plot.at(Spot::new(0.0, seen.up));
    let ellipse = canvas.element("ellipse").number("cx", centre.x).number("cy", centre.y);
    ellipse.number("rx", plot.units(seen.half_width)).number("ry", plot.units(seen.half_height))
}

/// Whether a flat face, its corners counter-clockwise seen from outside, is turned to a place.
fn turned_to(face: &[Point], from: Point) -> bool {
    let [a, b, c, ..] = face else { return false };
    let (u, v, w) = (a.to(*b), b.to(*c), a.to(from));
    let outwards = Direction { x: u.y * v.z - u.z * v.y, y: u.z * v.x - u.x * v.z, z: u.x * v.y - u.y * v.x };
    outwards.dot(w) > 0.0
}
