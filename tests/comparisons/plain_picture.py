"""One brief at a time with Python's math module: lens, pose, picture, focus, tolerance. Brief and plan are dicts; what
is not there is None. The formulas are the textbook ones, written down from what each output means."""

from math import asin, atan, atan2, ceil, cos, hypot, inf, log, log2, pi, radians, sin, sqrt, tan, degrees

THIRDS = [2 ** (k / 6) for k in range(-6, 55)]
ENGRAVED = [0.5, 0.56, 0.63, 0.7, 0.8, 0.9, 1, 1.1, 1.2, 1.4, 1.6, 1.8, 2, 2.2, 2.5, 2.8, 3.2, 3.5, 4, 4.5, 5, 5.6, 6.3,
            7.1, 8, 9, 10, 11, 13, 14, 16, 18, 20, 22, 25, 29, 32, 36, 40, 45, 51, 57, 64, 72, 80, 90, 102, 114, 128, 144,
            161, 181, 203, 228, 256, 287, 323, 362, 406, 456, 512]
DIFFRACTION_MM = 2.44 * 550e-6


def sine(angle_deg):
    return 0.0 if angle_deg % 180 == 0 else sin(radians(angle_deg))


def cosine(angle_deg):
    return 0.0 if angle_deg % 180 == 90 else cos(radians(angle_deg))


def focal_length(b, m):
    f, largest = b["focal_length"], b["largest_magnification"]
    if b["closest_focus"] is None or largest is None:
        return f
    closest = (b["closest_focus"] - b["principal_separation"]) * largest / (1 + largest) ** 2
    return f + (closest - f) * min(m / largest, 1.0)


def sensor_distance(b, m):
    return focal_length(b, m) * (1 + m) ** 2 / m + b["principal_separation"]


def lens(b, out):
    w, h = b["sensor_width"], b["sensor_height"]
    if b["upright"]:
        w, h = h, w
    if b["aspect_width"] is not None:
        shape = b["aspect_width"] / b["aspect_height"]
        w, h = (w, w / shape) if shape > w / h else (h * shape, h)
    width = b["frame_width"]
    m = w / width
    f = focal_length(b, m)
    s = f * (1 / m + 1 / b["pupil_ratio"])
    height = h / m
    out.update(
        used_width=w, used_height=h, frame_height=height, magnification=m, focal_length=f, pupil_distance=s,
        sensor_distance=sensor_distance(b, m), image_distance=f * (1 + m), object_distance=f * (1 + 1 / m),
        horizontal=degrees(2 * atan(width / (2 * s))), vertical=degrees(2 * atan(height / (2 * s))),
        diagonal=degrees(2 * atan(hypot(width, height) / (2 * s))),
    )


def along(point, direction, distance):
    return [p + distance * d for p, d in zip(point, direction)]


def dot(a, b):
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]


def minus(a, b):
    return [a[0] - b[0], a[1] - b[1], a[2] - b[2]]


def from_table(b, point):
    x, y = abs(point[0]) - b["table_width"] / 2, abs(point[1]) - b["table_depth"] / 2
    return hypot(x, y) if x > 0 and y > 0 else max(x, y)


def pose(b, out):
    se, ce = sine(b["elevation"]), cosine(b["elevation"])
    sb, cb = sine(b["bearing"]), cosine(b["bearing"])
    forward, right, up = [-sb * ce, cb * ce, -se], [cb, sb, 0.0], [-sb * se, cb * se, ce]
    aim_height = b["subject_height"] / 2 if b["aim_height"] is None else b["aim_height"]
    aim = [b["aim_x"], b["aim_y"], b["table_height"] + aim_height]
    d = out["sensor_distance"]
    sensor = along(aim, forward, -d)
    socket = along(along(sensor, forward, b["socket_ahead"]), up, -b["socket_below"])
    pivot = along(socket, up, -b["pivot_below"])
    front = b["front_from_sensor"]
    out.update(
        forward=forward, right=right, up=up, aim=aim, pupil=along(aim, forward, -out["pupil_distance"]), sensor=sensor,
        socket=socket, pivot=pivot, aim_height=aim_height,
        body_top=sensor[2] + max(b["body_behind"] * se, -(front or 0.0) * se) + b["body_above"] * ce,
        sensor_from_aim=d * ce,
        pivot_from_aim=(d - b["socket_ahead"]) * ce + (b["socket_below"] + b["pivot_below"]) * se,
        sensor_from_edge=from_table(b, sensor), pivot_from_edge=from_table(b, pivot),
        front_clearance=None if front is None else d - front,
    )


