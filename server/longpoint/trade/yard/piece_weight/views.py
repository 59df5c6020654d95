"""One of each thing, standing side by side."""

from ...lengths import Scale
from ...tool import Drawing
from .things import Thing

MOST_DRAWN = 8


def one_of_each(things: "list[Thing]", scale: Scale) -> Drawing:
    """Stand one of each thing upright side by side, its face seen, to scale."""
    shown = [(thing, thing.size) for thing in things if thing.size is not None][:MOST_DRAWN]
    highest = max([size[2] for _, size in shown])
    view = Drawing(
        "One of each, to scale",
        "; ".join([f"{thing.name}, {scale.length(size[2])} long" for thing, size in shown]) + ".",
    )
    at, gap = 0.0, highest / 20
    for thing, (_, wide, long) in shown:
        role = {"wood": "stock", "glass": "clearance"}.get(thing.made_of, "panel")
        view.box(role, at, highest - long, at + wide, highest)
        view.tag((at + wide / 2, highest - long / 2), thing.tag)
        at += wide + gap
    view.line("wall", (-gap, highest), (at, highest))
    return view
