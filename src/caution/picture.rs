//! Cautions about lens, focus and picture.

use super::{CautionCode as Code, Cautions, Level};
use crate::advice::Advice;
use crate::brief::Brief;
use crate::number::Extremes;
use crate::optics::focus::Focus;
use crate::optics::lens::FocusedLens;
use crate::optics::tilt::Tilt;
use crate::vector::{Direction, FloorPoint};
use crate::view::footprint::Footprint;
use crate::view::outline::{Outline, SubjectDepth};
use crate::view::perspective::{Perspective, straight_on_stretch_limit};
use crate::view::pose::Pose;

/// Elevations under this count as straight-on.
const STRAIGHT_ON_UNDER_DEG: f64 = 15.0;

/// What lens, focus and picture came to.
pub(crate) struct PictureFindings<'a> {
    pub(crate) brief: &'a Brief,
    pub(crate) lens: &'a FocusedLens,
    pub(crate) vertical_field_deg: f64,
    pub(crate) pose: &'a Pose,
    pub(crate) focus: &'a Focus,
    pub(crate) tilt: &'a Tilt,
    pub(crate) depth: &'a SubjectDepth,
    pub(crate) outline: Option<&'a Outline>,
    pub(crate) footprint: &'a Footprint,
    pub(crate) perspective: &'a Perspective,
    pub(crate) advice: &'a Advice,
}

/// Raises what lens, focus and picture call for.
pub(crate) fn picture(found: &PictureFindings<'_>, cautions: &mut Cautions) {
    lens_cautions(found, cautions);
    focus_cautions(found, cautions);
    let shot = &found.brief.shot;
    let footprint = found.footprint;
    if !footprint.from_below && footprint.corners.iter().any(|corner| corner.is_none()) {
        let top_edge = shot.elevation_deg - 0.5 * found.vertical_field_deg;
        cautions.add(Code::HorizonInFrame, Level::Note, top_edge, 0.0);
    }
    let pupil_height = found.pose.pupil.z_mm - found.brief.table.height_mm;
    if footprint.from_below {
        cautions.add(Code::TableFromBelow, Level::Warn, pupil_height, 0.0);
    }
    cautions.over(Code::NearEdgeHidesFoot, Level::Warn, hidden_by_near_edge_mm(found, pupil_height), 0.0);
    if let Some(share) = footprint.table_share {
        // A frame cut out of the table's middle covers itself but for rounding.
        if share < 1.0 - 1e-12 {
            cautions.add(Code::TableEndsInFrame, Level::Note, share, 1.0);
        }
    }
    if let Some(outline) = found.outline {
        let room = outline
            .room_above_mm
            .smaller(outline.room_below_mm)
            .smaller(outline.room_left_mm)
            .smaller(outline.room_right_mm);
        // A subject that is asked to fill the frame touches its sides but for rounding.
        if room < -1e-9 * found.lens.pupil_distance_mm {
            cautions.add(Code::SubjectCut, Level::Warn, room, 0.0);
        }
    }
    if shot.elevation_deg < STRAIGHT_ON_UNDER_DEG {
        let stretch = found.perspective.corner_stretch;
        cautions.over(Code::StretchShows, Level::Warn, stretch, straight_on_stretch_limit());
    }
    let advice = found.advice;
    if shot.elevation_deg < advice.least_deg {
        cautions.add(Code::ElevationOutsideAdvice, Level::Note, shot.elevation_deg, advice.least_deg);
    } else {
        cautions.over(Code::ElevationOutsideAdvice, Level::Note, shot.elevation_deg, advice.most_deg);
    }
    let subject = &found.brief.subject;
    let beyond_x = shot.aim_x_mm.abs() + subject.half_extent_mm(1.0, 0.0) - 0.5 * found.brief.table.width_mm;
    let beyond_y = shot.aim_y_mm.abs() + subject.half_extent_mm(0.0, 1.0) - 0.5 * found.brief.table.depth_mm;
    cautions.over(Code::SubjectOverhangsTable, Level::Warn, beyond_x.larger(beyond_y), 0.0);
}

