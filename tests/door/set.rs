//! A brief with its parts, as a C program holds them.

use std::ffi::CStr;

use tablerig::brief;
use tablerig::doors::c::border::mirror::{Leave, Plain};
use tablerig::doors::c::brief::{Brief, Criteria, Shot};
use tablerig::doors::c::optics::camera::Camera;
use tablerig::doors::c::optics::lens::Lens;
use tablerig::doors::c::plan::{Plan, tablerig_plan};
use tablerig::doors::c::rig::support::Support;
use tablerig::doors::c::scene::bay::Bay;
use tablerig::doors::c::scene::subject::Subject;
use tablerig::doors::c::scene::table::Table;
use tablerig::doors::c::status::Fault;

use crate::memory::filled;

/// The parts; the brief points to them where they stand.
#[derive(Clone, Copy)]
pub(crate) struct Set {
    pub(crate) shot: Shot,
    pub(crate) camera: Camera,
    pub(crate) lens: Lens,
    pub(crate) table: Table,
    pub(crate) subject: Subject,
    pub(crate) support: Support,
    pub(crate) bay: Bay,
    pub(crate) criteria: Criteria,
}

impl Set {
    pub(crate) fn new(brief: &brief::Brief) -> Set {
        Set {
            shot: Shot::leave(&brief.shot),
            camera: Camera::leave(&brief.camera),
            lens: Lens::leave(&brief.lens),
            table: Table::leave(&brief.table),
            subject: Subject::leave(&brief.subject),
            support: Support::leave(&brief.support),
            bay: Bay::leave(&brief.bay),
            criteria: Criteria::leave(&brief.criteria),
        }
    }

    pub(crate) fn brief(&self) -> Brief {
        Brief {
            size: size_of::<Brief>() as u32,
            reserved: 0,
            shot: &raw const self.shot,
            camera: &raw const self.camera,
            lens: &raw const self.lens,
            table: &raw const self.table,
            subject: &raw const self.subject,
            support: &raw const self.support,
            bay: &raw const self.bay,
            criteria: &raw const self.criteria,
        }
    }

    /// Plans it; what is not written stays as `EMPTY` has it.
    pub(crate) fn plan(&self) -> Answer {
        plan(&self.brief())
    }
}

/// What a byte of an output is that was not written.
pub(crate) const EMPTY: u8 = 0xa5;

/// A plan's place before a call.
pub(crate) fn empty_plan() -> Plan {
    Plan { size: size_of::<Plan>() as u32, ..filled(EMPTY) }
}

/// What a call gave.
pub(crate) struct Answer {
    pub(crate) status: i32,
    pub(crate) plan: Plan,
    pub(crate) fault: Fault,
}

pub(crate) fn plan(brief: &Brief) -> Answer {
    let mut plan = empty_plan();
    let mut fault = Fault::ZERO;
    // SAFETY: a brief with its parts, a plan of its size, a fault.
    let status = unsafe { tablerig_plan(brief, &raw mut plan, &raw mut fault) };
    Answer { status, plan, fault }
}

/// The name in a fault.
pub(crate) fn field(fault: &Fault) -> &'static str {
    text(fault.field)
}

/// A static text of the library.
pub(crate) fn text(text: *const std::ffi::c_char) -> &'static str {
    assert!(!text.is_null());
    // SAFETY: a static string of the library, not null.
    unsafe { CStr::from_ptr(text) }.to_str().unwrap()
}
