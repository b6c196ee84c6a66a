"""Writes settings.tsv: `python make.py FOLDER`. Uncertainty by 100 000 samples of NumPy; needs numpy.

What was measured on the set is drawn around its value, and elevation and frame width are worked out for each
draw: straight geometry, and the thin-lens quadratic (or its cubic) solved by NumPy.
"""

import math
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1]))

import numpy as np

from lot import Lot
from table import Outcome, write

COUNT, SAMPLES = 60, 100_000
KINDS = ("height_and_distance", "tape_and_inclinometer", "height_and_tape")


def magnification(b, distance):
    """Of each distance; bisection on D(m), which falls as m grows to the lens's largest."""
    f, k = b["focal_length_mm"], b["principal_separation_mm"]
    if b["closest_focus_mm"] is None:
        d = distance - k
        return ((d - 2 * f) - np.sqrt((d - 2 * f) ** 2 - 4 * f * f)) / (2 * f)
    most = b["largest_magnification"]
    closest = (b["closest_focus_mm"] - k) * most / (1 + most) ** 2
    low, high = np.full_like(distance, 1e-6), np.full_like(distance, most)
    for _ in range(60):
        m = (low + high) / 2
        too_far = (f + (closest - f) * m / most) * (1 + m) ** 2 / m + k > distance
        low, high = np.where(too_far, m, low), np.where(too_far, high, m)
    return (low + high) / 2


def case(number):
    lot = Lot(f"sampling {number}")
    kind = KINDS[number % 3]
    b = {"case": number, "kind": kind, "used_width_mm": lot.one(36.0, 24.0, 23.5)}
    b["focal_length_mm"], b["principal_separation_mm"] = lot.even(30.0, 120.0), lot.one(0.0, lot.even(-10.0, 20.0))
    b["closest_focus_mm"] = b["largest_magnification"] = None
    m = lot.log(0.02, 0.3)
    if number % 2:
        b["largest_magnification"] = lot.even(0.5, 1.0)
        most = b["largest_magnification"]
        closest = b["focal_length_mm"] * lot.even(0.7, 0.95) * (1 + most) ** 2 / most + b["principal_separation_mm"]
        b["closest_focus_mm"] = float(f"{closest:.6g}")
    distance = b["focal_length_mm"] * (1 + m) ** 2 / m
    elevation = lot.even(0.0, 80.0) if kind == "height_and_tape" else lot.even(-30.0, 90.0)
    aim = lot.even(700.0, 900.0)
    if aim + distance * math.sin(math.radians(elevation)) < 100:
        elevation = -elevation
    b["sensor_height_mm"] = float(f"{aim + distance * math.sin(math.radians(elevation)):.6g}")
    b["aim_height_above_floor_mm"] = aim
    b["horizontal_distance_mm"] = float(f"{distance * math.cos(math.radians(elevation)):.6g}")
    b["tape_mm"], b["inclinometer_deg"] = float(f"{distance:.6g}"), elevation
    # Small against the distance, so that first order is what there is to see.
    for name in "sensor_height", "aim_height", "horizontal", "tape":
        b[f"u_{name}_mm"] = float(f"{distance * lot.log(2e-4, 2e-3):.3g}")
    b["u_inclinometer_deg"] = lot.even(0.05, 0.5, 3)
    random = np.random.Generator(np.random.PCG64(20_000 + number))
    about = lambda value, spread: value + spread * random.standard_normal(SAMPLES)
    top, low = about(b["sensor_height_mm"], b["u_sensor_height_mm"]), about(aim, b["u_aim_height_mm"])
    level, tape = about(b["horizontal_distance_mm"], b["u_horizontal_mm"]), about(b["tape_mm"], b["u_tape_mm"])
    angle = about(elevation, b["u_inclinometer_deg"])
    if kind == "height_and_distance":
        found, long = np.degrees(np.arctan2(top - low, level)), np.hypot(top - low, level)
    elif kind == "tape_and_inclinometer":
        found, long = angle, tape
    else:
        found, long = np.degrees(np.arcsin((top - low) / tape)), tape
    width = b["used_width_mm"] / magnification(b, long)
    for name, values in ("elevation_deg", found), ("frame_width_mm", width), ("sensor_distance_mm", long):
        b[f"mean_{name}"], b[f"spread_{name}"] = Outcome(values.mean(), 9), Outcome(values.std(ddof=1), 9)
    return b


if __name__ == "__main__":
    write(Path(sys.argv[1]) / "settings.tsv", [case(n) for n in range(COUNT)])
