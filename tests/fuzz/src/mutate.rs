//! Mutations that keep a text's form: JSON stays JSON, a shoot file keeps its lines.

use std::sync::LazyLock;

use serde_json::{Map, Number, Value};

use super::shoot_file::EDITS;

/// The words of the fuzzer's dictionary.
static WORDS: LazyLock<Vec<&str>> = LazyLock::new(|| {
    let lines = include_str!("../text.dict").lines();
    lines.filter_map(|line| line.strip_prefix('"')?.strip_suffix('"')).collect()
});

/// Numbers and texts that are at some end of something.
const ODD: &[&str] = &[
    "0",
    "-0.0",
    "1",
    "-1",
    "90",
    "-60",
    "89.999",
    "360",
    "1e400",
    "-1e400",
    "1e-320",
    "9007199254740993",
    "0.1",
    "null",
    "true",
    "[]",
    "{}",
    "\"\"",
    "\"any\"",
    "\"infinite\"",
    "\"60 cm\"",
    "\"7 ft 10 in\"",
    "\"1 1/2 in\"",
    "\"f/8\"",
    "\"45°\"",
    "\"2 lb 4 oz\"",
    "\"213.5 cm ± 5 mm\"",
    "\"1:2\"",
    "\"60 %\"",
    "\"16:9\"",
    "\"1e999 mm\"",
    "\"-0 mm\"",
    "\"NaN\"",
    "\"9 ft lbf\"",
    "\"3/0 in\"",
    "\"\\u202e\\u0007\"",
    "\"½\"",
    "[[[]]]",
    "{\"value\":1,\"uncertainty\":2}",
    "{\"mass_kg\":\"500 g\",\"at_hand\":2}",
    "[\"lens\",\"support\",\"side\"]",
];

/// Splitmix64 (Steele, Lea and Flood 2014).
pub struct Chance(u64);

impl Chance {
    /// From the fuzzer's seed.
    pub fn new(seed: u32) -> Chance {
        Chance(u64::from(seed))
    }

    fn word(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    fn below(&mut self, count: usize) -> usize {
        (self.word() % count.max(1) as u64) as usize
    }

    fn one_of<'a, T: ?Sized>(&mut self, list: &[&'a T]) -> &'a T {
        list[self.below(list.len())]
    }

    fn odd(&mut self) -> Value {
        match self.below(3) {
            0 => Value::String(self.one_of(&WORDS).to_owned()),
            _ => serde_json::from_str(self.one_of(ODD)).unwrap_or(Value::Null),
        }
    }
}

/// Requests that are answered, to begin with anew: what was changed often is mostly refused.
const SOUND: &[&str] = &[
    include_str!("../corpus/json_door/choose"),
    include_str!("../corpus/json_door/draw"),
    include_str!("../corpus/json_door/on_set"),
    include_str!("../corpus/json_door/order"),
    include_str!("../corpus/json_door/plan_shoot"),
    include_str!("../corpus/json_door/smallest_changes"),
    include_str!("../corpus/json_door/sweep"),
];

/// Shoot files that can be planned.
const SOUND_FILES: &[&str] = &[
    include_str!("../corpus/shoot_file/breakfast-long.toml"),
    include_str!("../corpus/shoot_file/loaf.toml"),
    include_str!("../corpus/shoot_file/pair.json"),
    include_str!("../corpus/shoot_file/pair.toml"),
    include_str!("../corpus/shoot_file/soup.toml"),
    include_str!("../corpus/shoot_file/tiles.toml"),
];

