//! Strict tables of tab-separated rows, and the tally of how far the library is from them.

use std::cell::RefCell;
use std::collections::{BTreeMap, BTreeSet};

/// A table: a line of names, then one row a line; every name must be asked for.
pub(crate) struct Table {
    names: Vec<&'static str>,
    rows: Vec<Vec<&'static str>>,
    asked: RefCell<BTreeSet<&'static str>>,
}

/// One row of a table.
#[derive(Clone, Copy)]
pub(crate) struct Row<'a> {
    table: &'a Table,
    cells: &'a [&'static str],
}

impl Table {
    pub(crate) fn new(text: &'static str) -> Table {
        let mut lines = text.lines();
        let names: Vec<_> = lines.next().expect("a line of names").split('\t').collect();
        let rows: Vec<Vec<_>> = lines.map(|line| line.split('\t').collect()).collect();
        for (number, row) in rows.iter().enumerate() {
            assert_eq!(row.len(), names.len(), "row {} has not a cell for each name", number + 1);
        }
        Table { names, rows, asked: RefCell::new(BTreeSet::new()) }
    }

    pub(crate) fn rows(&self) -> impl Iterator<Item = Row<'_>> {
        self.rows.iter().map(|cells| Row { table: self, cells })
    }

    /// Panics where a column was never asked for: data that nothing checks.
    pub(crate) fn all_asked(&self) {
        let asked = self.asked.borrow();
        let idle: Vec<_> = self.names.iter().filter(|name| !asked.contains(**name)).collect();
        assert!(idle.is_empty(), "columns that nothing reads: {idle:?}");
    }
}

impl<'a> Row<'a> {
    pub(crate) fn word(&self, name: &str) -> &'a str {
        let at = self.table.names.iter().position(|known| *known == name);
        let at = at.unwrap_or_else(|| panic!("no column {name}"));
        self.table.asked.borrow_mut().insert(self.table.names[at]);
        self.cells[at]
    }

    pub(crate) fn given(&self, name: &str) -> Option<f64> {
        match self.word(name) {
            "" => None,
            word => Some(word.parse().unwrap_or_else(|_| panic!("{name}: {word} is no number"))),
        }
    }

    pub(crate) fn number(&self, name: &str) -> f64 {
        self.given(name).unwrap_or_else(|| panic!("{name} is empty"))
    }

    pub(crate) fn flag(&self, name: &str) -> bool {
        match self.word(name) {
            "yes" => true,
            "no" => false,
            word => panic!("{name}: {word} is neither yes nor no"),
        }
    }
}

/// How far off each quantity is at worst.
#[derive(Default)]
pub(crate) struct Tally {
    worst: BTreeMap<String, (f64, usize, String)>,
}

impl Tally {
    /// Notes an error of a quantity in a case.
    pub(crate) fn note(&mut self, name: &str, error: f64, case: &str) {
        let error = if error.is_nan() { f64::INFINITY } else { error };
        let entry = self.worst.entry(name.to_owned()).or_default();
        entry.1 += 1;
        if error > entry.0 {
            entry.0 = error;
            case.clone_into(&mut entry.2);
        }
    }

    /// Notes the difference of two numbers, relative to the wanted one or to a scale if that is larger.
    pub(crate) fn close(&mut self, name: &str, got: f64, want: f64, scale: f64, case: &str) {
        let error = if got == want { 0.0 } else { (got - want).abs() / want.abs().max(scale) };
        self.note(name, error, case);
    }

    /// The worst of all: error, quantity, case.
    pub(crate) fn worst(&self) -> (f64, String, String) {
        let mut worst = (0.0, String::new(), String::new());
        for (name, (error, _, case)) in &self.worst {
            if *error > worst.0 {
                worst = (*error, name.clone(), case.clone());
            }
        }
        worst
    }

    /// Comparisons noted of one quantity.
    pub(crate) fn count(&self, name: &str) -> usize {
        self.worst.get(name).map_or(0, |(_, count, _)| *count)
    }

    /// All comparisons.
    pub(crate) fn comparisons(&self) -> usize {
        self.worst.values().map(|(_, count, _)| count).sum()
    }

    /// Quantity, worst error, comparisons and the case of the worst.
    pub(crate) fn entries(&self) -> impl Iterator<Item = (&str, f64, usize, &str)> {
        self.worst.iter().map(|(name, (error, count, case))| (name.as_str(), *error, *count, case.as_str()))
    }
}
