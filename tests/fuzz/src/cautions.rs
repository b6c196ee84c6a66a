//! A plan's cautions against its numbers: each quotes the number of its name, and that lies on the side of the
//! limit that it says; and what lies beyond a limit is said.

use tablerig::brief::Brief;
use tablerig::caution::{Caution, CautionCode as Code, Level};
use tablerig::plan::Plan;

/// On which side of its limit a caution's value lies.
#[derive(PartialEq)]
enum Side {
    Over,
    Under,
    /// Over or at.
    NotUnder,
    /// Under or at.
    NotOver,
    Either,
}

/// The number that a caution must quote, by the plan, and its limit, by the brief, where that is one number.
fn quoted(brief: &Brief, plan: &Plan, caution: &Caution) -> (f64, Option<f64>, Side) {
    let (shot, lens, support, bay) = (&brief.shot, &brief.lens, &brief.support, &brief.bay);
    let (room, stability) = (&plan.bay_room, &plan.stability);
    let boom = support.boom.as_ref();
    let nothing = Some(0.0);
    let divisor = if bay.people_under { brief.criteria.people_rating_divisor } else { 1.0 };
    let rated = |rating: Option<f64>| rating.map(|rating| rating / divisor);
    let carried = plan.payload.mass_kg
        + boom.filter(|_| plan.placement.boom_used).map_or(0.0, |boom| boom.mass_kg + boom.counterweight_kg);
    match caution.code {
        Code::NearerThanFocus => (plan.lens.sensor_distance_mm, lens.closest_focus_mm, Side::Under),
        Code::MagnificationBeyondLens => (plan.lens.magnification, lens.largest_magnification, Side::Over),
        Code::FocalLengthAssumed => (plan.lens.focal_length_mm, Some(lens.focal_length_mm), Side::Either),
        Code::LightClearance => {
            (plan.pose.front_clearance_mm.unwrap(), Some(shot.light_clearance_mm), Side::Under)
        }
        Code::LensMeetsSubject => {
            let room = plan.pose.front_clearance_mm.unwrap_or(plan.lens.pupil_distance_mm);
            (room - plan.subject_depth.nearest_mm, nothing, Side::NotOver)
        }
        Code::SubjectNotHeld => (plan.focus.f_number, Some(plan.focus.f_number_needed), Side::Either),
        Code::StackNeeded => (f64::from(plan.focus.stack.unwrap().pictures), Some(1.0), Side::Over),
        Code::DiffractionShows => {
            (plan.focus.diffraction_disc_mm, Some(plan.focus.circle_of_confusion_mm), Side::Over)
        }
        Code::FNumberNotOnLens => (shot.f_number.unwrap(), None, Side::Either),
        Code::TiltImpossible => (plan.tilt.hinge_distance_mm, Some(plan.lens.focal_length_mm), Side::Either),
        Code::TiltBeyondLens => (plan.tilt.tilt_deg.unwrap(), Some(lens.largest_tilt_deg), Side::Over),
        Code::HorizonInFrame => {
            (shot.elevation_deg - 0.5 * plan.field_angles.vertical_deg, nothing, Side::Either)
        }
        Code::TableFromBelow => (plan.pose.pupil.z_mm - brief.table.height_mm, nothing, Side::NotOver),
        Code::NearEdgeHidesFoot => (caution.value, nothing, Side::Over),
        Code::TableEndsInFrame => (plan.footprint.table_share.unwrap(), Some(1.0), Side::Under),
        Code::SubjectCut => {
            let outline = plan.outline.as_ref().unwrap();
            let rooms =
                [outline.room_above_mm, outline.room_below_mm, outline.room_left_mm, outline.room_right_mm];
            (rooms.into_iter().fold(f64::INFINITY, f64::min), nothing, Side::Under)
        }
        Code::StretchShows => (plan.perspective.corner_stretch, None, Side::Over),
        Code::ElevationOutsideAdvice => (shot.elevation_deg, None, Side::Either),
        Code::SubjectOverhangsTable => (caution.value, nothing, Side::Over),
        Code::PivotTooHigh => (plan.placement.clamp_height_mm, Some(support.highest_pivot_mm), Side::Over),
        Code::PivotTooLow => (plan.placement.clamp_height_mm, Some(support.lowest_pivot_mm), Side::Under),
        Code::BoomMissing => (plan.placement.reach_mm, nothing, Side::NotUnder),
        Code::BoomTooShort => (plan.placement.reach_mm, boom.map(|boom| boom.longest_reach_mm), Side::Over),
        Code::CeilingTooLow => (plan.placement.highest_point_mm, None, Side::Over),
        Code::FeetOutsideBay => (room.feet_mm, nothing, Side::Under),
        Code::TailOutsideBay => (room.tail_mm, nothing, Side::Under),
        Code::CameraOutsideBay => (room.camera_mm, nothing, Side::Under),
        Code::NoRoomBehindCamera => (room.behind_camera_mm, Some(bay.person_room_mm), Side::Under),
        Code::ColumnInPicture => (plan.support_in_picture.column_mm, nothing, Side::Over),
        Code::BoomInPicture => (plan.support_in_picture.boom_mm, nothing, Side::Over),
        Code::CameraMeetsTable => (caution.value, nothing, Side::Under),
        Code::BoomMeetsCamera => (caution.value, Some(brief.camera.socket_below_mm), Side::Under),
        Code::PayloadShare => (stability.payload_share, None, Side::NotUnder),
        Code::FactorAsShot => (stability.as_shot.factor, None, Side::Under),
        Code::FactorCameraOff => (stability.camera_off.factor, None, Side::Under),
        Code::FactorCounterweightOff => (stability.counterweight_off.factor, None, Side::Under),
        // Less the floor's slope: no more than the plan's own.
        Code::TiltToTip => (caution.value, None, Side::Under),
        Code::PushToTip => (caution.value, None, Side::Either),
        Code::SpringyBoom => {
            (stability.as_shot.factor, Some(brief.criteria.springy_factor_warn), Side::Under)
        }
        Code::SupportLoadRating => (carried, rated(support.rated_load_kg), Side::Over),
        Code::BoomLoadRating => (plan.payload.mass_kg, rated(boom.unwrap().rated_load_kg), Side::Over),
        Code::ClampMomentRating => {
            let states = [&stability.as_shot, &stability.camera_off, &stability.counterweight_off];
            let worst = states.map(|state| state.clamp_moment_n_m).into_iter().fold(0.0, f64::max);
            (worst, rated(boom.unwrap().rated_clamp_moment_n_m), Side::Over)
        }
        Code::HeadLoadRating => {
            (plan.payload.mass_kg - support.head.mass_kg, rated(support.head.rated_load_kg), Side::Over)
        }
        Code::HeadMomentRating => {
            (plan.payload.head_moment_n_m, rated(support.head.rated_moment_n_m), Side::Over)
        }
        Code::FloorNotLevel => (bay.floor_slope_percent, Some(1.0), Side::Over),
        Code::SagMovesAim => {
            let limit = shot.frame_width_tolerance * plan.frame_width_mm;
            (plan.sag.as_ref().unwrap().aim_shift_mm, Some(limit), Side::Over)
        }
        Code::LoadOverhead => (plan.payload.mass_kg, nothing, Side::NotUnder),
        // A code that this knows nothing of yet.
        _ => (caution.value, None, Side::Either),
    }
}

