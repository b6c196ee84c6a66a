//! Questions about glass, sensor and picture.

use crate::ask::solve;
use crate::rows::Row;
use tablerig::optics::camera::Camera;
use tablerig::optics::focus::{
    DIFFRACTION_DISC, DepthOfField, WAVELENGTH_MM, depth_of_field, diffraction_disc_mm, effective_f_number,
    exposure_loss_stops, third_stop_up,
};
use tablerig::optics::lens::{FieldAngles, FocusedLens, Lens};
use tablerig::optics::sensor::{Hold, UsedArea, default_circle_of_confusion_mm};
use tablerig::optics::tilt::tilt_onto_table;
use tablerig::scene::subject::{JudgedBy, Shape, Subject};
use tablerig::scene::table::{Table, Underside};
use tablerig::vector::{FloorPoint, Point};
use tablerig::view::footprint::{Footprint, footprint};
use tablerig::view::outline::{SubjectDepth, outline};
use tablerig::view::perspective::perspective;
use tablerig::view::pose::{Orientation, pose};
use tablerig::view::projection::View;

const MM_PER_FOOT: f64 = 304.8;

fn lens(focal_length_mm: f64, pupil_ratio: f64) -> Lens {
    Lens {
        focal_length_mm,
        closest_focus_mm: None,
        largest_magnification: None,
        pupil_ratio,
        principal_separation_mm: 0.0,
        least_f_number: 1.0,
        most_f_number: 32.0,
        front_from_sensor_mm: None,
        largest_tilt_deg: 0.0,
        mass_kg: 0.5,
        centre_ahead_mm: 0.0,
    }
}

/// A thin symmetric lens focused on an object at a distance from it.
fn on_object(focal_length_mm: f64, object_mm: f64) -> FocusedLens {
    let lens = lens(focal_length_mm, 1.0);
    lens.focused(solve(object_mm, 1e-7, 1e3, |m| lens.focused(m).object_distance_mm))
}

/// A thin symmetric lens with its image at a distance from it.
fn on_image(focal_length_mm: f64, image_mm: f64) -> FocusedLens {
    let lens = lens(focal_length_mm, 1.0);
    lens.focused(solve(image_mm, 0.0, 1e3, |m| lens.focused(m).image_distance_mm))
}

/// The nearest focus at which the far limit is no more finite.
fn hyperfocal(focal_length_mm: f64, f_number: f64, circle_mm: f64) -> FocusedLens {
    let lens = lens(focal_length_mm, 1.0);
    let endless = |m: f64| depth_of_field(&lens.focused(m), f_number, circle_mm).far_limit_mm.is_infinite();
    lens.focused(solve(0.5, 1e-7, 1.0, |m| if endless(m) { 0.0 } else { 1.0 }))
}

fn hyperfocal_of(row: &Row) -> FocusedLens {
    hyperfocal(row.of("focal_length_mm"), row.of("f_number"), row.of("circle_of_confusion_mm"))
}

/// Sharp limits from the lens, focused at half the hyperfocal distance.
fn half_hyperfocal(row: &Row) -> DepthOfField {
    let half = on_object(row.of("focal_length_mm"), 0.5 * hyperfocal_of(row).object_distance_mm);
    depth_of_field(&half, row.of("f_number"), row.of("circle_of_confusion_mm"))
}

fn in_inches(row: &Row) -> DepthOfField {
    let focused = on_object(row.of("focal_length_in"), 12.0 * row.of("object_ft"));
    depth_of_field(&focused, row.of("f_number"), row.of("circle_of_confusion_in"))
}

fn angles(row: &Row) -> FieldAngles {
    // At infinity: a picture of the stars.
    let focused = lens(row.of("focal_length_mm"), 1.0).focused(1e-12);
    let m = focused.magnification;
    focused.field_angles(row.of("sensor_width_mm") / m, row.of("sensor_height_mm") / m)
}

fn macro_lens(row: &Row) -> FocusedLens {
    lens(100.0, row.of("pupil_ratio")).focused(row.of("magnification"))
}

/// A view of a table from an elevation, the aim point in the table's plane.
fn tilted(row: &Row, focused: &FocusedLens) -> (View, Table) {
    let table = Table { width_mm: 3000.0, depth_mm: 3000.0, height_mm: 700.0, underside: Underside::Open };
    let camera = Camera {
        sensor_width_mm: 36.0,
        sensor_height_mm: 24.0,
        circle_of_confusion_mm: None,
        socket_ahead_mm: 0.0,
        socket_below_mm: 0.0,
        body_above_mm: 0.0,
        body_behind_mm: 0.0,
        mass_kg: 1.0,
        centre_ahead_mm: 0.0,
    };
    let aim = Point { x_mm: 0.0, y_mm: 0.0, z_mm: 700.0 };
    let at = Orientation::new(row.of("elevation_deg"), 0.0);
    let view = View {
        pose: pose(&at, aim, focused, None, &camera, 0.0, &table),
        pupil_distance_mm: focused.pupil_distance_mm,
        frame_width_mm: 36.0 / focused.magnification,
        frame_height_mm: 24.0 / focused.magnification,
    };
    (view, table)
}

