//! The C door asked as a C program asks it, with structs of any content and length, any numbers, and pointers that
//! lead nowhere.
//!
//! What must hold: an answer of numbers, infinite only where the header says so; or a refusal that names what was
//! refused, its value and its range, with everything but the fault as it was; the same question gives the same
//! bits; what comes in is never written.

use std::ffi::{CStr, c_char};
use std::fmt::Debug;

use tablerig::doors::c::border::mirror::{Leave, Plain};
use tablerig::doors::c::status::{Fault, Status};
use tablerig::doors::c::text::tablerig_status_text;
use tablerig::plan::plan;

use super::briefs;
use super::calls;
use super::draw::Draw;
use super::finite;
use super::memory::{EMPTY, Piece, from_bytes, plain};
use super::tally::Tally;

/// How many calls were answered.
pub static TALLY: Tally = Tally::new("c_door");

/// Asks one function, drawn with everything that it takes from the bytes.
pub fn run(data: &[u8]) {
    let mut of = Draw::new(data);
    let function = of.below(calls::COUNT);
    // The rest of the bytes makes the brief first, so that what is changed comes last and is short.
    let brief = briefs::brief(&mut of);
    let brief = if plan(&brief).is_ok() { brief } else { briefs::sound() };
    let planned = plan(&brief).expect("a sound brief");
    let given = calls::Given::new(&brief, &planned);
    let mut call = Call { of, pieces: Vec::new(), made_up: false };
    calls::call(&mut call, function, &given);
}

/// One call while it is put together.
pub(crate) struct Call<'a> {
    pub(crate) of: Draw<'a>,
    /// What the pointers handed over lead to.
    pieces: Vec<Piece>,
    /// Whether something was handed over that is another call's result, perhaps changed.
    made_up: bool,
}

