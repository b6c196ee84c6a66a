//! What is written beside the picture.

use alloc::format;
use alloc::vec::Vec;

use super::{HEIGHT_ASIDE, Picture, middle, room};
use crate::draw::LengthUnit;
use crate::draw::label::{Beside, Label};
use crate::draw::shape::Spot;
use crate::scene::table::Side;

impl Picture<'_> {
    /// Whether a place is not behind the subject, nor before it.
    fn clear(&self, at: Spot) -> bool {
        match &self.plan.outline {
            Some(outline) => {
                let across = at.x > outline.left_mm && at.x < outline.right_mm;
                !(across && at.y > outline.bottom_mm && at.y < outline.top_mm)
            }
            None => true,
        }
    }

    /// Every label.
    pub(super) fn labels(&self, unit: LengthUnit) -> Vec<Label> {
        let Picture { brief, plan, .. } = self;
        let write = |mm: f64| format!("{}", unit.write(mm));
        let (x, y) = (self.frame.half_width_mm, self.frame.half_height_mm);
        let mut labels = Vec::new();
        let height = Label::new(Spot::new(-self.window.half_width_mm, 0.0), write(2.0 * y), "frame height");
        labels.push(height.shifted(Spot::new(-HEIGHT_ASIDE, 0.0)).measure().beside(Beside::Left, 0));
        match &plan.outline {
            Some(outline) => {
                let inside = |at: f64, half: f64| at.max(-half).min(half);
                let place = Spot::new(
                    inside(outline.right_mm, x),
                    0.5 * (inside(outline.top_mm, y) + inside(outline.bottom_mm, y)),
                );
                let share =
                    format!("{:.0} % × {:.0} %", 100.0 * outline.fill_width, 100.0 * outline.fill_height);
                labels.push(Label::new(place, share, "subject, of the frame").beside(Beside::Right, 0));
                for (room, at, name) in [
                    (
                        outline.room_above_mm,
                        Spot::new(0.3 * inside(outline.right_mm, x), y),
                        "subject cut above",
                    ),
                    (
                        outline.room_below_mm,
                        Spot::new(0.3 * inside(outline.right_mm, x), -y),
                        "subject cut below",
                    ),
                    (outline.room_left_mm, Spot::new(-x, place.y), "subject cut on the left"),
                    (outline.room_right_mm, Spot::new(x, place.y), "subject cut on the right"),
                ] {
                    if room < 0.0 {
                        labels.push(Label::new(at, write(-room), name));
                    }
                }
            }
            None => labels.push(Label::new(Spot::new(0.0, 0.0), "", "subject reaches the lens")),
        }
        if let (Some(share), Some(vessel)) = (plan.shares.contents, brief.subject.vessel) {
            let level = brief.subject.height_mm - vessel.contents_below_rim_mm - plan.aim_height_mm;
            if let Some(seen) = self.frame.circle(level, 0.5 * vessel.inside_diameter_mm) {
                let place = Spot::new((-0.3 * seen.half_width).max(-x), seen.up.min(y).max(-y));
                labels.push(Label::new(place, format!("{:.0} %", 100.0 * share), "of the contents seen"));
            }
        }
        for side in Side::ALL {
            let (from, to) = brief.table.edge(side);
            let height = brief.table.height_mm;
            let ends = room::cut_to_table(&self.table(), from.at_height(height), to.at_height(height));
            if let Some((a, b)) = ends.and_then(|(a, b)| self.frame.line(a, b)) {
                let places = [0.12, 0.88, 0.5, 0.3, 0.7, 0.02, 0.98].map(|share| a.towards(b, share));
                if let Some(place) = places.into_iter().find(|at| self.clear(*at)) {
                    labels.push(Label::new(place, "", format!("table's {} edge", side_name(side))));
                }
            }
        }
        for (zone, places) in self.zones() {
            let shown = self.frame.spots(&self.frame.cut(&places));
            if let Some(middle) = middle(&shown) {
                // Beside the subject rather than behind it.
                let ends = shown.iter().map(|end| middle.towards(*end, 0.85));
                let place = ends.filter(|at| self.clear(*at)).max_by(|a, b| a.x.total_cmp(&b.x));
                let place = place.unwrap_or(middle);
                let name = if zone == "near" { "not sharp, too near" } else { "not sharp, too far" };
                labels.push(Label::new(place, "", name));
            }
        }
        if let Some(place) = self.subject_not_sharp()
            && !plan.footprint.from_below
        {
            labels.push(Label::new(place, "", "subject not sharp here"));
        }
        if let Some(tilt) = self.focus_on_table() {
            let place = Spot::new(0.0, -0.6 * y);
            labels.push(Label::new(place, format!("{tilt:.1}°"), "tilt; focus on the table"));
        }
        if let Some(up) = self.horizon() {
            let places = [0.6, -0.6, 0.97, -0.97, 0.0].map(|share| Spot::new(share * x, up));
            if let Some(place) = places.into_iter().find(|at| up.abs() < y && self.clear(*at)) {
                labels.push(Label::new(place, "", "horizon"));
            }
        }
        if let (Some(up), Some(backdrop)) = (self.backdrop_foot(), &plan.backdrop) {
            let size = unit.by(backdrop.width_mm, backdrop.height_mm);
            labels.push(Label::new(Spot::new(-0.6 * x, up.max(-y)), size, "backdrop needed"));
        }
        if let (Some(board), Some([near_left, _, _, far_left])) = (&plan.footprint.board, self.board())
            && let Some((a, b)) = self.window.line(near_left, far_left)
        {
            let size = unit.by(board.width_mm, board.depth_mm);
            labels.push(Label::new(a.towards(b, 0.5), size, "board to fill it"));
        }
        let in_picture = &plan.support_in_picture;
        for (length, line, name) in [
            (in_picture.column_mm, self.column(), "column in the picture"),
            (in_picture.boom_mm, self.boom(), "boom in the picture"),
        ] {
            if length > 0.0
                && let Some((from, to)) = line
                && let Some((a, b)) = self.window.line(from, to)
            {
                labels.push(Label::new(a.towards(b, 0.5), "", name));
            }
        }
        labels
    }
}

fn side_name(side: Side) -> &'static str {
    match side {
        Side::Front => "front",
        Side::Right => "right",
        Side::Back => "back",
        Side::Left => "left",
    }
}
