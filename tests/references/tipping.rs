//! Tipping against a physics engine (MuJoCo): the value that stood and the value that tipped, some 0.04 %
//! apart, beside the library's threshold.

use crate::briefs::brief;
use crate::rows::{Table, Tally};
use tablerig::brief::Brief;
use tablerig::plan::{Plan, plan};

/// Rigs simulated.
pub(crate) const RIGS: usize = 72;
/// Half the bracket, and what stiff contacts that are not rigid add to it.
pub(crate) const WITHIN: f64 = 1e-3;

fn planned(brief: &Brief) -> Plan {
    plan(brief).unwrap_or_else(|fault| panic!("{fault}"))
}

/// The counterweight with which the rig falls backwards once the camera is off: where the library's margin
/// changes its sign.
fn counterweight_to_tip_camera_off_kg(brief: &Brief) -> f64 {
    let stands = |kg: f64| {
        let mut weighted = *brief;
        weighted.support.boom.as_mut().expect("a boom").counterweight_kg = kg;
        planned(&weighted).stability.camera_off.margin_mm > 0.0
    };
    let (mut low, mut high) = (0.0, 500.0);
    assert!(stands(low) && !stands(high));
    for _ in 0..60 {
        let middle = 0.5 * (low + high);
        if stands(middle) {
            low = middle;
        } else {
            high = middle;
        }
    }
    low
}

pub(crate) fn run() -> Tally {
    let briefs = Table::new(include_str!("tipping/briefs.tsv"));
    let brackets = Table::new(include_str!("tipping/brackets.tsv"));
    let mut tally = Tally::default();
    let rigs: Vec<_> = briefs
        .rows()
        .map(|row| {
            assert_eq!(row.word("kind"), "tipping");
            (row.word("case"), brief(&row))
        })
        .collect();
    assert_eq!(rigs.len(), RIGS);
    for row in brackets.rows() {
        let (case, quantity) = (row.word("case"), row.word("quantity"));
        let (_, brief) = rigs.iter().find(|(name, _)| *name == case).expect("a rig");
        let stability = planned(brief).stability;
        let stood = match quantity {
            "camera_off_stands" => Some(stability.camera_off.margin_mm > 0.0),
            "counterweight_off_stands" => Some(stability.counterweight_off.margin_mm > 0.0),
            _ => None,
        };
        if let Some(stood) = stood {
            assert_eq!(row.word("tips"), "");
            let right = row.flag("stands") == stood;
            tally.note(quantity, if right { 0.0 } else { f64::INFINITY }, case);
            continue;
        }
        let got = match quantity {
            "payload_to_tip_kg" => stability.payload_to_tip_kg,
            "tilt_to_tip_deg" => stability.as_shot.tilt_to_tip_deg,
            "push_to_tip_n" => stability.as_shot.push_to_tip_n,
            "counterweight_to_tip_camera_off_kg" => counterweight_to_tip_camera_off_kg(brief),
            _ => panic!("no quantity {quantity}"),
        };
        let (stands, tips) = (row.number("stands"), row.number("tips"));
        assert!(stands < tips && tips < stands * 1.0005, "{quantity} in rig {case} is not bracketed");
        // The engine's threshold lies between the two.
        tally.note(quantity, (got / stands - 1.0).abs().max((got / tips - 1.0).abs()), case);
    }
    briefs.all_asked();
    brackets.all_asked();
    tally
}

#[test]
fn seventy_two_rigs() {
    let tally = run();
    for (name, error, count, case) in tally.entries() {
        println!("{name:36} {error:9.1e} {count:6} worst in {case}");
        assert!(error <= WITHIN, "{name} is off by {error:e} in rig {case}");
    }
    for name in ["payload_to_tip_kg", "tilt_to_tip_deg", "push_to_tip_n", "camera_off_stands"] {
        assert_eq!(tally.count(name), RIGS, "{name}");
    }
    assert_eq!(tally.count("counterweight_to_tip_camera_off_kg"), 14);
}
