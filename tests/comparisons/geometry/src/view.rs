//! Pose, frame on the table, outline, shares and look in straightforward Rust over nalgebra's vectors and rotations.

use nalgebra::{Point3, Rotation3, Unit, Vector2, Vector3};
use tablerig::brief::Brief;
use tablerig::scene::subject::Shape;

use crate::lens::Focused;

#[derive(Clone, Debug)]
pub(crate) struct Pose {
    pub(crate) forward: Vector3<f64>,
    pub(crate) right: Vector3<f64>,
    pub(crate) up: Vector3<f64>,
    pub(crate) aim_height: f64,
    pub(crate) aim: Point3<f64>,
    pub(crate) pupil: Point3<f64>,
    pub(crate) sensor: Point3<f64>,
    pub(crate) socket: Point3<f64>,
    pub(crate) pivot: Point3<f64>,
    pub(crate) body_top: f64,
    pub(crate) sensor_from_aim: f64,
    pub(crate) pivot_from_aim: f64,
    pub(crate) sensor_from_edge: f64,
    pub(crate) pivot_from_edge: f64,
    pub(crate) front_clearance: Option<f64>,
}

pub(crate) fn from_table(brief: &Brief, place: &Point3<f64>) -> f64 {
    let x = place.x.abs() - 0.5 * brief.table.width_mm;
    let y = place.y.abs() - 0.5 * brief.table.depth_mm;
    if x > 0.0 && y > 0.0 { x.hypot(y) } else { x.max(y) }
}

/// Straight overhead the cosine is 0, as for everyone who sets a camera there.
fn upright(vector: Vector3<f64>) -> Vector3<f64> {
    vector.map(|part| if part.abs() < 1e-15 { 0.0 } else { part })
}

pub(crate) fn pose(brief: &Brief, focused: &Focused) -> Pose {
    let Brief { shot, camera, .. } = brief;
    let turn = Rotation3::from_axis_angle(&Vector3::z_axis(), shot.bearing_deg.to_radians())
        * Rotation3::from_axis_angle(&Unit::new_unchecked(Vector3::x()), -shot.elevation_deg.to_radians());
    let forward = upright(turn * Vector3::y());
    let right = upright(turn * Vector3::x());
    let up = upright(turn * Vector3::z());
    let aim_height = shot.aim_height_mm.unwrap_or(0.5 * brief.subject.height_mm);
    let aim = Point3::new(shot.aim_x_mm, shot.aim_y_mm, brief.table.height_mm + aim_height);
    let distance = focused.sensor_distance;
    let sensor = aim - distance * forward;
    let socket = sensor + camera.socket_ahead_mm * forward - camera.socket_below_mm * up;
    let below = brief.support.head.pivot_below_socket_mm;
    let pivot = socket - below * up;
    let (se, ce) = (-forward.z, up.z);
    let front = brief.lens.front_from_sensor_mm;
    Pose {
        aim_height,
        pupil: aim - focused.s * forward,
        body_top: sensor.z
            + (camera.body_behind_mm * se).max(-front.unwrap_or(0.0) * se)
            + camera.body_above_mm * ce,
        sensor_from_aim: distance * ce,
        pivot_from_aim: (distance - camera.socket_ahead_mm) * ce + (camera.socket_below_mm + below) * se,
        sensor_from_edge: from_table(brief, &sensor),
        pivot_from_edge: from_table(brief, &pivot),
        front_clearance: front.map(|front| distance - front),
        forward,
        right,
        up,
        aim,
        sensor,
        socket,
        pivot,
    }
}

/// Length of what the frame shows of a line.
pub(crate) fn shown_length(focused: &Focused, pose: &Pose, a: &Point3<f64>, c: &Point3<f64>) -> f64 {
    let (x, y) = (0.5 * focused.frame.0 / focused.s, 0.5 * focused.frame.1 / focused.s);
    let seen = |point: &Point3<f64>| {
        let d = point - pose.pupil;
        Vector3::new(d.dot(&pose.right), d.dot(&pose.up), d.dot(&pose.forward))
    };
    let (seen_a, seen_c) = (seen(a), seen(c));
    let (mut start, mut end) = (0.0_f64, 1.0_f64);
    for side in [
        Vector3::new(-1.0, 0.0, x),
        Vector3::new(1.0, 0.0, x),
        Vector3::new(0.0, -1.0, y),
        Vector3::new(0.0, 1.0, y),
    ] {
        let (at_a, at_c) = (side.dot(&seen_a), side.dot(&seen_c));
        if at_a < 0.0 && at_c < 0.0 {
            return 0.0;
        } else if at_a < 0.0 {
            start = start.max(at_a / (at_a - at_c));
        } else if at_c < 0.0 {
            end = end.min(at_a / (at_a - at_c));
        }
    }
    if end > start { (end - start) * (c - a).norm() } else { 0.0 }
}

