//! Questions about what stands, bends and is allowed.

use crate::rows::Row;
use tablerig::brief::Criteria;
use tablerig::caution::overhead::OVERHEAD_CAUTIONS;
use tablerig::range;
use tablerig::rig::ballast::{BallastWish, base_to_add_kg, longest_reach_mm};
use tablerig::rig::feet::Feet;
use tablerig::rig::reach::Placement;
use tablerig::rig::sag::{cantilever, first_frequency_hz};
use tablerig::rig::stability::{payload_to_tip, push_to_tip_n, standing};
use tablerig::rig::support::{MOST_LEGS, Stiffness};
use tablerig::rig::weights::{Loads, RigState, Weight};
use tablerig::scene::table::Side;
use tablerig::vector::{Direction, FloorPoint};

fn weight(mass_kg: f64, x_mm: f64, y_mm: f64) -> Weight {
    Weight { mass_kg, x_mm, y_mm, z_mm: 0.0 }
}

fn loads(payload: Weight, rest: &[Weight]) -> Loads {
    let none = weight(0.0, 0.0, 0.0);
    let mut all = Loads { payload, boom: none, counterweight: none, rest: [none; 6] };
    all.rest[..rest.len()].copy_from_slice(rest);
    all
}

/// A square base whose edges lie so far from the middle, all weights in a line across it.
fn line(row: &Row) -> (Feet, Loads) {
    let feet = Feet::new(4, row.of("half_base_mm") * f64::sqrt(2.0), 45.0);
    let at =
        |name: &str| weight(row.or_zero(&format!("{name}_kg")), row.or_zero(&format!("{name}_x_mm")), 0.0);
    (feet, loads(at("payload"), &[at("stand"), at("weight")]))
}

/// A placement of no consequence, for questions about moments alone.
fn nowhere() -> Placement {
    let origin = FloorPoint::ORIGIN;
    Placement {
        boom_used: true,
        side: Side::Front,
        column: origin,
        towards: Direction { x: 1.0, y: 0.0, z: 0.0 },
        stand_off_mm: 0.0,
        reach_mm: 0.0,
        reach_from_sides_mm: [0.0; 4],
        boom_length_mm: 0.0,
        clamp_height_mm: 0.0,
        tail_end: None,
        first_leg_deg: 0.0,
        leg_count: 4,
        feet: [origin; MOST_LEGS],
        highest_point_mm: 0.0,
    }
}

/// Reactions of the feet of an equilateral triangle: a foot's is the load's share of the height over the
/// edge that faces it.
fn foot_reaction_n(row: &Row, facing: usize) -> f64 {
    let side = row.of("side_mm");
    let (a, b) = (row.of("from_a_mm"), row.of("from_b_mm"));
    // A at the origin, B along x, the triangle's middle at its centroid.
    let x = (a * a - b * b + side * side) / (2.0 * side);
    let y = f64::sqrt(a * a - x * x);
    let height = side * f64::sqrt(3.0) / 2.0;
    let (x, y) = (x - side / 2.0, y - height / 3.0);
    // Feet at 90 (C), 210 (A) and 330 (B) degrees.
    let feet = Feet::new(3, height * 2.0 / 3.0, 90.0);
    let (_, edge) = feet.numbered().nth(facing).expect("an edge");
    row.of("load_n") * feet.inside_mm(edge, x, y) / height
}

/// Payload that tips a three-legged stand of 10 kg, its weight on the axis.
fn three_legs(row: &Row, off_leg_deg: f64, bag: Weight) -> f64 {
    let feet = Feet::new(3, row.of("foot_radius_mm"), off_leg_deg);
    payload_to_tip(&feet, &loads(weight(1.0, row.of("out_mm"), 0.0), &[weight(10.0, 0.0, 0.0), bag])).0
}

fn bending(row: &Row) -> (f64, f64) {
    let [p, w, l, ei] = ["end_load_n", "load_n_per_m", "length_m", "stiffness_n_m2"].map(|name| row.of(name));
    cantilever(p, w, l, ei)
}

fn middle_load(row: &Row) -> (f64, f64) {
    let half = 0.5 * row.of("length_m");
    let (deflection, slope) = cantilever(row.of("end_load_n"), 0.0, half, row.of("stiffness_n_m2"));
    (deflection + slope * half, slope)
}

/// The number after a word in a text.
fn number_after(text: &str, word: &str) -> f64 {
    let rest = text.split_once(word).unwrap_or_else(|| panic!("no {word} in: {text}")).1.trim_start();
    let digits: String = rest.chars().take_while(char::is_ascii_digit).collect();
    digits.parse().unwrap_or_else(|_| panic!("no number after {word} in: {text}"))
}

#[cfg(feature = "alloc")]
fn whole_pieces(row: &Row) -> Option<f64> {
    use tablerig::shoot::pieces::{PieceSize, whole_pieces};
    let size = PieceSize { mass_kg: row.of("piece_kg"), at_hand: None };
    let pieces = whole_pieces(row.of("needed_kg"), &[size]).expect("in range").expect("enough");
    Some(f64::from(pieces.counts[0]))
}

