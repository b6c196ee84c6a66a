//! Support, room, weights, standing, base weight and sag in straightforward Rust over nalgebra's vectors.

use nalgebra::{Point3, Vector2, Vector3};
use tablerig::brief::Brief;
use tablerig::rig::support::{Boom, Stiffness};
use tablerig::scene::table::Underside;

use crate::lens::Focused;
use crate::view::{Pose, from_table, shown_length};

pub(crate) const GRAVITY: f64 = 9.80665;

fn turned(angle_deg: f64) -> Vector2<f64> {
    let (sin, cos) = angle_deg.to_radians().sin_cos();
    Vector2::new(cos, sin)
}

#[derive(Clone, Debug)]
pub(crate) struct Placed {
    pub(crate) hung: bool,
    pub(crate) boom: Option<Boom>,
    pub(crate) side: usize,
    pub(crate) reach: f64,
    pub(crate) towards: Vector3<f64>,
    pub(crate) left: Vector3<f64>,
    pub(crate) first_leg: f64,
    pub(crate) stand_off: f64,
    pub(crate) boom_length: f64,
    pub(crate) pitch: Vector2<f64>,
    pub(crate) column: Point3<f64>,
    pub(crate) clamp: f64,
    pub(crate) tail_end: Option<Point3<f64>>,
    pub(crate) feet: Vec<Point3<f64>>,
    pub(crate) highest: f64,
}

fn stand_off(brief: &Brief, first: f64) -> f64 {
    let support = &brief.support;
    let spacing = 360.0 / f64::from(support.leg_count);
    let nearest = (0..support.leg_count)
        .map(|leg| (first + f64::from(leg) * spacing).to_radians().cos())
        .fold(f64::NEG_INFINITY, f64::max);
    let circle = match brief.table.underside {
        Underside::Open => (support.foot_radius_mm * (1.0 - brief.table.height_mm / support.legs_top_mm))
            .max(support.column_radius_mm),
        Underside::Closed => support.foot_radius_mm,
    };
    (circle * nearest).max(support.column_radius_mm) + support.table_clearance_mm
}

const INWARDS: [(f64, f64); 4] = [(0.0, 1.0), (-1.0, 0.0), (0.0, -1.0), (1.0, 0.0)];

pub(crate) fn placed(brief: &Brief, pose: &Pose) -> Placed {
    let support = &brief.support;
    let (x, y, w, d) = (pose.pivot.x, pose.pivot.y, 0.5 * brief.table.width_mm, 0.5 * brief.table.depth_mm);
    let outs = [-y - d, x - w, y - d, -x - w];
    let spacing = 360.0 / f64::from(support.leg_count);
    let (hung_first, first) =
        (support.first_leg_deg.unwrap_or(0.0), support.first_leg_deg.unwrap_or(0.5 * spacing));
    let (hung_off, off) = (stand_off(brief, hung_first), stand_off(brief, first));
    let hung = from_table(brief, &pose.pivot) < off;
    let inwards = |side: usize| Vector3::new(INWARDS[side].0, INWARDS[side].1, 0.0);
    let (mut side, mut reach) = (0, f64::INFINITY);
    let (towards, first_leg, stand_off);
    if hung {
        for (at, out) in outs.into_iter().enumerate() {
            if (hung_off - out).max(0.0) < reach {
                (side, reach) = (at, (hung_off - out).max(0.0));
            }
        }
        (towards, first_leg, stand_off) = (inwards(side), hung_first, hung_off);
    } else {
        side = (1..4).fold(0, |best, at| if outs[at] > outs[best] { at } else { best });
        reach = 0.0;
        let way = Vector3::new(x.clamp(-w, w) - x, y.clamp(-d, d) - y, 0.0);
        let corner = way.x != 0.0 && way.y != 0.0;
        towards = if corner { way.normalize() } else { inwards(side) };
        (first_leg, stand_off) = (first, off);
    }
    let boom = support.boom.filter(|_| hung);
    let pitch = turned(boom.map_or(0.0, |boom| boom.pitch_deg));
    let left = Vector3::z().cross(&towards);
    let column = Point3::new(x, y, 0.0) - reach * towards;
    let clamp = pose.pivot.z - reach * pitch.y / pitch.x;
    let tail_end = boom.map(|boom| {
        column + Vector3::z() * clamp - boom.tail_mm * (pitch.x * towards + pitch.y * Vector3::z())
    });
    let foot = |leg: u32| {
        let at = turned(first_leg + f64::from(leg) * spacing) * support.foot_radius_mm;
        column + at.x * towards + at.y * left
    };
    Placed {
        feet: (0..support.leg_count).map(foot).collect(),
        highest: pose
            .body_top
            .max(pose.pivot.z)
            .max(clamp)
            .max(tail_end.map_or(f64::NEG_INFINITY, |end| end.z)),
        boom_length: reach / pitch.x,
        hung,
        boom,
        side,
        reach,
        towards,
        left,
        first_leg,
        stand_off,
        pitch,
        column,
        clamp,
        tail_end,
    }
}

