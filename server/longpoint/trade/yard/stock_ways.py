"""How a part comes out of a board: milled, ripped from wider, glued up, laminated; and the best.

Every piece of the board gives up the same on its faces and edges, glued or not: that is what it
takes to make it flat, straight and square.
"""

import math

from ..tool import Refusal
from .stock_offers import Offer

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

    from ..tool import Given

MOST_LAYERS = 8
MOST_STRIPS = 24
_HAIR = 1e-9  # Of a piece: float noise must not ask for one more.


class Part:
    """What is to be made: finished sizes, how many, and what making it takes; inches."""

    def __init__(self, given: "Given") -> None:
        self.thickness = given.number("thickness")
        self.width = given.number("width")
        self.length = given.number("length")
        self.count = given.count("count")
        self.face = given.number("face_allowance")
        self.edge = given.number("edge_allowance")
        self.kerf = given.number("kerf")
        self.cut_length = self.length + 2 * given.number("end_allowance")

    def volume(self) -> float:
        """Return the cubic inches of all the parts, finished."""
        return self.thickness * self.width * self.length * self.count


class Way:
    """One offer made into the part; inches, cubic inches, dollars.

    Attributes
    ----------
    layers, strips : int
        Pieces face to face and, in each layer, edge to edge.
    layer, strip : float
        What one of them measures in the finished part, thick and wide.
    rip : float
        Width to rip to, with its edges still to be jointed.
    across : int
        Pieces ripped side by side out of one board.
    lengths : int
        Lengths of board to cut, `Part.cut_length` each.
    boards : int or None
        Boards to buy, where they are sold by the piece and their length is known.
    cost : float or None
        Where the price is known.
    """

    def __init__(self, offer: Offer, part: Part, place: int) -> None:
        self.offer = offer
        self.place = place
        self.layers = needed(part.thickness, offer.thickness - 2 * part.face)
        self.strips = needed(part.width, offer.width - 2 * part.edge)
        self.layer = part.thickness / self.layers
        self.strip = part.width / self.strips
        self.rip = self.strip + 2 * part.edge
        self.across = _fit(offer.width, self.rip, part.kerf)
        self.pieces = part.count * self.layers * self.strips
        self.lengths = (self.pieces + self.across - 1) // self.across
        self.bought = self.lengths * offer.thickness * offer.width * part.cut_length
        self.waste = 1 - part.volume() / self.bought
        self.boards = self._boards(part)
        self.cost = self._cost(part)

    @property
    def to_mill(self) -> float:
        """What comes off each face."""
        return (self.offer.thickness - self.layer) / 2

    @property
    def left_over(self) -> float:
        """The strip that is left beside the pieces once they are ripped off."""
        return self.offer.width - self.rip

    @property
    def glue_lines(self) -> int:
        """Glue lines in one part."""
        return self.layers * self.strips - 1

    @property
    def planed_away(self) -> bool:
        """More than half of the board's thickness ends up as chips."""
        return self.layer < self.offer.thickness / 2 - _HAIR

    def lineal_feet(self, part: Part) -> float:
        """Return the length of all the lengths end to end, in feet."""
        return self.lengths * part.cut_length / 12

    def rank(self) -> "tuple[int, int, int]":
        """Return what decides before the price: planed away, glue lines, stock taken."""
        return (int(self.planed_away), self.glue_lines, int(self.bought * 1000 + 0.5))

    def _boards(self, part: Part) -> "int | None":
        seen = self.offer.seen
        if seen is None or seen.per != "each" or seen.length is None:
            return None
        per_board = _fit(seen.length, part.cut_length, part.kerf)
        return (self.lengths + per_board - 1) // per_board

    def _cost(self, part: Part) -> "float | None":
        seen = self.offer.seen
        if seen is None or seen.price is None:
            return None
        if seen.per == "each":
            return None if self.boards is None else self.boards * seen.price
        if seen.per == "lineal-foot":
            return self.lineal_feet(part) * seen.price
        return self.lengths * self.offer.billed_feet(part.cut_length) * seen.price


def needed(size: float, each: float) -> int:
    """Return how many pieces of `each` make up `size`."""
    return max(1, int(math.ceil(size / each - _HAIR)))


def _fit(whole: float, piece: float, kerf: float) -> int:
    return int(math.floor((whole + kerf) / (piece + kerf) + _HAIR))


def ways_of(offers: "list[Offer]", part: Part, say: "Callable[[float], str]") -> "list[Way]":
    """Return every way that can be made, best first.

    Raises
    ------
    Refusal
        On the size or the allowance that leaves none.
    """
    thick = [offer for offer in offers if offer.thickness > 2 * part.face]
    if not thick:
        raise _eaten("face_allowance", part.face, max([x.thickness for x in offers]), say)
    wide = [offer for offer in thick if offer.width > 2 * part.edge]
    if not wide:
        raise _eaten("edge_allowance", part.edge, max([x.width for x in thick]), say)
    built = [x for x in wide if part.thickness <= MOST_LAYERS * (x.thickness - 2 * part.face)]
    if not built:
        raise _too_much("thickness", part.thickness, "thick", f"{MOST_LAYERS} layers", say)
    glued = [x for x in built if part.width <= MOST_STRIPS * (x.width - 2 * part.edge)]
    if not glued:
        raise _too_much("width", part.width, "wide", f"{MOST_STRIPS} strips", say)
    long = [offer for offer in glued if not too_short(offer, part)]
    if not long:
        raise Refusal("length", f"Nothing that would do is sold {say(part.cut_length)} long.")
    return ranked([Way(offer, part, place) for place, offer in enumerate(long)])


def too_short(offer: Offer, part: Part) -> bool:
    """Tell whether an offer is sold in pieces shorter than the part is cut."""
    length = None if offer.seen is None else offer.seen.length
    return length is not None and length < part.cut_length - 1e-6


def ranked(ways: "list[Way]") -> "list[Way]":
    """Return ways best first.

    Stock of which more than half would be planed away comes last; then fewest glue lines, least
    waste, and where these are alike and all prices known, least cost. The list's order ends it.
    """
    unpriced = [way.rank() for way in ways if way.cost is None]

    def key(way: Way) -> "tuple[tuple[int, int, int], float, int]":
        rank = way.rank()
        return (rank, 0.0 if rank in unpriced else way.cost or 0.0, way.place)

    return sorted(ways, key=key)


def _eaten(field: str, allowance: float, most: float, say: "Callable[[float], str]") -> Refusal:
    side = field.split("_")[0]
    return Refusal(
        field,
        f"{say(allowance)} off each {side} leaves nothing of {say(most)}, the most there is: "
        f"use less than {say(most / 2)}.",
    )


def _too_much(
    field: str, size: float, way: str, pieces: str, say: "Callable[[float], str]"
) -> Refusal:
    return Refusal(
        field,
        f"{say(size)} {way} takes more than {pieces} of the stock here: build it hollow, or put "
        "heavier stock on your list.",
    )
