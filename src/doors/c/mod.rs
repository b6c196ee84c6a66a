//! The C interface: the structs and functions of `include/tablerig.h`, one file a topic, in the order of the
//! rooms they lead to.
//!
//! The header is generated from these files, so what is documented here is written for C readers. Its first
//! page, with the conventions that bind every function, stands in `include/cbindgen.toml`. The caller's
//! memory is read and written in `border/memory.rs` alone; every function opens a
//! `border::call::Door`, which checks pointers, sizes and overlaps, copies what comes in, and copies the
//! answer out at the very end.
#![allow(
    clippy::missing_safety_doc,
    clippy::too_many_arguments,
    reason = "the header's first page says what binds every caller; C has no other way to name arguments"
)]

pub mod border;
#[cfg(all(not(feature = "std"), feature = "freestanding", panic = "abort"))]
mod freestanding;

// In the order of the manual, which is that of the header; blank lines keep it.

pub mod version;

pub mod status;

pub mod code;

pub mod point;

pub mod optics;

pub mod scene;

pub mod view;

pub mod rig;

pub mod advice;

pub mod tolerance;

pub mod caution;

pub mod brief;

pub mod plan;

pub mod range;

pub mod text;
