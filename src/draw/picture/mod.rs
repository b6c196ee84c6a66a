//! The picture as the lens will see it.

mod labels;
mod room;
mod subject;

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::Style;
use super::canvas::{Canvas, Pen};
use super::dimension::{Row, along};
use super::mark;
use super::plot::Plot;
use super::seen::Window;
use super::shape::{Extent, Spot, cut};
use super::sheet::Sheet;
use super::side::told;
use crate::brief::Brief;
use crate::plan::Plan;
use crate::vector::{Direction, Point};

/// How much is shown outside the frame, as a share of its longer side.
const OUTSIDE: f64 = 0.08;

struct Picture<'a> {
    brief: &'a Brief,
    plan: &'a Plan,
    /// What is drawn, outside the frame too.
    window: Window<'a>,
    frame: Window<'a>,
}

pub(super) fn picture(brief: &Brief, plan: &Plan, style: &Style<'_>) -> String {
    let (half_width_mm, half_height_mm) = (0.5 * plan.frame_width_mm, 0.5 * plan.frame_height_mm);
    let outside = OUTSIDE * plan.frame_width_mm.max(plan.frame_height_mm);
    let picture = Picture {
        brief,
        plan,
        window: Window {
            plan,
            half_width_mm: half_width_mm + outside,
            half_height_mm: half_height_mm + outside,
        },
        frame: Window { plan, half_width_mm, half_height_mm },
    };
    let labels = picture.labels(style.unit);
    let rows = [Row {
        area: 0,
        from: Spot::new(-half_width_mm, -half_height_mm),
        to: Spot::new(half_width_mm, -half_height_mm),
        value: format!("{}", style.unit.write(plan.frame_width_mm)),
        name: "frame width",
        part: "frame-width",
    }]
    .to_vec();
    let hatched =
        picture.subject_not_sharp().is_some() || picture.zones().iter().any(|(_, places)| !places.is_empty());
    let note = "Measures lie in the plane through the aim point. Outside the frame everything is paler.";
    let hatches = " Hatched: not sharp, rising strokes too near, falling ones too far.";
    let notes = [format!("{note}{}", if hatched { hatches } else { "" })].to_vec();
    let sheet = Sheet {
        kind: "picture",
        heading: "The picture",
        told: told(&labels, &rows, &notes),
        areas: [Extent {
            left: -picture.window.half_width_mm,
            right: picture.window.half_width_mm,
            bottom: -picture.window.half_height_mm,
            top: picture.window.half_height_mm,
        }]
        .to_vec(),
        labels,
        rows,
        notes,
        enlarged: false,
        round_scale: false,
    };
    let mut drawing = sheet.lay(style);
    let id = drawing.id.clone();
    let plot = drawing.enter(0, "picture");
    picture.draw(&mut drawing.canvas, &plot, &id);
    drawing.leave();
    drawing.finish()
}

/// The middle of some places.
fn middle(places: &[Spot]) -> Option<Spot> {
    let count = places.len() as f64;
    let (x, y) = places.iter().fold((0.0, 0.0), |(x, y), at| (x + at.x, y + at.y));
    if places.is_empty() { None } else { Some(Spot::new(x / count, y / count)) }
}

