"""A plan carried to the saw: numbered sticks, each with its pieces, marks and offcut."""

from .stick_stock import Order

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..cutting.plans import Plan
    from ..cutting.problem import Pattern

_HAIR = 1e-7  # Inches: under the finest unit a plan is made in.


class CutStick:
    """One stick of a plan; lengths in inches from the end that is cut first.

    Attributes
    ----------
    number : int
        Sticks are numbered from 1 in the order they are cut.
    pieces : list of int
        Places of its pieces in the order's lists, as they are cut.
    starts : list of float
        Where each piece begins.
    offcut : float
        What is left after the last cut, its far end trimmed.
    """

    def __init__(self, order: Order, number: int, kind: int, pattern: "Pattern") -> None:
        self.order = order
        self.number = number
        self.kind = kind
        self.stick = order.sticks[kind]
        self.pattern = pattern
        self.pieces: list[int] = []
        self.starts: list[float] = []
        self.offcut = order.offcut(kind, pattern)

    def lay(self, places: "list[int]") -> None:
        """Lay pieces along the stick, a kerf between them."""
        at = self.order.trim
        for place in places:
            self.pieces.append(place)
            self.starts.append(at)
            at += self.order.lengths[place] + self.order.kerf

    def end(self, index: int) -> float:
        """Return where a piece of the stick ends."""
        return self.starts[index] + self.order.lengths[self.pieces[index]]

    @property
    def kept(self) -> bool:
        """Tell whether the offcut is worth keeping."""
        return self.offcut > 0 and self.offcut >= self.order.keep - _HAIR

    @property
    def last_cut(self) -> bool:
        """Tell whether the last piece needs a cut at its far end, too."""
        return self.stick.length - self.end(len(self.pieces) - 1) > _HAIR


def cut_sticks(order: Order, plan: "Plan") -> "list[CutStick]":
    """Return the sticks of a plan as they are cut: those on hand first, longest offcut last."""
    singles = sorted(
        [
            (order.problem.unlimited[kind], kind, plan.rest(kind, pattern), pattern)
            for kind, pattern in plan.single()
        ]
    )
    waiting = [list(row) for row in order.row_of_size]
    taken = [0 for _ in waiting]
    sticks = []
    for at, (_, kind, _, pattern) in enumerate(singles):
        stick = CutStick(order, at + 1, kind, pattern)
        places = []
        for size, number in pattern:
            places.extend(waiting[size][taken[size] : taken[size] + number])
            taken[size] += number
        stick.lay(places)
        sticks.append(stick)
    return sticks
