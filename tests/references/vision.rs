//! Projection and footprint against a general vision library (OpenCV): corners by `projectPoints`, the
//! table by an inverted homography, field angles by `calibrationMatrixValues`, coverage by counting pixels,
//! pose by `solvePnP`.

use crate::rows::{Row, Table, Tally};
use tablerig::brief::{Brief, Criteria, Framing, Shot};
use tablerig::optics::camera::Camera;
use tablerig::optics::lens::Lens;
use tablerig::optics::sensor::{Aspect, Hold};
use tablerig::plan::{Plan, plan};
use tablerig::rig::support::{Head, MOST_SANDBAGS, Sandbag, Support};
use tablerig::scene::bay::Bay;
use tablerig::scene::subject::{JudgedBy, Shape, Subject};
use tablerig::scene::table::{Table as Tabletop, Underside};
use tablerig::vector::Point;
use tablerig::view::projection::View;

/// Scenes compared.
pub(crate) const SCENES: usize = 600;
/// Both compute in double precision; places are off by a share of the distances they are made from.
pub(crate) const EXACT: f64 = 1e-9;
/// The pose solver stops when its own step is small, and its data are rounded pixels.
pub(crate) const SOLVED: f64 = 1e-8;

/// Some support: nothing of it is looked at here.
const SUPPORT: Support = Support {
    lowest_pivot_mm: 0.0,
    highest_pivot_mm: 20000.0,
    column_radius_mm: 20.0,
    leg_count: 3,
    foot_radius_mm: 500.0,
    legs_top_mm: 1000.0,
    first_leg_deg: None,
    table_clearance_mm: 0.0,
    mass_kg: 10.0,
    centre_height_mm: 500.0,
    base_mass_kg: 0.0,
    base_height_mm: 0.0,
    sandbags: [Sandbag::NONE; MOST_SANDBAGS],
    rated_load_kg: None,
    head: Head { mass_kg: 0.5, pivot_below_socket_mm: 0.0, rated_load_kg: None, rated_moment_n_m: None },
    boom: None,
};

fn brief(row: &Row) -> Brief {
    let hold = match row.word("hold") {
        "across" => Hold::Across,
        "upright" => Hold::Upright,
        word => panic!("no hold {word}"),
    };
    let delivered_aspect =
        row.given("aspect_width").map(|width| Aspect { width, height: row.number("aspect_height") });
    let [width_mm, depth_mm] = ["subject_width_mm", "subject_depth_mm"].map(|name| row.number(name));
    Brief {
        shot: Shot {
            bearing_deg: row.number("bearing_deg"),
            framing: Framing::FrameWidthMm(row.number("frame_width_mm")),
            hold,
            delivered_aspect,
            aim_x_mm: row.number("aim_x_mm"),
            aim_y_mm: row.number("aim_y_mm"),
            aim_height_mm: Some(row.number("aim_height_mm")),
            ..Shot::new(row.number("elevation_deg"), 100.0)
        },
        camera: Camera {
            sensor_width_mm: row.number("sensor_width_mm"),
            sensor_height_mm: row.number("sensor_height_mm"),
            circle_of_confusion_mm: None,
            socket_ahead_mm: 0.0,
            socket_below_mm: 0.0,
            body_above_mm: 0.0,
            body_behind_mm: 0.0,
            mass_kg: 1.0,
            centre_ahead_mm: 0.0,
        },
        lens: Lens {
            focal_length_mm: row.number("focal_length_mm"),
            closest_focus_mm: None,
            largest_magnification: None,
            pupil_ratio: row.number("pupil_ratio"),
            principal_separation_mm: 0.0,
            least_f_number: 2.0,
            most_f_number: 22.0,
            front_from_sensor_mm: None,
            largest_tilt_deg: 0.0,
            mass_kg: 1.0,
            centre_ahead_mm: 0.0,
        },
        table: Tabletop {
            width_mm: row.number("table_width_mm"),
            depth_mm: row.number("table_depth_mm"),
            height_mm: row.number("table_height_mm"),
            underside: Underside::Open,
        },
        subject: Subject {
            shape: Shape::Box { width_mm, depth_mm },
            height_mm: row.number("subject_height_mm"),
            vessel: None,
            judged_by: JudgedBy::Form,
        },
        support: SUPPORT,
        bay: Bay::OPEN,
        criteria: Criteria::DEFAULT,
    }
}

