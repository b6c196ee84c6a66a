//! Briefs as a workshop asks them, drawn by a seeded lot: a kitchen, a shelf of jars, a plate from above. Everything
//! in them is invented.

use tablerig::brief::{Brief, Framing, Shot};
use tablerig::optics::camera::Camera;
use tablerig::optics::lens::Lens;
use tablerig::optics::sensor::{Aspect, Hold};
use tablerig::rig::support::{Boom, Sandbag, Stiffness, Support};
use tablerig::scene::bay::Bay;
use tablerig::scene::subject::{JudgedBy, Shape, Subject, Vessel};

use crate::workshop;

/// Splitmix64 (Steele, Lea and Flood 2014): a stream of numbers from a seed.
pub(crate) struct Lot(u64);

impl Lot {
    pub(crate) fn new(seed: u64) -> Lot {
        Lot(seed)
    }

    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    fn between(&mut self, least: f64, most: f64) -> f64 {
        least + (most - least) * ((self.next() >> 11) as f64 / (1_u64 << 53) as f64)
    }

    /// As somebody would write it: to the tenth.
    fn told(&mut self, least: f64, most: f64) -> f64 {
        libm::round(10.0 * self.between(least, most)) / 10.0
    }

    fn chance(&mut self, share: f64) -> bool {
        self.between(0.0, 1.0) < share
    }

    fn one<T: Copy>(&mut self, of: &[T]) -> T {
        of[(self.next() % of.len() as u64) as usize]
    }

    fn maybe<T>(&mut self, share: f64, value: impl FnOnce(&mut Lot) -> T) -> Option<T> {
        if self.chance(share) { Some(value(self)) } else { None }
    }
}

/// How the camera stands: shares of the mix.
#[derive(Clone, Copy, PartialEq)]
enum Kind {
    Overhead,
    Angled,
    Level,
}

/// A brief of the mix: four in ten straight overhead, four and a half at an angle, the rest level.
pub(crate) fn brief(lot: &mut Lot) -> Brief {
    let share = lot.between(0.0, 1.0);
    let kind = match share {
        _ if share < 0.4 => Kind::Overhead,
        _ if share < 0.85 => Kind::Angled,
        _ => Kind::Level,
    };
    let camera = camera(lot);
    let subject = subject(lot, kind);
    Brief {
        shot: shot(lot, kind),
        lens: lens(lot),
        camera,
        subject,
        support: support(lot, kind),
        bay: bay(lot),
        ..workshop::overhead()
    }
}

/// A batch of them.
pub(crate) fn briefs(count: usize) -> Vec<Brief> {
    let mut lot = Lot::new(7);
    (0..count).map(|_| brief(&mut lot)).collect()
}

fn shot(lot: &mut Lot, kind: Kind) -> Shot {
    let elevation = match kind {
        Kind::Overhead => 90.0,
        Kind::Angled => lot.told(12.0, 80.0),
        Kind::Level => lot.one(&[0.0, 0.0, 2.0, 5.0]),
    };
    let width = lot.told(150.0, 900.0);
    let framed = lot.between(0.0, 1.0);
    Shot {
        bearing_deg: if lot.chance(0.6) { 0.0 } else { lot.told(-60.0, 60.0) },
        framing: match framed {
            _ if framed < 0.03 => Framing::FillWidth(lot.between(0.3, 0.7)),
            _ if framed < 0.05 => Framing::FillHeight(lot.between(0.3, 0.6)),
            _ => Framing::FrameWidthMm(width),
        },
        hold: if lot.chance(0.25) { Hold::Upright } else { Hold::Across },
        delivered_aspect: lot.maybe(0.4, |lot| {
            let (width, height) = lot.one(&[(4.0, 5.0), (1.0, 1.0), (16.0, 9.0)]);
            Aspect { width, height }
        }),
        aim_x_mm: if lot.chance(0.5) { 0.0 } else { lot.told(-200.0, 200.0) },
        aim_y_mm: if lot.chance(0.5) { 0.0 } else { lot.told(-150.0, 150.0) },
        f_number: lot.maybe(0.4, |lot| lot.one(&[4.0, 5.6, 8.0, 11.0, 16.0])),
        backdrop_behind_mm: lot
            .maybe(if kind == Kind::Overhead { 0.0 } else { 0.4 }, |lot| lot.told(300.0, 1500.0)),
        ..Shot::new(elevation, width)
    }
}

fn camera(lot: &mut Lot) -> Camera {
    let (sensor_width_mm, sensor_height_mm) =
        lot.one(&[(36.0, 24.0), (36.0, 24.0), (23.5, 15.6), (43.8, 32.9)]);
    Camera {
        sensor_width_mm,
        sensor_height_mm,
        circle_of_confusion_mm: lot.maybe(0.3, |lot| lot.one(&[0.02, 0.025, 0.03])),
        mass_kg: lot.told(0.4, 1.5),
        ..workshop::camera()
    }
}

