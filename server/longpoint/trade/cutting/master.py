"""The linear program over patterns: how often each is cut, fractions allowed.

A revised simplex with the whole inverse kept. Its floats only propose patterns and prices;
`bound` turns prices into whole numbers before anything is concluded from them.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .problem import Cutting, Pattern

TINY = 1e-9
SLACK = -1


class Master:
    """Cover what is wanted with patterns at least weight, within the sticks there are.

    Rows are the sizes wanted, then the kinds of stick that are limited.

    Attributes
    ----------
    columns : list
        ``(kind, pattern)`` of each basic variable; kind `SLACK` for what is over in its row.
    amounts : list of float
        How much of each.
    prices : list of float
        What one more of each row costs.
    """

    def __init__(self, problem: "Cutting", seeds: "list[tuple[int, Pattern]]") -> None:
        self.problem = problem
        self.sizes = [i for i, number in enumerate(problem.wanted) if number]
        self.scarce = [kind for kind in problem.kinds if not problem.unlimited[kind]]
        rows = len(self.sizes) + len(self.scarce)
        self.row_of_size = {size: row for row, size in enumerate(self.sizes)}
        self.row_of_kind = {kind: len(self.sizes) + at for at, kind in enumerate(self.scarce)}
        self.columns: list[tuple[int, Pattern]] = []
        self.inverse = [[0.0 for _ in range(rows)] for _ in range(rows)]
        self.amounts: list[float] = []
        self.prices: list[float] = []
        for row, (kind, pattern) in enumerate(seeds):
            self._start(row, kind, pattern[0][1], float(problem.wanted[self.sizes[row]]))
            self.columns[row] = (kind, pattern)
        for kind in self.scarce:
            self._start(len(self.columns), SLACK, 1, float(problem.limits[kind]))

    def _start(self, row: int, kind: int, number: int, wanted: float) -> None:
        weight = 0 if kind == SLACK else self.problem.weights[kind]
        self.columns.append((kind, ()))
        self.inverse[row][row] = 1.0 / number
        self.amounts.append(wanted / number)
        self.prices.append(weight / number)

    def price_of_stick(self, kind: int) -> float:
        """Return what one more stick of a limited kind would save; 0 for the others."""
        row = self.row_of_kind.get(kind)
        return 0.0 if row is None else -self.prices[row]

    def settle(self) -> bool:
        """Let what is over in a row into the basis where that saves; tell whether it did."""
        worst, row = -TINY * self._size(), -1
        for at, price in enumerate(self.prices):
            gain = price if at < len(self.sizes) else -price
            if gain < worst:
                worst, row = gain, at
        sign = -1.0 if row < len(self.sizes) else 1.0
        return row >= 0 and self._pivot([(row, sign)], 0.0, (SLACK, ()))

    def enter(self, kind: int, pattern: "Pattern") -> bool:
        """Let a pattern into the basis; tell whether that could be done."""
        entries = [(self.row_of_size[size], float(number)) for size, number in pattern]
        if kind in self.row_of_kind:
            entries.append((self.row_of_kind[kind], 1.0))
        return self._pivot(entries, float(self.problem.weights[kind]), (kind, pattern))

    def _size(self) -> float:
        return float(max(self.problem.weights))

    def _pivot(
        self, entries: "list[tuple[int, float]]", weight: float, column: "tuple[int, Pattern]"
    ) -> bool:
        saved = weight
        for row, number in entries:
            saved -= self.prices[row] * number
        change = []
        for line in self.inverse:
            moved = 0.0
            for row, number in entries:
                moved += line[row] * number
            change.append(moved)
        leaving = self._leaving(change)
        if leaving < 0:
            return False
        self._take_in(leaving, change, saved)
        self.columns[leaving] = column
        return True

    def _leaving(self, change: "list[float]") -> int:
        best, leaving = 0.0, -1
        for row, moved in enumerate(change):
            if moved > TINY:
                ratio = self.amounts[row] / moved
                # Among equals the larger pivot loses fewer digits.
                if leaving < 0 or ratio < best or (ratio == best and moved > change[leaving]):
                    best, leaving = ratio, row
        return leaving

    def _take_in(self, leaving: int, change: "list[float]", saved: float) -> None:
        pivot = change[leaving]
        line = [number / pivot for number in self.inverse[leaving]]
        amount = self.amounts[leaving] / pivot
        live = [(at, number) for at, number in enumerate(line) if number]
        for row, moved in enumerate(change):
            if row == leaving or not moved:
                continue
            other = self.inverse[row]
            for at, number in live:
                other[at] -= moved * number
            left = self.amounts[row] - moved * amount
            self.amounts[row] = left if left > TINY else 0.0
        for at, number in live:
            self.prices[at] += saved * number
        self.inverse[leaving] = line
        self.amounts[leaving] = amount
