//! The C interface, called as a C program calls it.

#[path = "../workshop/mod.rs"]
mod workshop;

mod agreement;
mod ask;
mod batch;
mod codes;
mod hostile;
mod memory;
mod parts;
mod pointers;
mod questions;
mod seeded;
mod set;
mod sizes;
mod texts;
