//! What a question is asked about: out of the shoot that came with it, or written out in the request.

use std::format;
use std::prelude::rust_2024::*;

use super::asked::Asked;
use super::parts::Given;
use super::refusal::Refusal;
use crate::optics::camera::Camera;
use crate::optics::lens::{FocusedLens, Lens};
use crate::optics::sensor::{Hold, UsedArea};
use crate::range;
use crate::scene::bay::Bay;
use crate::scene::subject::Subject;
use crate::shootfile::field::{Name, listed};
use crate::shootfile::problem::{Problem, ProblemKind};
use crate::shootfile::tree::{Node, Value};
use crate::shootfile::whole::Whole;
use crate::shootfile::{self, Form, NamedShot, Shelf, ShootFile, Step, suggest};

/// A request with its shoot read.
#[derive(Debug)]
pub(super) struct Question {
    pub(super) asked: Asked,
    pub(super) file: Option<ShootFile>,
}

impl Asked {
    /// The shoot's tree, and its text if it came as one.
    pub(super) fn tree(&self) -> Result<(Node, Option<String>), Refusal> {
        let Some(shoot) = &self.shoot else {
            return Err(Refusal::lacks("a shoot is needed", &["shoot"]));
        };
        let Value::Text(text) = &shoot.value else { return Ok((shoot.clone(), None)) };
        let text = text.strip_prefix('\u{feff}').unwrap_or(text);
        let form = self.form.unwrap_or(Form::of(text));
        match shootfile::parse(text, form) {
            Ok(tree) => Ok((tree, Some(text.into()))),
            Err(problems) => Err(Refusal::Shoot(problems, Some(text.into()))),
        }
    }
}

/// A shot that was found, and what was asked of it.
impl Question {
    /// Reads the shoot, if there is one.
    pub(super) fn new(asked: Asked) -> Result<Question, Refusal> {
        if asked.shoot.is_none() {
            return Ok(Question { asked, file: None });
        }
        let (tree, text) = asked.tree()?;
        let file = shootfile::understand(&tree).map_err(|problems| Refusal::Shoot(problems, text))?;
        Ok(Question { asked, file: Some(file) })
    }

    /// The shoot.
    pub(super) fn file(&self) -> Result<&ShootFile, Refusal> {
        self.file.as_ref().ok_or_else(|| Refusal::lacks("a shoot is needed", &["shoot"]))
    }

    /// The shot that is named, or the only one.
    pub(super) fn shot(&self) -> Result<&NamedShot, Refusal> {
        let file = self.file()?;
        match (&self.asked.shot, file.shots.as_slice()) {
            (Some(name), _) => shot_called(file, name, &[Step::Key("shot".into())]),
            (None, [only]) => Ok(only),
            (None, []) => {
                let problem = Problem::general(ProblemKind::Lacking, "the shoot has no shots");
                Err(Refusal::Shoot([problem.lacks(["shot"])].into(), None))
            }
            (None, several) => {
                let names: Vec<&str> = several.iter().map(|shot| shot.name.as_str()).collect();
                let problem = Problem::general(ProblemKind::Undecided, "which shot?").lacks(["shot"]);
                Err(Refusal::one(problem.help(format_args!("the shoot has {}", listed(&names, "and")))))
            }
        }
    }

    /// The shot that is named, if one is.
    fn named_shot(&self) -> Result<Option<&NamedShot>, Refusal> {
        if self.asked.shot.is_some() { self.shot().map(Some) } else { Ok(None) }
    }