/// The subject's corners one by one, and the outline that the plan draws around them.
fn compare_subject(row: &Row, plan: &Plan, tally: &mut Tally) {
    let case = row.word("case");
    let view = View {
        pose: plan.pose,
        pupil_distance_mm: plan.lens.pupil_distance_mm,
        frame_width_mm: plan.frame_width_mm,
        frame_height_mm: plan.frame_height_mm,
    };
    let foot = plan.pose.aim.z_mm - row.number("aim_height_mm");
    let [w, d] = ["subject_width_mm", "subject_depth_mm"].map(|name| 0.5 * row.number(name));
    let mut bounds = [f64::INFINITY, f64::NEG_INFINITY, f64::INFINITY, f64::NEG_INFINITY];
    let mut corner = 0;
    for x in [-w, w] {
        for y in [-d, d] {
            for z in [0.0, row.number("subject_height_mm")] {
                corner += 1;
                let at = Point { x_mm: plan.pose.aim.x_mm + x, y_mm: plan.pose.aim.y_mm + y, z_mm: foot + z };
                let seen = view.project(at).expect("before the camera");
                let [right, up] = [format!("corner{corner}_right_mm"), format!("corner{corner}_up_mm")]
                    .map(|name| row.number(&name));
                let scale = plan.frame_width_mm.max(right.abs()).max(up.abs());
                tally.close("corners in the picture", seen.right_mm, right, scale, case);
                tally.close("corners in the picture", seen.up_mm, up, scale, case);
                let [left, rightmost, bottom, top] = bounds;
                bounds = [left.min(right), rightmost.max(right), bottom.min(up), top.max(up)];
            }
        }
    }
    let outline = plan.outline.expect("before the camera");
    let scale = bounds.iter().fold(plan.frame_width_mm, |most, bound| most.max(bound.abs()));
    let drawn = [outline.left_mm, outline.right_mm, outline.bottom_mm, outline.top_mm];
    for (got, want) in drawn.into_iter().zip(bounds) {
        tally.close("outline in the picture", got, want, scale, case);
    }
}

fn compare(row: &Row, tally: &mut Tally) {
    let case = row.word("case");
    let plan = plan(&brief(row)).unwrap_or_else(|fault| panic!("case {case}: {fault}"));
    let s = plan.lens.pupil_distance_mm;
    compare_subject(row, &plan, tally);
    // Where the camera is.
    let pupil = plan.pose.pupil;
    for (name, got) in [("x", pupil.x_mm), ("y", pupil.y_mm), ("z", pupil.z_mm)] {
        tally.close("entrance pupil", got, row.number(&format!("pupil_{name}_mm")), s, case);
    }
    tally.close("field angles", plan.field_angles.horizontal_deg, row.number("horizontal_deg"), 0.0, case);
    tally.close("field angles", plan.field_angles.vertical_deg, row.number("vertical_deg"), 0.0, case);
    // The frame on the table.
    let found = &plan.footprint;
    for (name, got) in ["near_left", "near_right", "far_right", "far_left"].into_iter().zip(found.corners) {
        let want = [format!("{name}_x_mm"), format!("{name}_y_mm")].map(|name| row.given(&name));
        let fall = row.number(&format!("{name}_fall_scale"));
        match (got, want) {
            (Some(got), [Some(x), Some(y)]) => {
                // Towards the horizon a place runs off as 1 / fall, and its error with it, twice.
                let scale = x.abs().max(y.abs()).max(s) / fall.min(1.0);
                tally.close("frame on the table", got.x_mm, x, scale, case);
                tally.close("frame on the table", got.y_mm, y, scale, case);
            }
            (None, [None, None]) => tally.note("no place on the table", 0.0, case),
            (got, want) => panic!("{name} in case {case}: {got:?} for {want:?}"),
        }
    }
    match (found.table_share, row.given("table_share")) {
        (Some(got), Some(want)) => {
            // In units of the counting's own error.
            let error = (got - want).abs() / row.number("table_share_error");
            tally.note("coverage / error of counting pixels", error, case);
        }
        (None, None) => {
            row.given("table_share_error");
        }
        (got, want) => panic!("table_share in case {case}: {got:?} for {want:?}"),
    }
    tally.close(
        "solved elevation",
        row.number("elevation_deg"),
        row.number("solved_elevation_deg"),
        90.0,
        case,
    );
    tally.close("solved height", pupil.z_mm, row.number("solved_pupil_height_mm"), s, case);
}

pub(crate) fn run() -> Tally {
    let scenes = Table::new(include_str!("vision/scenes.tsv"));
    let mut tally = Tally::default();
    for row in scenes.rows() {
        compare(&row, &mut tally);
    }
    assert_eq!(scenes.rows().count(), SCENES);
    scenes.all_asked();
    tally
}

/// What is allowed of a quantity.
pub(crate) fn allowed(name: &str) -> f64 {
    match name {
        "coverage / error of counting pixels" => 1.0,
        "solved elevation" | "solved height" => SOLVED,
        _ => EXACT,
    }
}

#[test]
fn six_hundred_scenes() {
    let tally = run();
    for (name, error, count, case) in tally.entries() {
        println!("{name:36} {error:9.1e} {count:6} worst in {case}");
        assert!(error <= allowed(name), "{name} is off by {error:e} in case {case}");
    }
    assert_eq!(tally.count("corners in the picture"), 16 * SCENES);
    assert_eq!(tally.count("frame on the table") / 2 + tally.count("no place on the table"), 4 * SCENES);
}
