//! Writes SVG: elements, attributes, escaped text, and coordinates with as many decimals as the scale asks
//! for.
//!
//! The libraries that write SVG need the standard library; what is needed here is one escaping rule and
//! one format for numbers, so both are here.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::fmt::Write;

use super::shape::Spot;
use super::steering::seen;

/// What a thing is drawn in. Everything is drawn in `currentColor`; these set the colour, as an attribute
/// for plain renderers and as a class that a page's style may override.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Ink {
    /// Things.
    Thing,
    /// Names, leaders, what only helps to read.
    Quiet,
    /// What is to be measured and set.
    Measure,
    /// The ground.
    Paper,
}

impl Ink {
    /// Class, and its colour on light and on dark ground.
    pub(super) const fn look(self) -> (&'static str, &'static str, &'static str) {
        match self {
            Ink::Thing => ("tablerig-thing", "#1b232c", "#e9ecef"),
            Ink::Quiet => ("tablerig-quiet", "#4f5b66", "#a9b4be"),
            Ink::Measure => ("tablerig-measure", "#0d5560", "#7fd3dc"),
            Ink::Paper => ("tablerig-paper", "#ffffff", "#12161b"),
        }
    }

    /// All of them.
    pub(super) const ALL: [Ink; 4] = [Ink::Thing, Ink::Quiet, Ink::Measure, Ink::Paper];
}

/// A line's width and dashes, in the drawing's units.
#[derive(Clone, Copy, Debug)]
pub(super) struct Pen {
    width: f64,
    dashes: &'static str,
}

impl Pen {
    /// Edges that matter: frame, tipping line.
    pub(super) const BOLD: Pen = Pen::solid(2.4);
    /// Ground around a mark, so that it stands out from lines.
    pub(super) const HALO: Pen = Pen::solid(3.6);
    /// Table, column, boom.
    pub(super) const HEAVY: Pen = Pen::solid(1.7);
    /// Outlines.
    pub(super) const MEDIUM: Pen = Pen::solid(1.1);
    /// Measures.
    pub(super) const LIGHT: Pen = Pen::solid(0.7);
    /// Leaders.
    pub(super) const HAIR: Pen = Pen::solid(0.5);
    /// The lens axis.
    pub(super) const CHAIN: Pen = Pen { width: 0.7, dashes: "9 2.5 1.5 2.5" };
    /// Edges of the field of view.
    pub(super) const FIELD: Pen = Pen { width: 0.9, dashes: "6 3" };
    /// What is hidden or only wanted.
    pub(super) const HIDDEN: Pen = Pen { width: 0.9, dashes: "3 2.2" };
    /// What the gear cannot do.
    pub(super) const MISSING: Pen = Pen { width: 1.7, dashes: "1.7 3" };
    /// Help lines of measures.
    pub(super) const HELP: Pen = Pen { width: 0.5, dashes: "1 2.5" };

    const fn solid(width: f64) -> Pen {
        Pen { width, dashes: "" }
    }
}

/// A growing SVG text.
pub(super) struct Canvas {
    text: String,
    entered: Vec<&'static str>,
    decimals: usize,
}

/// An element whose attributes are being written.
pub(super) struct Element<'a> {
    canvas: &'a mut Canvas,
    name: &'static str,
}

impl Canvas {
    /// Coordinates are rounded so finely that half the last place is under a five-hundredth of a
    /// millimetre at this scale.
    pub(super) fn new(mm_per_unit: f64) -> Canvas {
        let mut decimals = 2;
        let mut half_place_mm = 0.005 * mm_per_unit;
        while half_place_mm > 0.002 && decimals < 12 {
            decimals += 1;
            half_place_mm *= 0.1;
        }
        Canvas { text: String::new(), entered: Vec::new(), decimals }
    }

    /// Begins an element.
    pub(super) fn element(&mut self, name: &'static str) -> Element<'_> {
        self.text.push('<');
        self.text.push_str(name);
        Element { canvas: self, name }
    }

    /// Ends the element that was entered last.
    pub(super) fn leave(&mut self) {
        if let Some(name) = self.entered.pop() {
            self.text.push_str("</");
            self.text.push_str(name);
            self.text.push_str(">\n");
        }
    }

    /// Ends whatever is still open.
    pub(super) fn finish(mut self) -> String {
        while !self.entered.is_empty() {
            self.leave();
        }
        self.text
    }

    fn escaped(&mut self, text: &str) {
        for character in text.chars() {
            match character {
                '&' => self.text.push_str("&amp;"),
                '<' => self.text.push_str("&lt;"),
                '>' => self.text.push_str("&gt;"),
                '"' => self.text.push_str("&quot;"),
                other if other.is_control() => self.text.push(' '),
                other => self.text.push(seen(other)),
            }
        }
    }

    fn number(&mut self, value: f64) {
        // Shapes are clipped before they come here; what is left without a place must not spoil the file.
        let value = if value.is_finite() { value } else { 0.0 };
        let written = format!("{value:.*}", self.decimals);
        let short = written.trim_end_matches('0').trim_end_matches('.');
        self.text.push_str(if short == "-0" { "0" } else { short });
    }

    /// A straight line.
    pub(super) fn line(&mut self, from: Spot, to: Spot, pen: Pen, part: &str) {
        let line = self.element("line").number("x1", from.x).number("y1", from.y);
        line.number("x2", to.x).number("y2", to.y).pen(pen).part(part).close();
    }

    /// A line through several places.
    pub(super) fn polyline(&mut self, through: &[Spot], pen: Pen, part: &str) {
        self.element("polyline").points(through).pen(pen).part(part).close();
    }

    /// A closed outline, filled with the current colour at a strength of 0 to 1.
    pub(super) fn polygon(&mut self, corners: &[Spot], pen: Option<Pen>, fill: f64, part: &str) {
        if corners.len() > 1 {
            let polygon = self.element("polygon").points(corners).tint(fill);
            match pen {
                Some(pen) => polygon.outline(pen).part(part).close(),
                None => polygon.part(part).close(),
            }
        }
    }

    /// A circle of a radius in units.
    pub(super) fn circle(&mut self, centre: Spot, radius: f64, pen: Option<Pen>, fill: f64) {
        let circle = self.element("circle").number("cx", centre.x).number("cy", centre.y);
        let circle = circle.number("r", radius).tint(fill);
        match pen {
            Some(pen) => circle.outline(pen).close(),
            None => circle.close(),
        }
    }

    /// Begins a group in a colour.
    pub(super) fn enter(&mut self, ink: Ink) {
        self.element("g").ink(ink).enter();
    }
}

impl Element<'_> {
    /// An attribute's text.
    pub(super) fn word(self, name: &str, value: &str) -> Self {
        let _ = write!(self.canvas.text, " {name}=\"");
        self.canvas.escaped(value);
        self.canvas.text.push('"');
        self
    }

