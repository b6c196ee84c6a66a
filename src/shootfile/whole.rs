//! What the shots of a file need together: their order, the room to book, what to pull, whether they fit.

use std::prelude::rust_2024::*;

use super::{NamedShot, ShootFile};
use crate::fault::Fault;
use crate::scene::bay::Bay;
use crate::shoot::booking::{Booking, Listed, booking};
use crate::shoot::fit::{Fit, fit};
use crate::shoot::minutes::{Minutes, Setup};
use crate::shoot::order::{Order, order};
use crate::shoot::precedence::{OrderFault, Precedence};
use crate::shoot::pull::{PullList, pull_list};
use crate::shoot::room::RoomNeed;

/// The shots of a file, all or some of them.
#[derive(Clone, Debug)]
pub struct Whole<'a> {
    /// The file.
    pub file: &'a ShootFile,
    /// The shots, in the order of the file. Wherever shots are counted, from 0, it is along this list.
    pub shots: Vec<&'a NamedShot>,
    /// The same with the names of what they use.
    pub listed: Vec<Listed<'a>>,
    precedences: Vec<Precedence>,
}

/// How the shots of one bay fit it.
#[derive(Clone, Debug, serde::Serialize)]
pub struct BayFit<'a> {
    /// The bay's name.
    pub bay: &'a str,
    /// Which shots are taken in it.
    pub shots: Vec<usize>,
    /// How each of them fits, in the same order, the table as it stands.
    pub each: Vec<Fit>,
    /// How all of them together fit with the table as it stands, and turned by one, two and three quarters.
    pub together: [Fit; 4],
}

impl<'a> Whole<'a> {
    /// The shots of a file without those of these names. What must come first stays so across a shot that
    /// is left out.
    pub fn new(file: &'a ShootFile, left_out: &[&str]) -> Whole<'a> {
        let kept = |shot: &NamedShot| !left_out.contains(&shot.name.as_str());
        let mut precedences = file.precedences.clone();
        for (index, _) in file.shots.iter().enumerate().filter(|(_, shot)| !kept(shot)) {
            let befores = precedences.iter().filter(|pair| pair.then == index);
            let across: Vec<Precedence> = befores
                .flat_map(|before| {
                    let thens = precedences.iter().filter(|pair| pair.first == index);
                    thens.map(|after| Precedence { first: before.first, then: after.then, at_once: false })
                })
                .collect();
            precedences.retain(|pair| pair.first != index && pair.then != index);
            precedences.extend(across);
        }
        // From places in the file to places among the kept.
        let place = |shot: usize| file.shots.iter().take(shot).filter(|shot| kept(shot)).count();
        for pair in &mut precedences {
            (pair.first, pair.then) = (place(pair.first), place(pair.then));
        }
        let shots: Vec<&NamedShot> = file.shots.iter().filter(|shot| kept(shot)).collect();
        let listed = shots.iter().map(|shot| listed(shot)).collect();
        Whole { file, shots, listed, precedences }
    }

    /// What each kind of change takes: the file's own minutes, or those to begin with.
    pub fn minutes(&self) -> Minutes {
        self.file.minutes.unwrap_or(Minutes::TO_BEGIN_WITH)
    }

    /// The sequence that needs the least re-rigging.
    ///
    /// Refused: what [`order`] refuses; a file that was read has none of it.
    pub fn order(&self) -> Result<Order, OrderFault> {
        order(&self.setups(), &self.minutes(), &self.precedences)
    }

    /// How each shot is rigged.
    pub fn setups(&self) -> Vec<Setup> {
        self.shots.iter().map(|shot| self.setup(shot)).collect()
    }

    /// How a shot is rigged. Another table counts as another surface.
    fn setup(&self, shot: &NamedShot) -> Setup {
        let place = |names: Vec<&str>, name: &str| {
            names.iter().position(|known| *known == name).unwrap_or(names.len())
        };
        let ground = |shot: &NamedShot| (shot.uses.table.clone(), shot.uses.surface.clone());
        let gear = &self.file.gear;
        let surface = self.file.shots.iter().position(|other| ground(other) == ground(shot));
        Setup {
            support: place(gear.supports.names(), &shot.uses.support) as u32,
            side: shot.plan.placement.side,
            lens: place(gear.lenses.names(), &shot.uses.lens) as u32,
            height_mm: shot.plan.placement.clamp_height_mm,
            surface: surface.unwrap_or_default() as u32,
        }
    }

    /// The smallest room for all of them; `None` for no shots.
    pub fn booking(&self) -> Option<Booking> {
        booking(&self.listed)
    }

    /// Everything to be pulled.
    ///
    /// Refused: what [`pull_list`] refuses; a file that was read has none of it.
    pub fn pull_list(&self) -> Result<PullList<'a>, Fault> {
        pull_list(&self.listed, &self.file.weights.stock())
    }

    /// How they fit the bays they are taken in, in the order in which the shots come to them.
    pub fn fits(&self) -> Vec<BayFit<'a>> {
        let mut bays: Vec<(&'a str, Bay, Vec<usize>)> = Vec::new();
        for (index, shot) in self.shots.iter().enumerate() {
            let Some(name) = shot.uses.bay.as_deref() else { continue };
            match bays.iter_mut().find(|(known, ..)| *known == name) {
                Some((.., shots)) => shots.push(index),
                None => bays.push((name, shot.brief.bay, [index].into())),
            }
        }
        let fitted = |(bay, room, shots): (&'a str, Bay, Vec<usize>)| {
            let needs: Vec<RoomNeed> = shots
                .iter()
                .filter_map(|shot| self.shots.get(*shot))
                .map(|shot| RoomNeed::of(&shot.brief, &shot.plan))
                .collect();
            let all = needs.iter().fold(RoomNeed::NONE, |all, need| all.with(need));
            let each = needs.iter().map(|need| fit(&room, need, 0)).collect();
            BayFit { bay, shots, each, together: [0, 1, 2, 3].map(|turns| fit(&room, &all, turns)) }
        };
        bays.into_iter().map(fitted).collect()
    }
}

/// A shot with the names of what it uses.
fn listed(shot: &NamedShot) -> Listed<'_> {
    Listed {
        camera: &shot.uses.camera,
        lens: &shot.uses.lens,
        support: &shot.uses.support,
        table: &shot.uses.table,
        surface: shot.uses.surface.as_deref(),
        backdrop: shot.uses.backdrop.as_deref(),
        brief: &shot.brief,
        plan: &shot.plan,
    }
}