/// A text with some of its numbers changed a little, each keeping its unit and most of its size.
fn tame(text: &str, chance: &mut Chance) -> String {
    let mut changed = String::new();
    let mut rest = text;
    let often = 2 + chance.below(12);
    while let Some(start) = rest.find(|c: char| c.is_ascii_digit()) {
        let (before, number) = rest.split_at(start);
        let end = number.find(|c: char| !c.is_ascii_digit()).unwrap_or(number.len());
        let (digits, after) = number.split_at(end);
        changed.push_str(before);
        // A digit within a word, such as n_per_mm2 or a name's, stays.
        let within = before.ends_with(|c: char| c.is_alphanumeric() || matches!(c, '-' | '_'));
        match digits.parse::<u64>() {
            Ok(value) if !within && chance.below(often) == 0 && value < 100_000 => {
                let other = match chance.below(4) {
                    0 => value + 1,
                    1 => value.saturating_sub(1),
                    2 => value / 2 + chance.below(value as usize + 1) as u64,
                    _ => [0, 1, 90, 2 * value][chance.below(4)],
                };
                changed.push_str(&other.to_string());
            }
            _ => changed.push_str(digits),
        }
        rest = after;
    }
    changed + rest
}

/// A request with one to three of its values changed; `None` where it is no JSON.
pub fn json(text: &str, chance: &mut Chance) -> Option<String> {
    match chance.below(6) {
        0..=2 => Some(tame(chance.one_of(SOUND), chance)),
        3 => Some(tame(text, chance)),
        _ => values(text, chance),
    }
}

fn values(text: &str, chance: &mut Chance) -> Option<String> {
    let mut tree: Value = serde_json::from_str(text).ok()?;
    for _ in 0..=chance.below(3) {
        let places = count(&tree);
        let mut at = chance.below(places);
        change(&mut tree, &mut at, chance);
    }
    Some(tree.to_string())
}

fn count(tree: &Value) -> usize {
    1 + match tree {
        Value::Array(list) => list.iter().map(count).sum(),
        Value::Object(table) => table.values().map(count).sum(),
        _ => 0,
    }
}

/// Changes the value at a place, counted through the tree; whether it was found.
fn change(tree: &mut Value, at: &mut usize, chance: &mut Chance) -> bool {
    if *at == 0 {
        match tree {
            Value::Object(table) => change_table(table, chance),
            Value::Array(list) => change_list(list, chance),
            Value::Number(number) if chance.below(3) > 0 => {
                let value = number.as_f64().unwrap_or(0.0);
                let changed = match chance.below(6) {
                    0 => value + 1.0,
                    1 => -value,
                    2 => value * 2.0,
                    3 => value / 3.0,
                    4 => value.next_up(),
                    _ => value * 1000.0,
                };
                *tree = Number::from_f64(changed).map_or(Value::Null, Value::Number);
            }
            Value::String(text) if text.contains('\n') => *text = lines(text, chance),
            Value::String(text) if chance.below(3) == 0 => {
                let place = chance.below(text.chars().count() + 1);
                let word = chance.one_of(&["-", "0", "1", " ", "9", ".", "e", "/", "mm", "\u{301}", "°"]);
                *text =
                    text.chars().take(place).chain(word.chars()).chain(text.chars().skip(place)).collect();
            }
            _ => *tree = chance.odd(),
        }
        return true;
    }
    *at -= 1;
    match tree {
        Value::Array(list) => list.iter_mut().any(|value| change(value, at, chance)),
        Value::Object(table) => table.values_mut().any(|value| change(value, at, chance)),
        _ => false,
    }
}

fn change_table(table: &mut Map<String, Value>, chance: &mut Chance) {
    let keys: Vec<String> = table.keys().cloned().collect();
    let key = keys.get(chance.below(keys.len())).cloned();
    match (chance.below(5), key) {
        (0, Some(key)) => drop(table.shift_remove(&key)),
        (1, Some(key)) => {
            let value = table.shift_remove(&key).unwrap_or(Value::Null);
            table.insert(chance.one_of(&WORDS).to_owned(), value);
        }
        (2, Some(key)) => {
            let other = keys[chance.below(keys.len())].clone();
            let value = table.get(&other).cloned().unwrap_or(Value::Null);
            table.insert(key, value);
        }
        _ => {
            let value = chance.odd();
            table.insert(chance.one_of(&WORDS).to_owned(), value);
        }
    }
}

