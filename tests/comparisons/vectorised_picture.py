"""A million briefs at once in NumPy: lens, pose, picture, focus, tolerance. A brief is a dict of columns; what is not
there is NaN. Points are tuples of three columns."""

import numpy as np

from plain_picture import DIFFRACTION_MM, ENGRAVED, THIRDS

MARKS, EXACT = np.array(ENGRAVED), np.array(THIRDS)


def given(column):
    return ~np.isnan(column)


def sine(angle_deg):
    return np.where(angle_deg % 180 == 0, 0.0, np.sin(np.radians(angle_deg)))


def cosine(angle_deg):
    return np.where(angle_deg % 180 == 90, 0.0, np.cos(np.radians(angle_deg)))


def focal_length(b, m):
    f, largest = b["focal_length"], b["largest_magnification"]
    closest = (b["closest_focus"] - b["principal_separation"]) * largest / (1 + largest) ** 2
    return np.where(given(closest), f + (closest - f) * np.minimum(m / largest, 1.0), f)


def sensor_distance(b, m):
    return focal_length(b, m) * (1 + m) ** 2 / m + b["principal_separation"]


def lens(b, o):
    upright = b["upright"] == 1
    w = np.where(upright, b["sensor_height"], b["sensor_width"])
    h = np.where(upright, b["sensor_width"], b["sensor_height"])
    shape = b["aspect_width"] / b["aspect_height"]
    wide = shape > w / h
    w, h = np.where(given(shape) & ~wide, h * shape, w), np.where(wide, w / shape, h)
    o["used_width"], o["used_height"] = w, h
    width = b["frame_width"]
    m = o["magnification"] = w / width
    f = o["focal_length"] = focal_length(b, m)
    s = o["pupil_distance"] = f * (1 / m + 1 / b["pupil_ratio"])
    height = o["frame_height"] = h / m
    o["sensor_distance"] = sensor_distance(b, m)
    o["image_distance"], o["object_distance"] = f * (1 + m), f * (1 + 1 / m)
    o["horizontal"] = np.degrees(2 * np.arctan(width / (2 * s)))
    o["vertical"] = np.degrees(2 * np.arctan(height / (2 * s)))
    o["diagonal"] = np.degrees(2 * np.arctan(np.hypot(width, height) / (2 * s)))


def along(point, direction, distance):
    return tuple(p + distance * d for p, d in zip(point, direction))


def dot(a, b):
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]


def minus(a, b):
    return a[0] - b[0], a[1] - b[1], a[2] - b[2]


def from_table(b, point):
    x, y = np.abs(point[0]) - b["table_width"] / 2, np.abs(point[1]) - b["table_depth"] / 2
    return np.where((x > 0) & (y > 0), np.hypot(x, y), np.maximum(x, y))


def pose(b, o):
    se, ce = sine(b["elevation"]), cosine(b["elevation"])
    sb, cb = sine(b["bearing"]), cosine(b["bearing"])
    o["forward"] = forward = (-sb * ce, cb * ce, -se)
    o["right"] = (cb, sb, np.zeros_like(cb))
    o["up"] = up = (-sb * se, cb * se, ce)
    o["aim_height"] = np.where(given(b["aim_height"]), b["aim_height"], b["subject_height"] / 2)
    o["aim"] = aim = (b["aim_x"], b["aim_y"], b["table_height"] + o["aim_height"])
    d = o["sensor_distance"]
    o["pupil"] = along(aim, forward, -o["pupil_distance"])
    o["sensor"] = sensor = along(aim, forward, -d)
    o["socket"] = along(along(sensor, forward, b["socket_ahead"]), up, -b["socket_below"])
    o["pivot"] = along(o["socket"], up, -b["pivot_below"])
    front = np.nan_to_num(b["front_from_sensor"])
    o["body_top"] = sensor[2] + np.maximum(b["body_behind"] * se, -front * se) + b["body_above"] * ce
    o["sensor_from_aim"] = d * ce
    o["pivot_from_aim"] = (d - b["socket_ahead"]) * ce + (b["socket_below"] + b["pivot_below"]) * se
    o["sensor_from_edge"], o["pivot_from_edge"] = from_table(b, sensor), from_table(b, o["pivot"])
    o["front_clearance"] = d - b["front_from_sensor"]


def seen(o, point):
    d = minus(point, o["pupil"])
    return dot(d, o["right"]), dot(d, o["up"]), dot(d, o["forward"])


def cut(sides):
    """Start and end, as shares of the way, of what lies inside all sides; past each other where nothing does."""
    start, end = np.zeros_like(sides[0][0]), np.ones_like(sides[0][0])
    for at_a, at_c in sides:
        t = at_a / np.where(at_a == at_c, 1.0, at_a - at_c)
        start = np.where(at_a < 0, np.maximum(start, t), start)
        end = np.where(at_c < 0, np.minimum(end, t), end)
        end = np.where((at_a < 0) & (at_c < 0), -1.0, end)
    return start, end


