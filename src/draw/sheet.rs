//! The paper that a drawing lies on: heading, areas to scale, columns of labels, rows of measures, notes.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::Style;
use super::canvas::{Canvas, Ink};
use super::dimension::{ROW_HEIGHT, Row, row_lines, row_text, scale_bar};
use super::label::{Beside, Column, GUTTER, Label, divide, draw, needs};
use super::lettering::{HEADING_SIZE, NAME_SIZE, lines, shortened, width};
use super::plot::{Plot, UNITS_PER_PAPER_MM, round_scale};
use super::shape::{Extent, Spot};

/// What a drawing is made of, before its scale is known.
pub(super) struct Sheet {
    /// One word, for names inside the SVG.
    pub(super) kind: &'static str,
    /// The heading.
    pub(super) heading: &'static str,
    /// For those who cannot see it: everything that the drawing says.
    pub(super) told: String,
    /// What of the room is drawn, one extent for each area, side by side at one scale.
    pub(super) areas: Vec<Extent>,
    /// Whether the areas after the first are enlarged, as far as that leaves the first one its size.
    pub(super) enlarged: bool,
    pub(super) labels: Vec<Label>,
    pub(super) rows: Vec<Row>,
    /// Lines under the drawing.
    pub(super) notes: Vec<String>,
    /// Whether it has a round scale, told with a bar.
    pub(super) round_scale: bool,
}

/// A sheet with its scale, being drawn on.
pub(super) struct Drawing {
    pub(super) canvas: Canvas,
    pub(super) plots: Vec<Plot>,
    /// What identifiers in the SVG begin with.
    pub(super) id: String,
    sheet: Sheet,
    columns: [Column; 2],
    rows_top: f64,
    width: f64,
}

/// A CSS pixel is a 96th of an inch.
const PIXELS_PER_UNIT: f64 = 96.0 / 25.4 / UNITS_PER_PAPER_MM;
const EDGE: f64 = 6.0;
const HEAD: f64 = 26.0;
const BETWEEN_AREAS: f64 = 26.0;
/// How many times an area may be enlarged, and how much smaller the others may become for it.
const ENLARGEMENTS: [f64; 8] = [5.0, 4.0, 3.0, 2.5, 2.0, 1.75, 1.5, 1.25];
const MOST_GIVEN: f64 = 1.2;
/// The least width of what an area shows.
const LEAST_ACROSS: f64 = 60.0;
/// Kept free around what an area shows.
const PAD: f64 = 14.0;
const NOTE_HEIGHT: f64 = 14.0;

