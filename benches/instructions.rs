//! Runs one entry point once under its own name, for counting its instructions: `.ci/instructions` runs this under
//! callgrind. Inputs are fixed; what happens once a process has happened before the count begins.

#![allow(missing_docs)]

#[path = "../tests/door/memory.rs"]
#[allow(dead_code, reason = "each file uses its part")]
mod memory;
#[allow(dead_code, reason = "each bench uses its part")]
mod mix;
#[path = "../tests/door/set.rs"]
#[allow(dead_code, reason = "each file uses its part")]
mod set;
#[path = "../tests/workshop/mod.rs"]
mod workshop;

use std::hint::black_box;

use tablerig::advice::advice;
use tablerig::brief::{Brief, Framing, Shot};
use tablerig::doors::c::plan::{tablerig_plan, tablerig_plan_batch};
use tablerig::doors::text::answer;
use tablerig::draw::{Style, side};
use tablerig::plan::{Plan, plan};
use tablerig::scene::subject::{JudgedBy, Shape, Subject, Vessel};
use tablerig::scene::table::Side;
use tablerig::shoot::choose::choose;
use tablerig::shoot::kit::{Candidate, Kit};
use tablerig::shootfile::DEMO;
use tablerig::tolerance::{ToleranceWish, tolerance};
use tablerig::view::pose::Orientation;

/// What is counted: callgrind collects inside this function alone.
#[inline(never)]
#[unsafe(no_mangle)]
fn tablerig_counted(run: &mut dyn FnMut()) {
    run();
}

/// A level jar with contents, on a tripod.
fn level() -> Brief {
    Brief {
        shot: Shot { backdrop_behind_mm: Some(600.0), ..Shot::new(2.0, 350.0) },
        subject: Subject {
            shape: Shape::Round { diameter_mm: 90.0 },
            height_mm: 160.0,
            vessel: Some(Vessel { inside_diameter_mm: 80.0, contents_below_rim_mm: 20.0 }),
            judged_by: JudgedBy::ClearLayers,
        },
        lens: workshop::lens(60.0),
        ..workshop::slanting()
    }
}

/// A box whose share of the frame is asked for, from a boom that rises, over a table off its middle.
fn filled() -> Brief {
    let mut brief = workshop::overhead();
    brief.shot = Shot {
        framing: Framing::FillWidth(0.5),
        bearing_deg: 25.0,
        aim_x_mm: 120.0,
        ..Shot::new(55.0, 500.0)
    };
    brief.subject = Subject {
        shape: Shape::Box { width_mm: 180.0, depth_mm: 120.0 },
        height_mm: 60.0,
        vessel: None,
        judged_by: JudgedBy::TopDetail,
    };
    if let Some(boom) = &mut brief.support.boom {
        boom.pitch_deg = 12.0;
    }
    brief.support.first_leg_deg = Some(17.0);
    brief
}

/// A bowl straight from above, judged by its contents, in a bay.
fn bowl() -> Brief {
    let mut brief = workshop::overhead();
    brief.subject = Subject {
        shape: Shape::Round { diameter_mm: 220.0 },
        height_mm: 80.0,
        vessel: Some(Vessel { inside_diameter_mm: 200.0, contents_below_rim_mm: 25.0 }),
        judged_by: JudgedBy::Contents,
    };
    brief.shot.aim_height_mm = None;
    brief.shot.f_number = None;
    brief.bay.ceiling_mm = Some(2600.0);
    brief.bay.left_mm = Some(2000.0);
    brief.bay.right_mm = Some(2000.0);
    brief
}

fn planned(brief: Brief) -> Box<dyn FnMut()> {
    Box::new(move || {
        let _ = black_box(plan(black_box(&brief)));
    })
}

fn through_c() -> Box<dyn FnMut()> {
    let set: &'static set::Set = Box::leak(Box::new(set::Set::new(&workshop::overhead())));
    let (brief, mut out) = (set.brief(), set::empty_plan());
    Box::new(move || {
        // SAFETY: a brief with its parts, which stay, a plan of its size, no fault.
        black_box(unsafe { tablerig_plan(black_box(&brief), &raw mut out, std::ptr::null_mut()) });
    })
}

