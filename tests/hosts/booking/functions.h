/* tablerig as SQL functions of (shot, bay, stand, lens), each an id:
 *   tablerig_can_take   NULL where the shot can be taken, else why not: the caution with its value and limit
 *   tablerig_look_at    the weightiest caution that does not forbid it; NULL where there is none
 *   tablerig_reach_mm   from the column to the camera's pivot; 0 without a boom
 *   tablerig_pivot_mm   the pivot above the floor
 *   tablerig_factor     restoring over overturning moment, as shot; infinite where nothing overturns
 *   tablerig_overhead   1 where a load hangs over the table: tablerig_overhead_caution's sentences go with it
 * A row that tablerig refuses is an SQL error that names the field. */
#ifndef BOOKING_FUNCTIONS_H
#define BOOKING_FUNCTIONS_H

#include "gear.h"

/* Registers them on a connection. `rows` are the connection's and outlive it. Returns SQLite's code. */
int functions_register(sqlite3 *db, struct gear_rows *rows);

#endif
