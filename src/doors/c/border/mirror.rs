//! A C struct and what it stands for inside, turned into each other field by field.
//!
//! Each struct is written out once, documented for C. Beside it one line of `mirror!` names the fields of
//! the inner struct and, where they differ, the C fields that hold each; both directions, the test for
//! numbers and the proof that no padding hides in the struct come from that line. A field left out of it
//! does not compile.

use super::refusal::{Name, Refusal};
use crate::doors::c::status::Status;

/// Plain memory: whole numbers, `f64`s, and structs and arrays of these.
///
/// # Safety
/// Every pattern of bits is a value, and there is no padding.
pub unsafe trait Plain: Copy {
    /// All bits zero.
    const ZERO: Self;

    /// The name and value of the first number that is bad, if any; `name` is that of a bare number.
    fn find(&self, name: Name, bad: fn(f64) -> bool) -> Option<(Name, f64)>;
}

/// A C value that a result of the library turns into.
pub trait Leave<Inner>: Plain {
    /// Puts it into a place of zeros.
    fn leave_in(inner: &Inner, place: &mut Self);

    /// The C value.
    fn leave(inner: &Inner) -> Self {
        let mut value = Self::ZERO;
        Self::leave_in(inner, &mut value);
        value
    }
}

/// The places, holding zeros, of the several C fields that one result of the library turns into.
pub trait LeaveApart<Inner> {
    /// Puts it there.
    fn leave_apart(self, inner: &Inner);
}

/// A C value that comes in.
pub trait Enter<Inner>: Sized {
    /// What it stands for. Ranges are not looked at here, only what has no counterpart inside: those end
    /// in `findings`, under `name` for a bare number.
    fn enter(&self, name: Name, findings: &mut Findings) -> Inner;
}

/// The first thing found wrong while a value comes in.
#[derive(Debug, Default)]
pub struct Findings {
    first: Option<Refusal>,
}

impl Findings {
    /// Keeps the first.
    pub(crate) fn note(&mut self, refusal: Refusal) {
        self.first.get_or_insert(refusal);
    }

    /// A whole number that is none of those allowed.
    pub(crate) fn unknown_code(&mut self, name: Name, value: i32, least: i32, most: i32) {
        let [value, least, most] = [value, least, most].map(f64::from);
        self.note(Refusal::number(Status::UnknownCode, name, value, least, most));
    }

    /// A field kept for later that is not zero.
    pub(crate) fn reserved(&mut self, name: Name, value: i32) {
        if value != 0 {
            self.note(Refusal::number(Status::UnknownField, name, f64::from(value), 0.0, 0.0));
        }
    }

    /// The value that came in, if nothing was wrong with it.
    pub(crate) fn clear<T>(self, value: T) -> Result<T, Refusal> {
        match self.first {
            None => Ok(value),
            Some(refusal) => Err(refusal),
        }
    }
}

// SAFETY: a number without padding, every pattern of bits is one.
unsafe impl Plain for f64 {
    const ZERO: f64 = 0.0;

    fn find(&self, name: Name, bad: fn(f64) -> bool) -> Option<(Name, f64)> {
        if bad(*self) { Some((name, *self)) } else { None }
    }
}

macro_rules! whole {
    ($($whole:ident),+) => {$(
        // SAFETY: a whole number without padding, every pattern of bits is one.
        unsafe impl Plain for $whole {
            const ZERO: $whole = 0;

            fn find(&self, _: Name, _: fn(f64) -> bool) -> Option<(Name, f64)> {
                None
            }
        }
    )+};
}
whole!(i32, u32);

// SAFETY: elements of an array lie side by side, and each is plain.
unsafe impl<T: Plain, const N: usize> Plain for [T; N] {
    const ZERO: [T; N] = [T::ZERO; N];

    fn find(&self, name: Name, bad: fn(f64) -> bool) -> Option<(Name, f64)> {
        self.iter().find_map(|element| element.find(name, bad))
    }
}

macro_rules! itself {
    ($($number:ident),+) => {$(
        impl Leave<$number> for $number {
            #[inline]
            fn leave_in(inner: &$number, place: &mut $number) {
                *place = *inner;
            }
        }

        impl Enter<$number> for $number {
            fn enter(&self, _: Name, _: &mut Findings) -> $number {
                *self
            }
        }
    )+};
}
itself!(f64, u32);