/// Focused so that the entrance pupil stands at the distance given.
fn from_pupil(lens: &Lens, pupil_distance_mm: f64) -> FocusedLens {
    lens.focused(solve(pupil_distance_mm, 1e-7, 1e3, |m| lens.focused(m).pupil_distance_mm))
}

fn frame_on_plane(row: &Row) -> (FocusedLens, Footprint) {
    let focused = from_pupil(&lens(row.of("focal_length_mm"), 1.0), row.of("pupil_distance_mm"));
    assert_eq!((row.of("sensor_width_mm"), row.of("sensor_height_mm")), (36.0, 24.0));
    let (view, table) = tilted(row, &focused);
    (focused, footprint(&view, &table, 0.0))
}

fn corner(row: &Row, at: usize) -> FloorPoint {
    frame_on_plane(row).1.corners[at].expect("on the table")
}

/// Two thin lenses with a stop between, as one thick lens (textbook forms).
fn two_lenses(row: &Row) -> Lens {
    let [a, b, before, after] =
        ["first_mm", "second_mm", "to_stop_mm", "from_stop_mm"].map(|name| row.of(name));
    let apart = before + after;
    let power = a + b - apart;
    Lens {
        principal_separation_mm: -apart * apart / power,
        // The stop as seen through either lens.
        ..lens(a * b / power, (b / (b - after)) / (a / (a - before)))
    }
}

/// Axis ratio of the picture of a circle on the table under the aim point.
fn circle_axis_ratio(row: &Row) -> f64 {
    let subject = Subject {
        shape: Shape::Round { diameter_mm: row.of("diameter_mm") },
        height_mm: 0.0,
        vessel: None,
        judged_by: JudgedBy::Form,
    };
    let at = Orientation::new(row.of("elevation_deg"), 0.0);
    let seen = outline(&subject, 0.0, &at, row.of("pupil_distance_mm"), 1.0, 1.0).expect("before the camera");
    seen.fill_height / seen.fill_width
}

fn stretch(off_axis_deg: f64) -> f64 {
    let half = off_axis_deg.to_radians().tan();
    let depth = SubjectDepth { nearest_mm: 0.0, farthest_mm: 0.0 };
    perspective(1000.0, 2000.0 * half, 0.0, &depth, 0.0, 0.0, 0.0).side_stretch
}

