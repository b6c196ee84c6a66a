-- Everything here is invented: there is no such studio, customer or gear, and no figure describes a real product.

INSERT INTO bays (name, left_mm, right_mm, front_mm, back_mm, ceiling_mm, person_room_mm, floor_slope_percent,
                  table_width_mm, table_depth_mm, table_height_mm, table_underside) VALUES
    ('attic',    2000, 2000, 2500, 1800, 2150, 600, 0.5, 1200,  800, 760, 0),
    ('workshop', 3000, 3500, 4000, 2500, 3400, 600, 0.5, 1400,  800, 760, 0),
    ('yard',     NULL, NULL, NULL, 3000, NULL, 600, 2.0, 1800, 1000, 740, 0);

INSERT INTO stands (name, leg_count, lowest_pivot_mm, highest_pivot_mm, column_radius_mm, foot_radius_mm,
                    legs_top_mm, mass_kg, centre_height_mm, base_mass_kg, rated_load_kg, head_mass_kg,
                    head_pivot_below_socket_mm, head_rated_load_kg, boom_longest_reach_mm, boom_tail_mm,
                    boom_mass_kg, boom_counterweight_kg, boom_rated_load_kg) VALUES
    ('tripod',     3,  300, 1800, 20, 500, 1100,  3, 600, NULL, 10, 0.6, 85, 8, NULL, NULL, NULL, NULL, NULL),
    ('short boom', 3,  800, 2500, 18, 480,  800,  7, 600,   10, 15, 0.5, 90, 6,  300,  350,  1.1,    3,    5),
    ('light boom', 3,  800, 2500, 15, 300,  700,  3, 600, NULL,  8, 0.5, 90, 6,  900,  400,  1.4, NULL,    4),
    ('long boom',  4, 1000, 2700, 20, 600,  800, 14, 500,   25, 25, 0.5, 90, 6, 1200,  600,  1.8,    3,    5);

INSERT INTO lenses (name, focal_length_mm, least_f_number, most_f_number, mass_kg, centre_ahead_mm,
                    closest_focus_mm, front_from_sensor_mm) VALUES
    ('50 mm', 50, 1.8, 16, 0.35, 55,  450, 100),
    ('90 mm', 90, 2.8, 22, 0.60, 70,  500, 130);

INSERT INTO shots (name, elevation_deg, frame_width_mm, bearing_deg, f_number, subject_shape, subject_width_mm,
                   subject_depth_mm, subject_diameter_mm, subject_height_mm, camera_sensor_width_mm,
                   camera_sensor_height_mm, camera_socket_ahead_mm, camera_socket_below_mm,
                   camera_body_above_mm, camera_mass_kg) VALUES
    ('glazed plates from above', 90, 600, NULL,    8, 0,  500,  300, NULL,  25, 36, 24, 30, 45, 60, 0.7),
    ('jar of plum preserve',     20, 260,   15, NULL, 1, NULL, NULL,   85, 120, 36, 24, 30, 45, 60, 0.7);

INSERT INTO bookings (day, customer, bay, stand, lens) VALUES
    ('2031-09-12', 'a quince maker (invented)', 3,    NULL, NULL),
    ('2031-09-12', 'a quince maker (invented)', NULL, 4,    NULL),
    ('2031-09-13', 'a potter (invented)',       NULL, NULL, 1);