impl Leave<bool> for i32 {
    #[inline]
    fn leave_in(inner: &bool, place: &mut i32) {
        *place = i32::from(*inner);
    }
}

impl Enter<bool> for i32 {
    fn enter(&self, name: Name, findings: &mut Findings) -> bool {
        if !matches!(*self, 0 | 1) {
            findings.unknown_code(name, *self, 0, 1);
        }
        *self == 1
    }
}

/// A value that may be left out: `has_` before it says whether it is there; what is left out is zero.
impl<Inner, T: Leave<Inner>> LeaveApart<Option<Inner>> for (&mut i32, &mut T) {
    #[inline]
    fn leave_apart(self, inner: &Option<Inner>) {
        if let Some(value) = inner {
            *self.0 = 1;
            T::leave_in(value, self.1);
        }
    }
}

impl<Inner, T: Enter<Inner>> Enter<Option<Inner>> for (i32, T) {
    fn enter(&self, name: Name, findings: &mut Findings) -> Option<Inner> {
        let has: bool = self.0.enter(name, findings);
        // What is left out is not looked at.
        if has { Some(self.1.enter(name, findings)) } else { None }
    }
}

/// Several that may be left out, each with its own `has_`.
impl<Inner, T: Leave<Inner>, const N: usize> LeaveApart<[Option<Inner>; N]> for (&mut [i32; N], &mut [T; N]) {
    fn leave_apart(self, inner: &[Option<Inner>; N]) {
        for ((value, has), place) in inner.iter().zip(self.0).zip(self.1) {
            (has, place).leave_apart(value);
        }
    }
}

impl<Inner, T: Leave<Inner>, const N: usize> Leave<[Inner; N]> for [T; N] {
    fn leave_in(inner: &[Inner; N], places: &mut [T; N]) {
        for (value, place) in inner.iter().zip(places) {
            T::leave_in(value, place);
        }
    }
}

impl<Inner, T: Enter<Inner>, const N: usize> Enter<[Inner; N]> for [T; N] {
    fn enter(&self, name: Name, findings: &mut Findings) -> [Inner; N] {
        self.each_ref().map(|element| element.enter(name, findings))
    }
}

/// Bytes of the field that `of` picks.
pub(crate) const fn field_bytes<T, F>(_of: fn(&T) -> &F) -> usize {
    size_of::<F>()
}

/// The value of one inner field, from the C fields that hold it.
macro_rules! entered {
    ($c:ident, $findings:ident, $prefix:literal, $field:ident) => {
        Enter::enter(&$c.$field, name!($prefix, ".", stringify!($field)), $findings)
    };
    // A flag that is neither 0 nor 1 is told under its own name.
    ($c:ident, $findings:ident, $prefix:literal, $field:ident, $has:ident, $value:ident) => {{
        let has: bool = Enter::enter(&$c.$has, name!($prefix, ".", stringify!($has)), $findings);
        let given = (i32::from(has), $c.$value);
        Enter::enter(&given, name!($prefix, ".", stringify!($value)), $findings)
    }};
    ($c:ident, $findings:ident, $prefix:literal, $field:ident, $($part:ident),+) => {
        Enter::enter(&($($c.$part,)+), name!($prefix, ".", stringify!($field)), $findings)
    };
}
pub(crate) use entered;

/// One inner field into the C fields that hold it.
macro_rules! left {
    ($c:ident, $inner:ident, $field:ident) => {
        Leave::leave_in(&$inner.$field, &mut $c.$field)
    };
    ($c:ident, $inner:ident, $field:ident, $($part:ident),+) => {
        LeaveApart::leave_apart(($(&mut $c.$part,)+), &$inner.$field)
    };
}
pub(crate) use left;

