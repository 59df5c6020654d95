"""Quick plans: fill one stick after another, each as well as it goes."""

from .fill import fullest
from .plans import StickPlan, downsized, gathered
from .problem import times_in
from .wanted import Wanted

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..planning.work import Work
    from .plans import Row
    from .problem import Cutting, Pattern

    # Kinds to cut from; whether each stick is filled as full as goes or longest piece first;
    # whether only sticks are looked at that hold the longest piece still wanted; how many kinds
    # are tried for the next stick.
    Way = tuple[list[int], bool, bool, int]

FEW = 3
"""Kinds of stick that the very first plan tries for the next stick, so that it is there soon."""
MOST_ALONE = 6
"""Kinds of stick that are tried as the only one bought."""


class Greedy:
    """Plans made in one go each, the best of them kept.

    Attributes
    ----------
    best : StickPlan or None
        None until a first way has come to its end.
    """

    def __init__(self, problem: "Cutting", work: "Work") -> None:
        self.problem = problem
        self.work = work
        self.best: StickPlan | None = None

    def run(self) -> "Iterator[None]":
        """Go all ways, a pause after each stick."""
        for way in ways(self.problem):
            filling = Filling(self.problem, self.problem.wanted, self.problem.limits, self.work)
            yield from filling.run(way)
            if not filling.ran_out:
                self.best = better(self.best, filling.rows, self.problem)
                self.work.add(40 * len(filling.rows))
                yield None


class Filling:
    """Sticks filled until nothing is wanted any more.

    Attributes
    ----------
    rows : list
        Kind, pattern and times of the sticks filled.
    ran_out : bool
        No stick is left that holds what is still wanted.
    """

    def __init__(
        self, problem: "Cutting", left: "list[int]", sticks: "list[int]", work: "Work"
    ) -> None:
        self.problem = problem
        self.wanted = Wanted(problem.sizes, list(left))
        self.sticks = list(sticks)
        self.work = work
        self.rows: list[Row] = []
        self.ran_out = False

    def run(self, way: "Way") -> "Iterator[None]":
        """Cut all that is wanted, each time from the stick that costs least for what it yields."""
        wanted = self.wanted
        while wanted.first() < wanted.end:
            found = self._cheapest(way)
            self.work.add(wanted.steps)
            wanted.steps = 0
            if found is None:
                self.ran_out = True
                return
            kind, pattern = found
            times = min(times_in(pattern, wanted.left), self.sticks[kind])
            self.sticks[kind] -= times
            wanted.take(pattern, times)
            self.rows.append((kind, pattern, times))
            yield None

    def _cheapest(self, way: "Way") -> "tuple[int, Pattern] | None":
        kinds, fuller, longest, most = way
        problem, wanted = self.problem, self.wanted
        need = problem.sizes[wanted.first()] if longest else 0
        best, best_weight, best_yield, looked = None, 0, 1, 0
        for kind in kinds:
            weight, room = problem.weights[kind], problem.rooms[kind]
            # Those that give most for their weight come first: quite full, the next one must win.
            if best is not None and weight * best_yield >= best_weight * room:
                break
            if looked == most:
                break
            wanted.steps += 15
            if self.sticks[kind] == 0 or room < need:
                continue
            looked += 1
            pattern = fullest(wanted, room) if fuller else wanted.longest_first(room)
            got = sum([problem.sizes[size] * number for size, number in pattern])
            if pattern and (best is None or weight * best_yield < best_weight * got):
                best, best_weight, best_yield = (kind, pattern), weight, got
        return best


def ways(problem: "Cutting") -> "Iterator[Way]":
    """Give the ways to make a plan in one go, the quickest first."""
    yield problem.by_worth, False, True, FEW
    for kinds in menus(problem):
        for longest in (True, False):
            for fuller in (False, True):
                yield kinds, fuller, longest, len(kinds)


def menus(problem: "Cutting") -> "list[list[int]]":
    """Return choices of kinds to cut from: all, and the limited ones with one other each."""
    kinds = problem.by_worth
    alone = [kind for kind in kinds if problem.unlimited[kind]]
    if len(alone) < 2:
        return [kinds]
    return [kinds] + [
        [kind for kind in kinds if kind == one or not problem.unlimited[kind]]
        for one in alone[:MOST_ALONE]
    ]


def better(best: "StickPlan | None", rows: "list[Row]", problem: "Cutting") -> StickPlan:
    """Return the better one of a plan and new rows, these moved to smaller sticks first."""
    plan = StickPlan(problem, rows)
    if len(problem.kinds) > 1:
        moved = StickPlan(problem, downsized(problem, rows))
        plan = moved if moved.rank < plan.rank else plan
    if best is not None and best.rank <= plan.rank:
        return best
    return StickPlan(problem, gathered(plan.rows))
