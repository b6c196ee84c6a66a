//! What a plan takes against what it cannot do without, choosing and the text door likewise, through C against through
//! Rust, a million against a thousand, two threads against one: each pair timed in turns within this process (a standard harness times one way after the
//! other, and this machine is shared). Prints a table, and the same as tab-separated lines with `figures` as argument.
//!
//! Run with `cargo bench --features capi,text-door --bench ratios`. A million plans that are kept take 5 GB.

#![allow(missing_docs)]

mod asked;
mod floor;
#[path = "../tests/door/memory.rs"]
#[allow(dead_code, reason = "each file uses its part")]
mod memory;
mod mix;
mod parts;
#[path = "../tests/door/set.rs"]
#[allow(dead_code, reason = "each file uses its part")]
mod set;
mod turns;
#[path = "../tests/workshop/mod.rs"]
mod workshop;

use std::alloc::{GlobalAlloc, Layout, System};
use std::hint::black_box;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::Instant;

use floor::{Calls, Part, needed};
use parts::Case;
use tablerig::brief::Brief;
use tablerig::doors::c::plan::{tablerig_plan, tablerig_plan_batch};
use tablerig::fault::Fault;
use tablerig::plan::{Plan, plan};
use turns::in_turns;

/// The system's allocator, counted.
struct Counted;

static ALLOCATIONS: AtomicUsize = AtomicUsize::new(0);

// SAFETY: the system's own, unchanged.
unsafe impl GlobalAlloc for Counted {
    unsafe fn alloc(&self, layout: Layout) -> *mut u8 {
        ALLOCATIONS.fetch_add(1, Ordering::Relaxed);
        // SAFETY: as promised to this one.
        unsafe { System.alloc(layout) }
    }

    unsafe fn dealloc(&self, pointer: *mut u8, layout: Layout) {
        // SAFETY: as promised to this one.
        unsafe { System.dealloc(pointer, layout) }
    }
}

#[global_allocator]
static ALLOCATOR: Counted = Counted;

type Planned = Result<Plan, Fault>;

/// A batch in Rust: the caller's own slices.
fn plan_each(briefs: &[Brief], plans: &mut [Planned]) {
    for (brief, out) in briefs.iter().zip(plans) {
        *out = plan(brief);
    }
}

/// Prints what was found, one figure a line.
struct Table {
    tabs: bool,
}

impl Table {
    fn row(&self, key: &str, what: &str, value: f64, unit: &str) {
        if self.tabs {
            println!("{key}\t{value:.4}\t{unit}\t{what}");
        } else {
            println!("{what:<62} {value:>12.3} {unit}");
        }
    }

    fn head(&self, text: &str) {
        if !self.tabs {
            println!("\n{text}");
        }
    }
}

fn together(cases: &[Case], only: Option<&[Part]>) -> Calls {
    let mut all = Calls::default();
    for case in cases {
        for (part, calls) in needed(&case.brief, &case.plan) {
            if only.is_none_or(|only| only.contains(&part)) {
                all.append(&calls);
            }
        }
    }
    all
}

fn against_floor(table: &Table, name: &str, cases: &[Case], turns: usize) {
    let calls = together(cases, None);
    let count = cases.len();
    let mut out: [Planned; 1] = [Ok(cases[0].plan)];
    let timed = in_turns(
        turns,
        &mut [
            &mut || {
                for case in cases {
                    out[0] = plan(black_box(&case.brief));
                    black_box(&out);
                }
            },
            &mut || {
                black_box(black_box(&calls).make());
            },
            &mut || {
                for case in cases {
                    let _ = black_box(black_box(&case.brief).check());
                }
            },
        ],
    );
    let [whole, floor, checks] = &timed[..] else { return };
    table.head(&format!("A plan, {name}"));
    table.row(&format!("plan.{name}.least_ns"), "plan, least", whole.least_ns(count), "ns");
    table.row(&format!("plan.{name}.median_ns"), "plan, median", whole.median_ns(count), "ns");
    table.row(&format!("floor.{name}.least_ns"), "its floor, least", floor.least_ns(count), "ns");
    table.row(
        &format!("checks.{name}.least_ns"),
        "of the plan: checking the brief",
        checks.least_ns(count),
        "ns",
    );
    table.row(&format!("plan.{name}.over_floor"), "plan / floor, least of each", whole.least_over(floor), "");
    for (function, calls) in calls.counts() {
        let each = calls as f64 / count as f64;
        table.row(&format!("floor.{name}.{function}"), &format!("    calls of {function}"), each, "a plan");
    }
}

