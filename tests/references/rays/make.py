"""Writes lenses.tsv and traces.tsv: `python make.py FOLDER`. Optiland traces thick lenses; needs optiland.

Prescriptions from Optiland's own samples (optiland.samples.objectives): a triplet and a double Gauss, both
textbook forms; a telephoto (Laikin, Lens Design, 4th ed., CRC Press 2007, p. 91, as the sample says) and a
reversed telephoto, scaled to f 35 mm. The fifth, exactly symmetric, is the rear half of the double Gauss and
its mirror image about the stop.

All that the library is given of a lens, focal length, principal planes, pupils, is found from rays near the
axis; so is what it is compared with, at each distance by a trace of its own.
"""

import math
import sys
import warnings
from pathlib import Path

warnings.filterwarnings("ignore")
sys.path.insert(0, str(Path(__file__).parents[1]))

import numpy as np
from optiland import optic
from optiland.rays import RealRays
from optiland.samples import objectives

from table import Outcome, write

DIGITS = 12
MAGNIFICATIONS = (0.02, 0.1, 0.3, 1.0)


def surfaces_of(sample):
    """Curvature, gap to the next and index after each surface; the stop's place."""
    wave = sample.primary_wavelength
    group = sample.surfaces
    z = np.ravel(np.asarray(group.positions, dtype=float))
    found, stop = [], None
    for i, surface in enumerate(group.surfaces[1:-1], start=1):
        if surface.is_stop:
            stop = len(found)
        found.append([float(surface.geometry.radius), z[i + 1] - z[i], float(np.ravel(surface.material_post.n(wave))[0])])
    return found, stop


class Traced:
    """A lens as Optiland traces it, object plane and image plane where they are put."""

    def __init__(self, surfaces, stop, scale=1.0):
        self.surfaces = [[r * scale, gap * scale, n] for r, gap, n in surfaces]
        self.stop = stop
        self.length = sum(gap for _, gap, _ in self.surfaces[:-1])

    def built(self, first, last):
        """The surfaces from one to another, the first vertex at 0, air around."""
        from optiland.materials import IdealMaterial

        lens = optic.Optic()
        lens.surfaces.add(index=0, radius=np.inf, thickness=np.inf)
        part = self.surfaces[first:last]
        for i, (radius, gap, n) in enumerate(part):
            lens.surfaces.add(index=i + 1, radius=radius, thickness=gap if i < len(part) - 1 else 1.0,
                              material=IdealMaterial(n=n), is_stop=i == 0)
        lens.surfaces.add(index=len(part) + 1)
        lens.set_aperture(aperture_type="EPD", value=1.0)
        lens.fields.set_type(field_type="angle")
        lens.fields.add(y=0)
        lens.wavelengths.add(value=0.5876, is_primary=True)
        return lens

    def trace(self, lens, points, directions):
        """Real rays from points (before the first vertex) through the lens; end points and directions."""
        p, d = np.asarray(points, float), np.asarray(directions, float)
        d = d / np.linalg.norm(d, axis=1)[:, None]
        rays = RealRays(*p.T, *d.T, np.ones(len(p)), np.full(len(p), 0.5876))
        lens.surfaces.trace(rays, skip=1)
        return np.column_stack([rays.x, rays.y, rays.z]), np.column_stack([rays.L, rays.M, rays.N])


def reversed_half(surfaces):
    """Surfaces as light from the other side meets them."""
    index = [1.0] + [n for *_, n in surfaces]
    found = []
    for i in range(len(surfaces) - 1, -1, -1):
        gap = surfaces[i - 1][1] if i else 0.0
        found.append([-surfaces[i][0], gap, index[i]])
    return found


def meets_axis(end, direction):
    """Where a ray in the y-z plane crosses the axis."""
    return end[2] - end[1] * direction[2] / direction[1]


def cardinal(lens):
    """Focal length, principal planes, pupils and pupil ratio from the first vertex, by rays near the axis."""
    forward = lens.built(0, len(lens.surfaces))
    back = Traced(reversed_half(lens.surfaces), 0)
    backward = back.built(0, len(back.surfaces))
    scale = sum(abs(g) for _, g, _ in lens.surfaces[:-1])
    h = 1e-4 * scale

    def far(thing, built):
        (end,), (way,) = thing.trace(built, [[0, h, -scale]], [[0, 0, 1]])
        return -h * way[2] / way[1], meets_axis(end, way)

    f, rear_focus = far(lens, forward)
    f_back, front_focus = far(back, backward)
    assert abs(f / f_back - 1) < 1e-7
    front_focus = lens.length - front_focus
    # Pupils: the stop's middle seen from outside, and how large it is seen.
    before = Traced(reversed_half(lens.surfaces[: lens.stop]), 0)
    after = Traced(lens.surfaces[lens.stop + 1 :], 0)
    gap_before = lens.surfaces[lens.stop - 1][1]
    gap_after = lens.surfaces[lens.stop][1]

    def image_of_stop(thing, gap):
        built = thing.built(0, len(thing.surfaces))
        slope = 1e-4
        (end,), (way,) = thing.trace(built, [[0, 0, -gap]], [[0, slope, 1]])
        place = meets_axis(end, way)
        (end2,), (way2,) = thing.trace(built, [[0, h, -gap]], [[0, slope, 1]])
        t = (place - end2[2]) / way2[2]
        return place, (end2[1] + t * way2[1]) / h

    entrance, entrance_size = image_of_stop(before, gap_before)
    entrance = sum(g for _, g, _ in lens.surfaces[: lens.stop - 1]) - entrance
    leave, exit_size = image_of_stop(after, gap_after)
    exit_place = sum(g for _, g, _ in lens.surfaces[: lens.stop + 1]) + leave
    return {
        "focal_length_mm": f, "front_principal_mm": front_focus + f, "rear_principal_mm": rear_focus - f,
        "entrance_pupil_mm": entrance, "exit_pupil_mm": exit_place, "pupil_ratio": exit_size / entrance_size,
    }


