"""The edges of a leaf as it turns: what each needs to come off, in inches and degrees."""

from collections import namedtuple

from ... import degrees
from ...tool import Refusal, Scale
from .swing import Swing

HAIR = 1e-9
"""Float noise must not turn just enough into too little."""

SLIGHT = 1 / 128
"""Inches that nobody planes off: less than half of the finest tick."""

Hanging = namedtuple("Hanging", ("thickness", "pin_in", "pin_out", "gap", "keep", "land", "pair"))
"""How a leaf hangs, but for its width: the pin, the strike gap, the clearance to keep, the land,
and whether both leaves of a pair open at once."""


class StrikeEdge:
    """One leaf's strike edge: its swing, and the least bevel that keeps the clearance.

    Raises
    ------
    Refusal
        No bevel will do; `field` is the input of the leaf's width.
    """

    def __init__(self, hanging: Hanging, width: float, field: str, scale: Scale) -> None:
        self.keep = hanging.keep
        self.swing = Swing(
            width,
            hanging.thickness,
            hanging.pin_in,
            hanging.pin_out,
            hanging.gap,
            hanging.land,
            hanging.pair,
        )
        self.relief = self._relief(field, scale)
        self.bevel = self.swing.bevel(self.relief)

    @property
    def is_planed(self) -> bool:
        """Tell whether anything comes off that a plane can take."""
        return self.relief >= SLIGHT

    def _relief(self, field: str, scale: Scale) -> float:
        swing, keep, fine = self.swing, self.keep, scale.finer()
        if swing.tight_gap() >= keep - HAIR:
            return 0.0
        wider = f"a gap of {fine.length(swing.gap_for(keep))} needs no bevel at all"
        most, relief = swing.most_land(keep), swing.relief_for(keep)
        if most < 0:
            raise Refusal(
                "clearance",
                f"A gap of {fine.length(swing.gap)} can't keep {fine.length(keep)} clear as the "
                f"leaf opens, whatever the bevel: keep less, or widen it; {wider}.",
            )
        if relief is None:
            raise Refusal(
                field,
                f"A leaf {scale.length(swing.width)} wide and {scale.length(swing.thickness)} "
                f"thick can't turn past a gap of {fine.length(swing.gap)} with any bevel: {wider}.",
            )
        if swing.land > most + HAIR:
            raise Refusal(
                "land",
                f"A land of {fine.length(swing.land)} itself comes nearer than "
                f"{fine.length(keep)}: use at most {fine.length(most)}, or widen the gap.",
            )
        return relief


class HingeEdge:
    """The hinge edge, tightest when closed: a turn about the pin takes all of it from the jamb.

    Where the jamb's face is out of square toward the leaf, the far corner meets it first, and the
    door springs open: it binds at the hinges.

    Parameters
    ----------
    thickness, gap, keep : float
        Of the leaf; between leaf and jamb at the knuckle face; the clearance wanted.
    closes_in : float
        How far the jamb's face comes toward the leaf over the leaf's thickness.
    bevel : float or None
        Degrees that the edge has or shall have; None for just what it needs.
    """

    def __init__(
        self, thickness: float, gap: float, keep: float, closes_in: float, bevel: "float | None"
    ) -> None:
        self.gap = gap
        self.closes_in = closes_in
        self.square_gap = gap - closes_in
        # A gap less than the clearance is the hinges' matter: only what the jamb takes is given
        # back.
        needed = max(0.0, min(keep, gap) - self.square_gap)
        self.needed_relief = needed
        self.needed_bevel = degrees.atan(needed / thickness)
        self.relief = needed if bevel is None else thickness * degrees.tan(bevel)
        self.bevel = self.needed_bevel if bevel is None else bevel

    @property
    def far_gap(self) -> float:
        """The gap at the far face, closed; negative where the wood would have to overlap."""
        return self.square_gap + self.relief

    @property
    def is_planed(self) -> bool:
        """Tell whether anything comes off that a plane can take."""
        return self.relief >= SLIGHT

    @property
    def is_short(self) -> bool:
        """Tell whether the bevel it has is less than what it needs."""
        return self.relief < self.needed_relief - HAIR
