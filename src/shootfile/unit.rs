//! The units in which values may be written, each as an exact decimal multiple of the field's own unit.

/// What a value measures.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Dimension {
    Length,
    Mass,
    Angle,
    Moment,
    Force,
    Frequency,
    Stiffness,
    Modulus,
    Percent,
    Duration,
    FNumber,
    Pure,
}

/// A unit by the words for it: `numerator` × 10^`exponent` of the dimension's own unit.
#[derive(Debug)]
pub(crate) struct Unit {
    pub(crate) words: &'static [&'static str],
    pub(crate) numerator: i128,
    pub(crate) exponent: i32,
}

const fn unit(words: &'static [&'static str], numerator: i128, exponent: i32) -> Unit {
    Unit { words, numerator, exponent }
}

// The inch of 25.4 mm and the pound of 0.45359237 kg are exact (international yard and pound, 1959).
static LENGTH: &[Unit] = &[
    unit(&["mm", "millimetre", "millimetres", "millimeter", "millimeters"], 1, 0),
    unit(&["cm", "centimetre", "centimetres", "centimeter", "centimeters"], 1, 1),
    unit(&["m", "metre", "metres", "meter", "meters"], 1, 3),
    unit(&["µm", "μm", "um"], 1, -3),
    unit(&["in", "in.", "inch", "inches", "\"", "″", "”", "''"], 254, -1),
    unit(&["ft", "ft.", "foot", "feet", "'", "′", "’"], 3048, -1),
    unit(&["yd", "yard", "yards"], 9144, -1),
];
static MASS: &[Unit] = &[
    unit(&["kg", "kilogram", "kilograms"], 1, 0),
    unit(&["g", "gram", "grams"], 1, -3),
    unit(&["lb", "lb.", "lbs", "pound", "pounds"], 45_359_237, -8),
    unit(&["oz", "oz.", "ounce", "ounces"], 28_349_523_125, -12),
];
static ANGLE: &[Unit] = &[unit(&["deg", "°", "º", "degree", "degrees"], 1, 0)];
static MOMENT: &[Unit] = &[
    unit(&["N m", "N·m", "N⋅m", "N*m", "Nm", "N.m"], 1, 0),
    unit(&["N cm", "N·cm", "Ncm"], 1, -2),
    // A kilogram, and a pound, weighing at standard gravity.
    unit(&["kgf m", "kgf·m", "kgf*m"], 980_665, -5),
    unit(&["ft lbf", "ft·lbf", "lbf ft", "lbf·ft", "ft-lb", "ft lb", "lb ft"], 13_558_179_483_314_004, -16),
];
static FORCE: &[Unit] = &[
    unit(&["N", "newton", "newtons"], 1, 0),
    unit(&["kgf"], 980_665, -5),
    unit(&["lbf"], 44_482_216_152_605, -13),
];
static FREQUENCY: &[Unit] = &[unit(&["Hz", "hertz"], 1, 0)];
static STIFFNESS: &[Unit] = &[
    unit(&["N m2", "N m²", "N·m2", "N·m²", "N*m2", "N m^2", "Nm2", "Nm²"], 1, 0),
    unit(&["N mm2", "N mm²", "N·mm2", "N·mm²", "N*mm2", "N mm^2", "Nmm2", "Nmm²"], 1, -6),
    unit(&["kN m2", "kN m²", "kN·m2", "kN·m²"], 1, 3),
];
static MODULUS: &[Unit] =
    &[unit(&["N/mm2", "N/mm²", "N/mm^2", "MPa"], 1, 0), unit(&["GPa", "kN/mm2", "kN/mm²"], 1, 3)];
static DURATION: &[Unit] =
    &[unit(&["min", "min.", "minute", "minutes"], 1, 0), unit(&["h", "hr", "hour", "hours"], 60, 0)];
static PERCENT: &[Unit] = &[unit(&["%", "percent", "per cent"], 1, 0)];
static PURE: &[Unit] = &[unit(&["%", "percent", "per cent"], 1, -2)];