def shown(b, o, a, c):
    s, x, y = o["pupil_distance"], b["frame_width"] / 2, o["frame_height"] / 2
    (ra, ua, da), (rc, uc, dc) = seen(o, a), seen(o, c)
    x, y = x / s, y / s
    return cut([(x * da - ra, x * dc - rc), (x * da + ra, x * dc + rc), (y * da - ua, y * dc - uc), (y * da + ua, y * dc + uc)])


def shown_length(b, o, a, c):
    start, end = shown(b, o, a, c)
    way = minus(c, a)
    return np.where(end > start, (end - start) * np.sqrt(dot(way, way)), 0.0)


def footprint(b, o):
    s, x, y = o["pupil_distance"], b["frame_width"] / 2, o["frame_height"] / 2
    forward, right, up, pupil, aim = o["forward"], o["right"], o["up"], o["pupil"], o["aim"]
    above = pupil[2] - b["table_height"]
    visible = above > 0
    half = b["table_width"] / 2, b["table_depth"] / 2

    def ray(u, v):
        return tuple(s * f + u * r + v * t for f, r, t in zip(forward, right, up))

    frame = [(-x, -y), (x, -y), (x, y), (-x, y)]
    rays = [ray(*place) for place in frame]
    corners = []
    for name, way in zip(("near_left", "near_right", "far_right", "far_left"), rays):
        far = np.where(visible & (way[2] < 0), above / -way[2], np.nan)
        corners.append((pupil[0] + far * way[0], pupil[1] + far * way[1]))
        o[name + "_x"], o[name + "_y"] = corners[-1]
    near, far = [np.where(visible & (way[2] < 0), above / -way[2], np.nan) for way in (rays[0], rays[2])]
    both = given(near) & given(far)
    o["near_width"], o["far_width"], o["keystone"] = near * 2 * x, far * 2 * x, far / near
    on = (-right[1], right[0])
    lines = [(c[0] - aim[0]) * on[0] + (c[1] - aim[1]) * on[1] for c in (corners[0], corners[2])]
    middle = (lines[0] + lines[1]) / 2
    o["footprint_depth"] = lines[1] - lines[0]
    o["board_width"] = np.where(both, 2 * x * np.fmax(near, far), np.nan)
    o["board_x"], o["board_y"] = aim[0] + middle * on[0], aim[1] + middle * on[1]
    # The area common to frame and table, by its rim: the frame's sides inside the table, and the table's inside the
    # frame, each pair of ends seen in the picture.
    limits = [[-way[2] for way in rays]]
    for axis in 0, 1:
        for sign in 1, -1:
            limits.append([half[axis] * -way[2] - sign * (pupil[axis] * -way[2] + above * way[axis]) for way in rays])
    twice = 0.0
    for i in range(4):
        j = (i + 1) % 4
        start, end = cut([(limit[i], limit[j]) for limit in limits])
        (ax, ay), (cx, cy) = frame[i], frame[j]
        twice = twice + np.where(end > start, (end - start) * (ax * cy - cx * ay), 0.0)
    z = b["table_height"]
    ends = [(-half[0], -half[1], z), (half[0], -half[1], z), (half[0], half[1], z), (-half[0], half[1], z)]
    for i, name in enumerate(("edge_front", "edge_right", "edge_back", "edge_left")):
        a, c = ends[i], ends[(i + 1) % 4]
        start, end = shown(b, o, a, c)
        inside = visible & (end > start)
        way = minus(c, a)
        (ar, au, ad), (cr, cu, cd) = seen(o, along(a, way, start)), seen(o, along(a, way, end))
        ad, cd = np.where(inside, ad, 1.0), np.where(inside, cd, 1.0)
        twice = twice + np.where(inside, s * s / (ad * cd) * (ar * cu - cr * au), 0.0)
        o[name] = inside.astype(float)
    o["table_share"] = np.where(visible, np.minimum(np.abs(twice) / 2 / (4 * x * y), 1.0), np.nan)
    backdrop(b, o)


def backdrop(b, o):
    s, half, se, ce, aim = o["pupil_distance"], o["frame_height"] / 2, -o["forward"][2], o["up"][2], o["aim_height"]
    behind = b["backdrop"]
    depth = s + behind * ce + aim * se
    foot = np.where(depth > 0, s * (behind * se - aim * ce) / depth, -half)
    foot = np.maximum(foot, -half)
    none = foot >= half

    def sight(v):
        level = s * ce + v * se
        return np.where(level > 0, (behind + s * ce) / level, np.inf)

    top, bottom = sight(half), sight(foot)
    there = given(behind)
    height = np.where(top < np.inf, aim + s * se + top * (half * ce - s * se), np.inf)
    for name, value in (("width", b["frame_width"] * np.maximum(top, bottom)), ("height", height),
                        ("share", (half - foot) / (2 * half))):
        o["backdrop_" + name] = np.where(there, np.where(none, 0.0, value), np.nan)


