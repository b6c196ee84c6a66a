//! The text door for C: `tablerig_text_answer`, declared in `include/tablerig_text.h`.

use core::ffi::c_char;
use core::slice;

use super::answer_to_bytes;

/// The answer is in the buffer.
pub const TEXT_OK: i32 = 0;
/// A pointer is null that must not be.
pub const TEXT_NULL_POINTER: i32 = 1;
/// More bytes than memory has.
pub const TEXT_WRONG_SIZE: i32 = 3;
/// The buffer is too small: nothing was written to it, and `answer_bytes` says how much room it takes.
pub const TEXT_NO_ROOM: i32 = 51;

/// Answers a request: JSON in, JSON out.
///
/// `request` is UTF-8 of `request_bytes` bytes; it need not end with a NUL. The answer is written to `answer`,
/// which has room for `answer_room` bytes, with a NUL after it, and `*answer_bytes` becomes its length without
/// that NUL. Where the room is too small nothing is written but `*answer_bytes`, and TABLERIG_TEXT_NO_ROOM is
/// returned; `answer` may then be null and `answer_room` 0, to ask for the size. The answer to the same request is
/// always the same, and is computed anew in each call: a plan takes about 12 KB, all drawings of it about
/// 100 KB.
///
/// What is wrong with the request is said in the answer, not in the status: `{"ok": ...}` or
/// `{"mistakes": [...]}`. The function has no state and may be called from any threads at once. Inside it
/// allocates and frees; nothing is left behind for the caller to free.
///
/// # Safety
/// There must be as much memory behind the pointers as is said.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_text_answer(
    request: *const c_char,
    request_bytes: usize,
    answer: *mut c_char,
    answer_room: usize,
    answer_bytes: *mut usize,
) -> i32 {
    if request.is_null() || answer_bytes.is_null() || (answer.is_null() && answer_room > 0) {
        return TEXT_NULL_POINTER;
    }
    if request_bytes > isize::MAX as usize || answer_room > isize::MAX as usize {
        return TEXT_WRONG_SIZE;
    }
    // SAFETY: not null, no longer than memory, and the caller's word that it is there. What was asked is read
    // to its end before anything is written, so that the two may even overlap.
    let request = unsafe { slice::from_raw_parts(request.cast::<u8>(), request_bytes) };
    let text = answer_to_bytes(request);
    // SAFETY: as above.
    unsafe { answer_bytes.write_unaligned(text.len()) };
    if text.len() >= answer_room {
        return TEXT_NO_ROOM;
    }
    // SAFETY: the buffer has more room than the text has bytes.
    unsafe {
        answer.cast::<u8>().copy_from(text.as_ptr(), text.len());
        answer.add(text.len()).write(0);
    }
    TEXT_OK
}
