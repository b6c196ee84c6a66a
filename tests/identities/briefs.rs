//! Whole briefs drawn at random, each consistent in itself, leaning towards trouble: the horizon just in
//! frame, a rig about to tip, a balanced boom.

use proptest::prelude::*;
use proptest::sample::select;
use tablerig::brief::{Brief, Criteria, Framing, Shot};
use tablerig::optics::sensor::{Aspect, Hold};
use tablerig::plan::{Plan, plan};
use tablerig::scene::bay::Bay;
use tablerig::scene::subject::{JudgedBy, Shape, Subject, Vessel};
use tablerig::scene::table::{Side, Table, Underside};

use crate::draws::{Draw, maybe, range_of, studio};
use crate::gear::{camera, lens, support};

pub(crate) fn table(draw: Draw) -> BoxedStrategy<Table> {
    let under = select(vec![Underside::Open, Underside::Closed]);
    (draw("table.width_mm"), draw("table.depth_mm"), draw("table.height_mm"), under)
        .prop_map(|(width_mm, depth_mm, height_mm, underside)| Table {
            width_mm,
            depth_mm,
            height_mm,
            underside,
        })
        .boxed()
}

pub(crate) fn vessel(draw: Draw) -> BoxedStrategy<Vessel> {
    (draw("subject.vessel.inside_diameter_mm"), draw("subject.vessel.contents_below_rim_mm"))
        .prop_map(|(inside_diameter_mm, contents_below_rim_mm)| Vessel {
            inside_diameter_mm,
            contents_below_rim_mm,
        })
        .boxed()
}

/// A box or a round, half of them vessels as deep and wide as they can be.
pub(crate) fn subject(draw: Draw) -> BoxedStrategy<Subject> {
    let shape =
        (any::<bool>(), draw("subject.diameter_mm"), draw("subject.width_mm"), draw("subject.depth_mm"))
            .prop_map(
                |(round, diameter_mm, width_mm, depth_mm)| {
                    if round { Shape::Round { diameter_mm } } else { Shape::Box { width_mm, depth_mm } }
                },
            );
    let judged = select(vec![
        JudgedBy::Form,
        JudgedBy::TopDetail,
        JudgedBy::SideLayers,
        JudgedBy::Contents,
        JudgedBy::ClearLayers,
        JudgedBy::DecoratedGlass,
        JudgedBy::LaidTable,
    ]);
    (shape, draw("subject.height_mm"), maybe(vessel(draw)), judged)
        .prop_map(|(shape, height_mm, vessel, judged_by)| {
            let narrowest = match shape {
                Shape::Box { width_mm, depth_mm } => width_mm.min(depth_mm),
                Shape::Round { diameter_mm } => diameter_mm,
            };
            let vessel = vessel.map(|v| Vessel {
                inside_diameter_mm: v.inside_diameter_mm.min(narrowest),
                contents_below_rim_mm: v.contents_below_rim_mm.min(height_mm),
            });
            Subject { shape, height_mm, vessel, judged_by }
        })
        .boxed()
}

pub(crate) fn bay(draw: Draw) -> BoxedStrategy<Bay> {
    let wall = || maybe(draw("bay.wall"));
    (
        (wall(), wall(), wall(), wall()),
        maybe(draw("bay.ceiling_mm")),
        draw("bay.ceiling_clearance_mm"),
        draw("bay.person_room_mm"),
        draw("bay.floor_slope_percent"),
        any::<bool>(),
        any::<bool>(),
    )
        .prop_map(|((left_mm, right_mm, front_mm, back_mm), ceiling_mm, clearance, person, slope, a, b)| {
            Bay {
                left_mm,
                right_mm,
                front_mm,
                back_mm,
                ceiling_mm,
                ceiling_clearance_mm: clearance,
                person_room_mm: person,
                floor_slope_percent: slope,
                public_passes: a,
                people_under: b,
            }
        })
        .boxed()
}

/// How the camera is held, and the delivered picture's shape: usual ones and very odd ones.
pub(crate) fn format() -> BoxedStrategy<(Hold, Option<Aspect>)> {
    let aspect =
        select(vec![(4.0, 5.0), (1.0, 1.0), (9.0, 16.0), (16.0, 9.0), (3.0, 2.0), (20.0, 1.0), (0.1, 1.0)])
            .prop_map(|(width, height)| Aspect { width, height });
    (select(vec![Hold::Across, Hold::Upright]), maybe(aspect)).boxed()
}

pub(crate) fn side() -> BoxedStrategy<Side> {
    select(Side::ALL.to_vec()).boxed()
}

fn framing(draw: Draw) -> BoxedStrategy<Framing> {
    (0..8, draw("shot.frame_width_mm"), draw("shot.fill_width"), draw("shot.fill_height"))
        .prop_map(|(way, frame, width, height)| match way {
            0 => Framing::FillWidth(width),
            1 => Framing::FillHeight(height),
            _ => Framing::FrameWidthMm(frame),
        })
        .boxed()
}

