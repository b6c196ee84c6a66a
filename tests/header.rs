//! The C header is the one that its sources give, and says something about every item in it.
//!
//! After a change to `src/doors/c`, `include/cbindgen.toml` or the example, `TABLERIG_BLESS=1 cargo test
//! --test header` writes it anew.

use std::path::{Path, PathBuf};
use std::{env, fs};

use tablerig::caution::CautionCode;

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

fn recorded() -> PathBuf {
    root().join("include/tablerig.h")
}

/// The example as part of the header's first comment.
fn example() -> String {
    let source = fs::read_to_string(root().join("tests/hosts/c/first.c")).unwrap();
    let lines = source.lines().map(|line| {
        // A comment inside a comment would end it.
        let line = line.replace("/*", "//").replace(" */", "");
        format!(" *     {line}").trim_end().to_owned()
    });
    lines.collect::<Vec<_>>().join("\n")
}

fn generated() -> String {
    let mut config = cbindgen::Config::from_file(root().join("include/cbindgen.toml")).unwrap();
    config.header = config.header.map(|page| page.trim().replace("@EXAMPLE@", &example()));
    let builder = cbindgen::Builder::new().with_src(root().join("src/doors/c/mod.rs")).with_config(config);
    let mut bytes = Vec::new();
    builder.generate().unwrap().write(&mut bytes);
    joined(&String::from_utf8(bytes).unwrap())
}

/// A comment of one line takes one line.
fn joined(header: &str) -> String {
    let lines: Vec<&str> = header.lines().collect();
    let mut joined = String::new();
    let mut rest = lines.as_slice();
    while let [line, after @ ..] = rest {
        match after {
            [text, end, beyond @ ..] if line.trim() == "/**" && end.trim() == "*/" => {
                let text = text.trim().trim_start_matches("* ");
                joined.push_str(&format!("{line} {text} */\n"));
                rest = beyond;
            }
            _ => {
                joined.push_str(line);
                joined.push('\n');
                rest = after;
            }
        }
    }
    joined
}

#[test]
fn the_header_is_the_generated_one() {
    let fresh = generated();
    if env::var_os("TABLERIG_BLESS").is_some() {
        fs::write(recorded(), &fresh).unwrap();
    }
    let recorded = fs::read_to_string(recorded()).unwrap_or_default();
    let differing = recorded.lines().zip(fresh.lines()).position(|(old, new)| old != new);
    let line = differing.unwrap_or_else(|| recorded.lines().count().min(fresh.lines().count())) + 1;
    assert!(recorded == fresh, "include/tablerig.h is not current from line {line} on; see this file's head");
}

/// Lines of the header after its first comment that begin an item: a constant, a type, an enumerator, a field
/// or a function.
fn items(header: &str) -> Vec<(usize, &str)> {
    let lines: Vec<&str> = header.lines().collect();
    let mut items = Vec::new();
    let (mut inside_comment, mut inside_type, mut inside_call) = (false, false, false);
    for (index, line) in lines.iter().enumerate() {
        let text = line.trim();
        if inside_comment || text.starts_with("/*") {
            inside_comment = !text.ends_with("*/");
            continue;
        }
        if inside_call {
            inside_call = !text.ends_with(';');
            continue;
        }
        let opens = text.ends_with('{') && !text.starts_with("extern");
        let passed = text.is_empty()
            || text == "{"
            || (text.starts_with('#') && !text.starts_with("#define TABLERIG_"))
            || text == "#define TABLERIG_H"
            || text.starts_with('}')
            || text.starts_with("extern")
            || text.starts_with(": int32_t")
            || text.starts_with("typedef int32_t")
            || text.starts_with("typedef enum");
        if text.starts_with('}') {
            inside_type = false;
        }
        if passed {
            continue;
        }
        items.push((index, *line));
        if opens {
            inside_type = true;
        } else if !inside_type && !text.starts_with('#') && !text.ends_with(';') {
            // A function over several lines, or an enumeration whose brace comes later.
            inside_call = text.contains('(');
            inside_type = text.starts_with("enum");
        }
    }
    items
}

#[test]
fn every_item_says_what_it_is() {
    let header = fs::read_to_string(recorded()).unwrap();
    let lines: Vec<&str> = header.lines().collect();
    let items = items(&header);
    let bare: Vec<_> = items.iter().filter(|(index, _)| !lines[index - 1].trim().ends_with("*/")).collect();
    assert!(bare.is_empty(), "without a comment: {bare:#?}");
    // 80 functions, 45 structs and 15 enumerations with what is in them: fewer means that lines were passed
    // over.
    assert!(items.len() > 600, "only {} items were recognised", items.len());
    for rust in ["crate::", "[`", "Option", "None", "Some(", "# Safety", "unsafe"] {
        assert!(!header.contains(rust), "{rust} is not for C readers");
    }
}

#[test]
fn every_caution_is_described_by_its_own_sentence() {
    let header = fs::read_to_string(recorded()).unwrap();
    let flat = header.replace("\n     * ", " ");
    let flat = &flat[flat.find("enum TablerigCautionCode").unwrap()..];
    for code in CautionCode::ALL {
        let number = format!(" = {},", *code as i32);
        let line = flat.find(&number).unwrap_or_else(|| panic!("{code:?} has no constant"));
        let before = flat[..line].trim_end();
        let comment = before.rsplit("/**").next().unwrap();
        assert!(comment.contains(code.sentence()), "{code:?}: {comment}");
    }
}
