"""A door's jamb and its stops: sizes from the door's, and what can't be built; all in inches."""

from collections import namedtuple

from ...tool import Refusal, Scale

Hung = namedtuple(
    "Hung", ("leaves", "width", "height", "thickness", "side", "head", "floor", "meeting")
)
"""The leaves, each one's size, and the gaps round them."""

Stock = namedtuple("Stock", ("thick", "depth", "joint", "housing", "horn"))
"""The jamb's thickness and depth, how its head is joined, and how far its legs run on above."""

Stop = namedtuple("Stop", ("width", "thick", "gap", "setback", "mitered"))
"""A stop's size, its gap behind the closed leaf, the leaf's setback from the jamb's edge."""


class Jamb:
    """The frame's sizes; heights above the finished floor's higher side.

    Parameters
    ----------
    hung : Hung
    stock : Stock
    stop : Stop
    feet : tuple of float
        How far the left and the right leg run on below the finished floor's higher side.

    `line` and `far` are the stop's edges from the jamb's edge on the hinge face.

    Raises
    ------
    Refusal
        A housing through the jamb, or a stop that has no room.
    """

    def __init__(
        self, hung: Hung, stock: Stock, stop: Stop, feet: "tuple[float, float]", scale: Scale
    ) -> None:
        self.hung = hung
        self.stock = stock
        self.stop = stop
        self.feet = feet
        meeting = hung.meeting * (hung.leaves - 1)
        self.wide: float = hung.leaves * hung.width + 2 * hung.side + meeting
        self.high: float = hung.height + hung.head + hung.floor
        self.line: float = stop.setback + hung.thickness + stop.gap
        self.far: float = self.line + stop.width
        self._refuse(scale)

    def _refuse(self, scale: Scale) -> None:
        stock, stop = self.stock, self.stop
        if stock.housing >= stock.thick:
            raise Refusal(
                "housing_depth",
                f"A housing {scale.length(stock.housing)} deep cuts through a jamb "
                f"{scale.length(stock.thick)} thick: use half of it or less.",
            )
        if self.far > stock.depth + 1e-9:
            raise Refusal(
                "stop_width",
                f"Behind the door a jamb {scale.length(stock.depth)} deep leaves "
                f"{scale.length(max(0.0, stock.depth - self.line))}: the stop needs "
                f"{scale.length(stop.width)}. Use a narrower stop, or a deeper jamb.",
            )
        if min(self.wide / 2, self.high) <= stop.thick:
            raise Refusal("stop_thickness", "The stops fill the opening: use thinner ones.")

    @property
    def top(self) -> float:
        """Height of the legs' upper end."""
        above: float = self.stock.thick + self.stock.horn
        return self.high + (0.0 if self.stock.joint == "over" else above)

    @property
    def legs(self) -> "tuple[float, float]":
        """Lengths of the left and the right leg."""
        return self.top + self.feet[0], self.top + self.feet[1]

    @property
    def is_level(self) -> bool:
        """Tell whether both legs are alike."""
        return self.feet[0] == self.feet[1]

    @property
    def head(self) -> float:
        """Length of the head."""
        over = self.stock.joint == "over"
        more: float = self.stock.thick if over else self.stock.housing
        return self.wide + 2 * more

    @property
    def stops(self) -> "tuple[float, float]":
        """Lengths of the left and the right leg's stop, on the finished floor."""
        up = self.high - (0.0 if self.stop.mitered else self.stop.thick)
        least = min(self.feet)
        return up + self.feet[0] - least, up + self.feet[1] - least

    @property
    def outside(self) -> "tuple[float, float]":
        """Width over the legs; height from the longer leg's foot to the top of the frame."""
        thick = self.stock.thick
        return self.wide + 2 * thick, max(self.top, self.high + thick) + max(self.feet)


class Latch:
    """Where a latch stands: on the strike leg and on the leaf.

    Raises
    ------
    Refusal
        It lies above or below the leaf.
    """

    def __init__(self, jamb: Jamb, height: float, scale: Scale) -> None:
        hung = jamb.hung
        self.height = height
        self.up_leaf = height - hung.floor
        self.down_leg = jamb.top - height
        self.in_from_edge = jamb.stop.setback + hung.thickness / 2
        if not 0 < self.up_leaf < hung.height:
            raise Refusal(
                "latch_height",
                f"{scale.length(height)} above the floor there is no leaf: it reaches from "
                f"{scale.length(hung.floor)} to {scale.length(hung.floor + hung.height)}.",
            )