    /// The shots of the file, without those that are left out.
    pub(super) fn whole(&self) -> Result<Whole<'_>, Refusal> {
        let file = self.file()?;
        for (index, name) in self.asked.leave_out.iter().enumerate() {
            shot_called(file, name, &[Step::Key("leave_out".into()), Step::Index(index)])?;
        }
        let names: Vec<&str> = self.asked.leave_out.iter().map(|name| name.text.as_str()).collect();
        let whole = Whole::new(file, &names);
        if whole.shots.is_empty() {
            let problem = Problem::general(ProblemKind::Lacking, "no shot is left");
            return Err(Refusal::one(problem));
        }
        Ok(whole)
    }

    /// Something of the request: written out, a thing of the file, the shot's, or the only one of its kind.
    fn find<T: Copy>(
        &self,
        given: Option<&Given<T>>,
        shelf: fn(&ShootFile) -> &Shelf<T>,
        of_shot: fn(&NamedShot) -> T,
    ) -> Result<Option<T>, Refusal> {
        match given {
            Some(Given::Own(thing)) => Ok(Some(*thing)),
            Some(Given::Named(name)) => {
                let shelf = shelf(self.file()?);
                let place = [Step::Key(shelf.kind().into())];
                shelf
                    .get(&name.text)
                    .map(Some)
                    .ok_or_else(|| unknown(shelf.kind(), name, &shelf.names(), &place))
            }
            None => match self.named_shot()? {
                Some(shot) => Ok(Some(of_shot(shot))),
                None => Ok(self.file.as_ref().and_then(|file| shelf(file).only())),
            },
        }
    }

    pub(super) fn lens_given(&self) -> Result<Option<Lens>, Refusal> {
        self.find(self.asked.lens.as_ref(), |file| &file.gear.lenses, |shot| shot.brief.lens)
    }

    pub(super) fn lens(&self) -> Result<Lens, Refusal> {
        self.lens_given()?.ok_or_else(|| Refusal::lacks("which lens?", &["lens"]))
    }

    pub(super) fn camera(&self) -> Result<Option<Camera>, Refusal> {
        self.find(self.asked.camera.as_ref(), |file| &file.gear.cameras, |shot| shot.brief.camera)
    }

    pub(super) fn subject(&self) -> Result<Subject, Refusal> {
        let found =
            self.find(self.asked.subject.as_ref(), |file| &file.gear.subjects, |shot| shot.brief.subject)?;
        found.ok_or_else(|| Refusal::lacks("which subject?", &["subject"]))
    }

    pub(super) fn bay(&self) -> Result<Option<Bay>, Refusal> {
        self.find(self.asked.bay.as_ref(), |file| &file.gear.bays, |shot| shot.brief.bay)
    }

    /// The part of the sensor that the picture uses: its width as given, or the camera's as held.
    pub(super) fn used_area(&self) -> Result<UsedArea, Refusal> {
        let asked = &self.asked;
        let shot = self.named_shot()?.map(|shot| &shot.brief.shot);
        let hold = asked.hold.or(shot.map(|shot| shot.hold)).unwrap_or(Hold::Across);
        let aspect = asked.delivered_aspect.or(shot.and_then(|shot| shot.delivered_aspect));
        match (asked.used_width_mm, self.camera()?) {
            // Of a width alone the height is not known: as good as none.
            (Some(width_mm), _) => Ok(UsedArea { width_mm, height_mm: 0.0 }),
            (None, Some(camera)) => Ok(camera.used_area(hold, aspect)),
            (None, None) => Err(Refusal::lacks("which camera?", &["camera", "used_width_mm"])),
        }
    }

    /// The lens focused: at the magnification given, for the frame width given, or as the shot is planned.
    pub(super) fn focused(&self) -> Result<FocusedLens, Refusal> {
        let lens = self.lens()?;
        let asked = &self.asked;
        if let Some(magnification) = asked.magnification {
            return Ok(lens.focused(magnification));
        }
        let width = match (asked.frame_width_mm, self.named_shot()?) {
            (Some(width), _) => width,
            (None, Some(shot)) => shot.plan.frame_width_mm,
            (None, None) => {
                let keys = ["magnification", "frame_width_mm"];
                return Err(Refusal::lacks("at which magnification, or how wide a frame?", &keys));
            }
        };
        let used = self.used_area()?;
        let magnification = range::MAGNIFICATION.check(used.width_mm / width)?;
        Ok(lens.focused(magnification))
    }

    /// The limit of blur: as given, or the camera's.
    pub(super) fn blur_limit_mm(&self) -> Result<f64, Refusal> {
        match (self.asked.circle_of_confusion_mm, self.camera()?) {
            (Some(limit), _) => Ok(limit),
            (None, Some(camera)) => Ok(camera.blur_limit_mm()),
            (None, None) => Err(Refusal::lacks("what is sharp?", &["circle_of_confusion_mm", "camera"])),
        }
    }

    /// A value that the request holds, since it was read.
    pub(super) fn need(value: Option<f64>, key: &'static str) -> Result<f64, Refusal> {
        value.ok_or_else(|| Refusal::lacks(&format!("`{key}` is needed"), &[key]))
    }
}

pub(super) fn shot_called<'a>(
    file: &'a ShootFile,
    name: &Name,
    place: &[Step],
) -> Result<&'a NamedShot, Refusal> {
    file.shots.iter().find(|shot| shot.name == name.text).ok_or_else(|| {
        let names: Vec<&str> = file.shots.iter().map(|shot| shot.name.as_str()).collect();
        unknown("shot", name, &names, place)
    })
}

/// A name that stands for nothing in the shoot.
pub(super) fn unknown(kind: &str, name: &Name, known: &[&str], place: &[Step]) -> Refusal {
    let problem =
        Problem::general(ProblemKind::UnknownName, format_args!("there is no {kind} \"{}\"", name.text));
    let mut problem = suggest::advise(problem, &name.text, known, "the shoot has");
    problem.path = place.to_vec();
    Refusal::one(problem)
}
