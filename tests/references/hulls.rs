//! Margins of support polygons against SciPy's ConvexHull and Shapely.

use crate::rows::{Table, Tally};
use tablerig::rig::feet::Feet;

/// Polygons compared.
pub(crate) const POLYGONS: usize = 400;
/// A few roundings of the foot circle's radius.
pub(crate) const ROUNDING: f64 = 1e-13;

pub(crate) fn run() -> Tally {
    let hulls = Table::new(include_str!("hulls/hulls.tsv"));
    let mut tally = Tally::default();
    for row in hulls.rows() {
        let case = row.word("case");
        let legs = row.word("legs").parse().expect("a count");
        let radius = row.number("foot_radius_mm");
        let feet = Feet::new(legs, radius, row.number("first_leg_deg"));
        let (x, y) = (row.number("x_mm"), row.number("y_mm"));
        let margin =
            feet.numbered().map(|(_, edge)| feet.inside_mm(edge, x, y)).fold(f64::INFINITY, f64::min);
        tally.close("margin", margin, row.number("margin_mm"), radius, case);
        let stands = if (margin > 0.0) == row.flag("stands") { 0.0 } else { f64::INFINITY };
        tally.note("stands", stands, case);
        if let Some(to_boundary) = row.given("to_boundary_mm") {
            tally.close("distance to the boundary", margin, to_boundary, radius, case);
        }
    }
    assert_eq!(hulls.rows().count(), POLYGONS);
    hulls.all_asked();
    tally
}

#[test]
fn four_hundred_polygons() {
    let tally = run();
    for (name, error, count, case) in tally.entries() {
        println!("{name:36} {error:9.1e} {count:6} worst in {case}");
        assert!(error <= ROUNDING, "{name} is off by {error:e} in case {case}");
    }
}
