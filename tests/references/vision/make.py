"""Writes scenes.tsv: `python make.py FOLDER`. OpenCV projects each scene; needs opencv-python-headless.

Only the distance of the entrance pupil, s = f (1/m + 1/p), is worked out here; everything after it is
OpenCV's: a camera of x right, y down, z ahead, its picture 6000 by 4000 pixels, which need not be square.
"""

import math
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1]))

import cv2
import numpy as np

from lot import Lot
from table import Outcome, write

COUNT = 600
WIDE, HIGH = 6000, 4000
RASTER = 800
SENSORS = ((36.0, 24.0), (23.5, 15.6), (17.3, 13.0), (43.8, 32.9), (13.2, 8.8))
SHAPES = (None, None, (4.0, 5.0), (1.0, 1.0), (9.0, 16.0), (16.0, 9.0))
DIGITS = 15


def draw(number):
    lot = Lot(f"vision {number}")
    b = {"case": number}
    b["sensor_width_mm"], b["sensor_height_mm"] = lot.one(*SENSORS)
    b["hold"] = ("across", "upright")[number % 2]
    b["aspect_width"], b["aspect_height"] = lot.one(*SHAPES) or (None, None)
    b["focal_length_mm"], b["pupil_ratio"] = lot.log(10.0, 300.0), lot.even(0.4, 2.5)
    m = lot.log(2e-3, 2.0)
    b["frame_width_mm"] = float(f"{min(max(b['sensor_width_mm'] / m, 5.0), 9000.0):.6g}")
    b["elevation_deg"] = lot.one(90.0, 0.0, lot.even(-60.0, 0.0), *[lot.even(0.0, 90.0) for _ in range(5)])
    b["bearing_deg"] = float((number * 7) % 360) if number % 3 else lot.even(-360.0, 360.0)
    b["table_width_mm"], b["table_depth_mm"] = lot.even(300.0, 4000.0), lot.even(300.0, 3000.0)
    b["table_height_mm"] = lot.even(0.0, 1100.0)
    b["aim_x_mm"] = float(f"{lot.even(-0.4, 0.4) * b['table_width_mm']:.6g}")
    b["aim_y_mm"] = float(f"{lot.even(-0.4, 0.4) * b['table_depth_mm']:.6g}")
    b["aim_height_mm"] = float(f"{lot.even(0.0, 0.5) * b['frame_width_mm']:.6g}")
    for side in "width", "depth", "height":
        b[f"subject_{side}_mm"] = float(f"{min(max(lot.even(0.05, 0.8) * b['frame_width_mm'], 0.1), 4000.0):.6g}")
    return b


def used_area(b):
    w, h = b["sensor_width_mm"], b["sensor_height_mm"]
    if b["hold"] == "upright":
        w, h = h, w
    if b["aspect_width"] is None:
        return w, h
    shape = b["aspect_width"] / b["aspect_height"]
    return (w, w / shape) if w / shape <= h else (h * shape, h)


class Scene:
    def __init__(self, b):
        self.b = b
        w, h = used_area(b)
        m = w / b["frame_width_mm"]
        self.s = b["focal_length_mm"] * (1 / m + 1 / b["pupil_ratio"])
        self.size = (WIDE, HIGH)
        self.aperture = (w, h)
        self.per_pixel = np.array([b["frame_width_mm"] / WIDE, h / m / HIGH])
        across, upright = self.s / self.per_pixel
        self.matrix = np.array([[across, 0, WIDE / 2], [0, upright, HIGH / 2], [0, 0, 1]])
        e, at = math.radians(b["elevation_deg"]), math.radians(b["bearing_deg"])
        # From a camera that looks along +y from the front: tip it down by the elevation, then walk round.
        start = np.array([[1.0, 0, 0], [0, 0, -1], [0, 1, 0]])
        tip = cv2.Rodrigues(np.array([e, 0.0, 0.0]))[0]
        walk = cv2.Rodrigues(np.array([0.0, 0.0, -at]))[0]
        self.rotation = tip @ start @ walk
        self.aim = np.array([b["aim_x_mm"], b["aim_y_mm"], b["table_height_mm"] + b["aim_height_mm"]])
        # The aim point lies s ahead on the axis.
        self.shift = np.array([0, 0, self.s]) - self.rotation @ self.aim
        self.turn = cv2.Rodrigues(self.rotation)[0]

    def project(self, points):
        pixels, _ = cv2.projectPoints(np.array(points), self.turn, self.shift, self.matrix, None)
        return pixels.reshape(-1, 2)

    def depth(self, point):
        return (self.rotation @ point + self.shift)[2]

    def homography(self):
        """From the table's plane to pixels."""
        at_height = self.shift + self.rotation[:, 2] * self.b["table_height_mm"]
        return self.matrix @ np.column_stack([self.rotation[:, 0], self.rotation[:, 1], at_height])

    def falls(self, pixel):
        ray = self.rotation.T @ np.linalg.inv(self.matrix) @ np.array([pixel[0], pixel[1], 1.0])
        return -ray[2]


