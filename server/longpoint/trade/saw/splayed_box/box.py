"""A box whose sides lean out alike: what the saw is set at, and how long its boards are."""

from ... import degrees


class Box:
    """A box of equal sides, wider at the top: settings in degrees, sizes in inches.

    Parameters
    ----------
    sides : int
    lean : float
        Of each side from upright.
    narrow : float
        One side's outer face where the box is narrow.
    height : float
        Upright, between the level edges.
    thickness : float
        Of the boards; 0 where it is not known.

    `butt` is positive where the outer face of a butted end is shorter than its inner face, square
    to the ends of the board. `flat` is how thick a board is along a level cut.
    """

    def __init__(
        self, sides: int, lean: float, narrow: float, height: float, thickness: float
    ) -> None:
        self.sides = sides
        self.lean = lean
        self.narrow = narrow
        self.height = height
        self.thickness = thickness
        half = 180 / sides
        level, upright = degrees.cos(lean), degrees.sin(lean)
        self.miter = degrees.atan(upright * degrees.tan(half))
        self.bevel = degrees.asin(level * degrees.sin(half))
        self.butt = degrees.asin(upright * upright + level * level * degrees.cos(2 * half))
        self.slant = height / level
        self.wide = narrow + 2 * self.slant * degrees.tan(self.miter)
        self.flat = thickness / level
        self.turn = 2 * half

    @property
    def blank(self) -> float:
        """Width of the board before both edges are ripped at the lean."""
        return self.slant + self.thickness * degrees.tan(self.lean)

    def inside(self, edge: float) -> float:
        """Return a side's length on the inner face from that on the outer face, at one level."""
        return edge - 2 * self.flat * degrees.tan(self.turn / 2)

    def across(self, edge: float) -> float:
        """Return the distance across flats, or the circle within, of an outline of such sides."""
        return edge / degrees.tan(self.turn / 2)

    @property
    def covered(self) -> float:
        """What a butted end loses on the outer face to the board that runs past it."""
        return self.flat / degrees.sin(self.turn)

    @property
    def alternates(self) -> bool:
        """Tell whether every other board can run past at both ends; else each laps the next."""
        return self.sides % 2 == 0

    def butted(self, edge: float) -> float:
        """Return the outer face's length of a board that butts, from that of the whole side."""
        return edge - (2 if self.alternates else 1) * self.covered

    @property
    def butted_back(self) -> float:
        """How much longer the inner face is than the outer one at each butted end, at one level."""
        return self.flat * degrees.cos(self.turn) / degrees.sin(self.turn)
