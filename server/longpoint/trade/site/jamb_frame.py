"""A door's jamb and its stops: sizes from the door's, and what can't be built."""

from ..tool import Given, Refusal, Scale


class Jamb:
    """The frame's sizes in inches; heights above the finished floor's higher side.

    `line` and `far` are the stop's edges from the jamb's edge on the hinge face; `feet` is how
    far the left and the right leg run on below the finished floor's higher side.
    """

    def __init__(self, given: Given, scale: Scale) -> None:
        leaves = int(given.text("leaves"))
        meeting = (given.maybe("meeting_gap") or 0.0) * (leaves - 1)
        self.side_gap, self.head_gap = given.number("side_gap"), given.number("head_gap")
        self.floor_gap = given.number("floor_gap")
        self.wide = leaves * given.number("door_width") + 2 * self.side_gap + meeting
        self.high = given.number("door_height") + self.head_gap + self.floor_gap
        self.thick, self.depth = given.number("jamb_thickness"), given.number("jamb_depth")
        self.joint = given.text("head_joint")
        self.housing = given.maybe("housing_depth") or 0.0
        self.horn = given.maybe("horn") or 0.0
        below, falls = given.number("floor_below"), given.number("floor_falls")
        self.feet = below + max(0.0, -falls), below + max(0.0, falls)
        self.setback, self.door = given.number("setback"), given.number("door_thickness")
        self.gap = given.number("stop_gap")
        self.line = self.setback + self.door + self.gap
        self.far = self.line + given.number("stop_width")
        self.stop = given.number("stop_thickness")
        self._refuse(scale)

    def _refuse(self, scale: Scale) -> None:
        if self.housing >= self.thick:
            raise Refusal(
                "housing_depth",
                f"A housing {scale.length(self.housing)} deep cuts through a jamb "
                f"{scale.length(self.thick)} thick: use half of it or less.",
            )
        if self.far > self.depth + 1e-9:
            raise Refusal(
                "stop_width",
                f"Behind the door a jamb {scale.length(self.depth)} deep leaves "
                f"{scale.length(max(0.0, self.depth - self.line))}: the stop needs "
                f"{scale.length(self.far - self.line)}. Use a narrower stop, or a deeper jamb.",
            )
        if min(self.wide / 2, self.high) <= self.stop:
            raise Refusal("stop_thickness", "The stops fill the opening: use thinner ones.")

    @property
    def top(self) -> float:
        """Height of the legs' upper end."""
        return self.high + (0.0 if self.joint == "over" else self.thick + self.horn)

    @property
    def head(self) -> float:
        """Length of the head."""
        return self.wide + 2 * (self.thick if self.joint == "over" else self.housing)

    @property
    def stop_tag(self) -> int:
        """Number of the head's stop: legs that are alike share one before it."""
        return 3 if self.feet[0] == self.feet[1] else 4

    @property
    def outside(self) -> "tuple[float, float]":
        """Width over the legs; height from the longer leg's foot to the top of the frame."""
        return self.wide + 2 * self.thick, max(self.top, self.high + self.thick) + max(self.feet)
