//! Trigonometry: angles turned and added, and the triangles of camera, subject and floor.

use proptest::prelude::*;
use tablerig::vector::Direction;
use tablerig::view::pose::Orientation;

use crate::briefs::{plan_of, studio_brief};
use crate::draws::{runs, studio, whole};
use crate::space::{agree, angle_deg, at, cross, dot, length, minus, way};

/// A sine or cosine of an angle up to 720 degrees: the platform's conversion to radians alone may be off by
/// half an ulp of 4π.
const OF_ONE: f64 = 2e-15;
/// Rounding of a few operations on lengths, as a share of the largest.
const SHARE: f64 = 1e-14;

const AHEAD: Direction = Direction { x: 1.0, y: 0.0, z: 0.0 };

proptest! {
    #![proptest_config(runs(800))]

    #[test]
    fn sine_and_cosine_are_the_platforms(bearing in whole("shot.bearing_deg")) {
        let turned = AHEAD.turned(bearing);
        let (sin, cos) = bearing.to_radians().sin_cos();
        agree("sine", turned.y, sin, OF_ONE)?;
        agree("cosine", turned.x, cos, OF_ONE)?;
        agree("sin² + cos²", turned.dot(turned), 1.0, 4e-16)?;
    }

    #[test]
    fn turns_add_up(a in whole("shot.bearing_deg"), b in whole("shot.bearing_deg")) {
        let (once, twice) = (AHEAD.turned(a + b), AHEAD.turned(a).turned(b));
        agree("cos(a + b)", once.x, twice.x, OF_ONE)?;
        agree("sin(a + b)", once.y, twice.y, OF_ONE)?;
        let back = AHEAD.turned(a).turned(-a);
        agree("there and back", back.y, 0.0, 2e-16)?;
    }

    #[test]
    fn quarters_and_complements_are_exact(eighths in -2880_i32..=2880) {
        // Multiples of 1/8 degree: sums with 90 and 360 are exact.
        let angle = f64::from(eighths) / 8.0;
        let here = AHEAD.turned(angle);
        let quarter = AHEAD.turned(angle + 90.0);
        prop_assert_eq!((quarter.x, quarter.y), (-here.y, here.x));
        let whole = AHEAD.turned(angle - 360.0);
        prop_assert_eq!((whole.x, whole.y), (here.x, here.y));
        let at = Orientation::new(angle, 0.0);
        let complement = Orientation::new(90.0 - angle, 0.0);
        if (angle - 45.0) % 90.0 != 0.0 {
            prop_assert_eq!(at.sin_elevation, complement.cos_elevation);
            prop_assert_eq!(at.cos_elevation, complement.sin_elevation);
        }
    }

    #[test]
    fn the_cameras_directions_are_a_right_handed_frame(
        elevation in whole("shot.elevation_deg"),
        bearing in whole("shot.bearing_deg"),
    ) {
        let Orientation { forward, right, up, .. } = Orientation::new(elevation, bearing);
        let [forward, right, up] = [forward, right, up].map(way);
        for (name, a, b, expected) in [
            ("forward", forward, forward, 1.0),
            ("right", right, right, 1.0),
            ("up", up, up, 1.0),
            ("forward, right", forward, right, 0.0),
            ("right, up", right, up, 0.0),
            ("up, forward", up, forward, 0.0),
        ] {
            agree(name, dot(a, b), expected, 8e-16)?;
        }
        agree("handedness", length(minus(cross(right, forward), up)), 0.0, 8e-16)?;
        prop_assert_eq!(right[2], 0.0, "the horizon is level");
        prop_assert!(up[2] >= 0.0, "never upside down");
    }

    #[test]
    fn elevation_and_bearing_are_read_off_the_place(brief in studio_brief()) {
        let plan = plan_of(&brief);
        let from_aim = minus(at(plan.pose.sensor), at(plan.pose.aim));
        let distance = plan.lens.sensor_distance_mm;
        let aim_height = brief.shot.aim_height_mm.unwrap_or(0.5 * brief.subject.height_mm);
        let aim = [brief.shot.aim_x_mm, brief.shot.aim_y_mm, brief.table.height_mm + aim_height];
        prop_assert_eq!((at(plan.pose.aim), plan.aim_height_mm), (aim, aim_height));
        // Rounding of the place, which stands metres from the origin, seen from this near.
        let allowed = (1e-15 * (length(at(plan.pose.sensor)) / distance) + 1e-15).to_degrees() * 4.0;
        let level = from_aim[0].hypot(from_aim[1]);
        agree("elevation", from_aim[2].atan2(level).to_degrees(), brief.shot.elevation_deg, allowed)?;
        let bearing = brief.shot.bearing_deg.to_radians();
        let (sin, cos) = bearing.sin_cos();
        // In front is -y, to the right +x.
        agree("across the bearing", from_aim[0] * cos + from_aim[1] * sin, 0.0, distance * 1e-14 + 2e-12)?;
        let towards = from_aim[0] * sin - from_aim[1] * cos;
        agree("along the bearing", towards, plan.pose.sensor_from_aim_mm, distance * 1e-14 + 2e-12)?;
        agree("level distance", plan.pose.sensor_from_aim_mm, level, distance * 1e-14 + 2e-12)?;
    }

    #[test]
    fn laws_of_cosines_and_sines_hold_for_camera_subject_and_floor(brief in studio_brief()) {
        let plan = plan_of(&brief);
        // The floor's corner is under the aim point, so the angle there is 90 + elevation.
        let (camera, aim) = (at(plan.pose.pupil), at(plan.pose.aim));
        let floor = [aim[0], aim[1], 0.0];
        let [to_aim, upright, across] =
            [length(minus(camera, aim)), length(minus(aim, floor)), length(minus(camera, floor))];
        let scale = to_aim.max(upright);
        agree("pupil distance", to_aim, plan.lens.pupil_distance_mm, SHARE * length(camera).max(scale))?;
        let at_aim = (90.0 + brief.shot.elevation_deg).to_radians();
        let (sin, cos) = at_aim.sin_cos();
        let square = to_aim * to_aim + upright * upright - 2.0 * to_aim * upright * cos;
        agree("law of cosines", across * across, square, 8.0 * SHARE * scale * scale)?;
        let at_floor = angle_deg(minus(camera, floor), minus(aim, floor)).to_radians();
        let at_camera = angle_deg(minus(floor, camera), minus(aim, camera)).to_radians();
        agree("law of sines", to_aim * sin, across * at_floor.sin(), 8.0 * SHARE * scale)?;
        agree("law of sines", upright * sin, across * at_camera.sin(), 8.0 * SHARE * scale)?;
        if brief.shot.elevation_deg < 89.0 {
            // Next to 90 the triangle is a line, and its angles are no longer determined by its corners.
            let sum = at_aim + at_floor + at_camera;
            agree("sum of angles", sum.to_degrees(), 180.0, 1e-10)?;
        }
    }

    #[test]
    fn socket_and_pivot_stand_square_to_the_axis(brief in studio_brief()) {
        let plan = plan_of(&brief);
        let pose = &plan.pose;
        let [sensor, socket, pivot] = [pose.sensor, pose.socket, pose.pivot].map(at);
        let (forward, up) = (way(pose.forward), way(pose.up));
        let allowed = SHARE * (length(sensor) + 1000.0);
        let to_socket = minus(socket, sensor);
        agree("socket ahead", dot(to_socket, forward), brief.camera.socket_ahead_mm, allowed)?;
        agree("socket below", -dot(to_socket, up), brief.camera.socket_below_mm, allowed)?;
        let to_pivot = minus(pivot, socket);
        agree("pivot below", length(to_pivot), brief.support.head.pivot_below_socket_mm.abs(), allowed)?;
        agree("pivot under the socket", dot(to_pivot, forward), 0.0, allowed)?;
        let beside = minus(pivot, at(pose.aim));
        let back = [pose.right.y, -pose.right.x, 0.0];
        agree("pivot from aim", dot(beside, back), pose.pivot_from_aim_mm, allowed)?;
        // The body's top: the highest of its back and the lens's front, each as far above the axis.
        let lift = brief.camera.body_above_mm;
        let corner = |ahead: f64| sensor[2] + ahead * forward[2] + lift * up[2];
        let front = brief.lens.front_from_sensor_mm.unwrap_or(0.0);
        let top = corner(-brief.camera.body_behind_mm).max(corner(front));
        agree("body's top", pose.body_top_mm, top, allowed)?;
    }

    #[test]
    fn field_angles_are_the_angles_at_the_pupil(brief in studio_brief()) {
        let plan = plan_of(&brief);
        let pose = &plan.pose;
        let (s, w, h) = (plan.lens.pupil_distance_mm, plan.frame_width_mm, plan.frame_height_mm);
        let seen = |right: f64, up: f64| {
            let (r, u, a) = (way(pose.right), way(pose.up), way(pose.forward));
            [0, 1, 2].map(|i| s * a[i] + right * r[i] + up * u[i])
        };
        let angles = &plan.field_angles;
        let between = |x: f64, y: f64| angle_deg(seen(-x, -y), seen(x, y));
        agree("across", angles.horizontal_deg, between(0.5 * w, 0.0), 1e-12)?;
        agree("upright", angles.vertical_deg, between(0.0, 0.5 * h), 1e-12)?;
        agree("corner to corner", angles.diagonal_deg, between(0.5 * w, 0.5 * h), 1e-12)?;
        let tan = |angle: f64| (0.5 * angle).to_radians().tan();
        let [x, y, d] = [angles.horizontal_deg, angles.vertical_deg, angles.diagonal_deg].map(tan);
        agree("tangents' squares", d * d, x * x + y * y, 1e-13 * d * d)?;
        // Stretch is 1 / cos of the angle off the axis.
        let stretch = |angle: f64| 1.0 / (0.5 * angle).to_radians().cos();
        let side = stretch(angles.horizontal_deg);
        agree("side's stretch", plan.perspective.side_stretch, side, 1e-12 * side * side)?;
        let corner = stretch(angles.diagonal_deg);
        agree("corner's stretch", plan.perspective.corner_stretch, corner, 1e-12 * corner * corner)?;
    }

    #[test]
    fn an_elevation_and_its_negative_see_alike(elevation in studio("shot.elevation_deg")) {
        let at = Orientation::new(elevation.clamp(-60.0, 60.0), 0.0);
        let below = Orientation::new(-elevation.clamp(-60.0, 60.0), 0.0);
        // 45 and -45 are reduced from different quarters.
        agree("sine", at.sin_elevation, -below.sin_elevation, 1.2e-16)?;
        agree("cosine", at.cos_elevation, below.cos_elevation, 1.2e-16)?;
    }
}

#[test]
fn the_angles_everyone_knows() {
    for (angle, sin) in
        [(0.0, 0.0), (30.0, 0.5), (45.0, 0.5_f64.sqrt()), (60.0, 0.75_f64.sqrt()), (90.0, 1.0)]
    {
        agree("sine", Orientation::new(angle, 0.0).sin_elevation, sin, 1.2e-16).unwrap();
    }
    assert_eq!(Orientation::new(90.0, 0.0).cos_elevation, 0.0);
    assert_eq!(Orientation::new(0.0, 180.0).right, Direction { x: -1.0, y: 0.0, z: 0.0 });
    assert_eq!(Orientation::new(90.0, 0.0).up, Direction { x: 0.0, y: 1.0, z: 0.0 });
    // Next to 90 the cosine keeps its digits: 1e-9 degrees are 1.745e-11 radians, less what 90 - 1e-9 was
    // rounded by.
    let next = 90.0_f64 - 1e-9;
    let expected = (90.0 - next).to_radians();
    agree("cosine", Orientation::new(next, 0.0).cos_elevation, expected, 1e-15 * expected).unwrap();
}
