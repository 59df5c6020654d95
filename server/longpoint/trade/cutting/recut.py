"""Better a plan piecemeal: cut a few of its sticks anew, from sticks that weigh less together."""

from .combos import combos, material_bound
from .packing import Packing
from .plans import Plan, gathered

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from .problem import Cutting, Pattern

    Sticks = list[tuple[int, Pattern]]

GROUPS = (2, 3, 4)
MOST_GROUPS = 800
MOST_COMBOS = 6
NODES = 60


class Recut:
    """Groups of sticks taken out of a plan and cut again.

    Attributes
    ----------
    plan : Plan
        The best so far.
    work : int
        Steps taken.
    """

    def __init__(self, plan: Plan) -> None:
        self.problem = plan.problem
        self.plan = plan
        self.work = 0

    def run(self, enough: int) -> "Iterator[None]":
        """Go through the groups until none gets better, or the plan weighs `enough`."""
        tried = 0
        again = True
        while again and self.plan.weight > enough:
            again = False
            sticks = self._most_wasteful_first()
            for group in groups(sticks):
                tried += 1
                if tried > MOST_GROUPS:
                    return
                better = self._cut_again(sticks, group)
                yield None
                if better is not None:
                    rest = [stick for at, stick in enumerate(sticks) if at not in group]
                    self.plan = Plan(self.problem, gathered(self.problem, rest + better))
                    again = True
                    break

    def _most_wasteful_first(self) -> "Sticks":
        sticks = self.plan.single()
        order = sorted(
            [(-self.plan.rest(kind, pattern), at) for at, (kind, pattern) in enumerate(sticks)]
        )
        return [sticks[at] for _, at in order]

    def _cut_again(self, sticks: "Sticks", group: "list[int]") -> "Sticks | None":
        """Return lighter sticks for the pieces of a group, if some are found quickly."""
        taken = [sticks[at] for at in group]
        rest = self._problem_of(taken)
        weight = sum([rest.weights[kind] for kind, _ in taken])
        lighter = combos(rest, material_bound(rest), weight) or []
        self.work += 100
        for _, counts in lighter[:MOST_COMBOS]:
            packing = Packing(rest, counts)
            for _ in packing.run(NODES):
                pass
            self.work += 40 * packing.nodes
            if packing.found is not None:
                return packing.found
        return None

    def _problem_of(self, taken: "Sticks") -> "Cutting":
        """Return the problem of cutting a few sticks' pieces from what the others leave."""
        wanted = [0 for _ in self.problem.sizes]
        sticks = [limit - used for limit, used in zip(self.problem.limits, self.plan.used())]
        for kind, pattern in taken:
            sticks[kind] += 1
            for size, number in pattern:
                wanted[size] += number
        rest = self.problem.rest(wanted)
        rest.limits = [min(number, rest.pieces) for number in sticks]
        return rest


def groups(sticks: "Sticks") -> "Iterator[list[int]]":
    """Give groups of sticks by their places, the first ones before the last, no two alike.

    >>> list(groups([(0, ()), (0, ()), (1, ())]))[:3]
    [[0, 1], [0, 2], [0, 1, 2]]
    """
    seen: dict[tuple[tuple[int, Pattern], ...], bool] = {}
    for number in GROUPS:
        if number > len(sticks):
            return
        places = list(range(number))
        while True:
            key = tuple([sticks[at] for at in places])
            if key not in seen:
                seen[key] = True
                yield list(places)
            # The odometer's next: the first place that can move up without meeting the next one.
            at = 0
            while at < number - 1 and places[at] + 1 == places[at + 1]:
                at += 1
            if places[at] + 1 == len(sticks):
                break
            places = list(range(at)) + [places[at] + 1] + places[at + 1 :]
