//! Why a call is refused, before it is told to the caller.

use core::ffi::c_char;

use crate::doors::c::status::{Fault, Status};
use crate::doors::c::text;
use crate::fault;

/// The name of a field or of an argument, ended by a NUL so that C can read it.
#[derive(Clone, Copy, Debug)]
pub struct Name(&'static str);

impl Name {
    /// From a text that ends with its only NUL; anything else does not compile.
    pub(crate) const fn new(ended: &'static str) -> Name {
        let bytes = ended.as_bytes();
        let mut at = 0;
        while at + 1 < bytes.len() {
            assert!(bytes[at] != 0, "a NUL inside a name");
            at += 1;
        }
        assert!(at < bytes.len() && bytes[at] == 0, "a name without its NUL");
        Name(ended)
    }

    pub(crate) const fn as_ptr(self) -> *const c_char {
        self.0.as_ptr().cast()
    }
}

/// A name made of literals: `name!("lens")`.
macro_rules! name {
    ($($text:expr),+) => {
        const { $crate::doors::c::border::refusal::Name::new(concat!($($text,)+ "\0")) }
    };
}
pub(crate) use name;

/// Why a call is refused.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Refusal {
    status: i32,
    field: *const c_char,
    value: f64,
    least: f64,
    most: f64,
}

impl Refusal {
    /// Something about `name` that no number describes.
    pub(crate) fn plain(status: Status, name: Name) -> Refusal {
        Refusal::number(status, name, 0.0, 0.0, 0.0)
    }

    /// A number that `name` may not have.
    pub(crate) fn number(status: Status, name: Name, value: f64, least: f64, most: f64) -> Refusal {
        Refusal { status: status as i32, field: name.as_ptr(), value, least, most }
    }

    pub(crate) fn status(&self) -> i32 {
        self.status
    }

    /// As the caller gets to see it.
    pub(crate) fn told(&self) -> Fault {
        let Refusal { status, field, value, least, most } = *self;
        Fault { status, reserved: 0, value, least, most, field }
    }
}

impl From<fault::Fault> for Refusal {
    fn from(fault: fault::Fault) -> Refusal {
        let fault::Fault { kind, field, value, least, most } = fault;
        Refusal { status: kind as i32, field: text::field(field), value, least, most }
    }
}
