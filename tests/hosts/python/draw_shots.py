"""Plans two shots of an invented preserves-and-pottery catalogue in a rented bay, prints as JSON what a front end
needs to draw them, and writes each as an SVG into the folder given: python3 draw_shots.py FOLDER. The gear is
invented too. Exits with 1 if a figure is not the known one."""

import json
import sys
from pathlib import Path

import pictures
import svg
from tablerig import Refused, cautions, lib, part, plan

CAMERA = part("camera", sensor_width_mm=36, sensor_height_mm=24, socket_ahead_mm=30, socket_below_mm=45,
              body_above_mm=60, body_behind_mm=40, mass_kg=0.7, centre_ahead_mm=10)
LONG = part("lens", focal_length_mm=90, least_f_number=2.8, most_f_number=22, mass_kg=0.6, centre_ahead_mm=70)
WIDE = part("lens", focal_length_mm=35, least_f_number=2.8, most_f_number=22, mass_kg=0.4, centre_ahead_mm=50)
TABLE = part("table", width_mm=1200, depth_mm=800, height_mm=760)
PLATE = part("subject", shape=lib.TABLERIG_SHAPE_ROUND, diameter_mm=200, height_mm=0)
JAR = part("subject", shape=lib.TABLERIG_SHAPE_ROUND, diameter_mm=85, height_mm=120)
HEAD = {"mass_kg": 0.5, "pivot_below_socket_mm": 90}
BOOM = {"longest_reach_mm": 1200, "tail_mm": 500, "mass_kg": 1.6, "counterweight_kg": 4}
STAND = part("support", leg_count=3, lowest_pivot_mm=900, highest_pivot_mm=3000, column_radius_mm=20,
             foot_radius_mm=500, legs_top_mm=900, mass_kg=7, centre_height_mm=600, base_mass_kg=10,
             base_height_mm=150, table_clearance_mm=20, head=HEAD, boom=BOOM)
TRIPOD = part("support", leg_count=3, lowest_pivot_mm=300, highest_pivot_mm=2000, column_radius_mm=20,
              foot_radius_mm=500, legs_top_mm=1200, mass_kg=3, centre_height_mm=600, head=HEAD)
BAY = part("bay", ceiling_mm=2750, person_room_mm=600)

OVERHEAD = part("shot", elevation_deg=90, frame_width_mm=600, aim_height_mm=0, f_number=8)
SLANTING = part("shot", elevation_deg=50, frame_width_mm=900, aim_height_mm=0, f_number=8)

wrong = 0


def expect(what, found, known, tolerance):
    """Known figures are given to the digits printed: half a unit of the last is the tolerance."""
    global wrong
    if not abs(found - known) <= tolerance:
        print(f"not so: {what} is {found}, not {known}", file=sys.stderr)
        wrong += 1


def rounded(found):
    """To a hundredth of a millimetre: nothing is drawn finer."""
    if isinstance(found, dict):
        return {name: rounded(value) for name, value in found.items()}
    if isinstance(found, list):
        return [rounded(value) for value in found]
    return found if found is None else round(found, 2)


def shown(name, shot, lens, support, subject, folder):
    """Plans a shot, prints its cautions and its drawing's data, and draws it."""
    planned = plan(shot=shot, camera=CAMERA, lens=lens, table=TABLE, subject=subject, support=support, bay=BAY)
    above = pictures.from_above(planned, TABLE, subject)
    picture = pictures.in_picture(planned, TABLE, subject)
    told = list(cautions(planned))
    print(json.dumps({"shot": name, "cautions": told, "from_above": rounded(above), "picture": rounded(picture)}))
    Path(folder, name + ".svg").write_text(svg.draw(f"{name} (invented)", above, picture, told), encoding="utf-8")

    view = pictures.view_of(planned)
    for corner, frame in zip(planned.footprint.corners, picture["frame"]):
        # The footprint's corners are the frame's: back through the lens they lie there again, but for rounding.
        right, up = pictures.project(view, [corner.x_mm, corner.y_mm, TABLE.height_mm])
        expect(f"{name}: a frame corner", abs(right - frame[0]) + abs(up - frame[1]), 0, 1e-9)
    rights, ups = zip(*picture["subject"])
    # Of 48 points around a rim the outermost lies at most half a step, 1 - cos 3.75 deg, inside the round's edge.
    slack = 0.0022 * max(max(rights) - min(rights), max(ups) - min(ups))
    for what, found, known in zip(
        ["left", "bottom", "right", "top"], [min(rights), min(ups), max(rights), max(ups)], picture["bounds"]
    ):
        expect(f"{name}: the subject's {what}", found, known, slack)
    return planned, told


folder = sys.argv[1] if len(sys.argv) > 1 else "."
planned, told = shown("plate-overhead", OVERHEAD, LONG, STAND, PLATE, folder)
expect("overhead: sensor distance", planned.lens.sensor_distance_mm, 1685.4, 0.05)
expect("overhead: pivot height", planned.pose.pivot.z_mm, 2415.4, 0.05)
expect("overhead: pivot beside the axis", planned.pose.pivot_from_aim_mm, 135.0, 0.05)
expect("overhead: cautions for a load overhead", any(line.startswith("overhead: ") for line in told), True, 0)

planned, told = shown("jar-slanting", SLANTING, WIDE, TRIPOD, JAR, folder)
expect("slanting: entrance pupil's height", planned.pose.pupil.z_mm, 1457.10, 0.005)
known = [(-352.49, -306.76), (352.49, -306.76), (622.09, 541.38), (-622.09, 541.38)]
for corner, (x, y) in zip(planned.footprint.corners, known):
    expect("slanting: a corner's x", corner.x_mm, x, 0.005)
    expect("slanting: a corner's y", corner.y_mm, y, 0.005)

try:
    plan(shot=part("shot", elevation_deg=91, frame_width_mm=600), camera=CAMERA, lens=LONG, table=TABLE,
         subject=JAR, support=STAND)
    expect("an elevation past the vertical is refused", False, True, 0)
except Refused as refused:
    print(refused, file=sys.stderr)
    expect("what is refused is named", (refused.field, refused.most) == ("shot.elevation_deg", 90), True, 0)

sys.exit(wrong != 0)
