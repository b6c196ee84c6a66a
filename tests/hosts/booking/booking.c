/* A rental studio's booking program: which free bay, stand and lens can take a shot on a day, and why the others
 * cannot, answered by the one query in question.sql. Everything in the database is invented.
 *     booking FOLDER DATABASE
 * makes the database anew from the SQL files in FOLDER, asks about two shots, and exits with 1 if an answer is not
 * the known one. */
#include "desk.h"
#include <math.h>
#include <stdio.h>
#include <string.h>

/* What is expected of a row: how its reason begins, or, where the shot can be taken, the pivot's height. */
struct known {
    const char *bay, *stand, *lens, *reason;
    double pivot_mm;
};

static const char *column(sqlite3_stmt *row, int i)
{
    const char *text = (const char *)sqlite3_column_text(row, i);
    return text == NULL ? "" : text;
}

static int is(sqlite3_stmt *row, const struct known *known)
{
    return strcmp(known->bay, column(row, BAY)) == 0 && strcmp(known->stand, column(row, STAND)) == 0
        && strcmp(known->lens, column(row, LENS)) == 0;
}

static int as_known(sqlite3_stmt *row, const struct known *known)
{
    if (known->reason != NULL)
        return strncmp(column(row, REASON), known->reason, strlen(known->reason)) == 0;
    /* Half a unit of the last digit given. */
    return column(row, REASON)[0] == '\0' && fabs(sqlite3_column_double(row, PIVOT) - known->pivot_mm) < 0.05;
}

static void print(sqlite3_stmt *row)
{
    const char *look_at = column(row, LOOK_AT);
    printf("  %-8s  %-10s  %-5s  ", column(row, BAY), column(row, STAND), column(row, LENS));
    if (sqlite3_column_type(row, REASON) != SQLITE_NULL)
        printf("no   %s\n", column(row, REASON));
    else
        printf("YES  reach %.0f mm, pivot %.0f mm up, factor %.2f%s%s\n", sqlite3_column_double(row, REACH),
               sqlite3_column_double(row, PIVOT), sqlite3_column_double(row, FACTOR), look_at[0] == '\0' ? "" : "; ",
               look_at);
}

/* Prints the answer; returns how much of it is not as known. */
static size_t answer(struct desk *desk, const char *shot, const char *day, const struct known *known, size_t count)
{
    sqlite3_stmt *row = desk_ask(desk, shot, day);
    size_t met = 0;
    int code, overhead = 0;
    printf("\n%s, %s\n", shot, day);
    while ((code = sqlite3_step(row)) == SQLITE_ROW) {
        print(row);
        overhead |= sqlite3_column_type(row, REASON) == SQLITE_NULL && sqlite3_column_int(row, OVERHEAD);
        for (size_t i = 0; i < count; i++)
            met += is(row, &known[i]) && as_known(row, &known[i]);
    }
    if (code != SQLITE_DONE)
        fprintf(stderr, "%s\n", sqlite3_errmsg(desk->db));
    for (uint32_t i = 0; overhead && tablerig_overhead_caution(i) != NULL; i++)
        printf("  - %s\n", tablerig_overhead_caution(i));
    if (!overhead)
        printf("  Computed figures: the makers' ratings rule, and local codes and a qualified rigger decide.\n");
    if (met != count)
        fprintf(stderr, "not so: %s on %s is answered as known\n", shot, day);
    return count - met;
}

/* A row that cannot be is an error that names the field. */
static size_t refused(struct desk *desk)
{
    sqlite3_exec(desk->db, "UPDATE lenses SET focal_length_mm = -5", NULL, NULL, NULL);
    sqlite3_stmt *row = desk_ask(desk, "jar of plum preserve", "2031-09-14");
    int code = sqlite3_step(row);
    printf("\nwith a lens of -5 mm: %s\n", sqlite3_errmsg(desk->db));
    return code == SQLITE_ROW || strstr(sqlite3_errmsg(desk->db), "lens.focal_length_mm = -5 ") == NULL;
}

int main(int count, char **given)
{
    static const struct known plates[] = {
        { "workshop", "short boom", "90 mm", NULL, 2427.9 },
        { "attic", "short boom", "90 mm", "stop: The highest point of camera and rig does not fit", 0 },
        { "attic", "tripod", "50 mm", "stop: The camera hangs where the column cannot stand", 0 },
        { "workshop", "light boom", "90 mm", "stop: This little tilt", 0 },
        { "attic", "long boom", "90 mm", "booked: stand", 0 },
        { "yard", "long boom", "50 mm", "booked: bay, stand", 0 },
    };
    static const struct known jar[] = {
        { "workshop", "long boom", "90 mm", "stop: The support does not go this low.", 0 },
        { "workshop", "tripod", "50 mm", "booked: lens", 0 },
    };
    struct desk desk;
    if (count != 3) {
        fprintf(stderr, "booking FOLDER DATABASE\n");
        return 2;
    }
    remove(given[2]);
    if (desk_create(given[2], given[1]))
        return 1;
    size_t wrong = 1;
    if (desk_open(&desk, given[2], given[1]) == 0)
        wrong = answer(&desk, "glazed plates from above", "2031-09-12", plates, sizeof plates / sizeof plates[0])
            + answer(&desk, "jar of plum preserve", "2031-09-13", jar, sizeof jar / sizeof jar[0]) + refused(&desk);
    desk_close(&desk);
    return wrong != 0;
}