fn part_by_part(table: &Table, cases: &[Case], turns: usize) {
    table.head("Its parts over the mix, each with its floor");
    let mut sum = 0.0;
    for part in &parts::ALL {
        let calls = together(cases, Some(part.over));
        let timed = in_turns(
            turns,
            &mut [&mut || cases.iter().for_each(part.run), &mut || {
                black_box(black_box(&calls).make());
            }],
        );
        let [took, floor] = &timed[..] else { return };
        let least = took.least_ns(cases.len());
        sum += least;
        let key = part.name.replace(' ', "_");
        table.row(&format!("part.{key}.least_ns"), part.name, least, "ns");
        if !part.over.is_empty() {
            table.row(&format!("part.{key}.over_floor"), "    / its floor", took.least_over(floor), "");
        }
    }
    table.row(
        "part.sum.least_ns",
        "all of these together (a plan shares some, and adds cautions)",
        sum,
        "ns",
    );
}

/// The same briefs through Rust and through C, one call each and as a batch.
fn through_c(table: &Table, briefs: &[Brief], turns: usize) {
    let count = briefs.len();
    let sets: Vec<_> = briefs.iter().map(set::Set::new).collect();
    let asked: Vec<_> = sets.iter().map(set::Set::brief).collect();
    let mut plans: Vec<Planned> = briefs.iter().map(plan).collect();
    let mut out = vec![set::empty_plan(); count];
    let mut batch = vec![set::empty_plan(); count];
    let mut statuses = vec![0; count];
    let timed = in_turns(
        turns,
        &mut [
            &mut || plan_each(black_box(briefs), &mut plans),
            &mut || {
                for (brief, out) in asked.iter().zip(&mut out) {
                    // SAFETY: a brief with its parts, a plan of its size, no fault.
                    black_box(unsafe { tablerig_plan(black_box(brief), out, std::ptr::null_mut()) });
                }
            },
            &mut || {
                black_box(c_batch(black_box(&asked), &mut batch, &mut statuses));
            },
        ],
    );
    let [rust, one, many] = &timed[..] else { return };
    table.head(&format!("Through the C interface, {count} briefs of the mix, all results kept"));
    table.row("c.rust_ns", "Rust, one call each", rust.least_ns(count), "ns");
    table.row("c.one_ns", "tablerig_plan", one.least_ns(count), "ns");
    table.row("c.batch_ns", "tablerig_plan_batch", many.least_ns(count), "ns");
    table.row("c.one_over_rust", "tablerig_plan / Rust, least of each", one.least_over(rust), "");
    table.row("c.batch_over_rust", "tablerig_plan_batch / Rust, least of each", many.least_over(rust), "");
    table.row("c.batch_over_rust_median", "tablerig_plan_batch / Rust, median of turns", many.over(rust), "");
}

fn c_batch(
    briefs: &[tablerig::doors::c::brief::Brief],
    plans: &mut [tablerig::doors::c::plan::Plan],
    statuses: &mut [i32],
) -> i32 {
    let count = briefs.len().min(plans.len()).min(statuses.len());
    // SAFETY: arrays of at least as many elements as are told.
    unsafe {
        tablerig_plan_batch(
            briefs.as_ptr(),
            size_of::<tablerig::doors::c::brief::Brief>(),
            plans.as_mut_ptr(),
            size_of::<tablerig::doors::c::plan::Plan>(),
            count,
            statuses.as_mut_ptr(),
            std::ptr::null_mut(),
        )
    }
}

