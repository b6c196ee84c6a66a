//! Briefs as a C program holds them.

use tablerig::brief;
use tablerig::doors::c::border::mirror::{Leave, Plain};
use tablerig::doors::c::brief::{Brief, Criteria, Shot};
use tablerig::doors::c::optics::camera::Camera;
use tablerig::doors::c::optics::lens::Lens;
use tablerig::doors::c::plan::Plan;
use tablerig::doors::c::rig::support::Support;
use tablerig::doors::c::scene::bay::Bay;
use tablerig::doors::c::scene::subject::Subject;
use tablerig::doors::c::scene::table::Table;

/// The parts that the briefs point to.
pub(crate) struct Set {
    shot: Shot,
    camera: Camera,
    lens: Lens,
    table: Table,
    subject: Subject,
    support: Support,
    bay: Bay,
    criteria: Criteria,
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
}

/// A place for a plan.
pub(crate) fn empty() -> Plan {
    Plan { size: size_of::<Plan>() as u32, ..Plan::ZERO }
}
