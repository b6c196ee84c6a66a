/* Everything that a shot is to be shot with, read from the database. */
#ifndef BOOKING_GEAR_H
#define BOOKING_GEAR_H

#include <sqlite3.h>
#include <tablerig.h>

enum { SHOTS, BAYS, STANDS, LENSES, GEAR_TABLES };

/* The statements that read one row of each table by its id; they belong to one connection. */
struct gear_rows {
    sqlite3_stmt *by_id[GEAR_TABLES];
};

struct gear {
    TablerigShot shot;
    TablerigSubject subject;
    TablerigCamera camera;
    TablerigBay bay;
    TablerigTable table;
    TablerigSupport stand;
    TablerigLens lens;
    TablerigBrief brief;
};

/* Returns SQLite's code. */
int gear_prepare(struct gear_rows *rows, sqlite3 *db);
void gear_finish(struct gear_rows *rows);

/* Reads a shot, a bay, a stand and a lens by their ids, in this order, and points the brief at them. Returns NULL, or
 * what was wrong, in `text`. */
const char *gear_read(struct gear_rows *rows, const sqlite3_int64 ids[GEAR_TABLES], struct gear *gear,
                      char text[200]);

#endif
