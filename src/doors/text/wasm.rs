//! The text door for the ES module: the request is written into memory that is taken for it, and the reply is
//! read out of memory that is given back after it.

use std::alloc::{Layout, alloc, dealloc};
use std::prelude::rust_2024::*;

use super::answer_to_bytes;

/// A reply begins with its length in four bytes, the lowest first.
const HEAD: usize = 4;

fn layout(bytes: usize) -> Option<Layout> {
    Layout::from_size_align(bytes.max(1), HEAD).ok()
}

/// Takes memory for a request; null where there is none.
#[unsafe(no_mangle)]
extern "C" fn tablerig_text_take(bytes: usize) -> *mut u8 {
    match layout(bytes) {
        // SAFETY: the layout is not empty.
        Some(layout) => unsafe { alloc(layout) },
        None => core::ptr::null_mut(),
    }
}

/// Gives memory back: a request's, or, with the head counted, a reply's.
///
/// # Safety
/// It was taken with that many bytes and is not used any more.
#[unsafe(no_mangle)]
unsafe extern "C" fn tablerig_text_give(place: *mut u8, bytes: usize) {
    if let (false, Some(layout)) = (place.is_null(), layout(bytes)) {
        // SAFETY: the caller's word.
        unsafe { dealloc(place, layout) };
    }
}

/// Answers the request: the reply's place, its length in front of it; null where there is no memory for it.
///
/// # Safety
/// There are that many bytes.
#[unsafe(no_mangle)]
unsafe extern "C" fn tablerig_text_reply(request: *const u8, bytes: usize) -> *mut u8 {
    // SAFETY: the caller's word.
    let request = unsafe { core::slice::from_raw_parts(request, bytes) };
    let text = answer_to_bytes(request);
    let reply = tablerig_text_take(HEAD + text.len());
    if !reply.is_null() {
        // SAFETY: as much was taken.
        unsafe {
            reply.cast::<u32>().write(text.len() as u32);
            reply.add(HEAD).copy_from(text.as_ptr(), text.len());
        }
    }
    reply
}
