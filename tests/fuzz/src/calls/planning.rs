//! Plans, alone and many at once; defaults, checks and texts.

use tablerig::doors::c::border::mirror::Plain;
use tablerig::doors::c::brief::*;
use tablerig::doors::c::optics::camera::*;
use tablerig::doors::c::optics::lens::*;
use tablerig::doors::c::plan::*;
use tablerig::doors::c::range::*;
use tablerig::doors::c::rig::support::*;
use tablerig::doors::c::scene::bay::*;
use tablerig::doors::c::scene::subject::*;
use tablerig::doors::c::scene::table::*;
use tablerig::doors::c::status::Fault;
use tablerig::doors::c::tolerance::*;
use tablerig::doors::c::{advice, caution, text};

use super::super::c_door::{Call, TALLY, check_fault, text as told};
use super::super::finite;
use super::super::memory::{EMPTY, Piece, from_bytes, plain};
use super::Given;

pub(super) const COUNT: usize = 24;

pub(super) fn call(c: &mut Call<'_>, function: usize, g: &Given) {
    match function {
        0 => inits(c),
        1 => checks(c, g),
        2 => texts(c),
        3..=7 => batch(c, g),
        _ => single(c, g),
    }
}

/// A brief whose parts are as the caller happens to have them.
fn brief(c: &mut Call<'_>, g: &Given) -> Brief {
    let left_out = c.of.below(4);
    Brief {
        size: size_of::<Brief>() as u32,
        reserved: [0, 0, 0, 0, 0, 0, 0, 1][c.of.below(8)],
        shot: c.part(&g.shot),
        camera: c.part(&g.camera),
        lens: c.part(&g.lens),
        table: c.part(&g.table),
        subject: c.part(&g.subject),
        support: c.part(&g.support),
        bay: if left_out & 1 == 1 { core::ptr::null() } else { c.part(&g.bay) },
        criteria: if left_out & 2 == 2 { core::ptr::null() } else { c.part(&g.criteria) },
    }
}

/// A brief's own length.
fn told_size(c: &mut Call<'_>, whole: usize) -> usize {
    match c.of.below(16) {
        0 => whole + 8 * c.of.below(4),
        1 => whole - 8 * c.of.below(4),
        2 => [0, 4, whole + 4, 65544, 0xffff_fff8][c.of.below(5)],
        _ => whole,
    }
}

fn sized(value: &impl Plain, size: usize, whole: usize) -> Piece {
    let mut piece = Piece::of(value, if size > 65536 { whole } else { size.max(4) }, 0);
    piece.bytes_mut()[..4].copy_from_slice(&(size as u32).to_ne_bytes());
    piece
}

fn single(c: &mut Call<'_>, g: &Given) {
    let asked = brief(c, g);
    let whole = size_of::<Brief>();
    let size = told_size(c, whole);
    let brief = sized(&asked, size, whole);
    let plan_whole = size_of::<Plan>();
    let plan_size = told_size(c, plan_whole);
    let mut answers = Vec::new();
    for _ in 0..2 {
        let mut plan = Piece::new(if plan_size > 65536 { plan_whole } else { plan_size.max(4) });
        plan.bytes_mut()[..4].copy_from_slice(&(plan_size as u32).to_ne_bytes());
        let fault = Piece::new(size_of::<Fault>());
        // SAFETY: as much memory as each size says, and parts that are there, null or misaligned.
        let status = unsafe { tablerig_plan(brief.pointer(), plan.pointer(), fault.pointer()) };
        let end = if status == 0 { plan_whole.min(plan.bytes().len()) } else { 4 };
        assert!(plan.bytes()[end..].iter().all(|byte| *byte == EMPTY), "written with {status}");
        assert_eq!(plan.bytes()[..4], (plan_size as u32).to_ne_bytes());
        if status == 0 {
            assert!(fault.unwritten());
        } else {
            check_fault(&from_bytes(fault.bytes()), status);
            assert!(status < 900, "{}", told(from_bytes::<Fault>(fault.bytes()).field));
        }
        answers.push((status, plan.bytes().to_vec(), fault.bytes().to_vec()));
    }
    assert!(answers[0] == answers[1], "another answer");
    TALLY.count(answers[0].0 == 0);
    if answers[0].0 == 0 {
        let plan: Plan = from_bytes(&answers[0].1[..plan_whole]);
        finite::check(&plan);
        assert!(plan.caution_count as usize <= plan.cautions.len());
        for caution in &plan.cautions[..plan.caution_count as usize] {
            assert!(!told(caution::tablerig_caution_text(caution.code)).contains("no caution"));
            assert!(!told(caution::tablerig_level_text(caution.level)).contains("no level"));
        }
        assert!(!told(caution::tablerig_removal_text(plan.removal)).contains("no order"));
    }
}

