"""What a stick plan is asked: pieces, sticks and their worth, as a cutting problem in units."""

from ...cutting.problem import Cutting
from ...planning.supply import Supply, costs_of, is_priced, spare_cost
from ...planning.units import PER_INCH, whole_units

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...cutting.problem import Pattern

DIGITS = "0123456789"


class PieceRow:
    """A row of the list: so many pieces alike, length in inches; `tag` names the row alone."""

    def __init__(self, name: str, length: float, count: int) -> None:
        self.tag = ""
        self.name = name
        self.length = length
        self.count = count


class Stick(Supply):
    """A kind of stick, lengths in inches; `usable` is what the trimmed ends leave."""

    def __init__(
        self, length: float, count: "int | None", price: "float | None", trim: float
    ) -> None:
        super().__init__(count, price)
        self.length = length
        self.usable = length - 2 * trim


class StickOrder:
    """Everything asked, and the cutting problem it makes.

    Parameters
    ----------
    rows : list of PieceRow
    sticks : list of Stick
    kerf, trim, keep : float
        Inches; from `keep` on an offcut is kept.

    Attributes
    ----------
    problem : Cutting
        Its kinds are the sticks; maybe a further one, the `spare` stick that is not there.
    rows_of_size : list
        For each size of the problem the places of its rows.
    """

    def __init__(
        self, rows: "list[PieceRow]", sticks: "list[Stick]", kerf: float, trim: float, keep: float
    ) -> None:
        self.rows = rows
        self.sticks = sticks
        self.kerf = kerf
        self.trim = trim
        self.keep = keep
        for row, tag in zip(rows, tags_of([row.name for row in rows])):
            row.tag = tag
        self.spare: int | None = None
        self.problem = self._problem()

    @property
    def priced(self) -> bool:
        """Tell whether money decides; otherwise the length bought does."""
        return is_priced(list(self.sticks))

    @property
    def pieces(self) -> int:
        """Return how many pieces there are in all."""
        return sum([row.count for row in self.rows])

    def _problem(self) -> Cutting:
        lengths = [row.length for row in self.rows]
        usable = [stick.usable for stick in self.sticks]
        units, self.step = whole_units(lengths + usable + [self.kerf])
        self.kerf_units = units[-1]
        units = [length + self.kerf_units for length in units[:-1]]
        rooms = units[len(lengths) :]
        sizes = self._sizes(units[: len(lengths)])
        wanted = [sum([self.rows[at].count for at in rows]) for rows in self.rows_of_size]
        limits = [stick.count for stick in self.sticks]
        costs = self._costs()
        if not [room for room, limit in zip(rooms, limits) if limit is None and room >= sizes[0]]:
            self.spare = len(rooms)
            costs = costs + [spare_cost(costs, limits, sum(wanted))]
            rooms, limits = rooms + [max(rooms)], limits + [None]
        return Cutting(sizes, wanted, rooms, costs, limits)

    def _sizes(self, units: "list[int]") -> "list[int]":
        """Return the different sizes, longest first, and note the rows of each."""
        sizes: list[int] = []
        self.rows_of_size: list[list[int]] = []
        for size, at in sorted([(-size, at) for at, size in enumerate(units)]):
            if not sizes or sizes[-1] != -size:
                sizes.append(-size)
                self.rows_of_size.append([])
            self.rows_of_size[-1].append(at)
        return sizes

    def _costs(self) -> "list[int]":
        lengths, step = whole_units([stick.length for stick in self.sticks])
        costs, self.cost_unit = costs_of(list(self.sticks), lengths, step / PER_INCH)
        return costs

    @property
    def alike(self) -> bool:
        """Tell whether all sticks cost alike, so that the number of sticks says everything."""
        costs = self.problem.costs[: len(self.sticks)]
        return min(costs) == max(costs)

    def inches(self, units: int) -> float:
        """Return units of the problem in inches."""
        return units * self.step / PER_INCH

    def offcut(self, kind: int, pattern: "Pattern") -> float:
        """Return what is left of a stick after its last cut, in inches."""
        room = self.problem.rooms[kind]
        for size, number in pattern:
            room -= self.problem.sizes[size] * number
        return self.inches(max(0, room - self.kerf_units))


def tags_of(names: "list[str]") -> "list[str]":
    """Return a tag of its own for every row.

    A name that one row has stays as it is; rows that share one are numbered, those without a name
    by their places.

    >>> tags_of(["sill", "", "leg", "leg", "2x", "a1", "a1"])
    ['sill', '2', 'leg 1', 'leg 2', '2x', 'a1-1', 'a1-2']
    """
    counts: dict[str, int] = {}
    for name in names:
        counts[name] = counts.get(name, 0) + 1
    used = {name for name, count in counts.items() if name and count == 1}
    last: dict[str, int] = {}
    tags = []
    for at, name in enumerate(names):
        tag = name
        if not name or counts[name] > 1:
            last[name] = last.get(name, 0) + 1 if name else at + 1
            tag = _numbered(name, last[name])
            while tag in used:
                last[name] += 1
                tag = _numbered(name, last[name])
            used.add(tag)
        tags.append(tag)
    return tags


def _numbered(name: str, number: int) -> str:
    joint = "-" if name and name[-1] in DIGITS else " " if len(name) > 1 else ""
    return name + joint + str(number)
