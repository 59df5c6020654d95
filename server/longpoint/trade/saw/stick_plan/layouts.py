"""A plan carried to the saw: ways to cut a stick, each with its pieces, marks and offcut."""

from .order import StickOrder

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...cutting.plans import StickPlan
    from ...cutting.problem import Pattern

    Runs = list[tuple[int, int]]

HAIR = 1e-7  # Inches: under the finest unit a plan is made in.


class Layout:
    """One way to cut a stick, and the sticks cut so; lengths in inches from the end cut first.

    Attributes
    ----------
    first, times : int
        Sticks are numbered from 1 in the order they are cut; these are `times` from `first` on.
    runs : list of pair
        Rows of the list and how many pieces of each, longest first.
    offcut : float
        What is left after the last cut, its far end trimmed.
    """

    def __init__(
        self, order: StickOrder, first: int, times: int, cut: "tuple[int, Pattern, Runs]"
    ) -> None:
        self.order = order
        self.first = first
        self.times = times
        self.kind, pattern, self.runs = cut
        self.stick = order.sticks[self.kind]
        self.offcut = order.offcut(self.kind, pattern)

    @property
    def last(self) -> int:
        """Return the number of the last stick cut so."""
        return self.first + self.times - 1

    @property
    def pieces(self) -> int:
        """Return how many pieces one stick gives."""
        return sum([number for _, number in self.runs])

    @property
    def kept(self) -> bool:
        """Tell whether the offcut is worth keeping."""
        return self.offcut > 0 and self.offcut >= self.order.keep - HAIR

    def places(self) -> "list[tuple[int, float, float]]":
        """Return of each piece its row, and where it begins and ends, a kerf between pieces."""
        found = []
        at = self.order.trim
        for row, number in self.runs:
            length = self.order.rows[row].length
            for _ in range(number):
                found.append((row, at, at + length))
                at += length + self.order.kerf
        return found

    @property
    def last_cut(self) -> bool:
        """Tell whether the last piece needs a cut at its far end, too."""
        used = sum([self.order.rows[row].length * number for row, number in self.runs])
        end = self.order.trim + used + (self.pieces - 1) * self.order.kerf
        return self.stick.length - end > HAIR

    def sticks(self) -> str:
        """Return which sticks are cut so: "Stick 1", or "Sticks 1 to 3"."""
        if self.times == 1:
            return f"Stick {self.first}"
        return f"Sticks {self.first} to {self.last}"


def layouts_of(order: StickOrder, plan: "StickPlan") -> "list[Layout]":
    """Return the ways of a plan as they are cut: sticks on hand first, longest offcut last."""
    ranked = sorted(
        [
            (order.problem.unlimited[kind], kind, plan.rest(kind, pattern), pattern, times)
            for kind, pattern, times in plan.rows
        ]
    )
    left = [row.count for row in order.rows]
    layouts: list[Layout] = []
    number = 1
    for _, kind, _, pattern, times in ranked:
        while times:
            runs = _runs(order, left, pattern)
            # As many sticks as can be cut from the very same rows are cut alike.
            alike = min([times] + [left[row] // count for row, count in runs])
            layouts.append(Layout(order, number, alike, (kind, pattern, runs)))
            for row, count in runs:
                left[row] -= count * alike
            number, times = number + alike, times - alike
    return layouts


def _runs(order: StickOrder, left: "list[int]", pattern: "Pattern") -> "Runs":
    """Return which rows the next stick of a pattern is cut from, in the order of the list."""
    runs = []
    for size, number in pattern:
        for row in order.rows_of_size[size]:
            take = min(number, left[row])
            if take:
                runs.append((row, take))
                number -= take
    return runs
