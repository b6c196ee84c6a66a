//! The text files of published values, read strictly: a line that is not understood fails.

use std::cell::RefCell;
use std::collections::BTreeSet;

pub(crate) enum Expect {
    Value(f64),
    NotValue(f64),
}

/// One question with its answer in print.
pub(crate) struct Row {
    pub(crate) quantity: String,
    pub(crate) expect: Expect,
    pub(crate) within: f64,
    /// The line itself.
    pub(crate) text: String,
    given: Vec<(String, f64)>,
    used: RefCell<BTreeSet<String>>,
}

pub(crate) struct Source {
    pub(crate) id: String,
    pub(crate) title: String,
    pub(crate) source: String,
    pub(crate) standing: String,
    pub(crate) rows: Vec<Row>,
}

const STANDINGS: [&str; 6] = ["seen", "quoted", "memory", "practice", "derived", "computed"];

impl Row {
    /// A given number; asking for one that the row does not give fails.
    pub(crate) fn of(&self, name: &str) -> f64 {
        self.used.borrow_mut().insert(name.to_owned());
        let found = self.given.iter().find(|(known, _)| known == name);
        found.unwrap_or_else(|| panic!("{name} is not given: {}", self.text)).1
    }

    /// A given number, or 0.
    pub(crate) fn or_zero(&self, name: &str) -> f64 {
        if self.given.iter().any(|(known, _)| known == name) { self.of(name) } else { 0.0 }
    }

    /// Fails where something was given that nothing asked for.
    pub(crate) fn all_used(&self) {
        for (name, _) in &self.given {
            assert!(self.used.borrow().contains(name), "{name} is given for nothing: {}", self.text);
        }
    }
}

fn number(word: &str, line: &str) -> f64 {
    word.parse().unwrap_or_else(|_| panic!("{word} is no number: {line}"))
}

fn row(line: &str) -> Row {
    let parts: Vec<_> = line.split('|').map(str::trim).collect();
    let [ask, given, expect, within] = parts[..] else { panic!("not four parts: {line}") };
    let quantity = ask.strip_prefix("ask ").unwrap_or_else(|| panic!("asks nothing: {line}")).to_owned();
    let given = given.split(',').map(str::trim).filter(|pair| !pair.is_empty()).map(|pair| {
        let (name, value) = pair.split_once(' ').unwrap_or_else(|| panic!("{pair} has no value: {line}"));
        (name.to_owned(), number(value, line))
    });
    let expect = expect.strip_prefix("expect ").unwrap_or_else(|| panic!("expects nothing: {line}"));
    let expect = match expect.strip_prefix("not ") {
        Some(value) => Expect::NotValue(number(value, line)),
        None => Expect::Value(number(expect, line)),
    };
    let within = within.strip_prefix("within ").unwrap_or_else(|| panic!("no tolerance: {line}"));
    let (within, why) =
        within.split_once(' ').unwrap_or_else(|| panic!("no reason for the tolerance: {line}"));
    assert!(!why.trim().is_empty(), "no reason for the tolerance: {line}");
    Row {
        quantity,
        expect,
        within: number(within, line),
        text: line.to_owned(),
        given: given.collect(),
        used: RefCell::default(),
    }
}

fn read(text: &str, into: &mut Vec<Source>) {
    for line in text.lines().map(str::trim).filter(|line| !line.is_empty() && !line.starts_with('#')) {
        if let Some((id, title)) = line.strip_prefix('[').and_then(|rest| rest.split_once("] ")) {
            into.push(Source {
                id: id.to_owned(),
                title: title.to_owned(),
                source: String::new(),
                standing: String::new(),
                rows: Vec::new(),
            });
            continue;
        }
        let source = into.last_mut().unwrap_or_else(|| panic!("before any source: {line}"));
        if let Some(text) = line.strip_prefix("source: ") {
            assert!(source.source.is_empty(), "two sources: {line}");
            text.clone_into(&mut source.source);
        } else if let Some(text) = line.strip_prefix("standing: ") {
            assert!(STANDINGS.contains(&text), "no such standing: {line}");
            text.clone_into(&mut source.standing);
        } else {
            source.rows.push(row(line));
        }
    }
}

/// Everything in print.
pub(crate) fn sources() -> Vec<Source> {
    let mut all = Vec::new();
    for text in [
        include_str!("statics.txt"),
        include_str!("beams.txt"),
        include_str!("criteria.txt"),
        include_str!("optics.txt"),
    ] {
        read(text, &mut all);
    }
    for source in &all {
        let complete = !source.source.is_empty() && !source.standing.is_empty() && !source.rows.is_empty();
        assert!(complete, "[{}] lacks its source, its standing or any row", source.id);
    }
    all
}
