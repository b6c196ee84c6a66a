//! Brief in, plan out: joins the rooms, computes nothing itself.

use crate::advice::{Advice, advice_from};
use crate::brief::{Brief, Framing};
use crate::caution::overhead::Removal;
use crate::caution::{Cautions, PictureFindings, RiggingFindings, picture, rigging};
use crate::fault::{Fault, FaultKind};
use crate::optics::focus::{Focus, FocusWish, focus};
use crate::optics::lens::{FieldAngles, FocusedLens};
use crate::optics::sensor::UsedArea;
use crate::optics::tilt::{Tilt, tilt_onto_table};
use crate::range;
use crate::rig::ballast::{Ballast, BallastWish, ballast_by};
use crate::rig::feet::Feet;
use crate::rig::reach::{BayRoom, Placement, SupportInPicture, bay_room, placement, support_in_picture};
use crate::rig::sag::{Sag, sag};
use crate::rig::stability::{Stability, stability_by};
use crate::rig::weights::{Payload, loads, payload};
use crate::tolerance::{Tolerance, ToleranceWish, tolerance};
use crate::vector::Point;
use crate::view::footprint::{Backdrop, Footprint, backdrop, footprint};
use crate::view::framing::{Fill, frame_width_for_fill};
use crate::view::outline::{Outline, Shares, SubjectDepth, outline, shares, subject_depth};
use crate::view::perspective::{Perspective, perspective};
use crate::view::pose::{Orientation, Pose, pose};
use crate::view::projection::View;

/// Everything needed to rig a shot.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Plan {
    /// The part of the sensor that the delivered picture uses.
    pub used_area: UsedArea,
    /// Width of the frame in the plane through the aim point.
    pub frame_width_mm: f64,
    /// Height of the frame in that plane.
    pub frame_height_mm: f64,
    /// The aim point above the table top.
    pub aim_height_mm: f64,
    /// The lens as focused.
    pub lens: FocusedLens,
    /// How wide it sees.
    pub field_angles: FieldAngles,
    /// Where the camera is.
    pub pose: Pose,
    /// The frame on the table.
    pub footprint: Footprint,
    /// The backdrop, if the brief has one.
    pub backdrop: Option<Backdrop>,
    /// Where the subject lies along the axis.
    pub subject_depth: SubjectDepth,
    /// The subject in the picture; `None` where it reaches the entrance pupil.
    pub outline: Option<Outline>,
    /// What shows of its top, side and contents.
    pub shares: Shares,
    /// What is sharp.
    pub focus: Focus,
    /// The tilt that lays the plane of focus on the table.
    pub tilt: Tilt,
    /// How it will look.
    pub perspective: Perspective,
    /// Which elevation suits the subject.
    pub advice: Advice,
    /// Camera, lens and head as one weight.
    pub payload: Payload,
    /// Where the support stands, and its boom.
    pub placement: Placement,
    /// What the bay leaves around it.
    pub bay_room: BayRoom,
    /// How much of it shows in the picture.
    pub support_in_picture: SupportInPicture,
    /// Whether it stands.
    pub stability: Stability,
    /// What would make it stand better.
    pub ballast: Ballast,
    /// How the boom bends; `None` without a boom or its stiffness.
    pub sag: Option<Sag>,
    /// How exactly it must be set.
    pub tolerance: Tolerance,
    /// Whether a load hangs above the table or a person: the cautions for overhead work
    /// ([`crate::caution::overhead::OVERHEAD_CAUTIONS`]) then go with every number.
    pub overhead: bool,
    /// In which order camera and counterweight come off.
    pub removal: Removal,
    /// What to look at.
    pub cautions: Cautions,
}

