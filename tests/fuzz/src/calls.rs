//! Every function of the C door that asks something, with what it takes.

use tablerig::brief;
use tablerig::doors::c::border::mirror::Leave;
use tablerig::doors::c::brief::{Criteria, Shot};
use tablerig::doors::c::optics::camera::Camera;
use tablerig::doors::c::optics::lens::Lens;
use tablerig::doors::c::optics::sensor::{Aspect, UsedArea};
use tablerig::doors::c::plan::Plan;
use tablerig::doors::c::rig::stability::{Feet, Loads};
use tablerig::doors::c::rig::support::{Boom, Support};
use tablerig::doors::c::scene::bay::Bay;
use tablerig::doors::c::scene::subject::{Subject, Vessel};
use tablerig::doors::c::scene::table::Table;
use tablerig::doors::c::view::projection::View;
use tablerig::plan;
use tablerig::rig::feet;
use tablerig::rig::weights::loads;

use super::c_door::Call;

mod optics;
mod planning;
mod rig;
mod view;

/// What calls are made from: a brief that is planned, and its plan.
pub(crate) struct Given {
    pub(crate) shot: Shot,
    pub(crate) camera: Camera,
    pub(crate) lens: Lens,
    pub(crate) table: Table,
    pub(crate) subject: Subject,
    pub(crate) support: Support,
    pub(crate) bay: Bay,
    pub(crate) criteria: Criteria,
    pub(crate) boom: Boom,
    pub(crate) vessel: Vessel,
    pub(crate) aspect: Aspect,
    pub(crate) plan: Plan,
    pub(crate) used: UsedArea,
    pub(crate) view: View,
    pub(crate) loads: Loads,
    pub(crate) feet: Feet,
}

impl Given {
    pub(crate) fn new(brief: &brief::Brief, plan: &plan::Plan) -> Given {
        let c: Plan = Leave::leave(plan);
        let support = Support::leave(&brief.support);
        let subject = Subject::leave(&brief.subject);
        let shot = Shot::leave(&brief.shot);
        let legs = brief.support.leg_count;
        let radius = brief.support.foot_radius_mm;
        Given {
            camera: Camera::leave(&brief.camera),
            lens: Lens::leave(&brief.lens),
            table: Table::leave(&brief.table),
            bay: Bay::leave(&brief.bay),
            criteria: Criteria::leave(&brief.criteria),
            boom: support.boom,
            vessel: subject.vessel,
            aspect: shot.delivered_aspect,
            used: c.used_area,
            view: View {
                pose: c.pose,
                pupil_distance_mm: c.lens.pupil_distance_mm,
                frame_width_mm: c.frame_width_mm,
                frame_height_mm: c.frame_height_mm,
            },
            loads: Loads::leave(&loads(&brief.support, &plan.placement, &plan.payload)),
            feet: Feet::leave(&feet::Feet::new(legs, radius, plan.placement.first_leg_deg)),
            plan: c,
            shot,
            subject,
            support,
        }
    }
}

/// A call: `ask!(call, Out, function(name = value, ...))`, the values drawn in this order.
macro_rules! ask {
    ($call:ident, $out:ty, $function:ident($($name:ident = $value:expr),* $(,)?)) => {{
        $(let $name = $value;)*
        // SAFETY: each pointer is null, misaligned, or leads to as much memory as its type or its size says.
        let _: Option<$out> = $call.ask(stringify!($function), |out, fault| unsafe {
            $function($($name,)* out, fault)
        });
    }};
}
pub(crate) use ask;

/// How many functions there are.
pub(crate) const COUNT: usize = optics::COUNT + view::COUNT + rig::COUNT + planning::COUNT;

/// Calls one of them.
pub(crate) fn call(call: &mut Call<'_>, function: usize, given: &Given) {
    // Planning is asked most often: it is at the end, and takes what lies beyond too.
    let mut at = function;
    for (count, ask) in [
        (optics::COUNT, optics::call as fn(&mut Call<'_>, usize, &Given)),
        (view::COUNT, view::call),
        (rig::COUNT, rig::call),
    ] {
        if at < count {
            return ask(call, at, given);
        }
        at -= count;
    }
    planning::call(call, at, given);
}
