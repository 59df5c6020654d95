"""The mortise of a butt hinge, in inches: how deep and how wide, as far as it is known.

A butt hinge keeps a gap between its closed leaves. What the leaves do not stand proud of door and
jamb is let in, half on each side, until the wanted gap is left.
"""

from ...tool import Refusal, Scale


class Mortise:
    """One mortise of a hinge; what is not known yet is None.

    Parameters
    ----------
    leaf, gap, closed_gap : float or None
        Thickness of a hinge leaf; the gap wanted; the gap between the closed hinge's leaves.
    thickness, backset : float or None
        Of the door; from the hinge leaf's edge to the far face.
    length : float or None
        Of a hinge leaf along the door.

    Raises
    ------
    Refusal
        The backset leaves nothing for the hinge leaf.
    """

    def __init__(
        self,
        leaf: "float | None",
        gap: "float | None",
        closed_gap: float,
        thickness: "float | None",
        backset: float,
        length: "float | None",
        scale: Scale,
    ) -> None:
        self.leaf = leaf
        self.gap = gap
        self.closed_gap = closed_gap
        self.thickness = thickness
        self.length = length
        self.depth: float | None = None
        self.shim = 0.0
        if leaf is not None and gap is not None:
            deep = leaf - (gap - closed_gap) / 2
            self.depth, self.shim = max(0.0, deep), max(0.0, -deep)
        self.width = None if thickness is None else thickness - backset
        if self.width is not None and self.width <= 0:
            raise Refusal(
                "backset",
                f"A backset of {scale.length(backset)} leaves nothing of a door "
                f"{scale.length(self.width + backset)} thick for the hinge leaf: use less.",
            )