def seen(out, point):
    d = minus(point, out["pupil"])
    return dot(d, out["right"]), dot(d, out["up"]), dot(d, out["forward"])


def shown(b, out, a, c):
    """The part of a line from a to c that the frame shows, as shares of the way; none where start passes end."""
    start, end = 0.0, 1.0
    s, x, y = out["pupil_distance"], b["frame_width"] / 2, out["frame_height"] / 2
    (ra, ua, da), (rc, uc, dc) = seen(out, a), seen(out, c)
    for at_a, at_c in ((x * da / s - ra, x * dc / s - rc), (x * da / s + ra, x * dc / s + rc),
                       (y * da / s - ua, y * dc / s - uc), (y * da / s + ua, y * dc / s + uc)):
        if at_a < 0 and at_c < 0:
            return 1.0, 0.0
        if at_a < 0:
            start = max(start, at_a / (at_a - at_c))
        elif at_c < 0:
            end = min(end, at_a / (at_a - at_c))
    return start, end


def shown_length(b, out, a, c):
    start, end = shown(b, out, a, c)
    return (end - start) * sqrt(dot(minus(c, a), minus(c, a))) if end > start else 0.0


def clipped(polygon, inside):
    kept = []
    for a, c in zip(polygon, polygon[1:] + polygon[:1]):
        at_a, at_c = inside(a), inside(c)
        if at_a >= 0:
            kept.append(a)
        if (at_a < 0) != (at_c < 0):
            t = at_a / (at_a - at_c)
            kept.append((a[0] + t * (c[0] - a[0]), a[1] + t * (c[1] - a[1])))
    return kept


def footprint(b, out):
    s, x, y = out["pupil_distance"], b["frame_width"] / 2, out["frame_height"] / 2
    forward, right, up, pupil = out["forward"], out["right"], out["up"], out["pupil"]
    above = pupil[2] - b["table_height"]
    half = b["table_width"] / 2, b["table_depth"] / 2
    names = "near_width", "far_width", "keystone", "footprint_depth", "table_share", "board_width", "board_x", "board_y"
    out.update(dict.fromkeys(names), edges=[False] * 4, corners=[None] * 4)
    if above > 0:
        def ray(place):
            return [s * f + place[0] * r + place[1] * u for f, r, u in zip(forward, right, up)]

        frame = [(-x, -y), (x, -y), (x, y), (-x, y)]
        corners = []
        for place in frame:
            way = ray(place)
            corners.append(along(pupil, way, above / -way[2])[:2] if way[2] < 0 else None)
        near, far = [above / -ray((0, v))[2] if ray((0, v))[2] < 0 else None for v in (-y, y)]
        out["corners"] = corners
        out["near_width"] = near and near * 2 * x
        out["far_width"] = far and far * 2 * x
        if near and far:
            on = [-right[1], right[0]]
            out["keystone"] = far / near
            lines = [(c[0] - out["aim"][0]) * on[0] + (c[1] - out["aim"][1]) * on[1] for c in (corners[0], corners[2])]
            middle = (lines[0] + lines[1]) / 2
            out["footprint_depth"] = lines[1] - lines[0]
            out["board_width"] = 2 * x * max(near, far)
            out["board_x"], out["board_y"] = out["aim"][0] + middle * on[0], out["aim"][1] + middle * on[1]
        polygon = clipped(frame, lambda place: -ray(place)[2])
        for axis in 0, 1:
            for sign in 1, -1:
                def inside(place):
                    way = ray(place)
                    return half[axis] * -way[2] - sign * (pupil[axis] * -way[2] + above * way[axis])
                polygon = clipped(polygon, inside) if polygon else []
        area = sum(a[0] * c[1] - c[0] * a[1] for a, c in zip(polygon, polygon[1:] + polygon[:1]))
        out["table_share"] = min(abs(area) / 2 / (4 * x * y), 1.0)
        z = b["table_height"]
        ends = [[-half[0], -half[1], z], [half[0], -half[1], z], [half[0], half[1], z], [-half[0], half[1], z]]
        out["edges"] = [shown_length(b, out, a, c) > 0 for a, c in zip(ends, ends[1:] + ends[:1])]
    backdrop(b, out)


