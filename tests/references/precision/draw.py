"""Briefs drawn by chance over extremes, every number a double written in few digits."""

from lot import Lot

KINDS = (
    "studio", "overhead", "level", "macro", "far", "hyperfocal", "pupil", "reach", "tipping", "balanced",
)


SENSORS = ((36.0, 24.0), (23.5, 15.6), (17.3, 13.0), (43.8, 32.9), (6.17, 4.55), (120.0, 95.0), (24.0, 24.0))


def elevation(lot, kind):
    if kind == "overhead":
        near = lot.one(0.0, 0.0, 1e-9, 1e-9, 1e-8, 1e-6, 1e-4, 1e-2)
        return 90.0 - near * (lot.even(0.3, 1.0) if lot.chance(0.7) else 1.0)
    if kind == "level":
        return lot.one(0.0, 1e-9, -1e-9, 1e-4, lot.even(-60.0, 0.0), lot.even(-5.0, 5.0), -60.0)
    return lot.even(2.0, 89.5)


def glass(lot, kind, b):
    b["sensor_width_mm"], b["sensor_height_mm"] = lot.one(*SENSORS)
    b["hold"] = lot.one("across", "upright")
    shape = lot.one(None, None, (4.0, 5.0), (1.0, 1.0), (9.0, 16.0), (16.0, 9.0), (3.0, 2.0))
    b["aspect_width"], b["aspect_height"] = shape or (None, None)
    b["focal_length_mm"] = lot.log(8.0, 400.0)
    b["pupil_ratio"] = 1.0 if lot.chance(0.2) else lot.log(0.1, 8.0) if kind == "pupil" else lot.even(0.5, 1.6)
    b["principal_separation_mm"] = lot.one(0.0, lot.even(-40.0, 60.0))
    m = {
        "macro": lot.log(0.5, 5.0), "far": lot.log(1e-4, 1e-2),
    }.get(kind, lot.log(0.01, 0.5))
    side = b["sensor_height_mm"] if b["hold"] == "upright" else b["sensor_width_mm"]
    b["frame_width_mm"] = min(max(float(f"{side / m:.6g}"), 1.0), 100000.0)
    b["closest_focus_mm"] = b["largest_magnification"] = None
    if lot.chance(0.35):
        largest = lot.log(0.1, 1.0)
        at_closest = b["focal_length_mm"] * lot.even(0.6, 1.0)
        closest = at_closest * (1 + largest) ** 2 / largest + b["principal_separation_mm"]
        if 1.0 <= closest <= 100000.0 and largest <= 1.0:
            b["closest_focus_mm"], b["largest_magnification"] = float(f"{closest:.6g}"), largest
    b["least_f_number"], b["most_f_number"] = lot.one(1.4, 2.0, 2.8, 4.0), lot.one(11.0, 16.0, 22.0, 32.0)
    b["f_number"] = lot.maybe(0.5, lot.one(2.8, 4.0, 5.6, 8.0, 11.0, 16.0, lot.even(2.0, 30.0)))
    b["circle_of_confusion_mm"] = lot.maybe(0.5, lot.log(0.004, 0.2))
    b["front_from_sensor_mm"] = lot.maybe(0.7, lot.even(40.0, 300.0))
    b["stack_overlap"] = lot.one(0.3, lot.even(0.0, 0.9))


def scene(lot, kind, b):
    big = kind == "reach"
    b["table_width_mm"] = lot.even(2000.0, 20000.0) if big else lot.even(300.0, 3000.0)
    b["table_depth_mm"] = lot.even(2000.0, 20000.0) if big else lot.even(300.0, 2000.0)
    b["table_height_mm"] = lot.one(0.0, 750.0, lot.even(300.0, 1100.0))
    b["underside"] = lot.one("open", "closed")
    b["shape"] = lot.one("box", "round")
    size = min(max(b["frame_width_mm"] * lot.log(0.05, 0.8), 0.5), 4000.0)
    b["subject_width_mm"], b["subject_depth_mm"] = lot.even(0.3 * size, size), lot.even(0.3 * size, size)
    b["subject_diameter_mm"] = lot.even(0.3 * size, size)
    b["subject_height_mm"] = min(lot.log(0.02, 2.0) * size, 4000.0) if lot.chance(0.95) else 0.0
    b["subject_height_mm"] = float(f"{b['subject_height_mm']:.6g}")
    b["vessel_inside_diameter_mm"] = b["vessel_contents_below_rim_mm"] = None
    if lot.chance(0.5) and b["subject_height_mm"] > 0:
        outer = b["subject_diameter_mm"] if b["shape"] == "round" else min(b["subject_width_mm"], b["subject_depth_mm"])
        b["vessel_inside_diameter_mm"] = lot.even(0.5 * outer, 0.99 * outer, 5)
        b["vessel_contents_below_rim_mm"] = float(f"{b['subject_height_mm'] * lot.even(0.01, 0.95):.5g}")
    b["judged_by"] = lot.one("form", "form", "top_detail", "side_layers", "contents", "clear_layers",
                             "decorated_glass", "laid_table")
    for side in "left", "right", "front", "back":
        b[side + "_mm"] = lot.maybe(0.6, lot.even(500.0, 12000.0))
    b["ceiling_mm"] = lot.maybe(0.7, lot.even(1800.0, 6000.0))
    b["ceiling_clearance_mm"] = lot.even(0.0, 200.0)


