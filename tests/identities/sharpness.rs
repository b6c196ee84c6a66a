//! Depth of field against the blur equation, f-numbers, and the focus stack against a loop that focuses
//! slice by slice.

use proptest::prelude::*;
use tablerig::brief::{Brief, Shot};
use tablerig::optics::focus::{
    FocusWish, WAVELENGTH_MM, blur_mm, depth_of_field, diffraction_disc_mm, diffraction_limit_f_number,
    f_number_to_hold, focus, stack, third_stop_down, third_stop_up,
};
use tablerig::optics::lens::{FocusedLens, Lens};

use crate::briefs::{plan_of, studio_brief};
use crate::draws::{runs, studio, whole};
use crate::gear::lens;
use crate::space::agree;

const STEP: f64 = 1.122_462_048_309_373;

/// Blur from the cone of light alone: the entrance pupil, f / N across, pictured on the plane in focus, and
/// that plane on the sensor.
fn cone(lens: &FocusedLens, n: f64, x: f64) -> f64 {
    let pupil = lens.focal_length_mm / n;
    let in_focus_plane = pupil * ((lens.pupil_distance_mm - x) / x).abs();
    in_focus_plane * lens.magnification
}

proptest! {
    #![proptest_config(runs(800))]

    #[test]
    fn blur_at_the_limits_is_the_limit_of_blur(
        lens in lens(studio),
        m in studio("magnification"),
        n in studio("shot.f_number"),
        c in studio("camera.circle_of_confusion_mm"),
    ) {
        let lens = lens.focused(m);
        let s = lens.pupil_distance_mm;
        let sharp = depth_of_field(&lens, n, c);
        // Blur falls to nothing at s: its rounding is that of the distances there.
        let allowed = |x: f64| 1e-15 * (lens.focal_length_mm / n * m) * (s / x) * 4.0 + 1e-14 * c;
        agree("near", cone(&lens, n, sharp.near_limit_mm), c, allowed(sharp.near_limit_mm))?;
        agree("near", blur_mm(&lens, n, sharp.near_limit_mm), c, allowed(sharp.near_limit_mm))?;
        agree("in front", sharp.in_front_mm, s - sharp.near_limit_mm, 4e-16 * s)?;
        let at_infinity = lens.focal_length_mm / n * m;
        if sharp.far_limit_mm.is_finite() {
            prop_assert!(at_infinity > c);
            // Next to the hyperfocal distance the blur hardly changes any more with the distance.
            agree("far", cone(&lens, n, sharp.far_limit_mm), c, allowed(s))?;
            agree("behind", sharp.behind_mm, sharp.far_limit_mm - s, 4e-16 * sharp.far_limit_mm)?;
            prop_assert!(sharp.behind_mm > sharp.in_front_mm);
            // The sharp zone's ends are in harmony with the plane in focus.
            let mean = 2.0 / (1.0 / sharp.near_limit_mm + 1.0 / sharp.far_limit_mm);
            agree("harmonic mean", mean, s, 4e-15 * s)?;
        } else {
            prop_assert!(at_infinity <= c && sharp.behind_mm.is_infinite());
            prop_assert!(sharp.near_limit_mm <= 0.5 * s * (1.0 + 1e-15), "hyperfocal: at most half way");
        }
    }

    #[test]
    fn the_f_number_needed_just_holds_the_subject(
        lens in lens(studio),
        m in studio("magnification"),
        nearest in -300.0..300.0_f64,
        behind in -300.0..300.0_f64,
        c in studio("camera.circle_of_confusion_mm"),
    ) {
        let lens = lens.focused(m);
        let s = lens.pupil_distance_mm;
        // A subject may lie wholly before or wholly behind the plane in focus.
        let farthest = behind.max(-nearest);
        let n = f_number_to_hold(&lens, nearest, farthest, c);
        if nearest >= s {
            prop_assert!(n.is_infinite());
            return Ok(());
        }
        if n > 0.0 {
            let near = if nearest > 0.0 { cone(&lens, n, s - nearest) } else { 0.0 };
            let far = if farthest > 0.0 { cone(&lens, n, s + farthest) } else { 0.0 };
            // The small distance is had back as a difference of the large ones.
            let allowed = 1e-12 * c * (1.0 + s / nearest.abs().max(farthest.abs()));
            agree("largest blur", near.max(far), c, allowed)?;
            let sharp = depth_of_field(&lens, n * (1.0 + 1e-9), c);
            prop_assert!(sharp.in_front_mm >= nearest && sharp.behind_mm >= farthest);
            let less = depth_of_field(&lens, n * (1.0 - 1e-9), c);
            prop_assert!(less.in_front_mm < nearest || less.behind_mm < farthest);
        } else {
            prop_assert!(nearest <= 0.0 && farthest <= 0.0);
        }
    }

    #[test]
    fn third_stops_go_up_and_down(n in whole("shot.f_number")) {
        let (up, down) = (third_stop_up(n), third_stop_down(n));
        prop_assert!(up.f_number >= n && up.f_number < n * STEP * (1.0 + 1e-15));
        prop_assert!(down.f_number <= n && down.f_number > n / STEP * (1.0 - 1e-15) || n < 0.5 * STEP);
        prop_assert_eq!(third_stop_up(up.f_number), up);
        prop_assert_eq!(third_stop_down(down.f_number), down);
        prop_assert_eq!(third_stop_down(up.f_number), up);
        // A whole number of thirds of a stop from f/1.
        let thirds = 6.0 * up.f_number.log2();
        agree("thirds", thirds, thirds.round(), 1e-13)?;
        // What is engraved is never half a step off: f/1.2 for 1.26 is the worst.
        prop_assert!((up.engraved / up.f_number - 1.0).abs() < 0.05, "{up:?}");
        if up != down {
            agree("next", up.f_number / down.f_number, STEP, 1e-15)?;
            prop_assert!(up.engraved > down.engraved);
        }
    }

    #[test]
    fn diffraction_reaches_the_blur_limit_where_it_is_said_to(
        lens in lens(studio),
        m in studio("magnification"),
        c in studio("camera.circle_of_confusion_mm"),
    ) {
        let lens = lens.focused(m);
        let limit = diffraction_limit_f_number(&lens, c);
        agree("disc", diffraction_disc_mm(&lens, limit), c, 1e-15 * c)?;
        // The first dark ring of a round opening, 1.21967 λ/d either side (encyclopaedia, Airy disk): the
        // customary 2.44 is 0.027 % high.
        let exit = lens.pupil_ratio * lens.focal_length_mm / limit;
        let behind = lens.image_distance_mm - lens.focal_length_mm * (1.0 - lens.pupil_ratio);
        let ring = 2.0 * 1.21967 * WAVELENGTH_MM / exit * behind;
        agree("dark ring", ring, c, 3e-4 * c)?;
    }

    /// The opening chosen holds the subject, no third stop wider does, and where the diffraction limit stands
    /// in the way there is a stack at that limit.
    #[test]
    fn the_opening_chosen_is_the_widest_that_holds(brief in studio_brief()) {
        let brief = Brief { shot: Shot { f_number: None, ..brief.shot }, ..brief };
        let plan = plan_of(&brief);
        let focus = &plan.focus;
        let (n, needed, limit) = (focus.f_number, focus.f_number_needed, focus.diffraction_limit_f_number);
        // Engraved f-numbers stand for third stops that lie up to 5 % beside them.
        let (least, most) = (0.95 * brief.lens.least_f_number, 1.05 * brief.lens.most_f_number);
        prop_assert!(n >= least && n <= most);
        prop_assert_eq!(focus.subject_held, n >= needed);
        let sharp = &focus.depth_of_field;
        let eps = 1e-12 * plan.lens.pupil_distance_mm;
        let holds = sharp.in_front_mm >= plan.subject_depth.nearest_mm - eps
            && sharp.behind_mm >= plan.subject_depth.farthest_mm - eps;
        prop_assert!(!focus.subject_held || holds);
        let widest = n < brief.lens.least_f_number * 1.05;
        match focus.stack {
            None => {
                // Where the subject reaches the lens no picture and no stack holds it.
                let edge = plan.lens.focal_length_mm / plan.lens.pupil_ratio;
                let reached = plan.lens.pupil_distance_mm - plan.subject_depth.nearest_mm <= edge;
                prop_assert!(focus.subject_held || reached);
                let third_wider_holds = n / STEP * (1.0 - 1e-12) >= needed;
                prop_assert!(!focus.subject_held || widest || (n <= limit && !third_wider_holds));
            }
            Some(stack) => {
                prop_assert_eq!((stack.f_number, stack.engraved), (n, focus.engraved));
                prop_assert!(n <= limit || widest);
                // The next third stop would be over the limit, or is not on the lens.
                prop_assert!(n * STEP * (1.0 + 1e-12) > limit || n * STEP > 0.95 * brief.lens.most_f_number);
                prop_assert!(needed * STEP > limit || needed > 0.95 * brief.lens.most_f_number);
            }
        }
    }

    #[test]
    fn a_stack_is_as_long_as_its_slices_counted_one_by_one(
        lens in lens(studio),
        m in 0.02..1.0_f64,
        n in 5.6..16.0_f64,
        depth in (5.0..200.0_f64, 5.0..200.0_f64),
        overlap in 0.0..0.6_f64,
    ) {
        let lens = Lens { closest_focus_mm: None, ..lens };
        let at = lens.focused(m);
        let s = at.pupil_distance_mm;
        let (nearest, farthest) = (depth.0.min(0.3 * s), depth.1);
        let c = 0.02;
        let wish = FocusWish {
            nearest_mm: nearest,
            farthest_mm: farthest,
            circle_of_confusion_mm: c,
            f_number: None,
            stack_overlap: overlap,
        };
        let edge = at.focal_length_mm / at.pupil_ratio;
        let Some(found) = stack(&at, third_stop_up(n), &wish) else {
            prop_assert!(s - nearest <= edge);
            return Ok(());
        };
        if s - nearest < edge * 1.001 || found.pictures > 400 {
            return Ok(());
        }
        // Slightly less and slightly more to hold: the count lies between.
        let counts = [-1e-7, 1e-7].map(|off| {
            let (near, far) = (s - nearest - off, s + farthest + off);
            slices(&lens, found.f_number, c, [near, far], overlap)
        });
        prop_assert!(counts[0] <= found.pictures && found.pictures <= counts[1], "{counts:?}, {found:?}");
    }
}

