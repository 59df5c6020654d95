"""Casing round a door or a window: every part, its length, and where that is measured."""

from collections import namedtuple

from ...geometry.miters import settings
from ...geometry.square_frame import SquareFrame, frame_around
from ...tool import End, Refusal, Scale, miter, square

CasingPart = namedtuple(
    "CasingPart",
    ("kind", "count", "length", "short", "width", "thick", "ends", "where", "by_short"),
)
"""A part in inches; `kind` is one of `NAMES`, `short` is None but for miters.

`where` says what the tape lies between, `by_short` whether that is the short point's length.
"""

NAMES = {
    "head": "Head",
    "leg": "Leg",
    "bottom": "Bottom",
    "plinth": "Plinth",
    "corner block": "Corner block",
    "stool": "Stool",
    "stool return": "Stool return",
    "apron": "Apron",
    "apron return": "Apron return",
}
"""Kinds of parts, each with its name on the cut list."""

STOCKS = {
    "plinth": "block",
    "corner block": "block",
    "stool": "stool",
    "stool return": "stool",
    "apron": "apron",
    "apron return": "apron",
}
"""Role of the stock that a kind of part is cut from, where that is not the casing's."""

CasingSizes = namedtuple(
    "CasingSizes",
    ("kind", "head", "width", "height", "side", "top", "thick", "reveal", "overhang"),
)
"""What is cased and how, inches; `kind` door, stool or around, `head` miter, butt or blocks."""

Block = namedtuple("Block", ("height", "width", "thick"))
"""A corner block or a plinth, inches; a height of 0 for none."""

OVER = 1 / 4  # Inches that blocks are usually wider and thicker than the casing (common practice).
_HAIR = 1e-9


def block_of(
    height: "float | None", width: "float | None", thick: "float | None", sizes: CasingSizes
) -> Block:
    """Return a plinth or a corner block; what is None is `OVER` more than the casing has."""
    wide = width or sizes.side + OVER
    return Block(height or 0.0, wide, thick or sizes.thick + OVER)


class Casing:
    """The sizes of a set in inches; heights from the opening's bottom.

    Parameters
    ----------
    sizes : CasingSizes
    corner, plinth : Block
        The corner blocks, square; the plinths, 0 high for none.
    scale : Scale
        How refusals show lengths.

    `foot` is where the legs stand: on a plinth or at the bottom. `proud` is how far a corner block
    stands past the casing on each edge.

    Raises
    ------
    Refusal
        For plinths and blocks that leave no casing, don't cover it, or cover the jamb.
    """

    def __init__(self, sizes: CasingSizes, corner: Block, plinth: Block, scale: Scale) -> None:
        self.kind, self.head = sizes.kind, sizes.head
        self.width: float = sizes.width
        self.height: float = sizes.height
        self.side: float = sizes.side
        self.top: float = sizes.top
        self.thick: float = sizes.thick
        self.reveal: float = sizes.reveal
        self.over: float = sizes.overhang
        self.corner, self.plinth = corner, plinth
        self.foot: float = plinth.height
        self.around = self.kind == "around"
        self.clear: float = self.width + 2 * self.reveal
        self.outer: float = self.clear + 2 * self.side
        self._check(scale)

    def _check(self, scale: Scale) -> None:
        if self.foot >= self.height:
            words = f"A plinth {scale.length(self.foot)} high leaves no leg: use a lower one."
            raise Refusal("plinth_height", words)
        if self.head == "blocks":
            self._check_block("block_size", self.corner.width, scale)
        if self.foot:
            self._check_block("plinth_width", self.plinth.width, scale)
        if self.head == "blocks" and min(self.leg, self.between) <= 0:
            raise Refusal("block_size", "The blocks meet and leave no casing: use smaller ones.")

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
        return float(self.corner.width - self.side) / 2 if self.head == "blocks" else 0.0

    @property
    def ends(self) -> int:
        """How many ends of a leg meet a piece across."""
        return 2 if self.around else 1

    @property
    def frame(self) -> SquareFrame:
        """The mitered frame of the same sizes, its legs' feet where these stand."""
        opening = (self.width, self.height - self.foot)
        bottom = self.top if self.around else 0.0
        return frame_around(opening, self.reveal, self.side, self.top, bottom)

    @property
    def leg(self) -> float:
        """Length of a leg that isn't mitered."""
        return self.height - self.foot + self.ends * (self.reveal - self.proud)

    @property
    def between(self) -> float:
        """Length of a head between corner blocks."""
        return self.clear - 2 * self.proud

    @property
    def outside(self) -> "tuple[float, float]":
        """Width and height over all, without stool, apron and plinths' extra width."""
        wide, top = self.outer + 2 * self.proud, self.top
        if self.head == "butt":
            wide += 2 * self.over
        elif self.head == "blocks":
            top = self.side + self.proud
        return wide, self.height + self.ends * (self.reveal + top)


