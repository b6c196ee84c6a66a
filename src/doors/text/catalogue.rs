//! What there is to ask, and every name and number that can come up.

use std::prelude::rust_2024::*;

use serde::Serialize;

use super::asked::{Asked, KEYS};
use super::refusal::Refusal;
use super::{Answer, How, Operation, operations, told};
use crate::advice::AdviceReason;
use crate::caution::CautionCode;
use crate::caution::overhead::{OVERHEAD_CAUTIONS, Removal};
use crate::fault::FaultKind;
use crate::range;
use crate::shoot::change::ChangeKind;
use crate::shootfile::field::{Standing, Takes};
use crate::shootfile::listing::{Row, row, sections};
use crate::shootfile::problem::{Problem, ProblemKind};
use crate::shootfile::suggest;

pub(super) static OPERATIONS: &[Operation] = &[
    Operation {
        name: "version",
        meaning: "The version of the library.",
        takes: &[],
        answers: "Version",
        answer: How::Asked(version),
    },
    Operation {
        name: "operations",
        meaning: "Everything that can be asked, with the keys that each takes.",
        takes: &[],
        answers: "OperationList",
        answer: How::Asked(all),
    },
    Operation {
        name: "fields",
        meaning: "Every key of a shoot file, with its range or kind, and what it is when left out.",
        takes: &[("kind", Standing::Otherwise("all kinds"))],
        answers: "FieldList",
        answer: How::Asked(fields),
    },
    Operation {
        name: "ranges",
        meaning: "Every quantity that comes in, with its unit, least and most.",
        takes: &[],
        answers: "RangeList",
        answer: How::Asked(ranges),
    },
    Operation {
        name: "codes",
        meaning: "Every code that can come out, with its number and its sentence, and the usual cautions for overhead work.",
        takes: &[],
        answers: "Codes",
        answer: How::Asked(codes),
    },
];

/// The version of the library.
#[derive(Serialize)]
pub(super) struct Version {
    version: &'static str,
}

fn version(_: &Asked) -> Answer {
    told(&Version { version: env!("CARGO_PKG_VERSION") })
}

/// Whether a key must be there.
#[derive(Clone, Copy, Serialize)]
#[serde(rename_all = "snake_case")]
pub(super) enum Needed {
    /// It must.
    Required,
    /// It may be left out.
    Optional,
    /// It goes together with others, or instead of them.
    OneOf,
}

/// What sort of value a key takes.
#[derive(Clone, Copy, Serialize)]
#[serde(rename_all = "snake_case")]
pub(super) enum Sort {
    /// A number in the key's unit, or a text with its own unit.
    Number,
    /// A whole number.
    Whole,
    /// One of some words.
    Word,
    /// True or false.
    Flag,
    /// A text.
    Text,
    /// Two numbers such as `"4:5"`.
    Aspect,
    /// The name of something of the shoot.
    Name,
    /// A table, or a list of them.
    Table,
    /// The name of something of the shoot, or a table.
    NameOrTable,
    /// What its own words say.
    Own,
}

/// A key, and what it takes.
#[derive(Serialize)]
pub(super) struct ListedKey {
    key: &'static str,
    sort: Sort,
    /// The words, where it is one of some.
    words: Option<&'static [&'static str]>,
    /// The kind of thing that is named.
    names: Option<&'static str>,
    /// The name of its type in TypeScript; `None` in a shoot file.
    typed: Option<&'static str>,
    /// What may be written, in few words.
    allowed: String,
    /// The unit of a bare number.
    unit: Option<&'static str>,
    least: Option<f64>,
    #[serde(serialize_with = "most")]
    most: Option<f64>,
    standing: Needed,
    /// What it is when left out, or how it goes with the others.
    otherwise: Option<&'static str>,
    meaning: &'static str,
}

fn most<S: serde::Serializer>(value: &Option<f64>, to: S) -> Result<S::Ok, S::Error> {
    match value {
        Some(value) => crate::number::number_or_infinite(value, to),
        None => to.serialize_none(),
    }
}

fn listed_key(row: Row, typed: Option<&'static str>) -> ListedKey {
    let (standing, otherwise) = match row.standing {
        Standing::Required => (Needed::Required, None),
        Standing::Otherwise(value) => (Needed::Optional, Some(value)),
        Standing::Among(how) => (Needed::OneOf, Some(how)),
    };
    let (sort, words, names) = match row.takes {
        Takes::Number(_) => (Sort::Number, None, None),
        Takes::Whole(_) => (Sort::Whole, None, None),
        Takes::Choice(words) => (Sort::Word, Some(words), None),
        Takes::Flag => (Sort::Flag, None, None),
        Takes::Text => (Sort::Text, None, None),
        Takes::Aspect(_) => (Sort::Aspect, None, None),
        Takes::Reference(kind) => (Sort::Name, None, Some(kind)),
        Takes::Part => (Sort::Table, None, None),
        Takes::Own(_) => (Sort::Own, None, None),
        Takes::ReferenceOrPart(kind) => (Sort::NameOrTable, None, Some(kind)),
    };
    let Row { key, allowed, unit, least, most, meaning, .. } = row;
    ListedKey { key, sort, words, names, typed, allowed, unit, least, most, standing, otherwise, meaning }
}

