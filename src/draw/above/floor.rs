//! The floor from above: walls, table, the frame on it, camera, column and boom.

use alloc::vec::Vec;

use super::{Above, floor_spot, spot};
use crate::draw::camera::{barrel, body};
use crate::draw::canvas::{Canvas, Ink, Pen};
use crate::draw::dimension::along;
use crate::draw::elevation::counterweight;
use crate::draw::mark;
use crate::draw::plot::Plot;
use crate::draw::seen::Window;
use crate::draw::shape::{Extent, Spot, cut, hull};
use crate::draw::sheet::Drawing;
use crate::number::hypot;
use crate::scene::subject::Shape;
use crate::scene::table::Side;
use crate::vector::Point;

impl Above<'_> {
    /// Draws it.
    pub(super) fn floor(&self, drawing: &mut Drawing) {
        let plot = drawing.enter(0, "floor");
        let canvas = &mut drawing.canvas;
        self.walls(canvas, &plot);
        let table: Vec<Spot> = self.brief.table.corners().iter().map(|at| plot.at(floor_spot(*at))).collect();
        canvas.polygon(&table, Some(Pen::HEAVY), 0.1, "table");
        self.frame(canvas, &plot);
        self.subject(canvas, &plot);
        self.feet_and_column(canvas, &plot, false);
        self.boom(canvas, &plot);
        self.camera(canvas, &plot);
        self.station_measures(canvas, &plot);
        if let Some(place) = counterweight(self.brief, self.plan) {
            mark::counterweight(canvas, plot.at(spot(place)), "counterweight");
        }
        drawing.leave();
    }

    fn walls(&self, canvas: &mut Canvas, plot: &Plot) {
        let bay = &self.brief.bay;
        let seen = plot.extent();
        let inside = Extent {
            left: seen.left.max(-bay.wall_mm(Side::Left)),
            right: seen.right.min(bay.wall_mm(Side::Right)),
            bottom: seen.bottom.max(-bay.wall_mm(Side::Front)),
            top: seen.top.min(bay.wall_mm(Side::Back)),
        };
        let [front_left, front_right, back_right, back_left] = inside.corners().map(|at| plot.at(at));
        for (side, from, to, out) in [
            (Side::Front, front_left, front_right, Spot::new(0.0, 1.0)),
            (Side::Right, front_right, back_right, Spot::new(1.0, 0.0)),
            (Side::Back, back_right, back_left, Spot::new(0.0, -1.0)),
            (Side::Left, back_left, front_left, Spot::new(-1.0, 0.0)),
        ] {
            let wall = bay.wall_mm(side);
            let shown = match side {
                Side::Front => -wall >= seen.bottom,
                Side::Right => wall <= seen.right,
                Side::Back => wall <= seen.top,
                Side::Left => -wall >= seen.left,
            };
            if !shown {
                continue;
            }
            canvas.line(from, to, Pen::BOLD, wall_part(side));
            let long = hypot(to.x - from.x, to.y - from.y);
            let mut way = 4.0;
            while way < long {
                let at = from.towards(to, way / long);
                let slant = at.towards(to, 5.0 / long);
                let end = at.moved(slant.x - at.x + 5.0 * out.x, slant.y - at.y + 5.0 * out.y);
                canvas.line(at, end, Pen::HAIR, "");
                way += 9.0;
            }
        }
    }

    /// What the frame takes in of the table's plane, cut off at the drawing's border.
    fn frame(&self, canvas: &mut Canvas, plot: &Plot) {
        let plan = self.plan;
        if plan.footprint.from_below {
            return;
        }
        let window = Window {
            plan,
            half_width_mm: 0.5 * plan.frame_width_mm,
            half_height_mm: 0.5 * plan.frame_height_mm,
        };
        let height = self.brief.table.height_mm;
        let seen = plot.extent();
        let mut taken = seen.corners().to_vec();
        for side in 0..4 {
            let room = |at: Spot| Point { x_mm: at.x, y_mm: at.y, z_mm: height };
            taken = cut(&taken, |at| window.inside(side, room(at)));
        }
        let drawn: Vec<Spot> = taken.iter().map(|at| plot.at(*at)).collect();
        canvas.enter(Ink::Measure);
        canvas.polygon(&drawn, None, 0.13, "frame");
        let Some(mut before) = taken.last().copied() else { return canvas.leave() };
        for corner in taken {
            if !seen.on_border(before, corner) {
                canvas.line(plot.at(before), plot.at(corner), Pen::HEAVY, "");
            }
            before = corner;
        }
        canvas.leave();
    }

    fn subject(&self, canvas: &mut Canvas, plot: &Plot) {
        let aim = self.plan.pose.aim.floor();
        let centre = plot.at(floor_spot(aim));
        match self.brief.subject.shape {
            Shape::Round { diameter_mm } => {
                let circle = canvas.element("circle").number("cx", centre.x).number("cy", centre.y);
                let circle = circle.number("r", plot.units(0.5 * diameter_mm));
                circle.tint(0.22).outline(Pen::MEDIUM).part("subject").close();
            }
            Shape::Box { width_mm, depth_mm } => {
                let (x, y) = (plot.units(0.5 * width_mm), plot.units(0.5 * depth_mm));
                let corners = [(-x, -y), (x, -y), (x, y), (-x, y)].map(|(x, y)| centre.moved(x, y));
                canvas.polygon(&corners, Some(Pen::MEDIUM), 0.22, "subject");
            }
        }
        if let Some(vessel) = self.brief.subject.vessel {
            canvas.circle(centre, plot.units(0.5 * vessel.inside_diameter_mm), Some(Pen::LIGHT), 0.0);
        }
    }

    /// The boom, dashed where there is none.
    pub(super) fn boom(&self, canvas: &mut Canvas, plot: &Plot) {
        let placement = &self.plan.placement;
        if !placement.boom_used {
            return;
        }
        let column = floor_spot(placement.column);
        let pivot = spot(self.plan.pose.pivot);
        let tail = placement.tail_end.map_or(column, spot);
        let longest = self.brief.support.boom.as_ref().map_or(0.0, |boom| boom.longest_reach_mm);
        let share = if placement.reach_mm > longest { longest / placement.reach_mm } else { 1.0 };
        let end = column.towards(pivot, share);
        if share > 0.0 {
            canvas.line(plot.at(tail), plot.at(end), Pen::BOLD, "boom");
        }
        if share < 1.0 {
            canvas.line(plot.at(end), plot.at(pivot), Pen::MISSING, "boom-missing");
        }
    }

    fn camera(&self, canvas: &mut Canvas, plot: &Plot) {
        let pose = &self.plan.pose;
        for solid in [barrel(self.brief, self.plan), body(self.brief, self.plan)] {
            let outline = hull(&solid.map(|corner| plot.at(spot(corner))));
            canvas.enter(Ink::Paper);
            canvas.polygon(&outline, None, 0.75, "");
            canvas.leave();
            canvas.polygon(&outline, Some(Pen::MEDIUM), 0.12, "");
        }
        canvas.line(plot.at(spot(pose.sensor)), plot.at(spot(pose.aim)), Pen::CHAIN, "axis");
        mark::aim(canvas, plot.at(spot(pose.aim)), "aim");
        mark::sensor(canvas, plot.at(spot(pose.sensor)), "sensor");
        mark::pivot(canvas, plot.at(spot(pose.pivot)), "pivot");
    }

    fn station_measures(&self, canvas: &mut Canvas, plot: &Plot) {
        let station = self.station();
        let [column, edge, centre] = [station.column, station.edge, station.centre].map(|at| plot.at(at));
        let nothing = Spot::new(0.0, 0.0);
        canvas.enter(Ink::Measure);
        canvas.line(plot.at(nothing), centre, Pen::HELP, "");
        canvas.leave();
        along(canvas, column, edge, nothing, "column-to-edge");
        if hypot(column.x - centre.x, column.y - centre.y) > 2.0 {
            along(canvas, column, centre, nothing, "column-to-centre");
        }
    }
}

fn wall_part(side: Side) -> &'static str {
    match side {
        Side::Front => "wall-front",
        Side::Right => "wall-right",
        Side::Back => "wall-back",
        Side::Left => "wall-left",
    }
}
