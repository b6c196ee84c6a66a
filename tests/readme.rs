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

#[test]
fn the_command_is_installed_before_it_is_used() {
    let readme = read("README.md");
    let install = readme.find("cargo install --path . --features cli").unwrap();
    let file = readme.find("tablerig example > shoot.toml").unwrap();
    let first_use = readme.find("`tablerig ").unwrap();
    assert!(install < file && file < first_use);
}

#[test]
fn every_unit_is_listed() {
    let readme = read("README.md");
    let help = printed(&["plan", "--help"]);
    let listed =
        help.split("Unit of printed lengths").nth(1).and_then(|rest| rest.split("[default").next()).unwrap();
    let units: Vec<&str> =
        listed.lines().filter_map(|line| line.trim().strip_prefix("- ")?.split(':').next()).collect();
    assert_eq!(units.len(), 5, "{listed}");
    for unit in units {
        assert!(readme.contains(&format!("`{unit}`")), "README does not list --units {unit}");
    }
}
