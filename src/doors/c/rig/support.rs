//! The support: a column on legs, with or without a boom, its head, weights and makers' ratings.

use crate::doors::c::border::call::Door;
use crate::doors::c::border::mirror::{Enter, Findings, Leave, mirror, plain};
use crate::doors::c::border::part::{UNSET, part, sized};
use crate::doors::c::border::refusal::Name;
use crate::doors::c::code::StiffnessKind;
use crate::doors::c::status::Fault;
use crate::rig::support;

/// Most feet that a support may have.
pub const MOST_LEGS: usize = 8;
/// Most sandbags that can be told apart on one support.
pub const MOST_SANDBAGS: usize = 4;

const _: () = assert!(MOST_LEGS == support::MOST_LEGS && MOST_SANDBAGS == support::MOST_SANDBAGS);

/// The head between boom or column and camera. Must be set: mass and pivot.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Head {
    /// 1 where `rated_load_kg` is given, else 0.
    pub has_rated_load_kg: i32,
    /// 1 where `rated_moment_n_m` is given, else 0.
    pub has_rated_moment_n_m: i32,
    /// Mass, taken to hang on the lens axis at the socket, 0 to 100.
    pub mass_kg: f64,
    /// From the socket to the head's pivot, square to the axis, -500 to 1000.
    pub pivot_below_socket_mm: f64,
    /// The maker's rating of its load, 0 to 1000. Left out, it is not checked.
    pub rated_load_kg: f64,
    /// The maker's rating of the moment it holds, 0 to 10000. Left out, it is not checked.
    pub rated_moment_n_m: f64,
}
mirror!(both Head "support.head" support::Head {
    mass_kg,
    pivot_below_socket_mm,
    rated_load_kg: (has_rated_load_kg, rated_load_kg),
    rated_moment_n_m: (has_rated_moment_n_m, rated_moment_n_m),
});

/// How stiff a boom is in bending.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Stiffness {
    /// How it is given, a TablerigStiffnessKind. Default TABLERIG_STIFFNESS_KIND_UNKNOWN: no sag is computed.
    pub kind: i32,
    /// 0.
    pub reserved: i32,
    /// EI of the boom's section in newton square metres, 0.001 to 1e12.
    pub bending_stiffness_n_m2: f64,
    /// Outside diameter of a round tube, 1 to 1000.
    pub tube_outside_mm: f64,
    /// Inside diameter of the tube, 0 to 1000 and under the outside one; 0 for a solid bar.
    pub tube_inside_mm: f64,
    /// Young's modulus of the tube in newtons per square millimetre, 1 to 2000000: aluminium 69000, steel
    /// 207000.
    pub tube_modulus_n_per_mm2: f64,
}
plain!(Stiffness "support.boom.stiffness" kind, reserved, bending_stiffness_n_m2, tube_outside_mm,
    tube_inside_mm, tube_modulus_n_per_mm2);

impl Leave<Option<support::Stiffness>> for Stiffness {
    fn leave_in(inner: &Option<support::Stiffness>, place: &mut Stiffness) {
        match *inner {
            None => {}
            Some(support::Stiffness::Bending { bending_stiffness_n_m2 }) => {
                place.kind = StiffnessKind::Bending as i32;
                place.bending_stiffness_n_m2 = bending_stiffness_n_m2;
            }
            Some(support::Stiffness::Tube { tube_outside_mm, tube_inside_mm, tube_modulus_n_per_mm2 }) => {
                place.kind = StiffnessKind::Tube as i32;
                place.tube_outside_mm = tube_outside_mm;
                place.tube_inside_mm = tube_inside_mm;
                place.tube_modulus_n_per_mm2 = tube_modulus_n_per_mm2;
            }
        }
    }
}

