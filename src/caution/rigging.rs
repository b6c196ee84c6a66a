//! Cautions about reach, room, standing and ratings.

use super::{CautionCode as Code, Cautions, Level};
use crate::brief::Brief;
use crate::number::{Extremes, atan2_deg};
use crate::rig::reach::{BayRoom, Placement, SupportInPicture};
use crate::rig::sag::Sag;
use crate::rig::stability::{Stability, push_to_tip_n};
use crate::rig::weights::Payload;
use crate::vector::between_pieces_mm;
use crate::view::pose::Pose;

/// What the rig came to.
pub(crate) struct RiggingFindings<'a> {
    pub(crate) brief: &'a Brief,
    pub(crate) pose: &'a Pose,
    pub(crate) frame_width_mm: f64,
    pub(crate) payload: &'a Payload,
    pub(crate) placement: &'a Placement,
    pub(crate) room: &'a BayRoom,
    pub(crate) in_picture: &'a SupportInPicture,
    pub(crate) stability: &'a Stability,
    pub(crate) sag: Option<&'a Sag>,
    pub(crate) overhead: bool,
}

/// Raises what reach, room, standing and ratings call for.
pub(crate) fn rigging(found: &RiggingFindings<'_>, cautions: &mut Cautions) {
    reach_and_room(found, cautions);
    standing(found, cautions);
    ratings(found, cautions);
    let brief = found.brief;
    cautions.over(Code::FloorNotLevel, Level::Note, brief.bay.floor_slope_percent, 1.0);
    if let Some(sag) = found.sag {
        let limit = brief.shot.frame_width_tolerance * found.frame_width_mm;
        cautions.over(Code::SagMovesAim, Level::Note, sag.aim_shift_mm, limit);
    }
    if found.overhead {
        cautions.add(Code::LoadOverhead, Level::Note, found.payload.mass_kg, 0.0);
    }
}

fn reach_and_room(found: &RiggingFindings<'_>, cautions: &mut Cautions) {
    let support = &found.brief.support;
    let placement = found.placement;
    let carried = placement.clamp_height_mm;
    cautions.over(Code::PivotTooHigh, Level::Stop, carried, support.highest_pivot_mm);
    cautions.under(Code::PivotTooLow, Level::Stop, carried, support.lowest_pivot_mm);
    if placement.boom_used {
        match &support.boom {
            None => cautions.add(Code::BoomMissing, Level::Stop, placement.reach_mm, 0.0),
            Some(boom) => {
                cautions.over(Code::BoomTooShort, Level::Stop, placement.reach_mm, boom.longest_reach_mm);
            }
        }
    }
    let room = found.room;
    if room.ceiling_mm < 0.0 {
        let limit = placement.highest_point_mm + room.ceiling_mm;
        cautions.add(Code::CeilingTooLow, Level::Stop, placement.highest_point_mm, limit);
    }
    cautions.under(Code::FeetOutsideBay, Level::Stop, room.feet_mm, 0.0);
    cautions.under(Code::TailOutsideBay, Level::Stop, room.tail_mm, 0.0);
    cautions.under(Code::CameraOutsideBay, Level::Stop, room.camera_mm, 0.0);
    let person = found.brief.bay.person_room_mm;
    cautions.under(Code::NoRoomBehindCamera, Level::Warn, room.behind_camera_mm, person);
    cautions.over(Code::ColumnInPicture, Level::Warn, found.in_picture.column_mm, 0.0);
    cautions.over(Code::BoomInPicture, Level::Warn, found.in_picture.boom_mm, 0.0);
    let table = &found.brief.table;
    let pose = found.pose;
    let front = found.brief.lens.front_from_sensor_mm.unwrap_or(0.0);
    let mut lowest = f64::INFINITY;
    for point in [pose.sensor, pose.pivot, pose.sensor.along(pose.forward, front)] {
        if table.from_nearest_edge_mm(point.floor()) < 0.0 {
            lowest = lowest.smaller(point.z_mm - table.height_mm);
        }
    }
    cautions.under(Code::CameraMeetsTable, Level::Stop, lowest, 0.0);
    if let Some(tail_end) = placement.tail_end {
        let camera = &found.brief.camera;
        let back = pose.sensor.along(pose.forward, -camera.body_behind_mm);
        let front = pose.sensor.along(pose.forward, front.larger(camera.socket_ahead_mm));
        let apart = between_pieces_mm((tail_end, pose.pivot), (back, front));
        cautions.under(Code::BoomMeetsCamera, Level::Stop, apart, camera.socket_below_mm);
    }
}

