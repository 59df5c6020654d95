"""Where frames stand on a wall or a panel: in the runs between openings, under and over these.

Measured from the left end and from the bottom line; all lengths in inches.
"""

import math
from collections import namedtuple

TYPE_CHECKING = False
if TYPE_CHECKING:
    Rectangle = tuple[float, float, float, float]

HAIR = 1e-9
"""Inches: float noise must not make touching edges overlap."""

Margins = namedtuple("Margins", ("end", "between", "casing", "top", "bottom"))
"""At each end, between two frames, to a casing, above and below."""

FrameTrim = namedtuple("FrameTrim", ("width", "block", "set_in"))
"""Width of the trim; side of the corner blocks and how far they stand in from the frame's outer
edges, 0 and 0 for none."""

WallOpening = namedtuple("WallOpening", ("place", "name", "left", "right", "bottom", "top"))
"""A window or a door over its casings, with its place in the form.

`bottom` is None where it stands on the bottom line, `top` where it goes past the top one.
"""

Span = namedtuple("Span", ("left", "right"))
"""Where the frames of a run can stand, margins taken off."""


def corner_of(trim: FrameTrim) -> float:
    """Return what a corner takes of each side: the trim's width, or how far its block reaches."""
    return float(max(trim.width, trim.set_in + trim.block))


class Frame:
    """One frame: its number from the left, and its outer rectangle left, bottom, right, top."""

    def __init__(self, number: int, outside: "Rectangle", trim: FrameTrim) -> None:
        self.number = number
        self.outside = outside
        self.trim = trim

    def parts(self) -> "list[tuple[str, Rectangle]]":
        """Return what it is made of: its four sides and its blocks, each with its name."""
        x0, y0, x1, y1 = self.outside
        trim, block, set_in = self.trim
        found = [
            ("left side", (x0, y0, x0 + trim, y1)),
            ("right side", (x1 - trim, y0, x1, y1)),
            ("bottom", (x0, y0, x1, y0 + trim)),
            ("top", (x0, y1 - trim, x1, y1)),
        ]
        if block:
            for across, x in (("left", x0 + set_in), ("right", x1 - set_in - block)):
                for up, y in (("top", y1 - set_in - block), ("bottom", y0 + set_in)):
                    found.append((f"{up} {across} block", (x, y, x + block, y + block)))
        return found


class Group:
    """Frames of one size in a row.

    `slot` numbers what it could be among all runs, unders and overs, from 0; `kind` is run, under
    or over; `opening` the one it lies under or over, None for a run.
    """

    def __init__(
        self,
        slot: int,
        kind: str,
        opening: "WallOpening | None",
        frames: "list[Frame]",
    ) -> None:
        self.slot = slot
        self.kind = kind
        self.opening = opening
        self.frames = frames

    @property
    def width(self) -> float:
        """Width over all."""
        return self.frames[0].outside[2] - self.frames[0].outside[0]

    @property
    def height(self) -> float:
        """Height over all."""
        return self.frames[0].outside[3] - self.frames[0].outside[1]


