//! Texts out of a file on their way to a terminal: what would steer it is shown instead of sent.

use std::prelude::rust_2024::*;

use crate::draw::steering::turns_writing;

/// The text with each control character, and each that turns the direction of writing, replaced by a sign for it;
/// line ends stay.
pub(crate) fn shown(text: &str) -> String {
    text.chars().map(sign).collect()
}

fn sign(c: char) -> char {
    match c {
        '\n' => c,
        // The control pictures stand in the order of what they picture.
        '\0'..='\u{1f}' => char::from_u32(0x2400 + u32::from(c)).unwrap_or(char::REPLACEMENT_CHARACTER),
        '\u{7f}' => '\u{2421}',
        '\u{80}'..='\u{9f}' => char::REPLACEMENT_CHARACTER,
        _ if turns_writing(c) => char::REPLACEMENT_CHARACTER,
        _ => c,
    }
}