fn standing(found: &RiggingFindings<'_>, cautions: &mut Cautions) {
    let criteria = &found.brief.criteria;
    let stability = found.stability;
    let share = stability.payload_share;
    if share >= criteria.payload_share_stop {
        cautions.add(Code::PayloadShare, Level::Stop, share, criteria.payload_share_stop);
    } else if share > criteria.payload_share_warn {
        cautions.add(Code::PayloadShare, Level::Warn, share, criteria.payload_share_warn);
    } else {
        cautions.over(Code::PayloadShare, Level::Note, share, criteria.payload_share_note);
    }
    let as_shot = &stability.as_shot;
    cautions.under_graded(
        Code::FactorAsShot,
        as_shot.factor,
        &[
            (Level::Stop, criteria.factor_stop),
            (Level::Warn, criteria.factor_warn),
            (Level::Note, criteria.factor_note),
        ],
    );
    // The other two states are passed through by hand, not left standing.
    let passing = [(Level::Warn, criteria.factor_stop), (Level::Note, criteria.factor_warn)];
    let counterweight = placement_has_counterweight(found);
    if counterweight {
        cautions.under_graded(Code::FactorCameraOff, stability.camera_off.factor, &passing);
        cautions.under_graded(Code::FactorCounterweightOff, stability.counterweight_off.factor, &passing);
    }
    let slope_deg = atan2_deg(found.brief.bay.floor_slope_percent, 100.0);
    let warn =
        if found.brief.bay.public_passes { criteria.tilt_public_warn_deg } else { criteria.tilt_warn_deg };
    let tilt = as_shot.tilt_to_tip_deg - slope_deg;
    cautions.under_graded(
        Code::TiltToTip,
        tilt,
        &[(Level::Stop, criteria.tilt_stop_deg), (Level::Warn, warn)],
    );
    let height = found.pose.pivot.z_mm.smaller(criteria.push_height_most_mm);
    let push = push_to_tip_n(as_shot.total_mass_kg, as_shot.margin_mm, height);
    let weight_n = as_shot.total_mass_kg * crate::number::STANDARD_GRAVITY;
    let needed = (criteria.push_share_warn * weight_n).smaller(criteria.push_most_n);
    // What weighs nothing needs no push at all.
    if push < needed || as_shot.total_mass_kg <= 0.0 {
        cautions.add(Code::PushToTip, Level::Warn, push, needed);
    }
    let springy = found.sag.is_some_and(|sag| sag.frequency_hz < criteria.springy_frequency_hz);
    if springy {
        cautions.under(Code::SpringyBoom, Level::Warn, as_shot.factor, criteria.springy_factor_warn);
    }
}

fn placement_has_counterweight(found: &RiggingFindings<'_>) -> bool {
    match &found.brief.support.boom {
        Some(boom) => found.placement.boom_used && boom.counterweight_kg > 0.0,
        None => false,
    }
}

fn ratings(found: &RiggingFindings<'_>, cautions: &mut Cautions) {
    let support = &found.brief.support;
    let divisor = if found.brief.bay.people_under { found.brief.criteria.people_rating_divisor } else { 1.0 };
    let mut rated = |code, value: f64, rating: Option<f64>| {
        if let Some(rating) = rating {
            cautions.over(code, Level::Stop, value, rating / divisor);
        }
    };
    let payload = found.payload.mass_kg;
    let boom = if found.placement.boom_used { support.boom.as_ref() } else { None };
    let carried = payload + boom.map_or(0.0, |boom| boom.mass_kg + boom.counterweight_kg);
    rated(Code::SupportLoadRating, carried, support.rated_load_kg);
    if let Some(boom) = boom {
        rated(Code::BoomLoadRating, payload, boom.rated_load_kg);
        let worst = found
            .stability
            .as_shot
            .clamp_moment_n_m
            .larger(found.stability.camera_off.clamp_moment_n_m)
            .larger(found.stability.counterweight_off.clamp_moment_n_m);
        rated(Code::ClampMomentRating, worst, boom.rated_clamp_moment_n_m);
    }
    // The head carries what is on it, not itself.
    rated(Code::HeadLoadRating, payload - support.head.mass_kg, support.head.rated_load_kg);
    rated(Code::HeadMomentRating, found.payload.head_moment_n_m, support.head.rated_moment_n_m);
}