impl Enter<Option<support::Stiffness>> for Stiffness {
    fn enter(&self, _: Name, findings: &mut Findings) -> Option<support::Stiffness> {
        use crate::doors::c::border::refusal::name;
        let Stiffness {
            kind,
            reserved,
            bending_stiffness_n_m2,
            tube_outside_mm,
            tube_inside_mm,
            tube_modulus_n_per_mm2,
        } = *self;
        findings.reserved(name!("support.boom.stiffness.reserved"), reserved);
        if kind == StiffnessKind::Bending as i32 {
            return Some(support::Stiffness::Bending { bending_stiffness_n_m2 });
        }
        if kind == StiffnessKind::Tube as i32 {
            return Some(support::Stiffness::Tube {
                tube_outside_mm,
                tube_inside_mm,
                tube_modulus_n_per_mm2,
            });
        }
        if kind != StiffnessKind::Unknown as i32 {
            let (least, most) = (StiffnessKind::Unknown as i32, StiffnessKind::Tube as i32);
            findings.unknown_code(name!("support.boom.stiffness.kind"), kind, least, most);
        }
        None
    }
}

/// A boom across the column, from its tail's end to the head's pivot. Must be set: longest reach, tail and
/// mass.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Boom {
    /// 1 where `counterweight_out_mm` is given, else 0.
    pub has_counterweight_out_mm: i32,
    /// 1 where `damping_ratio` is given, else 0.
    pub has_damping_ratio: i32,
    /// 1 where `rated_load_kg` is given, else 0.
    pub has_rated_load_kg: i32,
    /// 1 where `rated_clamp_moment_n_m` is given, else 0.
    pub has_rated_clamp_moment_n_m: i32,
    /// Longest horizontal reach from the column's axis to the head's pivot, 1 to 10000.
    pub longest_reach_mm: f64,
    /// Its length behind the clamp, 0 to 10000.
    pub tail_mm: f64,
    /// Mass, its centre of gravity at mid-length, 0 to 200.
    pub mass_kg: f64,
    /// How far it rises towards the camera, -60 to 60. Default 0.
    pub pitch_deg: f64,
    /// Counterweight on the tail, 0 to 500. Default 0.
    pub counterweight_kg: f64,
    /// Where on the tail the counterweight hangs, along it from the clamp, 0 to the tail's length. Left out,
    /// at the tail's end.
    pub counterweight_out_mm: f64,
    /// Share of critical damping with which its swing dies down, 0.0001 to 0.99. Left out, no waiting time
    /// is computed.
    pub damping_ratio: f64,
    /// The maker's rating of the load at full reach, 0 to 1000. Left out, it is not checked.
    pub rated_load_kg: f64,
    /// The maker's rating of what the clamp may hold unbalanced, 0 to 100000. Left out, it is not checked.
    pub rated_clamp_moment_n_m: f64,
    /// How stiff it is.
    pub stiffness: Stiffness,
}
mirror!(both Boom "support.boom" support::Boom {
    longest_reach_mm,
    tail_mm,
    mass_kg,
    pitch_deg,
    counterweight_kg,
    counterweight_out_mm: (has_counterweight_out_mm, counterweight_out_mm),
    stiffness,
    damping_ratio: (has_damping_ratio, damping_ratio),
    rated_load_kg: (has_rated_load_kg, rated_load_kg),
    rated_clamp_moment_n_m: (has_rated_clamp_moment_n_m, rated_clamp_moment_n_m),
});

/// A sandbag, hung clear of the floor so that it pulls.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Sandbag {
    /// Mass, 0 to 200; 0 for no bag.
    pub mass_kg: f64,
    /// How far from the column's axis it hangs, 0 to 5000.
    pub out_mm: f64,
    /// In which direction, counter-clockwise from the boom's (without a boom: from the direction to the
    /// table), -360 to 360: 0 under the load, 180 behind.
    pub direction_deg: f64,
    /// Its centre of gravity above the floor, 0 to 20000.
    pub height_mm: f64,
}
mirror!(both Sandbag "support.sandbags" support::Sandbag { mass_kg, out_mm, direction_deg, height_mm });

