//! How far the straightforward plans are from the library's, output by output.

use tablerig::brief::Brief;
use tablerig::plan::plan;

use crate::{rows, whole};

/// The least size against which a difference is held: one millimetre, degree, kilogram or times.
const SMALL: f64 = 1.0;

pub(crate) fn agree(briefs: &[Brief]) {
    let mut worst: Vec<(String, f64, usize)> = Vec::new();
    for (case, brief) in briefs.iter().enumerate() {
        let Ok(plan) = plan(brief) else { continue };
        let (ours, theirs) = (rows::plan(&plan), rows::whole(&whole::whole(brief)));
        // A weight on the very edge overturns by rounding alone, or not at all: the edge told is then by chance.
        let huge: Vec<String> = ours
            .0
            .iter()
            .filter(|(name, value)| name.ends_with("_factor") && *value > 1e9)
            .map(|(name, _)| name.trim_end_matches("factor").to_owned())
            .collect();
        let by_chance = |name: &str| {
            let part =
                name.ends_with("_factor") || name.ends_with("_restoring") || name.ends_with("_overturning");
            part && huge.iter().any(|state| name.starts_with(state.as_str()))
        };
        for (index, ((name, a), (other, b))) in ours.0.into_iter().zip(theirs.0).enumerate() {
            assert_eq!(name, other);
            if worst.len() == index {
                worst.push((name.clone(), 0.0, 0));
            }
            let apart = if a == b || (a.is_nan() && b.is_nan()) || by_chance(&name) {
                0.0
            } else {
                (a - b).abs() / a.abs().max(SMALL)
            };
            // What only one of them has is as far apart as can be.
            let apart = if apart.is_nan() { f64::INFINITY } else { apart };
            if apart > worst[index].1 {
                (worst[index].1, worst[index].2) = (apart, case);
            }
        }
    }
    worst.sort_by(|a, b| b.1.total_cmp(&a.1));
    println!("{} outputs of {} briefs; furthest apart:", worst.len(), briefs.len());
    for (name, apart, case) in worst.iter().take(12) {
        println!("  {name:<24} {apart:9.1e}  brief {case}");
    }
    if worst.first().is_some_and(|worst| worst.1 > 1e-9) {
        std::process::exit(1);
    }
}