/// Right, left, back and front walls.
fn walls(brief: &Brief) -> [f64; 4] {
    let bay = &brief.bay;
    [bay.right_mm, bay.left_mm, bay.back_mm, bay.front_mm].map(|wall| wall.unwrap_or(f64::INFINITY))
}

fn inside([right, left, back, front]: [f64; 4], place: &Point3<f64>) -> f64 {
    (right - place.x).min(left + place.x).min(back - place.y).min(front + place.y)
}

fn until([right, left, back, front]: [f64; 4], place: &Point3<f64>, way: &Vector2<f64>) -> f64 {
    [(way.x, right - place.x), (-way.x, left + place.x), (way.y, back - place.y), (-way.y, front + place.y)]
        .into_iter()
        .filter(|(towards, _)| *towards > 0.0)
        .map(|(towards, gap)| gap / towards)
        .fold(f64::INFINITY, f64::min)
}

/// Room of feet, tail, camera, ceiling, and behind the camera.
pub(crate) fn room(brief: &Brief, pose: &Pose, placed: &Placed) -> [f64; 5] {
    let walls = walls(brief);
    let back = pose.sensor - brief.camera.body_behind_mm * pose.forward;
    let camera =
        [back, pose.pupil, pose.pivot].iter().map(|place| inside(walls, place)).fold(f64::INFINITY, f64::min);
    let (w, d) = (0.5 * brief.table.width_mm, 0.5 * brief.table.depth_mm);
    let behind = Vector2::new(pose.right.y, -pose.right.x);
    let table = if from_table(brief, &back) < 0.0 { until([w, w, d, d], &back, &behind) } else { 0.0 };
    [
        placed.feet.iter().map(|foot| inside(walls, foot)).fold(f64::INFINITY, f64::min),
        placed.tail_end.map_or(f64::INFINITY, |end| inside(walls, &end)),
        camera,
        brief
            .bay
            .ceiling_mm
            .map_or(f64::INFINITY, |ceiling| ceiling - brief.bay.ceiling_clearance_mm - placed.highest),
        until(walls, &back, &behind) - table,
    ]
}

fn hidden(brief: &Brief, pose: &Pose, place: &Point3<f64>) -> Option<(f64, f64)> {
    let above = pose.pupil.z - brief.table.height_mm;
    let (mut least, mut most) = (0.0_f64, 1.0_f64);
    for (axis, half) in [(0, 0.5 * brief.table.width_mm), (1, 0.5 * brief.table.depth_mm)] {
        let (start, way) = (pose.pupil[axis], place[axis] - pose.pupil[axis]);
        if way != 0.0 {
            let (a, c) = ((-half - start) / way, (half - start) / way);
            (least, most) = (least.max(a.min(c)), most.min(a.max(c)));
        } else if start.abs() > half {
            return None;
        }
    }
    if above <= 0.0 || least >= most {
        return None;
    }
    let low = if least > 0.0 { pose.pupil.z - above / least } else { f64::NEG_INFINITY };
    Some((low, pose.pupil.z - above / most))
}

/// Lengths of column and boom in the picture.
pub(crate) fn in_picture(brief: &Brief, focused: &Focused, pose: &Pose, placed: &Placed) -> (f64, f64) {
    let top = placed.clamp.max(0.0);
    let radius = brief.support.column_radius_mm;
    let mut longest = 0.0_f64;
    for beside in [-radius, 0.0, radius] {
        let foot = placed.column + beside * pose.right;
        let pieces = match hidden(brief, pose, &foot) {
            Some((low, high)) => [(0.0, top.min(low)), (high.max(0.0), top)],
            None => [(0.0, top), (0.0, 0.0)],
        };
        let shown = |(low, high): (f64, f64)| {
            if low < high {
                shown_length(
                    focused,
                    pose,
                    &Point3::new(foot.x, foot.y, low),
                    &Point3::new(foot.x, foot.y, high),
                )
            } else {
                0.0
            }
        };
        longest = longest.max(pieces.into_iter().map(shown).sum());
    }
    (longest, placed.tail_end.map_or(0.0, |end| shown_length(focused, pose, &end, &pose.pivot)))
}

