//! The drawings, read back: to scale, complete, legible, well formed.
//!
//! Every drawing is also written to `drawings` in the test's own folder, for `in_browser.sh` beside this
//! file, which holds the labels against a real browser's text.
#![allow(clippy::disallowed_methods, reason = "the platform's functions are the second opinion here")]

#[path = "../identities/briefs.rs"]
#[allow(dead_code, reason = "another test's generators: this one uses whole briefs")]
mod briefs;
#[path = "../identities/draws.rs"]
#[allow(dead_code, reason = "another test's generators: this one uses whole briefs")]
mod draws;
#[path = "../identities/gear.rs"]
mod gear;
#[path = "../workshop/mod.rs"]
mod workshop;

mod reading;
mod shots;

mod demo;
mod lengths;
mod paper;
mod scale;
mod words;
