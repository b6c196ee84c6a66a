//! Structs of other lengths than this version's: programs compiled earlier and later.

use tablerig::doors::c::border::mirror::{Leave, Plain};
use tablerig::doors::c::brief::{
    Brief, Criteria, Shot, UNSET, tablerig_brief_init, tablerig_criteria_init, tablerig_shot_init,
};
use tablerig::doors::c::optics::camera::{Camera, tablerig_camera_init};
use tablerig::doors::c::optics::lens::{Lens, tablerig_lens_init};
use tablerig::doors::c::plan::{Plan, tablerig_plan, tablerig_plan_init};
use tablerig::doors::c::rig::support::{Support, tablerig_support_init};
use tablerig::doors::c::scene::bay::{Bay, tablerig_bay_init};
use tablerig::doors::c::scene::subject::{Subject, tablerig_subject_init};
use tablerig::doors::c::scene::table::{Table, tablerig_table_init};
use tablerig::doors::c::status::{Fault, Status};
use tablerig::doors::c::tolerance::{Measured, tablerig_measured_init};
use tablerig::{brief, scene};

use crate::memory::{Room, bytes};
use crate::set::{EMPTY, Set, empty_plan, field};
use crate::workshop;

/// Plans the overhead shot with one part in `room`.
fn planned(room: &mut Room, point: fn(&mut Brief, *const u8)) -> (i32, Plan, Fault) {
    let set = Set::new(&workshop::overhead());
    let mut brief = set.brief();
    point(&mut brief, room.pointer());
    let answer = crate::set::plan(&brief);
    (answer.status, answer.plan, answer.fault)
}

/// One part as it is, and cut to each length that ends after a whole field; how its pointer is set.
macro_rules! part {
    ($name:ident, $type:ident, $field:ident, $least:expr, $default:expr) => {
        #[test]
        fn $name() {
            let set = Set::new(&workshop::overhead());
            let point = |brief: &mut Brief, at: *const u8| brief.$field = at.cast();
            let whole = size_of::<$type>();
            let default: $type = $default;
            for size in (0..whole + 24).step_by(4) {
                // What a program compiled with such a struct holds: nothing behind its end.
                let mut room = Room::new(size.max(8), EMPTY);
                room.put(&set.$field, size);
                if size > whole {
                    room.bytes()[whole..size].fill(0);
                }
                room.set_size(size as u32);
                let (status, plan, fault) = planned(&mut room, point);
                if size < $least || size % 8 != 0 {
                    assert_eq!(status, Status::WrongSize as i32, "{size}");
                    assert_eq!(field(&fault), concat!(stringify!($field), ".size"));
                    let told = (fault.value, fault.least);
                    assert_eq!(told, (size as f64, $least as f64));
                    assert!(bytes(&plan) == bytes(&empty_plan()));
                    continue;
                }
                // The same as a whole struct whose missing tail holds the defaults.
                let mut filled = Room::new(whole, 0);
                filled.put(&default, whole);
                filled.put(&set.$field, size);
                filled.set_size(whole as u32);
                let (expected_status, expected, _) = planned(&mut filled, point);
                assert_eq!(status, expected_status, "{size}");
                assert!(bytes(&plan) == bytes(&expected), "{size}");
            }
        }
    };
}

part!(a_shorter_shot, Shot, shot, 72, Shot::leave(&brief::Shot::new(UNSET, UNSET)));
part!(a_shorter_camera, Camera, camera, 56, {
    let mut camera = Camera::ZERO;
    camera.body_behind_mm = 0.0;
    camera
});
part!(a_shorter_lens, Lens, lens, 56, {
    let mut lens = Lens::ZERO;
    lens.pupil_ratio = 1.0;
    lens
});
part!(a_shorter_table, Table, table, 32, Table::ZERO);
part!(a_shorter_subject, Subject, subject, 48, Subject::ZERO);
part!(a_shorter_support, Support, support, 120, support_default());
part!(a_shorter_bay, Bay, bay, 32, Bay::leave(&scene::bay::Bay::OPEN));
part!(a_shorter_criteria, Criteria, criteria, 16, Criteria::leave(&brief::Criteria::DEFAULT));

/// A boom that was announced but never given is refused, not invented.
fn support_default() -> Support {
    let mut support = Support::ZERO;
    support.boom.longest_reach_mm = UNSET;
    support.boom.tail_mm = UNSET;
    support.boom.mass_kg = UNSET;
    support
}

