//! The boom bends and swings.

use super::support::Boom;
use crate::doors::c::border::argument;
use crate::doors::c::border::call::Door;
use crate::doors::c::border::mirror::mirror;
use crate::doors::c::border::refusal::{Refusal, name};
use crate::doors::c::status::{Fault, Status};
use crate::range;
use crate::rig::{sag, support};

/// What bending does to the picture.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Sag {
    /// 1 where the boom's damping ratio is given: `settling_s` is there.
    pub has_settling_s: i32,
    /// 0.
    pub reserved: i32,
    /// The boom's end moves, square to the boom.
    pub deflection_mm: f64,
    /// Height lost by the camera.
    pub height_lost_mm: f64,
    /// The boom's end turns down.
    pub end_slope_deg: f64,
    /// The aim point moves in the picture's plane: sensor distance x slope.
    pub aim_shift_mm: f64,
    /// First bending frequency; infinite without any mass.
    pub frequency_hz: f64,
    /// How long to wait after touching it until the swing has died down to the settled share.
    pub settling_s: f64,
}
mirror!(out Sag "sag" sag::Sag {
    deflection_mm,
    height_lost_mm,
    end_slope_deg,
    aim_shift_mm,
    frequency_hz,
    settling_s: (has_settling_s, settling_s),
} spare reserved);

/// Sag of a boom, `boom_length_mm` from clamp to pivot, as a cantilever under a payload, for a camera whose
/// sensor is `sensor_distance_mm` from the aim point. TABLERIG_STATUS_NO_STIFFNESS where the boom's stiffness
/// is unknown.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_sag(
    boom: *const Boom,
    boom_length_mm: f64,
    payload_kg: f64,
    sensor_distance_mm: f64,
    settled_share: f64,
    sag: *mut Sag,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(sag, name!("sag"))?;
        let boom: support::Boom = door.ranged(boom, name!("boom"))?;
        boom.check()?;
        let length = argument::BOOM_LENGTH_MM.check(boom_length_mm)?;
        let payload = argument::PAYLOAD_KG.check(payload_kg)?;
        let distance = argument::SENSOR_DISTANCE_MM.check(sensor_distance_mm)?;
        let settled = range::SETTLED_SHARE.check(settled_share)?;
        match sag::sag(&boom, length, payload, distance, settled) {
            Some(sag) => out.put(&sag),
            None => Err(Refusal::plain(Status::NoStiffness, name!("support.boom.stiffness.kind"))),
        }
    })
}
