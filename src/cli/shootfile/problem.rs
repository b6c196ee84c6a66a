//! A mistake in a shoot file, shown at its place.

use std::borrow::ToOwned;
use std::fmt::Display;
use std::prelude::rust_2024::*;
use std::string::ToString;

use annotate_snippets::{AnnotationKind, Group, Level, Renderer, Snippet};

use super::source::Source;
use super::tree::Span;

/// One mistake: what is wrong, where, and what was expected.
#[derive(Clone, Debug)]
pub(crate) struct Problem {
    title: String,
    /// The place, and what stands beside it. None where the file as a whole is meant.
    place: Option<(Span, String)>,
    /// A second place that has to do with it.
    also: Option<(Span, String)>,
    notes: Vec<String>,
    helps: Vec<String>,
}

impl Problem {
    /// A mistake at a place of the file.
    pub(crate) fn new(title: impl Display, span: Span, label: impl Display) -> Problem {
        let place = Some((span, label.to_string()));
        Problem { title: title.to_string(), place, also: None, notes: Vec::new(), helps: Vec::new() }
    }

    /// A mistake that has no place in the file.
    pub(crate) fn general(title: impl Display) -> Problem {
        Problem { title: title.to_string(), place: None, also: None, notes: Vec::new(), helps: Vec::new() }
    }

    /// Names a second place.
    pub(crate) fn also(mut self, span: Span, label: impl Display) -> Problem {
        self.also = Some((span, label.to_string()));
        self
    }

    /// Adds what the reader may need to know.
    pub(crate) fn note(mut self, note: impl Display) -> Problem {
        self.notes.push(note.to_string());
        self
    }

    /// Adds what to do about it.
    pub(crate) fn help(mut self, help: impl Display) -> Problem {
        self.helps.push(help.to_string());
        self
    }

    /// Where it stands in the file; what has no place comes first.
    pub(crate) fn start(&self) -> usize {
        self.place.as_ref().map_or(0, |(span, _)| span.start)
    }

    fn group<'a>(&'a self, source: &'a Source) -> Group<'a> {
        let title = Level::ERROR.primary_title(self.title.as_str());
        let mut group = Group::with_title(title);
        if let Some((span, label)) = &self.place {
            let mut snippet = Snippet::source(source.text.as_str())
                .path(source.name.as_str())
                .annotation(AnnotationKind::Primary.span(span.clone()).label(label.as_str()));
            if let Some((span, label)) = &self.also {
                snippet =
                    snippet.annotation(AnnotationKind::Context.span(span.clone()).label(label.as_str()));
            }
            group = group.element(snippet);
        }
        for note in &self.notes {
            group = group.element(Level::NOTE.message(note.as_str()));
        }
        for help in &self.helps {
            group = group.element(Level::HELP.message(help.as_str()));
        }
        group
    }
}

/// All mistakes of a file as text, with colours for a terminal; whoever prints it takes them off where
/// they don't belong. After a dozen the rest is only counted.
pub(crate) fn render(problems: &[Problem], source: &Source) -> String {
    const MOST: usize = 12;
    let renderer = Renderer::styled();
    let mut text = String::new();
    for problem in problems.iter().take(MOST) {
        text.push_str(&renderer.render(&[problem.group(source)]));
        text.push_str("\n\n");
    }
    if source.text.is_empty() {
        return text;
    }
    let count = problems.len();
    let summary = match count {
        1 => "1 mistake".to_owned(),
        _ => std::format!("{count} mistakes"),
    };
    text.push_str(&summary);
    text.push_str(" in ");
    text.push_str(&source.name);
    if count > MOST {
        text.push_str(&std::format!("; the first {MOST} are shown"));
    }
    text.push_str(": nothing was planned\n");
    text
}
