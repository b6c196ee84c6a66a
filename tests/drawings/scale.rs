//! What is drawn is where the plan says, to a hundredth of a millimetre of the room: coordinates are
//! rounded to less than a quarter of that.

use roxmltree::Document;
use tablerig::vector::{FloorPoint, Point};
use tablerig::view::projection::{PicturePoint, View};

use crate::reading::{Part, parts};
use crate::shots::{Drawn, drawn};

/// In millimetres of the room; for plans that span kilometres, their own sixteen digits.
fn tolerance(drawn: &Drawn) -> f64 {
    let pose = &drawn.plan.pose;
    let span = pose.aim.to(pose.sensor);
    let frame = drawn.plan.frame_width_mm.max(drawn.plan.frame_height_mm);
    0.01 + 1e-12 * (span.x.abs() + span.y.abs() + span.z.abs() + frame)
}

struct Seen<'a> {
    drawn: &'a Drawn,
    kind: &'static str,
    parts: Vec<Part>,
}

impl Seen<'_> {
    fn all(&self, plane: &str, name: &str) -> Vec<&Part> {
        self.parts.iter().filter(|part| part.plane == plane && part.name == name).collect()
    }

    fn one(&self, plane: &str, name: &str) -> &Part {
        let all = self.all(plane, name);
        assert_eq!(all.len(), 1, "{} {}: {name} in {plane}", self.drawn.name, self.kind);
        all[0]
    }

    fn at(&self, plane: &str, name: &str, expect: (f64, f64)) {
        self.agrees(name, self.one(plane, name).places[0], expect);
    }

    fn agrees(&self, name: &str, found: (f64, f64), expect: (f64, f64)) {
        let off = (found.0 - expect.0).abs().max((found.1 - expect.1).abs());
        let allowed = tolerance(self.drawn);
        assert!(off <= allowed, "{} {} {name}: {found:?}, not {expect:?}", self.drawn.name, self.kind);
    }

    fn long(&self, plane: &str, name: &str, expect: f64) {
        let part = self.one(plane, name);
        let [a, b] = part.places[..] else { panic!("{name} is no line") };
        self.agrees(name, ((a.0 - b.0).hypot(a.1 - b.1), 0.0), (expect, 0.0));
    }
}

