//! Frame widths solved for: from the share of the frame that the subject is to fill, and under a ceiling.

use super::outline::outline;
use super::pose::Orientation;
use crate::fault::{Fault, FaultKind};
use crate::number::{Extremes, sqrt};
use crate::optics::camera::Camera;
use crate::optics::inverse::magnification_within;
use crate::optics::lens::Lens;
use crate::optics::sensor::UsedArea;
use crate::range;
use crate::scene::subject::Subject;

/// Which side of the frame a subject is to fill.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fill {
    /// The frame's width.
    Width,
    /// The frame's height.
    Height,
}

/// The frame width at which the subject fills the wanted share of the frame's width or height.
///
/// The share falls steadily as the frame widens, so there is one answer, as long as the aim point lies in
/// the subject; well beside it, two widths can give the same share, and one of them is found. Refused with
/// [`FaultKind::NoFrameWidth`] where none within the range of [`range::FRAME_WIDTH_MM`] does.
pub fn frame_width_for_fill(
    fill: Fill,
    share: f64,
    lens: &Lens,
    used: &UsedArea,
    subject: &Subject,
    aim_height_mm: f64,
    at: &Orientation,
) -> Result<f64, Fault> {
    // Width of the frame that the subject's picture would fill as wanted, were it seen from where that
    // frame is seen: the answer is the width that gives itself.
    let asked = |frame_width_mm: f64| {
        let focused = lens.focused(used.width_mm / frame_width_mm);
        let frame_height_mm = frame_width_mm * (used.height_mm / used.width_mm);
        let seen =
            outline(subject, aim_height_mm, at, focused.pupil_distance_mm, frame_width_mm, frame_height_mm)?;
        let filled = match fill {
            Fill::Width => seen.fill_width,
            Fill::Height => seen.fill_height,
        };
        Some(frame_width_mm * (filled / share))
    };
    let (narrowest, widest) = (range::FRAME_WIDTH_MM.least, range::FRAME_WIDTH_MM.most);
    // Refused, with the shares that the frame widths from `from_mm` on give.
    let none = |from_mm: f64| {
        let field = match fill {
            Fill::Width => range::FILL_WIDTH,
            Fill::Height => range::FILL_HEIGHT,
        };
        let share_at = |width: f64| asked(width).map_or(f64::INFINITY, |asked| share * (asked / width));
        let (least, most) = (share_at(widest).larger(field.least), share_at(from_mm).smaller(field.most));
        // Something seen edge-on fills nothing: then no share is allowed, and no range is named.
        let (least, most) = if least <= most { (least, most) } else { (f64::NEG_INFINITY, f64::INFINITY) };
        Err(Fault { least, most, ..field.fault(FaultKind::NoFrameWidth, share) })
    };
    let (mut low, mut high) = (narrowest, widest);
    let too_large = |width: f64| matches!(asked(width), Some(asked) if asked < width);
    if !too_large(high) {
        return none(narrowest);
    }
    // Secant on W - asked(W), held inside the bracket; halving the ratio of the bracket where the secant
    // leaves it or the subject reaches the pupil.
    let mut width = sqrt(low * high);
    let mut before: Option<(f64, f64)> = None;
    for _ in 0..100 {
        let Some(over) = asked(width).map(|asked| width - asked) else {
            low = width;
            before = None;
            width = sqrt(low) * sqrt(high);
            continue;
        };
        if over < 0.0 {
            low = width;
        } else {
            high = width;
        }
        let middle = sqrt(low) * sqrt(high);
        let next = match before {
            Some((at, value)) if value != over => width - over * (width - at) / (over - value),
            // Near the answer, asked(W) hardly depends on W.
            _ => width - over,
        };
        let next = if next > low && next < high { next } else { middle };
        before = Some((width, over));
        if over == 0.0 || (next - width).abs() <= 1e-15 * width {
            break;
        }
        width = next;
    }
    // Where the subject reaches the pupil before it fills enough, the search ends at that jump; elsewhere it ends
    // within the rounding of the outline, far under a millionth.
    match asked(width) {
        Some(asked) if (asked - width).abs() <= 1e-6 * width => Ok(width),
        _ => none(high),
    }
}

/// The largest frame width that keeps camera and pivot under a ceiling (its clearance already taken off),
/// at an elevation, the aim point being `aim_height_above_floor_mm` up; infinite where the camera fits at
/// any distance, level or looking up.
///
/// A boom that rises behind the camera, or its tail, may be higher still: the plan checks those.
/// Refused with [`FaultKind::NoRoomUnderCeiling`] where the camera does not fit even at its closest focus.
pub fn largest_frame_width_mm(
    ceiling_mm: f64,
    aim_height_above_floor_mm: f64,
    at: &Orientation,
    lens: &Lens,
    used: &UsedArea,
    camera: &Camera,
    pivot_below_socket_mm: f64,
) -> Result<f64, Fault> {
    lens.check()?;
    camera.check()?;
    let ceiling = range::CEILING_MM.check(ceiling_mm)?;
    let aim = range::MEASURED_AIM_HEIGHT_MM.check(aim_height_above_floor_mm)?;
    range::USED_WIDTH_MM.check(used.width_mm)?;
    range::PIVOT_BELOW_SOCKET_MM.check(pivot_below_socket_mm)?;
    let (se, ce) = (at.sin_elevation, at.cos_elevation);
    // From above, where the ceiling counts, the body's back is higher than the lens's front.
    let body = camera.body_behind_mm * se + camera.body_above_mm * ce;
    let pivot = -camera.socket_ahead_mm * se - (camera.socket_below_mm + pivot_below_socket_mm) * ce;
    let over_sensor = body.larger(pivot);
    let no_room = |least: f64| {
        // Higher than any ceiling that may be given: what it would take is told all the same.
        let most = if least <= range::CEILING_MM.most { range::CEILING_MM.most } else { f64::INFINITY };
        Fault { least, most, ..range::CEILING_MM.fault(FaultKind::NoRoomUnderCeiling, ceiling) }
    };
    if se <= 0.0 {
        // Level, the height does not depend on the distance; from below it falls with it, and the least
        // height of all distances has no bound.
        let fits = se < 0.0 || aim + over_sensor <= ceiling;
        return if fits { Ok(f64::INFINITY) } else { Err(no_room(aim + over_sensor)) };
    }
    let distance = (ceiling - aim - over_sensor) / se;
    match magnification_within(lens, distance) {
        Ok(magnification) => Ok(used.width_mm / magnification),
        Err(fault) => Err(no_room(aim + over_sensor + fault.least * se)),
    }
}
