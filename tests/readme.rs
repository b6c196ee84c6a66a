//! What README shows is what the command prints and draws.

use std::fs;
use std::path::Path;
use std::process::Command;

fn printed(arguments: &[&str]) -> String {
    let output = Command::new(env!("CARGO_BIN_EXE_tablerig"))
        .args(arguments)
        .env_remove("NO_COLOR")
        .env("COLUMNS", "100")
        .output()
        .unwrap();
    String::from_utf8(output.stdout).unwrap()
}

fn read(path: &str) -> String {
    fs::read_to_string(Path::new(env!("CARGO_MANIFEST_DIR")).join(path)).unwrap()
}

#[test]
fn the_plan_of_the_demo_begins_as_shown() {
    let readme = read("README.md");
    let shown = readme.split("```text\n").nth(1).and_then(|rest| rest.split("```").next()).unwrap();
    let shown = shown.trim_end().trim_end_matches("...").trim_end();
    assert!(shown.lines().count() > 10, "README shows the table");
    assert!(printed(&[]).starts_with(shown), "README shows another plan than the command prints");
}

#[test]
fn the_picture_is_what_the_command_draws() {
    let drawn = printed(&["draw", "glaze", "--view", "side"]);
    let path = "tests/golden/glaze-side.svg";
    if std::env::var_os("TABLERIG_BLESS").is_some() {
        fs::write(Path::new(env!("CARGO_MANIFEST_DIR")).join(path), &drawn).unwrap();
    }
    assert!(read("README.md").contains(path));
    assert!(drawn == read(path), "{path} is not what the command draws");
}
