//! Structs as bytes, and memory that shows what was written to it.

use tablerig::doors::c::border::mirror::Plain;

/// The bytes of a struct; it has no padding.
pub(crate) fn bytes<T: Plain>(value: &T) -> &[u8] {
    // SAFETY: plain memory has no padding, so every byte may be read.
    unsafe { std::slice::from_raw_parts((&raw const *value).cast(), size_of::<T>()) }
}

/// The bytes of a struct, to be changed.
pub(crate) fn bytes_mut<T: Plain>(value: &mut T) -> &mut [u8] {
    // SAFETY: as above, and every pattern of bits is a value.
    unsafe { std::slice::from_raw_parts_mut((&raw mut *value).cast(), size_of::<T>()) }
}

/// A struct full of a byte that no call writes.
pub(crate) fn filled<T: Plain>(byte: u8) -> T {
    let mut value = T::ZERO;
    bytes_mut(&mut value).fill(byte);
    value
}

/// Room for structs of a length that the type does not have, aligned for any of them.
pub(crate) struct Room {
    words: Vec<u64>,
}

impl Room {
    /// `length` bytes, and as many again behind them, all of one value.
    pub(crate) fn new(length: usize, byte: u8) -> Room {
        Room { words: vec![u64::from_ne_bytes([byte; 8]); length.div_ceil(8) * 2] }
    }

    pub(crate) fn pointer<T>(&mut self) -> *mut T {
        self.words.as_mut_ptr().cast()
    }

    /// Its bytes.
    pub(crate) fn bytes(&mut self) -> &mut [u8] {
        bytes_of_words(&mut self.words)
    }

    /// The beginning of a struct copied in, and its size set.
    pub(crate) fn put<T: Plain>(&mut self, value: &T, length: usize) {
        let from = bytes(value);
        let length = length.min(from.len());
        self.bytes()[..length].copy_from_slice(&from[..length]);
    }

    pub(crate) fn set_size(&mut self, size: u32) {
        self.bytes()[..4].copy_from_slice(&size.to_ne_bytes());
    }
}

fn bytes_of_words(words: &mut [u64]) -> &mut [u8] {
    // SAFETY: words are bytes.
    unsafe { std::slice::from_raw_parts_mut(words.as_mut_ptr().cast(), words.len() * 8) }
}
