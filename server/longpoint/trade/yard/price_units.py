"""What lumber and sheets are priced by, and how one unit is brought to another.

A unit stands for so many inches run of the stock at hand. A board foot is 144 cubic inches, a
square foot 144 square inches, a square meter 1 / 0.0254 ** 2, a foot exactly 0.3048 m. Stock
thinner than an inch is billed as an inch thick: NHLA rules as a dealer quotes them; for softwood
from memory.
"""

from ..refusal import FieldError, Refusal

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..rows import Given

UNITS = (
    ("board-foot", "board foot"),
    ("lineal-foot", "lineal foot"),
    ("piece", "piece"),
    ("square-foot", "square foot"),
    ("square-meter", "square meter"),
)
"""What a price may be for, and how it is said."""

NAMES = dict(UNITS)

SQUARE_METER = 1 / 0.0254**2
"""Square inches in a square meter."""

_MOST_TIMES = 10000  # Prices of lumber don't lie so far apart; a slip of a unit or a size does.

_SIZES = {
    "board-foot": ("thickness", "width"),
    "lineal-foot": (),
    "piece": ("length",),
    "square-foot": ("width",),
    "square-meter": ("width",),
}  # What the inches run of a unit depend on.


def sizes_between(unit: str, other: str) -> "list[str]":
    """Return the sizes that one unit is brought to another by; what both need cancels out.

    >>> sizes_between("board-foot", "square-meter"), sizes_between("piece", "board-foot")
    (['thickness'], ['thickness', 'width', 'length'])
    """
    names = ("thickness", "width", "length")
    return [name for name in names if (name in _SIZES[unit]) != (name in _SIZES[other])]


def inches_run(unit: str, thickness: float, width: float, length: float) -> float:
    """Return how many inches of stock so thick and wide a unit stands for.

    >>> inches_run("board-foot", 0.75, 6, 96), inches_run("piece", 0.75, 6, 96)
    (24.0, 96)
    """
    if unit == "piece":
        return length
    if unit == "lineal-foot":
        return 12.0
    if unit == "board-foot":
        return 144 / (max(thickness, 1.0) * width)
    return (144 if unit == "square-foot" else SQUARE_METER) / width


class Bid:
    """One offer brought to the unit of comparison; dollars.

    Attributes
    ----------
    name : str
        As given, or ``Offer 1``.
    price, per : float, str
        As asked.
    asked : float
        In the unit of comparison, as it lies there.
    usable : float
        In the unit of comparison, of what is left after the waste.
    at : int
        Where it stands in the list.
    """

    def __init__(self, row: "Given", at: int, unit: str) -> None:
        self.at = at
        self.name = row.text("name") or f"Offer {at + 1}"
        self.price = row.number("price")
        self.per = row.text("per")
        self.sizes = [row.maybe(name) for name in ("thickness", "width", "length")]
        run = [
            inches_run(side, self.sizes[0] or 1.0, self.sizes[1] or 1.0, self.sizes[2] or 1.0)
            for side in (self.per, unit)
        ]
        self.asked = self.price * run[1] / run[0]
        self.usable = self.asked / (1 - row.number("waste") / 100)

    def thin(self) -> bool:
        """Tell whether it is billed thicker than it is."""
        thickness = self.sizes[0]
        return thickness is not None and thickness < 1


def bids_of(rows: "list[Given]", unit: str) -> "list[Bid]":
    """Return the offers in one unit, cheapest first; of equals the earlier given first.

    Raises
    ------
    Refusal
        On every size that is needed for it and not given; on a price that can't be meant.
    """
    missing: list[FieldError] = []
    for at, row in enumerate(rows):
        for name in sizes_between(row.text("per"), unit):
            if row.maybe(name) is None:
                words = (
                    f"The {name} is needed to bring a price per {NAMES[row.text('per')]} to one "
                    f"per {NAMES[unit]}."
                )
                missing.append(FieldError(f"offers.{at}.{name}", words, True))
    if missing:
        raise Refusal.of(missing)
    bids = [Bid(row, at, unit) for at, row in enumerate(rows)]
    bids.sort(key=lambda bid: (bid.usable, bid.at))
    if bids[-1].usable > _MOST_TIMES * bids[0].usable:
        raise Refusal(
            f"offers.{bids[-1].at}.price",
            f"{bids[-1].name} asks more than {_MOST_TIMES} times what {bids[0].name} does: look "
            "at the prices, the units and the sizes of both.",
        )
    return bids
