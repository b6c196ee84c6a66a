//! How long a whole shoot file takes, from its text to the printed sheet: 40 shots, each open in 12 lenses, 6
//! supports and 4 sides of the table.
//!
//! Run with `cargo bench --features sheet,shootfile --bench shoot_file`.

#![allow(missing_docs)]

use std::fmt::Write;
use std::hint::black_box;
use std::time::{Duration, Instant};

use tablerig::draw::LengthUnit;
use tablerig::shootfile::whole::Whole;
use tablerig::shootfile::{Form, read};

/// The shortest of several runs.
fn shortest<T>(runs: usize, mut run: impl FnMut() -> T) -> Duration {
    let timed = (0..runs).map(|_| {
        let began = Instant::now();
        black_box(run());
        began.elapsed()
    });
    timed.min().unwrap_or_default()
}

fn told(what: &str, count: usize, of: &str, took: Duration) {
    println!("{what:34} {count:6} {of:8} {:9.2} ms", 1000.0 * took.as_secs_f64());
}

/// The file. Everything in it is invented.
fn text() -> String {
    let mut text = String::from(
        "[camera.body]\nsensor_width_mm = 36\nsensor_height_mm = 24\nsocket_ahead_mm = 12\nsocket_below_mm = 42\n\
         body_above_mm = 58\nbody_behind_mm = 34\nmass_kg = 0.74\n\
         [table.top]\nwidth_mm = 1400\ndepth_mm = 800\nheight_mm = 760\n\
         [bay.room]\nleft_mm = 3000\nright_mm = 3000\nfront_mm = 3500\nback_mm = 2500\nceiling_mm = 3200\n\
         [kit]\n[weights]\ncounterweights = [{ mass_kg = 0.5 }, { mass_kg = 1.25 }]\nbase_weights = [{ mass_kg = 7 }]\n",
    );
    for lens in 0..12 {
        let focal = 28.0 + 1.3 * f64::from(lens * lens);
        writeln!(
            text,
            "[lens.l{lens}]\nfocal_length_mm = {focal:.0}\nclosest_focus_mm = {:.0}\nleast_f_number = 2.8\n\
             most_f_number = 32\nfront_from_sensor_mm = {:.0}\nmass_kg = {:.2}\ncentre_ahead_mm = 70",
            5.0 * focal,
            60.0 + focal,
            0.3 + 0.004 * focal,
        )
        .expect("a text takes everything");
    }
    for support in 0..6 {
        writeln!(
            text,
            "[support.s{support}]\nlowest_pivot_mm = 600\nhighest_pivot_mm = {}\ncolumn_radius_mm = 18\nleg_count = 3\n\
             foot_radius_mm = {}\nlegs_top_mm = 700\ntable_clearance_mm = 30\nmass_kg = {}\ncentre_height_mm = 600\n\
             head = {{ mass_kg = 0.5, pivot_below_socket_mm = 90 }}",
            2000 + 200 * support,
            450 + 50 * support,
            4 + support,
        )
        .expect("a text takes everything");
        if support > 1 {
            writeln!(
                text,
                "boom = {{ longest_reach_mm = {}, tail_mm = 550, mass_kg = 1.6 }}",
                700 + 150 * support
            )
            .expect("a text takes everything");
        }
    }
    for shot in 0..40 {
        writeln!(
            text,
            "[[shot]]\nname = \"shot-{shot}\"\nelevation_deg = {}\nframe_width_mm = {}\nside = \"any\"\nsurface = \"cloth-{}\"",
            (shot * 37) % 91,
            200 + (shot * 53) % 700,
            shot % 5,
        )
        .expect("a text takes everything");
        writeln!(
            text,
            "subject = {{ width_mm = 150, depth_mm = 100, height_mm = {} }}",
            20 + (shot * 7) % 120
        )
        .expect("a text takes everything");
    }
    text
}

fn main() {
    let text = text();
    let file = read(&text, Form::Toml).unwrap_or_else(|problems| panic!("{problems:?}"));
    let plans: usize =
        file.shots.iter().filter_map(|shot| shot.chosen.as_ref()).map(|chosen| chosen.planned).sum();
    let possible =
        file.shots.iter().filter(|shot| shot.chosen.as_ref().is_some_and(|chosen| chosen.possible > 0));
    println!("{} shots, {} of which can be done", file.shots.len(), possible.count());
    told("read, choose, weigh and plan", plans, "plans", shortest(10, || read(black_box(&text), Form::Toml)));
    let whole = Whole::new(&file, &[]);
    told("order", 40, "shots", shortest(5, || whole.order()));
    told("booking request", 40, "shots", shortest(10, || whole.booking()));
    told("pull list", 40, "shots", shortest(5, || whole.pull_list()));
    told("fit of the bays", 40, "shots", shortest(10, || whole.fits()));
    let all = || {
        let file = read(black_box(&text), Form::Toml).ok()?;
        let whole = Whole::new(&file, &[]);
        let pulled = whole.pull_list().ok()?.supports.len();
        Some((whole.order().ok()?, whole.booking()?, pulled, whole.fits().len()))
    };
    told("all of that together", plans, "plans", shortest(5, all));
    told("the sheet, 120 drawings", 40, "pages", shortest(3, || whole.sheet(LengthUnit::Centimetres, None)));
}
