//! From the camera's place to the picture.

use tablerig::doors::c::point::{PicturePoint, Point};
use tablerig::doors::c::view::footprint::*;
use tablerig::doors::c::view::framing::*;
use tablerig::doors::c::view::outline::*;
use tablerig::doors::c::view::perspective::*;
use tablerig::doors::c::view::pose::*;
use tablerig::doors::c::view::projection::*;

use super::super::c_door::Call;
use super::{Given, ask};

pub(super) const COUNT: usize = 14;

fn point(c: &mut Call<'_>, g: &Given) -> Point {
    let aim = g.plan.pose.aim;
    Point {
        x_mm: aim.x_mm + c.of.between(-800.0, 800.0),
        y_mm: aim.y_mm + c.of.between(-800.0, 800.0),
        z_mm: aim.z_mm + c.of.between(-800.0, 800.0),
    }
}

pub(super) fn call(c: &mut Call<'_>, function: usize, g: &Given) {
    let (aim, elevation, bearing) = (g.plan.aim_height_mm, g.shot.elevation_deg, g.shot.bearing_deg);
    let (s, width, height) = (g.view.pupil_distance_mm, g.plan.frame_width_mm, g.plan.frame_height_mm);
    match function {
        0 => ask!(
            c,
            Pose,
            tablerig_pose(
                camera = c.part(&g.camera),
                lens = c.part(&g.lens),
                table = c.part(&g.table),
                m = c.number(g.plan.lens.magnification),
                elevation = c.number(elevation),
                bearing = c.number(bearing),
                aim = c.result(&g.plan.pose.aim),
                pivot = c.number(g.support.head.pivot_below_socket_mm)
            )
        ),
        1 => {
            let place = point(c, g);
            ask!(c, PicturePoint, tablerig_project(view = c.result(&g.view), place = c.result(&place)));
        }
        2 => {
            let place = point(c, g);
            ask!(c, f64, tablerig_depth(view = c.result(&g.view), place = c.result(&place)));
        }
        3 => {
            let at = PicturePoint {
                right_mm: c.of.between(-1.0, 1.0) * width,
                up_mm: c.of.between(-1.0, 1.0) * height,
            };
            ask!(
                c,
                Point,
                tablerig_cast_onto_level(
                    view = c.result(&g.view),
                    at = c.result(&at),
                    z = c.number(g.table.height_mm)
                )
            );
        }
        4 => {
            let corners = [point(c, g), point(c, g), point(c, g), point(c, g)];
            ask!(c, f64, tablerig_covered_share(view = c.result(&g.view), corners = c.values(&corners)));
        }
        5 => {
            let (one, other) = (point(c, g), point(c, g));
            ask!(
                c,
                f64,
                tablerig_length_in_frame(
                    view = c.result(&g.view),
                    one = c.result(&one),
                    other = c.result(&other)
                )
            );
        }
        6 => ask!(
            c,
            Footprint,
            tablerig_footprint(
                view = c.result(&g.view),
                table = c.part(&g.table),
                bearing = c.number(bearing)
            )
        ),
        7 => ask!(
            c,
            Backdrop,
            tablerig_backdrop(view = c.result(&g.view), table = c.part(&g.table), behind = c.number(900.0))
        ),
        8 => ask!(
            c,
            SubjectDepth,
            tablerig_subject_depth(
                subject = c.part(&g.subject),
                aim = c.number(aim),
                elevation = c.number(elevation),
                bearing = c.number(bearing)
            )
        ),
        9 => ask!(
            c,
            Outline,
            tablerig_outline(
                subject = c.part(&g.subject),
                aim = c.number(aim),
                elevation = c.number(elevation),
                bearing = c.number(bearing),
                s = c.number(s),
                width = c.number(width),
                height = c.number(height)
            )
        ),
        10 => ask!(
            c,
            Shares,
            tablerig_shares(
                subject = c.part(&g.subject),
                aim = c.number(aim),
                elevation = c.number(elevation),
                bearing = c.number(bearing),
                s = c.number(s)
            )
        ),
        11 => ask!(
            c,
            f64,
            tablerig_frame_width_for_fill(
                fill = c.code(2),
                share = c.number(0.5),
                lens = c.part(&g.lens),
                used = c.result(&g.used),
                subject = c.part(&g.subject),
                aim = c.number(aim),
                elevation = c.number(elevation),
                bearing = c.number(bearing)
            )
        ),
        12 => ask!(
            c,
            f64,
            tablerig_largest_frame_width(
                ceiling = c.number(2600.0),
                aim = c.number(g.plan.pose.aim.z_mm),
                elevation = c.number(elevation),
                camera = c.part(&g.camera),
                lens = c.part(&g.lens),
                used = c.result(&g.used),
                pivot = c.number(g.support.head.pivot_below_socket_mm)
            )
        ),
        _ => ask!(
            c,
            Perspective,
            tablerig_perspective(
                subject = c.part(&g.subject),
                aim = c.number(aim),
                elevation = c.number(elevation),
                bearing = c.number(bearing),
                s = c.number(s),
                width = c.number(width),
                height = c.number(height)
            )
        ),
    }
}
