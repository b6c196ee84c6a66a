//! `tablerig sheet`: the sheet for the stand, as HTML, and as PDF where the machine has a tool for it.

use std::format;
use std::path::{Path, PathBuf};
use std::prelude::rust_2024::*;
use std::process::{Command, Output};

use clap::{Args, ValueEnum};
use serde_json::{Value, json};

use super::failure::Failure;
use super::page::Page;
use super::whole::WholeFlags;
use super::write;
use crate::sheet::Paper;

/// The paper.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum PaperFlag {
    A4,
    Letter,
}

#[derive(Clone, Debug, Args)]
pub(crate) struct SheetFlags {
    #[command(flatten)]
    whole: WholeFlags,
    /// Where to write the HTML; - or nothing: print it
    #[arg(short, long, value_name = "FILE")]
    output: Option<PathBuf>,
    /// Write a PDF too, by a browser or a converter found on this machine
    #[arg(long, value_name = "FILE")]
    pdf: Option<PathBuf>,
    /// The paper; left out, the HTML fits both and the PDF is A4
    #[arg(long, value_enum)]
    paper: Option<PaperFlag>,
}

/// The answer: HTML to print, or what was written.
pub(crate) enum Sheeted {
    Html(String),
    Written(Value),
}

/// Writes the sheet.
pub(crate) fn sheet(page: &mut Page, flags: &SheetFlags) -> Result<Sheeted, Failure> {
    let file = flags.whole.load()?;
    let whole = flags.whole.whole(&file)?;
    let unit = page.units.drawn();
    let paper = |flag: PaperFlag| match flag {
        PaperFlag::A4 => Paper::A4,
        PaperFlag::Letter => Paper::Letter,
    };
    let html = |paper: Option<Paper>| -> Result<String, Failure> {
        let html = whole.sheet(unit, paper).map_err(|fault| Failure::input(format!("{fault}")))?;
        Ok(html.unwrap_or_default())
    };
    let output = flags.output.as_deref().filter(|path| path.as_os_str() != "-");
    let written: Vec<&Path> = output.into_iter().chain(flags.pdf.as_deref()).collect();
    write::apart(flags.whole.path(), &written)?;
    let mut files = Vec::new();
    if let Some(path) = output {
        files.push((path.to_path_buf(), html(flags.paper.map(paper))?.into_bytes()));
    }
    if let Some(path) = &flags.pdf {
        let bytes = pdf(&html(Some(flags.paper.map_or(Paper::A4, paper)))?)?;
        files.push((path.clone(), bytes));
    }
    write::all(&files)?;
    if output.is_none() && (flags.pdf.is_none() || flags.output.is_some()) {
        return Ok(Sheeted::Html(html(flags.paper.map(paper))?));
    }
    for path in &written {
        page.paragraph(&format!("{}", path.display()));
    }
    Ok(Sheeted::Written(json!({ "shots": whole.shots.len(), "written": written })))
}

/// What makes PDFs, the better first.
const TOOLS: &[&str] = &["chromium", "chromium-browser", "weasyprint"];

/// The first of them that the machine has.
fn tool() -> Option<(&'static str, PathBuf)> {
    let path = std::env::var_os("PATH")?;
    let folders: Vec<PathBuf> = std::env::split_paths(&path).collect();
    TOOLS.iter().find_map(|name| {
        let found = folders.iter().map(|folder| folder.join(name)).find(|path| path.is_file())?;
        Some((*name, found))
    })
}

/// The HTML as a PDF.
fn pdf(html: &str) -> Result<Vec<u8>, Failure> {
    let Some((name, program)) = tool() else {
        let tools = crate::shootfile::field::listed(TOOLS, "or");
        return Err(Failure::input(format!(
            "a PDF needs one of {tools}, and none of them is on this machine: write the HTML with -o and print it from any \
             browser"
        )));
    };
    let failed = |why: String| Failure::input(format!("{name} made no PDF: {why}"));
    let made = || -> std::io::Result<(Output, Option<Vec<u8>>)> {
        let folder = tempfile::tempdir()?;
        let (from, to) = (folder.path().join("sheet.html"), folder.path().join("sheet.pdf"));
        std::fs::write(&from, html)?;
        let mut output = run(name, &program, folder.path(), (&from, &to), false)?;
        // A browser that root starts asks for this; what it opens is the sheet just written, without scripts.
        if !to.exists() && String::from_utf8_lossy(&output.stderr).contains("--no-sandbox") {
            output = run(name, &program, folder.path(), (&from, &to), true)?;
        }
        Ok((output, std::fs::read(&to).ok()))
    };
    let (output, bytes) = made().map_err(|error| failed(format!("{error}")))?;
    match bytes.filter(|bytes| bytes.starts_with(b"%PDF")) {
        Some(bytes) => Ok(bytes),
        None => {
            let told = String::from_utf8_lossy(&output.stderr);
            let last = told.lines().rev().find(|line| !line.trim().is_empty()).unwrap_or("it says nothing");
            Err(failed(last.into()))
        }
    }
}

fn run(
    name: &str,
    program: &Path,
    folder: &Path,
    (from, to): (&Path, &Path),
    as_root: bool,
) -> std::io::Result<Output> {
    let mut command = Command::new(program);
    if name == "weasyprint" {
        command.arg(from).arg(to);
    } else {
        command.args(["--headless", "--disable-gpu", "--no-first-run", "--no-pdf-header-footer"]);
        command.arg(format!("--user-data-dir={}", folder.join("profile").display()));
        if as_root {
            command.arg("--no-sandbox");
        }
        command.arg(format!("--print-to-pdf={}", to.display())).arg(from);
    }
    command.stdin(std::process::Stdio::null()).output()
}