impl Dimension {
    /// The dimension of a unit's word in the table of ranges, and of the field that has it.
    pub(crate) fn of(unit: &str, field: &str) -> Dimension {
        match unit {
            "mm" => Dimension::Length,
            "kg" => Dimension::Mass,
            "deg" => Dimension::Angle,
            "n_m" => Dimension::Moment,
            "n" => Dimension::Force,
            "hz" => Dimension::Frequency,
            "n_m2" => Dimension::Stiffness,
            "n_per_mm2" => Dimension::Modulus,
            "percent" => Dimension::Percent,
            "min" => Dimension::Duration,
            _ if field.ends_with("f_number") => Dimension::FNumber,
            _ => Dimension::Pure,
        }
    }

    /// The units that may be written.
    pub(crate) fn units(self) -> &'static [Unit] {
        match self {
            Dimension::Length => LENGTH,
            Dimension::Mass => MASS,
            Dimension::Angle => ANGLE,
            Dimension::Moment => MOMENT,
            Dimension::Force => FORCE,
            Dimension::Frequency => FREQUENCY,
            Dimension::Stiffness => STIFFNESS,
            Dimension::Modulus => MODULUS,
            Dimension::Percent => PERCENT,
            Dimension::Duration => DURATION,
            Dimension::Pure => PURE,
            Dimension::FNumber => &[],
        }
    }

    /// Everything that has units, for finding out what a value measures instead.
    pub(crate) const ALL: &[Dimension] = &[
        Dimension::Length,
        Dimension::Mass,
        Dimension::Angle,
        Dimension::Moment,
        Dimension::Force,
        Dimension::Frequency,
        Dimension::Stiffness,
        Dimension::Modulus,
        Dimension::Percent,
        Dimension::Duration,
    ];

    /// The unit of a bare number, as people write it; empty for a pure number.
    pub(crate) fn symbol(self) -> &'static str {
        match self {
            Dimension::Length => "mm",
            Dimension::Mass => "kg",
            Dimension::Angle => "deg",
            Dimension::Moment => "N m",
            Dimension::Force => "N",
            Dimension::Frequency => "Hz",
            Dimension::Stiffness => "N m2",
            Dimension::Modulus => "N/mm2",
            Dimension::Percent => "%",
            Dimension::Duration => "min",
            Dimension::FNumber | Dimension::Pure => "",
        }
    }

    /// What it is called.
    pub(crate) fn noun(self) -> &'static str {
        match self {
            Dimension::Length => "a length",
            Dimension::Mass => "a mass",
            Dimension::Angle => "an angle",
            Dimension::Moment => "a moment",
            Dimension::Force => "a force",
            Dimension::Frequency => "a frequency",
            Dimension::Stiffness => "a bending stiffness",
            Dimension::Modulus => "a modulus",
            Dimension::Percent => "a percentage",
            Dimension::Duration => "a duration",
            Dimension::FNumber => "an f-number",
            Dimension::Pure => "a number",
        }
    }

    /// How such a value is written.
    pub(crate) fn how(self) -> &'static str {
        match self {
            Dimension::Length => {
                "a bare number of mm, or quoted \"600 mm\", \"60 cm\", \"2.4 m\", \"36 in\", \"1 1/2 in\", \"7 ft 10 in\""
            }
            Dimension::Mass => {
                "a bare number of kg, or quoted \"1.2 kg\", \"850 g\", \"2 lb\", \"12 oz\", \"2 lb 4 oz\""
            }
            Dimension::Angle => "a bare number of degrees, or quoted \"45 deg\", \"45°\"",
            Dimension::Moment => "a bare number of N m, or quoted \"12 N m\", \"1.2 kgf m\", \"9 ft lbf\"",
            Dimension::Force => "a bare number of N, or quoted \"250 N\", \"25 kgf\", \"56 lbf\"",
            Dimension::Frequency => "a bare number of Hz, or quoted \"3 Hz\"",
            Dimension::Stiffness => "a bare number of N m2, or quoted \"120 N m2\"",
            Dimension::Modulus => "a bare number of N/mm2, or quoted \"69 GPa\", \"69000 N/mm2\"",
            Dimension::Percent => "a bare number of hundredths, or quoted \"2 %\"",
            Dimension::Duration => "a bare number of minutes, or quoted \"10 min\", \"1 h 30 min\"",
            Dimension::FNumber => "a bare number, or quoted \"f/8\"",
            Dimension::Pure => "a bare number, or quoted \"60 %\", \"1:2\"",
        }
    }
}