impl Picture<'_> {
    /// The level direction in which the camera looks.
    fn forward(&self) -> Direction {
        let right = self.plan.pose.right;
        Direction { x: -right.y, y: right.x, z: 0.0 }
    }

    /// The table top, ending at a backdrop.
    fn table(&self) -> Vec<Point> {
        let height = self.brief.table.height_mm;
        let corners = self.brief.table.corners().map(|corner| corner.at_height(height));
        match &self.plan.backdrop {
            Some(backdrop) => {
                cut(&corners, |place| backdrop.behind_mm - self.plan.pose.aim.to(place).dot(self.forward()))
            }
            None => corners.to_vec(),
        }
    }

    /// Whether the brief's tilt lays the plane of focus on the table, and the lens can do it.
    fn focus_on_table(&self) -> Option<f64> {
        let tilt = self.plan.tilt.tilt_deg?;
        let used = self.brief.shot.focus_on_table && tilt <= self.brief.lens.largest_tilt_deg;
        if used { Some(tilt) } else { None }
    }

    /// What of the table is not sharp: too near and too far.
    fn zones(&self) -> [(&'static str, Vec<Point>); 2] {
        if self.plan.footprint.from_below || self.focus_on_table().is_some() {
            return [("near", Vec::new()), ("far", Vec::new())];
        }
        let depth = &self.plan.focus.depth_of_field;
        let (near, far) = (depth.near_limit_mm, depth.far_limit_mm);
        let table = self.window.cut(&self.table());
        let too_far =
            if far.is_finite() { cut(&table, |place| self.window.depth(place) - far) } else { Vec::new() };
        [("near", cut(&table, |place| near - self.window.depth(place))), ("far", too_far)]
    }

    /// The board's corners.
    fn board(&self) -> Option<[Point; 4]> {
        let board = self.plan.footprint.board?;
        let (right, forward) = (self.plan.pose.right, self.forward());
        let height = self.brief.table.height_mm;
        Some([(-0.5, -0.5), (0.5, -0.5), (0.5, 0.5), (-0.5, 0.5)].map(|(across, along)| {
            let at =
                board.centre.along(right, across * board.width_mm).along(forward, along * board.depth_mm);
            at.at_height(height)
        }))
    }

    /// Where the table's plane ends in the picture: level with the entrance pupil.
    fn horizon(&self) -> Option<f64> {
        let pose = &self.plan.pose;
        let up = -self.plan.lens.pupil_distance_mm * pose.forward.z / pose.up.z;
        let shown = pose.up.z > 0.0 && up.abs() < self.window.half_height_mm;
        if shown && self.plan.backdrop.is_none() { Some(up) } else { None }
    }

    /// Where the backdrop's foot is in the picture, if it is seen at all.
    fn backdrop_foot(&self) -> Option<f64> {
        let backdrop = self.plan.backdrop.as_ref()?;
        let foot = self.plan.pose.aim.floor().along(self.forward(), backdrop.behind_mm);
        let up =
            self.window.spot(foot.at_height(self.brief.table.height_mm)).map_or(f64::NEG_INFINITY, |at| at.y);
        let half = self.frame.half_height_mm;
        if up < half { Some(up.max(-self.window.half_height_mm)) } else { None }
    }

    fn column(&self) -> Option<(Point, Point)> {
        let placement = &self.plan.placement;
        let top = placement.clamp_height_mm.max(0.0);
        Some((placement.column.at_height(0.0), placement.column.at_height(top)))
    }

    fn boom(&self) -> Option<(Point, Point)> {
        Some((self.plan.placement.tail_end?, self.plan.pose.pivot))
    }

    fn draw(&self, canvas: &mut Canvas, plot: &Plot, id: &str) {
        self.definitions(canvas, plot, id);
        canvas.element("g").word("clip-path", &format!("url(#{id}-window)")).enter();
        let below = self.plan.footprint.from_below;
        self.background(canvas, plot);
        if !below {
            self.table_top(canvas, plot, id);
            self.subject(canvas, plot, id);
        } else {
            // From below the table hides what stands on it.
            self.subject(canvas, plot, id);
            self.table_top(canvas, plot, id);
        }
        self.rig(canvas, plot);
        self.veil(canvas, plot);
        canvas.leave();
        let (x, y) = (self.frame.half_width_mm, self.frame.half_height_mm);
        let corners = [(-x, -y), (x, -y), (x, y), (-x, y)].map(|(x, y)| plot.at(Spot::new(x, y)));
        canvas.polygon(&corners, Some(Pen::BOLD), 0.0, "frame");
        mark::aim(canvas, plot.at(Spot::new(0.0, 0.0)), "aim");
        let aside = Spot::new(-plot.units(self.window.half_width_mm - x) - HEIGHT_ASIDE, 0.0);
        let [bottom, _, _, top] = corners;
        along(canvas, bottom, top, aside, "frame-height");
    }
}

/// Units between the window and the frame height's measure.
const HEIGHT_ASIDE: f64 = 7.0;
