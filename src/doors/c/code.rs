//! Enumerations: named constants of int32_t. They go out by these numbers and come in checked against them.

use super::border::mirror::{Enter, Findings, Leave, LeaveApart};
use super::border::refusal::Name;
use crate::advice as inner_advice;
use crate::caution::overhead;
use crate::optics::sensor;
use crate::rig::weights;
use crate::scene::{subject, table};
use crate::{brief, caution, view};

/// How the camera is held.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum Hold {
    /// The sensor's longer side level.
    Across = 0,
    /// The sensor's longer side upright: width and height swap.
    Upright = 1,
}

/// By what a shot says how much the frame takes in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum Framing {
    /// By `frame_width_mm`.
    FrameWidth = 0,
    /// By `fill_width`: the frame width is solved for.
    FillWidth = 1,
    /// By `fill_height`: the frame width is solved for.
    FillHeight = 2,
}

/// Which side of the frame a subject is to fill.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum Fill {
    /// The frame's width.
    Width = 0,
    /// The frame's height.
    Height = 1,
}

/// What is under the table top.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum Underside {
    /// Feet of a stand pass under the top.
    Open = 0,
    /// A plinth or a cabinet: feet stay outside.
    Closed = 1,
}

/// One of the table's edges, and the side of it on which a stand can be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum Side {
    /// Towards -y.
    Front = 0,
    /// Towards +x.
    Right = 1,
    /// Towards +y.
    Back = 2,
    /// Towards -x.
    Left = 3,
}

/// The subject's outer shape.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum Shape {
    /// A box of `width_mm` and `depth_mm`, its sides along the table's.
    Box = 0,
    /// An upright round of `diameter_mm`.
    Round = 1,
}

/// What the picture of the subject lives by; the advice on elevation asks for it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum JudgedBy {
    /// Its form: flat, tall or between.
    Form = 0,
    /// Detail on its top.
    TopDetail = 1,
    /// Layers in its side.
    SideLayers = 2,
    /// The contents of an opaque vessel.
    Contents = 3,
    /// Layers behind clear glass.
    ClearLayers = 4,
    /// The contents of a decorated glass whose shape should still read.
    DecoratedGlass = 5,
    /// A whole laid table.
    LaidTable = 6,
}

/// How the stiffness of a boom is given.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum StiffnessKind {
    /// Not at all: no sag is computed.
    Unknown = 0,
    /// By `bending_stiffness_n_m2`.
    Bending = 1,
    /// By `tube_outside_mm`, `tube_inside_mm` and `tube_modulus_n_per_mm2`.
    Tube = 2,
}

/// Which of the weights are on a rig.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum RigState {
    /// Everything on.
    AsShot = 0,
    /// Camera, lens and head off, counterweight on.
    CameraOff = 1,
    /// Counterweight off, camera on.
    CounterweightOff = 2,
}

/// What was measured on the set.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum MeasuredKind {
    /// `sensor_height_mm`, `aim_height_above_floor_mm` and `horizontal_distance_mm`.
    HeightAndDistance = 0,
    /// `sensor_distance_mm` by a tape, and `elevation_deg` by an inclinometer on the camera.
    TapeAndInclinometer = 1,
    /// `sensor_height_mm`, `aim_height_above_floor_mm` and `sensor_distance_mm` by a tape. Near 90 degrees
    /// the elevation is hardly determined by these: its uncertainty grows without bound.
    HeightAndTape = 2,
}

/// In which order camera and counterweight come off.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum Removal {
    /// There is no counterweight to take off.
    NoCounterweight = 0,
    /// The camera first: with it off and the counterweight on, the rig stands better.
    CameraFirst = 1,
    /// The counterweight first.
    CounterweightFirst = 2,
    /// Either alone would tip it: hold the boom, and take both off together.
    HoldBoth = 3,
}

/// How weighty a caution is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum Level {
    /// Worth knowing.
    Note = 1,
    /// To be looked at before shooting.
    Warn = 2,
    /// Cannot be done as asked, or must not.
    Stop = 3,
}

/// One reason for the advice on elevation; tablerig_advice_reason_text gives its sentence.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(i32)]
pub enum AdviceReason {
    /// The subject is flat.
    Flat = 1,
    /// It is tall.
    Tall = 2,
    /// It is between flat and tall.
    Between = 3,
    /// Detail on the top.
    TopDetail = 4,
    /// Layers in the side.
    SideLayers = 5,
    /// The contents of an opaque vessel.
    Contents = 6,
    /// Layers behind clear glass.
    ClearLayers = 7,
    /// A decorated glass.
    DecoratedGlass = 8,
    /// A laid table.
    LaidTable = 9,
    /// The start is where the side is still nearly all that shows.
    StartShowsSide = 10,
    /// The start is where the top is nearly all that shows.
    StartShowsTop = 11,
    /// The start is where top and side show alike.
    StartShowsBoth = 12,
    /// The start is the lowest from which most of the contents show.
    StartShowsContents = 13,
    /// The start is the customary one.
    StartCustomary = 14,
}

