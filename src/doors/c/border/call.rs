//! One call from C: its pointers claimed and compared, its answer given.

use super::memory::{self, MOST_BYTES, Region};
use super::mirror::{Enter, Findings, Leave, Plain};
use super::part::{Part, Sized32};
use super::refusal::{Name, Refusal, name};
use crate::doors::c::status::{Fault, Status};

/// Enough for the call with the most results, a batch's: plans, statuses and faults.
const MOST_WRITTEN: usize = 4;
/// Enough for the call with the most that it reads, a plan's: the brief and its eight parts; in a batch the
/// array of briefs too.
const MOST_READ: usize = 12;

/// Memory that a call has taken note of.
#[derive(Clone, Copy)]
struct Regions<const MOST: usize> {
    list: [Region; MOST],
    count: usize,
}

impl<const MOST: usize> Regions<MOST> {
    const NONE: Regions<MOST> = Regions { list: [Region::NONE; MOST], count: 0 };

    /// The place in the list of one that overlaps another.
    fn overlapping(&self, region: &Region) -> Option<usize> {
        self.list.iter().take(self.count).position(|other| region.overlaps(other))
    }

    fn push(&mut self, region: Region, name: Name) -> Result<(), Refusal> {
        let slot = self.list.get_mut(self.count).ok_or(Refusal::plain(Status::Internal, name))?;
        *slot = region;
        self.count += 1;
        Ok(())
    }
}

/// One call from C.
pub(crate) struct Door {
    fault: *mut Fault,
    written: Regions<MOST_WRITTEN>,
    read: Regions<MOST_READ>,
}

/// A place for a result, checked and not yet written.
pub(crate) struct Out<T> {
    pointer: *mut T,
    bytes: usize,
}

impl Door {
    /// Opens a call that tells its fault in `fault`, unless that is null.
    ///
    /// # Safety
    /// Until the answer is given, each pointer handed to this call that is neither null nor misaligned
    /// leads to memory as large as its type, or as its size field says, that the caller may read (or write,
    /// for a result), and that no one else writes meanwhile.
    pub(crate) unsafe fn open(fault: *mut Fault) -> Door {
        Door { fault, written: Regions::NONE, read: Regions::NONE }
    }

    /// Does the work and gives its status; what was wrong goes into the fault, if there is a place for it.
    pub(crate) fn answer(mut self, work: impl FnOnce(&mut Door) -> Result<(), Refusal>) -> i32 {
        match self.claim_fault().and_then(|()| work(&mut self)) {
            Ok(()) => Status::Ok as i32,
            Err(refusal) => {
                if !self.fault.is_null() {
                    // SAFETY: neither null nor misaligned, or it would have been dropped; the rest was
                    // promised when the call was opened.
                    unsafe { memory::write(self.fault, size_of::<Fault>(), &refusal.told()) };
                }
                refusal.status()
            }
        }
    }

    fn claim_fault(&mut self) -> Result<(), Refusal> {
        if self.fault.is_null() {
            return Ok(());
        }
        let region = Region::new(self.fault, size_of::<Fault>(), true, name!("fault"));
        let claimed = region.and_then(|region| self.claim(region, name!("fault")));
        if claimed.is_err() {
            self.fault = core::ptr::null_mut();
        }
        claimed
    }

    /// Takes note of some memory, and refuses what overlaps a result: two that are only read may.
    pub(crate) fn claim(&mut self, region: Region, name: Name) -> Result<(), Refusal> {
        let overlapping = self.written.overlapping(&region);
        // Telling the fault, the first thing claimed, must not write over what it overlaps.
        if overlapping == Some(0) && !self.fault.is_null() {
            self.fault = core::ptr::null_mut();
        }
        let read = if region.written() { self.read.overlapping(&region) } else { None };
        if overlapping.or(read).is_some() {
            return Err(Refusal::plain(Status::Overlapping, name));
        }
        if region.written() { self.written.push(region, name) } else { self.read.push(region, name) }
    }

