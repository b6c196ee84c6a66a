//! Values on the command line, with their units; and the gear a question is asked about.

use std::format;
use std::path::PathBuf;
use std::prelude::rust_2024::*;

use clap::{Args, ValueEnum};

use super::failure::{Failure, flag};
use super::load;
use crate::fault::Fault;
use crate::optics::camera::Camera;
use crate::optics::lens::Lens;
use crate::optics::sensor::{Aspect, Hold, UsedArea};
use crate::shootfile::gear::{BLANK_CAMERA, BLANK_LENS};
use crate::shootfile::quantity;
use crate::shootfile::unit::Dimension;
use crate::shootfile::{NamedShot, Shelf, ShootFile, suggest};
use crate::tolerance::Measurement;

fn value(text: &str, dimension: Dimension) -> Result<f64, String> {
    let bare = text.trim().parse::<f64>().ok().filter(|_| !text.contains(|c: char| c.is_alphabetic()));
    match bare {
        Some(value) if value.is_finite() => Ok(value),
        Some(_) => Err("this is no finite number".into()),
        None => quantity::parse(text, dimension)
            .map_err(|wrong| format!("{wrong}; write {}", dimension.how().replace(", or quoted", ", or"))),
    }
}

/// A length; a bare number is in mm.
pub(crate) fn length(text: &str) -> Result<f64, String> {
    value(text, Dimension::Length)
}

/// An angle; a bare number is in degrees.
pub(crate) fn angle(text: &str) -> Result<f64, String> {
    value(text, Dimension::Angle)
}

/// A pure number, a percentage or a ratio.
pub(crate) fn pure(text: &str) -> Result<f64, String> {
    value(text, Dimension::Pure)
}

/// A measured length: `162 cm ± 5 mm`, `1620+-5`; without the second half it counts as exact.
pub(crate) fn measured_length(text: &str) -> Result<Measurement, String> {
    measured(text, length)
}

/// A measured angle: `48° ± 0.5°`.
pub(crate) fn measured_angle(text: &str) -> Result<Measurement, String> {
    measured(text, angle)
}

fn measured(text: &str, parse: fn(&str) -> Result<f64, String>) -> Result<Measurement, String> {
    crate::shootfile::log::parse(text, parse)
}

/// A refused measurement by the option that it was given with; what was not given here has its own name.
pub(crate) fn about_measured(fault: &Fault, given: &[(&str, Option<Measurement>)]) -> Failure {
    let of_uncertainty = fault.field.starts_with("measured.uncertainty_");
    let wrong = |measured: &Measurement| measured.uncertainty.to_bits() == fault.value.to_bits();
    let by_uncertainty =
        given.iter().find(|(_, measured)| of_uncertainty && measured.as_ref().is_some_and(wrong));
    if let Some((option, _)) = by_uncertainty {
        return Failure::about(fault, &format!("{option}: the uncertainty"));
    }
    let option = flag(fault.field);
    let typed = given.iter().any(|(known, measured)| *known == option && measured.is_some());
    Failure::about(fault, if typed { &option } else { fault.field })
}

/// Width to height.
pub(crate) fn aspect(text: &str) -> Result<Aspect, String> {
    let side = |text: &str| text.trim().parse::<f64>().ok().filter(|side| side.is_finite());
    let sides = text.split_once(':').and_then(|(width, height)| Some((side(width)?, side(height)?)));
    let (width, height) = sides.ok_or("expected two numbers such as 4:5")?;
    let aspect = Aspect { width, height };
    aspect.check().map_err(|_| String::from("each number may be 0.01 to 100"))?;
    Ok(aspect)
}

/// A sensor's sides.
#[derive(Clone, Copy, Debug)]
pub(crate) struct SensorFlag {
    width_mm: f64,
    height_mm: Option<f64>,
}

fn sensor(text: &str) -> Result<SensorFlag, String> {
    let (width, height) = match text.split_once(['x', '×']) {
        Some((width, height)) => (width, Some(length(height)?)),
        None => (text, None),
    };
    Ok(SensorFlag { width_mm: length(width)?, height_mm: height })
}

