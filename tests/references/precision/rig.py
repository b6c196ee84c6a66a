"""Where the column stands and whether it stands: feet, weights and moments as points in the room."""

from mpmath import mp, mpf

from numbers50 import Fence, cosine, dot, in_degrees, length, minus, over, plus, sine
from place import SIDES, from_table, inside_length, outside_edges

GRAVITY = mpf("9.80665")
STATES = ("as_shot", "camera_off", "counterweight_off")
INWARDS = ([0, 1, 0], [-1, 0, 0], [0, -1, 0], [1, 0, 0])


def stand_off(b, first):
    spacing = mpf(360) / b["leg_count"]
    cosines = [cosine(first + i * spacing) for i in range(b["leg_count"])]
    circle = b["foot_radius_mm"]
    if b["underside"] == "open":
        # Under the table's top the legs are as far out as a straight leg is at that height.
        circle = max(circle * (1 - b["table_height_mm"] / b["legs_top_mm"]), b["column_radius_mm"])
    return max(circle * max(cosines), b["column_radius_mm"]) + b["table_clearance_mm"]


def first_leg(b, boom):
    if b["first_leg_deg"] is not None:
        return b["first_leg_deg"]
    return mpf(0) if boom else mpf(180) / b["leg_count"]


def to_table(b, place):
    outs = outside_edges(b, place)
    order = sorted(range(4), key=lambda i: -outs[i])
    over(outs[order[0]] - outs[order[1]])
    w, d = b["table_width_mm"] / 2, b["table_depth_mm"] / 2
    nearest = [min(max(place[0], -w), w), min(max(place[1], -d), d), mpf(0)]
    way = minus(nearest, [place[0], place[1], mpf(0)])
    if way[0] != 0 and way[1] != 0:
        return order[0], [c / length(way) for c in way]
    return order[0], INWARDS[order[0]]


class Placed:
    """A placed support."""

    def __init__(self, b, camera, out):
        pivot = camera.pivot
        place = [pivot[0], pivot[1], mpf(0)]
        outs = outside_edges(b, place)
        upright = stand_off(b, first_leg(b, False))
        boom = stand_off(b, first_leg(b, True))
        reaches = [max(boom - o, mpf(0)) for o in outs]
        clear = over(from_table(b, place) - upright) or from_table(b, place) == upright
        asked = None if b["side"] is None else SIDES.index(b["side"])
        if asked is not None and clear:
            clear = over(outs[asked] - upright) or outs[asked] == upright
        self.boom_used = not clear
        if self.boom_used:
            if asked is None:
                order = sorted(range(4), key=lambda i: reaches[i])
                if reaches[order[0]] == reaches[order[1]]:
                    raise Fence("two sides alike")
                over(reaches[order[1]] - reaches[order[0]])
                asked = order[0]
            self.side, self.reach, self.towards = asked, reaches[asked], INWARDS[asked]
            self.first, self.stand_off = first_leg(b, True), boom
        else:
            nearest, self.towards = to_table(b, place)
            self.side = nearest if asked is None else asked
            self.reach, self.first, self.stand_off = mpf(0), first_leg(b, False), upright
        self.has_boom = self.boom_used and b["boom"]
        pitch = b["pitch_deg"] if self.has_boom else mpf(0)
        self.along = plus([cosine(pitch) * c for c in self.towards], [0, 0, 1], sine(pitch))
        self.boom_length = self.reach / cosine(pitch)
        self.clamp = plus(pivot, self.along, -self.boom_length)
        self.column = [self.clamp[0], self.clamp[1], mpf(0)]
        self.tail_end = plus(self.clamp, self.along, -b["tail_mm"]) if self.has_boom else None
        self.left = [-self.towards[1], self.towards[0], mpf(0)]
        self.feet = []
        for i in range(b["leg_count"]):
            at = self.first + mpf(360) * i / b["leg_count"]
            on = plus([cosine(at) * c for c in self.towards], self.left, sine(at))
            self.feet.append(plus(self.column, on, b["foot_radius_mm"]))
        self.report(b, camera, reaches, out)

    def report(self, b, camera, reaches, out):
        out["boom_used"], out["side"] = self.boom_used, SIDES[self.side]
        out["column_x"], out["column_y"] = self.column[:2]
        out["towards_x"], out["towards_y"] = [mpf(c) for c in self.towards[:2]]
        out["stand_off"], out["reach"], out["boom_length"] = self.stand_off, self.reach, self.boom_length
        for side, reach in zip(SIDES, reaches):
            out["reach_" + side] = reach
        out["clamp_height"] = self.clamp[2]
        for part, value in zip("xyz", self.tail_end or [None] * 3):
            out["tail_" + part] = value
        out["first_leg_deg"] = self.first
        for i in range(3):
            out[f"foot{i + 1}_x"], out[f"foot{i + 1}_y"] = self.feet[i][:2]
        heights = [out["body_top_mm"], camera.pivot[2], self.clamp[2]]
        out["highest_point"] = max(heights + ([self.tail_end[2]] if self.tail_end else []))
        top = max(self.clamp[2], mpf(0))
        column = []
        for beside in -b["column_radius_mm"], mpf(0), b["column_radius_mm"]:
            foot = plus(self.column, camera.right, beside)
            seen = mpf(0)
            for low, high in unhidden(b, camera, foot, top):
                seen += inside_length(camera, plus(foot, [0, 0, 1], low), plus(foot, [0, 0, 1], high), 1)
            column.append(seen)
        out["column_in_picture"] = max(column)
        out["boom_in_picture"] = inside_length(camera, self.tail_end, camera.pivot, 1) if self.tail_end else mpf(0)


