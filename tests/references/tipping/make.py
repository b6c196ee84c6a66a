"""Writes briefs.tsv and brackets.tsv: `python make.py FOLDER`. MuJoCo tips rigs; needs mujoco, mpmath.

A rig is one rigid body: each foot a sphere of 5 mm whose centre stands 5 mm up, each weight a small sphere
that touches nothing. Steps of 1 ms, elliptic friction cone, Newton's solver, 100 iterations, tolerance 1e-12,
impratio 10, hard contacts (solref 0.004 1, solimp 0.99 0.999 0.0005 0.5 2). It has tipped when it leans by
more than 4 degrees within 12 s. Each threshold is bracketed by simulation: a value that stands, one that tips.

The briefs and the places of feet and weights come from the 50-digit model beside this folder; what stands and
what tips is the engine's word alone.
"""

import math
import sys
from multiprocessing import Pool
from pathlib import Path

sys.path[:0] = [str(Path(__file__).parents[1]), str(Path(__file__).parents[1] / "precision")]

import mujoco
import numpy as np

import glass
import place
import rig
from draw import brief
from lot import Lot
from numbers50 import Fence
from table import Outcome, write
from whole import exact, plan

COUNT = 72
G = 9.80665
SETTLED_S, STEP_S, LEAN = 12.0, 0.001, math.cos(math.radians(4.0))
# The bracket's width, as a share of the threshold.
NARROW = 4e-4


def body(feet, weights):
    soles = "".join(
        f'<geom type="sphere" size="0.005" pos="{x!r} {y!r} 0.005" mass="0"/>' for x, y in feet
    )
    loads = "".join(
        f'<geom type="sphere" size="0.01" pos="{x!r} {y!r} {z!r}" mass="{kg!r}" contype="0" conaffinity="0"/>'
        for kg, x, y, z in weights if kg > 0
    )
    return f"""<mujoco>
      <option timestep="{STEP_S}" integrator="implicitfast" cone="elliptic" solver="Newton" iterations="100"
        tolerance="1e-12" impratio="10"/>
      <default><geom solref="0.004 1" solimp="0.99 0.999 0.0005 0.5 2" friction="3 0.005 0.0001"/></default>
      <worldbody><geom type="plane" size="0 0 1"/><body><freejoint/>{soles}{loads}</body></worldbody>
    </mujoco>"""


def stands(feet, weights, gravity=(0.0, 0.0, -G), push=None):
    model = mujoco.MjModel.from_xml_string(body(feet, weights))
    data = mujoco.MjData(model)
    steps = 10
    for turn in range(round(SETTLED_S / STEP_S / steps)):
        # Weight first, then push, each laid on within half a second: a blow would tip it sooner.
        since = turn * steps * STEP_S
        model.opt.gravity[:] = np.array(gravity) * min(since / 0.5 + 0.02, 1.0)
        if push is not None:
            force, at = push[0] * min(max(since - 0.5, 0.0) / 0.5, 1.0), push[1]
            arm = data.xpos[1] + data.xmat[1].reshape(3, 3) @ at - data.xipos[1]
            data.xfrc_applied[1, :3], data.xfrc_applied[1, 3:] = force, np.cross(arm, force)
        mujoco.mj_step(model, data, steps)
        if 1 - 2 * (data.qpos[4] ** 2 + data.qpos[5] ** 2) < LEAN:
            return False
    return True


def bracket(tries, start):
    """A standing and a tipping value NARROW apart, found by trying alone, from `start` outwards."""
    start = float(start)
    low, high, step = start, start, 1.001
    if tries(start):
        while tries(high):
            low, high, step = high, high * step, step * step
            if high > 1e6 * start:
                return None
    else:
        while not tries(low):
            high, low, step = low, low / step, step * step
            if low < 1e-4 * start:
                return None
    while high / low > 1 + NARROW:
        middle = math.sqrt(low * high)
        if tries(middle):
            low = middle
        else:
            high = middle
    return low, high


def drawn(number, attempt):
    b = brief("studio", f"tipping {number}/{attempt}")
    b.pop("near")
    lot = Lot(f"tipping extra {number}/{attempt}")
    b["boom"], b["leg_count"] = True, (3, 4, 5)[number % 3]
    b["first_leg_deg"] = None if number % 4 == 0 else lot.even(-180.0, 180.0)
    b["foot_radius_mm"], b["column_radius_mm"] = lot.even(350.0, 900.0), 30.0
    b["counterweight_kg"] = lot.log(2.0, 80.0) if number % 2 else 0.0
    b["tail_mm"], b["counterweight_out_mm"] = max(b["tail_mm"], 200.0), None
    b["f_number"] = 8.0
    return b


