//! Answers and bounds of the questions beside a plan, each against what can be reckoned on paper.

use tablerig::advice::elevation_for_contents_deg;
use tablerig::brief::{Brief, Framing, Shot};
use tablerig::fault::FaultKind;
use tablerig::optics::inverse::{focal_length_for, magnification_at, viewpoint};
use tablerig::optics::lens::Lens;
use tablerig::optics::sensor::UsedArea;
use tablerig::plan::plan;
use tablerig::range;
use tablerig::scene::subject::{Shape, Vessel};
use tablerig::vector::Point;
use tablerig::view::framing::largest_frame_width_mm;
use tablerig::view::pose::Orientation;
use tablerig::view::projection::View;

use crate::workshop::{camera, lens, overhead, slanting};

/// At a tenth of life size a 50 mm lens stands f (1 + m)² / m = 605 from what it takes in, its pupil
/// f (1/m + 1) = 550, and 36 mm show 360.
#[test]
fn a_viewpoint_is_where_the_pupil_is_and_what_it_takes_in() {
    let seen = viewpoint(&lens(50.0), 36.0, 605.0).unwrap();
    // A root of a quadratic, and two roundings.
    assert!((seen.pupil_distance_mm / 550.0 - 1.0).abs() < 1e-14, "{seen:?}");
    assert!((seen.frame_width_mm / 360.0 - 1.0).abs() < 1e-14, "{seen:?}");
}

/// f = s / (W / w + 1 / p): with a frame nine times the sensor's width and a pupil ratio of 1, a tenth of the
/// distance; lenses go from 1 to 3000.
#[test]
fn a_focal_length_that_no_lens_has_is_refused_from_both_ends() {
    let asked = |distance: f64| focal_length_for(distance, 324.0, 36.0, 1.0);
    assert_eq!((asked(10.0), asked(30000.0)), (Ok(1.0), Ok(3000.0)));
    for distance in [9.9, 30000.1] {
        let fault = asked(distance).unwrap_err();
        assert_eq!((fault.kind, fault.value), (FaultKind::NoFocalLength, distance));
        assert_eq!((fault.least, fault.most), (10.0, 30000.0));
    }
}

/// Without a largest magnification a lens is nearest at four focal lengths, or at its closest focus if that is
/// farther.
#[test]
fn a_closest_focus_alone_still_bounds_the_distance() {
    let bounded = |closest: f64| Lens { closest_focus_mm: Some(closest), ..lens(90.0) };
    for (closest, least) in [(500.0, 500.0), (200.0, 360.0), (360.0, 360.0)] {
        let lens = bounded(closest);
        let fault = magnification_at(&lens, least - 0.5).unwrap_err();
        assert_eq!((fault.kind, fault.least, fault.most), (FaultKind::NoFocus, least, 1e6));
        assert!(magnification_at(&lens, least).is_ok());
    }
}

#[test]
fn a_counterweight_hangs_on_the_tail() {
    let hung = |out: f64| {
        let mut brief = overhead();
        brief.support.boom.as_mut().unwrap().counterweight_out_mm = Some(out);
        plan(&brief)
    };
    assert!(hung(500.0).is_ok());
    let fault = hung(500.5).unwrap_err();
    assert_eq!((fault.kind, fault.field), (FaultKind::TooLarge, "support.boom.counterweight_out_mm"));
    assert_eq!((fault.value, fault.least, fault.most), (500.5, 0.0, 500.0));
}

/// How far up the sensor of a camera straight overhead may go, the elevation's tolerance being no bound there.
fn up_mm(lens: Lens, frame_width_mm: f64, tolerance: f64) -> f64 {
    let mut brief = overhead();
    brief.lens = lens;
    brief.shot = Shot { frame_width_tolerance: tolerance, f_number: None, ..Shot::new(90.0, frame_width_mm) };
    plan(&brief).unwrap().tolerance.up_mm
}

