-- A rental studio's bookings. Columns are named as the fields of tablerig.h that they fill, with the part's name
-- before them where a row holds several parts; NULL leaves a field at its default, or out.

CREATE TABLE bays (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL UNIQUE,
    left_mm REAL,               -- from the table's centre; NULL: no wall there
    right_mm REAL,
    front_mm REAL,
    back_mm REAL,
    ceiling_mm REAL,
    person_room_mm REAL,
    floor_slope_percent REAL,
    table_width_mm REAL NOT NULL,
    table_depth_mm REAL NOT NULL,
    table_height_mm REAL NOT NULL,
    table_underside INTEGER     -- 0 open, 1 closed
) STRICT;

CREATE TABLE stands (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL UNIQUE,
    leg_count INTEGER NOT NULL,
    lowest_pivot_mm REAL NOT NULL,
    highest_pivot_mm REAL NOT NULL,
    column_radius_mm REAL NOT NULL,
    foot_radius_mm REAL NOT NULL,
    legs_top_mm REAL NOT NULL,
    mass_kg REAL NOT NULL,
    centre_height_mm REAL NOT NULL,
    base_mass_kg REAL,
    rated_load_kg REAL,
    head_mass_kg REAL NOT NULL,
    head_pivot_below_socket_mm REAL NOT NULL,
    head_rated_load_kg REAL,
    boom_longest_reach_mm REAL, -- NULL: no boom
    boom_tail_mm REAL,
    boom_mass_kg REAL,
    boom_counterweight_kg REAL,
    boom_rated_load_kg REAL
) STRICT;

CREATE TABLE lenses (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL UNIQUE,
    focal_length_mm REAL NOT NULL,
    least_f_number REAL NOT NULL,
    most_f_number REAL NOT NULL,
    mass_kg REAL NOT NULL,
    centre_ahead_mm REAL NOT NULL,
    closest_focus_mm REAL,
    front_from_sensor_mm REAL
) STRICT;

-- What a customer wants pictured, with the customer's own camera.
CREATE TABLE shots (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL UNIQUE,
    elevation_deg REAL NOT NULL,
    frame_width_mm REAL NOT NULL,
    bearing_deg REAL,
    f_number REAL,
    subject_shape INTEGER NOT NULL, -- 0 box, 1 round
    subject_width_mm REAL,
    subject_depth_mm REAL,
    subject_diameter_mm REAL,
    subject_height_mm REAL NOT NULL,
    camera_sensor_width_mm REAL NOT NULL,
    camera_sensor_height_mm REAL NOT NULL,
    camera_socket_ahead_mm REAL NOT NULL,
    camera_socket_below_mm REAL NOT NULL,
    camera_body_above_mm REAL NOT NULL,
    camera_mass_kg REAL NOT NULL
) STRICT;

-- One row for each thing that is out on a day.
CREATE TABLE bookings (
    day TEXT NOT NULL,          -- YYYY-MM-DD
    customer TEXT NOT NULL,
    bay INTEGER REFERENCES bays,
    stand INTEGER REFERENCES stands,
    lens INTEGER REFERENCES lenses,
    CHECK ((bay IS NOT NULL) + (stand IS NOT NULL) + (lens IS NOT NULL) = 1),
    UNIQUE (day, bay),
    UNIQUE (day, stand),
    UNIQUE (day, lens)
) STRICT;
