//! A brief: the shot, the limits for cautions, and everything it is to be shot with.

use super::border::call::Door;
use super::border::mirror::{Leave, Plain, mirror};
use super::border::part::{part, sized};
use super::border::refusal::{Name, Refusal};
use super::optics::camera::Camera;
use super::optics::lens::Lens;
use super::optics::sensor::Aspect;
use super::rig::support::Support;
use super::scene::bay::Bay;
use super::scene::subject::Subject;
use super::scene::table::Table;
use super::status::Fault;
use crate::{brief, scene};

/// What an initialiser writes into a number that has no default: outside every range, so that a number
/// forgotten is refused by name.
pub const UNSET: f64 = -1000000.0;

/// What the picture is to be. Begin with tablerig_shot_init. Must be set: the elevation, and the frame width
/// or, with `framing`, a share to fill.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Shot {
    /// sizeof (TablerigShot).
    pub size: u32,
    /// How much the frame takes in, a TablerigFraming: it says which of `frame_width_mm`, `fill_width` and
    /// `fill_height` counts. Default TABLERIG_FRAMING_FRAME_WIDTH.
    pub framing: i32,
    /// How the camera is held, a TablerigHold. Default TABLERIG_HOLD_ACROSS.
    pub hold: i32,
    /// 1 where the plane of focus is to lie on the table, with a tilting lens. Default 0.
    pub focus_on_table: i32,
    /// 1 where `delivered_aspect` is given, else 0.
    pub has_delivered_aspect: i32,
    /// 1 where `aim_height_mm` is given, else 0.
    pub has_aim_height_mm: i32,
    /// 1 where `f_number` is given, else 0.
    pub has_f_number: i32,
    /// 1 where `backdrop_behind_mm` is given, else 0.
    pub has_backdrop_behind_mm: i32,
    /// 1 where `side` is given, else 0.
    pub has_side: i32,
    /// The side on which the stand is to be, a TablerigSide; left out, the one of the shortest reach.
    pub side: i32,
    /// How far the camera stands above the horizontal through the aim point, -60 to 90: 0 straight-on, 90
    /// straight overhead, negative from below.
    pub elevation_deg: f64,
    /// The frame's width in the plane through the aim point, 1 to 100000.
    pub frame_width_mm: f64,
    /// The share of the frame's width that the subject is to fill, 0.01 to 1.
    pub fill_width: f64,
    /// The share of the frame's height that the subject is to fill, 0.01 to 1.
    pub fill_height: f64,
    /// Where the camera stands around the subject seen from above, counter-clockwise, -360 to 360: 0 in
    /// front, 90 to the right, 180 behind, 270 to the left. Straight overhead it still says where the top of
    /// the frame points. Default 0.
    pub bearing_deg: f64,
    /// Aim point, and subject, to the right of the table's centre, -10000 to 10000. Default 0.
    pub aim_x_mm: f64,
    /// Aim point, and subject, behind the table's centre, -10000 to 10000. Default 0.
    pub aim_y_mm: f64,
    /// Aim point above the table top, -1000 to 5000; left out, half the subject's height.
    pub aim_height_mm: f64,
    /// The engraved f-number to shoot at, 0.5 to 512; left out, chosen to hold the subject.
    pub f_number: f64,
    /// How far behind the aim point a backdrop stands, 1 to 20000; left out, there is none.
    pub backdrop_behind_mm: f64,
    /// Least room the light needs between lens front and aim point, 0 to 10000. Default 100.
    pub light_clearance_mm: f64,
    /// Share of each slice of a focus stack that the next one overlaps, 0 to 0.95. Default 0.3.
    pub stack_overlap: f64,
    /// How far the elevation may be off, 0.001 to 20. Default 1.
    pub elevation_tolerance_deg: f64,
    /// Share by which the frame width may be off, 0.0001 to 0.5. Default 0.02.
    pub frame_width_tolerance: f64,
    /// How far from level the camera may be rolled, 0 to 20. Default 0.5.
    pub roll_tolerance_deg: f64,
    /// The delivered picture's shape; left out, the sensor's own.
    pub delivered_aspect: Aspect,
}
mirror!(both Shot "shot" brief::Shot {
    elevation_deg,
    bearing_deg,
    framing: (framing, frame_width_mm, fill_width, fill_height),
    hold,
    delivered_aspect: (has_delivered_aspect, delivered_aspect),
    aim_x_mm,
    aim_y_mm,
    aim_height_mm: (has_aim_height_mm, aim_height_mm),
    f_number: (has_f_number, f_number),
    focus_on_table,
    backdrop_behind_mm: (has_backdrop_behind_mm, backdrop_behind_mm),
    side: (has_side, side),
    light_clearance_mm,
    stack_overlap,
    elevation_tolerance_deg,
    frame_width_tolerance,
    roll_tolerance_deg,
} sized size);
sized!(Shot "shot", up_to bearing_deg, Shot {
    fill_width: UNSET,
    fill_height: UNSET,
    ..Shot::leave(&brief::Shot::new(UNSET, UNSET))
});
part!(Shot brief::Shot);

