//! Numbers as the command prints them: the words that it shares with the sheet, and some of its own.

use std::format;
use std::prelude::rust_2024::*;

pub(crate) use crate::sheet::wording::{
    FALLS, UNBROKEN, Units, bearing, column_degrees, decimals, degrees, f_number, hold, kilograms, on_sensor,
    percent, side, trimmed, with_unit,
};
use std::string::ToString;

use crate::brief::{Framing, Shot};
use crate::draw::LengthUnit;

impl Units {
    /// The same for drawings.
    pub(crate) fn drawn(self) -> LengthUnit {
        match self {
            Units::Mm => LengthUnit::Millimetres,
            Units::Cm => LengthUnit::Centimetres,
            Units::M => LengthUnit::Metres,
            Units::In => LengthUnit::Inches,
            Units::FtIn => LengthUnit::FeetInches,
        }
    }

    /// Several of the unit, for a heading.
    pub(crate) fn plural(self) -> &'static str {
        match self {
            Units::In => "inches",
            Units::FtIn => "feet and inches",
            Units::Mm | Units::Cm | Units::M => self.symbol(),
        }
    }

    /// The unit after bare lengths; nothing where each says its own.
    pub(crate) fn after(self) -> &'static str {
        match self {
            Units::FtIn => "",
            Units::Mm => " mm",
            Units::Cm => " cm",
            Units::M => " m",
            Units::In => " in",
        }
    }

    /// A place on the floor or the table: right of the table's centre, and behind it.
    pub(crate) fn place(self, x_mm: f64, y_mm: f64) -> String {
        format!("({}, {})", self.bare(x_mm), self.bare(y_mm)).replace(' ', &UNBROKEN.to_string())
    }
}

/// The tilt that tips a stand, by `told`; a word where it does not stand at all.
pub(crate) fn tips_at(deg: f64, told: fn(f64) -> String) -> String {
    if deg > 0.0 { told(deg) } else { FALLS.into() }
}

/// A factor or ratio.
pub(crate) fn factor(value: f64) -> String {
    decimals(value, 2)
}

/// A magnification, as a ratio too.
pub(crate) fn magnification(value: f64) -> String {
    let ratio = if value < 1.0 {
        format!("1:{}", trimmed(1.0 / value, 1))
    } else {
        format!("{}:1", trimmed(value, 2))
    };
    format!("{} ({ratio})", trimmed(value, 4))
}

/// How much the frame was asked to take in.
pub(crate) fn framing(shot: &Shot, units: Units) -> String {
    match shot.framing {
        Framing::FrameWidthMm(width) => format!("frame {} wide", units.length(width)),
        Framing::FillWidth(share) => format!("subject to fill {} of the width", percent(share)),
        Framing::FillHeight(share) => format!("subject to fill {} of the height", percent(share)),
    }
}

/// A duration in seconds.
pub(crate) fn seconds(s: f64) -> String {
    with_unit(&trimmed(s, 1), "s")
}

/// How high the camera stands.
pub(crate) fn elevation(deg: f64) -> String {
    let word = if deg == 0.0 {
        ", straight-on"
    } else if deg == 90.0 {
        ", straight overhead"
    } else if deg < 0.0 {
        ", from below"
    } else {
        ""
    };
    format!("elevation {}{word}", degrees(deg))
}
