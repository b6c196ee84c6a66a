//! Cases of lens, focus and picture.

use tablerig::caution::CautionCode as Code;
use tablerig::caution::Level;
use tablerig::optics::inverse::focal_length_for;
use tablerig::scene::subject::{JudgedBy, Shape, Subject};
use tablerig::{brief::Brief, optics::lens::Lens};

use crate::workshop::{flat_subject, overhead, slanting};
use crate::{Case, JUST, both, case, over_under, planned, under_over, with};

fn bottle() -> Subject {
    Subject {
        shape: Shape::Round { diameter_mm: 80.0 },
        height_mm: 300.0,
        vessel: None,
        judged_by: JudgedBy::Form,
    }
}

/// Level with the table top, from the front.
fn level() -> Brief {
    with(slanting(), |brief| brief.shot.elevation_deg = 0.0)
}

pub(crate) fn cases() -> Vec<Case> {
    [lens(), focus(), tilt(), frame(), subject()].into_iter().flatten().collect()
}

/// Briefs that stand at a limit exactly.
pub(crate) fn exact() -> Vec<(Code, Brief)> {
    let base = overhead();
    let plan = planned(&base);
    let tall = with(base, |brief| brief.subject = bottle());
    let needed = planned(&tall).focus.f_number_needed;
    let tilting = with(slanting(), |brief| brief.shot.focus_on_table = true);
    let tilt = planned(&tilting).tilt.tilt_deg.unwrap();
    let f_number = |brief, n| with(brief, |brief: &mut Brief| brief.shot.f_number = Some(n));
    vec![
        (
            Code::NearerThanFocus,
            with(base, |brief| brief.lens.closest_focus_mm = Some(plan.lens.sensor_distance_mm)),
        ),
        (
            Code::MagnificationBeyondLens,
            with(base, |brief| brief.lens.largest_magnification = Some(plan.lens.magnification)),
        ),
        (
            Code::LightClearance,
            with(base, |brief| brief.shot.light_clearance_mm = plan.pose.front_clearance_mm.unwrap()),
        ),
        (Code::SubjectNotHeld, f_number(tall, needed)),
        (Code::FNumberNotOnLens, f_number(base, 22.0)),
        (Code::FNumberNotOnLens, f_number(base, 2.8)),
        (Code::TiltBeyondLens, with(tilting, |brief| brief.lens.largest_tilt_deg = tilt)),
        (Code::ElevationOutsideAdvice, with(base, |brief| brief.shot.elevation_deg = 45.0)),
        (Code::ElevationOutsideAdvice, with(tall, |brief| brief.shot.elevation_deg = 45.0)),
        (Code::SubjectOverhangsTable, with(base, |brief| brief.shot.aim_x_mm = 500.0)),
    ]
}

fn lens() -> Vec<Case> {
    let base = overhead();
    let plan = planned(&base);
    let (d, m) = (plan.lens.sensor_distance_mm, plan.lens.magnification);
    let clearance = plan.pose.front_clearance_mm.unwrap();
    let both_published = |lens: Lens| Lens { closest_focus_mm: Some(400.0), ..lens };
    let tall = with(base, |brief| brief.subject = bottle());
    // The bottle stands 300 up towards a camera overhead that is aimed at its foot.
    let touching = d - 300.0;
    let none = with(tall, |brief| brief.lens.front_from_sensor_mm = None);
    let s = plan.lens.pupil_distance_mm;
    vec![
        case(
            Code::NearerThanFocus,
            Level::Stop,
            both(base, over_under(d), |brief, closest| brief.lens.closest_focus_mm = Some(closest)),
            |plan| plan.lens.sensor_distance_mm,
            d,
        ),
        case(
            Code::MagnificationBeyondLens,
            Level::Stop,
            both(base, under_over(m), |brief, most| brief.lens.largest_magnification = Some(most)),
            |plan| plan.lens.magnification,
            m,
        ),
        case(
            Code::FocalLengthAssumed,
            Level::Note,
            [Some(0.5), None].map(|largest| {
                let lens = Lens { largest_magnification: largest, ..both_published(base.lens) };
                Brief { lens, ..base }
            }),
            |plan| plan.lens.focal_length_mm,
            90.0,
        ),
        case(
            Code::LightClearance,
            Level::Warn,
            both(base, over_under(clearance), |brief, room| brief.shot.light_clearance_mm = room),
            |plan| plan.pose.front_clearance_mm.unwrap(),
            clearance,
        ),
        case(
            Code::LensMeetsSubject,
            Level::Stop,
            both(tall, over_under(touching), |brief, front| brief.lens.front_from_sensor_mm = Some(front)),
            |plan| plan.pose.front_clearance_mm.unwrap() - plan.subject_depth.nearest_mm,
            0.0,
        ),
        // With the lens's front not known, the subject must at least keep out of the pupil.
        case(
            Code::LensMeetsSubject,
            Level::Stop,
            both(none, over_under(s), |brief, height| brief.subject.height_mm = height),
            |plan| plan.lens.pupil_distance_mm - plan.subject_depth.nearest_mm,
            0.0,
        ),
    ]
}

