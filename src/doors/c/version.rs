//! Which version this is, at compile time and at run time.

use core::ffi::c_char;

/// Major version of this header.
pub const VERSION_MAJOR: u32 = 0;
/// Minor version of this header.
pub const VERSION_MINOR: u32 = 1;
/// Patch version of this header.
pub const VERSION_PATCH: u32 = 0;
/// Version of this header as one number that grows: major x 1000000 + minor x 1000 + patch.
pub const VERSION: u32 = 1000;
/// Version of the binary interface: that of the shared library's name. It changes only when a program
/// compiled earlier would no longer work.
pub const ABI: u32 = 1;

/// Version of the library that is linked, made like TABLERIG_VERSION. It may differ from the header's: a
/// program compiled with either works with the other as long as TABLERIG_ABI is the same.
#[unsafe(no_mangle)]
pub extern "C" fn tablerig_version() -> u32 {
    VERSION
}

/// Version of the library that is linked, such as "0.1.0".
#[unsafe(no_mangle)]
pub extern "C" fn tablerig_version_text() -> *const c_char {
    concat!(env!("CARGO_PKG_VERSION"), "\0").as_ptr().cast()
}

const _: () = assert!(VERSION == VERSION_MAJOR * 1_000_000 + VERSION_MINOR * 1_000 + VERSION_PATCH);
