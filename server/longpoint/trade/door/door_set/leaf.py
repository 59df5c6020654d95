"""A frame-and-panel leaf in numbers: what was asked for, and the sizes that follow.

Heights are inches from the leaf's bottom; rails, openings and panels come from the top down.
"""

import math
from collections import namedtuple

from ... import degrees
from ..gaps import OVERLAY

STUB = 1 / 32  # Inches that a stub tenon stays clear of the groove's bottom.

BUTTED, RABBETED, ASTRAGAL = "butted", "rabbeted", "astragal"
"""How two leaves meet: square edges, edges that lap, edges that an astragal covers."""

Place = namedtuple(
    "Place", ("kind", "leaves", "width", "height", "sides", "head", "floor", "meeting")
)
"""What the leaves close: kind, how many leaves, the opening, and the gaps at each side, head,
floor and between the leaves. Where leaves overlay the opening the first three are less than 0."""

Meeting = namedtuple("Meeting", ("style", "lap", "stem"))
"""How a pair meets: BUTTED, RABBETED with its lap, or ASTRAGAL with the thickness of its stem."""

Rail = namedtuple("Rail", ("name", "low", "high", "row"))
"""A rail: its name, its edges above the leaf's bottom, its row in the form or None."""

Frame = namedtuple("Frame", ("thickness", "stile", "top_rail", "bottom_rail", "mid_rails"))
"""Thickness, width of stiles and outer rails, mid rails as `Rail`s; inches."""

Groove = namedtuple("Groove", ("width", "depth", "tenon", "panel", "play"))
"""The groove's width and depth, the tenons' length, the panel's thickness where it sits in it,
and its play on each side; inches."""


class FramedLeaf:
    """The leaves of one set, alike but for the lap of a rabbeted pair; inches.

    Parameters
    ----------
    place : Place
    meeting : Meeting
    frame : Frame
    groove : Groove
    bevel : float
        Of the edges that are planed to clear, in degrees.
    """

    def __init__(
        self, place: Place, meeting: Meeting, frame: Frame, groove: Groove, bevel: float
    ) -> None:
        self.place, self.frame, self.groove = place, frame, groove
        self.kind, self.leaves = place.kind, place.leaves
        pair = self.leaves == 2
        self.style = meeting.style if pair else BUTTED
        self.lap = meeting.lap if self.style == RABBETED else 0.0
        self.between = 0.0
        if pair:
            self.between = place.meeting + (meeting.stem if self.style == ASTRAGAL else 0.0)
        self.width = (place.width - 2 * place.sides - self.between) / self.leaves
        self.height = place.height - place.head - place.floor
        self.bevel_off = frame.thickness * degrees.tan(bevel)

    @property
    def widths(self) -> "list[float]":
        """Width of each leaf: of a rabbeted pair the right one reaches behind the left one."""
        return [self.width] if self.leaves == 1 else [self.width, self.width + self.lap]

    @property
    def rails(self) -> "list[Rail]":
        """All rails from the top down."""
        frame = self.frame
        top = Rail("Top rail", self.height - frame.top_rail, self.height, None)
        mids: list[Rail] = frame.mid_rails
        return [top] + mids + [Rail("Bottom rail", 0.0, frame.bottom_rail, None)]

    @property
    def sight_width(self) -> float:
        """Width between the stiles."""
        return float(self.width - 2 * self.frame.stile)

    @property
    def rail_length(self) -> float:
        """Length of a rail, tenons included."""
        return float(self.sight_width + 2 * self.groove.tenon)

    @property
    def panel_width(self) -> float:
        """Width of every panel."""
        return float(self.sight_width + 2 * self.groove.depth - 2 * self.groove.play)

    @property
    def openings(self) -> "list[tuple[float, float]]":
        """Lower and upper edge of the space between each rail and the next, from the top down."""
        rails = self.rails
        return [(rails[i + 1].high, rails[i].low) for i in range(len(rails) - 1)]

    @property
    def panel_heights(self) -> "list[float]":
        """Height of each panel, from the top down."""
        more = 2 * self.groove.depth - 2 * self.groove.play
        return [high - low + more for low, high in self.openings]

    @property
    def diagonal(self) -> float:
        """Diagonal of the leaf, or of the narrower of the two."""
        return math.sqrt(self.width * self.width + self.height * self.height)

    def is_beveled(self, number: int, stile: int) -> bool:
        """Tell whether stile 0 (left) or 1 of a leaf gets a bevel.

        Of one leaf either may be the strike stile; of a pair the stiles that meet.
        """
        return self.leaves == 1 or stile != number

    def stile_width(self, number: int, stile: int) -> float:
        """Return the width of stile 0 (left) or 1 of leaf 0 (left) or 1."""
        laps = self.leaves == 2 and number == 1 and stile == 0
        return float(self.frame.stile) + (self.lap if laps else 0.0)

    def volumes(self) -> "tuple[float, float]":
        """Return cubic inches of frame and of panels in the heavier leaf.

        Tenons fill their mortises; a groove is full only as far as its panel reaches.
        """
        frame, groove = self.frame, self.groove
        faces = 2 * frame.stile * self.height
        faces += self.sight_width * sum([rail.high - rail.low for rail in self.rails])
        whole = faces * frame.thickness + self.lap * self.height * frame.thickness / 2
        panels = 0.0
        for (low, high), tall in zip(self.openings, self.panel_heights):
            panels += groove.panel * self.panel_width * tall
            around = (self.sight_width + 2 * groove.depth) * (high - low + 2 * groove.depth)
            whole -= groove.width * (around - self.sight_width * (high - low))
        return whole, panels

    @property
    def overlays(self) -> bool:
        """Whether the leaves lie on the face around the opening."""
        return bool(self.kind == OVERLAY)
