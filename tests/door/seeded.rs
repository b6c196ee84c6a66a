//! Seeded briefs over everything that a brief can say, leaning towards trouble: overhead, level, ends of
//! ranges, a heavy load on a light stand.

use tablerig::brief::{Brief, Criteria, Framing, Shot};
use tablerig::optics::sensor::{Aspect, Hold};
use tablerig::range::{self, Range};
use tablerig::rig::support::{Boom, Sandbag, Stiffness};
use tablerig::scene::bay::Bay;
use tablerig::scene::subject::{JudgedBy, Shape, Subject, Vessel};
use tablerig::scene::table::{Side, Underside};

use crate::workshop;

/// Splitmix64 (Steele, Lea and Flood 2014).
pub(crate) struct Seeded(u64);

impl Seeded {
    pub(crate) fn new(seed: u64) -> Seeded {
        Seeded(seed)
    }

    pub(crate) fn word(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    pub(crate) fn below(&mut self, count: usize) -> usize {
        (self.word() % count as u64) as usize
    }

    /// From `least` to `most`.
    fn between(&mut self, least: f64, most: f64) -> f64 {
        // 53 bits are a whole number that a float holds exactly.
        least + (most - least) * ((self.word() >> 11) as f64 / (1_u64 << 53) as f64)
    }

    fn yes(&mut self) -> bool {
        self.below(2) == 1
    }

    /// Around what a studio has, now and then anywhere in the range or at its ends.
    fn near(&mut self, range: Range, usual: f64) -> f64 {
        match self.below(12) {
            0 => range.least,
            1 => range.most,
            2 => self.between(range.least, range.most),
            _ => (usual * self.between(0.5, 1.5)).clamp(range.least, range.most),
        }
    }

    fn maybe(&mut self, range: Range, usual: f64) -> Option<f64> {
        if self.yes() { Some(self.near(range, usual)) } else { None }
    }
}

/// A brief; some are refused for fields that contradict each other.
pub(crate) fn brief(of: &mut Seeded) -> Brief {
    let mut brief = workshop::overhead();
    brief.shot = shot(of);
    let camera = &mut brief.camera;
    camera.sensor_width_mm = of.near(range::SENSOR_WIDTH_MM, 36.0);
    camera.sensor_height_mm = of.near(range::SENSOR_HEIGHT_MM, 24.0);
    camera.circle_of_confusion_mm = of.maybe(range::CIRCLE_OF_CONFUSION_MM, 0.03);
    camera.mass_kg = of.near(range::CAMERA_MASS_KG, 0.8);
    camera.body_behind_mm = of.near(range::BODY_BEHIND_MM, 40.0);
    let lens = &mut brief.lens;
    lens.focal_length_mm = of.near(range::FOCAL_LENGTH_MM, 70.0);
    lens.pupil_ratio = of.near(range::PUPIL_RATIO, 1.0);
    lens.principal_separation_mm = of.near(range::PRINCIPAL_SEPARATION_MM, 5.0);
    lens.closest_focus_mm = of.maybe(range::CLOSEST_FOCUS_MM, 8.0 * lens.focal_length_mm);
    lens.largest_magnification = of.maybe(range::LARGEST_MAGNIFICATION, 0.3);
    lens.front_from_sensor_mm = of.maybe(range::FRONT_FROM_SENSOR_MM, 110.0);
    lens.largest_tilt_deg = of.near(range::LARGEST_TILT_DEG, 8.0);
    let table = &mut brief.table;
    table.width_mm = of.near(range::TABLE_WIDTH_MM, 1200.0);
    table.depth_mm = of.near(range::TABLE_DEPTH_MM, 800.0);
    table.height_mm = of.near(range::TABLE_HEIGHT_MM, 750.0);
    table.underside = [Underside::Open, Underside::Closed][of.below(2)];
    brief.subject = subject(of);
    support(of, &mut brief);
    brief.bay = bay(of);
    brief.criteria = Criteria {
        wanted_factor: of.near(range::WANTED_FACTOR, 2.0),
        hold_counterweight_off: of.yes(),
        ..Criteria::DEFAULT
    };
    brief
}

fn shot(of: &mut Seeded) -> Shot {
    let elevation = [-60.0, 0.0, 45.0, 89.999, 90.0][of.below(5)];
    let elevation_deg = if of.yes() { elevation } else { of.between(-60.0, 90.0) };
    let width = of.near(range::FRAME_WIDTH_MM, 500.0);
    let framing = match of.below(6) {
        0 => Framing::FillWidth(of.near(range::FILL_WIDTH, 0.6)),
        1 => Framing::FillHeight(of.near(range::FILL_HEIGHT, 0.6)),
        _ => Framing::FrameWidthMm(width),
    };
    let mut aspect =
        || Aspect { width: of.near(range::ASPECT_SIDE, 4.0), height: of.near(range::ASPECT_SIDE, 5.0) };
    let aspect = aspect();
    Shot {
        framing,
        bearing_deg: of.near(range::BEARING_DEG, 90.0),
        hold: [Hold::Across, Hold::Upright][of.below(2)],
        delivered_aspect: if of.yes() { Some(aspect) } else { None },
        aim_x_mm: of.near(range::AIM_X_MM, 100.0),
        aim_y_mm: of.near(range::AIM_Y_MM, -100.0),
        aim_height_mm: of.maybe(range::AIM_HEIGHT_MM, 50.0),
        f_number: of.maybe(range::F_NUMBER, 8.0),
        focus_on_table: of.yes(),
        backdrop_behind_mm: of.maybe(range::BACKDROP_BEHIND_MM, 800.0),
        side: [None, Some(Side::Front), Some(Side::Right), Some(Side::Back), Some(Side::Left)][of.below(5)],
        stack_overlap: of.near(range::STACK_OVERLAP, 0.3),
        ..Shot::new(elevation_deg, width)
    }
}

fn subject(of: &mut Seeded) -> Subject {
    let diameter_mm = of.near(range::SUBJECT_DIAMETER_MM, 120.0);
    let shape = if of.yes() {
        Shape::Round { diameter_mm }
    } else {
        Shape::Box { width_mm: of.near(range::SUBJECT_WIDTH_MM, 200.0), depth_mm: diameter_mm }
    };
    let height_mm = of.near(range::SUBJECT_HEIGHT_MM, 110.0);
    let inside_diameter_mm = of.between(0.5, 1.0) * diameter_mm;
    let vessel = Vessel { inside_diameter_mm, contents_below_rim_mm: of.between(0.0, 1.0) * height_mm };
    let judged = [JudgedBy::Form, JudgedBy::TopDetail, JudgedBy::SideLayers, JudgedBy::Contents];
    Subject {
        shape,
        height_mm,
        vessel: if of.yes() { Some(vessel) } else { None },
        judged_by: judged[of.below(4)],
    }
}

fn support(of: &mut Seeded, brief: &mut Brief) {
    if of.below(3) == 0 {
        brief.support = workshop::tripod();
    }
    let support = &mut brief.support;
    support.leg_count = 3 + of.below(6) as u32;
    support.foot_radius_mm = of.near(range::FOOT_RADIUS_MM, 500.0);
    support.first_leg_deg = of.maybe(range::FIRST_LEG_DEG, 45.0);
    support.base_mass_kg = of.near(range::BASE_MASS_KG, 10.0);
    support.rated_load_kg = of.maybe(range::RATED_LOAD_KG, 10.0);
    let direction_deg = of.between(-360.0, 360.0);
    support.sandbags[of.below(4)] = Sandbag { mass_kg: 7.0, out_mm: 300.0, direction_deg, height_mm: 200.0 };
    let stiffness = match of.below(3) {
        0 => None,
        1 => Some(Stiffness::Bending {
            bending_stiffness_n_m2: of.near(range::BENDING_STIFFNESS_N_M2, 3000.0),
        }),
        _ => Some(Stiffness::Tube {
            tube_outside_mm: 35.0,
            tube_inside_mm: of.between(0.0, 36.0),
            tube_modulus_n_per_mm2: 69000.0,
        }),
    };
    if let Some(boom) = &mut support.boom {
        *boom = Boom {
            pitch_deg: of.near(range::PITCH_DEG, 10.0),
            mass_kg: of.near(range::BOOM_MASS_KG, 1.5),
            counterweight_kg: of.near(range::COUNTERWEIGHT_KG, 4.0),
            counterweight_out_mm: if of.yes() { Some(of.between(0.0, boom.tail_mm)) } else { None },
            stiffness,
            damping_ratio: of.maybe(range::DAMPING_RATIO, 0.02),
            ..*boom
        };
    }
}

fn bay(of: &mut Seeded) -> Bay {
    Bay {
        left_mm: of.maybe(range::WALL_MM, 2000.0),
        right_mm: of.maybe(range::WALL_MM, 2000.0),
        front_mm: of.maybe(range::WALL_MM, 2500.0),
        back_mm: of.maybe(range::WALL_MM, 1500.0),
        ceiling_mm: of.maybe(range::CEILING_MM, 2600.0),
        person_room_mm: of.near(range::PERSON_ROOM_MM, 600.0),
        floor_slope_percent: of.near(range::FLOOR_SLOPE_PERCENT, 1.0),
        public_passes: of.yes(),
        people_under: of.yes(),
        ..Bay::OPEN
    }
}
