//! The edges: every field at and past the ends of its range, not a number and infinite, signed zeros; every
//! kind of fault; and no plan with a number that is none.
#![allow(clippy::disallowed_methods, reason = "the draws are the property tests', who use the platform's")]

#[path = "../workshop/mod.rs"]
mod workshop;

#[path = "../identities/briefs.rs"]
#[allow(dead_code, reason = "made for the property tests")]
mod briefs;
#[path = "../identities/draws.rs"]
#[allow(dead_code, reason = "made for the property tests")]
mod draws;
#[path = "../identities/gear.rs"]
mod gear;

mod answers;
mod ends;
mod faults;
mod fields;
mod limits;
mod sweep;
