//! Structs that grow from version to version: each begins with the size that its caller knows it by.

use super::mirror::{Enter, Plain};
use super::refusal::Name;
use crate::fault;

/// A number that must be set: outside every range, so that leaving it is refused by name.
pub(crate) use crate::doors::c::brief::UNSET;

/// A struct that begins with `uint32_t size`.
pub(crate) trait Sized32: Plain {
    /// The least size accepted: up to the last field that has no default.
    const LEAST: usize;
    /// What it is called as an argument.
    const NAME: Name;
    /// What its size is called.
    const SIZE_NAME: Name;

    /// Every documented default, and [`UNSET`] where there is none.
    fn unset() -> Self;
}

/// A part of a brief that can be checked by itself.
pub(crate) trait Part: Sized32 + Enter<Self::Inner> {
    /// What it stands for inside.
    type Inner;

    /// Refuses a field out of its range.
    fn check(inner: &Self::Inner) -> Result<(), fault::Fault>;
}

/// `sized!(Struct "argument", least, unset)`.
macro_rules! sized {
    ($name:ident $argument:literal, up_to $last:ident, $unset:expr) => {
        $crate::doors::c::border::part::sized!(
            $name $argument, bytes core::mem::offset_of!($name, $last), $unset);
    };
    ($name:ident $argument:literal, whole, $unset:expr) => {
        $crate::doors::c::border::part::sized!($name $argument, bytes size_of::<$name>(), $unset);
    };
    ($name:ident $argument:literal, bytes $least:expr, $unset:expr) => {
        impl $crate::doors::c::border::part::Sized32 for $name {
            const LEAST: usize = $least;
            const NAME: $crate::doors::c::border::refusal::Name =
                $crate::doors::c::border::refusal::name!($argument);
            const SIZE_NAME: $crate::doors::c::border::refusal::Name =
                $crate::doors::c::border::refusal::name!($argument, ".size");

            fn unset() -> $name {
                $unset
            }
        }
    };
}
pub(crate) use sized;

/// `part!(Struct inner::Struct)`: checked by the inner struct's own `check`.
macro_rules! part {
    ($name:ident $inner:ty) => {
        impl $crate::doors::c::border::part::Part for $name {
            type Inner = $inner;

            fn check(inner: &$inner) -> Result<(), $crate::fault::Fault> {
                inner.check()
            }
        }
    };
}
pub(crate) use part;