/// A few shots at once, each as it would be alone.
fn batch(c: &mut Call<'_>, g: &Given) {
    let count = c.of.below(4);
    let (whole, plan_whole) = (size_of::<Brief>(), size_of::<Plan>());
    let (stride, plan_stride) = (whole + 8 * c.of.below(3), plan_whole + 8 * c.of.below(3));
    // Strides and counts that cannot be: nothing may be touched.
    let odd = c.of.below(8);
    let told_stride = if odd == 6 { [0, 8, 12, stride + 4, usize::MAX & !7][c.of.below(5)] } else { stride };
    let told_count = if odd == 7 {
        [usize::MAX, usize::MAX / 8, usize::MAX / plan_whole + 1][c.of.below(3)]
    } else {
        count
    };
    let mut briefs = Piece::new(stride * count);
    let mut plans = Piece::new(plan_stride * count);
    for at in 0..count {
        let one = brief(c, g);
        briefs.bytes_mut()[at * stride..at * stride + whole].copy_from_slice(plain(&one));
        let size = if c.of.below(16) == 0 { plan_whole as u32 - 8 } else { plan_whole as u32 };
        plans.bytes_mut()[at * plan_stride..at * plan_stride + 4].copy_from_slice(&size.to_ne_bytes());
    }
    let statuses = Piece::new(4 * count);
    let faults = Piece::new(size_of::<Fault>() * count);
    let faults_at = if c.of.below(4) == 0 { core::ptr::null_mut() } else { faults.pointer() };
    let before = (briefs.bytes().to_vec(), plans.bytes().to_vec());
    // SAFETY: arrays of as many elements as are told, or of more than memory has, which is refused.
    let status = unsafe {
        let (briefs, plans) = (briefs.pointer(), plans.pointer());
        tablerig_plan_batch(
            briefs,
            told_stride,
            plans,
            plan_stride,
            told_count,
            statuses.pointer(),
            faults_at,
        )
    };
    assert!(before.0 == briefs.bytes(), "a brief was written");
    if status != 0 || told_count == 0 {
        assert!(before.1 == plans.bytes() && statuses.unwritten() && faults.unwritten());
        return;
    }
    for at in 0..count {
        let status = i32::from_ne_bytes(statuses.bytes()[at * 4..at * 4 + 4].try_into().unwrap());
        let got = &plans.bytes()[at * plan_stride..(at + 1) * plan_stride];
        let was = &before.1[at * plan_stride..(at + 1) * plan_stride];
        if status != 0 {
            assert!(got == was, "shot {at} written though refused");
            continue;
        }
        let mut alone = Piece::new(plan_whole);
        alone.bytes_mut()[..4].copy_from_slice(&got[..4]);
        // SAFETY: one of the briefs that were just planned.
        let brief = unsafe { briefs.pointer::<u8>().add(at * stride) };
        // SAFETY: as above, and a plan's place.
        let one = unsafe { tablerig_plan(brief.cast(), alone.pointer(), core::ptr::null_mut()) };
        assert_eq!(one, 0);
        assert!(alone.bytes() == &got[..plan_whole] && got[plan_whole..] == was[plan_whole..]);
    }
    TALLY.count(status == 0);
}

