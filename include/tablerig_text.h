/*
 * tablerig_text.h - the text door of tablerig: JSON in, JSON out, for hosts that prefer text to structs
 *
 * Generated from src/doors/text/c_entry.rs; not to be edited. MIT license. In a library that was built with
 * the feature text-door.
 *
 * A camera on an arm over a table can hurt someone. Every figure is computed: the makers' ratings of stand,
 * boom, clamp and head rule over it, local codes apply, a qualified rigger decides. Show the cautions that come
 * with an answer beside its numbers.
 */

#ifndef TABLERIG_TEXT_H
#define TABLERIG_TEXT_H

#include <stddef.h>
#include <stdint.h>

/**
 * The answer is in the buffer.
 */
#define TABLERIG_TEXT_OK 0

/**
 * A pointer is null that must not be.
 */
#define TABLERIG_TEXT_NULL_POINTER 1

/**
 * More bytes than memory has.
 */
#define TABLERIG_TEXT_WRONG_SIZE 3

/**
 * The buffer is too small: nothing was written to it, and `answer_bytes` says how much room it takes.
 */
#define TABLERIG_TEXT_NO_ROOM 51

#ifdef __cplusplus
extern "C" {
#endif // __cplusplus

/**
 * Answers a request: JSON in, JSON out.
 *
 * `request` is UTF-8 of `request_bytes` bytes; it need not end with a NUL. The answer is written to `answer`,
 * which has room for `answer_room` bytes, with a NUL after it, and `*answer_bytes` becomes its length without
 * that NUL. Where the room is too small nothing is written but `*answer_bytes`, and TABLERIG_TEXT_NO_ROOM is
 * returned; `answer` may then be null and `answer_room` 0, to ask for the size. The answer to the same request is
 * always the same, and is computed anew in each call: a plan takes about 12 KB, all drawings of it about
 * 100 KB.
 *
 * What is wrong with the request is said in the answer, not in the status: `{"ok": ...}` or
 * `{"mistakes": [...]}`. The function has no state and may be called from any threads at once. Inside it
 * allocates and frees; nothing is left behind for the caller to free.
 *
 * There must be as much memory behind the pointers as is said.
 */
int32_t tablerig_text_answer(const char *request,
                             size_t request_bytes,
                             char *answer,
                             size_t answer_room,
                             size_t *answer_bytes);

#ifdef __cplusplus
}  // extern "C"
#endif  // __cplusplus

#endif  /* TABLERIG_TEXT_H */
