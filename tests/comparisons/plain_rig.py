"""One brief at a time with Python's math module: support, room, weights, standing, base weight, sag; and the whole."""

from math import atan2, degrees, hypot, inf, log, pi, sqrt

from plain_picture import (
    along, cosine, dot, focus, footprint, from_table, lens, minus, outline, pose, shares, shown_length, sine,
    tilt_and_look, tolerance,
)

GRAVITY = 9.80665
INWARDS = ([0.0, 1.0, 0.0], [-1.0, 0.0, 0.0], [0.0, -1.0, 0.0], [1.0, 0.0, 0.0])


def stand_off(b, first):
    spacing = 360 / b["legs"]
    nearest = max(cosine(first + leg * spacing) for leg in range(b["legs"]))
    circle = b["foot_radius"]
    if b["open_underside"]:
        circle = max(circle * (1 - b["table_height"] / b["legs_top"]), b["column_radius"])
    return max(circle * nearest, b["column_radius"]) + b["clearance"]


def placement(b, out):
    pivot = out["pivot"]
    x, y, w, d = pivot[0], pivot[1], b["table_width"] / 2, b["table_depth"] / 2
    outs = [-y - d, x - w, y - d, -x - w]
    with_boom = 0.0 if b["first_leg"] is None else b["first_leg"]
    without = 180 / b["legs"] if b["first_leg"] is None else b["first_leg"]
    boom_off, off = stand_off(b, with_boom), stand_off(b, without)
    reaches = [max(boom_off - o, 0.0) for o in outs]
    hung = from_table(b, pivot) < off
    if hung:
        side = min(range(4), key=lambda i: reaches[i])
        reach, towards, first, off = reaches[side], INWARDS[side], with_boom, boom_off
    else:
        side = max(range(4), key=lambda i: outs[i])
        reach, towards, first = 0.0, INWARDS[side], without
        dx, dy = max(abs(x) - w, 0.0), max(abs(y) - d, 0.0)
        if dx > 0 and dy > 0:
            towards = [-dx / hypot(dx, dy) * (1 if x > 0 else -1), -dy / hypot(dx, dy) * (1 if y > 0 else -1), 0.0]
    boom = hung and b["boom"]
    pitch = b["pitch"] if boom else 0.0
    sp, cp = sine(pitch), cosine(pitch)
    column = [x - reach * towards[0], y - reach * towards[1], 0.0]
    clamp = pivot[2] - reach * sp / cp
    tail = b["tail"]
    end = [column[0] - tail * cp * towards[0], column[1] - tail * cp * towards[1], clamp - tail * sp] if boom else None
    left = [-towards[1], towards[0], 0.0]
    feet = []
    for leg in range(b["legs"]):
        at = first + leg * 360 / b["legs"]
        feet.append(along(along(column, towards, b["foot_radius"] * cosine(at)), left, b["foot_radius"] * sine(at)))
    out.update(hung=hung, has_boom=boom, side=side, reach=reach, towards=towards, left_of_boom=left, first_leg=first,
               stand_off=off, boom_length=reach / cp, sin_pitch=sp, cos_pitch=cp, column=column, clamp=clamp, tail_end=end,
               feet=feet, highest=max(out["body_top"], pivot[2], clamp, end[2] if boom else -inf))


def inside_walls(b, place):
    return min(b["right"] - place[0], b["left"] + place[0], b["back"] - place[1], b["front"] + place[1])


def until(place, way, right, left, back, front):
    ways = [inf]
    for towards, gap in ((way[0], right - place[0]), (-way[0], left + place[0]), (way[1], back - place[1]), (-way[1], front + place[1])):
        if towards > 0:
            ways.append(gap / towards)
    return min(ways)