fn lens(lot: &mut Lot) -> Lens {
    let focal_length_mm = lot.one(&[24.0, 35.0, 50.0, 60.0, 90.0, 105.0]);
    let (closest_focus_mm, largest_magnification) = lot.one(&[
        (None, None),
        (Some(6.0 * focal_length_mm), Some(0.25)),
        (Some(3.5 * focal_length_mm), Some(1.0)),
    ]);
    Lens {
        closest_focus_mm,
        largest_magnification,
        pupil_ratio: lot.one(&[1.0, 0.8, 1.3]),
        mass_kg: lot.told(0.2, 1.2),
        ..workshop::lens(focal_length_mm)
    }
}

fn subject(lot: &mut Lot, kind: Kind) -> Subject {
    let (across, deep) = (lot.told(40.0, 300.0), lot.told(40.0, 300.0));
    let height_mm = if kind == Kind::Overhead { lot.told(0.0, 90.0) } else { lot.told(20.0, 250.0) };
    let round = lot.chance(0.5);
    let narrow = if round { across } else { across.min(deep) };
    let vessel = lot.maybe(0.35, |lot| Vessel {
        inside_diameter_mm: 0.9 * narrow,
        contents_below_rim_mm: height_mm * lot.between(0.05, 0.6),
    });
    Subject {
        shape: if round {
            Shape::Round { diameter_mm: across }
        } else {
            Shape::Box { width_mm: across, depth_mm: deep }
        },
        height_mm,
        vessel: vessel.filter(|vessel| vessel.contents_below_rim_mm > 0.0),
        judged_by: lot.one(&[
            JudgedBy::Form,
            JudgedBy::Form,
            JudgedBy::TopDetail,
            JudgedBy::SideLayers,
            JudgedBy::Contents,
            JudgedBy::ClearLayers,
            JudgedBy::LaidTable,
        ]),
    }
}

/// Overhead and half the angled ones hang from a boom; the rest stand on a tripod.
fn support(lot: &mut Lot, kind: Kind) -> Support {
    let hung = kind == Kind::Overhead || kind == Kind::Angled && lot.chance(0.5);
    let stand = if hung { workshop::stand() } else { workshop::tripod() };
    let bag = |lot: &mut Lot| Sandbag {
        mass_kg: lot.one(&[5.0, 7.0, 10.0]),
        out_mm: lot.told(0.0, 450.0),
        direction_deg: lot.one(&[180.0, 120.0, -120.0, 60.0]),
        height_mm: 150.0,
    };
    let [first, second] = [lot.maybe(0.3, bag), lot.maybe(0.15, bag)].map(|bag| bag.unwrap_or(Sandbag::NONE));
    Support {
        leg_count: if lot.chance(0.85) { 3 } else { lot.one(&[4, 5]) },
        first_leg_deg: lot.maybe(0.15, |lot| lot.told(-60.0, 60.0)),
        sandbags: [first, second, Sandbag::NONE, Sandbag::NONE],
        boom: stand.boom.map(|boom| Boom {
            longest_reach_mm: lot.told(900.0, 1600.0),
            pitch_deg: if lot.chance(0.7) { 0.0 } else { lot.told(-10.0, 25.0) },
            counterweight_kg: lot.one(&[0.0, 2.5, 4.0, 7.0]),
            counterweight_out_mm: lot.maybe(0.3, |_| 400.0),
            stiffness: lot.maybe(0.8, |lot| match lot.chance(0.5) {
                true => Stiffness::Bending { bending_stiffness_n_m2: lot.told(800.0, 4000.0) },
                false => boom.stiffness.unwrap_or(Stiffness::Bending { bending_stiffness_n_m2: 2000.0 }),
            }),
            damping_ratio: lot.maybe(0.6, |_| 0.02),
            ..boom
        }),
        ..stand
    }
}

fn bay(lot: &mut Lot) -> Bay {
    if lot.chance(0.35) {
        return Bay::OPEN;
    }
    Bay {
        left_mm: Some(lot.told(1200.0, 3000.0)),
        right_mm: Some(lot.told(1200.0, 3000.0)),
        front_mm: Some(lot.told(1800.0, 3500.0)),
        back_mm: lot.maybe(0.8, |lot| lot.told(900.0, 2500.0)),
        ceiling_mm: Some(lot.told(2300.0, 3200.0)),
        ceiling_clearance_mm: 50.0,
        person_room_mm: 600.0,
        floor_slope_percent: lot.one(&[0.0, 0.0, 0.5, 1.5]),
        ..Bay::OPEN
    }
}