#[test]
fn a_longer_struct_must_be_zero_where_it_is_not_known() {
    let set = Set::new(&workshop::overhead());
    let whole = size_of::<Lens>();
    for (at, byte) in [(whole, 1), (whole + 15, 0x80), (whole + 7, 0)] {
        let mut room = Room::new(whole + 16, 0);
        room.put(&set.lens, whole);
        room.set_size(whole as u32 + 16);
        room.bytes()[at] = byte;
        let (status, _, fault) = planned(&mut room, |brief, at| brief.lens = at.cast());
        if byte == 0 {
            assert_eq!(status, 0);
        } else {
            assert_eq!((status, field(&fault)), (Status::UnknownField as i32, "lens"));
        }
    }
}

#[test]
fn sizes_never_set_are_refused() {
    let set = Set::new(&workshop::overhead());
    for size in [0, 1, 7, 65544, 0x7fff_fff8, 0xffff_fff8, 0xffff_ffff] {
        let mut lens = set.lens;
        lens.size = size;
        let brief = Brief { lens: &raw const lens, ..set.brief() };
        let answer = crate::set::plan(&brief);
        assert_eq!((answer.status, field(&answer.fault)), (Status::WrongSize as i32, "lens.size"), "{size}");
        let mut brief = set.brief();
        brief.size = size;
        assert_eq!(field(&crate::set::plan(&brief).fault), "brief.size");
    }
}

#[test]
fn a_brief_may_end_before_bay_and_criteria() {
    let set = Set::new(&workshop::overhead());
    let mut brief = set.brief();
    // Behind the size that is told, nothing is read.
    brief.size = std::mem::offset_of!(Brief, bay) as u32;
    brief.bay = std::ptr::without_provenance(1);
    brief.criteria = std::ptr::without_provenance(1);
    let answer = crate::set::plan(&brief);
    assert_eq!(answer.status, 0);
    assert!(bytes(&answer.plan) == bytes(&set.plan().plan));
}

#[test]
fn a_plan_is_written_no_further_than_its_size() {
    let brief = Set::new(&workshop::overhead());
    let whole = size_of::<Plan>();
    for size in [0, 8, whole - 8, whole - 4, whole, whole + 4, whole + 8, whole + 64] {
        let mut room = Room::new(whole + 64, EMPTY);
        room.set_size(size as u32);
        // SAFETY: room for more than the size that it tells.
        let status = unsafe { tablerig_plan(&brief.brief(), room.pointer(), std::ptr::null_mut()) };
        let written = size >= whole && size % 8 == 0;
        assert_eq!(status, if written { 0 } else { Status::WrongSize as i32 }, "{size}");
        let end = if written { whole } else { 4 };
        assert_eq!(room.bytes()[..4], (size as u32).to_ne_bytes());
        assert!(room.bytes()[end..].iter().all(|byte| *byte == EMPTY));
        if written {
            let plan = brief.plan().plan;
            assert!(room.bytes()[4..whole] == bytes(&plan)[4..]);
        }
    }
}

/// An initialiser writes as much as it is told, of any version's struct.
macro_rules! init {
    ($init:ident, $type:ident, $least:expr) => {
        for size in [0, 4, 8, $least - 8, $least, size_of::<$type>(), size_of::<$type>() + 32, 70000] {
            let mut room = Room::new(70000, EMPTY);
            // SAFETY: room for more than the size that is told.
            let status = unsafe { $init(room.pointer::<$type>(), size as u32) };
            let fits = ($least..=65536).contains(&size);
            let expected = if fits { Status::Ok } else { Status::WrongSize };
            assert_eq!(status, expected as i32, "{} {size}", stringify!($type));
            let end = if fits { size } else { 0 };
            assert!(room.bytes()[end..].iter().all(|byte| *byte == EMPTY), "{}", stringify!($type));
            if fits {
                assert_eq!(room.bytes()[..4], (size as u32).to_ne_bytes());
                let tail = size.min(size_of::<$type>());
                assert!(room.bytes()[tail..size].iter().all(|byte| *byte == 0));
            }
        }
        // SAFETY: null is refused before it is followed.
        let status = unsafe { $init(std::ptr::null_mut(), size_of::<$type>() as u32) };
        assert_eq!(status, Status::NullPointer as i32);
    };
}

#[test]
fn initialisers_keep_to_their_size() {
    init!(tablerig_shot_init, Shot, 72);
    init!(tablerig_camera_init, Camera, 56);
    init!(tablerig_lens_init, Lens, 56);
    init!(tablerig_table_init, Table, 32);
    init!(tablerig_subject_init, Subject, 48);
    init!(tablerig_support_init, Support, 120);
    init!(tablerig_bay_init, Bay, 32);
    init!(tablerig_criteria_init, Criteria, 16);
    init!(tablerig_measured_init, Measured, 88);
    init!(tablerig_plan_init, Plan, size_of::<Plan>());
    init!(tablerig_brief_init, Brief, std::mem::offset_of!(Brief, bay));
}
