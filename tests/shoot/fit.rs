//! Where the table may stand: held against planning with the walls moved instead.

use tablerig::brief::Brief;
use tablerig::caution::CautionCode;
use tablerig::plan::plan;
use tablerig::scene::bay::Bay;
use tablerig::shoot::fit::{TableMoves, fit};
use tablerig::shoot::room::RoomNeed;

use crate::briefs::{Seeded, brief};
use crate::workshop;

/// The brief with the table moved to the right and to the back, seen from the table: the walls move the
/// other way. `None` where a wall would come to the table's centre or beyond.
fn moved(brief: &Brief, right_mm: f64, back_mm: f64) -> Option<Brief> {
    let mut with = *brief;
    let wall = |wall: Option<f64>, by: f64| wall.map(|wall| wall + by);
    with.bay = Bay {
        left_mm: wall(brief.bay.left_mm, right_mm),
        right_mm: wall(brief.bay.right_mm, -right_mm),
        front_mm: wall(brief.bay.front_mm, back_mm),
        back_mm: wall(brief.bay.back_mm, -back_mm),
        ..brief.bay
    };
    with.check().ok().map(|()| with)
}

/// Whether the table, and by the plan's cautions everything else, is inside the walls, and whether a person
/// has room.
fn inside(brief: &Brief) -> (bool, bool) {
    let Bay { left_mm, right_mm, front_mm, back_mm, .. } = brief.bay;
    let table = &brief.table;
    let over = |wall: Option<f64>, half: f64| wall.unwrap() >= half;
    let table_inside = over(left_mm, 0.5 * table.width_mm)
        && over(right_mm, 0.5 * table.width_mm)
        && over(front_mm, 0.5 * table.depth_mm)
        && over(back_mm, 0.5 * table.depth_mm);
    let cautions = plan(brief).unwrap().cautions;
    let raised = |code| cautions.find(code).is_some();
    let rest_inside = !raised(CautionCode::FeetOutsideBay)
        && !raised(CautionCode::TailOutsideBay)
        && !raised(CautionCode::CameraOutsideBay);
    let all = table_inside && rest_inside;
    (all, all && !raised(CautionCode::NoRoomBehindCamera))
}

fn holds(moves: &TableMoves, right_mm: f64, back_mm: f64) -> bool {
    (moves.least_right_mm..=moves.most_right_mm).contains(&right_mm)
        && (moves.least_back_mm..=moves.most_back_mm).contains(&back_mm)
}

#[test]
fn the_region_is_where_planning_finds_room() {
    let mut seeded = Seeded::new(11);
    let (mut with_room, mut without) = (0, 0);
    for _ in 0..120 {
        let brief = brief(&mut seeded);
        let need = RoomNeed::of(&brief, &plan(&brief).unwrap());
        let found = fit(&brief.bay, &need, 0);
        for _ in 0..40 {
            let (right, back) = (seeded.between(-2500.0, 2500.0), seeded.between(-2500.0, 2500.0));
            let Some(moved) = moved(&brief, right, back) else { continue };
            let (room, room_with_person) = inside(&moved);
            assert_eq!(holds(&found.moves, right, back), room, "{found:?} {right} {back}");
            assert_eq!(holds(&found.moves_with_person, right, back), room_with_person);
            with_room += usize::from(room_with_person);
            without += usize::from(!room);
        }
    }
    assert!(with_room > 200 && without > 200, "{with_room} {without}");
}

#[test]
fn the_corners_of_the_region_are_its_ends() {
    let mut seeded = Seeded::new(12);
    let mut looked_at = 0;
    for _ in 0..200 {
        let brief = brief(&mut seeded);
        let need = RoomNeed::of(&brief, &plan(&brief).unwrap());
        let moves = fit(&brief.bay, &need, 0).moves_with_person;
        if moves.is_empty() {
            assert_eq!(moves.nearest_mm(), None);
            continue;
        }
        looked_at += 1;
        // A thousandth of a millimetre: far above the rounding of the walls' sums.
        let step = 1e-3;
        for (right, out_right) in [(moves.least_right_mm, -step), (moves.most_right_mm, step)] {
            for (back, out_back) in [(moves.least_back_mm, -step), (moves.most_back_mm, step)] {
                let at = |right: f64, back: f64| inside(&moved(&brief, right, back).unwrap()).1;
                if moves.most_right_mm - moves.least_right_mm < 2.0 * step
                    || moves.most_back_mm - moves.least_back_mm < 2.0 * step
                {
                    continue;
                }
                assert!(at(right - out_right, back - out_back));
                assert!(!at(right + out_right, back - out_back));
                assert!(!at(right - out_right, back + out_back));
            }
        }
        let (right, back) = moves.nearest_mm().unwrap();
        assert!(holds(&moves, right, back));
    }
    assert!(looked_at > 20, "{looked_at}");
}