def room(b, out):
    back = along(out["sensor"], out["forward"], -b["body_behind"])
    out["room_feet"] = min(inside_walls(b, foot) for foot in out["feet"])
    out["room_tail"] = inside_walls(b, out["tail_end"]) if out["has_boom"] else inf
    out["room_camera"] = min(inside_walls(b, place) for place in (back, out["pupil"], out["pivot"]))
    out["room_ceiling"] = b["ceiling"] - b["ceiling_clearance"] - out["highest"]
    behind = [out["right"][1], -out["right"][0]]
    w, d = b["table_width"] / 2, b["table_depth"] / 2
    table = until(back, behind, w, w, d, d) if from_table(b, back) < 0 else 0.0
    out["room_behind"] = until(back, behind, b["right"], b["left"], b["back"], b["front"]) - table


def hidden(b, out, place):
    """Between which heights the table top hides an upright line."""
    pupil, above = out["pupil"], out["pupil"][2] - b["table_height"]
    least, most = 0.0, 1.0
    for axis, half in (0, b["table_width"] / 2), (1, b["table_depth"] / 2):
        start, way = pupil[axis], place[axis] - pupil[axis]
        if way == 0:
            if abs(start) > half:
                return None
            continue
        ends = sorted(((-half - start) / way, (half - start) / way))
        least, most = max(least, ends[0]), min(most, ends[1])
    if above <= 0 or least >= most:
        return None
    return pupil[2] - above / least if least > 0 else -inf, pupil[2] - above / most


def in_picture(b, out):
    top, longest = max(out["clamp"], 0.0), 0.0
    for beside in -b["column_radius"], 0.0, b["column_radius"]:
        foot = along(out["column"], out["right"], beside)
        pieces, length = [(0.0, top)], 0.0
        between = hidden(b, out, foot)
        if between:
            pieces = [(0.0, min(top, between[0])), (max(between[1], 0.0), top)]
        for low, high in pieces:
            if low < high:
                length += shown_length(b, out, [foot[0], foot[1], low], [foot[0], foot[1], high])
        longest = max(longest, length)
    out["column_shown"] = longest
    out["boom_shown"] = shown_length(b, out, out["tail_end"], out["pivot"]) if out["has_boom"] else 0.0


def weights(b, out):
    mass = b["camera_mass"] + b["lens_mass"] + b["head_mass"]
    moment = b["camera_mass"] * b["camera_centre"] + b["lens_mass"] * b["lens_centre"] + b["head_mass"] * b["socket_ahead"]
    ahead = moment / mass
    centre = along(out["sensor"], out["forward"], ahead)
    off = minus(centre, out["pivot"])
    out.update(payload=mass, payload_ahead=ahead, payload_centre=centre, head_moment=mass * GRAVITY * hypot(off[0], off[1]) / 1000)
    towards, left, column = out["towards"], out["left_of_boom"], out["column"]
    from_column = minus(centre, column)
    found = [("payload", mass, dot(from_column, towards), dot(from_column, left), centre[2])]
    if out["has_boom"]:
        middle = (out["boom_length"] - b["tail"]) / 2
        arm = b["tail"] if b["counterweight_out"] is None else b["counterweight_out"]
        for kind, kg, at in ("boom", b["boom_mass"], middle), ("counterweight", b["counterweight"], -arm):
            found.append((kind, kg, at * out["cos_pitch"], 0.0, out["clamp"] + at * out["sin_pitch"]))
    found.append(("stand", b["support_mass"], 0.0, 0.0, b["centre_height"]))
    found.append(("base", b["base_mass"], 0.0, 0.0, b["base_height"]))
    for bag in "12":
        if b[f"bag{bag}_mass"] > 0:
            at, far = b[f"bag{bag}_direction"], b[f"bag{bag}_out"]
            found.append(("bag", b[f"bag{bag}_mass"], far * cosine(at), far * sine(at), b[f"bag{bag}_height"]))
    return found


