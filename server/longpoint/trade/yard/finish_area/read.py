"""Rows as typed made into things to coat; what can't be built is refused."""

from ...finish.surfaces import FOOT, Bevel, Openings
from ...refusal import Refusal
from ...tool import Given, Scale
from .asked import RAISED
from .things import PANELLED, Thing

NAMES = {
    "board": "Board",
    "slab": "Flat door",
    "framed": "Frame and panel",
    "glazed": "Door with glass",
    "trim": "Trim",
    "area": "Area",
    "off": "Left out",
}


def thing_of(row: Given, at: int, scale: Scale) -> Thing:
    """Return what a row asks to be coated."""
    kind = row.text("kind")
    thing = Thing(kind, row.count("count"), row.text("name") or NAMES[kind])
    thing.factor = row.maybe("factor")
    if kind == "trim":
        return thing.trim(row.number("girth"), row.number("length"))
    if kind in ("area", "off"):
        thing.flat = row.number("area") * FOOT
        return thing
    size = (row.number("width"), row.number("length"), row.maybe("thickness") or 0.0)
    thing.flat_sides(row.text("sides"), size)
    if kind in PANELLED:
        _frame(thing, row, at, scale)
    return thing


def _frame(thing: Thing, row: Given, at: int, scale: Scale) -> None:
    openings = Openings(
        row.count("openings"), row.number("opening_width"), row.number("opening_heights")
    )
    sticking = (row.number("sticking_girth"), row.number("sticking_width"))
    raised = RAISED.get(row.text("raised"), 0)
    bevel = None
    if raised:
        sizes = [row.number(name) for name in ("bevel_width", "bevel_rise", "field_step")]
        bevel = Bevel(sizes[0], sizes[1], sizes[2])
    _check(openings, sticking, bevel, row, at, scale)
    thing.framed(openings, sticking, bevel, raised)


def _check(
    openings: Openings,
    sticking: "tuple[float, float]",
    bevel: "Bevel | None",
    row: Given,
    at: int,
    scale: Scale,
) -> None:
    say = scale.finer().length
    for name, opening, side in (
        ("opening_width", openings.width, row.number("width")),
        ("opening_heights", openings.heights, openings.count * row.number("length")),
    ):
        if opening >= side:
            _refuse(at, name, f"Openings of {say(opening)} leave no frame: use less.")
    if sticking[0] < sticking[1]:
        words = f"a shape {say(sticking[1])} wide is at least as long around"
        _refuse(at, "sticking_girth", f"A girth of {say(sticking[0])} is too little: {words}.")
    inward = sticking[1] / 2 + (bevel.width if bevel else 0.0)
    least = min(openings.width, openings.heights / openings.count)
    if 2 * inward >= least:
        name = "bevel_width" if bevel else "sticking_width"
        _refuse(at, name, f"An opening of {say(least)} leaves no panel inside: use less.")


def _refuse(at: int, name: str, words: str) -> None:
    raise Refusal(f"things.{at}.{name}", words)