def rigged(b):
    """Feet and weights in metres, seen from the column, and where a push is taken."""
    out = plan(b)
    x = exact(b)
    m = glass.used_area(x)[0] / out["frame_width_mm"]
    camera = place.Camera(x, out["pupil_distance_mm"], out["sensor_distance_mm"], out["frame_width_mm"],
                          out["used_height_mm"] / m)
    placed = rig.Placed(x, camera, dict(out))
    found = rig.masses(x, camera, placed, dict(out))
    metres = lambda at: [float((c - o) / 1000) for c, o in zip(at, placed.column)]
    feet = [tuple(metres(foot)[:2]) for foot in placed.feet]
    weights = {}
    for i, part in enumerate(found):
        weights[f"{part.kind}{i}"] = (float(part.kg), *metres(part.at))
    edge = out["as_shot_margin_edge"][0] - 1
    outward = [float(c) for c in rig.edges_of(placed.feet)[edge][1]]
    return out, feet, weights, metres(camera.pivot), outward


def useful(out, feet):
    return (
        out["boom_used"] and out["as_shot_margin"] > 30 and out["payload_to_tip"] < 60
        and len(out["as_shot_margin_edge"]) == 1
        and 5 < out["as_shot_tilt"] < 30 and 300 < out["pivot_z_mm"] < 4000 and out["reach"] < 3000
    )


def weight_to_tip(feet, weights, which, without):
    """Where to start looking: the moments about each edge; none where the weight hangs no 150 mm outside.

    Nearer to an edge the sinking of the engine's feet, some hundredths of a millimetre, weighs too much.
    """
    limits = []
    for (ax, ay), (cx, cy) in zip(feet, feet[1:] + feet[:1]):
        long = math.hypot(cx - ax, cy - ay)
        inside = lambda w: -((w[1] - ax) * (cy - ay) - (w[2] - ay) * (cx - ax)) / long
        if inside(weights[which]) < -0.15:
            rest = sum(w[0] * inside(w) for k, w in weights.items() if k not in (which, without))
            limits.append(rest / -inside(weights[which]))
    return min(limits, default=None)


def rows_of(number):
    for attempt in range(400):
        try:
            b = drawn(number, attempt)
            out, feet, weights, pivot, outward = rigged(b)
        except Fence:
            continue
        if useful(out, feet):
            break
    else:
        raise SystemExit(f"no rig {number}")
    name = {kind: next((k for k in weights if k.startswith(kind)), None) for kind in ("payload", "counterweight")}
    found = []

    def scaled(which, kg, without=None):
        """Every weight, one of them made `kg` heavy, one left out."""
        return [(kg, *w[1:]) if k == name[which] else w for k, w in weights.items() if k != without]

    def add(quantity, limits):
        if limits:
            found.append({"case": number, "quantity": quantity, "stands": Outcome(limits[0], 9), "tips": Outcome(limits[1], 9)})

    everything = list(weights.values())
    add("payload_to_tip_kg", bracket(lambda kg: stands(feet, scaled("payload", kg)), out["payload_to_tip"]))
    tilt = lambda deg, way: (
        G * math.sin(math.radians(deg)) * way[0], G * math.sin(math.radians(deg)) * way[1], -G * math.cos(math.radians(deg))
    )
    limits = bracket(lambda deg: stands(feet, everything, gravity=tilt(deg, outward)), out["as_shot_tilt"])
    add("tilt_to_tip_deg", limits)
    # No other direction tips it sooner.
    for turn in range(8):
        way = (math.cos(turn * math.pi / 4 + 0.1), math.sin(turn * math.pi / 4 + 0.1))
        if not stands(feet, everything, gravity=tilt(limits[0] * 0.999, way)):
            raise SystemExit(f"rig {number} tips sooner another way")
    # At the pivot's height, but on the column: an outlying pivot sinks as the rig leans, and the push with it.
    push = lambda n: (np.array([n * outward[0], n * outward[1], 0.0]), np.array([0.0, 0.0, pivot[2]]))
    add("push_to_tip_n", bracket(lambda n: stands(feet, everything, push=push(n)), out["as_shot_push"]))
    without = [w for k, w in weights.items() if k != name["payload"]]
    found.append({"case": number, "quantity": "camera_off_stands", "stands": stands(feet, without), "tips": None})
    if name["counterweight"]:
        kept = [w for k, w in weights.items() if k != name["counterweight"]]
        found.append({"case": number, "quantity": "counterweight_off_stands", "stands": stands(feet, kept), "tips": None})
        start = weight_to_tip(feet, weights, name["counterweight"], name["payload"])
        if start is not None and start < 400:
            add("counterweight_to_tip_camera_off_kg",
                bracket(lambda kg: stands(feet, scaled("counterweight", kg, name["payload"])), start))
    return {"case": number, "kind": "tipping", **b}, found


def main(folder):
    with Pool(2) as pool:
        done = pool.map(rows_of, range(COUNT), chunksize=1)
    write(Path(folder) / "briefs.tsv", [b for b, _ in done])
    write(Path(folder) / "brackets.tsv", [row for _, rows in done for row in rows])


if __name__ == "__main__":
    main(sys.argv[1])
