//! How much room a text takes.
//!
//! The drawing names no face, only `sans-serif`, so a text must fit in whichever the reader has. Widths
//! are those of DejaVu Sans, among the widest in use, read from its files in thousandths of the size and
//! rounded up; narrower faces leave more room.

use alloc::string::String;
use alloc::vec::Vec;

/// Advance widths from U+0020 to U+007E.
#[rustfmt::skip]
const REGULAR: [u16; 95] = [
    318, 401, 460, 838, 637, 951, 780, 275, 391, 391, 500, 838, 318, 361, 318, 337,
    637, 637, 637, 637, 637, 637, 637, 637, 637, 637, 337, 337, 838, 838, 838, 531,
    1000, 685, 687, 699, 771, 632, 576, 775, 752, 295, 295, 656, 558, 863, 749, 788,
    604, 788, 695, 635, 611, 732, 685, 989, 686, 611, 686, 391, 337, 391, 838, 500,
    500, 613, 635, 550, 635, 616, 353, 635, 634, 278, 278, 580, 278, 975, 634, 612,
    635, 635, 412, 521, 393, 634, 592, 818, 592, 592, 525, 637, 337, 637, 838,
];
#[rustfmt::skip]
const BOLD: [u16; 95] = [
    349, 457, 521, 838, 696, 1002, 873, 307, 458, 458, 523, 838, 380, 416, 380, 366,
    696, 696, 696, 696, 696, 696, 696, 696, 696, 696, 400, 400, 838, 838, 838, 581,
    1000, 774, 763, 734, 831, 684, 684, 821, 837, 373, 373, 775, 638, 996, 837, 851,
    733, 851, 771, 721, 683, 813, 774, 1104, 771, 725, 726, 458, 366, 458, 838, 500,
    500, 675, 716, 593, 716, 679, 436, 716, 712, 343, 343, 666, 343, 1042, 712, 688,
    716, 716, 494, 596, 479, 712, 652, 924, 646, 652, 583, 712, 366, 712, 838,
];

/// Size of a value.
pub(super) const VALUE_SIZE: f64 = 14.0;
/// Size of a name, and of notes.
pub(super) const NAME_SIZE: f64 = 11.0;
/// Size of the drawing's heading and of the text on a dimension line.
pub(super) const HEADING_SIZE: f64 = 13.0;

/// The width of a text, at most.
pub(super) fn width(text: &str, size: f64, bold: bool) -> f64 {
    let table = if bold { &BOLD } else { &REGULAR };
    let mut thousandths = 0_u32;
    for character in text.chars() {
        let character = if character == '\u{A0}' { ' ' } else { character };
        let place = (character as u32).checked_sub(0x20).and_then(|place| usize::try_from(place).ok());
        let known = place.and_then(|place| table.get(place));
        // Outside ASCII a full square: right for Chinese and Japanese, generous for the rest.
        thousandths += known.map_or(1000, |width| u32::from(*width));
    }
    f64::from(thousandths) * size / 1000.0
}

/// The text, ended early by an ellipsis where it would be wider than `most`.
pub(super) fn shortened(text: &str, size: f64, bold: bool, most: f64) -> String {
    let mut short: String = text.into();
    while width(&short, size, bold) > most && !short.is_empty() {
        while short.ends_with(['…', ' ']) {
            short.pop();
        }
        short.pop();
        short.push('…');
        if short == "…" {
            break;
        }
    }
    short
}

/// The text in lines of at most that width, broken between words; a no-break space does not break.
pub(super) fn lines(text: &str, size: f64, most: f64) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    let mut line = String::new();
    for word in text.split(' ').filter(|word| !word.is_empty()) {
        let room = width(&line, size, false) + width(" ", size, false) + width(word, size, false);
        if !line.is_empty() && room > most {
            lines.push(core::mem::take(&mut line));
        }
        if !line.is_empty() {
            line.push(' ');
        }
        line.push_str(word);
    }
    if !line.is_empty() {
        lines.push(line);
    }
    lines
}
