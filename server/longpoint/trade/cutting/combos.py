"""Which sticks, taken together, could still make a better plan?"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..planning.work import Work
    from .problem import Cutting

PAUSE = 300
"""Steps between two looks at whether to pause."""


class Combos:
    """Numbers of sticks of each kind whose rooms add up to all pieces.

    Parameters
    ----------
    problem : Cutting
    bound : int
        They weigh at least this,
    below : int
        and less than this.
    most : int
        So many of them are kept, the lightest.

    Attributes
    ----------
    found : list of pair
        Weight and numbers, lightest first.
    below : int
        All that weigh less than this are found, once the search is over.
    is_whole : bool
        The search has come to its end.
    """

    def __init__(self, problem: "Cutting", bound: int, below: int, most: int) -> None:
        self.problem = problem
        self.bound = bound
        self.below = below
        self.most = most
        self.kinds = [kind for kind in problem.by_worth if problem.limits[kind]]
        self.ratios = [problem.weights[kind] / problem.rooms[kind] for kind in self.kinds]
        self.found: list[tuple[int, list[int]]] = []
        self.is_whole = False

    def run(self, steps: int, work: "Work") -> "Iterator[None]":
        """Go through all numbers, those that give most for their weight first."""
        problem, kinds, last = self.problem, self.kinds, len(self.kinds) - 1
        counts = [0 for _ in problem.kinds]
        weight, room, at, seen = 0, 0, 0, 0
        while at >= 0 and seen < steps:
            seen += 1
            if seen % PAUSE == 0:
                work.add(3 * PAUSE)
                yield None
            kind = kinds[at]
            # Numbers go down: from as many as may be, that of a kind left out is 0.
            if at == last:
                self._fill_up(counts, weight, room)
            elif self._may_do(weight, room, at):
                number = self._at_most(kind, weight)
                counts[kind] = number
                weight += number * problem.weights[kind]
                room += number * problem.rooms[kind]
                at += 1
                continue
            at -= 1
            while at >= 0 and counts[kinds[at]] == 0:
                at -= 1
            if at >= 0:
                kind = kinds[at]
                counts[kind] -= 1
                weight -= problem.weights[kind]
                room -= problem.rooms[kind]
                at += 1
        work.add(3 * (seen % PAUSE))
        self.is_whole = at < 0
        self.found.sort()

    def _at_most(self, kind: int, weight: int) -> int:
        each = self.problem.weights[kind]
        return max(0, min(self.problem.limits[kind], (self.below - 1 - weight) // each))

    def _may_do(self, weight: int, room: int, at: int) -> bool:
        """Tell whether the kinds from `at` on can still hold the rest for little enough."""
        left = self.problem.total - room
        # Weights are whole: with a thousandth to spare for the float's last digits, less than 1
        # under the limit is not under it.
        return left <= 0 or weight + left * self.ratios[at] < self.below - 0.999

    def _fill_up(self, counts: "list[int]", weight: int, room: int) -> None:
        """Keep every number of the last kind that is enough and not too many."""
        kind = self.kinds[-1]
        each, holds = self.problem.weights[kind], self.problem.rooms[kind]
        low = max(0, -(-(self.bound - weight) // each), -(-(self.problem.total - room) // holds))
        for number in range(low, self._at_most(kind, weight) + 1):
            self._keep(weight + number * each, counts, kind, number)

    def _keep(self, weight: int, counts: "list[int]", kind: int, number: int) -> None:
        if weight >= self.below:
            return
        taken = list(counts)
        taken[kind] = number
        self.found.append((weight, taken))
        if len(self.found) >= 2 * self.most:
            self.found.sort()
            self.below = self.found[self.most][0]
            self.found = self.found[: self.most]
