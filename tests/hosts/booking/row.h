/* Fills structs of tablerig.h from a row of the database whose columns are named as their fields. */
#ifndef BOOKING_ROW_H
#define BOOKING_ROW_H

#include <sqlite3.h>
#include <stddef.h>

/* Which column fills which field. `has` is the offset of the field's flag, 0 where it has none: at offset 0 lies
 * the struct's size. */
struct field {
    const char *column;
    size_t offset;
    size_t has;
    int whole;
};

#define NUMBER(type, column, field) { column, offsetof(type, field), 0, 0 }
#define MAYBE(type, column, field, has) { column, offsetof(type, field), offsetof(type, has), 0 }
#define WHOLE(type, column, field) { column, offsetof(type, field), 0, 1 }

/* A struct with its columns. */
struct part {
    void *into;
    const struct field *fields;
    size_t count;
};

#define PART(into, fields) { into, fields, sizeof(fields) / sizeof((fields)[0]) }

/* Copies each column of the row but id and name into the part that has a field for it; NULL leaves the field as
 * it is. Returns the name of a column that no part has a field for, else NULL. */
const char *row_fill(sqlite3_stmt *row, const struct part *parts, size_t count);

#endif
