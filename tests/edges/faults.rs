//! Every kind of fault is reached, names its field, its value and what would have been allowed.

use tablerig::brief::{Brief, Framing};
use tablerig::fault::{Fault, FaultKind};
use tablerig::optics::inverse::{focal_length_for, magnification_at};
use tablerig::optics::lens::Lens;
use tablerig::optics::sensor::UsedArea;
use tablerig::plan::plan;
use tablerig::rig::support::Stiffness;
use tablerig::scene::subject::{Shape, Subject, Vessel};
use tablerig::tolerance::{Measured, Measurement, real_shot};
use tablerig::view::framing::largest_frame_width_mm;
use tablerig::view::pose::Orientation;

use crate::workshop::{camera, flat_subject, lens, overhead};

fn planned(change: impl FnOnce(&mut Brief)) -> Option<Fault> {
    let mut brief = overhead();
    change(&mut brief);
    plan(&brief).err()
}

fn published(closest: f64, largest: f64) -> Option<Fault> {
    planned(|brief| {
        brief.lens =
            Lens { closest_focus_mm: Some(closest), largest_magnification: Some(largest), ..lens(100.0) };
    })
}

fn vessel(inside_diameter_mm: f64, contents_below_rim_mm: f64) -> Option<Fault> {
    planned(|brief| {
        brief.subject = Subject {
            shape: Shape::Box { width_mm: 90.0, depth_mm: 70.0 },
            height_mm: 120.0,
            vessel: Some(Vessel { inside_diameter_mm, contents_below_rim_mm }),
            ..flat_subject()
        };
    })
}

fn tape(top: f64, aim: f64, tape: f64) -> Option<Fault> {
    let exact = |value| Measurement { value, uncertainty: 0.0 };
    let measured = Measured::HeightAndTape {
        sensor_height_mm: exact(top),
        aim_height_above_floor_mm: exact(aim),
        sensor_distance_mm: exact(tape),
    };
    real_shot(&measured, &lens(50.0), 36.0).err()
}

fn level(top: f64, aim: f64, distance: f64) -> Option<Fault> {
    let exact = |value| Measurement { value, uncertainty: 0.0 };
    let measured = Measured::HeightAndDistance {
        sensor_height_mm: exact(top),
        aim_height_above_floor_mm: exact(aim),
        horizontal_distance_mm: exact(distance),
    };
    real_shot(&measured, &lens(50.0), 36.0).err()
}

fn ceiling(height: f64, elevation: f64) -> Option<Fault> {
    let used = UsedArea { width_mm: 36.0, height_mm: 24.0 };
    let at = Orientation::new(elevation, 0.0);
    largest_frame_width_mm(height, 760.0, &at, &lens(90.0), &used, &camera(), 90.0).err()
}

/// The question again, with what the fault allows.
type Again = Box<dyn Fn(&Fault) -> Option<Fault>>;

/// A fault, and the same question just inside what it says would have been allowed.
struct Reached {
    kind: FaultKind,
    field: &'static str,
    fault: Option<Fault>,
    allowed: Again,
}

fn reached(
    kind: FaultKind,
    field: &'static str,
    fault: Option<Fault>,
    allowed: impl Fn(&Fault) -> Option<Fault> + 'static,
) -> Reached {
    Reached { kind, field, fault, allowed: Box::new(allowed) }
}

