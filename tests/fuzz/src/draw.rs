//! Values drawn from the fuzzer's bytes; where they run out, the usual ones.

use arbitrary::Unstructured;
use tablerig::range::Range;

/// A source of values.
pub(crate) struct Draw<'a> {
    bytes: Unstructured<'a>,
    /// How often, of 16 times, a value is taken from anywhere in its range instead of from around the usual.
    wild: usize,
}

impl<'a> Draw<'a> {
    pub(crate) fn new(bytes: &'a [u8]) -> Draw<'a> {
        let mut draw = Draw { bytes: Unstructured::new(bytes), wild: 0 };
        draw.wild = [0, 1, 2, 6][draw.below(4)];
        draw
    }

    pub(crate) fn below(&mut self, count: usize) -> usize {
        self.bytes.int_in_range(0..=count - 1).unwrap_or(0)
    }

    pub(crate) fn yes(&mut self) -> bool {
        self.below(2) == 1
    }

    pub(crate) fn one_of<T: Copy>(&mut self, list: &[T]) -> T {
        list[self.below(list.len())]
    }

    pub(crate) fn word(&mut self) -> u64 {
        self.bytes.arbitrary().unwrap_or(0)
    }

    pub(crate) fn empty(&self) -> bool {
        self.bytes.is_empty()
    }

    /// From `least` to `most`; in the middle where the bytes have run out.
    pub(crate) fn between(&mut self, least: f64, most: f64) -> f64 {
        let share = f64::from(self.bytes.arbitrary::<u16>().unwrap_or(0) ^ 0x8000) / 65536.0;
        least + (most - least) * share
    }

    /// Around what a studio has, now and then anywhere in the range, at its ends or next to them.
    pub(crate) fn near(&mut self, range: Range, usual: f64) -> f64 {
        let (least, most) = (range.least, range.most);
        let value = if self.below(16) < self.wild {
            match self.below(8) {
                0 => least,
                1 => most,
                2 => least + 1e-9 * (most - least),
                3 => usual.next_up(),
                4 => usual.next_down(),
                5 => 0.0,
                // Evenly over the orders of magnitude.
                6 => most * f64::exp2(self.between(-60.0, 0.0)),
                _ => self.between(least, most),
            }
        } else {
            usual * self.between(0.5, 1.5)
        };
        value.clamp(least, most)
    }

    /// Around one of several usual values.
    pub(crate) fn near_one_of(&mut self, range: Range, usual: &[f64]) -> f64 {
        let usual = self.one_of(usual);
        self.near(range, usual)
    }

    pub(crate) fn maybe(&mut self, range: Range, usual: f64) -> Option<f64> {
        if self.yes() { Some(self.near(range, usual)) } else { None }
    }

    /// A number that no range was thought of for: any bits, an end of what floats hold, or one of a studio.
    pub(crate) fn any_number(&mut self) -> f64 {
        const ODD: [f64; 16] = [
            0.0,
            -0.0,
            1.0,
            -1.0,
            90.0,
            f64::MIN_POSITIVE,
            5e-324,
            f64::MAX,
            f64::MIN,
            f64::INFINITY,
            f64::NEG_INFINITY,
            f64::NAN,
            1e-300,
            1e300,
            1e9,
            -1_000_000.0,
        ];
        match self.below(4) {
            0 => self.between(0.0, 3000.0),
            1 => self.one_of(&ODD),
            2 => f64::from_bits(self.word()),
            _ => self.between(-1.0, 1.0),
        }
    }
}
