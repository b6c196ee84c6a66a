//! Lens, focus and tolerance in straightforward Rust: the textbook's formulas, the standard library's functions.

use tablerig::brief::{Brief, Framing};
use tablerig::optics::lens::Lens;
use tablerig::optics::sensor::Hold;

#[derive(Clone, Debug)]
pub(crate) struct Focused {
    pub(crate) used: (f64, f64),
    pub(crate) frame: (f64, f64),
    pub(crate) m: f64,
    pub(crate) f: f64,
    pub(crate) sensor_distance: f64,
    pub(crate) image_distance: f64,
    pub(crate) object_distance: f64,
    pub(crate) s: f64,
    pub(crate) angles: [f64; 3],
}

fn focal_length(lens: &Lens, m: f64) -> f64 {
    match (lens.closest_focus_mm, lens.largest_magnification) {
        (Some(closest), Some(largest)) => {
            let at_closest = (closest - lens.principal_separation_mm) * largest / (1.0 + largest).powi(2);
            lens.focal_length_mm + (at_closest - lens.focal_length_mm) * (m / largest).min(1.0)
        }
        _ => lens.focal_length_mm,
    }
}

fn sensor_distance(lens: &Lens, m: f64) -> f64 {
    focal_length(lens, m) * (1.0 + m).powi(2) / m + lens.principal_separation_mm
}

pub(crate) fn focused(brief: &Brief) -> Focused {
    let (camera, lens) = (&brief.camera, &brief.lens);
    let (mut w, mut h) = (camera.sensor_width_mm, camera.sensor_height_mm);
    if brief.shot.hold == Hold::Upright {
        (w, h) = (h, w);
    }
    if let Some(aspect) = brief.shot.delivered_aspect {
        let shape = aspect.width / aspect.height;
        (w, h) = if shape > w / h { (w, w / shape) } else { (h * shape, h) };
    }
    let Framing::FrameWidthMm(width) = brief.shot.framing else { panic!("a frame width is asked for") };
    let m = w / width;
    let height = h / m;
    let f = focal_length(lens, m);
    let s = f * (1.0 / m + 1.0 / lens.pupil_ratio);
    let angle = |size: f64| (2.0 * (size / (2.0 * s)).atan()).to_degrees();
    Focused {
        used: (w, h),
        frame: (width, height),
        m,
        f,
        sensor_distance: sensor_distance(lens, m),
        image_distance: f * (1.0 + m),
        object_distance: f * (1.0 + 1.0 / m),
        s,
        angles: [angle(width), angle(height), angle(width.hypot(height))],
    }
}

#[derive(Clone, Debug)]
pub(crate) struct Sharp {
    pub(crate) circle: f64,
    pub(crate) n: f64,
    pub(crate) needed: f64,
    pub(crate) hold: Option<f64>,
    pub(crate) effective: f64,
    pub(crate) stops_lost: f64,
    pub(crate) disc: f64,
    pub(crate) limit: f64,
    pub(crate) near_limit: f64,
    pub(crate) in_front: f64,
    pub(crate) far_limit: f64,
    pub(crate) behind: f64,
    pub(crate) stack: Option<(f64, f64)>,
}

const ENGRAVED: [f64; 61] = [
    0.5, 0.56, 0.63, 0.7, 0.8, 0.9, 1.0, 1.1, 1.2, 1.4, 1.6, 1.8, 2.0, 2.2, 2.5, 2.8, 3.2, 3.5, 4.0, 4.5,
    5.0, 5.6, 6.3, 7.1, 8.0, 9.0, 10.0, 11.0, 13.0, 14.0, 16.0, 18.0, 20.0, 22.0, 25.0, 29.0, 32.0, 36.0,
    40.0, 45.0, 51.0, 57.0, 64.0, 72.0, 80.0, 90.0, 102.0, 114.0, 128.0, 144.0, 161.0, 181.0, 203.0, 228.0,
    256.0, 287.0, 323.0, 362.0, 406.0, 456.0, 512.0,
];
const DIFFRACTION_MM: f64 = 2.44 * 550e-6;

fn third(sixths: f64) -> f64 {
    (sixths / 6.0).exp2()
}

fn on_scale(n: f64) -> f64 {
    ENGRAVED.iter().position(|mark| *mark == n).map_or(n, |index| third(index as f64 - 6.0))
}

