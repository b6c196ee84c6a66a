//! Marks for places: each a shape of its own, so that no two are told apart by colour.

use super::canvas::{Canvas, Ink, Pen};
use super::shape::Spot;
use crate::rig::weights::RigState;

/// Begins a mark at a place, on a disc of ground that keeps it legible over lines.
fn at(canvas: &mut Canvas, place: Spot, part: &str, ground: f64) {
    canvas.element("g").moved(place).part(part).enter();
    if ground > 0.0 {
        canvas.enter(Ink::Paper);
        canvas.circle(ZERO, ground, None, 1.0);
        canvas.leave();
    }
}

const ZERO: Spot = Spot::new(0.0, 0.0);

/// The head's pivot, or a clamp: a ring with a dot.
pub(super) fn pivot(canvas: &mut Canvas, place: Spot, part: &str) {
    at(canvas, place, part, 4.2);
    canvas.circle(ZERO, 3.4, Some(Pen::MEDIUM), 0.0);
    canvas.circle(ZERO, 1.2, None, 1.0);
    canvas.leave();
}

/// The aim point: an open cross.
pub(super) fn aim(canvas: &mut Canvas, place: Spot, part: &str) {
    at(canvas, place, part, 0.0);
    for (x, y) in [(1.0, 0.0), (-1.0, 0.0), (0.0, 1.0), (0.0, -1.0)] {
        canvas.line(Spot::new(2.0 * x, 2.0 * y), Spot::new(6.5 * x, 6.5 * y), Pen::MEDIUM, "");
    }
    canvas.leave();
}

/// The sensor: a filled square.
pub(super) fn sensor(canvas: &mut Canvas, place: Spot, part: &str) {
    at(canvas, place, part, 0.0);
    let square = canvas.element("rect").number("x", -2.2).number("y", -2.2);
    square.number("width", 4.4).number("height", 4.4).tint(1.0).close();
    canvas.leave();
}

/// The entrance pupil: a small ring.
pub(super) fn pupil(canvas: &mut Canvas, place: Spot, part: &str) {
    at(canvas, place, part, 2.6);
    canvas.circle(ZERO, 2.2, Some(Pen::LIGHT), 0.0);
    canvas.leave();
}

/// A foot on the floor.
pub(super) fn foot(canvas: &mut Canvas, place: Spot, part: &str) {
    at(canvas, place, part, 3.0);
    canvas.circle(ZERO, 2.4, Some(Pen::MEDIUM), 0.25);
    canvas.leave();
}

/// The counterweight: a filled block.
pub(super) fn counterweight(canvas: &mut Canvas, place: Spot, part: &str) {
    at(canvas, place, part, 0.0);
    let block = canvas.element("rect").number("x", -5.0).number("y", -6.5);
    block.number("width", 10.0).number("height", 13.0).number("rx", 1.5).tint(1.0).close();
    canvas.leave();
}

/// Weight on the base: a flat filled bar.
pub(super) fn base_weight(canvas: &mut Canvas, place: Spot, part: &str) {
    at(canvas, place, part, 0.0);
    let bar = canvas.element("rect").number("x", -10.0).number("y", -2.5);
    bar.number("width", 20.0).number("height", 5.0).number("rx", 1.0).tint(1.0).close();
    canvas.leave();
}

/// A sandbag: two lobes hung over a strap.
pub(super) fn sandbag(canvas: &mut Canvas, place: Spot, part: &str) {
    at(canvas, place, part, 0.0);
    canvas.enter(Ink::Paper);
    canvas.element("ellipse").number("rx", 7.5).number("ry", 5.0).tint(1.0).close();
    canvas.leave();
    for side in [-1.0, 1.0] {
        let lobe = canvas.element("ellipse").number("cx", 3.6 * side).number("cy", 0.6);
        lobe.number("rx", 3.6).number("ry", 4.2).tint(0.3).outline(Pen::LIGHT).close();
    }
    canvas.line(Spot::new(0.0, -5.5), Spot::new(0.0, 2.0), Pen::LIGHT, "");
    canvas.leave();
}

/// The centre of gravity in a state: a quartered disc as shot, a triangle with the camera off, a square
/// with the counterweight off; each larger than the one before, so that all show where they coincide.
pub(super) fn centre(canvas: &mut Canvas, place: Spot, state: RigState, part: &str) {
    match state {
        RigState::AsShot => {
            at(canvas, place, part, 4.6);
            canvas.circle(ZERO, 4.6, Some(Pen::MEDIUM), 0.0);
            let quarters = canvas.element("path").path(&[
                ("M", &[0.0, 0.0]),
                ("L", &[0.0, -4.6]),
                ("A", &[4.6, 4.6, 0.0, 0.0, 1.0, 4.6, 0.0]),
                ("L", &[-4.6, 0.0]),
                ("A", &[4.6, 4.6, 0.0, 0.0, 0.0, 0.0, 4.6]),
                ("Z", &[]),
            ]);
            quarters.tint(1.0).close();
        }
        RigState::CameraOff => {
            at(canvas, place, part, 0.0);
            let corners = [Spot::new(0.0, -8.4), Spot::new(7.3, 4.2), Spot::new(-7.3, 4.2)];
            canvas.enter(Ink::Paper);
            canvas.polygon(&corners, Some(Pen::HALO), 0.0, "");
            canvas.leave();
            canvas.polygon(&corners, Some(Pen::MEDIUM), 0.0, "");
            canvas.circle(ZERO, 1.0, None, 1.0);
        }
        RigState::CounterweightOff => {
            at(canvas, place, part, 0.0);
            let corners = [(-7.5, -7.5), (7.5, -7.5), (7.5, 7.5), (-7.5, 7.5)].map(|(x, y)| Spot::new(x, y));
            canvas.enter(Ink::Paper);
            canvas.polygon(&corners, Some(Pen::HALO), 0.0, "");
            canvas.leave();
            canvas.polygon(&corners, Some(Pen::MEDIUM), 0.0, "");
            canvas.circle(ZERO, 1.0, None, 1.0);
        }
    }
    canvas.leave();
}