/// `plain!` from the lists of C fields, one a field inside.
macro_rules! plain_parts {
    ($name:ident $prefix:literal [$($done:ident)*] [$field:ident] $($rest:tt)*) => {
        $crate::doors::c::border::mirror::plain_parts!($name $prefix [$($done)* $field] $($rest)*);
    };
    ($name:ident $prefix:literal [$($done:ident)*] [$field:ident $($part:ident)+] $($rest:tt)*) => {
        $crate::doors::c::border::mirror::plain_parts!($name $prefix [$($done)* $($part)+] $($rest)*);
    };
    ($name:ident $prefix:literal [$($done:ident)*]) => {
        $crate::doors::c::border::mirror::plain!($name $prefix $($done),*);
    };
}
pub(crate) use plain_parts;

/// `plain!(Struct "prefix" field, ...)`: plain memory; `prefix.field` is how its fields are named in a fault.
macro_rules! plain {
    ($name:ident $prefix:literal $($field:ident),+ $(,)?) => {
        // SAFETY: a `repr(C)` struct of plain fields (each call of `find` below asks for that), all of
        // them (the constant names each), whose sizes add up to its own.
        unsafe impl $crate::doors::c::border::mirror::Plain for $name {
            const ZERO: $name = $name {
                $($field: $crate::doors::c::border::mirror::Plain::ZERO,)+
            };

            fn find(
                &self,
                _: $crate::doors::c::border::refusal::Name,
                bad: fn(f64) -> bool,
            ) -> Option<($crate::doors::c::border::refusal::Name, f64)> {
                $(
                    let name = $crate::doors::c::border::refusal::name!($prefix, ".", stringify!($field));
                    if let Some(found) =
                        $crate::doors::c::border::mirror::Plain::find(&self.$field, name, bad)
                    {
                        return Some(found);
                    }
                )+
                None
            }
        }

        const _: () = {
            let mut bytes = 0;
            $(bytes += $crate::doors::c::border::mirror::field_bytes(|of: &$name| &of.$field);)+
            assert!(bytes == size_of::<$name>(), "padding hides in this struct");
        };
    };
}
pub(crate) use plain;

/// `mirror!(out Struct "prefix" inner::Struct { field, other: (c_field, c_field) })` for results, `both`
/// for what also comes in; `sized` after it where the struct begins with its size, `spare` where its whole
/// numbers end with one kept for later.
macro_rules! mirror {
    (both $name:ident $prefix:literal $inner:ty {
        $($field:ident $(: ($($part:ident),+))?),+ $(,)?
    } $(sized $size:ident)? $(spare $spare:ident)?) => {
        $crate::doors::c::border::mirror::mirror!(out $name $prefix $inner {
            $($field $(: ($($part),+))?),+
        } $(sized $size)? $(spare $spare)?);

        impl $crate::doors::c::border::mirror::Enter<$inner> for $name {
            fn enter(
                &self,
                _: $crate::doors::c::border::refusal::Name,
                findings: &mut $crate::doors::c::border::mirror::Findings,
            ) -> $inner {
                #[allow(unused_imports, reason = "a struct of numbers alone needs no names")]
                use $crate::doors::c::border::{mirror::{Enter, entered}, refusal::name};
                type Inner = $inner;
                $(findings.reserved(name!($prefix, ".", stringify!($spare)), self.$spare);)?
                Inner { $($field: entered!(self, findings, $prefix, $field $(, $($part),+)?),)+ }
            }
        }
    };
    (out $name:ident $prefix:literal $inner:ty {
        $($field:ident $(: ($($part:ident),+))?),+ $(,)?
    } $(sized $size:ident)? $(spare $spare:ident)?) => {
        impl $crate::doors::c::border::mirror::Leave<$inner> for $name {
            fn leave_in(inner: &$inner, place: &mut $name) {
                #[allow(unused_imports, reason = "few structs need both")]
                use $crate::doors::c::border::mirror::{Leave, LeaveApart, left};
                type Inner = $inner;
                // Names every field inside, so that none is forgotten.
                let Inner { $($field: _),+ } = inner;
                $(place.$size = size_of::<$name>() as u32;)?
                $(left!(place, inner, $field $(, $($part),+)?);)+
            }
        }

        $crate::doors::c::border::mirror::plain_parts!(
            $name $prefix [$($size)? $($spare)?] $([$field $($($part)+)?])+);
    };
}
pub(crate) use mirror;
