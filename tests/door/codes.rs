//! Fields that are wrong: every number that is none, every flag and code that is not among its own, every
//! reserved field.

use tablerig::doors::c::border::mirror::Plain;
use tablerig::doors::c::brief::{Brief, UNSET};
use tablerig::doors::c::optics::camera::tablerig_used_area;
use tablerig::doors::c::optics::sensor::UsedArea;
use tablerig::doors::c::status::{Fault, Status};

use crate::memory::{bytes, bytes_mut, filled};
use crate::set::{Answer, EMPTY, Set, empty_plan, field};
use crate::workshop;

/// A brief in which everything that can be given is.
fn everything() -> Set {
    let mut brief = workshop::overhead();
    brief.subject.height_mm = 80.0;
    let mut set = Set::new(&brief);
    let shot = &mut set.shot;
    shot.has_delivered_aspect = 1;
    shot.delivered_aspect.width = 4.0;
    shot.delivered_aspect.height = 5.0;
    shot.has_aim_height_mm = 1;
    shot.has_f_number = 1;
    shot.has_backdrop_behind_mm = 1;
    shot.backdrop_behind_mm = 700.0;
    shot.has_side = 1;
    set.camera.has_circle_of_confusion_mm = 1;
    let lens = &mut set.lens;
    (lens.has_closest_focus_mm, lens.closest_focus_mm) = (1, 450.0);
    (lens.has_largest_magnification, lens.largest_magnification) = (1, 0.2);
    let subject = &mut set.subject;
    subject.has_vessel = 1;
    subject.vessel.inside_diameter_mm = 150.0;
    subject.vessel.contents_below_rim_mm = 20.0;
    let support = &mut set.support;
    support.has_first_leg_deg = 1;
    let boom = &mut support.boom;
    (boom.has_counterweight_out_mm, boom.counterweight_out_mm) = (1, 400.0);
    let bay = &mut set.bay;
    for has in [
        &mut bay.has_left_mm,
        &mut bay.has_right_mm,
        &mut bay.has_front_mm,
        &mut bay.has_back_mm,
        &mut bay.has_ceiling_mm,
    ] {
        *has = 1;
    }
    (bay.left_mm, bay.right_mm, bay.front_mm, bay.back_mm, bay.ceiling_mm) =
        (3000.0, 3000.0, 3000.0, 3000.0, 3500.0);
    set
}

fn refused(answer: &Answer, status: Status, about: &str) {
    assert_eq!(answer.status, status as i32, "{about}");
    assert_eq!(answer.fault.status, status as i32, "{about}");
    assert!(bytes(&answer.plan) == bytes(&empty_plan()), "{about}");
}

/// Every word of 8 bytes of a part from `first` on as a number that is none, and infinite; those of the ways
/// not taken (`spared`) do not count.
macro_rules! numbers {
    ($set:ident, $part:ident, $first:expr, $spared:expr) => {{
        let mut names = std::collections::BTreeSet::new();
        let words = size_of_val(&$set.$part) / 8;
        for word in $first / 8..words {
            for bad in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
                let mut set = $set;
                bytes_mut(&mut set.$part)[8 * word..8 * word + 8].copy_from_slice(&bad.to_ne_bytes());
                let answer = set.plan();
                if $spared.contains(&(8 * word)) {
                    assert_eq!(answer.status, 0);
                    continue;
                }
                let about = format!("{} at {}", stringify!($part), 8 * word);
                refused(&answer, Status::NotFinite, &about);
                let name = field(&answer.fault);
                assert!(name.starts_with(concat!(stringify!($part), ".")), "{about}: {name}");
                assert_eq!(answer.fault.value.to_bits(), bad.to_bits());
                assert!(answer.fault.least < answer.fault.most);
                names.insert(name);
            }
        }
        names.len()
    }};
}

#[test]
fn every_number_that_is_none_is_named() {
    use std::mem::offset_of;
    use tablerig::doors::c::brief::Shot;
    use tablerig::doors::c::rig::support::{Boom, Stiffness, Support};
    use tablerig::doors::c::scene::subject::Subject;

    let set = everything();
    assert_eq!(set.plan().status, 0);
    let ways = [offset_of!(Shot, fill_width), offset_of!(Shot, fill_height)];
    // Both sides of an aspect share a name.
    assert_eq!(numbers!(set, shot, 40, ways), 14);
    assert_eq!(numbers!(set, camera, 8, []), 9);
    assert_eq!(numbers!(set, lens, 16, []), 11);
    assert_eq!(numbers!(set, table, 8, []), 3);
    let ways = [offset_of!(Subject, width_mm), offset_of!(Subject, depth_mm)];
    assert_eq!(numbers!(set, subject, 16, ways), 4);
    // Numbers of the head, the boom and its stiffness begin after their own whole numbers.
    let (head, boom) = (offset_of!(Support, head), offset_of!(Support, boom));
    let stiffness = boom + offset_of!(Boom, stiffness);
    let bending = stiffness + offset_of!(Stiffness, bending_stiffness_n_m2);
    let mut whole = set;
    whole.support.reserved = 0;
    let mut names = std::collections::BTreeSet::new();
    for word in 3..size_of::<Support>() / 8 {
        let at = 8 * word;
        if [head, boom, boom + 8, stiffness, bending].contains(&at) {
            continue;
        }
        let mut set = whole;
        bytes_mut(&mut set.support)[at..at + 8].copy_from_slice(&f64::NAN.to_ne_bytes());
        let answer = set.plan();
        refused(&answer, Status::NotFinite, &format!("support at {at}"));
        names.insert(field(&answer.fault));
    }
    // The four bags share their names.
    assert_eq!(names.len(), 12 + 4 + 4 + 9 + 3);
    assert_eq!(numbers!(set, bay, 32, []), 8);
    assert_eq!(numbers!(set, criteria, 16, []), 17);
}

