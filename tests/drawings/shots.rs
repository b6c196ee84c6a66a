//! The briefs that are drawn, and their drawings.

use proptest::strategy::{Strategy, ValueTree};
use proptest::test_runner::TestRunner;
use tablerig::brief::{Brief, Framing};
use tablerig::draw::{LengthUnit, Style, above, picture, side};
use tablerig::plan::{Plan, plan};
use tablerig::rig::support::{Boom, Sandbag};
use tablerig::scene::bay::Bay;
use tablerig::scene::subject::{JudgedBy, Shape, Subject, Vessel};
use tablerig::scene::table::Side;

use crate::{briefs, demo, draws, workshop};

/// One brief with its plan and its three drawings.
pub(crate) struct Drawn {
    pub(crate) name: String,
    pub(crate) brief: Brief,
    pub(crate) plan: Plan,
    pub(crate) side: String,
    pub(crate) above: String,
    pub(crate) picture: String,
}

impl Drawn {
    pub(crate) fn new(name: &str, brief: Brief, unit: LengthUnit) -> Option<Drawn> {
        let plan = plan(&brief).ok()?;
        let style = Style { unit, id: name, name, ..Style::DEFAULT };
        Some(Drawn {
            name: name.into(),
            side: side(&brief, &plan, &style),
            above: above(&brief, &plan, &style),
            picture: picture(&brief, &plan, &style),
            brief,
            plan,
        })
    }

    pub(crate) fn all(&self) -> [(&'static str, &str); 3] {
        [("side", &self.side), ("above", &self.above), ("picture", &self.picture)]
    }
}

/// The workshop's overhead shot, changed so that each kind of thing is drawn at least once.
fn special() -> Vec<(&'static str, Brief)> {
    let base = workshop::overhead();
    let (mut sideways, mut short, mut bagged, mut below, mut level) = (base, base, base, base, base);
    // The boom square to the way the camera looks, and rising.
    sideways.shot.side = Some(Side::Left);
    sideways.shot.bearing_deg = 30.0;
    sideways.support.boom = sideways.support.boom.map(|boom| Boom { pitch_deg: 25.0, ..boom });
    sideways.bay = Bay {
        left_mm: Some(1700.0),
        back_mm: Some(900.0),
        ceiling_mm: Some(2600.0),
        ceiling_clearance_mm: 80.0,
        ..Bay::OPEN
    };
    // A stand too low and a boom too short, in a corner.
    short.support.highest_pivot_mm = 1500.0;
    short.support.boom = short.support.boom.map(|boom| Boom { longest_reach_mm: 150.0, ..boom });
    short.bay = Bay { ceiling_mm: Some(2000.0), front_mm: Some(800.0), right_mm: Some(700.0), ..Bay::OPEN };
    // Every weight there is.
    let bag = |mass_kg, out_mm, direction_deg| Sandbag { mass_kg, out_mm, direction_deg, height_mm: 200.0 };
    bagged.support.sandbags =
        [bag(7.0, 0.0, 0.0), bag(7.0, 300.0, 180.0), bag(4.5, 350.0, 120.0), bag(4.5, 350.0, 240.0)];
    bagged.support.leg_count = 5;
    bagged.shot.elevation_deg = 65.0;
    // From under the table, and level with the horizon in the frame; the subject cut.
    below.shot.elevation_deg = -25.0;
    below.subject.height_mm = 300.0;
    below.support = workshop::tripod();
    level.shot.elevation_deg = 6.0;
    level.shot.framing = Framing::FrameWidthMm(260.0);
    level.subject = Subject {
        shape: Shape::Box { width_mm: 240.0, depth_mm: 90.0 },
        height_mm: 210.0,
        vessel: Some(Vessel { inside_diameter_mm: 80.0, contents_below_rim_mm: 15.0 }),
        judged_by: JudgedBy::SideLayers,
    };
    level.shot.bearing_deg = -35.0;
    level.lens = workshop::lens(50.0);
    level.support = workshop::tripod();
    vec![("sideways", sideways), ("short", short), ("bagged", bagged), ("below", below), ("level", level)]
}

/// The demo, the workshop's briefs, and briefs drawn at random, the same in every run.
pub(crate) fn drawn(random: usize) -> Vec<Drawn> {
    let mut all = Vec::new();
    for (name, brief) in demo::shots() {
        all.extend(Drawn::new(&name, brief, LengthUnit::Millimetres));
    }
    all.extend(Drawn::new("overhead", workshop::overhead(), LengthUnit::FeetInches));
    all.extend(Drawn::new("slanting", workshop::slanting(), LengthUnit::Centimetres));
    for (name, brief) in special() {
        all.extend(Drawn::new(name, brief, LengthUnit::Millimetres));
    }
    let mut runner = TestRunner::deterministic();
    for (kind, strategy) in [("studio", briefs::studio_brief()), ("range", briefs::brief(draws::whole))] {
        for number in 0..random {
            let brief = strategy.new_tree(&mut runner).unwrap().current();
            let unit = LengthUnit::ALL[number % LengthUnit::ALL.len()];
            all.extend(Drawn::new(&format!("{kind}-{number}"), brief, unit));
        }
    }
    all
}
