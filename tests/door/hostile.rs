//! Random bytes in every struct: an answer without NaN, or a refusal that names something and leaves the
//! output alone.

use tablerig::doors::c::rig::reach::{BayRoom, tablerig_bay_room};
use tablerig::doors::c::rig::stability::{
    Feet, Loads, Stability, tablerig_feet, tablerig_loads, tablerig_stability,
};
use tablerig::doors::c::status::Status;
use tablerig::doors::c::text::tablerig_status_text;
use tablerig::doors::c::view::footprint::{Footprint, tablerig_footprint};

use crate::ask::{ask, view};
use crate::memory::{bytes, bytes_mut};
use crate::seeded::{self, Seeded};
use crate::set::{Set, empty_plan, field, text};
use crate::workshop;

/// A number from anywhere: bits at random, ends of what floats hold, or a small one.
fn number(of: &mut Seeded) -> u64 {
    let odd =
        [0.0, -0.0, 1.0, -1.0, f64::MIN_POSITIVE, 5e-324, f64::MAX, f64::INFINITY, f64::NAN, 1e-300, 1e300];
    match of.below(3) {
        0 => of.word(),
        1 => odd[of.below(odd.len())].to_bits(),
        _ => (of.below(1000) as f64 / 7.0).to_bits(),
    }
}

fn scribble(of: &mut Seeded, bytes: &mut [u8]) {
    let word = of.below(bytes.len() / 8) * 8;
    bytes[word..word + 8].copy_from_slice(&number(of).to_ne_bytes());
}

/// The size stays the struct's own: a larger one would be the caller's lie about its memory.
fn keep_size(bytes: &mut [u8]) {
    let size = bytes.len() as u32;
    bytes[..4].copy_from_slice(&size.to_ne_bytes());
}

#[test]
fn scribbled_briefs_are_answered_or_refused() {
    let mut of = Seeded::new(99);
    let mut planned = 0;
    for round in 0..60_000 {
        let mut set = Set::new(&seeded::brief(&mut of));
        for _ in 0..=of.below(3) {
            match of.below(8) {
                0 => scribble(&mut of, bytes_mut(&mut set.shot)),
                1 => scribble(&mut of, bytes_mut(&mut set.camera)),
                2 => scribble(&mut of, bytes_mut(&mut set.lens)),
                3 => scribble(&mut of, bytes_mut(&mut set.table)),
                4 => scribble(&mut of, bytes_mut(&mut set.subject)),
                5 => scribble(&mut of, bytes_mut(&mut set.support)),
                6 => scribble(&mut of, bytes_mut(&mut set.bay)),
                _ => scribble(&mut of, bytes_mut(&mut set.criteria)),
            }
        }
        keep_size(bytes_mut(&mut set.shot));
        keep_size(bytes_mut(&mut set.camera));
        keep_size(bytes_mut(&mut set.lens));
        keep_size(bytes_mut(&mut set.table));
        keep_size(bytes_mut(&mut set.subject));
        keep_size(bytes_mut(&mut set.support));
        keep_size(bytes_mut(&mut set.bay));
        keep_size(bytes_mut(&mut set.criteria));
        let answer = set.plan();
        assert_ne!(answer.status, Status::Internal as i32, "round {round}: {} is NaN", field(&answer.fault));
        if answer.status == 0 {
            planned += 1;
        } else {
            assert!(bytes(&answer.plan) == bytes(&empty_plan()), "round {round}");
            assert_ne!(field(&answer.fault), "?", "round {round}");
            assert!(!text(tablerig_status_text(answer.status)).contains("no status"), "round {round}");
        }
    }
    assert!(planned > 1000, "{planned} were planned");
}

