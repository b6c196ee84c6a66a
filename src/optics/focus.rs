//! What is sharp: depth of field, f-numbers, diffraction, exposure, and the focus stack where no single
//! opening does it.
//!
//! The blur on the sensor of a point at distance x from the entrance pupil is (f / N) m |x - s| / x, the
//! entrance pupil taken as f / N across; everything here follows from it. Distances are from the entrance
//! pupil along the axis unless the name says otherwise.

use super::lens::{FocusedLens, Lens};
use crate::number::{Extremes, ceil, ln_1p};

/// Wavelength for which diffraction is reckoned: green light.
pub const WAVELENGTH_MM: f64 = 550e-6;
/// Diameter of the diffraction disc in wavelengths times effective f-number, to its first dark ring, as
/// customarily rounded (exactly 2.43934).
pub const DIFFRACTION_DISC: f64 = 2.44;

/// An f-number of the third-stop scale.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct ThirdStop {
    /// The exact value, 2^(k/6); this is what is reckoned with.
    pub f_number: f64,
    /// What is engraved for it.
    pub engraved: f64,
}

/// What is sharp around the plane through the aim point.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct DepthOfField {
    /// Nearest sharp distance from the entrance pupil.
    pub near_limit_mm: f64,
    /// Farthest sharp distance from the entrance pupil; infinite from the hyperfocal distance on.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub far_limit_mm: f64,
    /// Sharp in front of the aim point.
    pub in_front_mm: f64,
    /// Sharp behind the aim point; infinite with the far limit.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub behind_mm: f64,
}

/// A focus stack that holds the subject.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct FocusStack {
    /// The opening to shoot it at: the smallest that stays under the diffraction limit, or the lens's
    /// widest.
    pub f_number: f64,
    /// That opening as engraved.
    pub engraved: f64,
    /// Pictures needed; 4294967295 stands for that many or more.
    pub pictures: u32,
    /// From one slice's plane of focus to the next, at the aim point.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub step_mm: f64,
}

/// What is sharp, for one opening and one subject.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Focus {
    /// The limit of blur on the sensor that everything here is reckoned with.
    pub circle_of_confusion_mm: f64,
    /// Whether that limit is the default, the sensor's diagonal / 1500.
    pub circle_of_confusion_assumed: bool,
    /// The opening: the brief's, or else the one chosen to hold the subject.
    pub f_number: f64,
    /// That opening as engraved.
    pub engraved: f64,
    /// Whether the brief named the opening.
    pub f_number_given: bool,
    /// Depth of field at that opening.
    pub depth_of_field: DepthOfField,
    /// Whether that opening holds the subject; a mark of the third-stop scale counts as its exact value, so
    /// that the opening a plan suggests holds when it is given back by its engraving.
    pub subject_held: bool,
    /// The f-number that just holds the subject; 0 where the subject has no depth, infinite where it
    /// reaches the lens.
    #[cfg_attr(feature = "text", serde(serialize_with = "crate::number::number_or_infinite"))]
    pub f_number_needed: f64,
    /// The next third stop up from it, where the lens has it.
    pub f_number_to_hold: Option<ThirdStop>,
    /// Effective f-number N (1 + m/p) at the opening.
    pub effective_f_number: f64,
    /// Light lost to the lens's extension, 2 log2(1 + m/p) stops.
    pub exposure_loss_stops: f64,
    /// Diffraction disc's diameter on the sensor at the opening.
    pub diffraction_disc_mm: f64,
    /// The f-number at which that disc is as large as the limit of blur.
    pub diffraction_limit_f_number: f64,
    /// The focus stack, where no opening of the lens both holds the subject and stays under the
    /// diffraction limit.
    pub stack: Option<FocusStack>,
}

/// What a subject asks of the focus.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FocusWish {
    /// From the aim point towards the camera to the subject's nearest part (negative: it lies behind).
    pub nearest_mm: f64,
    /// From the aim point away from the camera to the subject's farthest part.
    pub farthest_mm: f64,
    /// Limit of blur on the sensor.
    pub circle_of_confusion_mm: f64,
    /// The opening to use; chosen when `None`.
    pub f_number: Option<f64>,
    /// Share by which the slices of a stack overlap.
    pub stack_overlap: f64,
}

