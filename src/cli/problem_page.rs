//! The mistakes of a shoot file, each shown at its place.

use std::borrow::ToOwned;
use std::prelude::rust_2024::*;

use annotate_snippets::{AnnotationKind, Group, Level, Renderer, Snippet};

use super::shown::shown;
use super::source::Source;
use crate::shootfile::problem::Problem;

fn group<'a>(problem: &'a Problem, source: &'a Source) -> Group<'a> {
    let title = Level::ERROR.primary_title(problem.title.as_str());
    let mut group = Group::with_title(title);
    if let Some((span, label)) = &problem.place {
        let mut snippet = Snippet::source(source.text.as_str())
            .path(source.name.as_str())
            .annotation(AnnotationKind::Primary.span(span.clone()).label(label.as_str()));
        if let Some((span, label)) = &problem.also {
            snippet = snippet.annotation(AnnotationKind::Context.span(span.clone()).label(label.as_str()));
        }
        group = group.element(snippet);
    }
    for note in &problem.notes {
        group = group.element(Level::NOTE.message(note.as_str()));
    }
    for help in &problem.helps {
        group = group.element(Level::HELP.message(help.as_str()));
    }
    group
}

/// A mistake of which nothing steers the terminal, whatever was quoted in it.
fn for_terminal(problem: &Problem) -> Problem {
    let mut clean = problem.clone();
    clean.title = shown(&clean.title);
    for (_, label) in clean.place.iter_mut().chain(&mut clean.also) {
        *label = shown(label);
    }
    for line in clean.notes.iter_mut().chain(&mut clean.helps) {
        *line = shown(line);
    }
    clean
}

/// All mistakes of a file as text, with colours for a terminal; whoever prints it takes them off where
/// they don't belong. After a dozen the rest is only counted.
pub(crate) fn render(problems: &[Problem], source: &Source) -> String {
    const MOST: usize = 12;
    let renderer = Renderer::styled();
    let mut text = String::new();
    // Of the file's own lines the renderer takes care.
    let source = &Source { name: shown(&source.name), ..source.clone() };
    for problem in problems.iter().take(MOST) {
        text.push_str(&renderer.render(&[group(&for_terminal(problem), source)]));
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