impl Sheet {
    /// Finds the scale and places for everything, and begins the drawing.
    pub(super) fn lay(mut self, style: &Style<'_>) -> Drawing {
        let wanted_width = clamped(style.width, 480.0, 4000.0, Style::DEFAULT.width);
        let most_height = clamped(style.height, 240.0, 4000.0, Style::DEFAULT.height);
        let column_room = most_height - HEAD - 3.0 * NOTE_HEIGHT - ROW_HEIGHT * self.rows.len() as f64;
        divide(&mut self.labels, &self.areas, 0.9 * column_room);
        let ((left_width, left_height), (right_width, right_height)) =
            (needs(&self.labels, Beside::Left), needs(&self.labels, Beside::Right));
        let rows_height = ROW_HEIGHT * self.rows.len() as f64;
        let gutter = |width: f64| if width > 0.0 { width + GUTTER } else { 0.0 };
        let (left_room, right_room) = (gutter(left_width), gutter(right_width));
        let count = self.areas.len() as f64;
        let between = BETWEEN_AREAS * (count - 1.0);
        let pads = 2.0 * PAD * count;
        let taken = 2.0 * EDGE + left_room + right_room + between + pads;
        // Wider than asked for where the labels leave the areas next to nothing.
        let drawing_width = wanted_width.max(taken + LEAST_ACROSS * count);
        let room_across = drawing_width - taken;
        let notes: Vec<String> = self
            .notes
            .iter()
            .flat_map(|note| lines(note, NAME_SIZE, 0.96 * drawing_width - 2.0 * EDGE))
            .collect();
        let bar_height = if self.round_scale { 20.0 } else { 0.0 };
        let foot = rows_height + bar_height + NOTE_HEIGHT * notes.len() as f64 + 2.0 * EDGE;
        let room_up = (most_height - HEAD - foot - 2.0 * PAD).max(60.0);
        let times = |index: usize, enlargement: f64| if index > 0 { enlargement } else { 1.0 };
        let across = |enlargement: f64| -> f64 {
            self.areas.iter().enumerate().map(|(i, area)| area.width() * times(i, enlargement)).sum()
        };
        let up = |enlargement: f64| {
            let heights =
                self.areas.iter().enumerate().map(|(i, area)| area.height() * times(i, enlargement));
            heights.fold(0.0, f64::max)
        };
        let needed = |enlargement: f64| (across(enlargement) / room_across).max(up(enlargement) / room_up);
        let enlargement = if self.enlarged {
            ENLARGEMENTS.into_iter().find(|by| needed(*by) <= MOST_GIVEN * needed(1.0)).unwrap_or(1.0)
        } else {
            1.0
        };
        let (across, up, needed) = (across(enlargement), up(enlargement), needed(enlargement));
        let mm_per_unit = if self.round_scale { round_scale(needed) / UNITS_PER_PAPER_MM } else { needed };
        let area_height = (up / mm_per_unit + 2.0 * PAD).max(left_height).max(right_height);
        let all = left_room + right_room + between + pads + across / mm_per_unit;
        let mut left = 0.5 * (drawing_width - all) + left_room;
        let first_left = left;
        // What is drawn stands in the middle of the height, or on the ground.
        let (top, bottom) = (HEAD, HEAD + area_height);
        let mut plots = Vec::new();
        for (index, area) in self.areas.iter().enumerate() {
            let mm_per_unit = mm_per_unit / times(index, enlargement);
            let right = left + area.width() / mm_per_unit + 2.0 * PAD;
            let spare = area_height - 2.0 * PAD - area.height() / mm_per_unit;
            let below = PAD + if self.rows.is_empty() { 0.5 * spare } else { 0.0 };
            let zero =
                Spot::new(left + PAD - area.left / mm_per_unit, bottom - below + area.bottom / mm_per_unit);
            plots.push(Plot { mm_per_unit, zero, left, right, top, bottom });
            left = right + BETWEEN_AREAS;
        }
        let last_right = left - BETWEEN_AREAS;
        let columns = [
            Column { beside: Beside::Left, edge: first_left - GUTTER, top, bottom },
            Column { beside: Beside::Right, edge: last_right + GUTTER, top, bottom },
        ];
        let height = bottom + foot;
        let id = format!("{}-{}", identifier(style.id), self.kind);
        let mut canvas = Canvas::new(mm_per_unit);
        self.begin(&mut canvas, style, &id, drawing_width, height);
        let bar = bottom + rows_height + EDGE + 0.5 * bar_height;
        if self.round_scale {
            self.scale_line(&mut canvas, Spot::new(EDGE + 2.0, bar), &plots, style, drawing_width);
        }
        for (index, note) in notes.iter().enumerate() {
            let y = bottom + rows_height + EDGE + bar_height + NOTE_HEIGHT * (index as f64 + 0.8);
            written(&mut canvas, Spot::new(EDGE + 2.0, y), NAME_SIZE, false, Ink::Quiet, note);
        }
        for (index, plot) in plots.iter().enumerate() {
            canvas.element("clipPath").word("id", &format!("{id}-area-{index}")).enter();
            let area = canvas.element("rect").number("x", plot.left).number("y", plot.top);
            area.number("width", plot.right - plot.left).number("height", plot.bottom - plot.top).close();
            canvas.leave();
        }
        Drawing { canvas, plots, id, sheet: self, columns, rows_top: bottom, width: drawing_width }
    }

    /// Root, title, description, style, ground and heading.
    fn begin(&self, canvas: &mut Canvas, style: &Style<'_>, id: &str, width: f64, height: f64) {
        let root = canvas.element("svg").word("xmlns", "http://www.w3.org/2000/svg");
        let root = root.word("viewBox", &format!("0 0 {width:.2} {height:.2}"));
        let root = root.word("width", &format!("{:.3}", width * PIXELS_PER_UNIT));
        let root = root.word("height", &format!("{:.3}", height * PIXELS_PER_UNIT));
        let (class, light, _) = Ink::Thing.look();
        let root = root.word("class", &format!("tablerig-drawing {class}")).word("color", light);
        let root = root.word("font-family", "sans-serif").word("stroke-linejoin", "round");
        let root = root.word("role", "img");
        root.word("aria-labelledby", &format!("{id}-title {id}-desc")).enter();
        let title = if style.name.is_empty() {
            self.heading.into()
        } else {
            format!("{}: {}", style.name, self.heading)
        };
        canvas.element("title").word("id", &format!("{id}-title")).content(&title);
        canvas.element("desc").word("id", &format!("{id}-desc")).content(&self.told);
        canvas.element("style").content(&stylesheet());
        let ground = canvas.element("rect").number("width", width).number("height", height);
        ground.ink(Ink::Paper).tint(1.0).close();
        let heading = shortened(&title, HEADING_SIZE, true, width - 2.0 * EDGE - 4.0);
        written(canvas, Spot::new(EDGE + 2.0, 17.0), HEADING_SIZE, true, Ink::Thing, &heading);
    }

