/* A shot list planned on two threads: shots of an invented pottery catalogue, all with one camera, lens and
 * stand. Each thread plans its own stretch of the same arrays. Exits with 1 if anything is not as it says. */
#include <math.h>
#include <pthread.h>
#include <stdio.h>
#include <string.h>
#include <tablerig.h>

#define SHOTS 5

struct slice {
    const TablerigBrief *briefs;
    TablerigPlan *plans;
    int32_t *statuses;
    TablerigFault *faults;
    size_t count;
    int32_t status;
};

static void *plan_slice(void *given)
{
    struct slice *slice = given;
    slice->status = tablerig_plan_batch(slice->briefs, sizeof *slice->briefs, slice->plans, sizeof *slice->plans,
                                        slice->count, slice->statuses, slice->faults);
    return NULL;
}

static int expect(int holds, const char *what)
{
    if (!holds)
        fprintf(stderr, "not so: %s\n", what);
    return holds ? 0 : 1;
}

static void gear(TablerigCamera *camera, TablerigLens *lens, TablerigTable *table, TablerigSupport *support)
{
    tablerig_camera_init(camera, sizeof *camera);
    camera->sensor_width_mm = 36;
    camera->sensor_height_mm = 24;
    camera->socket_ahead_mm = 30;
    camera->socket_below_mm = 45;
    camera->body_above_mm = 60;
    camera->body_behind_mm = 40;
    camera->mass_kg = 0.7;

    tablerig_lens_init(lens, sizeof *lens);
    lens->focal_length_mm = 50;
    lens->least_f_number = 1.8;
    lens->most_f_number = 22;
    lens->mass_kg = 0.4;
    lens->centre_ahead_mm = 60;

    tablerig_table_init(table, sizeof *table);
    table->width_mm = 1400;
    table->depth_mm = 800;
    table->height_mm = 750;

    tablerig_support_init(support, sizeof *support);
    support->leg_count = 3;
    support->lowest_pivot_mm = 500;
    support->highest_pivot_mm = 2600;
    support->column_radius_mm = 20;
    support->foot_radius_mm = 500;
    support->legs_top_mm = 900;
    support->mass_kg = 7;
    support->centre_height_mm = 600;
    support->base_mass_kg = 12;
    support->head.mass_kg = 0.6;
    support->head.pivot_below_socket_mm = 90;
    support->has_boom = 1;
    support->boom.longest_reach_mm = 1100;
    support->boom.tail_mm = 500;
    support->boom.mass_kg = 1.5;
    support->boom.counterweight_kg = 4;
}

int main(void)
{
    static const char *const names[SHOTS] = { "bowl", "glaze", "row of jars", "laid table", "forgotten" };
    static const double elevations[SHOTS - 1] = { 35, 90, 0, 90 };
    static const double widths[SHOTS - 1] = { 400, 250, 700, 1100 };
    TablerigShot shots[SHOTS];
    TablerigCamera camera;
    TablerigLens lens;
    TablerigTable table;
    TablerigSubject subject;
    TablerigSupport support;
    TablerigBrief briefs[SHOTS];
    static TablerigPlan plans[SHOTS];
    int32_t statuses[SHOTS];
    TablerigFault faults[SHOTS];
    struct slice slices[2];
    pthread_t threads[2];
    int wrong = 0, overhead = 0;

    gear(&camera, &lens, &table, &support);
    tablerig_subject_init(&subject, sizeof subject);
    subject.shape = TABLERIG_SHAPE_ROUND;
    subject.diameter_mm = 180;
    subject.height_mm = 90;
    for (int i = 0; i < SHOTS; i++) {
        tablerig_shot_init(&shots[i], sizeof shots[i]);
        if (i < SHOTS - 1) { /* The last one is left without its elevation and frame width. */
            shots[i].elevation_deg = elevations[i];
            shots[i].frame_width_mm = widths[i];
        }
        tablerig_brief_init(&briefs[i], sizeof briefs[i]);
        briefs[i].shot = &shots[i];
        briefs[i].camera = &camera;
        briefs[i].lens = &lens;
        briefs[i].table = &table;
        briefs[i].subject = &subject;
        briefs[i].support = &support;
        tablerig_plan_init(&plans[i], sizeof plans[i]);
    }

    slices[0] = (struct slice){ briefs, plans, statuses, faults, 2, -1 };
    slices[1] = (struct slice){ briefs + 2, plans + 2, statuses + 2, faults + 2, SHOTS - 2, -1 };
    for (int t = 0; t < 2; t++)
        wrong += expect(pthread_create(&threads[t], NULL, plan_slice, &slices[t]) == 0, "a thread starts");
    for (int t = 0; t < 2; t++) {
        pthread_join(threads[t], NULL);
        wrong += expect(slices[t].status == TABLERIG_STATUS_OK, "each slice is gone through");
    }

    for (int i = 0; i < SHOTS; i++) {
        if (statuses[i] != TABLERIG_STATUS_OK) {
            printf("%-12s %s %s\n", names[i], faults[i].field, tablerig_status_text(statuses[i]));
            continue;
        }
        printf("%-12s %4.0f mm high, %4.0f mm from the aim point, f/%-4g reach %4.0f mm, %s%u cautions\n", names[i],
               plans[i].pose.sensor.z_mm, plans[i].lens.sensor_distance_mm, plans[i].focus.engraved,
               plans[i].placement.reach_mm, plans[i].overhead ? "OVERHEAD, " : "", plans[i].caution_count);
        overhead |= plans[i].overhead;
    }
    for (uint32_t i = 0; overhead && tablerig_overhead_caution(i) != NULL; i++)
        printf("- %s\n", tablerig_overhead_caution(i));

    wrong += expect(statuses[4] == TABLERIG_STATUS_TOO_SMALL, "a forgotten elevation is refused");
    wrong += expect(strcmp(faults[4].field, "shot.elevation_deg") == 0, "and named");
    wrong += expect(faults[4].value == TABLERIG_UNSET && faults[4].least == -60, "with value and range");
    wrong += expect(plans[1].overhead == 1 && plans[2].overhead == 0, "a load over the table is told");
    /* Straight overhead the axis stands over the aim point, and the sensor as high as the lens is away. */
    wrong += expect(fabs(plans[3].pose.sensor.z_mm - 795 - plans[3].lens.sensor_distance_mm) < 1e-9, "overhead");
    wrong += expect(TABLERIG_VERSION == tablerig_version(), "header and library are of one version");
    wrong += expect(TABLERIG_VERSION == TABLERIG_VERSION_MAJOR * 1000000 + TABLERIG_VERSION_MINOR * 1000
                        + TABLERIG_VERSION_PATCH, "the version's parts make the version");
    return wrong != 0;
}