/// The limits for cautions about standing, and what the solved weights are to reach. All borrowed: no
/// standard is written for camera stands. Nothing must be set; tablerig_criteria_init fills in the defaults,
/// each borrowed from the field named.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Criteria {
    /// sizeof (TablerigCriteria).
    pub size: u32,
    /// 1 where the solved base weight is to keep the wanted factor as shot. Default 1.
    pub hold_as_shot: i32,
    /// 1 where it is to keep it with the camera off. Default 1.
    pub hold_camera_off: i32,
    /// 1 where it is to keep it with the counterweight off. Default 0.
    pub hold_counterweight_off: i32,
    /// Payload over the payload that tips the stand: a note above this, 0 to 10. Default 0.667, 66.6 % of
    /// tipping (AS 1418.5 via the Queensland Mobile Crane Code of Practice 2006, 11.1.1).
    pub payload_share_note: f64,
    /// ... a warning above this. Default 0.75 (the same).
    pub payload_share_warn: f64,
    /// ... a stop from this on. Default 1.
    pub payload_share_stop: f64,
    /// Restoring over overturning moment: a note under this, 0 to 100. Default 2: a load let go by hand
    /// deflects twice the static (mechanics texts).
    pub factor_note: f64,
    /// ... a warning under this. Default 1.5, the outrigger ratio of Quebec S-2.1 r.4, 3.9.15; at least 1.3
    /// in DGUV Vorschrift 70, section 23(2).
    pub factor_warn: f64,
    /// ... a stop under this. Default 1.
    pub factor_stop: f64,
    /// A boom that swings slower than this is springy, 0 to 1000. Default 3.
    pub springy_frequency_hz: f64,
    /// The factor under which a springy boom gets a warning, 0 to 100. Default 2.
    pub springy_factor_warn: f64,
    /// Tilt that tips the stand: a warning under this, 0 to 90. Default 10 (IEC 60065, 19.1).
    pub tilt_warn_deg: f64,
    /// ... a stop under this. Default 5 (IEC 60601-1, as quoted).
    pub tilt_stop_deg: f64,
    /// ... a warning under this where children or the public pass. Default 15 (IEC 60598-2-10, as quoted).
    pub tilt_public_warn_deg: f64,
    /// Sideways push that tips the stand, as a share of its weight: a warning under this, 0 to 10. Default
    /// 0.13 (IEC 62368-1, as quoted).
    pub push_share_warn: f64,
    /// A push above this is never asked for, 0 to 100000. Default 250 (the same).
    pub push_most_n: f64,
    /// The push is taken at the pivot, but no higher than this, 1 to 20000. Default 1500 (the same).
    pub push_height_most_mm: f64,
    /// Makers' ratings are divided by this where people are under the load, 1 to 100. Default 2 (DGUV
    /// Information 215-313, 1.1).
    pub people_rating_divisor: f64,
    /// The factor that the solved base weight and the longest reach keep, 1 to 100. Default 2.
    pub wanted_factor: f64,
    /// A touched boom counts as settled when its swing has died down to this share, 0.000001 to 0.99.
    /// Default 0.01 (common practice, no source).
    pub settled_share: f64,
}
mirror!(both Criteria "criteria" brief::Criteria {
    payload_share_note,
    payload_share_warn,
    payload_share_stop,
    factor_note,
    factor_warn,
    factor_stop,
    springy_frequency_hz,
    springy_factor_warn,
    tilt_warn_deg,
    tilt_stop_deg,
    tilt_public_warn_deg,
    push_share_warn,
    push_most_n,
    push_height_most_mm,
    people_rating_divisor,
    wanted_factor,
    hold_as_shot,
    hold_camera_off,
    hold_counterweight_off,
    settled_share,
} sized size);
sized!(Criteria "criteria", up_to payload_share_note, Criteria::leave(&brief::Criteria::DEFAULT));
part!(Criteria brief::Criteria);

