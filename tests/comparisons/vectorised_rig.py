"""A million briefs at once in NumPy: support, room, weights, standing, base weight, sag; and the whole."""

import numpy as np

from vectorised_picture import (
    along, cosine, dot, focus, footprint, from_table, given, lens, minus, outline, pose, shares, shown_length, sine,
    tilt_and_look, tolerance,
)

GRAVITY = 9.80665
MOST_LEGS = 5
STATES = ("as_shot", "camera_off", "counterweight_off")
INWARDS_X, INWARDS_Y = np.array([0.0, -1.0, 0.0, 1.0]), np.array([1.0, 0.0, -1.0, 0.0])


def stand_off(b, first):
    spacing = 360 / b["legs"]
    # The leg nearest to the table is at most half a spacing off.
    nearest = cosine(first - spacing * np.round(first / spacing))
    under = np.maximum(b["foot_radius"] * (1 - b["table_height"] / b["legs_top"]), b["column_radius"])
    circle = np.where(b["open_underside"] == 1, under, b["foot_radius"])
    return np.maximum(circle * nearest, b["column_radius"]) + b["clearance"]


def placement(b, o):
    pivot = o["pivot"]
    x, y, w, d = pivot[0], pivot[1], b["table_width"] / 2, b["table_depth"] / 2
    outs = np.array([-y - d, x - w, y - d, -x - w])
    with_boom = np.nan_to_num(b["first_leg"])
    without = np.where(given(b["first_leg"]), b["first_leg"], 180 / b["legs"])
    boom_off, off = stand_off(b, with_boom), stand_off(b, without)
    reaches = np.maximum(boom_off - outs, 0.0)
    hung = from_table(b, pivot) < off
    side = np.where(hung, reaches.argmin(axis=0), outs.argmax(axis=0))
    o["reach"] = reach = np.where(hung, reaches.min(axis=0), 0.0)
    first = o["first_leg"] = np.where(hung, with_boom, without)
    dx, dy = np.clip(x, -w, w) - x, np.clip(y, -d, d) - y
    corner = ~hung & (dx != 0) & (dy != 0)
    away = np.where(corner, np.hypot(dx, dy), 1.0)
    towards = (np.where(corner, dx / away, INWARDS_X[side]), np.where(corner, dy / away, INWARDS_Y[side]), np.zeros_like(x))
    boom = hung & (b["boom"] == 1)
    pitch = np.where(boom, b["pitch"], 0.0)
    sp, cp = sine(pitch), cosine(pitch)
    column = (x - reach * towards[0], y - reach * towards[1], np.zeros_like(x))
    o["clamp"] = clamp = pivot[2] - reach * sp / cp
    tail = np.where(boom, b["tail"], np.nan)
    end = (column[0] - tail * cp * towards[0], column[1] - tail * cp * towards[1], clamp - tail * sp)
    left = (-towards[1], towards[0], np.zeros_like(x))
    feet = []
    for leg in range(MOST_LEGS):
        # Where there are fewer, the first again.
        at = first + np.where(leg < b["legs"], leg, 0) * (360 / b["legs"])
        out, aside = b["foot_radius"] * cosine(at), b["foot_radius"] * sine(at)
        feet.append((column[0] + out * towards[0] + aside * left[0], column[1] + out * towards[1] + aside * left[1]))
    o["hung"], o["side"], o["stand_off"] = hung.astype(float), side.astype(float), np.where(hung, boom_off, off)
    o["boom_length"] = reach / cp
    o["highest"] = np.fmax(np.maximum(np.maximum(o["body_top"], pivot[2]), clamp), end[2])
    o["column"], o["towards"], o["tail_end"] = column, towards, end
    o["_boom"], o["_left"], o["_pitch"], o["_feet"] = boom, left, (sp, cp), feet
    for leg in range(3):
        o[f"foot{leg}_x"], o[f"foot{leg}_y"] = feet[leg]


def inside_walls(b, place):
    return np.minimum(
        np.minimum(b["right"] - place[0], b["left"] + place[0]), np.minimum(b["back"] - place[1], b["front"] + place[1])
    )


def until(place, way, right, left, back, front):
    least = np.full_like(place[0], np.inf)
    for towards, gap in ((way[0], right - place[0]), (-way[0], left + place[0]), (way[1], back - place[1]), (-way[1], front + place[1])):
        least = np.where(towards > 0, np.minimum(least, gap / towards), least)
    return least


