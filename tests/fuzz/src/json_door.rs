//! The JSON door: whatever the request is, the answer is JSON of one known shape, without numbers that are none,
//! and the same each time.

use std::collections::HashSet;
use std::sync::LazyLock;

use serde_json::Value;
use tablerig::doors::text::answer;

use super::tally::Tally;

/// How many requests were answered.
pub static TALLY: Tally = Tally::new("json_door");

/// Asks a request.
pub fn run(data: &[u8]) {
    let request = String::from_utf8_lossy(data);
    let text = answer(&request);
    let reply: Value = serde_json::from_str(&text).unwrap_or_else(|error| panic!("{error}: {text}"));
    let all = reply.as_object().unwrap_or_else(|| panic!("no object: {text}"));
    assert_eq!(all.len(), 1, "{text}");
    assert_eq!(answer(&request), text, "another answer");
    TALLY.count(reply["ok"].is_object());
    if let Some(mistakes) = reply["mistakes"].as_array() {
        assert!(!mistakes.is_empty(), "refused without a reason: {request}");
        mistakes.iter().for_each(well_told);
        return;
    }
    assert!(reply["ok"].is_object(), "{text}");
    let asked: Value = serde_json::from_str(&request).expect("what is answered is JSON");
    let operation = asked["operation"].as_str().unwrap_or_default();
    // These hand back what was handed in.
    if !["read", "edit", "write", "demo", "fields", "operations"].contains(&operation) {
        numbers(&reply["ok"], "ok");
    }
    if let Some(plans) = reply["ok"]["shots"].as_array() {
        plans.iter().for_each(planned);
    } else if reply["ok"]["plan"].is_object() {
        planned(&reply["ok"]);
    }
}

/// A mistake has its number, its sentence and, of a number, field and range.
fn well_told(mistake: &Value) {
    let number = mistake["number"].as_i64().unwrap_or_default();
    assert!((101..500).contains(&number), "{mistake}");
    let sentence = mistake["sentence"].as_str().unwrap_or_default();
    assert!(!sentence.is_empty() && !sentence.ends_with('.'), "{mistake}");
    assert!(mistake["kind"].is_string() && ["request", "shoot"].contains(&mistake["in"].as_str().unwrap()));
    if number < 400 {
        let field = mistake["field"].as_str().unwrap_or_default();
        let key = field.rsplit('.').next().unwrap();
        let told = mistake.to_string().replace(&format!("\"{field}\""), "");
        let placed = mistake["path"].as_array().is_some_and(|path| !path.is_empty());
        assert!(!key.is_empty() && (placed || told.contains(key)), "the field is not named: {mistake}");
        let bound = |key: &str| {
            mistake[key].as_f64().or(match mistake[key].as_str() {
                Some("infinite") => Some(f64::INFINITY),
                Some("-infinite") => Some(f64::NEG_INFINITY),
                _ => None,
            })
        };
        let (least, most) = (bound("least").expect("least"), bound("most").expect("most"));
        match (number, bound("value")) {
            (101, value) => assert!(value.is_none_or(f64::is_infinite), "{mistake}"),
            (102, Some(value)) => assert!(value < least, "{mistake}"),
            (103, Some(value)) => assert!(value > most, "{mistake}"),
            _ => {}
        }
    }
    for key in ["line", "column"] {
        assert!(mistake[key].is_null() || mistake[key].as_u64().is_some_and(|place| place >= 1), "{mistake}");
    }
}

/// The keys that may have no value, by the types that hosts in TypeScript see. A number that is none would be null
/// too.
static MAY_BE_NULL: LazyLock<HashSet<&str>> = LazyLock::new(|| {
    let types = include_str!("../../../src/web/module/tablerig.d.ts").lines();
    let nullable = types.filter(|line| line.contains("null"));
    let keys: HashSet<&str> = nullable.filter_map(|line| Some(line.split_once(':')?.0.trim())).collect();
    assert!(keys.len() > 50, "the types are read wrongly: {keys:?}");
    keys
});

fn numbers(value: &Value, key: &str) {
    match value {
        Value::Null => assert!(MAY_BE_NULL.contains(key), "`{key}` is null"),
        Value::Object(table) => table.iter().for_each(|(key, value)| numbers(value, key)),
        Value::Array(list) => list.iter().for_each(|value| numbers(value, key)),
        _ => {}
    }
}

/// What is stopped cannot be rigged, and what hangs over a table comes with its caution.
fn planned(shot: &Value) {
    if !shot["plan"].is_object() {
        return;
    }
    let cautions = shot["plan"]["cautions"].as_array().expect("a list");
    let stopped = cautions.iter().any(|caution| caution["level"] == "stop");
    if let Some(can) = shot["can_be_rigged"].as_bool() {
        assert_eq!(can, !stopped, "{shot}");
    }
    let overhead = cautions.iter().any(|caution| caution["code"] == "load_overhead");
    assert_eq!(shot["plan"]["overhead"], overhead, "{shot}");
}
