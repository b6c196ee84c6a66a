/* Plans seeded random briefs and prints one line for each: its status and a hash of every byte of its plan. The
 * same lines must come out on every processor. With a file name, the size of a plan and then the briefs are
 * written there, part after part: no struct has padding, so the bytes are the same everywhere and other hosts
 * can read them. */
#include <stdint.h>
#include <stdio.h>
#include <string.h>
#include <tablerig.h>

#ifndef BRIEFS
#define BRIEFS 10000
#endif

static uint64_t seed = 20;

/* Splitmix64 (Steele, Lea and Flood 2014). */
static uint64_t word(void)
{
    uint64_t z = seed += 0x9e3779b97f4a7c15u;
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9u;
    z = (z ^ (z >> 27)) * 0x94d049bb133111ebu;
    return z ^ (z >> 31);
}

static int32_t below(uint32_t count)
{
    return (int32_t)(word() % count);
}

static double between(double least, double most)
{
    /* 53 bits, a whole number that a double holds exactly. */
    return least + (most - least) * ((double)(word() >> 11) / 9007199254740992.0);
}

/* Around what a studio has; now and then anywhere in the range, or at its ends. */
static double near_by(double usual, double least, double most)
{
    double value = usual * between(0.5, 1.5);
    switch (below(12)) {
    case 0: return least;
    case 1: return most;
    case 2: return between(least, most);
    default: return value < least ? least : value > most ? most : value;
    }
}

static struct {
    TablerigShot shot;
    TablerigCamera camera;
    TablerigLens lens;
    TablerigTable table;
    TablerigSubject subject;
    TablerigSupport support;
    TablerigBay bay;
    TablerigCriteria criteria;
} parts;

static void picture(void)
{
    TablerigShot *shot = &parts.shot;
    TablerigSubject *subject = &parts.subject;
    tablerig_shot_init(shot, sizeof *shot);
    shot->elevation_deg = below(2) ? between(-60, 90) : below(2) ? 90 : 0;
    shot->bearing_deg = near_by(90, -360, 360);
    shot->framing = below(4) ? TABLERIG_FRAMING_FRAME_WIDTH : below(3);
    shot->frame_width_mm = near_by(500, 1, 100000);
    shot->fill_width = shot->fill_height = between(0.01, 1);
    shot->hold = below(2);
    shot->has_delivered_aspect = below(2);
    shot->delivered_aspect.width = between(0.5, 2);
    shot->delivered_aspect.height = between(0.5, 2);
    shot->aim_x_mm = near_by(100, -10000, 10000);
    shot->aim_y_mm = near_by(-100, -10000, 10000);
    shot->has_aim_height_mm = below(2);
    shot->aim_height_mm = near_by(50, -1000, 5000);
    shot->has_f_number = below(2);
    shot->f_number = near_by(8, 0.5, 512);
    shot->has_backdrop_behind_mm = below(2);
    shot->backdrop_behind_mm = near_by(900, 1, 20000);
    shot->has_side = below(3) == 0;
    shot->side = below(4);
    shot->focus_on_table = below(2);
    tablerig_subject_init(subject, sizeof *subject);
    subject->shape = below(2);
    subject->judged_by = below(7);
    subject->width_mm = subject->diameter_mm = near_by(150, 0.1, 10000);
    subject->depth_mm = near_by(120, 0.1, 10000);
    subject->height_mm = near_by(110, 0, 5000);
    subject->has_vessel = below(2);
    subject->vessel.inside_diameter_mm = 0.1 + between(0, 0.9) * (subject->width_mm - 0.1);
    subject->vessel.contents_below_rim_mm = between(0, 1) * subject->height_mm;
}

static void glass(void)
{
    TablerigCamera *camera = &parts.camera;
    TablerigLens *lens = &parts.lens;
    tablerig_camera_init(camera, sizeof *camera);
    camera->sensor_width_mm = near_by(36, 1, 500);
    camera->sensor_height_mm = near_by(24, 1, 500);
    camera->socket_ahead_mm = near_by(30, -500, 2000);
    camera->socket_below_mm = near_by(45, -500, 1000);
    camera->body_above_mm = near_by(60, 0, 1000);
    camera->mass_kg = near_by(0.7, 0, 100);
    tablerig_lens_init(lens, sizeof *lens);
    lens->focal_length_mm = near_by(70, 1, 3000);
    lens->least_f_number = between(0.5, 6);
    lens->most_f_number = between(6, 64);
    lens->pupil_ratio = near_by(1, 0.05, 20);
    lens->principal_separation_mm = near_by(5, -1000, 1000);
    lens->mass_kg = near_by(0.6, 0, 100);
    lens->centre_ahead_mm = near_by(70, -1000, 5000);
    lens->has_closest_focus_mm = below(2);
    lens->closest_focus_mm = near_by(6 * lens->focal_length_mm, 1, 100000);
    lens->has_largest_magnification = below(2);
    lens->largest_magnification = near_by(0.2, 0.0001, 20);
    lens->has_front_from_sensor_mm = below(2);
    lens->front_from_sensor_mm = near_by(110, 1, 5000);
}

