//! A whole shoot: choosing gear, smallest changes, fitting the bay, what to book and pull, the order, and
//! corrections on the set.
#![allow(clippy::disallowed_methods, reason = "the platform's functions are the second opinion here")]

#[path = "../workshop/mod.rs"]
mod workshop;

mod briefs;
mod change;
mod choose;
mod fit;
mod onset;

#[cfg(feature = "alloc")]
mod booking;
#[cfg(feature = "alloc")]
mod order;
#[cfg(feature = "alloc")]
mod pieces;
#[cfg(feature = "cli")]
mod text;
#[cfg(feature = "alloc")]
mod weights;
