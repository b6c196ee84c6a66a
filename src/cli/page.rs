//! What the command prints for people: headings, pairs, tables and cautions, set to a width.

use std::format;
use std::prelude::rust_2024::*;

use anstyle::{AnsiColor, Style};
use comfy_table::{CellAlignment, ColumnConstraint, ContentArrangement, Table, Width, presets};

use super::shown::shown;
use super::wording::{UNBROKEN, Units};
use crate::caution::Level;

/// How wide the text is set where neither a terminal nor `COLUMNS` says so.
const PLAIN_WIDTH: u16 = 100;
/// Narrower than this no table can be read; wider than that no line.
const LEAST_WIDTH: u16 = 60;
const MOST_WIDTH: u16 = 120;
/// How far everything under a heading is set in, and the gap between columns.
const INDENT: usize = 2;
const GAP: usize = 2;
/// Where the values of pairs begin, and where those of a short list do.
const LABEL_WIDTH: u16 = 30;
const SHORT_LABEL_WIDTH: u16 = 10;

const BOLD: Style = Style::new().bold();

/// Where on its lines a table has levels to colour.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Levels {
    Nowhere,
    First,
    Last,
}

/// A page being written.
#[derive(Debug)]
pub(crate) struct Page {
    pub(crate) units: Units,
    text: String,
    width: u16,
}

/// A column of a table.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Column {
    name: &'static str,
    right: bool,
    /// 0 where it is never left out; of the others the highest goes first.
    spare: u8,
}

/// A column of words.
pub(crate) const fn left(name: &'static str) -> Column {
    Column { name, right: false, spare: 0 }
}

/// A column of numbers.
pub(crate) const fn right(name: &'static str) -> Column {
    Column { name, right: true, spare: 0 }
}

impl Column {
    /// A column that is left out where there is no room for it, before all of a lower rank.
    pub(crate) const fn spare(self, rank: u8) -> Column {
        Column { spare: rank, ..self }
    }
}

impl Page {
    /// An empty page, as wide as the terminal.
    pub(crate) fn new(units: Units) -> Page {
        let terminal = terminal_size::terminal_size().map(|(width, _)| width.0);
        let named = || std::env::var("COLUMNS").ok().and_then(|columns| columns.parse().ok());
        let width = terminal.or_else(named).map_or(PLAIN_WIDTH, |width| width.clamp(LEAST_WIDTH, MOST_WIDTH));
        Page { units, text: String::new(), width }
    }

    /// The page's text.
    pub(crate) fn into_text(self) -> String {
        self.text
    }

    /// A heading, with room above it.
    pub(crate) fn heading(&mut self, text: &str) {
        if !self.text.is_empty() {
            self.text.push('\n');
        }
        self.text.push_str(&format!("{BOLD}{}{BOLD:#}\n", shown(text)));
    }

    /// A paragraph, wrapped.
    pub(crate) fn paragraph(&mut self, text: &str) {
        let mut table = self.table(0);
        table.add_row([text]);
        self.push(&table, 0, Levels::Nowhere);
    }

    /// An empty line.
    pub(crate) fn gap(&mut self) {
        self.text.push('\n');
    }