/// An operation, with the keys it takes besides its name.
#[derive(Serialize)]
pub(super) struct ListedOperation {
    name: &'static str,
    meaning: &'static str,
    keys: Vec<ListedKey>,
    /// The name of the answer's type.
    answers: &'static str,
}

/// All operations.
#[derive(Serialize)]
pub(super) struct OperationList {
    operations: Vec<ListedOperation>,
}

fn all(_: &Asked) -> Answer {
    let one = |operation: &'static Operation| {
        let keys = operation.takes.iter().filter_map(|(key, standing)| {
            let known = KEYS.iter().find(|known| known.field.slot.key == *key)?;
            Some(listed_key(Row { standing: *standing, ..row(&known.field.slot) }, Some(known.typed)))
        });
        let Operation { name, meaning, answers, .. } = operation;
        ListedOperation { name, meaning, keys: keys.collect(), answers }
    };
    told(&OperationList { operations: operations().map(one).collect() })
}

/// A table of a shoot file.
#[derive(Serialize)]
pub(super) struct FieldTable {
    kind: &'static str,
    /// Its heading in TOML.
    heading: &'static str,
    keys: Vec<ListedKey>,
}

/// The tables of a shoot file.
#[derive(Serialize)]
pub(super) struct FieldList {
    sections: Vec<FieldTable>,
}

fn fields(asked: &Asked) -> Answer {
    let mut tables = sections();
    if let Some(kind) = &asked.kind {
        let mut kinds: Vec<&str> = tables.iter().map(|table| table.kind).collect();
        kinds.dedup();
        if !kinds.contains(&kind.text.as_str()) {
            let title = std::format!("there is no kind \"{}\"", kind.text);
            let problem = Problem::general(ProblemKind::UnknownWord, title);
            let problem = suggest::advise(problem, &kind.text, &kinds, "there are");
            return Err(Refusal::one(problem));
        }
        tables.retain(|table| table.kind == kind.text);
    }
    let table = |section: crate::shootfile::listing::Section| FieldTable {
        kind: section.kind,
        heading: section.heading,
        keys: section.rows.into_iter().map(|row| listed_key(row, None)).collect(),
    };
    told(&FieldList { sections: tables.into_iter().map(table).collect() })
}

/// A quantity that comes in.
#[derive(Serialize)]
pub(super) struct ListedRange {
    /// Its name with what it belongs to.
    field: &'static str,
    unit: &'static str,
    #[serde(serialize_with = "crate::number::number_or_infinite")]
    least: f64,
    #[serde(serialize_with = "crate::number::number_or_infinite")]
    most: f64,
    meaning: &'static str,
}

/// Every quantity that comes in.
#[derive(Serialize)]
pub(super) struct RangeList {
    ranges: Vec<ListedRange>,
}

fn ranges(_: &Asked) -> Answer {
    let one = |range: &range::Range| {
        let range::Range { field, unit, least, most, meaning } = *range;
        ListedRange { field, unit, least, most, meaning }
    };
    told(&RangeList { ranges: range::ALL.iter().map(one).collect() })
}

/// A code with its number and what it means.
#[derive(Serialize)]
pub(super) struct Code<T> {
    code: T,
    number: i32,
    /// The unit of value and limit, for cautions.
    unit: Option<&'static str>,
    sentence: &'static str,
}

/// Every code that can come out.
#[derive(Serialize)]
pub(super) struct Codes {
    cautions: Vec<Code<CautionCode>>,
    faults: Vec<Code<FaultKind>>,
    advice_reasons: Vec<Code<AdviceReason>>,
    removals: Vec<Code<Removal>>,
    changes: Vec<Code<ChangeKind>>,
    /// What goes with every load above a table or a person.
    usual_cautions: [&'static str; 8],
}

fn codes(_: &Asked) -> Answer {
    told(&Codes {
        cautions: CautionCode::ALL
            .iter()
            .map(|code| Code {
                code: *code,
                number: *code as i32,
                unit: Some(code.unit()),
                sentence: code.sentence(),
            })
            .collect(),
        faults: FaultKind::ALL
            .iter()
            .map(|code| Code { code: *code, number: *code as i32, unit: None, sentence: code.sentence() })
            .collect(),
        advice_reasons: AdviceReason::ALL
            .iter()
            .map(|code| Code { code: *code, number: *code as i32, unit: None, sentence: code.sentence() })
            .collect(),
        removals: Removal::ALL
            .iter()
            .map(|code| Code { code: *code, number: *code as i32, unit: None, sentence: code.sentence() })
            .collect(),
        changes: ChangeKind::ALL
            .iter()
            .map(|code| Code {
                code: *code,
                number: *code as i32,
                unit: Some(code.range().unit),
                sentence: code.sentence(),
            })
            .collect(),
        usual_cautions: OVERHEAD_CAUTIONS,
    })
}
