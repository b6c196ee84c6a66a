//! The printed sheet: whole, to be trusted with any text, and saying what the plan says.

mod pages;
mod texts;

use scraper::Html;
use tablerig::draw::LengthUnit;
use tablerig::shootfile::whole::Whole;
use tablerig::shootfile::{DEMO, Form, ShootFile, read};

/// A shoot file's text, read.
fn shoot(text: &str) -> ShootFile {
    read(text, Form::Toml).unwrap_or_else(|problems| panic!("{problems:?}"))
}

fn demo() -> ShootFile {
    shoot(DEMO)
}

/// The sheet of a file.
fn sheet(file: &ShootFile, unit: LengthUnit) -> String {
    Whole::new(file, &[]).sheet(unit, None).expect("a file that was read has an order").expect("it has shots")
}

/// Parsed as a browser does, which must find nothing to mend.
fn parsed(html: &str) -> Html {
    let parsed = Html::parse_document(html);
    assert!(parsed.errors.is_empty(), "{:?}", parsed.errors);
    parsed
}
