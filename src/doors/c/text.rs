//! Sentences and names as C reads them, all static.

use core::ffi::c_char;

use super::border::argument;
use super::status::Status;
use crate::advice::AdviceReason;
use crate::caution::overhead::{OVERHEAD_CAUTIONS, Removal};
use crate::caution::{CautionCode, Level};
use crate::fault::FaultKind;
use crate::range;

/// Texts laid end to end, each ended by a NUL.
struct Texts<const BYTES: usize, const COUNT: usize> {
    bytes: [u8; BYTES],
    starts: [usize; COUNT],
}

const fn bytes_of(texts: &[&str]) -> usize {
    let mut bytes = 0;
    let mut at = 0;
    while at < texts.len() {
        bytes += texts[at].len() + 1;
        at += 1;
    }
    bytes
}

const fn laid<const BYTES: usize, const COUNT: usize>(texts: &[&str; COUNT]) -> Texts<BYTES, COUNT> {
    let mut laid = Texts { bytes: [0; BYTES], starts: [0; COUNT] };
    let mut end = 0;
    let mut at = 0;
    while at < COUNT {
        laid.starts[at] = end;
        let text = texts[at].as_bytes();
        let mut byte = 0;
        while byte < text.len() {
            assert!(text[byte] != 0, "a NUL inside a text");
            laid.bytes[end] = text[byte];
            end += 1;
            byte += 1;
        }
        end += 1;
        at += 1;
    }
    laid
}

impl<const BYTES: usize, const COUNT: usize> Texts<BYTES, COUNT> {
    fn at(&self, index: usize) -> Option<*const c_char> {
        let start = self.starts.get(index)?;
        Some(self.bytes.as_ptr().wrapping_add(*start).cast())
    }

    /// The text of the entry that `is` picks, or the last one, which says that there is none.
    fn of<T>(&self, entries: &[T], is: impl Fn(&T) -> bool) -> *const c_char {
        let index = entries.iter().position(is).unwrap_or(COUNT.wrapping_sub(1));
        self.at(index).unwrap_or(c"".as_ptr())
    }
}

/// `texts!(NAME, entries, |entry| text, "what is said of others")`.
macro_rules! texts {
    ($name:ident, $entries:expr, |$entry:ident| $text:expr, $other:literal) => {
        static $name: Texts<{ bytes_of(&$name::LIST) }, { $name::COUNT }> = laid(&$name::LIST);

        #[allow(non_snake_case, reason = "belongs to the static of this name")]
        mod $name {
            #[allow(unused_imports, reason = "not every list needs all")]
            use super::*;

            pub(super) const COUNT: usize = $entries.len() + 1;
            pub(super) const LIST: [&str; COUNT] = {
                let mut list = [$other; COUNT];
                let mut at = 0;
                while at + 1 < COUNT {
                    let $entry = $entries[at];
                    list[at] = $text;
                    at += 1;
                }
                list
            };
        }
    };
}

/// The door's own statuses, said of a field or an argument.
const OWN: &[(Status, &str)] = &[
    (Status::Ok, "is done"),
    (Status::NullPointer, "is a null pointer"),
    (Status::Misaligned, "is a pointer that is not aligned for its type"),
    (Status::WrongSize, "is a size that cannot be"),
    (Status::UnknownField, "is set, and this version of the library does not know it"),
    (Status::Overlapping, "overlaps an output or is an output that overlaps an input"),
    (Status::UnknownCode, "is not one of the numbers that it may be"),
    (Status::BehindCamera, "lies at or behind the entrance pupil"),
    (Status::NotMet, "is not met by the line of sight"),
    (Status::NoStiffness, "is not known, so the sag is not either"),
    (Status::NoStack, "reaches the lens: no focus stack holds it"),
    (Status::Internal, "would not be a number"),
];

texts!(KINDS, FaultKind::ALL, |kind| kind.sentence(), "is refused for a reason that has no number");
texts!(OWN_STATUSES, OWN, |entry| entry.1, "is refused with a number that is no status of this version");
texts!(CAUTIONS, CautionCode::ALL, |code| code.sentence(), "This number is no caution of this version.");
texts!(UNITS, CautionCode::ALL, |code| code.unit(), "");
texts!(REASONS, AdviceReason::ALL, |reason| reason.sentence(), "This number is no reason of this version.");
texts!(REMOVALS, Removal::ALL, |removal| removal.sentence(), "This number is no order of this version.");
texts!(OVERHEAD, OVERHEAD_CAUTIONS, |sentence| sentence, "");
texts!(FIELDS, range::ALL, |range| range.field, "?");
texts!(FIELD_UNITS, range::ALL, |range| range.unit, "");
texts!(MEANINGS, range::ALL, |range| range.meaning, "");
texts!(ARGUMENTS, argument::ALL, |range| range.field, "?");

/// The fields that share one row of the table of ranges.
const WALL_FIELDS: &[&str] = &["bay.left_mm", "bay.right_mm", "bay.front_mm", "bay.back_mm"];
texts!(WALLS, WALL_FIELDS, |field| field, "?");

/// The name of a field, as C reads it; "?" for one that is in no table.
pub(crate) fn field(name: &str) -> *const c_char {
    if argument::ALL.iter().any(|range| range.field == name) {
        ARGUMENTS.of(argument::ALL, |range| range.field == name)
    } else if WALL_FIELDS.contains(&name) {
        WALLS.of(WALL_FIELDS, |field| *field == name)
    } else {
        FIELDS.of(range::ALL, |range| range.field == name)
    }
}

/// Name, unit and meaning of one row of the table of ranges.
pub(crate) fn range_row(index: usize) -> Option<[*const c_char; 3]> {
    if index < range::ALL.len() {
        Some([FIELDS.at(index)?, FIELD_UNITS.at(index)?, MEANINGS.at(index)?])
    } else {
        None
    }
}

pub(crate) fn caution(code: i32) -> *const c_char {
    CAUTIONS.of(CautionCode::ALL, |entry| *entry as i32 == code)
}

pub(crate) fn caution_unit(code: i32) -> *const c_char {
    UNITS.of(CautionCode::ALL, |entry| *entry as i32 == code)
}

pub(crate) fn level(level: i32) -> *const c_char {
    let word = if level == Level::Note as i32 {
        c"note"
    } else if level == Level::Warn as i32 {
        c"warn"
    } else if level == Level::Stop as i32 {
        c"stop"
    } else {
        c"no level of this version"
    };
    word.as_ptr()
}

pub(crate) fn reason(reason: i32) -> *const c_char {
    REASONS.of(AdviceReason::ALL, |entry| *entry as i32 == reason)
}

pub(crate) fn removal(removal: i32) -> *const c_char {
    REMOVALS.of(Removal::ALL, |entry| *entry as i32 == removal)
}

pub(crate) fn overhead_caution(index: u32) -> *const c_char {
    if (index as usize) < OVERHEAD_CAUTIONS.len() {
        OVERHEAD.at(index as usize).unwrap_or(core::ptr::null())
    } else {
        core::ptr::null()
    }
}

/// One phrase for a TablerigStatus, to be read after a fault's field: "lens.focal_length_mm" "is too small".
/// Never null: for any other number a phrase that says so.
#[unsafe(no_mangle)]
pub extern "C" fn tablerig_status_text(status: i32) -> *const c_char {
    if FaultKind::ALL.iter().any(|kind| *kind as i32 == status) {
        KINDS.of(FaultKind::ALL, |kind| *kind as i32 == status)
    } else {
        OWN_STATUSES.of(OWN, |entry| entry.0 as i32 == status)
    }
}
