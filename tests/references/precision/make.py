"""Writes briefs.tsv and plans.tsv: `python make.py FOLDER`. Needs mpmath."""

import sys
from multiprocessing import Pool
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1]))

from mpmath import mpf

import glass
from draw import KINDS, brief
from numbers50 import Fence
from table import Outcome, write
from whole import exact, plan

COUNT = 2000


def adjusted(kind, b):
    """The brief moved next to where digits are lost: the hyperfocal distance, tipping, a balanced boom."""
    near = 1 + b.pop("near")
    if kind == "hyperfocal":
        b["f_number"] = b["f_number"] or 8.0
        x = exact(b)
        m = glass.used_area(x)[0] / x["frame_width_mm"]
        b["circle_of_confusion_mm"] = float(m * glass.focal_length(x, m) / x["f_number"] * near)
        if not 1e-4 <= b["circle_of_confusion_mm"] <= 5:
            raise Fence("circle")
    elif kind == "tipping":
        b["wanted_factor"], b["base_mass_kg"] = 1.0, 0.0
        b["hold_as_shot"], b["hold_camera_off"], b["hold_counterweight_off"] = True, False, False
        b["base_mass_kg"] = float(plan(b)["base_to_add"] * near)
        if not 0 < b["base_mass_kg"] <= 1000:
            raise Fence("no base weight")
    elif kind == "balanced":
        b["boom"], b["tail_mm"] = True, max(b["tail_mm"], 100.0)
        b["counterweight_out_mm"] = None
        counterweight = plan(b)["counterweight_to_balance"]
        if counterweight is None or not 0 < counterweight * near <= 500:
            raise Fence("no counterweight")
        b["counterweight_kg"] = float(counterweight * near)
    return b


def sound(b, out):
    """Whether every input stays within what the library accepts, and the rig is one that can be drawn."""
    return b["foot_radius_mm"] >= b["column_radius_mm"] and out["pivot_z_mm"] > 0


def case(number):
    kind = KINDS[number % len(KINDS)]
    for attempt in range(200):
        try:
            b = adjusted(kind, brief(kind, f"{number}/{attempt}"))
            out = plan(b)
            if sound(b, out):
                kept = {k: Outcome(v) if isinstance(v, mpf) else v for k, v in out.items()}
                return {"case": number, "kind": kind, **b}, {"case": number, **kept}
        except Fence:
            continue
    raise SystemExit(f"no brief for case {number}")


def main(folder):
    with Pool(2) as pool:
        done = pool.map(case, range(COUNT), chunksize=20)
    write(Path(folder) / "briefs.tsv", [b for b, _ in done])
    write(Path(folder) / "plans.tsv", [out for _, out in done])


if __name__ == "__main__":
    main(sys.argv[1])
