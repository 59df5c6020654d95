"""Where the hinges of a leaf go: by offsets and equal spacing, or where old ones were.

All in inches; lines run down from the leaf's top.
"""

from collections import namedtuple

from ...tool import Refusal, Scale

_HAIR = 1e-9  # Float noise must not refuse a hinge that just fits.

Offsets = namedtuple("Offsets", ("top", "bottom", "head_gap", "floor_gap"))
"""To the first hinge's top line and the last one's bottom line, and the gaps that these run over:
0 where they run from the leaf's own ends."""


class Lines:
    """The hinges of one leaf.

    Parameters
    ----------
    leaf_height, hinge : float
        Of the leaf; of a hinge along it.
    tops : list of float
        The hinges' top lines.
    matched : bool
        They follow old hinges.
    """

    def __init__(
        self, leaf_height: float, hinge: float, tops: "list[float]", matched: bool
    ) -> None:
        self.leaf_height = leaf_height
        self.hinge = hinge
        self.tops = tops
        self.matched = matched

    @property
    def count(self) -> int:
        """How many hinges there are."""
        return len(self.tops)

    @property
    def centers(self) -> "tuple[float, float]":
        """The first hinge's center down from the top, the last one's up from the bottom."""
        half = self.hinge / 2
        return self.tops[0] + half, self.leaf_height - self.tops[-1] - half


def spread(
    leaf_height: float, hinge: float, count: int, offsets: Offsets, scale: Scale
) -> "list[float]":
    """Return the top lines of hinges spread evenly between two offsets.

    Raises
    ------
    Refusal
        Hinges that lie off the leaf, or overlap.
    """
    first = offsets.top - offsets.head_gap
    last = leaf_height - offsets.bottom + offsets.floor_gap - hinge
    if first < 0:
        raise Refusal(
            "top_offset",
            f"The top hinge would start {scale.length(-first)} above the leaf: "
            f"use at least {scale.length(offsets.head_gap)}.",
        )
    if last + hinge > leaf_height:
        raise Refusal(
            "bottom_offset",
            f"The bottom hinge would end {scale.length(last + hinge - leaf_height)} "
            f"below the leaf: use at least {scale.length(offsets.floor_gap)}.",
        )
    apart = (last - first) / (count - 1)
    if apart < hinge:
        raise Refusal(
            "hinge_count",
            f"{count} hinges {scale.length(hinge)} high overlap on a leaf "
            f"{scale.length(leaf_height)} high: use fewer, or smaller offsets.",
        )
    return [first + number * apart for number in range(count)]


def carried_over(
    leaf_height: float, hinge: float, old: "list[float]", shift: float, scale: Scale
) -> "list[float]":
    """Return the top lines of old hinges on the new leaf, `shift` farther down.

    Raises
    ------
    Refusal
        A line off the leaf, or hinges that overlap; on the row of that line.
    """
    tops: list[float] = []
    for number, line in enumerate(old):
        message = _misplaced(line + shift, tops, leaf_height, hinge, scale)
        if message:
            raise Refusal(f"existing.{number}.top_line", message)
        tops.append(line + shift)
    return tops


def _misplaced(
    top: float, above: "list[float]", leaf_height: float, hinge: float, scale: Scale
) -> str:
    """Return what is wrong with a top line, given those above it; "" if nothing."""
    if top < -_HAIR:
        return f"The hinge would start {scale.length(-top)} above the new leaf: read it again."
    over = top + hinge - leaf_height
    if over > _HAIR:
        return f"The hinge would end {scale.length(over)} below the new leaf: read it again."
    if above and top < above[-1] + hinge - _HAIR:
        return (
            f"The hinge overlaps the one above, which ends {scale.length(hinge)} below "
            "its top line: give them from the top down."
        )
    return ""