/// The level and limit of standing that a caution was raised for are the criteria's.
fn graded(brief: &Brief, caution: &Caution) -> Option<f64> {
    let criteria = &brief.criteria;
    let public = if brief.bay.public_passes { criteria.tilt_public_warn_deg } else { criteria.tilt_warn_deg };
    Some(match (caution.code, caution.level) {
        (Code::PayloadShare, Level::Note) => criteria.payload_share_note,
        (Code::PayloadShare, Level::Warn) => criteria.payload_share_warn,
        (Code::PayloadShare, Level::Stop) => criteria.payload_share_stop,
        (Code::FactorAsShot, Level::Note) => criteria.factor_note,
        (Code::FactorAsShot, Level::Warn) => criteria.factor_warn,
        (Code::FactorAsShot, Level::Stop) => criteria.factor_stop,
        (Code::FactorCameraOff | Code::FactorCounterweightOff, Level::Note) => criteria.factor_warn,
        (Code::FactorCameraOff | Code::FactorCounterweightOff, Level::Warn) => criteria.factor_stop,
        (Code::TiltToTip, Level::Warn) => public,
        (Code::TiltToTip, Level::Stop) => criteria.tilt_stop_deg,
        _ => return None,
    })
}

/// Fails where a plan's cautions and its numbers do not agree.
pub(crate) fn check(brief: &Brief, plan: &Plan) {
    let all: Vec<&Caution> = plan.cautions.iter().collect();
    let rising = all.windows(2).all(|pair| (pair[0].code as i32) < pair[1].code as i32);
    assert!(rising, "not in the order of their codes, or twice: {all:?}");
    assert!(all.len() <= 64);
    for caution in &all {
        let Caution { code, level, value, limit } = **caution;
        let (quoted, expected, side) = quoted(brief, plan, caution);
        assert!(value.to_bits() == quoted.to_bits() || value == quoted, "{caution:?} quotes {quoted}");
        if let Some(expected) = expected.or(graded(brief, caution)) {
            assert!(limit == expected, "{caution:?} is held against {expected}");
        }
        let lies = match side {
            Side::Over => value > limit,
            Side::Under => value < limit,
            Side::NotUnder => value >= limit,
            Side::NotOver => value <= limit,
            Side::Either => true,
        };
        assert!(lies, "{caution:?} lies on the wrong side");
        assert!(!value.is_nan() && !limit.is_nan());
        assert!(!code.sentence().is_empty() && matches!(level, Level::Note | Level::Warn | Level::Stop));
    }
    let has = |code: Code| plan.cautions.find(code).is_some();
    let room = &plan.bay_room;
    assert_eq!(has(Code::FeetOutsideBay), room.feet_mm < 0.0);
    assert_eq!(has(Code::TailOutsideBay), room.tail_mm < 0.0);
    assert_eq!(has(Code::CameraOutsideBay), room.camera_mm < 0.0);
    assert_eq!(has(Code::CeilingTooLow), room.ceiling_mm < 0.0);
    assert_eq!(has(Code::LoadOverhead), plan.overhead);
    assert_eq!(has(Code::PivotTooHigh), plan.placement.clamp_height_mm > brief.support.highest_pivot_mm);
    assert_eq!(has(Code::PivotTooLow), plan.placement.clamp_height_mm < brief.support.lowest_pivot_mm);
    assert_eq!(has(Code::BoomMissing), plan.placement.boom_used && brief.support.boom.is_none());
    assert_eq!(has(Code::TableFromBelow), plan.footprint.from_below);
    // What tips is stopped or at least warned of, whatever the criteria ask for.
    if plan.stability.as_shot.margin_mm < 0.0 && brief.criteria.factor_stop >= 1.0 {
        let stop = plan.cautions.find(Code::FactorAsShot).map(|caution| caution.level);
        assert_eq!(stop, Some(Level::Stop), "it tips: {:?}", plan.stability.as_shot);
    }
    let worst = all.iter().map(|caution| caution.level as i32).max();
    assert_eq!(plan.cautions.worst().map(|level| level as i32), worst);
}
