//! Camera and rig in an elevation, with the measures of the camera.

use super::{ARC_RADIUS, Elevation};
use crate::draw::camera::{barrel, body, front_mm};
use crate::draw::canvas::{Ink, Pen};
use crate::draw::dimension::along;
use crate::draw::mark;
use crate::draw::plot::Plot;
use crate::draw::shape::hull;
use crate::draw::sheet::Drawing;
use crate::number::sin_cos_deg;
use crate::plan::Plan;
use crate::vector::Point;

impl Elevation<'_> {
    pub(super) fn camera(&self, drawing: &mut Drawing, plot: &Plot) {
        let pose = &self.plan.pose;
        let canvas = &mut drawing.canvas;
        let at = |place: Point| plot.at(self.spot(place));
        canvas.line(at(pose.socket), at(pose.pivot), Pen::BOLD, "head");
        for solid in [barrel(self.brief, self.plan), body(self.brief, self.plan)] {
            let outline = hull(&solid.map(at));
            canvas.enter(Ink::Paper);
            canvas.polygon(&outline, None, 1.0, "");
            canvas.leave();
            canvas.polygon(&outline, Some(Pen::MEDIUM), 0.18, "");
        }
    }

    pub(super) fn rig(&self, drawing: &mut Drawing, plot: &Plot) {
        let canvas = &mut drawing.canvas;
        let Plan { placement, pose, .. } = self.plan;
        let support = &self.brief.support;
        let at = |place: Point| plot.at(self.spot(place));
        let clamp = self.clamp();
        let foot = placement.column.at_height(0.0);
        // Legs from where they meet the column, or from the clamp under that.
        let legs_top = support.legs_top_mm.min(clamp.z_mm.max(0.0));
        for leg in self.feet() {
            canvas.line(at(placement.column.at_height(legs_top)), at(leg), Pen::MEDIUM, "leg");
        }
        let height = clamp.z_mm.max(0.0).min(support.highest_pivot_mm);
        let half = plot.units(support.column_radius_mm).max(1.0);
        let (top, ground) = (at(placement.column.at_height(height)), at(foot));
        let corners =
            [ground.moved(-half, 0.0), ground.moved(half, 0.0), top.moved(half, 0.0), top.moved(-half, 0.0)];
        canvas.enter(Ink::Paper);
        canvas.polygon(&corners, None, 1.0, "");
        canvas.leave();
        canvas.polygon(&corners, Some(Pen::MEDIUM), 0.3, "column");
        if clamp.z_mm > support.highest_pivot_mm {
            canvas.line(top, at(clamp), Pen::MISSING, "column-missing");
        }
        if placement.boom_used {
            let tail = placement.tail_end.unwrap_or(clamp);
            let (from, to) = (at(tail), at(pose.pivot));
            match self.boom() {
                Some(boom) if placement.reach_mm <= boom.longest_reach_mm => {
                    canvas.line(from, to, Pen::BOLD, "boom");
                }
                Some(boom) => {
                    let share = boom.longest_reach_mm / placement.reach_mm;
                    let end = at(clamp).towards(to, share);
                    canvas.line(from, end, Pen::BOLD, "boom");
                    canvas.line(end, to, Pen::MISSING, "boom-missing");
                }
                None => canvas.line(from, to, Pen::MISSING, "boom-missing"),
            }
        }
        if support.base_mass_kg > 0.0 {
            mark::base_weight(canvas, at(placement.column.at_height(support.base_height_mm)), "base-weight");
        }
        if let Some(place) = self.counterweight() {
            mark::counterweight(canvas, at(place), "counterweight");
        }
        for (_, bag) in self.sandbags() {
            mark::sandbag(canvas, at(bag), "sandbag");
        }
        if placement.boom_used {
            mark::pivot(canvas, at(clamp), "clamp");
        }
    }

    pub(super) fn view_measures(&self, drawing: &mut Drawing, plot: &Plot) {
        let pose = &self.plan.pose;
        let canvas = &mut drawing.canvas;
        let at = |place: Point| plot.at(self.spot(place));
        let aim = at(pose.aim);
        let [inner, outer] = self.beside_axis().map(|(mm, units)| self.up_by(plot.units(mm) + units));
        if pose.front_clearance_mm.is_some_and(|clearance| clearance > 0.0) {
            let front = pose.sensor.along(pose.forward, front_mm(self.brief, self.plan));
            along(canvas, at(front), aim, inner, "working-distance");
        }
        along(canvas, at(pose.sensor), aim, outer, "sensor-distance");
        // The elevation's arc, from the level towards the camera up to the axis.
        let elevation = self.brief.shot.elevation_deg;
        let radius = ARC_RADIUS;
        let (sin, cos) = sin_cos_deg(elevation);
        canvas.enter(Ink::Measure);
        canvas.line(aim, aim.moved(-radius - 8.0, 0.0), Pen::HELP, "");
        let sweep = if elevation >= 0.0 { 1.0 } else { 0.0 };
        let end = aim.moved(-radius * cos, -radius * sin);
        if elevation != 0.0 {
            let arc = canvas.element("path").path(&[
                ("M", &[aim.x - radius, aim.y]),
                ("A", &[radius, radius, 0.0, 0.0, sweep, end.x, end.y]),
            ]);
            arc.pen(Pen::MEDIUM).part("elevation").close();
        }
        canvas.leave();
    }

    pub(super) fn marks(&self, drawing: &mut Drawing, plot: &Plot) {
        let pose = &self.plan.pose;
        let canvas = &mut drawing.canvas;
        let at = |place: Point| plot.at(self.spot(place));
        mark::aim(canvas, at(pose.aim), "aim");
        if self.shows_view {
            mark::pupil(canvas, at(pose.pupil), "pupil");
        }
        mark::sensor(canvas, at(pose.sensor), "sensor");
        mark::pivot(canvas, at(pose.pivot), "pivot");
    }
}
