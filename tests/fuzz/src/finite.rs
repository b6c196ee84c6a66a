//! Numbers that come out are numbers, and infinite only where the header says so of the field.

use std::any::type_name;
use std::collections::HashSet;
use std::fmt::Debug;
use std::sync::{LazyLock, Mutex};

use tablerig::doors::c::border::mirror::Plain;

use super::memory::plain;

const HEADER: &str = include_str!("../../../include/tablerig.h");

/// Struct and field of all that may be infinite, by the header's comments: on the field, or on the struct for
/// all of its fields, or on the field that holds the struct.
static MAY_BE_INFINITE: LazyLock<HashSet<(String, String)>> = LazyLock::new(|| {
    let mut may_be = HashSet::new();
    let mut comment = String::new();
    let mut whole = None;
    for line in HEADER.lines().map(str::trim) {
        if line.starts_with("/*") {
            comment.clear();
        }
        if line.starts_with("/*") || line.starts_with('*') {
            comment.push_str(line);
            comment.push(' ');
        } else if let Some(rest) = line.strip_prefix("typedef struct Tablerig") {
            let name = rest.trim_end_matches(" {").to_owned();
            whole = Some((name, comment.contains("infinite")));
            comment.clear();
        } else if let Some((name, all)) = &whole {
            let field = line.trim_end_matches(';').rsplit([' ', '*']).next().unwrap_or_default();
            let field = field.split('[').next().unwrap_or_default();
            if !field.is_empty() && (*all || comment.contains("infinite")) {
                may_be.insert((name.clone(), field.to_owned()));
            }
            comment.clear();
            if line.starts_with('}') {
                whole = None;
            }
        }
    }
    assert!(may_be.len() > 20, "the header is read wrongly: {may_be:?}");
    may_be
});

/// Where infinities have been seen that the header allows: the struct's name and the place in it.
static SEEN: LazyLock<Mutex<HashSet<(&'static str, usize)>>> = LazyLock::new(Mutex::default);

/// Fails on NaN, and on an infinity that the header does not announce.
pub(crate) fn check<T: Plain + Debug>(value: &T) {
    let odd = |word: &[u8]| {
        let word = u64::from_ne_bytes(word.try_into().unwrap());
        word >> 52 & 0x7ff == 0x7ff
    };
    let places: Vec<usize> =
        plain(value).chunks_exact(8).enumerate().filter(|(_, word)| odd(word)).map(|(at, _)| at).collect();
    let new = |at: &&usize| !SEEN.lock().unwrap().contains(&(type_name::<T>(), **at));
    let infinite = |at: &usize| {
        let word = u64::from_ne_bytes(plain(value)[at * 8..at * 8 + 8].try_into().unwrap());
        word & 0xf_ffff_ffff_ffff == 0
    };
    if places.iter().all(infinite) && !places.iter().any(|at| new(&at)) {
        return;
    }
    let told = format!("{value:?}");
    for (name, field, number) in odd_fields(&told) {
        let announced = MAY_BE_INFINITE.contains(&(name.clone(), field.clone()));
        assert!(number != "NaN" && announced, "{name}.{field} is {number} in {told}");
    }
    SEEN.lock().unwrap().extend(places.iter().map(|at| (type_name::<T>(), *at)));
}

/// Whether a function's comment in the header says that its answer may be infinite.
pub(crate) fn function_may_give_infinity(function: &str) -> bool {
    let at =
        HEADER.find(&format!(" {function}(")).unwrap_or_else(|| panic!("{function} is not in the header"));
    let before = &HEADER[..at];
    let comment = before.rfind("/**").map_or("", |start| &before[start..]);
    comment.contains("infinite")
}

/// Struct, field and number of everything that is no finite number in a struct as it is written for debugging.
pub(crate) fn odd_fields(told: &str) -> Vec<(String, String, String)> {
    let mut open: Vec<(String, String)> = Vec::new();
    let mut word = String::new();
    let mut found = Vec::new();
    for c in told.chars() {
        match c {
            '{' => open.push((core::mem::take(&mut word), String::new())),
            ':' => {
                if let Some((_, field)) = open.last_mut() {
                    *field = core::mem::take(&mut word);
                }
            }
            'A'..='Z' | 'a'..='z' | '0'..='9' | '_' | '-' | '.' | '"' => word.push(c),
            '[' | '(' => word.clear(),
            ' ' => {}
            _ => {
                if ["inf", "-inf", "NaN"].contains(&word.as_str()) {
                    let (name, field) = open.last().cloned().unwrap_or_default();
                    found.push((name, field, core::mem::take(&mut word)));
                }
                word.clear();
                if c == '}' {
                    open.pop();
                }
            }
        }
    }
    found
}
