/* Reads what a shot is to be shot with. The tables below say which column fills which field. */
#include "gear.h"
#include "row.h"
#include <stdio.h>

static const char *const NAMES[GEAR_TABLES] = { "shots", "bays", "stands", "lenses" };

static const struct field SHOT[] = {
    NUMBER(TablerigShot, "elevation_deg", elevation_deg),
    NUMBER(TablerigShot, "frame_width_mm", frame_width_mm),
    NUMBER(TablerigShot, "bearing_deg", bearing_deg),
    MAYBE(TablerigShot, "f_number", f_number, has_f_number),
};
static const struct field SUBJECT[] = {
    WHOLE(TablerigSubject, "subject_shape", shape),
    NUMBER(TablerigSubject, "subject_width_mm", width_mm),
    NUMBER(TablerigSubject, "subject_depth_mm", depth_mm),
    NUMBER(TablerigSubject, "subject_diameter_mm", diameter_mm),
    NUMBER(TablerigSubject, "subject_height_mm", height_mm),
};
static const struct field CAMERA[] = {
    NUMBER(TablerigCamera, "camera_sensor_width_mm", sensor_width_mm),
    NUMBER(TablerigCamera, "camera_sensor_height_mm", sensor_height_mm),
    NUMBER(TablerigCamera, "camera_socket_ahead_mm", socket_ahead_mm),
    NUMBER(TablerigCamera, "camera_socket_below_mm", socket_below_mm),
    NUMBER(TablerigCamera, "camera_body_above_mm", body_above_mm),
    NUMBER(TablerigCamera, "camera_mass_kg", mass_kg),
};
static const struct field BAY[] = {
    MAYBE(TablerigBay, "left_mm", left_mm, has_left_mm),
    MAYBE(TablerigBay, "right_mm", right_mm, has_right_mm),
    MAYBE(TablerigBay, "front_mm", front_mm, has_front_mm),
    MAYBE(TablerigBay, "back_mm", back_mm, has_back_mm),
    MAYBE(TablerigBay, "ceiling_mm", ceiling_mm, has_ceiling_mm),
    NUMBER(TablerigBay, "person_room_mm", person_room_mm),
    NUMBER(TablerigBay, "floor_slope_percent", floor_slope_percent),
};
static const struct field TABLE[] = {
    NUMBER(TablerigTable, "table_width_mm", width_mm),
    NUMBER(TablerigTable, "table_depth_mm", depth_mm),
    NUMBER(TablerigTable, "table_height_mm", height_mm),
    WHOLE(TablerigTable, "table_underside", underside),
};
static const struct field STAND[] = {
    WHOLE(TablerigSupport, "leg_count", leg_count),
    NUMBER(TablerigSupport, "lowest_pivot_mm", lowest_pivot_mm),
    NUMBER(TablerigSupport, "highest_pivot_mm", highest_pivot_mm),
    NUMBER(TablerigSupport, "column_radius_mm", column_radius_mm),
    NUMBER(TablerigSupport, "foot_radius_mm", foot_radius_mm),
    NUMBER(TablerigSupport, "legs_top_mm", legs_top_mm),
    NUMBER(TablerigSupport, "mass_kg", mass_kg),
    NUMBER(TablerigSupport, "centre_height_mm", centre_height_mm),
    NUMBER(TablerigSupport, "base_mass_kg", base_mass_kg),
    MAYBE(TablerigSupport, "rated_load_kg", rated_load_kg, has_rated_load_kg),
    NUMBER(TablerigSupport, "head_mass_kg", head.mass_kg),
    NUMBER(TablerigSupport, "head_pivot_below_socket_mm", head.pivot_below_socket_mm),
    MAYBE(TablerigSupport, "head_rated_load_kg", head.rated_load_kg, head.has_rated_load_kg),
    MAYBE(TablerigSupport, "boom_longest_reach_mm", boom.longest_reach_mm, has_boom),
    NUMBER(TablerigSupport, "boom_tail_mm", boom.tail_mm),
    NUMBER(TablerigSupport, "boom_mass_kg", boom.mass_kg),
    NUMBER(TablerigSupport, "boom_counterweight_kg", boom.counterweight_kg),
    MAYBE(TablerigSupport, "boom_rated_load_kg", boom.rated_load_kg, boom.has_rated_load_kg),
};
static const struct field LENS[] = {
    NUMBER(TablerigLens, "focal_length_mm", focal_length_mm),
    NUMBER(TablerigLens, "least_f_number", least_f_number),
    NUMBER(TablerigLens, "most_f_number", most_f_number),
    NUMBER(TablerigLens, "mass_kg", mass_kg),
    NUMBER(TablerigLens, "centre_ahead_mm", centre_ahead_mm),
    MAYBE(TablerigLens, "closest_focus_mm", closest_focus_mm, has_closest_focus_mm),
    MAYBE(TablerigLens, "front_from_sensor_mm", front_from_sensor_mm, has_front_from_sensor_mm),
};

