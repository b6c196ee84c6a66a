//! Brief in, plan out: one, or many at once.

use super::advice::Advice;
use super::border::call::Door;
use super::border::memory::{self, Region};
use super::border::mirror::{Plain, mirror};
use super::border::part::{Sized32, sized};
use super::border::refusal::{Name, Refusal, name};
use super::brief::Brief;
use super::caution::{Caution, MOST_CAUTIONS};
use super::optics::focus::Focus;
use super::optics::lens::{FieldAngles, FocusedLens};
use super::optics::sensor::UsedArea;
use super::optics::tilt::Tilt;
use super::rig::ballast::Ballast;
use super::rig::reach::{BayRoom, Placement, SupportInPicture};
use super::rig::sag::Sag;
use super::rig::stability::{Payload, Stability};
use super::status::{Fault, Status};
use super::tolerance::Tolerance;
use super::view::footprint::{Backdrop, Footprint};
use super::view::outline::{Outline, Shares, SubjectDepth};
use super::view::perspective::Perspective;
use super::view::pose::Pose;
use crate::plan;

/// Everything needed to rig a shot. Begin with tablerig_plan_init, or set `size`. Read the cautions before
/// the numbers; where `overhead` is 1, the sentences of tablerig_overhead_caution go with them.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Plan {
    /// sizeof (TablerigPlan).
    pub size: u32,
    /// 1 where a load hangs above the table or a person: the cautions for overhead work then go with every
    /// number.
    pub overhead: i32,
    /// In which order camera and counterweight come off, a TablerigRemoval.
    pub removal: i32,
    /// How many of `cautions` there are.
    pub caution_count: u32,
    /// 1 where the brief has a backdrop: `backdrop` is there.
    pub has_backdrop: i32,
    /// 0 where the subject reaches the entrance pupil, else 1: `outline` is there.
    pub has_outline: i32,
    /// 1 where a boom of known stiffness is used: `sag` is there.
    pub has_sag: i32,
    /// 0.
    pub reserved: i32,
    /// Width of the frame in the plane through the aim point.
    pub frame_width_mm: f64,
    /// Height of the frame in that plane.
    pub frame_height_mm: f64,
    /// The aim point above the table top.
    pub aim_height_mm: f64,
    /// The part of the sensor that the delivered picture uses.
    pub used_area: UsedArea,
    /// The lens as focused.
    pub lens: FocusedLens,
    /// How wide it sees.
    pub field_angles: FieldAngles,
    /// Where the camera is.
    pub pose: Pose,
    /// The frame on the table.
    pub footprint: Footprint,
    /// The backdrop.
    pub backdrop: Backdrop,
    /// Where the subject lies along the axis.
    pub subject_depth: SubjectDepth,
    /// The subject in the picture.
    pub outline: Outline,
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
    /// How the boom bends.
    pub sag: Sag,
    /// How exactly it must be set.
    pub tolerance: Tolerance,
    /// What to look at, in the order of the codes.
    pub cautions: [Caution; MOST_CAUTIONS],
}
mirror!(out Plan "plan" plan::Plan {
    used_area,
    frame_width_mm,
    frame_height_mm,
    aim_height_mm,
    lens,
    field_angles,
    pose,
    footprint,
    backdrop: (has_backdrop, backdrop),
    subject_depth,
    outline: (has_outline, outline),
    shares,
    focus,
    tilt,
    perspective,
    advice,
    payload,
    placement,
    bay_room,
    support_in_picture,
    stability,
    ballast,
    sag: (has_sag, sag),
    tolerance,
    overhead,
    removal,
    cautions: (caution_count, cautions),
} sized size spare reserved);
sized!(Plan "plan", whole, Plan { size: size_of::<Plan>() as u32, ..Plan::ZERO });

/// Fills a plan of `size` bytes, sizeof (TablerigPlan), with zeros but for its size.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_plan_init(plan: *mut Plan, size: u32) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(core::ptr::null_mut()) };
    door.answer(|door| door.fill(plan, size))
}

/// Plans a shot. A brief that cannot be met (too near to focus, ceiling too low, boom too short, it would tip)
/// is not an error: the plan comes back complete, with cautions. Refused: a field that is not finite or out of
/// its range, the first in the order shot, camera, lens, table, subject, support, bay, criteria; fields that
/// contradict each other; and a share of the frame that no frame width gives.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_plan(brief: *const Brief, plan: *mut Plan, fault: *mut Fault) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| {
        let out = door.out_sized(plan)?;
        let brief = door.brief(brief)?;
        match &plan::plan(&brief) {
            Ok(plan) => out.put_sized(plan),
            Err(fault) => Err((*fault).into()),
        }
    })
}

