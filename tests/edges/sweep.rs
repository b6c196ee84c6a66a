//! Anything the ranges allow has a plan of numbers: none of them not a number, infinite only where the field
//! says so, and the same bits each time.

use std::collections::BTreeSet;

use proptest::prelude::*;
use tablerig::brief::{Brief, Criteria};
use tablerig::fault::FaultKind;
use tablerig::plan::{Plan, plan};
use tablerig::range;

use crate::briefs::{brief, studio_brief};
use crate::draws::{runs, whole};
use crate::fields::{FIELDS, Setter, full, setter};
use crate::workshop::numbers::{each_number, numbers};
use crate::workshop::{overhead, slanting};

/// What may be infinite, as its field's description says; a caution's value and limit with it.
const MAY_BE_INFINITE: &[&str] = &[
    "backdrop.width_mm",
    "backdrop.height_mm",
    "focus.depth_of_field.far_limit_mm",
    "focus.depth_of_field.behind_mm",
    "focus.f_number_needed",
    "focus.stack.step_mm",
    "tilt.hinge_distance_mm",
    "bay_room.feet_mm",
    "bay_room.tail_mm",
    "bay_room.camera_mm",
    "bay_room.ceiling_mm",
    "bay_room.behind_camera_mm",
    "stability.as_shot.factor",
    "stability.camera_off.factor",
    "stability.counterweight_off.factor",
    "stability.as_shot.push_to_tip_n",
    "stability.camera_off.push_to_tip_n",
    "stability.counterweight_off.push_to_tip_n",
    "stability.payload_to_tip_kg",
    "stability.payload_share",
    "sag.frequency_hz",
    "tolerance.up_mm",
    "tolerance.down_mm",
    "tolerance.away_mm",
    "tolerance.closer_mm",
    "cautions.SubjectNotHeld.limit_",
    "cautions.PayloadShare.value_",
    "cautions.PushToTip.value_n",
    // Next to the clamp itself, by less than a proton, no weight is enough.
    "ballast.counterweight_to_balance_kg",
    "cautions.NoRoomBehindCamera.value_mm",
];

/// The names of the numbers that should not be as they are.
fn wrong(plan: &Plan) -> BTreeSet<String> {
    let mut names = BTreeSet::new();
    each_number(plan, |name, value| {
        if value.is_nan() || (value.is_infinite() && !MAY_BE_INFINITE.contains(&name)) {
            names.insert(format!("{name} = {value}"));
        }
    });
    names
}

/// Every two fields at their ends, from overhead and slanting.
#[test]
fn the_ends_of_ranges_have_plans_of_numbers() {
    let ends = |field: &str| {
        let walls = ["bay.left_mm", "bay.right_mm", "bay.front_mm", "bay.back_mm"];
        let name = if walls.contains(&field) { "bay.wall" } else { field };
        let range = range::ALL.iter().find(|range| range.field == name).unwrap();
        [range.least, range.most]
    };
    let setters: Vec<(&str, Setter)> = FIELDS.iter().filter_map(setter).collect();
    let mut planned = 0;
    for base in [full(), slanting()] {
        for (index, (field, set)) in setters.iter().enumerate() {
            for (other, set_other) in &setters[index..] {
                for (value, value_other) in
                    ends(field).into_iter().flat_map(|value| ends(other).map(|other| (value, other)))
                {
                    let mut brief = base;
                    brief.subject.vessel = full().subject.vessel;
                    brief.support.boom = full().support.boom;
                    brief.subject.shape = full().subject.shape;
                    brief.subject.height_mm = brief.subject.height_mm.max(20.0);
                    set(&mut brief, value);
                    set_other(&mut brief, value_other);
                    match plan(&brief) {
                        Ok(plan) => {
                            let wrong = wrong(&plan);
                            assert!(
                                wrong.is_empty(),
                                "{field} = {value}, {other} = {value_other}: {wrong:?}"
                            );
                            planned += 1;
                        }
                        // Two ends may contradict each other; the counterweight hangs on the tail.
                        Err(fault) => {
                            let beyond_tail = fault.field.ends_with("counterweight_out_mm");
                            assert!(beyond_tail || fault.kind as i32 >= 200, "{fault}");
                        }
                    }
                }
            }
        }
    }
    assert!(planned > 25000, "{planned}");
}

/// Anything the ranges allow, the criteria among it.
fn whole_range_brief() -> BoxedStrategy<Brief> {
    let criteria = (whole("criteria.wanted_factor"), whole("criteria.settled_share"), any::<[bool; 3]>())
        .prop_map(|(wanted_factor, settled_share, states)| Criteria {
            wanted_factor,
            settled_share,
            hold_as_shot: states[0],
            hold_camera_off: states[1],
            hold_counterweight_off: states[2],
            ..Criteria::DEFAULT
        });
    (brief(whole), criteria).prop_map(|(brief, criteria)| Brief { criteria, ..brief }).boxed()
}

proptest! {
    #![proptest_config(runs(2000))]

    #[test]
    fn anything_allowed_has_a_plan_of_numbers(brief in whole_range_brief()) {
        match plan(&brief) {
            Ok(plan) => {
                let wrong = wrong(&plan);
                prop_assert!(wrong.is_empty(), "{wrong:?}");
            }
            // Drawn in range and in step: only a share of the frame may have no width, and the planes of a
            // lens focused nearer than it focuses may cross so far that there is no distance.
            Err(fault) if fault.field == "lens.principal_separation_mm" => {
                prop_assert_eq!(fault.kind, FaultKind::TooSmall);
            }
            Err(fault) => prop_assert_eq!(fault.kind, FaultKind::NoFrameWidth, "{}", fault),
        }
    }
}

proptest! {
    #![proptest_config(runs(200))]

    #[test]
    fn the_same_brief_has_the_same_bits(brief in studio_brief()) {
        let bits = |plan: &Plan| -> Vec<(String, u64)> {
            numbers(plan).into_iter().map(|(name, number)| (name, number.to_bits())).collect()
        };
        let first = bits(&plan(&brief).unwrap());
        // Another plan in between, were anything kept.
        let _ = plan(&overhead());
        prop_assert_eq!(first, bits(&plan(&brief).unwrap()));
    }
}
