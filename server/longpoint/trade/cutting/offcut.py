"""Gather what is left over in one stick: one long offcut is worth more than many short ones."""

from .fill import fullest
from .plans import StickPlan, of_single
from .problem import filled
from .wanted import Wanted

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..planning.work import Work
    from .problem import Pattern

    Sticks = list[tuple[int, Pattern]]

MOST_TARGETS = 2
MOST_ROUNDS = 2
MOST_FILLS = 40


class Gathering:
    """A plan whose rests are moved into one stick.

    Attributes
    ----------
    best : StickPlan
        As good a plan, its longest rest as long as was found.
    """

    def __init__(self, plan: StickPlan, work: "Work") -> None:
        self.problem = plan.problem
        self.plan = plan
        self.best = plan
        self.work = work

    def run(self) -> "Iterator[None]":
        """Empty each of the sticks with most left over into the others."""
        sticks = self.plan.single()
        order = sorted([(-self.plan.rest(*stick), at) for at, stick in enumerate(sticks)])
        self.work.add(10 * len(sticks))
        for target in _different(sticks, [at for _, at in order]):
            emptied = list(sticks)
            yield from self._empty(emptied, target)
            other = of_single(self.problem, [stick for stick in emptied if stick[1]])
            if other.rank < self.best.rank:
                self.best = other

    def _empty(self, sticks: "Sticks", target: int) -> "Iterator[None]":
        """Move as much as goes from one stick into the others."""
        fills = 0
        for _ in range(MOST_ROUNDS):
            moved = False
            for at in range(len(sticks)):
                if at == target or not sticks[target][1] or fills == MOST_FILLS:
                    continue
                if self._is_full(sticks[at]):
                    continue
                fills += 1
                moved = self._move(sticks, at, target) or moved
                yield None
            if not moved:
                return

    def _is_full(self, stick: "tuple[int, Pattern]") -> bool:
        return filled(self.problem.sizes, stick[1]) == self.problem.rooms[stick[0]]

    def _move(self, sticks: "Sticks", at: int, target: int) -> bool:
        """Fill one stick as full as the pieces of two allow; tell whether that moved some."""
        (kind, pattern), (other_kind, other) = sticks[at], sticks[target]
        sizes, rooms = self.problem.sizes, self.problem.rooms
        both = [0 for _ in sizes]
        for size, number in pattern + other:
            both[size] += number
        wanted = Wanted(sizes, both)
        fuller = fullest(wanted, rooms[kind])
        wanted.take(fuller, 1)
        self.work.add(wanted.steps + len(sizes))
        rest = tuple([(size, number) for size, number in enumerate(wanted.left) if number])
        if filled(sizes, fuller) <= filled(sizes, pattern):
            return False
        if filled(sizes, rest) > rooms[other_kind]:
            return False
        sticks[at], sticks[target] = (kind, fuller), (other_kind, rest)
        return True


def _different(sticks: "Sticks", order: "list[int]") -> "list[int]":
    """Return a few sticks that are not cut alike, in the order given."""
    chosen: list[int] = []
    for at in order:
        if not [one for one in chosen if sticks[one] == sticks[at]]:
            chosen.append(at)
        if len(chosen) == MOST_TARGETS:
            break
    return chosen
