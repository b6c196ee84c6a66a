//! Numbers as people read them: lengths in the unit asked for, sensibly rounded, with the trade's words.

use alloc::format;
use alloc::string::{String, ToString};

use crate::draw::LengthUnit;

use crate::number::{ceil, floor};
use crate::optics::sensor::Hold;
use crate::scene::table::Side;

/// A space at which no line is broken.
pub(crate) const UNBROKEN: char = '\u{a0}';

/// The unit in which lengths are printed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "cli", derive(clap::ValueEnum))]
pub(crate) enum Units {
    /// Millimetres.
    Mm,
    /// Centimetres.
    Cm,
    /// Metres.
    M,
    /// Inches and sixteenths.
    In,
    /// Feet, inches and sixteenths.
    FtIn,
}

/// Under this a length is printed finer than to the millimetre.
const SMALL_MM: f64 = 20.0;
/// Under this a length is nothing but the rounding of what it was computed from.
const NOTHING_MM: f64 = 1e-6;

impl From<LengthUnit> for Units {
    fn from(unit: LengthUnit) -> Units {
        match unit {
            LengthUnit::Millimetres => Units::Mm,
            LengthUnit::Centimetres => Units::Cm,
            LengthUnit::Metres => Units::M,
            LengthUnit::Inches => Units::In,
            LengthUnit::FeetInches => Units::FtIn,
        }
    }
}

impl Units {
    /// A length to a millimetre or so, with its unit; a small one finer, in the same unit.
    pub(crate) fn length(self, mm: f64) -> String {
        match self {
            _ if mm.is_infinite() => infinite(mm),
            Units::In | Units::FtIn if mm.abs() < SMALL_MM => small_inches(mm),
            Units::FtIn => self.bare(mm),
            _ if mm != 0.0 && mm.abs() < SMALL_MM => self.fine(mm),
            Units::Mm | Units::Cm | Units::M | Units::In => with_unit(&self.bare(mm), self.symbol()),
        }
    }

    /// A length without its unit, for a column that names it.
    pub(crate) fn bare(self, mm: f64) -> String {
        match self {
            _ if mm.is_infinite() => infinite(mm),
            Units::Mm => on_tape(mm, 0),
            Units::Cm => on_tape(mm / 10.0, 1),
            Units::M => on_tape(mm / 1000.0, 3),
            Units::In => sixteenths(mm, false),
            Units::FtIn => sixteenths(mm, true),
        }
    }

    /// A small length, to a tenth of a millimetre.
    pub(crate) fn fine(self, mm: f64) -> String {
        let (size, places, unit) = match self {
            _ if mm.is_infinite() => return infinite(mm),
            Units::Mm => (mm, 1, "mm"),
            Units::Cm => (mm / 10.0, 2, "cm"),
            Units::M => (mm / 1000.0, 4, "m"),
            Units::In | Units::FtIn => (mm / 25.4, 3, "in"),
        };
        let text = on_tape(size, places);
        if mm.abs() < NOTHING_MM || text.chars().any(|c| matches!(c, '1'..='9')) {
            return with_unit(&text, unit);
        }
        let least = format!("{}1", &text[..text.len() - 1]);
        with_unit(&short_of(&least, mm < 0.0), unit)
    }

    /// The length that is printed where no less will do: rounded to the nearest it could be too short.
    pub(crate) fn no_less(self, mm: f64) -> f64 {
        let step = match self {
            Units::Mm | Units::Cm | Units::M => 1.0,
            Units::In | Units::FtIn => 25.4 / 16.0,
        };
        ceil((mm - NOTHING_MM) / step) * step
    }

    /// Two lengths as a size.
    pub(crate) fn size(self, width_mm: f64, height_mm: f64) -> String {
        let (width, height) = (self.bare(width_mm), self.bare(height_mm));
        match self {
            Units::FtIn => format!("{width} × {height}"),
            _ => with_unit(&format!("{width} × {height}"), self.symbol()),
        }
    }

    /// The unit's sign.
    pub(crate) fn symbol(self) -> &'static str {
        match self {
            Units::Mm => "mm",
            Units::Cm => "cm",
            Units::M => "m",
            Units::In => "in",
            Units::FtIn => "ft and in",
        }
    }
}

/// A number with its unit, which stay on one line.
pub(crate) fn with_unit(number: &str, unit: &str) -> String {
    format!("{number} {unit}").replace(' ', &UNBROKEN.to_string())
}

fn infinite(value: f64) -> String {
    if value < 0.0 { "-∞".into() } else { "∞".into() }
}

/// What lies between nothing and the least that is told, so that it is not printed as nothing.
fn short_of(least: &str, negative: bool) -> String {
    if negative { format!("over -{least}") } else { format!("under {least}") }
}

