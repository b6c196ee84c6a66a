//! What a table of a shoot file may hold: one row a key, with its range or kind, what it is when left out,
//! its meaning and where its value goes. Reading, messages and `tablerig fields` all go by these rows.

use std::format;
use std::prelude::rust_2024::*;

use super::reading::Reading;
use super::tree::{Entry, Span};
use crate::cli::unit::Dimension;
use crate::optics::sensor::Aspect;
use crate::range::Range;

/// One key of a table that is read into a `T`.
pub(crate) struct Field<T: 'static> {
    pub(crate) key: &'static str,
    pub(crate) take: Take<T>,
    pub(crate) standing: Standing,
    pub(crate) meaning: &'static str,
}

/// What the key takes, and where it puts it.
pub(crate) enum Take<T: 'static> {
    Number(Range, fn(&mut T, f64)),
    Whole(Range, fn(&mut T, u32)),
    Choice(&'static [&'static str], fn(&mut T, usize)),
    Flag(fn(&mut T, bool)),
    Text(fn(&mut T, Name)),
    Aspect(Range, fn(&mut T, Aspect)),
    /// The name of a thing of that kind.
    Reference(&'static str, fn(&mut T, Name)),
    /// A table, or several, with keys of its own.
    Part(fn(&mut Reading, &str, &Entry, &mut T)),
    /// The name of a thing of that kind, or the thing itself as a table.
    ReferenceOrPart(&'static str, fn(&mut T, Name), fn(&mut Reading, &str, &Entry, &mut T)),
}

/// Whether a key must be there.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Standing {
    Required,
    /// May be left out, and is then this.
    Otherwise(&'static str),
    /// Required together with, or instead of, others: how.
    Among(&'static str),
}

/// A text and its place.
#[derive(Clone, Debug)]
pub(crate) struct Name {
    pub(crate) text: String,
    pub(crate) span: Span,
}

impl<T> Field<T> {
    const fn new(key: &'static str, take: Take<T>, meaning: &'static str) -> Field<T> {
        Field { key, take, standing: Standing::Required, meaning }
    }

    /// A number in the range of that name: the key is the last word of the range's field.
    pub(crate) const fn number(range: Range, put: fn(&mut T, f64)) -> Field<T> {
        Field::new(last_word(range.field), Take::Number(range, put), range.meaning)
    }

    /// A number under a key that is not the range's own.
    pub(crate) const fn number_as(
        key: &'static str,
        range: Range,
        meaning: &'static str,
        put: fn(&mut T, f64),
    ) -> Field<T> {
        Field::new(key, Take::Number(range, put), meaning)
    }

    pub(crate) const fn whole(range: Range, put: fn(&mut T, u32)) -> Field<T> {
        Field::new(last_word(range.field), Take::Whole(range, put), range.meaning)
    }

    pub(crate) const fn choice(
        key: &'static str,
        words: &'static [&'static str],
        meaning: &'static str,
        put: fn(&mut T, usize),
    ) -> Field<T> {
        Field::new(key, Take::Choice(words, put), meaning)
    }

    pub(crate) const fn flag(key: &'static str, meaning: &'static str, put: fn(&mut T, bool)) -> Field<T> {
        Field::new(key, Take::Flag(put), meaning)
    }

    pub(crate) const fn text(key: &'static str, meaning: &'static str, put: fn(&mut T, Name)) -> Field<T> {
        Field::new(key, Take::Text(put), meaning)
    }

    pub(crate) const fn aspect(range: Range, meaning: &'static str, put: fn(&mut T, Aspect)) -> Field<T> {
        Field::new(last_word(range.field), Take::Aspect(range, put), meaning)
    }

    pub(crate) const fn reference(
        kind: &'static str,
        meaning: &'static str,
        put: fn(&mut T, Name),
    ) -> Field<T> {
        Field::new(kind, Take::Reference(kind, put), meaning)
    }

    pub(crate) const fn part(
        key: &'static str,
        meaning: &'static str,
        read: fn(&mut Reading, &str, &Entry, &mut T),
    ) -> Field<T> {
        Field::new(key, Take::Part(read), meaning)
    }

    pub(crate) const fn reference_or_part(
        kind: &'static str,
        meaning: &'static str,
        put: fn(&mut T, Name),
        read: fn(&mut Reading, &str, &Entry, &mut T),
    ) -> Field<T> {
        Field::new(kind, Take::ReferenceOrPart(kind, put, read), meaning)
    }

    /// May be left out, and is then this.
    pub(crate) const fn otherwise(self, value: &'static str) -> Field<T> {
        Field { standing: Standing::Otherwise(value), ..self }
    }

    /// Required together with, or instead of, others.
    pub(crate) const fn among(self, how: &'static str) -> Field<T> {
        Field { standing: Standing::Among(how), ..self }
    }

    /// What may be written, in few words: `1 to 500 mm`, `across or upright`, `true or false`.
    pub(crate) fn allowed(&self) -> String {
        match &self.take {
            Take::Number(range, _) | Take::Whole(range, _) => {
                bounds(range.least, range.most, Dimension::of(range.unit, range.field))
            }
            Take::Choice(words, _) => listed(words, "or"),
            Take::Flag(_) => "true or false".into(),
            Take::Text(_) => "a text".into(),
            Take::Aspect(..) => "two numbers such as \"4:5\"".into(),
            Take::Reference(kind, _) => format!("the name of a {kind}"),
            Take::Part(_) => "a table".into(),
            Take::ReferenceOrPart(kind, ..) => format!("the name of a {kind}, or a table"),
        }
    }
}

const fn last_word(path: &'static str) -> &'static str {
    let bytes = path.as_bytes();
    let mut start = bytes.len();
    while start > 0 && bytes[start - 1] != b'.' {
        start -= 1;
    }
    path.split_at(start).1
}

/// `1 to 500 mm`, `2 mm or more`, `up to 30 %`.
pub(crate) fn bounds(least: f64, most: f64, dimension: Dimension) -> String {
    let symbol = dimension.symbol();
    let unit = if symbol.is_empty() { String::new() } else { format!(" {symbol}") };
    match (least.is_finite(), most.is_finite()) {
        (true, true) => format!("{} to {}{unit}", plain(least), plain(most)),
        (true, false) => format!("{}{unit} or more", plain(least)),
        (false, true) => format!("up to {}{unit}", plain(most)),
        (false, false) => "any number".into(),
    }
}

/// A number as short as it reads well: no more than six decimals.
pub(crate) fn plain(value: f64) -> String {
    let text = format!("{value:.6}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0".into() } else { text.into() }
}

/// `a, b or c`.
pub(crate) fn listed<S: AsRef<str>>(words: &[S], join: &str) -> String {
    match words {
        [] => String::new(),
        [only] => only.as_ref().into(),
        [first @ .., last] => {
            let first: Vec<&str> = first.iter().map(AsRef::as_ref).collect();
            format!("{} {join} {}", first.join(", "), last.as_ref())
        }
    }
}

/// Puts a value into a field of what is being read.
macro_rules! set {
    ($kind:ty, $($field:ident).+) => { |it: &mut $kind, value| it.$($field).+ = value };
}

/// Puts a value into a field that may be left out.
macro_rules! give {
    ($kind:ty, $($field:ident).+) => { |it: &mut $kind, value| it.$($field).+ = Some(value) };
}

pub(crate) use {give, set};