def room(b, o):
    back = along(o["sensor"], o["forward"], -b["body_behind"])
    o["room_feet"] = np.minimum.reduce([inside_walls(b, foot) for foot in o["_feet"]])
    o["room_tail"] = np.where(o["_boom"], inside_walls(b, o["tail_end"]), np.inf)
    o["room_camera"] = np.minimum.reduce([inside_walls(b, place) for place in (back, o["pupil"], o["pivot"])])
    o["room_ceiling"] = b["ceiling"] - b["ceiling_clearance"] - o["highest"]
    behind = (o["right"][1], -o["right"][0])
    w, d = b["table_width"] / 2, b["table_depth"] / 2
    table = np.where(from_table(b, back) < 0, until(back, behind, w, w, d, d), 0.0)
    o["room_behind"] = until(back, behind, b["right"], b["left"], b["back"], b["front"]) - table


def hidden(b, o, place):
    pupil, above = o["pupil"], o["pupil"][2] - b["table_height"]
    least, most, misses = np.zeros_like(above), np.ones_like(above), above <= 0
    for axis, half in (0, b["table_width"] / 2), (1, b["table_depth"] / 2):
        start, way = pupil[axis], place[axis] - pupil[axis]
        level = way == 0
        way = np.where(level, 1.0, way)
        a, c = (-half - start) / way, (half - start) / way
        least = np.where(level, least, np.maximum(least, np.minimum(a, c)))
        most = np.where(level, most, np.minimum(most, np.maximum(a, c)))
        misses |= level & (np.abs(start) > half)
    misses |= least >= most
    low = np.where(least > 0, pupil[2] - above / np.where(least > 0, least, 1.0), -np.inf)
    return np.where(misses, np.inf, low), np.where(misses, np.inf, pupil[2] - above / most)


def in_picture(b, o):
    top, longest = np.maximum(o["clamp"], 0.0), 0.0
    for beside in -1, 0, 1:
        foot = along(o["column"], o["right"], beside * b["column_radius"])
        low, high = hidden(b, o, foot)
        length = 0.0
        for start, end in ((np.zeros_like(top), np.minimum(top, low)), (np.minimum(np.maximum(high, 0.0), top), top)):
            end = np.maximum(start, end)
            length = length + shown_length(b, o, (foot[0], foot[1], start), (foot[0], foot[1], end))
        longest = np.maximum(longest, length)
    o["column_shown"] = longest
    end = tuple(np.where(o["_boom"], part, 0.0) for part in o["tail_end"])
    o["boom_shown"] = np.where(o["_boom"], shown_length(b, o, end, o["pivot"]), 0.0)


def weights(b, o):
    mass = b["camera_mass"] + b["lens_mass"] + b["head_mass"]
    moment = b["camera_mass"] * b["camera_centre"] + b["lens_mass"] * b["lens_centre"] + b["head_mass"] * b["socket_ahead"]
    o["payload"], o["payload_ahead"] = mass, moment / mass
    o["payload_centre"] = centre = along(o["sensor"], o["forward"], moment / mass)
    off = minus(centre, o["pivot"])
    o["head_moment"] = mass * GRAVITY * np.hypot(off[0], off[1]) / 1000
    from_column, zero, (sp, cp) = minus(centre, o["column"]), np.zeros_like(mass), o["_pitch"]
    found = [("payload", mass, dot(from_column, o["towards"]), dot(from_column, o["_left"]), centre[2])]
    boom = o["_boom"]
    middle = np.where(boom, (o["boom_length"] - b["tail"]) / 2, 0.0)
    arm = np.where(given(b["counterweight_out"]), b["counterweight_out"], b["tail"])
    o["_arm"], arm = arm, np.where(boom, arm, 0.0)
    found.append(("boom", np.where(boom, b["boom_mass"], 0.0), middle * cp, zero, o["clamp"] + middle * sp))
    found.append(("counterweight", np.where(boom, b["counterweight"], 0.0), -arm * cp, zero, o["clamp"] - arm * sp))
    found.append(("stand", b["support_mass"], zero, zero, b["centre_height"]))
    found.append(("stand", b["base_mass"], zero, zero, b["base_height"]))
    for bag in "bag1", "bag2":
        at, far = b[bag + "_direction"], b[bag + "_out"]
        found.append(("stand", b[bag + "_mass"], far * cosine(at), far * sine(at), b[bag + "_height"]))
    return found


