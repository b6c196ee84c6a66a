//! `tablerig fit`: whether each shot fits its bay, and where in it the table may stand.

use std::format;
use std::prelude::rust_2024::*;
use std::vec;

use serde_json::{Value, json};

use super::{WholeFlags, name};
use crate::caution::overhead::OVERHEAD_CAUTIONS;
use crate::cli::cautioned;
use crate::cli::failure::{Failure, NOT_AS_ASKED};
use crate::cli::page::{Page, left, right};
use crate::cli::wording::Units;
use crate::shoot::fit::{Fit, TableMoves};
use crate::shootfile::whole::{BayFit, Whole};

/// Fits the shots into their bays.
pub(crate) fn fit(page: &mut Page, flags: &WholeFlags) -> Result<(Value, u8), Failure> {
    let file = flags.load()?;
    let whole = flags.whole(&file)?;
    let fits = whole.fits();
    if fits.is_empty() {
        page.paragraph("The file describes no bay: there are no walls and no ceiling to fit into.");
    }
    for bay in &fits {
        print(page, &whole, bay);
    }
    cautioned::usual(page, whole.shots.iter().any(|shot| shot.plan.overhead));
    let shots: Vec<&str> = whole.shots.iter().map(|shot| shot.name.as_str()).collect();
    let all = fits.iter().all(|bay| bay.together[0].fits);
    let value = json!({ "shots": shots, "bays": fits, "usual_cautions": OVERHEAD_CAUTIONS });
    Ok((value, if all { 0 } else { NOT_AS_ASKED }))
}

fn print(page: &mut Page, whole: &Whole<'_>, bay: &BayFit<'_>) {
    let units = page.units;
    page.heading(&format!("Bay {}, room left in {}", bay.bay, units.plural()));
    let row = |(shot, fit): (&usize, &Fit)| {
        let mut row = vec![name(whole, *shot).into(), if fit.fits { "yes" } else { "no" }.into()];
        row.extend(fit.walls_left_mm.iter().map(|left| room(*left, units)));
        row.push(room(fit.ceiling_left_mm, units));
        row
    };
    let columns = [
        left("Shot"),
        left("Fits"),
        right("Front"),
        right("Right"),
        right("Back"),
        right("Left"),
        right("Ceiling"),
    ];
    let mut rows: Vec<Vec<String>> = bay.shots.iter().zip(&bay.each).map(row).collect();
    let [together, ..] = &bay.together;
    let mut all = row((&usize::MAX, together));
    if let Some(first) = all.first_mut() {
        *first = "all together".into();
    }
    rows.push(all);
    page.figures(&columns, rows);
    page.paragraph(
        "To each wall and the ceiling, with room for a person behind the camera and the clearance under the ceiling; \
         negative: so much too little; -: nothing there.",
    );
    page.gap();
    let turned = ["the table as it stands", "turned by 90°", "turned by 180°", "turned by 270°"];
    let mut pairs: Vec<(&'static str, String)> = Vec::new();
    for (label, fit) in turned.into_iter().zip(&bay.together) {
        pairs.push((label, moves(fit, units)));
    }
    page.paragraph(
        "Where the table's centre may stand so that all of them fit, from where it stands now; turned counter-clockwise \
         seen from above, everything around it with it:",
    );
    page.pairs(&pairs);
}

fn room(mm: f64, units: Units) -> String {
    if mm.is_infinite() { "-".into() } else { units.bare(mm) }
}

/// Where the table may go, in words.
fn moves(fit: &Fit, units: Units) -> String {
    let ceiling = match fit.ceiling_left_mm {
        left if left < 0.0 => format!("; the ceiling is {} too low", units.length(-left)),
        _ => String::new(),
    };
    region(&fit.moves_with_person, &fit.moves, units) + &ceiling
}

fn region(moves: &TableMoves, without_person: &TableMoves, units: Units) -> String {
    if !moves.is_empty() {
        let across = between(moves.least_right_mm, moves.most_right_mm, ("left", "right"), units);
        let along = between(moves.least_back_mm, moves.most_back_mm, ("to the front", "to the back"), units);
        let stays = moves.nearest_mm() == Some((0.0, 0.0));
        return format!("{across}; {along}{}", if stays { " (it may stay)" } else { "" });
    }
    let lacking = [(moves.lacking_across_mm(), "side to side"), (moves.lacking_along_mm(), "front to back")];
    let lacking: Vec<String> = lacking
        .iter()
        .filter(|(mm, _)| *mm > 0.0)
        .map(|(mm, word)| format!("{} from {word}", units.length(*mm)))
        .collect();
    let person = if without_person.is_empty() { "" } else { "; without room for a person it would fit" };
    format!("nowhere: the bay lacks {}{person}", lacking.join(" and "))
}

/// `12 cm left to 40 cm right`.
fn between(least: f64, most: f64, words: (&str, &str), units: Units) -> String {
    let side = |mm: f64| if mm < 0.0 { words.0 } else { words.1 };
    let one = |mm: f64| format!("{} {}", units.length(mm.abs()), side(mm));
    match (least.is_finite(), most.is_finite()) {
        (true, true) => format!("{} to {}", one(least), one(most)),
        (true, false) => format!("{} or further {}", one(least), words.1),
        (false, true) => format!("{} or further {}", one(most), words.0),
        (false, false) => format!("anywhere {} or {}", words.0, words.1),
    }
}
