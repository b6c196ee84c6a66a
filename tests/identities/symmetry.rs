//! A mirrored studio has the mirrored plan, and a studio turned by a quarter the turned one.

use std::collections::BTreeMap;

use proptest::prelude::*;
use tablerig::brief::Brief;
use tablerig::plan::Plan;
use tablerig::scene::subject::Shape;
use tablerig::scene::table::Side;

use crate::briefs::{plan_of, studio_brief};
use crate::draws::runs;
use crate::workshop::numbers::numbers;

/// Which edge of the feet comes first of two that are alike depends on where one begins to count.
const COUNTED: &[&str] = &[
    "margin_edge",
    "factor_edge",
    "factor_edge_direction_deg",
    "restoring_moment_n_m",
    "overturning_moment_n_m",
];

/// Numbers by name, as the mirrored or turned studio should have them; `None` for what is not compared.
type Image = fn(&str, f64, &BTreeMap<String, f64>) -> Option<f64>;

fn table_of(plan: &Plan) -> BTreeMap<String, f64> {
    numbers(plan).into_iter().collect()
}

fn compare(original: &Plan, image: &Plan, expected: Image) -> Result<(), TestCaseError> {
    // About to tip, rounding decides what is warned of.
    let stability = &original.stability;
    let states = [&stability.as_shot, &stability.camera_off, &stability.counterweight_off];
    let on_the_fence = states.iter().any(|state| state.margin_mm.abs() < 1e-6);
    let decided = |name: &str| name.starts_with("cautions") || name == "removal";
    let [original, image] = [original, image].map(|plan| {
        let mut all = table_of(plan);
        all.retain(|name, _| !on_the_fence || !decided(name));
        all
    });
    prop_assert!(original.len() == image.len(), "not the same numbers given");
    for (name, found) in &image {
        let last = name.rsplit('.').next().unwrap_or(name);
        if COUNTED.contains(&last) {
            continue;
        }
        let Some(expected) = expected(name, *found, &original) else { continue };
        // Rounding of places metres from the origin, of angles, and of moments of hundreds of newton metres.
        let allowed = 1e-10 + 1e-10 * expected.abs();
        let agrees = (found - expected).abs() <= allowed || *found == expected;
        prop_assert!(agrees, "{name}: {found} for {expected}");
    }
    Ok(())
}

/// The number under another name.
fn named(original: &BTreeMap<String, f64>, name: &str) -> Option<f64> {
    original.get(name).copied()
}

/// A side that decides nothing by a tie: the one chosen is named where another would do as well.
fn settled(mut brief: Brief) -> Brief {
    let placement = plan_of(&brief).placement;
    let near = |reach: &f64| (reach - placement.reach_mm).abs() < 1e-6;
    if brief.shot.side.is_none()
        && placement.reach_from_sides_mm.iter().filter(|reach| near(reach)).count() > 1
    {
        brief.shot.side = Some(placement.side);
    }
    brief
}

/// A bearing whose sine and cosine come out alike from either side: not half way between two quarters. And no
/// elevation next to nothing, from where the table is a line and its share of the picture all rounding.
fn off_the_fence(mut brief: Brief) -> Brief {
    // Multiples of 1/8 degree, so that adding 90 is exact.
    brief.shot.bearing_deg = (brief.shot.bearing_deg.clamp(-260.0, 260.0) * 8.0).round() / 8.0;
    if brief.shot.elevation_deg == 1e-9 {
        brief.shot.elevation_deg = 1e-3;
    }
    if brief.shot.bearing_deg % 45.0 == 0.0 && brief.shot.bearing_deg % 90.0 != 0.0 {
        brief.shot.bearing_deg += 1.0;
    }
    brief
}

fn mirrored(mut brief: Brief) -> Brief {
    brief.shot.bearing_deg = -brief.shot.bearing_deg;
    brief.shot.aim_x_mm = -brief.shot.aim_x_mm;
    brief.shot.side = brief.shot.side.map(|side| match side {
        Side::Right => Side::Left,
        Side::Left => Side::Right,
        other => other,
    });
    std::mem::swap(&mut brief.bay.left_mm, &mut brief.bay.right_mm);
    brief.support.first_leg_deg = brief.support.first_leg_deg.map(|angle| -angle);
    for bag in &mut brief.support.sandbags {
        bag.direction_deg = -bag.direction_deg;
    }
    brief
}

