"""Sensor, lens, focus: Gaussian optics in its textbook form."""

from mpmath import mp, mpf

from numbers50 import Fence, cosine, in_degrees, over, sine

THIRDS = [mpf(2) ** (mpf(k) / 6) for k in range(-6, 55)]
ENGRAVED = (
    "0.5 0.56 0.63 0.7 0.8 0.9 1 1.1 1.2 1.4 1.6 1.8 2 2.2 2.5 2.8 3.2 3.5 4 4.5 5 5.6 6.3 7.1 8 9 10 11 13"
    " 14 16 18 20 22 25 29 32 36 40 45 51 57 64 72 80 90 102 114 128 144 161 181 203 228 256 287 323 362 406"
    " 456 512"
).split()
WAVELENGTH_MM = mpf("550e-6")


def used_area(b):
    w, h = b["sensor_width_mm"], b["sensor_height_mm"]
    if b["hold"] == "upright":
        w, h = h, w
    if b["aspect_width"] is None:
        return w, h
    shape = b["aspect_width"] / b["aspect_height"]
    # The largest rectangle of that shape: as wide as the sensor, or as high.
    return (w, w / shape) if w / shape <= h else (h * shape, h)


def focal_length(b, m):
    f = b["focal_length_mm"]
    if b["closest_focus_mm"] is None or b["largest_magnification"] is None:
        return f
    largest = b["largest_magnification"]
    at_closest = (b["closest_focus_mm"] - b["principal_separation_mm"]) * largest / (1 + largest) ** 2
    return f + (at_closest - f) * min(m / largest, mpf(1))


def pupil_distance(b, m):
    """Conjugate equation from the entrance pupil: f (1/m + 1/p)."""
    return focal_length(b, m) * (1 / m + 1 / b["pupil_ratio"])


def lens(b, m, out):
    f, p = focal_length(b, m), b["pupil_ratio"]
    image = f + f * m
    thing = f + f / m
    out["focal_length_mm"] = f
    out["magnification"] = m
    out["image_distance_mm"] = image
    out["object_distance_mm"] = thing
    out["sensor_distance_mm"] = thing + b["principal_separation_mm"] + image
    # The entrance pupil lies f (1 - 1/p) before the front principal plane, where a lens of pupil
    # magnification p has it.
    out["pupil_distance_mm"] = thing - f * (1 - 1 / p)
    return out["pupil_distance_mm"]


def field_angles(s, width, height, out):
    for name, size in ("horizontal", width), ("vertical", height), ("diagonal", mp.hypot(width, height)):
        out[name + "_deg"] = in_degrees(2 * mp.atan(size / 2 / s))


def on_scale(engraved):
    """The exact f-number of an engraved one, and the engraving."""
    for exact, word in zip(THIRDS, ENGRAVED):
        if mpf(float(word)) == engraved:
            return exact, engraved
    return engraved, engraved


def stop_up(n):
    for exact, word in zip(THIRDS, ENGRAVED):
        if not over(n - exact, exact):
            return exact, mpf(float(word))
    raise Fence(n)


def stop_down(n):
    found = (THIRDS[0], mpf("0.5"))
    for exact, word in zip(THIRDS, ENGRAVED):
        if not over(exact - n, exact):
            found = exact, mpf(float(word))
    return found