/// At life size the distance stands still: to 1/(1 + t) of it, by f t² / (1 + t) only, some last places of the
/// distance itself. Away from it the difference of D = f (1 + m)² / m is simply that.
#[test]
fn next_to_life_size_the_tolerance_keeps_its_digits() {
    for tolerance in [1e-4, 1e-3, 0.02, 0.5] {
        let expected = 100.0 * tolerance * tolerance / (1.0 + tolerance);
        let told = up_mm(lens(100.0), 36.0, tolerance);
        // 1 - m keeps 1e-16 of 1e-4, and is squared.
        assert!((told / expected - 1.0).abs() < 1e-11, "{tolerance}: {told} {expected}");
        let far = up_mm(lens(100.0), 360.0, tolerance);
        // m = 1/10 to m/(1 + t): f (1/m' - 1/m + m' - m).
        let expected = 100.0 * (10.0 * tolerance - 0.1 * tolerance / (1.0 + tolerance));
        assert!((far / expected - 1.0).abs() < 1e-12, "{tolerance}: {far} {expected}");
    }
}

/// 100 mm at infinity and 75 mm at life size, 300 from the sensor: f = 100 - 25 m. From a half to a half over
/// 1 + 1/8192 everything is a fraction of whole numbers.
#[test]
fn a_shrinking_focal_length_keeps_its_digits_too() {
    let macro_lens = Lens { closest_focus_mm: Some(300.0), largest_magnification: Some(1.0), ..lens(100.0) };
    // D' = 25 (4 - m') (1 + m')² / m' with m' = 4096/8193; D = 393.75 at a half.
    let (above, under): (i128, i128) = (25 * (4 * 8193 - 4096) * 12289 * 12289, 8193 * 8193 * 4096);
    let expected = (4 * above - 1575 * under) as f64 / (4 * under) as f64;
    let told = up_mm(macro_lens, 72.0, 1.0 / 8192.0);
    // The change itself is known to the last places of t.
    assert!((told / expected - 1.0).abs() < 1e-12, "{told} {expected}");
}

/// In the plane through the pupil there is no picture, not even an endless one.
/// As deep as it is wide, the contents come into sight at 45 degrees, and whole only from overhead.
#[test]
fn contents_come_into_sight_over_the_rim() {
    let vessel = Vessel { inside_diameter_mm: 100.0, contents_below_rim_mm: 100.0 };
    // Two roundings of the angle.
    assert!((elevation_for_contents_deg(&vessel, 0.0) - 45.0).abs() < 1e-14);
    assert!((elevation_for_contents_deg(&vessel, f64::MIN_POSITIVE) - 45.0).abs() < 1e-14);
    assert!((elevation_for_contents_deg(&vessel, 1.0) - 90.0).abs() < 1e-5);
    let full = Vessel { contents_below_rim_mm: 0.0, ..vessel };
    assert_eq!(elevation_for_contents_deg(&full, 0.0), 0.0);
}

/// A flat thing seen from its edge fills no height at any width: closer by, the pupil only comes to stand in it.
#[test]
fn what_fills_nothing_has_no_frame_width() {
    let mut brief = slanting();
    brief.shot.elevation_deg = 0.0;
    brief.shot.aim_height_mm = Some(0.0);
    brief.shot.framing = Framing::FillHeight(0.5);
    brief.subject.shape = Shape::Box { width_mm: 400.0, depth_mm: 300.0 };
    brief.subject.height_mm = 0.0;
    let fault = plan(&brief).unwrap_err();
    assert_eq!(fault.kind, FaultKind::NoFrameWidth);
    assert_eq!(fault.field, "shot.fill_height");
    brief.shot.framing = Framing::FillWidth(0.5);
    let filled = plan(&brief).unwrap().outline.unwrap().fill_width;
    // The search ends within the rounding of the outline.
    assert!((filled - 0.5).abs() < 1e-12);
}

/// Half a millimetre fills at most half of the narrowest frame, and a little more: so near, it looms.
#[test]
fn the_most_share_told_just_does() {
    let fill = |share: f64| {
        let mut brief = overhead();
        brief.shot.framing = Framing::FillWidth(share);
        brief.subject.shape = Shape::Round { diameter_mm: 0.5 };
        plan(&brief)
    };
    let fault = fill(0.9).unwrap_err();
    assert_eq!(fault.kind, FaultKind::NoFrameWidth);
    assert!(fault.least <= 0.01 && fault.most < 0.9);
    assert!(fill(fault.most * 0.999).is_ok());
    assert_eq!(fill(fault.most * 1.001).unwrap_err().kind, FaultKind::NoFrameWidth);
}