    /// A copy for one item of a batch: what was claimed stays claimed, and no fault is written.
    pub(crate) fn item(&self) -> Door {
        Door { fault: core::ptr::null_mut(), written: self.written, read: self.read }
    }

    /// The size of a growing struct, if it is one.
    fn size<T: Sized32>(pointer: *const T) -> Result<usize, Refusal> {
        Region::new(pointer, 0, false, T::NAME)?;
        // SAFETY: neither null nor misaligned; the rest was promised when the call was opened.
        checked_size::<T>(unsafe { memory::read_size(pointer) })
    }

    /// A copy of a growing struct, with defaults where it is shorter than this version's.
    pub(crate) fn sized<T: Sized32>(&mut self, pointer: *const T) -> Result<T, Refusal> {
        let size = Door::size(pointer)?;
        self.claim(Region::new(pointer, size, false, T::NAME)?, T::NAME)?;
        // SAFETY: neither null nor misaligned; the size is the caller's word, as promised.
        if !unsafe { memory::all_zero(pointer, size_of::<T>(), size) } {
            return Err(Refusal::plain(Status::UnknownField, T::NAME));
        }
        // SAFETY: as above.
        Ok(unsafe {
            if size >= size_of::<T>() {
                memory::read(pointer)
            } else {
                memory::read_over(pointer, size, T::unset())
            }
        })
    }

    /// What a part of a brief stands for, its ranges unchecked.
    pub(crate) fn unchecked<T: Part>(&mut self, pointer: *const T) -> Result<T::Inner, Refusal> {
        let part = self.sized(pointer)?;
        entered(&part, T::NAME)
    }

    /// What a part of a brief stands for, within its ranges.
    pub(crate) fn part<T: Part>(&mut self, pointer: *const T) -> Result<T::Inner, Refusal> {
        let inner = self.unchecked(pointer)?;
        T::check(&inner)?;
        Ok(inner)
    }

    /// What a value struct stands for; its numbers must be finite and not beyond all results.
    pub(crate) fn value<Inner, T: Plain + Enter<Inner>>(
        &mut self,
        pointer: *const T,
        name: Name,
    ) -> Result<Inner, Refusal> {
        let value = self.copied(pointer, name)?;
        within_all_results(&value, name)?;
        entered(&value, name)
    }

    /// The same, for one whose numbers are checked against their ranges afterwards.
    pub(crate) fn ranged<Inner, T: Plain + Enter<Inner>>(
        &mut self,
        pointer: *const T,
        name: Name,
    ) -> Result<Inner, Refusal> {
        let value = self.copied(pointer, name)?;
        entered(&value, name)
    }

    fn copied<T: Plain>(&mut self, pointer: *const T, name: Name) -> Result<T, Refusal> {
        self.claim(Region::new(pointer, size_of::<T>(), false, name)?, name)?;
        // SAFETY: neither null nor misaligned; the rest was promised when the call was opened.
        Ok(unsafe { memory::read(pointer) })
    }

    /// The same, or `None` for a null pointer.
    pub(crate) fn value_given<Inner, T: Plain + Enter<Inner>>(
        &mut self,
        pointer: *const T,
        name: Name,
    ) -> Result<Option<Inner>, Refusal> {
        if pointer.is_null() { Ok(None) } else { self.value(pointer, name).map(Some) }
    }

    /// A place for a result.
    pub(crate) fn out<T: Plain>(&mut self, pointer: *mut T, name: Name) -> Result<Out<T>, Refusal> {
        let bytes = size_of::<T>();
        self.claim(Region::new(pointer, bytes, true, name)?, name)?;
        Ok(Out { pointer, bytes })
    }

    /// A place for a result that grows: no more of it is written than its size says.
    pub(crate) fn out_sized<T: Sized32>(&mut self, pointer: *mut T) -> Result<Out<T>, Refusal> {
        let bytes = Door::size(pointer)?;
        self.claim(Region::new(pointer, bytes, true, T::NAME)?, T::NAME)?;
        Ok(Out { pointer, bytes })
    }

