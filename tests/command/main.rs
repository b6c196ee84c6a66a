//! The command as a user runs it.

mod answers;
mod bits;
mod mistakes;
mod pages;
mod run;
mod units;
