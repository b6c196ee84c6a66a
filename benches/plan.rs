//! One plan, each of its parts, batches, and the doors: nanoseconds to look at. Ratios, which need both sides timed
//! in turns, are `ratios`' work.
//!
//! Divan: its whole build is a third of the alternative's, it counts allocations, and it prints a tree that a person
//! reads at a glance. Run with `cargo bench --features capi,text-door-drawings --bench plan`.

#![allow(missing_docs)]

#[allow(dead_code, unused_imports, reason = "each bench uses its part")]
mod floor;
#[path = "../tests/door/memory.rs"]
#[allow(dead_code, reason = "each file uses its part")]
mod memory;
#[allow(dead_code, reason = "each bench uses its part")]
mod mix;
#[allow(dead_code, reason = "each bench uses its part")]
mod parts;
#[path = "../tests/door/set.rs"]
#[allow(dead_code, reason = "each file uses its part")]
mod set;
#[path = "../tests/workshop/mod.rs"]
mod workshop;

use std::hint::black_box;

use divan::counter::ItemsCount;
use divan::{AllocProfiler, Bencher};

use tablerig::doors::c::border::mirror::Plain;
use tablerig::doors::c::plan::{tablerig_plan, tablerig_plan_batch};
use tablerig::doors::c::status::Fault;
use tablerig::doors::text::answer;
use tablerig::draw::{Style, above, picture, side};
use tablerig::plan::plan;
use tablerig::scene::table::Side;
use tablerig::shoot::choose::choose;
use tablerig::shoot::kit::{Candidate, Kit};
use tablerig::shootfile::DEMO;

#[global_allocator]
static ALLOCATIONS: AllocProfiler = AllocProfiler::system();

fn main() {
    divan::main();
}

#[divan::bench(args = ["overhead", "slanting"])]
fn one(bencher: Bencher, name: &str) {
    let brief = if name == "overhead" { workshop::overhead() } else { workshop::slanting() };
    bencher.bench(|| plan(black_box(&brief)));
}

#[divan::bench(args = parts::ALL.map(|part| part.name))]
fn part_of_the_mix(bencher: Bencher, name: &str) {
    let part =
        parts::ALL.into_iter().find(|part| part.name == name).unwrap_or_else(|| panic!("no part {name}"));
    let cases: Vec<parts::Case> = mix::briefs(300).iter().filter_map(parts::Case::new).collect();
    bencher.counter(ItemsCount::new(cases.len())).bench(|| cases.iter().for_each(part.run));
}

/// How many plans are kept: a caller of a million folds each into what it wants of it.
const WINDOW: usize = 1000;

#[divan::bench(args = [1, 1000, 1_000_000], max_time = 10)]
fn batch_in_rust(bencher: Bencher, count: usize) {
    let briefs = mix::briefs(count);
    let mut plans: Vec<_> = briefs.iter().take(WINDOW).map(plan).collect();
    bencher.counter(ItemsCount::new(count)).bench_local(|| {
        for briefs in briefs.chunks(WINDOW) {
            for (brief, out) in briefs.iter().zip(&mut plans) {
                *out = plan(brief);
            }
            black_box(&plans);
        }
    });
}

#[divan::bench(args = [1, 1000, 1_000_000], max_time = 10)]
fn batch_through_c(bencher: Bencher, count: usize) {
    let sets: Vec<_> = mix::briefs(count).iter().map(set::Set::new).collect();
    let briefs: Vec<_> = sets.iter().map(set::Set::brief).collect();
    let mut plans = vec![set::empty_plan(); WINDOW.min(count)];
    let mut statuses = vec![0; WINDOW.min(count)];
    bencher.counter(ItemsCount::new(count)).bench_local(|| {
        for briefs in briefs.chunks(WINDOW) {
            // SAFETY: arrays of as many elements as are told, or more.
            unsafe {
                tablerig_plan_batch(
                    briefs.as_ptr(),
                    size_of_val(&briefs[0]),
                    plans.as_mut_ptr(),
                    size_of_val(&plans[0]),
                    briefs.len(),
                    statuses.as_mut_ptr(),
                    std::ptr::null_mut(),
                )
            };
            black_box(&plans);
        }
    });
}

#[divan::bench]
fn one_through_c(bencher: Bencher) {
    let set = set::Set::new(&workshop::overhead());
    let brief = set.brief();
    let (mut out, mut fault) = (set::empty_plan(), Fault::ZERO);
    // SAFETY: a brief with its parts, a plan of its size, a fault.
    bencher.bench_local(|| unsafe { tablerig_plan(black_box(&brief), &raw mut out, &raw mut fault) });
}

#[divan::bench]
fn choosing_over_a_kit(bencher: Bencher) {
    let lenses = [24.0, 35.0, 50.0, 60.0, 90.0, 105.0].map(workshop::lens);
    let supports = [workshop::stand(), workshop::tripod()];
    let kit = Kit { lenses: &lenses, supports: &supports, sides: &Side::ALL };
    let mut places = vec![Candidate::VACANT; kit.most_combinations()];
    let shot = workshop::overhead();
    bencher
        .counter(ItemsCount::new(kit.most_combinations()))
        .bench_local(|| choose(black_box(&shot), &kit, &mut places).map(|choice| choice.possible));
}

/// A question with the whole demo given, about one of its shots where the operation takes one.
fn asked(operation: &str) -> String {
    let shot = if operation == "read" { "" } else { r#", "shot": "loaf""# };
    let shoot = format!("{DEMO:?}");
    format!(r#"{{"operation": "{operation}", "shoot": {shoot}{shot}}}"#)
}

#[divan::bench(args = ["plan", "choose", "read"])]
fn text_door(bencher: Bencher, operation: &str) {
    let request = asked(operation);
    assert!(answer(&request).starts_with(r#"{"ok""#), "{operation} is refused");
    bencher.bench(|| answer(black_box(&request)));
}

#[divan::bench(args = ["side", "above", "picture"])]
fn drawing(bencher: Bencher, what: &str) {
    let brief = workshop::slanting();
    let Ok(plan) = plan(&brief) else { return };
    let draw = match what {
        "side" => side,
        "above" => above,
        _ => picture,
    };
    bencher.bench(|| draw(black_box(&brief), &plan, &Style::DEFAULT));
}