/// A length of less than an inch, to the nearest thirty-second.
fn small_inches(mm: f64) -> String {
    let size = mm.abs() / 25.4 * 32.0;
    let count = floor(size + 0.5) as u64;
    let sign = if mm < 0.0 { "-" } else { "" };
    match count {
        _ if mm.abs() < NOTHING_MM => with_unit("0", "in"),
        _ if size < 1.0 => with_unit(&short_of("1/32", mm < 0.0), "in"),
        count if count.is_multiple_of(2) => with_unit(&sixteenths(mm, false), "in"),
        count => with_unit(&format!("{sign}{count}/32"), "in"),
    }
}

/// A length as inches, or feet and inches, to the nearest sixteenth.
fn sixteenths(mm: f64, feet: bool) -> String {
    let count = floor(mm.abs() / 25.4 * 16.0 + 0.5) as u64;
    let sign = if mm < 0.0 && count > 0 { "-" } else { "" };
    let (whole, part) = (count / 16, count % 16);
    let (foot, inch) = if feet { (whole / 12, whole % 12) } else { (0, whole) };
    let fraction = match part {
        0 => String::new(),
        8 => "1/2".into(),
        4 | 12 => format!("{}/4", part / 4),
        part if part % 2 == 0 => format!("{}/8", part / 2),
        part => format!("{part}/16"),
    };
    let inches = match (inch, fraction.is_empty()) {
        (0, false) => fraction,
        (inch, true) => inch.to_string(),
        (inch, false) => format!("{inch} {fraction}"),
    };
    let inches = match count {
        0 if mm >= NOTHING_MM => "< 1/32".into(),
        0 if mm <= -NOTHING_MM => "> -1/32".into(),
        _ => inches,
    };
    let text = match (feet, foot) {
        (false, _) => format!("{sign}{inches}"),
        (true, 0) => format!("{sign}{inches} in"),
        (true, foot) => format!("{sign}{foot} ft {inches} in"),
    };
    text.replace(' ', &UNBROKEN.to_string())
}

/// A number with so many decimals, half a step rounded away from zero as a tape's reader does, and as
/// the drawings are.
fn on_tape(value: f64, places: usize) -> String {
    let mut parts = 1.0;
    for _ in 0..places {
        parts *= 10.0;
    }
    let rounded = floor(value.abs() * parts + 0.5) / parts;
    decimals(if value < 0.0 { -rounded } else { rounded }, places)
}

/// A number with so many decimals, without a negative zero.
pub(crate) fn decimals(value: f64, places: usize) -> String {
    if value.is_infinite() {
        return infinite(value);
    }
    let text = format!("{value:.places$}");
    match text.strip_prefix('-') {
        Some(rest) if rest.chars().all(|c| matches!(c, '0' | '.')) => rest.into(),
        _ => text,
    }
}

/// A number with so many decimals at most, trailing zeros left off.
pub(crate) fn trimmed(value: f64, places: usize) -> String {
    let text = decimals(value, places);
    if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.').into() } else { text }
}

/// An angle to a tenth of a degree.
pub(crate) fn degrees(deg: f64) -> String {
    format!("{}°", trimmed(deg, 1))
}

/// An angle for a column.
pub(crate) fn column_degrees(deg: f64) -> String {
    format!("{}°", decimals(deg, 1))
}

/// What a stand does that needs no tilt and no push to tip.
pub(crate) const FALLS: &str = "falls";

/// A length on the sensor, or of the glass: always in millimetres.
pub(crate) fn on_sensor(mm: f64) -> String {
    let places = if mm.abs() < 1.0 { 3 } else { 1 };
    with_unit(&trimmed(mm, places), "mm")
}

/// A share as a percentage.
pub(crate) fn percent(share: f64) -> String {
    if share.is_infinite() {
        return infinite(share);
    }
    let places = if share.abs() < 0.1 && share != 0.0 { 1 } else { 0 };
    with_unit(&trimmed(100.0 * share, places), "%")
}

/// A mass to ten grams.
pub(crate) fn kilograms(kg: f64) -> String {
    with_unit(&trimmed(kg, 2), "kg")
}

/// An f-number as engraved.
pub(crate) fn f_number(value: f64) -> String {
    if value.is_infinite() { "no f-number".into() } else { format!("f/{}", trimmed(value, 1)) }
}

/// A side of the table.
pub(crate) fn side(side: Side) -> &'static str {
    match side {
        Side::Front => "front",
        Side::Right => "right",
        Side::Back => "back",
        Side::Left => "left",
    }
}

/// How the camera is held.
pub(crate) fn hold(hold: Hold) -> &'static str {
    match hold {
        Hold::Across => "held across",
        Hold::Upright => "held upright",
    }
}

/// Where the camera stands around the subject.
pub(crate) fn bearing(deg: f64) -> String {
    let turned = deg - 360.0 * floor(deg / 360.0);
    let named = [(0.0, "front"), (90.0, "right"), (180.0, "back"), (270.0, "left")];
    match named.iter().find(|(at, _)| *at == turned) {
        Some((_, word)) => format!("from the {word}"),
        None if turned > 180.0 => format!("from {} round to the left", degrees(360.0 - turned)),
        None => format!("from {} round to the right", degrees(turned)),
    }
}
