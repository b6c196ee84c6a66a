//! The inverse questions and the smaller parts.

use tablerig::doors::c::border::mirror::Plain;
use tablerig::doors::c::code::{Fill, MeasuredKind};
use tablerig::doors::c::optics::aperture::{tablerig_third_stop_down, tablerig_third_stop_up};
use tablerig::doors::c::optics::focus::ThirdStop;
use tablerig::doors::c::optics::inverse::{tablerig_focal_length_for, tablerig_magnification_at};
use tablerig::doors::c::point::{PicturePoint, Point};
use tablerig::doors::c::rig::sag::{Sag, tablerig_sag};
use tablerig::doors::c::status::Status;
use tablerig::doors::c::tolerance::{
    Measured, Measurement, RealShot, tablerig_measured_init, tablerig_real_shot,
};
use tablerig::doors::c::view::framing::{tablerig_frame_width_for_fill, tablerig_largest_frame_width};
use tablerig::doors::c::view::projection::{
    tablerig_cast_onto_level, tablerig_covered_share, tablerig_length_in_frame, tablerig_project,
};

use crate::ask::{ask, view};
use crate::set::Set;
use crate::workshop;

#[test]
fn questions_asked_the_other_way_round_lead_back() {
    let set = Set::new(&workshop::slanting());
    let plan = set.plan().plan;
    let lens = &raw const set.lens;
    let m: f64 = ask!(tablerig_magnification_at(lens, plan.lens.sensor_distance_mm)).unwrap();
    // A square root loses one digit at most.
    assert!((m / plan.lens.magnification - 1.0).abs() < 1e-14);
    let (s, width, used) = (plan.lens.pupil_distance_mm, plan.frame_width_mm, plan.used_area.width_mm);
    let f: f64 = ask!(tablerig_focal_length_for(s, width, used, set.lens.pupil_ratio)).unwrap();
    // Three roundings.
    assert!((f / set.lens.focal_length_mm - 1.0).abs() < 1e-15);
    let refused: Result<f64, _> = ask!(tablerig_magnification_at(lens, 100.0));
    assert_eq!(refused.unwrap_err(), (Status::NoFocus as i32, "measured.sensor_distance_mm"));
    let refused: Result<f64, _> = ask!(tablerig_focal_length_for(1e6, 1.0, 36.0, 1.0));
    assert_eq!(refused.unwrap_err(), (Status::NoFocalLength as i32, "viewpoint.pupil_distance_mm"));

    let (subject, area) = (&raw const set.subject, &raw const plan.used_area);
    let (elevation, bearing) = (set.shot.elevation_deg, set.shot.bearing_deg);
    let share = plan.outline.fill_width;
    let fill = Fill::Width as i32;
    let found: f64 =
        ask!(tablerig_frame_width_for_fill(fill, share, lens, area, subject, 0.0, elevation, bearing))
            .unwrap();
    // The solver stops at a relative step of 1e-15.
    assert!((found / width - 1.0).abs() < 1e-12);
    let (camera, below) = (&raw const set.camera, set.support.head.pivot_below_socket_mm);
    let ceiling = plan.pose.body_top_mm.max(plan.pose.pivot.z_mm);
    let aim = plan.pose.aim.z_mm;
    let found: f64 =
        ask!(tablerig_largest_frame_width(ceiling, aim, elevation, camera, lens, area, below)).unwrap();
    // Heights of metres, of which the frame width is a difference.
    assert!((found / width - 1.0).abs() < 1e-12);
    let level: f64 = ask!(tablerig_largest_frame_width(3000.0, aim, 0.0, camera, lens, area, below)).unwrap();
    assert_eq!(level, f64::INFINITY);
}

