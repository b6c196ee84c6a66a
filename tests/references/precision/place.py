"""Where the camera is, and what it sees: points in the room, rays through the entrance pupil."""

from mpmath import mp, mpf

from numbers50 import Fence, cosine, dot, in_degrees, length, minus, over, plus, sine

SIDES = ("front", "right", "back", "left")


def directions(b):
    e, at = b["elevation_deg"], b["bearing_deg"]
    se, ce, sb, cb = sine(e), cosine(e), sine(at), cosine(at)
    ahead = [-sb * ce, cb * ce, -se]
    right = [cb, sb, mpf(0)]
    up = [-sb * se, cb * se, ce]
    return ahead, right, up


def outside_edges(b, point):
    x, y = point[0], point[1]
    w, d = b["table_width_mm"] / 2, b["table_depth_mm"] / 2
    return [-y - d, x - w, y - d, -x - w]


def from_table(b, point):
    """Signed distance from the rectangle, seen from above."""
    dx, dy = abs(point[0]) - b["table_width_mm"] / 2, abs(point[1]) - b["table_depth_mm"] / 2
    if dx > 0 and dy > 0:
        return mp.hypot(dx, dy)
    return max(dx, dy)


class Camera:
    """The pose, as points in the room."""

    def __init__(self, b, s, distance, width, height):
        self.ahead, self.right, self.up = directions(b)
        self.s, self.width, self.height = s, width, height
        foot = [b["aim_x_mm"], b["aim_y_mm"], b["table_height_mm"]]
        aim_height = b["aim_height_mm"]
        self.aim_height = b["subject_height_mm"] / 2 if aim_height is None else aim_height
        self.aim = plus(foot, [0, 0, 1], self.aim_height)
        self.pupil = plus(self.aim, self.ahead, -s)
        self.sensor = plus(self.aim, self.ahead, -distance)
        at = plus(self.sensor, self.ahead, b["socket_ahead_mm"])
        self.socket = plus(at, self.up, -b["socket_below_mm"])
        self.pivot = plus(self.socket, self.up, -b["pivot_below_socket_mm"])

    def seen(self, point):
        """Right, up and depth from the entrance pupil."""
        d = minus(point, self.pupil)
        return dot(d, self.right), dot(d, self.up), dot(d, self.ahead)

    def picture(self, point):
        """Place in the plane through the aim point."""
        right, up, depth = self.seen(point)
        return right * self.s / depth, up * self.s / depth

    def ray(self, x, y):
        """From the pupil to that place in the plane through the aim point."""
        return plus(plus([self.s * a for a in self.ahead], self.right, x), self.up, y)


def pose(b, camera, distance, out):
    for name, axis in ("forward", camera.ahead), ("right", camera.right), ("up", camera.up):
        for part, value in zip("xyz", axis):
            out[f"{name}_{part}"] = value
    for name in "aim", "pupil", "sensor", "socket", "pivot":
        for part, value in zip("xyz", getattr(camera, name)):
            out[f"{name}_{part}_mm"] = value
    # Body and lens as a stick from the body's back to the lens's front, the body's top above it.
    back = plus(camera.sensor, camera.ahead, -b["body_behind_mm"])[2]
    front = plus(camera.sensor, camera.ahead, b["front_from_sensor_mm"] or 0)[2]
    out["body_top_mm"] = max(back, front) + b["body_above_mm"] * camera.up[2]
    level = [camera.right[1], -camera.right[0], 0]
    out["sensor_from_aim_mm"] = dot(minus(camera.sensor, camera.aim), level)
    out["pivot_from_aim_mm"] = dot(minus(camera.pivot, camera.aim), level)
    out["sensor_from_edge_mm"] = from_table(b, camera.sensor)
    out["pivot_from_edge_mm"] = from_table(b, camera.pivot)
    front = b["front_from_sensor_mm"]
    out["front_clearance_mm"] = None if front is None else distance - front


def clip(polygon, inside):
    """What of a convex polygon in the plane lies where a linear function is not negative."""
    kept = []
    for a, b in zip(polygon, polygon[1:] + polygon[:1]):
        at_a, at_b = inside(a), inside(b)
        if at_a >= 0:
            kept.append(a)
        if (at_a < 0) != (at_b < 0):
            t = at_a / (at_a - at_b)
            kept.append([x + t * (y - x) for x, y in zip(a, b)])
    return kept


def area(polygon):
    return abs(sum((a[0] * b[1] - b[0] * a[1] for a, b in zip(polygon, polygon[1:] + polygon[:1])), mpf(0))) / 2


def frame_corners(camera):
    x, y = camera.width / 2, camera.height / 2
    return [[-x, -y], [x, -y], [x, y], [-x, y]]


