//! The module's types are those of the library.
//!
//! After a change to what is asked or answered, `TABLERIG_BLESS=1 cargo test --all-features --test text types`
//! writes them anew.

use std::collections::BTreeSet;
use std::fmt::Write;
use std::path::Path;
use std::{env, fs};

use serde_json::{Value, json};

use crate::ask::asked;
use crate::rust_types::{Types, comment, read};

const HEAD: &str = r#"// The types of tablerig.mjs: generated from the library's own; not to be edited.

/** What JSON has no number for. */
export type Infinite = "infinite" | "-infinite";

/** A number in the unit that its key ends in, or a text with its own unit: `600`, `"60 cm"`, `"7 ft 10 in"`. */
export type Quantity = number | string;

/** A quantity alone, with its uncertainty as a text such as `"213.5 cm ± 5 mm"`, or both apart. */
export type MeasuredQuantity = Quantity | { value: Quantity; uncertainty?: Quantity };

/** A change to a shoot file: the way to a value through keys and places counted from 0, and what is to be there. */
export interface Edit {
  path: (string | number)[];
  /** `null` takes it away. */
  value: unknown;
}

/** A place in the room. */
export interface PointEntry {
  x_mm: Quantity;
  y_mm: Quantity;
  z_mm: Quantity;
}

/** A place in the picture, from its centre. */
export interface PicturePointEntry {
  right_mm: Quantity;
  up_mm: Quantity;
}

/** Pieces of one weight. */
export interface PieceSizeEntry {
  mass_kg: Quantity;
  at_hand?: number;
}
"#;

const FOOT: &str = r#"
/** The name of something that can be asked. */
export type Operation = keyof Operations;

/** What was wrong with a question. The first mistake's figures stand here as well. */
export class TablerigError extends Error {
  readonly operation: Operation;
  /** Everything that was wrong. */
  readonly mistakes: [Mistake, ...Mistake[]];
  readonly code: Mistake["kind"];
  readonly number: number;
  readonly field: string | null;
  readonly value: Mistake["value"];
  readonly least: Mistake["least"];
  readonly most: Mistake["most"];
  readonly unit: string | null;
  readonly path: Step[];
  readonly line: number | null;
  readonly column: number | null;
}

/** The library, loaded. */
export class Tablerig {
  /** Over a compiled module. */
  constructor(module: WebAssembly.Module);
  /** Asks by name; the answer, or a TablerigError is thrown. */
  ask<O extends Operation>(
    operation: O,
    ...request: {} extends Operations[O]["request"] ? [Operations[O]["request"]?] : [Operations[O]["request"]]
  ): Operations[O]["answer"];
  /** The same with texts: a request's JSON in, `{"ok": ...}` or `{"mistakes": [...]}` out. */
  askText(request: string): string;
  /** How much memory it holds, in bytes. It never shrinks. */
  readonly memoryBytes: number;
}

/** Loads the library with its drawings. */
export function load(url?: string | URL): Promise<Tablerig>;

/** Loads the smaller library, which does not draw. */
export function loadWithoutDrawings(url?: string | URL): Promise<Tablerig>;
"#;

/// The table of a shoot file that a heading names, as the type of it.
fn entry_name(heading: &str) -> &'static str {
    match heading {
        "[shoot]" => "ShootEntry",
        "[camera.NAME]" => "CameraEntry",
        "[lens.NAME]" => "LensEntry",
        "[table.NAME]" => "TableEntry",
        "[subject.NAME]" => "SubjectEntry",
        "[subject.NAME.vessel]" => "VesselEntry",
        "[support.NAME]" => "SupportEntry",
        "[support.NAME.head]" => "HeadEntry",
        "[support.NAME.boom]" => "BoomEntry",
        "[support.NAME.boom.stiffness]" => "StiffnessEntry",
        "[[support.NAME.sandbags]]" => "SandbagEntry",
        "[bay.NAME]" => "BayEntry",
        "[criteria]" => "CriteriaEntry",
        "[kit]" => "KitEntry",
        "[weights]" => "WeightsEntry",
        "[[weights.counterweights]], [[weights.base_weights]]" => "PieceSizeEntry",
        "[order]" => "OrderEntry",
        "[[shot]]" => "ShotEntry",
        "[[log]]" => "LoggedEntry",
        other => panic!("no type is named for {other}"),
    }
}

/// What may stand at a key of a shoot file.
fn entry_type(key: &Value) -> String {
    let name = key["key"].as_str().unwrap();
    match (key["sort"].as_str().unwrap(), name) {
        ("number", _) => "Quantity".into(),
        ("whole", _) => "number".into(),
        ("word", _) => {
            let words = key["words"].as_array().unwrap().iter().map(Value::to_string);
            words.collect::<Vec<_>>().join(" | ")
        }
        ("flag", _) => "boolean".into(),
        ("text" | "name", _) => "string".into(),
        ("aspect", _) => "`${number}:${number}`".into(),
        ("table", "vessel") => "VesselEntry".into(),
        ("table", "head") => "HeadEntry".into(),
        ("table", "boom") => "BoomEntry".into(),
        ("table", "stiffness") => "StiffnessEntry".into(),
        ("table", "sandbags") => "SandbagEntry[]".into(),
        ("name_or_table", "subject") => "string | SubjectEntry".into(),
        ("own", "counterweights" | "base_weights") => "PieceSizeEntry[]".into(),
        ("own", _) if key["allowed"].as_str().unwrap().contains("uncertainty") => "MeasuredQuantity".into(),
        ("own", _) => "string | string[]".into(),
        other => panic!("no type for {other:?}"),
    }
}