#[test]
fn what_was_measured_gives_back_the_shot() {
    let set = Set::new(&workshop::slanting());
    let plan = set.plan().plan;
    let mut measured = Measured::ZERO;
    // SAFETY: a struct of the size that is told.
    unsafe { tablerig_measured_init(&raw mut measured, size_of::<Measured>() as u32) };
    let exact = |value| Measurement { value, uncertainty: 0.0 };
    measured.sensor_height_mm = exact(plan.pose.sensor.z_mm);
    measured.aim_height_above_floor_mm = exact(plan.pose.aim.z_mm);
    measured.horizontal_distance_mm = exact(plan.pose.sensor_from_aim_mm);
    let lens = &raw const set.lens;
    let heights: RealShot = ask!(tablerig_real_shot(&raw const measured, lens, 36.0)).unwrap();
    measured.kind = MeasuredKind::TapeAndInclinometer as i32;
    let refused: Result<RealShot, _> = ask!(tablerig_real_shot(&raw const measured, lens, 36.0));
    assert_eq!(refused.unwrap_err(), (Status::TooSmall as i32, "measured.sensor_distance_mm"));
    measured.sensor_distance_mm = exact(plan.lens.sensor_distance_mm);
    measured.elevation_deg = exact(50.0);
    let tape: RealShot = ask!(tablerig_real_shot(&raw const measured, lens, 36.0)).unwrap();
    measured.kind = MeasuredKind::HeightAndTape as i32;
    let both: RealShot = ask!(tablerig_real_shot(&raw const measured, lens, 36.0)).unwrap();
    for real in [heights, tape, both] {
        // Heights of metres, of which the rest are differences.
        assert!((real.elevation_deg.value - 50.0).abs() < 1e-11);
        assert!((real.frame_width_mm.value / 900.0 - 1.0).abs() < 1e-12);
    }
    measured.kind = 3;
    let refused: Result<RealShot, _> = ask!(tablerig_real_shot(&raw const measured, lens, 36.0));
    assert_eq!(refused.unwrap_err(), (Status::UnknownCode as i32, "measured.kind"));
}

#[test]
fn third_stops_and_pictures_of_places() {
    let up: ThirdStop = ask!(tablerig_third_stop_up(7.06)).unwrap();
    let down: ThirdStop = ask!(tablerig_third_stop_down(7.06)).unwrap();
    assert_eq!((up.engraved, down.engraved), (7.1, 6.3));
    let refused: Result<ThirdStop, _> = ask!(tablerig_third_stop_up(f64::NAN));
    assert_eq!(refused.unwrap_err(), (Status::NotFinite as i32, "shot.f_number"));

    let plan = Set::new(&workshop::slanting()).plan().plan;
    let view = &view(&plan);
    let corner = PicturePoint { right_mm: -450.0, up_mm: -300.0 };
    let place: Point = ask!(tablerig_cast_onto_level(view, &raw const corner, 760.0)).unwrap();
    let near_left = plan.footprint.corners[0];
    assert_eq!((place.x_mm, place.y_mm), (near_left.x_mm, near_left.y_mm));
    let sky = PicturePoint { right_mm: 0.0, up_mm: 4000.0 };
    let refused: Result<Point, _> = ask!(tablerig_cast_onto_level(view, &raw const sky, 760.0));
    assert_eq!(refused.unwrap_err(), (Status::NotMet as i32, "z_mm"));
    let behind = Point { x_mm: 0.0, y_mm: -5000.0, z_mm: 5000.0 };
    let refused: Result<PicturePoint, _> = ask!(tablerig_project(view, &raw const behind));
    assert_eq!(refused.unwrap_err(), (Status::BehindCamera as i32, "place"));
    // The frame cast onto the table covers the picture; its lower edge is all inside.
    let corners = plan.footprint.corners.map(|at| Point { x_mm: at.x_mm, y_mm: at.y_mm, z_mm: 760.0 });
    let share: f64 = ask!(tablerig_covered_share(view, corners.as_ptr())).unwrap();
    assert!((share - 1.0).abs() < 1e-12);
    let half = |at: &Point| Point { x_mm: 0.5 * at.x_mm, ..*at };
    let (from, to) = (half(&corners[0]), half(&corners[1]));
    let inside = Point { y_mm: from.y_mm + 1.0, ..from };
    let length: f64 =
        ask!(tablerig_length_in_frame(view, &raw const inside, &Point { y_mm: inside.y_mm, ..to })).unwrap();
    assert!((length - (to.x_mm - from.x_mm)).abs() < 1e-9);
}

#[test]
fn a_boom_of_unknown_stiffness_has_no_sag_to_tell() {
    let mut boom = Set::new(&workshop::overhead()).support.boom;
    boom.stiffness.kind = 0;
    let refused: Result<Sag, _> = ask!(tablerig_sag(&raw const boom, 800.0, 2.0, 1000.0, 0.01));
    assert_eq!(refused.unwrap_err(), (Status::NoStiffness as i32, "support.boom.stiffness.kind"));
}
