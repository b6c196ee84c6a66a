//! Every status of the C interface, each with the call that returns it.

use std::ptr;

use tablerig::brief::{Brief as Asked, Framing};
use tablerig::doors::c::border::mirror::Plain;
use tablerig::doors::c::brief::Brief;
use tablerig::doors::c::code::MeasuredKind;
use tablerig::doors::c::optics::camera::tablerig_used_area;
use tablerig::doors::c::optics::focus::{FocusStack, tablerig_focus_stack};
use tablerig::doors::c::optics::inverse::{tablerig_focal_length_for, tablerig_magnification_at};
use tablerig::doors::c::optics::lens::{FocusedLens, Lens, tablerig_lens_focused};
use tablerig::doors::c::optics::sensor::UsedArea;
use tablerig::doors::c::point::{PicturePoint, Point};
use tablerig::doors::c::rig::sag::{Sag, tablerig_sag};
use tablerig::doors::c::status::{Fault, Status};
use tablerig::doors::c::tolerance::{
    Measured, Measurement, RealShot, tablerig_measured_init, tablerig_real_shot,
};
use tablerig::doors::c::view::framing::tablerig_largest_frame_width;
use tablerig::doors::c::view::outline::SubjectDepth;
use tablerig::doors::c::view::projection::{tablerig_cast_onto_level, tablerig_project};
use tablerig::optics::lens;
use tablerig::rig::support::Stiffness;
use tablerig::scene::subject::{Shape, Subject, Vessel};

use crate::ask::{ask, view};
use crate::memory::bytes;
use crate::set::{EMPTY, Set, empty_plan};
use crate::sources::all_reached;
use crate::workshop;

/// The status of a brief's plan; refused, nothing is written.
fn planned(change: impl FnOnce(&mut Asked)) -> i32 {
    let mut brief = workshop::overhead();
    change(&mut brief);
    let answer = Set::new(&brief).plan();
    assert!(answer.status == 0 || bytes(&answer.plan) == bytes(&empty_plan()));
    answer.status
}

fn focusing(closest: f64, largest: f64, separation: f64) -> i32 {
    planned(|brief| {
        brief.lens = lens::Lens {
            closest_focus_mm: Some(closest),
            largest_magnification: Some(largest),
            principal_separation_mm: separation,
            ..workshop::lens(100.0)
        };
    })
}

fn vessel(inside_diameter_mm: f64, contents_below_rim_mm: f64) -> i32 {
    planned(|brief| {
        let vessel = Some(Vessel { inside_diameter_mm, contents_below_rim_mm });
        brief.subject = Subject { height_mm: 80.0, vessel, ..brief.subject };
    })
}