/// What the camera stands on; a tripod is a support without a boom. Begin with tablerig_support_init. Must be
/// set: the pivot's range, column, feet, legs' top, mass and its height, and the head.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Support {
    /// sizeof (TablerigSupport).
    pub size: u32,
    /// Feet, 3 to 8, evenly spaced on a circle. Must be set; tablerig_support_init leaves 0.
    pub leg_count: u32,
    /// 1 where `first_leg_deg` is given, else 0.
    pub has_first_leg_deg: i32,
    /// 1 where `rated_load_kg` is given, else 0.
    pub has_rated_load_kg: i32,
    /// 1 where there is a boom, else 0.
    pub has_boom: i32,
    /// 0.
    pub reserved: i32,
    /// The lowest the column carries the head's pivot, or the boom's clamp, 0 to 20000.
    pub lowest_pivot_mm: f64,
    /// The highest, 0 to 20000.
    pub highest_pivot_mm: f64,
    /// Half the column's thickness, 0 to 1000.
    pub column_radius_mm: f64,
    /// Radius of the circle on which the feet stand, 1 to 5000.
    pub foot_radius_mm: f64,
    /// The height at which the legs meet the column, 1 to 20000.
    pub legs_top_mm: f64,
    /// Mass of column and legs, 0 to 500.
    pub mass_kg: f64,
    /// Centre of gravity of column and legs above the floor, on the column's axis, 0 to 20000.
    pub centre_height_mm: f64,
    /// The head.
    pub head: Head,
    /// Room kept between the stand and the table, 0 to 2000. Default 0.
    pub table_clearance_mm: f64,
    /// Weight added to the base, on the column's axis, 0 to 1000. Default 0.
    pub base_mass_kg: f64,
    /// That weight's height, 0 to 20000. Default 0.
    pub base_height_mm: f64,
    /// The first leg's direction, counter-clockwise from the boom's (without a boom: from the direction to
    /// the table), -360 to 360. Left out: 0 with a boom, a leg under the load; half a leg spacing without
    /// one, the gap facing the table.
    pub first_leg_deg: f64,
    /// The maker's rating of what the column may carry in all, 0 to 1000. Left out, it is not checked.
    pub rated_load_kg: f64,
    /// Sandbags where they hang. Default none.
    pub sandbags: [Sandbag; MOST_SANDBAGS],
    /// The boom.
    pub boom: Boom,
}
mirror!(both Support "support" support::Support {
    lowest_pivot_mm,
    highest_pivot_mm,
    column_radius_mm,
    leg_count,
    foot_radius_mm,
    legs_top_mm,
    first_leg_deg: (has_first_leg_deg, first_leg_deg),
    table_clearance_mm,
    mass_kg,
    centre_height_mm,
    base_mass_kg,
    base_height_mm,
    sandbags,
    rated_load_kg: (has_rated_load_kg, rated_load_kg),
    head,
    boom: (has_boom, boom),
} sized size spare reserved);
sized!(Support "support", up_to table_clearance_mm, Support { has_boom: 0, ..Support::leave(&UNSET_SUPPORT) });
part!(Support support::Support);

const UNSET_SUPPORT: support::Support = support::Support {
    lowest_pivot_mm: UNSET,
    highest_pivot_mm: UNSET,
    column_radius_mm: UNSET,
    leg_count: 0,
    foot_radius_mm: UNSET,
    legs_top_mm: UNSET,
    first_leg_deg: None,
    table_clearance_mm: 0.0,
    mass_kg: UNSET,
    centre_height_mm: UNSET,
    base_mass_kg: 0.0,
    base_height_mm: 0.0,
    sandbags: [support::Sandbag::NONE; MOST_SANDBAGS],
    rated_load_kg: None,
    head: support::Head {
        mass_kg: UNSET,
        pivot_below_socket_mm: UNSET,
        rated_load_kg: None,
        rated_moment_n_m: None,
    },
    boom: Some(support::Boom {
        longest_reach_mm: UNSET,
        tail_mm: UNSET,
        mass_kg: UNSET,
        pitch_deg: 0.0,
        counterweight_kg: 0.0,
        counterweight_out_mm: None,
        stiffness: None,
        damping_ratio: None,
        rated_load_kg: None,
        rated_clamp_moment_n_m: None,
    }),
};

/// Fills a support of `size` bytes, sizeof (TablerigSupport), with its defaults, those of its head and boom
/// too; there is no boom until `has_boom` is set to 1. What has no default becomes TABLERIG_UNSET.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_support_init(support: *mut Support, size: u32) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(core::ptr::null_mut()) };
    door.answer(|door| door.fill(support, size))
}

/// Refuses a support with a field out of its range, a highest position under the lowest, feet inside the
/// column, a counterweight beyond the tail and a tube without a wall; says which in `fault`, which may be
/// null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_support_check(support: *const Support, fault: *mut Fault) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| door.part(support).map(|_| ()))
}