#[test]
fn several_shots_share_what_each_allows() {
    let mut seeded = Seeded::new(13);
    for _ in 0..50 {
        let bay = brief(&mut seeded).bay;
        let needs: Vec<RoomNeed> = (0..3)
            .map(|_| {
                let brief = Brief { bay, ..brief(&mut seeded) };
                RoomNeed::of(&brief, &plan(&brief).unwrap())
            })
            .collect();
        let together = needs.iter().fold(RoomNeed::NONE, |all, need| all.with(need));
        let each = needs.iter().map(|need| fit(&bay, need, 0));
        let shared = each.clone().map(|fit| fit.moves).reduce(|all, moves| all.and(&moves)).unwrap();
        let found = fit(&bay, &together, 0);
        assert_eq!(found.moves, shared);
        assert_eq!(found.fits, each.clone().all(|fit| fit.fits));
        assert_eq!(found.ceiling_left_mm, each.map(|fit| fit.ceiling_left_mm).fold(f64::INFINITY, f64::min));
    }
}

#[test]
fn a_wall_room_as_it_stands() {
    // The slanting shot's camera stands in front; its tripod's feet reach furthest.
    let mut brief = workshop::slanting();
    brief.bay = Bay { front_mm: Some(2500.0), ceiling_mm: Some(2400.0), person_room_mm: 600.0, ..Bay::OPEN };
    let plan = plan(&brief).unwrap();
    let found = fit(&brief.bay, &RoomNeed::of(&brief, &plan), 0);
    assert!(found.fits);
    let [front, right, back, left] = found.walls_left_mm;
    assert_eq!((right, back, left), (f64::INFINITY, f64::INFINITY, f64::INFINITY));
    assert_eq!(front, plan.bay_room.feet_mm.min(plan.bay_room.behind_camera_mm - 600.0));
    approx::assert_abs_diff_eq!(found.ceiling_left_mm, plan.bay_room.ceiling_mm, epsilon = 1e-9);
    assert_eq!(found.moves_with_person.least_back_mm, -front);
    assert_eq!(found.moves_with_person.most_right_mm, f64::INFINITY);
}

#[test]
fn turned_by_a_quarter_the_front_faces_the_right_wall() {
    let mut brief = workshop::slanting();
    brief.bay = Bay {
        front_mm: Some(1000.0),
        right_mm: Some(2000.0),
        back_mm: Some(3000.0),
        left_mm: Some(4000.0),
        ..Bay::OPEN
    };
    let need = RoomNeed::of(&brief, &plan(&brief).unwrap());
    let [front, right, back, left] = need.walls_mm;
    let turned = fit(&brief.bay, &need, 1).moves;
    assert_eq!(turned.most_right_mm, 2000.0 - front);
    assert_eq!(turned.most_back_mm, 3000.0 - right);
    assert_eq!(turned.least_right_mm, back - 4000.0);
    assert_eq!(turned.least_back_mm, left - 1000.0);
    assert_eq!(fit(&brief.bay, &need, 5), fit(&brief.bay, &need, 1));
    // Turning the bearing instead, on a square table, turns the same rig.
    let square = |bearing_deg: f64| {
        let mut brief = brief;
        (brief.table.width_mm, brief.table.depth_mm) = (900.0, 900.0);
        brief.shot.bearing_deg = bearing_deg;
        RoomNeed::of(&brief, &plan(&brief).unwrap())
    };
    for quarter in 0..4 {
        let one = fit(&brief.bay, &square(0.0), quarter).moves_with_person;
        let other = fit(&brief.bay, &square(90.0 * f64::from(quarter)), 0).moves_with_person;
        // Within the rounding of sines of the same angles.
        approx::assert_abs_diff_eq!(one.least_right_mm, other.least_right_mm, epsilon = 1e-9);
        approx::assert_abs_diff_eq!(one.most_right_mm, other.most_right_mm, epsilon = 1e-9);
        approx::assert_abs_diff_eq!(one.least_back_mm, other.least_back_mm, epsilon = 1e-9);
        approx::assert_abs_diff_eq!(one.most_back_mm, other.most_back_mm, epsilon = 1e-9);
    }
}
