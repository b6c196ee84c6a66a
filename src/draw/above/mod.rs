//! The view from above: the bay with the frame on the table, and the stand on its feet.

mod floor;
mod stand;

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::camera::{barrel, body};
use super::elevation::{counterweight, sandbags};
use super::label::{Beside, Label};
use super::length::LengthUnit;
use super::shape::{Extent, Spot};
use super::sheet::Sheet;
use super::side::{kilograms, told};
use super::{RIG_NOTE, Style};
use crate::brief::Brief;
use crate::number::hypot;
use crate::plan::Plan;
use crate::rig::stability::Standing;
use crate::rig::weights::RigState;
use crate::scene::table::Side;
use crate::vector::{FloorPoint, Point};

/// A place of the room as it is drawn here.
fn spot(place: Point) -> Spot {
    Spot::new(place.x_mm, place.y_mm)
}

fn floor_spot(place: FloorPoint) -> Spot {
    Spot::new(place.x_mm, place.y_mm)
}

struct Above<'a> {
    brief: &'a Brief,
    plan: &'a Plan,
    unit: LengthUnit,
}

pub(super) fn above(brief: &Brief, plan: &Plan, style: &Style<'_>) -> String {
    let above = Above { brief, plan, unit: style.unit };
    let extent = above.extent();
    let mut labels: Vec<Label> =
        above.floor_labels(&extent).into_iter().map(|label| label.beside(Beside::Left, 0)).collect();
    labels.extend(above.stand_labels().into_iter().map(|label| label.beside(Beside::Right, 1)));
    let mut notes = Vec::new();
    notes.extend(above.walls_told(&extent));
    notes.push(if counterweight(brief, plan).is_some() {
        "On the right the stand and its centre of gravity: quartered disc as shot, triangle with the camera \
         off, square with the counterweight off; told is how far it is inside the line between two feet."
            .into()
    } else {
        "On the right the stand and its centre of gravity: quartered disc as shot, triangle with the camera \
         off (no counterweight is on); told is how far it is inside the line between two feet."
            .into()
    });
    notes.push(RIG_NOTE.into());
    let sheet = Sheet {
        kind: "above",
        heading: "From above, the table's front edge below",
        told: told(&labels, &[], &notes),
        areas: [extent, above.stand_extent()].to_vec(),
        enlarged: true,
        labels,
        rows: Vec::new(),
        notes,
        round_scale: true,
    };
    let mut drawing = sheet.lay(style);
    above.floor(&mut drawing);
    above.stand(&mut drawing);
    drawing.finish()
}

/// What a wall, or an edge, is called.
fn side_word(side: Side) -> &'static str {
    match side {
        Side::Front => "front",
        Side::Right => "right",
        Side::Back => "back",
        Side::Left => "left",
    }
}

/// Where a column stands against the table: measures to take with a tape.
struct Station {
    column: Spot,
    /// The nearest place of the edge, extended.
    edge: Spot,
    /// The column's place on the line through the table's centre, square to the edge.
    centre: Spot,
    /// On which side of that line it stands.
    towards: &'static str,
}

