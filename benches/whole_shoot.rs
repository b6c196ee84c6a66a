//! How long does a whole shoot take? 40 shots with 12 lenses, 6 supports and 4 sides chosen, then ordered,
//! booked and pulled; and the smallest changes of what cannot be done.

#[path = "../tests/shoot/briefs.rs"]
#[allow(dead_code, reason = "each file uses its part")]
mod briefs;
#[path = "../tests/workshop/mod.rs"]
mod workshop;

use std::hint::black_box;
use std::time::{Duration, Instant};

use briefs::Seeded;
use tablerig::brief::{Brief, Framing};
use tablerig::optics::lens::Lens;
use tablerig::plan::{Plan, plan};
use tablerig::rig::support::Support;
use tablerig::scene::table::Side;
use tablerig::shoot::booking::{Listed, booking};
use tablerig::shoot::choose::choose;
use tablerig::shoot::kit::{Candidate, Kit};
use tablerig::shoot::minutes::{Minutes, Setup};
use tablerig::shoot::order::order;
use tablerig::shoot::pieces::PieceSize;
use tablerig::shoot::pull::pull_list;
use tablerig::shoot::smallest::smallest_changes_in_kit;
use tablerig::shoot::weights::Stock;

/// The shortest of some runs.
fn shortest<T>(runs: u32, mut run: impl FnMut() -> T) -> Duration {
    let mut least = Duration::MAX;
    for _ in 0..runs {
        let begun = Instant::now();
        black_box(run());
        least = least.min(begun.elapsed());
    }
    least
}

fn told(what: &str, count: usize, of: &str, took: Duration) {
    let each = took.as_secs_f64() * 1e6 / count as f64;
    println!("{what:<34} {:>9.3} ms  {count:>6} {of}, {each:.2} us each", took.as_secs_f64() * 1e3);
}

fn main() {
    let mut seeded = Seeded::new(40);
    let shots: Vec<Brief> = (0..40).map(|_| briefs::brief(&mut seeded)).collect();
    let lenses: Vec<Lens> = (0..12).map(|_| briefs::lens(&mut seeded)).collect();
    let supports: Vec<Support> = (0..6).map(|_| briefs::brief(&mut seeded).support).collect();
    let kit = Kit { lenses: &lenses, supports: &supports, sides: &Side::ALL };
    let mut places = vec![Candidate::VACANT; kit.most_combinations()];
    let mut planned = 0;
    let took = shortest(10, || {
        planned = 0;
        for shot in &shots {
            planned += choose(black_box(shot), &kit, &mut places).map_or(0, |choice| choice.planned);
        }
    });
    told("40 shots chosen, all listed", planned, "plans", took);
    let took = shortest(10, || {
        for shot in &shots {
            let _ = black_box(choose(black_box(shot), &kit, &mut places[..5]));
        }
    });
    told("40 shots chosen, 5 listed", planned, "plans", took);

    let filled = |shot: &Brief| {
        let mut shot = *shot;
        shot.shot.framing = Framing::FillHeight(0.5);
        shot
    };
    let filling: Vec<Brief> = shots.iter().map(filled).collect();
    let took = shortest(10, || {
        for shot in &filling {
            let _ = black_box(choose(black_box(shot), &kit, &mut places));
        }
    });
    told("the same, by share of the frame", planned, "plans", took);

    let lowered = |shot: &Brief| {
        let mut shot = *shot;
        shot.bay.ceiling_mm = Some(1200.0);
        shot
    };
    let low: Vec<Brief> = shots.iter().map(lowered).collect();
    let took = shortest(3, || {
        for shot in &low {
            if let Ok(choice) = choose(shot, &kit, &mut places[..5]) {
                black_box(smallest_changes_in_kit(shot, &kit, choice.candidates));
            }
        }
    });
    told("smallest changes, 5 nearest each", low.len(), "shots", took);

    let plans: Vec<Plan> = shots.iter().filter_map(|shot| plan(shot).ok()).collect();
    let list: Vec<Listed<'_>> = shots
        .iter()
        .zip(&plans)
        .map(|(brief, plan)| Listed {
            camera: "body",
            lens: "lens",
            support: "stand",
            table: "table",
            surface: None,
            backdrop: None,
            brief,
            plan,
        })
        .collect();
    told("booking request", list.len(), "shots", shortest(10, || booking(&list)));
    let sizes = [1.25, 2.5, 7.0, 11.0].map(|mass_kg| PieceSize { mass_kg, at_hand: None });
    let stock = Stock { counterweights: &sizes, base_weights: &sizes };
    told("pull list", list.len(), "shots", shortest(3, || pull_list(&list, &stock)));

    let mut setup = || Setup {
        support: seeded.below(3) as u32,
        side: Side::ALL[seeded.below(4)],
        lens: seeded.below(6) as u32,
        height_mm: seeded.between(900.0, 2600.0),
        surface: seeded.below(4) as u32,
    };
    let setups: Vec<Setup> = (0..100).map(|_| setup()).collect();
    for count in [15, 40, 100] {
        let some = &setups[..count];
        told("order", count, "shots", shortest(3, || order(some, &Minutes::TO_BEGIN_WITH, &[])));
    }
}
