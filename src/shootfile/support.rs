//! The rows of a support: column and legs, head, boom and its stiffness, sandbags.

use std::format;
use std::prelude::rust_2024::*;

use super::field::{Field, give, set};
use super::gear::NOTE;
use super::problem::{Problem, ProblemKind};
use super::reading::Reading;
use super::tree::{Entry, Value};
use crate::range;
use crate::rig::support::{Boom, Head, MOST_SANDBAGS, Sandbag, Stiffness, Support};

const NOT_RATED: &str = "not checked";

pub(crate) const BLANK_SUPPORT: Support = Support {
    lowest_pivot_mm: 0.0,
    highest_pivot_mm: 0.0,
    column_radius_mm: 0.0,
    leg_count: 0,
    foot_radius_mm: 0.0,
    legs_top_mm: 0.0,
    first_leg_deg: None,
    table_clearance_mm: 0.0,
    mass_kg: 0.0,
    centre_height_mm: 0.0,
    base_mass_kg: 0.0,
    base_height_mm: 0.0,
    sandbags: [Sandbag::NONE; MOST_SANDBAGS],
    rated_load_kg: None,
    head: BLANK_HEAD,
    boom: None,
};

pub(crate) static SUPPORT: &[Field<Support>] = &[
    Field::number(range::LOWEST_PIVOT_MM, set!(Support, lowest_pivot_mm)),
    Field::number(range::HIGHEST_PIVOT_MM, set!(Support, highest_pivot_mm)),
    Field::number(range::COLUMN_RADIUS_MM, set!(Support, column_radius_mm)),
    Field::whole(range::LEG_COUNT, set!(Support, leg_count)),
    Field::number(range::FOOT_RADIUS_MM, set!(Support, foot_radius_mm)),
    Field::number(range::LEGS_TOP_MM, set!(Support, legs_top_mm)),
    Field::number(range::FIRST_LEG_DEG, give!(Support, first_leg_deg))
        .otherwise("a leg under the boom; without one the gap faces the table"),
    Field::number(range::TABLE_CLEARANCE_MM, set!(Support, table_clearance_mm)).otherwise("0"),
    Field::number(range::SUPPORT_MASS_KG, set!(Support, mass_kg)),
    Field::number(range::SUPPORT_CENTRE_HEIGHT_MM, set!(Support, centre_height_mm)),
    Field::number(range::BASE_MASS_KG, set!(Support, base_mass_kg)).otherwise("0"),
    Field::number(range::BASE_HEIGHT_MM, set!(Support, base_height_mm)).otherwise("0, on the floor"),
    Field::number(range::RATED_LOAD_KG, give!(Support, rated_load_kg)).otherwise(NOT_RATED),
    Field::part("head", "the head between boom or column and camera", head),
    Field::part("boom", "a boom across the column", boom).otherwise("no boom"),
    Field::part("sandbags", "up to four bags where they hang, as a list of tables", sandbags)
        .otherwise("no bags"),
    Field::text("note", NOTE, |_: &mut Support, _| {}).otherwise("none"),
];

const BLANK_HEAD: Head =
    Head { mass_kg: 0.0, pivot_below_socket_mm: 0.0, rated_load_kg: None, rated_moment_n_m: None };

pub(crate) static HEAD: &[Field<Head>] = &[
    Field::number(range::HEAD_MASS_KG, set!(Head, mass_kg)),
    Field::number(range::PIVOT_BELOW_SOCKET_MM, set!(Head, pivot_below_socket_mm)),
    Field::number(range::HEAD_RATED_LOAD_KG, give!(Head, rated_load_kg)).otherwise(NOT_RATED),
    Field::number(range::HEAD_RATED_MOMENT_N_M, give!(Head, rated_moment_n_m)).otherwise(NOT_RATED),
];

const BLANK_BOOM: Boom = Boom {
    longest_reach_mm: 0.0,
    tail_mm: 0.0,
    mass_kg: 0.0,
    pitch_deg: 0.0,
    counterweight_kg: 0.0,
    counterweight_out_mm: None,
    stiffness: None,
    damping_ratio: None,
    rated_load_kg: None,
    rated_clamp_moment_n_m: None,
};

pub(crate) static BOOM: &[Field<Boom>] = &[
    Field::number(range::LONGEST_REACH_MM, set!(Boom, longest_reach_mm)),
    Field::number(range::TAIL_MM, set!(Boom, tail_mm)),
    Field::number(range::BOOM_MASS_KG, set!(Boom, mass_kg)),
    Field::number(range::PITCH_DEG, set!(Boom, pitch_deg)).otherwise("0, level"),
    Field::number(range::COUNTERWEIGHT_KG, set!(Boom, counterweight_kg)).otherwise("0"),
    Field::number(range::COUNTERWEIGHT_OUT_MM, give!(Boom, counterweight_out_mm)).otherwise("the tail's end"),
    Field::part("stiffness", "how stiff the boom is in bending", stiffness)
        .otherwise("no sag and no swing computed"),
    Field::number(range::DAMPING_RATIO, give!(Boom, damping_ratio)).otherwise("no waiting time computed"),
    Field::number(range::BOOM_RATED_LOAD_KG, give!(Boom, rated_load_kg)).otherwise(NOT_RATED),
    Field::number(range::RATED_CLAMP_MOMENT_N_M, give!(Boom, rated_clamp_moment_n_m)).otherwise(NOT_RATED),
];

