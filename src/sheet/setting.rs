//! The few numbers with which a shot is set, and how exactly.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::SheetShot;
use super::topic::Topic;
use super::wording::{UNBROKEN, Units, bearing, degrees, f_number, hold, kilograms, percent, side, trimmed};
use crate::number::floor;
use crate::plan::Plan;
use crate::rig::reach::Placement;
use crate::scene::table::Side;
use crate::shoot::pull::{PieceCount, PullList};
use crate::vector::FloorPoint;

/// One number to set.
#[derive(Clone, Debug)]
pub(super) struct Row {
    pub(super) topic: Topic,
    /// What it is.
    pub(super) label: &'static str,
    /// The number, in large type.
    pub(super) value: String,
    /// How exactly, or between what.
    pub(super) allowed: String,
    /// What else belongs to it, in small type.
    pub(super) beside: String,
}

/// A shot's numbers, in the order in which they are set.
pub(super) fn rows(shot: &SheetShot<'_>, pull: &PullList<'_>, units: Units) -> Vec<Row> {
    let mut rows = Vec::new();
    camera(&mut rows, shot, units);
    stand(&mut rows, shot, units);
    focus(&mut rows, shot, units);
    weights(&mut rows, shot, pull);
    rows
}

/// A tolerance, rounded down to what a tape shows.
fn within(mm: f64, units: Units) -> String {
    let step = match units {
        Units::In | Units::FtIn => 25.4 / 16.0,
        _ if mm < 20.0 => 0.1,
        _ => 1.0,
    };
    let down = step * floor(mm / step + 1e-9);
    match units {
        _ if mm.is_infinite() => "any".into(),
        // What no tape shows is still not nothing.
        _ if down == 0.0 && mm > 0.0 => format!("under{UNBROKEN}{}", units.length(step)),
        Units::In | Units::FtIn => format!("{}{UNBROKEN}in", Units::In.bare(down)),
        _ => units.length(down),
    }
}

/// Two tolerances in opposite directions.
fn both(one: (f64, &str), other: (f64, &str), units: Units) -> String {
    let (more, less) = (within(one.0, units), within(other.0, units));
    if more == less { format!("± {more}") } else { format!("{more} {}, {less} {}", one.1, other.1) }
}

fn camera(rows: &mut Vec<Row>, shot: &SheetShot<'_>, units: Units) {
    let (brief, plan) = (&shot.listed.brief.shot, shot.listed.plan);
    let tolerance = &plan.tolerance;
    rows.push(Row {
        topic: Topic::Camera,
        label: "Lens axis up, at the sensor",
        value: units.length(plan.pose.sensor.z_mm),
        allowed: both((tolerance.up_mm, "up"), (tolerance.down_mm, "down"), units),
        beside: format!("above the floor; aim point {} up", units.length(plan.pose.aim.z_mm)),
    });
    let straight = units.length(plan.lens.sensor_distance_mm);
    let over = plan.pose.sensor_from_aim_mm < 0.5;
    rows.push(Row {
        topic: Topic::Camera,
        label: "Aim point to sensor, level",
        value: units.length(if over { 0.0 } else { plan.pose.sensor_from_aim_mm }),
        allowed: both((tolerance.away_mm, "away"), (tolerance.closer_mm, "closer"), units),
        beside: if over {
            format!("straight over it; {straight} of tape: the focus")
        } else {
            format!("{straight} of tape, straight: the focus")
        },
    });
    rows.push(Row {
        topic: Topic::Camera,
        label: "Elevation",
        value: degrees(brief.elevation_deg),
        allowed: format!(
            "± {}; roll 0 ± {}",
            degrees(brief.elevation_tolerance_deg),
            degrees(brief.roll_tolerance_deg)
        ),
        beside: format!("camera {}, {}", bearing(brief.bearing_deg), hold(brief.hold)),
    });
    let aspect = match &brief.delivered_aspect {
        Some(aspect) => format!(" ({}:{})", trimmed(aspect.width, 3), trimmed(aspect.height, 3)),
        None => String::new(),
    };
    let fill = match &plan.outline {
        Some(outline) => {
            format!("; subject fills {} × {}", percent(outline.fill_width), percent(outline.fill_height))
        }
        None => String::new(),
    };
    rows.push(Row {
        topic: Topic::Camera,
        label: "Frame width, through the aim point",
        value: units.length(plan.frame_width_mm),
        allowed: format!("± {}", percent(brief.frame_width_tolerance)),
        beside: format!("{} high{aspect}{fill}", units.length(plan.frame_height_mm)),
    });
}

/// Where the stand goes follows from where the camera is to be.
const START: &str = "to begin with; the camera's place decides";
const START_TOO: &str = "to begin with";

/// Where along its side of the table the column stands.
fn along(placement: &Placement, units: Units) -> String {
    let FloorPoint { x_mm, y_mm } = placement.column;
    let (off, words) = match placement.side {
        Side::Front | Side::Back => (x_mm, ["left", "right"]),
        Side::Left | Side::Right => (y_mm, ["towards the front", "towards the back"]),
    };
    let [under, over] = words;
    match off {
        off if off.abs() < 0.5 => "in the middle".into(),
        off => format!("{} {} of the middle", units.length(off.abs()), if off < 0.0 { under } else { over }),
    }
}

