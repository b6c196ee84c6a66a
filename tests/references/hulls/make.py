"""Writes hulls.tsv: `python make.py FOLDER`. Support polygons by SciPy's ConvexHull and Shapely; needs both."""

import math
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1]))

from scipy.spatial import ConvexHull
from shapely import Point, Polygon

from lot import Lot
from table import Outcome, write

COUNT = 400


def case(number):
    lot = Lot(f"hulls {number}")
    legs, radius, first = 3 + number % 6, lot.even(100.0, 2000.0), lot.even(-360.0, 360.0)
    way, out = lot.even(0.0, 360.0), lot.even(0.0, 1.3) * radius
    x, y = float(f"{out * math.cos(math.radians(way)):.8g}"), float(f"{out * math.sin(math.radians(way)):.8g}")
    feet = [
        (radius * math.cos(math.radians(first + 360 * i / legs)), radius * math.sin(math.radians(first + 360 * i / legs)))
        for i in range(legs)
    ]
    hull = ConvexHull(feet)
    # Each facet as n · x + c <= 0 inside.
    margin = -max(n[0] * x + n[1] * y + n[2] for n in hull.equations)
    polygon = Polygon(feet)
    inside = polygon.contains(Point(x, y))
    # Shapely measures to the boundary: from inside that is the margin, from outside a corner may be nearer.
    to_boundary = polygon.exterior.distance(Point(x, y)) if inside else None
    return {
        "case": number, "legs": legs, "foot_radius_mm": radius, "first_leg_deg": first, "x_mm": x, "y_mm": y,
        "margin_mm": Outcome(margin, 16), "stands": inside,
        "to_boundary_mm": None if to_boundary is None else Outcome(to_boundary, 16),
    }


if __name__ == "__main__":
    write(Path(sys.argv[1]) / "hulls.tsv", [case(n) for n in range(COUNT)])