def footprint(b, camera, out):
    names = ("near_left", "near_right", "far_right", "far_left")
    for name in names:
        out[name + "_x_mm"] = out[name + "_y_mm"] = None
    for name in ("near_width", "far_width", "keystone_ratio", "footprint_depth", "table_share", "board_width",
                 "board_depth", "board_x", "board_y"):
        out[name] = None
    for side in SIDES:
        out["edge_" + side] = False
    above = camera.pupil[2] - b["table_height_mm"]
    out["from_below"] = not over(above, camera.s)
    if out["from_below"]:
        return
    corners = []
    for name, (x, y) in zip(names, frame_corners(camera)):
        ray = camera.ray(x, y)
        if not over(-ray[2], camera.s * mpf("1e-3")):
            corners.append(None)
            continue
        at = plus(camera.pupil, ray, above / -ray[2])
        corners.append(at)
        out[name + "_x_mm"], out[name + "_y_mm"] = at[0], at[1]
    if corners[0]:
        out["near_width"] = length(minus(corners[0], corners[1]))
    if corners[2]:
        out["far_width"] = length(minus(corners[2], corners[3]))
    if all(corners):
        out["keystone_ratio"] = out["far_width"] / out["near_width"]
        on = [-camera.right[1], camera.right[0], mpf(0)]
        across = [dot(c, camera.right) for c in corners]
        along = [dot(c, on) for c in corners]
        out["board_width"] = max(across) - min(across)
        out["footprint_depth"] = out["board_depth"] = max(along) - min(along)
        # The middle of the bounding rectangle, back from the picture's directions to the table's.
        mid_across, mid_along = (max(across) + min(across)) / 2, (max(along) + min(along)) / 2
        out["board_x"] = mid_across * camera.right[0] + mid_along * on[0]
        out["board_y"] = mid_across * camera.right[1] + mid_along * on[1]
    coverage(b, camera, above, out)
    edges(b, camera, out)


def coverage(b, camera, above, out):
    """The frame cut by the table: where the ray through a place meets the table, that is linear in it."""
    half = [b["table_width_mm"] / 2, b["table_depth_mm"] / 2]

    def inside(axis, sign):
        def value(place):
            ray = camera.ray(*place)
            fall = -ray[2]
            return half[axis] * fall - sign * (camera.pupil[axis] * fall + above * ray[axis])

        return value

    polygon = clip(frame_corners(camera), lambda place: -camera.ray(*place)[2])
    for axis in 0, 1:
        for sign in 1, -1:
            polygon = clip(polygon, inside(axis, sign)) if polygon else []
    out["table_share"] = area(polygon) / (camera.width * camera.height) if polygon else mpf(0)


def inside_length(camera, a, c, scale):
    """Length of the part of a straight line that the frame shows."""
    start, end = mpf(0), mpf(1)
    x, y = camera.width / 2 / camera.s, camera.height / 2 / camera.s
    seen_a, seen_c = camera.seen(a), camera.seen(c)
    for right, up in (1, 0), (-1, 0), (0, 1), (0, -1):

        def room(seen):
            return seen[2] * (x if right else y) - right * seen[0] - up * seen[1]

        at_a, at_c = room(seen_a), room(seen_c)
        if at_a < 0 and at_c < 0:
            return mpf(0)
        if at_a < 0:
            start = max(start, at_a / (at_a - at_c))
        if at_c < 0:
            end = min(end, at_a / (at_a - at_c))
    if not over(end - start, scale):
        return mpf(0)
    return (end - start) * length(minus(c, a))


def edges(b, camera, out):
    x, y, z = b["table_width_mm"] / 2, b["table_depth_mm"] / 2, b["table_height_mm"]
    ends = [[-x, -y, z], [x, -y, z], [x, y, z], [-x, y, z]]
    for side, a, c in zip(SIDES, ends, ends[1:] + ends[:1]):
        out["edge_" + side] = bool(inside_length(camera, a, c, 1) > 0)


def backdrop(b, camera, out):
    out["backdrop_width"] = out["backdrop_height"] = out["backdrop_share"] = None
    behind = b["backdrop_behind_mm"]
    if behind is None:
        return
    on = [-camera.right[1], camera.right[0], mpf(0)]
    foot = plus(plus(camera.aim, on, behind), [0, 0, 1], -camera.aim_height)
    half = camera.height / 2
    depth = camera.seen(foot)[2]
    low = camera.picture(foot)[1] if over(depth, camera.s) else -half
    low = max(low, -half)
    if not over(half - low, half):
        out["backdrop_width"] = out["backdrop_height"] = out["backdrop_share"] = mpf(0)
        return
    away = dot(minus(foot, camera.pupil), on)

    def meets(y):
        """Half the width there, and the height above the table; none where the ray never comes to it."""
        ray = camera.ray(camera.width / 2, y)
        towards = dot(ray, on)
        if not over(towards, camera.s):
            return None
        at = plus(camera.pupil, ray, away / towards)
        return abs(dot(minus(at, camera.aim), camera.right)), at[2] - b["table_height_mm"]

    top, bottom = meets(half), meets(low)
    out["backdrop_height"] = top[1] if top else mp.inf
    out["backdrop_width"] = 2 * max(top[0], bottom[0]) if top and bottom else mp.inf
    out["backdrop_share"] = (half - low) / camera.height


def perspective(b, camera, nearest, farthest, out):
    s = camera.s
    out["side_stretch"] = mp.sec(mp.atan(camera.width / 2 / s))
    out["corner_stretch"] = mp.sec(mp.atan(mp.hypot(camera.width, camera.height) / 2 / s))
    out["size_ratio"] = out["convergence"] = None
    if over(s - nearest, s):
        out["size_ratio"] = (s + farthest) / (s - nearest)
        foot = plus(camera.aim, [0, 0, 1], -camera.aim_height)
        top = plus(foot, [0, 0, 1], b["subject_height_mm"])
        out["convergence"] = camera.seen(foot)[2] / camera.seen(top)[2]