fn stand(rows: &mut Vec<Row>, shot: &SheetShot<'_>, units: Units) {
    let plan = shot.listed.plan;
    let placement = &plan.placement;
    let on = side(placement.side);
    if placement.boom_used {
        let clamp = units.length(placement.clamp_height_mm);
        let pivot = units.length(plan.pose.pivot.z_mm);
        let carries = if clamp == pivot {
            "head's pivot level with it".into()
        } else {
            format!("head's pivot {pivot} up")
        };
        rows.push(Row {
            topic: Topic::Stand,
            label: "Boom's clamp up",
            value: clamp,
            allowed: START.into(),
            beside: carries,
        });
        let edge = units.length(placement.stand_off_mm);
        rows.push(Row {
            topic: Topic::Stand,
            label: "Boom's reach, level",
            value: units.length(placement.reach_mm),
            allowed: START_TOO.into(),
            beside: format!("column: {on}, {edge} off the edge, {}", along(placement, units)),
        });
    } else {
        rows.push(Row {
            topic: Topic::Stand,
            label: "Head's pivot up",
            value: units.length(plan.pose.pivot.z_mm),
            allowed: START.into(),
            beside: "the column stands under it, no boom".into(),
        });
        let mm = plan.pose.pivot_from_edge_mm;
        let out = if mm < 0.0 { "inside the edge" } else { "from the edge" };
        rows.push(Row {
            topic: Topic::Stand,
            label: "Column from the table",
            value: units.length(mm.abs()),
            allowed: START_TOO.into(),
            beside: format!("{on} side, {out}, {}", along(placement, units)),
        });
    }
}

fn focus(rows: &mut Vec<Row>, shot: &SheetShot<'_>, units: Units) {
    let plan: &Plan = shot.listed.plan;
    let focus = &plan.focus;
    let depth = &focus.depth_of_field;
    let held = if focus.subject_held { "holds the subject" } else { "does not hold it" };
    let mut allowed = held.to_string();
    if let Some(stack) = &focus.stack {
        allowed = match stack.pictures {
            1 => format!("{held}; 1 picture focused between its ends would"),
            pictures => {
                let step = units.length(stack.step_mm);
                format!("{held}: take {pictures} at {}, {step} apart", f_number(stack.engraved))
            }
        };
    }
    let tilt = match plan.tilt.tilt_deg {
        Some(tilt) if shot.listed.brief.shot.focus_on_table && tilt > 0.0 => {
            format!("tilt {} lays it on the table; ", degrees(tilt))
        }
        _ => String::new(),
    };
    rows.push(Row {
        topic: Topic::Focus,
        label: "Opening, focus on the aim point",
        value: f_number(focus.engraved),
        allowed,
        beside: format!(
            "{tilt}sharp {} before, {} behind it",
            units.length(depth.in_front_mm),
            units.length(depth.behind_mm)
        ),
    });
}

fn weights(rows: &mut Vec<Row>, shot: &SheetShot<'_>, pull: &PullList<'_>) {
    let (brief, plan) = (shot.listed.brief, shot.listed.plan);
    if let (Some(boom), true) = (&brief.support.boom, plan.placement.boom_used) {
        let balance = plan.ballast.counterweight_to_balance_kg;
        let taken = shot.weights.and_then(|weights| weights.counterweight.as_ref());
        let taken = taken.map(|taken| &taken.pieces);
        rows.push(Row {
            topic: Topic::Weights,
            label: "Counterweight",
            value: kilograms(boom.counterweight_kg),
            allowed: match (balance.map(kilograms), taken) {
                (None, _) => String::new(),
                (Some(kg), Some(Some(_))) => format!("{kg} balances"),
                (Some(kg), Some(None)) => format!("{kg} would balance: more than at hand"),
                (Some(kg), None) => format!("{kg} would balance"),
            },
            beside: match taken {
                Some(Some(pieces)) => {
                    format!("on the tail, rounded up to {}", told(&pieces.counts, &pull.counterweights))
                }
                _ => "on the tail".into(),
            },
        });
    }
    let bags: f64 = brief.support.sandbags.iter().map(|bag| bag.mass_kg).sum();
    let base = brief.support.base_mass_kg + bags;
    if base > 0.0 || plan.ballast.base_to_add_kg > 0.0 {
        let to_add = plan.ballast.base_to_add_kg;
        rows.push(Row {
            topic: Topic::Weights,
            label: "Weight on the base",
            value: kilograms(base),
            allowed: if to_add > 0.0 {
                format!("{} more wanted", kilograms(to_add))
            } else {
                "enough".into()
            },
            beside: hung(shot, pull),
        });
    }
}

/// The sandbags and pieces on the base.
fn hung(shot: &SheetShot<'_>, pull: &PullList<'_>) -> String {
    let mut parts: Vec<String> = Vec::new();
    let bags = shot.listed.brief.support.sandbags.iter().filter(|bag| bag.mass_kg > 0.0);
    parts.extend(bags.map(|bag| format!("sandbag {}", kilograms(bag.mass_kg))));
    let pieces = shot.weights.and_then(|weights| weights.base_weight.as_ref()?.pieces.as_ref());
    match pieces {
        Some(pieces) if pieces.mass_kg > 0.0 => parts.push(told(&pieces.counts, &pull.base_weights)),
        Some(_) => {}
        None if shot.listed.brief.support.base_mass_kg > 0.0 => {
            parts.push(format!("{} on the floor", kilograms(shot.listed.brief.support.base_mass_kg)));
        }
        None => {}
    }
    parts.join(", ")
}

/// Pieces by their sizes: `2 × 0.5 kg + 1 × 1.25 kg`.
fn told(counts: &[u32], sizes: &[PieceCount]) -> String {
    let taken = counts.iter().zip(sizes).filter(|(count, _)| **count > 0);
    let parts: Vec<String> =
        taken.map(|(count, piece)| format!("{count} × {}", kilograms(piece.size.mass_kg))).collect();
    parts.join(" + ").replace(' ', &UNBROKEN.to_string()).replace(&format!("{UNBROKEN}+{UNBROKEN}"), " + ")
}
