//! The pull list: everything that a list of shots needs from the shelves.

use alloc::vec::Vec;

use super::booking::Listed;
use super::pieces::PieceSize;
use super::weights::{ShotWeights, Stock, WholeWeight, shot_weights};
use crate::fault::Fault;
use crate::number::floor;

/// Something with a name, and the shots that use it, counted from 0.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Item<'a> {
    /// Its name.
    pub name: &'a str,
    /// The shots.
    pub shots: Vec<usize>,
}

/// A support, and how far its shots ask it to go.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct SupportItem<'a> {
    /// Its name.
    pub name: &'a str,
    /// The shots.
    pub shots: Vec<usize>,
    /// Lowest height at which the column carries the pivot or the boom's clamp.
    pub lowest_mm: f64,
    /// Highest.
    pub highest_mm: f64,
    /// Shortest reach of its boom; `None` where no shot takes the boom.
    pub shortest_reach_mm: Option<f64>,
    /// Longest.
    pub longest_reach_mm: Option<f64>,
    /// Sandbags that the briefs hang on it: mass and most of that mass at once.
    pub sandbags: Vec<BagCount>,
}

/// Sandbags of one mass.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct BagCount {
    /// What one weighs, to the gram.
    pub mass_kg: f64,
    /// How many.
    pub count: u32,
}

/// A board, cloth or backdrop, and how large its shots ask it to be.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Sheet<'a> {
    /// Its name; `None` for those that have none, taken together.
    pub name: Option<&'a str>,
    /// The shots that see it.
    pub shots: Vec<usize>,
    /// Width that fills the frame of each of them, across the picture.
    pub width_mm: f64,
    /// Depth along the picture of a board or cloth; height above the table of a backdrop.
    pub depth_or_height_mm: f64,
    /// Those of the shots that no size fills, since they look over the horizon; they do not count in the
    /// size.
    pub never_filled: Vec<usize>,
}

/// Weights of one size to be pulled.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct PieceCount {
    /// The size.
    pub size: PieceSize,
    /// How many: the most that one shot takes.
    pub count: u32,
}

/// Everything to be pulled. Each kind in the order in which the shots come to it.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct PullList<'a> {
    /// Cameras.
    pub cameras: Vec<Item<'a>>,
    /// Lenses.
    pub lenses: Vec<Item<'a>>,
    /// Tables.
    pub tables: Vec<Item<'a>>,
    /// Supports.
    pub supports: Vec<SupportItem<'a>>,
    /// Boards and cloths on the table.
    pub surfaces: Vec<Sheet<'a>>,
    /// Backdrops.
    pub backdrops: Vec<Sheet<'a>>,
    /// Counterweights, of each size at hand.
    pub counterweights: Vec<PieceCount>,
    /// Weights for the base, of each size at hand.
    pub base_weights: Vec<PieceCount>,
    /// Shots for which what is at hand is not enough.
    pub weights_lacking: Vec<usize>,
    /// What each shot takes of them.
    pub shot_weights: Vec<ShotWeights>,
}

/// The pull list of some shots, one taken after another with the same weights.
///
/// Refused: pieces that are wrong ([`super::pieces::whole_pieces`]), and a brief that is.
pub fn pull_list<'a>(shots: &[Listed<'a>], stock: &Stock<'_>) -> Result<PullList<'a>, Fault> {
    let mut weights = Vec::with_capacity(shots.len());
    for shot in shots {
        weights.push(shot_weights(shot.brief, stock)?);
    }
    let lacking =
        |weight: &Option<WholeWeight>| weight.as_ref().is_some_and(|weight| weight.pieces.is_none());
    let short = weights
        .iter()
        .enumerate()
        .filter(|(_, shot)| lacking(&shot.counterweight) || lacking(&shot.base_weight));
    let mut supports: Vec<SupportItem<'a>> = Vec::new();
    let mut surfaces: Vec<Sheet<'a>> = Vec::new();
    let mut backdrops: Vec<Sheet<'a>> = Vec::new();
    for (index, shot) in shots.iter().enumerate() {
        support(&mut supports, index, shot);
        let footprint = &shot.plan.footprint;
        if !footprint.from_below {
            let size = footprint.board.map(|board| (board.width_mm, board.depth_mm));
            sheet(&mut surfaces, shot.surface, index, size);
        }
        if let Some(backdrop) = shot.plan.backdrop.filter(|backdrop| backdrop.share > 0.0) {
            let size = Some((backdrop.width_mm, backdrop.height_mm));
            let size = size.filter(|(width, height)| width.is_finite() && height.is_finite());
            sheet(&mut backdrops, shot.backdrop, index, size);
        }
    }
    Ok(PullList {
        cameras: items(shots, |shot| shot.camera),
        lenses: items(shots, |shot| shot.lens),
        tables: items(shots, |shot| shot.table),
        supports,
        surfaces,
        backdrops,
        counterweights: counts(stock.counterweights, &weights, |shot| shot.counterweight.as_ref()),
        base_weights: counts(stock.base_weights, &weights, |shot| shot.base_weight.as_ref()),
        weights_lacking: short.map(|(index, _)| index).collect(),
        shot_weights: weights,
    })
}