static void place(void)
{
    TablerigTable *table = &parts.table;
    TablerigSupport *support = &parts.support;
    TablerigBoom *boom = &support->boom;
    TablerigBay *bay = &parts.bay;
    tablerig_table_init(table, sizeof *table);
    table->underside = below(2);
    table->width_mm = near_by(1200, 1, 20000);
    table->depth_mm = near_by(800, 1, 20000);
    table->height_mm = near_by(750, 0, 3000);
    tablerig_support_init(support, sizeof *support);
    support->leg_count = 3 + (uint32_t)below(6);
    support->lowest_pivot_mm = between(0, 900);
    support->highest_pivot_mm = near_by(2500, 900, 20000);
    support->column_radius_mm = between(0, 40);
    support->foot_radius_mm = near_by(500, 40, 5000);
    support->legs_top_mm = near_by(900, 1, 20000);
    support->mass_kg = near_by(6, 0, 500);
    support->centre_height_mm = near_by(600, 0, 20000);
    support->base_mass_kg = near_by(8, 0, 1000);
    support->has_first_leg_deg = below(2);
    support->first_leg_deg = between(-360, 360);
    support->head.mass_kg = near_by(0.5, 0, 100);
    support->head.pivot_below_socket_mm = near_by(90, -500, 1000);
    support->sandbags[below(4)].mass_kg = 7;
    support->sandbags[below(4)].out_mm = between(0, 500);
    support->has_boom = below(3) > 0;
    boom->longest_reach_mm = near_by(900, 1, 10000);
    boom->tail_mm = near_by(500, 0, 10000);
    boom->mass_kg = near_by(1.5, 0, 200);
    boom->pitch_deg = near_by(10, -60, 60);
    boom->counterweight_kg = near_by(4, 0, 500);
    boom->stiffness.kind = below(3);
    boom->stiffness.bending_stiffness_n_m2 = near_by(3000, 0.001, 1e12);
    boom->stiffness.tube_outside_mm = 35;
    boom->stiffness.tube_inside_mm = between(0, 34);
    boom->stiffness.tube_modulus_n_per_mm2 = 69000;
    boom->has_damping_ratio = below(2);
    boom->damping_ratio = near_by(0.02, 0.0001, 0.99);
    tablerig_bay_init(bay, sizeof *bay);
    bay->has_left_mm = below(2);
    bay->left_mm = near_by(2000, 0, 100000);
    bay->has_ceiling_mm = below(2);
    bay->ceiling_mm = near_by(2600, 500, 100000);
    bay->floor_slope_percent = near_by(1, 0, 30);
    bay->people_under = below(2);
    tablerig_criteria_init(&parts.criteria, sizeof parts.criteria);
    parts.criteria.wanted_factor = near_by(2, 1, 100);
}

int main(int count, char **names)
{
    FILE *file = count > 1 ? fopen(names[1], "wb") : NULL;
    static TablerigPlan plan;
    const uint32_t plan_size = sizeof plan;
    if (file != NULL && fwrite(&plan_size, sizeof plan_size, 1, file) != 1)
        return 1;
    for (int i = 0; i < BRIEFS; i++) {
        picture();
        glass();
        place();
        if (file != NULL && fwrite(&parts, sizeof parts, 1, file) != 1)
            return 1;
        TablerigBrief brief = { sizeof brief, 0, &parts.shot, &parts.camera, &parts.lens, &parts.table,
                                &parts.subject, &parts.support, &parts.bay, &parts.criteria };
        tablerig_plan_init(&plan, sizeof plan);
        int32_t status = tablerig_plan(&brief, &plan, NULL);
        uint32_t a = 0, b = 0, part;
        for (size_t at = 0; at < sizeof plan; at += sizeof part) {
            memcpy(&part, (const char *)&plan + at, sizeof part);
            a = (a ^ part) * 16777619u;
            b = ((b << 5 | b >> 27) + part) * 2654435761u;
        }
        printf("%d %08lx%08lx\n", (int)status, (unsigned long)a, (unsigned long)b);
    }
    return file != NULL && fclose(file) != 0;
}
