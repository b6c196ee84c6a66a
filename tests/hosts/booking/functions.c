/* tablerig as SQL functions. Each call reads its rows and plans anew: a plan takes a few microseconds, and the rows
 * may have changed. Nothing is shared between connections. */
#include "functions.h"
#include <stdio.h>

/* The geometry has no answer, so the shot cannot be taken: not a mistake in the row. */
static int without_answer(int32_t status)
{
    return status >= 301 && status <= 399;
}

/* Plans what the ids name. Returns 1 and the plan; or 0, and the function's result is an error, or NULL where the
 * geometry has no answer. */
static int planned(sqlite3_context *context, sqlite3_value **ids, TablerigPlan *plan, TablerigFault *fault)
{
    struct gear gear;
    char text[200];
    const sqlite3_int64 wanted[GEAR_TABLES] = {
        sqlite3_value_int64(ids[0]), sqlite3_value_int64(ids[1]),
        sqlite3_value_int64(ids[2]), sqlite3_value_int64(ids[3])
    };
    const char *wrong = gear_read(sqlite3_user_data(context), wanted, &gear, text);
    if (wrong != NULL) {
        sqlite3_result_error(context, wrong, -1);
        return 0;
    }
    tablerig_plan_init(plan, sizeof *plan);
    if (tablerig_plan(&gear.brief, plan, fault) == TABLERIG_STATUS_OK)
        return 1;
    if (!without_answer(fault->status)) {
        snprintf(text, sizeof text, "%s = %g %s (allowed: %g to %g)", fault->field, fault->value,
                 tablerig_status_text(fault->status), fault->least, fault->most);
        sqlite3_result_error(context, text, -1);
    }
    return 0;
}

/* The first of the weightiest cautions from level `least` to `most`, as a sentence with value and limit. That a load
 * hangs overhead is told by tablerig_overhead. */
static void tell(sqlite3_context *context, const TablerigPlan *plan, int32_t least, int32_t most)
{
    const TablerigCaution *worst = NULL;
    for (uint32_t i = 0; i < plan->caution_count; i++) {
        const TablerigCaution *caution = &plan->cautions[i];
        if (caution->level >= least && caution->level <= most && (worst == NULL || caution->level > worst->level)
            && caution->code != TABLERIG_CAUTION_CODE_LOAD_OVERHEAD)
            worst = caution;
    }
    if (worst == NULL)
        return; /* The result stays NULL. */
    const char *unit = tablerig_caution_unit(worst->code);
    char text[400];
    snprintf(text, sizeof text, "%s: %s (%.4g, limit %.4g%s%s)", tablerig_level_text(worst->level),
             tablerig_caution_text(worst->code), worst->value, worst->limit, unit[0] == '\0' ? "" : " ", unit);
    sqlite3_result_text(context, text, -1, SQLITE_TRANSIENT);
}

static void can_take(sqlite3_context *context, int count, sqlite3_value **ids)
{
    TablerigPlan plan;
    TablerigFault fault = { 0 };
    (void)count;
    if (planned(context, ids, &plan, &fault))
        tell(context, &plan, TABLERIG_LEVEL_STOP, TABLERIG_LEVEL_STOP);
    else if (without_answer(fault.status))
        sqlite3_result_text(context, tablerig_status_text(fault.status), -1, SQLITE_STATIC);
}

static void look_at(sqlite3_context *context, int count, sqlite3_value **ids)
{
    TablerigPlan plan;
    TablerigFault fault;
    (void)count;
    if (planned(context, ids, &plan, &fault))
        tell(context, &plan, TABLERIG_LEVEL_NOTE, TABLERIG_LEVEL_WARN);
}

static void reach_mm(sqlite3_context *context, int count, sqlite3_value **ids)
{
    TablerigPlan plan;
    TablerigFault fault;
    (void)count;
    if (planned(context, ids, &plan, &fault))
        sqlite3_result_double(context, plan.placement.reach_mm);
}

static void pivot_mm(sqlite3_context *context, int count, sqlite3_value **ids)
{
    TablerigPlan plan;
    TablerigFault fault;
    (void)count;
    if (planned(context, ids, &plan, &fault))
        sqlite3_result_double(context, plan.pose.pivot.z_mm);
}

static void factor(sqlite3_context *context, int count, sqlite3_value **ids)
{
    TablerigPlan plan;
    TablerigFault fault;
    (void)count;
    if (planned(context, ids, &plan, &fault))
        sqlite3_result_double(context, plan.stability.as_shot.factor);
}

static void overhead(sqlite3_context *context, int count, sqlite3_value **ids)
{
    TablerigPlan plan;
    TablerigFault fault;
    (void)count;
    if (planned(context, ids, &plan, &fault))
        sqlite3_result_int(context, plan.overhead);
}

int functions_register(sqlite3 *db, struct gear_rows *rows)
{
    static const struct {
        const char *name;
        void (*function)(sqlite3_context *, int, sqlite3_value **);
    } all[] = {
        { "tablerig_can_take", can_take }, { "tablerig_look_at", look_at }, { "tablerig_reach_mm", reach_mm },
        { "tablerig_pivot_mm", pivot_mm }, { "tablerig_factor", factor },   { "tablerig_overhead", overhead },
    };
    for (size_t i = 0; i < sizeof all / sizeof all[0]; i++) {
        int code = sqlite3_create_function_v2(db, all[i].name, GEAR_TABLES, SQLITE_UTF8, rows, all[i].function, NULL,
                                              NULL, NULL);
        if (code != SQLITE_OK)
            return code;
    }
    return SQLITE_OK;
}
