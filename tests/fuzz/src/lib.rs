//! What must hold whatever comes in: for each door the properties, and how its input is drawn from bytes.
//! The fuzzer's targets and the replay of their corpus both call these.
#![allow(dead_code, reason = "the replay needs no mutators")]
#![allow(clippy::disallowed_methods, reason = "what is drawn need not be the same on every processor")]
#![allow(unreachable_pub, reason = "the replay is no library")]

#[path = "../../workshop/mod.rs"]
mod workshop;

mod briefs;
pub mod c_door;
mod calls;
mod cautions;
mod draw;
mod finite;
mod gear;

mod memory;

pub mod json_door;
pub mod mutate;
pub mod planner;
mod sequence;
pub mod shoot_file;

pub mod tally;
