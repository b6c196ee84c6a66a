//! `tablerig ask`: questions asked the other way round.

mod ceiling;
mod focal_length;
mod magnification;
mod measured;
mod viewpoint;

use std::prelude::rust_2024::*;

use clap::Subcommand;

use super::cautioned;
use super::failure::Failure;
use super::page::Page;

/// The questions.
#[derive(Debug, Subcommand)]
pub(crate) enum AskCommand {
    /// What was really set, from what was measured on the set
    Measured(measured::MeasuredFlags),
    /// The lens that repeats a viewpoint found with another camera in the hand
    Viewpoint(viewpoint::ViewpointFlags),
    /// The largest frame under a ceiling
    Ceiling(ceiling::CeilingFlags),
    /// The focal length for a distance and a frame width
    FocalLength(focal_length::FocalLengthFlags),
    /// The magnification and frame width at a distance
    Magnification(magnification::MagnificationFlags),
}

/// An answer: as JSON, and as pairs for people.
#[derive(Debug)]
pub(crate) struct Answer {
    pub(crate) json: serde_json::Value,
    pub(crate) heading: &'static str,
    pub(crate) pairs: Vec<(&'static str, String)>,
    pub(crate) remark: Option<String>,
    /// Whether it is about a camera above the table.
    pub(crate) overhead: bool,
}

impl Answer {
    /// Prints it for people.
    pub(crate) fn print(&self, page: &mut Page) {
        page.heading(self.heading);
        page.pairs(&self.pairs);
        if let Some(remark) = &self.remark {
            page.gap();
            page.paragraph(remark);
        }
        if self.overhead {
            cautioned::usual(page, true);
        }
    }
}

/// Answers a question.
pub(crate) fn answer(command: &AskCommand, units: super::wording::Units) -> Result<Answer, Failure> {
    match command {
        AskCommand::Measured(flags) => measured::answer(flags, units),
        AskCommand::Viewpoint(flags) => viewpoint::answer(flags, units),
        AskCommand::Ceiling(flags) => ceiling::answer(flags, units),
        AskCommand::FocalLength(flags) => focal_length::answer(flags, units),
        AskCommand::Magnification(flags) => magnification::answer(flags, units),
    }
}
