//! Cases of reach and room.

use tablerig::brief::Brief;
use tablerig::caution::CautionCode as Code;
use tablerig::caution::Level;
use tablerig::rig::support::Boom;
use tablerig::scene::table::Side;

use crate::workshop::{lens, overhead, slanting};
use crate::{Case, JUST, both, case, over_under, planned, under_over, with};

fn boom(brief: &mut Brief) -> &mut Boom {
    brief.support.boom.as_mut().unwrap()
}

pub(crate) fn cases() -> Vec<Case> {
    [reach(), room(), in_picture()].into_iter().flatten().collect()
}

/// Briefs that stand at a limit exactly.
pub(crate) fn exact() -> Vec<(Code, Brief)> {
    let base = overhead();
    let placement = planned(&base).placement;
    let clamp = placement.clamp_height_mm;
    vec![
        (Code::PivotTooHigh, with(base, |brief| brief.support.highest_pivot_mm = clamp)),
        (Code::PivotTooLow, with(base, |brief| brief.support.lowest_pivot_mm = clamp)),
        (Code::BoomTooShort, with(base, |brief| boom(brief).longest_reach_mm = placement.reach_mm)),
        (Code::CeilingTooLow, with(base, |brief| brief.bay.ceiling_mm = Some(placement.highest_point_mm))),
    ]
}

fn reach() -> Vec<Case> {
    let base = overhead();
    let placement = planned(&base).placement;
    let (clamp, reach) = (placement.clamp_height_mm, placement.reach_mm);
    // A tripod in front: it stands free as soon as the room it keeps from the table is there.
    let free = planned(&slanting());
    let kept = free.pose.pivot_from_edge_mm - (free.placement.stand_off_mm - 20.0);
    vec![
        case(
            Code::PivotTooHigh,
            Level::Stop,
            both(base, under_over(clamp), |brief, highest| brief.support.highest_pivot_mm = highest),
            |plan| plan.placement.clamp_height_mm,
            clamp,
        ),
        case(
            Code::PivotTooLow,
            Level::Stop,
            both(base, over_under(clamp), |brief, lowest| brief.support.lowest_pivot_mm = lowest),
            |plan| plan.placement.clamp_height_mm,
            clamp,
        ),
        case(
            Code::BoomMissing,
            Level::Stop,
            both(slanting(), over_under(kept), |brief, room| brief.support.table_clearance_mm = room),
            |plan| plan.placement.reach_mm,
            0.0,
        ),
        case(
            Code::BoomTooShort,
            Level::Stop,
            both(base, under_over(reach), |brief, longest| boom(brief).longest_reach_mm = longest),
            |plan| plan.placement.reach_mm,
            reach,
        ),
    ]
}

