"""What lumber and sheets are priced by, and how one unit is brought to another.

A unit stands for so many inches run of the stock at hand. A square foot is 144 square inches, a
square meter 1 / 0.0254 ** 2, a foot exactly 0.3048 m.
"""

from ...lumber.board_feet import CUBIC_INCHES, counted_thickness
from ...refusal import Refusal

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
        return CUBIC_INCHES / (counted_thickness(thickness) * width)
    return (144 if unit == "square-foot" else SQUARE_METER) / width


class Bid:
    """One offer brought to the unit of comparison; dollars.

    Parameters
    ----------
    at, name : int, str
        Where it stands in the list, and what it is called there.
    price, per : float, str
        As asked.
    sizes : tuple
        Thickness, width, length in inches; None for what the comparison doesn't need.
    waste : float
        Percent of it that can't be used.
    unit : str
        The unit of comparison.

    Attributes
    ----------
    asked, usable : float
        In the unit of comparison: as it lies there, and of what is left after the waste.
    """

    def __init__(
        self,
        at: int,
        name: str,
        price: float,
        per: str,
        sizes: "tuple[float | None, ...]",
        waste: float,
        unit: str,
    ) -> None:
        self.at = at
        self.name = name
        self.price = price
        self.per = per
        self.sizes = sizes
        self.waste = waste
        known = [size or 1.0 for size in sizes]
        run = [inches_run(side, known[0], known[1], known[2]) for side in (per, unit)]
        self.asked = price * run[1] / run[0]
        self.usable = self.asked / (1 - waste / 100)

    def thin(self) -> bool:
        """Tell whether it is billed thicker than it is."""
        thickness = self.sizes[0]
        return thickness is not None and thickness < 1


def cheapest_first(bids: "list[Bid]") -> "list[Bid]":
    """Return the offers in order of price; of equals the earlier given first.

    Raises
    ------
    Refusal
        On a price that can't be meant.
    """
    bids = sorted(bids, key=lambda bid: (bid.usable, bid.at))
    if bids[-1].usable > _MOST_TIMES * bids[0].usable:
        raise Refusal(
            f"offers.{bids[-1].at}.price",
            f"{bids[-1].name} asks more than {_MOST_TIMES} times what {bids[0].name} does: look "
            "at the prices, the units and the sizes of both.",
        )
    return bids
