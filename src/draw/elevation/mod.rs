//! One elevation: the room, the camera or the rig projected square onto an upright plane through the aim
//! point.

mod rig;
mod room;

use alloc::vec::Vec;

use super::camera::{barrel, body, subject_box};
use super::shape::{Extent, Spot};
use super::sheet::Drawing;
use crate::brief::Brief;
use crate::number::sin_cos_deg;
use crate::plan::Plan;
use crate::rig::support::Boom;
use crate::vector::{Direction, Point};

/// An elevation across which a level direction runs to the right.
pub(super) struct Elevation<'a> {
    pub(super) brief: &'a Brief,
    pub(super) plan: &'a Plan,
    /// To the right on the paper.
    pub(super) along: Direction,
    /// Whether it shows where the camera looks, and the measures for that.
    pub(super) shows_view: bool,
    /// Whether it shows the rig.
    pub(super) shows_rig: bool,
}

/// Units between an outline and the measures beside it.
const ASIDE: f64 = 9.0;
/// The radius of the elevation's arc in units.
pub(super) const ARC_RADIUS: f64 = 42.0;

impl Elevation<'_> {
    /// A place of the room in this elevation's millimetres.
    pub(super) fn spot(&self, place: Point) -> Spot {
        Spot::new(self.plan.pose.aim.to(place).dot(self.along), place.z_mm)
    }

    /// A direction of the room on the paper, y down.
    fn slope(&self, direction: Direction) -> Spot {
        Spot::new(direction.dot(self.along), -direction.z)
    }

    /// From where to where the table goes.
    pub(super) fn table(&self) -> (f64, f64) {
        let height = self.brief.table.height_mm;
        let mut extent = Extent::NOTHING;
        for corner in self.brief.table.corners() {
            extent.take(self.spot(corner.at_height(height)));
        }
        (extent.left, extent.right)
    }

    /// The boom, if one is used and there.
    pub(super) fn boom(&self) -> Option<&Boom> {
        if self.plan.placement.boom_used { self.brief.support.boom.as_ref() } else { None }
    }

    /// Where the counterweight hangs, if one is on.
    pub(super) fn counterweight(&self) -> Option<Point> {
        counterweight(self.brief, self.plan)
    }

    /// Where the column is clamped to the boom, or carries the pivot.
    pub(super) fn clamp(&self) -> Point {
        let placement = &self.plan.placement;
        placement.column.at_height(placement.clamp_height_mm)
    }

    /// Where sandbags hang, with their masses.
    pub(super) fn sandbags(&self) -> Vec<(f64, Point)> {
        sandbags(self.brief, self.plan)
    }

    fn feet(&self) -> impl Iterator<Item = Point> {
        let placement = &self.plan.placement;
        placement.feet.iter().take(placement.leg_count as usize).map(|foot| foot.at_height(0.0))
    }

    /// What must be seen of the room.
    pub(super) fn extent(&self) -> Extent {
        let mut extent = Extent::NOTHING;
        let pose = &self.plan.pose;
        let table_height = self.brief.table.height_mm;
        let (left, right) = self.table();
        extent.take(Spot::new(left, 0.0));
        extent.take(Spot::new(right, table_height));
        for solid in
            [body(self.brief, self.plan), barrel(self.brief, self.plan), subject_box(self.brief, self.plan)]
        {
            for corner in solid {
                extent.take(self.spot(corner));
            }
        }
        for place in [pose.aim, pose.pupil, pose.sensor, pose.socket, pose.pivot] {
            extent.take(self.spot(place));
        }
        extent.take(Spot::new(extent.left, pose.body_top_mm));
        if self.shows_rig {
            for foot in self.feet() {
                extent.take(self.spot(foot));
            }
            extent.take(self.spot(self.clamp()));
            if let Some(end) = self.plan.placement.tail_end {
                extent.take(self.spot(end));
            }
            for (_, bag) in self.sandbags() {
                extent.take(self.spot(bag));
            }
            extent.take(Spot::new(extent.left, self.plan.placement.highest_point_mm));
        }
        if let Some(backdrop) = &self.plan.backdrop
            && self.shows_view
            && backdrop.behind_mm < extent.left.abs() + extent.right.abs()
        {
            extent.take(Spot::new(backdrop.behind_mm, table_height));
        }
        // A ceiling further up than a quarter of it all is told in words.
        if let Some(ceiling) = self.brief.bay.ceiling_mm
            && ceiling < extent.top + 0.25 * extent.height() + 200.0
        {
            extent.take(Spot::new(0.0, ceiling));
        }
        extent
    }

    /// Draws it into an area.
    pub(super) fn draw(&self, drawing: &mut Drawing, area: usize, plane: &str) {
        let plot = drawing.enter(area, plane);
        self.room(drawing, &plot);
        if self.shows_view {
            self.view(drawing, &plot);
        }
        self.table_and_subject(drawing, &plot);
        if self.shows_rig {
            self.rig(drawing, &plot);
        }
        self.camera(drawing, &plot);
        if self.shows_view {
            self.view_measures(drawing, &plot);
        }
        self.marks(drawing, &plot);
        drawing.leave();
    }

    /// Where measures along the axis are drawn: how far beside it in millimetres and units.
    pub(super) fn beside_axis(&self) -> [(f64, f64); 2] {
        let above = self.brief.camera.body_above_mm;
        [(above, ASIDE), (above, 2.2 * ASIDE)]
    }

    /// The direction of "up in the picture" on the paper, times units.
    pub(super) fn up_by(&self, units: f64) -> Spot {
        let up = self.slope(self.plan.pose.up);
        Spot::new(units * up.x, units * up.y)
    }
}

/// Where the counterweight hangs, if one is on.
pub(super) fn counterweight(brief: &Brief, plan: &Plan) -> Option<Point> {
    let boom = brief.support.boom.as_ref()?;
    let placement = &plan.placement;
    if !placement.boom_used || boom.counterweight_kg <= 0.0 {
        return None;
    }
    let (sin, cos) = sin_cos_deg(boom.pitch_deg);
    let arm = boom.counterweight_arm_mm();
    let level = placement.column.along(placement.towards, -arm * cos);
    Some(level.at_height(placement.clamp_height_mm - arm * sin))
}

/// Where sandbags hang, with their masses.
pub(super) fn sandbags(brief: &Brief, plan: &Plan) -> Vec<(f64, Point)> {
    let placement = &plan.placement;
    let bags = brief.support.sandbags.iter().filter(|bag| bag.mass_kg > 0.0);
    bags.map(|bag| {
        let direction = placement.towards.turned(bag.direction_deg);
        (bag.mass_kg, placement.column.along(direction, bag.out_mm).at_height(bag.height_mm))
    })
    .collect()
}
