"""tablerig from Python through cffi: the installed header is read, so that every function, field and number of it
is here under its C name. Needs cffi, pkg-config and a C preprocessor."""

import re
import subprocess
from pathlib import Path

from cffi import FFI


def _output(*command, given=None):
    return subprocess.run(command, input=given, capture_output=True, text=True, check=True).stdout


def _declarations():
    folder = _output("pkg-config", "--variable=includedir", "tablerig").strip()
    header = Path(folder, "tablerig.h").read_text(encoding="utf-8")
    # cffi knows the standard types by itself.
    return _output("cc", "-E", "-P", "-", given=re.sub(r"(?m)^#include.*", "", header))


ffi = FFI()
ffi.cdef(_declarations())
lib = ffi.dlopen("libtablerig.so.1")


class Refused(ValueError):
    """What was refused: status, field, value, and the least and the most that it may be."""

    def __init__(self, fault):
        self.status, self.value, self.least, self.most = fault.status, fault.value, fault.least, fault.most
        self.field = text(fault.field)
        allowed = f"(allowed: {self.least:g} to {self.most:g})"
        super().__init__(f"{self.field} = {self.value:g} {text(lib.tablerig_status_text(self.status))} {allowed}")


def text(string):
    """A sentence of the library, which are static and never freed; None past the last."""
    return None if string == ffi.NULL else ffi.string(string).decode()


def ask(function, *given):
    """Calls a function that takes a fault record last, and raises what it refuses."""
    fault = ffi.new("TablerigFault *")
    if getattr(lib, "tablerig_" + function)(*given, fault) != lib.TABLERIG_STATUS_OK:
        raise Refused(fault)


def part(kind, **values):
    """A shot, camera, lens, table, subject, support, bay or criteria: its defaults, and over them what is given.
    What may be left out counts once it is given."""
    struct = ffi.new(f"Tablerig{kind.capitalize()} *")
    getattr(lib, f"tablerig_{kind}_init")(struct, ffi.sizeof(struct[0]))
    _fill(struct, values)
    return struct


def _fill(struct, values):
    for name, value in values.items():
        if hasattr(struct, "has_" + name):
            setattr(struct, "has_" + name, 1)
        if isinstance(value, dict):
            _fill(getattr(struct, name), value)
        else:
            setattr(struct, name, value)


def plan(**parts):
    """Plans a shot from its parts. Show `cautions` of it before its numbers."""
    brief = part("brief", **parts)
    planned = part("plan")
    ask("plan", brief, planned)
    return planned


def cautions(planned):
    """The plan's cautions as sentences with value and limit, and those that go with a load overhead."""
    for caution in planned.cautions[0:planned.caution_count]:
        level = text(lib.tablerig_level_text(caution.level))
        sentence = text(lib.tablerig_caution_text(caution.code))
        limit = f"{caution.limit:.4g} {text(lib.tablerig_caution_unit(caution.code))}".strip()
        yield f"{level}: {sentence} ({caution.value:.4g}, limit {limit})"
    index = 0
    while planned.overhead and (sentence := text(lib.tablerig_overhead_caution(index))):
        yield "overhead: " + sentence
        index += 1
