//! Runs the built command on arguments and on files that are written for it.

use std::io::Write;
use std::path::PathBuf;
use std::process::{Command, Stdio};
use std::sync::atomic::{AtomicU32, Ordering};

/// What a run left behind.
#[derive(Debug)]
pub(crate) struct Run {
    pub(crate) status: i32,
    pub(crate) out: String,
    pub(crate) err: String,
}

fn command(arguments: &[&str]) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_tablerig"));
    command.args(arguments).env_remove("COLUMNS").env_remove("NO_COLOR").env_remove("CLICOLOR_FORCE");
    command
}

/// Runs the command.
pub(crate) fn run(arguments: &[&str]) -> Run {
    run_with(arguments, "")
}

/// Runs the command with this on its standard input.
pub(crate) fn run_with(arguments: &[&str], input: &str) -> Run {
    let mut child = command(arguments)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("the command starts");
    // It may end before it has read everything, for example on a wrong flag.
    let _ = child.stdin.take().expect("a pipe").write_all(input.as_bytes());
    let output = child.wait_with_output().expect("the command ends");
    Run {
        status: output.status.code().expect("the command ends by itself"),
        out: String::from_utf8(output.stdout).expect("it prints UTF-8"),
        err: String::from_utf8(output.stderr).expect("it prints UTF-8"),
    }
}

/// Starts the command and does not read what it prints.
pub(crate) fn run_unread(arguments: &[&str]) -> Run {
    let mut child =
        command(arguments).stdout(Stdio::piped()).stderr(Stdio::piped()).spawn().expect("the command starts");
    drop(child.stdout.take());
    let output = child.wait_with_output().expect("the command ends");
    Run {
        status: output.status.code().expect("the command ends by itself"),
        out: String::new(),
        err: String::from_utf8(output.stderr).expect("it prints UTF-8"),
    }
}

/// The built-in demo's text.
pub(crate) fn demo() -> String {
    run(&["example"]).out
}

/// A file for one test, in the folder that cargo gives to tests.
pub(crate) fn file(name: &str, bytes: &[u8]) -> PathBuf {
    static COUNT: AtomicU32 = AtomicU32::new(0);
    let folder = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join(format!(
        "command-{}-{}",
        std::process::id(),
        COUNT.fetch_add(1, Ordering::Relaxed)
    ));
    std::fs::create_dir_all(&folder).expect("a folder can be made");
    let path = folder.join(name);
    std::fs::write(&path, bytes).expect("a file can be written");
    path
}

/// Runs the command on a file of this name and text.
pub(crate) fn run_on(arguments: &[&str], name: &str, text: &str) -> Run {
    let path = file(name, text.as_bytes());
    let mut arguments = arguments.to_vec();
    arguments.push(path.to_str().expect("a plain path"));
    run(&arguments)
}
