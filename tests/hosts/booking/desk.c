/* The booking desk: one connection to the database, with its statements. */
#include "desk.h"
#include "functions.h"
#include <stdio.h>
#include <stdlib.h>

/* The text of a file, to be freed; NULL where it cannot be read. */
static char *text_of(const char *folder, const char *name)
{
    char path[1024];
    char *text = NULL;
    snprintf(path, sizeof path, "%s/%s", folder, name);
    FILE *file = fopen(path, "rb");
    long size = -1;
    if (file != NULL && fseek(file, 0, SEEK_END) == 0 && (size = ftell(file)) >= 0 && fseek(file, 0, SEEK_SET) == 0)
        text = malloc((size_t)size + 1);
    if (text != NULL && fread(text, 1, (size_t)size, file) == (size_t)size) {
        text[size] = '\0';
    } else {
        perror(path);
        free(text);
        text = NULL;
    }
    if (file != NULL)
        fclose(file);
    return text;
}

static int told(sqlite3 *db, int code)
{
    if (code != SQLITE_OK)
        fprintf(stderr, "%s\n", db == NULL ? sqlite3_errstr(code) : sqlite3_errmsg(db));
    return code != SQLITE_OK;
}

int desk_create(const char *path, const char *folder)
{
    static const char *const files[] = { "schema.sql", "seed.sql" };
    sqlite3 *db = NULL;
    int code = sqlite3_open(path, &db);
    int wrong = told(db, code);
    for (int i = 0; i < 2 && !wrong; i++) {
        char *sql = text_of(folder, files[i]);
        wrong = sql == NULL || told(db, sqlite3_exec(db, sql, NULL, NULL, NULL));
        free(sql);
    }
    sqlite3_close(db);
    return wrong;
}

int desk_open(struct desk *desk, const char *path, const char *folder)
{
    *desk = (struct desk){ 0 };
    /* Each desk has its own connection, so SQLite need not lock it. */
    int code = sqlite3_open_v2(path, &desk->db, SQLITE_OPEN_READWRITE | SQLITE_OPEN_NOMUTEX, NULL);
    int wrong = told(desk->db, code);
    wrong = wrong || told(desk->db, gear_prepare(&desk->rows, desk->db));
    wrong = wrong || told(desk->db, functions_register(desk->db, &desk->rows));
    if (wrong)
        return wrong;
    char *sql = text_of(folder, "question.sql");
    wrong = sql == NULL || told(desk->db, sqlite3_prepare_v2(desk->db, sql, -1, &desk->question, NULL));
    free(sql);
    return wrong;
}

void desk_close(struct desk *desk)
{
    sqlite3_finalize(desk->question);
    gear_finish(&desk->rows);
    sqlite3_close(desk->db);
}

sqlite3_stmt *desk_ask(struct desk *desk, const char *shot, const char *day)
{
    sqlite3_reset(desk->question);
    sqlite3_bind_text(desk->question, 1, shot, -1, SQLITE_TRANSIENT);
    sqlite3_bind_text(desk->question, 2, day, -1, SQLITE_TRANSIENT);
    return desk->question;
}