/// Pictures from the nearest to the farthest distance from the pupil, each focused by itself so that its
/// near limit is where the last one's sharpness, less the overlap, ends.
fn slices(lens: &Lens, n: f64, c: f64, [near, far]: [f64; 2], overlap: f64) -> u32 {
    let edge = lens.focal_length_mm / lens.pupil_ratio;
    // The measure in which slices of one opening are equally deep.
    let depth = |x: f64| (1.0 - edge / x).ln();
    let back = |depth: f64| edge / (1.0 - depth.exp());
    let mut start = near;
    let mut count = 1;
    loop {
        let (mut low, mut high) = (1e-9_f64, 1e9_f64);
        while high / low > 1.0 + 1e-15 {
            let middle = (low * high).sqrt();
            if middle <= low || middle >= high {
                break;
            }
            if depth_of_field(&lens.focused(middle), n, c).near_limit_mm > start {
                low = middle
            } else {
                high = middle
            }
        }
        let end = depth_of_field(&lens.focused(low), n, c).far_limit_mm;
        if end >= far || count > 500 {
            return count;
        }
        start = if overlap > 0.0 { back(depth(end) - overlap * (depth(end) - depth(start))) } else { end };
        count += 1;
    }
}

/// The step is the way from one plane of focus to the next, at the aim point.
#[test]
fn a_step_of_the_stack_leads_to_the_next_plane() {
    let lens = crate::workshop::lens(100.0);
    let at = lens.focused(0.5);
    let wish = FocusWish {
        nearest_mm: 20.0,
        farthest_mm: 20.0,
        circle_of_confusion_mm: 0.02,
        f_number: None,
        stack_overlap: 0.0,
    };
    let found = stack(&at, third_stop_up(8.0), &wish).unwrap();
    let c = wish.circle_of_confusion_mm;
    // The next plane: the one whose near limit is this one's far limit.
    let far = depth_of_field(&at, 8.0, c).far_limit_mm;
    let (mut low, mut high) = (0.1, 0.5);
    for _ in 0..200 {
        let middle = 0.5 * (low + high);
        if depth_of_field(&lens.focused(middle), 8.0, c).near_limit_mm > far {
            low = middle
        } else {
            high = middle
        }
    }
    let next = lens.focused(low).pupil_distance_mm;
    // The step is the differential at the aim point: half a step away it has changed by step / distance.
    let step = next - at.pupil_distance_mm;
    agree("step", found.step_mm, step, 2.0 * step * step / at.pupil_distance_mm).unwrap();
    assert!(step > 0.9, "{step}");
}

#[test]
fn the_hold_prefers_the_brighter_opening_where_the_subject_is_flat() {
    let lens = crate::workshop::lens(90.0);
    let wish = FocusWish {
        nearest_mm: 0.0,
        farthest_mm: 0.0,
        circle_of_confusion_mm: 0.03,
        f_number: None,
        stack_overlap: 0.3,
    };
    let found = focus(&lens, &lens.focused(0.1), &wish, false);
    assert_eq!((found.f_number_needed, found.engraved, found.stack), (0.0, 2.8, None));
}
