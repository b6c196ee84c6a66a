//! A C caller's memory: each struct in a piece of its own, exactly as long as it says, so that one byte too far is
//! seen by the sanitizer of addresses.

use std::alloc::{Layout, alloc, dealloc};

use tablerig::doors::c::border::mirror::Plain;

/// What a byte is that nobody wrote.
pub(crate) const EMPTY: u8 = 0xa5;

/// A piece of memory, aligned for every struct.
pub(crate) struct Piece {
    at: *mut u8,
    layout: Layout,
}

impl Piece {
    /// As many bytes, all unwritten.
    pub(crate) fn new(bytes: usize) -> Piece {
        let layout = Layout::from_size_align(bytes.max(1), 16).expect("few bytes");
        // SAFETY: the layout is not empty.
        let at = unsafe { alloc(layout) };
        assert!(!at.is_null());
        // SAFETY: as many bytes were just taken.
        unsafe { at.write_bytes(EMPTY, layout.size()) };
        Piece { at, layout }
    }

    /// A struct's beginning, and behind its end as many bytes of `tail` as it takes.
    pub(crate) fn of<T: Plain>(value: &T, bytes: usize, tail: u8) -> Piece {
        let mut piece = Piece::new(bytes);
        let own = plain(value);
        let known = own.len().min(bytes);
        piece.bytes_mut()[..known].copy_from_slice(&own[..known]);
        piece.bytes_mut()[known..].fill(tail);
        piece
    }

    pub(crate) fn pointer<T>(&self) -> *mut T {
        self.at.cast()
    }

    pub(crate) fn bytes(&self) -> &[u8] {
        // SAFETY: all of it was written.
        unsafe { std::slice::from_raw_parts(self.at, self.layout.size()) }
    }

    pub(crate) fn bytes_mut(&mut self) -> &mut [u8] {
        // SAFETY: as above, and there is no other reference.
        unsafe { std::slice::from_raw_parts_mut(self.at, self.layout.size()) }
    }

    pub(crate) fn unwritten(&self) -> bool {
        self.bytes().iter().all(|byte| *byte == EMPTY)
    }
}

impl Drop for Piece {
    fn drop(&mut self) {
        // SAFETY: taken with this layout.
        unsafe { dealloc(self.at, self.layout) }
    }
}

/// The bytes of a struct; it has no padding.
pub(crate) fn plain<T: Plain>(value: &T) -> &[u8] {
    // SAFETY: plain memory has no padding, so every byte may be read.
    unsafe { std::slice::from_raw_parts((&raw const *value).cast(), size_of::<T>()) }
}

/// A struct out of bytes of its length.
pub(crate) fn from_bytes<T: Plain>(bytes: &[u8]) -> T {
    assert_eq!(bytes.len(), size_of::<T>());
    // SAFETY: as many bytes, of which every pattern is a value; they need not be aligned.
    unsafe { bytes.as_ptr().cast::<T>().read_unaligned() }
}
