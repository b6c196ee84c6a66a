//! Plans as JSON, every number in full.

use std::prelude::rust_2024::*;

use serde_json::{Value, json};

use crate::caution::Level;
use crate::caution::overhead::OVERHEAD_CAUTIONS;
use crate::shootfile::{NamedShot, ShootFile};

/// All shots of a file.
pub(crate) fn file(file: &ShootFile) -> Value {
    json!({
        "title": file.title,
        "note": file.note,
        "shots": file.shots.iter().map(shot).collect::<Vec<_>>(),
        "usual_cautions": OVERHEAD_CAUTIONS,
    })
}

/// One shot, with the brief as it was understood.
pub(crate) fn one(named: &NamedShot) -> Value {
    let mut value = shot(named);
    if let Value::Object(map) = &mut value {
        map.insert("usual_cautions".into(), json!(OVERHEAD_CAUTIONS));
    }
    value
}

fn shot(named: &NamedShot) -> Value {
    json!({
        "name": named.name,
        "note": named.note,
        "uses": named.uses,
        "chosen": named.chosen,
        "can_be_rigged": named.plan.cautions.worst() != Some(Level::Stop),
        "brief": named.brief,
        "plan": named.plan,
        "removal_in_words": named.plan.removal.sentence(),
    })
}