/// A stiffness while it is being read.
#[derive(Debug, Default)]
pub(crate) struct StiffnessDraft {
    bending_stiffness_n_m2: Option<f64>,
    tube_outside_mm: Option<f64>,
    tube_inside_mm: Option<f64>,
    tube_modulus_n_per_mm2: Option<f64>,
}

const STIFF: &str =
    "give bending_stiffness_n_m2, or tube_outside_mm, tube_inside_mm and tube_modulus_n_per_mm2";

pub(crate) static STIFFNESS: &[Field<StiffnessDraft>] = &[
    Field::number(range::BENDING_STIFFNESS_N_M2, give!(StiffnessDraft, bending_stiffness_n_m2)).among(STIFF),
    Field::number(range::TUBE_OUTSIDE_MM, give!(StiffnessDraft, tube_outside_mm)).among(STIFF),
    Field::number(range::TUBE_INSIDE_MM, give!(StiffnessDraft, tube_inside_mm)).among(STIFF),
    Field::number(range::TUBE_MODULUS_N_PER_MM2, give!(StiffnessDraft, tube_modulus_n_per_mm2)).among(STIFF),
];

pub(crate) static SANDBAG: &[Field<Sandbag>] = &[
    Field::number(range::SANDBAG_MASS_KG, set!(Sandbag, mass_kg)),
    Field::number(range::SANDBAG_OUT_MM, set!(Sandbag, out_mm)),
    Field::number(range::SANDBAG_DIRECTION_DEG, set!(Sandbag, direction_deg)),
    Field::number(range::SANDBAG_HEIGHT_MM, set!(Sandbag, height_mm)),
];

fn head(reading: &mut Reading, whose: &str, entry: &Entry, support: &mut Support) {
    let whose = format!("the head of {whose}");
    reading.table(&whose, &entry.key_span, &entry.node, HEAD, &mut support.head);
}

fn boom(reading: &mut Reading, whose: &str, entry: &Entry, support: &mut Support) {
    let mut boom = BLANK_BOOM;
    let whose = format!("the boom of {whose}");
    if reading.table(&whose, &entry.key_span, &entry.node, BOOM, &mut boom) {
        support.boom = Some(boom);
    }
}

fn stiffness(reading: &mut Reading, whose: &str, entry: &Entry, boom: &mut Boom) {
    let mut draft = StiffnessDraft::default();
    let whose = format!("the stiffness of {whose}");
    if !reading.table(&whose, &entry.key_span, &entry.node, STIFFNESS, &mut draft) {
        return;
    }
    let tube = (draft.tube_outside_mm, draft.tube_inside_mm, draft.tube_modulus_n_per_mm2);
    boom.stiffness = match (draft.bending_stiffness_n_m2, tube) {
        (Some(bending_stiffness_n_m2), (None, None, None)) => {
            Some(Stiffness::Bending { bending_stiffness_n_m2 })
        }
        (None, (Some(tube_outside_mm), Some(tube_inside_mm), Some(tube_modulus_n_per_mm2))) => {
            Some(Stiffness::Tube { tube_outside_mm, tube_inside_mm, tube_modulus_n_per_mm2 })
        }
        _ => {
            let title = format!("{whose} is given by EI, or by a whole tube");
            let problem =
                Problem::new(ProblemKind::Conflicting, title, entry.key_span.clone(), "not one of the two");
            reading.report(problem.help(STIFF));
            None
        }
    };
}

fn sandbags(reading: &mut Reading, whose: &str, entry: &Entry, support: &mut Support) {
    let Value::List(bags) = &entry.node.value else {
        let label = format!("this is {}", entry.node.value.kind());
        let problem = Problem::new(
            ProblemKind::WrongKind,
            "`sandbags` is a list of tables",
            entry.node.span.clone(),
            label,
        );
        reading.report(problem.help("in TOML each bag has its own [[support.NAME.sandbags]]"));
        return;
    };
    if let Some(extra) = bags.get(MOST_SANDBAGS) {
        let title = format!("{whose} has {} sandbags", bags.len());
        let label = format!("no more than {MOST_SANDBAGS} can be told apart");
        reading.report(Problem::new(ProblemKind::TooMany, title, extra.span.clone(), label));
    }
    for (index, (bag, place)) in bags.iter().zip(&mut support.sandbags).enumerate() {
        let whose = format!("sandbag {} of {whose}", index + 1);
        reading.table(&whose, &bag.span, bag, SANDBAG, place);
    }
}
