"""A plan: which pattern is cut from which kind of stick, how many times."""

from .problem import filled

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .problem import Cutting, Pattern


class Plan:
    """Cuts of a whole problem, as rows of kind of stick, pattern and times."""

    def __init__(self, problem: "Cutting", rows: "list[tuple[int, Pattern, int]]") -> None:
        self.problem = problem
        self.rows = rows

    @property
    def weight(self) -> int:
        """Cost and number of sticks in one number: the smaller, the better."""
        return sum([self.problem.weights[kind] * times for kind, _, times in self.rows])

    def used(self) -> "list[int]":
        """Return how many sticks of each kind are cut."""
        used = [0 for _ in self.problem.kinds]
        for kind, _, times in self.rows:
            used[kind] += times
        return used

    def rank(self) -> "tuple[int, int, int]":
        """Return what plans are compared by: weight, stock on hand used, longest rest negated."""
        on_hand = sum(
            [
                self.problem.rooms[kind] * times
                for kind, _, times in self.rows
                if not self.problem.unlimited[kind]
            ]
        )
        return (self.weight, on_hand, -self.longest_rest())

    def rest(self, kind: int, pattern: "Pattern") -> int:
        """Return the room that a pattern leaves of a stick."""
        return self.problem.rooms[kind] - filled(self.problem.sizes, pattern)

    def longest_rest(self) -> int:
        """Return the most room left of a single stick."""
        return max([self.rest(kind, pattern) for kind, pattern, _ in self.rows])

    def single(self) -> "list[tuple[int, Pattern]]":
        """Return every stick for itself."""
        return [(kind, pattern) for kind, pattern, times in self.rows for _ in range(times)]


def gathered(
    problem: "Cutting", sticks: "list[tuple[int, Pattern]]"
) -> "list[tuple[int, Pattern, int]]":
    """Return sticks as rows, those cut alike together, in an order of their own."""
    rows: list[tuple[int, Pattern, int]] = []
    for kind, pattern in sorted(sticks):
        if rows and rows[-1][0] == kind and rows[-1][1] == pattern:
            rows[-1] = (kind, pattern, rows[-1][2] + 1)
        else:
            rows.append((kind, pattern, 1))
    return rows


def downsized(plan: Plan) -> Plan:
    """Return the plan with every pattern moved to the cheapest kind of stick that holds it."""
    problem = plan.problem
    by_need = sorted([(filled(problem.sizes, pattern), pattern) for _, pattern in plan.single()])
    left = list(problem.limits)
    order = sorted([(problem.weights[kind], problem.rooms[kind], kind) for kind in problem.kinds])
    sticks = []
    # The fullest choose first: what they leave over may be too short for them anyway.
    for need, pattern in reversed(by_need):
        fits = [kind for _, room, kind in order if room >= need and left[kind] > 0]
        if not fits:
            return plan
        left[fits[0]] -= 1
        sticks.append((fits[0], pattern))
    smaller = Plan(problem, gathered(problem, sticks))
    return smaller if smaller.rank() < plan.rank() else plan
