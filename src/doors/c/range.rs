//! The table of every input quantity, for forms and their checks.

use core::ffi::c_char;

use super::border::call::Door;
use super::border::mirror::Plain;
use super::border::refusal::{Name, Refusal, name};
use super::status::{Fault, Status};
use super::text;
use crate::range;

/// What one input may be. The strings are static.
#[derive(Clone, Copy, Debug)]
#[repr(C)]
pub struct Range {
    /// The least value accepted.
    pub least: f64,
    /// The most.
    pub most: f64,
    /// The field's name with what it belongs to, such as "lens.focal_length_mm".
    pub field: *const c_char,
    /// The unit of the bare number: "mm", "deg", "kg", "n_m", or "" for a pure number.
    pub unit: *const c_char,
    /// What the quantity is, in a few words.
    pub meaning: *const c_char,
}

// SAFETY: a `repr(C)` struct of `f64`s and pointers, of which every pattern of bits is one; it is only ever
// written, and pointers of 4 bytes leave padding at the end that no one reads.
unsafe impl Plain for Range {
    const ZERO: Range = Range {
        least: 0.0,
        most: 0.0,
        field: core::ptr::null(),
        unit: core::ptr::null(),
        meaning: core::ptr::null(),
    };

    fn find(&self, _: Name, _: fn(f64) -> bool) -> Option<(Name, f64)> {
        None
    }
}

/// How many rows the table of ranges has; later versions may have more.
#[unsafe(no_mangle)]
pub extern "C" fn tablerig_range_count() -> u32 {
    range::ALL.len() as u32
}

/// One row of the table of ranges, by its index from 0. TABLERIG_STATUS_UNKNOWN_CODE past the last.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_range_at(index: u32, range: *mut Range, fault: *mut Fault) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(range, name!("range"))?;
        let row = range::ALL.get(index as usize).zip(text::range_row(index as usize));
        let Some((row, [field, unit, meaning])) = row else {
            let most = range::ALL.len() as f64 - 1.0;
            return Err(Refusal::number(Status::UnknownCode, name!("index"), f64::from(index), 0.0, most));
        };
        out.put_plain(&Range { least: row.least, most: row.most, field, unit, meaning })
    })
}
