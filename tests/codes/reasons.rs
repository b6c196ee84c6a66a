//! Reasons, orders of taking off and levels, each out of a plan; and lists of all that name all.

use tablerig::advice::AdviceReason;
use tablerig::brief::Brief;
use tablerig::caution::overhead::Removal;
use tablerig::fault::FaultKind;
use tablerig::plan::{Plan, plan};
use tablerig::scene::subject::{JudgedBy, Shape, Vessel};

use crate::sources::{all_reached, variants};
use crate::workshop::{overhead, slanting};

fn planned(change: impl FnOnce(&mut Brief)) -> Plan {
    let mut brief = overhead();
    change(&mut brief);
    plan(&brief).unwrap()
}

/// What is listed as all that there is, is all that stands in the source, in the same order.
#[test]
fn lists_of_all_leave_nothing_out() {
    let numbers = |file, name| variants(file, name).into_iter().map(|(_, number)| number).collect::<Vec<_>>();
    let listed: Vec<i32> = FaultKind::ALL.iter().map(|kind| *kind as i32).collect();
    assert_eq!(listed, numbers("src/fault.rs", "FaultKind"));
    let listed: Vec<i32> = AdviceReason::ALL.iter().map(|reason| *reason as i32).collect();
    assert_eq!(listed, numbers("src/advice.rs", "AdviceReason"));
    let listed: Vec<i32> = Removal::ALL.iter().map(|removal| *removal as i32).collect();
    assert_eq!(listed, numbers("src/caution/overhead.rs", "Removal"));
}

/// A host shows these sentences; two alike, or one without words, would tell it nothing.
#[test]
fn every_sentence_is_one_of_its_own() {
    let mut told: Vec<&str> = AdviceReason::ALL.iter().map(|reason| reason.sentence()).collect();
    told.extend(Removal::ALL.iter().map(|removal| removal.sentence()));
    assert!(told.iter().all(|text| text.ends_with('.') && text.split(' ').count() > 3), "{told:?}");
    told.extend(FaultKind::ALL.iter().map(|kind| kind.sentence()));
    assert!(told.iter().all(|text| text.split(' ').count() > 1), "{told:?}");
    let all = told.len();
    told.sort_unstable();
    told.dedup();
    assert_eq!(told.len(), all);
}

#[test]
fn every_reason_is_given_for_some_subject() {
    let mut reached = Vec::new();
    for height_mm in [0.0, 120.0, 300.0] {
        for judged_by in [
            JudgedBy::Form,
            JudgedBy::TopDetail,
            JudgedBy::SideLayers,
            JudgedBy::Contents,
            JudgedBy::ClearLayers,
            JudgedBy::DecoratedGlass,
            JudgedBy::LaidTable,
        ] {
            let advice = planned(|brief| {
                brief.subject.shape = Shape::Round { diameter_mm: 200.0 };
                brief.subject.height_mm = height_mm;
                brief.subject.judged_by = judged_by;
                if height_mm > 0.0 {
                    let contents_below_rim_mm = 40.0;
                    brief.subject.vessel = Some(Vessel { inside_diameter_mm: 180.0, contents_below_rim_mm });
                }
            })
            .advice;
            let given: Vec<AdviceReason> = advice.reasons.iter().flatten().copied().collect();
            // The weightiest first, none after a gap, none twice.
            let filled = advice.reasons.iter().take_while(|reason| reason.is_some()).count();
            assert!(given.len() == filled && given.len() >= 2, "{:?}", advice.reasons);
            let starts = given.iter().filter(|reason| **reason as i32 >= 10).count();
            assert_eq!((starts, *given.last().unwrap() as i32 >= 10), (1, true), "{given:?}");
            reached.extend(given.iter().map(|reason| *reason as i32));
        }
    }
    all_reached("src/advice.rs", "AdviceReason", reached);
}

/// A leg square to the boom. With a heavy base neither weight alone tips the stand; without one, a heavy camera and its counterweight each do.
#[test]
fn every_order_of_taking_off_is_told_of_some_stand() {
    let boomed = |base_kg: f64, camera_kg: f64, counterweight_kg: f64| {
        planned(|brief| {
            brief.support.base_mass_kg = base_kg;
            brief.support.first_leg_deg = Some(90.0);
            brief.camera.mass_kg = camera_kg;
            brief.support.boom.as_mut().unwrap().counterweight_kg = counterweight_kg;
        })
        .removal
    };
    let reached = [
        (boomed(10.0, 0.7, 0.0), Removal::NoCounterweight),
        (plan(&slanting()).unwrap().removal, Removal::NoCounterweight),
        // Next to nothing on the tail: without the camera the stand hardly feels it.
        (boomed(30.0, 0.7, 0.1), Removal::CameraFirst),
        (boomed(30.0, 0.7, 12.0), Removal::CounterweightFirst),
        (boomed(0.0, 20.0, 40.0), Removal::HoldBoth),
    ];
    for (found, expected) in reached {
        assert_eq!(found, expected);
    }
    all_reached("src/caution/overhead.rs", "Removal", reached.map(|(found, _)| found as i32));
}
