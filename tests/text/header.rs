//! `include/tablerig_text.h` is what its source gives, and the function behaves as it says.
//!
//! `TABLERIG_BLESS=1 cargo test --all-features --test text header` writes it anew.

use std::path::Path;
use std::{env, fs};

use tablerig::doors::text::answer;
use tablerig::doors::text::c_entry::{
    TEXT_NO_ROOM, TEXT_NULL_POINTER, TEXT_OK, TEXT_WRONG_SIZE, tablerig_text_answer,
};

const PAGE: &str = "/*
 * tablerig_text.h - the text door of tablerig: JSON in, JSON out, for hosts that prefer text to structs
 *
 * Generated from src/doors/text/c_entry.rs; not to be edited. MIT license. In a library that was built with
 * the feature text-door.
 *
 * A camera on an arm over a table can hurt someone. Every figure is computed: the makers' ratings of stand,
 * boom, clamp and head rule over it, local codes apply, a qualified rigger decides. Show the cautions that come
 * with an answer beside its numbers.
 */";

fn generated() -> String {
    let mut config = cbindgen::Config {
        language: cbindgen::Language::C,
        cpp_compat: true,
        include_guard: Some("TABLERIG_TEXT_H".into()),
        no_includes: true,
        sys_includes: vec!["stddef.h".into(), "stdint.h".into()],
        usize_is_size_t: true,
        documentation_style: cbindgen::DocumentationStyle::Doxy,
        header: Some(PAGE.into()),
        ..cbindgen::Config::default()
    };
    config.export.renaming_overrides_prefixing = true;
    for name in ["OK", "NULL_POINTER", "WRONG_SIZE", "NO_ROOM"] {
        config.export.rename.insert(format!("TEXT_{name}"), format!("TABLERIG_TEXT_{name}"));
    }
    let source = Path::new(env!("CARGO_MANIFEST_DIR")).join("src/doors/text/c_entry.rs");
    let mut bytes = Vec::new();
    cbindgen::Builder::new().with_src(source).with_config(config).generate().unwrap().write(&mut bytes);
    String::from_utf8(bytes).unwrap().replace(" *\n * # Safety\n", " *\n")
}

#[test]
fn header_is_current() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("include/tablerig_text.h");
    let text = generated();
    if env::var_os("TABLERIG_BLESS").is_some() {
        fs::write(&path, &text).unwrap();
    }
    assert_eq!(fs::read_to_string(&path).unwrap_or_default(), text, "include/tablerig_text.h is out of date");
}

/// The status, and what was written.
fn call(request: &[u8], room: usize) -> (i32, usize, Vec<u8>) {
    let mut buffer = vec![0xa5_u8; room];
    let mut bytes = usize::MAX;
    let (from, to) = (request.as_ptr().cast(), buffer.as_mut_ptr().cast());
    // SAFETY: the buffers are as long as is said.
    let status = unsafe { tablerig_text_answer(from, request.len(), to, room, &mut bytes) };
    (status, bytes, buffer)
}

#[test]
fn answers_are_written_whole_or_not_at_all() {
    let request = r#"{"operation":"version"}"#;
    let wanted = answer(request);
    let (status, bytes, buffer) = call(request.as_bytes(), wanted.len() + 1);
    assert_eq!((status, bytes), (TEXT_OK, wanted.len()));
    assert_eq!(buffer, [wanted.as_bytes(), &[0]].concat());
    for room in [0, 1, wanted.len()] {
        let (status, bytes, buffer) = call(request.as_bytes(), room);
        assert_eq!((status, bytes), (TEXT_NO_ROOM, wanted.len()), "{room}");
        assert!(buffer.iter().all(|byte| *byte == 0xa5), "{room}");
    }
    // Bytes that are no text are a mistake in the request.
    let (status, _, buffer) = call(b"\xff\xfe", 4096);
    assert_eq!(status, TEXT_OK);
    assert!(buffer.starts_with(br#"{"mistakes":["#));
    // Nor is one handed back with other letters than it came with.
    let latin = b"{\"operation\":\"edit\",\"shoot\":\"[shoot]\\ntitle = 'Caf\xe9'\",\"edits\":[]}";
    let (status, bytes, buffer) = call(latin, 4096);
    let told: serde_json::Value = serde_json::from_slice(&buffer[..bytes]).expect("it is JSON");
    let mistake = &told["mistakes"][0];
    assert_eq!((status, mistake["sentence"].as_str()), (TEXT_OK, Some("the request is not UTF-8 text")));
    assert_eq!((&mistake["line"], &mistake["column"]), (&1.into(), &51.into()));
}

#[test]
fn bad_pointers_are_refused() {
    let (null, mut bytes) = (core::ptr::null_mut(), 7_usize);
    let request = b"{}";
    let from = request.as_ptr().cast();
    // SAFETY: null is refused before anything is read; so are lengths beyond memory.
    unsafe {
        assert_eq!(tablerig_text_answer(null, 0, null, 0, &mut bytes), TEXT_NULL_POINTER);
        assert_eq!(tablerig_text_answer(from, 2, null, 1, &mut bytes), TEXT_NULL_POINTER);
        assert_eq!(tablerig_text_answer(from, 2, null, 0, core::ptr::null_mut()), TEXT_NULL_POINTER);
        assert_eq!(tablerig_text_answer(from, usize::MAX, null, 0, &mut bytes), TEXT_WRONG_SIZE);
        assert_eq!(bytes, 7);
        assert_eq!(tablerig_text_answer(from, 2, null, 0, &mut bytes), TEXT_NO_ROOM);
    }
    assert!(bytes > 7);
}