#[rustfmt::skip]
fn cases() -> Vec<Reached> {
    use FaultKind as K;
    let elevation = |value: f64| planned(|brief| brief.shot.elevation_deg = value);
    let highest = |value: f64| planned(|brief| brief.support.highest_pivot_mm = value);
    let foot = |value: f64| planned(|brief| {
        brief.support.column_radius_mm = 60.0;
        brief.support.foot_radius_mm = value;
    });
    let f_number = |value: f64| planned(|brief| brief.lens.most_f_number = value);
    let fill = |value: f64| planned(|brief| {
        brief.subject = Subject { shape: Shape::Round { diameter_mm: 10000.0 }, ..flat_subject() };
        brief.shot.framing = Framing::FillWidth(value);
    });
    let tube = |inside: f64| planned(|brief| {
        brief.support.boom.as_mut().unwrap().stiffness = Some(Stiffness::Tube {
            tube_outside_mm: 35.0,
            tube_inside_mm: inside,
            tube_modulus_n_per_mm2: 69000.0,
        });
    });
    let thick = |closest: f64| planned(|brief| {
        let lens = Lens { principal_separation_mm: 30.0, ..lens(100.0) };
        brief.lens = Lens { closest_focus_mm: Some(closest), largest_magnification: Some(1.0), ..lens };
    });
    let focus = |distance: f64| magnification_at(&lens(90.0), distance).err();
    let viewpoint = |distance: f64| focal_length_for(distance, 36.0, 36.0, 1.0).err();
    vec![
        reached(K::NotFinite, "shot.elevation_deg", elevation(f64::NAN), move |fault| elevation(fault.most)),
        reached(K::TooSmall, "shot.elevation_deg", elevation(-60.5), move |fault| elevation(fault.least)),
        reached(K::TooLarge, "shot.elevation_deg", elevation(90.5), move |fault| elevation(fault.most)),
        reached(
            K::NoFocalLengthAtClosestFocus,
            "lens.closest_focus_mm",
            thick(29.0),
            move |fault| thick(fault.most),
        ),
        // At a tenth, f (1 + M)² / M = 1210: a tenth more of it is 1331.
        reached(
            K::FocalLengthGrows,
            "lens.closest_focus_mm",
            published(1332.0, 0.1),
            |fault| published(fault.most, 0.1),
        ),
        // At life size the distance stands still at 4 f already.
        reached(
            K::FocusTurnsBack,
            "lens.closest_focus_mm",
            published(401.0, 1.0),
            |fault| published(fault.most, 1.0),
        ),
        reached(
            K::HighestUnderLowest,
            "support.highest_pivot_mm",
            highest(899.0),
            move |fault| highest(fault.least),
        ),
        reached(
            K::ContentsUnderVessel,
            "subject.vessel.contents_below_rim_mm",
            vessel(50.0, 121.0),
            |fault| vessel(50.0, fault.most),
        ),
        reached(
            K::VesselWiderInside,
            "subject.vessel.inside_diameter_mm",
            vessel(71.0, 10.0),
            |fault| vessel(fault.most, 10.0),
        ),
        reached(
            K::TubeWiderInside,
            "support.boom.stiffness.tube_inside_mm",
            tube(35.0),
            move |fault| tube(fault.most.next_down()),
        ),
        reached(K::FeetInsideColumn, "support.foot_radius_mm", foot(59.0), move |fault| foot(fault.least)),
        reached(K::FNumbersReversed, "lens.most_f_number", f_number(2.5), move |fault| f_number(fault.least)),
        reached(K::NoFrameWidth, "shot.fill_width", fill(0.05), move |fault| fill(fault.least * 1.001)),
        reached(K::NoFocus, "measured.sensor_distance_mm", focus(359.0), move |fault| focus(fault.least)),
        reached(
            K::NoFocalLength,
            "viewpoint.pupil_distance_mm",
            viewpoint(7000.0),
            move |fault| viewpoint(fault.most),
        ),
        // 90 mm at life size: 360 from the aim point, and 40 for the body.
        reached(
            K::NoRoomUnderCeiling,
            "bay.ceiling_mm",
            ceiling(1100.0, 90.0),
            |fault| ceiling(fault.least, 90.0),
        ),
        reached(K::NoViewpoint, "measured.sensor_distance_mm", tape(2000.0, 760.0, 1000.0), |fault| {
            tape(2000.0, 760.0, fault.least)
        }),
    ]
}

