//! Lengths as people read them off a tape.

use alloc::format;
use alloc::string::String;
use core::fmt;

use crate::number::floor;

/// In which unit lengths are written.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
#[cfg_attr(feature = "text", derive(serde::Serialize), serde(rename_all = "snake_case"))]
#[repr(i32)]
pub enum LengthUnit {
    /// Whole millimetres; tenths under 10 mm.
    #[default]
    Millimetres = 0,
    /// Centimetres and tenths; hundredths under 1 cm.
    Centimetres = 1,
    /// Metres and thousandths.
    Metres = 2,
    /// Inches and sixteenths.
    Inches = 3,
    /// Feet, inches and sixteenths.
    FeetInches = 4,
}

/// A length on its way into a text: rounded to what a tape shows, half away from zero.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Length {
    unit: LengthUnit,
    length_mm: f64,
}

/// Above this, sixteenths of an inch no longer fit the whole numbers they are counted in.
const MOST_COUNTED: f64 = 1e15;

impl LengthUnit {
    /// Every unit, by number.
    pub const ALL: [LengthUnit; 5] = [
        LengthUnit::Millimetres,
        LengthUnit::Centimetres,
        LengthUnit::Metres,
        LengthUnit::Inches,
        LengthUnit::FeetInches,
    ];

    /// The length, to be written.
    ///
    /// ```
    /// use tablerig::draw::LengthUnit;
    ///
    /// assert_eq!(LengthUnit::Millimetres.write(2387.6).to_string(), "2388 mm");
    /// assert_eq!(LengthUnit::FeetInches.write(2387.6).to_string(), "7 ft 10 in");
    /// ```
    pub const fn write(self, length_mm: f64) -> Length {
        Length { unit: self, length_mm }
    }

    /// Two lengths of one thing, with one unit where that reads well: `600 × 400 mm`.
    pub(super) fn by(self, width_mm: f64, height_mm: f64) -> String {
        let (width, height) = (format!("{}", self.write(width_mm)), format!("{}", self.write(height_mm)));
        match (width.rsplit_once(' '), height.rsplit_once(' ')) {
            (Some((number, unit)), Some((_, other))) if unit == other && self != LengthUnit::FeetInches => {
                format!("{number} × {height}")
            }
            _ => format!("{width} × {height}"),
        }
    }

    /// Millimetres in the unit in which a scale bar is divided.
    pub(super) const fn whole_mm(self) -> f64 {
        match self {
            LengthUnit::Millimetres => 1.0,
            LengthUnit::Centimetres => 10.0,
            LengthUnit::Metres => 1000.0,
            LengthUnit::Inches => 25.4,
            LengthUnit::FeetInches => 304.8,
        }
    }
}

/// Hundredths, tenths and so on of a unit, written as a decimal number.
fn decimal(f: &mut fmt::Formatter<'_>, size: f64, decimals: usize, symbol: &str) -> fmt::Result {
    let mut parts = 1.0;
    for _ in 0..decimals {
        parts *= 10.0;
    }
    // Formatting alone rounds a half to even; a tape's reader rounds it up.
    let rounded = if size < MOST_COUNTED { floor(size * parts + 0.5) / parts } else { size };
    write!(f, "{rounded:.decimals$} {symbol}")
}

/// Whole inches and sixteenths, the fraction in its lowest terms; only the fraction where there are no
/// whole inches.
fn inches(f: &mut fmt::Formatter<'_>, inches: u64, sixteenths: u64) -> fmt::Result {
    let (mut over, mut under) = (sixteenths, 16);
    while over > 0 && over % 2 == 0 {
        (over, under) = (over / 2, under / 2);
    }
    match (inches, over) {
        (whole, 0) => write!(f, "{whole} in"),
        (0, over) => write!(f, "{over}/{under} in"),
        (whole, over) => write!(f, "{whole} {over}/{under} in"),
    }
}

impl fmt::Display for Length {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let size = self.length_mm.abs();
        if self.length_mm.is_nan() {
            return f.write_str("unknown");
        }
        if size.is_infinite() {
            return f.write_str(if self.length_mm > 0.0 { "infinite" } else { "−infinite" });
        }
        // Nothing that rounds to zero has a sign.
        let least = match self.unit {
            LengthUnit::Millimetres => 0.05,
            LengthUnit::Centimetres => 0.05,
            LengthUnit::Metres => 0.5,
            LengthUnit::Inches | LengthUnit::FeetInches => 25.4 / 32.0,
        };
        if self.length_mm < 0.0 && size >= least {
            f.write_str("−")?;
        }
        match self.unit {
            LengthUnit::Millimetres => decimal(f, size, if size < 9.95 { 1 } else { 0 }, "mm"),
            LengthUnit::Centimetres => decimal(f, size / 10.0, if size < 9.95 { 2 } else { 1 }, "cm"),
            LengthUnit::Metres => decimal(f, size / 1000.0, 3, "m"),
            LengthUnit::Inches | LengthUnit::FeetInches => {
                let counted = floor(size / 25.4 * 16.0 + 0.5);
                if counted >= MOST_COUNTED {
                    return decimal(f, size / 25.4, 0, "in");
                }
                let sixteenths = counted as u64;
                let whole = sixteenths / 16;
                if self.unit == LengthUnit::FeetInches && whole >= 12 {
                    write!(f, "{} ft", whole / 12)?;
                    if sixteenths.is_multiple_of(192) {
                        return Ok(());
                    }
                    f.write_str(" ")?;
                    return inches(f, whole % 12, sixteenths % 16);
                }
                inches(f, whole, sixteenths % 16)
            }
        }
    }
}