#[test]
fn the_pupils_own_plane_has_no_picture() {
    let plan = plan(&overhead()).unwrap();
    let pose = plan.pose;
    let view = View {
        pose,
        pupil_distance_mm: plan.lens.pupil_distance_mm,
        frame_width_mm: plan.frame_width_mm,
        frame_height_mm: plan.frame_height_mm,
    };
    let beside = Point { x_mm: pose.pupil.x_mm + 300.0, ..pose.pupil };
    assert_eq!((view.depth_mm(beside), view.project(beside)), (0.0, None));
    let before = Point { z_mm: beside.z_mm - 1.0, ..beside };
    assert!(view.project(before).is_some());
}

/// Looking up from so near that the backdrop's foot lies behind the pupil's plane, every line of sight ends on
/// the backdrop.
#[test]
fn from_below_a_backdrop_fills_the_picture() {
    let mut brief: Brief = slanting();
    brief.lens = lens(100.0);
    brief.shot =
        Shot { aim_height_mm: Some(4000.0), backdrop_behind_mm: Some(200.0), ..Shot::new(-60.0, 360.0) };
    let plan = plan(&brief).unwrap();
    assert!(plan.pose.pupil.z_mm > 760.0 + 2000.0);
    let backdrop = plan.backdrop.unwrap();
    assert_eq!(backdrop.share, 1.0);
    assert!(backdrop.width_mm > 360.0 && backdrop.height_mm > 4000.0, "{backdrop:?}");
}

/// Under a ceiling far too low, the least one that would do is told, and just does.
#[test]
fn the_least_ceiling_told_just_does() {
    let used = UsedArea { width_mm: 36.0, height_mm: 24.0 };
    for elevation in [30.0, 60.0, 90.0] {
        let under = |ceiling: f64| {
            let at = Orientation::new(elevation, 0.0);
            largest_frame_width_mm(ceiling, 760.0, &at, &lens(90.0), &used, &camera(), 90.0)
        };
        let least = under(600.0).unwrap_err().least;
        // At its nearest, at life size; where the distance stands still, so a hair of it is much of the frame.
        assert!((under(least * (1.0 + 1e-12)).unwrap() / 36.0 - 1.0).abs() < 1e-3, "{elevation}");
        assert_eq!(under(least * (1.0 - 1e-9)).unwrap_err().kind, FaultKind::NoRoomUnderCeiling);
    }
    // 36 wide at life size; at a tenth of it 605 for 50 mm, and 40 of body behind: 1405 over 760.
    let at = Orientation::new(90.0, 0.0);
    let width = largest_frame_width_mm(1405.0, 760.0, &at, &lens(50.0), &used, &camera(), 90.0).unwrap();
    assert!((width / 360.0 - 1.0).abs() < 1e-13, "{width}");
}

/// A camera whose pivot stands above everything else of it: the ceiling is then the pivot's.
#[test]
fn a_ceiling_may_be_the_pivots() {
    for elevation in [15.0, 40.0, 70.0, 90.0] {
        let mut brief = overhead();
        let body = &mut brief.camera;
        (body.socket_ahead_mm, body.socket_below_mm) = (-450.0, -200.0);
        (body.body_above_mm, body.body_behind_mm) = (10.0, 10.0);
        brief.shot = Shot { aim_height_mm: Some(0.0), ..Shot::new(elevation, 500.0) };
        let plan = plan(&brief).unwrap();
        assert!(plan.pose.pivot.z_mm > plan.pose.body_top_mm);
        let (ceiling, below) = (plan.pose.pivot.z_mm, brief.support.head.pivot_below_socket_mm);
        let at = Orientation::new(elevation, 0.0);
        let under = |ceiling: f64| {
            largest_frame_width_mm(ceiling, 760.0, &at, &brief.lens, &plan.used_area, &brief.camera, below)
        };
        // Heights of metres, of which the width is a difference.
        assert!((under(ceiling).unwrap() / 500.0 - 1.0).abs() < 1e-12, "{elevation}");
        assert!(under(ceiling - 1.0).unwrap() < 500.0);
    }
}

#[test]
fn rows_are_found_by_their_fields() {
    for row in range::ALL.iter().chain(range::WHOLE_SHOOT) {
        assert_eq!(range::find(row.field), Some(row));
    }
    assert_eq!(range::find("shot.elevation"), None);
}