def finite(lens, found, m, half_diagonal):
    """One distance: where the sensor is, how large, how blurred; by its own rays."""
    built = lens.built(0, len(lens.surfaces))
    # An object distance that gives about this magnification; the magnification itself is measured.
    aim = found["front_principal_mm"] - found["focal_length_mm"] * (1 + 1 / m)
    entrance = found["entrance_pupil_mm"]
    small = 1e-4

    def through(height, at, pupil_height):
        """A ray from a point of an upright plane through a height in the entrance pupil."""
        start = [0, height, at]
        # Begun before the first vertex, on the same line.
        return lens.trace(built, [start], [[0, pupil_height - height, entrance - at]])

    def lands(ray, at):
        (end,), (way,) = ray
        return end[1] + (at - end[2]) / way[2] * way[1]

    r = small * abs(entrance - aim) * 0.05
    sensor = meets_axis(*(v[0] for v in through(0.0, aim, r)))
    near_axis = small * (entrance - aim)
    measured = -lands(through(near_axis, aim, 0.0), sensor) / near_axis
    out = {"magnification": measured, "sensor_distance_mm": sensor - aim, "pupil_distance_mm": entrance - aim}
    # Blur of a point nearer and farther: how far apart the rays through the pupil's rims land.
    for name, share in ("near", -0.1), ("far", 0.1):
        at = entrance - (entrance - aim) * (1 + share)
        blur = abs(lands(through(0.0, at, r), sensor) - lands(through(0.0, at, -r), sensor))
        out[f"blur_{name}_per_opening"] = blur / (2 * r)
    # The frame's corner: which point of the plane through the aim point is pictured there.
    target = -half_diagonal
    height = half_diagonal / measured
    for _ in range(60):
        landed = lands(through(height, aim, 0.0), sensor)
        slope = (lands(through(height * (1 + 1e-6), aim, 0.0), sensor) - landed) / (height * 1e-6)
        height -= (landed - target) / slope
    out["corner_mm"] = height
    return out


def lenses():
    double, stop = surfaces_of(objectives.DoubleGauss())
    rear = double[stop + 1 :]
    mirrored = reversed_half(rear)
    # The mirrored rear half, a stop in air, the rear half again.
    mirrored[-1][1] = double[stop][1]
    symmetric = mirrored + [[math.inf, double[stop][1], 1.0]] + rear
    triplet, at = surfaces_of(objectives.CookeTriplet())
    # Its stop stands on a surface; the same opening in air just behind it.
    triplet = triplet[: at + 1] + [[math.inf, triplet[at][1], 1.0]] + triplet[at + 1 :]
    triplet[at] = [triplet[at][0], 0.0, triplet[at][2]]
    telephoto = surfaces_of(objectives.Telephoto())
    turned = surfaces_of(objectives.ReverseTelephoto())
    return {
        "symmetric": (Traced(symmetric, len(mirrored)), 10.0),
        "triplet": (Traced(triplet, at + 1), 15.0),
        "double_gauss": (Traced(double, stop), 20.0),
        "telephoto": (Traced(*telephoto), 20.0),
        "reversed_telephoto": (Traced(*turned, scale=35 / 2.005240270799113), 15.0),
    }


def main(folder):
    specified, traced = [], []
    for name, (lens, half_diagonal) in lenses().items():
        found = cardinal(lens)
        specified.append({"lens": name, **{k: Outcome(v, DIGITS) for k, v in found.items()},
                          "half_diagonal_mm": half_diagonal})
        for m in MAGNIFICATIONS:
            row = finite(lens, found, m, half_diagonal)
            traced.append({"lens": name, **{k: Outcome(v, DIGITS) for k, v in row.items()}})
    write(Path(folder) / "lenses.tsv", specified)
    write(Path(folder) / "traces.tsv", traced)


if __name__ == "__main__":
    main(sys.argv[1])