/// Third stops as engraved from f/0.5 to f/512: a convention, not a rounding. From 1 to 22 as printed in
/// an encyclopaedia's table of third stops; outside that from memory.
#[rustfmt::skip]
const ENGRAVED: [f64; 61] = [
    0.5, 0.56, 0.63, 0.7, 0.8, 0.9,
    1.0, 1.1, 1.2, 1.4, 1.6, 1.8, 2.0, 2.2, 2.5, 2.8, 3.2, 3.5, 4.0, 4.5, 5.0, 5.6, 6.3, 7.1,
    8.0, 9.0, 10.0, 11.0, 13.0, 14.0, 16.0, 18.0, 20.0, 22.0, 25.0, 29.0, 32.0, 36.0, 40.0, 45.0, 51.0, 57.0,
    64.0, 72.0, 80.0, 90.0, 102.0, 114.0, 128.0, 144.0, 161.0, 181.0, 203.0, 228.0,
    256.0, 287.0, 323.0, 362.0, 406.0, 456.0, 512.0,
];
/// Sixths of a doubling at the first entry.
const FIRST: i32 = -6;
const LAST: i32 = 54;
/// 2^(k/6) for k from 0 to 5: with whole doublings, every third stop.
const SIXTHS: [f64; 6] = [
    1.0,
    1.122_462_048_309_373,
    1.259_921_049_894_873_2,
    core::f64::consts::SQRT_2,
    1.587_401_051_968_199_4,
    1.781_797_436_280_678_6,
];

/// 2^(k/6) for k from -6 to 54.
fn third_stop(sixths: i32) -> ThirdStop {
    let doublings = f64::from_bits(((1023 + i64::from(sixths.div_euclid(6))) as u64) << 52);
    let f_number = doublings * SIXTHS.get(sixths.rem_euclid(6) as usize).copied().unwrap_or(1.0);
    let engraved = ENGRAVED.get((sixths - FIRST) as usize).copied().unwrap_or(f_number);
    ThirdStop { f_number, engraved }
}

/// Sixths of a doubling of the smallest third stop at or above an f-number over 0: whole doublings from its
/// exponent, the rest by comparing with the sixths.
fn sixths_up(f_number: f64) -> i32 {
    let bits = f_number.to_bits();
    let doublings = (bits >> 52) as i32 - 1023;
    let rest = f64::from_bits(bits & 0x000f_ffff_ffff_ffff | 0x3ff0_0000_0000_0000);
    let under = SIXTHS.iter().filter(|sixth| **sixth < rest).count();
    6 * doublings + under as i32
}

/// The smallest third stop at or above an f-number (ISO 517 scale, exact values 2^(k/6)), within f/0.5 to
/// f/512.
pub fn third_stop_up(f_number: f64) -> ThirdStop {
    if f_number > 0.5 { third_stop(sixths_up(f_number).clamp(FIRST, LAST)) } else { third_stop(FIRST) }
}

/// The largest third stop at or under an f-number, within f/0.5 to f/512.
pub fn third_stop_down(f_number: f64) -> ThirdStop {
    if f_number <= 0.5 {
        return third_stop(FIRST);
    }
    let up = sixths_up(f_number).clamp(FIRST, LAST);
    let stop = third_stop(up);
    if stop.f_number <= f_number { stop } else { third_stop(up - 1) }
}

/// The engraved f-number as the scale's exact value: the third stop whose engraving it is, or else itself.
fn on_scale(f_number: f64) -> ThirdStop {
    let index = ENGRAVED.partition_point(|engraved| *engraved < f_number);
    match ENGRAVED.get(index) {
        Some(engraved) if *engraved == f_number => third_stop(FIRST + index as i32),
        _ => ThirdStop { f_number, engraved: f_number },
    }
}

/// Depth of field at an f-number: near limit m f s / (m f + N c), far limit m f s / (m f - N c), infinite
/// where N c reaches m f.
pub fn depth_of_field(lens: &FocusedLens, f_number: f64, circle_of_confusion_mm: f64) -> DepthOfField {
    let s = lens.pupil_distance_mm;
    let mf = lens.magnification * lens.focal_length_mm;
    let nc = f_number * circle_of_confusion_mm;
    let in_front_mm = s * nc / (mf + nc);
    let (far_limit_mm, behind_mm) =
        if nc >= mf { (f64::INFINITY, f64::INFINITY) } else { (mf * s / (mf - nc), s * nc / (mf - nc)) };
    DepthOfField { near_limit_mm: mf * s / (mf + nc), far_limit_mm, in_front_mm, behind_mm }
}

/// The f-number that just holds what lies from `nearest_mm` in front of the aim point to `farthest_mm`
/// behind it; 0 where neither needs any, infinite where the nearest reaches the entrance pupil.
pub fn f_number_to_hold(
    lens: &FocusedLens,
    nearest_mm: f64,
    farthest_mm: f64,
    circle_of_confusion_mm: f64,
) -> f64 {
    let s = lens.pupil_distance_mm;
    let mf_per_c = lens.magnification * lens.focal_length_mm / circle_of_confusion_mm;
    if nearest_mm >= s {
        return f64::INFINITY;
    }
    let near = nearest_mm / (s - nearest_mm);
    let far = if farthest_mm > 0.0 { farthest_mm / (s + farthest_mm) } else { 0.0 };
    mf_per_c * near.larger(far).larger(0.0)
}

/// Blur on the sensor of a point `distance_mm` from the entrance pupil, (f / N) m |x - s| / x.
pub fn blur_mm(lens: &FocusedLens, f_number: f64, distance_mm: f64) -> f64 {
    let off = (distance_mm - lens.pupil_distance_mm).abs();
    lens.focal_length_mm / f_number * lens.magnification * (off / distance_mm)
}

