//! Glass and sensor.

use tablerig::doors::c::optics::aperture::*;
use tablerig::doors::c::optics::camera::*;
use tablerig::doors::c::optics::focus::*;
use tablerig::doors::c::optics::inverse::*;
use tablerig::doors::c::optics::lens::*;
use tablerig::doors::c::optics::sensor::UsedArea;
use tablerig::doors::c::optics::tilt::*;

use super::super::c_door::Call;
use super::{Given, ask};

pub(super) const COUNT: usize = 18;

pub(super) fn call(c: &mut Call<'_>, function: usize, g: &Given) {
    let (m, f, circle) =
        (g.plan.lens.magnification, g.plan.focus.f_number, g.plan.focus.circle_of_confusion_mm);
    let (width, height) = (g.plan.frame_width_mm, g.plan.frame_height_mm);
    let depth = g.plan.subject_depth;
    match function {
        0 => {
            let aspect = if c.of.yes() { c.value(&g.aspect) } else { core::ptr::null() };
            ask!(
                c,
                UsedArea,
                tablerig_used_area(camera = c.part(&g.camera), hold = c.code(2), shape = aspect)
            );
        }
        1 => ask!(c, f64, tablerig_blur_limit(camera = c.part(&g.camera))),
        2 => ask!(c, FocusedLens, tablerig_lens_focused(lens = c.part(&g.lens), m = c.number(m))),
        3 => ask!(
            c,
            FieldAngles,
            tablerig_field_angles(
                lens = c.part(&g.lens),
                m = c.number(m),
                width = c.number(width),
                height = c.number(height)
            )
        ),
        4 => ask!(
            c,
            f64,
            tablerig_focal_length_for(
                distance = c.number(g.view.pupil_distance_mm),
                width = c.number(width),
                used = c.number(g.used.width_mm),
                ratio = c.number(g.lens.pupil_ratio)
            )
        ),
        5 => ask!(
            c,
            f64,
            tablerig_magnification_at(
                lens = c.part(&g.lens),
                distance = c.number(g.plan.lens.sensor_distance_mm)
            )
        ),
        6 => ask!(
            c,
            Focus,
            tablerig_focus(
                camera = c.part(&g.camera),
                lens = c.part(&g.lens),
                m = c.number(m),
                depth = c.result(&depth),
                has = c.code(2),
                f = c.number(f),
                overlap = c.number(g.shot.stack_overlap)
            )
        ),
        7 => ask!(
            c,
            DepthOfField,
            tablerig_depth_of_field(
                lens = c.part(&g.lens),
                m = c.number(m),
                f = c.number(f),
                circle = c.number(circle)
            )
        ),
        8 => ask!(
            c,
            f64,
            tablerig_f_number_to_hold(
                lens = c.part(&g.lens),
                m = c.number(m),
                nearest = c.number(depth.nearest_mm),
                farthest = c.number(depth.farthest_mm),
                circle = c.number(circle)
            )
        ),
        9 => ask!(
            c,
            FocusStack,
            tablerig_focus_stack(
                camera = c.part(&g.camera),
                lens = c.part(&g.lens),
                m = c.number(m),
                depth = c.result(&depth),
                f = c.number(f),
                overlap = c.number(g.shot.stack_overlap)
            )
        ),
        10 => ask!(c, ThirdStop, tablerig_third_stop_up(f = c.number(f))),
        11 => ask!(c, ThirdStop, tablerig_third_stop_down(f = c.number(f))),
        12 => ask!(
            c,
            f64,
            tablerig_blur(
                lens = c.part(&g.lens),
                m = c.number(m),
                f = c.number(f),
                distance = c.number(g.view.pupil_distance_mm)
            )
        ),
        13 => ask!(
            c,
            f64,
            tablerig_effective_f_number(lens = c.part(&g.lens), m = c.number(m), f = c.number(f))
        ),
        14 => ask!(c, f64, tablerig_exposure_loss(lens = c.part(&g.lens), m = c.number(m))),
        15 => {
            ask!(c, f64, tablerig_diffraction_disc(lens = c.part(&g.lens), m = c.number(m), f = c.number(f)))
        }
        16 => ask!(
            c,
            f64,
            tablerig_diffraction_limit(lens = c.part(&g.lens), m = c.number(m), circle = c.number(circle))
        ),
        _ => ask!(
            c,
            Tilt,
            tablerig_tilt_onto_table(
                lens = c.part(&g.lens),
                m = c.number(m),
                aim = c.number(g.plan.aim_height_mm),
                elevation = c.number(g.shot.elevation_deg)
            )
        ),
    }
}