/// Two threads, each with its half of the caller's slices, against one.
fn two_threads(table: &Table, briefs: &[Brief], turns: usize) {
    let mut alone: Vec<Planned> = briefs.iter().map(plan).collect();
    let mut shared = alone.clone();
    let half = briefs.len().div_ceil(2);
    let timed = in_turns(
        turns,
        &mut [&mut || plan_each(black_box(briefs), &mut alone), &mut || {
            std::thread::scope(|scope| {
                for (briefs, plans) in briefs.chunks(half).zip(shared.chunks_mut(half)) {
                    scope.spawn(move || plan_each(black_box(briefs), plans));
                }
            });
        }],
    );
    let [one, two] = &timed[..] else { return };
    table.head(&format!("One slice shared by two threads, {} briefs", briefs.len()));
    table.row("threads.least", "one thread / two, least of each", one.least_over(two), "times");
    table.row("threads.median", "one thread / two, median of turns", one.over(two), "times");
}

/// How many briefs are timed at once while a batch grows: some milliseconds, so that what disturbs one turn of a piece
/// hardly disturbs all of them.
const PIECE: usize = 1000;

/// How a batch grows, and that it allocates nothing. Each turn goes through all briefs each way; the least times of the
/// pieces are added.
fn growing(table: &Table, million: &[Brief], turns: usize) {
    let many = million.len();
    let mut window: Vec<Planned> = million.iter().take(PIECE).map(plan).collect();
    let mut single = window[..1].to_vec();
    let mut kept: Vec<Planned> = million.iter().map(plan).collect();
    let pieces = many.div_ceil(PIECE);
    let mut least = [vec![f64::INFINITY; pieces], vec![f64::INFINITY; pieces], vec![f64::INFINITY; pieces]];
    let before = ALLOCATIONS.load(Ordering::Relaxed);
    for _ in 0..turns {
        for (way, least) in least.iter_mut().enumerate() {
            let pieces = million.chunks(PIECE).zip(kept.chunks_mut(PIECE)).zip(least.iter_mut());
            for ((briefs, kept), least) in pieces {
                let begun = Instant::now();
                match way {
                    0 => {
                        for brief in black_box(briefs) {
                            plan_each(std::slice::from_ref(brief), &mut single);
                            black_box(&single);
                        }
                    }
                    1 => plan_each(black_box(briefs), &mut window),
                    _ => plan_each(black_box(briefs), kept),
                }
                black_box((&window, &kept));
                *least = least.min(begun.elapsed().as_secs_f64() * 1e9);
            }
        }
    }
    let allocated = ALLOCATIONS.load(Ordering::Relaxed) - before;
    assert_eq!(allocated, 0, "a batch allocates");
    let [one, thousand, all] = least.map(|pieces| pieces.iter().sum::<f64>() / many as f64);
    table.head(&format!("Batches, {many} briefs of the mix each way"));
    table.row("batch.one_ns", "batches of 1, each plan used and let go", one, "ns a plan");
    table.row("batch.thousand_ns", "batches of 1,000, the same", thousand, "ns a plan");
    table.row("batch.million_ns", "one batch, every plan kept (3 KB each)", all, "ns a plan");
    table.row("batch.million_over_thousand", "one batch / batches of 1,000", all / thousand, "");
    table.row("batch.allocations", "allocations in all of these", allocated as f64, "");
}

fn main() {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let has = |word: &str| arguments.iter().any(|argument| argument == word);
    let table = Table { tabs: has("figures") };
    let turns = if has("short") { 40 } else { 300 };
    // Few enough that a turn mostly passes between two interruptions.
    let mixed = mix::briefs(400);
    let cases: Vec<Case> = mixed.iter().filter_map(Case::new).collect();
    against_floor(&table, "mix", &cases, turns);
    for (name, brief) in [("overhead", workshop::overhead()), ("slanting", workshop::slanting())] {
        // Often enough that a turn is long against the clock's step.
        let cases: Vec<Case> = (0..200).filter_map(|_| Case::new(&brief)).collect();
        against_floor(&table, name, &cases, turns);
    }
    part_by_part(&table, &cases, turns);
    asked::choosing(&table, turns);
    asked::by_text(&table, turns / 2);
    through_c(&table, &mixed, turns);
    two_threads(&table, &mix::briefs(8000), turns / 2);
    growing(&table, &mix::briefs(if has("short") { 20_000 } else { 1_000_000 }), 5);
}