#[cfg(not(feature = "alloc"))]
fn whole_pieces(_: &Row) -> Option<f64> {
    None
}

fn criterion(name: &str) -> Option<f64> {
    let c = Criteria::DEFAULT;
    Some(match name {
        "payload_share_note" => c.payload_share_note,
        "payload_share_warn" => c.payload_share_warn,
        "payload_share_stop" => c.payload_share_stop,
        "factor_note" => c.factor_note,
        "factor_warn" => c.factor_warn,
        "factor_stop" => c.factor_stop,
        "springy_frequency_hz" => c.springy_frequency_hz,
        "springy_factor_warn" => c.springy_factor_warn,
        "tilt_warn_deg" => c.tilt_warn_deg,
        "tilt_stop_deg" => c.tilt_stop_deg,
        "tilt_public_warn_deg" => c.tilt_public_warn_deg,
        "push_share_warn" => c.push_share_warn,
        "push_most_n" => c.push_most_n,
        "push_height_most_mm" => c.push_height_most_mm,
        "people_rating_divisor" => c.people_rating_divisor,
        _ => return None,
    })
}

pub(crate) fn rigs(row: &Row) -> Option<f64> {
    if let Some(name) = row.quantity.strip_prefix("criteria_") {
        return criterion(name);
    }
    Some(match row.quantity.as_str() {
        "payload_to_tip_kg" => {
            let (feet, loads) = line(row);
            payload_to_tip(&feet, &loads).0
        }
        "payload_share" => {
            let (feet, loads) = line(row);
            payload_to_tip(&feet, &loads).1
        }
        "camera_off_factor" => {
            let (feet, loads) = line(row);
            standing(&feet, &loads, RigState::CameraOff, &nowhere(), 1.0).factor
        }
        "base_to_add_kg" => {
            let (feet, loads) = line(row);
            let wish = BallastWish { factor: row.of("factor"), states: [true, false, false] };
            base_to_add_kg(&feet, &loads, &wish)
        }
        "whole_pieces" => whole_pieces(row)?,
        "walk_out_mm" => {
            let (feet, loads) = line(row);
            // Walking out is a reach at which the factor is still 1.
            longest_reach_mm(&feet, &loads, 1.0, 0.0, 1e6).expect("some way") - row.of("half_base_mm")
        }
        // The edges run from C to A, from A to B, from B to C: each faces the foot that it leaves out.
        "second_foot_n" => foot_reaction_n(row, 0),
        "third_foot_n" => foot_reaction_n(row, 1),
        "table_rim_kg" => {
            let radius = row.of("foot_radius_mm");
            let feet = Feet::new(3, radius, 60.0);
            let at_rim = weight(1.0, radius, 0.0);
            payload_to_tip(&feet, &loads(at_rim, &[weight(row.of("table_kg"), 0.0, 0.0)])).0
        }
        "edge_from_column_mm" => {
            // How far one gets in that direction before the first edge.
            let feet = Feet::new(3, row.of("foot_radius_mm"), row.of("off_leg_deg"));
            feet.numbered()
                .filter(|(_, edge)| edge.x > 0.0)
                .map(|(_, edge)| feet.inside_mm(edge, 0.0, 0.0) / edge.x)
                .fold(f64::INFINITY, f64::min)
        }
        "off_leg_loss" => {
            let none = weight(0.0, 0.0, 0.0);
            1.0 - three_legs(row, row.of("off_leg_deg"), none) / three_legs(row, 0.0, none)
        }
        "sandbag_gain_kg" => {
            let (sin, cos) = row.of("bag_direction_deg").to_radians().sin_cos();
            let out = row.of("bag_out_mm");
            let bag = weight(row.of("bag_kg"), out * cos, out * sin);
            three_legs(row, 0.0, bag) - three_legs(row, 0.0, weight(0.0, 0.0, 0.0))
        }
        "weight_n" => push_to_tip_n(row.of("mass_kg"), 1.0, 1.0),
        "deflection_m" => bending(row).0,
        "slope" => bending(row).1,
        "middle_load_deflection_m" => middle_load(row).0,
        "middle_load_slope" => middle_load(row).1,
        "frequency_root_squared" => {
            2.0 * std::f64::consts::PI * first_frequency_hz(row.of("end_kg"), row.of("beam_kg"), 1.0, 1.0)
        }
        "modulus_n_per_mm2" => {
            let metal = if row.or_zero("steel") == 1.0 { "steel" } else { "aluminium" };
            assert_eq!(row.of(metal), 1.0);
            number_after(range::TUBE_MODULUS_N_PER_MM2.meaning, metal)
        }
        "tube_stiffness_n_m2" => Stiffness::Tube {
            tube_outside_mm: row.of("outside_mm"),
            tube_inside_mm: row.of("inside_mm"),
            tube_modulus_n_per_mm2: row.of("modulus_n_per_mm2"),
        }
        .bending_stiffness_n_m2(),
        "tether_slack_mm" => number_after(&OVERHEAD_CAUTIONS.join(" "), "at most"),
        _ => return None,
    })
}
