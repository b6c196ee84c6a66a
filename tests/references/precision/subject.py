"""The subject's depth, outline, and what shows of its top and contents."""

from mpmath import mp, mpf

from numbers50 import cosine, dot, minus, over, plus, sine


def corners(b, camera):
    """A box's corners, or none for a round."""
    foot = plus(camera.aim, [0, 0, 1], -camera.aim_height)
    h = b["subject_height_mm"]
    w, d = b["subject_width_mm"] / 2, b["subject_depth_mm"] / 2
    return [plus(foot, [x, y, z]) for x in (-w, w) for y in (-d, d) for z in (0, h)]


def rims(b, camera):
    foot = plus(camera.aim, [0, 0, 1], -camera.aim_height)
    return [foot, plus(foot, [0, 0, 1], b["subject_height_mm"])]


def extremes(b, camera, of):
    """Least and greatest of a linear function of the point over the subject."""
    if b["shape"] == "box":
        values = [of(point) for point in corners(b, camera)]
        return min(values), max(values)
    r = b["subject_diameter_mm"] / 2
    values = []
    for middle in rims(b, camera):
        at = of(middle)
        swing = r * mp.hypot(of(plus(middle, [1, 0, 0])) - at, of(plus(middle, [0, 1, 0])) - at)
        values += [at - swing, at + swing]
    return min(values), max(values)


def depth(b, camera):
    least, most = extremes(b, camera, lambda point: dot(minus(point, camera.aim), camera.ahead))
    return -least, most


def circle_bounds(camera, middle, r, part):
    """Extremes of right / depth or up / depth on a level circle: the quadratic of tangency."""
    a, d = camera.seen(middle)[part], camera.seen(middle)[2]
    axes = [plus(middle, [1, 0, 0]), plus(middle, [0, 1, 0])]
    (b1, e1), (b2, e2) = [
        (r * (camera.seen(p)[part] - a), r * (camera.seen(p)[2] - d)) for p in axes
    ]
    # (a - t d)^2 = (b1 - t e1)^2 + (b2 - t e2)^2
    q2 = d * d - e1 * e1 - e2 * e2
    q1 = -2 * (a * d - b1 * e1 - b2 * e2)
    q0 = a * a - b1 * b1 - b2 * b2
    root = mp.sqrt(q1 * q1 - 4 * q2 * q0)
    return sorted([(-q1 - root) / (2 * q2) * camera.s, (-q1 + root) / (2 * q2) * camera.s])


def bounds(b, camera):
    """Left, right, bottom, top in the plane through the aim point; none where it reaches the pupil."""
    if not over(camera.s - depth(b, camera)[0], camera.s):
        return None
    if b["shape"] == "box":
        places = [camera.picture(point) for point in corners(b, camera)]
        xs, ys = [x for x, _ in places], [y for _, y in places]
    else:
        r = b["subject_diameter_mm"] / 2
        xs, ys = [], []
        for middle in rims(b, camera):
            xs += circle_bounds(camera, middle, r, 0)
            ys += circle_bounds(camera, middle, r, 1)
    return min(xs), max(xs), min(ys), max(ys)


def outline(b, camera, out):
    found = bounds(b, camera)
    names = ("outline_left", "outline_right", "outline_bottom", "outline_top")
    for name in names + ("fill_width", "fill_height", "room_above", "room_below", "room_left", "room_right"):
        out[name] = None
    if found is None:
        return
    for name, value in zip(names, found):
        out[name] = value
    left, right, bottom, top = found
    out["fill_width"] = (right - left) / camera.width
    out["fill_height"] = (top - bottom) / camera.height
    out["room_above"], out["room_below"] = camera.height / 2 - top, bottom + camera.height / 2
    out["room_left"], out["room_right"] = left + camera.width / 2, camera.width / 2 - right


def side_and_top(b):
    at = b["bearing_deg"]
    if b["shape"] == "box":
        w, d = b["subject_width_mm"], b["subject_depth_mm"]
        return (w * abs(cosine(at)) + d * abs(sine(at))) * b["subject_height_mm"], w * d
    across = b["subject_diameter_mm"]
    return across * b["subject_height_mm"], mp.pi * across**2 / 4


def shares(b, camera, out):
    e = b["elevation_deg"]
    side, top = side_and_top(b)
    if e <= 0:
        out["top_share"], out["side_share"] = mpf(0), mpf(1)
    else:
        whole = sine(e) * top + cosine(e) * side
        out["top_share"], out["side_share"] = sine(e) * top / whole, cosine(e) * side / whole
    out["contents"] = out["contents_from_far"] = None
    if b["vessel_inside_diameter_mm"] is None:
        return
    r, gap = b["vessel_inside_diameter_mm"] / 2, b["vessel_contents_below_rim_mm"]
    out["contents_from_far"] = (
        lens_share(r, r, gap * cosine(e) / sine(e)) if e > 0 else mpf(0)
    )
    rim = plus(camera.aim, [0, 0, 1], b["subject_height_mm"] - camera.aim_height)
    above = camera.pupil[2] - rim[2]
    if not over(above, camera.s):
        out["contents"] = mpf(0)
        return
    # The rim's circle as the pupil throws it on the contents' plane.
    away = mp.hypot(camera.pupil[0] - rim[0], camera.pupil[1] - rim[1])
    out["contents"] = lens_share(r, r * (above + gap) / above, away * gap / above)


def lens_share(r, other, apart):
    """Overlap of two circles as a share of the first (two-circle lens formula)."""
    if apart >= r + other:
        return mpf(0)
    if apart <= other - r:
        return mpf(1)
    x = (apart**2 + r**2 - other**2) / (2 * apart)
    y = apart - x
    overlap = (
        r**2 * mp.acos(x / r) - x * mp.sqrt(r**2 - x**2)
        + other**2 * mp.acos(y / other) - y * mp.sqrt(other**2 - y**2)
    )
    return overlap / (mp.pi * r**2)