#[derive(Clone, Debug, Default)]
pub(crate) struct Frame {
    pub(crate) corners: [Option<Point3<f64>>; 4],
    pub(crate) near_width: Option<f64>,
    pub(crate) far_width: Option<f64>,
    pub(crate) keystone: Option<f64>,
    pub(crate) depth: Option<f64>,
    pub(crate) edges: [bool; 4],
    pub(crate) table_share: Option<f64>,
    pub(crate) board: Option<(f64, f64, f64)>,
    pub(crate) backdrop: Option<[f64; 3]>,
}

fn clipped(polygon: &[Vector2<f64>], inside: impl Fn(&Vector2<f64>) -> f64) -> Vec<Vector2<f64>> {
    let mut kept = Vec::with_capacity(8);
    for (index, a) in polygon.iter().enumerate() {
        let c = &polygon[(index + 1) % polygon.len()];
        let (at_a, at_c) = (inside(a), inside(c));
        if at_a >= 0.0 {
            kept.push(*a);
        }
        if (at_a < 0.0) != (at_c < 0.0) {
            kept.push(a + (c - a) * (at_a / (at_a - at_c)));
        }
    }
    kept
}

pub(crate) fn frame(brief: &Brief, focused: &Focused, pose: &Pose) -> Frame {
    let (x, y) = (0.5 * focused.frame.0, 0.5 * focused.frame.1);
    let backdrop = brief.shot.backdrop_behind_mm.map(|behind| backdrop(focused, pose, behind));
    let above = pose.pupil.z - brief.table.height_mm;
    if above <= 0.0 {
        return Frame { backdrop, ..Frame::default() };
    }
    let ray = |place: &Vector2<f64>| focused.s * pose.forward + place.x * pose.right + place.y * pose.up;
    let places = [(-x, -y), (x, -y), (x, y), (-x, y)].map(|(x, y)| Vector2::new(x, y));
    let corners = places.map(|place| {
        let way = ray(&place);
        (way.z < 0.0).then(|| pose.pupil + way * (above / -way.z))
    });
    let width = |a: Option<Point3<f64>>, c: Option<Point3<f64>>| Some((a? - c?).norm());
    let (near_width, far_width) = (width(corners[0], corners[1]), width(corners[2], corners[3]));
    let on = Vector3::new(-pose.right.y, pose.right.x, 0.0);
    let lines =
        corners[0].zip(corners[2]).map(|(near, far)| ((near - pose.aim).dot(&on), (far - pose.aim).dot(&on)));
    let (half_w, half_d) = (0.5 * brief.table.width_mm, 0.5 * brief.table.depth_mm);
    let mut polygon = clipped(&places, |place| -ray(place).z);
    for (axis, half) in [(0, half_w), (1, half_d)] {
        for sign in [1.0, -1.0] {
            if !polygon.is_empty() {
                polygon = clipped(&polygon, |place| {
                    let way = ray(place);
                    half * -way.z - sign * (pose.pupil[axis] * -way.z + above * way[axis])
                });
            }
        }
    }
    let area: f64 = (0..polygon.len()).map(|i| polygon[i].perp(&polygon[(i + 1) % polygon.len()])).sum();
    let z = brief.table.height_mm;
    let ends = [(-half_w, -half_d), (half_w, -half_d), (half_w, half_d), (-half_w, half_d)]
        .map(|(x, y)| Point3::new(x, y, z));
    Frame {
        corners,
        near_width,
        far_width,
        keystone: near_width.zip(far_width).map(|(near, far)| far / near),
        depth: lines.map(|(near, far)| far - near),
        edges: [0, 1, 2, 3].map(|i| shown_length(focused, pose, &ends[i], &ends[(i + 1) % 4]) > 0.0),
        table_share: Some((0.5 * area.abs() / (4.0 * x * y)).min(1.0)),
        board: near_width.zip(far_width).zip(lines).map(|((near, far), lines)| {
            let middle = pose.aim + 0.5 * (lines.0 + lines.1) * on;
            (near.max(far), middle.x, middle.y)
        }),
        backdrop,
    }
}

fn backdrop(focused: &Focused, pose: &Pose, behind: f64) -> [f64; 3] {
    let (s, half, se, ce) = (focused.s, 0.5 * focused.frame.1, -pose.forward.z, pose.up.z);
    let depth = s + behind * ce + pose.aim_height * se;
    let foot = if depth > 0.0 { s * (behind * se - pose.aim_height * ce) / depth } else { -half }.max(-half);
    if foot >= half {
        return [0.0; 3];
    }
    let sight =
        |v: f64| if s * ce + v * se > 0.0 { (behind + s * ce) / (s * ce + v * se) } else { f64::INFINITY };
    let (top, bottom) = (sight(half), sight(foot));
    let height = if top.is_finite() { pose.aim_height + s * se + top * (half * ce - s * se) } else { top };
    [focused.frame.0 * top.max(bottom), height, (half - foot) / (2.0 * half)]
}

