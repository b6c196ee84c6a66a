//! Every number that a host may be answered with is reached by a recorded input. The numbers are taken from the
//! enumerations in the sources, so one that is added fails here until an input for it is recorded.
//!
//! Kinds of faults have their inputs in `tests/edges`, cautions at each of their levels in `tests/cautions`.

#[path = "../workshop/mod.rs"]
mod workshop;

#[cfg(feature = "capi")]
#[path = "../door/ask.rs"]
#[allow(dead_code, reason = "made for the tests of the C interface")]
mod ask;
#[cfg(feature = "capi")]
#[path = "../door/memory.rs"]
#[allow(dead_code, reason = "made for the tests of the C interface")]
mod memory;
#[cfg(feature = "capi")]
#[path = "../door/set.rs"]
#[allow(dead_code, reason = "made for the tests of the C interface")]
mod set;

#[cfg(feature = "text-door")]
mod mistakes;
mod reasons;
mod sources;
#[cfg(feature = "capi")]
mod statuses;
