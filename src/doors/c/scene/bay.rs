//! The bay: walls and ceiling around the table, and who passes there.

use crate::doors::c::border::call::Door;
use crate::doors::c::border::mirror::{Leave, mirror};
use crate::doors::c::border::part::{part, sized};
use crate::doors::c::status::Fault;
use crate::scene::bay;

/// The room around the table. A wall or ceiling left out is not there; tablerig_bay_init leaves all of them
/// out, and nothing must be set.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Bay {
    /// sizeof (TablerigBay).
    pub size: u32,
    /// 1 where there is a wall on the left, else 0.
    pub has_left_mm: i32,
    /// 1 where there is a wall on the right, else 0.
    pub has_right_mm: i32,
    /// 1 where there is a wall in front, else 0.
    pub has_front_mm: i32,
    /// 1 where there is a wall behind, else 0.
    pub has_back_mm: i32,
    /// 1 where there is a ceiling, else 0.
    pub has_ceiling_mm: i32,
    /// 1 where children or the public pass. Default 0.
    pub public_passes: i32,
    /// 1 where people are under the load: makers' ratings are then divided. Default 0.
    pub people_under: i32,
    /// From the table's centre to the wall on the left (-x), 0 to 100000.
    pub left_mm: f64,
    /// From the table's centre to the wall on the right (+x), 0 to 100000.
    pub right_mm: f64,
    /// From the table's centre to the wall in front (-y), 0 to 100000.
    pub front_mm: f64,
    /// From the table's centre to the wall behind (+y), 0 to 100000.
    pub back_mm: f64,
    /// The ceiling above the floor, 500 to 100000.
    pub ceiling_mm: f64,
    /// Room kept under the ceiling, 0 to 5000. Default 0.
    pub ceiling_clearance_mm: f64,
    /// Room wanted behind the camera for a person, 0 to 10000. Default 0.
    pub person_room_mm: f64,
    /// The floor's steepest slope in hundredths, 0 to 30; up to 1 counts as level. Default 0.
    pub floor_slope_percent: f64,
}
mirror!(both Bay "bay" bay::Bay {
    left_mm: (has_left_mm, left_mm),
    right_mm: (has_right_mm, right_mm),
    front_mm: (has_front_mm, front_mm),
    back_mm: (has_back_mm, back_mm),
    ceiling_mm: (has_ceiling_mm, ceiling_mm),
    ceiling_clearance_mm,
    person_room_mm,
    floor_slope_percent,
    public_passes,
    people_under,
} sized size);
sized!(Bay "bay", up_to left_mm, Bay::leave(&bay::Bay::OPEN));
part!(Bay bay::Bay);

/// Fills a bay of `size` bytes, sizeof (TablerigBay), with its defaults: no walls, no ceiling, a level floor,
/// nobody passing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_bay_init(bay: *mut Bay, size: u32) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(core::ptr::null_mut()) };
    door.answer(|door| door.fill(bay, size))
}

/// Refuses a bay with a field out of its range, and says which in `fault`, which may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_bay_check(bay: *const Bay, fault: *mut Fault) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| door.part(bay).map(|_| ()))
}
