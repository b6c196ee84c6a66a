//! What of the room the lens sees besides the subject: table, board, horizon, backdrop and rig.

use alloc::format;
use alloc::vec::Vec;

use super::Picture;
use crate::draw::canvas::{Canvas, Ink, Pen};
use crate::draw::plot::Plot;
use crate::draw::seen::Window;
use crate::draw::shape::{Between, Spot};
use crate::scene::table::Side;
use crate::vector::Point;

impl Picture<'_> {
    pub(super) fn definitions(&self, canvas: &mut Canvas, plot: &Plot, id: &str) {
        let (x, y) = (self.window.half_width_mm, self.window.half_height_mm);
        let corner = plot.at(Spot::new(-x, y));
        canvas.element("clipPath").word("id", &format!("{id}-window")).enter();
        let area = canvas.element("rect").number("x", corner.x).number("y", corner.y);
        area.number("width", plot.units(2.0 * x)).number("height", plot.units(2.0 * y)).close();
        canvas.leave();
        // Strokes one way for too near, the other way for too far, dots for contents.
        for (name, step, path) in
            [("near", 7.0, "M-1,8L8,-1M-1,1L1,-1M6,8L8,6"), ("far", 7.0, "M-1,-1L8,8M6,-1L8,1M-1,6L1,8")]
        {
            let pattern = canvas.element("pattern").word("id", &format!("{id}-{name}"));
            let pattern = pattern.word("patternUnits", "userSpaceOnUse");
            pattern.exact("width", step).exact("height", step).enter();
            canvas.element("path").word("d", path).pen(Pen::LIGHT).close();
            canvas.leave();
        }
        let dots = canvas.element("pattern").word("id", &format!("{id}-contents"));
        let dots = dots.word("patternUnits", "userSpaceOnUse");
        dots.exact("width", 5.0).exact("height", 5.0).enter();
        canvas.circle(Spot::new(1.5, 1.5), 0.8, None, 1.0);
        canvas.circle(Spot::new(4.0, 4.0), 0.8, None, 1.0);
        canvas.leave();
    }

    /// Horizon, or backdrop.
    pub(super) fn background(&self, canvas: &mut Canvas, plot: &Plot) {
        let (x, y) = (self.window.half_width_mm, self.window.half_height_mm);
        if let Some(up) = self.backdrop_foot() {
            let corners = [(-x, up), (x, up), (x, y), (-x, y)].map(|(x, y)| plot.at(Spot::new(x, y)));
            canvas.polygon(&corners, None, 0.04, "");
            let [left, right, ..] = corners;
            canvas.line(left, right, Pen::MEDIUM, "backdrop-foot");
        }
        if let Some(up) = self.horizon() {
            canvas.line(plot.at(Spot::new(-x, up)), plot.at(Spot::new(x, up)), Pen::CHAIN, "horizon");
        }
    }

    pub(super) fn table_top(&self, canvas: &mut Canvas, plot: &Plot, id: &str) {
        let table = self.table();
        let drawn = |places: &[Point]| -> Vec<Spot> {
            self.window.spots(&self.window.cut(places)).iter().map(|at| plot.at(*at)).collect()
        };
        let below = self.plan.footprint.from_below;
        let top = drawn(&table);
        if below {
            canvas.enter(Ink::Paper);
            canvas.polygon(&top, None, 1.0, "");
            canvas.leave();
        }
        canvas.polygon(&top, None, if below { 0.3 } else { 0.1 }, "table");
        for (zone, places) in self.zones() {
            let corners = drawn(&places);
            if corners.len() > 2 {
                let hatch = canvas.element("polygon").points(&corners);
                hatch.word("fill", &format!("url(#{id}-{zone})")).part(zone_part(zone)).close();
            }
        }
        let height = self.brief.table.height_mm;
        for side in Side::ALL {
            let (from, to) = self.brief.table.edge(side);
            let ends = cut_to_table(&table, from.at_height(height), to.at_height(height));
            if let Some((a, b)) = ends.and_then(|(a, b)| self.window.line(a, b)) {
                canvas.line(plot.at(a), plot.at(b), Pen::HEAVY, edge_part(side));
            }
        }
        if let Some([a, b, c, d]) = self.board() {
            for (from, to) in [(a, b), (b, c), (c, d), (d, a)] {
                if let Some((from, to)) = self.window.line(from, to) {
                    canvas.enter(Ink::Measure);
                    canvas.line(plot.at(from), plot.at(to), Pen::FIELD, "board");
                    canvas.leave();
                }
            }
        }
    }

    /// Column and boom, where they come into the picture.
    pub(super) fn rig(&self, canvas: &mut Canvas, plot: &Plot) {
        let in_picture = &self.plan.support_in_picture;
        for (length, line, part) in
            [(in_picture.column_mm, self.column(), "column"), (in_picture.boom_mm, self.boom(), "boom")]
        {
            if length > 0.0
                && let Some((from, to)) = line
                && let Some((a, b)) = self.window.line(from, to)
            {
                canvas.line(plot.at(a), plot.at(b), Pen::MISSING, part);
            }
        }
    }

    /// Pales what lies outside the frame.
    pub(super) fn veil(&self, canvas: &mut Canvas, plot: &Plot) {
        let ring = |window: &Window<'_>| {
            let (x, y) = (window.half_width_mm, window.half_height_mm);
            (plot.at(Spot::new(-x, y)), plot.at(Spot::new(x, -y)))
        };
        let ((a, b), (c, d)) = (ring(&self.window), ring(&self.frame));
        canvas.enter(Ink::Paper);
        let veil = canvas.element("path").path(&[
            ("M", &[a.x, a.y]),
            ("H", &[b.x]),
            ("V", &[b.y]),
            ("H", &[a.x]),
            ("Z", &[]),
            ("M", &[c.x, c.y]),
            ("H", &[d.x]),
            ("V", &[d.y]),
            ("H", &[c.x]),
            ("Z", &[]),
        ]);
        veil.word("fill-rule", "evenodd").tint(0.62).close();
        canvas.leave();
    }
}

/// The part of an edge that is left of the table where a backdrop cuts it.
pub(super) fn cut_to_table(table: &[Point], from: Point, to: Point) -> Option<(Point, Point)> {
    let along = from.to(to);
    let length = along.dot(along);
    let mut ends: Option<(f64, f64)> = None;
    for corner in table {
        let way = from.to(*corner);
        let share = way.dot(along) / length;
        let off = way.dot(way) - share * share * length;
        // Corners on this edge, but for rounding.
        if off.abs() <= 1e-9 * length {
            ends = Some(ends.map_or((share, share), |(a, b)| (a.min(share), b.max(share))));
        }
    }
    ends.map(|(a, b)| (from.between(to, a), from.between(to, b)))
}

fn edge_part(side: Side) -> &'static str {
    match side {
        Side::Front => "table-front",
        Side::Right => "table-right",
        Side::Back => "table-back",
        Side::Left => "table-left",
    }
}

fn zone_part(zone: &str) -> &'static str {
    if zone == "near" { "not-sharp-near" } else { "not-sharp-far" }
}