fn lens_cautions(found: &PictureFindings<'_>, cautions: &mut Cautions) {
    let lens = &found.brief.lens;
    let focused = found.lens;
    if let Some(closest) = lens.closest_focus_mm {
        // At its own closest focus a lens does focus; the distance found there may differ by rounding.
        let limit = closest * (1.0 - 1e-12);
        if focused.sensor_distance_mm < limit {
            cautions.add(Code::NearerThanFocus, Level::Stop, focused.sensor_distance_mm, closest);
        }
    }
    if let Some(largest) = lens.largest_magnification {
        cautions.over(Code::MagnificationBeyondLens, Level::Stop, focused.magnification, largest);
    }
    if focused.focal_length_assumed {
        cautions.add(Code::FocalLengthAssumed, Level::Note, focused.focal_length_mm, lens.focal_length_mm);
    }
    if let Some(clearance) = found.pose.front_clearance_mm {
        let needed = found.brief.shot.light_clearance_mm;
        cautions.under(Code::LightClearance, Level::Warn, clearance, needed);
        let room = clearance - found.depth.nearest_mm;
        if room <= 0.0 {
            cautions.add(Code::LensMeetsSubject, Level::Stop, room, 0.0);
        }
    } else if found.depth.nearest_mm >= focused.pupil_distance_mm {
        let room = focused.pupil_distance_mm - found.depth.nearest_mm;
        cautions.add(Code::LensMeetsSubject, Level::Stop, room, 0.0);
    }
}

fn focus_cautions(found: &PictureFindings<'_>, cautions: &mut Cautions) {
    let focus = found.focus;
    let lens = &found.brief.lens;
    if focus.f_number_given && !focus.subject_held {
        cautions.add(Code::SubjectNotHeld, Level::Warn, focus.f_number, focus.f_number_needed);
    }
    if let Some(stack) = &focus.stack {
        cautions.over(Code::StackNeeded, Level::Note, f64::from(stack.pictures), 1.0);
    }
    let blur = focus.circle_of_confusion_mm;
    cautions.over(Code::DiffractionShows, Level::Note, focus.diffraction_disc_mm, blur);
    if focus.f_number_given {
        if focus.f_number < lens.least_f_number {
            cautions.add(Code::FNumberNotOnLens, Level::Stop, focus.f_number, lens.least_f_number);
        } else {
            cautions.over(Code::FNumberNotOnLens, Level::Stop, focus.f_number, lens.most_f_number);
        }
    }
    if found.brief.shot.focus_on_table {
        match found.tilt.tilt_deg {
            None => {
                let (hinge, focal) = (found.tilt.hinge_distance_mm, found.lens.focal_length_mm);
                cautions.add(Code::TiltImpossible, Level::Warn, hinge, focal);
            }
            Some(tilt) => cautions.over(Code::TiltBeyondLens, Level::Warn, tilt, lens.largest_tilt_deg),
        }
    }
}

/// Height of the subject, on its axis, that the near edge of the table hides from a pupil under the table
/// top.
fn hidden_by_near_edge_mm(found: &PictureFindings<'_>, pupil_height_mm: f64) -> f64 {
    if pupil_height_mm >= 0.0 {
        return 0.0;
    }
    let from: FloorPoint = found.pose.pupil.floor();
    let right = found.pose.right;
    let forward = Direction { x: -right.y, y: right.x, z: 0.0 };
    let to_aim = found.pose.pupil.to(found.pose.aim);
    let level = to_aim.x * forward.x + to_aim.y * forward.y;
    match found.brief.table.crossing_mm(from, forward) {
        Some((entry, _)) if entry > 0.0 && entry < level => {
            let hidden = -pupil_height_mm * (level / entry - 1.0);
            let height = found.brief.subject.height_mm;
            if height > 0.0 { hidden.smaller(height) } else { hidden }
        }
        _ => 0.0,
    }
}