impl Call<'_> {
    /// A number, mostly the usual one.
    pub(crate) fn number(&mut self, usual: f64) -> f64 {
        match self.of.below(8) {
            0..=4 => usual,
            5 => usual * self.of.between(0.0, 2.0),
            _ => self.of.any_number(),
        }
    }

    pub(crate) fn code(&mut self, count: i32) -> i32 {
        let usual = self.of.below(count as usize) as i32;
        if self.of.below(8) == 7 { self.of.word() as i32 } else { usual }
    }

    /// A struct that grows.
    pub(crate) fn part<T: Plain>(&mut self, value: &T) -> *const T {
        let whole = size_of::<T>();
        let mut bytes = plain(value).to_vec();
        let length = self.changed(&mut bytes, true);
        let Some(length) = length else { return self.nowhere() };
        bytes[..4].copy_from_slice(&(length as u32).to_ne_bytes());
        let value: T = from_bytes(&bytes);
        // A later version's tail is zero, or it is refused.
        let tail = if self.of.below(4) == 3 { 1 } else { 0 };
        // A size that cannot be is refused by itself; what can be is there.
        let there = if length > 65536 { whole } else { length.max(4) };
        let piece = Piece::of(&value, there, tail);
        let pointer = piece.pointer();
        self.pieces.push(piece);
        pointer
    }

    /// Another call's result, perhaps changed.
    pub(crate) fn result<T: Plain>(&mut self, value: &T) -> *const T {
        self.made_up = true;
        self.value(value)
    }

    /// A struct that does not grow.
    pub(crate) fn value<T: Plain>(&mut self, value: &T) -> *const T {
        let mut bytes = plain(value).to_vec();
        if self.changed(&mut bytes, false).is_none() {
            return self.nowhere();
        }
        let piece = Piece::of(&from_bytes::<T>(&bytes), bytes.len(), 0);
        let pointer = piece.pointer();
        self.pieces.push(piece);
        pointer
    }

    /// Several of them side by side.
    pub(crate) fn values<T: Plain>(&mut self, values: &[T]) -> *const T {
        self.made_up = true;
        let mut bytes: Vec<u8> = values.iter().flat_map(|value| plain(value).to_vec()).collect();
        if self.changed(&mut bytes, false).is_none() {
            return self.nowhere();
        }
        let mut piece = Piece::new(bytes.len());
        piece.bytes_mut().copy_from_slice(&bytes);
        let pointer = piece.pointer();
        self.pieces.push(piece);
        pointer
    }

    /// Changes a struct's bytes; how long it shall say it is; `None` for a pointer that leads nowhere.
    fn changed(&mut self, bytes: &mut [u8], grows: bool) -> Option<usize> {
        let words = bytes.len() / 8;
        match self.of.below(16) {
            0..=7 => {}
            8..=11 => {
                for _ in 0..=self.of.below(2) {
                    let at = self.of.below(words) * 8;
                    let word = self.of.any_number().to_bits();
                    bytes[at..at + 8].copy_from_slice(&word.to_ne_bytes());
                }
            }
            12 => {
                let at = self.of.below(bytes.len() / 4) * 4;
                let half = [0, 1, 2, -1, 3, i32::MAX, i32::MIN, 9][self.of.below(8)];
                bytes[at..at + 4].copy_from_slice(&half.to_ne_bytes());
            }
            13 => {
                for at in 0..words {
                    let word = self.of.any_number().to_bits();
                    bytes[at * 8..at * 8 + 8].copy_from_slice(&word.to_ne_bytes());
                }
            }
            14 if grows => {
                let odd = [0, 4, 7, 65544, 0x7fff_fff8, 0xffff_fff8];
                return Some(match self.of.below(4) {
                    0 => bytes.len() - 8 * self.of.below(words),
                    1 => bytes.len() + 8 * self.of.below(5),
                    2 => bytes.len().wrapping_add_signed(4 * (self.of.below(9) as isize - 4)),
                    _ => odd[self.of.below(6)],
                });
            }
            15 => return None,
            _ => {}
        }
        Some(bytes.len())
    }

    /// Null, or in the middle of a word.
    fn nowhere<T>(&mut self) -> *const T {
        if self.of.yes() {
            return core::ptr::null();
        }
        let piece = Piece::new(size_of::<T>() + 8);
        let pointer = piece.pointer::<u8>().wrapping_add(1 + self.of.below(7)).cast();
        self.pieces.push(piece);
        pointer
    }

    /// Asks twice and looks at what comes out.
    pub(crate) fn ask<Out: Plain + Debug>(
        &mut self,
        function: &str,
        ask: impl Fn(*mut Out, *mut Fault) -> i32,
    ) -> Option<Out> {
        let trouble = self.of.below(24);
        let out_null = trouble == 1;
        let overlapping = if trouble == 2 { self.pieces.first().map(Piece::pointer::<Out>) } else { None };
        let fault_null = trouble == 3;
        let before: Vec<Vec<u8>> = self.pieces.iter().map(|piece| piece.bytes().to_vec()).collect();
        let mut answers = Vec::new();
        for _ in 0..2 {
            let (out, fault) = (Piece::new(size_of::<Out>()), Piece::new(size_of::<Fault>()));
            let out_at = if out_null { core::ptr::null_mut() } else { overlapping.unwrap_or(out.pointer()) };
            let fault_at = if fault_null { core::ptr::null_mut() } else { fault.pointer() };
            let status = ask(out_at, fault_at);
            if status != 0 || overlapping.is_some() {
                assert!(out.unwritten(), "{function}: written though refused with {status}");
            }
            if status == 0 || fault_null {
                assert!(fault.unwritten(), "{function}: a fault is told of what was answered");
            }
            let told = if fault.unwritten() { None } else { Some(from_bytes::<Fault>(fault.bytes())) };
            answers.push((status, out.bytes().to_vec(), fault.bytes().to_vec(), told));
        }
        let after = self.pieces.iter().map(|piece| piece.bytes().to_vec());
        assert!(before.into_iter().eq(after), "{function}: what came in was written");
        let (status, out, fault, told) = answers.swap_remove(0);
        let (again, out_again, fault_again, _) = answers.swap_remove(0);
        // An answer laid over what came in may reach over the fault too, wherever that happens to lie.
        assert!(
            overlapping.is_some() || (status, &out, &fault) == (again, &out_again, &fault_again),
            "{function}: another answer"
        );
        TALLY.count(status == 0);
        if status != 0 {
            self.look_at_refusal(function, status, told);
            return None;
        }
        assert!(!out_null && overlapping.is_none(), "{function}: answered into nowhere");
        let out: Out = from_bytes(&out);
        if size_of::<Out>() == 8 {
            let number = f64::from_ne_bytes(plain(&out).try_into().unwrap());
            assert!(!number.is_nan(), "{function} gives NaN");
            assert!(
                number.is_finite() || finite::function_may_give_infinity(function),
                "{function}: {number}"
            );
        } else {
            finite::check(&out);
        }
        Some(out)
    }

    fn look_at_refusal(&self, function: &str, status: i32, told: Option<Fault>) {
        let phrase = text(tablerig_status_text(status));
        assert!(!phrase.contains("no status"), "{function}: {status}");
        assert!(
            status != Status::Internal as i32 || self.made_up,
            "{function}: a result would not be a number: {told:?} {:?}",
            told.map(|fault| text(fault.field))
        );
        let Some(fault) = told else { return };
        check_fault(&fault, status);
    }
}

/// A fault names its field, and its value lies outside its range where it is said to.
pub(crate) fn check_fault(fault: &Fault, status: i32) {
    assert_eq!((fault.status, fault.reserved), (status, 0));
    let field = text(fault.field);
    assert!(!field.is_empty() && field != "?", "{fault:?}");
    let Fault { value, least, most, .. } = *fault;
    assert!(!least.is_nan() && !most.is_nan() && least <= most, "{field}: {fault:?}");
    match status {
        101 => assert!(!value.is_finite(), "{field}: {fault:?}"),
        102 => assert!(value < least, "{field}: {fault:?}"),
        103 => assert!(value > most, "{field}: {fault:?}"),
        _ => assert!(!value.is_nan(), "{field}: {fault:?}"),
    }
}

/// A static text of the library.
pub(crate) fn text(text: *const c_char) -> &'static str {
    assert!(!text.is_null());
    // SAFETY: a static string of the library, not null.
    unsafe { CStr::from_ptr(text) }.to_str().expect("English")
}

/// What a C struct is of what the library has inside.
pub(crate) fn c<Inner, T: Leave<Inner>>(inner: &Inner) -> T {
    T::leave(inner)
}

const _: () = assert!(EMPTY != 0);