/// Results handed back changed: an answer without NaN or a refusal, never anything else.
#[test]
fn scribbled_results_are_answered_or_refused() {
    let mut of = Seeded::new(11);
    let set = Set::new(&workshop::overhead());
    let plan = set.plan().plan;
    let (mut answered, mut refused, mut internal) = (0, 0, 0);
    for _ in 0..20_000 {
        let mut given = (view(&plan), plan.placement, plan.payload);
        let odd = [f64::NAN, f64::INFINITY, f64::MAX, -f64::MAX, 5e-324, 1e160, -0.0].map(f64::to_bits);
        let word = if of.below(2) == 0 { of.word() } else { odd[of.below(7)] };
        let scribble = |of: &mut Seeded, bytes: &mut [u8]| {
            let at = of.below(bytes.len() / 8) * 8;
            bytes[at..at + 8].copy_from_slice(&word.to_ne_bytes());
        };
        match of.below(3) {
            0 => scribble(&mut of, bytes_mut(&mut given.0)),
            1 => scribble(&mut of, bytes_mut(&mut given.1)),
            _ => scribble(&mut of, bytes_mut(&mut given.2)),
        }
        let (view, placed, payload) = (&raw const given.0, &raw const given.1, &raw const given.2);
        let (table, support) = (&raw const set.table, &raw const set.support);
        let mut note = |status: Result<bool, i32>| match status {
            Ok(odd) => {
                assert!(!odd, "no number, or infinite though nothing says so");
                answered += 1;
            }
            Err(status) if status == Status::Internal as i32 => internal += 1,
            Err(_) => refused += 1,
        };
        let footprint: Result<Footprint, _> = ask!(tablerig_footprint(view, table, 0.0));
        note(footprint.map(|out| is_odd(&out)).map_err(|refusal| refusal.0));
        let room: Result<BayRoom, _> = ask!(tablerig_bay_room(&raw const set.bay, table, view, placed, 40.0));
        note(room.map(|out| format!("{out:?}").contains("NaN")).map_err(|refusal| refusal.0));
        let loads: Result<Loads, _> = ask!(tablerig_loads(support, placed, payload));
        note(loads.map(|out| is_odd(&out)).map_err(|refusal| refusal.0));
        if let Ok(loads) = loads {
            let feet: Feet = ask!(tablerig_feet(3, 500.0, 0.0)).unwrap();
            let stands: Result<Stability, _> =
                ask!(tablerig_stability(&raw const feet, &raw const loads, placed, 1500.0));
            note(stands.map(|out| format!("{out:?}").contains("NaN")).map_err(|refusal| refusal.0));
        }
    }
    // Made-up coordinates can still lead to what is no number, and that is told, not handed out.
    assert!(answered > 1000 && refused > 1000 && internal > 0, "{answered} {refused} {internal}");
}

/// Whether a struct that may hold no infinity holds one, or what is no number.
fn is_odd(out: &impl std::fmt::Debug) -> bool {
    let told = format!("{out:?}");
    told.contains("NaN") || told.contains("inf")
}

/// Weights as heavy as floats go once gave a centre of gravity infinitely high, which nothing announces.
#[test]
fn loads_beyond_any_rig_are_refused() {
    let set = Set::new(&workshop::overhead());
    let plan = set.plan().plan;
    let support = &raw const set.support;
    let loads: Loads =
        ask!(tablerig_loads(support, &raw const plan.placement, &raw const plan.payload)).unwrap();
    let feet: Feet = ask!(tablerig_feet(3, 500.0, 0.0)).unwrap();
    for (value, status) in [
        (1e300, Status::TooLarge),
        (-1e31, Status::TooSmall),
        (f64::INFINITY, Status::NotFinite),
        (1e30, Status::Ok),
    ] {
        let mut heavy = loads;
        heavy.boom.z_mm = value;
        let stands: Result<Stability, _> =
            ask!(tablerig_stability(&raw const feet, &raw const heavy, &raw const plan.placement, 1500.0));
        match stands {
            Ok(stands) => assert!(status == Status::Ok && stands.as_shot.centre.z_mm.is_finite()),
            Err(refusal) => assert_eq!(refusal, (status as i32, "weight.z_mm")),
        }
    }
}