int gear_prepare(struct gear_rows *rows, sqlite3 *db)
{
    char sql[80];
    for (int i = 0; i < GEAR_TABLES; i++) {
        snprintf(sql, sizeof sql, "SELECT * FROM %s WHERE id = ?1", NAMES[i]);
        int code = sqlite3_prepare_v3(db, sql, -1, SQLITE_PREPARE_PERSISTENT, &rows->by_id[i], NULL);
        if (code != SQLITE_OK)
            return code;
    }
    return SQLITE_OK;
}

void gear_finish(struct gear_rows *rows)
{
    for (int i = 0; i < GEAR_TABLES; i++)
        sqlite3_finalize(rows->by_id[i]);
}

const char *gear_read(struct gear_rows *rows, const sqlite3_int64 ids[GEAR_TABLES], struct gear *gear,
                      char text[200])
{
    const struct part shot[] = {
        PART(&gear->shot, SHOT), PART(&gear->subject, SUBJECT), PART(&gear->camera, CAMERA)
    };
    const struct part bay[] = { PART(&gear->bay, BAY), PART(&gear->table, TABLE) };
    const struct part stand[] = { PART(&gear->stand, STAND) };
    const struct part lens[] = { PART(&gear->lens, LENS) };
    const struct { const struct part *parts; size_t count; } filled[GEAR_TABLES] = {
        { shot, 3 }, { bay, 2 }, { stand, 1 }, { lens, 1 }
    };

    tablerig_shot_init(&gear->shot, sizeof gear->shot);
    tablerig_subject_init(&gear->subject, sizeof gear->subject);
    tablerig_camera_init(&gear->camera, sizeof gear->camera);
    tablerig_bay_init(&gear->bay, sizeof gear->bay);
    tablerig_table_init(&gear->table, sizeof gear->table);
    tablerig_support_init(&gear->stand, sizeof gear->stand);
    tablerig_lens_init(&gear->lens, sizeof gear->lens);
    for (int i = 0; i < GEAR_TABLES; i++) {
        sqlite3_stmt *row = rows->by_id[i];
        const char *unknown = NULL;
        sqlite3_bind_int64(row, 1, ids[i]);
        int code = sqlite3_step(row);
        if (code == SQLITE_ROW)
            unknown = row_fill(row, filled[i].parts, filled[i].count);
        if (code != SQLITE_ROW)
            snprintf(text, 200, "%s has no row %lld", NAMES[i], (long long)ids[i]);
        else if (unknown != NULL)
            snprintf(text, 200, "%s.%s fills no field", NAMES[i], unknown);
        sqlite3_reset(row);
        if (code != SQLITE_ROW || unknown != NULL)
            return text;
    }
    tablerig_brief_init(&gear->brief, sizeof gear->brief);
    gear->brief.shot = &gear->shot;
    gear->brief.subject = &gear->subject;
    gear->brief.camera = &gear->camera;
    gear->brief.bay = &gear->bay;
    gear->brief.table = &gear->table;
    gear->brief.support = &gear->stand;
    gear->brief.lens = &gear->lens;
    return NULL;
}
