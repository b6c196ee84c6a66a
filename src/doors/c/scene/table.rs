//! The table.

use crate::doors::c::border::call::Door;
use crate::doors::c::border::mirror::{Leave, mirror};
use crate::doors::c::border::part::{UNSET, part, sized};
use crate::doors::c::status::Fault;
use crate::scene::table;

/// A rectangular table, its centre above the origin. Begin with tablerig_table_init. Must be set: width,
/// depth and height.
#[derive(Clone, Copy, Debug, PartialEq)]
#[repr(C)]
pub struct Table {
    /// sizeof (TablerigTable).
    pub size: u32,
    /// What is under the top, a TablerigUnderside. Default TABLERIG_UNDERSIDE_OPEN.
    pub underside: i32,
    /// Along the front edge, 1 to 20000.
    pub width_mm: f64,
    /// From the front edge to the back edge, 1 to 20000.
    pub depth_mm: f64,
    /// The top above the floor, 0 to 3000.
    pub height_mm: f64,
}
mirror!(both Table "table" table::Table { width_mm, depth_mm, height_mm, underside } sized size);
sized!(Table "table", whole, Table::leave(&table::Table {
    width_mm: UNSET,
    depth_mm: UNSET,
    height_mm: UNSET,
    underside: table::Underside::Open,
}));
part!(Table table::Table);

/// Fills a table of `size` bytes, sizeof (TablerigTable), with its defaults; what has none becomes
/// TABLERIG_UNSET.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_table_init(table: *mut Table, size: u32) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(core::ptr::null_mut()) };
    door.answer(|door| door.fill(table, size))
}

/// Refuses a table with a field out of its range, and says which in `fault`, which may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn tablerig_table_check(table: *const Table, fault: *mut Fault) -> i32 {
    // SAFETY: the header's first page binds the caller to what a door asks.
    let door = unsafe { Door::open(fault) };
    door.answer(|door| door.part(table).map(|_| ()))
}