def unhidden(b, camera, foot, top):
    """The stretches of an upright line, from the floor to a height, that the table's top does not hide."""
    above = camera.pupil[2] - b["table_height_mm"]
    if above <= 0:
        return [(mpf(0), top)]
    # The sight of a point under the table's plane passes that plane a share t of the way from the pupil;
    # which shares lie over the table, seen from above?
    least, most = mpf(0), mpf(1)
    for axis, half in (0, b["table_width_mm"] / 2), (1, b["table_depth_mm"] / 2):
        start, way = camera.pupil[axis], foot[axis] - camera.pupil[axis]
        if way == 0:
            if abs(start) > half:
                return [(mpf(0), top)]
            continue
        ends = sorted([(-half - start) / way, (half - start) / way])
        least, most = max(least, ends[0]), min(most, ends[1])
    if least >= most:
        return [(mpf(0), top)]
    low = camera.pupil[2] - above / least if least > 0 else -mp.inf
    high = camera.pupil[2] - above / most
    kept = [(mpf(0), min(low, top)), (max(high, mpf(0)), top)]
    return [(a, c) for a, c in kept if a < c]


def inside_walls(b, point):
    walls = [b["right_mm"], b["left_mm"], b["back_mm"], b["front_mm"]]
    gaps = [-point[0], point[0], -point[1], point[1]]
    return min([wall + gap for wall, gap in zip(walls, gaps) if wall is not None], default=mp.inf)


def bay_room(b, camera, placed, out):
    back = plus(camera.sensor, camera.ahead, -b["body_behind_mm"])
    out["room_feet"] = min(inside_walls(b, foot) for foot in placed.feet)
    out["room_tail"] = inside_walls(b, placed.tail_end) if placed.tail_end else mp.inf
    out["room_camera"] = min(inside_walls(b, p) for p in (back, camera.pupil, camera.pivot))
    ceiling = b["ceiling_mm"]
    out["room_ceiling"] = (
        mp.inf if ceiling is None else ceiling - b["ceiling_clearance_mm"] - out["highest_point"]
    )
    # Behind the camera: first table still under it, then floor, then the wall.
    on = [camera.right[1], -camera.right[0], mpf(0)]

    def until(limit_right, limit_left, limit_back, limit_front):
        ways = []
        for limit, towards, at in (
            (limit_right, on[0], back[0]), (limit_left, -on[0], -back[0]),
            (limit_back, on[1], back[1]), (limit_front, -on[1], -back[1]),
        ):
            if limit is not None and towards > 0:
                ways.append((limit - at) / towards)
        return min(ways, default=mp.inf)

    wall = until(b["right_mm"], b["left_mm"], b["back_mm"], b["front_mm"])
    over(-from_table(b, back))
    w, d = b["table_width_mm"] / 2, b["table_depth_mm"] / 2
    table = until(w, w, d, d) if from_table(b, back) < 0 else mpf(0)
    out["room_behind"] = wall - table


