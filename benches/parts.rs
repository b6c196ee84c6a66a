//! The parts of a plan, each by its own public function, on what the parts before it came to.

use std::hint::black_box;

use tablerig::advice::advice;
use tablerig::brief::{Brief, Framing};
use tablerig::optics::focus::{FocusWish, focus};
use tablerig::optics::tilt::tilt_onto_table;
use tablerig::plan::{Plan, plan};
use tablerig::rig::ballast::{BallastWish, ballast, base_to_add_kg, counterweight_to_balance_kg};
use tablerig::rig::feet::Feet;
use tablerig::rig::reach::{bay_room, placement, support_in_picture};
use tablerig::rig::sag::sag;
use tablerig::rig::stability::stability;
use tablerig::rig::weights::{Loads, loads, payload};
use tablerig::tolerance::{ToleranceWish, tolerance};
use tablerig::view::footprint::{backdrop, footprint};
use tablerig::view::outline::{outline, shares, subject_depth};
use tablerig::view::perspective::perspective;
use tablerig::view::pose::{Orientation, pose};
use tablerig::view::projection::View;

use super::floor::Part;

/// A brief with what a part of its plan is reckoned from.
pub(crate) struct Case {
    pub(crate) brief: Brief,
    pub(crate) plan: Plan,
    at: Orientation,
    view: View,
    feet: Feet,
    loads: Loads,
}

impl Case {
    pub(crate) fn new(brief: &Brief) -> Option<Case> {
        if !matches!(brief.shot.framing, Framing::FrameWidthMm(_)) {
            return None;
        }
        let plan = plan(brief).ok()?;
        let Plan { pose, placement, .. } = plan;
        let support = &brief.support;
        Some(Case {
            at: Orientation::new(brief.shot.elevation_deg, brief.shot.bearing_deg),
            view: View {
                pose,
                pupil_distance_mm: plan.lens.pupil_distance_mm,
                frame_width_mm: plan.frame_width_mm,
                frame_height_mm: plan.frame_height_mm,
            },
            feet: Feet::new(support.leg_count, support.foot_radius_mm, placement.first_leg_deg),
            loads: loads(support, &placement, &plan.payload),
            brief: *brief,
            plan,
        })
    }
}

impl Case {
    /// Of the ballast, the weight on the base and the counterweight.
    #[allow(dead_code, reason = "for comparing with those who stop there")]
    pub(crate) fn base_and_counterweight(&self) {
        let Brief { support, criteria, .. } = black_box(&self.brief);
        let wish = BallastWish {
            factor: criteria.wanted_factor,
            states: [criteria.hold_as_shot, criteria.hold_camera_off, criteria.hold_counterweight_off],
        };
        black_box(base_to_add_kg(&self.feet, &self.loads, &wish));
        let boom = if self.plan.placement.boom_used { support.boom.as_ref() } else { None };
        black_box(boom.and_then(|boom| counterweight_to_balance_kg(&self.loads, boom)));
    }
}

/// A part by name, with the floors that lie under it; none where it takes no transcendental call.
pub(crate) struct Named {
    pub(crate) name: &'static str,
    pub(crate) over: &'static [Part],
    pub(crate) run: fn(&Case),
}

/// All of them, in the order of a plan.
pub(crate) const ALL: [Named; 15] = [
    Named { name: "checks", over: &[], run: checks },
    Named { name: "lens and field angles", over: &[Part::Lens], run: lens_and_angles },
    Named { name: "pose", over: &[Part::Pose], run: posed },
    Named { name: "frame on the table", over: &[], run: on_the_table },
    Named { name: "outline", over: &[Part::Outline], run: outlined },
    Named { name: "shares", over: &[Part::Shares], run: shared },
    Named { name: "focus", over: &[Part::Focus], run: focused },
    Named { name: "tilt", over: &[Part::Tilt], run: tilted },
    Named { name: "perspective", over: &[Part::Perspective], run: looked },
    Named { name: "advice", over: &[Part::Advice], run: advised },
    Named { name: "support and room", over: &[Part::Support], run: placed },
    Named { name: "stability", over: &[Part::Stability], run: standing },
    Named { name: "ballast", over: &[Part::Ballast], run: ballasted },
    Named { name: "sag", over: &[Part::Sag], run: sagged },
    Named { name: "tolerance", over: &[Part::Tolerance], run: tolerated },
];

fn checks(case: &Case) {
    let _ = black_box(black_box(&case.brief).check());
}

fn lens_and_angles(case: &Case) {
    let Brief { shot, camera, lens, .. } = black_box(&case.brief);
    let used = camera.used_area(shot.hold, shot.delivered_aspect);
    let focused = lens.focused(used.width_mm / case.plan.frame_width_mm);
    black_box(focused.field_angles(case.plan.frame_width_mm, used.height_mm / focused.magnification));
    black_box(focused);
}

