//! What cautions are held against: distances between camera and boom, limits far from their values, weights and
//! edges that are not there.

use tablerig::brief::{Brief, Shot};
use tablerig::caution::{CautionCode as Code, Cautions, Level};
use tablerig::plan::Plan;
use tablerig::rig::support::Sandbag;
use tablerig::scene::table::Side;
use tablerig::vector::Point;

use crate::workshop::{overhead, slanting};
use crate::{planned, with};

/// From a place to the nearest of a straight piece.
fn to_piece(place: [f64; 3], [from, to]: [[f64; 3]; 2]) -> f64 {
    let minus = |a: [f64; 3], b: [f64; 3]| [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
    let dot = |a: [f64; 3], b: [f64; 3]| a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    let (way, off) = (minus(to, from), minus(place, from));
    let share = (dot(off, way) / dot(way, way)).clamp(0.0, 1.0);
    let gap = [0, 1, 2].map(|axis| off[axis] - share * way[axis]);
    dot(gap, gap).sqrt()
}

/// The shortest distance between two pieces: along the first, that to the second is convex, so thirds of it can
/// be left out until nothing is left; and on which piece's end, if any, it was found.
fn apart(first: [[f64; 3]; 2], second: [[f64; 3]; 2]) -> (f64, bool) {
    let at = |share: f64| [0, 1, 2].map(|axis| first[0][axis] + share * (first[1][axis] - first[0][axis]));
    let (mut low, mut high) = (0.0, 1.0);
    for _ in 0..200 {
        let (a, b) = (low + (high - low) / 3.0, high - (high - low) / 3.0);
        if to_piece(at(a), second) < to_piece(at(b), second) { high = b } else { low = a }
    }
    let share = 0.5 * (low + high);
    (to_piece(at(share), second), share > 1e-6 && share < 1.0 - 1e-6)
}

fn place(point: Point) -> [f64; 3] {
    [point.x_mm, point.y_mm, point.z_mm]
}

/// A pivot above the axis and a socket far below it: the boom is then always nearer than the socket, and the
/// caution says how near.
#[test]
fn the_boom_is_as_far_from_the_camera_as_their_nearest_points() {
    let (mut between, mut at_an_end) = (0, 0);
    for elevation in [-20.0, 0.0, 25.0, 50.0, 90.0] {
        for bearing in [0.0, 30.0, 77.0, 140.0, 200.0, 290.0] {
            for (pitch, tail) in [(0.0, 500.0), (0.0, 3000.0), (-40.0, 60.0), (30.0, 1500.0), (5.0, 900.0)] {
                for side in Side::ALL {
                    let brief = with(overhead(), |brief| {
                        brief.shot = Shot { bearing_deg: bearing, ..Shot::new(elevation, 400.0) };
                        brief.shot.side = Some(side);
                        (brief.camera.socket_below_mm, brief.support.head.pivot_below_socket_mm) =
                            (700.0, -400.0);
                        let boom = brief.support.boom.as_mut().unwrap();
                        (boom.pitch_deg, boom.tail_mm) = (pitch, tail);
                    });
                    let plan = planned(&brief);
                    let Some(end) = plan.placement.tail_end else { continue };
                    let ahead = |by: f64| place(plan.pose.sensor.along(plan.pose.forward, by));
                    let (expected, inside) =
                        apart([place(end), place(plan.pose.pivot)], [ahead(-40.0), ahead(120.0)]);
                    let raised = plan.cautions.find(Code::BoomMeetsCamera).unwrap();
                    // Thirds find the place to half the digits, where the distance no longer changes with it.
                    assert!((raised.value - expected).abs() < 1e-5, "{raised:?} {expected} {brief:?}");
                    assert_eq!(raised.limit, 700.0);
                    *if inside { &mut between } else { &mut at_an_end } += 1;
                }
            }
        }
    }
    assert!(between > 50 && at_an_end > 50, "{between} {at_an_end}");
}

/// However far too low a ceiling is, the limit is the ceiling less its clearance.
#[test]
fn the_limit_of_a_low_ceiling_is_the_ceiling() {
    for ceiling in [700.0, 1200.0, 2000.0] {
        let plan = planned(&with(overhead(), |brief| {
            brief.bay.ceiling_mm = Some(ceiling);
            brief.bay.ceiling_clearance_mm = 50.0;
        }));
        let raised = plan.cautions.find(Code::CeilingTooLow).unwrap();
        assert_eq!(raised.value, plan.placement.highest_point_mm);
        assert!((raised.limit - (ceiling - 50.0)).abs() < 1e-9, "{raised:?}");
    }
}

/// A stand that tips, of which only the state as shot is told: no counterweight hangs on it.
fn tips(plan: &Plan) {
    let found = |code| plan.cautions.find(code).is_some();
    assert!(plan.stability.camera_off.factor < 1.0 && plan.stability.counterweight_off.factor < 1.0);
    assert!(found(Code::FactorAsShot));
    assert!(!found(Code::FactorCameraOff) && !found(Code::FactorCounterweightOff));
}

#[test]
fn without_a_counterweight_nothing_is_said_of_taking_it_off() {
    // A bag so far out that it tips the stand alone.
    let bag = Sandbag { mass_kg: 100.0, out_mm: 2000.0, direction_deg: 90.0, height_mm: 300.0 };
    tips(&planned(&with(overhead(), |brief| {
        brief.support.sandbags[0] = bag;
        brief.support.boom.as_mut().unwrap().counterweight_kg = 0.0;
    })));
    // A boom that is at hand but not used.
    tips(&planned(&with(slanting(), |brief| {
        brief.support.sandbags[0] = bag;
        brief.support.boom = overhead().support.boom;
        assert!(brief.support.boom.is_some());
    })));
}

#[test]
fn a_share_at_the_limit_of_a_warning_is_a_note() {
    // Farther from the table, the payload hangs beyond the leg under it.
    let brief = with(overhead(), |brief| {
        brief.support.table_clearance_mm = 300.0;
        brief.criteria.payload_share_note = 0.0;
    });
    let share = planned(&brief).stability.payload_share;
    let at = |warn: f64| {
        let plan = planned(&with(brief, |brief| brief.criteria.payload_share_warn = warn));
        plan.cautions.find(Code::PayloadShare).unwrap().level
    };
    assert_eq!((at(share), at(share.next_down())), (Level::Note, Level::Warn));
}

#[test]
fn no_cautions_are_none() {
    assert!(Cautions::NONE.is_empty());
    assert_eq!((Cautions::NONE.len(), Cautions::NONE.worst()), (0, None));
}

/// A square table has no front: from under its top the near edge hides as much from every side.
#[test]
fn a_near_edge_hides_alike_from_every_side() {
    let sunk = |bearing: f64, more: &dyn Fn(&mut Brief)| {
        let plan = planned(&with(slanting(), |brief| {
            brief.shot = Shot { bearing_deg: bearing, aim_height_mm: Some(-10.0), ..Shot::new(0.0, 900.0) };
            (brief.table.width_mm, brief.table.depth_mm) = (800.0, 800.0);
            more(brief);
        }));
        plan.cautions.find(Code::NearEdgeHidesFoot).map(|caution| caution.value)
    };
    let front = sunk(0.0, &|_| ()).unwrap();
    for bearing in [90.0, 180.0, 270.0, -90.0] {
        let hidden = sunk(bearing, &|_| ()).unwrap();
        assert!((hidden / front - 1.0).abs() < 1e-12, "{bearing}: {hidden} {front}");
    }
    // Of a low subject no more is hidden than there is: 3 mm, where more of a taller one is.
    let tall = |height: f64| move |brief: &mut Brief| brief.subject.height_mm = height;
    let more = sunk(0.0, &tall(400.0)).unwrap();
    assert!(more > 3.0);
    assert_eq!(sunk(0.0, &tall(3.0)), Some(3.0));
    // From within its legs no edge is before the subject.
    let under = |brief: &mut Brief| {
        (brief.table.width_mm, brief.table.depth_mm) = (9000.0, 9000.0);
        brief.subject.height_mm = 50.0;
    };
    assert_eq!(sunk(0.0, &under), None);
}