fn each(random: usize, check: impl Fn(&Drawn, [Seen<'_>; 3])) {
    let all = drawn(random);
    assert!(all.len() > random, "only {} briefs could be planned", all.len());
    for drawn in &all {
        let seen = drawn.all().map(|(kind, svg)| {
            let document = Document::parse(svg).unwrap_or_else(|error| panic!("{}: {error}", drawn.name));
            Seen { drawn, kind, parts: parts(&document) }
        });
        check(drawn, seen);
    }
}

fn floor(place: Point) -> (f64, f64) {
    (place.x_mm, place.y_mm)
}

fn on_floor(place: FloorPoint) -> (f64, f64) {
    (place.x_mm, place.y_mm)
}

#[test]
fn the_camera_seen_from_the_side() {
    each(60, |drawn, [side, ..]| {
        let plan = &drawn.plan;
        let pose = &plan.pose;
        side.at("bearing", "aim", (0.0, pose.aim.z_mm));
        side.at("bearing", "sensor", (-pose.sensor_from_aim_mm, pose.sensor.z_mm));
        side.at("bearing", "pivot", (-pose.pivot_from_aim_mm, pose.pivot.z_mm));
        // Negative for an odd lens whose principal planes lie further apart than its distances.
        side.long("bearing", "sensor-distance", plan.lens.sensor_distance_mm.abs());
        side.long("bearing", "frame", plan.frame_height_mm);
        if let Some(clearance) = pose.front_clearance_mm.filter(|clearance| *clearance > 0.0) {
            side.long("bearing", "working-distance", clearance);
        }
        let table = side.one("bearing", "table");
        for (_, height) in &table.places {
            side.agrees("table", (0.0, *height), (0.0, drawn.brief.table.height_mm));
        }
        if let [arc] = side.all("bearing", "elevation")[..] {
            let aim = (0.0, pose.aim.z_mm);
            let (from, to) = (arc.places[0], arc.places[1]);
            let angle = |at: (f64, f64)| (at.1 - aim.1).atan2(aim.0 - at.0).to_degrees();
            // The arc is small on paper: a thousandth of a unit in 42 is a thousandth of a degree.
            assert!(
                (angle(to) - angle(from) - drawn.brief.shot.elevation_deg).abs() < 0.02,
                "{}",
                drawn.name
            );
        } else {
            assert_eq!(drawn.brief.shot.elevation_deg, 0.0);
        }
    });
}

#[test]
fn the_rig_seen_from_the_side() {
    each(60, |drawn, [side, ..]| {
        let plan = &drawn.plan;
        let placement = &plan.placement;
        if !placement.boom_used {
            return side.at("bearing", "pivot", (-plan.pose.pivot_from_aim_mm, plan.pose.pivot.z_mm));
        }
        let plane = if side.all("boom", "pivot").is_empty() { "bearing" } else { "boom" };
        let (pivot, clamp) = (side.one(plane, "pivot").places[0], side.one(plane, "clamp").places[0]);
        side.agrees("reach", ((pivot.0 - clamp.0).abs(), 0.0), (placement.reach_mm, 0.0));
        side.agrees("heights", (pivot.1, clamp.1), (plan.pose.pivot.z_mm, placement.clamp_height_mm));
        if let Some(boom) = &drawn.brief.support.boom {
            let whole = placement.boom_length_mm + boom.tail_mm;
            let drawn_mm: f64 = side
                .parts
                .iter()
                .filter(|part| part.plane == plane && part.name.starts_with("boom"))
                .map(|part| (part.places[0].0 - part.places[1].0).hypot(part.places[0].1 - part.places[1].1))
                .sum();
            side.agrees("boom", (drawn_mm, 0.0), (whole, 0.0));
            if boom.counterweight_kg > 0.0 {
                let weight = side.one(plane, "counterweight").places[0];
                let arm = (weight.0 - clamp.0).hypot(weight.1 - clamp.1);
                side.agrees("counterweight", (arm, 0.0), (boom.counterweight_arm_mm(), 0.0));
            }
        }
    });
}

#[test]
fn measures_as_long_as_they_say() {
    let mut rows = 0;
    for drawn in &drawn(0) {
        for (_, svg) in drawn.all() {
            let document = Document::parse(svg).unwrap();
            let found = parts(&document);
            for line in found.iter().filter(|part| part.plane == "level") {
                let text = document.descendants().find(|node| node.attribute("data-of") == Some(&line.name));
                let text = text.unwrap().text().unwrap();
                let Some(told) = text.strip_suffix(" mm") else { continue };
                let told: f64 = told.parse().unwrap();
                let half_digit = if text.contains('.') { 0.05 } else { 0.5 };
                let long = (line.places[0].0 - line.places[1].0).abs();
                assert!((long - told).abs() <= half_digit + 0.01, "{}: {long} is called {text}", drawn.name);
                rows += 1;
            }
        }
    }
    assert!(rows > 40, "{rows}");
}

#[test]
fn the_rig_seen_from_above() {
    each(60, |drawn, [_, above, _]| {
        let plan = &drawn.plan;
        let placement = &plan.placement;
        above.at("floor", "column", on_floor(placement.column));
        above.at("floor", "pivot", floor(plan.pose.pivot));
        above.at("floor", "sensor", floor(plan.pose.sensor));
        above.at("floor", "aim", floor(plan.pose.aim));
        for plane in ["floor", "stand"] {
            let feet = above.all(plane, "foot");
            assert_eq!(feet.len(), placement.leg_count as usize);
            for (foot, expect) in feet.iter().zip(&placement.feet) {
                above.agrees("foot", foot.places[0], on_floor(*expect));
            }
        }
        let stability = &plan.stability;
        above.at("stand", "centre-as-shot", floor(stability.as_shot.centre));
        above.at("stand", "centre-camera-off", floor(stability.camera_off.centre));
        if !above.all("stand", "centre-counterweight-off").is_empty() {
            above.at("stand", "centre-counterweight-off", floor(stability.counterweight_off.centre));
        }
        // The tipping line is the line between two feet to which the margin was computed.
        above.long("stand", "margin", stability.as_shot.margin_mm.abs());
        let bags = drawn.brief.support.sandbags.iter().filter(|bag| bag.mass_kg > 0.0).count();
        assert_eq!(above.all("stand", "sandbag").len(), bags);
        let bay = &drawn.brief.bay;
        for (name, wall, sign, level) in [
            ("wall-front", bay.front_mm, -1.0, true),
            ("wall-right", bay.right_mm, 1.0, false),
            ("wall-back", bay.back_mm, 1.0, true),
            ("wall-left", bay.left_mm, -1.0, false),
        ] {
            if let [line] = above.all("floor", name)[..] {
                let at = if level { line.places[0].1 } else { line.places[0].0 };
                above.agrees(name, (at, 0.0), (sign * wall.unwrap(), 0.0));
            }
        }
    });
}

#[test]
fn the_frame_seen_from_above() {
    each(0, |drawn, [_, above, _]| {
        let [frame] = above.all("floor", "frame")[..] else { return };
        // Each corner of the footprint that the drawing shows is one of the outline's.
        for corner in drawn.plan.footprint.corners.iter().flatten() {
            let near = |at: &&(f64, f64)| (at.0 - corner.x_mm).hypot(at.1 - corner.y_mm) < tolerance(drawn);
            let outside = |at: &(f64, f64)| at.1 < corner.y_mm && at.0.abs() < corner.x_mm.abs();
            let found = frame.places.iter().any(|at| near(&at));
            assert!(found || frame.places.iter().any(outside), "{}: {corner:?}", drawn.name);
        }
    });
}

#[test]
fn the_picture_agrees_with_the_outline() {
    each(60, |drawn, [.., picture]| {
        let plan = &drawn.plan;
        let (x, y) = (0.5 * plan.frame_width_mm, 0.5 * plan.frame_height_mm);
        let frame = picture.one("picture", "frame");
        for (found, expect) in frame.places.iter().zip([(-x, -y), (x, -y), (x, y), (-x, y)]) {
            picture.agrees("frame", *found, expect);
        }
        let Some(outline) = &plan.outline else {
            return assert!(picture.all("picture", "subject").is_empty());
        };
        let [subject] = picture.all("picture", "subject")[..] else {
            // Something without height seen level has no outline.
            return assert!(outline.top_mm - outline.bottom_mm < 1e-6, "{}", drawn.name);
        };
        let fold = |pick: fn(&(f64, f64)) -> f64, with: fn(f64, f64) -> f64| {
            subject.places.iter().map(pick).reduce(with).unwrap()
        };
        // The outline may be many frames large: its own sixteen digits then.
        let size = 1e-9 * (outline.right_mm - outline.left_mm + outline.top_mm - outline.bottom_mm);
        for (found, expect) in [
            (fold(|at| at.0, f64::min), outline.left_mm),
            (fold(|at| at.0, f64::max), outline.right_mm),
            (fold(|at| at.1, f64::min), outline.bottom_mm),
            (fold(|at| at.1, f64::max), outline.top_mm),
        ] {
            let allowed = tolerance(drawn) + size;
            assert!((found - expect).abs() <= allowed, "{}: {found}, not {expect}", drawn.name);
        }
    });
}

#[test]
fn what_is_hatched_is_not_sharp() {
    let (mut near, mut far) = (0, 0);
    for drawn in drawn(80) {
        let plan = &drawn.plan;
        let view = View {
            pose: plan.pose,
            pupil_distance_mm: plan.lens.pupil_distance_mm,
            frame_width_mm: plan.frame_width_mm,
            frame_height_mm: plan.frame_height_mm,
        };
        let depth = &plan.focus.depth_of_field;
        let document = Document::parse(&drawn.picture).unwrap();
        for part in parts(&document) {
            let (too_far, limit) = match part.name.as_str() {
                "not-sharp-near" => (false, depth.near_limit_mm),
                "not-sharp-far" => (true, depth.far_limit_mm),
                _ => continue,
            };
            for (right_mm, up_mm) in part.places {
                // A hundredth of a millimetre in the picture may be far on the table.
                let depth_at = |up_mm: f64| {
                    let sight =
                        view.cast_onto_level(PicturePoint { right_mm, up_mm }, drawn.brief.table.height_mm);
                    sight.map_or(f64::INFINITY, |at| view.depth_mm(at))
                };
                let (a, b) = (depth_at(up_mm - 0.01), depth_at(up_mm + 0.01));
                let rounding = 1e-9 * limit;
                assert!(
                    if too_far { a.max(b) >= limit - rounding } else { a.min(b) <= limit + rounding },
                    "{}: {a} to {b} against {limit}",
                    drawn.name
                );
                if too_far { far += 1 } else { near += 1 }
            }
        }
    }
    assert!(near > 50 && far > 50, "{near} {far}");
}
