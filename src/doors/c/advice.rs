//! Which elevation suits the subject, and why.

use core::ffi::c_char;

use super::border::argument;
use super::border::call::Door;
use super::border::mirror::mirror;
use super::border::refusal::name;
use super::scene::subject::{Subject, Vessel};
use super::status::Fault;
use crate::scene::subject;
use crate::{advice, range};

/// Advice on elevation for a subject. It never overrules the brief.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Advice {
    /// Why, the weightiest first, each a TablerigAdviceReason; 0 for none.
    pub reasons: [i32; 3],
    /// 1 where the subject is a vessel: `contents_at_start` is there.
    pub has_contents_at_start: i32,
    /// 1 where the subject is a vessel: `half_contents_from_deg` is there.
    pub has_half_contents_from_deg: i32,
    /// 0.
    pub reserved: i32,
    /// Lowest elevation advised.
    pub least_deg: f64,
    /// Highest.
    pub most_deg: f64,
    /// Where to begin looking.
    pub start_deg: f64,
    /// Share of what is seen that is top, from the start.
    pub top_share_at_start: f64,
    /// Share of a vessel's contents that shows from the start, from far off.
    pub contents_at_start: f64,
    /// The elevation from which top and side show alike; 90 where the side never falls to that.
    pub half_top_from_deg: f64,
    /// The lowest elevation from which half of a vessel's contents show, from far off.
    pub half_contents_from_deg: f64,
}
mirror!(out Advice "advice" advice::Advice {
    least_deg,
    most_deg,
    start_deg,
    reasons,
    top_share_at_start,
    contents_at_start: (has_contents_at_start, contents_at_start),
    half_top_from_deg,
    half_contents_from_deg: (has_half_contents_from_deg, half_contents_from_deg),
} spare reserved);

/// Advice on elevation for a subject seen from a bearing (the ranges are common practice, no source; the
/// start within them is computed from what would show).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_advice(
    subject: *const Subject,
    bearing_deg: f64,
    advice: *mut Advice,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(advice, name!("advice"))?;
        let subject = door.part(subject)?;
        let bearing = range::BEARING_DEG.check(bearing_deg)?;
        out.put(&advice::advice(&subject, bearing))
    })
}

/// The lowest elevation from which a share, 0 to 1, of a vessel's contents shows, from far off.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_elevation_for_contents(
    vessel: *const Vessel,
    share: f64,
    elevation_deg: *mut f64,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(elevation_deg, name!("elevation_deg"))?;
        let vessel: subject::Vessel = door.ranged(vessel, name!("vessel"))?;
        range::VESSEL_INSIDE_DIAMETER_MM.check(vessel.inside_diameter_mm)?;
        range::VESSEL_CONTENTS_BELOW_RIM_MM.check(vessel.contents_below_rim_mm)?;
        let share = argument::SHARE.check(share)?;
        out.put(&advice::elevation_for_contents_deg(&vessel, share))
    })
}

/// One sentence for a TablerigAdviceReason. Never null: for any other number a sentence that says so.
#[unsafe(no_mangle)]
pub extern "C" fn tablerig_advice_reason_text(reason: i32) -> *const c_char {
    super::text::reason(reason)
}
