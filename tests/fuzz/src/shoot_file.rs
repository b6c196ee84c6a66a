//! The shoot file: any text is read or refused with its mistakes in their places; what is read is planned, written
//! and edited without a change of meaning.
//!
//! The input is the file's text; after a line `#edits`, edits as a JSON list of `{"path": ..., "value": ...}`.

use serde_json::{Map, Number, Value, json};
use tablerig::doors::c;
use tablerig::doors::c::border::mirror::Leave;
use tablerig::doors::text::answer;
use tablerig::plan::plan;
use tablerig::shootfile::append::with_log_entry;
use tablerig::shootfile::problem::{Problem, ProblemKind, line_and_column};
use tablerig::shootfile::whole::Whole;
use tablerig::shootfile::{Form, LogEntry, ShootFile, Step, read};

use super::memory::plain;
use super::tally::Tally;
use super::{cautions, finite};

/// How many texts were read.
pub static TALLY: Tally = Tally::new("shoot_file");

/// Between a file's text and the edits to it.
pub const EDITS: &str = "\n#edits\n";

/// Reads, plans, writes and edits a text.
pub fn run(data: &[u8]) {
    let text = String::from_utf8_lossy(data);
    let (text, edits) = text.split_once(EDITS).unwrap_or((&text, ""));
    let form = Form::of(text);
    let file = read(text, form);
    TALLY.count(file.is_ok());
    match &file {
        Ok(file) => {
            look_at(file);
            logged(text, form, file);
        }
        Err(problems) => {
            assert!(!problems.is_empty(), "refused without a reason");
            problems.iter().for_each(|problem| well_placed(problem, text));
            // The same text the other way.
            let other = if form == Form::Toml { Form::Json } else { Form::Toml };
            if let Err(problems) = read(text, other) {
                problems.iter().for_each(|problem| well_placed(problem, text));
            }
        }
    }
    let Some(tree) = tree(text, form) else { return };
    written(&tree);
    if let Ok(Value::Array(edits)) = serde_json::from_str(edits) {
        edited(text, form, &tree, &edits);
    }
}

/// A mistake stands at a place of the text, and says what the reader needs.
fn well_placed(problem: &Problem, text: &str) {
    assert!(!problem.title.is_empty() && !problem.title.ends_with('.'), "{problem:?}");
    for (span, label) in problem.place.iter().chain(&problem.also) {
        assert!(span.start <= span.end && span.end <= text.len(), "{problem:?} of {}", text.len());
        assert!(text.is_char_boundary(span.start) && text.is_char_boundary(span.end), "{problem:?}");
        assert!(!label.is_empty(), "{problem:?}");
        let (line, column) = line_and_column(text, span.start);
        assert!(line >= 1 && column >= 1 && line <= text.matches('\n').count() + 1);
    }
    if problem.kind == ProblemKind::Refused {
        let fault = problem.fault.as_ref().expect("a refused number has its fault");
        let key = fault.field.rsplit('.').next().unwrap();
        let told: Vec<&String> =
            [&problem.title].into_iter().chain(&problem.helps).chain(&problem.notes).collect();
        let label = problem.place.as_ref().map_or("", |(_, label)| label);
        // At its place in the tree, where it is one value; a weight's range has a name of its own.
        let placed = matches!(problem.path.last(), Some(Step::Key(_)));
        let named = told.iter().any(|told| told.contains(key)) || label.contains(key) || placed;
        assert!(named, "{key} is not named in {problem:?}");
        assert!(!fault.least.is_nan() && !fault.most.is_nan());
    }
}

