/* The booking desk: one connection to the database, with its statements. Any number of desks may be open at once, on
 * any threads; one desk is used by one thread at a time. */
#ifndef BOOKING_DESK_H
#define BOOKING_DESK_H

#include "gear.h"

struct desk {
    sqlite3 *db;
    struct gear_rows rows;
    sqlite3_stmt *question;
};

/* Makes a new database at `path` from schema.sql and seed.sql in `folder`. Returns 0; else it has told why on
 * stderr. */
int desk_create(const char *path, const char *folder);

/* Opens a desk, with the question of question.sql in `folder`; the same return. Close it in either case. */
int desk_open(struct desk *desk, const char *path, const char *folder);
void desk_close(struct desk *desk);

/* The question about a shot and a day, ready to be stepped through; the next call resets it. Its columns: */
enum { BAY, STAND, LENS, REASON, LOOK_AT, REACH, PIVOT, FACTOR, OVERHEAD };
sqlite3_stmt *desk_ask(struct desk *desk, const char *shot, const char *day);

#endif
