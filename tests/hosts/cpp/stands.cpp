// Which stand takes an overhead shot, and why the others do not, straight from C++: no wrapper is needed, since
// nothing is allocated and so nothing is freed. Invented stands. Exits with 1 if the answer is not the known one.
#include <cstdio>
#include <cstring>
#include <tablerig.h>

namespace {

TablerigSupport stand(double highest_pivot_mm, double foot_radius_mm, double mass_kg)
{
    TablerigSupport support;
    tablerig_support_init(&support, sizeof support);
    support.leg_count = 3;
    support.lowest_pivot_mm = 600;
    support.highest_pivot_mm = highest_pivot_mm;
    support.column_radius_mm = 18;
    support.foot_radius_mm = foot_radius_mm;
    support.legs_top_mm = 800;
    support.mass_kg = mass_kg;
    support.centre_height_mm = 600;
    support.head.mass_kg = 0.5;
    support.head.pivot_below_socket_mm = 90;
    return support;
}

TablerigSupport with_boom(TablerigSupport support, double reach_mm, double counterweight_kg)
{
    support.has_boom = 1;
    support.boom.longest_reach_mm = reach_mm;
    support.boom.tail_mm = 500;
    support.boom.mass_kg = 1.6;
    support.boom.counterweight_kg = counterweight_kg;
    support.boom.stiffness.kind = TABLERIG_STIFFNESS_KIND_TUBE;
    support.boom.stiffness.tube_outside_mm = 35;
    support.boom.stiffness.tube_inside_mm = 31;
    support.boom.stiffness.tube_modulus_n_per_mm2 = 69000;
    return support;
}

} // namespace

int main()
{
    TablerigShot shot;
    TablerigCamera camera;
    TablerigLens lens;
    TablerigTable table;
    TablerigSubject subject;
    TablerigBay bay;
    tablerig_shot_init(&shot, sizeof shot);
    shot.elevation_deg = 90;
    shot.frame_width_mm = 600;
    tablerig_camera_init(&camera, sizeof camera);
    camera.sensor_width_mm = 36;
    camera.sensor_height_mm = 24;
    camera.socket_ahead_mm = 30;
    camera.socket_below_mm = 45;
    camera.body_above_mm = 60;
    camera.mass_kg = 0.7;
    tablerig_lens_init(&lens, sizeof lens);
    lens.focal_length_mm = 60;
    lens.least_f_number = 2.8;
    lens.most_f_number = 22;
    lens.mass_kg = 0.5;
    lens.centre_ahead_mm = 60;
    tablerig_table_init(&table, sizeof table);
    table.width_mm = 1200;
    table.depth_mm = 800;
    table.height_mm = 760;
    tablerig_subject_init(&subject, sizeof subject);
    subject.width_mm = 300;
    subject.depth_mm = 200;
    subject.height_mm = 40;
    tablerig_bay_init(&bay, sizeof bay);
    bay.has_ceiling_mm = 1;
    bay.ceiling_mm = 2700;

    const struct {
        const char *name;
        TablerigSupport support;
        bool takes;
    } stands[] = {
        { "tripod", stand(1800, 450, 2.5), false },
        { "short boom", with_boom(stand(2400, 500, 7), 250, 3), false },
        { "light boom", with_boom(stand(2400, 280, 2), 900, 0), false },
        { "studio boom", with_boom(stand(2400, 600, 24), 900, 3), true },
    };

    int wrong = 0;
    for (const auto &entry : stands) {
        TablerigBrief brief;
        tablerig_brief_init(&brief, sizeof brief);
        brief.shot = &shot;
        brief.camera = &camera;
        brief.lens = &lens;
        brief.table = &table;
        brief.subject = &subject;
        brief.support = &entry.support;
        brief.bay = &bay;
        TablerigPlan plan;
        tablerig_plan_init(&plan, sizeof plan);
        TablerigFault fault;
        if (tablerig_plan(&brief, &plan, &fault) != TABLERIG_STATUS_OK) {
            std::printf("%s: %s %s\n", entry.name, fault.field, tablerig_status_text(fault.status));
            return 1;
        }
        bool takes = true;
        std::printf("%s: reach %.0f mm, factor %.2f\n", entry.name, plan.placement.reach_mm,
                    plan.stability.as_shot.factor);
        for (uint32_t i = 0; i < plan.caution_count; i++) {
            const TablerigCaution &caution = plan.cautions[i];
            takes = takes && caution.level != TABLERIG_LEVEL_STOP;
            if (caution.level != TABLERIG_LEVEL_NOTE)
                std::printf("  %s: %s (%.4g, limit %.4g %s)\n", tablerig_level_text(caution.level),
                            tablerig_caution_text(caution.code), caution.value, caution.limit,
                            tablerig_caution_unit(caution.code));
        }
        wrong += takes != entry.takes;
    }
    for (uint32_t i = 0; tablerig_overhead_caution(i) != nullptr; i++)
        std::printf("- %s\n", tablerig_overhead_caution(i));
    return wrong != 0;
}
