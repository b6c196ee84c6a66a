/* Eight threads ask at once, each at a desk of its own: crowd FOLDER DATABASE. The answers are the same, byte for
 * byte, on every thread and every time; exits with 1 where they are not, or where there is none. */
#include "desk.h"
#include <pthread.h>
#include <stdio.h>
#include <string.h>

#define THREADS 8
#define TIMES 10
#define ROOM 32768

struct asker {
    const char *folder, *path;
    char first[ROOM];
    int differing, asked;
};

/* Writes all of an answer into `text`; returns SQLite's last code. */
static int write_answer(struct desk *desk, char *text)
{
    size_t used = 0;
    int code;
    sqlite3_stmt *row = desk_ask(desk, "glazed plates from above", "2031-09-12");
    while ((code = sqlite3_step(row)) == SQLITE_ROW)
        for (int i = 0; i < sqlite3_column_count(row) && used < ROOM; i++) {
            const char *cell = (const char *)sqlite3_column_text(row, i);
            int written = snprintf(text + used, ROOM - used, "%s|", cell == NULL ? "" : cell);
            used += written > 0 ? (size_t)written : 0;
        }
    return used < ROOM ? code : SQLITE_TOOBIG;
}

static void *ask(void *given)
{
    struct asker *asker = given;
    struct desk desk;
    char *text = sqlite3_malloc(ROOM);
    if (text != NULL && desk_open(&desk, asker->path, asker->folder) == 0) {
        for (int i = 0; i < TIMES && write_answer(&desk, i == 0 ? asker->first : text) == SQLITE_DONE; i++) {
            asker->asked++;
            asker->differing += i > 0 && strcmp(asker->first, text) != 0;
        }
        desk_close(&desk);
    }
    sqlite3_free(text);
    return NULL;
}

int main(int count, char **given)
{
    static struct asker askers[THREADS];
    pthread_t threads[THREADS];
    int started = 0, asked = 0, differing = 0;
    if (count != 3) {
        fprintf(stderr, "crowd FOLDER DATABASE\n");
        return 2;
    }
    remove(given[2]);
    if (!sqlite3_threadsafe() || desk_create(given[2], given[1]))
        return 1;
    for (; started < THREADS; started++) {
        askers[started].folder = given[1];
        askers[started].path = given[2];
        if (pthread_create(&threads[started], NULL, ask, &askers[started]) != 0)
            break;
    }
    for (int i = 0; i < started; i++) {
        pthread_join(threads[i], NULL);
        asked += askers[i].asked;
        differing += askers[i].differing + (strcmp(askers[0].first, askers[i].first) != 0);
    }
    printf("%d threads, %d questions, %d answers that differ\n", started, asked, differing);
    return asked != THREADS * TIMES || differing != 0 || askers[0].first[0] == '\0';
}
