"""Casing round a door or a window: every part, its length, and where that is measured."""

from collections import namedtuple

from ..geometry.miters import settings
from ..geometry.square_frame import SquareFrame, frame_around
from ..tool import End, Given, Refusal, Scale, miter, square

Part = namedtuple("Part", ("name", "count", "length", "short", "width", "thick", "ends", "where"))
"""A part in inches; `short` is None but for miters, `where` says what the tape lies between."""

OVER = 1 / 4  # Inches that blocks are usually wider than the casing (common practice).
_HAIR = 1e-9


class Casing:
    """The sizes of a set in inches; heights from the opening's bottom.

    `foot` is where the legs stand: on a plinth or at the bottom. `proud` is how far a corner block
    stands past the casing on each edge.
    """

    def __init__(self, given: Given, scale: Scale) -> None:
        self.kind, self.head = given.text("opening"), given.text("head")
        self.width, self.height = given.number("width"), given.number("height")
        self.side, self.reveal = given.number("casing_width"), given.number("reveal")
        self.thick = given.number("casing_thickness")
        self.top = given.maybe("head_width") or self.side
        self.over = given.maybe("overhang") or 0.0
        self.plinth = given.maybe("plinth_height"), given.maybe("plinth_width")
        self.foot = self.plinth[0] or 0.0
        self.around = self.kind == "around"
        self.clear = self.width + 2 * self.reveal
        self.outer = self.clear + 2 * self.side
        self.block = given.maybe("block_size") or self.side + OVER
        if self.foot >= self.height:
            words = f"A plinth {scale.length(self.foot)} high leaves no leg: use a lower one."
            raise Refusal("plinth_height", words)
        if self.head == "blocks":
            self._check_block("block_size", self.block, scale)
        if self.foot:
            self._check_block("plinth_width", self.plinth_wide, scale)
        if self.head == "blocks" and min(self.leg, self.between) <= 0:
            raise Refusal("block_size", "The blocks meet and leave no casing: use smaller ones.")

    @property
    def plinth_wide(self) -> float:
        """Width of a plinth."""
        return self.plinth[1] or self.side + OVER

    def _check_block(self, field: str, size: float, scale: Scale) -> None:
        length = scale.finer().length
        if size < self.side - _HAIR:
            raise Refusal(
                field,
                f"A block {length(size)} wide is narrower than the casing that ends on it: use "
                f"{length(self.side)} or more.",
            )
        most = self.side + 2 * self.reveal
        if size > most + _HAIR:
            raise Refusal(
                field,
                f"A block {length(size)} wide, centered on the casing, covers the jamb's edge: use "
                f"{length(most)} or less, or a larger reveal.",
            )

    @property
    def proud(self) -> float:
        """How far a corner block stands past the casing."""
        return (self.block - self.side) / 2

    @property
    def ends(self) -> int:
        """How many ends of a leg meet a piece across."""
        return 2 if self.around else 1

    @property
    def leg(self) -> float:
        """Length of a leg that isn't mitered."""
        proud = self.proud if self.head == "blocks" else 0.0
        return self.height - self.foot + self.ends * (self.reveal - proud)

    @property
    def between(self) -> float:
        """Length of a head between corner blocks."""
        return self.clear - 2 * self.proud

    @property
    def frame(self) -> SquareFrame:
        """The mitered frame of the same sizes, its legs' feet where these stand."""
        opening = (self.width, self.height - self.foot)
        bottom = self.top if self.around else 0.0
        return frame_around(opening, self.reveal, self.side, self.top, bottom)

    @property
    def outside(self) -> "tuple[float, float]":
        """Width and height over all, without stool, apron and plinths' extra width."""
        wide, top = self.outer, self.top
        if self.head == "butt":
            wide += 2 * self.over
        elif self.head == "blocks":
            wide, top = wide + 2 * self.proud, self.side + self.proud
        return wide, self.height + self.ends * (self.reveal + top)


def casing_parts(casing: Casing) -> "list[Part]":
    """Return plinths, legs, blocks, head and bottom in the order they are cut and go up."""
    ways = {"miter": _mitered, "butt": _butted, "blocks": _blocked}
    return _plinths(casing) + ways[casing.head](casing)


def _part(
    casing: Casing,
    name: str,
    count: int,
    length: float,
    ends: "tuple[End, End]",
    where: str,
    *,
    short: "float | None" = None,
    block: "float | None" = None,
) -> Part:
    """Return a part as wide and thick as the casing is there; a `block` has a width of its own."""
    if block is not None:
        return Part(name, count, length, short, block, None, ends, where)
    width = casing.side if name == "Leg" else casing.top
    return Part(name, count, length, short, width, casing.thick, ends, where)


def _plinths(casing: Casing) -> "list[Part]":
    if not casing.foot:
        return []
    ends, wide = (square("foot"), square()), casing.plinth_wide
    return [_part(casing, "Plinth", 2, casing.foot, ends, "floor to top", block=wide)]


def _from(casing: Casing) -> str:
    """Return what a leg stands on."""
    if casing.foot:
        return "plinth"
    return {"door": "floor", "stool": "stool", "around": "lower reveal line"}[casing.kind]


def _mitered(casing: Casing) -> "list[Part]":
    """Return head, legs and bottom as the mitered frame has them."""
    frame = casing.frame
    head, side = [miter(saw) for saw in settings(casing.top, casing.side)]
    low = side if casing.around else square("foot")
    points = "short points, reveal line to reveal line"
    up = points if casing.around else f"{_from(casing)} to short point at the reveal line"
    wide, high = frame.clear_width, frame.clear_height
    found = [
        _part(casing, "Head", 1, frame.width, (head, head), points, short=wide),
        _part(casing, "Leg", 2, frame.height, (low, side), up, short=high),
    ]
    return _bottomed(casing, found, found[0])


def _butted(casing: Casing) -> "list[Part]":
    end, under = square(), square("at the reveal line")
    foot = under if casing.around else square("foot")
    across = "outer edges of the legs" + (" and the overhang at both ends" if casing.over else "")
    long = casing.outer + 2 * casing.over
    found = [
        _part(casing, "Leg", 2, casing.leg, (foot, under), _from(casing) + " to reveal line"),
        _part(casing, "Head", 1, long, (end, end), across),
    ]
    return _bottomed(casing, found, found[1])


def _blocked(casing: Casing) -> "list[Part]":
    at = square("at the block")
    foot = at if casing.around else square("foot")
    start = "block" if casing.around else _from(casing)
    count, size, plain = 2 * casing.ends, casing.block, (square(), square())
    centered = "centered on leg and head"
    found = [
        _part(casing, "Leg", 2, casing.leg, (foot, at), start + " to block"),
        _part(casing, "Corner block", count, size, plain, centered, block=size),
        _part(casing, "Head", 1, casing.between, (at, at), "block to block"),
    ]
    return _bottomed(casing, found, found[2])


def _bottomed(casing: Casing, parts: "list[Part]", head: Part) -> "list[Part]":
    """Return the parts, and for a window cased all round a bottom like the head."""
    return parts + [Part("Bottom", *head[1:])] if casing.around else parts
