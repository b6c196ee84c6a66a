//! The usual cautions for a load above a table or a person, and in which order it comes off.

use crate::rig::stability::Stability;

/// What goes with every load above a table or a person. Common practice, in several printed guides, but
/// for the tether's slack (IEC 60598-2-17:1984, 17.6.6, with a trade association's note, as quoted).
pub const OVERHEAD_CAUTIONS: [&str; 8] = [
    "The makers' ratings of stand, boom, clamp and head rule over every number here.",
    "Put weight on the legs, low and at the column or behind it, never on the load's own foot alone.",
    "Turn a leg under the load, and the clamp so that the load tightens it.",
    "Tether camera, lens and every loose part by a second attachment of their own, with at most 150 mm of slack.",
    "Nobody stands, reaches or eats under the load, and nobody at all while it is being set.",
    "Set it low and balanced first, then raise it; two people, one holding the load until everything is tight.",
    "Do not leave it standing alone; look at every clamp again after each change.",
    "These are computed figures, not a permit: local codes apply, and a qualified rigger decides.",
];

/// In which order camera and counterweight come off.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "text", derive(serde::Serialize), serde(rename_all = "snake_case"))]
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

impl Removal {
    /// Every order, by number.
    pub const ALL: &'static [Removal] =
        &[Removal::NoCounterweight, Removal::CameraFirst, Removal::CounterweightFirst, Removal::HoldBoth];

    /// From the computed states of a rig with or without a counterweight.
    pub(crate) fn from_states(counterweight: bool, stability: &Stability) -> Removal {
        let camera_off = stability.camera_off.margin_mm;
        let counterweight_off = stability.counterweight_off.margin_mm;
        if !counterweight {
            Removal::NoCounterweight
        } else if camera_off <= 0.0 && counterweight_off <= 0.0 {
            Removal::HoldBoth
        } else if camera_off >= counterweight_off {
            Removal::CameraFirst
        } else {
            Removal::CounterweightFirst
        }
    }

    /// One sentence.
    pub const fn sentence(self) -> &'static str {
        match self {
            Removal::NoCounterweight => {
                "There is no counterweight to take off: hold the camera while it is loosened."
            }
            Removal::CameraFirst => {
                "Take the camera off first, then the counterweight; put them on the other way round. Hold the boom meanwhile."
            }
            Removal::CounterweightFirst => {
                "Take the counterweight off first, then the camera; put them on the other way round. Hold the boom meanwhile."
            }
            Removal::HoldBoth => {
                "Camera or counterweight alone tips the stand: hold the boom down and up by hand and take both off together, or weight the base until one of the states stands."
            }
        }
    }
}
