//! The support: a column on legs, with or without a boom, its head, weights and makers' ratings. A tripod
//! is the same thing without a boom.

use crate::fault::{Fault, FaultKind};
use crate::number::{Extremes, PI};
use crate::range;

/// Most feet a support may have.
pub const MOST_LEGS: usize = 8;
/// Most sandbags that can be told apart on one support.
pub const MOST_SANDBAGS: usize = 4;

/// The head between boom or column and camera.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Head {
    /// Mass, taken to hang on the lens axis at the socket.
    pub mass_kg: f64,
    /// From the socket to the head's pivot, square to the axis.
    pub pivot_below_socket_mm: f64,
    /// The maker's rating of its load.
    pub rated_load_kg: Option<f64>,
    /// The maker's rating of the moment it holds.
    pub rated_moment_n_m: Option<f64>,
}

/// How stiff a boom is in bending.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize), serde(untagged))]
pub enum Stiffness {
    /// EI, measured or given by the maker.
    Bending {
        /// EI in newton square metres.
        bending_stiffness_n_m2: f64,
    },
    /// From a round tube: π/64 (D⁴ - d⁴) E.
    Tube {
        /// Outside diameter.
        tube_outside_mm: f64,
        /// Inside diameter; 0 for a solid bar.
        tube_inside_mm: f64,
        /// Young's modulus in newtons per square millimetre: aluminium 69000, steel 207000.
        tube_modulus_n_per_mm2: f64,
    },
}

/// A boom across the column. It spans from the tail's end to the head's pivot.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Boom {
    /// Longest horizontal reach from the column's axis to the head's pivot.
    pub longest_reach_mm: f64,
    /// Its length behind the clamp.
    pub tail_mm: f64,
    /// Mass, its centre of gravity at mid-length.
    pub mass_kg: f64,
    /// How far it rises towards the camera.
    pub pitch_deg: f64,
    /// Counterweight on the tail.
    pub counterweight_kg: f64,
    /// Where on the tail the counterweight hangs, along it from the clamp; the tail's end when `None`.
    pub counterweight_out_mm: Option<f64>,
    /// How stiff it is; without it no sag is computed.
    pub stiffness: Option<Stiffness>,
    /// Share of critical damping with which its swing dies down; without it no waiting time is computed.
    pub damping_ratio: Option<f64>,
    /// The maker's rating of the load at full reach.
    pub rated_load_kg: Option<f64>,
    /// The maker's rating of what the clamp may hold unbalanced.
    pub rated_clamp_moment_n_m: Option<f64>,
}

/// A sandbag, hung clear of the floor so that it pulls.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Sandbag {
    /// Mass; 0 for no bag.
    pub mass_kg: f64,
    /// How far from the column's axis it hangs.
    pub out_mm: f64,
    /// In which direction, counter-clockwise from the boom's (without a boom: from the direction to the
    /// table).
    pub direction_deg: f64,
    /// Its centre of gravity above the floor.
    pub height_mm: f64,
}

/// What the camera stands on.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "text", derive(serde::Serialize))]
pub struct Support {
    /// The lowest the column carries the head's pivot, or the boom's clamp.
    pub lowest_pivot_mm: f64,
    /// The highest.
    pub highest_pivot_mm: f64,
    /// Half the column's thickness.
    pub column_radius_mm: f64,
    /// Feet, 3 to 8, evenly spaced on a circle.
    pub leg_count: u32,
    /// Radius of that circle.
    pub foot_radius_mm: f64,
    /// The height at which the legs meet the column.
    pub legs_top_mm: f64,
    /// The first leg's direction, counter-clockwise from the boom's (without a boom: from the direction
    /// to the table). `None`: 0 with a boom, a leg under the load; half a leg spacing without one, the gap
    /// facing the table.
    pub first_leg_deg: Option<f64>,
    /// Room kept between the stand and the table.
    pub table_clearance_mm: f64,
    /// Mass of column and legs.
    pub mass_kg: f64,
    /// Centre of gravity of column and legs above the floor, on the column's axis.
    pub centre_height_mm: f64,
    /// Weight added to the base, on the column's axis.
    pub base_mass_kg: f64,
    /// That weight's height.
    pub base_height_mm: f64,
    /// Sandbags where they hang; a mass of 0 is no bag.
    pub sandbags: [Sandbag; MOST_SANDBAGS],
    /// The maker's rating of what the column may carry in all.
    pub rated_load_kg: Option<f64>,
    /// The head.
    pub head: Head,
    /// The boom, if there is one.
    pub boom: Option<Boom>,
}

impl Sandbag {
    /// No bag.
    pub const NONE: Sandbag = Sandbag { mass_kg: 0.0, out_mm: 0.0, direction_deg: 0.0, height_mm: 0.0 };
}

impl Stiffness {
    /// Bending stiffness EI in newton square metres.
    pub fn bending_stiffness_n_m2(&self) -> f64 {
        match *self {
            Stiffness::Bending { bending_stiffness_n_m2 } => bending_stiffness_n_m2,
            Stiffness::Tube { tube_outside_mm: d, tube_inside_mm: i, tube_modulus_n_per_mm2 } => {
                // D⁴ - d⁴ in factors, so that a thin wall keeps its digits; N/mm² × mm⁴ is N mm².
                PI / 64.0 * ((d - i) * (d + i) * (d * d + i * i)) * tube_modulus_n_per_mm2 / 1e6
            }
        }
    }

