//! How exactly to set it; what was really set.

use super::border::argument;
use super::border::call::Door;
use super::border::mirror::{Enter, Findings, Leave, mirror, plain};
use super::border::part::{UNSET, sized};
use super::border::refusal::{Name, name};
use super::code::MeasuredKind;
use super::optics::lens::Lens;
use super::status::Fault;
use crate::view::pose::Orientation;
use crate::{range, tolerance};

/// How far the sensor may be moved from its planned place, the camera always aimed at the aim point, so that
/// elevation and frame width stay within their tolerances. Each move alone; exact; infinite where no move in
/// that direction leaves them.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Tolerance {
    /// Up.
    pub up_mm: f64,
    /// Down.
    pub down_mm: f64,
    /// Level, away from the aim point.
    pub away_mm: f64,
    /// Level, towards the aim point.
    pub closer_mm: f64,
    /// Drift across the frame from side to side of the roll tolerance.
    pub roll_drift_mm: f64,
}
mirror!(out Tolerance "tolerance" tolerance::Tolerance { up_mm, down_mm, away_mm, closer_mm, roll_drift_mm });

/// A measured value with its standard uncertainty, in the unit of the field that holds it.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Measurement {
    /// What was read.
    pub value: f64,
    /// One standard deviation, 0 or more. In a result it may be infinite.
    pub uncertainty: f64,
}
mirror!(both Measurement "measured" tolerance::Measurement { value, uncertainty });

/// What was measured on the set. Heights are above the floor; the sensor's place is its mark on the body.
/// Begin with tablerig_measured_init, then set `kind` and the fields that it names.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Measured {
    /// sizeof (TablerigMeasured).
    pub size: u32,
    /// Which of the fields count, a TablerigMeasuredKind. Default
    /// TABLERIG_MEASURED_KIND_HEIGHT_AND_DISTANCE.
    pub kind: i32,
    /// Height of the axis at the sensor, 0 to 100000.
    pub sensor_height_mm: Measurement,
    /// Height of the aim point, 0 to 100000.
    pub aim_height_above_floor_mm: Measurement,
    /// From the aim point to the sensor, seen from above, 0 to 100000.
    pub horizontal_distance_mm: Measurement,
    /// Straight from the aim point to the sensor, 0.001 to 1000000.
    pub sensor_distance_mm: Measurement,
    /// Elevation of the axis, -90 to 90.
    pub elevation_deg: Measurement,
}
plain!(Measured "measured" size, kind, sensor_height_mm, aim_height_above_floor_mm, horizontal_distance_mm,
    sensor_distance_mm, elevation_deg);
sized!(Measured "measured", whole, {
    let unset = Measurement { value: UNSET, uncertainty: UNSET };
    Measured {
        size: size_of::<Measured>() as u32,
        kind: MeasuredKind::HeightAndDistance as i32,
        sensor_height_mm: unset,
        aim_height_above_floor_mm: unset,
        horizontal_distance_mm: unset,
        sensor_distance_mm: unset,
        elevation_deg: unset,
    }
});

impl Enter<tolerance::Measured> for Measured {
    fn enter(&self, _: Name, findings: &mut Findings) -> tolerance::Measured {
        let mut inner = |c: &Measurement| c.enter(name!("measured"), findings);
        let sensor_height_mm = inner(&self.sensor_height_mm);
        let aim_height_above_floor_mm = inner(&self.aim_height_above_floor_mm);
        let horizontal_distance_mm = inner(&self.horizontal_distance_mm);
        let sensor_distance_mm = inner(&self.sensor_distance_mm);
        let elevation_deg = inner(&self.elevation_deg);
        if self.kind == MeasuredKind::TapeAndInclinometer as i32 {
            return tolerance::Measured::TapeAndInclinometer { sensor_distance_mm, elevation_deg };
        }
        if self.kind == MeasuredKind::HeightAndTape as i32 {
            return tolerance::Measured::HeightAndTape {
                sensor_height_mm,
                aim_height_above_floor_mm,
                sensor_distance_mm,
            };
        }
        if self.kind != MeasuredKind::HeightAndDistance as i32 {
            let (least, most) = (MeasuredKind::HeightAndDistance as i32, MeasuredKind::HeightAndTape as i32);
            findings.unknown_code(name!("measured.kind"), self.kind, least, most);
        }
        tolerance::Measured::HeightAndDistance {
            sensor_height_mm,
            aim_height_above_floor_mm,
            horizontal_distance_mm,
        }
    }
}

