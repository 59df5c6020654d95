"""A plan: which pattern is cut from which kind of stick, how many times."""

from .problem import filled

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .problem import Cutting, Pattern

    Row = tuple[int, Pattern, int]


class StickPlan:
    """Cuts of a whole problem, as rows of kind of stick, pattern and times.

    Attributes
    ----------
    weight : int
        Cost and number of sticks in one number: the smaller, the better.
    rank : tuple
        What plans are compared by: weight, stock on hand used, longest rest negated.
    """

    def __init__(self, problem: "Cutting", rows: "list[Row]") -> None:
        self.problem = problem
        self.rows = rows
        self.weight = sum([problem.weights[kind] * times for kind, _, times in rows])
        on_hand = sum(
            [problem.rooms[k] * times for k, _, times in rows if not problem.unlimited[k]]
        )
        longest = max([self.rest(kind, pattern) for kind, pattern, _ in rows])
        self.rank = (self.weight, on_hand, -longest)

    def used(self) -> "list[int]":
        """Return how many sticks of each kind are cut."""
        used = [0 for _ in self.problem.kinds]
        for kind, _, times in self.rows:
            used[kind] += times
        return used

    def rest(self, kind: int, pattern: "Pattern") -> int:
        """Return the room that a pattern leaves of a stick."""
        return self.problem.rooms[kind] - filled(self.problem.sizes, pattern)

    def longest_rest(self) -> int:
        """Return the most room left of a single stick."""
        return -self.rank[2]

    def single(self) -> "list[tuple[int, Pattern]]":
        """Return every stick for itself."""
        return [(kind, pattern) for kind, pattern, times in self.rows for _ in range(times)]


def gathered(rows: "list[Row]") -> "list[Row]":
    """Return rows with those cut alike made one, in an order of their own."""
    joined: list[Row] = []
    for kind, pattern, times in sorted(rows):
        if joined and joined[-1][0] == kind and joined[-1][1] == pattern:
            joined[-1] = (kind, pattern, joined[-1][2] + times)
        else:
            joined.append((kind, pattern, times))
    return joined


def of_single(problem: "Cutting", sticks: "list[tuple[int, Pattern]]") -> StickPlan:
    """Return the plan that cuts these sticks."""
    return StickPlan(problem, gathered([(kind, pattern, 1) for kind, pattern in sticks]))


def downsized(problem: "Cutting", rows: "list[Row]") -> "list[Row]":
    """Return the rows with every pattern moved to the cheapest kind of stick that holds it.

    As they were, where the sticks there are run out on the way.
    """
    by_need = sorted([(filled(problem.sizes, row[1]), at) for at, row in enumerate(rows)])
    left = list(problem.limits)
    order = sorted([(problem.weights[kind], problem.rooms[kind], kind) for kind in problem.kinds])
    moved = []
    # The fullest choose first: what they leave over may be too short for them anyway.
    for need, at in reversed(by_need):
        _, pattern, times = rows[at]
        for _, room, kind in order:
            number = min(times, left[kind]) if room >= need else 0
            if number:
                left[kind] -= number
                times -= number
                moved.append((kind, pattern, number))
            if not times:
                break
        if times:
            return rows
    return moved