/// Effective f-number N (1 + m/p) (DIN 1335 usage of the pupil ratio).
pub fn effective_f_number(lens: &FocusedLens, f_number: f64) -> f64 {
    f_number * (1.0 + lens.magnification / lens.pupil_ratio)
}

/// Light lost to the lens's extension, 2 log2(1 + m/p) stops.
pub fn exposure_loss_stops(lens: &FocusedLens) -> f64 {
    2.0 * ln_1p(lens.magnification / lens.pupil_ratio) / core::f64::consts::LN_2
}

/// Diameter of the diffraction disc on the sensor, 2.44 λ N (1 + m/p).
pub fn diffraction_disc_mm(lens: &FocusedLens, f_number: f64) -> f64 {
    DIFFRACTION_DISC * WAVELENGTH_MM * effective_f_number(lens, f_number)
}

/// The f-number at which the diffraction disc is as large as the limit of blur.
pub fn diffraction_limit_f_number(lens: &FocusedLens, circle_of_confusion_mm: f64) -> f64 {
    circle_of_confusion_mm
        / (DIFFRACTION_DISC * WAVELENGTH_MM * (1.0 + lens.magnification / lens.pupil_ratio))
}

/// How many pictures a focus stack needs, and how far its planes of focus lie apart.
///
/// Turning the focus at a constant focal length moves the limits of sharpness so that
/// y = 1 - (f/p) / x is multiplied by (1 + a) / (1 - a) from a slice's near limit to its far one, with
/// a = N c / (f p): slices are equal steps of ln y, and their number is exact. The focal length is taken as
/// at the aim point for all of them. `None` where the subject reaches the entrance pupil.
pub fn stack(lens: &FocusedLens, stop: ThirdStop, wish: &FocusWish) -> Option<FocusStack> {
    let s = lens.pupil_distance_mm;
    let edge = lens.focal_length_mm / lens.pupil_ratio;
    let (near, far) = (s - wish.nearest_mm, s + wish.farthest_mm);
    if near <= edge {
        return None;
    }
    let a = stop.f_number * wish.circle_of_confusion_mm / (lens.focal_length_mm * lens.pupil_ratio);
    let whole = ln_1p(edge * (far - near) / (far * (near - edge)));
    let slice = if a < 1.0 { ln_1p(2.0 * a / (1.0 - a)) } else { f64::INFINITY };
    let advance = slice * (1.0 - wish.stack_overlap);
    // Conversion to an integer saturates, as documented.
    let pictures = if whole <= slice { 1 } else { ceil((whole - slice) / advance + 1.0) as u32 };
    // dx = (x² - x f/p) / (f/p) d(ln y).
    let step_mm = s * (s - edge) / edge * advance;
    Some(FocusStack { f_number: stop.f_number, engraved: stop.engraved, pictures, step_mm })
}

/// Everything about focus for one lens setting and one subject.
pub fn focus(lens: &Lens, focused: &FocusedLens, wish: &FocusWish, circle_assumed: bool) -> Focus {
    let c = wish.circle_of_confusion_mm;
    let needed = f_number_to_hold(focused, wish.nearest_mm, wish.farthest_mm, c);
    let limit = diffraction_limit_f_number(focused, c);
    let (least, most) = (on_scale(lens.least_f_number), on_scale(lens.most_f_number));
    let hold = if needed <= least.f_number {
        Some(least)
    } else if needed <= most.f_number {
        let stop = third_stop_up(needed);
        Some(if stop.f_number < most.f_number { stop } else { most })
    } else {
        None
    };
    let best = if limit <= least.f_number {
        least
    } else if limit >= most.f_number {
        most
    } else {
        let stop = third_stop_down(limit);
        if stop.f_number > least.f_number { stop } else { least }
    };
    let one_picture = matches!(hold, Some(stop) if stop.f_number <= limit || needed <= least.f_number);
    let stack = if one_picture { None } else { stack(focused, best, wish) };
    let chosen = match (wish.f_number, hold) {
        (Some(given), _) => ThirdStop { f_number: given, engraved: given },
        (None, Some(stop)) if one_picture => stop,
        (None, _) => best,
    };
    let n = chosen.f_number;
    Focus {
        circle_of_confusion_mm: c,
        circle_of_confusion_assumed: circle_assumed,
        f_number: n,
        engraved: chosen.engraved,
        f_number_given: wish.f_number.is_some(),
        depth_of_field: depth_of_field(focused, n, c),
        subject_held: wish.f_number.map_or(n, |given| on_scale(given).f_number) >= needed,
        f_number_needed: needed,
        f_number_to_hold: hold,
        effective_f_number: effective_f_number(focused, n),
        exposure_loss_stops: exposure_loss_stops(focused),
        diffraction_disc_mm: diffraction_disc_mm(focused, n),
        diffraction_limit_f_number: limit,
        stack,
    }
}
