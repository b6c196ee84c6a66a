//! Seeded briefs, leaning towards what cannot be done.

use tablerig::brief::{Brief, Framing};
use tablerig::optics::lens::Lens;
use tablerig::scene::bay::Bay;
use tablerig::scene::subject::{Shape, Subject};

use crate::workshop;

/// Splitmix64 (Steele, Lea and Flood 2014): a stream of numbers from a seed.
pub(crate) struct Seeded(u64);

impl Seeded {
    pub(crate) fn new(seed: u64) -> Seeded {
        Seeded(seed)
    }

    pub(crate) fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// From `least` up to, not including, `most`.
    pub(crate) fn between(&mut self, least: f64, most: f64) -> f64 {
        // The upper 53 bits are a whole number that a float holds exactly.
        least + (most - least) * ((self.next() >> 11) as f64 / (1_u64 << 53) as f64)
    }

    pub(crate) fn below(&mut self, count: usize) -> usize {
        (self.next() % count as u64) as usize
    }

    pub(crate) fn chance(&mut self, share: f64) -> bool {
        self.between(0.0, 1.0) < share
    }
}

/// A lens of a maker's list: unit focusing, or with both its closest focus and largest magnification.
pub(crate) fn lens(seeded: &mut Seeded) -> Lens {
    let focal_length_mm = [24.0, 35.0, 50.0, 60.0, 90.0, 105.0, 135.0][seeded.below(7)];
    let lens = workshop::lens(focal_length_mm);
    match seeded.below(3) {
        0 => lens,
        1 => Lens { closest_focus_mm: Some(8.0 * focal_length_mm), ..lens },
        _ => {
            Lens { closest_focus_mm: Some(6.0 * focal_length_mm), largest_magnification: Some(0.25), ..lens }
        }
    }
}

/// A shot somewhere between straight-on and overhead, in a low and narrow bay, on a stand that may be too
/// short or too light; half of them with one or two of these faults at most.
pub(crate) fn brief(seeded: &mut Seeded) -> Brief {
    let mut brief = workshop::overhead();
    let mild = seeded.chance(0.5);
    let harsh = |seeded: &mut Seeded| !mild || seeded.chance(0.2);
    let shot = &mut brief.shot;
    shot.elevation_deg = if seeded.chance(0.3) { 90.0 } else { seeded.between(0.0, 90.0) };
    shot.bearing_deg = if seeded.chance(0.5) { 0.0 } else { seeded.between(0.0, 360.0) };
    shot.framing = Framing::FrameWidthMm(seeded.between(120.0, if mild { 900.0 } else { 1500.0 }));
    shot.aim_x_mm = seeded.between(-300.0, 300.0);
    shot.aim_height_mm = None;
    shot.f_number = None;
    brief.subject = Subject {
        shape: Shape::Round { diameter_mm: seeded.between(40.0, 250.0) },
        height_mm: seeded.between(0.0, 200.0),
        ..workshop::flat_subject()
    };
    if seeded.chance(0.15) {
        brief.shot.framing = Framing::FillWidth(seeded.between(0.1, 0.6));
    }
    brief.lens = lens(seeded);
    if seeded.chance(0.3) {
        brief.support = workshop::tripod();
    }
    let support = &mut brief.support;
    support.lowest_pivot_mm = seeded.between(200.0, 800.0);
    if harsh(seeded) {
        support.highest_pivot_mm = seeded.between(1500.0, 3200.0);
    }
    if harsh(seeded) {
        support.base_mass_kg = if seeded.chance(0.5) { 0.0 } else { seeded.between(0.0, 15.0) };
        support.foot_radius_mm = seeded.between(350.0, 600.0);
    }
    if let Some(boom) = &mut support.boom {
        boom.pitch_deg = if seeded.chance(0.5) { 0.0 } else { seeded.between(0.0, 25.0) };
        if harsh(seeded) {
            boom.counterweight_kg = seeded.between(0.0, 8.0);
        }
        if harsh(seeded) {
            boom.longest_reach_mm = seeded.between(200.0, 1500.0);
        }
    }
    let widen = if mild { 2000.0 } else { 0.0 };
    brief.bay = Bay {
        front_mm: Some(widen + seeded.between(900.0, 3500.0)),
        back_mm: Some(widen + seeded.between(700.0, 3000.0)),
        left_mm: Some(widen + seeded.between(900.0, 3000.0)),
        right_mm: Some(widen + seeded.between(900.0, 3000.0)),
        ceiling_mm: if seeded.chance(0.7) { Some(seeded.between(2000.0, 3500.0)) } else { None },
        ceiling_clearance_mm: 50.0,
        person_room_mm: 400.0,
        ..Bay::OPEN
    };
    brief
}
