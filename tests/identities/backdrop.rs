//! The backdrop, row by row of the picture: where each line of sight meets the upright plane behind the aim
//! point.

use proptest::prelude::*;

use crate::briefs::{plan_of, studio_brief};
use crate::draws::runs;
use crate::space::{agree, at, dot, minus, plus, way};

proptest! {
    #![proptest_config(runs(800))]

    #[test]
    fn the_backdrop_fills_every_row_that_looks_over_the_table(brief in studio_brief()) {
        let plan = plan_of(&brief);
        let Some(backdrop) = plan.backdrop else {
            prop_assert!(brief.shot.backdrop_behind_mm.is_none());
            return Ok(());
        };
        let behind = brief.shot.backdrop_behind_mm.unwrap();
        prop_assert_eq!(backdrop.behind_mm, behind);
        let (pupil, aim) = (at(plan.pose.pupil), at(plan.pose.aim));
        let right = way(plan.pose.right);
        let level = [-right[1], right[0], 0.0];
        let to_plane = dot(minus(aim, pupil), level) + behind;
        // For a row of the picture: half the width it needs, and the height above the table it meets.
        let met = |up: f64| {
            let sight = plus(minus(aim, pupil), way(plan.pose.up), up * plan.frame_height_mm);
            let go = to_plane / dot(sight, level);
            (go > 0.0 && go.is_finite() && to_plane > 0.0).then(|| {
                (0.5 * go * plan.frame_width_mm, pupil[2] + go * sight[2] - brief.table.height_mm)
            })
        };
        // A camera that hangs beyond the backdrop looks back at it, or not at all: another picture.
        if to_plane <= 1e-6 * plan.lens.pupil_distance_mm {
            return Ok(());
        }
        let rows = 400;
        let (mut seen, mut widest, mut highest) = (0, 0.0_f64, 0.0_f64);
        for row in 0..rows {
            match met((f64::from(row) + 0.5) / f64::from(rows) - 0.5) {
                Some((half, height)) if height >= 0.0 => {
                    seen += 1;
                    widest = widest.max(2.0 * half);
                    highest = highest.max(height);
                }
                // Under its foot, or it looks away from it: straight down and behind.
                _ => {}
            }
        }
        if met(0.5).is_none() && brief.shot.elevation_deg < 0.0 {
            // The top of the frame looks up past the upright: no size is enough.
            prop_assert!(backdrop.width_mm.is_infinite() && backdrop.height_mm.is_infinite());
            return Ok(());
        }
        agree("share", backdrop.share, f64::from(seen) / f64::from(rows), 1.01 / f64::from(rows))?;
        if backdrop.share == 0.0 {
            prop_assert!(backdrop.width_mm == 0.0 && backdrop.height_mm == 0.0 && seen == 0);
        } else if backdrop.width_mm.is_finite() {
            // What the rows see is filled; and the first and last row need it all.
            let eps = 1e-9 * (behind + plan.lens.pupil_distance_mm);
            prop_assert!(widest <= backdrop.width_mm + eps && highest <= backdrop.height_mm + eps);
            let (half, height) = met(0.5).unwrap();
            let foot = met(0.5 - backdrop.share).unwrap();
            let allowed = 1e-11 * (height.abs() + half + behind + plan.lens.pupil_distance_mm)
                * (1.0 + half / plan.frame_width_mm);
            agree("height", backdrop.height_mm, height, allowed)?;
            agree("width", backdrop.width_mm, 2.0 * half.max(foot.0), allowed)?;
            if backdrop.share < 1.0 {
                agree("foot", foot.1, 0.0, allowed + 1e-11 * foot.0)?;
            }
        }
    }
}