/// One key of an interface.
fn key_line(text: &mut String, indent: &str, key: &Value, typed: &str) {
    let word = |name: &str| key[name].as_str().unwrap_or_default().to_owned();
    let mut told = word("meaning");
    let number = matches!(key["sort"].as_str(), Some("number" | "whole"));
    if number {
        let _ = write!(told, "; {}", word("allowed"));
    }
    let otherwise = word("otherwise");
    if key["standing"] == "optional" {
        let _ = write!(told, ". Left out: {otherwise}.");
    } else if key["standing"] == "one_of" {
        let _ = write!(told, ". One of: {otherwise}.");
    }
    text.push_str(&comment(indent, &told));
    let absent = if key["standing"] == "required" { "" } else { "?" };
    let _ = writeln!(text, "{indent}{}{absent}: {typed};", word("key"));
}

/// The tables of a shoot file, and the file.
fn entries() -> String {
    let mut text = String::new();
    let sections = asked("fields", json!({}));
    for section in sections["sections"].as_array().unwrap() {
        let heading = section["heading"].as_str().unwrap();
        let name = entry_name(heading);
        if name == "PieceSizeEntry" {
            continue;
        }
        let _ = write!(text, "\n/** `{heading}` of a shoot file. */\nexport interface {name} {{\n");
        for key in section["keys"].as_array().unwrap() {
            key_line(&mut text, "  ", key, &entry_type(key));
        }
        text.push_str("}\n");
    }
    let file = r"
/** A shoot file's JSON form. */
export interface Shoot {
  shoot?: ShootEntry;
  camera?: Record<string, CameraEntry>;
  lens?: Record<string, LensEntry>;
  table?: Record<string, TableEntry>;
  subject?: Record<string, SubjectEntry>;
  support?: Record<string, SupportEntry>;
  bay?: Record<string, BayEntry>;
  criteria?: CriteriaEntry;
  kit?: KitEntry;
  weights?: WeightsEntry;
  order?: OrderEntry;
  shot?: ShotEntry[];
  log?: LoggedEntry[];
}

/** What was measured, as in an entry of a shoot file's log. */
export type MeasuredEntry = Pick<
  LoggedEntry,
  | 'sensor_height_mm'
  | 'aim_height_above_floor_mm'
  | 'horizontal_distance_mm'
  | 'sensor_distance_mm'
  | 'elevation_deg'
>;
";
    text + &file.replace('\'', "\"")
}

/// Enumerations that a macro writes: their words as the library tells them.
fn told_codes(types: &mut Types) {
    let codes = asked("codes", json!({}));
    for (name, list) in [("CautionCode", "cautions"), ("ChangeKind", "changes")] {
        let mut text = format!("export type {name} =");
        for code in codes[list].as_array().unwrap() {
            let _ = write!(text, "\n  /** {} */\n  | {}", code["sentence"].as_str().unwrap(), code["code"]);
        }
        types.entry(name.into()).or_default().text = text + ";\n";
    }
}

/// The whole file.
fn written() -> String {
    let mut types = read(&Path::new(env!("CARGO_MANIFEST_DIR")).join("src"));
    told_codes(&mut types);
    let operations = asked("operations", json!({}));
    let mut table =
        String::from("\n/** Everything that can be asked, with what it takes and what it answers. */\n");
    table.push_str("export interface Operations {\n");
    let mut wanted: Vec<String> = vec!["Mistake".into()];
    for operation in operations["operations"].as_array().unwrap() {
        let word = |name: &str| operation[name].as_str().unwrap();
        table.push_str(&comment("  ", word("meaning")));
        let _ = write!(table, "  {}: {{\n    request: {{\n", word("name"));
        for key in operation["keys"].as_array().unwrap() {
            key_line(&mut table, "      ", key, key["typed"].as_str().unwrap());
        }
        let _ = write!(table, "    }};\n    answer: {};\n  }};\n", word("answers"));
        wanted.push(word("answers").into());
    }
    table.push_str("}\n");
    let mut reached = BTreeSet::new();
    while let Some(name) = wanted.pop() {
        if name != "T" && reached.insert(name.clone()) {
            let found =
                types.get(&name).unwrap_or_else(|| panic!("{name} is answered, but not in the sources"));
            wanted.extend(found.uses.iter().cloned());
        }
    }
    let answers: Vec<&str> = reached.iter().map(|name| types[name].text.as_str()).collect();
    format!("{HEAD}{}\n{}{table}{FOOT}", entries(), answers.join("\n"))
}

/// The checked-in file is what the sources give.
#[test]
fn types_are_current() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("src/web/module/tablerig.d.ts");
    let text = written();
    if env::var_os("TABLERIG_BLESS").is_some() {
        fs::write(&path, &text).unwrap();
    }
    let recorded = fs::read_to_string(&path).unwrap_or_default();
    let first = recorded.lines().zip(text.lines()).find(|(recorded, text)| recorded != text);
    assert!(recorded == text, "tablerig.d.ts is out of date; first difference: {first:?}");
}
