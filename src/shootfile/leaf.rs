//! The sheet of a file's shots.

use std::prelude::rust_2024::*;

use super::whole::Whole;
use super::{LogEntry, NamedShot};
use crate::draw::LengthUnit;
use crate::fault::Fault;
use crate::sheet::{Paper, Sheet, SheetShot, sheet};
use crate::shoot::onset::{OnSet, on_set};
use crate::shoot::precedence::OrderFault;

impl Whole<'_> {
    /// The sheet as one HTML text; `None` for no shots.
    ///
    /// Refused: what the order and the pull list refuse; a file that was read has none of it.
    pub fn sheet(&self, unit: LengthUnit, paper: Option<Paper>) -> Result<Option<String>, OrderFault> {
        let Some(booking) = self.booking() else { return Ok(None) };
        let order = self.order()?;
        let pull = self.pull_list().map_err(OrderFault::Minutes)?;
        let shots: Vec<SheetShot<'_>> = self
            .shots
            .iter()
            .zip(&self.listed)
            .map(|(shot, listed)| SheetShot {
                name: &shot.name,
                note: shot.note.as_deref(),
                listed: *listed,
                subject: shot.uses.subject.as_deref(),
                bay: shot.uses.bay.as_deref(),
                chosen: shot.chosen.as_ref().map(|chosen| chosen.sentence()),
                weights: shot.weights.as_ref(),
                measured: measured(&self.file.log, shot).and_then(Result::ok),
            })
            .collect();
        Ok(Some(sheet(&Sheet {
            title: self.file.title.as_deref(),
            note: self.file.note.as_deref(),
            shots: &shots,
            setups: &self.setups(),
            minutes: self.minutes(),
            order: &order,
            booking: &booking,
            pull: &pull,
            unit,
            paper,
        })))
    }
}

/// What the log last says of a shot, against its plan.
fn measured(log: &[LogEntry], shot: &NamedShot) -> Option<Result<OnSet, Fault>> {
    let last = log.iter().rev().filter(|entry| entry.shot == shot.name);
    let (measured, roll) = last.filter_map(|entry| Some((entry.measured?, entry.roll_deg))).next()?;
    Some(on_set(&shot.brief.shot, &shot.brief.lens, &shot.plan, &measured, roll))
}
