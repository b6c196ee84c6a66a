"""How exactly it must be set, and which elevation suits the subject."""

from mpmath import mp, mpf

from glass import focal_length
from numbers50 import Fence, cosine, in_degrees, over, sine
from subject import lens_share, side_and_top


def sensor_distance(b, m):
    return focal_length(b, m) * (1 + m) ** 2 / m + b["principal_separation_mm"]


def crossings_of_circle(at, way, radius):
    """Ways along a line at which it is `radius` from the origin."""
    along = at[0] * way[0] + at[1] * way[1]
    square = along**2 - (at[0] ** 2 + at[1] ** 2 - radius**2)
    if square < 0:
        return []
    root = mp.sqrt(square)
    return [-along - root, -along + root]


def crossing_of_ray(at, way, degrees):
    """Way along a line at which it meets the ray from the origin at an elevation."""
    ray = [cosine(degrees), sine(degrees)]
    across = way[0] * ray[1] - way[1] * ray[0]
    if across == 0:
        return []
    t = -(at[0] * ray[1] - at[1] * ray[0]) / across
    reached = [at[0] + t * way[0], at[1] + t * way[1]]
    return [t] if reached[0] * ray[0] + reached[1] * ray[1] > 0 else []


def tolerance(b, m, width, out):
    e, share = b["elevation_deg"], b["frame_width_tolerance"]
    d = sensor_distance(b, m)
    narrow, wide = m / (1 - share), m / (1 + share)
    # The least distance of all, where the lens turns back; short of it the camera can come no nearer.
    both = b["closest_focus_mm"] is not None and b["largest_magnification"] is not None
    turn = max(mpf(1), b["largest_magnification"]) if both else mpf(1)
    ends = [min(narrow, turn), wide] if m <= turn else [max(wide, turn), narrow]
    ends = [sensor_distance(b, end) for end in ends]
    at = [d * cosine(e), d * sine(e)]
    out["at_the_least_distance"] = m == turn
    for name, way in ("up", (0, 1)), ("down", (0, -1)), ("away", (1, 0)), ("closer", (-1, 0)):
        ways = []
        for radius in ends:
            ways += crossings_of_circle(at, way, radius)
        for off in 1, -1:
            ways += crossing_of_ray(at, way, e + off * b["elevation_tolerance_deg"])
        ways = [t for t in ways if over(t, d * mpf("1e-4"))]
        out["set_" + name] = min(ways, default=mp.inf)
    out["roll_drift"] = width * mp.tan(mp.pi * b["roll_tolerance_deg"] / 180)


def contents_elevation(b, share):
    """Lowest elevation, from far off, that shows a share of the contents."""
    r = b["vessel_inside_diameter_mm"] / 2
    shift = mp.findroot(lambda x: lens_share(r, r, x * r) - share, (mpf("1e-9"), mpf("1.999999999")),
                        solver="illinois", tol=mpf("1e-60"), maxsteps=300, verify=False)
    return in_degrees(mp.atan2(b["vessel_contents_below_rim_mm"], shift * r))


def advice(b, out):
    side, top = side_and_top(b)
    breadth = mp.sqrt(b["subject_width_mm"] * b["subject_depth_mm"]) if b["shape"] == "box" else b["subject_diameter_mm"]
    slender = b["subject_height_mm"] / breadth
    over(slender - mpf(1) / 3)
    over(slender - 1)
    form = "flat" if slender <= mpf(1) / 3 else "tall" if slender >= 1 else "between"
    least, most = {"flat": (45, 90), "tall": (0, 45), "between": (25, 75)}[form]
    middle = mpf(least + most) / 2

    def at_share(share):
        # sin e top / (sin e top + cos e side) = share.
        return in_degrees(mp.atan2(share * side, (1 - share) * top))

    tenth = mpf("0.1")
    judged = b["judged_by"]
    if judged == "form":
        start = {"flat": at_share(1 - tenth), "tall": at_share(tenth), "between": mpf(45)}[form]
    elif judged == "top_detail":
        least, most, start = middle, max(most, 75), at_share(mpf(1) / 2)
    elif judged == "side_layers":
        least, most, start = 0, middle, at_share(tenth)
    elif judged == "contents":
        least, most = 45, 90
        start = contents_elevation(b, mpf(3) / 4) if b["vessel_inside_diameter_mm"] else mpf(45)
    elif judged == "clear_layers":
        least, most, start = 0, 45, at_share(tenth)
    elif judged == "decorated_glass":
        least, most, start = 70, 80, mpf(75)
    else:
        least, most, start = 90, 90, mpf(90)
    start = min(max(start, mpf(least)), mpf(most))
    out["advice_least"], out["advice_most"], out["advice_start"] = mpf(least), mpf(most), start
    se, ce = sine(start), cosine(start)
    out["advice_top_share"] = se * top / (se * top + ce * side) if start > 0 else mpf(0)
    out["advice_half_top"] = at_share(mpf(1) / 2)
    out["advice_contents"] = out["advice_half_contents"] = None
    if b["vessel_inside_diameter_mm"]:
        r, gap = b["vessel_inside_diameter_mm"] / 2, b["vessel_contents_below_rim_mm"]
        out["advice_contents"] = lens_share(r, r, gap * ce / se) if start > 0 else mpf(0)
        out["advice_half_contents"] = contents_elevation(b, mpf(1) / 2)