impl Above<'_> {
    fn feet(&self) -> Vec<Spot> {
        let placement = &self.plan.placement;
        placement.feet.iter().take(placement.leg_count as usize).map(|foot| floor_spot(*foot)).collect()
    }

    /// The states in which the rig stands, two without a counterweight.
    fn states(&self) -> Vec<(&Standing, RigState, &'static str)> {
        let stability = &self.plan.stability;
        let mut states = Vec::new();
        states.push((&stability.as_shot, RigState::AsShot, "as shot"));
        states.push((&stability.camera_off, RigState::CameraOff, "camera off"));
        if counterweight(self.brief, self.plan).is_some() {
            let state = RigState::CounterweightOff;
            states.push((&stability.counterweight_off, state, "counterweight off"));
        }
        states
    }

    /// The line over which it tips first as shot.
    fn tipping_line(&self) -> Option<(Spot, Spot)> {
        let feet = self.feet();
        let number = self.plan.stability.as_shot.margin_edge as usize;
        let from = feet.get(number.checked_sub(1)?)?;
        let to = feet.get(number).or(feet.first())?;
        Some((*from, *to))
    }

    fn station(&self) -> Station {
        let table = &self.brief.table;
        let column = floor_spot(self.plan.placement.column);
        let (half_width, half_depth) = (0.5 * table.width_mm, 0.5 * table.depth_mm);
        let side = self.plan.placement.side;
        let (edge, centre) = match side {
            Side::Front => (Spot::new(column.x, -half_depth), Spot::new(0.0, column.y)),
            Side::Back => (Spot::new(column.x, half_depth), Spot::new(0.0, column.y)),
            Side::Right => (Spot::new(half_width, column.y), Spot::new(column.x, 0.0)),
            Side::Left => (Spot::new(-half_width, column.y), Spot::new(column.x, 0.0)),
        };
        let towards = match side {
            Side::Front | Side::Back if column.x > 0.0 => "right of centre",
            Side::Front | Side::Back => "left of centre",
            Side::Right | Side::Left if column.y > 0.0 => "behind centre",
            Side::Right | Side::Left => "before centre",
        };
        Station { column, edge, centre, towards }
    }

    /// What must be seen of the stand.
    fn stand_extent(&self) -> Extent {
        let stability = &self.plan.stability;
        let mut extent = Extent::NOTHING;
        for foot in self.feet() {
            extent.take(foot);
        }
        for state in [&stability.as_shot, &stability.camera_off, &stability.counterweight_off] {
            extent.take(spot(state.centre));
        }
        for (_, bag) in sandbags(self.brief, self.plan) {
            extent.take(spot(bag));
        }
        extent
    }

    /// What must be seen of the floor.
    fn extent(&self) -> Extent {
        let Plan { pose, placement, .. } = self.plan;
        let mut extent = Extent::NOTHING;
        for corner in self.brief.table.corners() {
            extent.take(floor_spot(corner));
        }
        for solid in [body(self.brief, self.plan), barrel(self.brief, self.plan)] {
            for corner in solid {
                extent.take(spot(corner));
            }
        }
        for place in [pose.pivot, pose.sensor, pose.aim] {
            extent.take(spot(place));
        }
        for foot in self.feet() {
            extent.take(foot);
        }
        if let Some(end) = placement.tail_end {
            extent.take(spot(end));
        }
        // The frame's corners and the walls, where they are not far off.
        let near = extent.grown(0.35 * extent.width().max(extent.height()));
        let mut seen = extent;
        for corner in self.plan.footprint.corners.iter().flatten() {
            let at = floor_spot(*corner);
            if at.x > near.left && at.x < near.right && at.y > near.bottom && at.y < near.top {
                seen.take(at);
            }
        }
        for side in Side::ALL {
            let wall = self.brief.bay.wall_mm(side);
            let (at, limit) = match side {
                Side::Front => (Spot::new(0.0, -wall), -near.bottom),
                Side::Right => (Spot::new(wall, 0.0), near.right),
                Side::Back => (Spot::new(0.0, wall), near.top),
                Side::Left => (Spot::new(-wall, 0.0), -near.left),
            };
            if wall <= limit {
                seen.take(at);
            }
        }
        seen
    }

    /// The walls in words, those too far off to be drawn too.
    fn walls_told(&self, extent: &Extent) -> Option<String> {
        let mut walls = Vec::new();
        let mut hidden = false;
        for side in Side::ALL {
            let wall = self.brief.bay.wall_mm(side);
            if wall.is_finite() {
                walls.push(format!("{} {}", side_word(side), self.unit.write(wall)).replace(' ', "\u{A0}"));
                let seen = match side {
                    Side::Front => -extent.bottom,
                    Side::Right => extent.right,
                    Side::Back => extent.top,
                    Side::Left => -extent.left,
                };
                hidden |= wall > seen;
            }
        }
        let far = if hidden { "; the far ones are not drawn" } else { "" };
        if walls.is_empty() {
            None
        } else {
            Some(format!("Walls, from the table's centre: {}{far}.", walls.join(", ")))
        }
    }

    fn floor_labels(&self, extent: &Extent) -> Vec<Label> {
        let Above { brief, plan, .. } = self;
        let Plan { pose, placement, footprint, .. } = plan;
        let write = |mm: f64| format!("{}", self.unit.write(mm));
        let mut labels = Vec::new();
        let table = &brief.table;
        let place = Spot::new(-0.42 * table.width_mm, 0.5 * table.depth_mm);
        labels.push(Label::new(place, self.unit.by(table.width_mm, table.depth_mm), "table"));
        labels.push(Label::new(spot(pose.sensor), "", "camera"));
        labels.push(Label::new(spot(pose.pivot), "", "pivot"));

        let station = self.station();
        let outside = table.outside_edge_mm(placement.side, placement.column);
        let edge_name = format!("column to {} edge", side_word(placement.side));
        let middle = station.column.towards(station.edge, 0.5);
        labels.push(Label::new(middle, write(outside), edge_name).measure());
        let off = hypot(station.column.x - station.centre.x, station.column.y - station.centre.y);
        if off >= 0.5 {
            let middle = station.column.towards(station.centre, 0.5);
            labels.push(Label::new(middle, write(off), station.towards).measure());
        }
        if placement.boom_used {
            let middle = floor_spot(placement.column).towards(spot(pose.pivot), 0.45);
            labels.push(Label::new(middle, write(placement.reach_mm), "reach").measure());
        }
        if let (Some(place), Some(boom)) = (counterweight(brief, plan), &brief.support.boom) {
            labels.push(Label::new(spot(place), kilograms(boom.counterweight_kg), "counterweight"));
        }
        let shown = |at: Spot| {
            at.x >= extent.left && at.x <= extent.right && at.y >= extent.bottom && at.y <= extent.top
        };
        let [near_left, near_right, ..] = footprint.corners;
        let even = footprint.keystone_ratio.is_some_and(|ratio| (ratio - 1.0).abs() < 1e-6);
        if let (Some(a), Some(b), Some(board)) = (near_left, near_right, footprint.board.filter(|_| even)) {
            let place = floor_spot(a).towards(floor_spot(b), 0.25);
            if shown(place) {
                let size = self.unit.by(board.width_mm, board.depth_mm);
                labels.push(Label::new(place, size, "frame on the table"));
            }
        } else {
            self.uneven_frame_labels(&shown, &mut labels);
        }
        labels
    }

    fn stand_labels(&self) -> Vec<Label> {
        let Above { brief, plan, .. } = self;
        let mut labels = Vec::new();
        if brief.support.base_mass_kg > 0.0 {
            let place = floor_spot(plan.placement.column);
            labels.push(Label::new(place, kilograms(brief.support.base_mass_kg), "on the base"));
        }
        for (mass_kg, place) in sandbags(brief, plan) {
            labels.push(Label::new(spot(place), kilograms(mass_kg), "sandbag"));
        }
        if let Some((from, to)) = self.tipping_line() {
            labels.push(Label::new(from.towards(to, 0.8), "", "tips first over this"));
        }
        for (state, _, name) in self.states() {
            let margin = format!("{}", self.unit.write(state.margin_mm));
            labels.push(Label::new(spot(state.centre), margin, name));
        }
        labels
    }

    /// Near and far width of a frame that is wider on one side.
    fn uneven_frame_labels(&self, shown: &impl Fn(Spot) -> bool, labels: &mut Vec<Label>) {
        let footprint = &self.plan.footprint;
        let [near_left, near_right, far_right, far_left] = footprint.corners;
        for (a, b, width, name) in [
            (near_left, near_right, footprint.near_width_mm, "frame, near"),
            (far_left, far_right, footprint.far_width_mm, "frame, far"),
        ] {
            if let (Some(a), Some(b), Some(width)) = (a, b, width) {
                let place = floor_spot(a).towards(floor_spot(b), 0.25);
                if shown(place) {
                    labels.push(Label::new(place, format!("{}", self.unit.write(width)), name));
                }
            }
        }
    }
}