/// What was read is planned as its briefs say, and all that is asked of the whole has an answer.
fn look_at(file: &ShootFile) {
    for shot in &file.shots {
        let again: c::plan::Plan = Leave::leave(&plan(&shot.brief).expect("a planned brief"));
        let kept: c::plan::Plan = Leave::leave(&shot.plan);
        assert!(plain(&again) == plain(&kept), "{}: another plan", shot.name);
        finite::check(&kept);
        cautions::check(&shot.brief, &shot.plan);
        let namesakes = file.shots.iter().filter(|other| other.name == shot.name).count();
        assert_eq!(namesakes, 1, "two shots are called {:?}", shot.name);
    }
    let whole = Whole::new(file, &[]);
    assert_eq!(whole.shots.len(), file.shots.len());
    let order = whole.order().expect("a file that was read has an order");
    assert_eq!(order.sequence.len(), file.shots.len());
    whole.pull_list().expect("a file that was read has a pull list");
    assert_eq!(whole.booking().is_none(), file.shots.is_empty());
    let taken: usize = whole.fits().iter().map(|bay| bay.each.len()).sum();
    assert_eq!(taken, file.shots.iter().filter(|shot| shot.uses.bay.is_some()).count());
    if let Some(first) = file.shots.first() {
        let less = Whole::new(file, &[&first.name]);
        less.order().expect("an order without one shot");
    }
}

/// An entry added to the log is the last, and nothing else changes.
fn logged(text: &str, form: Form, file: &ShootFile) {
    let Some(shot) = file.shots.first() else { return };
    let mut entry = LogEntry { shot: shot.name.clone(), measured: None, roll_deg: None, note: None };
    entry.note = Some("a \"b\" \\ ½\n".into());
    if let Some(last) = file.log.last() {
        (entry.measured, entry.roll_deg) = (last.measured, last.roll_deg);
        entry.shot.clone_from(&last.shot);
    }
    match with_log_entry(text, form, &entry) {
        Ok(added) => {
            let again = read(&added, form).expect("a file that was added to");
            assert!(again.log.last() == Some(&entry) && again.log.len() == file.log.len() + 1);
            assert_eq!(again.shots.len(), file.shots.len());
            if form == Form::Toml {
                assert!(added.starts_with(text.trim_end_matches('\n')), "the text before it was changed");
            }
        }
        Err(problems) => assert!(!problems.is_empty()),
    }
}

/// What the text door answers.
fn ask(request: &Value) -> Value {
    let text = answer(&request.to_string());
    serde_json::from_str(&text).unwrap_or_else(|error| panic!("{error}: {text}"))
}

/// The text's JSON form; `None` where it is neither TOML nor JSON.
fn tree(text: &str, form: Form) -> Option<Value> {
    let mut read = ask(&json!({ "operation": "read", "shoot": text, "form": form }));
    if read["mistakes"].is_array() { None } else { Some(read["ok"]["shoot"].take()) }
}

fn has_nothing(tree: &Value) -> bool {
    match tree {
        Value::Null => true,
        Value::Array(list) => list.iter().any(has_nothing),
        Value::Object(table) => table.values().any(has_nothing),
        // What JSON has no number for is a text there.
        Value::String(text) => text.ends_with("infinite"),
        _ => false,
    }
}

/// A tree written down, in either form, says the same.
fn written(tree: &Value) {
    if has_nothing(tree) {
        return;
    }
    for (form, of) in [("toml", Form::Toml), ("json", Form::Json)] {
        let mut written = ask(&json!({ "operation": "write", "shoot": tree, "form": form }));
        assert!(written["mistakes"].is_null(), "{}", written["mistakes"]);
        let Value::String(text) = written["ok"]["text"].take() else { panic!("no text") };
        let again = self::tree(&text, of).unwrap_or_else(|| panic!("cannot be read again: {text}"));
        assert!(same(&again, tree), "{form} says something else: {text}\n{again}\n{tree}");
    }
}

/// A place in a list; a whole number may be written with a point.
fn place(index: &Number) -> Option<usize> {
    index.as_f64().filter(|index| *index >= 0.0 && index.fract() == 0.0).map(|index| index as usize)
}

