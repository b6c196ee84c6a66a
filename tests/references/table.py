"""Tables as the tests read them: a line of names, then one row a line, cells set apart by tabs."""

from pathlib import Path


def written(name, value):
    """Inputs to their last bit, outputs (Outcome) to 16 digits, scales to 3."""
    if value is None:
        return ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, list):
        return "|".join(str(v) for v in value)
    if isinstance(value, Outcome):
        return f"{float(value.value):.{3 if name.endswith('_scale') else value.digits}g}"
    return repr(value) if isinstance(value, float) else str(value)


class Outcome:
    """A computed number, and to how many digits it is kept."""

    def __init__(self, value, digits=16):
        self.value, self.digits = value, digits


def write(path, rows):
    names = list(rows[0])
    lines = ["\t".join(names)]
    for row in rows:
        assert set(row) <= set(names), set(row) - set(names)
        lines.append("\t".join(written(name, row.get(name)) for name in names))
    path.write_text("\n".join(lines) + "\n")
