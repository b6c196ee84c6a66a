//! Null, misaligned and overlapping pointers: refused, and nothing written.

use std::ptr;

use tablerig::doors::c::border::mirror::Plain;
use tablerig::doors::c::brief::{Brief, tablerig_brief_check};
use tablerig::doors::c::optics::lens::{FocusedLens, tablerig_lens_focused};
use tablerig::doors::c::plan::{Plan, tablerig_plan};
use tablerig::doors::c::status::{Fault, Status};

use crate::memory::{Room, bytes, filled};
use crate::set::{EMPTY, Set, empty_plan, field};
use crate::workshop;

type Change = fn(&mut Brief);

#[test]
fn null_parts_are_named() {
    let set = Set::new(&workshop::overhead());
    let cases: [(Change, &str); 6] = [
        (|brief| brief.shot = ptr::null(), "shot"),
        (|brief| brief.camera = ptr::null(), "camera"),
        (|brief| brief.lens = ptr::null(), "lens"),
        (|brief| brief.table = ptr::null(), "table"),
        (|brief| brief.subject = ptr::null(), "subject"),
        (|brief| brief.support = ptr::null(), "support"),
    ];
    for (change, name) in cases {
        let mut brief = set.brief();
        change(&mut brief);
        let answer = crate::set::plan(&brief);
        assert_eq!((answer.status, field(&answer.fault)), (Status::NullPointer as i32, name));
        assert!(bytes(&answer.plan) == bytes(&empty_plan()));
        // SAFETY: a brief whose parts are null or what they should be.
        assert_eq!(unsafe { tablerig_brief_check(&brief, ptr::null_mut()) }, Status::NullPointer as i32);
    }
}

#[test]
fn null_brief_and_plan_are_named() {
    let set = Set::new(&workshop::overhead());
    let mut plan = empty_plan();
    let mut fault = Fault::ZERO;
    // SAFETY: null is refused before it is followed.
    let status = unsafe { tablerig_plan(ptr::null(), &raw mut plan, &raw mut fault) };
    assert_eq!((status, field(&fault)), (Status::NullPointer as i32, "brief"));
    assert!(bytes(&plan) == bytes(&empty_plan()));
    // SAFETY: as above.
    let status = unsafe { tablerig_plan(&set.brief(), ptr::null_mut(), &raw mut fault) };
    assert_eq!((status, field(&fault)), (Status::NullPointer as i32, "plan"));
    // SAFETY: as above.
    let status = unsafe { tablerig_plan(&set.brief(), ptr::null_mut(), ptr::null_mut()) };
    assert_eq!(status, Status::NullPointer as i32);
}

#[test]
fn misaligned_pointers_are_not_followed() {
    let set = Set::new(&workshop::overhead());
    let mut room = Room::new(size_of::<Plan>() + 8, EMPTY);
    for off in 1..8 {
        let mut fault = Fault::ZERO;
        let plan = room.pointer::<u8>().wrapping_add(off).cast();
        // SAFETY: misaligned pointers are refused before they are followed.
        let status = unsafe { tablerig_plan(&set.brief(), plan, &raw mut fault) };
        assert_eq!((status, field(&fault)), (Status::Misaligned as i32, "plan"));
        let brief = Brief { support: (&raw const set.support).wrapping_byte_add(off), ..set.brief() };
        let answer = crate::set::plan(&brief);
        assert_eq!((answer.status, field(&answer.fault)), (Status::Misaligned as i32, "support"));
        // A fault that cannot be written is not.
        let fault = room.pointer::<u8>().wrapping_add(off).cast();
        let mut plan = empty_plan();
        // SAFETY: as above.
        let status = unsafe { tablerig_plan(&set.brief(), &raw mut plan, fault) };
        assert_eq!(status, Status::Misaligned as i32);
        assert!(bytes(&plan) == bytes(&empty_plan()));
    }
    assert!(room.bytes().iter().all(|byte| *byte == EMPTY));
}

/// A lens and the answer about it, so close that they share bytes.
#[test]
fn overlaps_are_refused_wherever_they_begin() {
    let lens = Set::new(&workshop::overhead()).lens;
    let (inside, result) = (size_of_val(&lens) as isize, size_of::<FocusedLens>() as isize);
    for shift in (-result - 16..=inside + 16).step_by(8) {
        let mut room = Room::new(512, EMPTY);
        let at = 256;
        room.bytes()[at..at + size_of_val(&lens)].copy_from_slice(bytes(&lens));
        let before = room.bytes().to_vec();
        let lens_at = room.pointer::<u8>().wrapping_add(at).cast();
        let out = room.pointer::<u8>().wrapping_add(at).wrapping_offset(shift).cast();
        let mut fault = Fault::ZERO;
        // SAFETY: both lie within the room.
        let status = unsafe { tablerig_lens_focused(lens_at, 0.1, out, &raw mut fault) };
        if shift > -result && shift < inside {
            assert_eq!((status, field(&fault)), (Status::Overlapping as i32, "lens"), "{shift}");
            assert!(room.bytes() == before);
        } else {
            assert_eq!(status, 0, "{shift}");
            assert!(room.bytes() != before);
        }
    }
}

#[test]
fn a_fault_that_overlaps_is_not_written() {
    let set = Set::new(&workshop::overhead());
    let mut lens = set.lens;
    lens.focal_length_mm = f64::NAN;
    let before = lens;
    let mut focused: FocusedLens = filled(EMPTY);
    let inside_lens = (&raw mut lens).wrapping_byte_add(8).cast::<Fault>();
    // SAFETY: the fault's place lies within the lens.
    let status = unsafe { tablerig_lens_focused(&raw const lens, 0.1, &raw mut focused, inside_lens) };
    assert_eq!(status, Status::Overlapping as i32);
    assert!(bytes(&lens) == bytes(&before));
    let inside_out = (&raw mut focused).cast::<Fault>();
    // SAFETY: the fault's place lies within the result.
    let status = unsafe { tablerig_lens_focused(&raw const lens, 0.1, &raw mut focused, inside_out) };
    assert_eq!(status, Status::Overlapping as i32);
    assert!(bytes(&focused) == bytes(&filled::<FocusedLens>(EMPTY)));
}

#[test]
fn parts_may_be_shared_and_inputs_may_overlap() {
    let set = Set::new(&workshop::overhead());
    // The same lens twice is read twice.
    let mut focused = FocusedLens::ZERO;
    // SAFETY: a lens and a result.
    let status = unsafe { tablerig_lens_focused(&set.lens, 0.1, &raw mut focused, ptr::null_mut()) };
    assert_eq!(status, 0);
    assert_eq!(focused.magnification, 0.1);
}

#[test]
fn a_region_that_runs_past_the_end_of_memory_is_refused() {
    let set = Set::new(&workshop::overhead());
    let last = ptr::without_provenance::<Plan>(usize::MAX - 7).cast_mut();
    let mut fault = Fault::ZERO;
    let lens = set.lens;
    let out = last.cast::<FocusedLens>();
    // SAFETY: refused before it is followed, since no such memory can be.
    let status = unsafe { tablerig_lens_focused(&raw const lens, 0.1, out, &raw mut fault) };
    assert_eq!((status, field(&fault)), (Status::WrongSize as i32, "focused"));
}
