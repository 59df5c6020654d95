"""What a sheet plan is asked: parts, sheets and their worth, as a problem in units."""

from ..guillotine.problem import Sheets
from ..planning.units import PER_INCH, divisor, whole_units
from ..tool import FieldError, Given, Refusal, Scale

MOST_PARTS = 200
SQUARE_FOOT = 144.0
LEAST_SIDE = 1 / 16
"""Inches: what is narrower is no part and no sheet, and could be 0 in whole units."""


class Part:
    """One row of parts, in inches; `tag` is its number in the list."""

    def __init__(self, row: Given, index: int) -> None:
        self.tag = str(index + 1)
        self.name = row.text("name") or "Part " + self.tag
        self.length = row.number("length")
        self.width = row.number("width")
        self.count = row.count("count")
        self.grain = row.text("grain")

    def ways(self, length: int, width: int) -> "list[tuple[int, int]]":
        """Return how it may lie, sides along and across the sheet, from its sides in units."""
        if self.grain == "along" or length == width:
            return [(length, width)]
        if self.grain == "across":
            return [(width, length)]
        return [(length, width), (width, length)]


class Stock:
    """One kind of sheet, in inches; `count` is None for as many as needed."""

    def __init__(self, row: Given, trim: float) -> None:
        self.length = row.number("length")
        self.width = row.number("width")
        self.count = row.maybe_count("count")
        self.price = row.maybe("price")
        self.usable = (self.length - 2 * trim, self.width - 2 * trim)

    @property
    def on_hand(self) -> bool:
        """Tell whether it lies there already: counted, and without a price."""
        return self.count is not None and self.price is None

    @property
    def area(self) -> float:
        """Square inches, edges and all."""
        return self.length * self.width


