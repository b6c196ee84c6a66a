//! Which elevation suits the subject, and why.
//!
//! The ranges are common practice, no source: flat subjects 45 to 90 degrees, tall ones 0 to 45, between
//! them 25 to 75 with 45 as the start; detail on top moves the camera up, layers in the side move it down;
//! an opaque vessel judged by its contents 45 to 90; layers behind clear glass 0 to 45; a decorated glass
//! whose shape should still read about 75; a whole laid table 90. Within the range, the start is computed
//! from what would show. The advice never overrules the brief.

use crate::number::{Extremes, PI, atan2_deg, cbrt, sin_cos, sin_cos_deg};
use crate::scene::subject::{JudgedBy, Subject, Vessel};
use crate::view::outline::{contents_from_far, segment, top_share};
use crate::view::pose::Orientation;

/// A subject counts as flat up to this height over its breadth (common practice, no source).
pub const FLAT_HEIGHT_TO_BREADTH: f64 = 1.0 / 3.0;
/// A subject counts as tall from this height over its breadth (common practice, no source).
pub const TALL_HEIGHT_TO_BREADTH: f64 = 1.0;
/// The start shows the contents of a vessel at least so far.
pub const CONTENTS_SHARE: f64 = 0.75;
/// cos θ where θ - sin θ cos θ = share π / 2, for [`CONTENTS_SHARE`] and for a half: the solutions that
/// [`elevation_for_contents_deg`] finds for any share.
const COS_AT_CONTENTS_SHARE: f64 = 0.197_643_953_155_659_52;
const COS_AT_HALF: f64 = 0.403_972_753_299_517_2;
/// The start for sides shows at most so much top; that for flat things so much side.
pub const MINOR_SHARE: f64 = 0.1;

/// One reason for the advice.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "text", derive(serde::Serialize), serde(rename_all = "snake_case"))]
#[repr(i32)]
#[non_exhaustive]
pub enum AdviceReason {
    /// The subject is flat.
    Flat = 1,
    /// It is tall.
    Tall = 2,
    /// It is between flat and tall.
    Between = 3,
    /// Detail on the top.
    TopDetail = 4,
    /// Layers in the side.
    SideLayers = 5,
    /// The contents of an opaque vessel.
    Contents = 6,
    /// Layers behind clear glass.
    ClearLayers = 7,
    /// A decorated glass.
    DecoratedGlass = 8,
    /// A laid table.
    LaidTable = 9,
    /// The start is where the side is still nearly all that shows.
    StartShowsSide = 10,
    /// The start is where the top is nearly all that shows.
    StartShowsTop = 11,
    /// The start is where top and side show alike.
    StartShowsBoth = 12,
    /// The start is the lowest from which most of the contents show.
    StartShowsContents = 13,
    /// The start is the customary one.
    StartCustomary = 14,
}

/// Advice on elevation for a subject.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Advice {
    /// Lowest elevation advised.
    pub least_deg: f64,
    /// Highest.
    pub most_deg: f64,
    /// Where to begin looking.
    pub start_deg: f64,
    /// Why, the weightiest first.
    pub reasons: [Option<AdviceReason>; 3],
    /// Share of what is seen that is top, from the start.
    pub top_share_at_start: f64,
    /// Share of a vessel's contents that shows from the start, from far off.
    pub contents_at_start: Option<f64>,
    /// The elevation from which top and side show alike; 90 where the side never falls to that.
    pub half_top_from_deg: f64,
    /// The lowest elevation from which half of a vessel's contents show, from far off.
    pub half_contents_from_deg: Option<f64>,
}

impl AdviceReason {
    /// Every reason, in the order of their numbers.
    pub const ALL: &'static [AdviceReason] = &[
        AdviceReason::Flat,
        AdviceReason::Tall,
        AdviceReason::Between,
        AdviceReason::TopDetail,
        AdviceReason::SideLayers,
        AdviceReason::Contents,
        AdviceReason::ClearLayers,
        AdviceReason::DecoratedGlass,
        AdviceReason::LaidTable,
        AdviceReason::StartShowsSide,
        AdviceReason::StartShowsTop,
        AdviceReason::StartShowsBoth,
        AdviceReason::StartShowsContents,
        AdviceReason::StartCustomary,
    ];

    /// One sentence.
    pub const fn sentence(self) -> &'static str {
        match self {
            AdviceReason::Flat => "It is flat: what there is to see lies on top, 45 to 90.",
            AdviceReason::Tall => "It is tall: what there is to see is its side, 0 to 45.",
            AdviceReason::Between => "It is neither flat nor tall: 25 to 75, beginning at 45.",
            AdviceReason::TopDetail => "The detail is on its top, so the camera moves up.",
            AdviceReason::SideLayers => "The layers are in its side, so the camera moves down.",
            AdviceReason::Contents => {
                "The vessel is opaque and judged by its contents: one must look into it, 45 to 90."
            }
            AdviceReason::ClearLayers => "The layers show through clear glass: 0 to 45.",
            AdviceReason::DecoratedGlass => {
                "The glass is decorated and its shape should still read while one looks in: about 75."
            }
            AdviceReason::LaidTable => "A whole laid table is seen straight from above.",
            AdviceReason::StartShowsSide => {
                "Begin where the top is a tenth of what shows, as far as the range allows."
            }
            AdviceReason::StartShowsTop => {
                "Begin where the side is a tenth of what shows, as far as the range allows."
            }
            AdviceReason::StartShowsBoth => {
                "Begin where top and side show alike, as far as the range allows."
            }
            AdviceReason::StartShowsContents => {
                "Begin at the lowest elevation from which three quarters of the contents show."
            }
            AdviceReason::StartCustomary => "Begin at the customary elevation.",
        }
    }
}

