"""What a sheet plan is asked: parts, sheets and their worth, as a problem in units."""

from ...guillotine.problem import Sheets
from ...planning.supply import Supply, costs_of, is_priced, spare_cost
from ...planning.units import PER_INCH, whole_units

TYPE_CHECKING = False
if TYPE_CHECKING:
    Pair = tuple[int, int]

SQUARE_FOOT = 144.0


class Part:
    """One row of parts alike, in inches; `tag` is its number in the list.

    Attributes
    ----------
    grain : str
        How it runs on the part: ``along`` its length, ``across`` it, or ``any``.
    band : pair of int
        How many of its long edges and of its short edges are banded.
    """

    def __init__(
        self, name: str, size: "tuple[float, float]", count: int, grain: str, band: "Pair"
    ) -> None:
        self.tag = ""
        self.name = name
        self.length, self.width = size
        self.count = count
        self.grain = grain
        self.band = band

    @property
    def area(self) -> float:
        """Square inches."""
        return self.length * self.width

    @property
    def banded(self) -> float:
        """Return how long the edges to band are on one part, in inches."""
        long, short = max(self.length, self.width), min(self.length, self.width)
        return self.band[0] * long + self.band[1] * short

    def ways(self, length: int, width: int) -> "list[Pair]":
        """Return how it may lie, sides along and across the sheet, from its sides in units."""
        if self.grain == "along" or length == width:
            return [(length, width)]
        if self.grain == "across":
            return [(width, length)]
        return [(length, width), (width, length)]


class Sheet(Supply):
    """One kind of sheet, in inches, its length with the grain."""

    def __init__(
        self,
        size: "tuple[float, float]",
        count: "int | None",
        price: "float | None",
        trim: float,
    ) -> None:
        super().__init__(count, price)
        self.length, self.width = size
        self.usable = (self.length - 2 * trim, self.width - 2 * trim)

    @property
    def area(self) -> float:
        """Square inches, edges and all."""
        return self.length * self.width


class SheetOrder:
    """Everything asked, and the problem it makes.

    Parameters
    ----------
    parts : list of Part
    sheets : list of Sheet
    kerf, trim, keep : float
        Inches; an offcut no narrower than `keep` is kept.

    Attributes
    ----------
    problem : Sheets
        Its kinds are the sheets; maybe a further one, the spare sheet that is not there.
    rows_of : list of list of int
        For each different part of the problem its rows.
    """

    def __init__(
        self, parts: "list[Part]", sheets: "list[Sheet]", kerf: float, trim: float, keep: float
    ) -> None:
        self.parts = parts
        self.sheets = sheets
        self.kerf = kerf
        self.trim = trim
        self.keep = keep
        for at, part in enumerate(parts):
            part.tag = str(at + 1)
            part.name = part.name or "Part " + part.tag
        self._measure()

    @property
    def priced(self) -> bool:
        """Tell whether money decides; otherwise the area bought does."""
        return is_priced(list(self.sheets))

    def _measure(self) -> None:
        """Turn sides into units: of each part the ways it may lie, of each sheet its room."""
        sides = [side for part in self.parts for side in (part.length, part.width)]
        rooms = [side for sheet in self.sheets for side in sheet.usable]
        units, self.step = whole_units(sides + rooms + [self.kerf])
        self.kerf_units = units[-1]
        units = [side + self.kerf_units for side in units[:-1]]
        pairs = [(units[at], units[at + 1]) for at in range(0, len(units), 2)]
        self.rooms = pairs[len(self.parts) :]
        self.ways = [part.ways(*pair) for part, pair in zip(self.parts, pairs)]

    def is_too_large(self, at: int) -> bool:
        """Tell whether a part fits no sheet."""
        return not fits(self.ways[at], self.rooms)

    def fits_turned(self, at: int) -> bool:
        """Tell whether a part would fit a sheet if its grain were let run the other way."""
        return fits([(high, wide) for wide, high in self.ways[at]], self.rooms)

    def plan_for(self) -> Sheets:
        """Make the problem of parts that all fit a sheet, and keep it."""
        turns = sorted({tuple(sorted(way)) for way in self.ways})
        place = {way: at for at, way in enumerate(turns)}
        self.rows_of: list[list[int]] = [[] for _ in turns]
        for at, way in enumerate(self.ways):
            self.rows_of[place[tuple(sorted(way))]].append(at)
        self.problem = self._with_spare([list(way) for way in turns])
        return self.problem

    def _with_spare(self, turns: "list[list[Pair]]") -> Sheets:
        """Return the problem, with a sheet that is not there where the real ones may run out."""
        wanted = [sum([self.parts[row].count for row in rows]) for rows in self.rows_of]
        limits, costs, rooms = [sheet.count for sheet in self.sheets], self._costs(), self.rooms
        spare = None
        endless = [room for room, limit in zip(rooms, limits) if limit is None]
        if [way for way in turns if not fits(way, endless)]:
            spare = len(rooms)
            costs = costs + [spare_cost(costs, limits, sum(wanted))]
            rooms = rooms + [(max([room[0] for room in rooms]), max([room[1] for room in rooms]))]
            limits = limits + [None]
        return Sheets(turns, wanted, rooms, costs, limits, spare)

    def _costs(self) -> "list[int]":
        sides, step = whole_units([s for sheet in self.sheets for s in (sheet.length, sheet.width)])
        areas = [sides[2 * at] * sides[2 * at + 1] for at in range(len(self.sheets))]
        costs, self.cost_unit = costs_of(list(self.sheets), areas, (step / PER_INCH) ** 2)
        return costs

    @property
    def alike(self) -> bool:
        """Tell whether all sheets cost alike, so that the number of sheets says everything."""
        costs = self.problem.costs[: len(self.sheets)]
        return min(costs) == max(costs)

    def inches(self, units: int) -> float:
        """Return units of the problem in inches."""
        return float(units * self.step / PER_INCH)


def fits(turns: "list[Pair]", rooms: "list[Pair]") -> bool:
    """Tell whether one of the ways a part may lie goes into one of the rooms."""
    return bool([1 for w, h in turns for wide, high in rooms if w <= wide and h <= high])
