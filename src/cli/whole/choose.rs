//! `tablerig choose`: which of the gear takes a shot, why the others lost, and what would help where none does.

use std::borrow::ToOwned;
use std::format;
use std::prelude::rust_2024::*;
use std::vec;

use clap::{Args, ValueEnum};
use serde_json::{Value, json};

use crate::caution::overhead::OVERHEAD_CAUTIONS;
use crate::cli::arguments::File;
use crate::cli::failure::{Failure, NOT_AS_ASKED};
use crate::cli::flags::pick_shot;
use crate::cli::page::{Page, left, right};
use crate::cli::wording::{
    Units, column_degrees, decimals, degrees, factor, percent, side, tips_at, with_unit,
};
use crate::cli::{cautioned, load};
use crate::sheet::cautions::sentence;
use crate::sheet::changes::change_in_words;
use crate::shoot::choose::{Choice, choose as chosen};
use crate::shoot::kit::{Candidate, Combination, Lost, Outcome};
use crate::shoot::merits::Criterion;
use crate::shoot::smallest::smallest_changes_in_kit;
use crate::shootfile::{NamedShot, OpenKit, ShootFile};

/// What of a shot may be chosen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Open {
    Lens,
    Support,
    Side,
}

const MORE: &str = "\
Ranked by, in this order: fewer warnings; fewer notes of concern; no visible stretch; room for the light; less of \
the payload that would tip the stand; more restoring over overturning; a shorter reach; more tilt that tips it.

Where nothing works, the smallest changes that make it work are solved for and planned again.";

#[derive(Clone, Debug, Args)]
#[command(after_help = MORE)]
pub(crate) struct ChooseFlags {
    /// The shot's name
    name: String,
    #[command(flatten)]
    file: File,
    /// What to leave open, from the file's [kit]; what the shot itself leaves open, or all three, when left out
    #[arg(long, value_enum, value_delimiter = ',', value_name = "WHAT")]
    open: Vec<Open>,
    /// Show the smallest changes for what cannot be done, even where something can
    #[arg(long)]
    changes: bool,
    /// List every combination, not only the first dozen of each kind
    #[arg(long)]
    all: bool,
}

/// Combinations shown of those that can be done, and of those that cannot.
const MOST_SHOWN: usize = 12;

/// Chooses.
pub(crate) fn choose(page: &mut Page, flags: &ChooseFlags) -> Result<(Value, u8), Failure> {
    let file = load(flags.file.path.as_deref())?;
    let shot = pick_shot(&file, &flags.name)?;
    let open = opened(&file, shot, &flags.open);
    let kit = open.kit();
    let mut places = vec![Candidate::VACANT; kit.most_combinations()];
    let choice = chosen(&shot.brief, &kit, &mut places)?;
    print(page, flags, (shot, &open), &choice);
    let mut changes = Vec::new();
    if choice.possible == 0 || flags.changes {
        let found = smallest_changes_in_kit(&shot.brief, &kit, choice.candidates);
        changes = found.into_iter().flatten().collect();
        page.heading("The smallest changes, each alone");
        let told = changes.iter().map(|found| {
            let brief = kit.brief_with(&shot.brief, &found.combination);
            let with = combination(shot, &open, &found.combination);
            format!("{} With {with}.", change_in_words(&found.change, &brief, page.units))
        });
        let told: Vec<String> = told.collect();
        match told.as_slice() {
            [] => page.paragraph("  none: no one change alone makes it work."),
            told => page.list(told),
        }
    }
    let overhead = shot.plan.overhead || choice.candidates.iter().any(reaches);
    cautioned::usual(page, overhead);
    let names = |combination: &Combination| {
        json!({
            "lens": open.lens_name(combination).unwrap_or(&shot.uses.lens),
            "support": open.support_name(combination).unwrap_or(&shot.uses.support),
            "side": combination.side,
        })
    };
    let told = |candidate: &Candidate| json!({ "with": names(&candidate.combination), "outcome": candidate.outcome });
    let changed: Vec<Value> = changes
        .iter()
        .map(|found| json!({ "with": names(&found.combination), "change": found.change }))
        .collect();
    let value = json!({
        "shot": shot.name,
        "open": open,
        "planned": choice.planned,
        "possible": choice.possible,
        "candidates": choice.candidates.iter().map(told).collect::<Vec<_>>(),
        "changes": changed,
        "usual_cautions": OVERHEAD_CAUTIONS,
    });
    Ok((value, if choice.possible == 0 { NOT_AS_ASKED } else { 0 }))
}

fn reaches(candidate: &Candidate) -> bool {
    candidate.merits().is_some_and(|merits| merits.reach_mm > 0.0)
}

/// What is open: as asked, or as the shot leaves it, or all.
fn opened(file: &ShootFile, shot: &NamedShot, asked: &[Open]) -> OpenKit {
    let own = shot.chosen.as_ref().map(|chosen| &chosen.from);
    let is_open = |what: Open, own_open: bool| match (asked, own) {
        ([], Some(_)) => own_open,
        ([], None) => true,
        (asked, _) => asked.contains(&what),
    };
    let own_has = |has: fn(&OpenKit) -> bool| own.is_some_and(has);
    let from = |own_has: bool| own.filter(|_| own_has).unwrap_or(&file.kit);
    let mut open = OpenKit::default();
    let lens = own_has(|kit| !kit.lenses.is_empty());
    if is_open(Open::Lens, lens) {
        (open.lenses, open.lens) = (from(lens).lenses.clone(), from(lens).lens.clone());
    }
    let support = own_has(|kit| !kit.supports.is_empty());
    if is_open(Open::Support, support) {
        (open.supports, open.support) = (from(support).supports.clone(), from(support).support.clone());
    }
    let sides = own_has(|kit| !kit.sides.is_empty());
    if is_open(Open::Side, sides) {
        open.sides = from(sides).sides.clone();
    }
    open
}

