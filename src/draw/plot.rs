//! A drawing's area: where a millimetre of the room lies on the paper, and how large it is there.

use super::canvas::Canvas;
use super::shape::{Extent, Spot};

/// Units of the drawing in a millimetre of paper, printed at its own size.
pub(super) const UNITS_PER_PAPER_MM: f64 = 4.0;

/// An area of the drawing with its scale. The room's places come in as millimetres across and up.
#[derive(Clone, Copy, Debug)]
pub(super) struct Plot {
    /// Millimetres of the room in a unit of the drawing.
    pub(super) mm_per_unit: f64,
    /// Where the zero of both measures lies on the drawing.
    pub(super) zero: Spot,
    /// Left, right, top and bottom on the drawing.
    pub(super) left: f64,
    pub(super) right: f64,
    pub(super) top: f64,
    pub(super) bottom: f64,
}

/// Scales that a drawing may have, 1 : a tenth of this, and their tenfolds and tenths.
const SCALES: [f64; 24] = [
    10.0, 11.0, 12.0, 13.0, 14.0, 15.0, 16.0, 18.0, 20.0, 22.0, 25.0, 28.0, 30.0, 35.0, 40.0, 45.0, 50.0,
    55.0, 60.0, 65.0, 70.0, 75.0, 80.0, 90.0,
];

/// The number n of the largest scale 1 : n that needs no more than a unit for so many millimetres.
pub(super) fn round_scale(mm_per_unit: f64) -> f64 {
    let wanted = mm_per_unit * UNITS_PER_PAPER_MM;
    // Whole powers of ten to multiply or to divide by: n then has no more digits than it shows.
    let (mut times, mut over) = (1.0, 10.0);
    while 100.0 * times / over <= wanted && times < 1e15 {
        times *= 10.0;
    }
    while 10.0 * times / over > wanted && over < 1e15 {
        over *= 10.0;
    }
    for scale in SCALES {
        if scale * times / over >= wanted {
            return scale * times / over;
        }
    }
    100.0 * times / over
}

impl Plot {
    /// Where a place of the room lies.
    pub(super) fn at(&self, place: Spot) -> Spot {
        Spot { x: self.zero.x + place.x / self.mm_per_unit, y: self.zero.y - place.y / self.mm_per_unit }
    }

    /// How long a length of the room is on the drawing.
    pub(super) fn units(&self, length_mm: f64) -> f64 {
        length_mm / self.mm_per_unit
    }

    /// The area in millimetres of the room.
    pub(super) fn extent(&self) -> Extent {
        Extent {
            left: (self.left - self.zero.x) * self.mm_per_unit,
            right: (self.right - self.zero.x) * self.mm_per_unit,
            bottom: (self.zero.y - self.bottom) * self.mm_per_unit,
            top: (self.zero.y - self.top) * self.mm_per_unit,
        }
    }

    /// Begins the group of what is drawn to scale, with the scale in its attributes.
    pub(super) fn enter(&self, canvas: &mut Canvas, plane: &str) {
        let group = canvas.element("g").word("data-plane", plane).exact("data-mm-per-unit", self.mm_per_unit);
        group.exact("data-zero-x", self.zero.x).exact("data-zero-y", self.zero.y).enter();
    }
}
