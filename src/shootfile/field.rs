//! What a table of a shoot file may hold: one row a key, with its range or kind, what it is when left out,
//! its meaning and where its value goes. Reading, messages and `tablerig fields` all go by these rows.

use std::format;
use std::prelude::rust_2024::*;

use super::reading::Reading;
use super::tree::{Entry, Span};
use super::unit::Dimension;
use crate::optics::sensor::Aspect;
use crate::range::Range;

/// One key of a table that is read into a `T`.
pub(crate) struct Field<T: 'static> {
    pub(crate) slot: Slot,
    put: Put<T>,
}

impl<T> Clone for Field<T> {
    fn clone(&self) -> Field<T> {
        *self
    }
}

impl<T> Copy for Field<T> {}

/// What is known of a key, whatever it is read into.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Slot {
    pub(crate) key: &'static str,
    pub(crate) takes: Takes,
    pub(crate) standing: Standing,
    pub(crate) meaning: &'static str,
}

/// What a key takes.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Takes {
    Number(Range),
    Whole(Range),
    Choice(&'static [&'static str]),
    Flag,
    Text,
    Aspect(Range),
    /// The name of a thing of that kind.
    Reference(&'static str),
    /// A table, or several, with keys of its own.
    Part,
    /// What the words say, read by a function of its own.
    Own(&'static str),
    /// The name of a thing of that kind, or the thing itself as a table.
    ReferenceOrPart(&'static str),
}

/// Where a value goes.
enum Put<T: 'static> {
    Number(fn(&mut T, f64)),
    Whole(fn(&mut T, u32)),
    Choice(fn(&mut T, usize)),
    Flag(fn(&mut T, bool)),
    Name(fn(&mut T, Name)),
    Aspect(fn(&mut T, Aspect)),
    Part(fn(&mut Reading, &str, &Entry, &mut T)),
    NameOrPart(fn(&mut T, Name), fn(&mut Reading, &str, &Entry, &mut T)),
}

impl<T> Clone for Put<T> {
    fn clone(&self) -> Put<T> {
        *self
    }
}

impl<T> Copy for Put<T> {}

/// A value that was read.
pub(crate) enum Found<'a> {
    Number(f64),
    Whole(u32),
    Choice(usize),
    Flag(bool),
    Name(Name),
    Aspect(Aspect),
    /// To be read by the key's own function; the text says whose it is.
    Part(&'a mut Reading, &'a str, &'a Entry),
}

/// A table's keys and what they are read into, whatever that is: the reader is compiled once, not once for
/// every kind of table.
pub(crate) trait Filling {
    fn slots(&self) -> Vec<Slot>;
    fn put(&mut self, index: usize, found: Found<'_>);
}

/// The keys of a `T` with the one that is filled.
pub(crate) struct Filled<'a, T: 'static> {
    pub(crate) fields: &'a [Field<T>],
    pub(crate) into: &'a mut T,
}

impl<T> Filling for Filled<'_, T> {
    fn slots(&self) -> Vec<Slot> {
        slots(self.fields)
    }

    fn put(&mut self, index: usize, found: Found<'_>) {
        let Some(field) = self.fields.get(index) else { return };
        match (field.put, found) {
            (Put::Number(put), Found::Number(value)) => put(self.into, value),
            (Put::Whole(put), Found::Whole(value)) => put(self.into, value),
            (Put::Choice(put), Found::Choice(index)) => put(self.into, index),
            (Put::Flag(put), Found::Flag(flag)) => put(self.into, flag),
            (Put::Name(put) | Put::NameOrPart(put, _), Found::Name(name)) => put(self.into, name),
            (Put::Aspect(put), Found::Aspect(aspect)) => put(self.into, aspect),
            (Put::Part(read) | Put::NameOrPart(_, read), Found::Part(reading, whose, entry)) => {
                read(reading, whose, entry, self.into);
            }
            _ => {}
        }
    }
}

/// What is known of each key.
pub(crate) fn slots<T>(fields: &[Field<T>]) -> Vec<Slot> {
    fields.iter().map(|field| field.slot).collect()
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
    const fn new(key: &'static str, takes: Takes, put: Put<T>, meaning: &'static str) -> Field<T> {
        Field { slot: Slot { key, takes, standing: Standing::Required, meaning }, put }
    }

    /// A number in the range of that name: the key is the last word of the range's field.
    pub(crate) const fn number(range: Range, put: fn(&mut T, f64)) -> Field<T> {
        Field::new(last_word(range.field), Takes::Number(range), Put::Number(put), range.meaning)
    }

    /// A number under a key that is not the range's own.
    pub(crate) const fn number_as(
        key: &'static str,
        range: Range,
        meaning: &'static str,
        put: fn(&mut T, f64),
    ) -> Field<T> {
        Field::new(key, Takes::Number(range), Put::Number(put), meaning)
    }

    pub(crate) const fn whole(range: Range, put: fn(&mut T, u32)) -> Field<T> {
        Field::new(last_word(range.field), Takes::Whole(range), Put::Whole(put), range.meaning)
    }

    pub(crate) const fn choice(
        key: &'static str,
        words: &'static [&'static str],
        meaning: &'static str,
        put: fn(&mut T, usize),
    ) -> Field<T> {
        Field::new(key, Takes::Choice(words), Put::Choice(put), meaning)
    }

    pub(crate) const fn flag(key: &'static str, meaning: &'static str, put: fn(&mut T, bool)) -> Field<T> {
        Field::new(key, Takes::Flag, Put::Flag(put), meaning)
    }

    pub(crate) const fn text(key: &'static str, meaning: &'static str, put: fn(&mut T, Name)) -> Field<T> {
        Field::new(key, Takes::Text, Put::Name(put), meaning)
    }

    pub(crate) const fn aspect(range: Range, meaning: &'static str, put: fn(&mut T, Aspect)) -> Field<T> {
        Field::new(last_word(range.field), Takes::Aspect(range), Put::Aspect(put), meaning)
    }

    pub(crate) const fn reference(
        kind: &'static str,
        meaning: &'static str,
        put: fn(&mut T, Name),
    ) -> Field<T> {
        Field::new(kind, Takes::Reference(kind), Put::Name(put), meaning)
    }

    pub(crate) const fn part(
        key: &'static str,
        meaning: &'static str,
        read: fn(&mut Reading, &str, &Entry, &mut T),
    ) -> Field<T> {
        Field::new(key, Takes::Part, Put::Part(read), meaning)
    }

    /// Something that takes what `allowed` says.
    pub(crate) const fn own(
        key: &'static str,
        allowed: &'static str,
        meaning: &'static str,
        read: fn(&mut Reading, &str, &Entry, &mut T),
    ) -> Field<T> {
        Field::new(key, Takes::Own(allowed), Put::Part(read), meaning)
    }

    pub(crate) const fn reference_or_part(
        kind: &'static str,
        meaning: &'static str,
        put: fn(&mut T, Name),
        read: fn(&mut Reading, &str, &Entry, &mut T),
    ) -> Field<T> {
        Field::new(kind, Takes::ReferenceOrPart(kind), Put::NameOrPart(put, read), meaning)
    }

    /// May be left out, and is then this.
    pub(crate) const fn otherwise(self, value: &'static str) -> Field<T> {
        self.standing(Standing::Otherwise(value))
    }

    /// Required together with, or instead of, others.
    pub(crate) const fn among(self, how: &'static str) -> Field<T> {
        self.standing(Standing::Among(how))
    }

    /// May be left out or not.
    pub(crate) const fn standing(self, standing: Standing) -> Field<T> {
        Field { slot: Slot { standing, ..self.slot }, put: self.put }
    }
}

impl Slot {
    /// What may be written, in few words: `1 to 500 mm`, `across or upright`, `true or false`.
    pub(crate) fn allowed(&self) -> String {
        match &self.takes {
            Takes::Number(range) | Takes::Whole(range) => {
                bounds(range.least, range.most, Dimension::of(range.unit, range.field))
            }
            Takes::Choice(words) => listed(words, "or"),
            Takes::Flag => "true or false".into(),
            Takes::Text => "a text".into(),
            Takes::Aspect(_) => "two numbers such as \"4:5\"".into(),
            Takes::Reference(kind) => format!("the name of a {kind}"),
            Takes::Part => "a table".into(),
            Takes::Own(allowed) => (*allowed).into(),
            Takes::ReferenceOrPart(kind) => format!("the name of a {kind}, or a table"),
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

/// A number as short as it reads well: no more than six decimals; as a power of ten where they would all be zeros,
/// or where it would fill a line.
pub(crate) fn plain(value: f64) -> String {
    if value != 0.0 && value.abs() < 5e-7 || value.is_finite() && value.abs() >= 1e15 {
        return format!("{value:e}");
    }
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