#[test]
fn every_kind_is_reached_and_what_it_allows_is_allowed() {
    let cases = cases();
    for kind in FaultKind::ALL {
        assert!(cases.iter().any(|case| case.kind == *kind), "{kind:?}");
    }
    for Reached { kind, field, fault, allowed } in cases {
        let fault = fault.unwrap_or_else(|| panic!("{kind:?} is not reached"));
        assert_eq!((fault.kind, fault.field), (kind, field));
        assert_eq!(allowed(&fault), None, "{kind:?}: what it allows is refused");
        // And nothing beyond: a five-hundredth further out, the same question is refused again.
        let (least, most) = (fault.least - 0.002 * fault.least.abs(), fault.most + 0.002 * fault.most.abs());
        assert!(allowed(&Fault { least, most, ..fault }).is_some(), "{kind:?}: allows more than it says");
        let inside = fault.value >= fault.least && fault.value <= fault.most;
        // A tube as wide inside as outside stands at the bound, which is not allowed itself.
        assert!(!inside || kind == FaultKind::TubeWiderInside, "{fault}");
    }
}

#[test]
fn the_sentence_names_field_value_and_range() {
    for case in cases() {
        let fault = case.fault.unwrap();
        let told = fault.to_string();
        assert!(told.starts_with(&format!("{} = {} ", fault.field, fault.value)), "{told}");
        assert!(told.contains(fault.kind.sentence()) && told.contains("(allowed: "), "{told}");
        for bound in [fault.least, fault.most] {
            assert!(!bound.is_finite() || told.contains(&bound.to_string()), "{told}");
        }
    }
}

#[test]
fn numbers_are_in_families_and_ascend() {
    let numbers: Vec<i32> = FaultKind::ALL.iter().map(|kind| *kind as i32).collect();
    assert!(numbers.windows(2).all(|pair| pair[0] < pair[1]));
    for kind in FaultKind::ALL {
        assert!((1..=3).contains(&(*kind as i32 / 100)) && !kind.sentence().is_empty(), "{kind:?}");
    }
}

/// The other ways to the same faults.
#[test]
fn no_viewpoint_and_no_room_from_every_side() {
    // The sensor at the aim point itself.
    assert_eq!(level(760.0, 760.0, 0.0).unwrap().kind, FaultKind::NoViewpoint);
    assert_eq!(level(760.0, 760.0, 300.0), None);
    // Lower than the aim point by more than the tape.
    assert_eq!(tape(100.0, 1200.0, 1000.0).unwrap().kind, FaultKind::NoViewpoint);
    // Level, the body alone is too high: 760 and 60 of it above the axis.
    let fault = ceiling(819.0, 0.0).unwrap();
    assert_eq!((fault.kind, fault.least), (FaultKind::NoRoomUnderCeiling, 820.0));
    assert_eq!(ceiling(820.0, 0.0), None);
    assert_eq!(ceiling(500.0, -10.0), None, "from below it sinks with the distance");
    // A viewpoint so near that the lens would be shorter than any.
    assert_eq!(focal_length_for(1.0, 600.0, 36.0, 1.0).unwrap_err().kind, FaultKind::NoFocalLength);
}

/// Where nothing would be accepted, no empty range is told: its least would lie over its most.
#[test]
fn a_range_that_would_be_empty_is_not_told() {
    // At 20 times life size no closest focus keeps the distance falling all the way.
    let fault = published(300.0, 20.0).unwrap();
    assert_eq!(
        (fault.kind, fault.least, fault.most),
        (FaultKind::FocusTurnsBack, f64::NEG_INFINITY, f64::INFINITY)
    );
    assert!((1..100_000).step_by(7).all(|closest| published(f64::from(closest), 20.0).is_some()));
    // Looking straight down on a table at 99.9 m: even the highest ceiling that may be given, 100 m, is too low.
    let at = Orientation::new(90.0, 0.0);
    let used = UsedArea { width_mm: 36.0, height_mm: 24.0 };
    let under =
        |ceiling: f64| largest_frame_width_mm(ceiling, 99900.0, &at, &lens(50.0), &used, &camera(), 90.0);
    let fault = under(2600.0).unwrap_err();
    // 4f at life size, and 40 of body behind.
    assert_eq!(
        (fault.kind, fault.least, fault.most),
        (FaultKind::NoRoomUnderCeiling, 100_140.0, f64::INFINITY)
    );
    assert_eq!(under(100_000.0).unwrap_err().least, fault.least);
}
