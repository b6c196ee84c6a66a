//! Whatever the request is, the answer is JSON.

use proptest::prelude::*;
use serde_json::{Value, json};
use tablerig::doors::text::answer;

use crate::ask::demo;

fn reply(request: &str) -> Value {
    let text = answer(request);
    let reply: Value = serde_json::from_str(&text).unwrap_or_else(|error| panic!("{error}: {text}"));
    assert_eq!(reply.as_object().map(|reply| reply.len()), Some(1), "{text}");
    assert!(
        reply["ok"].is_object() || reply["mistakes"].as_array().is_some_and(|all| !all.is_empty()),
        "{text}"
    );
    reply
}

/// A request of no sense, or too deep for a stack, is a mistake like any other.
#[test]
fn what_is_no_request_is_refused() {
    let deep = [
        "[".repeat(200_000),
        "{\"a\":".repeat(200_000),
        format!("{{\"operation\":\"read\",\"shoot\":{}", "{\"a\":".repeat(100_000)),
    ];
    for request in
        ["", " ", "null", "1", "\"plan\"", "[]", "{", "{}", "{\"operation\":1}", "\u{feff}{}", "\0"]
            .into_iter()
            .chain(deep.iter().map(String::as_str))
    {
        assert!(reply(request)["mistakes"].is_array(), "{}", &request[..request.len().min(40)]);
    }
}

/// The same for shoot files: nested brackets, tables and dotted keys.
#[test]
fn deep_shoot_files_are_refused() {
    let many = 20_000;
    for shoot in [
        format!("a = {}", "[".repeat(many)),
        format!("a = {}1{}", "[".repeat(many), "]".repeat(many)),
        format!("a = {}", "{ a = ".repeat(many)),
        format!("[{}a]\nb = 1", "a.".repeat(many)),
        format!("{}a = 1", "a.".repeat(many)),
        format!("[[{}a]]\nb = 1", "a.".repeat(many)),
    ] {
        for operation in ["read", "plan", "edit", "write"] {
            let edits = json!([{"path": ["a"], "value": null}]);
            let keys = match operation {
                "edit" => json!({ "operation": operation, "shoot": shoot, "edits": edits }),
                _ => json!({ "operation": operation, "shoot": shoot }),
            };
            assert!(reply(&keys.to_string())["mistakes"].is_array(), "{operation} {}", &shoot[..20]);
        }
    }
}

/// A control character as it is within a text is no JSON: the request, and a shoot file, are refused there.
#[test]
fn raw_control_characters_are_refused() {
    for raw in ["\n", "\t", "\0", "\u{1f}"] {
        let request = format!("{{\"operation\":\"version\",\"a\\\"b{raw}\":1}}");
        let mistakes = &reply(&request)["mistakes"];
        assert_eq!(mistakes[0]["kind"], "not_readable", "{raw:?}");
        assert_eq!(mistakes[0]["column"], 29, "{raw:?}");
        let shoot = format!("{{\"shoot\":\n{{\"title\":\"a{raw}\"}}}}");
        let read = reply(&json!({ "operation": "read", "shoot": shoot }).to_string());
        assert_eq!(
            (&read["mistakes"][0]["kind"], &read["mistakes"][0]["line"]),
            (&json!("not_readable"), &json!(2))
        );
    }
    assert!(reply("\n{\t\"operation\":\r\n\"version\"}")["ok"].is_object());
}

/// JSON has four characters of white space; what else looks like some is refused where it stands.
#[test]
fn foreign_white_space_is_refused() {
    for foreign in ["\u{b}", "\u{c}", "\u{85}", "\u{a0}", "\u{2028}", "\u{3000}"] {
        let mistakes = &reply(&format!("{{\"operation\":{foreign}\"version\"}}"))["mistakes"];
        assert_eq!(mistakes[0]["kind"], "not_readable", "{foreign:?}");
        assert_eq!(mistakes[0]["column"], 14, "{foreign:?}");
        // Within quotes it is a letter like any other, but for the control characters.
        let title = json!({ "shoot": { "title": format!("a{foreign}b") } }).to_string();
        let read = reply(&json!({ "operation": "read", "shoot": title }).to_string());
        assert!(read["mistakes"][0]["kind"] != "not_readable", "{foreign:?}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, failure_persistence: None, ..ProptestConfig::default() })]

    /// Any text as a request.
    #[test]
    fn any_text_is_answered(request in "\\PC{0,200}") {
        reply(&request);
    }

    /// The demo with a stretch of it put out of order.
    #[test]
    fn any_broken_shoot_is_answered(
        start in 0usize..9000,
        length in 0usize..400,
        put in prop_oneof!["\\PC{0,12}", Just("1e400".to_owned()), Just("[[shot]]\n".to_owned()), Just("\"".to_owned())],
    ) {
        let text = demo();
        let cut = |at: usize| (0..=at.min(text.len())).rev().find(|at| text.is_char_boundary(*at)).unwrap();
        let (start, end) = (cut(start), cut(start + length));
        let broken = format!("{}{put}{}", &text[..start], &text[end..]);
        for operation in ["read", "plan_shoot"] {
            reply(&json!({ "operation": operation, "shoot": broken, "form": "toml" }).to_string());
        }
    }
}