/// How the camera is held.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum HoldFlag {
    Across,
    Upright,
}

/// Camera and lens: out of a shoot file, or given here; what is given here overrules the file.
#[derive(Clone, Debug, Args)]
#[command(next_help_heading = "Gear, from a shoot file")]
pub(crate) struct GearFlags {
    /// Shoot file, TOML or JSON; - for standard input; the built-in demo when left out
    #[arg(value_name = "FILE")]
    pub(crate) file: Option<PathBuf>,
    /// Camera, lens and how it is held as in this shot
    #[arg(long, value_name = "NAME")]
    pub(crate) shot: Option<String>,
    /// This camera of the file
    #[arg(long, value_name = "NAME")]
    pub(crate) camera: Option<String>,
    /// This lens of the file
    #[arg(long, value_name = "NAME")]
    pub(crate) lens: Option<String>,
    /// Sensor's size held across, such as 36x24; its width alone will often do
    #[arg(long, value_parser = sensor, help_heading = "Gear, given here", value_name = "W[xH]")]
    sensor: Option<SensorFlag>,
    /// How the camera is held
    #[arg(long, value_enum, help_heading = "Gear, given here")]
    hold: Option<HoldFlag>,
    /// Delivered shape, such as 4:5
    #[arg(long, value_parser = aspect, help_heading = "Gear, given here", value_name = "W:H")]
    delivered_aspect: Option<Aspect>,
    /// Marked focal length
    #[arg(long, value_parser = length, help_heading = "Gear, given here", value_name = "LENGTH")]
    focal_length: Option<f64>,
    /// Closest focus, sensor to subject
    #[arg(long, value_parser = length, help_heading = "Gear, given here", value_name = "LENGTH")]
    closest_focus: Option<f64>,
    /// Largest magnification, such as 1:1 or 0.25
    #[arg(long, value_parser = pure, help_heading = "Gear, given here", value_name = "RATIO")]
    largest_magnification: Option<f64>,
    /// Exit pupil / entrance pupil
    #[arg(long, value_parser = pure, help_heading = "Gear, given here", value_name = "RATIO")]
    pupil_ratio: Option<f64>,
    /// From the front principal plane to the rear one
    #[arg(long, value_parser = length, help_heading = "Gear, given here", value_name = "LENGTH")]
    principal_separation: Option<f64>,
}

/// The gear of a question, found and checked.
#[derive(Clone, Debug)]
pub(crate) struct Gear {
    pub(crate) camera: Camera,
    pub(crate) lens: Option<Lens>,
    pub(crate) used: UsedArea,
    pub(crate) shot: Option<NamedShot>,
    /// The file it came from, if any was read.
    pub(crate) file: Option<ShootFile>,
}

impl GearFlags {
    /// Finds the gear.
    pub(crate) fn find(&self) -> Result<Gear, Failure> {
        let named = self.shot.is_some() || self.camera.is_some() || self.lens.is_some();
        let file = if named || self.file.is_some() { Some(load(self.file.as_deref())?) } else { None };
        let shot = match (&file, &self.shot) {
            (Some(file), Some(name)) => Some(pick_shot(file, name)?.clone()),
            _ => None,
        };
        let camera = self.find_camera(file.as_ref(), shot.as_ref())?;
        let lens = self.find_lens(file.as_ref(), shot.as_ref())?;
        let asked = shot.as_ref().map(|shot| &shot.brief.shot);
        let hold = match self.hold {
            Some(HoldFlag::Across) => Hold::Across,
            Some(HoldFlag::Upright) => Hold::Upright,
            None => asked.map_or(Hold::Across, |asked| asked.hold),
        };
        let aspect = self.delivered_aspect.or(asked.and_then(|asked| asked.delivered_aspect));
        if camera.sensor_height_mm == 0.0 && (hold == Hold::Upright || aspect.is_some()) {
            return Err(Failure::input(
                "--sensor needs both sides, such as 36x24: held upright, or with a delivered shape",
            ));
        }
        let used = camera.used_area(hold, aspect);
        Ok(Gear { camera, lens, used, shot, file })
    }

