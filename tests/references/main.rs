//! The library against references that nobody here wrote. Each folder has the script that made its data,
//! and `regenerate` makes all of it again from pinned packages and compares.
//!
//! `cargo test --test references table -- --exact --nocapture` prints how far off each is.
#![allow(clippy::disallowed_methods, reason = "the platform's functions are the second opinion here")]

mod briefs;
mod hulls;
mod precision;
mod precision_plan;
mod precision_rig;
mod rays;
mod rows;
mod sampling;
mod tipping;
mod vision;

use rows::Tally;

struct Reference {
    name: &'static str,
    checks: &'static str,
    cases: String,
    tally: Tally,
    allowed: fn(&str) -> f64,
}

fn references() -> [Reference; 6] {
    [
        Reference {
            name: "mpmath, 50 digits",
            checks: "every output of the plan from the formulas",
            cases: format!("{} briefs", precision::CASES),
            tally: precision::run(),
            allowed: |_| precision::WORST,
        },
        Reference {
            name: "OpenCV",
            checks: "projection, frame on the table, field angles, coverage, pose",
            cases: format!("{} scenes", vision::SCENES),
            tally: vision::run(),
            allowed: vision::allowed,
        },
        Reference {
            name: "MuJoCo",
            checks: "what tips a rig",
            cases: format!("{} rigs", tipping::RIGS),
            tally: tipping::run(),
            allowed: |_| tipping::WITHIN,
        },
        Reference {
            name: "Optiland",
            checks: "thick lenses ray by ray",
            cases: format!("{} lenses at {} distances", rays::LENSES, rays::DISTANCES),
            tally: rays::run(),
            allowed: rays::allowed,
        },
        Reference {
            name: "NumPy, 100 000 samples",
            checks: "uncertainty of what was measured on the set",
            cases: format!("{} settings", sampling::SETTINGS),
            tally: sampling::run(),
            allowed: sampling::allowed,
        },
        Reference {
            name: "SciPy and Shapely",
            checks: "margins of support polygons",
            cases: format!("{} polygons", hulls::POLYGONS),
            tally: hulls::run(),
            allowed: |_| hulls::ROUNDING,
        },
    ]
}

/// The table for people: every reference, the quantities of the shorter ones, the outputs of the plan that
/// lose most.
#[test]
fn table() {
    println!("| reference | checks | cases | comparisons | worst | allowed |");
    println!("| --- | --- | --- | ---: | ---: | ---: |");
    for Reference { name, checks, cases, tally, allowed } in references() {
        println!("| **{name}** | {checks} | {cases} | {} | | |", tally.comparisons());
        let many = tally.entries().count() > 20;
        let mut shown: Vec<_> =
            tally.entries().filter(|(_, error, ..)| !many || *error > precision::GOAL).collect();
        shown.sort_by(|a, b| (b.1 / allowed(b.0)).total_cmp(&(a.1 / allowed(a.0))));
        for (quantity, error, count, case) in shown {
            println!(
                "| | {quantity} | worst in {case} | {count} | {error:.1e} | {:.0e} |",
                allowed(quantity)
            );
        }
        if many {
            let within = tally.entries().filter(|(_, error, ..)| *error <= precision::GOAL).count();
            println!("| | {within} more outputs, each within {:.0e} | | | | |", precision::GOAL);
        }
    }
}
