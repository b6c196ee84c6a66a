//! The caller's memory: the only place that reads or writes it.
//!
//! Nothing here knows a struct. Pointers are checked for null and alignment before they are followed; that
//! there is memory behind them is the caller's word, given once where a [`super::call::Door`] is opened.

use super::mirror::Plain;
use super::refusal::{Name, Refusal};
use crate::doors::c::status::Status;

/// The most that a struct's size may claim to be: beyond, it was never set.
pub(crate) const MOST_BYTES: u32 = 65536;

/// Some memory of the caller's.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Region {
    start: usize,
    bytes: usize,
    written: bool,
}

impl Region {
    /// Nothing.
    pub(crate) const NONE: Region = Region { start: 0, bytes: 0, written: false };

    /// `bytes` from a pointer that is neither null nor out of step with its type.
    pub(crate) fn new<T>(
        pointer: *const T,
        bytes: usize,
        written: bool,
        name: Name,
    ) -> Result<Region, Refusal> {
        if pointer.is_null() {
            return Err(Refusal::plain(Status::NullPointer, name));
        }
        if !pointer.is_aligned() {
            return Err(Refusal::plain(Status::Misaligned, name));
        }
        let start = pointer.addr();
        if bytes > isize::MAX as usize || start.checked_add(bytes).is_none() {
            let most = isize::MAX as usize as f64;
            return Err(Refusal::number(Status::WrongSize, name, bytes as f64, 0.0, most));
        }
        Ok(Region { start, bytes, written })
    }

    /// Whether they share a byte.
    #[inline]
    pub(crate) fn overlaps(&self, other: &Region) -> bool {
        self.start < other.start.wrapping_add(other.bytes)
            && other.start < self.start.wrapping_add(self.bytes)
    }

    pub(crate) fn written(&self) -> bool {
        self.written
    }
}

/// The value behind a pointer.
///
/// # Safety
/// As long as this call lasts, `pointer` is aligned and leads to a `T` that no one else writes.
pub(crate) unsafe fn read<T: Plain>(pointer: *const T) -> T {
    // SAFETY: promised above; every pattern of bits is a value.
    unsafe { pointer.read() }
}

/// The size that a growing struct begins with.
///
/// # Safety
/// As long as this call lasts, `pointer` is aligned to 4 and leads to at least 4 bytes.
pub(crate) unsafe fn read_size<T>(pointer: *const T) -> u32 {
    // SAFETY: promised above.
    unsafe { pointer.cast::<u32>().read() }
}

/// The first `bytes` of a value over `beneath`; the rest of it stays.
///
/// # Safety
/// As long as this call lasts, `pointer` leads to `bytes` bytes that no one else writes.
pub(crate) unsafe fn read_over<T: Plain>(pointer: *const T, bytes: usize, beneath: T) -> T {
    let mut value = beneath;
    let bytes = bytes.min(size_of::<T>());
    // SAFETY: `bytes` of each may be used: promised above for one, no more than its size for the other,
    // which is a local. Every pattern of bits is a value.
    unsafe { core::ptr::copy_nonoverlapping(pointer.cast::<u8>(), (&raw mut value).cast::<u8>(), bytes) };
    value
}

/// Whether the bytes from `from` to `to` behind a pointer are all zero.
///
/// # Safety
/// As long as this call lasts, `pointer` leads to `to` bytes that no one else writes.
pub(crate) unsafe fn all_zero<T>(pointer: *const T, from: usize, to: usize) -> bool {
    // SAFETY: within the bytes promised above.
    (from..to).all(|at| unsafe { pointer.cast::<u8>().add(at).read() } == 0)
}

/// False where no number of a value can be NaN. All of it is looked at as floats, several at once, which may take
/// whole numbers for one: true asks for a look at each number by itself.
pub(crate) fn may_hold_nan<T: Plain>(value: &T) -> bool {
    // Where a float may stand between two places of eight bytes, this look could miss it.
    if align_of::<f64>() != 8 || align_of::<T>() != 8 {
        return true;
    }
    // SAFETY: as many whole floats as the value is long, at its address, which fits them; plain memory has no
    // padding, and every pattern of bits is a float.
    let floats =
        unsafe { core::slice::from_raw_parts((&raw const *value).cast::<f64>(), size_of::<T>() / 8) };
    floats.iter().fold(false, |found, float| found | float.is_nan())
}

/// Writes the first `bytes` of a value.
///
/// # Safety
/// As long as this call lasts, `pointer` leads to `bytes` bytes that no one else uses.
pub(crate) unsafe fn write<T: Plain>(pointer: *mut T, bytes: usize, value: &T) {
    let bytes = bytes.min(size_of::<T>());
    // SAFETY: `bytes` of each may be used: promised above for one, no more than its size for the other,
    // which is a local and so apart from it.
    unsafe { core::ptr::copy_nonoverlapping((&raw const *value).cast::<u8>(), pointer.cast::<u8>(), bytes) };
}

/// Writes zeros from `from` to `to`.
///
/// # Safety
/// As long as this call lasts, `pointer` leads to `to` bytes that no one else uses.
pub(crate) unsafe fn write_zeros<T>(pointer: *mut T, from: usize, to: usize) {
    if from < to {
        // SAFETY: within the bytes promised above.
        unsafe { pointer.cast::<u8>().add(from).write_bytes(0, to - from) };
    }
}