def outline(b, o):
    s, se, ce = o["pupil_distance"], -o["forward"][2], o["up"][2]
    cb, sb = o["right"][0], o["right"][1]
    h, aim, is_round = b["subject_height"], o["aim_height"], b["round"] == 1
    w, d, r = b["subject_width"], b["subject_depth"], b["subject_diameter"] / 2
    level = ce * np.where(is_round, r, (w * np.abs(sb) + d * np.abs(cb)) / 2)
    o["nearest"] = level + np.maximum((h - aim) * se, -aim * se)
    o["farthest"] = level + np.maximum(aim * se, -(h - aim) * se)
    seen_whole = o["nearest"] < s
    xs, ys = [], []
    for z in -aim, h - aim:
        middle = s - z * se
        across = s * r / np.sqrt((middle - r * ce) * (middle + r * ce))
        rounds = [(-across, s * (z * ce - r * se) / (middle - r * ce)), (across, s * (z * ce + r * se) / (middle + r * ce))]
        for i, j in ((-1, -1), (1, 1), (-1, 1), (1, -1)):
            u, v = i * w / 2, j * d / 2
            away = v * cb - u * sb
            scale = s / (middle + away * ce)
            # The round's two places stand for a box's four.
            round_x, round_y = rounds[(i + 1) // 2]
            xs.append(np.where(is_round, round_x, scale * (u * cb + v * sb)))
            ys.append(np.where(is_round, round_y, scale * (z * ce + away * se)))
    least = [np.where(seen_whole, np.minimum.reduce(values), np.nan) for values in (xs, ys)]
    most = [np.where(seen_whole, np.maximum.reduce(values), np.nan) for values in (xs, ys)]
    (left, bottom), (right, top) = least, most
    width, height = b["frame_width"], o["frame_height"]
    o["left"], o["right_side"], o["bottom"], o["top"] = left, right, bottom, top
    o["fill_width"], o["fill_height"] = (right - left) / width, (top - bottom) / height
    o["room_above"], o["room_below"] = height / 2 - top, height / 2 + bottom
    o["room_left"], o["room_right"] = width / 2 + left, width / 2 - right


def overlap(r, other, apart):
    x = (apart * apart + r * r - other * other) / (2 * apart)
    y = apart - x
    chord = np.sqrt(np.maximum(r * r - x * x, 0.0))
    area = r * r * np.arctan2(chord, x) - x * chord + other * other * np.arctan2(chord, y) - y * chord
    part = area / (np.pi * r * r)
    return np.where(apart >= r + other, 0.0, np.where(apart <= other - r, 1.0, part))


def shares(b, o):
    s, se, ce = o["pupil_distance"], -o["forward"][2], o["up"][2]
    cb, sb, h, is_round = o["right"][0], o["right"][1], b["subject_height"], b["round"] == 1
    w, d, across = b["subject_width"], b["subject_depth"], b["subject_diameter"]
    top = np.where(is_round, np.pi * across**2 / 4, w * d)
    side = np.where(is_round, across, w * np.abs(cb) + d * np.abs(sb)) * h
    o["top_share"] = np.where(se > 0, se * top / (se * top + ce * side), 0.0)
    o["side_share"] = 1 - o["top_share"]
    r, gap, there = b["vessel_diameter"] / 2, b["vessel_below"], given(b["vessel_diameter"])
    above = o["aim_height"] + s * se - h
    near = np.where(above > 0, overlap(r, r * (above + gap) / above, s * ce * gap / above), 0.0)
    far = np.where(se > 0, overlap(r, r, gap * ce / se), 0.0)
    o["contents"], o["contents_far"] = np.where(there, near, np.nan), np.where(there, far, np.nan)


def on_scale(n):
    index = np.minimum(np.searchsorted(MARKS, n), len(MARKS) - 1)
    return np.where(MARKS[index] == n, EXACT[index], n)


def focus(b, o):
    m, f, p, s = o["magnification"], o["focal_length"], b["pupil_ratio"], o["pupil_distance"]
    c = np.where(given(b["circle"]), b["circle"], np.hypot(b["sensor_width"], b["sensor_height"]) / 1500)
    near, far = o["nearest"], o["farthest"]
    needed = np.maximum(np.maximum(m * f * near / (c * (s - near)), m * f * far / (c * (s + far))), 0.0)
    needed = np.where(near >= s, np.inf, needed)
    limit = c / (DIFFRACTION_MM * (1 + m / p))
    least, most = on_scale(b["least_f"]), on_scale(b["most_f"])
    up = EXACT[np.minimum(np.searchsorted(EXACT, needed), len(EXACT) - 1)]
    hold = np.where(needed <= least, least, np.where(needed <= most, np.minimum(up, most), np.nan))
    down = EXACT[np.maximum(np.searchsorted(EXACT, limit, side="right") - 1, 0)]
    best = np.minimum(np.maximum(down, least), most)
    single = given(hold) & ((hold <= limit) | (needed <= least))
    n = np.where(given(b["f_number"]), b["f_number"], np.where(single, hold, best))
    finite = n * c < m * f
    o["circle"], o["f_number"], o["f_needed"], o["f_hold"] = c, n, needed, hold
    o["f_effective"], o["stops_lost"] = n * (1 + m / p), 2 * np.log2(1 + m / p)
    o["disc"], o["f_diffraction"] = DIFFRACTION_MM * n * (1 + m / p), limit
    o["near_limit"], o["in_front"] = m * f * s / (m * f + n * c), s * n * c / (m * f + n * c)
    o["far_limit"] = np.where(finite, m * f * s / (m * f - n * c), np.inf)
    o["behind"] = np.where(finite, s * n * c / (m * f - n * c), np.inf)
    edge = f / p
    stacked = ~single & (s - near > edge)
    a = best * c / (f * p)
    whole = np.log((1 - edge / (s + far)) / (1 - edge / (s - near)))
    piece = np.where(a < 1, np.log((1 + a) / (1 - a)), np.inf)
    advance = piece * (1 - b["overlap"])
    pictures = np.where(whole <= piece, 1.0, np.ceil((whole - piece) / advance + 1))
    o["pictures"] = np.where(stacked, pictures, np.nan)
    o["step"] = np.where(stacked, s * (s - edge) / edge * advance, np.nan)


def tilt_and_look(b, o):
    se, ce, s, f = -o["forward"][2], o["up"][2], o["pupil_distance"], o["focal_length"]
    level = ce > 0
    hinge = np.where(level, (o["aim_height"] + o["object_distance"] * se) / ce, np.inf)
    o["hinge"] = hinge
    o["tilt"] = np.where(level, np.where(hinge >= f, np.degrees(np.arcsin(f / hinge)), np.nan), 0.0)
    side, high = b["frame_width"] / (2 * s), o["frame_height"] / (2 * s)
    o["side_stretch"], o["corner_stretch"] = np.sqrt(1 + side**2), np.sqrt(1 + side**2 + high**2)
    ahead = o["nearest"] < s
    o["size_ratio"] = np.where(ahead, (s + o["farthest"]) / (s - o["nearest"]), np.nan)
    top = s - (b["subject_height"] - o["aim_height"]) * se
    o["convergence"] = np.where(ahead, (s + o["aim_height"] * se) / top, np.nan)


def tolerance(b, o):
    m, share, d = o["magnification"], b["width_tolerance"], o["sensor_distance"]
    largest = b["largest_magnification"]
    turn = np.where(given(b["closest_focus"]) & given(largest), np.fmax(largest, 1.0), 1.0)
    narrow, wide, before = m / (1 - share), m / (1 + share), m <= turn
    near = sensor_distance(b, np.where(before, np.minimum(narrow, turn), np.maximum(wide, turn)))
    far = sensor_distance(b, np.where(before, wide, narrow))
    e, t = b["elevation"], b["elevation_tolerance"]
    h, x = d * sine(e), d * cosine(e)

    def circle(start, across):
        inner = -start - np.sqrt((near - across) * (near + across))
        outer = np.sqrt((far - across) * (far + across)) - start
        return np.where((start < 0) & (near > np.abs(across)), inner, outer)

    def ray(towards):
        return np.where(towards > 0, d * sine(t) / towards, np.inf)

    more, less = sine(e + t), sine(e - t)
    away = np.where(h > 0, ray(less), np.where(h < 0, ray(-more), np.inf))
    closer = np.where(h > 0, ray(more), np.where(h < 0, ray(-less), np.inf))
    o["up_tolerance"] = np.minimum(ray(cosine(e + t)), circle(h, x))
    o["down_tolerance"] = np.minimum(ray(cosine(e - t)), circle(-h, x))
    o["away_tolerance"], o["closer_tolerance"] = np.minimum(away, circle(x, h)), np.minimum(closer, circle(-x, h))
    o["roll_drift"] = b["frame_width"] * np.tan(np.radians(b["roll_tolerance"]))
