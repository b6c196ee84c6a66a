"""The library against NumPy, plain Python and straightforward Rust: first that all say the same, then how long each
takes. `python compare.py PROGRAM FOLDER [COUNT]`, PROGRAM being the built comparison in Rust. Prints tab-separated lines."""

import subprocess
import sys
import time
from pathlib import Path

import numpy as np

import plain_rig
import vectorised_rig

ALIKE = 1e-9
PLAIN = 2000
CORNERS = ("near_left", "near_right", "far_right", "far_left")
EDGES = ("edge_front", "edge_right", "edge_back", "edge_left")
STANDING = ("mass", "centre_x", "centre_y", "centre_z", "margin", "factor", "restoring", "overturning", "tilt", "push",
            "clamp_moment")
SAG = ("sag", "height_lost", "slope", "aim_shift", "frequency", "settling")
WHOLE_NUMBERS = ("upright", "open_underside", "round", "legs", "boom", "hold_as_shot", "hold_camera_off",
                 "hold_counterweight_off")


def table(folder, name):
    names = (folder / f"{name}.txt").read_text().split("\n")
    return names, np.fromfile(folder / f"{name}.f64").reshape(-1, len(names))


def one_brief(names, row):
    """As somebody who plans one shot would hold it."""
    b = {name: None if value != value else float(value) for name, value in zip(names, row)}
    b.update({name: int(b[name]) for name in WHOLE_NUMBERS})
    return b


def flat(out):
    """Every output under one name, points taken apart."""
    found = {}
    for name, value in out.items():
        if name == "corners":
            for corner, place in zip(CORNERS, value):
                found[corner + "_x"], found[corner + "_y"] = place if place else (None, None)
        elif name == "edges":
            found.update(zip(EDGES, map(float, value)))
        elif name in vectorised_rig.STATES:
            found.update((f"{name}_{part}", part_value) for part, part_value in zip(STANDING, value))
        elif name == "sag" and len(value) == len(SAG):
            found.update(zip(SAG, value))
        elif name == "feet":
            for leg, foot in enumerate(value[:3]):
                found[f"foot{leg}_x"], found[f"foot{leg}_y"] = foot[:2]
        elif isinstance(value, (tuple, list)) and len(value) == 3:
            found.update((f"{name}_{part}", part_value) for part, part_value in zip("xyz", value))
        elif name == "tail_end":
            found.update((f"tail_end_{part}", None) for part in "xyz")
        else:
            found[name] = value
    return found


def apart(ours, theirs, names, columns):
    """The furthest of each output, against its size or 1."""
    worst = {}
    for index, name in enumerate(names):
        a, c = ours[:, index], columns[name]
        same = (a == c) | (np.isnan(a) & np.isnan(c))
        with np.errstate(all="ignore"):
            off = np.where(same, 0.0, np.abs(a - c) / np.maximum(np.abs(a), 1.0))
        off = np.where(np.isnan(off), np.inf, off)
        state = next((state for state in vectorised_rig.STATES if name.startswith(state)), None)
        if state and name.rsplit("_", 1)[1] in ("factor", "restoring", "overturning"):
            # A weight on the very edge overturns by rounding alone, or not at all.
            off = np.where(ours[:, names.index(state + "_factor")] > 1e9, 0.0, off)
        worst[name] = float(off.max())
    name = max(worst, key=worst.get)
    print(f"apart.{theirs}\t{worst[name]:.2e}\t\tfurthest of {len(names)} outputs of {len(ours)} briefs ({name})", flush=True)
    if worst[name] > ALIKE:
        for name in sorted(worst, key=worst.get, reverse=True)[:8]:
            print(f"  {name} {worst[name]:.1e}", file=sys.stderr)
        raise SystemExit(f"{theirs} says something else")


def columns_of(out, count):
    return {name: np.broadcast_to(np.asarray(value, dtype=float), count) for name, value in flat(out).items() if name[0] != "_"}


def numpy_ns(names, briefs):
    """The least of some runs over all, at the size of piece that suits NumPy's caches best."""
    columns = dict(zip(names, np.ascontiguousarray(briefs.T)))
    best = {}
    for piece in (2000, 8000, 32000, 1_000_000):
        took = []
        for _ in range(3 if piece < 1_000_000 else 2):
            begun = time.perf_counter()
            for start in range(0, len(briefs), piece):
                vectorised_rig.plan({name: column[start:start + piece] for name, column in columns.items()})
            took.append(time.perf_counter() - begun)
        best[piece] = min(took) / len(briefs) * 1e9
        print(f"numpy.{piece}\t{best[piece]:.0f}\tns\tNumPy, {piece} at a time", flush=True)
    return min(best.values())


def plain_ns(briefs):
    took = []
    for _ in range(5):
        begun = time.perf_counter()
        for brief in briefs:
            plain_rig.plan(brief)
        took.append(time.perf_counter() - begun)
    return min(took) / len(briefs) * 1e9


def main(program, folder, count):
    subprocess.run([program, "export", str(count), str(folder)], check=True)
    names, briefs = table(folder, "briefs")
    outputs, plans = table(folder, "plans")
    first = {name: column[:PLAIN] for name, column in zip(names, briefs.T)}
    ours = plans[:PLAIN]
    apart(ours, "numpy", outputs, columns_of(vectorised_rig.plan(first), PLAIN))
    one_by_one = [one_brief(names, row) for row in briefs[:PLAIN]]
    rows = [flat(plain_rig.plan(brief)) for brief in one_by_one]
    missing = [name for name in outputs if name not in rows[0]]
    assert not missing, missing
    as_number = {name: np.array([np.nan if row[name] is None else row[name] for row in rows], dtype=float) for name in outputs}
    apart(ours, "plain", outputs, as_number)
    subprocess.run([program, "agree", "20000"], check=True, stdout=subprocess.DEVNULL)

    # The library between the others, so that what else the machine does falls on all.
    timed = [subprocess.run([program, "time"], check=True, capture_output=True, text=True).stdout]
    in_numpy = numpy_ns(names, briefs)
    in_plain = plain_ns(one_by_one)
    timed.append(subprocess.run([program, "time"], check=True, capture_output=True, text=True).stdout)
    runs = [{line.split("\t")[0]: line.split("\t")[1:] for line in run.splitlines()} for run in timed]
    library, same = (min(float(run[key][0]) for run in runs) for key in ("library", "library.same"))
    print(f"library\t{library:.0f}\tns\tthe library, the whole plan with checks, advice, longest reach and cautions")
    print(f"library.same\t{same:.0f}\tns\tthe library without those, by its public functions")
    print(f"numpy\t{in_numpy:.0f}\tns\tNumPy, the same outputs without those, {len(briefs)} briefs")
    print(f"plain\t{in_plain:.0f}\tns\tplain Python, the same, {PLAIN} briefs")
    for key, name, ns in ("numpy", "NumPy", in_numpy), ("plain", "plain Python", in_plain):
        print(f"{key}.times\t{ns / same:.1f}\ttimes\t{name} / library, the same outputs")
        print(f"{key}.over_whole\t{ns / library:.1f}\ttimes\t{name} / the library's whole plan")
    for name in runs[0]:
        if not name.startswith(("library", "straightforward")):
            both = [float(run[name][0]) for run in runs]
            print(f"rust.{name}\t{sorted(both)[-1]:.2f}\ttimes\tstraightforward Rust / library: {name}")


if __name__ == "__main__":
    main(sys.argv[1], Path(sys.argv[2]), int(sys.argv[3]) if len(sys.argv) > 3 else 1_000_000)
