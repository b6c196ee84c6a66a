#include <stdio.h>
#include <tablerig.h>

int main(void)
{
    TablerigShot shot;
    TablerigCamera camera;
    TablerigLens lens;
    TablerigTable table;
    TablerigSubject subject;
    TablerigSupport support;
    TablerigBrief brief;
    TablerigPlan plan;
    TablerigFault fault;

    /* A jar of plum preserve from 20 degrees above, to fill two thirds of the frame's height. */
    tablerig_shot_init(&shot, sizeof shot);
    shot.elevation_deg = 20;
    shot.framing = TABLERIG_FRAMING_FILL_HEIGHT;
    shot.fill_height = 0.667;

    tablerig_camera_init(&camera, sizeof camera);
    camera.sensor_width_mm = 36;
    camera.sensor_height_mm = 24;
    camera.socket_ahead_mm = 30;
    camera.socket_below_mm = 45;
    camera.body_above_mm = 60;
    camera.mass_kg = 0.7;

    tablerig_lens_init(&lens, sizeof lens);
    lens.focal_length_mm = 90;
    lens.least_f_number = 2.8;
    lens.most_f_number = 22;
    lens.mass_kg = 0.6;
    lens.centre_ahead_mm = 70;
    lens.has_closest_focus_mm = 1;
    lens.closest_focus_mm = 450;

    tablerig_table_init(&table, sizeof table);
    table.width_mm = 1200;
    table.depth_mm = 700;
    table.height_mm = 740;

    tablerig_subject_init(&subject, sizeof subject);
    subject.shape = TABLERIG_SHAPE_ROUND;
    subject.diameter_mm = 80;
    subject.height_mm = 120;

    tablerig_support_init(&support, sizeof support);
    support.leg_count = 3;
    support.lowest_pivot_mm = 300;
    support.highest_pivot_mm = 1700;
    support.column_radius_mm = 15;
    support.foot_radius_mm = 450;
    support.legs_top_mm = 1100;
    support.mass_kg = 2.5;
    support.centre_height_mm = 700;
    support.head.mass_kg = 0.5;
    support.head.pivot_below_socket_mm = 90;

    tablerig_brief_init(&brief, sizeof brief);
    brief.shot = &shot;
    brief.camera = &camera;
    brief.lens = &lens;
    brief.table = &table;
    brief.subject = &subject;
    brief.support = &support;

    tablerig_plan_init(&plan, sizeof plan);
    if (tablerig_plan(&brief, &plan, &fault) != TABLERIG_STATUS_OK) {
        fprintf(stderr, "%s = %g %s (allowed: %g to %g)\n", fault.field, fault.value,
                tablerig_status_text(fault.status), fault.least, fault.most);
        return 1;
    }

    for (uint32_t i = 0; i < plan.caution_count; i++) {
        const TablerigCaution *caution = &plan.cautions[i];
        printf("%s: %s (%g, limit %g %s)\n", tablerig_level_text(caution->level),
               tablerig_caution_text(caution->code), caution->value, caution->limit,
               tablerig_caution_unit(caution->code));
    }
    printf("Lens axis at the sensor %.0f mm above the floor, %.0f mm from the aim point, f/%g.\n",
           plan.pose.sensor.z_mm, plan.lens.sensor_distance_mm, plan.focus.engraved);
    printf("%s\n", tablerig_removal_text(plan.removal));
    for (uint32_t i = 0; plan.overhead && tablerig_overhead_caution(i) != NULL; i++)
        printf("- %s\n", tablerig_overhead_caution(i));
    return 0;
}
