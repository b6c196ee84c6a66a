//! `tablerig draw`: the drawings of a shot, as SVG.

use std::format;
use std::path::PathBuf;
use std::prelude::rust_2024::*;

use clap::{Args, ValueEnum};
use serde_json::{Value, json};

use super::arguments::File;
use super::failure::Failure;
use super::flags::pick_shot;
use super::page::Page;
use super::{load, write};
use crate::draw::{Style, above, picture, side};
use crate::shootfile::NamedShot;

/// From where it is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum View {
    /// From the side, with the measures to set
    Side,
    /// From above: bay, table, frame, stand and weights
    Above,
    /// The picture as the lens will see it
    Picture,
}

#[derive(Clone, Debug, Args)]
pub(crate) struct DrawFlags {
    /// The shot's name
    name: String,
    #[command(flatten)]
    file: File,
    /// Only this one; without -o it is printed
    #[arg(long, value_enum)]
    view: Option<View>,
    /// The folder to write SHOT-side.svg, SHOT-above.svg and SHOT-picture.svg into
    #[arg(short, long, value_name = "FOLDER")]
    output: Option<PathBuf>,
}

/// The answer: an SVG to print, or what was written.
pub(crate) enum Drawn {
    Svg(String),
    Written(Value),
}

/// Draws.
pub(crate) fn draw(page: &mut Page, flags: &DrawFlags) -> Result<Drawn, Failure> {
    let file = load(flags.file.path.as_deref())?;
    let shot = pick_shot(&file, &flags.name)?;
    let style = Style { unit: page.units.drawn(), id: &shot.name, name: &shot.name, ..Style::DEFAULT };
    let views = match flags.view {
        Some(view) => Vec::from([view]),
        None => Vec::from([View::Side, View::Above, View::Picture]),
    };
    let Some(folder) = &flags.output else {
        return match flags.view {
            Some(view) => Ok(Drawn::Svg(svg(view, shot, &style))),
            None => Err(Failure::input("give -o FOLDER to write the three drawings, or --view to print one")),
        };
    };
    // A name that had to be altered may be another's: its place in the list tells them apart.
    let mut name = plain(&shot.name);
    if name != shot.name {
        let place = file.shots.iter().position(|other| other.name == shot.name).unwrap_or(0);
        name = format!("{name}~{}", place + 1);
    }
    let files: Vec<(PathBuf, Vec<u8>)> = views
        .into_iter()
        .map(|view| {
            let path = folder.join(format!("{name}-{}.svg", word(view)));
            (path, svg(view, shot, &style).into_bytes())
        })
        .collect();
    let written: Vec<_> = files.iter().map(|(path, _)| path.as_path()).collect();
    write::apart(flags.file.path.as_deref(), &written)?;
    write::all(&files)?;
    let written: Vec<PathBuf> = files.into_iter().map(|(path, _)| path).collect();
    for path in &written {
        page.paragraph(&format!("{}", path.display()));
    }
    Ok(Drawn::Written(json!({ "shot": shot.name, "written": written })))
}

fn svg(view: View, shot: &NamedShot, style: &Style<'_>) -> String {
    match view {
        View::Side => side(&shot.brief, &shot.plan, style),
        View::Above => above(&shot.brief, &shot.plan, style),
        View::Picture => picture(&shot.brief, &shot.plan, style),
    }
}

fn word(view: View) -> &'static str {
    match view {
        View::Side => "side",
        View::Above => "above",
        View::Picture => "picture",
    }
}

/// A shot's name as part of a file's.
fn plain(name: &str) -> String {
    name.chars().map(|c| if c.is_alphanumeric() || matches!(c, '-' | '_') { c } else { '-' }).collect()
}
