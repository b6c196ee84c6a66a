//! The sheet that hangs on the stand: one HTML file for a whole shoot, with nothing to fetch.
//!
//! It opens with a page of overview: the order, the booking request, the pull list, the cautions. Then a page
//! a shot, in the order of shooting: the few numbers to set in large type with their tolerances, boxes to
//! tick, room to write what was really set, cautions beside what they are about, and the three drawings.
//! It prints to A4 and US Letter, is light or dark as the reader's screen, and fits a phone.

pub(crate) mod cautions;
pub(crate) mod changes;
pub(crate) mod lists;
mod overview;
mod setting;
mod shot;
mod topic;
pub(crate) mod wording;

use alloc::string::String;

use maud::{DOCTYPE, Markup, PreEscaped, html};

use self::wording::Units;
use crate::draw::LengthUnit;
use crate::draw::steering::seen;
use crate::shoot::booking::{Booking, Listed};
use crate::shoot::minutes::{Minutes, Setup};
use crate::shoot::onset::OnSet;
use crate::shoot::order::Order;
use crate::shoot::pull::PullList;
use crate::shoot::weights::ShotWeights;

/// The paper that it is printed on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Paper {
    /// 210 × 297 mm (ISO 216).
    A4,
    /// 8 1/2 × 11 in (ANSI Y14.1, size A).
    Letter,
}

/// One shot on the sheet.
#[derive(Clone, Debug)]
pub struct SheetShot<'a> {
    /// Its name.
    pub name: &'a str,
    /// Its note.
    pub note: Option<&'a str>,
    /// The shot, its plan, and the names of what it uses.
    pub listed: Listed<'a>,
    /// The subject's name.
    pub subject: Option<&'a str>,
    /// The bay's.
    pub bay: Option<&'a str>,
    /// What it left open and how that was chosen, in a sentence.
    pub chosen: Option<String>,
    /// Its weights in whole pieces.
    pub weights: Option<&'a ShotWeights>,
    /// What was last measured of it, against the plan.
    pub measured: Option<OnSet>,
}

/// What the sheet tells.
#[derive(Clone, Copy, Debug)]
pub struct Sheet<'a> {
    /// What the shoot is called.
    pub title: Option<&'a str>,
    /// Its note.
    pub note: Option<&'a str>,
    /// Its shots, as written. Everything below counts along this list.
    pub shots: &'a [SheetShot<'a>],
    /// How each is rigged.
    pub setups: &'a [Setup],
    /// What each kind of change takes.
    pub minutes: Minutes,
    /// The order to shoot in.
    pub order: &'a Order,
    /// The room to book.
    pub booking: &'a Booking,
    /// What to pull.
    pub pull: &'a PullList<'a>,
    /// The unit of lengths.
    pub unit: LengthUnit,
    /// The paper; as the printer has it where `None`, in which case it fits both.
    pub paper: Option<Paper>,
}

const STYLE: &str = include_str!("style.css");

/// The sheet as one HTML text.
pub fn sheet(sheet: &Sheet<'_>) -> String {
    let units = Units::from(sheet.unit);
    let title = sheet.title.unwrap_or("Shoot");
    let page_size = match sheet.paper {
        None => "",
        Some(Paper::A4) => "@page{size:A4 portrait}:root{--page-height:280mm}",
        Some(Paper::Letter) => "@page{size:letter portrait}:root{--page-height:262mm}",
    };
    let page: Markup = html! {
        (DOCTYPE)
        html lang="en" {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                meta name="color-scheme" content="light dark";
                title { (title) }
                style { (PreEscaped(STYLE)) (PreEscaped(page_size)) }
            }
            body {
                (overview::overview(sheet, units))
                @for (place, shot) in in_order(sheet).enumerate() {
                    (shot::shot(sheet, shot, place, units))
                }
            }
        }
    };
    page.into_string().chars().map(seen).collect()
}

/// The shots in the order of shooting.
fn in_order<'a>(sheet: &'a Sheet<'a>) -> impl Iterator<Item = &'a SheetShot<'a>> {
    sheet.order.sequence.iter().filter_map(|shot| sheet.shots.get(*shot))
}