/// A weight: whether payload, counterweight or boom, its mass, and its place from the column in the rig's directions.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Kind {
    Payload,
    Boom,
    Counterweight,
    Stand,
}

pub(crate) type Weight = (Kind, f64, Vector3<f64>);

#[derive(Clone, Debug)]
pub(crate) struct Payload {
    pub(crate) mass: f64,
    pub(crate) ahead: f64,
    pub(crate) centre: Point3<f64>,
    pub(crate) head_moment: f64,
}

pub(crate) fn payload(brief: &Brief, pose: &Pose) -> Payload {
    let Brief { camera, lens, support, .. } = brief;
    let mass = camera.mass_kg + lens.mass_kg + support.head.mass_kg;
    let ahead = (camera.mass_kg * camera.centre_ahead_mm
        + lens.mass_kg * lens.centre_ahead_mm
        + support.head.mass_kg * camera.socket_ahead_mm)
        / mass;
    let centre = pose.sensor + ahead * pose.forward;
    let head_moment = mass * GRAVITY * (centre - pose.pivot).xy().norm() / 1000.0;
    Payload { mass, ahead, centre, head_moment }
}

pub(crate) fn weights(brief: &Brief, placed: &Placed, payload: &Payload) -> Vec<Weight> {
    let support = &brief.support;
    let off = payload.centre - placed.column;
    let mut found = vec![(
        Kind::Payload,
        payload.mass,
        Vector3::new(off.dot(&placed.towards), off.dot(&placed.left), off.z),
    )];
    if let Some(boom) = placed.boom {
        let along = |out: f64| Vector3::new(out * placed.pitch.x, 0.0, placed.clamp + out * placed.pitch.y);
        let arm = boom.counterweight_out_mm.unwrap_or(boom.tail_mm);
        found.push((Kind::Boom, boom.mass_kg, along(0.5 * (placed.boom_length - boom.tail_mm))));
        found.push((Kind::Counterweight, boom.counterweight_kg, along(-arm)));
    }
    found.push((Kind::Stand, support.mass_kg, Vector3::z() * support.centre_height_mm));
    found.push((Kind::Stand, support.base_mass_kg, Vector3::z() * support.base_height_mm));
    for bag in support.sandbags.iter().filter(|bag| bag.mass_kg > 0.0) {
        let at = turned(bag.direction_deg) * bag.out_mm;
        found.push((Kind::Stand, bag.mass_kg, Vector3::new(at.x, at.y, bag.height_mm)));
    }
    found
}

/// What the boom does: the six figures of its sag.
pub(crate) fn sag(
    brief: &Brief,
    focused: &Focused,
    placed: &Placed,
    payload: f64,
) -> Option<([f64; 5], Option<f64>)> {
    let boom = placed.boom?;
    let ei = match boom.stiffness? {
        Stiffness::Bending { bending_stiffness_n_m2 } => bending_stiffness_n_m2,
        Stiffness::Tube { tube_outside_mm: outside, tube_inside_mm: inside, tube_modulus_n_per_mm2 } => {
            std::f64::consts::PI / 64.0 * (outside.powi(4) - inside.powi(4)) * tube_modulus_n_per_mm2 / 1e6
        }
    };
    let l = placed.boom_length / 1000.0;
    let outer = boom.mass_kg * placed.boom_length / (placed.boom_length + boom.tail_mm);
    let (p, w) = (payload * GRAVITY * placed.pitch.x, outer * GRAVITY * placed.pitch.x / l);
    let down = (p * l.powi(3) / (3.0 * ei) + w * l.powi(4) / (8.0 * ei)) * 1000.0;
    let slope = p * l.powi(2) / (2.0 * ei) + w * l.powi(3) / (6.0 * ei);
    let frequency =
        (3.0 * ei / (l.powi(3) * (payload + 33.0 / 140.0 * outer))).sqrt() / std::f64::consts::TAU;
    let settling = boom
        .damping_ratio
        .map(|damping| -brief.criteria.settled_share.ln() / (damping * std::f64::consts::TAU * frequency));
    let shift = focused.sensor_distance * slope;
    Some(([down, down * placed.pitch.x, slope.to_degrees(), shift, frequency], settling))
}