/// Where the subject's top makes up a share (under 1) of what is seen from a bearing, given as sine and
/// cosine.
fn elevation_for_top_share_deg(subject: &Subject, share: f64, sin_bearing: f64, cos_bearing: f64) -> f64 {
    let side = subject.side_area_mm2(sin_bearing, cos_bearing);
    atan2_deg(share * side, (1.0 - share) * subject.top_area_mm2())
}

/// The lowest elevation from which a share of a vessel's contents shows, from far off: for 0, the elevation
/// from which the first of them come into sight; for 1, straight overhead unless they reach the rim.
pub fn elevation_for_contents_deg(vessel: &Vessel, share: f64) -> f64 {
    // θ - sin θ cos θ = share π / 2, where cos θ = g cot e / d. Newton's method from the leading term of
    // the left side, 2 θ³ / 3, which is never under it: from below on a convex curve, so the first step
    // overshoots and the rest come down to the root.
    let wanted = 0.5 * PI * share;
    if wanted <= 0.0 {
        // Where the first of the contents come into sight, θ is 0 and the step below would divide by it.
        return contents_elevation_deg(vessel, 1.0);
    }
    let mut theta = cbrt(1.5 * wanted);
    let (mut sin, mut cos) = sin_cos(theta);
    for _ in 0..20 {
        let step = (segment(theta, sin, cos) - wanted) / (2.0 * sin * sin);
        theta -= step;
        (sin, cos) = sin_cos(theta);
        if step.abs() <= 1e-16 {
            break;
        }
    }
    if cos > 0.0 { contents_elevation_deg(vessel, cos) } else { 90.0 }
}

/// The elevation at which g cot e / d comes to a cosine over 0.
fn contents_elevation_deg(vessel: &Vessel, cos: f64) -> f64 {
    atan2_deg(vessel.contents_below_rim_mm, vessel.inside_diameter_mm * cos)
}

/// Advice on elevation for a subject seen from a bearing.
pub fn advice(subject: &Subject, bearing_deg: f64) -> Advice {
    advice_from(subject, sin_cos_deg(bearing_deg))
}

/// As [`advice`], the bearing given as sine and cosine.
pub(crate) fn advice_from(subject: &Subject, (sin_b, cos_b): (f64, f64)) -> Advice {
    let ratio = subject.height_mm / subject.breadth_mm();
    let (form, least, most): (_, f64, f64) = if ratio <= FLAT_HEIGHT_TO_BREADTH {
        (AdviceReason::Flat, 45.0, 90.0)
    } else if ratio >= TALL_HEIGHT_TO_BREADTH {
        (AdviceReason::Tall, 0.0, 45.0)
    } else {
        (AdviceReason::Between, 25.0, 75.0)
    };
    let middle = 0.5 * (least + most);
    let top_from = |share| elevation_for_top_share_deg(subject, share, sin_b, cos_b);
    let half_top_from_deg = top_from(0.5);
    let shows_side = || (AdviceReason::StartShowsSide, top_from(MINOR_SHARE));
    let shows_top = || (AdviceReason::StartShowsTop, top_from(1.0 - MINOR_SHARE));
    let shows_both = (AdviceReason::StartShowsBoth, half_top_from_deg);
    let customary = |start: f64| (AdviceReason::StartCustomary, start);
    let (why, least, most, (why_start, start)) = match subject.judged_by {
        JudgedBy::Form => (
            None,
            least,
            most,
            match form {
                AdviceReason::Flat => shows_top(),
                AdviceReason::Tall => shows_side(),
                _ => customary(45.0),
            },
        ),
        JudgedBy::TopDetail => (Some(AdviceReason::TopDetail), middle, most.larger(75.0), shows_both),
        JudgedBy::SideLayers => (Some(AdviceReason::SideLayers), 0.0, middle, shows_side()),
        JudgedBy::Contents => {
            let start = match &subject.vessel {
                Some(vessel) => {
                    let from = contents_elevation_deg(vessel, COS_AT_CONTENTS_SHARE);
                    (AdviceReason::StartShowsContents, from)
                }
                None => customary(45.0),
            };
            (Some(AdviceReason::Contents), 45.0, 90.0, start)
        }
        JudgedBy::ClearLayers => (Some(AdviceReason::ClearLayers), 0.0, 45.0, shows_side()),
        JudgedBy::DecoratedGlass => (Some(AdviceReason::DecoratedGlass), 70.0, 80.0, customary(75.0)),
        JudgedBy::LaidTable => (Some(AdviceReason::LaidTable), 90.0, 90.0, customary(90.0)),
    };
    let start_deg = start.larger(least).smaller(most);
    let at_start = Orientation::of(sin_cos_deg(start_deg), (sin_b, cos_b));
    Advice {
        least_deg: least,
        most_deg: most,
        start_deg,
        reasons: match why {
            None => [Some(form), Some(why_start), None],
            // What the picture lives by outweighs the form; for some the form does not matter at all.
            Some(why @ (AdviceReason::TopDetail | AdviceReason::SideLayers)) => {
                [Some(why), Some(form), Some(why_start)]
            }
            Some(why) => [Some(why), Some(why_start), None],
        },
        top_share_at_start: top_share(subject, &at_start),
        contents_at_start: subject
            .vessel
            .map(|vessel| contents_from_far(&vessel, at_start.sin_elevation, at_start.cos_elevation)),
        half_top_from_deg,
        half_contents_from_deg: subject.vessel.map(|vessel| contents_elevation_deg(&vessel, COS_AT_HALF)),
    }
}
