//! The commands about a whole shoot: choose, fit, book, order.

mod book;
mod choose;
mod fit;
mod order;

use std::format;
use std::path::Path;
use std::prelude::rust_2024::*;

use clap::Args;

pub(crate) use self::book::book;
pub(crate) use self::choose::{ChooseFlags, choose};
pub(crate) use self::fit::fit;
pub(crate) use self::order::order;
use super::arguments::File;
use super::failure::Failure;
use super::flags::pick_shot;
use super::load;
use super::setting::is_stopped;
use crate::shootfile::ShootFile;
use crate::shootfile::whole::Whole;

/// A shoot file, with or without some of its shots.
#[derive(Clone, Debug, Args)]
pub(crate) struct WholeFlags {
    /// A shot that is not to count; may be given several times
    #[arg(long, value_name = "SHOT")]
    leave_out: Vec<String>,
    #[command(flatten)]
    file: File,
}

impl WholeFlags {
    /// Where the file is; `None` for the built-in demo.
    pub(crate) fn path(&self) -> Option<&Path> {
        self.file.path.as_deref()
    }

    /// Reads the file.
    pub(crate) fn load(&self) -> Result<ShootFile, Failure> {
        load(self.path())
    }

    /// Its shots without those that are left out.
    pub(crate) fn whole<'a>(&self, file: &'a ShootFile) -> Result<Whole<'a>, Failure> {
        for name in &self.leave_out {
            pick_shot(file, name)?;
        }
        let names: Vec<&str> = self.leave_out.iter().map(String::as_str).collect();
        let whole = Whole::new(file, &names);
        match (file.shots.is_empty(), whole.shots.is_empty()) {
            (true, _) => Err(Failure::input("the file has no shots: each stands under its own [[shot]]")),
            (false, true) => Err(Failure::input("every shot is left out")),
            (false, false) => Ok(whole),
        }
    }
}

/// The names of shots, by their places.
fn names(whole: &Whole<'_>, places: &[usize]) -> String {
    let named: Vec<&str> = places.iter().map(|place| name(whole, *place)).collect();
    if named.len() == whole.shots.len() && named.len() > 1 { "all shots".into() } else { named.join(", ") }
}

fn name<'a>(whole: &Whole<'a>, place: usize) -> &'a str {
    whole.shots.get(place).map_or("", |shot| shot.name.as_str())
}

/// What to say where shots cannot be done as asked, yet count.
fn stopped(whole: &Whole<'_>) -> Option<String> {
    let stops = |place: &usize| whole.shots.get(*place).is_some_and(|shot| is_stopped(&shot.plan));
    let stopped: Vec<usize> = (0..whole.shots.len()).filter(stops).collect();
    let listed: Vec<String> =
        stopped.iter().map(|place| format!("--leave-out {}", name(whole, *place))).collect();
    (!stopped.is_empty()).then(|| {
        format!(
            "Not as asked, but counted here: {}. To leave out: {}.",
            names(whole, &stopped),
            listed.join(" ")
        )
    })
}
