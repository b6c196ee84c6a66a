"""What a front end needs to draw a plan, as plain lists: the room seen from above, and the picture. Lengths in mm."""

import math

from tablerig import ask, ffi, lib


def view_of(plan):
    """The camera as it looks: what projects places into the picture."""
    return ffi.new(
        "TablerigView *", (plan.pose, plan.lens.pupil_distance_mm, plan.frame_width_mm, plan.frame_height_mm)
    )


def project(view, place):
    """Where a place in the room is in the picture: right of its centre, and above it."""
    seen = ffi.new("TablerigPicturePoint *")
    ask("project", view, ffi.new("TablerigPoint *", place), seen)
    return [seen.right_mm, seen.up_mm]


def depth(view, place):
    """How far in front of the entrance pupil a place is, along the axis."""
    found = ffi.new("double *")
    ask("depth", view, ffi.new("TablerigPoint *", place), found)
    return found[0]


def line(view, start, end, least_depth=1.0):
    """A straight line in the picture, cut off where it would pass the camera; None where all of it is behind."""
    near, far = sorted((start, end), key=lambda place: depth(view, place))
    d_near, d_far = depth(view, near), depth(view, far)
    if d_far < least_depth:
        return None
    if d_near < least_depth:
        share = (least_depth - d_near) / (d_far - d_near)
        near = [a + share * (b - a) for a, b in zip(near, far)]
    return [project(view, near), project(view, far)]


def rectangle(width, depth, height):
    """Four corners around the origin, from the front left."""
    x, y = width / 2, depth / 2
    return [[-x, -y, height], [x, -y, height], [x, y, height], [-x, y, height]]


def round_at(centre, diameter, height, points=48):
    turns = [2 * math.pi * i / points for i in range(points)]
    around = [(diameter / 2 * math.cos(turn), diameter / 2 * math.sin(turn)) for turn in turns]
    return [[centre.x_mm + x, centre.y_mm + y, height] for x, y in around]


def outline(places):
    """The convex outline around places in the picture, counter-clockwise."""
    halves = []
    for ordered in (sorted(places), sorted(places, reverse=True)):
        half = []
        for x, y in ordered:
            while len(half) > 1:
                (ax, ay), (bx, by) = half[-2:]
                if (bx - ax) * (y - ay) > (by - ay) * (x - ax):
                    break
                half.pop()
            half.append([x, y])
        halves.append(half[:-1])
    return halves[0] + halves[1]


def subject_rims(plan, table, subject):
    """The foot and the top of the subject, in the room."""
    aim, foot = plan.pose.aim, table.height_mm
    heights = [foot, foot + subject.height_mm]
    if subject.shape == lib.TABLERIG_SHAPE_ROUND:
        return [round_at(aim, subject.diameter_mm, height) for height in heights]
    corners = [rectangle(subject.width_mm, subject.depth_mm, height) for height in heights]
    return [[[aim.x_mm + x, aim.y_mm + y, z] for x, y, z in rim] for rim in corners]


def from_above(plan, table, subject):
    """The room seen from above: table, frame on the table, camera, stand."""
    pose, stand = plan.pose, plan.placement
    corners = [c for c, has in zip(plan.footprint.corners, plan.footprint.has_corners) if has]
    return {
        "table": [corner[:2] for corner in rectangle(table.width_mm, table.depth_mm, 0)],
        # Fewer than four corners: the horizon, or the wall behind, is in the frame.
        "footprint": [[corner.x_mm, corner.y_mm] for corner in corners],
        "subject": [place[:2] for place in subject_rims(plan, table, subject)[0]],
        "aim": [pose.aim.x_mm, pose.aim.y_mm],
        "pupil": [pose.pupil.x_mm, pose.pupil.y_mm],
        "sensor": [pose.sensor.x_mm, pose.sensor.y_mm],
        "pivot": [pose.pivot.x_mm, pose.pivot.y_mm],
        "column": [stand.column.x_mm, stand.column.y_mm],
        "tail_end": [stand.tail_end.x_mm, stand.tail_end.y_mm] if stand.has_tail_end else None,
        "feet": [[foot.x_mm, foot.y_mm] for foot in stand.feet[0 : stand.leg_count]],
    }


def in_picture(plan, table, subject):
    """The picture: its frame, the table's edges, the subject's foot and top, and its outline."""
    view = view_of(plan)
    corners = rectangle(table.width_mm, table.depth_mm, table.height_mm)
    edges = [line(view, corner, corners[(i + 1) % 4]) for i, corner in enumerate(corners)]
    rims = [[project(view, place) for place in rim] for rim in subject_rims(plan, table, subject)]
    right, up = plan.frame_width_mm / 2, plan.frame_height_mm / 2
    return {
        "frame": [[-right, -up], [right, -up], [right, up], [-right, up]],
        "table_edges": [edge for edge in edges if edge],
        "subject_rims": rims,
        "subject": outline([place for rim in rims for place in rim]),
        "bounds": [plan.outline.left_mm, plan.outline.bottom_mm, plan.outline.right_mm, plan.outline.top_mm],
    }