def subject_corners(scene):
    b = scene.b
    foot = scene.aim - np.array([0, 0, b["aim_height_mm"]])
    w, d, h = b["subject_width_mm"] / 2, b["subject_depth_mm"] / 2, b["subject_height_mm"]
    return [foot + np.array([x, y, z]) for x in (-w, w) for y in (-d, d) for z in (0.0, h)]


def frame_on_table(scene, out, above):
    w, h = scene.size
    corners = {"near_left": (0, h), "near_right": (w, h), "far_right": (w, 0), "far_left": (0, 0)}
    back = cv2.invert(scene.homography())[1]
    for name, pixel in corners.items():
        x = y = None
        fall = scene.falls(pixel)
        if above > 0 and fall > 0:
            x, y = cv2.perspectiveTransform(np.array([[pixel]], dtype=float), back)[0, 0]
        # How much nearer to the horizon than straight down: so many digits are lost.
        out[name + "_fall_scale"] = Outcome(abs(fall))
        out[name + "_x_mm"], out[name + "_y_mm"] = (None if v is None else Outcome(v, DIGITS) for v in (x, y))


def coverage(scene, out, above):
    """Pixel centres that lie on the table; the error is half the pixels beside its edges."""
    if above <= 0:
        out["table_share"] = out["table_share_error"] = None
        return
    b, back = scene.b, cv2.invert(scene.homography())[1]
    x = (np.arange(RASTER) + 0.5) * WIDE / RASTER
    y = (np.arange(RASTER) + 0.5) * HIGH / RASTER
    grid = np.stack(np.meshgrid(x, y), axis=-1).reshape(1, -1, 2)
    on = cv2.perspectiveTransform(grid, back)[0]
    ray_z = (np.hstack([grid[0], np.ones((grid.shape[1], 1))]) @ np.linalg.inv(scene.matrix).T) @ scene.rotation[:, 2]
    hit = (ray_z < 0) & (abs(on[:, 0]) <= b["table_width_mm"] / 2) & (abs(on[:, 1]) <= b["table_depth_mm"] / 2)
    hit = hit.reshape(RASTER, RASTER)
    edge = np.zeros_like(hit)
    for axis in 0, 1:
        differs = np.diff(hit, axis=axis) != 0
        edge[tuple(slice(None, -1) if i == axis else slice(None) for i in (0, 1))] |= differs
        edge[tuple(slice(1, None) if i == axis else slice(None) for i in (0, 1))] |= differs
    out["table_share"] = Outcome(hit.mean(), 8)
    out["table_share_error"] = Outcome(0.5 * edge.mean() + 1 / hit.size, 3)


def recover(scene, points, pixels, out):
    """Pose from the projected points alone."""
    _, turn, shift = cv2.solvePnP(np.array(points), pixels, scene.matrix, None, flags=cv2.SOLVEPNP_SQPNP)
    until = (cv2.TERM_CRITERIA_EPS + cv2.TERM_CRITERIA_COUNT, 200, 1e-16)
    turn, shift = cv2.solvePnPRefineLM(np.array(points), pixels, scene.matrix, None, turn, shift, criteria=until)
    rotation = cv2.Rodrigues(turn)[0]
    pupil = -rotation.T @ shift.ravel()
    ahead = rotation[2]
    out["solved_elevation_deg"] = Outcome(math.degrees(math.atan2(-ahead[2], math.hypot(ahead[0], ahead[1]))), 10)
    out["solved_pupil_height_mm"] = Outcome(pupil[2], 10)


def case(number):
    b = draw(number)
    scene, out = Scene(b), {}
    points = subject_corners(scene)
    if min(scene.depth(p) for p in points) < 0.05 * scene.s:
        return None
    pixels = scene.project(points)
    middle = np.array(scene.size) / 2
    for i, (x, y) in enumerate((pixels - middle) * scene.per_pixel):
        out[f"corner{i + 1}_right_mm"], out[f"corner{i + 1}_up_mm"] = Outcome(x, DIGITS), Outcome(-y, DIGITS)
    pupil = -scene.rotation.T @ scene.shift
    for part, value in zip("xyz", pupil):
        out[f"pupil_{part}_mm"] = Outcome(value, DIGITS)
    above = pupil[2] - b["table_height_mm"]
    frame_on_table(scene, out, above)
    across, upright = cv2.calibrationMatrixValues(scene.matrix, scene.size, *scene.aperture)[:2]
    out["horizontal_deg"], out["vertical_deg"] = Outcome(across, DIGITS), Outcome(upright, DIGITS)
    coverage(scene, out, above)
    recover(scene, points, pixels, out)
    return {**b, **out}


def main(folder):
    rows, number = [], 0
    while len(rows) < COUNT:
        row = case(number)
        if row:
            rows.append(row)
        number += 1
    write(Path(folder) / "scenes.tsv", rows)


if __name__ == "__main__":
    main(sys.argv[1])
