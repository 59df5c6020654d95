"""Items spread evenly between two ends: gap, centers, and the fewest that keep to a largest gap."""

import math

from ...tool import FieldError, Refusal, Scale

MOST = 200
HAIR = 1e-9
"""Inches: float noise must not add an item where the gaps come out exactly."""

_END_GAPS = {"gap": 1.0, "half": 0.0, "item": -1.0}  # Gaps in all, less the number of items.


class Spread:
    """Items spread evenly; all lengths in inches.

    Parameters
    ----------
    overall, item : float
        Length between the two ends; width of one item, 0 for a line.
    count : int
        Number of items.
    ends : str
        What stands at each end: ``gap``, ``half`` a gap, or ``item``.
    """

    def __init__(self, overall: float, item: float, count: int, ends: str) -> None:
        self.overall = overall
        self.item = item
        self.count = count
        self.ends = ends
        self.gaps = count + _END_GAPS[ends]
        self.gap = (overall - count * item) / self.gaps if self.gaps else -1.0
        self.lead_in = self.gap * {"gap": 1.0, "half": 0.5, "item": 0.0}[ends]

    @property
    def centers(self) -> float:
        """Distance from one item's center to the next one's."""
        return self.gap + self.item

    def left(self, index: int) -> float:
        """Return where an item's left edge stands, items counted from 0."""
        return self.lead_in + index * self.centers

    def marked(self, where: str) -> "list[tuple[str, float]]":
        """Return tag and place of every pencil mark: ``center``, ``edge`` (left) or ``both``."""
        shifts = {"center": [self.item / 2], "edge": [0.0], "both": [0.0, self.item]}[where]
        return [
            (str(index + 1), self.left(index) + shift)
            for index in range(self.count)
            for shift in shifts
        ]


def spread_out(
    overall: float,
    item: float,
    count: "int | None",
    largest: "float | None",
    ends: str,
    scale: Scale,
) -> Spread:
    """Return so many items, or the fewest that keep to the largest gap, spread evenly.

    Raises
    ------
    Refusal
        Neither a count nor a largest gap, or items that leave no gap or too large a one.
    """
    if count is None and largest is None:
        words = "Give how many there are, or the largest gap that will do."
        raise Refusal.of([FieldError("count", words, True)])
    wanted = count or fewest(overall, item, largest or 0.0, ends, scale)
    if ends == "item" and wanted < 2:
        raise Refusal("count", "An item at each end takes two at least: 1 can't stand at both.")
    spread = Spread(overall, item, wanted, ends)
    if spread.gap <= HAIR:
        raise _no_gap(spread, count is not None, scale)
    if largest is not None and spread.gap > largest + HAIR:
        raise Refusal(
            "count",
            f"With {wanted} the gaps are {scale.length(spread.gap)}, over the "
            f"{scale.length(largest)} allowed: use {fewest(overall, item, largest, ends, scale)} "
            "or more.",
        )
    return spread


def fewest(overall: float, item: float, largest: float, ends: str, scale: Scale) -> int:
    """Return the smallest count whose gaps are no larger than allowed; lengths in inches.

    >>> fewest(48, 3.5, 4, "gap", Scale())
    6
    """
    room = overall - _END_GAPS[ends] * largest
    if room <= HAIR:
        raise Refusal(
            "largest_gap",
            f"{scale.length(overall)} is no more than the largest gap as it stands: nothing is "
            f"needed between the ends. Allow less than {scale.length(overall)}.",
        )
    least = 2 if ends == "item" else 1
    count = max(least, int(math.ceil(room / (item + largest) - HAIR)))
    if count > MOST:
        raise Refusal(
            "largest_gap",
            f"Gaps of {scale.finer().length(largest)} take {count} items, more than the {MOST} "
            "laid out here: allow a larger gap, or lay out a part of the length.",
        )
    return count


def _no_gap(spread: Spread, is_counted: bool, scale: Scale) -> Refusal:
    """Return the refusal of items that fill or overfill the length."""
    overall, item, count = spread.overall, spread.item, spread.count
    if item == 0:
        return Refusal("overall", f"There is no room for {count} lines: use a longer overall.")
    filled = f"{count} items {scale.length(item)} wide take up "
    filled += f"{scale.length(count * item)} of {scale.length(overall)}"
    if not is_counted:
        fewer = Spread(overall, item, count - 1, spread.ends)
        if count < 2 or fewer.gap <= 0:
            return Refusal("item_width", filled + ": use narrower items.")
        return Refusal(
            "largest_gap",
            f"{filled}, so they don't go in, and {fewer.count} leave gaps of "
            f"{scale.length(fewer.gap)}: allow that much, or change the item width.",
        )
    most = int(math.ceil(overall / item - HAIR)) - 1
    if most < 1:
        return Refusal("item_width", filled + ": use narrower items.")
    return Refusal("count", f"{filled} and leave no gap: use {most} or fewer, or narrower items.")
