//! On the set: a measured shot against its plan, and corrections that lead back to it.

use tablerig::brief::Brief;
use tablerig::plan::{Plan, plan};
use tablerig::shoot::onset::{Deviation, OnSet, Verdict, on_set};
use tablerig::tolerance::{Measured, Measurement};

use crate::briefs::Seeded;
use crate::workshop;

fn exactly(value: f64) -> Measurement {
    Measurement { value, uncertainty: 0.0 }
}

/// Measured by heights and level distance, the sensor off its planned place.
fn set(plan: &Plan, up_mm: f64, away_mm: f64, uncertainty: f64) -> Measured {
    let with = |value: f64| Measurement { value, uncertainty };
    Measured::HeightAndDistance {
        sensor_height_mm: with(plan.pose.sensor.z_mm + up_mm),
        aim_height_above_floor_mm: exactly(plan.pose.aim.z_mm),
        horizontal_distance_mm: with(plan.pose.sensor_from_aim_mm + away_mm),
    }
}

fn against(brief: &Brief, measured: &Measured) -> OnSet {
    on_set(&brief.shot, &brief.lens, &plan(brief).unwrap(), measured, None).unwrap()
}

#[test]
fn corrections_lead_back_to_the_plan() {
    let mut seeded = Seeded::new(2);
    for _ in 0..200 {
        let mut brief = workshop::slanting();
        brief.shot.elevation_deg = seeded.between(-20.0, 88.0);
        let plan = plan(&brief).unwrap();
        let x = plan.pose.sensor_from_aim_mm;
        let (up, away) = (seeded.between(-60.0, 60.0), seeded.between(-60.0_f64.min(x), 60.0));
        let found = against(&brief, &set(&plan, up, away.max(-x), 0.0));
        // Within the rounding of places some metres off.
        approx::assert_abs_diff_eq!(found.correction.up_mm, -up, epsilon = 1e-9);
        approx::assert_abs_diff_eq!(found.correction.away_mm, -away.max(-x), epsilon = 1e-9);
        let real = found.real.elevation_deg.value;
        approx::assert_abs_diff_eq!(
            real + found.correction.look_down_deg,
            brief.shot.elevation_deg,
            epsilon = 1e-12
        );
        let corrected = set(&plan, up + found.correction.up_mm, away.max(-x) + found.correction.away_mm, 0.0);
        let again = against(&brief, &corrected);
        assert_eq!(again.verdict, Verdict::Inside);
        assert!(again.frame_width_share.off.abs() < 1e-12 && again.elevation_deg.off.abs() < 1e-10);
    }
}

#[test]
fn signs_as_a_hand_would_move_it() {
    let brief = workshop::slanting();
    let plan = plan(&brief).unwrap();
    // Set too high and too far: down and closer; too high looks down too steeply: look up again.
    let found = against(&brief, &set(&plan, 30.0, 0.0, 0.0));
    assert!(found.elevation_deg.off > 0.0 && found.correction.look_down_deg < 0.0);
    approx::assert_abs_diff_eq!(found.correction.up_mm, -30.0, epsilon = 1e-9);
    let found = against(&brief, &set(&plan, 0.0, 30.0, 0.0));
    assert!(found.frame_width_share.off > 0.0);
    approx::assert_abs_diff_eq!(found.correction.away_mm, -30.0, epsilon = 1e-9);
}

#[test]
fn the_tolerances_of_the_plan_are_where_the_verdict_turns() {
    for brief in [workshop::slanting(), workshop::overhead()] {
        let plan = plan(&brief).unwrap();
        let t = plan.tolerance;
        for (up, away) in [(t.up_mm, 0.0), (-t.down_mm, 0.0), (0.0, t.away_mm)] {
            // A millionth on either side: the tolerances are exact but for rounding.
            let at = |share: f64| against(&brief, &set(&plan, share * up, share * away, 0.0)).verdict;
            assert_eq!(at(1.0 - 1e-6), Verdict::Inside, "{up} {away}");
            assert_eq!(at(1.0 + 1e-6), Verdict::Outside, "{up} {away}");
        }
    }
}

#[test]
fn uncertainty_makes_it_undecided() {
    let verdict = |off, uncertainty| Deviation::new(off, uncertainty, 1.0).verdict;
    assert_eq!(verdict(0.5, 0.2), Verdict::Inside);
    assert_eq!(verdict(0.5, 0.25), Verdict::Inside);
    assert_eq!(verdict(-0.5, 0.26), Verdict::Undecided);
    assert_eq!(verdict(1.5, 0.25), Verdict::Undecided);
    assert_eq!(verdict(-1.5, 0.24), Verdict::Outside);
    assert_eq!(verdict(0.0, f64::INFINITY), Verdict::Undecided);
    let brief = workshop::slanting();
    let plan = plan(&brief).unwrap();
    assert_eq!(against(&brief, &set(&plan, 0.0, 0.0, 2.0)).verdict, Verdict::Inside);
    assert_eq!(against(&brief, &set(&plan, 0.0, 0.0, 20.0)).verdict, Verdict::Undecided);
    assert_eq!(against(&brief, &set(&plan, 200.0, 0.0, 20.0)).verdict, Verdict::Outside);
}

#[test]
fn roll_counts_where_it_was_measured() {
    let brief = workshop::overhead();
    let plan = plan(&brief).unwrap();
    let rolled = |roll: f64, uncertainty: f64| {
        let roll = Some(Measurement { value: roll, uncertainty });
        on_set(&brief.shot, &brief.lens, &plan, &set(&plan, 0.0, 0.0, 0.0), roll)
    };
    let found = rolled(0.8, 0.1).unwrap();
    assert_eq!(found.verdict, Verdict::Outside);
    assert_eq!(found.correction.roll_deg, -0.8);
    assert_eq!(rolled(-0.1, 0.1).unwrap().verdict, Verdict::Inside);
    assert_eq!(rolled(0.4, 0.1).unwrap().verdict, Verdict::Undecided);
    assert_eq!(rolled(f64::NAN, 0.1).unwrap_err().field, "measured.roll_deg");
    assert_eq!(rolled(0.0, -0.1).unwrap_err().field, "measured.uncertainty_deg");
}