/// An array of the caller's, each element a stride after the one before.
struct Row<T> {
    first: *mut T,
    stride: usize,
    stride_name: Name,
}

impl<T> Row<T> {
    fn at(&self, index: usize) -> *mut T {
        self.first.wrapping_byte_add(self.stride.wrapping_mul(index))
    }

    fn wrong_stride(&self, least: f64) -> Refusal {
        let stride = self.stride as f64;
        Refusal::number(Status::WrongSize, self.stride_name, stride, least, f64::INFINITY)
    }

    /// Takes note of an array of `count` elements of at least `least` bytes.
    fn claimed(
        self,
        door: &mut Door,
        count: usize,
        least: usize,
        written: bool,
        name: Name,
    ) -> Result<Row<T>, Refusal> {
        if self.stride < least || !self.stride.is_multiple_of(align_of::<T>()) {
            return Err(self.wrong_stride(least as f64));
        }
        // More than memory has is refused with the region.
        let bytes = self.stride.saturating_mul(count);
        door.claim(Region::new(self.first, bytes, written, name)?, name)?;
        Ok(self)
    }
}

impl<T: Sized32> Row<T> {
    /// One element, which says itself how large it is: no larger than the stride.
    fn element(&self, index: usize) -> Result<*mut T, Refusal> {
        let element = self.at(index);
        // SAFETY: within an array that was checked; the rest is the caller's word.
        let size = unsafe { memory::read_size(element) };
        if size as usize > self.stride { Err(self.wrong_stride(f64::from(size))) } else { Ok(element) }
    }
}

/// Plans many shots. `briefs` and `plans` are arrays of `count` elements, each `brief_stride` or
/// `plan_stride` bytes after the one before (sizeof (TablerigBrief) and sizeof (TablerigPlan) for plain
/// arrays); every element has its own size set. `statuses` is an array of `count`, and so is `faults` unless it
/// is null. Returns TABLERIG_STATUS_OK when each shot has been gone through: its element of `statuses` then says
/// how it went, and where it was refused, its plan is untouched and its fault says why. Any other status:
/// nothing was done. Several threads may each plan their own stretch of the same arrays.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_plan_batch(
    briefs: *const Brief,
    brief_stride: usize,
    plans: *mut Plan,
    plan_stride: usize,
    count: usize,
    statuses: *mut i32,
    faults: *mut Fault,
) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks, here for each element.
    let door = unsafe { Door::open(core::ptr::null_mut()) };
    door.answer(|door| {
        if count == 0 {
            return Ok(());
        }
        let (status_bytes, fault_bytes) = (size_of::<i32>(), size_of::<Fault>());
        let statuses = Row { first: statuses, stride: status_bytes, stride_name: name!("count") };
        let statuses = statuses.claimed(door, count, status_bytes, true, name!("statuses"))?;
        let faults = Row { first: faults, stride: fault_bytes, stride_name: name!("count") };
        let faults = if faults.first.is_null() {
            None
        } else {
            Some(faults.claimed(door, count, fault_bytes, true, name!("faults"))?)
        };
        let plans = Row { first: plans, stride: plan_stride, stride_name: name!("plan_stride") };
        let plans = plans.claimed(door, count, Plan::LEAST, true, name!("plans"))?;
        let first = briefs.cast_mut();
        let briefs = Row { first, stride: brief_stride, stride_name: name!("brief_stride") };
        let briefs = briefs.claimed(door, count, Brief::LEAST, false, name!("briefs"))?;
        for index in 0..count {
            // What a part of the brief overlaps is looked at against the whole arrays.
            let mut item = door.item();
            let planned = briefs.element(index).and_then(|brief| {
                let out = item.out_within(plans.element(index)?)?;
                let brief = item.brief(brief)?;
                match &plan::plan(&brief) {
                    Ok(plan) => out.put_sized(plan),
                    Err(fault) => Err((*fault).into()),
                }
            });
            let status = match planned {
                Ok(()) => Status::Ok as i32,
                Err(refusal) => {
                    if let Some(faults) = &faults {
                        // SAFETY: within an array that was checked; the rest is the caller's word.
                        unsafe { memory::write(faults.at(index), fault_bytes, &refusal.told()) };
                    }
                    refusal.status()
                }
            };
            // SAFETY: as above.
            unsafe { memory::write(statuses.at(index), status_bytes, &status) };
        }
        Ok(())
    })
}
