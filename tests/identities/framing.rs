//! Frame widths solved for, as round trips: the share a subject fills, and the room under a ceiling.

use proptest::prelude::*;
use tablerig::brief::{Brief, Framing, Shot};
use tablerig::fault::FaultKind;
use tablerig::optics::lens::Lens;
use tablerig::plan::plan;
use tablerig::scene::subject::{Shape, Subject};
use tablerig::view::framing::largest_frame_width_mm;
use tablerig::view::pose::Orientation;

use crate::briefs::{framed_at, plan_of, studio_brief};
use crate::draws::{range_of, runs};
use crate::space::{agree, answer};

fn framed(brief: &Brief, framing: Framing) -> Brief {
    Brief { shot: Shot { framing, ..brief.shot }, ..*brief }
}

proptest! {
    #![proptest_config(runs(500))]

    /// From a share to a width: the subject fills what was asked.
    #[test]
    fn the_frame_found_is_filled_as_asked(
        brief in studio_brief(),
        share in 0.05..=1.0_f64,
        upright in any::<bool>(),
    ) {
        let asked = if upright { Framing::FillHeight(share) } else { Framing::FillWidth(share) };
        match plan(&framed(&brief, asked)) {
            Ok(plan) => {
                let outline = plan.outline.unwrap();
                let found = if upright { outline.fill_height } else { outline.fill_width };
                // Next to the lens the share runs up steeply: what a rounding of the width is worth there.
                let s = plan.lens.pupil_distance_mm;
                let steep = s / (s - plan.subject_depth.nearest_mm);
                agree("fill", found, share, 1e-13 * (1.0 + steep * steep))?;
            }
            Err(fault) => {
                prop_assert_eq!(fault.kind, FaultKind::NoFrameWidth);
                // Only something without height seen level, or a share past what the ends of the range give.
                let none = upright && brief.subject.height_mm < 1.0;
                prop_assert!(none || share < fault.least || share > fault.most, "{fault}");
            }
        }
    }

    /// From a width to a share and back to the width, the aim being within the subject: aimed far past it,
    /// one share may be had with two widths.
    #[test]
    fn the_frame_is_found_back_from_what_is_filled(brief in studio_brief(), upright in any::<bool>()) {
        let brief = Brief { shot: Shot { aim_height_mm: None, ..brief.shot }, ..brief };
        let plan = plan_of(&brief);
        let Some(outline) = plan.outline else { return Ok(()) };
        let share = if upright { outline.fill_height } else { outline.fill_width };
        if !(0.01..=1.0).contains(&share) {
            return Ok(());
        }
        let asked = if upright { Framing::FillHeight(share) } else { Framing::FillWidth(share) };
        let back = answer(tablerig::plan::plan(&framed(&brief, asked)))?;
        let s = plan.lens.pupil_distance_mm;
        let steep = s / (s - plan.subject_depth.nearest_mm);
        let allowed = 1e-13 * plan.frame_width_mm * (1.0 + steep);
        agree("frame width", back.frame_width_mm, plan.frame_width_mm, allowed)?;
    }

    /// With the width found, the highest of camera and pivot touches the ceiling.
    #[test]
    fn the_largest_frame_touches_the_ceiling(brief in studio_brief(), ceiling in 1500.0..4000.0_f64) {
        let planned = plan_of(&brief);
        let at = Orientation::new(brief.shot.elevation_deg, brief.shot.bearing_deg);
        let used = brief.camera.used_area(brief.shot.hold, brief.shot.delivered_aspect);
        let aim = planned.pose.aim.z_mm;
        let below = brief.support.head.pivot_below_socket_mm;
        let under = |ceiling: f64| {
            largest_frame_width_mm(ceiling, aim, &at, &brief.lens, &used, &brief.camera, below)
        };
        let top = |width: f64| {
            let pose = plan_of(&framed_at(brief, used.width_mm / width)).pose;
            pose.body_top_mm.max(pose.pivot.z_mm)
        };
        match under(ceiling) {
            Ok(width) if width.is_infinite() => {
                prop_assert!(at.sin_elevation <= 0.0);
                prop_assert!(at.sin_elevation < 0.0 || top(100000.0) <= ceiling + 1e-9);
            }
            Ok(width) => {
                if width < 100000.0 && width > 1.0 {
                    // Next to life size the distance stands still and the width is hardly determined; the
                    // height is.
                    agree("top", top(width), ceiling, 1e-9)?;
                    prop_assert!(top((width * 1.01).min(100000.0)) > ceiling);
                }
            }
            Err(fault) => {
                prop_assert_eq!(fault.kind, FaultKind::NoRoomUnderCeiling);
                // The least ceiling is that of the closest focus.
                prop_assert!(fault.least > ceiling);
                if at.sin_elevation > 0.01 {
                    let range = range_of("bay.ceiling_mm");
                    let least = (fault.least * (1.0 + 1e-9)).clamp(range.least, range.most);
                    prop_assert!(under(least).is_ok());
                }
            }
        }
    }
}

/// A tall thing before a wide lens: the first guesses put it behind the pupil, and the search once stopped at
/// the middle of its own bracket, 206.7 mm, where the thing fills 0.39 of the width and not 0.775.
#[test]
fn the_search_does_not_stop_at_its_brackets_middle() {
    let mut brief = crate::workshop::overhead();
    brief.camera.sensor_width_mm = 45.0;
    brief.camera.sensor_height_mm = 13.0;
    brief.lens = Lens { pupil_ratio: 0.4, principal_separation_mm: -20.0, ..crate::workshop::lens(14.0) };
    brief.subject = Subject {
        shape: Shape::Round { diameter_mm: 20.0 },
        height_mm: 350.0,
        ..crate::workshop::flat_subject()
    };
    brief.shot.aim_height_mm = None;
    brief.shot.elevation_deg = 24.687713273637435;
    let plan = plan_of(&framed(&brief, Framing::FillWidth(0.775)));
    agree("fill", plan.outline.unwrap().fill_width, 0.775, 1e-12).unwrap();
    agree("frame", plan.frame_width_mm, 174.0, 0.05).unwrap();
}
