//! The stand from above, enlarged: its feet, the line over which it tips first, and where its centre of
//! gravity lies in each state.

use alloc::vec::Vec;

use super::{Above, floor_spot, spot};
use crate::draw::canvas::{Canvas, Ink, Pen};
use crate::draw::elevation::{counterweight, sandbags};
use crate::draw::mark;
use crate::draw::plot::Plot;
use crate::draw::shape::Spot;
use crate::draw::sheet::Drawing;
use crate::rig::weights::RigState;

impl Above<'_> {
    /// Draws it.
    pub(super) fn stand(&self, drawing: &mut Drawing) {
        let plot = drawing.enter(1, "stand");
        let canvas = &mut drawing.canvas;
        let table: Vec<Spot> = self.brief.table.corners().iter().map(|at| plot.at(floor_spot(*at))).collect();
        canvas.enter(Ink::Quiet);
        canvas.polygon(&table, Some(Pen::LIGHT), 0.08, "");
        canvas.leave();
        self.feet_and_column(canvas, &plot, true);
        self.boom(canvas, &plot);
        if self.brief.support.base_mass_kg > 0.0 {
            mark::base_weight(canvas, plot.at(floor_spot(self.plan.placement.column)), "base-weight");
        }
        if let Some(place) = counterweight(self.brief, self.plan) {
            mark::counterweight(canvas, plot.at(spot(place)), "counterweight");
        }
        for (_, bag) in sandbags(self.brief, self.plan) {
            mark::sandbag(canvas, plot.at(spot(bag)), "sandbag");
        }
        for (standing, state, _) in self.states().into_iter().rev() {
            let part = match state {
                RigState::AsShot => "centre-as-shot",
                RigState::CameraOff => "centre-camera-off",
                RigState::CounterweightOff => "centre-counterweight-off",
            };
            mark::centre(canvas, plot.at(spot(standing.centre)), state, part);
        }
        drawing.leave();
    }

    /// Feet, legs and column, with the margin as shot where that is told.
    pub(super) fn feet_and_column(&self, canvas: &mut Canvas, plot: &Plot, margin: bool) {
        let placement = &self.plan.placement;
        let column = plot.at(floor_spot(placement.column));
        let feet: Vec<Spot> = self.feet().iter().map(|foot| plot.at(*foot)).collect();
        canvas.polygon(&feet, Some(Pen::HIDDEN), 0.0, "feet");
        for foot in &feet {
            canvas.line(column, *foot, Pen::MEDIUM, "");
        }
        if let Some((from, to)) = self.tipping_line() {
            canvas.line(plot.at(from), plot.at(to), Pen::BOLD, "tipping-line");
            if margin {
                // Square to the line.
                let centre = spot(self.plan.stability.as_shot.centre);
                let (x, y) = (to.x - from.x, to.y - from.y);
                let share = ((centre.x - from.x) * x + (centre.y - from.y) * y) / (x * x + y * y);
                canvas.line(plot.at(centre), plot.at(from.towards(to, share)), Pen::MEDIUM, "margin");
            }
        }
        for foot in &feet {
            mark::foot(canvas, *foot, "foot");
        }
        let radius = plot.units(self.brief.support.column_radius_mm).max(3.0);
        canvas.element("g").moved(column).part("column").enter();
        canvas.circle(Spot::new(0.0, 0.0), radius, Some(Pen::MEDIUM), 1.0);
        canvas.leave();
    }
}
