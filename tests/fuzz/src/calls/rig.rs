//! What holds the camera; advice; how exactly.

use tablerig::doors::c::advice::*;
use tablerig::doors::c::border::mirror::Plain;
use tablerig::doors::c::rig::ballast::*;
use tablerig::doors::c::rig::reach::*;
use tablerig::doors::c::rig::sag::*;
use tablerig::doors::c::rig::stability::*;
use tablerig::doors::c::tolerance::*;

use super::super::c_door::Call;
use super::{Given, ask};

pub(super) const COUNT: usize = 14;

pub(super) fn call(c: &mut Call<'_>, function: usize, g: &Given) {
    let placement = g.plan.placement;
    match function {
        0 => ask!(
            c,
            Placement,
            tablerig_placement(
                support = c.part(&g.support),
                table = c.part(&g.table),
                pivot = c.result(&g.plan.pose.pivot),
                top = c.number(g.plan.pose.body_top_mm),
                has = c.code(2),
                side = c.code(4)
            )
        ),
        1 => ask!(
            c,
            BayRoom,
            tablerig_bay_room(
                bay = c.part(&g.bay),
                table = c.part(&g.table),
                view = c.result(&g.view),
                placement = c.result(&placement),
                behind = c.number(g.camera.body_behind_mm)
            )
        ),
        2 => ask!(
            c,
            SupportInPicture,
            tablerig_support_in_picture(
                view = c.result(&g.view),
                table = c.part(&g.table),
                support = c.part(&g.support),
                placement = c.result(&placement)
            )
        ),
        3 => ask!(
            c,
            Payload,
            tablerig_payload(
                camera = c.part(&g.camera),
                lens = c.part(&g.lens),
                head = c.number(g.support.head.mass_kg),
                pose = c.result(&g.plan.pose)
            )
        ),
        4 => ask!(
            c,
            Loads,
            tablerig_loads(
                support = c.part(&g.support),
                placement = c.result(&placement),
                payload = c.result(&g.plan.payload)
            )
        ),
        5 => {
            let count = [3, 4, 5, 6, 7, 8, 2, u32::MAX][c.of.below(8)];
            ask!(
                c,
                Feet,
                tablerig_feet(
                    legs = count,
                    radius = c.number(g.support.foot_radius_mm),
                    first = c.number(45.0)
                )
            );
        }
        6 => ask!(
            c,
            Standing,
            tablerig_standing(
                feet = c.result(&g.feet),
                loads = c.result(&g.loads),
                state = c.code(3),
                placement = c.result(&placement),
                height = c.number(g.plan.pose.pivot.z_mm)
            )
        ),
        7 => ask!(
            c,
            Stability,
            tablerig_stability(
                feet = c.result(&g.feet),
                loads = c.result(&g.loads),
                placement = c.result(&placement),
                height = c.number(g.plan.pose.pivot.z_mm)
            )
        ),
        8 => ask!(
            c,
            Ballast,
            tablerig_ballast(
                feet = c.result(&g.feet),
                loads = c.result(&g.loads),
                support = c.part(&g.support),
                boom = c.code(2),
                reach = c.number(placement.reach_mm),
                criteria = c.part(&g.criteria)
            )
        ),
        9 => ask!(
            c,
            Sag,
            tablerig_sag(
                boom = c.value(&g.boom),
                length = c.number(placement.boom_length_mm),
                payload = c.number(g.plan.payload.mass_kg),
                distance = c.number(g.plan.lens.sensor_distance_mm),
                settled = c.number(g.criteria.settled_share)
            )
        ),
        10 => ask!(
            c,
            Advice,
            tablerig_advice(subject = c.part(&g.subject), bearing = c.number(g.shot.bearing_deg))
        ),
        11 => {
            ask!(c, f64, tablerig_elevation_for_contents(vessel = c.value(&g.vessel), share = c.number(0.5)))
        }
        12 => ask!(
            c,
            Tolerance,
            tablerig_tolerance(
                lens = c.part(&g.lens),
                m = c.number(g.plan.lens.magnification),
                elevation = c.number(g.shot.elevation_deg),
                width = c.number(g.plan.frame_width_mm),
                off = c.number(g.shot.elevation_tolerance_deg),
                share = c.number(g.shot.frame_width_tolerance),
                roll = c.number(g.shot.roll_tolerance_deg)
            )
        ),
        _ => {
            let measured = measured(c, g);
            ask!(
                c,
                RealShot,
                tablerig_real_shot(
                    measured = c.part(&measured),
                    lens = c.part(&g.lens),
                    used = c.number(g.used.width_mm)
                )
            );
        }
    }
}

/// What would be measured of the plan, off by a little.
fn measured(c: &mut Call<'_>, g: &Given) -> Measured {
    let mut about = |value: f64| Measurement {
        value: value * c.of.between(0.9, 1.1),
        uncertainty: [0.0, 0.5, 5.0][c.of.below(3)],
    };
    let pose = &g.plan.pose;
    let (x, y) = (pose.sensor.x_mm - pose.aim.x_mm, pose.sensor.y_mm - pose.aim.y_mm);
    let measured = Measured {
        sensor_height_mm: about(pose.sensor.z_mm),
        aim_height_above_floor_mm: about(pose.aim.z_mm),
        horizontal_distance_mm: about(x.hypot(y)),
        sensor_distance_mm: about(g.plan.lens.sensor_distance_mm),
        elevation_deg: about(g.shot.elevation_deg),
        ..Measured::ZERO
    };
    Measured { kind: c.code(3), ..measured }
}