class Mass:
    """So many kilograms at a point of the room."""

    def __init__(self, kind, kg, at):
        self.kind, self.kg, self.at = kind, kg, at


def masses(b, camera, placed, out):
    parts = [
        (b["camera_mass_kg"], b["camera_centre_ahead_mm"]),
        (b["lens_mass_kg"], b["lens_centre_ahead_mm"]),
        (b["head_mass_kg"], b["socket_ahead_mm"]),
    ]
    payload = sum((kg for kg, _ in parts), mpf(0))
    ahead = sum((kg * at for kg, at in parts), mpf(0)) / payload
    centre = plus(camera.sensor, camera.ahead, ahead)
    off = minus(centre, camera.pivot)
    out["payload_kg"], out["payload_ahead"] = payload, ahead
    for part, value in zip("xyz", centre):
        out["payload_" + part] = value
    out["head_moment"] = payload * GRAVITY * mp.hypot(off[0], off[1]) / 1000
    out["head_moment_scale"] = payload * GRAVITY * (
        abs(ahead - b["socket_ahead_mm"]) + abs(b["socket_below_mm"] + b["pivot_below_socket_mm"])
    ) / 1000
    found = [Mass("payload", payload, centre)]
    if placed.has_boom:
        middle = (placed.boom_length - b["tail_mm"]) / 2
        arm = b["tail_mm"] if b["counterweight_out_mm"] is None else b["counterweight_out_mm"]
        found.append(Mass("boom", b["boom_mass_kg"], plus(placed.clamp, placed.along, middle)))
        found.append(Mass("counterweight", b["counterweight_kg"], plus(placed.clamp, placed.along, -arm)))
    up = [0, 0, 1]
    found.append(Mass("stand", b["support_mass_kg"], plus(placed.column, up, b["centre_height_mm"])))
    found.append(Mass("base", b["base_mass_kg"], plus(placed.column, up, b["base_height_mm"])))
    for i in range(4):
        kg, out_mm, direction, height = (b[f"bag{i + 1}_{k}"] for k in ("kg", "out_mm", "direction_deg", "height_mm"))
        on = plus([cosine(direction) * c for c in placed.towards], placed.left, sine(direction))
        found.append(Mass("bag", kg, plus(plus(placed.column, on, out_mm), up, height)))
    return [m for m in found if m.kg > 0]


def edges_of(feet):
    """Each edge as its first foot and its outward direction, from the feet alone."""
    found = []
    for a, c in zip(feet, feet[1:] + feet[:1]):
        way = minus(c, a)
        found.append((a, [way[1] / length(way), -way[0] / length(way), mpf(0)]))
    return found


def about(edge, found):
    """Restoring and overturning moment in kg mm, and the masses' mean distance inside."""
    inside = [(m.kg, -dot(minus(m.at, edge[0]), edge[1])) for m in found]
    restoring = sum((kg * d for kg, d in inside if d > 0), mpf(0))
    overturning = sum((-kg * d for kg, d in inside if d < 0), mpf(0))
    return restoring, overturning


def nearest(values):
    """Index of the least; all that are no more than rounding apart, when there are several."""
    least = min(values)
    scale = max(abs(least), mpf(1)) if least != mp.inf else 1
    alike = [i + 1 for i, v in enumerate(values) if v - least < mpf("1e-30") * scale]
    for v in values:
        if mpf("1e-30") * scale <= v - least < mpf("1e-9") * scale:
            raise Fence("two edges alike")
    return alike