def casing_parts(casing: Casing) -> "list[CasingPart]":
    """Return plinths, legs, blocks, head and bottom in the order they are cut and go up."""
    ways = {"miter": _mitered, "butt": _butted, "blocks": _blocked}
    return _plinths(casing) + ways[casing.head](casing)


def _part(
    casing: Casing,
    kind: str,
    count: int,
    length: float,
    ends: "tuple[End, End]",
    where: str,
    short: "float | None" = None,
) -> CasingPart:
    """Return a part as wide and thick as the casing is there."""
    width = casing.side if kind == "leg" else casing.top
    by_short = short is not None
    return CasingPart(kind, count, length, short, width, casing.thick, ends, where, by_short)


def _plinths(casing: Casing) -> "list[CasingPart]":
    if not casing.foot:
        return []
    _, wide, thick = casing.plinth
    ends = (square("foot"), square())
    where = "floor to top"
    return [CasingPart("plinth", 2, casing.foot, None, wide, thick, ends, where, False)]


def _from(casing: Casing) -> str:
    """Return what a leg stands on."""
    if casing.foot:
        return "plinth"
    return {"door": "floor", "stool": "stool", "around": "lower reveal line"}[casing.kind]


def _mitered(casing: Casing) -> "list[CasingPart]":
    frame = casing.frame
    head, side = [miter(saw) for saw in settings(casing.top, casing.side)]
    low = side if casing.around else square("foot")
    points = "short points, reveal line to reveal line"
    up = points if casing.around else f"{_from(casing)} to short point at the reveal line"
    found = [
        _part(casing, "head", 1, frame.width, (head, head), points, frame.clear_width),
        _part(casing, "leg", 2, frame.height, (low, side), up, frame.clear_height),
    ]
    return _bottomed(casing, found, found[0])


def _butted(casing: Casing) -> "list[CasingPart]":
    end, under = square(), square("at the reveal line")
    foot = under if casing.around else square("foot")
    across = "outer edges of the legs" + (" and the overhang at both ends" if casing.over else "")
    long = casing.outer + 2 * casing.over
    found = [
        _part(casing, "leg", 2, casing.leg, (foot, under), _from(casing) + " to reveal line"),
        _part(casing, "head", 1, long, (end, end), across),
    ]
    return _bottomed(casing, found, found[1])


def _blocked(casing: Casing) -> "list[CasingPart]":
    at = square("at the block")
    foot = at if casing.around else square("foot")
    start = "block" if casing.around else _from(casing)
    _, size, thick = casing.corner
    plain, centered = (square(), square()), "centered on leg and head"
    found = [
        _part(casing, "leg", 2, casing.leg, (foot, at), start + " to block"),
        CasingPart(
            "corner block", 2 * casing.ends, size, None, size, thick, plain, centered, False
        ),
        _part(casing, "head", 1, casing.between, (at, at), "block to block"),
    ]
    return _bottomed(casing, found, found[2])


def _bottomed(casing: Casing, parts: "list[CasingPart]", head: CasingPart) -> "list[CasingPart]":
    """Return the parts, and for a window cased all round a bottom like the head."""
    return parts + [CasingPart("bottom", *head[1:])] if casing.around else parts
