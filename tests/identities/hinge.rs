//! The tilted lens, traced: points of the table are imaged through it one by one, and must all come to lie
//! in one plane parallel to the sensor.

use proptest::prelude::*;
use tablerig::optics::tilt::tilt_onto_table;

use crate::draws::{runs, studio};
use crate::gear::lens;
use crate::space::agree;

/// The image of a point of the upright plane through the axis, given along the camera's axis and up from
/// the front principal point, by a thin lens there, tilted down by `tilt_deg`.
fn imaged(focal: f64, tilt_deg: f64, [along, up]: [f64; 2]) -> [f64; 2] {
    let (sin, cos) = tilt_deg.to_radians().sin_cos();
    // In the lens's own directions: its axis points down by the tilt.
    let [ahead, across] = [along * cos - up * sin, along * sin + up * cos];
    let image = 1.0 / (1.0 / focal - 1.0 / ahead);
    let [ahead, across] = [-image, -across * image / ahead];
    [ahead * cos + across * sin, across * cos - ahead * sin]
}

proptest! {
    #![proptest_config(runs(1500))]

    #[test]
    fn the_tables_image_is_parallel_to_the_sensor(
        lens in lens(studio),
        m in studio("magnification"),
        elevation in studio("shot.elevation_deg"),
        aim_height in studio("shot.aim_height_mm"),
    ) {
        let focused = lens.focused(m);
        let (sin, cos) = elevation.to_radians().sin_cos();
        let height = aim_height + focused.object_distance_mm * sin;
        let tilt = tilt_onto_table(&focused, aim_height, sin, cos.max(0.0));
        let f = focused.focal_length_mm;
        let Some(tilt_deg) = tilt.tilt_deg else {
            // The hinge is nearer than the focal length: the sine would be over one, or under nothing.
            prop_assert!(height < f * cos * (1.0 + 1e-12));
            return Ok(());
        };
        prop_assert!(height >= f * cos * (1.0 - 1e-12));
        if elevation == 90.0 {
            prop_assert!(tilt_deg.abs() < 1e-9);
            return Ok(());
        }
        // The hinge: straight down in the picture, in the plane of the front principal point, on the table.
        agree("hinge on the table", tilt.hinge_distance_mm * cos, height, 1e-12 * height)?;
        // The table in these directions: up × cos - along × sin = -height.
        let mut found: Option<f64> = None;
        for depth in [3.0, 5.0, 9.0, 20.0] {
            let along = depth * focused.object_distance_mm.max(height);
            let up = (along * sin - height) / cos;
            let ahead = along * tilt_deg.to_radians().cos() - up * tilt_deg.to_radians().sin();
            // Next to 90 the table's points run off sideways, and those behind the lens have no image.
            if up.abs() > 1e4 * along || ahead <= 1.01 * f {
                continue;
            }
            let [image, _] = imaged(f, tilt_deg, [along, up]);
            prop_assert!(image < 0.0, "behind the lens");
            // Conditioning: the hinge rule's sine, and points next to the focal plane.
            let allowed = 1e-9 * image.abs() * (1.0 + up.abs() / along + image.abs() / f);
            if let Some(before) = found {
                agree("image plane", image, before, allowed)?;
            }
            found = Some(image);
        }
    }
}