def stability(b, o):
    found = weights(b, o)
    spacing = 360 / b["legs"]
    apothem = b["foot_radius"] * cosine(spacing / 2)
    edges = []
    for leg in range(MOST_LEGS):
        at = o["first_leg"] + (np.where(leg < b["legs"], leg, 0) + 0.5) * spacing
        ex, ey = cosine(at), sine(at)
        edges.append((ex, ey, [kg * (apothem - wx * ex - wy * ey) for _, kg, wx, wy, _ in found]))
    height, base = o["pivot"][2], np.zeros_like(apothem)
    for name, off in zip(STATES, (None, "payload", "counterweight")):
        kept = [index for index, weight in enumerate(found) if weight[0] != off]
        mass = sum(found[i][1] for i in kept)
        x, y, z = (sum(found[i][1] * found[i][part] for i in kept) / mass for part in (2, 3, 4))
        margin, factor = np.full_like(mass, np.inf), np.full_like(mass, np.inf)
        at_margin, at_factor = [np.zeros_like(mass)] * 2, [np.zeros_like(mass)] * 2
        for ex, ey, moments in edges:
            restoring = sum(np.maximum(moments[i], 0.0) for i in kept)
            overturning = sum(np.maximum(-moments[i], 0.0) for i in kept)
            nearer = (restoring - overturning) / mass < margin
            margin = np.where(nearer, (restoring - overturning) / mass, margin)
            at_margin = [np.where(nearer, a, c) for a, c in zip((restoring, overturning), at_margin)]
            ratio = np.where(overturning > 0, restoring / np.where(overturning > 0, overturning, 1.0), np.inf)
            worse = ratio < factor
            factor = np.where(worse, ratio, factor)
            at_factor = [np.where(worse, a, c) for a, c in zip((restoring, overturning), at_factor)]
            add = (b["wanted_factor"] * overturning - restoring) / apothem
            base = np.where(b["hold_" + name] == 1, np.maximum(base, add), base)
        restoring, overturning = (np.where(factor < np.inf, a, c) for a, c in zip(at_factor, at_margin))
        loose = [i for i in kept if found[i][0] != "stand"]
        clamp = np.hypot(sum(found[i][1] * found[i][2] for i in loose), sum(found[i][1] * found[i][3] for i in loose))
        centre = along(along(o["column"], o["towards"], x), o["_left"], y)
        push = np.where(height > 0, mass * GRAVITY * margin / height, np.inf)
        for part, value in (
            ("mass", mass), ("centre_x", centre[0]), ("centre_y", centre[1]), ("centre_z", z), ("margin", margin),
            ("factor", factor), ("restoring", restoring * GRAVITY / 1000), ("overturning", overturning * GRAVITY / 1000),
            ("tilt", np.degrees(np.arctan2(margin, z))), ("push", push),
            ("clamp_moment", np.where(o["hung"] == 1, clamp * GRAVITY / 1000, 0.0)),
        ):
            o[f"{name}_{part}"] = value
    to_tip = np.full_like(apothem, np.inf)
    for ex, ey, moments in edges:
        outside = found[0][2] * ex + found[0][3] * ey - apothem
        left = np.maximum(sum(moments[1:]), 0.0) / np.where(outside > 0, outside, 1.0)
        to_tip = np.where(outside > 0, np.minimum(to_tip, left), to_tip)
    o["to_tip"], o["share_of_tipping"], o["base_to_add"] = to_tip, found[0][1] / to_tip, base
    balance = (found[0][1] * found[0][2] + found[1][1] * found[1][2]) / (o["_arm"] * o["_pitch"][1])
    o["to_balance"] = np.where(o["_boom"], np.maximum(balance, 0.0), np.nan)


def sag(b, o):
    tube = np.pi / 64 * (b["tube_outside"] ** 4 - b["tube_inside"] ** 4) * b["tube_modulus"] / 1e6
    ei = np.where(given(b["stiffness"]), b["stiffness"], tube)
    ei = np.where(o["_boom"], ei, np.nan)
    length, slant = o["boom_length"] / 1000, o["_pitch"][1]
    outer = b["boom_mass"] * o["boom_length"] / (o["boom_length"] + b["tail"])
    p, w = o["payload"] * GRAVITY * slant, outer * GRAVITY * slant / length
    o["sag"] = (p * length**3 / (3 * ei) + w * length**4 / (8 * ei)) * 1000
    slope = p * length**2 / (2 * ei) + w * length**3 / (6 * ei)
    o["height_lost"], o["slope"], o["aim_shift"] = o["sag"] * slant, np.degrees(slope), o["sensor_distance"] * slope
    o["frequency"] = np.sqrt(3 * ei / (length**3 * (o["payload"] + 33 / 140 * outer))) / (2 * np.pi)
    o["settling"] = -np.log(b["settled_share"]) / (b["damping"] * 2 * np.pi * o["frequency"])


def plan(b):
    o = {}
    with np.errstate(all="ignore"):
        for part in (lens, pose, footprint, outline, shares, focus, tilt_and_look, tolerance, placement, room, in_picture,
                     stability, sag):
            part(b, o)
    return o
