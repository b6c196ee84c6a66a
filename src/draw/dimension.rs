//! Dimension lines: rows of level measures under a drawing, measures along a line in it, and scale bars.

use alloc::format;
use alloc::string::String;

use super::canvas::{Canvas, Ink, Pen};
use super::length::LengthUnit;
use super::lettering::{HEADING_SIZE, NAME_SIZE, width};
use super::plot::Plot;
use super::shape::Spot;

/// A level measure between two places, drawn in a row of its own under the areas.
#[derive(Clone, Debug)]
pub(super) struct Row {
    pub(super) area: usize,
    /// From and to, in millimetres of the room.
    pub(super) from: Spot,
    pub(super) to: Spot,
    pub(super) value: String,
    pub(super) name: &'static str,
    pub(super) part: &'static str,
}

/// The height of a row.
pub(super) const ROW_HEIGHT: f64 = 20.0;
/// How far the slanting ends of a dimension line go.
const TICK: f64 = 3.2;

/// The end of a dimension line: a short slanting stroke.
fn tick(canvas: &mut Canvas, at: Spot) {
    canvas.line(at.moved(-TICK, TICK), at.moved(TICK, -TICK), Pen::MEDIUM, "");
}

/// The lines of a row at the height `y`.
pub(super) fn row_lines(canvas: &mut Canvas, row: &Row, plot: &Plot, y: f64) {
    let (from, to) = (plot.at(row.from), plot.at(row.to));
    canvas.line(from, Spot::new(from.x, y + 4.0), Pen::HELP, "");
    canvas.line(to, Spot::new(to.x, y + 4.0), Pen::HELP, "");
    let (a, b) = (Spot::new(from.x, y), Spot::new(to.x, y));
    canvas.line(a, b, Pen::LIGHT, row.part);
    tick(canvas, a);
    tick(canvas, b);
}

/// The text of a row: on the line where it is long enough, or else beside it, within the drawing's width.
pub(super) fn row_text(canvas: &mut Canvas, row: &Row, plot: &Plot, y: f64, drawing_width: f64) {
    let (from, to) = (plot.at(row.from).x, plot.at(row.to).x);
    let (left, right) = (from.min(to), from.max(to));
    let long = width(&row.value, HEADING_SIZE, true)
        + width(" ", HEADING_SIZE, false)
        + width(row.name, HEADING_SIZE, false);
    let middle = if right - left > long + 20.0 {
        0.5 * (left + right)
    } else if right + 8.0 + long < drawing_width - 4.0 {
        right + 8.0 + 0.5 * long
    } else {
        (left - 8.0 - 0.5 * long).max(4.0 + 0.5 * long)
    };
    canvas.enter(Ink::Paper);
    let ground = canvas.element("rect").number("x", middle - 0.5 * long - 3.0).number("y", y - 8.0);
    ground.number("width", long + 6.0).number("height", 16.0).tint(1.0).close();
    canvas.leave();
    // Two texts that meet: renderers differ in how they centre one of two weights.
    let meet = middle - 0.5 * long + width(&row.value, HEADING_SIZE, true);
    let space = width(" ", HEADING_SIZE, false);
    for (text, x, anchor, bold) in
        [(row.value.as_str(), meet, "end", true), (row.name, meet + space, "start", false)]
    {
        let words = canvas.element("text").number("x", x).number("y", y + 0.36 * HEADING_SIZE);
        let words = words.exact("font-size", HEADING_SIZE).word("text-anchor", anchor);
        let words = if bold { words.word("font-weight", "700").word("data-of", row.part) } else { words };
        words.word("fill", "currentColor").ink(Ink::Measure).content(text);
    }
}

/// A measure along a line between two places, drawn so far beside it.
pub(super) fn along(canvas: &mut Canvas, from: Spot, to: Spot, aside: Spot, part: &str) {
    let (a, b) = (from.moved(aside.x, aside.y), to.moved(aside.x, aside.y));
    canvas.enter(Ink::Measure);
    canvas.line(from, a, Pen::HELP, "");
    canvas.line(to, b, Pen::HELP, "");
    canvas.line(a, b, Pen::LIGHT, part);
    tick(canvas, a);
    tick(canvas, b);
    canvas.leave();
}

/// A bar of a round length, and its length beside it; how far it goes to the right is handed back.
pub(super) fn scale_bar(canvas: &mut Canvas, at: Spot, mm_per_unit: f64, unit: LengthUnit) -> f64 {
    let most_mm = 110.0 * mm_per_unit;
    let mut whole_mm = unit.whole_mm();
    if unit == LengthUnit::FeetInches && whole_mm > most_mm {
        whole_mm = LengthUnit::Inches.whole_mm();
    }
    // Up or down by tens, then 1, 2 or 5.
    let mut bar_mm = whole_mm;
    while bar_mm * 10.0 <= most_mm {
        bar_mm *= 10.0;
    }
    while bar_mm > most_mm && bar_mm > 0.0 {
        bar_mm /= 10.0;
    }
    if bar_mm * 5.0 <= most_mm {
        bar_mm *= 5.0;
    } else if bar_mm * 2.0 <= most_mm {
        bar_mm *= 2.0;
    }
    let long = bar_mm / mm_per_unit;
    canvas.enter(Ink::Thing);
    let bar = canvas.element("rect").number("x", at.x).number("y", at.y - 3.0).number("width", long);
    bar.number("height", 4.0).pen(Pen::LIGHT).word("data-part", "scale-bar").exact("data-mm", bar_mm).close();
    let half = canvas.element("rect").number("x", at.x).number("y", at.y - 3.0).number("width", 0.5 * long);
    half.number("height", 4.0).tint(1.0).close();
    let length = format!("{}", unit.write(bar_mm));
    let text = canvas.element("text").number("x", at.x + long + 7.0).number("y", at.y + 2.6);
    text.exact("font-size", NAME_SIZE).word("fill", "currentColor").content(&length);
    canvas.leave();
    at.x + long + 7.0 + width(&length, NAME_SIZE, false)
}
