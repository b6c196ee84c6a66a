//! A brief: one shot as the photographer plans it, with everything it is to be shot with.

use crate::fault::Fault;
use crate::optics::camera::Camera;
use crate::optics::lens::Lens;
use crate::optics::sensor::{Aspect, Hold};
use crate::range;
use crate::rig::support::Support;
use crate::scene::bay::Bay;
use crate::scene::subject::Subject;
use crate::scene::table::{Side, Table};

/// How much the frame takes in.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize), serde(rename_all = "snake_case"))]
pub enum Framing {
    /// The frame's width in the plane through the aim point.
    FrameWidthMm(f64),
    /// The share of the frame's width that the subject is to fill; the frame width is solved for.
    FillWidth(f64),
    /// The share of the frame's height that the subject is to fill; the frame width is solved for.
    FillHeight(f64),
}

/// What the picture is to be.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Shot {
    /// How far the camera stands above the horizontal through the aim point, -60 to 90.
    pub elevation_deg: f64,
    /// Where it stands around the subject seen from above, counter-clockwise from the front.
    pub bearing_deg: f64,
    /// How much the frame takes in.
    pub framing: Framing,
    /// How the camera is held.
    pub hold: Hold,
    /// The delivered picture's shape; the sensor's own when `None`.
    pub delivered_aspect: Option<Aspect>,
    /// Aim point, and subject, to the right of the table's centre.
    pub aim_x_mm: f64,
    /// Aim point, and subject, behind the table's centre.
    pub aim_y_mm: f64,
    /// Aim point above the table top; half the subject's height when `None`.
    pub aim_height_mm: Option<f64>,
    /// The engraved f-number to shoot at; chosen to hold the subject when `None`.
    pub f_number: Option<f64>,
    /// Whether the plane of focus is to lie on the table, with a tilting lens.
    pub focus_on_table: bool,
    /// How far behind the aim point a backdrop stands.
    pub backdrop_behind_mm: Option<f64>,
    /// The side on which the stand is to be; the one of the shortest reach when `None`.
    pub side: Option<Side>,
    /// Least room the light needs between lens front and aim point.
    pub light_clearance_mm: f64,
    /// Share of each slice of a focus stack that the next one overlaps.
    pub stack_overlap: f64,
    /// How far the elevation may be off.
    pub elevation_tolerance_deg: f64,
    /// Share by which the frame width may be off.
    pub frame_width_tolerance: f64,
    /// How far from level the camera may be rolled.
    pub roll_tolerance_deg: f64,
}

/// The limits for cautions about standing, and what the solved weights are to reach. All borrowed: no
/// standard is written for camera stands. [`Criteria::DEFAULT`] says from where.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Criteria {
    /// Payload over the payload that tips the stand: a note above this.
    pub payload_share_note: f64,
    /// ... a warning above this.
    pub payload_share_warn: f64,
    /// ... a stop from this on.
    pub payload_share_stop: f64,
    /// Restoring over overturning moment: a note under this.
    pub factor_note: f64,
    /// ... a warning under this.
    pub factor_warn: f64,
    /// ... a stop under this.
    pub factor_stop: f64,
    /// A boom that swings slower than this is springy.
    pub springy_frequency_hz: f64,
    /// The factor under which a springy boom gets a warning.
    pub springy_factor_warn: f64,
    /// Tilt that tips the stand: a warning under this.
    pub tilt_warn_deg: f64,
    /// ... a stop under this.
    pub tilt_stop_deg: f64,
    /// ... a warning under this where children or the public pass.
    pub tilt_public_warn_deg: f64,
    /// Sideways push that tips the stand, as a share of its weight: a warning under this.
    pub push_share_warn: f64,
    /// A push above this is never asked for.
    pub push_most_n: f64,
    /// The push is taken at the pivot, but no higher than this.
    pub push_height_most_mm: f64,
    /// Makers' ratings are divided by this where people are under the load.
    pub people_rating_divisor: f64,
    /// The factor that the solved base weight and the longest reach keep.
    pub wanted_factor: f64,
    /// Whether the solved base weight is to keep it as shot.
    pub hold_as_shot: bool,
    /// Whether with the camera off and the counterweight on.
    pub hold_camera_off: bool,
    /// Whether with the counterweight off and the camera on.
    pub hold_counterweight_off: bool,
    /// A touched boom counts as settled when its swing has died down to this share.
    pub settled_share: f64,
}

impl Criteria {
    /// The defaults, each borrowed from the field named:
    /// - payload 0.667, 0.75, 1: 66.6 % and 75 % of tipping, AS 1418.5 via the Queensland Mobile Crane Code
    ///   of Practice 2006, 11.1.1;
    /// - factor 2, 1.5, 1: outrigger ratio 1.5, Quebec S-2.1 r.4, 3.9.15; at least 1.3 in DGUV Vorschrift
    ///   70, section 23(2); a load let go by hand deflects twice the static (mechanics texts);
    /// - springy under 3 Hz, factor 2: the same doubling;
    /// - tilt 10 and 5 degrees: IEC 60065, 19.1 (10), IEC 60601-1 (5, as quoted); 15 where the public
    ///   passes: IEC 60598-2-10, as quoted;
    /// - push 13 % of the weight, at most 250 N, at most 1.5 m up: IEC 62368-1, as quoted;
    /// - ratings halved over people: DGUV Information 215-313, 1.1;
    /// - wanted factor 2 as shot and with the camera off: the doubling again; settled at a hundredth:
    ///   common practice, no source.
    pub const DEFAULT: Criteria = Criteria {
        payload_share_note: 0.667,
        payload_share_warn: 0.75,
        payload_share_stop: 1.0,
        factor_note: 2.0,
        factor_warn: 1.5,
        factor_stop: 1.0,
        springy_frequency_hz: 3.0,
        springy_factor_warn: 2.0,
        tilt_warn_deg: 10.0,
        tilt_stop_deg: 5.0,
        tilt_public_warn_deg: 15.0,
        push_share_warn: 0.13,
        push_most_n: 250.0,
        push_height_most_mm: 1500.0,
        people_rating_divisor: 2.0,
        wanted_factor: 2.0,
        hold_as_shot: true,
        hold_camera_off: true,
        hold_counterweight_off: false,
        settled_share: 0.01,
    };