class Layout:
    """All frames of a wall or a panel.

    Parameters
    ----------
    field : (float, float)
        Length and height of the wall or panel.
    margins : Margins
    trim : FrameTrim
    openings : list of WallOpening
        From left to right, none over another.
    counts : list of int
        Frames in each run between them, 0 where there is no room.
    """

    def __init__(
        self,
        field: "tuple[float, float]",
        margins: Margins,
        trim: FrameTrim,
        openings: "list[WallOpening]",
        counts: "list[int]",
    ) -> None:
        self.length, self.wall_height = field
        self.margins = margins
        self.trim = trim
        self.openings = openings
        self.counts = counts
        self.low: float = margins.bottom
        self.high: float = self.wall_height - margins.top
        self.groups: list[Group] = []
        self._number = 0
        for index, span in enumerate(self.spans()):
            self._add_run(3 * index, span, counts[index])
            if index < len(openings):
                self._add_under_and_over(3 * index + 1, openings[index])

    @property
    def frames(self) -> "list[Frame]":
        """Every frame, by its number."""
        return [frame for group in self.groups for frame in group.frames]

    @property
    def runs(self) -> "list[Group]":
        """The groups between the openings."""
        return [group for group in self.groups if group.kind == "run"]

    def spans(self) -> "list[Span]":
        """Return where the frames of each run can stand."""
        return run_spans(self.length, self.margins, self.openings)

    def with_counts(self, counts: "list[int]") -> "Layout":
        """Return the same wall with other numbers of frames."""
        field = (self.length, self.wall_height)
        return Layout(field, self.margins, self.trim, self.openings, counts)

    def _add_run(self, slot: int, span: Span, count: int) -> None:
        if not count:
            return
        width = width_of(span, count, self.margins.between)
        lefts = [span.left + index * (width + self.margins.between) for index in range(count)]
        outsides = [(left, self.low, left + width, self.high) for left in lefts]
        self._add(slot, "run", None, outsides)

    def _add_under_and_over(self, slot: int, opening: WallOpening) -> None:
        """Add a frame as wide as the casing under an opening and over it, where one goes in."""
        least = 2 * corner_of(self.trim) + HAIR
        if opening.right - opening.left <= least:
            return
        if opening.bottom is not None:
            top = min(opening.bottom - self.margins.casing, self.high)
            if top - self.low > least:
                self._add(slot, "under", opening, [(opening.left, self.low, opening.right, top)])
        if opening.top is not None:
            low = max(opening.top + self.margins.casing, self.low)
            if self.high - low > least:
                outside = (opening.left, low, opening.right, self.high)
                self._add(slot + 1, "over", opening, [outside])

    def _add(
        self, slot: int, kind: str, opening: "WallOpening | None", outsides: "list[Rectangle]"
    ) -> None:
        frames = []
        for outside in outsides:
            self._number += 1
            frames.append(Frame(self._number, outside, self.trim))
        self.groups.append(Group(slot, kind, opening, frames))


def run_spans(length: float, margins: Margins, openings: "list[WallOpening]") -> "list[Span]":
    """Return where the frames of each run between openings can stand, from left to right.

    >>> run_spans(100, Margins(4, 3, 2, 3, 3), [WallOpening(0, "", 40, 60, None, None)])
    [Span(left=4, right=38), Span(left=62, right=96)]
    """
    lefts = [margins.end] + [each.right + margins.casing for each in openings]
    rights = [each.left - margins.casing for each in openings] + [length - margins.end]
    return [Span(left, right) for left, right in zip(lefts, rights)]


def width_of(span: Span, count: int, between: float) -> float:
    """Return the width of each of so many frames in a run."""
    return float(span.right - span.left - (count - 1) * between) / count


def most_in(span: Span, between: float, corner: float) -> int:
    """Return the largest number of frames that still have an opening, 0 if not even one."""
    room = span.right - span.left + between
    return max(0, int(math.ceil(room / (2 * corner + between) - HAIR)) - 1)


def nearest(span: Span, between: float, corner: float, target: float) -> int:
    """Return the number of frames whose width comes nearest to a target, the fewer if alike."""
    most = most_in(span, between, corner)
    if most == 0:
        return 0
    few = int(math.floor((span.right - span.left + between) / (target + between)))
    few = min(max(1, few), most)
    counts = [count for count in (few, few + 1) if count <= most]
    return min([(abs(width_of(span, count, between) - target), count) for count in counts])[1]


def shared(total: int, spans: "list[Span]", between: float, corner: float) -> "list[int] | None":
    """Return how many frames each run gets, so that the widest is as narrow as can be.

    Every run with room gets one at least. None where so many don't go in, or don't go round.
    """
    most = [most_in(span, between, corner) for span in spans]
    counts = [min(1, each) for each in most]
    if sum(counts) > total or total > sum(most) or not sum(most):
        return None
    while sum(counts) < total:
        wider = [
            (-width_of(spans[at], counts[at], between), at)
            for at in range(len(spans))
            if counts[at] < most[at]
        ]
        counts[min(wider)[1]] += 1
    return counts