/// `stands_for!(Enumeration inner::Enumeration { Variant, ... })`: the same variants by the same numbers.
macro_rules! stands_for {
    ($name:ident $inner:ty { $($variant:ident),+ $(,)? }) => {
        impl $crate::doors::c::border::mirror::Leave<$inner> for i32 {
            #[inline]
            fn leave_in(inner: &$inner, place: &mut i32) {
                type Inner = $inner;
                *place = match inner {
                    $(Inner::$variant => $name::$variant as i32,)+
                };
            }
        }

        impl $crate::doors::c::border::mirror::Enter<$inner> for i32 {
            fn enter(
                &self,
                name: $crate::doors::c::border::refusal::Name,
                findings: &mut $crate::doors::c::border::mirror::Findings,
            ) -> $inner {
                type Inner = $inner;
                const ALL: &[(i32, $inner)] = &[$(($name::$variant as i32, Inner::$variant)),+];
                const LEAST: (i32, $inner) = ALL[0];
                const MOST: (i32, $inner) = ALL[ALL.len() - 1];
                match ALL.iter().find(|(number, _)| number == self) {
                    Some((_, inner)) => *inner,
                    None => {
                        findings.unknown_code(name, *self, LEAST.0, MOST.0);
                        LEAST.1
                    }
                }
            }
        }
    };
}
pub(crate) use stands_for;

stands_for!(Hold sensor::Hold { Across, Upright });
stands_for!(Fill view::framing::Fill { Width, Height });
stands_for!(Underside table::Underside { Open, Closed });
stands_for!(Side table::Side { Front, Right, Back, Left });
stands_for!(JudgedBy subject::JudgedBy {
    Form, TopDetail, SideLayers, Contents, ClearLayers, DecoratedGlass, LaidTable,
});
stands_for!(RigState weights::RigState { AsShot, CameraOff, CounterweightOff });
stands_for!(Removal overhead::Removal { NoCounterweight, CameraFirst, CounterweightFirst, HoldBoth });
stands_for!(Level caution::Level { Note, Warn, Stop });
stands_for!(AdviceReason inner_advice::AdviceReason {
    Flat, Tall, Between, TopDetail, SideLayers, Contents, ClearLayers, DecoratedGlass, LaidTable,
    StartShowsSide, StartShowsTop, StartShowsBoth, StartShowsContents, StartCustomary,
});

/// 0 is no reason.
impl Leave<Option<inner_advice::AdviceReason>> for i32 {
    fn leave_in(inner: &Option<inner_advice::AdviceReason>, place: &mut i32) {
        *place = inner.as_ref().map_or(0, i32::leave);
    }
}

/// `framing`, `frame_width_mm`, `fill_width`, `fill_height`; those that do not count are 0.
impl LeaveApart<brief::Framing> for (&mut i32, &mut f64, &mut f64, &mut f64) {
    fn leave_apart(self, inner: &brief::Framing) {
        (*self.0, *self.1, *self.2, *self.3) = match *inner {
            brief::Framing::FrameWidthMm(width) => (Framing::FrameWidth as i32, width, 0.0, 0.0),
            brief::Framing::FillWidth(share) => (Framing::FillWidth as i32, 0.0, share, 0.0),
            brief::Framing::FillHeight(share) => (Framing::FillHeight as i32, 0.0, 0.0, share),
        };
    }
}

impl Enter<brief::Framing> for (i32, f64, f64, f64) {
    fn enter(&self, name: Name, findings: &mut Findings) -> brief::Framing {
        let (kind, frame_width_mm, fill_width, fill_height) = *self;
        if kind == Framing::FillWidth as i32 {
            return brief::Framing::FillWidth(fill_width);
        }
        if kind == Framing::FillHeight as i32 {
            return brief::Framing::FillHeight(fill_height);
        }
        if kind != Framing::FrameWidth as i32 {
            findings.unknown_code(name, kind, Framing::FrameWidth as i32, Framing::FillHeight as i32);
        }
        brief::Framing::FrameWidthMm(frame_width_mm)
    }
}

/// `shape`, `width_mm`, `depth_mm`, `diameter_mm`; those that do not count are 0.
impl LeaveApart<subject::Shape> for (&mut i32, &mut f64, &mut f64, &mut f64) {
    fn leave_apart(self, inner: &subject::Shape) {
        (*self.0, *self.1, *self.2, *self.3) = match *inner {
            subject::Shape::Box { width_mm, depth_mm } => (Shape::Box as i32, width_mm, depth_mm, 0.0),
            subject::Shape::Round { diameter_mm } => (Shape::Round as i32, 0.0, 0.0, diameter_mm),
        };
    }
}

impl Enter<subject::Shape> for (i32, f64, f64, f64) {
    fn enter(&self, name: Name, findings: &mut Findings) -> subject::Shape {
        let (kind, width_mm, depth_mm, diameter_mm) = *self;
        if kind == Shape::Round as i32 {
            return subject::Shape::Round { diameter_mm };
        }
        if kind != Shape::Box as i32 {
            findings.unknown_code(name, kind, Shape::Box as i32, Shape::Round as i32);
        }
        subject::Shape::Box { width_mm, depth_mm }
    }
}