pub(crate) fn shot(draw: Draw) -> BoxedStrategy<Shot> {
    let view = (draw("shot.elevation_deg"), draw("shot.bearing_deg"), framing(draw), format());
    let aim = (draw("shot.aim_x_mm"), draw("shot.aim_y_mm"), maybe(draw("shot.aim_height_mm")));
    let wish = (
        maybe(draw("shot.f_number")),
        any::<bool>(),
        maybe(draw("shot.backdrop_behind_mm")),
        maybe(side()),
        draw("shot.light_clearance_mm"),
        draw("shot.stack_overlap"),
    );
    let exact = (
        draw("shot.elevation_tolerance_deg"),
        draw("shot.frame_width_tolerance"),
        draw("shot.roll_tolerance_deg"),
    );
    (view, aim, wish, exact)
        .prop_map(|(view, aim, wish, exact)| {
            let (elevation_deg, bearing_deg, framing, (hold, delivered_aspect)) = view;
            let (f_number, focus_on_table, backdrop_behind_mm, side, light, stack_overlap) = wish;
            Shot {
                elevation_deg,
                bearing_deg,
                framing,
                hold,
                delivered_aspect,
                aim_x_mm: aim.0,
                aim_y_mm: aim.1,
                aim_height_mm: aim.2,
                f_number,
                focus_on_table,
                backdrop_behind_mm,
                side,
                light_clearance_mm: light,
                stack_overlap,
                elevation_tolerance_deg: exact.0,
                frame_width_tolerance: exact.1,
                roll_tolerance_deg: exact.2,
            }
        })
        .boxed()
}

/// Each part drawn the same way, put together.
pub(crate) fn brief(draw: Draw) -> BoxedStrategy<Brief> {
    let gear = (camera(draw), lens(draw), support(draw));
    let scene = (table(draw), subject(draw), bay(draw));
    (shot(draw), gear, scene)
        .prop_map(|(shot, (camera, lens, support), (table, subject, bay))| Brief {
            shot,
            camera,
            lens,
            table,
            subject,
            support,
            bay,
            criteria: Criteria::DEFAULT,
        })
        .boxed()
}

/// Where a brief is driven to after it was drawn.
#[derive(Clone, Copy, Debug)]
enum Lean {
    Nowhere,
    /// The top of the frame this far from level, in degrees.
    Horizon(f64),
    /// The base weight this many times what keeps the rig from tipping.
    Tipping(f64),
    /// The counterweight this many times what balances the boom.
    Balanced(f64),
}

fn leaning(mut brief: Brief, lean: Lean) -> Brief {
    let planned = plan_of(&brief);
    match lean {
        Lean::Nowhere => {}
        Lean::Horizon(off) => {
            let elevation = 0.5 * planned.field_angles.vertical_deg + off;
            let range = range_of("shot.elevation_deg");
            brief.shot.elevation_deg = elevation.clamp(range.least, range.most);
        }
        Lean::Tipping(share) => {
            brief.criteria.wanted_factor = 1.0;
            let add = plan_of(&brief).ballast.base_to_add_kg;
            let most = range_of("support.base_mass_kg").most;
            brief.support.base_mass_kg = (brief.support.base_mass_kg + share * add).min(most);
        }
        Lean::Balanced(share) => {
            if let (Some(boom), Some(kg)) =
                (&mut brief.support.boom, planned.ballast.counterweight_to_balance_kg)
            {
                boom.counterweight_kg = (share * kg).min(range_of("support.boom.counterweight_kg").most);
            }
        }
    }
    brief
}

/// What a studio may ask for, framed by its magnification so that every lens is used from far off to five
/// times life size.
pub(crate) fn studio_brief() -> BoxedStrategy<Brief> {
    let lean = (0..10, select(vec![0.0, 1e-9, -1e-9, 1e-4, -1e-4])).prop_map(|(way, off)| match way {
        0 | 1 => Lean::Horizon(1000.0 * off),
        2 | 3 => Lean::Tipping(1.0 + off),
        4 => Lean::Balanced(1.0 + off),
        _ => Lean::Nowhere,
    });
    (brief(studio), studio("magnification"), lean)
        .prop_map(|(brief, magnification, lean)| leaning(framed_at(brief, magnification), lean))
        .boxed()
}

/// The same brief with the frame width that gives a magnification.
pub(crate) fn framed_at(mut brief: Brief, magnification: f64) -> Brief {
    let used = brief.camera.used_area(brief.shot.hold, brief.shot.delivered_aspect);
    let range = range_of("shot.frame_width_mm");
    let width = (used.width_mm / magnification).clamp(range.least, range.most);
    brief.shot.framing = Framing::FrameWidthMm(width);
    brief
}

/// The plan of a brief that is known to be a good one.
pub(crate) fn plan_of(brief: &Brief) -> Plan {
    plan(brief).unwrap_or_else(|fault| panic!("{fault}\n{brief:#?}"))
}