/// Plans a shot.
///
/// A brief that cannot be met comes back complete, with cautions. Refused: a field that is not finite or
/// out of its range, fields that contradict each other, principal planes so far crossed that the aim point
/// would lie behind the sensor, and a share of the frame that no frame width gives
/// ([`crate::fault::FaultKind`]).
pub fn plan(brief: &Brief) -> Result<Plan, Fault> {
    brief.check()?;
    let Brief { shot, camera, lens, table, subject, support, bay, criteria } = brief;
    let at = Orientation::new(shot.elevation_deg, shot.bearing_deg);
    let used = camera.used_area(shot.hold, shot.delivered_aspect);
    let aim_height_mm = shot.aim_height_mm.unwrap_or(0.5 * subject.height_mm);
    let for_fill = |fill, share| frame_width_for_fill(fill, share, lens, &used, subject, aim_height_mm, &at);
    let frame_width_mm = match shot.framing {
        Framing::FrameWidthMm(width) => width,
        Framing::FillWidth(share) => for_fill(Fill::Width, share)?,
        Framing::FillHeight(share) => for_fill(Fill::Height, share)?,
    };
    let focused = lens.focused(used.width_mm / frame_width_mm);
    if focused.sensor_distance_mm <= 0.0 {
        let separation = lens.principal_separation_mm;
        return Err(Fault {
            least: separation - focused.sensor_distance_mm,
            ..range::PRINCIPAL_SEPARATION_MM.fault(FaultKind::TooSmall, separation)
        });
    }
    let frame_height_mm = used.height_mm / focused.magnification;
    let field_angles = focused.field_angles(frame_width_mm, frame_height_mm);
    let aim = Point { x_mm: shot.aim_x_mm, y_mm: shot.aim_y_mm, z_mm: table.height_mm + aim_height_mm };
    let pivot_below = support.head.pivot_below_socket_mm;
    let pose = pose(&at, aim, &focused, lens.front_from_sensor_mm, camera, pivot_below, table);
    let view = View { pose, pupil_distance_mm: focused.pupil_distance_mm, frame_width_mm, frame_height_mm };

    let footprint = footprint(&view, table, shot.bearing_deg);
    let backdrop = shot.backdrop_behind_mm.map(|behind| backdrop(&view, table, behind));
    let depth = subject_depth(subject, aim_height_mm, &at);
    let s = focused.pupil_distance_mm;
    let outline = outline(subject, aim_height_mm, &at, s, frame_width_mm, frame_height_mm);
    let wish = FocusWish {
        nearest_mm: depth.nearest_mm,
        farthest_mm: depth.farthest_mm,
        circle_of_confusion_mm: camera.blur_limit_mm(),
        f_number: shot.f_number,
        stack_overlap: shot.stack_overlap,
    };
    let focus = focus(lens, &focused, &wish, camera.circle_of_confusion_mm.is_none());
    let tilt = tilt_onto_table(&focused, aim_height_mm, at.sin_elevation, at.cos_elevation);
    let perspective = perspective(
        s,
        frame_width_mm,
        frame_height_mm,
        &depth,
        subject.height_mm,
        aim_height_mm,
        at.sin_elevation,
    );
    let advice = advice_from(subject, (at.sin_bearing, at.cos_bearing));

    let payload = payload(camera, lens, support.head.mass_kg, &pose);
    let placement = placement(support, table, pose.pivot, pose.body_top_mm, shot.side);
    let bay_room = bay_room(bay, table, &view, &placement, camera.body_behind_mm);
    let in_picture = support_in_picture(&view, table, support, &placement);
    let feet = Feet::new(support.leg_count, support.foot_radius_mm, placement.first_leg_deg);
    let loads = loads(support, &placement, &payload);
    let (moments, centres) = (feet.moments(&loads), loads.centres());
    let stability = stability_by(&feet, &moments, &centres, &loads, &placement, pose.pivot.z_mm);
    let ballast_wish = BallastWish {
        factor: criteria.wanted_factor,
        states: [criteria.hold_as_shot, criteria.hold_camera_off, criteria.hold_counterweight_off],
    };
    let (boom_used, reach) = (placement.boom_used, placement.reach_mm);
    let [as_shot, ..] = &centres;
    let ballast = ballast_by(&feet, &moments, as_shot, &loads, support, boom_used, reach, &ballast_wish);
    let boom = if placement.boom_used { support.boom.as_ref() } else { None };
    let sag = boom.and_then(|boom| {
        let distance = focused.sensor_distance_mm;
        sag(boom, placement.boom_length_mm, payload.mass_kg, distance, criteria.settled_share)
    });
    let tolerance_wish = ToleranceWish {
        elevation_deg: shot.elevation_tolerance_deg,
        frame_width: shot.frame_width_tolerance,
        roll_deg: shot.roll_tolerance_deg,
    };
    let tolerance = tolerance(lens, &focused, shot.elevation_deg, &at, frame_width_mm, &tolerance_wish);
    let overhead = pose.sensor_from_edge_mm < 0.0 || placement.boom_used || bay.people_under;
    let counterweight = boom.is_some_and(|boom| boom.counterweight_kg > 0.0);
    let removal = Removal::from_states(counterweight, &stability);

    let mut cautions = Cautions::NONE;
    let found = PictureFindings {
        brief,
        lens: &focused,
        vertical_field_deg: field_angles.vertical_deg,
        pose: &pose,
        focus: &focus,
        tilt: &tilt,
        depth: &depth,
        outline: outline.as_ref(),
        footprint: &footprint,
        perspective: &perspective,
        advice: &advice,
    };
    picture(&found, &mut cautions);
    let found = RiggingFindings {
        brief,
        pose: &pose,
        frame_width_mm,
        payload: &payload,
        placement: &placement,
        room: &bay_room,
        in_picture: &in_picture,
        stability: &stability,
        sag: sag.as_ref(),
        overhead,
    };
    rigging(&found, &mut cautions);
    Ok(Plan {
        used_area: used,
        frame_width_mm,
        frame_height_mm,
        aim_height_mm,
        lens: focused,
        field_angles,
        pose,
        footprint,
        backdrop,
        subject_depth: depth,
        outline,
        shares: shares(subject, aim_height_mm, &at, s),
        focus,
        tilt,
        perspective,
        advice,
        payload,
        placement,
        bay_room,
        support_in_picture: in_picture,
        stability,
        ballast,
        sag,
        tolerance,
        overhead,
        removal,
        cautions,
    })
}
