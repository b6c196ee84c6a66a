//! The whole plan against the same formulas at 50 digits (mpmath).

use crate::briefs::brief;
use crate::precision_plan::compare;
use crate::rows::{Table, Tally};

/// Briefs compared.
pub(crate) const CASES: usize = 2000;
/// No output may be farther off than this.
pub(crate) const WORST: f64 = 1e-11;
/// The outputs that lose digits beyond this are listed one by one.
pub(crate) const GOAL: f64 = 1e-13;

/// Compares every output of every brief.
pub(crate) fn run() -> Tally {
    let briefs = Table::new(include_str!("precision/briefs.tsv"));
    let plans = Table::new(include_str!("precision/plans.tsv"));
    let mut tally = Tally::default();
    let mut cases = 0;
    for (given, want) in briefs.rows().zip(plans.rows()) {
        assert_eq!(given.word("case"), want.word("case"));
        let case = format!("{} ({})", given.word("case"), given.word("kind"));
        let plan =
            tablerig::plan::plan(&brief(&given)).unwrap_or_else(|fault| panic!("case {case}: {fault}"));
        compare(&plan, &want, &case, &mut tally);
        cases += 1;
    }
    assert_eq!((cases, briefs.rows().count(), plans.rows().count()), (CASES, CASES, CASES));
    briefs.all_asked();
    plans.all_asked();
    tally
}

#[test]
fn every_output_of_two_thousand_plans() {
    let tally = run();
    for (name, error, count, case) in tally.entries() {
        println!("{name:32} {error:9.1e} {count:6} worst in {case}");
    }
    let (error, name, case) = tally.worst();
    println!("worst of {} comparisons: {error:.1e}, {name} in case {case}", tally.comparisons());
    assert!(error <= WORST, "{name} is off by {error:e} in case {case}");
}
