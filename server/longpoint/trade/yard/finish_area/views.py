"""One of each thing, to scale, under its number: its face, or trim laid flat by its girth."""

from ...tool import Drawing, Given, Scale
from .things import PANELLED

MOST_DRAWN = 6


def one_of_each(rows: "list[Given]", scale: Scale) -> "Drawing | None":
    """Stand the things that have a size side by side; None where none has."""
    sized = [(number, row) for number, row in enumerate(rows, 1) if row.maybe("length") is not None]
    del sized[MOST_DRAWN:]
    if not sized:
        return None
    doors = [row.number("length") for _, row in sized if row.text("kind") != "trim"]
    tallest = max(doors or [row.number("length") for _, row in sized])
    words = [scale.length(row.number("length")) + " long" for _, row in sized]
    view = Drawing("What is coated", "One of each, to scale: " + "; ".join(words) + ".")
    at = 0.0
    for number, row in sized:
        wide = row.maybe("width") or row.number("girth")
        high = min(row.number("length"), tallest)
        view.box("stock", at, -high, at + wide, 0)
        if row.text("kind") in PANELLED:
            _openings(view, row, at, wide, high)
        view.tag((at + wide / 2, tallest / 12), str(number))
        at += wide + tallest / 16
    return view


def _openings(view: Drawing, row: Given, at: float, wide: float, high: float) -> None:
    """Draw the openings one above the other where they fit so; else the frame alone."""
    count, across = row.count("openings"), row.number("opening_width")
    each = row.number("opening_heights") / count
    gap = (high - each * count) / (count + 1)
    if gap <= 0:
        return
    role = "clearance" if row.text("kind") == "glazed" else "panel"
    left = at + (wide - across) / 2
    for place in range(count):
        top = -high + gap + place * (each + gap)
        view.box(role, left, top, left + across, top + each)
