//! What every function of the C interface passes through: the caller's memory checked and copied in,
//! structs turned into the library's own values and back, results copied out at the end.

pub(crate) mod argument;
pub(crate) mod call;
pub(crate) mod memory;
pub mod mirror;
pub(crate) mod part;
pub(crate) mod refusal;
