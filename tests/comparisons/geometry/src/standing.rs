//! Whether it stands, in straightforward Rust over nalgebra's vectors.

use nalgebra::{Point3, Vector2};
use tablerig::brief::Brief;

use crate::rig::{GRAVITY, Kind, Placed, Weight};

#[derive(Clone, Debug)]
pub(crate) struct Standing {
    pub(crate) mass: f64,
    pub(crate) centre: Point3<f64>,
    pub(crate) margin: f64,
    pub(crate) factor: f64,
    pub(crate) restoring: f64,
    pub(crate) overturning: f64,
    pub(crate) tilt: f64,
    pub(crate) push: f64,
    pub(crate) clamp_moment: f64,
}

#[derive(Clone, Debug)]
pub(crate) struct Stability {
    /// As shot, camera off, counterweight off.
    pub(crate) states: [Standing; 3],
    pub(crate) to_tip: f64,
    pub(crate) share: f64,
}

/// The edges' outward directions, and how far out they lie.
pub(crate) fn edges(brief: &Brief, placed: &Placed) -> (Vec<Vector2<f64>>, f64) {
    let count = brief.support.leg_count;
    let spacing = 360.0 / f64::from(count);
    let edge = |index: u32| {
        let (sin, cos) = (placed.first_leg + (f64::from(index) + 0.5) * spacing).to_radians().sin_cos();
        Vector2::new(cos, sin)
    };
    let apothem = brief.support.foot_radius_mm * (0.5 * spacing).to_radians().cos();
    ((0..count).map(edge).collect(), apothem)
}

const OFF: [Option<Kind>; 3] = [None, Some(Kind::Payload), Some(Kind::Counterweight)];

fn about<'a>(edge: &Vector2<f64>, apothem: f64, weights: impl Iterator<Item = &'a Weight>) -> (f64, f64) {
    let (mut restoring, mut overturning) = (0.0, 0.0);
    for (_, mass, place) in weights {
        let moment = mass * (apothem - place.xy().dot(edge));
        if moment > 0.0 { restoring += moment } else { overturning -= moment }
    }
    (restoring, overturning)
}

fn standing(
    (edges, apothem): (&[Vector2<f64>], f64),
    weights: &[Weight],
    off: Option<Kind>,
    placed: &Placed,
    height: f64,
) -> Standing {
    let on = || weights.iter().filter(move |weight| Some(weight.0) != off);
    let mass: f64 = on().map(|weight| weight.1).sum();
    let centre = on().map(|weight| weight.1 * weight.2).sum::<nalgebra::Vector3<f64>>() / mass;
    let mut margin = f64::INFINITY;
    let (mut factor, mut at) = (f64::INFINITY, None);
    let mut at_margin = (0.0, 0.0);
    for edge in edges {
        let (restoring, overturning) = about(edge, apothem, on());
        if (restoring - overturning) / mass < margin {
            margin = (restoring - overturning) / mass;
            at_margin = (restoring, overturning);
        }
        if overturning > 0.0 && restoring / overturning < factor {
            factor = restoring / overturning;
            at = Some((restoring, overturning));
        }
    }
    let (restoring, overturning) = at.unwrap_or(at_margin);
    let loose = on().filter(|weight| weight.0 != Kind::Stand);
    let moment = loose.map(|weight| weight.1 * weight.2.xy()).sum::<Vector2<f64>>().norm() * GRAVITY / 1000.0;
    let mut place = placed.column + centre.x * placed.towards + centre.y * placed.left;
    place.z = centre.z;
    Standing {
        mass,
        centre: place,
        margin,
        factor,
        restoring: restoring * GRAVITY / 1000.0,
        overturning: overturning * GRAVITY / 1000.0,
        tilt: margin.atan2(centre.z).to_degrees(),
        push: if height > 0.0 { mass * GRAVITY * margin / height } else { f64::INFINITY },
        clamp_moment: if placed.hung { moment } else { 0.0 },
    }
}

pub(crate) fn stability(
    edges: (&[Vector2<f64>], f64),
    weights: &[Weight],
    placed: &Placed,
    height: f64,
) -> Stability {
    let payload = &weights[0];
    let mut to_tip = f64::INFINITY;
    for edge in edges.0 {
        let outside = payload.2.xy().dot(edge) - edges.1;
        if outside > 0.0 {
            let (restoring, overturning) =
                about(edge, edges.1, weights.iter().filter(|weight| weight.0 != Kind::Payload));
            to_tip = to_tip.min((restoring - overturning).max(0.0) / outside);
        }
    }
    Stability {
        states: OFF.map(|off| standing(edges, weights, off, placed, height)),
        to_tip,
        share: payload.1 / to_tip,
    }
}

/// Weight to add to the base, and the counterweight that balances.
pub(crate) fn ballast(
    brief: &Brief,
    (edges, apothem): (&[Vector2<f64>], f64),
    weights: &[Weight],
    placed: &Placed,
) -> (f64, Option<f64>) {
    let criteria = &brief.criteria;
    let asked = [criteria.hold_as_shot, criteria.hold_camera_off, criteria.hold_counterweight_off];
    let mut add = 0.0_f64;
    for (off, _) in OFF.into_iter().zip(asked).filter(|(_, asked)| *asked) {
        for edge in edges {
            let on = weights.iter().filter(|weight| Some(weight.0) != off);
            let (restoring, overturning) = about(edge, apothem, on);
            add = add.max((criteria.wanted_factor * overturning - restoring) / apothem);
        }
    }
    let balance = placed.boom.map(|boom| {
        let arm = boom.counterweight_out_mm.unwrap_or(boom.tail_mm) * placed.pitch.x;
        let hung = weights.iter().filter(|weight| matches!(weight.0, Kind::Payload | Kind::Boom));
        (hung.map(|weight| weight.1 * weight.2.x).sum::<f64>() / arm).max(0.0)
    });
    (add, balance)
}