fn batch_through_c() -> Box<dyn FnMut()> {
    let sets: &'static [set::Set] = Box::leak(mix::briefs(1000).iter().map(set::Set::new).collect());
    let briefs: Vec<_> = sets.iter().map(set::Set::brief).collect();
    let (mut out, mut statuses) = (vec![set::empty_plan(); briefs.len()], vec![0; briefs.len()]);
    Box::new(move || {
        // SAFETY: arrays of as many elements as are told, the briefs' parts stay.
        black_box(unsafe {
            tablerig_plan_batch(
                briefs.as_ptr(),
                size_of_val(&briefs[0]),
                out.as_mut_ptr(),
                size_of_val(&out[0]),
                briefs.len(),
                statuses.as_mut_ptr(),
                std::ptr::null_mut(),
            )
        });
    })
}

fn batch() -> Box<dyn FnMut()> {
    let briefs = mix::briefs(1000);
    let mut plans: Vec<_> = briefs.iter().map(plan).collect();
    Box::new(move || {
        for (brief, out) in black_box(&briefs).iter().zip(&mut plans) {
            *out = plan(brief);
        }
    })
}

fn tolerated() -> Box<dyn FnMut()> {
    let brief = workshop::slanting();
    let Brief { shot, lens, .. } = brief;
    let wish = ToleranceWish {
        elevation_deg: shot.elevation_tolerance_deg,
        frame_width: shot.frame_width_tolerance,
        roll_deg: shot.roll_tolerance_deg,
    };
    let at = Orientation::new(shot.elevation_deg, shot.bearing_deg);
    let focused = lens.focused(0.04);
    Box::new(move || {
        black_box(tolerance(&lens, black_box(&focused), shot.elevation_deg, &at, 900.0, &wish));
    })
}

fn advised() -> Box<dyn FnMut()> {
    let subject = bowl().subject;
    Box::new(move || {
        black_box(advice(black_box(&subject), 25.0));
    })
}

fn chosen() -> Box<dyn FnMut()> {
    let lenses = [24.0, 35.0, 50.0, 60.0, 90.0, 105.0].map(workshop::lens);
    let supports = [workshop::stand(), workshop::tripod()];
    let shot = workshop::overhead();
    Box::new(move || {
        let kit = Kit { lenses: &lenses, supports: &supports, sides: &Side::ALL };
        let mut places = [Candidate::VACANT; 64];
        let _ = black_box(choose(black_box(&shot), &kit, &mut places));
    })
}

fn text_door() -> Box<dyn FnMut()> {
    let shoot = format!("{DEMO:?}");
    let request = format!(r#"{{"operation": "plan", "shoot": {shoot}, "shot": "loaf"}}"#);
    Box::new(move || {
        black_box(answer(black_box(&request)));
    })
}

fn drawn() -> Box<dyn FnMut()> {
    let brief = workshop::slanting();
    let plan: Option<Plan> = plan(&brief).ok();
    Box::new(move || {
        if let Some(plan) = &plan {
            black_box(side(black_box(&brief), plan, &Style::DEFAULT));
        }
    })
}

/// An entry point with what makes it ready to run.
type Entry = (&'static str, fn() -> Box<dyn FnMut()>);

const ENTRIES: [Entry; 13] = [
    ("plan-overhead", || planned(workshop::overhead())),
    ("plan-slanting", || planned(workshop::slanting())),
    ("plan-level-jar", || planned(level())),
    ("plan-filled-box", || planned(filled())),
    ("plan-bowl", || planned(bowl())),
    ("plan-batch-of-1000", batch),
    ("c-plan-overhead", through_c),
    ("c-plan-batch-of-1000", batch_through_c),
    ("tolerance", tolerated),
    ("advice", advised),
    ("choose-over-a-kit", chosen),
    ("text-door-plan", text_door),
    ("draw-side", drawn),
];

fn main() {
    let asked = std::env::args().nth(1).unwrap_or_default();
    let found = ENTRIES.iter().find(|entry| entry.0 == asked);
    let Some((_, ready)) = found else {
        ENTRIES.iter().for_each(|entry| println!("{}", entry.0));
        return;
    };
    let mut run = ready();
    // Once outside the count: what a process does once is done.
    run();
    tablerig_counted(&mut run);
}