impl Leave<tolerance::Measured> for Measured {
    fn leave_in(inner: &tolerance::Measured, place: &mut Measured) {
        let c = |inner: &tolerance::Measurement| Measurement::leave(inner);
        let unset = <Measured as super::border::part::Sized32>::unset();
        *place = match inner {
            tolerance::Measured::HeightAndDistance {
                sensor_height_mm,
                aim_height_above_floor_mm,
                horizontal_distance_mm,
            } => Measured {
                kind: MeasuredKind::HeightAndDistance as i32,
                sensor_height_mm: c(sensor_height_mm),
                aim_height_above_floor_mm: c(aim_height_above_floor_mm),
                horizontal_distance_mm: c(horizontal_distance_mm),
                ..unset
            },
            tolerance::Measured::TapeAndInclinometer { sensor_distance_mm, elevation_deg } => Measured {
                kind: MeasuredKind::TapeAndInclinometer as i32,
                sensor_distance_mm: c(sensor_distance_mm),
                elevation_deg: c(elevation_deg),
                ..unset
            },
            tolerance::Measured::HeightAndTape {
                sensor_height_mm,
                aim_height_above_floor_mm,
                sensor_distance_mm,
            } => Measured {
                kind: MeasuredKind::HeightAndTape as i32,
                sensor_height_mm: c(sensor_height_mm),
                aim_height_above_floor_mm: c(aim_height_above_floor_mm),
                sensor_distance_mm: c(sensor_distance_mm),
                ..unset
            },
        };
    }
}

/// What the measured set gives. Uncertainties are first order, the measured values taken as independent.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct RealShot {
    /// Elevation; its uncertainty may be infinite, from heights and a tape straight overhead.
    pub elevation_deg: Measurement,
    /// Frame width in the plane through the aim point, with its uncertainty.
    pub frame_width_mm: Measurement,
    /// Straight from the aim point to the sensor.
    pub sensor_distance_mm: Measurement,
    /// Picture size on the sensor / size in the plane through the aim point.
    pub magnification: f64,
}
mirror!(out RealShot "real_shot" tolerance::RealShot {
    elevation_deg,
    frame_width_mm,
    sensor_distance_mm,
    magnification,
});

/// Fills what was measured, of `size` bytes, sizeof (TablerigMeasured), with TABLERIG_UNSET.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_measured_init(measured: *mut Measured, size: u32) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(core::ptr::null_mut()) };
    door.answer(|door| door.fill(measured, size))
}

/// How exactly a planned camera must be set: a lens focused at a magnification, from an elevation, for a
/// frame width and the tolerances of a shot. Infinite where no move in a direction leaves them.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_tolerance(
    lens: *const Lens,
    magnification: f64,
    elevation_deg: f64,
    frame_width_mm: f64,
    elevation_tolerance_deg: f64,
    frame_width_tolerance: f64,
    roll_tolerance_deg: f64,
    tolerance: *mut Tolerance,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(tolerance, name!("tolerance"))?;
        let lens = door.part(lens)?;
        let focused = lens.focused(argument::MAGNIFICATION.check(magnification)?);
        let elevation = range::ELEVATION_DEG.check(elevation_deg)?;
        let width = range::FRAME_WIDTH_MM.check(frame_width_mm)?;
        let wish = tolerance::ToleranceWish {
            elevation_deg: range::ELEVATION_TOLERANCE_DEG.check(elevation_tolerance_deg)?,
            frame_width: range::FRAME_WIDTH_TOLERANCE.check(frame_width_tolerance)?,
            roll_deg: range::ROLL_TOLERANCE_DEG.check(roll_tolerance_deg)?,
        };
        let at = Orientation::new(elevation, 0.0);
        out.put(&tolerance::tolerance(&lens, &focused, elevation, &at, width, &wish))
    })
}

/// Elevation and frame width, with their uncertainties, from what was measured, for a lens focused on the aim
/// point. TABLERIG_STATUS_NO_VIEWPOINT where the sensor was measured at the aim point itself or the heights
/// further apart than the tape; TABLERIG_STATUS_NO_FOCUS where the lens does not focus so near.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_real_shot(
    measured: *const Measured,
    lens: *const Lens,
    used_width_mm: f64,
    real_shot: *mut RealShot,
    fault: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out(real_shot, name!("real_shot"))?;
        let measured: tolerance::Measured = {
            let measured = door.sized(measured)?;
            super::border::call::entered(&measured, name!("measured"))?
        };
        let lens = door.part(lens)?;
        out.put(&tolerance::real_shot(&measured, &lens, used_width_mm)?)
    })
}
