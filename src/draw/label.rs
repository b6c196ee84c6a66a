//! Labels in a column on either side of a drawing, each with a leader to its place: spread so that none
//! overlap and ordered so that leaders do not cross.

use alloc::string::String;
use alloc::vec::Vec;

use super::canvas::{Canvas, Ink, Pen};
use super::lettering::{NAME_SIZE, VALUE_SIZE, width};
use super::shape::{Extent, Spot, crosses};

/// The column a label stands in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Beside {
    Left,
    Right,
}

/// A value, its name, and the place they belong to.
#[derive(Clone, Debug)]
pub(super) struct Label {
    /// What was computed, in large type; may be empty.
    pub(super) value: String,
    /// What it is.
    pub(super) name: String,
    /// Whether it is to be measured and set.
    pub(super) measure: bool,
    /// Whether the leader runs level from its place to the column's rule: a height.
    pub(super) level: bool,
    /// The column, where it is not left to the arrangement.
    pub(super) beside: Option<Beside>,
    /// Which of the drawing's areas it belongs to.
    pub(super) area: usize,
    /// Its place in millimetres of the room, seen from either column.
    pub(super) place: [Spot; 2],
    /// What is drawn lies this much further, in units of the drawing.
    pub(super) shift: Spot,
}

/// Room for a value and for a name, and between two labels.
const VALUE_HEIGHT: f64 = 15.0;
const NAME_HEIGHT: f64 = 13.0;
const GAP: f64 = 5.0;
/// From an area's border to the columns' texts.
pub(super) const GUTTER: f64 = 26.0;
/// The last, level part of a leader.
const STUB: f64 = 9.0;
/// Between a leader and its text.
const AIR: f64 = 3.0;

impl Label {
    /// A value and a name at a place.
    pub(super) fn new(place: Spot, value: impl Into<String>, name: impl Into<String>) -> Label {
        Label {
            value: value.into(),
            name: name.into(),
            measure: false,
            level: false,
            beside: None,
            area: 0,
            place: [place; 2],
            shift: Spot::new(0.0, 0.0),
        }
    }

    /// A height, told from a place in the room whose leader runs level.
    pub(super) fn height_of(
        left: Spot,
        right: Spot,
        value: impl Into<String>,
        name: impl Into<String>,
    ) -> Label {
        Label { level: true, place: [left, right], ..Label::new(left, value, name) }
    }

    /// To be measured and set.
    pub(super) fn measure(self) -> Label {
        Label { measure: true, ..self }
    }

    /// For what is drawn beside its place.
    pub(super) fn shifted(self, shift: Spot) -> Label {
        Label { shift, ..self }
    }

    /// In a column, and in one of several areas.
    pub(super) fn beside(self, beside: Beside, area: usize) -> Label {
        Label { beside: Some(beside), area, ..self }
    }

    /// The room that it takes in a column.
    pub(super) fn height(&self) -> f64 {
        let value = if self.value.is_empty() { 0.0 } else { VALUE_HEIGHT };
        let name = if self.name.is_empty() { 0.0 } else { NAME_HEIGHT };
        value + name + GAP
    }

    /// The width of its text.
    pub(super) fn width(&self) -> f64 {
        width(&self.value, VALUE_SIZE, true).max(width(&self.name, NAME_SIZE, false))
    }

    fn place_for(&self, beside: Beside) -> Spot {
        let [left, right] = self.place;
        if beside == Beside::Left { left } else { right }
    }
}

/// Puts every label without a column into the nearer one; those of the middle so that the columns come
/// out evenly, and where a column would be higher than `most`, those nearest the middle into the other.
pub(super) fn divide(labels: &mut [Label], areas: &[Extent], most: f64) {
    // How far right of its area's middle, in widths of the area.
    let off = |label: &Label| {
        let [left, right] = label.place;
        let area = areas.get(label.area).copied().unwrap_or(Extent::NOTHING);
        (0.5 * (left.x + right.x) - 0.5 * (area.left + area.right)) / area.width()
    };
    let mut order: Vec<(f64, usize)> = labels
        .iter()
        .enumerate()
        .filter(|(_, label)| label.beside.is_none())
        .map(|(index, label)| (off(label), index))
        .collect();
    order.sort_by(|a, b| a.0.total_cmp(&b.0));
    let (_, mut left) = needs(labels, Beside::Left);
    let all: f64 = labels.iter().map(Label::height).sum();
    for (off, index) in order {
        let Some(label) = labels.get_mut(index) else { continue };
        let height = label.height();
        let goes_left = if left + height > most {
            false
        } else if all - left > most {
            true
        } else if off.abs() < MIDDLE {
            left + 0.5 * height <= 0.5 * all
        } else {
            off < 0.0
        };
        label.beside = Some(if goes_left { Beside::Left } else { Beside::Right });
        if goes_left {
            left += height;
        }
    }
}

/// Half the width of an area's middle, as a share of its own.
const MIDDLE: f64 = 0.08;

/// The width and the height that the labels of a column need.
pub(super) fn needs(labels: &[Label], beside: Beside) -> (f64, f64) {
    let column = || labels.iter().filter(|label| label.beside == Some(beside));
    (column().map(Label::width).fold(0.0, f64::max), column().map(Label::height).sum())
}

/// A label on its way to its place in a column.
struct Item<'a> {
    label: &'a Label,
    anchor: Spot,
}

/// A column: its texts' edge towards the drawing, the area's border, and from where to where it goes.
pub(super) struct Column {
    pub(super) beside: Beside,
    pub(super) edge: f64,
    pub(super) top: f64,
    pub(super) bottom: f64,
}

