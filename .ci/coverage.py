#!/usr/bin/env python3
"""Reads what llvm-cov exported, counts the core's lines and branches, and compares with what was recorded."""

import json
import pathlib
import re
import sys

RECORD = pathlib.Path("tests/measured/coverage.txt")
# The core: everything from a brief to its plan.
CORE = re.compile(
    r"src/(number|vector|range|fault|brief|advice|tolerance|plan)\.rs|src/(optics|scene|view|rig|caution)/.*"
)


def core(path):
    try:
        name = str(pathlib.Path(path).resolve().relative_to(pathlib.Path.cwd()))
    except ValueError:
        return None
    return name if CORE.fullmatch(name) else None


def lines(path):
    """How often each line of each file ran."""
    files, counts = {}, None
    for row in path.read_text().splitlines():
        if row.startswith("SF:"):
            name = core(row[3:])
            counts = files.setdefault(name, {}) if name else None
        elif row.startswith("DA:") and counts is not None:
            line, count = row[3:].split(",")[:2]
            counts[int(line)] = max(counts.get(int(line), 0), int(count))
    return files


def branches(path):
    """Which ways of each condition were gone, by where it stands; of a generic function, any of its kinds counts."""
    ways = {}
    for function in json.loads(path.read_text())["data"][0]["functions"]:
        names = [core(name) for name in function["filenames"]]
        for branch in function["branches"]:
            place, (yes, no, file) = tuple(branch[:4]), branch[4:7]
            if names[file]:
                gone = ways.setdefault((names[file], place), [0, 0])
                gone[0] += yes
                gone[1] += no
    return ways


def main(folder, record):
    folder = pathlib.Path(folder)
    files, ways = lines(folder / "all.lcov"), branches(folder / "all.json")
    if not files or not ways:
        sys.exit("the measurement holds nothing of the core")
    print("file                          lines run       of   ways gone       of")
    missed, total = [], [0, 0, 0, 0]
    for name in sorted(files):
        run = sum(1 for count in files[name].values() if count)
        here = {place: gone for (file, place), gone in ways.items() if file == name}
        gone = sum(1 for both in here.values() for count in both if count)
        row = [run, len(files[name]), gone, 2 * len(here)]
        total = [a + b for a, b in zip(total, row)]
        print("{:28} {:10} {:8} {:11} {:8}".format(name, *row))
        missed += [(name, line, 0, "is not run") for line, count in files[name].items() if not count]
        for (line, column, *_), (yes, no) in here.items():
            for count, way in ((yes, "true"), (no, "false")):
                if not count:
                    missed.append((name, line, column, f"is never {way}"))
    print("{:28} {:10} {:8} {:11} {:8}".format("all", *total))
    for name, line, column, what in sorted(missed):
        text = pathlib.Path(name).read_text().splitlines()[line - 1].strip()
        print(f"{name}:{line}:{column} {what}: {text}")
    told = f"lines not run: {total[1] - total[0]} of {total[1]}\nways not gone: {total[3] - total[2]} of {total[3]}\n"
    if record:
        head = RECORD.read_text().split("\n\n")[0] if RECORD.exists() else "# The core's coverage."
        RECORD.parent.mkdir(exist_ok=True)
        RECORD.write_text(f"{head}\n\n{told}")
        return
    most = [int(n) for n in re.findall(r": (\d+) of", RECORD.read_text())]
    now = [total[1] - total[0], total[3] - total[2]]
    if any(n > m for n, m in zip(now, most, strict=True)):
        sys.exit(f"more is left out than {RECORD} says: {most} recorded, {now} now")


if __name__ == "__main__":
    main(sys.argv[1], sys.argv[2:] == ["record"])