    /// Labels with their values, the values aligned through the page.
    pub(crate) fn pairs(&mut self, pairs: &[(&'static str, String)]) {
        self.labelled(pairs, LABEL_WIDTH);
    }

    /// Short labels with their values.
    pub(crate) fn short_pairs(&mut self, pairs: &[(&'static str, String)]) {
        self.labelled(pairs, SHORT_LABEL_WIDTH);
    }

    fn labelled(&mut self, pairs: &[(&'static str, String)], width: u16) {
        if pairs.is_empty() {
            return;
        }
        let mut table = self.table(INDENT);
        for (label, value) in pairs {
            table.add_row([*label, value.as_str()]);
        }
        if let Some(column) = table.column_mut(0) {
            column.set_constraint(ColumnConstraint::Absolute(Width::Fixed(width)));
        }
        self.push(&table, INDENT, Levels::Nowhere);
    }

    /// A table of figures under their headings: no cell is wrapped; where it is too wide, spare columns go.
    /// Returns the names of those that went.
    pub(crate) fn figures(&mut self, columns: &[Column], mut rows: Vec<Vec<String>>) -> Vec<&'static str> {
        let mut columns = columns.to_vec();
        let mut gone = Vec::new();
        let mut widths: Vec<usize> = columns.iter().map(|column| column.name.chars().count()).collect();
        for row in &rows {
            for (width, cell) in widths.iter_mut().zip(row) {
                *width = (*width).max(cell.chars().count());
            }
        }
        let room = usize::from(self.width) - INDENT;
        while widths.iter().map(|width| width + GAP).sum::<usize>() > room + GAP {
            let spare = columns.iter().enumerate().filter(|(_, column)| column.spare > 0);
            let Some((index, _)) = spare.max_by_key(|(_, column)| column.spare) else { break };
            gone.push(columns.remove(index).name);
            widths.remove(index);
            rows.iter_mut().for_each(|row| drop(row.remove(index)));
        }
        let mut table = self.headed(&columns, rows);
        for column in table.column_iter_mut() {
            column.set_constraint(ColumnConstraint::ContentWidth);
        }
        self.push(&table, INDENT, Levels::Last);
        gone
    }

    /// What the columns of a table mean, each in a sentence or more, but for those that were left out: of them
    /// it says so.
    pub(crate) fn legend(&mut self, gone: &[&str], columns: &[(&str, &str)]) {
        let told = columns.iter().filter(|(name, _)| !gone.contains(name));
        let mut told: Vec<String> = told.map(|(_, told)| (*told).into()).collect();
        if !gone.is_empty() {
            told.push(format!("No room here for: {}; --json has all.", gone.join(", ")));
        }
        self.paragraph(&told.join(" "));
    }

    /// A table of texts under their headings; only the first column is never wrapped.
    pub(crate) fn texts(&mut self, columns: &[Column], rows: Vec<Vec<String>>) {
        let mut table = self.headed(columns, rows);
        if let Some(column) = table.column_mut(0) {
            column.set_constraint(ColumnConstraint::ContentWidth);
        }
        self.push(&table, INDENT, Levels::Nowhere);
    }

    fn headed(&self, columns: &[Column], rows: Vec<Vec<String>>) -> Table {
        let mut table = self.table(INDENT);
        table.set_header(columns.iter().map(|column| column.name).collect::<Vec<_>>());
        for row in rows {
            table.add_row(row);
        }
        for (index, column) in columns.iter().enumerate() {
            if let (true, Some(set)) = (column.right, table.column_mut(index)) {
                set.set_cell_alignment(CellAlignment::Right);
            }
        }
        table
    }

    /// Lines behind a dash.
    pub(crate) fn list<S: AsRef<str>>(&mut self, lines: &[S]) {
        let mut table = self.table(INDENT);
        for line in lines {
            table.add_row(["-", line.as_ref()]);
        }
        self.push(&table, INDENT, Levels::Nowhere);
    }

    /// Texts behind their levels.
    pub(crate) fn levels(&mut self, lines: &[(Level, String)]) {
        let mut table = self.table(INDENT);
        for (level, text) in lines {
            table.add_row([word(*level), text.as_str()]);
        }
        if let Some(column) = table.column_mut(0) {
            column.set_constraint(ColumnConstraint::Absolute(Width::Fixed(SHORT_LABEL_WIDTH)));
        }
        self.push(&table, INDENT, Levels::First);
    }

    fn table(&self, indent: usize) -> Table {
        let mut table = Table::new();
        table.load_style(presets::NOTHING);
        table.set_content_arrangement(ContentArrangement::Dynamic);
        // Every column brings its gap, the last one in vain.
        table.set_width(self.width + (GAP - indent) as u16);
        table
    }

    fn push(&mut self, table: &Table, indent: usize, levels: Levels) {
        let mut table = table.clone();
        for column in table.column_iter_mut() {
            column.set_padding((0, GAP as u16));
        }
        let margin = " ".repeat(indent);
        for line in table.lines() {
            // A number stays with its unit while the lines are set, and is plain text afterwards.
            let line = shown(&line.replace(UNBROKEN, " "));
            let line = line.trim_end();
            self.text.push_str(if line.is_empty() { "" } else { &margin });
            self.text.push_str(&painted(line, levels));
            self.text.push('\n');
        }
    }
}

/// The word for a level.
pub(crate) fn word(level: Level) -> &'static str {
    match level {
        Level::Note => "note",
        Level::Warn => "warn",
        Level::Stop => "stop",
    }
}

fn style(level: Level) -> Style {
    match level {
        Level::Note => AnsiColor::Cyan.on_default(),
        Level::Warn => AnsiColor::Yellow.on_default().bold(),
        Level::Stop => AnsiColor::Red.on_default().bold(),
    }
}

/// Colours the level that a line begins or ends with.
fn painted(line: &str, levels: Levels) -> String {
    for level in [Level::Note, Level::Warn, Level::Stop] {
        let (word, style) = (word(level), style(level));
        let (before, after) = match levels {
            Levels::Nowhere => break,
            Levels::First => (Some(""), line.strip_prefix(word)),
            Levels::Last => (line.strip_suffix(word), Some("")),
        };
        if let (Some(before), Some(after)) = (before, after)
            && (before.ends_with(' ') || after.starts_with(' '))
        {
            return format!("{before}{style}{word}{style:#}{after}");
        }
    }
    line.into()
}

/// A pair where there is a value.
pub(crate) fn given(label: &'static str, value: Option<String>) -> Option<(&'static str, String)> {
    value.map(|value| (label, value))
}