impl Column {
    fn inwards(&self) -> f64 {
        if self.beside == Beside::Left { 1.0 } else { -1.0 }
    }

    /// The way from a label's place to its text, whose middle is at `y`.
    fn leader(&self, item: &Item<'_>, y: f64) -> [Spot; 3] {
        let text = Spot::new(self.edge + self.inwards() * AIR, y);
        let knee = if item.label.level {
            Spot::new(self.edge + self.inwards() * (GUTTER - 4.0), item.anchor.y)
        } else {
            Spot::new(self.edge + self.inwards() * (AIR + STUB), y)
        };
        [item.anchor, knee, text]
    }
}

/// Middles of labels of these heights, in order, between top and bottom, as near as can be to where they
/// are wanted: least squares under the order, by pooling neighbours that would overlap (Ayer and others,
/// Annals of Mathematical Statistics 1955).
fn spread(items: &[Item<'_>], top: f64, bottom: f64) -> Vec<f64> {
    let mut offsets = Vec::new();
    let mut total = 0.0;
    for item in items {
        offsets.push(total + 0.5 * item.label.height());
        total += item.label.height();
    }
    // Each pool: sum of the wanted starts of its members, and how many they are.
    let mut pools: Vec<(f64, f64)> = Vec::new();
    for (item, offset) in items.iter().zip(&offsets) {
        let mut pool = (item.anchor.y - offset, 1.0);
        while let Some((sum, count)) = pools.last().copied()
            && sum / count > pool.0 / pool.1
        {
            pools.pop();
            pool = (pool.0 + sum, pool.1 + count);
        }
        pools.push(pool);
    }
    let last = (bottom - total).max(top);
    let mut starts = Vec::new();
    for (sum, count) in pools {
        let mut left = count;
        while left > 0.5 {
            starts.push((sum / count).max(top).min(last));
            left -= 1.0;
        }
    }
    starts.iter().zip(&offsets).map(|(start, offset)| start + offset).collect()
}

/// How many pairs of leaders cross, and how long they are in all.
fn tangle(column: &Column, items: &[Item<'_>]) -> (usize, f64) {
    let middles = spread(items, column.top, column.bottom);
    let leaders: Vec<[Spot; 3]> =
        items.iter().zip(&middles).map(|(item, middle)| column.leader(item, *middle)).collect();
    let mut crossings = 0;
    let mut length = 0.0;
    for (index, [a, b, c]) in leaders.iter().copied().enumerate() {
        length += crate::number::hypot(b.x - a.x, b.y - a.y);
        for [d, e, f] in leaders.iter().skip(index + 1).copied() {
            for first in [(a, b), (b, c)] {
                for second in [(d, e), (e, f)] {
                    crossings += usize::from(crosses(first, second));
                }
            }
        }
    }
    (crossings, length)
}

/// Orders the items from top to bottom: by place, then neighbours exchanged as long as leaders cross less,
/// or as little and are shorter.
fn untangle(column: &Column, items: &mut [Item<'_>]) {
    items.sort_by(|a, b| a.anchor.y.total_cmp(&b.anchor.y));
    let mut now = tangle(column, items);
    for _ in 0..items.len() {
        let before = now;
        for apart in 1..items.len() {
            for first in 0..items.len() - apart {
                items.swap(first, first + apart);
                let then = tangle(column, items);
                if then.0 < now.0 || (then.0 == now.0 && then.1 < now.1 - 1e-6) {
                    now = then;
                } else {
                    items.swap(first, first + apart);
                }
            }
        }
        if now == before {
            break;
        }
    }
}

/// Draws the labels of a column; `at` tells where a place of an area lies on the drawing.
pub(super) fn draw(canvas: &mut Canvas, column: &Column, labels: &[Label], at: impl Fn(usize, Spot) -> Spot) {
    let mut items: Vec<Item<'_>> = labels
        .iter()
        .filter(|label| label.beside == Some(column.beside))
        .map(|label| {
            let place = at(label.area, label.place_for(column.beside));
            Item { label, anchor: place.moved(label.shift.x, label.shift.y) }
        })
        .collect();
    untangle(column, &mut items);
    let middles = spread(&items, column.top, column.bottom);
    for (item, middle) in items.iter().zip(middles) {
        let ink = if item.label.measure { Ink::Measure } else { Ink::Quiet };
        canvas.enter(ink);
        canvas.polyline(&column.leader(item, middle), Pen::HAIR, "");
        canvas.circle(item.anchor, 1.5, None, 1.0);
        canvas.leave();
        text(canvas, column, item.label, middle);
    }
}

fn text(canvas: &mut Canvas, column: &Column, label: &Label, middle: f64) {
    let anchor = if column.beside == Beside::Left { "end" } else { "start" };
    let mut line = |text: &str, baseline: f64, size: f64, bold: bool, ink: Ink| {
        if !text.is_empty() {
            let element = canvas.element("text").number("x", column.edge).number("y", baseline);
            let element = element.exact("font-size", size).word("text-anchor", anchor);
            let element = if bold { element.word("font-weight", "700") } else { element };
            element.word("fill", "currentColor").ink(ink).content(text);
        }
    };
    let value_ink = if label.measure { Ink::Measure } else { Ink::Thing };
    let top = middle - 0.5 * (label.height() - GAP);
    // Baselines: four fifths of the size below the line's top, roughly the height of capitals and ascenders.
    line(&label.value, top + 0.82 * VALUE_SIZE, VALUE_SIZE, true, value_ink);
    let below = if label.value.is_empty() { 0.0 } else { VALUE_HEIGHT };
    line(&label.name, top + below + 0.86 * NAME_SIZE, NAME_SIZE, false, Ink::Quiet);
}
