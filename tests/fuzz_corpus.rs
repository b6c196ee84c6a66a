//! What the fuzzer found worth keeping, replayed without it: the same properties on every file of the corpus.
//!
//! A file that made a target fail is put into the corpus under a name that says what was wrong, and stays.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use std::{env, fs, panic};

use serde_json::Value;

#[path = "fuzz/src/lib.rs"]
mod properties;

fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/fuzz")
}

/// Runs a target's property on each file of its corpus, and says which file it fails on. `least` is the share that is
/// to be answered, in hundredths: a corpus of nothing but refusals shows little.
fn replay(target: &str, run: fn(&[u8]), tally: &properties::tally::Tally, least: u64) {
    let mut files: Vec<PathBuf> = fs::read_dir(folder().join("corpus").join(target))
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .collect();
    files.sort();
    for file in &files {
        let data = fs::read(file).unwrap();
        if let Err(cause) = panic::catch_unwind(|| run(&data)) {
            eprintln!("{target} fails on {}", file.display());
            panic::resume_unwind(cause);
        }
    }
    let (asked, answered) = tally.so_far();
    println!("{target}: {} files, {answered} of {asked} answered", files.len());
    assert!(files.len() >= 30, "{target}: {} files", files.len());
    assert!(answered * 100 >= asked * least, "{target}: only {answered} of {asked} were answered");
}

#[test]
fn the_c_door() {
    replay("c_door", properties::c_door::run, &properties::c_door::TALLY, 40);
}

#[test]
fn the_planner() {
    replay("planner", properties::planner::run, &properties::planner::TALLY, 50);
}

#[test]
fn the_shoot_file() {
    replay("shoot_file", properties::shoot_file::run, &properties::shoot_file::TALLY, 15);
}

#[test]
fn the_json_door() {
    replay("json_door", properties::json_door::run, &properties::json_door::TALLY, 30);
}

/// The fuzzer's dictionary has every word of a shoot file and of a request. `TABLERIG_BLESS=1` writes it anew.
#[test]
fn the_dictionary_knows_every_word() {
    let mut words = BTreeSet::new();
    for operation in ["operations", "fields"] {
        let asked = tablerig::doors::text::answer(&format!("{{\"operation\":\"{operation}\"}}"));
        collect(&serde_json::from_str(&asked).unwrap(), &mut words);
    }
    let mut text = String::from("# Words of shoot files and requests: written by tests/fuzz_corpus.rs.\n");
    words.iter().filter(|word| !word.is_empty()).for_each(|word| text.push_str(&format!("\"{word}\"\n")));
    let file = folder().join("text.dict");
    if env::var_os("TABLERIG_BLESS").is_some() {
        fs::write(&file, &text).unwrap();
    }
    assert_eq!(fs::read_to_string(file).unwrap(), text);
}

/// Names, keys, kinds and choices of a list of what may be said.
fn collect(value: &Value, words: &mut BTreeSet<String>) {
    match value {
        Value::Object(table) => {
            for (key, value) in table {
                match (key.as_str(), value) {
                    ("name" | "key" | "kind" | "unit", Value::String(word)) => {
                        words.insert(word.clone());
                    }
                    ("words", Value::Array(list)) => {
                        words.extend(list.iter().filter_map(|word| word.as_str().map(str::to_owned)));
                    }
                    _ => collect(value, words),
                }
            }
        }
        Value::Array(list) => list.iter().for_each(|value| collect(value, words)),
        _ => {}
    }
}
