//! What shows of a vessel's contents: the overlap of two circles in its limits, and against lines of sight.

use proptest::prelude::*;
use tablerig::advice::{CONTENTS_SHARE, advice, elevation_for_contents_deg};
use tablerig::scene::subject::{JudgedBy, Shape, Subject, Vessel};
use tablerig::view::outline::{contents_from_far, contents_visible, shares, top_share};
use tablerig::view::pose::Orientation;

use crate::briefs::{plan_of, studio_brief, subject, vessel};
use crate::draws::{runs, studio, whole};
use crate::space::{agree, at, minus, plus};

fn far(vessel: &Vessel, elevation_deg: f64) -> f64 {
    let (sin, cos) = elevation_deg.to_radians().sin_cos();
    contents_from_far(vessel, sin, cos)
}

/// From a distance in the elevation's direction from the middle of the rim.
fn seen(vessel: &Vessel, elevation_deg: f64, distance: f64) -> f64 {
    let (sin, cos) = elevation_deg.to_radians().sin_cos();
    contents_visible(vessel, distance * cos, distance * sin)
}

proptest! {
    #![proptest_config(runs(500))]

    /// Point by point of the contents: does the line of sight pass inside the rim?
    #[test]
    fn what_shows_is_what_lines_of_sight_reach(
        vessel in vessel(studio),
        elevation in 3.0..90.0_f64,
        distance in 60.0..3000.0_f64,
    ) {
        let (sin, cos) = elevation.to_radians().sin_cos();
        let (level, above) = (distance * cos, distance * sin);
        let radius = 0.5 * vessel.inside_diameter_mm;
        let below = vessel.contents_below_rim_mm;
        // Where the line from (x, y) on the contents to the pupil passes the rim's plane.
        let share = below / (below + above);
        let steps = 60;
        let (mut disc, mut open) = (0, 0);
        for i in 0..steps {
            for j in 0..steps {
                let at = |k: i32| radius * (f64::from(2 * k + 1) / f64::from(steps) - 1.0);
                let (x, y) = (at(i), at(j));
                if x.hypot(y) < radius {
                    disc += 1;
                    open += u32::from((x + share * (level - x)).hypot(y * (1.0 - share)) < radius);
                }
            }
        }
        let counted = f64::from(open) / f64::from(disc);
        // The edge of a circle on 60 x 60 points: a few points in three thousand each way, twice.
        agree("share", seen(&vessel, elevation, distance), counted, 1e-2)?;
    }

    /// The same for a planned shot, the vessel standing where it stands in the room.
    #[test]
    fn a_plan_sees_into_the_vessel_as_its_pupil_does(brief in studio_brief()) {
        let plan = plan_of(&brief);
        let Some(vessel) = brief.subject.vessel else {
            prop_assert!(plan.shares.contents.is_none() && plan.shares.contents_from_far.is_none());
            return Ok(());
        };
        let rim = brief.table.height_mm + brief.subject.height_mm;
        let contents = rim - vessel.contents_below_rim_mm;
        let pupil = at(plan.pose.pupil);
        let radius = 0.5 * vessel.inside_diameter_mm;
        let steps = 60;
        let (mut disc, mut open) = (0, 0);
        for i in 0..steps {
            for j in 0..steps {
                let [x, y] = [i, j].map(|k| radius * (f64::from(2 * k + 1) / f64::from(steps) - 1.0));
                let place = [brief.shot.aim_x_mm + x, brief.shot.aim_y_mm + y, contents];
                if x.hypot(y) < radius {
                    disc += 1;
                    let met = plus(place, minus(pupil, place), (rim - contents) / (pupil[2] - contents));
                    let beside = (met[0] - brief.shot.aim_x_mm).hypot(met[1] - brief.shot.aim_y_mm);
                    open += u32::from(pupil[2] > rim && beside < radius);
                }
            }
        }
        let counted = f64::from(open) / f64::from(disc);
        agree("share", plan.shares.contents.unwrap(), counted, 1e-2)?;
        let from_far = far(&vessel, brief.shot.elevation_deg.max(0.0));
        agree("from far", plan.shares.contents_from_far.unwrap(), from_far, 1e-9)?;
    }

    #[test]
    fn from_ever_further_off_it_becomes_the_view_from_far(
        vessel in vessel(studio),
        elevation in 0.5..90.0_f64,
    ) {
        let limit = far(&vessel, elevation);
        let size = vessel.inside_diameter_mm + vessel.contents_below_rim_mm;
        for distance in [1e3, 1e5, 1e7, 1e9] {
            // The nearer rim is larger by depth / height of the pupil; what shows grows no faster than four
            // times that.
            let nearer = vessel.contents_below_rim_mm / (distance * size * elevation.to_radians().sin());
            let found = seen(&vessel, elevation, distance * size);
            agree("share", found, limit, 4.0 * nearer + 1e-14)?;
        }
    }

    #[test]
    fn nothing_and_everything_are_the_limits(
        vessel in vessel(whole),
        elevation in whole("shot.elevation_deg"),
    ) {
        let share = far(&vessel, elevation);
        prop_assert!((0.0..=1.0).contains(&share));
        for distance in [1.0, 1e3, 1e6] {
            prop_assert!((0.0..=1.0).contains(&seen(&vessel, elevation, distance)));
        }
        let brim = Vessel { contents_below_rim_mm: 0.0, ..vessel };
        if elevation > 0.0 {
            agree("full to the brim", far(&brim, elevation), 1.0, 2.3e-16)?;
            agree("full to the brim", seen(&brim, elevation, 500.0), 1.0, 2.3e-16)?;
        } else {
            prop_assert_eq!(share, 0.0);
        }
        agree("overhead", contents_from_far(&vessel, 1.0, 0.0), 1.0, 2.3e-16)?;
        prop_assert_eq!(contents_visible(&vessel, 0.0, 500.0), 1.0);
        // The line of sight over the near rim meets the foot of the far wall: from here down nothing shows.
        let hidden = (vessel.contents_below_rim_mm / vessel.inside_diameter_mm).atan().to_degrees();
        agree("hidden", far(&vessel, hidden * 0.999_999), 0.0, 0.0)?;
    }

    #[test]
    fn higher_shows_more(
        vessel in vessel(whole),
        low in 0.0..90.0_f64,
        high in 0.0..90.0_f64,
        distance in 1.0..1e6_f64,
    ) {
        let (low, high) = (low.min(high), low.max(high));
        prop_assert!(far(&vessel, high) >= far(&vessel, low) - 1e-15);
        // Seen from one level distance, higher up.
        let above = |elevation: f64| distance * elevation.to_radians().tan();
        let from = |elevation: f64| contents_visible(&vessel, distance, above(elevation));
        // Next to full view both come to 1 from their own roundings.
        prop_assert!(from(high) >= from(low) - 1e-14, "{} {}", from(high), from(low));
    }

    #[test]
    fn the_elevation_for_a_share_shows_that_share(vessel in vessel(whole), share in 0.01..0.99_f64) {
        let elevation = elevation_for_contents_deg(&vessel, share);
        // Next to 90 degrees the angle's own last digit counts against the small cosine.
        let cos = elevation.to_radians().cos();
        if vessel.contents_below_rim_mm > 0.0 {
            agree("share", far(&vessel, elevation), share, 1e-13 + 1e-15 / cos)?;
        } else {
            prop_assert_eq!(elevation, 0.0);
        }
    }

    #[test]
    fn the_advice_on_contents_is_the_elevation_for_its_shares(vessel in vessel(whole)) {
        let subject = Subject {
            shape: Shape::Round { diameter_mm: 1e4 },
            height_mm: 1e4,
            vessel: Some(vessel),
            judged_by: JudgedBy::Contents,
        };
        let advice = advice(&subject, 0.0);
        let half = advice.half_contents_from_deg.unwrap();
        // Two roundings of an angle up to 90.
        agree("half", half, elevation_for_contents_deg(&vessel, 0.5), 3e-14)?;
        let most = elevation_for_contents_deg(&vessel, CONTENTS_SHARE).max(advice.least_deg);
        agree("three quarters", advice.start_deg, most, 3e-14)?;
    }

    #[test]
    fn top_and_side_are_alike_where_the_advice_says(
        subject in subject(studio),
        bearing in studio("shot.bearing_deg"),
    ) {
        let advice = advice(&subject, bearing);
        if subject.height_mm > 0.0 {
            let found = top_share(&subject, &Orientation::new(advice.half_top_from_deg, bearing));
            agree("top", found, 0.5, 1e-14)?;
        }
        let start = Orientation::new(advice.start_deg, bearing);
        agree("at the start", advice.top_share_at_start, top_share(&subject, &start), 0.0)?;
        prop_assert!(advice.least_deg <= advice.start_deg && advice.start_deg <= advice.most_deg);
        let shown = shares(&subject, 0.0, &start, 1000.0);
        agree("top and side", shown.top + shown.side, 1.0, 2.3e-16)?;
        // The limits: nothing of the top from level, nothing of the side from overhead.
        prop_assert_eq!(top_share(&subject, &Orientation::new(0.0, bearing)), 0.0);
        prop_assert_eq!(top_share(&subject, &Orientation::new(90.0, bearing)), 1.0);
    }
}

/// A box's side by its silhouette: what its upright edges span across the line of sight.
#[test]
fn a_boxs_side_is_as_wide_as_its_corners_span() {
    let subject = Subject {
        shape: Shape::Box { width_mm: 120.0, depth_mm: 50.0 },
        height_mm: 80.0,
        vessel: None,
        judged_by: JudgedBy::Form,
    };
    for bearing in [0.0_f64, 20.0, 90.0, 130.0, 215.0, 270.0] {
        let (sin, cos) = bearing.to_radians().sin_cos();
        let across =
            [(60.0, 25.0), (60.0, -25.0), (-60.0, 25.0), (-60.0, -25.0)].map(|(x, y)| x * cos + y * sin);
        let span = across.iter().fold(0.0_f64, |most, place| most.max(*place)) * 2.0;
        let (sin, cos) = 30.0_f64.to_radians().sin_cos();
        let expected = sin * 6000.0 / (sin * 6000.0 + cos * span * 80.0);
        let found = top_share(&subject, &Orientation::new(30.0, bearing));
        agree("top", found, expected, 1e-15).unwrap();
    }
}
