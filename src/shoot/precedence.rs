//! What must come first, and what is wrong with it where no order can be.

use alloc::vec::Vec;
use core::fmt;

use crate::fault::Fault;

/// A shot that must come before another: this dish before it is cut. Shots are counted from 0, as written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Precedence {
    /// The one that comes first.
    pub first: usize,
    /// The one that comes after it.
    pub then: usize,
    /// Whether nothing may come in between: the second while it is hot.
    pub at_once: bool,
}

/// Why no order was looked for.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize), serde(rename_all = "snake_case"))]
#[non_exhaustive]
pub enum OrderFault {
    /// The minutes are wrong.
    Minutes(Fault),
    /// A precedence names a shot that is not there.
    UnknownShot {
        /// Which.
        shot: usize,
        /// How many there are.
        count: usize,
    },
    /// What must come first goes round in a circle: each of these before the next, the last before the
    /// first.
    Circle(Vec<usize>),
    /// Two shots are both to follow the same one at once, or one is to follow two.
    TwoAtOnce {
        /// The shot that would need two neighbours on one side.
        shot: usize,
    },
}

impl fmt::Display for OrderFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            OrderFault::Minutes(fault) => fault.fmt(f),
            OrderFault::UnknownShot { shot, count } => {
                write!(f, "shot {} is to come before or after another, but there are {count}", shot + 1)
            }
            OrderFault::Circle(shots) => {
                write!(f, "what must come first goes round in a circle: shot ")?;
                for shot in shots {
                    write!(f, "{} before ", shot + 1)?;
                }
                write!(f, "{}", shots.first().map_or(0, |shot| shot + 1))
            }
            OrderFault::TwoAtOnce { shot } => {
                write!(f, "shot {} cannot have two others at once before it, or after it", shot + 1)
            }
        }
    }
}

impl core::error::Error for OrderFault {}
