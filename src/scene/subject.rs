//! The subject: a box or a round, standing on the table under the aim point.

use crate::fault::{Fault, FaultKind};
use crate::number::{Extremes, PI, sqrt};
use crate::range;

/// The outer shape, its sides along the table's.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize), serde(untagged))]
pub enum Shape {
    /// A box.
    Box {
        /// Along the table's width.
        width_mm: f64,
        /// Along the table's depth.
        depth_mm: f64,
    },
    /// An upright round.
    Round {
        /// Its diameter.
        diameter_mm: f64,
    },
}

/// A round opening at the subject's height, with contents below the rim.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Vessel {
    /// Diameter inside.
    pub inside_diameter_mm: f64,
    /// From the rim down to the contents.
    pub contents_below_rim_mm: f64,
}

/// What the picture of the subject lives by; the advice on elevation asks for it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "text", derive(serde::Serialize), serde(rename_all = "snake_case"))]
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

/// A subject on the table.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Subject {
    /// Its outer shape.
    pub shape: Shape,
    /// Its height above the table top; 0 for something flat.
    pub height_mm: f64,
    /// Its opening, if it is a vessel.
    pub vessel: Option<Vessel>,
    /// What its picture lives by.
    pub judged_by: JudgedBy,
}

impl Subject {
    /// Refuses a field that is not finite or out of its range (see [`crate::range`]), contents under the
    /// vessel's foot and a vessel wider inside than outside.
    pub fn check(&self) -> Result<(), Fault> {
        let narrowest = match self.shape {
            Shape::Box { width_mm, depth_mm } => {
                range::SUBJECT_WIDTH_MM.check(width_mm)?.smaller(range::SUBJECT_DEPTH_MM.check(depth_mm)?)
            }
            Shape::Round { diameter_mm } => range::SUBJECT_DIAMETER_MM.check(diameter_mm)?,
        };
        range::SUBJECT_HEIGHT_MM.check(self.height_mm)?;
        let Some(vessel) = self.vessel else { return Ok(()) };
        let inside = range::VESSEL_INSIDE_DIAMETER_MM.check(vessel.inside_diameter_mm)?;
        let below = range::VESSEL_CONTENTS_BELOW_RIM_MM.check(vessel.contents_below_rim_mm)?;
        if inside > narrowest {
            return Err(Fault {
                most: narrowest,
                ..range::VESSEL_INSIDE_DIAMETER_MM.fault(FaultKind::VesselWiderInside, inside)
            });
        }
        if below > self.height_mm {
            return Err(Fault {
                most: self.height_mm,
                ..range::VESSEL_CONTENTS_BELOW_RIM_MM.fault(FaultKind::ContentsUnderVessel, below)
            });
        }
        Ok(())
    }

    /// Area of its top.
    pub fn top_area_mm2(&self) -> f64 {
        match self.shape {
            Shape::Box { width_mm, depth_mm } => width_mm * depth_mm,
            Shape::Round { diameter_mm } => 0.25 * PI * diameter_mm * diameter_mm,
        }
    }

    /// Half its extent along the horizontal direction whose components along the table's width and depth
    /// are given.
    pub(crate) fn half_extent_mm(&self, along_width: f64, along_depth: f64) -> f64 {
        match self.shape {
            Shape::Box { width_mm, depth_mm } => {
                0.5 * (width_mm * along_width.abs() + depth_mm * along_depth.abs())
            }
            Shape::Round { diameter_mm } => 0.5 * diameter_mm,
        }
    }

    /// Area of its side as seen level from a bearing, given as sine and cosine.
    pub(crate) fn side_area_mm2(&self, sin_bearing: f64, cos_bearing: f64) -> f64 {
        2.0 * self.half_extent_mm(cos_bearing, sin_bearing) * self.height_mm
    }

    /// Side of the square, or of the round's bounding square, that covers as much table: the breadth
    /// against which the height is called flat or tall.
    pub fn breadth_mm(&self) -> f64 {
        match self.shape {
            Shape::Box { width_mm, depth_mm } => sqrt(width_mm * depth_mm),
            Shape::Round { diameter_mm } => diameter_mm,
        }
    }
}