    /// Refuses a field that is not finite or out of its range (see [`crate::range`]).
    pub fn check(&self) -> Result<(), Fault> {
        range::PAYLOAD_SHARE_NOTE.check(self.payload_share_note)?;
        range::PAYLOAD_SHARE_WARN.check(self.payload_share_warn)?;
        range::PAYLOAD_SHARE_STOP.check(self.payload_share_stop)?;
        range::FACTOR_NOTE.check(self.factor_note)?;
        range::FACTOR_WARN.check(self.factor_warn)?;
        range::FACTOR_STOP.check(self.factor_stop)?;
        range::SPRINGY_FREQUENCY_HZ.check(self.springy_frequency_hz)?;
        range::SPRINGY_FACTOR_WARN.check(self.springy_factor_warn)?;
        range::TILT_WARN_DEG.check(self.tilt_warn_deg)?;
        range::TILT_STOP_DEG.check(self.tilt_stop_deg)?;
        range::TILT_PUBLIC_WARN_DEG.check(self.tilt_public_warn_deg)?;
        range::PUSH_SHARE_WARN.check(self.push_share_warn)?;
        range::PUSH_MOST_N.check(self.push_most_n)?;
        range::PUSH_HEIGHT_MOST_MM.check(self.push_height_most_mm)?;
        range::PEOPLE_RATING_DIVISOR.check(self.people_rating_divisor)?;
        range::WANTED_FACTOR.check(self.wanted_factor)?;
        range::SETTLED_SHARE.check(self.settled_share).map(|_| ())
    }
}

/// One shot with everything it is to be shot with.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Brief {
    /// What the picture is to be.
    pub shot: Shot,
    /// The camera.
    pub camera: Camera,
    /// The lens.
    pub lens: Lens,
    /// The table.
    pub table: Table,
    /// The subject, standing under the aim point.
    pub subject: Subject,
    /// What holds the camera.
    pub support: Support,
    /// The room.
    pub bay: Bay,
    /// The limits for cautions.
    pub criteria: Criteria,
}

impl Shot {
    /// A shot of that elevation and frame width from the front, everything else at its default: held
    /// across, the sensor's own shape, aimed at half the subject's height over the table's centre, the
    /// f-number chosen, 100 mm of room for the light, slices of a stack overlapping by 0.3, tolerances of 1
    /// degree, 2 % and 0.5 degrees of roll (common practice, no source).
    pub const fn new(elevation_deg: f64, frame_width_mm: f64) -> Shot {
        Shot {
            elevation_deg,
            bearing_deg: 0.0,
            framing: Framing::FrameWidthMm(frame_width_mm),
            hold: Hold::Across,
            delivered_aspect: None,
            aim_x_mm: 0.0,
            aim_y_mm: 0.0,
            aim_height_mm: None,
            f_number: None,
            focus_on_table: false,
            backdrop_behind_mm: None,
            side: None,
            light_clearance_mm: 100.0,
            stack_overlap: 0.3,
            elevation_tolerance_deg: 1.0,
            frame_width_tolerance: 0.02,
            roll_tolerance_deg: 0.5,
        }
    }

    /// Refuses a field that is not finite or out of its range (see [`crate::range`]).
    pub fn check(&self) -> Result<(), Fault> {
        range::ELEVATION_DEG.check(self.elevation_deg)?;
        range::BEARING_DEG.check(self.bearing_deg)?;
        match self.framing {
            Framing::FrameWidthMm(width) => range::FRAME_WIDTH_MM.check(width)?,
            Framing::FillWidth(share) => range::FILL_WIDTH.check(share)?,
            Framing::FillHeight(share) => range::FILL_HEIGHT.check(share)?,
        };
        if let Some(aspect) = &self.delivered_aspect {
            aspect.check()?;
        }
        range::AIM_X_MM.check(self.aim_x_mm)?;
        range::AIM_Y_MM.check(self.aim_y_mm)?;
        range::AIM_HEIGHT_MM.check_given(self.aim_height_mm)?;
        range::F_NUMBER.check_given(self.f_number)?;
        range::BACKDROP_BEHIND_MM.check_given(self.backdrop_behind_mm)?;
        range::LIGHT_CLEARANCE_MM.check(self.light_clearance_mm)?;
        range::STACK_OVERLAP.check(self.stack_overlap)?;
        range::ELEVATION_TOLERANCE_DEG.check(self.elevation_tolerance_deg)?;
        range::FRAME_WIDTH_TOLERANCE.check(self.frame_width_tolerance)?;
        range::ROLL_TOLERANCE_DEG.check(self.roll_tolerance_deg).map(|_| ())
    }
}

impl Brief {
    /// Refuses the first field that is wrong, in the order shot, camera, lens, table, subject, support,
    /// bay, criteria.
    pub fn check(&self) -> Result<(), Fault> {
        self.shot.check()?;
        self.camera.check()?;
        self.lens.check()?;
        self.table.check()?;
        self.subject.check()?;
        self.support.check()?;
        self.bay.check()?;
        self.criteria.check()
    }
}
