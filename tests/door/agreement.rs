//! The same answers as the Rust library gives, bit for bit.

use tablerig::doors::c::border::mirror::Leave;
use tablerig::doors::c::plan::Plan;
use tablerig::doors::c::status::Status;
use tablerig::plan::plan;
use tablerig::{brief, range};

use crate::memory::bytes;
use crate::seeded::{self, Seeded};
use crate::set::{EMPTY, Set, empty_plan, field};
use crate::workshop;

const BRIEFS: usize = 4000;

#[test]
fn plans_and_faults_are_the_library_s() {
    let mut of = Seeded::new(1);
    let (mut planned, mut refused, mut infinite) = (0, 0, 0);
    for _ in 0..BRIEFS {
        let brief = seeded::brief(&mut of);
        let answer = Set::new(&brief).plan();
        match plan(&brief) {
            Ok(plan) => {
                assert_eq!(answer.status, Status::Ok as i32, "{brief:#?}");
                assert!(bytes(&answer.plan) == bytes(&Plan::leave(&plan)), "{brief:#?}");
                let numbers = format!("{:?}", answer.plan);
                assert!(!numbers.contains("NaN"), "{brief:#?}\n{:#?}", answer.plan);
                infinite += usize::from(numbers.contains("inf"));
                planned += 1;
            }
            Err(fault) => {
                assert_eq!(answer.status, fault.kind as i32);
                assert_eq!(answer.fault.status, fault.kind as i32);
                assert_eq!(field(&answer.fault), fault.field);
                let told = [answer.fault.value, answer.fault.least, answer.fault.most];
                assert_eq!(told.map(f64::to_bits), [fault.value, fault.least, fault.most].map(f64::to_bits));
                assert!(bytes(&answer.plan) == bytes(&empty_plan()));
                refused += 1;
            }
        }
    }
    // Each kind of answer came up often enough to count.
    assert!(planned > BRIEFS / 4 && refused > BRIEFS / 20 && infinite > BRIEFS / 20);
}

/// A result by its own name, followed by eye from the C struct into the library's: the line that mirrors a
/// struct cannot swap two fields, but the hand-written ones could.
#[test]
fn what_is_told_in_several_fields_stands_in_the_right_ones() {
    let mut brief = workshop::overhead();
    brief.shot.backdrop_behind_mm = Some(900.0);
    let inner = plan(&brief).unwrap();
    let c = Set::new(&brief).plan().plan;
    assert_eq!(c.caution_count as usize, inner.cautions.len());
    for (caution, told) in inner.cautions.iter().zip(c.cautions) {
        let expected = (caution.code as i32, caution.level as i32, caution.value, caution.limit);
        assert_eq!((told.code, told.level, told.value, told.limit), expected);
    }
    assert_eq!(c.footprint.has_corners, [1; 4]);
    for (corner, told) in inner.footprint.corners.iter().zip(c.footprint.corners) {
        assert_eq!(corner.map(|at| (at.x_mm, at.y_mm)), Some((told.x_mm, told.y_mm)));
    }
    assert_eq!(c.advice.reasons, inner.advice.reasons.map(|reason| reason.map_or(0, |why| why as i32)));
    assert_eq!((c.has_backdrop, c.backdrop.behind_mm), (1, 900.0));
    assert_eq!((c.overhead, c.removal), (1, inner.removal as i32));
    let c = Set::new(&workshop::slanting()).plan().plan;
    assert_eq!((c.has_backdrop, c.backdrop.behind_mm, c.has_sag), (0, 0.0, 0));
}

#[test]
fn the_ways_to_frame_and_to_shape_reach_the_library() {
    let mut brief = workshop::slanting();
    brief.subject.height_mm = 150.0;
    for framing in [brief::Framing::FillWidth(0.5), brief::Framing::FillHeight(0.5)] {
        brief.shot.framing = framing;
        let plan = Set::new(&brief).plan().plan;
        let filled = match framing {
            brief::Framing::FillWidth(_) => plan.outline.fill_width,
            _ => plan.outline.fill_height,
        };
        // The solver stops at a relative step of 1e-15.
        assert!((filled - 0.5).abs() < 1e-12, "{filled}");
    }
}

#[test]
fn null_bay_and_criteria_are_the_defaults() {
    let brief = workshop::overhead();
    let set = Set::new(&brief);
    let mut bare = set.brief();
    bare.bay = std::ptr::null();
    bare.criteria = std::ptr::null();
    assert_eq!(crate::set::plan(&bare).plan, set.plan().plan);
}

#[test]
fn whatever_was_empty_is_written() {
    let answer = Set::new(&workshop::overhead()).plan();
    let word = u64::from_ne_bytes([EMPTY; 8]);
    let left = bytes(&answer.plan).chunks(8).filter(|chunk| **chunk == word.to_ne_bytes()).count();
    assert_eq!((answer.status, left), (0, 0));
    assert_eq!(range::ALL.len(), tablerig::doors::c::range::tablerig_range_count() as usize);
}