def standing(b, out, name, found, edges, apothem):
    mass = sum(kg for _, kg, *_ in found)
    x, y, z = (sum(w[1] * w[i] for w in found) / mass for i in (2, 3, 4))
    about, margin = [], inf
    for ex, ey in edges:
        restoring = overturning = 0.0
        for _, kg, wx, wy, _ in found:
            moment = kg * (apothem - wx * ex - wy * ey)
            if moment > 0:
                restoring += moment
            else:
                overturning -= moment
        margin = min(margin, (restoring - overturning) / mass)
        about.append((restoring, overturning))
    worst = min(about, key=lambda pair: pair[0] / pair[1] if pair[1] > 0 else inf)
    if worst[1] <= 0:
        worst = min(about, key=lambda pair: pair[0] - pair[1])
    height = out["pivot"][2]
    loose = [w for w in found if w[0] in ("payload", "boom", "counterweight")]
    clamp = hypot(sum(w[1] * w[2] for w in loose), sum(w[1] * w[3] for w in loose)) * GRAVITY / 1000 if out["hung"] else 0.0
    centre = along(along(out["column"], out["towards"], x), out["left_of_boom"], y)
    out[name] = [mass, centre[0], centre[1], z, margin, worst[0] / worst[1] if worst[1] > 0 else inf,
                 worst[0] * GRAVITY / 1000, worst[1] * GRAVITY / 1000, degrees(atan2(margin, z)),
                 mass * GRAVITY * margin / height if height > 0 else inf, clamp]
    return about


def stability(b, out):
    found = weights(b, out)
    spacing = 360 / b["legs"]
    middles = [out["first_leg"] + (i + 0.5) * spacing for i in range(b["legs"])]
    edges = [(cosine(at), sine(at)) for at in middles]
    apothem = b["foot_radius"] * cosine(spacing / 2)
    states = {
        "as_shot": found,
        "camera_off": [w for w in found if w[0] != "payload"],
        "counterweight_off": [w for w in found if w[0] != "counterweight"],
    }
    about = {name: standing(b, out, name, kept, edges, apothem) for name, kept in states.items()}
    to_tip = inf
    for (ex, ey), (restoring, overturning) in zip(edges, about["camera_off"]):
        outside = found[0][2] * ex + found[0][3] * ey - apothem
        if outside > 0:
            to_tip = min(to_tip, max(restoring - overturning, 0.0) / outside)
    out["to_tip"], out["share_of_tipping"] = to_tip, found[0][1] / to_tip if to_tip > 0 else inf
    out["base_to_add"] = 0.0
    for name in states:
        if b["hold_" + name]:
            for restoring, overturning in about[name]:
                out["base_to_add"] = max(out["base_to_add"], (b["wanted_factor"] * overturning - restoring) / apothem)
    out["to_balance"] = None
    if out["has_boom"]:
        arm = (b["tail"] if b["counterweight_out"] is None else b["counterweight_out"]) * out["cos_pitch"]
        out["to_balance"] = max((found[0][1] * found[0][2] + found[1][1] * found[1][2]) / arm, 0.0)


def sag(b, out):
    out["sag"] = [None] * 6
    if not out["has_boom"] or (b["stiffness"] is None and b["tube_outside"] is None):
        return
    ei = b["stiffness"] or pi / 64 * (b["tube_outside"] ** 4 - b["tube_inside"] ** 4) * b["tube_modulus"] / 1e6
    length = out["boom_length"] / 1000
    outer = b["boom_mass"] * out["boom_length"] / (out["boom_length"] + b["tail"])
    p, w = out["payload"] * GRAVITY * out["cos_pitch"], outer * GRAVITY * out["cos_pitch"] / length
    down = (p * length**3 / (3 * ei) + w * length**4 / (8 * ei)) * 1000
    slope = p * length**2 / (2 * ei) + w * length**3 / (6 * ei)
    frequency = sqrt(3 * ei / (length**3 * (out["payload"] + 33 / 140 * outer))) / (2 * pi)
    settling = None if b["damping"] is None else -log(b["settled_share"]) / (b["damping"] * 2 * pi * frequency)
    out["sag"] = [down, down * out["cos_pitch"], degrees(slope), out["sensor_distance"] * slope, frequency, settling]


def plan(b):
    out = {}
    for part in (lens, pose, footprint, outline, shares, focus, tilt_and_look, tolerance, placement, room, in_picture,
                 stability, sag):
        part(b, out)
    return out