fn status<T: std::fmt::Debug>(answer: Result<T, (i32, &'static str)>) -> i32 {
    answer.map_or_else(|(status, _)| status, |_| 0)
}

/// How the function was called.
fn calls() -> Vec<(Status, i32)> {
    let set = Set::new(&workshop::overhead());
    let lens = &raw const set.lens;
    let mut unsized_lens = set.lens;
    unsized_lens.size = 0;
    let focused = |lens: *const Lens| {
        let answer: Result<FocusedLens, _> = ask!(tablerig_lens_focused(lens, 0.1));
        status(answer)
    };
    let mut both = set.lens;
    let shared: *mut Lens = &raw mut both;
    let mut fault = Fault::ZERO;
    // SAFETY: the result's place is the lens itself, which is refused before anything is written.
    let overlapping = unsafe { tablerig_lens_focused(shared, 0.1, shared.cast(), &raw mut fault) };
    let held: Result<UsedArea, _> = ask!(tablerig_used_area(&raw const set.camera, 2, ptr::null()));
    vec![
        (Status::Ok, focused(lens)),
        (Status::NullPointer, focused(ptr::null())),
        (Status::Misaligned, focused(lens.wrapping_byte_add(4))),
        (Status::WrongSize, focused(&raw const unsized_lens)),
        (Status::UnknownField, crate::set::plan(&Brief { reserved: 1, ..set.brief() }).status),
        (Status::Overlapping, overlapping),
        (Status::UnknownCode, status(held)),
    ]
}

/// What a brief holds.
fn briefs() -> Vec<(Status, i32)> {
    let tube_inside = |inside: f64| {
        planned(|brief| {
            brief.support.boom.as_mut().unwrap().stiffness = Some(Stiffness::Tube {
                tube_outside_mm: 35.0,
                tube_inside_mm: inside,
                tube_modulus_n_per_mm2: 69000.0,
            });
        })
    };
    vec![
        (Status::NotFinite, planned(|brief| brief.table.width_mm = f64::NAN)),
        (Status::TooSmall, planned(|brief| brief.shot.elevation_deg = -60.5)),
        (Status::TooLarge, planned(|brief| brief.shot.elevation_deg = 90.5)),
        (Status::NoFocalLengthAtClosestFocus, focusing(29.0, 1.0, 30.0)),
        (Status::FocalLengthGrows, focusing(1332.0, 0.1, 0.0)),
        (Status::FocusTurnsBack, focusing(401.0, 1.0, 0.0)),
        (Status::HighestUnderLowest, planned(|brief| brief.support.highest_pivot_mm = 899.0)),
        (Status::ContentsUnderVessel, vessel(150.0, 81.0)),
        (Status::VesselWiderInside, vessel(201.0, 10.0)),
        (Status::TubeWiderInside, tube_inside(35.0)),
        (Status::FeetInsideColumn, planned(|brief| brief.support.foot_radius_mm = 19.0)),
        (Status::FNumbersReversed, planned(|brief| brief.lens.most_f_number = 2.5)),
        (
            Status::NoFrameWidth,
            planned(|brief| {
                brief.subject.shape = Shape::Round { diameter_mm: 10000.0 };
                brief.shot.framing = Framing::FillWidth(0.05);
            }),
        ),
    ]
}

/// What is asked beside a plan.
fn questions() -> Vec<(Status, i32)> {
    let set = Set::new(&workshop::slanting());
    let plan = set.plan().plan;
    let lens = &raw const set.lens;
    let near: Result<f64, _> = ask!(tablerig_magnification_at(lens, 100.0));
    let far: Result<f64, _> = ask!(tablerig_focal_length_for(1e6, 1.0, 36.0, 1.0));
    let (camera, area) = (&raw const set.camera, &raw const plan.used_area);
    let low: Result<f64, _> =
        ask!(tablerig_largest_frame_width(700.0, 760.0, 90.0, camera, lens, area, 90.0));
    let mut measured = Measured::ZERO;
    // SAFETY: a struct of the size that is told.
    unsafe { tablerig_measured_init(&raw mut measured, size_of::<Measured>() as u32) };
    let exact = |value| Measurement { value, uncertainty: 0.0 };
    measured.kind = MeasuredKind::HeightAndDistance as i32;
    measured.sensor_height_mm = exact(760.0);
    measured.aim_height_above_floor_mm = exact(760.0);
    measured.horizontal_distance_mm = exact(0.0);
    let there: Result<RealShot, _> = ask!(tablerig_real_shot(&raw const measured, lens, 36.0));
    let view = view(&plan);
    let behind = Point { x_mm: 0.0, y_mm: -5000.0, z_mm: 5000.0 };
    let behind: Result<PicturePoint, _> = ask!(tablerig_project(&raw const view, &raw const behind));
    let sky = PicturePoint { right_mm: 0.0, up_mm: 4000.0 };
    let sky: Result<Point, _> = ask!(tablerig_cast_onto_level(&raw const view, &raw const sky, 760.0));
    let mut boom = Set::new(&workshop::overhead()).support.boom;
    boom.stiffness.kind = 0;
    let limp: Result<Sag, _> = ask!(tablerig_sag(&raw const boom, 800.0, 2.0, 1000.0, 0.01));
    let s = plan.lens.pupil_distance_mm;
    let depth = SubjectDepth { nearest_mm: s, farthest_mm: 0.0 };
    let m = plan.lens.magnification;
    let reaching: Result<FocusStack, _> =
        ask!(tablerig_focus_stack(camera, lens, m, &raw const depth, 8.0, 0.3));
    vec![
        (Status::NoFocus, status(near)),
        (Status::NoFocalLength, status(far)),
        (Status::NoRoomUnderCeiling, status(low)),
        (Status::NoViewpoint, status(there)),
        (Status::BehindCamera, status(behind)),
        (Status::NotMet, status(sky)),
        (Status::NoStiffness, status(limp)),
        (Status::NoStack, status(reaching)),
    ]
}

#[test]
fn every_status_is_returned_by_some_call() {
    assert_ne!(EMPTY, 0);
    let reached = [calls(), briefs(), questions()].concat();
    for (expected, found) in &reached {
        assert_eq!(*found, *expected as i32, "{expected:?}");
    }
    // What would be told of a number in a result that is none: no call is known to come to it.
    let internal = Status::Internal as i32;
    let found = reached.into_iter().map(|(_, found)| found).chain([internal]);
    all_reached("src/doors/c/status.rs", "Status", found);
}
