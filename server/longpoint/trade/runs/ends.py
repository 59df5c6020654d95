"""How an end of trim meets what is there: what it loses, how far its face reaches, the setting.

Trim lies with its back on the wall. Lengths along the wall are taken at the back, the wall line;
the face lies one thickness into the room. `corner` is the angle between two walls as a bevel
gauge reads it, less than 180: at an inside corner taken in the room, at an outside corner taken
over the corner itself. Two lines a thickness off two such walls meet thickness / tan(corner / 2)
from the corner, and a line a thickness off one wall meets the other thickness / sin(corner) out.
"""

from .. import degrees
from ..tool import End, Scale

STEEPEST = 85.0
"""Degrees off square beyond which an end is a sliver that no saw holds: common practice."""

DYING = ("cope", "butt")
SCARF = ("under", "over")
_FITTED = ("through", "butt")
_WORDS = {
    "open": "free end",
    "casing": "to casing",
    "wall": "to wall",
    "through": "to wall",
    "cope": "over {}",
    "butt": "into {}",
    "miter": "to {}",
    "outside": "to {}",
    "under": "under {}",
    "over": "over {}",
}


class TrimEnd:
    """One end of a piece of trim.

    Parameters
    ----------
    kind : str
        ``open``, ``casing``, ``wall``: square. At an inside corner ``through`` runs to the next
        wall, ``cope`` and ``butt`` die into the neighbor's face, ``miter`` shares the corner.
        ``outside``: mitered round a corner. ``under`` and ``over``: the two halves of a scarf.
    angle : float
        Degrees: the corner; for a scarf its angle off square.

    >>> TrimEnd("butt", 90).inset(0.625), TrimEnd("outside", 90).reach(0.625)
    (0.625, 0.625)
    >>> TrimEnd("through", 45).reach(1), TrimEnd("miter", 135).saw()
    (-1.0, 22.5)
    """

    def __init__(self, kind: str, angle: float = 90.0) -> None:
        self.kind = kind
        self.angle = angle
        self._reach = (0.0, 0.0)
        """A thickness and its reach, worked out last: one question asks often."""

    def inset(self, thickness: float) -> float:
        """Return how far the back ends short of the corner, in the unit of `thickness`."""
        return thickness / degrees.sin(self.angle) if self.kind == "butt" else 0.0

    def reach(self, thickness: float) -> float:
        """Return how far the face goes past the end of the back; negative where it stops short."""
        if self._reach[0] != thickness:
            self._reach = (thickness, self._reached(thickness))
        return self._reach[1]

    def _reached(self, thickness: float) -> float:
        if self.kind in _FITTED:
            return 0.0 if self.angle == 90 else -thickness / degrees.tan(self.angle)
        if self.kind in ("cope", "miter"):
            return -thickness / degrees.tan(self.angle / 2)
        if self.kind == "outside":
            return thickness / degrees.tan(self.angle / 2)
        lost = thickness * degrees.tan(self.angle) if self.kind in SCARF else 0.0
        return -lost if self.kind == "under" else lost

    def saw(self) -> float:
        """Return the setting in degrees off a square cut."""
        if self.kind in _FITTED:
            return abs(90 - self.angle)
        if self.kind in ("cope", "miter", "outside"):
            return (180 - self.angle) / 2
        return self.angle if self.kind in SCARF else 0.0

    def standing(self) -> "TrimEnd":
        """Return this end as it stands in plan: a cope, once cut, dies in like a butt."""
        return TrimEnd("butt", self.angle) if self.kind == "cope" else self

    def end(self, scale: Scale, thickness: float, other: str) -> End:
        """Return the end in the answer's words; `other` names the piece that it meets."""
        words = _WORDS[self.kind].format(other or "the next")
        return End(self._word(), self.saw(), 0.0, words + self._points(scale, thickness))

    def _word(self) -> str:
        if self.kind == "through" and self.saw():
            return "off square"
        if self.kind in ("cope", "butt"):
            return self.kind
        if self.kind in SCARF:
            return "scarf"
        return "miter" if self.kind in ("miter", "outside") else "square"

    def _points(self, scale: Scale, thickness: float) -> str:
        """Return where the long point is; a cope's is always at the back."""
        if not self.saw() or self.kind == "cope":
            return ""
        reach = self.reach(thickness)
        if reach < 0:
            return ", long point back"
        if self.kind == "over":
            return ", long point face"
        past = scale.length(reach) if scale.tick(reach) else "a hair"
        return f", long point face +{past}"
