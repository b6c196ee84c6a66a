//! Every field refused past its ends and where it is no number, accepted at them, and zero of either sign the
//! same.

use tablerig::fault::{Fault, FaultKind};
use tablerig::plan::plan;
use tablerig::range::{self, Range};

use crate::fields::{Ask, FIELDS, asked, full, setter};

/// A field's entry in the table; the walls share one.
fn range_of(field: &str) -> Range {
    let wall = field.starts_with("bay.") && range::ALL.iter().all(|range| range.field != field);
    let field = if wall { "bay.wall" } else { field };
    *range::ALL.iter().find(|range| range.field == field).unwrap_or_else(|| panic!("{field}"))
}

/// Ends that another rule forbids: a tube as wide inside as the widest tube is outside, distances at which no
/// lens focuses, viewpoints that no lens gives.
const FORBIDDEN: &[(&str, FaultKind)] = &[
    ("support.boom.stiffness.tube_inside_mm", FaultKind::TubeWiderInside),
    ("measured.sensor_distance_mm", FaultKind::NoFocus),
    ("viewpoint.pupil_distance_mm", FaultKind::NoFocalLength),
    ("shot.frame_width_mm", FaultKind::NoFocalLength),
    ("used.width_mm", FaultKind::NoFocalLength),
    ("bay.ceiling_mm", FaultKind::NoRoomUnderCeiling),
    ("measured.aim_height_above_floor_mm", FaultKind::NoRoomUnderCeiling),
];

#[test]
fn every_range_has_a_field_and_every_field_a_range() {
    for range in range::ALL {
        let named = |field: &str| range_of(field).field == range.field;
        // The number of legs is a whole number: it has its own test.
        let there = FIELDS.iter().any(|(field, _)| named(field)) || range.field == "support.leg_count";
        assert!(there, "{} is never asked for", range.field);
        assert!(range.least < range.most && !range.meaning.is_empty(), "{}", range.field);
        let twice = range::ALL.iter().filter(|other| other.field == range.field).count();
        assert_eq!(twice, 1, "{}", range.field);
    }
}

#[test]
fn past_the_ends_and_no_numbers_are_refused() {
    for (field, ask) in FIELDS {
        let Range { least, most, .. } = range_of(field);
        for (value, kind) in [
            (f64::NAN, FaultKind::NotFinite),
            (-f64::NAN, FaultKind::NotFinite),
            (f64::INFINITY, FaultKind::NotFinite),
            (f64::NEG_INFINITY, FaultKind::NotFinite),
            (least.next_down(), FaultKind::TooSmall),
            (most.next_up(), FaultKind::TooLarge),
            (-f64::MAX, FaultKind::TooSmall),
            (f64::MAX, FaultKind::TooLarge),
        ] {
            let fault = asked(*ask, value).expect_err(field);
            assert_eq!((fault.kind, fault.field), (kind, *field), "{value}");
            assert_eq!(fault.value.to_bits(), value.to_bits(), "{field}");
            let most = if *field == "support.boom.counterweight_out_mm" { 10000.0 } else { most };
            assert_eq!((fault.least, fault.most), (least, most), "{field}");
        }
    }
}

#[test]
fn the_ends_themselves_are_accepted() {
    for (field, ask) in FIELDS {
        let Range { least, most, .. } = range_of(field);
        for value in [least, most] {
            if let Err(Fault { kind, .. }) = asked(*ask, value) {
                let forbidden = FORBIDDEN.contains(&(*field, kind));
                assert!(forbidden, "{field} = {value}: {kind:?}");
            }
        }
    }
}

#[test]
fn nothing_divides_by_zero() {
    for (field, ask) in FIELDS {
        let Range { least, most, .. } = range_of(field);
        let inside = least <= 0.0 && most >= 0.0;
        for zero in [0.0, -0.0] {
            match asked(*ask, zero) {
                Ok(()) => assert!(inside, "{field}"),
                Err(fault) => assert!(!inside && fault.kind == FaultKind::TooSmall, "{field}: {fault}"),
            }
        }
    }
}

#[test]
fn zero_has_no_sign() {
    for (field, ask) in FIELDS {
        let Ask::Brief(set) = ask else { continue };
        let Range { least, most, .. } = range_of(field);
        if least <= 0.0 && most >= 0.0 {
            let [plus, minus] = [0.0, -0.0].map(|zero| {
                let mut brief = full();
                set(&mut brief, zero);
                plan(&brief).unwrap()
            });
            assert_eq!(plus, minus, "{field}");
        }
    }
}

#[test]
fn legs_are_three_to_eight() {
    for count in 0..=20 {
        let mut brief = full();
        brief.support.leg_count = count;
        match plan(&brief) {
            Ok(plan) => assert!((3..=8).contains(&count) && plan.placement.leg_count == count),
            Err(fault) => {
                let kind = if count < 3 { FaultKind::TooSmall } else { FaultKind::TooLarge };
                assert_eq!(
                    (fault.kind, fault.field, fault.value),
                    (kind, "support.leg_count", f64::from(count))
                );
                assert!(!(3..=8).contains(&count));
            }
        }
    }
    let mut brief = full();
    brief.support.leg_count = u32::MAX;
    assert_eq!(plan(&brief).unwrap_err().kind, FaultKind::TooLarge);
}

/// The first wrong field is named, in the order of the shoot file.
#[test]
fn the_first_wrong_field_is_named() {
    let fields: Vec<_> = FIELDS.iter().filter_map(setter).collect();
    let part = |field: &str| {
        let order = ["shot", "camera", "lens", "table", "subject", "support", "bay", "criteria"];
        order.iter().position(|part| field.starts_with(part)).unwrap()
    };
    for (field, set) in &fields {
        for (other, set_other) in &fields {
            if part(field) < part(other) {
                let mut brief = full();
                set_other(&mut brief, f64::NAN);
                set(&mut brief, f64::NAN);
                assert_eq!(plan(&brief).unwrap_err().field, *field, "with {other}");
            }
        }
    }
}
