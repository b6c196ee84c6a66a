//! `tablerig fields`: every key of a shoot file.

use std::format;
use std::prelude::rust_2024::*;
use std::vec;

use serde_json::json;

use super::failure::Failure;
use super::page::{Page, left};
use crate::shootfile::field::{Standing, listed};
use crate::shootfile::listing::{Row, Section, sections};
use crate::shootfile::suggest;

/// The sections of a kind, or all.
pub(crate) fn find(kind: Option<&str>) -> Result<Vec<Section>, Failure> {
    let all = sections();
    let Some(kind) = kind else { return Ok(all) };
    let mut kinds: Vec<&str> = all.iter().map(|section| section.kind).collect();
    kinds.dedup();
    if !kinds.contains(&kind) {
        let advice = match suggest::nearest(kind, &kinds) {
            Some(near) => format!("did you mean {near}?"),
            None => format!("there are {}", listed(&kinds, "and")),
        };
        return Err(Failure::input(format!("there is no kind \"{kind}\": {advice}")));
    }
    Ok(all.into_iter().filter(|section| section.kind == kind).collect())
}

/// As JSON.
pub(crate) fn json(sections: &[Section]) -> serde_json::Value {
    let row = |row: &Row| {
        let (standing, otherwise) = match row.standing {
            Standing::Required => ("required", None),
            Standing::Otherwise(value) => ("optional", Some(value)),
            Standing::Among(how) => ("one_of", Some(how)),
        };
        json!({
            "key": row.key,
            "allowed": row.allowed,
            "unit": row.unit,
            "least": row.least,
            "most": row.most,
            "standing": standing,
            "otherwise": otherwise,
            "meaning": row.meaning,
        })
    };
    let section = |section: &Section| {
        json!({
            "kind": section.kind,
            "heading": section.heading,
            "keys": section.rows.iter().map(row).collect::<Vec<_>>(),
        })
    };
    json!({ "sections": sections.iter().map(section).collect::<Vec<_>>() })
}

/// For people.
pub(crate) fn print(page: &mut Page, sections: &[Section]) {
    for section in sections {
        page.heading(section.heading);
        let row = |row: &Row| {
            let standing = match row.standing {
                Standing::Required => "required".into(),
                Standing::Otherwise(value) => value.into(),
                Standing::Among(how) => how.into(),
            };
            vec![row.key.into(), row.allowed.clone(), standing, row.meaning.into()]
        };
        let columns = [left("Key"), left("Takes"), left("Left out"), left("Meaning")];
        page.texts(&columns, section.rows.iter().map(row).collect());
    }
    page.gap();
    page.paragraph(
        "A bare number is in the unit its key ends in. Between quotes a value says its own unit: \"60 cm\", \"2.4 m\", \
         \"36 in\", \"1 1/2 in\", \"7 ft 10 in\"; \"850 g\", \"2 lb 4 oz\"; \"45°\"; \"12 N m\"; \"69 GPa\"; \"2 %\"; \"f/8\"; \"1:2\".",
    );
}