def backdrop(b, out):
    out["backdrop_width"] = out["backdrop_height"] = out["backdrop_share"] = None
    behind = b["backdrop"]
    if behind is None:
        return
    s, half, se, ce = out["pupil_distance"], out["frame_height"] / 2, -out["forward"][2], out["up"][2]
    depth = s + behind * ce + out["aim_height"] * se
    foot = max(s * (behind * se - out["aim_height"] * ce) / depth if depth > 0 else -half, -half)
    if foot >= half:
        out["backdrop_width"] = out["backdrop_height"] = out["backdrop_share"] = 0.0
        return
    top, bottom = [(behind + s * ce) / (s * ce + v * se) if s * ce + v * se > 0 else inf for v in (half, foot)]
    out["backdrop_width"] = b["frame_width"] * max(top, bottom)
    out["backdrop_height"] = out["aim_height"] + s * se + top * (half * ce - s * se) if top < inf else inf
    out["backdrop_share"] = (half - foot) / (2 * half)


def outline(b, out):
    s, se, ce = out["pupil_distance"], -out["forward"][2], out["up"][2]
    cb, sb = out["right"][0], out["right"][1]
    h, aim = b["subject_height"], out["aim_height"]
    if b["round"]:
        level = ce * b["subject_diameter"] / 2
    else:
        level = ce * (b["subject_width"] * abs(sb) + b["subject_depth"] * abs(cb)) / 2
    nearest = level + max((h - aim) * se, -aim * se)
    farthest = level + max(aim * se, -(h - aim) * se)
    names = "left", "right_side", "bottom", "top", "fill_width", "fill_height", "room_above", "room_below", "room_left", "room_right"
    out.update(dict.fromkeys(names), nearest=nearest, farthest=farthest)
    if nearest >= s:
        return
    xs, ys = [], []
    for z in -aim, h - aim:
        if b["round"]:
            r, middle = b["subject_diameter"] / 2, s - z * se
            xs += [s * r / sqrt((middle - r * ce) * (middle + r * ce)), -s * r / sqrt((middle - r * ce) * (middle + r * ce))]
            ys += [s * (z * ce - r * se) / (middle - r * ce), s * (z * ce + r * se) / (middle + r * ce)]
        else:
            for i in -b["subject_width"] / 2, b["subject_width"] / 2:
                for j in -b["subject_depth"] / 2, b["subject_depth"] / 2:
                    away, depth = j * cb - i * sb, s - z * se + (j * cb - i * sb) * ce
                    xs.append(s * (i * cb + j * sb) / depth)
                    ys.append(s * (z * ce + away * se) / depth)
    left, right, bottom, top = min(xs), max(xs), min(ys), max(ys)
    w, v = b["frame_width"], out["frame_height"]
    out.update(left=left, right_side=right, bottom=bottom, top=top, fill_width=(right - left) / w,
               fill_height=(top - bottom) / v, room_above=v / 2 - top, room_below=v / 2 + bottom, room_left=w / 2 + left,
               room_right=w / 2 - right)


def overlap(r, other, apart):
    """Of two circles, as a share of the first."""
    if apart >= r + other:
        return 0.0
    if apart <= other - r:
        return 1.0
    x = (apart * apart + r * r - other * other) / (2 * apart)
    y = apart - x
    chord = sqrt(max(r * r - x * x, 0.0))
    return (r * r * atan2(chord, x) - x * chord + other * other * atan2(chord, y) - y * chord) / (pi * r * r)


def shares(b, out):
    s, se, ce = out["pupil_distance"], -out["forward"][2], out["up"][2]
    cb, sb = out["right"][0], out["right"][1]
    if b["round"]:
        top, side = pi * b["subject_diameter"] ** 2 / 4, b["subject_diameter"] * b["subject_height"]
    else:
        top = b["subject_width"] * b["subject_depth"]
        side = (b["subject_width"] * abs(cb) + b["subject_depth"] * abs(sb)) * b["subject_height"]
    out["top_share"] = se * top / (se * top + ce * side) if se > 0 else 0.0
    out["side_share"] = 1 - out["top_share"]
    out["contents"] = out["contents_far"] = None
    if b["vessel_diameter"] is not None:
        r, gap = b["vessel_diameter"] / 2, b["vessel_below"]
        above = out["aim_height"] + s * se - b["subject_height"]
        out["contents"] = overlap(r, r * (above + gap) / above, s * ce * gap / above) if above > 0 else 0.0
        out["contents_far"] = overlap(r, r, gap * ce / se) if se > 0 else 0.0


