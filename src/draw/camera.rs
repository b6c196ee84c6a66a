//! Camera, lens and subject as solids, for whichever drawing looks at them.

use crate::brief::Brief;
use crate::plan::Plan;
use crate::scene::subject::Shape;
use crate::vector::Point;

/// Corners of a straight block along the lens axis: from one distance ahead of the sensor to another, as
/// far above and below the axis, and half as wide on either side.
fn block(plan: &Plan, ahead: [f64; 2], below: f64, above: f64, half_width: f64) -> [Point; 8] {
    let pose = &plan.pose;
    let corner = |ahead: f64, up: f64, right: f64| {
        pose.sensor.along(pose.forward, ahead).along(pose.up, up).along(pose.right, right)
    };
    let [back, front] = ahead;
    [
        corner(back, -below, -half_width),
        corner(back, -below, half_width),
        corner(back, above, half_width),
        corner(back, above, -half_width),
        corner(front, -below, -half_width),
        corner(front, -below, half_width),
        corner(front, above, half_width),
        corner(front, above, -half_width),
    ]
}

/// The lens's front ahead of the sensor; where the brief does not know it, the entrance pupil.
pub(super) fn front_mm(brief: &Brief, plan: &Plan) -> f64 {
    let pupil = plan.lens.sensor_distance_mm - plan.lens.pupil_distance_mm;
    brief.lens.front_from_sensor_mm.unwrap_or(pupil.max(1.0))
}

/// Where the drawn body ends and the drawn barrel begins: no input says, so a third of the way.
fn mount_mm(brief: &Brief, plan: &Plan) -> f64 {
    front_mm(brief, plan) / 3.0
}

/// The body: back, top and socket's plane as given, its width a guess.
pub(super) fn body(brief: &Brief, plan: &Plan) -> [Point; 8] {
    let camera = &brief.camera;
    let (above, below) = (camera.body_above_mm, camera.socket_below_mm.max(0.0));
    let half_width = 0.65 * (above + below).max(camera.sensor_width_mm);
    block(plan, [-camera.body_behind_mm, mount_mm(brief, plan)], below, above, half_width)
}

/// Half the drawn barrel's thickness: a guess from the body.
pub(super) fn barrel_half_mm(brief: &Brief) -> f64 {
    let camera = &brief.camera;
    let room = camera.body_above_mm.min(camera.socket_below_mm.max(0.0));
    (0.85 * room).max(0.5 * camera.sensor_height_mm)
}

/// The lens up to its front.
pub(super) fn barrel(brief: &Brief, plan: &Plan) -> [Point; 8] {
    let half = barrel_half_mm(brief);
    block(plan, [mount_mm(brief, plan), front_mm(brief, plan)], half, half, half)
}

/// Corners of the subject's box; of the square around a round.
pub(super) fn subject_box(brief: &Brief, plan: &Plan) -> [Point; 8] {
    let (half_x, half_y) = match brief.subject.shape {
        Shape::Box { width_mm, depth_mm } => (0.5 * width_mm, 0.5 * depth_mm),
        Shape::Round { diameter_mm } => (0.5 * diameter_mm, 0.5 * diameter_mm),
    };
    let aim = plan.pose.aim;
    let foot = brief.table.height_mm;
    let corner = |x: f64, y: f64, z: f64| Point { x_mm: aim.x_mm + x, y_mm: aim.y_mm + y, z_mm: foot + z };
    let height = brief.subject.height_mm;
    [
        corner(-half_x, -half_y, 0.0),
        corner(half_x, -half_y, 0.0),
        corner(half_x, half_y, 0.0),
        corner(-half_x, half_y, 0.0),
        corner(-half_x, -half_y, height),
        corner(half_x, -half_y, height),
        corner(half_x, half_y, height),
        corner(-half_x, half_y, height),
    ]
}
