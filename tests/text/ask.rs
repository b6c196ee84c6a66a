//! Asks the door as a host does.

use serde_json::{Value, json};
use tablerig::doors::text::answer;

/// The reply to a request.
pub(crate) fn reply(request: &Value) -> Value {
    let text = answer(&request.to_string());
    serde_json::from_str(&text).unwrap_or_else(|error| panic!("{error}: {text}"))
}

/// The answer to a request of which nothing is wrong.
pub(crate) fn asked(operation: &str, keys: Value) -> Value {
    let mut reply = reply(&with(operation, keys));
    assert!(reply["mistakes"].is_null(), "{operation}: {}", reply["mistakes"]);
    reply["ok"].take()
}

/// What is wrong with a request.
pub(crate) fn refused(operation: &str, keys: Value) -> Vec<Value> {
    let mut reply = reply(&with(operation, keys));
    assert!(reply["ok"].is_null(), "{operation} was answered");
    let Value::Array(mistakes) = reply["mistakes"].take() else { panic!("no list of mistakes: {reply}") };
    assert!(!mistakes.is_empty());
    mistakes
}

fn with(operation: &str, mut keys: Value) -> Value {
    keys["operation"] = json!(operation);
    keys
}

/// The demo's text.
pub(crate) fn demo() -> String {
    asked("demo", json!({}))["text"].as_str().unwrap().to_owned()
}

/// The place of one of the demo's shots in its list.
pub(crate) fn place(name: &str) -> usize {
    let read = asked("read", json!({ "shoot": demo() }));
    read["shoot"]["shot"].as_array().unwrap().iter().position(|shot| shot["name"] == name).unwrap()
}