def standing(b, found, placed, pivot_height, name, out):
    total = sum((m.kg for m in found), mpf(0))
    centre = [sum((m.kg * m.at[i] for m in found), mpf(0)) / total for i in range(3)]
    edges = edges_of(placed.feet)
    margins = [-dot(minus(centre, foot), outward) for foot, outward in edges]
    pairs = [about(edge, found) for edge in edges]
    factors = [r / o if over(o, total) else mp.inf for r, o in pairs]
    at = nearest(margins)
    worst = nearest(factors) if min(factors) != mp.inf else at
    margin = min(margins)
    put = lambda key, value: out.__setitem__(f"{name}_{key}", value)
    put("mass", total)
    for part, value in zip("xyz", centre):
        put("centre_" + part, value)
    # What the margin is the difference of, for the size of its error: and so for tilt and push.
    size = max((r + o) / total for r, o in pairs)
    put("margin", margin)
    put("margin_scale", size)
    put("tilt_scale", in_degrees(mp.atan2(size, centre[2])))
    put("push_scale", total * GRAVITY * size / pivot_height)
    put("margin_edge", at)
    put("factor", min(factors))
    put("factor_edge", worst)
    if len(worst) == 1:
        r, o = pairs[worst[0] - 1]
        _, outward = edges[worst[0] - 1]
        turn = in_degrees(mp.atan2(dot(outward, placed.left), dot(outward, placed.towards)))
        put("edge_direction", turn + 360 if turn < 0 else turn)
        put("restoring", r * GRAVITY / 1000)
        put("overturning", o * GRAVITY / 1000)
    else:
        for key in "edge_direction", "restoring", "overturning":
            put(key, "any")
    put("tilt", in_degrees(mp.atan2(margin, centre[2])))
    put("push", total * GRAVITY * margin / pivot_height if over(pivot_height) else mp.inf)
    loose = [m for m in found if m.kind in ("payload", "boom", "counterweight")]
    moment = [sum((m.kg * (m.at[i] - placed.column[i]) for m in loose), mpf(0)) for i in (0, 1)]
    whole = placed.boom_length + (b["tail_mm"] or 0)
    arms = sum((m.kg * (whole if m.kind == "boom" else length(minus(m.at, placed.clamp))) for m in loose), mpf(0))
    put("clamp_moment", mp.hypot(*moment) * GRAVITY / 1000 if placed.boom_used else mpf(0))
    put("clamp_moment_scale", arms * GRAVITY / 1000)


def stability(b, camera, placed, found, out):
    pivot_height = camera.pivot[2]
    keep = {
        "as_shot": found,
        "camera_off": [m for m in found if m.kind != "payload"],
        "counterweight_off": [m for m in found if m.kind != "counterweight"],
    }
    for name in STATES:
        standing(b, keep[name], placed, pivot_height, name, out)
    payload = found[0]
    limits = []
    for edge in edges_of(placed.feet):
        outside = dot(minus(payload.at, edge[0]), edge[1])
        if over(outside):
            restoring, overturning = about(edge, keep["camera_off"])
            limits.append(max(restoring - overturning, mpf(0)) / outside)
    to_tip = min(limits, default=mp.inf)
    out["payload_to_tip"] = to_tip
    out["payload_share"] = mpf(0) if to_tip == mp.inf else payload.kg / to_tip if to_tip > 0 else mp.inf
    weighted = any(m.kind == "counterweight" for m in found)
    camera_off, counterweight_off = out["camera_off_margin"], out["counterweight_off_margin"]
    if weighted:
        over(camera_off), over(counterweight_off), over(camera_off - counterweight_off)
    out["removal"] = (
        "no_counterweight" if not weighted
        else "hold_both" if camera_off <= 0 and counterweight_off <= 0
        else "camera_first" if camera_off >= counterweight_off
        else "counterweight_first"
    )
    out["overhead"] = placed.boom_used or out["sensor_from_edge_mm"] < 0
    return keep