def focus(b, m, s, nearest, farthest, out):
    f, p = focal_length(b, m), b["pupil_ratio"]
    c = b["circle_of_confusion_mm"]
    if c is None:
        c = mp.hypot(b["sensor_width_mm"], b["sensor_height_mm"]) / 1500
    # The opening whose blur (f / N) m |x - s| / x is c at the nearest and at the farthest part.
    if nearest >= s:
        needed = mp.inf
    else:
        needed = max(
            m * f * nearest / (c * (s - nearest)), m * f * farthest / (c * (s + farthest)), mpf(0)
        )
    effective = 1 + m / p
    limit = c / (mpf("2.44") * WAVELENGTH_MM * effective)
    least, most = on_scale(b["least_f_number"]), on_scale(b["most_f_number"])
    over(needed - least[0], least[0])
    if not over(needed - least[0], least[0]):
        hold = least
    elif needed != mp.inf and not over(needed - most[0], most[0]):
        hold = min(stop_up(needed), most)
    else:
        hold = None
    best = max(least, min(stop_down(limit), most))
    single = hold is not None and (
        not over(hold[0] - limit, limit) or not over(needed - least[0], least[0])
    )
    if b["f_number"] is not None:
        n, engraved = b["f_number"], b["f_number"]
    else:
        n, engraved = hold if single else best
    out["circle_of_confusion_mm"] = c
    out["f_number"], out["engraved"] = n, engraved
    out["f_number_needed"] = needed
    out["hold_f_number"], out["hold_engraved"] = hold if hold else (None, None)
    out["subject_held"] = bool(needed != mp.inf and not over(needed - n, n))
    out["effective_f_number"] = n * effective
    out["exposure_loss_stops"] = 2 * mp.log(effective, 2)
    out["diffraction_disc_mm"] = mpf("2.44") * WAVELENGTH_MM * n * effective
    out["diffraction_limit_f_number"] = limit
    # Where (f / N) m |x - s| / x = c.
    out["near_limit_mm"] = m * f * s / (m * f + n * c)
    out["in_front_mm"] = s - out["near_limit_mm"]
    if over(m * f - n * c, m * f * mpf("1e-4")):
        out["far_limit_mm"] = m * f * s / (m * f - n * c)
        out["behind_mm"] = out["far_limit_mm"] - s
    else:
        out["far_limit_mm"] = out["behind_mm"] = mp.inf
    out["stack_f_number"] = out["stack_pictures"] = out["stack_step_mm"] = None
    if not single and over(s - nearest - f / p, s):
        stack(b, f, p, c, s, nearest, farthest, best[0], out)


def stack(b, f, p, c, s, nearest, farthest, n, out):
    """Slices counted where they are equal: in ln y, y = 1 - f / (p x), refocused at one focal length."""

    def y(x):
        return 1 - f / (p * x)

    def sharp(x):
        """Near and far limit with the focus at x."""
        m = 1 / (x / f - 1 / p)
        far = m * f * x / (m * f - n * c) if m * f > n * c else None
        return m * f * x / (m * f + n * c), far

    whole = mp.log(y(s + farthest) / y(s - nearest))
    a = n * c / (f * p)
    if a >= 1:
        slice_long = mp.inf
    else:
        # One slice's ln y from near to far limit, wherever far is finite the same.
        x = f * (1 + p) / p
        while sharp(x)[1] is None:
            x = (x + f / p) / 2
        near, far = sharp(x)
        slice_long = mp.log(y(far) / y(near))
    advance = slice_long * (1 - b["stack_overlap"])
    out["stack_f_number"] = n
    if slice_long == mp.inf or whole <= slice_long:
        out["stack_pictures"] = 1
        if slice_long != mp.inf:
            over(slice_long - whole, slice_long)
    else:
        steps = (whole - slice_long) / advance
        if abs(steps - mp.nint(steps)) < mpf("1e-9") * (1 + steps):
            raise Fence(steps)
        out["stack_pictures"] = min(int(mp.ceil(steps)) + 1, 2**32 - 1)
    # dx for a step of ln y at the aim point: dx / d(ln y) = y / y'.
    out["stack_step_mm"] = advance * y(s) / (f / (p * s * s)) if advance != mp.inf else mp.inf


def tilt(b, m, aim_height, out):
    """Hinge rule about the front principal point."""
    f, e = focal_length(b, m), b["elevation_deg"]
    height = aim_height + (f + f / m) * sine(e)
    if cosine(e) == 0:
        out["hinge_distance_mm"], out["tilt_deg"] = mp.inf, mpf(0)
        return
    hinge = height / cosine(e)
    out["hinge_distance_mm"] = hinge
    out["tilt_deg"] = in_degrees(mp.asin(f / hinge)) if over(hinge - f, f) else None