pub(crate) fn optics(row: &Row) -> Option<f64> {
    let forward = |row: &Row| Orientation::new(row.of("elevation_deg"), 0.0).forward;
    Some(match row.quantity.as_str() {
        "hyperfocal_mm" => hyperfocal_of(row).object_distance_mm,
        "hyperfocal_from_focus_mm" => hyperfocal_of(row).object_distance_mm - row.of("focal_length_mm"),
        "hyperfocal_near_limit_mm" => {
            let focused = hyperfocal_of(row);
            depth_of_field(&focused, row.of("f_number"), row.of("circle_of_confusion_mm")).near_limit_mm
        }
        "half_hyperfocal_near_mm" => half_hyperfocal(row).near_limit_mm,
        "half_hyperfocal_far_mm" => half_hyperfocal(row).far_limit_mm,
        "hyperfocal_ft" => {
            let circle = row.of("circle_of_confusion_in");
            hyperfocal(row.of("focal_length_in"), row.of("f_number"), circle).object_distance_mm / 12.0
        }
        "near_limit_ft" => in_inches(row).near_limit_mm / 12.0,
        "far_limit_ft" => in_inches(row).far_limit_mm / 12.0,
        "horizontal_deg" => angles(row).horizontal_deg,
        "vertical_deg" => angles(row).vertical_deg,
        "diagonal_deg" => angles(row).diagonal_deg,
        "close_horizontal_deg" => {
            let focused = lens(row.of("focal_length_mm"), 1.0).focused(row.of("magnification"));
            focused.field_angles(row.of("sensor_width_mm") / focused.magnification, 1.0).horizontal_deg
        }
        "object_distance_mm" => {
            on_image(row.of("focal_length_mm"), row.of("image_distance_mm")).object_distance_mm
        }
        "object_size_mm" => {
            let focused = on_image(row.of("focal_length_mm"), row.of("image_distance_mm"));
            let used = UsedArea { width_mm: row.of("image_size_mm"), height_mm: 1.0 };
            focused.frame_width_mm(&used)
        }
        "image_distance_mm" => {
            on_object(row.of("focal_length_mm"), row.of("object_distance_mm")).image_distance_mm
        }
        "magnification" => on_object(row.of("focal_length_mm"), row.of("object_distance_mm")).magnification,
        "bellows_factor" | "bellows_exposure_s" => {
            let focused = on_image(row.of("focal_length_mm"), row.of("image_distance_mm"));
            let factor = exposure_loss_stops(&focused).exp2();
            if row.quantity == "bellows_factor" { factor } else { factor * row.of("exposure_s") }
        }
        "depth_of_field_mm" => {
            let sharp =
                depth_of_field(&macro_lens(row), row.of("f_number"), row.of("circle_of_confusion_mm"));
            sharp.in_front_mm + sharp.behind_mm
        }
        "effective_f_number" => effective_f_number(&macro_lens(row), row.of("f_number")),
        "pupil_distance_mm" => {
            lens(row.of("focal_length_mm"), row.of("pupil_ratio"))
                .focused(row.of("magnification"))
                .pupil_distance_mm
        }
        "object_to_sensor_mm" => {
            lens(row.of("focal_length_mm"), 1.0).focused(row.of("magnification")).sensor_distance_mm
        }
        // Asked just under the exact value, so that it is this stop and no other.
        "third_stop" => third_stop_up((row.of("thirds") / 6.0).exp2() * 0.999).f_number,
        "third_stop_engraved" => third_stop_up((row.of("thirds") / 6.0).exp2() * 0.999).engraved,
        "diffraction_disc_um" => {
            assert_eq!(row.of("wavelength_nm"), (WAVELENGTH_MM * 1e6).round());
            1000.0 * diffraction_disc_mm(&lens(50.0, 1.0).focused(1e-12), row.of("f_number"))
        }
        "diffraction_disc_factor" => DIFFRACTION_DISC,
        "hinge_ft" => {
            let focused = lens(row.of("focal_length_mm"), 1.0).focused(0.01);
            let tilt = |height| tilt_onto_table(&focused, height, 0.0, 1.0).tilt_deg.expect("a tilt");
            solve(row.of("tilt_deg"), 200.0, 1e5, tilt) / MM_PER_FOOT
        }
        "axis_under_horizon_deg" => {
            (-forward(row).z).atan2(forward(row).x.hypot(forward(row).y)).to_degrees()
        }
        "axis_from_plumb_deg" => forward(row).x.hypot(forward(row).y).atan2(-forward(row).z).to_degrees(),
        "isocentre_scale" => {
            let f = row.of("focal_length_mm");
            let focused = from_pupil(&lens(f, 1.0), row.of("pupil_distance_mm"));
            let (view, table) = tilted(row, &focused);
            // Half way in angle between plumb line and axis.
            let half = (0.5 * (90.0 - row.of("elevation_deg"))).to_radians();
            let pupil = view.pose.pupil;
            let out = (pupil.z_mm - table.height_mm) * half.tan();
            let at = Point { x_mm: 0.0, y_mm: pupil.y_mm + out, z_mm: table.height_mm };
            f / view.depth_mm(at)
        }
        "stretch" => stretch(row.of("off_axis_deg")),
        "tilted_magnification" => {
            row.of("elevation_deg");
            frame_on_plane(row).0.magnification
        }
        "near_left_x_mm" => corner(row, 0).x_mm,
        "near_left_y_mm" => corner(row, 0).y_mm,
        "near_right_x_mm" => corner(row, 1).x_mm,
        "near_right_y_mm" => corner(row, 1).y_mm,
        "far_right_x_mm" => corner(row, 2).x_mm,
        "far_right_y_mm" => corner(row, 2).y_mm,
        "far_left_x_mm" => corner(row, 3).x_mm,
        "far_left_y_mm" => corner(row, 3).y_mm,
        "keystone_ratio" => frame_on_plane(row).1.keystone_ratio.expect("no horizon"),
        "two_lenses_focal_length_mm" => two_lenses(row).focal_length_at(0.0).0,
        "two_lenses_pupil_ratio" => two_lenses(row).focused(0.1).pupil_ratio,
        "two_lenses_magnification" => from_pupil(&two_lenses(row), row.of("pupil_distance_mm")).magnification,
        "two_lenses_object_to_image_mm" => {
            from_pupil(&two_lenses(row), row.of("pupil_distance_mm")).sensor_distance_mm
        }
        "diagonal_mm" => {
            UsedArea::new(row.of("sensor_width_mm"), row.of("sensor_height_mm"), Hold::Across, None)
                .diagonal_mm()
        }
        "circle_of_confusion_mm" => {
            default_circle_of_confusion_mm(row.of("sensor_width_mm"), row.of("sensor_height_mm"))
        }
        "focal_length_at_closest_mm" => {
            let lens = Lens {
                closest_focus_mm: Some(row.of("closest_focus_mm")),
                largest_magnification: Some(row.of("largest_magnification")),
                ..lens(row.of("focal_length_mm"), 1.0)
            };
            lens.focal_length_at(row.of("largest_magnification")).0
        }
        "circle_axis_ratio" => circle_axis_ratio(row),
        _ => return None,
    })
}