fn mirror(name: &str, found: f64, original: &BTreeMap<String, f64>) -> Option<f64> {
    let here = named(original, name);
    let swapped = |a: &str, b: &str| {
        let swapped = if name.contains(a) { name.replacen(a, b, 1) } else { name.replacen(b, a, 1) };
        named(original, &swapped)
    };
    if name.starts_with("footprint.corners") {
        let swap = [("corners.0", "corners.1"), ("corners.2", "corners.3")];
        let pair = swap.iter().find(|(a, b)| name.contains(a) || name.contains(b))?;
        let other = swapped(pair.0, pair.1)?;
        return Some(if name.ends_with("x_mm") { -other } else { other });
    }
    match name {
        // The feet are numbered the other way round.
        name if name.starts_with("placement.feet") => None,
        "pose.right.x" => here,
        "pose.right.y" | "footprint.board.turned_deg" => Some(-here?),
        "footprint.edges_in_frame.1" | "footprint.edges_in_frame.3" => swapped("frame.1", "frame.3"),
        "placement.reach_from_sides_mm.1" | "placement.reach_from_sides_mm.3" => swapped("mm.1", "mm.3"),
        "placement.side" => Some([0.0, 3.0, 2.0, 1.0][here? as usize]),
        // Given, it is mirrored; left out, it is its own mirror image.
        "placement.first_leg_deg" => Some(found.signum() * here?.abs()),
        "outline.left_mm" => Some(-named(original, "outline.right_mm")?),
        "outline.right_mm" => Some(-named(original, "outline.left_mm")?),
        "outline.room_left_mm" => named(original, "outline.room_right_mm"),
        "outline.room_right_mm" => named(original, "outline.room_left_mm"),
        // Told within one leg's spacing; compared by its margin.
        "ballast.best_first_leg_deg" | "ballast.worst_first_leg_deg" => None,
        name if name.ends_with(".x_mm") || name.ends_with(".x") => Some(-here?),
        _ => here,
    }
}

fn turned(mut brief: Brief) -> Brief {
    brief.shot.bearing_deg += 90.0;
    (brief.shot.aim_x_mm, brief.shot.aim_y_mm) = (-brief.shot.aim_y_mm, brief.shot.aim_x_mm);
    std::mem::swap(&mut brief.table.width_mm, &mut brief.table.depth_mm);
    if let Shape::Box { width_mm, depth_mm } = &mut brief.subject.shape {
        std::mem::swap(width_mm, depth_mm);
    }
    brief.shot.side = brief.shot.side.map(|side| Side::ALL[(side as usize + 1) % 4]);
    let bay = brief.bay;
    brief.bay.right_mm = bay.front_mm;
    brief.bay.back_mm = bay.right_mm;
    brief.bay.left_mm = bay.back_mm;
    brief.bay.front_mm = bay.left_mm;
    brief
}

fn turn(name: &str, _: f64, original: &BTreeMap<String, f64>) -> Option<f64> {
    let here = named(original, name);
    for list in ["footprint.edges_in_frame.", "placement.reach_from_sides_mm."] {
        if let Some(index) = name.strip_prefix(list) {
            let before = (index.parse::<usize>().ok()? + 3) % 4;
            return named(original, &format!("{list}{before}"));
        }
    }
    match name {
        "placement.side" => Some((here? + 1.0) % 4.0),
        "footprint.board.turned_deg" => Some(here? + 90.0),
        name => match name.rsplit_once('.') {
            Some((of, "x_mm")) => Some(-named(original, &format!("{of}.y_mm"))?),
            Some((of, "x")) => Some(-named(original, &format!("{of}.y"))?),
            Some((of, "y_mm")) => named(original, &format!("{of}.x_mm")),
            Some((of, "y")) => named(original, &format!("{of}.x")),
            _ => here,
        },
    }
}

proptest! {
    #![proptest_config(runs(600))]

    #[test]
    fn a_mirrored_studio_has_the_mirrored_plan(brief in studio_brief()) {
        let brief = settled(off_the_fence(brief));
        compare(&plan_of(&brief), &plan_of(&mirrored(brief)), mirror)?;
    }

    #[test]
    fn a_turned_studio_has_the_turned_plan(brief in studio_brief()) {
        let brief = settled(off_the_fence(brief));
        compare(&plan_of(&brief), &plan_of(&turned(brief)), turn)?;
    }

    #[test]
    fn a_whole_turn_changes_nothing(brief in studio_brief()) {
        let mut brief = off_the_fence(brief);
        let before = plan_of(&brief);
        brief.shot.bearing_deg += if brief.shot.bearing_deg > 0.0 { -360.0 } else { 360.0 };
        let mut after = plan_of(&brief);
        if let (Some(was), Some(is)) = (&before.footprint.board, &mut after.footprint.board) {
            is.turned_deg = was.turned_deg;
        }
        prop_assert_eq!(before, after);
    }
}