/// Whether two trees say the same; 1 and 1.0 do.
fn same(one: &Value, other: &Value) -> bool {
    match (one, other) {
        (Value::Number(one), Value::Number(other)) => one.as_f64() == other.as_f64(),
        (Value::Array(list), Value::Array(others)) => {
            list.len() == others.len() && list.iter().zip(others).all(|(one, other)| same(one, other))
        }
        (Value::Object(table), Value::Object(others)) => {
            let known = |key: &String, one: &Value| others.get(key).is_some_and(|other| same(one, other));
            table.len() == others.len() && table.iter().all(|(key, one)| known(key, one))
        }
        _ => one == other,
    }
}

/// Puts a value into the tree as an edit says.
fn put(tree: &mut Value, path: &[Value], value: &Value) -> Option<()> {
    let (last, way) = path.split_last()?;
    let parent = way.iter().try_fold(tree, |node, step| match (step, node) {
        (Value::String(key), Value::Object(table)) => table.get_mut(key),
        (Value::Number(index), Value::Array(list)) => list.get_mut(place(index)?),
        _ => None,
    })?;
    match (last, parent) {
        (Value::String(key), Value::Object(table)) if value.is_null() => table.shift_remove(key).map(drop),
        (Value::String(key), Value::Object(table)) => {
            table.insert(key.clone(), value.clone());
            Some(())
        }
        (Value::Number(index), Value::Array(list)) => {
            let index = place(index)?;
            match value {
                Value::Null if index < list.len() => drop(list.remove(index)),
                Value::Null => return None,
                value if index == list.len() => list.push(value.clone()),
                value => *list.get_mut(index)? = value.clone(),
            }
            Some(())
        }
        _ => None,
    }
}

/// An edited text says what the tree says after the same edits.
fn edited(text: &str, form: Form, tree: &Value, edits: &[Value]) {
    let mut reply = ask(&json!({ "operation": "edit", "shoot": text, "form": form, "edits": edits }));
    let mut wanted = tree.clone();
    let mut done = true;
    for edit in edits {
        let (Value::Object(edit), true) = (edit, done) else { return };
        let (Some(Value::Array(path)), Some(value)) = (edit.get("path"), edit.get("value")) else { return };
        done &= put(&mut wanted, path, value).is_some();
    }
    if reply["ok"].is_null() {
        let mistakes = reply["mistakes"].as_array().expect("an answer or mistakes");
        assert!(!mistakes.is_empty());
        assert!(!done || mistakes[0]["in"] == "request", "refused though it could be done: {mistakes:?}");
        return;
    }
    if has_nothing(tree) || has_nothing(&wanted) {
        return;
    }
    assert!(done, "an edit without a place was made");
    let kept = reply["ok"]["rest_kept"] == true;
    let Value::String(after) = reply["ok"]["text"].take() else { panic!("no text") };
    let again = self::tree(&after, form).unwrap_or_else(|| panic!("cannot be read again: {after}"));
    assert!(same(&again, &wanted), "the edited text says something else: {after}\n{again}\n{wanted}");
    // One plain value for another changes no other line.
    if let ([edit], Form::Toml, true) = (edits, form, kept)
        && let Some(path) = edit["path"].as_array()
        && let (Some(old), new) = (at(tree, path), &edit["value"])
        && !old.is_object()
        && !old.is_array()
        && !new.is_null()
        && !new.is_object()
        && !new.is_array()
    {
        let comments = |text: &str| text.lines().filter(|line| line.trim_start().starts_with('#')).count();
        assert!(comments(text) == comments(&after) || text.contains("\"\"\"") || text.contains("'''"));
    }
}

fn at<'a>(tree: &'a Value, path: &[Value]) -> Option<&'a Value> {
    path.iter().try_fold(tree, |node, step| match step {
        Value::String(key) => node.as_object().and_then(|table: &Map<_, _>| table.get(key)),
        Value::Number(index) => node.get(place(index)?),
        _ => None,
    })
}