def shot(lot, kind, b):
    b["elevation_deg"] = elevation(lot, kind)
    b["bearing_deg"] = lot.one(0.0, 90.0, 180.0, 270.0, lot.even(-360.0, 360.0), lot.even(0.0, 360.0))
    b["fill_width"] = b["fill_height"] = None
    if kind == "pupil" and lot.chance(0.8):
        b["frame_width_mm"] = None
        b[lot.one("fill_width", "fill_height")] = lot.even(0.1, 0.95)
    far = 0.4 if kind == "reach" else 0.3
    b["aim_x_mm"] = lot.one(0.0, lot.even(-far, far)) * b["table_width_mm"]
    b["aim_y_mm"] = lot.one(0.0, lot.even(-far, far)) * b["table_depth_mm"]
    b["aim_x_mm"], b["aim_y_mm"] = float(f"{b['aim_x_mm']:.6g}"), float(f"{b['aim_y_mm']:.6g}")
    b["aim_height_mm"] = lot.maybe(0.4, float(f"{lot.even(-0.1, 1.2) * b['subject_height_mm']:.6g}"))
    b["backdrop_behind_mm"] = lot.maybe(0.5, lot.log(50.0, 5000.0))
    b["side"] = lot.maybe(0.3, lot.one("front", "right", "back", "left"))
    b["elevation_tolerance_deg"] = lot.log(0.05, 10.0)
    b["frame_width_tolerance"] = lot.log(0.001, 0.3)
    b["roll_tolerance_deg"] = lot.even(0.01, 5.0)


def body(lot, kind, b):
    b["socket_ahead_mm"], b["socket_below_mm"] = lot.even(-20.0, 150.0), lot.even(0.0, 80.0)
    b["body_above_mm"], b["body_behind_mm"] = lot.even(20.0, 120.0), lot.even(0.0, 80.0)
    b["camera_mass_kg"], b["lens_mass_kg"] = lot.log(0.1, 8.0), lot.log(0.05, 5.0)
    b["camera_centre_ahead_mm"], b["lens_centre_ahead_mm"] = lot.even(-10.0, 40.0), lot.even(20.0, 150.0)
    b["head_mass_kg"], b["pivot_below_socket_mm"] = lot.log(0.1, 3.0), lot.even(0.0, 150.0)


def support(lot, kind, b):
    b["column_radius_mm"] = lot.even(10.0, 60.0)
    b["leg_count"] = lot.one(3, 3, 4, 5, 6, 8)
    b["foot_radius_mm"] = lot.even(100.0, 1500.0)
    b["legs_top_mm"] = lot.even(300.0, 1500.0)
    b["first_leg_deg"] = lot.maybe(0.6, lot.even(-180.0, 180.0))
    b["table_clearance_mm"] = lot.even(0.0, 100.0)
    b["support_mass_kg"], b["centre_height_mm"] = lot.log(1.0, 60.0), lot.even(200.0, 1200.0)
    b["base_mass_kg"], b["base_height_mm"] = lot.one(0.0, lot.log(1.0, 100.0)), lot.even(0.0, 300.0)
    for i in range(1, 5):
        b[f"bag{i}_kg"] = lot.maybe(0.3, lot.log(1.0, 20.0)) or 0.0
        b[f"bag{i}_out_mm"], b[f"bag{i}_direction_deg"] = lot.even(0.0, 800.0), lot.even(-360.0, 360.0)
        b[f"bag{i}_height_mm"] = lot.even(0.0, 900.0)
    b["boom"] = lot.chance(0.85)
    b["longest_reach_mm"] = lot.even(5000.0, 10000.0) if kind == "reach" else lot.even(300.0, 3000.0)
    b["tail_mm"] = lot.even(0.0, 3000.0 if kind == "reach" else 1200.0)
    b["boom_mass_kg"], b["pitch_deg"] = lot.log(0.2, 20.0), lot.one(0.0, lot.even(-45.0, 45.0))
    b["counterweight_kg"] = lot.one(0.0, lot.log(0.5, 40.0))
    b["counterweight_out_mm"] = lot.maybe(0.4, float(f"{b['tail_mm'] * lot.even(0.1, 1.0):.6g}"))
    b["bending_stiffness_n_m2"] = b["tube_outside_mm"] = None
    b["tube_inside_mm"] = b["tube_modulus_n_per_mm2"] = None
    if lot.chance(0.4):
        b["bending_stiffness_n_m2"] = lot.log(100.0, 1e5)
    elif lot.chance(0.8):
        b["tube_outside_mm"] = lot.even(15.0, 80.0)
        b["tube_inside_mm"] = float(f"{b['tube_outside_mm'] * lot.even(0.0, 0.98):.6g}")
        b["tube_modulus_n_per_mm2"] = lot.one(69000.0, 207000.0, 127000.0)
    b["damping_ratio"], b["settled_share"] = lot.maybe(0.6, lot.log(0.001, 0.5)), lot.log(1e-4, 0.5)
    b["wanted_factor"] = lot.one(1.0, 1.5, 2.0, lot.even(1.0, 4.0))
    for state in "as_shot", "camera_off", "counterweight_off":
        b["hold_" + state] = lot.chance(0.6)


def brief(kind, seed):
    lot = Lot(seed)
    b = {}
    glass(lot, kind, b)
    scene(lot, kind, b)
    shot(lot, kind, b)
    body(lot, kind, b)
    support(lot, kind, b)
    b["near"] = lot.log(1e-9, 1e-1)
    b["near"] *= lot.one(1, -1)
    return b
