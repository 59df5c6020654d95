"""A raised panel's edge in section: how thick it is where, and how it sits in its groove.

Distances run from the panel's edge inward; thicknesses are measured from its back. Inches.
"""

import math
from collections import namedtuple

from ... import degrees
from ...refusal import Refusal

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...lengths import Scale

STEEPEST = 45.0
"""Degrees that a saw's blade leans at most."""

Seat = namedtuple("Seat", ("width", "depth", "play", "slack"))
"""The groove: its width and depth, the panel's play on each side, the tongue's slack in it."""

Cutter = namedtuple("Cutter", ("reach", "flat", "depth", "per_pass"))
"""How wide a raising cutter cuts, how much of that is flat for the tongue, how high its profile is
from there to the field or None, and the most it takes in one pass."""


class Raised:
    """One edge of a raised panel.

    Attributes
    ----------
    tongue : float
        Thickness where the tongue is to fill the groove.
    edge : float
        Thickness at the very edge.
    width : float
        From the panel's edge to the field.
    step : float
        How far the field stands up from the bevel's upper end.
    """

    def __init__(self, blank: float, seat: Seat, width: float, edge: float, step: float) -> None:
        self.blank, self.seat = blank, seat
        self.tongue = seat.width - seat.slack
        self.width, self.edge, self.step = width, edge, step

    @property
    def inside(self) -> float:
        """How much of the panel is in the groove while it is centered."""
        return float(self.seat.depth - self.seat.play)

    @property
    def shows(self) -> float:
        """How much of the bevel shows between frame and field."""
        return self.width - self.inside

    def behind(self, stock: float, relief: float) -> float:
        """Return how far the field lies behind the face of a frame this thick; less than 0: proud.

        The back of the tongue lies at the groove's rear wall; `relief` is what the back is
        rabbeted, which lets the panel come back by as much.
        """
        return float((stock + self.seat.width) / 2 - self.blank + relief)


class SawnPanel(Raised):
    """An edge beveled on the saw: a wedge that fills the groove when it is pushed home.

    So it never splits the groove as it swells; centered it has some slack at the groove's mouth.

    Parameters
    ----------
    blank : float
        The panel's thickness.
    seat : Seat
    shows : float
        The bevel that is to show.
    step : float
        What is scored around the field.

    Raises
    ------
    Refusal
        Nothing is left to bevel, or it gets too steep or too thin.
    """

    def __init__(self, blank: float, seat: Seat, shows: float, step: float, scale: "Scale") -> None:
        width = shows + seat.depth - seat.play
        super().__init__(blank, seat, width, 0.0, step)
        rise, run = blank - step - self.tongue, shows - seat.play
        _refuse_flat(rise, blank, self.tongue + step, scale)
        if run <= 0:
            raise Refusal(
                "bevel_shows",
                f"A bevel of {scale.length(shows)} is no wider than the play, "
                f"{scale.length(seat.play)}: show more of it.",
            )
        self.angle = degrees.atan(rise / run)
        self.edge = self.tongue - seat.depth * rise / run
        self._refuse_steep(rise, run, scale)

    def _refuse_steep(self, rise: float, run: float, scale: "Scale") -> None:
        if self.angle > STEEPEST or self.edge <= 0:
            most = self.tongue / self.seat.depth
            wanted = max(rise, rise / most) + self.seat.play
            raise Refusal(
                "bevel_shows",
                f"Rising {scale.length(rise)} in {scale.length(run)} the bevel leaves no edge, or "
                f"is too steep for the saw: show more than {scale.length(wanted)}, use a thinner "
                "blank, or score deeper.",
            )

    @property
    def mouth_slack(self) -> float:
        """Slack at the groove's mouth while the panel is centered in its play."""
        return float(self.seat.slack + self.seat.play * degrees.tan(self.angle))


class MilledPanel(Raised):
    """An edge raised by a cutter, with a flat tongue.

    Raises
    ------
    Refusal
        Nothing is left to take off, or the cutter's flat doesn't reach out of the groove.
    """

    def __init__(self, blank: float, seat: Seat, cutter: Cutter, scale: "Scale") -> None:
        super().__init__(blank, seat, cutter.reach, seat.width - seat.slack, 0.0)
        self.cutter = cutter
        self.deep = blank - self.tongue
        _refuse_flat(self.deep, blank, self.tongue, scale)
        if cutter.flat >= cutter.reach:
            raise Refusal(
                "cutter_flat",
                f"The flat is less than the cutter's whole reach, {scale.length(cutter.reach)}.",
            )
        if cutter.flat < self.inside - 1e-9:
            raise Refusal(
                "cutter_flat",
                f"A flat of {scale.length(cutter.flat)} ends inside the groove, where "
                f"{scale.length(self.inside)} of the panel sits: plow less deep, give more play, "
                "or use a cutter with a longer flat.",
            )

    @property
    def relief(self) -> float:
        """What is rabbeted off the back where the profile is not as high as the cut is deep."""
        if self.cutter.depth is None:
            return 0.0
        return float(max(0.0, self.deep - self.cutter.depth))

    @property
    def uncut(self) -> float:
        """How much of the profile's height the blank is too thin for."""
        if self.cutter.depth is None:
            return 0.0
        return float(max(0.0, self.cutter.depth - self.deep))

    @property
    def passes(self) -> int:
        """How many passes take the whole depth."""
        return int(math.ceil((self.deep - self.relief) / self.cutter.per_pass - 1e-9))

    @property
    def room(self) -> float:
        """How far the panel can move into the groove before its profile meets the mouth."""
        return float(min(self.seat.play, self.cutter.flat - self.inside))


def _refuse_flat(rise: float, blank: float, least: float, scale: "Scale") -> None:
    if rise <= 0:
        raise Refusal(
            "blank_thickness",
            f"A blank {scale.length(blank)} thick leaves nothing to raise over "
            f"{scale.finer().length(least)}: use a thicker one.",
        )
