//! The same plan in straightforward Rust over a general geometry crate, for comparing with the library.
//!
//!   straightforward export COUNT FOLDER   briefs and the library's plans as columns, for the other ways
//!   straightforward agree COUNT           how far the two are apart, output by output
//!   straightforward time                  both in turns, part by part, as tab-separated lines

#![allow(clippy::disallowed_methods, reason = "straightforward Rust takes the standard library's functions")]

mod agree;
mod lens;
#[path = "../../../../benches/mix.rs"]
#[allow(dead_code, reason = "each program uses its part")]
mod mix;
mod rig;
mod rows;
mod standing;
mod timing;
#[path = "../../../../benches/turns.rs"]
#[allow(dead_code, reason = "each program uses its part")]
mod turns;
mod view;
mod whole;
#[path = "../../../workshop/mod.rs"]
mod workshop;

use std::fs::File;
use std::io::{BufWriter, Write};
use std::path::Path;

use tablerig::brief::{Brief, Framing};
use tablerig::plan::plan;

/// Briefs of the mix that name their frame's width.
fn briefs(count: usize) -> Vec<Brief> {
    let mut lot = mix::Lot::new(7);
    std::iter::repeat_with(|| mix::brief(&mut lot))
        .filter(|brief| matches!(brief.shot.framing, Framing::FrameWidthMm(_)) && plan(brief).is_ok())
        .take(count)
        .collect()
}

/// Rows of doubles, and their names in a file of their own.
fn export(count: usize, folder: &Path) -> std::io::Result<()> {
    let briefs = briefs(count);
    for (name, row) in [
        ("briefs", (|brief| rows::brief(brief)) as fn(&Brief) -> rows::Row),
        ("plans", |brief| plan(brief).map(|plan| rows::plan(&plan)).unwrap_or_default()),
    ] {
        let mut out = BufWriter::new(File::create(folder.join(format!("{name}.f64")))?);
        for brief in &briefs {
            for (_, value) in row(brief).0 {
                out.write_all(&value.to_le_bytes())?;
            }
        }
        let names: Vec<String> = row(&briefs[0]).0.into_iter().map(|column| column.0).collect();
        std::fs::write(folder.join(format!("{name}.txt")), names.join("\n"))?;
    }
    Ok(())
}

fn main() -> std::io::Result<()> {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    match words[..] {
        ["export", count, folder] => export(count.parse().expect("a count"), Path::new(folder)),
        ["agree", count] => {
            agree::agree(&briefs(count.parse().expect("a count")));
            Ok(())
        }
        ["time"] => {
            timing::time(&briefs(400));
            Ok(())
        }
        _ => {
            eprintln!("straightforward export COUNT FOLDER | agree COUNT | time");
            std::process::exit(2);
        }
    }
}