/// Every whole number of a part from its second on: what it may be is accepted or at least known, the rest
/// refused by name.
macro_rules! whole_numbers {
    ($set:ident, $part:ident, $last:expr) => {
        for at in (4..$last).step_by(4) {
            for bad in [-1, 77, i32::MIN, i32::MAX] {
                let mut set = $set;
                bytes_mut(&mut set.$part)[at..at + 4].copy_from_slice(&bad.to_ne_bytes());
                let answer = set.plan();
                let about = format!("{} at {at}", stringify!($part));
                refused(&answer, Status::UnknownCode, &about);
                let name = field(&answer.fault);
                assert!(name.starts_with(concat!(stringify!($part), ".")), "{about}: {name}");
                assert_eq!(answer.fault.value, f64::from(bad));
                assert!(answer.fault.least == 0.0 && answer.fault.most >= 1.0, "{about}");
            }
        }
    };
}

#[test]
fn every_flag_and_code_is_checked() {
    let set = everything();
    whole_numbers!(set, shot, 40);
    whole_numbers!(set, camera, 8);
    whole_numbers!(set, lens, 16);
    whole_numbers!(set, table, 8);
    whole_numbers!(set, subject, 16);
    whole_numbers!(set, bay, 32);
    whole_numbers!(set, criteria, 16);
    let mut changed = set;
    changed.support.boom.stiffness.kind = 3;
    let answer = changed.plan();
    refused(&answer, Status::UnknownCode, "stiffness");
    assert_eq!(field(&answer.fault), "support.boom.stiffness.kind");
    for has in [2, -1] {
        let mut changed = set;
        changed.support.has_boom = has;
        assert_eq!(field(&changed.plan().fault), "support.has_boom");
        changed = set;
        changed.support.head.has_rated_load_kg = has;
        assert_eq!(field(&changed.plan().fault), "support.head.has_rated_load_kg");
        changed = set;
        changed.support.boom.has_damping_ratio = has;
        assert_eq!(field(&changed.plan().fault), "support.boom.has_damping_ratio");
    }
    let mut changed = set;
    changed.support.leg_count = u32::MAX;
    assert_eq!(changed.plan().status, Status::TooLarge as i32);
}

#[test]
fn reserved_fields_must_be_zero() {
    let set = everything();
    let mut changed = set;
    changed.support.reserved = 1;
    let answer = changed.plan();
    refused(&answer, Status::UnknownField, "support");
    assert_eq!(field(&answer.fault), "support.reserved");
    changed = set;
    changed.support.boom.stiffness.reserved = -1;
    assert_eq!(field(&changed.plan().fault), "support.boom.stiffness.reserved");
    let brief = Brief { reserved: 1, ..set.brief() };
    assert_eq!(field(&crate::set::plan(&brief).fault), "brief.reserved");
}

#[test]
fn what_is_left_out_is_not_looked_at() {
    let mut set = Set::new(&workshop::overhead());
    let planned = set.plan().plan;
    set.shot.side = 99;
    set.shot.fill_width = f64::NAN;
    set.shot.aim_height_mm = 0.0;
    set.bay.left_mm = f64::NAN;
    set.lens.closest_focus_mm = f64::INFINITY;
    set.subject.vessel = filled(0xff);
    set.subject.width_mm = UNSET;
    let answer = set.plan();
    assert_eq!(answer.status, 0);
    assert!(bytes(&answer.plan) == bytes(&planned));
}

#[test]
fn codes_as_arguments_are_checked() {
    let camera = Set::new(&workshop::overhead()).camera;
    for hold in [-1, 2, i32::MIN, i32::MAX] {
        let mut used: UsedArea = filled(EMPTY);
        let mut fault = Fault::ZERO;
        let aspect = std::ptr::null();
        // SAFETY: a camera, no aspect, a result and a fault.
        let status =
            unsafe { tablerig_used_area(&raw const camera, hold, aspect, &raw mut used, &raw mut fault) };
        assert_eq!((status, field(&fault)), (Status::UnknownCode as i32, "hold"));
        assert_eq!((fault.value, fault.least, fault.most), (f64::from(hold), 0.0, 1.0));
        assert!(bytes(&used) == bytes(&filled::<UsedArea>(EMPTY)));
    }
}
