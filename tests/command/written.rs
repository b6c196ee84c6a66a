//! What is written, where it cannot be, and what must not be written over.

use super::run::{demo, file, run};

fn unwritten(arguments: &[&str], words: &str) {
    let run = run(arguments);
    assert!(run.status == 3 && run.out.is_empty() && run.err.contains(words), "{arguments:?}: {}", run.err);
}

#[test]
fn what_cannot_be_written_ends_with_3() {
    let path = file("shoot.toml", demo().as_bytes());
    let folder = path.parent().and_then(|folder| folder.to_str()).expect("a plain path");
    unwritten(&["sheet", "-o", "/no/such/folder/sheet.html"], "cannot be written: entity not found");
    unwritten(&["sheet", "-o", folder], "cannot be written: is a directory");
    unwritten(&["draw", "soup", "-o", path.to_str().expect("a plain path")], "not a directory");
}

/// The sheet named by mistake for the file that it is made from would cost the shoot.
#[test]
fn a_shoot_file_is_not_written_over() {
    let text = demo();
    let path = file("shoot.toml", text.as_bytes());
    let name = path.to_str().expect("a plain path");
    let dotted = path.parent().expect("a folder").join("./shoot.toml");
    let dotted = dotted.to_str().expect("a plain path");
    for to in [["-o", name], ["-o", dotted], ["--pdf", name]] {
        let run = run(&[&["sheet", name][..], &to].concat());
        assert!(run.status == 2 && run.err.contains("is the shoot file itself"), "{to:?}: {}", run.err);
        assert_eq!(std::fs::read_to_string(&path).expect("it is there"), text);
    }
    let drawn = path.with_file_name("soup-side.svg");
    std::fs::write(&drawn, &text).expect("it can be written");
    let folder = drawn.parent().and_then(|folder| folder.to_str()).expect("a plain path");
    let run = run(&["draw", "soup", drawn.to_str().expect("a plain path"), "-o", folder]);
    assert!(run.status == 2 && run.err.contains("is the shoot file itself"), "{}", run.err);
    assert_eq!(std::fs::read_to_string(&drawn).expect("it is there"), text);
}

#[test]
fn one_file_is_not_written_twice() {
    let path = file("sheet.html", b"before");
    let name = path.to_str().expect("a plain path");
    let run = run(&["sheet", "-o", name, "--pdf", name]);
    assert!(run.status == 2 && run.err.contains("is to be written twice"), "{}", run.err);
    assert_eq!(std::fs::read(&path).expect("it is there"), b"before");
}

/// A pipe stays one: a file moved into its place would be in the way of everybody who uses it. Not tried on a
/// device, which a mistake here would cost the machine.
#[cfg(unix)]
#[test]
fn a_pipe_is_written_into() {
    use std::os::unix::fs::FileTypeExt;
    let pipe = file("beside.txt", b"").with_file_name("pipe");
    let made = std::process::Command::new("mkfifo").arg(&pipe).status();
    if !made.is_ok_and(|made| made.success()) {
        return;
    }
    let reader = std::thread::spawn({
        let pipe = pipe.clone();
        move || std::fs::read_to_string(pipe)
    });
    let run = run(&["sheet", "-o", pipe.to_str().expect("a plain path")]);
    assert_eq!((run.status, run.err.as_str()), (0, ""));
    let kind = std::fs::metadata(&pipe).expect("it is there").file_type();
    assert!(kind.is_fifo(), "{kind:?}");
    assert!(reader.join().expect("it ends").expect("it is read").starts_with("<!DOCTYPE html>"));
}

/// A full disk, as far as printing goes.
#[cfg(target_os = "linux")]
#[test]
fn what_cannot_be_printed_is_said() {
    for arguments in [&["plan"][..], &["--help"], &["fields", "--json"], &["sheet"]] {
        let full = std::fs::OpenOptions::new().write(true).open("/dev/full").expect("a device");
        let mut command = std::process::Command::new(env!("CARGO_BIN_EXE_tablerig"));
        let output = command.args(arguments).stdout(full).output().expect("it runs");
        let told = String::from_utf8_lossy(&output.stderr).into_owned();
        assert_eq!(output.status.code(), Some(3), "{arguments:?}: {told}");
        assert!(told.contains("cannot be printed"), "{arguments:?}: {told}");
    }
}

/// Arguments that are no text are wrong input like any other.
#[cfg(unix)]
#[test]
fn arguments_that_are_no_text() {
    use std::os::unix::ffi::OsStrExt;
    let bytes = std::ffi::OsStr::from_bytes(b"\xff\xfe");
    for before in [&["shot"][..], &[], &["--json", "--units"]] {
        let mut command = std::process::Command::new(env!("CARGO_BIN_EXE_tablerig"));
        let output = command.args(before).arg(bytes).output().expect("it runs");
        let told = String::from_utf8_lossy(&output.stderr).into_owned();
        assert_eq!(output.status.code(), Some(2), "{before:?}: {told}");
        assert!(!told.contains("panicked"), "{told}");
    }
}