/// One shot with everything it is to be shot with. The parts stay the caller's and are only read; several
/// briefs may share them. Begin with tablerig_brief_init, then point to the parts.
#[derive(Clone, Copy, Debug)]
#[repr(C)]
pub struct Brief {
    /// sizeof (TablerigBrief).
    pub size: u32,
    /// 0.
    pub reserved: i32,
    /// What the picture is to be.
    pub shot: *const Shot,
    /// The camera.
    pub camera: *const Camera,
    /// The lens.
    pub lens: *const Lens,
    /// The table.
    pub table: *const Table,
    /// The subject, standing under the aim point.
    pub subject: *const Subject,
    /// What holds the camera.
    pub support: *const Support,
    /// The room; null for one without walls.
    pub bay: *const Bay,
    /// The limits for cautions; null for the defaults.
    pub criteria: *const Criteria,
}

// SAFETY: a `repr(C)` struct of whole numbers and pointers, of which every pattern of bits is one; two
// numbers of 4 bytes and eight pointers leave no padding, whether a pointer has 4 or 8.
unsafe impl Plain for Brief {
    const ZERO: Brief = Brief {
        size: 0,
        reserved: 0,
        shot: core::ptr::null(),
        camera: core::ptr::null(),
        lens: core::ptr::null(),
        table: core::ptr::null(),
        subject: core::ptr::null(),
        support: core::ptr::null(),
        bay: core::ptr::null(),
        criteria: core::ptr::null(),
    };

    fn find(&self, _: Name, _: fn(f64) -> bool) -> Option<(Name, f64)> {
        None
    }
}
const _: () = assert!(size_of::<Brief>() == 8 + 8 * size_of::<*const u8>());
sized!(Brief "brief", up_to bay, Brief { size: size_of::<Brief>() as u32, ..Brief::ZERO });

impl Door {
    /// A brief with its parts, their ranges unchecked.
    pub(crate) fn brief(&mut self, brief: *const Brief) -> Result<brief::Brief, Refusal> {
        use super::border::mirror::Findings;
        use super::border::refusal::name;
        let brief = self.sized(brief)?;
        let mut findings = Findings::default();
        findings.reserved(name!("brief.reserved"), brief.reserved);
        findings.clear(())?;
        let bay = if brief.bay.is_null() { scene::bay::Bay::OPEN } else { self.unchecked(brief.bay)? };
        let criteria =
            if brief.criteria.is_null() { brief::Criteria::DEFAULT } else { self.unchecked(brief.criteria)? };
        Ok(brief::Brief {
            shot: self.unchecked(brief.shot)?,
            camera: self.unchecked(brief.camera)?,
            lens: self.unchecked(brief.lens)?,
            table: self.unchecked(brief.table)?,
            subject: self.unchecked(brief.subject)?,
            support: self.unchecked(brief.support)?,
            bay,
            criteria,
        })
    }
}

/// Fills a shot of `size` bytes, sizeof (TablerigShot), with its defaults; what has none becomes
/// TABLERIG_UNSET.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_shot_init(shot: *mut Shot, size: u32) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(core::ptr::null_mut()) };
    door.answer(|door| door.fill(shot, size))
}

/// Refuses a shot with a field out of its range, and says which in `fault`, which may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_shot_check(shot: *const Shot, fault: *mut Fault) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| door.part(shot).map(|_| ()))
}

/// Fills criteria of `size` bytes, sizeof (TablerigCriteria), with their defaults.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_criteria_init(criteria: *mut Criteria, size: u32) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(core::ptr::null_mut()) };
    door.answer(|door| door.fill(criteria, size))
}

/// Refuses criteria with a field out of its range, and says which in `fault`, which may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_criteria_check(criteria: *const Criteria, fault: *mut Fault) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| door.part(criteria).map(|_| ()))
}

/// Fills a brief of `size` bytes, sizeof (TablerigBrief), with null pointers.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_brief_init(brief: *mut Brief, size: u32) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(core::ptr::null_mut()) };
    door.answer(|door| door.fill(brief, size))
}

/// Refuses a brief whose planning would be refused for one of its fields, and says which in `fault`, which
/// may be null; does not look for a frame width.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_brief_check(brief: *const Brief, fault: *mut Fault) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        door.brief(brief)?.check()?;
        Ok(())
    })
}
