//! How others come in. Nothing in the house knows a door.

#[cfg(feature = "capi")]
#[allow(unsafe_code, reason = "the C interface reads and writes its caller's memory")]
pub mod c;
#[cfg(feature = "text-door")]
pub mod text;
