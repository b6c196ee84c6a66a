"""One brief through the whole model, at 50 digits."""

from mpmath import mp, mpf

import ballast
import glass
import place
import rig
import setting
import subject
from numbers50 import Fence, over


def exact(brief):
    """The brief's doubles as exact numbers; counts, words and flags as they are."""
    return {k: mpf(v) if isinstance(v, float) else v for k, v in brief.items()}


def seen_at(b, width, used):
    m = used[0] / width
    s = glass.pupil_distance(b, m)
    return place.Camera(b, s, mpf(0), width, used[1] / m)


def frame_width(b, used):
    """The frame width, or the one at which the subject fills its share."""
    if b["frame_width_mm"] is not None:
        return b["frame_width_mm"]
    part, share = (0, b["fill_width"]) if b["fill_width"] is not None else (2, b["fill_height"])

    def spare(width):
        camera = seen_at(b, width, used)
        nearest, _ = subject.depth(b, camera)
        if nearest >= camera.s:
            return None
        found = subject.bounds(b, camera)
        return (found[part + 1] - found[part]) / (camera.width if part == 0 else camera.height) - share

    low, high = mpf(1), mpf(100000)
    if spare(high) is None or spare(high) >= 0 or (spare(low) is not None and spare(low) <= 0):
        raise Fence("no frame width")
    for _ in range(30):
        middle = mp.sqrt(low * high)
        value = spare(middle)
        if value is None or value > 0:
            low = middle
        else:
            high = middle
    if spare(low) is None:
        raise Fence("beside the pupil")
    return mp.findroot(spare, (low, high), solver="illinois", tol=mpf("1e-80"), maxsteps=200, verify=False)


def plan(brief):
    b = exact(brief)
    out = {}
    used = glass.used_area(b)
    width = frame_width(b, used)
    if not 1 <= width <= 100000:
        raise Fence("frame width")
    m = used[0] / width
    height = used[1] / m
    out["used_width_mm"], out["used_height_mm"] = used
    out["frame_width_mm"], out["frame_height_mm"] = width, height
    s = glass.lens(b, m, out)
    if b["largest_magnification"] is not None:
        over(m - b["largest_magnification"], m)
    distance = out["sensor_distance_mm"]
    glass.field_angles(s, width, height, out)
    camera = place.Camera(b, s, distance, width, height)
    out["aim_height_mm"] = camera.aim_height
    place.pose(b, camera, distance, out)
    # The lengths that places in the room are sums of, for the size of their error.
    out["room_scale"] = max(distance, s, abs(b["aim_x_mm"]), abs(b["aim_y_mm"]), camera.aim[2])
    table = max(b["table_width_mm"], b["table_depth_mm"])
    walls = [b[k + "_mm"] or mpf(0) for k in ("left", "right", "front", "back", "ceiling")]
    out["bay_scale"] = max(out["room_scale"], table, *walls)
    out["frame_scale"] = max(width, height)
    place.footprint(b, camera, out)
    place.backdrop(b, camera, out)
    nearest, farthest = subject.depth(b, camera)
    out["nearest_mm"], out["farthest_mm"] = nearest, farthest
    out["depth_scale"] = nearest + farthest
    subject.outline(b, camera, out)
    subject.shares(b, camera, out)
    glass.focus(b, m, s, nearest, farthest, out)
    glass.tilt(b, m, camera.aim_height, out)
    place.perspective(b, camera, nearest, farthest, out)
    setting.advice(b, out)
    placed = rig.Placed(b, camera, out)
    rig.bay_room(b, camera, placed, out)
    found = rig.masses(b, camera, placed, out)
    keep = rig.stability(b, camera, placed, found, out)
    ballast.counterweight(b, placed, found, out)
    ballast.base(b, placed, keep, out)
    ballast.longest_reach(b, placed, found, out)
    ballast.legs(b, placed, found, out)
    ballast.sag(b, placed, out["payload_kg"], distance, out)
    setting.tolerance(b, m, width, out)
    return out