/// Nearest and farthest part along the axis; left, right, bottom, top in the picture.
pub(crate) fn outline(brief: &Brief, focused: &Focused, pose: &Pose) -> (f64, f64, Option<[f64; 10]>) {
    let (h, foot) = (brief.subject.height_mm, pose.aim - Vector3::z() * pose.aim_height);
    let (se, ce) = (-pose.forward.z, pose.up.z);
    let (mut nearest, mut farthest) = (f64::NEG_INFINITY, f64::NEG_INFINITY);
    let (mut low, mut high) = (Vector2::repeat(f64::INFINITY), Vector2::repeat(f64::NEG_INFINITY));
    let mut take = |x: f64, y: f64| {
        low = low.inf(&Vector2::new(x, y));
        high = high.sup(&Vector2::new(x, y));
    };
    match brief.subject.shape {
        Shape::Box { width_mm, depth_mm } => {
            for (x, y, z) in
                (0..8).map(|i| (f64::from(i & 1) - 0.5, f64::from(i >> 1 & 1) - 0.5, f64::from(i >> 2)))
            {
                let point = foot + Vector3::new(x * width_mm, y * depth_mm, z * h);
                let depth = (point - pose.aim).dot(&pose.forward);
                nearest = nearest.max(-depth);
                farthest = farthest.max(depth);
                let d = point - pose.pupil;
                let scale = focused.s / d.dot(&pose.forward);
                take(scale * d.dot(&pose.right), scale * d.dot(&pose.up));
            }
        }
        Shape::Round { diameter_mm } => {
            let r = 0.5 * diameter_mm;
            for z in [0.0, h] {
                let middle = foot + Vector3::z() * z - pose.aim;
                let (depth, up) = (middle.dot(&pose.forward), middle.dot(&pose.up));
                nearest = nearest.max(r * ce - depth);
                farthest = farthest.max(r * ce + depth);
                let away = focused.s + depth;
                let across = focused.s * r / ((away - r * ce) * (away + r * ce)).sqrt();
                take(-across, focused.s * (up - r * se) / (away - r * ce));
                take(across, focused.s * (up + r * se) / (away + r * ce));
            }
        }
    }
    if nearest >= focused.s {
        return (nearest, farthest, None);
    }
    let (w, v) = focused.frame;
    let size = high - low;
    let rooms = [0.5 * v - high.y, 0.5 * v + low.y, 0.5 * w + low.x, 0.5 * w - high.x];
    let [above, below, left, right] = rooms;
    (
        nearest,
        farthest,
        Some([low.x, high.x, low.y, high.y, size.x / w, size.y / v, above, below, left, right]),
    )
}

fn overlap(r: f64, other: f64, apart: f64) -> f64 {
    if apart >= r + other {
        return 0.0;
    }
    if apart <= other - r {
        return 1.0;
    }
    let x = (apart * apart + r * r - other * other) / (2.0 * apart);
    let y = apart - x;
    let chord = (r * r - x * x).max(0.0).sqrt();
    let area = r * r * chord.atan2(x) - x * chord + other * other * chord.atan2(y) - y * chord;
    area / (std::f64::consts::PI * r * r)
}

/// Top, side, contents, contents from far off.
pub(crate) fn shares(brief: &Brief, focused: &Focused, pose: &Pose) -> (f64, f64, Option<f64>, Option<f64>) {
    let (se, ce, h) = (-pose.forward.z, pose.up.z, brief.subject.height_mm);
    let (top, side) = match brief.subject.shape {
        Shape::Round { diameter_mm: d } => (0.25 * std::f64::consts::PI * d * d, d * h),
        Shape::Box { width_mm, depth_mm } => {
            (width_mm * depth_mm, (width_mm * pose.right.x.abs() + depth_mm * pose.right.y.abs()) * h)
        }
    };
    let top = if se > 0.0 { se * top / (se * top + ce * side) } else { 0.0 };
    let vessel = brief.subject.vessel;
    let contents = vessel.map(|vessel| {
        let (r, gap) = (0.5 * vessel.inside_diameter_mm, vessel.contents_below_rim_mm);
        let above = pose.aim_height + focused.s * se - h;
        if above > 0.0 { overlap(r, r * (above + gap) / above, focused.s * ce * gap / above) } else { 0.0 }
    });
    let far = vessel.map(|vessel| {
        let r = 0.5 * vessel.inside_diameter_mm;
        if se > 0.0 { overlap(r, r, vessel.contents_below_rim_mm * ce / se) } else { 0.0 }
    });
    (top, 1.0 - top, contents, far)
}

/// Stretch at side and corner, size ratio, convergence.
pub(crate) fn look(
    brief: &Brief,
    focused: &Focused,
    pose: &Pose,
    near: f64,
    far: f64,
) -> (f64, f64, Option<(f64, f64)>) {
    let s = focused.s;
    let (side, high) = (focused.frame.0 / (2.0 * s), focused.frame.1 / (2.0 * s));
    let ratios = (near < s).then(|| {
        let se = -pose.forward.z;
        let top = s - (brief.subject.height_mm - pose.aim_height) * se;
        ((s + far) / (s - near), (s + pose.aim_height * se) / top)
    });
    ((1.0 + side * side).sqrt(), (1.0 + side * side + high * high).sqrt(), ratios)
}
