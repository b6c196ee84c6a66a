/* Fills structs of tablerig.h from a row of the database. */
#include "row.h"
#include <stdint.h>
#include <string.h>

static const struct field *find(const struct part *part, const char *column)
{
    for (size_t i = 0; i < part->count; i++)
        if (strcmp(part->fields[i].column, column) == 0)
            return &part->fields[i];
    return NULL;
}

static void put(sqlite3_stmt *row, int column, const struct field *field, char *into)
{
    const int32_t one = 1;
    if (sqlite3_column_type(row, column) == SQLITE_NULL)
        return;
    if (field->whole) {
        int32_t whole = sqlite3_column_int(row, column);
        memcpy(into + field->offset, &whole, sizeof whole);
    } else {
        double number = sqlite3_column_double(row, column);
        memcpy(into + field->offset, &number, sizeof number);
    }
    if (field->has != 0)
        memcpy(into + field->has, &one, sizeof one);
}

const char *row_fill(sqlite3_stmt *row, const struct part *parts, size_t count)
{
    for (int column = 0; column < sqlite3_column_count(row); column++) {
        const char *name = sqlite3_column_name(row, column);
        const struct field *field = NULL;
        if (strcmp(name, "id") == 0 || strcmp(name, "name") == 0)
            continue;
        for (size_t i = 0; i < count && field == NULL; i++) {
            field = find(&parts[i], name);
            if (field != NULL)
                put(row, column, field, parts[i].into);
        }
        if (field == NULL)
            return name;
    }
    return NULL;
}
