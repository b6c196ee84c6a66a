//! The room in an elevation: floor, ceiling, table, subject, and what the lens takes in.

use alloc::vec::Vec;

use super::Elevation;
use crate::draw::camera::subject_box;
use crate::draw::canvas::{Ink, Pen};
use crate::draw::plot::Plot;
use crate::draw::shape::{Spot, cut, cut_line, hull};
use crate::draw::sheet::Drawing;
use crate::number::hypot;
use crate::plan::Plan;
use crate::scene::table::Underside;

impl Elevation<'_> {
    pub(super) fn room(&self, drawing: &mut Drawing, plot: &Plot) {
        let seen = plot.extent();
        let canvas = &mut drawing.canvas;
        let mut level = |height: f64, up: f64, part: &str| {
            let (from, to) = (plot.at(Spot::new(seen.left, height)), plot.at(Spot::new(seen.right, height)));
            canvas.line(from, to, Pen::HEAVY, part);
            // Short strokes on the solid side.
            let mut x = from.x + 3.0;
            while x < to.x {
                canvas.line(Spot::new(x, from.y), Spot::new(x - 5.0, from.y - 5.0 * up), Pen::HAIR, "");
                x += 9.0;
            }
        };
        level(0.0, -1.0, "floor");
        if let Some(ceiling) = self.brief.bay.ceiling_mm
            && ceiling <= seen.top
        {
            level(ceiling, 1.0, "ceiling");
            let clear = ceiling - self.brief.bay.ceiling_clearance_mm;
            if self.brief.bay.ceiling_clearance_mm > 0.0 {
                let (from, to) = (Spot::new(seen.left, clear), Spot::new(seen.right, clear));
                canvas.line(plot.at(from), plot.at(to), Pen::HELP, "ceiling-clearance");
            }
        }
    }

    pub(super) fn table_and_subject(&self, drawing: &mut Drawing, plot: &Plot) {
        let canvas = &mut drawing.canvas;
        let height = self.brief.table.height_mm;
        let (left, right) = self.table();
        let (a, b) = (plot.at(Spot::new(left, height)), plot.at(Spot::new(right, height)));
        let ground = plot.at(Spot::new(left, 0.0)).y;
        // The top's thickness and the legs are signs, not measures.
        let thick = 4.0_f64.min(ground - a.y);
        let inset = 10.0_f64.min(0.1 * (b.x - a.x));
        match self.brief.table.underside {
            Underside::Open => {
                for x in [a.x + inset, b.x - inset] {
                    canvas.line(Spot::new(x, a.y + thick), Spot::new(x, ground), Pen::MEDIUM, "");
                }
            }
            Underside::Closed => {
                let corners = [
                    Spot::new(a.x + inset, a.y + thick),
                    Spot::new(b.x - inset, a.y + thick),
                    Spot::new(b.x - inset, ground),
                    Spot::new(a.x + inset, ground),
                ];
                canvas.polygon(&corners, Some(Pen::LIGHT), 0.12, "");
            }
        }
        let slab = [a, b, b.moved(0.0, thick), a.moved(0.0, thick)];
        canvas.polygon(&slab, Some(Pen::LIGHT), 0.35, "");
        canvas.line(a, b, Pen::HEAVY, "table");

        let corners = subject_box(self.brief, self.plan).map(|corner| plot.at(self.spot(corner)));
        let outline = hull(&corners);
        canvas.polygon(&outline, Some(Pen::MEDIUM), 0.22, "subject");
        if self.brief.subject.height_mm <= 0.0
            && let (Some(first), Some(last)) = (outline.first(), outline.last())
        {
            canvas.line(*first, *last, Pen::BOLD, "");
        }
        if let Some(vessel) = self.brief.subject.vessel {
            let rim = height + self.brief.subject.height_mm;
            let half = 0.5 * vessel.inside_diameter_mm;
            let level = rim - vessel.contents_below_rim_mm;
            let inside = [(-half, rim), (-half, level), (half, level), (half, rim)];
            canvas.polyline(&inside.map(|(x, z)| plot.at(Spot::new(x, z))), Pen::HIDDEN, "contents");
        }
    }

    /// The field of view, down to the table's plane or on to the backdrop, with the frame and the limits of
    /// sharpness.
    pub(super) fn view(&self, drawing: &mut Drawing, plot: &Plot) {
        let Plan { pose, lens, frame_height_mm, .. } = self.plan;
        let table = self.brief.table.height_mm;
        let seen = plot.extent().grown(plot.mm_per_unit);
        let canvas = &mut drawing.canvas;
        let pupil = self.spot(pose.pupil);
        let half = 0.5 * frame_height_mm;
        let edges = [half, -half].map(|up| self.spot(pose.aim.along(pose.up, up)));
        let far = edges.map(|edge| {
            let way = hypot(edge.x - pupil.x, edge.y - pupil.y);
            pupil.towards(edge, 2.0 * (seen.width() + seen.height() + way) / way)
        });
        let above = |at: Spot| if pupil.y > table { at.y - table } else { 1.0 };
        let behind = |at: Spot| match &self.plan.backdrop {
            Some(backdrop) => backdrop.behind_mm - at.x,
            None => 1.0,
        };
        if let Some(backdrop) = &self.plan.backdrop
            && backdrop.behind_mm <= seen.right
        {
            let top = if backdrop.height_mm.is_finite() { table + backdrop.height_mm } else { f64::INFINITY };
            let foot = plot.at(Spot::new(backdrop.behind_mm, table));
            let head = plot.at(Spot::new(backdrop.behind_mm, top.min(seen.top).max(table)));
            if head.y == foot.y {
                // None of it is in the picture: a sign of where it would stand.
                canvas.line(foot, foot.moved(0.0, -22.0), Pen::HIDDEN, "");
            }
            canvas.line(foot, head, Pen::HEAVY, "backdrop");
            let mut y = head.y + 4.0;
            while y < foot.y {
                canvas.line(Spot::new(foot.x, y), Spot::new(foot.x + 5.0, y - 5.0), Pen::HAIR, "");
                y += 7.0;
            }
        }
        let [far_top, far_bottom] = far;
        let field = cut(&[pupil, far_top, far_bottom], above);
        let field = seen.polygon(&cut(&field, behind));
        let field: Vec<Spot> = field.iter().map(|at| plot.at(*at)).collect();
        canvas.enter(Ink::Measure);
        canvas.polygon(&field, None, 0.09, "field");
        for end in far {
            let edge = cut_line(cut_line(Some((pupil, end)), above), behind);
            if let Some((from, to)) = edge.and_then(|(from, to)| seen.line(from, to)) {
                canvas.line(plot.at(from), plot.at(to), Pen::FIELD, "");
            }
        }
        let [top, bottom] = edges;
        canvas.line(plot.at(top), plot.at(bottom), Pen::LIGHT, "frame");
        // Limits of sharpness, as wide as the field is there.
        let depth = &self.plan.focus.depth_of_field;
        for (limit, part) in [(depth.near_limit_mm, "near-limit"), (depth.far_limit_mm, "far-limit")] {
            let share = limit / lens.pupil_distance_mm;
            if share.is_finite()
                && let Some((from, to)) = seen.line(pupil.towards(top, share), pupil.towards(bottom, share))
            {
                canvas.line(plot.at(from), plot.at(to), Pen::HIDDEN, part);
            }
        }
        canvas.leave();
        canvas.line(plot.at(self.spot(pose.sensor)), plot.at(self.spot(pose.aim)), Pen::CHAIN, "axis");
    }
}