pub(crate) fn sharp(brief: &Brief, focused: &Focused, near: f64, far: f64) -> Sharp {
    let Focused { m, f, s, .. } = *focused;
    let p = brief.lens.pupil_ratio;
    let camera = &brief.camera;
    let circle = camera
        .circle_of_confusion_mm
        .unwrap_or_else(|| camera.sensor_width_mm.hypot(camera.sensor_height_mm) / 1500.0);
    let needed = if near >= s {
        f64::INFINITY
    } else {
        (m * f * near / (circle * (s - near))).max(m * f * far / (circle * (s + far))).max(0.0)
    };
    let limit = circle / (DIFFRACTION_MM * (1.0 + m / p));
    let (least, most) = (on_scale(brief.lens.least_f_number), on_scale(brief.lens.most_f_number));
    let hold = if needed <= least {
        Some(least)
    } else if needed <= most {
        Some(third((6.0 * needed.log2()).ceil()).min(most))
    } else {
        None
    };
    let best = third((6.0 * limit.log2()).floor()).max(least).min(most);
    let single = hold.is_some_and(|hold| hold <= limit || needed <= least);
    let n = brief.shot.f_number.unwrap_or(if single { hold.unwrap_or(best) } else { best });
    let (mf, nc, edge) = (m * f, n * circle, f / p);
    let stack = (!single && s - near > edge).then(|| {
        let a = best * circle / (f * p);
        let whole = ((1.0 - edge / (s + far)) / (1.0 - edge / (s - near))).ln();
        let piece = if a < 1.0 { ((1.0 + a) / (1.0 - a)).ln() } else { f64::INFINITY };
        let advance = piece * (1.0 - brief.shot.stack_overlap);
        let pictures = if whole <= piece { 1.0 } else { ((whole - piece) / advance + 1.0).ceil() };
        (pictures, s * (s - edge) / edge * advance)
    });
    Sharp {
        circle,
        n,
        needed,
        hold,
        effective: n * (1.0 + m / p),
        stops_lost: 2.0 * (1.0 + m / p).log2(),
        disc: DIFFRACTION_MM * n * (1.0 + m / p),
        limit,
        near_limit: mf * s / (mf + nc),
        in_front: s * nc / (mf + nc),
        far_limit: if nc < mf { mf * s / (mf - nc) } else { f64::INFINITY },
        behind: if nc < mf { s * nc / (mf - nc) } else { f64::INFINITY },
        stack,
    }
}

/// Hinge distance and tilt.
pub(crate) fn tilt(focused: &Focused, aim_height: f64, sin: f64, cos: f64) -> (f64, Option<f64>) {
    if cos <= 0.0 {
        return (f64::INFINITY, Some(0.0));
    }
    let hinge = (aim_height + focused.object_distance * sin) / cos;
    (hinge, (hinge >= focused.f).then(|| (focused.f / hinge).asin().to_degrees()))
}

/// Up, down, away, closer, and the drift of the roll.
pub(crate) fn tolerance(brief: &Brief, focused: &Focused) -> [f64; 5] {
    let (lens, shot, m) = (&brief.lens, &brief.shot, focused.m);
    let turn = match (lens.closest_focus_mm, lens.largest_magnification) {
        (Some(_), Some(largest)) => largest.max(1.0),
        _ => 1.0,
    };
    let (narrow, wide) = (m / (1.0 - shot.frame_width_tolerance), m / (1.0 + shot.frame_width_tolerance));
    let (near, far) = if m <= turn { (narrow.min(turn), wide) } else { (wide.max(turn), narrow) };
    let (near, far) = (sensor_distance(lens, near), sensor_distance(lens, far));
    let d = focused.sensor_distance;
    let (e, t) = (shot.elevation_deg.to_radians(), shot.elevation_tolerance_deg.to_radians());
    let (h, x) = (d * e.sin(), if shot.elevation_deg == 90.0 { 0.0 } else { d * e.cos() });
    let circle = |start: f64, across: f64| {
        if start < 0.0 && near > across.abs() {
            -start - ((near - across) * (near + across)).sqrt()
        } else {
            ((far - across) * (far + across)).sqrt() - start
        }
    };
    let ray = |towards: f64| if towards > 0.0 { d * t.sin() / towards } else { f64::INFINITY };
    let (more, less) = ((e + t).sin(), (e - t).sin());
    let (away, closer) = if h > 0.0 {
        (ray(less), ray(more))
    } else if h < 0.0 {
        (ray(-more), ray(-less))
    } else {
        (f64::INFINITY, f64::INFINITY)
    };
    [
        ray((e + t).cos()).min(circle(h, x)),
        ray((e - t).cos()).min(circle(-h, x)),
        away.min(circle(x, h)),
        closer.min(circle(-x, h)),
        focused.frame.0 * shot.roll_tolerance_deg.to_radians().tan(),
    ]
}