fn room() -> Vec<Case> {
    let base = overhead();
    let plan = planned(&base);
    // The column stands in front; its legs point at the table and slanting away from it.
    let foot = plan.placement.feet.iter().map(|foot| -foot.y_mm).fold(0.0, f64::max);
    let tail = -plan.placement.tail_end.unwrap().y_mm;
    let side = plan.placement.feet.iter().map(|foot| foot.x_mm).fold(0.0, f64::max);
    let back = with(slanting(), |brief| brief.bay.person_room_mm = 600.0);
    let body = -planned(&back).pose.sensor.y_mm + 40.0 * 50.0_f64.to_radians().cos();
    // From 50 degrees the pivot, under the axis, stands further out than the body's back.
    let pivot = -planned(&back).pose.pivot.y_mm;
    let highest = plan.placement.highest_point_mm;
    let clear = with(base, |brief| brief.bay.ceiling_clearance_mm = 50.0);
    let front = |brief, wall| both(brief, wall, |brief: &mut Brief, wall| brief.bay.front_mm = Some(wall));
    // Overhead the body's back is over the aim point, and the table goes on to its front edge, 400 further.
    let over_table = with(base, |brief| brief.bay.person_room_mm = 600.0);
    vec![
        case(
            Code::CeilingTooLow,
            Level::Stop,
            both(clear, under_over(highest + 50.0), |brief, ceiling| brief.bay.ceiling_mm = Some(ceiling)),
            |plan| plan.placement.highest_point_mm,
            highest,
        ),
        case(Code::FeetOutsideBay, Level::Stop, front(base, under_over(foot)), move |_| -JUST * foot, 0.0),
        case(
            Code::FeetOutsideBay,
            Level::Stop,
            both(base, under_over(side), |brief, wall| brief.bay.right_mm = Some(wall)),
            move |_| -JUST * side,
            0.0,
        ),
        case(Code::TailOutsideBay, Level::Stop, front(base, under_over(tail)), move |_| -JUST * tail, 0.0),
        case(
            Code::CameraOutsideBay,
            Level::Stop,
            front(slanting(), under_over(pivot)),
            move |_| -JUST * pivot,
            0.0,
        ),
        case(
            Code::NoRoomBehindCamera,
            Level::Warn,
            front(back, under_over(body + 600.0)),
            |plan| plan.bay_room.behind_camera_mm,
            600.0,
        ),
        case(
            Code::NoRoomBehindCamera,
            Level::Warn,
            front(over_table, under_over(400.0 + 600.0)),
            |plan| plan.bay_room.behind_camera_mm,
            600.0,
        ),
    ]
}

fn in_picture() -> Vec<Case> {
    let base = overhead();
    let plan = planned(&base);
    // From overhead the column's foot is seen where the frame's lower side meets the floor.
    let s = plan.lens.pupil_distance_mm;
    let seen = 200.0 * (s + 760.0) / s;
    let depth = 2.0 * (seen - plan.placement.stand_off_mm);
    // From the right the boom comes in square to the view, 135 under the axis and before the pupil as far as
    // the socket is: it rises over the frame's lower side, and the half right of the axis shows.
    let from_right = with(slanting(), |brief| {
        brief.support = overhead().support;
        brief.shot.side = Some(Side::Right);
    });
    let lens_at = planned(&from_right).lens;
    let before = 135.0 / 300.0 * lens_at.pupil_distance_mm;
    let ahead = before + lens_at.sensor_distance_mm - lens_at.pupil_distance_mm;
    // A macro close-up: level, life size, camera and pivot over the table; the pivot 135 under the axis.
    let low_down = with(slanting(), |brief| {
        brief.lens = lens(90.0);
        brief.shot = tablerig::brief::Shot::new(0.0, 36.0);
    });
    vec![
        case(
            Code::ColumnInPicture,
            Level::Warn,
            both(base, under_over(depth), |brief, depth| brief.table.depth_mm = depth),
            |plan| plan.support_in_picture.column_mm,
            0.0,
        ),
        case(
            Code::BoomInPicture,
            Level::Warn,
            both(from_right, over_under(ahead), |brief, ahead| brief.camera.socket_ahead_mm = ahead),
            move |_| before * 450.0 / lens_at.pupil_distance_mm * (1.0 + JUST * ahead / before),
            0.0,
        ),
        case(
            Code::CameraMeetsTable,
            Level::Stop,
            both(low_down, under_over(135.0), |brief, height| brief.shot.aim_height_mm = Some(height)),
            move |_| -JUST * 135.0,
            0.0,
        ),
        case(
            Code::BoomMeetsCamera,
            Level::Stop,
            // Overhead, the pivot 135 beside the axis in the direction of the bearing: a boom from the back
            // passes the axis as far off as the pivot lies to the right.
            both(
                with(overhead(), |brief| brief.shot.side = Some(Side::Back)),
                under_over(1.0 / 3.0),
                |brief, sine| {
                    brief.shot.bearing_deg = sine.asin().to_degrees();
                },
            ),
            |plan| plan.pose.pivot.x_mm.abs(),
            45.0,
        ),
    ]
}