def focus(b, out):
    m, f, p, s = out["magnification"], out["focal_length"], b["pupil_ratio"], out["pupil_distance"]
    c = b["circle"] or hypot(b["sensor_width"], b["sensor_height"]) / 1500
    near, far = out["nearest"], out["farthest"]
    needed = inf if near >= s else max(m * f * near / (c * (s - near)), m * f * far / (c * (s + far)), 0.0)
    limit = c / (DIFFRACTION_MM * (1 + m / p))
    marks = dict(zip(ENGRAVED, THIRDS))
    least, most = marks.get(b["least_f"], b["least_f"]), marks.get(b["most_f"], b["most_f"])
    hold = least if needed <= least else min(next(t for t in THIRDS if t >= needed), most) if needed <= most else None
    best = min(max(max((t for t in THIRDS if t <= limit), default=THIRDS[0]), least), most)
    single = hold is not None and (hold <= limit or needed <= least)
    n = b["f_number"] or (hold if single else best)
    out.update(circle=c, f_number=n, f_needed=needed, f_hold=hold, f_effective=n * (1 + m / p),
               stops_lost=2 * log2(1 + m / p), disc=DIFFRACTION_MM * n * (1 + m / p), f_diffraction=limit,
               near_limit=m * f * s / (m * f + n * c), in_front=s * n * c / (m * f + n * c),
               far_limit=m * f * s / (m * f - n * c) if n * c < m * f else inf,
               behind=s * n * c / (m * f - n * c) if n * c < m * f else inf, pictures=None, step=None)
    edge = f / p
    if not single and s - near > edge:
        a = best * c / (f * p)
        whole = log((1 - edge / (s + far)) / (1 - edge / (s - near)))
        piece = log((1 + a) / (1 - a)) if a < 1 else inf
        out["pictures"] = 1 if whole <= piece else ceil((whole - piece) / (piece * (1 - b["overlap"])) + 1)
        out["step"] = s * (s - edge) / edge * piece * (1 - b["overlap"])


def tilt_and_look(b, out):
    se, ce, s = -out["forward"][2], out["up"][2], out["pupil_distance"]
    out["hinge"], out["tilt"] = inf, 0.0
    if ce > 0:
        out["hinge"] = (out["aim_height"] + out["object_distance"] * se) / ce
        f = out["focal_length"]
        out["tilt"] = degrees(asin(f / out["hinge"])) if out["hinge"] >= f else None
    side, high = b["frame_width"] / (2 * s), out["frame_height"] / (2 * s)
    out["side_stretch"], out["corner_stretch"] = sqrt(1 + side**2), sqrt(1 + side**2 + high**2)
    out["size_ratio"] = out["convergence"] = None
    if out["nearest"] < s:
        out["size_ratio"] = (s + out["farthest"]) / (s - out["nearest"])
        out["convergence"] = (s + out["aim_height"] * se) / (s - (b["subject_height"] - out["aim_height"]) * se)


def tolerance(b, out):
    m, share, d = out["magnification"], b["width_tolerance"], out["sensor_distance"]
    both = b["closest_focus"] is not None and b["largest_magnification"] is not None
    turn = max(b["largest_magnification"], 1.0) if both else 1.0
    narrow, wide = m / (1 - share), m / (1 + share)
    ends = (min(narrow, turn), wide) if m <= turn else (max(wide, turn), narrow)
    near, far = [sensor_distance(b, end) for end in ends]
    e, t = b["elevation"], b["elevation_tolerance"]
    h, x = d * sine(e), d * cosine(e)

    def circle(start, across):
        if start < 0 and near > abs(across):
            return -start - sqrt((near - across) * (near + across))
        return sqrt((far - across) * (far + across)) - start

    def ray(towards):
        return d * sine(t) / towards if towards > 0 else inf

    more, less = sine(e + t), sine(e - t)
    away, closer = (ray(less), ray(more)) if h > 0 else (ray(-more), ray(-less)) if h < 0 else (inf, inf)
    out["up_tolerance"] = min(ray(cosine(e + t)), circle(h, x))
    out["down_tolerance"] = min(ray(cosine(e - t)), circle(-h, x))
    out["away_tolerance"], out["closer_tolerance"] = min(away, circle(x, h)), min(closer, circle(-x, h))
    out["roll_drift"] = b["frame_width"] * tan(radians(b["roll_tolerance"]))
