//! Texts as C reads them: the library's own sentences, static, and one for every number.

use std::ptr;

use tablerig::advice::AdviceReason;
use tablerig::caution::overhead::{OVERHEAD_CAUTIONS, Removal};
use tablerig::caution::{CautionCode, Level};
use tablerig::doors::c::advice::tablerig_advice_reason_text;
use tablerig::doors::c::border::mirror::Plain;
use tablerig::doors::c::caution::{
    tablerig_caution_text, tablerig_caution_unit, tablerig_level_text, tablerig_overhead_caution,
    tablerig_removal_text,
};
use tablerig::doors::c::range::{Range, tablerig_range_at, tablerig_range_count};
use tablerig::doors::c::status::{Fault, Status};
use tablerig::doors::c::text::tablerig_status_text;
use tablerig::doors::c::version::{
    VERSION, VERSION_MAJOR, VERSION_MINOR, VERSION_PATCH, tablerig_version, tablerig_version_text,
};
use tablerig::fault::FaultKind;
use tablerig::range;

use crate::set::{field, text};

const STRANGE: [i32; 8] = [i32::MIN, -1, 7, 99, 100, 999, 4711, i32::MAX];

#[test]
fn every_status_has_a_phrase_of_its_own() {
    let own = [
        Status::Ok,
        Status::NullPointer,
        Status::Misaligned,
        Status::WrongSize,
        Status::UnknownField,
        Status::Overlapping,
        Status::UnknownCode,
        Status::BehindCamera,
        Status::NotMet,
        Status::NoStiffness,
        Status::NoStack,
        Status::Internal,
    ];
    let mut phrases: Vec<&str> =
        own.iter().map(|status| text(tablerig_status_text(*status as i32))).collect();
    for kind in FaultKind::ALL {
        let phrase = text(tablerig_status_text(*kind as i32));
        assert_eq!(phrase, kind.sentence());
        phrases.push(phrase);
    }
    let count = phrases.len();
    for number in STRANGE {
        phrases.push(text(tablerig_status_text(number)));
    }
    phrases.sort_unstable();
    phrases.dedup();
    assert_eq!(phrases.len(), count + 1, "one phrase for all that is no status");
    assert!(phrases.iter().all(|phrase| !phrase.is_empty()));
}

#[test]
fn sentences_are_the_library_s() {
    for code in CautionCode::ALL {
        assert_eq!(text(tablerig_caution_text(*code as i32)), code.sentence());
        assert_eq!(text(tablerig_caution_unit(*code as i32)), code.unit());
    }
    for reason in AdviceReason::ALL {
        assert_eq!(text(tablerig_advice_reason_text(*reason as i32)), reason.sentence());
    }
    for removal in Removal::ALL {
        assert_eq!(text(tablerig_removal_text(*removal as i32)), removal.sentence());
    }
    let words = [Level::Note, Level::Warn, Level::Stop].map(|level| text(tablerig_level_text(level as i32)));
    assert_eq!(words, ["note", "warn", "stop"]);
    for number in STRANGE {
        for sentence in [
            tablerig_caution_text(number),
            tablerig_advice_reason_text(if number == 7 { 99 } else { number }),
            tablerig_removal_text(number),
            tablerig_level_text(number),
        ] {
            assert!(text(sentence).contains("no "), "{}", text(sentence));
        }
        assert_eq!(text(tablerig_caution_unit(number)), "");
    }
}

#[test]
fn the_cautions_for_overhead_work_end_with_null() {
    for (index, sentence) in OVERHEAD_CAUTIONS.iter().enumerate() {
        assert_eq!(text(tablerig_overhead_caution(index as u32)), *sentence);
    }
    for past in [OVERHEAD_CAUTIONS.len() as u32, 1000, u32::MAX] {
        assert!(tablerig_overhead_caution(past).is_null());
    }
}

#[test]
fn the_table_of_ranges_can_be_read_row_by_row() {
    for index in 0..tablerig_range_count() {
        let mut row = Range::ZERO;
        // SAFETY: a place for a row.
        let status = unsafe { tablerig_range_at(index, &raw mut row, ptr::null_mut()) };
        let expected = &range::ALL[index as usize];
        assert_eq!(status, 0);
        assert_eq!((row.least, row.most), (expected.least, expected.most));
        let told = [row.field, row.unit, row.meaning].map(text);
        assert_eq!(told, [expected.field, expected.unit, expected.meaning]);
    }
    for past in [tablerig_range_count(), u32::MAX] {
        let mut row = Range::ZERO;
        let mut fault = Fault::ZERO;
        // SAFETY: a place for a row and a fault.
        let status = unsafe { tablerig_range_at(past, &raw mut row, &raw mut fault) };
        assert_eq!((status, field(&fault)), (Status::UnknownCode as i32, "index"));
        assert!(row.field.is_null());
    }
}

#[test]
fn the_version_is_the_package_s() {
    assert_eq!(text(tablerig_version_text()), env!("CARGO_PKG_VERSION"));
    let numbers = [VERSION_MAJOR, VERSION_MINOR, VERSION_PATCH].map(|number| number.to_string());
    assert_eq!(numbers.join("."), env!("CARGO_PKG_VERSION"));
    assert_eq!(tablerig_version(), VERSION);
}