fn items<'a>(shots: &[Listed<'a>], name: fn(&Listed<'a>) -> &'a str) -> Vec<Item<'a>> {
    let mut items: Vec<Item<'a>> = Vec::new();
    for (index, shot) in shots.iter().enumerate() {
        let name = name(shot);
        match items.iter_mut().find(|item| item.name == name) {
            Some(item) => item.shots.push(index),
            None => items.push(Item { name, shots: [index].into() }),
        }
    }
    items
}

fn support<'a>(items: &mut Vec<SupportItem<'a>>, index: usize, shot: &Listed<'a>) {
    let placement = &shot.plan.placement;
    let (height, reach) = (placement.clamp_height_mm, placement.reach_mm);
    let reach = if placement.boom_used { Some(reach) } else { None };
    let place = items.iter().position(|item| item.name == shot.support).unwrap_or(items.len());
    if place == items.len() {
        items.push(SupportItem {
            name: shot.support,
            shots: Vec::new(),
            lowest_mm: height,
            highest_mm: height,
            shortest_reach_mm: None,
            longest_reach_mm: None,
            sandbags: Vec::new(),
        });
    }
    let Some(item) = items.get_mut(place) else { return };
    item.shots.push(index);
    item.lowest_mm = item.lowest_mm.min(height);
    item.highest_mm = item.highest_mm.max(height);
    if let Some(reach) = reach {
        item.shortest_reach_mm = Some(item.shortest_reach_mm.map_or(reach, |known| known.min(reach)));
        item.longest_reach_mm = Some(item.longest_reach_mm.map_or(reach, |known| known.max(reach)));
    }
    let to_the_gram = |mass_kg: f64| floor(1000.0 * mass_kg + 0.5) / 1000.0;
    let bags = shot.brief.support.sandbags.map(|bag| to_the_gram(bag.mass_kg));
    for mass_kg in bags.into_iter().filter(|mass_kg| *mass_kg > 0.0) {
        let count = bags.iter().filter(|other| **other == mass_kg).count() as u32;
        match item.sandbags.iter_mut().find(|known| known.mass_kg == mass_kg) {
            Some(known) => known.count = known.count.max(count),
            None => item.sandbags.push(BagCount { mass_kg, count }),
        }
    }
}

/// Enters a shot that sees a board, cloth or backdrop of that size (`None`: no size fills its frame).
fn sheet<'a>(sheets: &mut Vec<Sheet<'a>>, name: Option<&'a str>, index: usize, size: Option<(f64, f64)>) {
    let place = sheets.iter().position(|sheet| sheet.name == name).unwrap_or(sheets.len());
    if place == sheets.len() {
        sheets.push(Sheet {
            name,
            shots: Vec::new(),
            width_mm: 0.0,
            depth_or_height_mm: 0.0,
            never_filled: Vec::new(),
        });
    }
    let Some(sheet) = sheets.get_mut(place) else { return };
    sheet.shots.push(index);
    match size {
        Some((width, depth)) => {
            sheet.width_mm = sheet.width_mm.max(width);
            sheet.depth_or_height_mm = sheet.depth_or_height_mm.max(depth);
        }
        None => sheet.never_filled.push(index),
    }
}

fn counts(
    sizes: &[PieceSize],
    shots: &[ShotWeights],
    weight: fn(&ShotWeights) -> Option<&WholeWeight>,
) -> Vec<PieceCount> {
    let of_shot =
        |shot: &ShotWeights, place: usize| weight(shot)?.pieces.as_ref()?.counts.get(place).copied();
    let most = |place: usize| shots.iter().filter_map(|shot| of_shot(shot, place)).max().unwrap_or(0);
    sizes.iter().enumerate().map(|(place, size)| PieceCount { size: *size, count: most(place) }).collect()
}