fn print(page: &mut Page, flags: &ChooseFlags, (shot, open): (&NamedShot, &OpenKit), choice: &Choice<'_>) {
    let units = page.units;
    let kinds = [
        (!open.lenses.is_empty(), "lens"),
        (!open.supports.is_empty(), "support"),
        (!open.sides.is_empty(), "side"),
    ];
    let kinds: Vec<&str> = kinds.iter().filter(|(open, _)| *open).map(|(_, word)| *word).collect();
    page.heading(&format!("{}: {} left open", shot.name, crate::shootfile::field::listed(&kinds, "and")));
    page.paragraph(&format!(
        "{} combinations planned; {} can be done.",
        choice.planned,
        if choice.possible == 0 { "none".to_owned() } else { format!("{}", choice.possible) },
    ));
    let most = if flags.all { usize::MAX } else { MOST_SHOWN };
    let (possible, out) = choice.candidates.split_at(choice.possible.min(choice.candidates.len()));
    if !possible.is_empty() {
        page.gap();
        let rows = possible.iter().take(most).enumerate().map(|(place, candidate)| {
            let mut row = vec![format!("{}", place + 1)];
            row.extend(parts(shot, open, &candidate.combination));
            row.extend(merits(candidate, units));
            row
        });
        let columns = [
            right("#"),
            left("Lens"),
            left("Support"),
            left("Side"),
            right("Share").spare(3),
            right("Factor").spare(2),
            right("Reach"),
            right("Tips at").spare(1),
            left("Lost on"),
        ];
        let gone = page.figures(&columns, rows.collect());
        more(page, possible.len(), most);
        page.legend(
            &gone,
            &[
                ("Share", "Share: of the payload that would tip the stand."),
                (
                    "Factor",
                    "Factor: restoring over overturning moment; ∞ where no weight hangs outside the feet.",
                ),
                ("", &format!("Reach: of the boom, in {}.", units.plural())),
                ("Tips at", "Tips at: the tilt of the floor that tips it."),
                ("", "The makers' ratings rule over all of these."),
            ],
        );
    }
    if !out.is_empty() {
        page.heading("Cannot be done");
        let rows = out.iter().take(most).map(|candidate| {
            let mut row: Vec<String> = parts(shot, open, &candidate.combination).into();
            row.push(why(candidate, units));
            row
        });
        page.texts(&[left("Lens"), left("Support"), left("Side"), left("Why")], rows.collect());
        more(page, out.len(), most);
    }
}

fn more(page: &mut Page, count: usize, most: usize) {
    if count > most {
        page.paragraph(&format!("... and {} more; --all lists them.", count - most));
    }
}

fn parts(shot: &NamedShot, open: &OpenKit, combination: &Combination) -> [String; 3] {
    let on = combination.side.map_or("-", side);
    [
        open.lens_name(combination).unwrap_or(&shot.uses.lens).to_owned(),
        open.support_name(combination).unwrap_or(&shot.uses.support).to_owned(),
        on.to_owned(),
    ]
}

fn combination(shot: &NamedShot, open: &OpenKit, combination: &Combination) -> String {
    let [lens, support, on] = parts(shot, open, combination);
    match on.as_str() {
        "-" => format!("{lens} on {support}"),
        on => format!("{lens} on {support}, {on} side"),
    }
}

fn merits(candidate: &Candidate, units: Units) -> Vec<String> {
    let Outcome::Possible { merits, lost } = &candidate.outcome else { return Vec::new() };
    let reach = if merits.reach_mm > 0.0 { units.bare(merits.reach_mm) } else { "-".into() };
    vec![
        percent(merits.payload_share),
        factor(merits.factor),
        reach,
        tips_at(merits.tilt_to_tip_deg, column_degrees),
        lost.as_ref().map_or_else(|| "the best".into(), |lost| on(lost, units)),
    ]
}

/// On what it lost, with both values.
fn on(lost: &Lost, units: Units) -> String {
    let Lost { on, value, best } = *lost;
    let count = |value: f64| decimals(value, 0);
    let both = |name: &str, one: &dyn Fn(f64) -> String| format!("{name} {}, not {}", one(value), one(best));
    match on {
        Criterion::Warnings => both("warnings:", &count),
        Criterion::Notes => both("notes:", &count),
        Criterion::Stretch => "visible stretch".into(),
        Criterion::LightRoom => both("light lacks", &|mm| units.length(mm)),
        Criterion::PayloadShare => both("share", &|share| percent(share)),
        Criterion::Factor => both("factor", &|value| decimals(value, 1)),
        Criterion::Reach => both("reach", &|mm| units.length(mm)),
        Criterion::Tilt => both("tips at", &|deg| degrees(deg)),
        Criterion::KitOrder => "order of the kit".into(),
    }
}

/// Why it cannot be done.
fn why(candidate: &Candidate, units: Units) -> String {
    match &candidate.outcome {
        Outcome::Stopped(stops) => {
            let first = sentence(&stops.worst, units);
            if stops.count > 1 { format!("{first} And {} more.", stops.count - 1) } else { first }
        }
        Outcome::Refused(fault) => {
            let key = fault.field.rsplit('.').next().unwrap_or(fault.field);
            with_unit(&format!("`{key}`"), fault.kind.sentence())
        }
        Outcome::Possible { .. } | Outcome::Vacant => String::new(),
    }
}
