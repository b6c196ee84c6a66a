//! Pictures of a plan: from the side, from above, and as the lens will see it, each one SVG text.
//!
//! They are to scale, and can be measured: whatever is drawn to scale lies in a group with the attributes
//! `data-mm-per-unit`, `data-zero-x` and `data-zero-y`, so that a place x, y in the drawing is
//! (x - zero x) × mm per unit across and (zero y - y) × mm per unit up, and the parts of the plan carry
//! their names as `data-part`. `data-plane` says what across and up are:
//! - `bearing`: level from the aim point in the direction in which the camera looks, and height;
//! - `boom`: level from the aim point in the direction in which the boom points, and height;
//! - `level`: the same as the elevation above it, for the rows of measures under it;
//! - `floor`: along the table's width and depth, from the table's centre;
//! - `stand`: the same around the stand's feet, enlarged;
//! - `picture`: right and up in the plane through the aim point, from the frame's centre.
//!
//! Nothing is told by colour alone. Everything is drawn in `currentColor`, which a page sets with the
//! variables `--tablerig-thing`, `--tablerig-quiet`, `--tablerig-measure` and `--tablerig-paper`; a plain
//! renderer, and a printer, get dark lines on white. A unit is a quarter of a millimetre of paper.
//!
//! Where weights are drawn the notes say what goes with every computed load: the makers' ratings rule,
//! local codes apply, and a qualified rigger decides.

mod above;
mod camera;
mod canvas;
mod dimension;
mod elevation;
mod label;
mod length;
mod lettering;
mod mark;
mod picture;
mod plot;
mod seen;
mod shape;
mod sheet;
mod side;
pub(crate) mod steering;

pub use length::{Length, LengthUnit};

use alloc::string::String;

use crate::brief::Brief;
use crate::plan::Plan;

/// How drawings are to come out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Style<'a> {
    /// The unit in which lengths are written.
    pub unit: LengthUnit,
    /// Width in units of a quarter millimetre of paper, 480 to 4000: 720 is 180 mm, a page's width. A
    /// drawing is wider only where its labels do not fit otherwise.
    pub width: f64,
    /// Most height in the same units, 240 to 4000. A drawing is lower where it needs less, and higher only
    /// where its labels do not fit otherwise.
    pub height: f64,
    /// What identifiers inside the SVG begin with: different for each shot on one page.
    pub id: &'a str,
    /// The shot's name, for the headings; may be empty.
    pub name: &'a str,
}

impl Style<'_> {
    /// Millimetres, a page wide and less than half a page high.
    pub const DEFAULT: Style<'static> =
        Style { unit: LengthUnit::Millimetres, width: 720.0, height: 460.0, id: "shot", name: "" };
}

impl Default for Style<'_> {
    fn default() -> Self {
        Style::DEFAULT
    }
}

/// What stands under every drawing of a rig.
const RIG_NOTE: &str = "Computed, not a permit: the makers' ratings rule over every figure, local codes apply, \
                        a qualified rigger decides.";

/// From the side: floor, ceiling, table, subject, camera with its field of view, and the rig, with the
/// measures to set.
///
/// The camera is seen square to the direction in which it looks, looking to the right. A boom in another
/// direction stands in an elevation of its own beside it, seen square to the boom, at the same scale.
/// `plan` is the plan of `brief`.
pub fn side(brief: &Brief, plan: &Plan, style: &Style<'_>) -> String {
    side::side(brief, plan, style)
}

/// From above, the table's front edge below: bay, table, the frame on the table, camera and rig; beside it
/// the stand enlarged, with the line over which it would tip first and its centre of gravity as shot,
/// without the camera, and without the counterweight.
///
/// `plan` is the plan of `brief`.
pub fn above(brief: &Brief, plan: &Plan, style: &Style<'_>) -> String {
    above::above(brief, plan, style)
}

/// The picture as the lens will see it, with a little of what lies outside the frame: table, subject,
/// board, horizon or backdrop, and what of the table is not sharp.
///
/// `plan` is the plan of `brief`.
pub fn picture(brief: &Brief, plan: &Plan, style: &Style<'_>) -> String {
    picture::picture(brief, plan, style)
}
