/* Many threads ask at once, each at a desk of its own: crowd FOLDER DATABASE [THREADS SECONDS], or else eight threads
 * with ten questions each. Every answer is held, byte for byte, against the one that a single desk gave before; exits
 * with 1 where one differs or there is none. With SECONDS it prints one line for a table: how many were answered in
 * a second, and how long an answer took. */
#include "desk.h"
#include <pthread.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#define MOST_THREADS 64
#define TIMES 10
#define ROOM 32768
#define QUESTIONS 6
/* Answers are counted by the microseconds that they took; the last place takes all that are slower. */
#define MOST_MICROSECONDS 1000000

static const char *const asked_for[QUESTIONS][2] = {
    { "glazed plates from above", "2031-09-12" }, { "jar of plum preserve", "2031-09-12" },
    { "glazed plates from above", "2031-09-13" }, { "jar of plum preserve", "2031-09-13" },
    { "glazed plates from above", "2031-09-14" }, { "jar of plum preserve", "2031-09-14" },
};

/* Written before the threads begin, only read afterwards. */
static char known[QUESTIONS][ROOM];

struct asker {
    const char *folder, *path;
    double seconds; /* 0: TIMES questions */
    long asked, wrong;
    double processor_seconds; /* what the thread itself ran */
    unsigned *took; /* how many answers took so many microseconds */
};

static double seconds_of(clockid_t clock)
{
    struct timespec time;
    clock_gettime(clock, &time);
    return (double)time.tv_sec + (double)time.tv_nsec / 1e9;
}

/* Writes all of an answer into `text`; returns SQLite's last code. */
static int write_answer(struct desk *desk, int question, char *text)
{
    size_t used = 0;
    int code;
    sqlite3_stmt *row = desk_ask(desk, asked_for[question][0], asked_for[question][1]);
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
    char *text = malloc(ROOM);
    asker->took = calloc(MOST_MICROSECONDS + 1, sizeof *asker->took);
    if (text == NULL || asker->took == NULL || desk_open(&desk, asker->path, asker->folder) != 0) {
        asker->wrong++;
        free(text);
        return NULL;
    }
    double end = seconds_of(CLOCK_MONOTONIC) + asker->seconds, from = 0;
    for (long i = 0; asker->seconds > 0 ? (from = seconds_of(CLOCK_MONOTONIC)) < end : i < TIMES; i++) {
        int question = (int)(i % QUESTIONS);
        int code = write_answer(&desk, question, text);
        double microseconds = (seconds_of(CLOCK_MONOTONIC) - from) * 1e6;
        asker->asked++;
        asker->wrong += code != SQLITE_DONE || strcmp(text, known[question]) != 0;
        asker->took[microseconds < MOST_MICROSECONDS ? (int)microseconds : MOST_MICROSECONDS]++;
    }
    asker->processor_seconds = seconds_of(CLOCK_THREAD_CPUTIME_ID);
    desk_close(&desk);
    free(text);
    return NULL;
}

/* The microseconds within which a share of the answers came. */
static int within(struct asker *askers, int count, double share)
{
    double asked = 0, so_far = 0;
    for (int i = 0; i < count; i++)
        asked += (double)askers[i].asked;
    for (int at = 0; at < MOST_MICROSECONDS; at++) {
        for (int i = 0; i < count; i++)
            so_far += askers[i].took[at];
        if (so_far >= share * asked)
            return at + 1;
    }
    return MOST_MICROSECONDS;
}

/* What one desk answers while nobody else asks; returns 0 where each answer has rows. */
static int learn(const char *path, const char *folder)
{
    struct desk desk;
    int wrong = desk_open(&desk, path, folder);
    for (int i = 0; i < QUESTIONS && !wrong; i++)
        wrong = write_answer(&desk, i, known[i]) != SQLITE_DONE || known[i][0] == '\0';
    desk_close(&desk);
    return wrong;
}

int main(int count, char **given)
{
    static struct asker askers[MOST_THREADS];
    pthread_t threads[MOST_THREADS];
    int wanted = count > 3 ? atoi(given[3]) : 8, started = 0;
    double seconds = count > 4 ? atof(given[4]) : 0;
    long asked = 0, wrong = 0;
    double processor_seconds = 0;
    if ((count != 3 && count != 5) || wanted < 1 || wanted > MOST_THREADS) {
        fprintf(stderr, "crowd FOLDER DATABASE [THREADS SECONDS]\n");
        return 2;
    }
    remove(given[2]);
    if (!sqlite3_threadsafe() || desk_create(given[2], given[1]) || learn(given[2], given[1]))
        return 1;
    double began = seconds_of(CLOCK_MONOTONIC);
    for (; started < wanted; started++) {
        askers[started] = (struct asker){ .folder = given[1], .path = given[2], .seconds = seconds };
        if (pthread_create(&threads[started], NULL, ask, &askers[started]) != 0)
            break;
    }
    for (int i = 0; i < started; i++) {
        pthread_join(threads[i], NULL);
        asked += askers[i].asked;
        wrong += askers[i].wrong;
        processor_seconds += askers[i].processor_seconds;
    }
    double took = seconds_of(CLOCK_MONOTONIC) - began;
    if (seconds > 0 && asked > 0 && wrong == 0)
        printf("| %d | %.0f | %ld | %ld | %.0f | %.2f | %.2f | %.2f | %.2f |\n", started, took, asked, wrong,
               (double)asked / took, within(askers, started, 0.5) / 1e3, within(askers, started, 0.99) / 1e3,
               within(askers, started, 1) / 1e3, processor_seconds / (double)asked * 1e3);
    else
        printf("%d threads, %ld questions, %ld answers that differ\n", started, asked, wrong);
    for (int i = 0; i < started; i++)
        free(askers[i].took);
    return started != wanted || wrong != 0 || asked == 0 || (seconds <= 0 && asked != (long)wanted * TIMES);
}
