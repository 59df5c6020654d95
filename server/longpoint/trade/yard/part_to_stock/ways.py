"""How a part comes out of a board: milled, ripped from wider, glued up, laminated; and the best.

Every piece of the board gives up the same on its faces and edges, glued or not: that is what it
takes to make it flat, straight and square.
"""

import math

from ...cutting.one_length import OneLength, Sticks, pieces_in
from ...lumber.strips import Strips
from ...refusal import Refusal
from .offers import Offer

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

    Say = Callable[[float], str]

MOST_LAYERS = 8
MOST_STRIPS = 24
_HAIR = 1e-9  # Of a piece: float noise must not ask for one more.


class Part:
    """What is to be made: finished sizes, how many, and what making it takes; inches.

    Parameters
    ----------
    size : tuple
        Finished thickness, width and length.
    allowances : tuple
        Off each face, each edge and each end.
    sold : list of float
        Lengths the yard sells; empty where it sells any length.
    """

    def __init__(
        self,
        size: "tuple[float, float, float]",
        count: int,
        allowances: "tuple[float, float, float]",
        kerf: float,
        sold: "list[float]",
    ) -> None:
        self.thickness, self.width, self.length = size
        self.count = count
        self.face, self.edge, end = allowances
        self.kerf = kerf
        self.cut_length = self.length + 2 * end
        self.sold = sold
        self.plans: dict[float | None, OneLength] = {}

    def volume(self) -> float:
        """Return the cubic inches of all the parts, finished."""
        return self.thickness * self.width * self.length * self.count

    def lengths_for(self, offer: Offer) -> "list[float]":
        """Return the lengths that an offer is sold in; none where it is cut to any length."""
        return self.sold if offer.own_length is None else [offer.own_length]

    def sticks(self, offer: Offer, count: int) -> "list[Sticks]":
        """Return what is bought of an offer for so many lengths; none where any length is cut."""
        sold, key = self.lengths_for(offer), offer.own_length
        if not sold:
            return []
        if key not in self.plans:
            self.plans[key] = OneLength(self.cut_length, self.kerf, sold)
        return self.plans[key].sticks(count)


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
    sticks : list of Sticks
        Whole sticks or boards to buy; none where the yard cuts any length.
    feet : float
        Length that is bought, in feet.
    cost : float or None
        Of what is bought, where the price is known.
    """

    def __init__(self, offer: Offer, part: Part, place: int) -> None:
        self.offer = offer
        self.place = place
        layers = Strips(part.thickness + 2 * part.face, offer.thickness, part.face)
        strips = Strips(part.width + 2 * part.edge, offer.width, part.edge)
        self.layers, self.strips, self.rip = layers.count, strips.count, strips.rip
        self.layer = part.thickness / self.layers
        self.strip = part.width / self.strips
        self.across = pieces_in(offer.width, self.rip, part.kerf)
        self.pieces = part.count * self.layers * self.strips
        self.lengths = (self.pieces + self.across - 1) // self.across
        self.sticks = part.sticks(offer, self.lengths)
        inches = sum([stick.length * stick.count for stick in self.sticks])
        inches = inches or self.lengths * part.cut_length
        self.feet = inches / 12
        self.board_feet = offer.billed_feet(inches)
        self.bought = inches * offer.thickness * offer.width
        self.waste = 1 - part.volume() / self.bought
        self.cost = self._cost()

    @property
    def boards(self) -> int:
        """Whole sticks or boards to buy; 0 where the yard cuts any length."""
        return sum([stick.count for stick in self.sticks])

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

    def rank(self) -> "tuple[int, int, int]":
        """Return what decides before the price: planed away, glue lines, stock bought."""
        return (int(self.planed_away), self.glue_lines, int(self.bought * 1000 + 0.5))

    def _cost(self) -> "float | None":
        seen = self.offer.seen
        if seen is None or seen.price is None:
            return None
        if seen.per == "each":
            return self.boards * seen.price if seen.length is not None else None
        amount = self.feet if seen.per == "lineal-foot" else self.board_feet
        return amount * seen.price


def ways_of(offers: "list[Offer]", part: Part, say: "Say") -> "list[Way]":
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
    """Tell whether an offer is sold in lengths shorter than the part is cut."""
    sold = part.lengths_for(offer)
    return bool(sold) and not pieces_in(max(sold), part.cut_length, part.kerf)


def needed(size: float, each: float) -> int:
    """Return how many pieces of `each` make up `size`."""
    return max(1, int(math.ceil(size / each - _HAIR)))


def ranked(ways: "list[Way]") -> "list[Way]":
    """Return ways best first.

    Stock of which more than half would be planed away comes last; then fewest glue lines, least
    bought, and where these are alike and all prices known, least cost. The list's order ends it.
    """
    unpriced = [way.rank() for way in ways if way.cost is None]

    def key(way: Way) -> "tuple[tuple[int, int, int], float, int]":
        rank = way.rank()
        return (rank, 0.0 if rank in unpriced else way.cost or 0.0, way.place)

    return sorted(ways, key=key)


def _eaten(field: str, allowance: float, most: float, say: "Say") -> Refusal:
    side = field.split("_")[0]
    return Refusal(
        field,
        f"{say(allowance)} off each {side} leaves nothing of {say(most)}, the most there is: "
        f"use less than {say(most / 2)}.",
    )


def _too_much(field: str, size: float, way: str, pieces: str, say: "Say") -> Refusal:
    return Refusal(
        field,
        f"{say(size)} {way} takes more than {pieces} of the stock here: build it hollow, or put "
        "heavier stock on your list.",
    )
