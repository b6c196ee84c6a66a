//! Straight overhead is the limit of nearly overhead: no number of the plan jumps there.

use std::collections::BTreeMap;

use proptest::prelude::*;

use crate::briefs::{plan_of, studio_brief};
use crate::draws::runs;
use crate::workshop::numbers::numbers;

/// What the plan says in whole steps, or holds against a line that a camera may just cross: a side, an edge
/// that shows, an opening, a caution, the first of two edges alike, lengths that end at the frame's side;
/// legs' directions, which are told within one spacing. And what has no bound on its slope: the tilted lens's
/// hinge, and the sag of a slack boom.
const STEPS: &[&str] = &[
    "cautions",
    "removal",
    "support_in_picture",
    "bay_room.behind_camera_mm",
    "footprint.edges_in_frame",
    "focus.subject_held",
    "focus.f_number_to_hold",
    "focus.stack",
    "tilt.hinge_distance_mm",
    "overhead",
    "sag",
    "ballast.best_first_leg_deg",
    "ballast.worst_first_leg_deg",
];
const EDGES: &[&str] = &[
    "margin_edge",
    "factor_edge",
    "factor_edge_direction_deg",
    "restoring_moment_n_m",
    "overturning_moment_n_m",
];

proptest! {
    #![proptest_config(runs(300))]

    #[test]
    fn nothing_jumps_at_ninety_degrees(brief in studio_brief()) {
        let mut brief = brief;
        brief.shot.elevation_deg = 90.0;
        brief.shot.f_number.get_or_insert(8.0);
        let overhead = plan_of(&brief);
        // A wide enough lens sees the horizon from nearly overhead, and a subject at the lens anything.
        let near = overhead.subject_depth.nearest_mm > 0.5 * overhead.lens.pupil_distance_mm;
        if near || overhead.field_angles.diagonal_deg > 120.0 {
            return Ok(());
        }
        brief.shot.side = Some(overhead.placement.side);
        let overhead = plan_of(&brief);
        let at_90 = numbers(&overhead);
        for off in [1e-2, 1e-4, 1e-6, 1e-9] {
            brief.shot.elevation_deg = 90.0 - off;
            let nearly = plan_of(&brief);
            if nearly.placement.boom_used != overhead.placement.boom_used {
                continue;
            }
            let nearly: BTreeMap<String, f64> = numbers(&nearly).into_iter().collect();
            for (name, expected) in &at_90 {
                let last = name.rsplit('.').next().unwrap_or(name);
                if STEPS.iter().any(|step| name.starts_with(step)) || EDGES.contains(&last) {
                    continue;
                }
                let Some(found) = nearly.get(name).copied() else {
                    return Err(TestCaseError::fail(format!("{name} is gone at 90 - {off}")));
                };
                // About life size the distance stands still, and what keeps the frame's width has no bound.
                if name.starts_with("tolerance") && overhead.lens.magnification > 0.4 {
                    continue;
                }
                // Where next to nothing overturns, the factor has no bound: its reciprocal is what is steady.
                // And an f-number stands for a depth in pupil distances, m f / c times as small.
                let [found, expected] = if last == "factor" || last == "payload_to_tip_kg" {
                    [1.0 / found, 1.0 / expected]
                } else if last == "f_number_needed" {
                    let lens = &overhead.lens;
                    let share = overhead.focus.circle_of_confusion_mm / lens.focal_length_mm;
                    [found, *expected].map(|n| n * share / lens.magnification)
                } else {
                    [found, *expected]
                };
                // An angle moves a place by itself times metres; what hangs on it by a few times that.
                let metres = 1000.0 + overhead.lens.sensor_distance_mm + expected.abs();
                let allowed = off.to_radians() * 20.0 * metres + 1e-9;
                let agrees = (found - expected).abs() <= allowed || found == expected;
                prop_assert!(agrees, "{name} at 90 - {off}: {found} for {expected}");
            }
        }
    }
}
