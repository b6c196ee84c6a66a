//! Library and straightforward Rust in turns, part by part.

use std::hint::black_box;

use tablerig::brief::Brief;
use tablerig::fault::Fault;
use tablerig::plan::{Plan, plan};

use crate::turns::in_turns;
use crate::whole::{Whole, whole};
use crate::{lens, rig, standing, view};

#[path = "../../../../benches/floor/mod.rs"]
#[allow(dead_code, unused_imports, reason = "each program uses its part")]
mod floor;
#[path = "../../../../benches/parts.rs"]
#[allow(dead_code, reason = "each program uses its part")]
mod parts;

struct Pair {
    ours: parts::Case,
    brief: Brief,
    theirs: Whole,
}

/// A part as each of the two does it.
type Part = (&'static str, &'static str, fn(&Pair));

const PARTS: [Part; 9] = [
    ("lens and field angles", "lens and field angles", |pair| {
        black_box(lens::focused(black_box(&pair.brief)));
    }),
    ("pose", "pose", |pair| {
        black_box(view::pose(black_box(&pair.brief), &pair.theirs.lens));
    }),
    ("frame on the table", "frame on the table", |pair| {
        black_box(view::frame(black_box(&pair.brief), &pair.theirs.lens, &pair.theirs.pose));
    }),
    ("outline", "outline", |pair| {
        black_box(view::outline(black_box(&pair.brief), &pair.theirs.lens, &pair.theirs.pose));
    }),
    ("shares", "shares", |pair| {
        black_box(view::shares(black_box(&pair.brief), &pair.theirs.lens, &pair.theirs.pose));
    }),
    ("focus", "focus", |pair| {
        let (near, far, _) = pair.theirs.outline;
        black_box(lens::sharp(black_box(&pair.brief), &pair.theirs.lens, near, far));
    }),
    ("support and room", "support and room", |pair| {
        let brief = black_box(&pair.brief);
        let placed = rig::placed(brief, &pair.theirs.pose);
        black_box(rig::room(brief, &pair.theirs.pose, &placed));
        black_box(rig::in_picture(brief, &pair.theirs.lens, &pair.theirs.pose, &placed));
        black_box(placed);
    }),
    ("stability", "stability", |pair| {
        let (brief, placed, pose) = (black_box(&pair.brief), &pair.theirs.placed, &pair.theirs.pose);
        let payload = rig::payload(brief, pose);
        let weights = rig::weights(brief, placed, &payload);
        let (edges, apothem) = standing::edges(brief, placed);
        black_box(standing::stability((&edges, apothem), &weights, placed, pose.pivot.z));
        black_box(payload);
    }),
    ("tolerance", "tolerance", |pair| {
        black_box(lens::tolerance(black_box(&pair.brief), &pair.theirs.lens));
    }),
];

/// What the library has beyond the outputs that all ways have.
const BEYOND: [&str; 3] = ["checks", "advice", "ballast"];

/// The library's outputs that all ways have, by its public functions.
fn the_same(pair: &Pair) {
    for part in parts::ALL.iter().filter(|part| !BEYOND.contains(&part.name)) {
        (part.run)(&pair.ours);
    }
    pair.ours.base_and_counterweight();
}

pub(crate) fn time(briefs: &[Brief]) {
    let turns = 300;
    let pairs: Vec<Pair> = briefs
        .iter()
        .filter_map(|brief| {
            Some(Pair { ours: parts::Case::new(brief)?, brief: *brief, theirs: whole(brief) })
        })
        .collect();
    let count = pairs.len();
    let Some(first) = briefs.first() else { return };
    let mut out: [Result<Plan, Fault>; 1] = [plan(first)];
    let timed = in_turns(
        turns,
        &mut [
            &mut || {
                for brief in briefs {
                    out[0] = plan(black_box(brief));
                    black_box(&out);
                }
            },
            &mut || {
                for brief in briefs {
                    black_box(whole(black_box(brief)));
                }
            },
            &mut || pairs.iter().for_each(the_same),
        ],
    );
    println!("library\t{:.1}\tns", timed[0].least_ns(briefs.len()));
    println!("straightforward\t{:.1}\tns", timed[1].least_ns(briefs.len()));
    println!("library.same\t{:.1}\tns", timed[2].least_ns(count));
    println!("same\t{:.3}\ttimes", timed[1].least_over(&timed[2]));
    println!("whole\t{:.3}\ttimes", timed[1].least_over(&timed[0]));
    for (name, ours, run) in PARTS {
        let Some(part) = parts::ALL.iter().find(|part| part.name == ours) else { continue };
        let timed = in_turns(
            turns,
            &mut [&mut || pairs.iter().for_each(|pair| (part.run)(&pair.ours)), &mut || {
                pairs.iter().for_each(run)
            }],
        );
        let (ours, theirs) = (timed[0].least_ns(count), timed[1].least_ns(count));
        println!("{name}\t{:.3}\ttimes\t{ours:.1}\t{theirs:.1}", timed[1].least_over(&timed[0]));
    }
}
