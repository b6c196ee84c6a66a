//! The command as a user runs it.

mod answers;
mod bits;
mod log;
mod mistakes;
mod options;
mod pages;
mod run;
mod shoot;
mod units;
mod voice;
mod written;