fn focus() -> Vec<Case> {
    let tall = with(overhead(), |brief| brief.subject = bottle());
    let plan = planned(&tall);
    let needed = plan.focus.f_number_needed;
    let limit = plan.focus.diffraction_limit_f_number;
    let at = |f_number: [f64; 2]| both(tall, f_number, |brief, n| brief.shot.f_number = Some(n));
    let chosen = with(overhead(), |brief| brief.shot.f_number = None);
    let s = plan.lens.pupil_distance_mm;
    vec![
        case(Code::SubjectNotHeld, Level::Warn, at(under_over(needed)), |plan| plan.focus.f_number, needed),
        case(
            Code::StackNeeded,
            Level::Note,
            both(chosen, over_under(one_slice(s)), |brief, height| {
                brief.subject = Subject { height_mm: height, ..bottle() };
            }),
            |plan| f64::from(plan.focus.stack.unwrap().pictures),
            1.0,
        ),
        case(
            Code::DiffractionShows,
            Level::Note,
            at(over_under(limit)),
            |plan| plan.focus.diffraction_disc_mm,
            0.03,
        ),
        case(Code::FNumberNotOnLens, Level::Stop, at(over_under(22.0)), |plan| plan.focus.f_number, 22.0),
        case(Code::FNumberNotOnLens, Level::Stop, at(under_over(2.8)), |plan| plan.focus.f_number, 2.8),
    ]
}

/// How high a thing may stand over the aim point, seen from overhead, so that a single slice at f/20, the
/// last third stop under the diffraction limit of 21.1, holds it from foot to top: from the far limit at the
/// foot to the near one at the top, 1 - f / x falls by (1 - a) / (1 + a), a = N c / f.
fn one_slice(s: f64) -> f64 {
    let (f, n) = (90.0, 2.0_f64.powf(26.0 / 6.0));
    let a = n * 0.03 / f;
    s - f / (1.0 - (1.0 - f / s) * (1.0 - a) / (1.0 + a))
}

fn tilt() -> Vec<Case> {
    let asked = with(level(), |brief| brief.shot.focus_on_table = true);
    let f = 35.0;
    let slanting = with(slanting(), |brief| brief.shot.focus_on_table = true);
    let tilt = planned(&slanting).tilt.tilt_deg.unwrap();
    vec![
        // Level, the hinge lies straight under the lens: as far down as the aim point is up.
        case(
            Code::TiltImpossible,
            Level::Warn,
            both(asked, under_over(f), |brief, height| brief.shot.aim_height_mm = Some(height)),
            |plan| plan.tilt.hinge_distance_mm,
            f,
        ),
        case(
            Code::TiltBeyondLens,
            Level::Warn,
            both(slanting, under_over(tilt), |brief, most| brief.lens.largest_tilt_deg = most),
            |plan| plan.tilt.tilt_deg.unwrap(),
            tilt,
        ),
    ]
}

