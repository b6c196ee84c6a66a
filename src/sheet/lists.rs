//! Booking request and pull list as lines of text.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec;
use alloc::vec::Vec;

use super::wording::{Units, kilograms};
use crate::shoot::booking::{Booking, Decided};
use crate::shoot::pull::{Item, PieceCount, PullList, Sheet, SupportItem};

/// One line of the pull list.
#[derive(Clone, Debug)]
pub(crate) struct Line {
    /// What kind of thing it is.
    pub(crate) kind: &'static str,
    /// Which.
    pub(crate) what: String,
    /// How many, how large or how far.
    pub(crate) extent: String,
    /// For which shots, counted from 0.
    pub(crate) shots: Vec<usize>,
}

/// The pull list, kind by kind.
pub(crate) fn pulled(pull: &PullList<'_>, units: Units) -> Vec<Line> {
    let mut lines = Vec::new();
    let mut plain = |kind: &'static str, items: &[Item<'_>]| {
        lines.extend(items.iter().map(|item| Line {
            kind,
            what: item.name.into(),
            extent: String::new(),
            shots: item.shots.clone(),
        }));
    };
    plain("camera", &pull.cameras);
    plain("lens", &pull.lenses);
    plain("table", &pull.tables);
    for support in &pull.supports {
        lines.push(Line {
            kind: "support",
            what: support.name.into(),
            extent: reaches(support, units),
            shots: support.shots.clone(),
        });
        for bag in &support.sandbags {
            let what = format!("sandbag {} for {}", kilograms(bag.mass_kg), support.name);
            lines.push(Line { kind: "weight", what, extent: count(bag.count), shots: support.shots.clone() });
        }
    }
    let mut sheets = |kind: &'static str, items: &[Sheet<'_>]| {
        for sheet in items {
            let what = sheet.name.unwrap_or("any, without a name").to_string();
            lines.push(Line { kind, what, extent: size(sheet, units), shots: sheet.shots.clone() });
        }
    };
    sheets("surface", &pull.surfaces);
    sheets("backdrop", &pull.backdrops);
    pieces(&mut lines, pull, "counterweight", &pull.counterweights, |pull, shot, place| {
        pull.shot_weights.get(shot)?.counterweight.as_ref()?.pieces.as_ref()?.counts.get(place).copied()
    });
    pieces(&mut lines, pull, "base weight", &pull.base_weights, |pull, shot, place| {
        pull.shot_weights.get(shot)?.base_weight.as_ref()?.pieces.as_ref()?.counts.get(place).copied()
    });
    lines
}

type Taken = fn(&PullList<'_>, usize, usize) -> Option<u32>;

fn pieces(
    lines: &mut Vec<Line>,
    pull: &PullList<'_>,
    kind: &'static str,
    counts: &[PieceCount],
    taken: Taken,
) {
    for (place, piece) in counts.iter().enumerate().filter(|(_, piece)| piece.count > 0) {
        let takes = |shot: &usize| taken(pull, *shot, place).is_some_and(|count| count > 0);
        let shots = (0..pull.shot_weights.len()).filter(takes).collect();
        let what = format!("piece of {}", kilograms(piece.size.mass_kg));
        lines.push(Line { kind, what, extent: count(piece.count), shots });
    }
}

fn count(count: u32) -> String {
    format!("{count} ×")
}

fn reaches(support: &SupportItem<'_>, units: Units) -> String {
    let span = |least: f64, most: f64| {
        let (least, most) = (units.length(least), units.length(most));
        if least == most { most } else { format!("{least} to {most}") }
    };
    let height = format!("{} high", span(support.lowest_mm, support.highest_mm));
    match (support.shortest_reach_mm, support.longest_reach_mm) {
        (Some(shortest), Some(longest)) => format!("{height}, boom {} out", span(shortest, longest)),
        _ => height,
    }
}

fn size(sheet: &Sheet<'_>, units: Units) -> String {
    let filled = sheet.never_filled.len() < sheet.shots.len();
    let size = if filled {
        let [width, height] = [sheet.width_mm, sheet.depth_or_height_mm].map(|mm| units.no_less(mm));
        format!("at least {}", units.size(width, height))
    } else {
        String::new()
    };
    match (sheet.never_filled.is_empty(), filled) {
        (true, _) => size,
        (false, true) => format!("{size}; where the horizon is in the frame none fills it"),
        (false, false) => "none fills the frame: the horizon is in it".into(),
    }
}

/// The booking request, with the shots that decide each length.
pub(crate) fn requested<'a>(
    booking: &Booking,
    units: Units,
    name: impl Fn(usize) -> &'a str,
) -> Vec<(&'static str, String)> {
    let length = |decided: &Decided| units.length(decided.mm);
    let by = |decided: &Decided| format!("{} ({})", length(decided), name(decided.by_shot));
    let between = |least: &Decided, most: &Decided| match length(least) == length(most) {
        true => by(most),
        false => format!("{} to {}", by(least), by(most)),
    };
    // What a room must have; the figures that are set on the stand are as everywhere.
    let up = |decided: &Decided| Decided { mm: units.no_less(decided.mm), ..*decided };
    let [front, right, back, left] = &booking.table_from_walls.map(|wall| up(&wall));
    let mut pairs = vec![
        (
            "floor, at least",
            format!("{}, across × front to back", units.size(left.mm + right.mm, front.mm + back.mm)),
        ),
        ("ceiling, at least", by(&up(&booking.ceiling))),
        ("table's centre to front wall", by(front)),
        ("... to right wall", by(right)),
        ("... to back wall", by(back)),
        ("... to left wall", by(left)),
        ("head's pivot up", between(&booking.lowest_pivot, &booking.highest_pivot)),
    ];
    if let (Some(shortest), Some(longest)) = (&booking.shortest_reach, &booking.longest_reach) {
        pairs.push(("boom's reach", between(shortest, longest)));
    }
    pairs
}
