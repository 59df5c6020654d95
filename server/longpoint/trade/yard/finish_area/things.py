"""What is coated, a row each: its true area, and as a convention counts it. Square inches."""

from ...finish.conventions import DOOR_FACTORS, DOUBLED, FACTORS, FLAT, counted_girth
from ...finish.surfaces import Bevel, Openings, bevel_gain, edges_area, sticking_gain

DOORS = ("slab", "framed", "glazed")
PANELLED = ("framed", "glazed")
SIDES = {"all": (2, True), "faces": (2, False), "face-edges": (1, True), "face": (1, False)}
"""Faces that are coated, and whether the edges are."""


class Thing:
    """One row: so many alike.

    Attributes
    ----------
    flat : float
        Faces of one as they lie flat, without edges.
    edges, gain : float
        Of one: its edges, and what sticking and bevels add to the flat faces.
    running : float
        Length of one where it is trim.
    """

    def __init__(self, kind: str, count: int, name: str) -> None:
        self.kind = kind
        self.count = count
        self.name = name
        self.faces = 1
        self.flat = 0.0
        self.edges = 0.0
        self.gain = 0.0
        self.glass = 0.0
        self.girth = 0.0
        self.running = 0.0
        self.factor: float | None = None

    def flat_sides(self, sides: str, size: "tuple[float, float, float]") -> "Thing":
        """Set faces and edges by width, length and thickness."""
        width, length, thickness = size
        self.faces, has_edges = SIDES[sides]
        self.flat = self.faces * width * length
        self.edges = edges_area(width, length, thickness) if has_edges else 0.0
        return self

    def framed(
        self,
        openings: Openings,
        sticking: "tuple[float, float]",
        bevel: "Bevel | None",
        raised: int,
    ) -> "Thing":
        """Add what is in the frame: sticking (girth, width), bevels on so many faces, or glass."""
        girth, width = sticking
        self.gain = self.faces * sticking_gain(openings, girth, width)
        if bevel is not None:
            self.gain += min(raised, self.faces) * bevel_gain(openings, width, bevel)
        if self.kind == "glazed":
            self.glass = self.faces * openings.area(width / 2)
        return self

    def trim(self, girth: float, length: float) -> "Thing":
        """Set it as trim: what is coated around it, times its length."""
        self.girth, self.running, self.flat = girth, length, girth * length
        return self

    @property
    def each(self) -> float:
        """True area of one."""
        return self.flat - self.glass + self.edges + self.gain

    @property
    def sign(self) -> int:
        """Whether it is added or left out."""
        return -1 if self.kind == "off" else 1

    @property
    def area(self) -> float:
        """True area of all of them, below 0 for what is left out."""
        return self.sign * self.count * self.each

    def priced(self, way: str) -> float:
        """Return the area of all of them as a convention counts it."""
        return self.sign * self.count * self._priced_each(way)

    def _priced_each(self, way: str) -> float:
        if self.kind == "trim":
            return counted_girth(self.girth, way) * self.running
        if way == FLAT:
            return self.flat
        if way == FACTORS:
            usual = DOOR_FACTORS.get(self.kind, 1.0)
            return self.flat * (usual if self.factor is None else self.factor)
        if way == DOUBLED:
            return self.flat * (2 if self.kind in PANELLED else 1) + 2 * self.edges
        return self.each
