"""A frame-and-panel leaf: its sizes from the opening's, and what can't be built.

Heights are inches from the leaf's bottom, in the order of the drawing: from the top down.
"""

from collections import namedtuple

from ..refusal import Refusal
from .leaf_checks import check_frame, check_groove, check_mid_rails, check_opening

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..lengths import Scale
    from ..rows import Given

STUB = 1 / 32

Rail = namedtuple("Rail", ("name", "low", "high", "row"))
"""A rail: its name, its edges above the leaf's bottom, its row in the form or None."""


class Leaf:
    """One leaf of the set, in inches; both leaves of a pair are alike.

    Raises
    ------
    Refusal
        Parts that don't fit the opening, run into each other or can't hold the panel.
    """

    def __init__(self, given: "Given", scale: "Scale") -> None:
        self.leaves = int(given.text("leaves"))
        self.opening = given.number("width"), given.number("height")
        self.side_gap, self.head_gap = given.number("side_gap"), given.number("head_gap")
        self.floor_gap = given.number("floor_gap")
        self.meeting_gap = (given.maybe("meeting_gap") or 0.0) if self.leaves == 2 else 0.0
        self.width = (self.opening[0] - 2 * self.side_gap - self.meeting_gap) / self.leaves
        self.height = self.opening[1] - self.head_gap - self.floor_gap
        self.thickness = given.number("stock_thickness")
        self.panel_thickness = given.number("panel_thickness")
        self.stile = given.number("stile")
        self.top_rail = given.maybe("top_rail") or self.stile
        self.bottom_rail = given.maybe("bottom_rail") or self.top_rail
        self.groove = given.number("groove_depth")
        self.tenon = self._tenon(given, scale)
        self.play = given.number("panel_play")
        check_opening(self, scale)
        check_frame(self, given, scale)
        self.mid_rails = _mid_rails(given)
        check_mid_rails(self, scale)
        check_groove(self, scale)

    def _tenon(self, given: "Given", scale: "Scale") -> float:
        asked = given.maybe("tenon_length")
        if asked is None and self.groove <= STUB:
            raise Refusal(
                "groove_depth",
                f"A groove {scale.finer().length(self.groove)} deep holds no tenon: plow it "
                "deeper, or give the tenon's length.",
            )
        return self.groove - STUB if asked is None else asked

    @property
    def rails(self) -> "list[Rail]":
        """All rails from the top down."""
        top = Rail("Top rail", self.height - self.top_rail, self.height, None)
        return [top] + self.mid_rails + [Rail("Bottom rail", 0.0, self.bottom_rail, None)]

    @property
    def sight_width(self) -> float:
        """Width between the stiles."""
        return self.width - 2 * self.stile

    @property
    def rail_length(self) -> float:
        """Length of a rail, tenons included."""
        return self.sight_width + 2 * self.tenon

    @property
    def panel_width(self) -> float:
        """Width of every panel."""
        return self.sight_width + 2 * self.groove - 2 * self.play

    @property
    def openings(self) -> "list[tuple[float, float]]":
        """Lower and upper edge of the space between each rail and the next, from the top down."""
        rails = self.rails
        return [(rails[i + 1].high, rails[i].low) for i in range(len(rails) - 1)]

    @property
    def panel_heights(self) -> "list[float]":
        """Height of each panel, from the top down."""
        return [high - low + 2 * self.groove - 2 * self.play for low, high in self.openings]


def _mid_rails(given: "Given") -> "list[Rail]":
    """Return the rails of the form from the top down, each with the number of its row."""
    rows = given.rows("mid_rails")
    order = sorted([(-row.number("center"), index) for index, row in enumerate(rows)])
    rails = []
    for place, (below, index) in enumerate(order):
        half = rows[index].number("width") / 2
        name = "Mid rail" if len(rows) == 1 else f"Mid rail {place + 1}"
        rails.append(Rail(name, -below - half, -below + half, index))
    return rails
