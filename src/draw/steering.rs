//! Characters that are not seen but steer what is: controls, and those that turn the direction of writing. In a
//! name they would turn the figures after it as well, `155` to `551`, so a sign for them is shown.

/// Whether the character turns the direction of writing.
pub(crate) const fn turns_writing(c: char) -> bool {
    matches!(
        c,
        '\u{61c}' | '\u{200e}' | '\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}'
    )
}

/// The character as it may stand in a page: U+FFFD for one that steers or that HTML and XML have no place for.
pub(crate) fn seen(c: char) -> char {
    match c {
        '\n' | '\t' => c,
        '\u{FFFE}' | '\u{FFFF}' => char::REPLACEMENT_CHARACTER,
        _ if c.is_control() || turns_writing(c) => char::REPLACEMENT_CHARACTER,
        _ => c,
    }
}
