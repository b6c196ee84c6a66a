"""Draws what pictures.py gives as one SVG: on the left the room from above, on the right the picture."""

from html import escape

INK, GREY, WOOD, BLUE, RED = "#222", "#8a8a8a", "#8a5a2b", "#1f5fa8", "#b3261e"


def _shape(points, colour, closed=True, dashed=False):
    # y points up in the plan, down in an SVG.
    listed = " ".join(f"{x:.1f},{-y:.1f}" for x, y in points)
    style = f'fill="none" stroke="{colour}"'
    if dashed:
        style += ' stroke-dasharray="12 8"'
    return f'<{"polygon" if closed else "polyline"} points="{listed}" {style}/>'


def _mark(place, colour, name):
    x, y = place[0], -place[1]
    return (
        f'<circle cx="{x:.1f}" cy="{y:.1f}" r="14" fill="{colour}" stroke="none"/>'
        f'<text x="{x + 24:.1f}" y="{y + 14:.1f}">{name}</text>'
    )


def _panel(shapes, box, left, side=480):
    """A square panel that shows `box` (left, bottom, right, top) as large as it fits."""
    width, height = box[2] - box[0], box[3] - box[1]
    x, y, most = (box[0] + box[2]) / 2, -(box[1] + box[3]) / 2, max(width, height) * 1.15
    seen = f"{x - most / 2:.1f} {y - most / 2:.1f} {most:.1f} {most:.1f}"
    style = f'stroke-width="{most / 320:.2f}" font-size="{most / 34:.1f}"'
    place = f'x="{left}" y="40" width="{side}" height="{side}" viewBox="{seen}"'
    return f"<svg {place} {style}>{''.join(shapes)}</svg>"


def _bounds(groups):
    places = [place for group in groups for place in group]
    x, y = zip(*places)
    return min(x), min(y), max(x), max(y)


def draw(title, above, picture, cautions):
    """The whole SVG as text, the cautions under the drawings."""
    marks = [_mark(above["pupil"], BLUE, "entrance pupil"), _mark(above["column"], INK, "column")]
    boom = [above["tail_end"] or above["column"], above["column"], above["pivot"]]
    room = [
        _shape(above["table"], WOOD),
        _shape(above["footprint"], BLUE, dashed=True),
        _shape(above["subject"], RED),
        _shape([above["sensor"], above["aim"]], BLUE, closed=False),
        _shape(boom, INK, closed=False),
        *(_shape([above["column"], foot], GREY, closed=False) for foot in above["feet"]),
        *marks,
    ]
    extent = _bounds([above["table"], above["footprint"], above["feet"], boom, [above["sensor"]]])
    seen = [_shape(edge, WOOD, closed=False) for edge in picture["table_edges"]]
    seen += [_shape(rim, GREY) for rim in picture["subject_rims"]]
    seen += [_shape(picture["subject"], RED), _shape(picture["frame"], BLUE, dashed=True)]
    told = [f'<text x="20" y="{548 + 18 * i}">{escape(line)}</text>' for i, line in enumerate(cautions)]
    height = 548 + 18 * len(cautions)
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1020 {height}" '
        f'font-family="sans-serif" font-size="13">'
        f'<rect width="1020" height="{height}" fill="#fff"/><text x="20" y="28" font-size="16">{escape(title)}</text>'
        f"{_panel(room, extent, 20)}{_panel(seen, _bounds([picture['frame']]), 520)}{''.join(told)}</svg>\n"
    )
