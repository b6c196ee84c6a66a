//! The lens: Gaussian optics seen from outside, and the inverse questions as round trips.

use proptest::prelude::*;
use tablerig::fault::FaultKind;
use tablerig::optics::inverse::{focal_length_for, magnification_at};
use tablerig::optics::lens::Lens;
use tablerig::optics::sensor::{Hold, UsedArea, default_circle_of_confusion_mm};

use crate::briefs::format;
use crate::draws::{range_of, runs, studio, whole};
use crate::gear::lens;
use crate::space::{agree, answer};

/// Rounding of a handful of multiplications.
const SHARE: f64 = 4e-15;

/// The lens without what makes its focal length change.
fn unit_focusing(lens: Lens) -> Lens {
    Lens { closest_focus_mm: None, largest_magnification: None, ..lens }
}

/// The magnification that rounding of the sensor distance may cost: first order, or second where the distance
/// stands still: at life size, or where a lens is about to turn back.
fn magnification_error(lens: &Lens, m: f64) -> f64 {
    let (f, _) = lens.focal_length_at(m);
    let off =
        8.0 * f64::EPSILON * (lens.focused(m).sensor_distance_mm.abs() + lens.principal_separation_mm.abs());
    let changes = (f - lens.focal_length_mm) / m;
    let slope = changes * (1.0 + m) * (1.0 + m) / m + f * (m * m - 1.0) / (m * m);
    (off / slope.abs()).min((4.0 * off * (m * m * m).max(1.0) / f).sqrt()) + 8.0 * f64::EPSILON * m
}

