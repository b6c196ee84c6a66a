//! Functions of one or two numbers, the same bits on every processor: everything transcendental in this
//! library goes through here, to `libm`.
//!
//! Angles enter and leave in degrees. They are reduced to within 45 degrees of a right angle while they
//! are still degrees, where that is exact, so that 90 gives exactly 0 and 1 and the cosine keeps all its
//! digits next to 90.

/// Degrees in a radian.
const DEGREES_PER_RADIAN: f64 = 57.295_779_513_082_32;
/// Radians in a degree.
const RADIANS_PER_DEGREE: f64 = 0.017_453_292_519_943_295;
/// The larger and the smaller of two numbers, neither of them NaN.
///
/// `f64::max` and `f64::min` leave open which of 0 and -0 they give, and processors differ. These give the
/// first of two that are equal, everywhere.
pub(crate) trait Extremes {
    /// The larger of both.
    fn larger(self, other: f64) -> f64;

    /// The smaller of both.
    fn smaller(self, other: f64) -> f64;
}

impl Extremes for f64 {
    #[inline]
    fn larger(self, other: f64) -> f64 {
        if other > self { other } else { self }
    }

    #[inline]
    fn smaller(self, other: f64) -> f64 {
        if other < self { other } else { self }
    }
}

/// The circle's half turn in radians.
pub(crate) const PI: f64 = core::f64::consts::PI;
/// Standard gravity in metres per second squared (3rd CGPM, 1901).
pub(crate) const STANDARD_GRAVITY: f64 = 9.80665;

#[inline]
pub(crate) fn sqrt(x: f64) -> f64 {
    libm::sqrt(x)
}

/// √(x² + y²).
#[inline]
pub(crate) fn hypot(x: f64, y: f64) -> f64 {
    let squares = x * x + y * y;
    // The sum neither lost a square under the smallest number nor passed the largest.
    if squares > 1e-280 && squares < 1e280 { libm::sqrt(squares) } else { libm::hypot(x, y) }
}

#[inline]
pub(crate) fn square(x: f64) -> f64 {
    x * x
}

/// Natural logarithm of 1 + x, with all its digits where x is small.
pub(crate) fn ln_1p(x: f64) -> f64 {
    libm::log1p(x)
}

pub(crate) fn ln(x: f64) -> f64 {
    libm::log(x)
}

pub(crate) fn exp2(x: f64) -> f64 {
    libm::exp2(x)
}

pub(crate) fn cbrt(x: f64) -> f64 {
    libm::cbrt(x)
}

/// 1.5 × 2⁵²: a number up to 2⁵¹ added to it is rounded to a whole one, which then stands in the sum's last
/// bits.
const ROUNDS: f64 = 6_755_399_441_055_744.0;
/// 2⁵¹.
const MOST_ROUNDED: f64 = 2_251_799_813_685_248.0;

#[inline]
pub(crate) fn floor(x: f64) -> f64 {
    if x.abs() < MOST_ROUNDED {
        let nearest = (x + ROUNDS) - ROUNDS;
        if nearest > x { nearest - 1.0 } else { nearest }
    } else {
        libm::floor(x)
    }
}

#[inline]
pub(crate) fn ceil(x: f64) -> f64 {
    0.0 - floor(0.0 - x)
}

/// Angle of the direction (x, y) in radians.
#[inline]
pub(crate) fn atan2(y: f64, x: f64) -> f64 {
    if x > 0.0 { libm::atan(y / x) } else { libm::atan2(y, x) }
}

/// Angle of the direction (x, y) in degrees, in (-180, 180].
pub(crate) fn atan2_deg(y: f64, x: f64) -> f64 {
    atan2(y, x) * DEGREES_PER_RADIAN
}

/// Arc sine in degrees; the argument lies within -1 and 1.
pub(crate) fn asin_deg(x: f64) -> f64 {
    libm::asin(x) * DEGREES_PER_RADIAN
}

/// Radians as degrees.
pub(crate) fn degrees(radians: f64) -> f64 {
    radians * DEGREES_PER_RADIAN
}

/// Sine and cosine of an angle in radians, for angles that no brief states.
pub(crate) fn sin_cos(radians: f64) -> (f64, f64) {
    libm::sincos(radians)
}

/// Sine and cosine of an angle in degrees, under 2⁵¹ quarter turns.
pub(crate) fn sin_cos_deg(angle_deg: f64) -> (f64, f64) {
    let rounded = angle_deg * (1.0 / 90.0) + ROUNDS;
    let quarters = rounded - ROUNDS;
    // Exact: both terms are multiples of the angle's last place and the difference is the smaller.
    let rest = (angle_deg - 90.0 * quarters) * RADIANS_PER_DEGREE;
    let (sin, cos) = if rest == 0.0 { (0.0, 1.0) } else { libm::sincos(rest) };
    // The quarter's number stands in the sum's last two bits.
    match rounded.to_bits() & 3 {
        0 => (sin, cos),
        1 => (cos, 0.0 - sin),
        2 => (0.0 - sin, 0.0 - cos),
        _ => (0.0 - cos, sin),
    }
}

/// Tangent of an angle in degrees strictly between -90 and 90.
pub(crate) fn tan_deg(angle_deg: f64) -> f64 {
    let (sin, cos) = sin_cos_deg(angle_deg);
    sin / cos
}

/// The angle turned into [0, 360) degrees.
pub(crate) fn turn_deg(angle_deg: f64) -> f64 {
    let turned = angle_deg - 360.0 * floor(angle_deg / 360.0);
    if turned >= 360.0 { 0.0 } else { turned }
}

/// Writes a number that may be infinite: JSON has no infinity, so it becomes the word `"infinite"`.
#[cfg(feature = "text")]
pub(crate) fn number_or_infinite<S: serde::Serializer>(value: &f64, to: S) -> Result<S::Ok, S::Error> {
    if value.is_infinite() {
        to.serialize_str(if *value > 0.0 { "infinite" } else { "-infinite" })
    } else {
        to.serialize_f64(*value)
    }
}
