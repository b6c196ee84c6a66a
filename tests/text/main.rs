//! The text door.

mod ask;
mod bits;
mod editing;
mod header;
mod hostile;
mod mistakes;
mod operations;
mod rust_types;
mod types;