fn change_list(list: &mut Vec<Value>, chance: &mut Chance) {
    match (chance.below(4), list.len()) {
        (0, 1..) => drop(list.remove(chance.below(list.len()))),
        (1, 1..) => {
            let again = list[chance.below(list.len())].clone();
            list.push(again);
        }
        (2, 1..) => {
            let at = chance.below(list.len());
            list.swap(0, at);
        }
        _ => {
            let value = chance.odd();
            list.push(value);
        }
    }
}

/// A shoot file with a line or two changed, or its edits.
pub fn file(text: &str, chance: &mut Chance) -> String {
    match chance.below(6) {
        0..=2 => return tame(chance.one_of(SOUND_FILES), chance),
        3 => return tame(text, chance),
        _ => {}
    }
    let (text, edits) = text.split_once(EDITS).unwrap_or((text, "[]"));
    let (mut text, mut edits) = (text.to_owned(), edits.to_owned());
    if chance.below(3) == 0 {
        edits = match chance.below(3) {
            0 => with_edit(&edits, &text, chance),
            _ => values(&edits, chance).unwrap_or_else(|| "[]".to_owned()),
        };
    } else if text.trim_start().starts_with('{') {
        text = values(&text, chance).unwrap_or(text);
    } else {
        text = lines(&text, chance);
    }
    if edits == "[]" { text } else { format!("{text}{EDITS}{edits}") }
}

/// One more edit, mostly of something that is there.
fn with_edit(edits: &str, text: &str, chance: &mut Chance) -> String {
    let mut list: Vec<Value> = serde_json::from_str(edits).unwrap_or_default();
    let request = serde_json::json!({ "operation": "read", "shoot": text });
    let reply: Value =
        serde_json::from_str(&tablerig::doors::text::answer(&request.to_string())).unwrap_or_default();
    let mut node = &reply["ok"]["shoot"];
    let mut path: Vec<Value> = Vec::new();
    loop {
        let stop = !path.is_empty() && chance.below(4) == 0;
        match node {
            Value::Object(table) if !table.is_empty() && !stop => {
                let (key, value) = table.iter().nth(chance.below(table.len())).expect("one of them");
                path.push(key.as_str().into());
                node = value;
            }
            Value::Array(values) if !values.is_empty() && !stop => {
                let index = chance.below(values.len());
                path.push(index.into());
                node = &values[index];
            }
            Value::Array(values) => {
                path.push(values.len().into());
                break;
            }
            Value::Object(_) if chance.below(2) == 0 => {
                path.push(chance.one_of(&WORDS).into());
                break;
            }
            _ => break,
        }
    }
    list.push(serde_json::json!({ "path": path, "value": chance.odd() }));
    list.truncate(6);
    Value::from(list).to_string()
}

/// A text with one to three of its lines changed.
pub fn lines(text: &str, chance: &mut Chance) -> String {
    let mut lines: Vec<String> = text.lines().map(str::to_owned).collect();
    for _ in 0..=chance.below(3) {
        let at = chance.below(lines.len().max(1));
        let other = chance.below(lines.len().max(1));
        match chance.below(8) {
            0 if !lines.is_empty() => drop(lines.remove(at)),
            1 if !lines.is_empty() => lines.insert(other, lines[at].clone()),
            2 if !lines.is_empty() => lines.swap(at, other),
            3 => lines
                .insert(at.min(lines.len()), format!("{} = {}", chance.one_of(&WORDS), chance.one_of(ODD))),
            4 if !lines.is_empty() => {
                if let Some((_, value)) = lines[at].split_once('=') {
                    lines[at] = format!("{} ={value}", chance.one_of(&WORDS));
                }
            }
            5 if !lines.is_empty() => {
                if let Some((key, _)) = lines[at].split_once('=') {
                    lines[at] = format!("{key}= \"{}\"", chance.one_of(&WORDS));
                }
            }
            _ if !lines.is_empty() => {
                if let Some((key, _)) = lines[at].split_once('=') {
                    lines[at] = format!("{key}= {}", chance.one_of(ODD));
                }
            }
            _ => {}
        }
    }
    lines.join("\n") + "\n"
}
