//! The straightforward plan, part after part.

use tablerig::brief::Brief;

use crate::lens::{self, Focused, Sharp};
use crate::rig::{self, Payload, Placed};
use crate::standing::{self, Stability};
use crate::view::{self, Frame, Pose};

pub(crate) struct Whole {
    pub(crate) lens: Focused,
    pub(crate) pose: Pose,
    pub(crate) frame: Frame,
    pub(crate) outline: (f64, f64, Option<[f64; 10]>),
    pub(crate) shares: (f64, f64, Option<f64>, Option<f64>),
    pub(crate) sharp: Sharp,
    pub(crate) tilt: (f64, Option<f64>),
    pub(crate) look: (f64, f64, Option<(f64, f64)>),
    pub(crate) tolerance: [f64; 5],
    pub(crate) placed: Placed,
    pub(crate) room: [f64; 5],
    pub(crate) shown: (f64, f64),
    pub(crate) payload: Payload,
    pub(crate) stability: Stability,
    pub(crate) ballast: (f64, Option<f64>),
    pub(crate) sag: Option<([f64; 5], Option<f64>)>,
}

pub(crate) fn whole(brief: &Brief) -> Whole {
    let lens = lens::focused(brief);
    let pose = view::pose(brief, &lens);
    let outline = view::outline(brief, &lens, &pose);
    let placed = rig::placed(brief, &pose);
    let payload = rig::payload(brief, &pose);
    let weights = rig::weights(brief, &placed, &payload);
    let (edges, apothem) = standing::edges(brief, &placed);
    Whole {
        frame: view::frame(brief, &lens, &pose),
        shares: view::shares(brief, &lens, &pose),
        sharp: lens::sharp(brief, &lens, outline.0, outline.1),
        tilt: lens::tilt(&lens, pose.aim_height, -pose.forward.z, pose.up.z),
        look: view::look(brief, &lens, &pose, outline.0, outline.1),
        tolerance: lens::tolerance(brief, &lens),
        room: rig::room(brief, &pose, &placed),
        shown: rig::in_picture(brief, &lens, &pose, &placed),
        stability: standing::stability((&edges, apothem), &weights, &placed, pose.pivot.z),
        ballast: standing::ballast(brief, (&edges, apothem), &weights, &placed),
        sag: rig::sag(brief, &lens, &placed, payload.mass),
        lens,
        pose,
        outline,
        placed,
        payload,
    }
}