fn posed(case: &Case) {
    let Brief { shot, camera, lens, table, support, .. } = black_box(&case.brief);
    let at = Orientation::new(shot.elevation_deg, shot.bearing_deg);
    let below = support.head.pivot_below_socket_mm;
    let front = lens.front_from_sensor_mm;
    black_box(pose(&at, case.plan.pose.aim, &case.plan.lens, front, camera, below, table));
}

fn on_the_table(case: &Case) {
    let Brief { shot, table, .. } = black_box(&case.brief);
    black_box(footprint(&case.view, table, shot.bearing_deg));
    black_box(shot.backdrop_behind_mm.map(|behind| backdrop(&case.view, table, behind)));
}

fn outlined(case: &Case) {
    let Plan { aim_height_mm, frame_width_mm, frame_height_mm, lens, .. } = black_box(&case.plan);
    let subject = &case.brief.subject;
    black_box(subject_depth(subject, *aim_height_mm, &case.at));
    let s = lens.pupil_distance_mm;
    black_box(outline(subject, *aim_height_mm, &case.at, s, *frame_width_mm, *frame_height_mm));
}

fn shared(case: &Case) {
    let Plan { aim_height_mm, lens, .. } = black_box(&case.plan);
    black_box(shares(&case.brief.subject, *aim_height_mm, &case.at, lens.pupil_distance_mm));
}

fn focused(case: &Case) {
    let Brief { shot, camera, lens, .. } = black_box(&case.brief);
    let wish = FocusWish {
        nearest_mm: case.plan.subject_depth.nearest_mm,
        farthest_mm: case.plan.subject_depth.farthest_mm,
        circle_of_confusion_mm: camera.blur_limit_mm(),
        f_number: shot.f_number,
        stack_overlap: shot.stack_overlap,
    };
    black_box(focus(lens, &case.plan.lens, &wish, camera.circle_of_confusion_mm.is_none()));
}

fn tilted(case: &Case) {
    let Plan { aim_height_mm, lens, .. } = black_box(&case.plan);
    black_box(tilt_onto_table(lens, *aim_height_mm, case.at.sin_elevation, case.at.cos_elevation));
}

fn looked(case: &Case) {
    let Plan { frame_width_mm, frame_height_mm, aim_height_mm, subject_depth, lens, .. } =
        black_box(&case.plan);
    let (height, sin) = (case.brief.subject.height_mm, case.at.sin_elevation);
    let s = lens.pupil_distance_mm;
    black_box(perspective(s, *frame_width_mm, *frame_height_mm, subject_depth, height, *aim_height_mm, sin));
}

fn advised(case: &Case) {
    let Brief { shot, subject, .. } = black_box(&case.brief);
    black_box(advice(subject, shot.bearing_deg));
}

fn placed(case: &Case) {
    let Brief { shot, camera, table, support, bay, .. } = black_box(&case.brief);
    let pose = &case.view.pose;
    let placement = placement(support, table, pose.pivot, pose.body_top_mm, shot.side);
    black_box(bay_room(bay, table, &case.view, &placement, camera.body_behind_mm));
    black_box(support_in_picture(&case.view, table, support, &placement));
    black_box(placement);
}

fn standing(case: &Case) {
    let Brief { camera, lens, support, .. } = black_box(&case.brief);
    let Plan { placement, pose, .. } = black_box(&case.plan);
    let payload = payload(camera, lens, support.head.mass_kg, pose);
    let feet = Feet::new(support.leg_count, support.foot_radius_mm, placement.first_leg_deg);
    let loads = loads(support, placement, &payload);
    black_box(stability(&feet, &loads, placement, pose.pivot.z_mm));
    black_box(payload);
}

fn ballasted(case: &Case) {
    let Brief { support, criteria, .. } = black_box(&case.brief);
    let wish = BallastWish {
        factor: criteria.wanted_factor,
        states: [criteria.hold_as_shot, criteria.hold_camera_off, criteria.hold_counterweight_off],
    };
    let placement = &case.plan.placement;
    black_box(ballast(&case.feet, &case.loads, support, placement.boom_used, placement.reach_mm, &wish));
}

fn sagged(case: &Case) {
    let Plan { placement, payload, lens, .. } = black_box(&case.plan);
    let boom = if placement.boom_used { case.brief.support.boom.as_ref() } else { None };
    let settled = case.brief.criteria.settled_share;
    let length = placement.boom_length_mm;
    black_box(boom.and_then(|boom| sag(boom, length, payload.mass_kg, lens.sensor_distance_mm, settled)));
}

fn tolerated(case: &Case) {
    let Brief { shot, lens, .. } = black_box(&case.brief);
    let wish = ToleranceWish {
        elevation_deg: shot.elevation_tolerance_deg,
        frame_width: shot.frame_width_tolerance,
        roll_deg: shot.roll_tolerance_deg,
    };
    let Plan { lens: focused, frame_width_mm, .. } = &case.plan;
    black_box(tolerance(lens, focused, shot.elevation_deg, &case.at, *frame_width_mm, &wish));
}