    /// A coordinate or a length in units.
    pub(super) fn number(self, name: &str, value: f64) -> Self {
        let _ = write!(self.canvas.text, " {name}=\"");
        self.canvas.number(value);
        self.canvas.text.push('"');
        self
    }

    /// A number with all its digits.
    pub(super) fn exact(self, name: &str, value: f64) -> Self {
        let _ = write!(self.canvas.text, " {name}=\"{value}\"");
        self
    }

    /// Places, as `points`.
    pub(super) fn points(self, spots: &[Spot]) -> Self {
        self.canvas.text.push_str(" points=\"");
        for (index, spot) in spots.iter().enumerate() {
            if index > 0 {
                self.canvas.text.push(' ');
            }
            self.canvas.number(spot.x);
            self.canvas.text.push(',');
            self.canvas.number(spot.y);
        }
        self.canvas.text.push('"');
        self
    }

    /// A path of letters and numbers.
    pub(super) fn path(self, steps: &[(&str, &[f64])]) -> Self {
        self.canvas.text.push_str(" d=\"");
        for (letter, numbers) in steps {
            self.canvas.text.push_str(letter);
            for (index, number) in numbers.iter().enumerate() {
                if index > 0 {
                    self.canvas.text.push(' ');
                }
                self.canvas.number(*number);
            }
        }
        self.canvas.text.push('"');
        self
    }

    /// Several closed outlines as one path.
    pub(super) fn outlines(self, outlines: &[Vec<Spot>]) -> Self {
        self.canvas.text.push_str(" d=\"");
        for outline in outlines {
            for (index, spot) in outline.iter().enumerate() {
                self.canvas.text.push_str(if index == 0 { "M" } else { "L" });
                self.canvas.number(spot.x);
                self.canvas.text.push(' ');
                self.canvas.number(spot.y);
            }
            self.canvas.text.push('Z');
        }
        self.canvas.text.push('"');
        self
    }

    /// Moves what is inside.
    pub(super) fn moved(self, to: Spot) -> Self {
        self.canvas.text.push_str(" transform=\"translate(");
        self.canvas.number(to.x);
        self.canvas.text.push(' ');
        self.canvas.number(to.y);
        self.canvas.text.push_str(")\"");
        self
    }

    /// A line without a filling.
    pub(super) fn pen(self, pen: Pen) -> Self {
        self.word("fill", "none").outline(pen)
    }

    /// The outline of something filled.
    pub(super) fn outline(self, pen: Pen) -> Self {
        let element = self.word("stroke", "currentColor").exact("stroke-width", pen.width);
        if pen.dashes.is_empty() { element } else { element.word("stroke-dasharray", pen.dashes) }
    }

    /// A filling in the current colour; none at 0.
    pub(super) fn tint(self, strength: f64) -> Self {
        if strength <= 0.0 {
            self.word("fill", "none")
        } else if strength >= 1.0 {
            self.word("fill", "currentColor")
        } else {
            self.word("fill", "currentColor").exact("fill-opacity", strength)
        }
    }

    /// The colour.
    pub(super) fn ink(self, ink: Ink) -> Self {
        let (class, light, _) = ink.look();
        self.word("class", class).word("color", light)
    }

    /// What of the plan this is; nothing where the name is empty.
    pub(super) fn part(self, part: &str) -> Self {
        if part.is_empty() { self } else { self.word("data-part", part) }
    }

    /// Ends the element without content.
    pub(super) fn close(self) {
        self.canvas.text.push_str("/>\n");
    }

    /// Leaves the element open for others inside it.
    pub(super) fn enter(self) {
        self.canvas.text.push_str(">\n");
        self.canvas.entered.push(self.name);
    }

    /// Ends the element with a text as its content.
    pub(super) fn content(self, text: &str) {
        self.canvas.text.push('>');
        self.canvas.escaped(text);
        let _ = writeln!(self.canvas.text, "</{}>", self.name);
    }
}
