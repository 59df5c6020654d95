"""What a stick plan is asked: pieces, sticks and their worth, as a cutting problem in units."""

from ..cutting.problem import PER_INCH, Cutting, divisor, whole_units
from ..tool import Given, Refusal, Scale

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..cutting.problem import Pattern

MOST_PIECES = 500
DIGITS = "0123456789"


class Stick:
    """A kind of stick, lengths in inches; `count` is None for as many as needed."""

    def __init__(self, row: Given, trim: float) -> None:
        self.length = row.number("length")
        self.count = row.maybe_count("count")
        self.price = row.maybe("price")
        self.usable = self.length - 2 * trim

    @property
    def on_hand(self) -> bool:
        """Tell whether it lies there already: counted, and without a price."""
        return self.count is not None and self.price is None


class Order:
    """Everything asked, and the cutting problem it makes.

    Attributes
    ----------
    tags, names, lengths : list
        Of every single piece, in the order given; inches.
    sticks : list of Stick
    problem : Cutting
        Its kinds are the sticks; maybe a further one, the `spare` stick that is not there.
    row_of_size : list
        For each size of the problem the places of its pieces.
    """

    def __init__(self, given: Given, scale: Scale) -> None:
        self.kerf = given.number("kerf")
        self.trim = given.number("end_trim")
        self.keep = given.number("keep")
        self.sticks = [Stick(row, self.trim) for row in given.rows("sticks")]
        rows = given.rows("pieces")
        self._refuse_too_many(rows)
        self.tags = tags_of([(row.text("tag"), row.count("count")) for row in rows])
        self.lengths = [row.number("length") for row in rows for _ in range(row.count("count"))]
        self.names = [row.text("tag") or "Piece" for row in rows for _ in range(row.count("count"))]
        self._refuse_trimmed_away(scale)
        self._refuse_unpriced(scale)
        self._refuse_too_long(rows, scale)
        self.spare: int | None = None
        self.problem = self._problem()

    def _refuse_too_many(self, rows: "list[Given]") -> None:
        total = sum([row.count("count") for row in rows])
        if total > MOST_PIECES:
            raise Refusal(
                "pieces",
                f"{total} pieces are more than the {MOST_PIECES} planned at a time: make two "
                "lists, one for each delivery or room.",
            )

    def _refuse_trimmed_away(self, scale: Scale) -> None:
        for stick in self.sticks:
            if stick.usable <= 0:
                raise Refusal(
                    "end_trim",
                    f"{scale.finer().length(self.trim)} off each end leaves nothing of a stick "
                    f"{scale.length(stick.length)} long: trim less than "
                    f"{scale.length(stick.length / 2)}, or leave that stick out.",
                )

    def _refuse_unpriced(self, scale: Scale) -> None:
        if not self.priced:
            return
        for at, stick in enumerate(self.sticks):
            if stick.price is None and stick.count is None:
                raise Refusal(
                    f"sticks.{at}.price",
                    f"What does a stick of {scale.length(stick.length)} cost? With a price on "
                    "some sticks only, the cheapest plan can't be told: give all, or none.",
                )

    def _refuse_too_long(self, rows: "list[Given]", scale: Scale) -> None:
        longest = max(self.sticks, key=lambda stick: stick.usable).usable
        trimmed = " once its ends are trimmed" if self.trim else ""
        fine = scale.finer()
        place = 0
        for at, row in enumerate(rows):
            length = row.number("length")
            if length > longest + 0.5 / PER_INCH:
                raise Refusal(
                    f"pieces.{at}.length",
                    f"Piece {self.tags[place]} is {fine.length(length)} long, and no stick gives "
                    f"more than {fine.length(longest)}{trimmed}: add a stick of "
                    f"{fine.length(length + 2 * self.trim)} or longer, or scarf it of two pieces.",
                )
            place += row.count("count")

    @property
    def priced(self) -> bool:
        """Tell whether money decides; otherwise the length bought does."""
        return bool([stick for stick in self.sticks if stick.price is not None])

    def _problem(self) -> Cutting:
        usable = [stick.usable for stick in self.sticks]
        units, self.step = whole_units(self.lengths + usable + [self.kerf])
        count, self.kerf_units = len(self.lengths), units[-1]
        pieces = [length + self.kerf_units for length in units[:count]]
        rooms = [length + self.kerf_units for length in units[count:-1]]
        sizes = sorted(set(pieces), reverse=True)
        self.row_of_size = [[at for at, p in enumerate(pieces) if p == size] for size in sizes]
        limits = [stick.count for stick in self.sticks]
        costs = self._costs()
        if not [room for room, limit in zip(rooms, limits) if limit is None and room >= sizes[0]]:
            # A stick that is not there, so dear that only what fits nowhere else is cut from it.
            dearest = max(costs) * count + sum([c * (n or 0) for c, n in zip(costs, limits)])
            self.spare = len(rooms)
            rooms, limits, costs = rooms + [max(rooms)], limits + [None], costs + [dearest + 1]
        return Cutting(sizes, [len(row) for row in self.row_of_size], rooms, costs, limits)

    def _costs(self) -> "list[int]":
        """Return what the sticks cost, in units of `cost_unit` dollars or inches.

        Without prices it is length that costs: of what is bought, or where nothing is, of what
        is used. What lies there already costs nothing.
        """
        if self.priced:
            costs = [int((stick.price or 0.0) * 100 + 0.5) for stick in self.sticks]
            each = 0.01
        else:
            lengths, step = whole_units([stick.length for stick in self.sticks])
            buys = bool([stick for stick in self.sticks if stick.count is None])
            costs = [0 if buys and s.on_hand else n for s, n in zip(self.sticks, lengths)]
            each = step / PER_INCH
        common = divisor(costs)
        self.cost_unit = each * common
        return [cost // common for cost in costs]

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


def tags_of(rows: "list[tuple[str, int]]") -> "list[str]":
    """Return a tag of its own for every piece, from the tags and counts of the rows.

    A tag that one piece carries stays as it is; pieces that share one are numbered.

    >>> tags_of([("sill", 1), ("", 2), ("leg", 2), ("2x", 1), ("a1", 2)])
    ['sill', '1', '2', 'leg 1', 'leg 2', '2x', 'a1-1', 'a1-2']
    """
    total: dict[str, int] = {}
    for tag, count in rows:
        total[tag] = total.get(tag, 0) + count
    used = {tag: True for tag, number in total.items() if tag and number == 1}
    last: dict[str, int] = {}
    tags = []
    for tag, count in rows:
        for _ in range(count):
            tags.append(tag if tag in used and total[tag] == 1 else _numbered(tag, last, used))
    return tags


def _numbered(tag: str, last: "dict[str, int]", used: "dict[str, bool]") -> str:
    """Return the next number of a tag that no piece carries yet."""
    joint = "-" if tag and tag[-1] in DIGITS else " " if len(tag) > 1 else ""
    while True:
        last[tag] = last.get(tag, 0) + 1
        numbered = tag + joint + str(last[tag])
        if numbered not in used:
            used[numbered] = True
            return numbered
