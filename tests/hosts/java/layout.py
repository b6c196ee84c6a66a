"""Holds what Layout.java prints against the header: python3 layout.py LISTING, with ../python on PYTHONPATH."""

import sys
from pathlib import Path

from tablerig import ffi

# Named otherwise in Java.
C_NAMES = {"State": "Standing"}

wrong = 0
listed = [line.split() for line in Path(sys.argv[1]).read_text(encoding="utf-8").splitlines()]
offsets = {line[0]: int(line[1]) for line in listed if len(line) == 2}
sizes = {line[0]: int(line[2]) for line in listed if len(line) == 3}
for name, size in sizes.items():
    c_type = ffi.typeof("Tablerig" + C_NAMES.get(name, name))
    known = {f"{name}.{field}": description.offset for field, description in c_type.fields}
    found = {key: offset for key, offset in offsets.items() if key.split(".")[0] == name}
    if size != ffi.sizeof(c_type) or found != known:
        print(f"{name}: {size} bytes, {found}; in the header {ffi.sizeof(c_type)}, {known}", file=sys.stderr)
        wrong += 1
print(f"{len(sizes) - wrong} of {len(sizes)} structs, {len(offsets)} fields, lie in Java as in the header")
sys.exit(wrong != 0 or not sizes)