    /// The same within memory that has been claimed.
    pub(crate) fn out_within<T: Sized32>(&self, pointer: *mut T) -> Result<Out<T>, Refusal> {
        Ok(Out { pointer, bytes: Door::size(pointer)? })
    }

    /// Fills a growing struct of `size` bytes with its defaults.
    pub(crate) fn fill<T: Sized32>(&mut self, pointer: *mut T, size: u32) -> Result<(), Refusal> {
        let bytes = checked_size::<T>(size)?;
        self.claim(Region::new(pointer, bytes, true, T::NAME)?, T::NAME)?;
        // SAFETY: neither null nor misaligned; the size is the caller's word, as promised.
        unsafe {
            memory::write(pointer, bytes, &T::unset());
            memory::write_zeros(pointer, size_of::<T>(), bytes);
            memory::write(pointer.cast::<u32>(), size_of::<u32>(), &size);
        }
        Ok(())
    }
}

impl<T: Plain> Out<T> {
    /// Writes a result, unless some number in it is none.
    pub(crate) fn put<Inner>(self, inner: &Inner) -> Result<(), Refusal>
    where
        T: Leave<Inner>,
    {
        // Filled in place: returned by value, a plan would be copied once more.
        let mut value = T::ZERO;
        T::leave_in(inner, &mut value);
        self.put_plain(&value)
    }

    /// Writes a C struct.
    pub(crate) fn put_plain(self, value: &T) -> Result<(), Refusal> {
        // NaN is the one result whose bits differ between processors.
        if memory::may_hold_nan(value)
            && let Some((name, _)) = value.find(name!("result"), f64::is_nan)
        {
            return Err(Refusal::plain(Status::Internal, name));
        }
        // SAFETY: checked where it was claimed; the rest was promised when the call was opened.
        unsafe { memory::write(self.pointer, self.bytes, value) };
        Ok(())
    }
}

impl<T: Sized32> Out<T> {
    /// Writes a growing result; its size stays the caller's.
    pub(crate) fn put_sized<Inner>(self, inner: &Inner) -> Result<(), Refusal>
    where
        T: Leave<Inner>,
    {
        let (pointer, size) = (self.pointer, self.bytes as u32);
        self.put(inner)?;
        // SAFETY: as for the result itself, which begins with its size.
        unsafe { memory::write(pointer.cast::<u32>(), size_of::<u32>(), &size) };
        Ok(())
    }
}

/// A size between the least that holds what must be set and the most that any version will have, in whole
/// fields.
fn checked_size<T: Sized32>(size: u32) -> Result<usize, Refusal> {
    let bytes = size as usize;
    if bytes < T::LEAST || size > MOST_BYTES || !size.is_multiple_of(8) {
        let least = T::LEAST as f64;
        let most = f64::from(MOST_BYTES);
        return Err(Refusal::number(Status::WrongSize, T::SIZE_NAME, f64::from(size), least, most));
    }
    Ok(bytes)
}

/// What a C value stands for, or what in it has no counterpart.
pub(crate) fn entered<Inner, T: Enter<Inner>>(value: &T, name: Name) -> Result<Inner, Refusal> {
    let mut findings = Findings::default();
    let inner = value.enter(name, &mut findings);
    findings.clear(inner)
}

/// The most, either way, of a number that has no range of its own: far beyond every result, and so far from
/// what a float holds that sums of a few products of them stay finite.
const MOST_OF_ANY: f64 = 1e30;

/// Refuses a number that is none, an infinite one, and one beyond all results.
fn within_all_results<T: Plain>(value: &T, name: Name) -> Result<(), Refusal> {
    let bad = |number: f64| !(-MOST_OF_ANY..=MOST_OF_ANY).contains(&number);
    let Some((name, value)) = value.find(name, bad) else { return Ok(()) };
    let status = if !value.is_finite() {
        Status::NotFinite
    } else if value < 0.0 {
        Status::TooSmall
    } else {
        Status::TooLarge
    };
    Err(Refusal::number(status, name, value, -MOST_OF_ANY, MOST_OF_ANY))
}