macro_rules! init {
    ($size:ident, $init:ident, $type:ident) => {{
        let whole = size_of::<$type>();
        let size = whole.wrapping_add_signed($size);
        let there = if size > 65536 { 8 } else { size.max(8) };
        let piece = Piece::new(there);
        // SAFETY: as much memory as is told, or a size that is refused.
        let status = unsafe { $init(piece.pointer::<$type>(), size as u32) };
        if status == 0 {
            assert_eq!(piece.bytes()[..4], (size as u32).to_ne_bytes());
            assert!(piece.bytes()[whole.min(size)..size].iter().all(|byte| *byte == 0));
        } else {
            assert!(piece.unwritten(), concat!(stringify!($init), " wrote and refused"));
        }
    }};
}

fn inits(c: &mut Call<'_>) {
    let size = [0, 8, -8, 4, -16, 32, 70000, 0x7fff_0000, 64, -4][c.of.below(10)];
    init!(size, tablerig_shot_init, Shot);
    init!(size, tablerig_camera_init, Camera);
    init!(size, tablerig_lens_init, Lens);
    init!(size, tablerig_table_init, Table);
    init!(size, tablerig_subject_init, Subject);
    init!(size, tablerig_support_init, Support);
    init!(size, tablerig_bay_init, Bay);
    init!(size, tablerig_criteria_init, Criteria);
    init!(size, tablerig_measured_init, Measured);
    init!(size, tablerig_plan_init, Plan);
    init!(size, tablerig_brief_init, Brief);
}

macro_rules! check {
    ($check:ident($part:expr)) => {{
        let part = $part;
        let fault = Piece::new(size_of::<Fault>());
        // SAFETY: a part that is there, null or misaligned, and a fault's place.
        let status = unsafe { $check(part, fault.pointer()) };
        if status == 0 {
            assert!(fault.unwritten());
        } else {
            check_fault(&from_bytes(fault.bytes()), status);
        }
    }};
}

fn checks(c: &mut Call<'_>, g: &Given) {
    check!(tablerig_shot_check(c.part(&g.shot)));
    check!(tablerig_camera_check(c.part(&g.camera)));
    check!(tablerig_lens_check(c.part(&g.lens)));
    check!(tablerig_table_check(c.part(&g.table)));
    check!(tablerig_subject_check(c.part(&g.subject)));
    check!(tablerig_support_check(c.part(&g.support)));
    check!(tablerig_bay_check(c.part(&g.bay)));
    check!(tablerig_criteria_check(c.part(&g.criteria)));
    let asked = brief(c, g);
    check!(tablerig_brief_check(&raw const asked));
}

/// Any number has a text.
fn texts(c: &mut Call<'_>) {
    let number = if c.of.yes() { c.of.word() as i32 } else { c.of.below(1000) as i32 };
    for text in [
        text::tablerig_status_text(number),
        caution::tablerig_caution_text(number),
        caution::tablerig_caution_unit(number),
        caution::tablerig_level_text(number),
        caution::tablerig_removal_text(number),
        advice::tablerig_advice_reason_text(number),
    ] {
        told(text);
    }
    let overhead = caution::tablerig_overhead_caution(number as u32);
    assert_eq!(overhead.is_null(), number as u32 >= 8);
    let (range, fault) = (Piece::new(size_of::<Range>()), Piece::new(size_of::<Fault>()));
    // SAFETY: a range's and a fault's place.
    let status = unsafe { tablerig_range_at(number as u32, range.pointer(), fault.pointer()) };
    assert_eq!(status == 0, (number as u32) < tablerig_range_count());
    if status == 0 {
        let range: Range = from_bytes(range.bytes());
        assert!(told(range.field).len() > 3 && told(range.meaning).len() > 3 && range.least <= range.most);
    } else {
        assert!(range.unwritten());
        check_fault(&from_bytes(fault.bytes()), status);
    }
}
