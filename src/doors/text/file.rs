//! Shoot files as texts: read into their JSON form, written, edited.

use std::format;
use std::prelude::rust_2024::*;

use serde::Serialize;

use super::asked::Asked;
use super::refusal::{Mistake, Refusal, Where, mistake};
use super::{Answer, How, Operation, REQUIRED, told};
use crate::shootfile::edit::{NotEdited, edited, written};
use crate::shootfile::field::Standing;
use crate::shootfile::problem::{Problem, ProblemKind};
use crate::shootfile::tree::Node;
use crate::shootfile::{self, DEMO, Form, Step};

const BY_BRACE: Standing = Standing::Otherwise("JSON where the text begins with a brace");

pub(super) static OPERATIONS: &[Operation] = &[
    Operation {
        name: "demo",
        meaning: "An invented shoot to begin with, in TOML.",
        takes: &[],
        answers: "Demo",
        answer: How::Asked(demo),
    },
    Operation {
        name: "read",
        meaning: "A shoot file's JSON form, values as they are written, with the mistakes that are in it.",
        takes: &[("shoot", REQUIRED), ("form", BY_BRACE)],
        answers: "Read",
        answer: How::Asked(read),
    },
    Operation {
        name: "write",
        meaning: "A shoot as the text of a shoot file.",
        takes: &[("shoot", REQUIRED), ("form", Standing::Otherwise("toml"))],
        answers: "Written",
        answer: How::Asked(write),
    },
    Operation {
        name: "edit",
        meaning: "A shoot file's text with some values changed and everything else, comments too, as it was.",
        takes: &[("shoot", REQUIRED), ("form", BY_BRACE), ("edits", REQUIRED)],
        answers: "Edited",
        answer: How::Asked(edit),
    },
];

/// An invented shoot.
#[derive(Serialize)]
pub(super) struct Demo {
    text: &'static str,
}

fn demo(_: &Asked) -> Answer {
    told(&Demo { text: DEMO })
}

/// What a shoot file says.
#[derive(Serialize)]
pub(super) struct Read {
    /// How it was written.
    form: Form,
    /// Its JSON form.
    shoot: Node,
    /// What is wrong with it: with none it can be planned.
    mistakes: Vec<Mistake>,
}

fn read(asked: &Asked) -> Answer {
    let (shoot, text) = asked.tree()?;
    let mistakes = match shootfile::understand(&shoot) {
        Ok(_) => Vec::new(),
        Err(problems) => {
            problems.iter().map(|problem| mistake(problem, Where::Shoot, text.as_deref())).collect()
        }
    };
    let form = asked.form.unwrap_or(text.as_deref().map_or(Form::Json, Form::of));
    told(&Read { form, shoot, mistakes })
}

/// A shoot file's text.
#[derive(Serialize)]
pub(super) struct Written {
    text: String,
}

fn write(asked: &Asked) -> Answer {
    // Here the form is that of the text that is written.
    let (shoot, _) = Asked { shoot: asked.shoot.clone(), ..Asked::default() }.tree()?;
    told(&Written { text: written(&shoot, asked.form.unwrap_or(Form::Toml)) })
}

fn edit(asked: &Asked) -> Answer {
    let (_, Some(text)) = asked.tree()? else {
        let problem = Problem::general(ProblemKind::WrongKind, "what is edited is a text");
        return Err(Refusal::one(Problem { path: [Step::Key("shoot".into())].into(), ..problem }));
    };
    let form = asked.form.unwrap_or(Form::of(&text));
    match edited(&text, form, &asked.edits) {
        Ok(edited) => told(&edited),
        Err(NotEdited::Text(problems)) => Err(Refusal::Shoot(problems, Some(text))),
        Err(NotEdited::NoSuchPlace(index)) => {
            let title = format!("edit {} has no place in the shoot", index + 1);
            let problem = Problem::general(ProblemKind::UnknownKey, title);
            let path = [Step::Key("edits".into()), Step::Index(index), Step::Key("path".into())];
            Err(Refusal::one(Problem { path: path.into(), ..problem }))
        }
    }
}