    fn scale_line(&self, canvas: &mut Canvas, at: Spot, plots: &[Plot], style: &Style<'_>, across: f64) {
        let (Some(first), Some(last)) = (plots.first(), plots.last()) else { return };
        let mm_per_unit = first.mm_per_unit;
        let right = scale_bar(canvas, at, mm_per_unit, style.unit);
        let scale = |plot: &Plot| plot.mm_per_unit * UNITS_PER_PAPER_MM;
        let wide = style.unit.write(across / UNITS_PER_PAPER_MM);
        let printed = if last.mm_per_unit < mm_per_unit {
            let larger = scale(first) / scale(last);
            format!("1 : {}, on the right {larger} times as large; printed {wide} wide", scale(first))
        } else {
            format!("1 : {}, printed {wide} wide", scale(first))
        };
        let room = 0.96 * across - right - 20.0;
        let short = format!("1 : {}", scale(first));
        let told = if width(&printed, NAME_SIZE, false) < room { printed } else { short };
        written(canvas, Spot::new(right + 20.0, at.y + 2.6), NAME_SIZE, false, Ink::Quiet, &told);
    }
}

impl Drawing {
    /// The scale of an area; the first one's where there is none.
    pub(super) fn plot(&self, area: usize) -> Plot {
        let nothing = Plot {
            mm_per_unit: 1.0,
            zero: Spot::new(0.0, 0.0),
            left: 0.0,
            right: 0.0,
            top: 0.0,
            bottom: 0.0,
        };
        self.plots.get(area).or(self.plots.first()).copied().unwrap_or(nothing)
    }

    /// Begins what is drawn to scale in an area, cut off at its borders.
    pub(super) fn enter(&mut self, area: usize, plane: &str) -> Plot {
        let plot = self.plot(area);
        plot.enter(&mut self.canvas, plane);
        let clip = format!("url(#{}-area-{area})", self.id);
        self.canvas.element("g").word("clip-path", &clip).enter();
        plot
    }

    /// Ends it.
    pub(super) fn leave(&mut self) {
        self.canvas.leave();
        self.canvas.leave();
    }

    /// Draws rows and labels over it, and hands back the SVG.
    pub(super) fn finish(mut self) -> String {
        let row_y = |index: usize| self.rows_top + ROW_HEIGHT * (index as f64 + 0.6);
        let rows: Vec<(f64, &Row, Plot)> =
            self.sheet.rows.iter().enumerate().map(|(i, row)| (row_y(i), row, self.plot(row.area))).collect();
        let mut canvas = self.canvas;
        canvas.enter(Ink::Measure);
        for (y, row, plot) in &rows {
            plot.enter(&mut canvas, "level");
            row_lines(&mut canvas, row, plot, *y);
            canvas.leave();
        }
        canvas.leave();
        for (y, row, plot) in &rows {
            row_text(&mut canvas, row, plot, *y, self.width);
        }
        let plots = core::mem::take(&mut self.plots);
        for column in &self.columns {
            draw(&mut canvas, column, &self.sheet.labels, |area, place| {
                plots.get(area).map_or(place, |plot| plot.at(place))
            });
        }
        canvas.finish()
    }
}

/// A line of text that begins at a place.
fn written(canvas: &mut Canvas, at: Spot, size: f64, bold: bool, ink: Ink, text: &str) {
    let element = canvas.element("text").number("x", at.x).number("y", at.y).exact("font-size", size);
    let element = if bold { element.word("font-weight", "700") } else { element };
    element.word("fill", "currentColor").ink(ink).content(text);
}

/// Colours as variables that a page may set, also on a dark screen, and as wide as the page has room.
/// Renderers that know no variables skip all of it and keep the attributes.
fn stylesheet() -> String {
    let colours = |dark: bool| -> String {
        let rule = |ink: Ink| {
            let (class, light_colour, dark_colour) = ink.look();
            format!(".{class}{{color:var(--{class},{})}}", if dark { dark_colour } else { light_colour })
        };
        Ink::ALL.map(rule).concat()
    };
    format!(
        "@supports (color:var(--a)){{{}.tablerig-drawing{{max-width:100%;height:auto}}\
         @media screen and (prefers-color-scheme:dark){{{}}}}}",
        colours(false),
        colours(true)
    )
}

/// The characters of a name that an identifier may have.
fn identifier(name: &str) -> String {
    let kept: String =
        name.chars().map(|c| if c.is_ascii_alphanumeric() || c == '-' { c } else { '-' }).collect();
    // An identifier begins with a letter.
    if kept.starts_with(|c: char| c.is_ascii_alphabetic()) { kept } else { format!("d{kept}") }
}

/// The value within bounds, or the default where it is not a number.
fn clamped(value: f64, least: f64, most: f64, default: f64) -> f64 {
    if value.is_nan() { default } else { value.max(least).min(most) }
}