proptest! {
    #![proptest_config(runs(1500))]

    #[test]
    fn object_and_image_are_conjugate(lens in lens(studio), m in studio("magnification")) {
        let at = lens.focused(m);
        let (f, o, i) = (at.focal_length_mm, at.object_distance_mm, at.image_distance_mm);
        agree("Gauss's equation", 1.0 / o + 1.0 / i, 1.0 / f, SHARE / f)?;
        agree("image over object", i / o, m, SHARE * m)?;
        agree("sensor to aim", at.sensor_distance_mm, o + i + lens.principal_separation_mm, SHARE * (o + i))?;
    }

    /// The exit pupil is the entrance pupil's image through the whole lens, pupil ratio times as large; the
    /// cone from it to the sensor has the effective f-number.
    #[test]
    fn the_exit_pupil_is_the_entrance_pupils_image(lens in lens(studio), m in studio("magnification")) {
        if (lens.pupil_ratio - 1.0).abs() < 1e-3 {
            return Ok(());
        }
        let at = lens.focused(m);
        let f = at.focal_length_mm;
        // As object of the lens: positive in front of the front principal plane.
        let entrance = at.object_distance_mm - at.pupil_distance_mm;
        let exit = 1.0 / (1.0 / f - 1.0 / entrance);
        let p = -exit / entrance;
        agree("pupil ratio", p, lens.pupil_ratio, 1e-11 * (1.0 + at.object_distance_mm / entrance.abs()))?;
        let n = 8.0;
        let exit_diameter = lens.pupil_ratio * f / n;
        let effective = (at.image_distance_mm - exit) / exit_diameter;
        let found = tablerig::optics::focus::effective_f_number(&at, n);
        agree("effective f-number", found, effective, 1e-9 * found)?;
        let stops = tablerig::optics::focus::exposure_loss_stops(&at);
        agree("stops", stops, 2.0 * (found / n).log2(), 1e-14 * (1.0 + stops))?;
    }

    #[test]
    fn magnification_is_found_back(lens in lens(whole), m in whole("magnification")) {
        let largest = match (lens.closest_focus_mm, lens.largest_magnification) {
            (Some(_), Some(largest)) => largest,
            _ => 1.0,
        };
        let m = m.clamp(1e-5, 20.0).min(largest * (1.0 - 1e-6));
        let d = lens.focused(m).sensor_distance_mm;
        let range = range_of("measured.sensor_distance_mm");
        if d < range.least || d > range.most || lens.closest_focus_mm.is_some_and(|closest| d < closest) {
            return Ok(());
        }
        let found = answer(magnification_at(&lens, d))?;
        agree("magnification", found, m, magnification_error(&lens, m))?;
    }

    #[test]
    fn at_its_closest_focus_a_lens_magnifies_as_published(lens in lens(studio)) {
        let (Some(closest), Some(largest)) = (lens.closest_focus_mm, lens.largest_magnification) else {
            return Ok(());
        };
        let at = lens.focused(largest);
        agree("closest focus", at.sensor_distance_mm, closest, SHARE * (closest + 100.0))?;
        prop_assert!(at.focal_length_assumed);
        let found = answer(magnification_at(&lens, closest))?;
        agree("magnification", found, largest, magnification_error(&lens, largest))?;
        agree("marked focal length", lens.focal_length_at(0.0).0, lens.focal_length_mm, 0.0)?;
        // Half way in magnification, half way in focal length.
        let half = lens.focal_length_at(0.5 * largest).0;
        let mean = 0.5 * (lens.focal_length_mm + at.focal_length_mm);
        agree("straight line", half, mean, SHARE * mean)?;
        let nearer = magnification_at(&lens, closest * (1.0 - 1e-9)).unwrap_err();
        prop_assert_eq!((nearer.kind, nearer.least), (FaultKind::NoFocus, closest));
    }

    /// A lens that is accepted comes steadily nearer; one just past the bound turns back.
    #[test]
    fn the_distance_falls_all_the_way(lens in lens(studio)) {
        let (Some(_), Some(largest)) = (lens.closest_focus_mm, lens.largest_magnification) else {
            return Ok(());
        };
        let rises = |lens: &Lens| {
            let d = |i: u32| lens.focused(largest * f64::from(i) / 2000.0).sensor_distance_mm;
            (1..2000).any(|i| d(i + 1) > d(i) * (1.0 + 1e-13))
        };
        prop_assert!(!rises(&lens));
        let far = Lens { closest_focus_mm: Some(90000.0), ..lens }.check().unwrap_err();
        let past = Lens { closest_focus_mm: Some(far.most * 1.01), ..lens };
        prop_assert_eq!(past.check().map_err(|fault| fault.kind), Err(far.kind));
        let (focal, _) = past.focal_length_at(largest);
        match far.kind {
            FaultKind::FocusTurnsBack => prop_assert!(rises(&past)),
            kind => {
                prop_assert_eq!(kind, FaultKind::FocalLengthGrows);
                prop_assert!(focal > 1.1 * lens.focal_length_mm);
            }
        }
        let at_most = Lens { closest_focus_mm: Some(far.most), ..lens };
        prop_assert!(at_most.check().is_ok());
        prop_assert!(at_most.focal_length_at(largest).0 <= 1.1 * lens.focal_length_mm * (1.0 + 1e-12));
    }

    #[test]
    fn unit_focusing_is_nearest_at_life_size(lens in lens(studio)) {
        let lens = unit_focusing(lens);
        let nearest = 4.0 * lens.focal_length_mm + lens.principal_separation_mm;
        agree("at 1:1", lens.focused(1.0).sensor_distance_mm, nearest, SHARE * nearest.abs())?;
        prop_assert_eq!(magnification_at(&lens, nearest * 0.999).unwrap_err().kind, FaultKind::NoFocus);
        let m = answer(magnification_at(&lens, nearest * 1.001))?;
        prop_assert!(m < 1.0, "the smaller of the two roots");
        // The two roots' product is 1.
        let (near, far) = (lens.focused(m), lens.focused(1.0 / m));
        agree("both roots", near.sensor_distance_mm, far.sensor_distance_mm, 1e-14 * nearest)?;
    }

    #[test]
    fn a_viewpoint_gives_back_its_focal_length(
        lens in lens(whole),
        frame in whole("shot.frame_width_mm"),
        used in whole("used.width_mm"),
    ) {
        let lens = unit_focusing(lens);
        let s = lens.focused(used / frame).pupil_distance_mm;
        let range = range_of("viewpoint.pupil_distance_mm");
        if s < range.least || s > range.most {
            return Ok(());
        }
        let found = focal_length_for(s, frame, used, lens.pupil_ratio);
        match found {
            Ok(found) => agree("focal length", found, lens.focal_length_mm, SHARE * found)?,
            // At an end of the range rounding may lead out of it.
            Err(fault) => {
                prop_assert_eq!(fault.kind, FaultKind::NoFocalLength);
                let f = lens.focal_length_mm;
                prop_assert!(f <= 1.0 + 1e-12 || f >= 3000.0 * (1.0 - 1e-12));
            }
        }
    }

    /// The used part has the delivered shape, lies within the sensor as held, and touches two of its sides.
    #[test]
    fn the_used_area_is_the_largest_of_its_shape(
        width in whole("camera.sensor_width_mm"),
        height in whole("camera.sensor_height_mm"),
        format in format(),
    ) {
        let (hold, aspect) = format;
        let used = UsedArea::new(width, height, hold, aspect);
        let (across, upright) = if hold == Hold::Upright { (height, width) } else { (width, height) };
        prop_assert!(used.width_mm <= across * (1.0 + 1e-15) && used.height_mm <= upright * (1.0 + 1e-15));
        prop_assert!(used.width_mm == across || used.height_mm == upright);
        match aspect {
            Some(aspect) => {
                let shape = aspect.width / aspect.height;
                agree("shape", used.width_mm / used.height_mm, shape, SHARE * shape)?;
            }
            None => prop_assert_eq!((used.width_mm, used.height_mm), (across, upright)),
        }
        let other = if hold == Hold::Upright { Hold::Across } else { Hold::Upright };
        prop_assert_eq!(UsedArea::new(height, width, other, aspect), used);
        let diagonal = (width * width + height * height).sqrt();
        let circle = default_circle_of_confusion_mm(width, height);
        agree("circle of confusion", circle * 1500.0, diagonal, SHARE * diagonal)?;
    }
}