    fn check(&self) -> Result<(), Fault> {
        match *self {
            Stiffness::Bending { bending_stiffness_n_m2 } => {
                range::BENDING_STIFFNESS_N_M2.check(bending_stiffness_n_m2).map(|_| ())
            }
            Stiffness::Tube { tube_outside_mm, tube_inside_mm, tube_modulus_n_per_mm2 } => {
                range::TUBE_OUTSIDE_MM.check(tube_outside_mm)?;
                range::TUBE_INSIDE_MM.check(tube_inside_mm)?;
                range::TUBE_MODULUS_N_PER_MM2.check(tube_modulus_n_per_mm2)?;
                if tube_inside_mm >= tube_outside_mm {
                    return Err(Fault {
                        most: tube_outside_mm,
                        ..range::TUBE_INSIDE_MM.fault(FaultKind::TubeWiderInside, tube_inside_mm)
                    });
                }
                Ok(())
            }
        }
    }
}

impl Boom {
    /// Where the counterweight hangs, along the tail from the clamp.
    pub fn counterweight_arm_mm(&self) -> f64 {
        self.counterweight_out_mm.unwrap_or(self.tail_mm)
    }

    /// Refuses a field that is not finite or out of its range (see [`crate::range`]), a counterweight
    /// beyond the tail and a tube without a wall.
    pub fn check(&self) -> Result<(), Fault> {
        range::LONGEST_REACH_MM.check(self.longest_reach_mm)?;
        range::TAIL_MM.check(self.tail_mm)?;
        range::BOOM_MASS_KG.check(self.mass_kg)?;
        range::PITCH_DEG.check(self.pitch_deg)?;
        range::COUNTERWEIGHT_KG.check(self.counterweight_kg)?;
        if let Some(out) = self.counterweight_out_mm {
            range::Range { most: self.tail_mm, ..range::COUNTERWEIGHT_OUT_MM }.check(out)?;
        }
        if let Some(stiffness) = &self.stiffness {
            stiffness.check()?;
        }
        range::DAMPING_RATIO.check_given(self.damping_ratio)?;
        range::BOOM_RATED_LOAD_KG.check_given(self.rated_load_kg)?;
        range::RATED_CLAMP_MOMENT_N_M.check_given(self.rated_clamp_moment_n_m)
    }
}

impl Support {
    /// Refuses a field that is not finite or out of its range (see [`crate::range`]), a highest position
    /// under the lowest, feet inside the column, a counterweight beyond the tail and a tube without a wall.
    pub fn check(&self) -> Result<(), Fault> {
        range::LOWEST_PIVOT_MM.check(self.lowest_pivot_mm)?;
        range::HIGHEST_PIVOT_MM.check(self.highest_pivot_mm)?;
        if self.highest_pivot_mm < self.lowest_pivot_mm {
            return Err(Fault {
                least: self.lowest_pivot_mm,
                ..range::HIGHEST_PIVOT_MM.fault(FaultKind::HighestUnderLowest, self.highest_pivot_mm)
            });
        }
        range::COLUMN_RADIUS_MM.check(self.column_radius_mm)?;
        range::LEG_COUNT.check(f64::from(self.leg_count))?;
        range::FOOT_RADIUS_MM.check(self.foot_radius_mm)?;
        if self.foot_radius_mm < self.column_radius_mm {
            return Err(Fault {
                least: self.column_radius_mm,
                ..range::FOOT_RADIUS_MM.fault(FaultKind::FeetInsideColumn, self.foot_radius_mm)
            });
        }
        range::LEGS_TOP_MM.check(self.legs_top_mm)?;
        range::FIRST_LEG_DEG.check_given(self.first_leg_deg)?;
        range::TABLE_CLEARANCE_MM.check(self.table_clearance_mm)?;
        range::SUPPORT_MASS_KG.check(self.mass_kg)?;
        range::SUPPORT_CENTRE_HEIGHT_MM.check(self.centre_height_mm)?;
        range::BASE_MASS_KG.check(self.base_mass_kg)?;
        range::BASE_HEIGHT_MM.check(self.base_height_mm)?;
        for bag in &self.sandbags {
            range::SANDBAG_MASS_KG.check(bag.mass_kg)?;
            range::SANDBAG_OUT_MM.check(bag.out_mm)?;
            range::SANDBAG_DIRECTION_DEG.check(bag.direction_deg)?;
            range::SANDBAG_HEIGHT_MM.check(bag.height_mm)?;
        }
        range::RATED_LOAD_KG.check_given(self.rated_load_kg)?;
        range::HEAD_MASS_KG.check(self.head.mass_kg)?;
        range::PIVOT_BELOW_SOCKET_MM.check(self.head.pivot_below_socket_mm)?;
        range::HEAD_RATED_LOAD_KG.check_given(self.head.rated_load_kg)?;
        range::HEAD_RATED_MOMENT_N_M.check_given(self.head.rated_moment_n_m)?;
        match &self.boom {
            Some(boom) => boom.check(),
            None => Ok(()),
        }
    }

    /// Radius of the circle through the legs at a height: R (1 - z / legs' top), never under the column's.
    pub fn leg_circle_mm(&self, z_mm: f64) -> f64 {
        (self.foot_radius_mm * (1.0 - z_mm / self.legs_top_mm)).larger(self.column_radius_mm)
    }

    /// From one leg's direction to the next.
    pub fn leg_spacing_deg(&self) -> f64 {
        360.0 / f64::from(self.leg_count)
    }
}