    fn find_camera(&self, file: Option<&ShootFile>, shot: Option<&NamedShot>) -> Result<Camera, Failure> {
        let mut camera = match (file, &self.camera, shot) {
            (Some(file), Some(name), _) => pick(&file.gear.cameras, name)?,
            (_, _, Some(shot)) => shot.brief.camera,
            (Some(file), None, None) => file.gear.cameras.only().unwrap_or(BLANK_CAMERA),
            _ => BLANK_CAMERA,
        };
        if let Some(SensorFlag { width_mm, height_mm }) = self.sensor {
            camera.sensor_width_mm = width_mm;
            camera.sensor_height_mm = height_mm.unwrap_or(0.0);
        }
        if camera.sensor_width_mm == 0.0 {
            return Err(Failure::input("which camera? Give --sensor, or --camera or --shot of a shoot file"));
        }
        crate::range::SENSOR_WIDTH_MM.check(camera.sensor_width_mm)?;
        if camera.sensor_height_mm != 0.0 {
            crate::range::SENSOR_HEIGHT_MM.check(camera.sensor_height_mm)?;
        }
        Ok(camera)
    }

    fn find_lens(&self, file: Option<&ShootFile>, shot: Option<&NamedShot>) -> Result<Option<Lens>, Failure> {
        let base = match (file, &self.lens, shot) {
            (Some(file), Some(name), _) => Some(pick(&file.gear.lenses, name)?),
            (_, _, Some(shot)) => Some(shot.brief.lens),
            (Some(file), None, None) => file.gear.lenses.only(),
            _ => None,
        };
        let Some(mut lens) = base.or(self.focal_length.map(|_| Lens {
            // A lens of which only the optics matter: any opening will do.
            least_f_number: 1.0,
            most_f_number: 64.0,
            ..BLANK_LENS
        })) else {
            return Ok(None);
        };
        lens.focal_length_mm = self.focal_length.unwrap_or(lens.focal_length_mm);
        lens.closest_focus_mm = self.closest_focus.or(lens.closest_focus_mm);
        lens.largest_magnification = self.largest_magnification.or(lens.largest_magnification);
        lens.pupil_ratio = self.pupil_ratio.unwrap_or(lens.pupil_ratio);
        lens.principal_separation_mm = self.principal_separation.unwrap_or(lens.principal_separation_mm);
        lens.check()?;
        Ok(Some(lens))
    }
}

impl Gear {
    /// The lens, or a request for one.
    pub(crate) fn lens(&self) -> Result<Lens, Failure> {
        self.lens.ok_or_else(|| {
            Failure::input("which lens? Give --focal-length, or --lens or --shot of a shoot file")
        })
    }
}

/// A named thing of the file.
pub(crate) fn pick<T: Copy>(shelf: &Shelf<T>, name: &str) -> Result<T, Failure> {
    shelf.get(name).ok_or_else(|| unknown(shelf.kind(), name, &shelf.names()))
}

/// A shot of the file.
pub(crate) fn pick_shot<'a>(file: &'a ShootFile, name: &str) -> Result<&'a NamedShot, Failure> {
    file.shots.iter().find(|shot| shot.name == name).ok_or_else(|| {
        let names: Vec<&str> = file.shots.iter().map(|shot| shot.name.as_str()).collect();
        unknown("shot", name, &names)
    })
}

fn unknown(kind: &str, name: &str, known: &[&str]) -> Failure {
    let advice = match suggest::nearest(name, known) {
        Some(near) => format!("did you mean {near}?"),
        None if known.is_empty() => format!("the file has no {kind}"),
        None => format!("the file has {}", crate::shootfile::field::listed(known, "and")),
    };
    Failure::unknown_name(format!("there is no {kind} \"{name}\": {advice}"))
}