class Order:
    """Everything asked, and the problem it makes.

    Attributes
    ----------
    parts : list of Part
    stock : list of Stock
    problem : Sheets
        Its kinds are the stock; maybe a further one, the spare sheet that is not there.
    rows_of : list of list of int
        For each different part of the problem the rows, each as often as it is wanted.
    """

    def __init__(self, given: Given, scale: Scale) -> None:
        self.kerf = given.number("kerf")
        self.trim = given.number("edge_trim")
        self.keep = given.number("keep")
        self.parts = [Part(row, index) for index, row in enumerate(given.rows("parts"))]
        self.stock = [Stock(row, self.trim) for row in given.rows("sheets")]
        self._refuse_too_many()
        self._refuse_trimmed_away(scale)
        self._refuse_unpriced(scale)
        self.problem = self._problem(scale)

    def _refuse_too_many(self) -> None:
        total = sum([part.count for part in self.parts])
        if total > MOST_PARTS:
            raise Refusal(
                "parts",
                f"{total} parts are more than the {MOST_PARTS} planned at a time: make two "
                "lists, one for each thickness or room.",
            )

    def _refuse_trimmed_away(self, scale: Scale) -> None:
        for stock in self.stock:
            if min(stock.usable) < LEAST_SIDE:
                raise Refusal(
                    "edge_trim",
                    f"{scale.finer().length(self.trim)} off every edge leaves nothing of a sheet "
                    f"{scale.length(stock.length)} x {scale.length(stock.width)}: trim less "
                    f"than {scale.length(min(stock.length, stock.width) / 2)}.",
                )

    def _refuse_unpriced(self, scale: Scale) -> None:
        for at, stock in enumerate(self.stock):
            if self.priced and stock.price is None and stock.count is None:
                raise Refusal(
                    f"sheets.{at}.price",
                    f"What does a sheet of {scale.length(stock.length)} x "
                    f"{scale.length(stock.width)} cost? With a price on some sheets only, the "
                    "cheapest plan can't be told: give all, or none.",
                )

    @property
    def priced(self) -> bool:
        """Tell whether money decides; otherwise the area bought does."""
        return bool([stock for stock in self.stock if stock.price is not None])

    def _problem(self, scale: Scale) -> Sheets:
        sides = [side for part in self.parts for side in (part.length, part.width)]
        rooms = [side for stock in self.stock for side in stock.usable]
        units, self.step = whole_units(sides + rooms + [self.kerf])
        self.kerf_units = kerf = units[-1]
        units = [side + kerf for side in units[:-1]]
        first_room = len(sides)
        all_rooms = [
            (units[first_room + 2 * at], units[first_room + 2 * at + 1])
            for at in range(len(self.stock))
        ]
        ways = [p.ways(units[2 * at], units[2 * at + 1]) for at, p in enumerate(self.parts)]
        self._refuse_too_large(ways, all_rooms, scale)
        turns = sorted({tuple(sorted(way)) for way in ways})
        self.rows_of: list[list[int]] = [[] for _ in turns]
        for at, way in enumerate(ways):
            self.rows_of[turns.index(tuple(sorted(way)))].extend([at] * self.parts[at].count)
        return self._with_spare([list(way) for way in turns], all_rooms)

    def _refuse_too_large(
        self,
        ways: "list[list[tuple[int, int]]]",
        rooms: "list[tuple[int, int]]",
        scale: Scale,
    ) -> None:
        errors = []
        for at, turns in enumerate(ways):
            if not _fits(turns, rooms):
                turned = [(high, wide) for wide, high in turns]
                words = self._too_large(self.parts[at], _fits(turned, rooms), scale)
                errors.append(FieldError(f"parts.{at}.length", words))
        if errors:
            raise Refusal.of(errors)

    def _too_large(self, part: Part, fits_turned: bool, scale: Scale) -> str:
        fine = scale.finer()
        largest = max([(stock.area, stock.usable) for stock in self.stock])[1]
        trimmed = " once its edges are trimmed" if self.trim else ""
        words = f"{part.name}, {fine.length(part.length)} x {fine.length(part.width)}"
        if fits_turned:
            return (
                f"{words}, fits no sheet with its grain {part.grain}: turn it, or let its grain "
                "run any way."
            )
        return (
            f"{words}, fits no sheet: the largest gives {fine.length(largest[0])} x "
            f"{fine.length(largest[1])}{trimmed}. Add a larger sheet, or join it of two parts."
        )

    def _with_spare(
        self, turns: "list[list[tuple[int, int]]]", rooms: "list[tuple[int, int]]"
    ) -> Sheets:
        """Return the problem, with a sheet that is not there where the real ones may run out.

        It is so dear that only what fits nowhere else is cut from it.
        """
        wanted = [len(rows) for rows in self.rows_of]
        limits, costs, spare = [stock.count for stock in self.stock], self._costs(), None
        endless = [room for room, limit in zip(rooms, limits) if limit is None]
        if [way for way in turns if not _fits(way, endless)]:
            spare = len(rooms)
            there = sum([cost * (limit or 0) for cost, limit in zip(costs, limits)])
            costs = costs + [there + max(costs) * sum(wanted) + 1]
            rooms = rooms + [(max([room[0] for room in rooms]), max([room[1] for room in rooms]))]
            limits = limits + [None]
        return Sheets(turns, wanted, rooms, costs, limits, spare)

    def _costs(self) -> "list[int]":
        """Return what the sheets cost, in units of `cost_unit` dollars or square inches.

        Without prices it is area that costs: of what is bought, or where nothing is, of what is
        used. What lies there already costs nothing.
        """
        if self.priced:
            costs = [int((stock.price or 0.0) * 100 + 0.5) for stock in self.stock]
            each = 0.01
        else:
            sides, step = whole_units(
                [s for stock in self.stock for s in (stock.length, stock.width)]
            )
            areas = [sides[2 * at] * sides[2 * at + 1] for at in range(len(self.stock))]
            buys = bool([stock for stock in self.stock if stock.count is None])
            costs = [0 if buys and s.on_hand else area for s, area in zip(self.stock, areas)]
            each = (step / PER_INCH) ** 2
        common = divisor(costs)
        self.cost_unit = each * common
        return [cost // common for cost in costs]

    @property
    def alike(self) -> bool:
        """Tell whether all sheets cost alike, so that the number of sheets says everything."""
        costs = self.problem.costs[: len(self.stock)]
        return min(costs) == max(costs)

    def inches(self, units: int) -> float:
        """Return units of the problem in inches."""
        return units * self.step / PER_INCH


def _fits(turns: "list[tuple[int, int]]", rooms: "list[tuple[int, int]]") -> bool:
    return bool([1 for w, h in turns for wide, high in rooms if w <= wide and h <= high])
