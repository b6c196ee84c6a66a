//! The command `tablerig`: reads shoot files, plans them and prints the answers.

mod advise;
mod arguments;
mod ask;
mod cautioned;
mod draw;
mod failure;
mod fields;
mod flags;
mod full;
mod json;
mod overview;
mod page;
mod problem_page;
mod set;
mod setting;
mod sheet;
mod shown;
mod source;
mod sweep;
mod whole;
mod wording;
mod write;

use std::format;
use std::io::Write;
use std::path::Path;
use std::prelude::rust_2024::*;
use std::process::ExitCode;

use self::arguments::{Arguments, Color, Command, Output};
use self::draw::Drawn;
use self::failure::{Failure, NOT_AS_ASKED, WRONG_INPUT};
use self::page::Page;
use self::sheet::Sheeted;
use self::source::Source;
use crate::caution::Level;
use crate::shootfile::problem::{Problem, ProblemKind};
use crate::shootfile::{self, NamedShot, ShootFile};

/// Runs the command.
pub fn main() -> ExitCode {
    let arguments = match Arguments::read() {
        Ok(arguments) => arguments,
        Err(error) => {
            // Help and version are answers; everything else is wrong input.
            let printed = error.print();
            if !error.use_stderr() {
                return ExitCode::from(ended(printed, 0));
            }
            if std::env::args_os().any(|argument| argument == "--json") {
                tell(&Failure::arguments(&format!("{error}")));
            }
            return ExitCode::from(WRONG_INPUT);
        }
    };
    match arguments.output.color {
        Color::Auto => {}
        Color::Always => anstream::ColorChoice::Always.write_global(),
        Color::Never => anstream::ColorChoice::Never.write_global(),
    }
    match answer(&arguments) {
        Ok((text, status)) => {
            let mut out = anstream::stdout().lock();
            ExitCode::from(ended(write!(out, "{text}").and_then(|()| out.flush()), status))
        }
        Err(failure) => {
            let _ = write!(anstream::stderr().lock(), "{}", failure.text());
            if arguments.output.json {
                tell(&failure);
            }
            ExitCode::from(failure.status)
        }
    }
}

/// The exit status once the answer was printed. That nobody reads any more is no failure.
fn ended(printed: std::io::Result<()>, status: u8) -> u8 {
    match printed {
        Err(error) if error.kind() != std::io::ErrorKind::BrokenPipe => {
            let failure = Failure::unwritten(format!("the answer cannot be printed: {}", error.kind()));
            let _ = write!(anstream::stderr().lock(), "{}", failure.text());
            failure.status
        }
        _ => status,
    }
}

/// Prints a failure for a program, where its answer would be.
fn tell(failure: &Failure) {
    // The mistakes are told for people as well: that nobody reads here is no other failure.
    let _ = writeln!(anstream::stdout().lock(), "{:#}", failure.json());
}

/// The answer's text and the exit status.
fn answer(arguments: &Arguments) -> Result<(String, u8), Failure> {
    let output = arguments.output;
    let mut page = Page::new(output.units);
    let (value, status) = match &arguments.command {
        None => plan(&mut page, None)?,
        Some(Command::Plan { file }) => plan(&mut page, file.path.as_deref())?,
        Some(Command::Shot { name, file }) => {
            let file = load(file.path.as_deref())?;
            let shot = flags::pick_shot(&file, name)?;
            full::print(&mut page, shot);
            (json::one(shot), status(core::slice::from_ref(shot)))
        }
        Some(Command::Choose(flags)) => whole::choose(&mut page, flags)?,
        Some(Command::Fit(flags)) => whole::fit(&mut page, flags)?,
        Some(Command::Book(flags)) => whole::book(&mut page, flags)?,
        Some(Command::Order(flags)) => whole::order(&mut page, flags)?,
        Some(Command::Set(flags)) => set::set(&mut page, flags)?,
        Some(Command::Draw(flags)) => match draw::draw(&mut page, flags)? {
            Drawn::Svg(svg) => return Ok((svg, 0)),
            Drawn::Written(written) => (written, 0),
        },
        Some(Command::Sheet(flags)) => match sheet::sheet(&mut page, flags)? {
            Sheeted::Html(html) => return Ok((html, 0)),
            Sheeted::Written(written) => (written, 0),
        },
        Some(Command::Ask(command)) => {
            let answer = ask::answer(command, output.units)?;
            answer.print(&mut page);
            (answer.json, 0)
        }
        Some(Command::Advise(flags)) => {
            let advised = advise::advise(flags)?;
            advised.print(&mut page);
            (advised.json(), 0)
        }
        Some(Command::Sweep(flags)) => {
            let swept = sweep::sweep(flags)?;
            swept.print(&mut page);
            cautioned::usual(&mut page, swept.overhead());
            (swept.json(), 0)
        }
        Some(Command::Fields { kind }) => {
            let sections = fields::find(kind.as_deref())?;
            fields::print(&mut page, &sections);
            (fields::json(&sections), 0)
        }
        Some(Command::Example) => return Ok((Source::demo().text, 0)),
    };
    Ok((printed(page, &value, output)?, status))
}

fn plan(page: &mut Page, path: Option<&Path>) -> Result<(serde_json::Value, u8), Failure> {
    let file = load(path)?;
    if file.shots.is_empty() {
        return Err(Failure::input("the file has no shots: each stands under its own [[shot]]"));
    }
    overview::print(page, &file);
    Ok((json::file(&file), status(&file.shots)))
}

fn printed(page: Page, value: &serde_json::Value, output: Output) -> Result<String, Failure> {
    if !output.json {
        return Ok(page.into_text());
    }
    let text = serde_json::to_string_pretty(value).map_err(|error| Failure::input(format!("{error}")))?;
    Ok(text + "\n")
}

/// 1 where a shot cannot be done as asked.
fn status(shots: &[NamedShot]) -> u8 {
    let stopped = shots.iter().any(|shot| shot.plan.cautions.worst() == Some(Level::Stop));
    if stopped { NOT_AS_ASKED } else { 0 }
}

/// Reads a shoot file, or the built-in demo.
fn load(path: Option<&Path>) -> Result<ShootFile, Failure> {
    let source = match path {
        None => Source::demo(),
        Some(path) => Source::open(path).map_err(|refused| {
            let (source, problem) = *refused;
            Failure::file(&[problem], &source)
        })?,
    };
    let file =
        shootfile::read(&source.text, source.form).map_err(|problems| Failure::file(&problems, &source))?;
    if file.shots.is_empty() && file.gear.is_empty() {
        let problem =
            Problem::general(ProblemKind::Lacking, format!("{} describes no gear and no shots", source.name))
                .help("`tablerig example > shoot.toml` writes a file to start from");
        return Err(Failure::file(&[problem], &source));
    }
    Ok(file)
}