fn frame() -> Vec<Case> {
    let half = 0.5 * planned(&slanting()).field_angles.vertical_deg;
    let from = |elevations: [f64; 2]| both(slanting(), elevations, |brief, e| brief.shot.elevation_deg = e);
    // 60 mm on 36 x 24 shows a corner at the same angle as s = 60 / 36 of the frame width.
    let f = focal_length_for(900.0 * 60.0 / 36.0, 900.0, 36.0, 1.0).unwrap();
    let low = with(level(), |brief| brief.shot.elevation_deg = 14.0);
    let wide = with(low, |brief| brief.lens.focal_length_mm = 0.9 * f);
    let stretch = (1.0_f64 + (36.0 * 36.0 + 24.0 * 24.0) / (120.0 * 120.0)).sqrt();
    let s = planned(&level()).lens.pupil_distance_mm;
    let sunk = with(level(), |brief| brief.shot.aim_height_mm = Some(-10.0));
    let beside = with(sunk, |brief| brief.shot.aim_x_mm = 700.0);
    vec![
        case(Code::HorizonInFrame, Level::Note, from(under_over(half)), move |_| -JUST * half, 0.0),
        // In the table's own plane nothing on it is seen.
        case(
            Code::TableFromBelow,
            Level::Warn,
            both(level(), [0.0, JUST], |brief, height| brief.shot.aim_height_mm = Some(height)),
            |plan| plan.pose.pupil.z_mm - 760.0,
            0.0,
        ),
        // From 10 mm under the top the front edge, 400 before the aim point, hides by similar triangles.
        case(
            Code::NearEdgeHidesFoot,
            Level::Warn,
            both(level(), [-1e-6, 0.0], |brief, height| brief.shot.aim_height_mm = Some(height)),
            move |_| 1e-6 * s / (s - 400.0) - 1e-6,
            0.0,
        ),
        // Beside the table no edge is before the subject.
        case(
            Code::NearEdgeHidesFoot,
            Level::Warn,
            [sunk, beside],
            move |_| 10.0 * s / (s - 400.0) - 10.0,
            0.0,
        ),
        case(
            Code::TableEndsInFrame,
            Level::Note,
            both(overhead(), under_over(600.0), |brief, width| brief.table.width_mm = width),
            |plan| plan.footprint.table_share.unwrap(),
            1.0,
        ),
        case(
            Code::TableEndsInFrame,
            Level::Note,
            both(overhead(), under_over(400.0), |brief, depth| brief.table.depth_mm = depth),
            |plan| plan.footprint.table_share.unwrap(),
            1.0,
        ),
        case(
            Code::StretchShows,
            Level::Warn,
            both(low, under_over(f), |brief, focal| brief.lens.focal_length_mm = focal),
            |plan| plan.perspective.corner_stretch,
            stretch,
        ),
        case(
            Code::StretchShows,
            Level::Warn,
            both(wide, [15.0 - JUST, 15.0], |brief, e| brief.shot.elevation_deg = e),
            |plan| plan.perspective.corner_stretch,
            stretch,
        ),
    ]
}

fn subject() -> Vec<Case> {
    let tall = with(slanting(), |brief| brief.subject = bottle());
    let elevation = |brief, pair| both(brief, pair, |brief: &mut Brief, e| brief.shot.elevation_deg = e);
    let subject = |diameter_mm| Subject { shape: Shape::Round { diameter_mm }, ..flat_subject() };
    let least = |plan: &tablerig::plan::Plan| {
        let outline = plan.outline.unwrap();
        [outline.room_above_mm, outline.room_below_mm, outline.room_left_mm, outline.room_right_mm]
            .into_iter()
            .fold(f64::INFINITY, f64::min)
    };
    vec![
        // The frame is 600 x 400: a round of 400 just fits.
        case(
            Code::SubjectCut,
            Level::Warn,
            both(overhead(), [400.0 + 1e-4, 400.0], |brief, diameter| brief.subject = subject(diameter)),
            least,
            0.0,
        ),
        case(
            Code::ElevationOutsideAdvice,
            Level::Note,
            elevation(slanting(), under_over(45.0)),
            |_| 45.0 * (1.0 - JUST),
            45.0,
        ),
        case(
            Code::ElevationOutsideAdvice,
            Level::Note,
            elevation(tall, over_under(45.0)),
            |_| 45.0 * (1.0 + JUST),
            45.0,
        ),
        case(
            Code::SubjectOverhangsTable,
            Level::Warn,
            both(overhead(), under_over(-500.0), |brief, x| brief.shot.aim_x_mm = x),
            |_| 500.0 * (1.0 + JUST) + 100.0 - 600.0,
            0.0,
        ),
        case(
            Code::SubjectOverhangsTable,
            Level::Warn,
            both(overhead(), over_under(300.0), |brief, y| brief.shot.aim_y_mm = y),
            |_| 300.0 * (1.0 + JUST) + 100.0 - 400.0,
            0.0,
        ),
    ]
}
