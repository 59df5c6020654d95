"""A door's section as it turns about its pin: what comes how near, and what a bevel gives.

All in inches, seen from above and closed: x runs along the door from its hinge edge, y through
it from the knuckle face. The pin stands at (-pin_in, -pin_out); the door opens toward negative y.

The smallest gap needs no sweep. No point of the door is farther from the pin than its far corner,
none of the jamb nearer than its corner at the knuckle face, and in passing the two come into
line with the pin: the gap is the difference of the two distances (plane geometry).
"""

import math

from ... import degrees

TYPE_CHECKING = False
if TYPE_CHECKING:
    Point = tuple[float, float]


class Swing:
    """A door that opens past a jamb, or past the other leaf of a pair.

    Parameters
    ----------
    width, thickness, pin_in, pin_out, gap : float
        Inches; `gap` lies between the closed door's strike edge and what it meets.
    land : float
        Width of the flat left on the edge at the knuckle face before a bevel begins.
    together : bool
        Both leaves of a pair open at once: each keeps to its own side of the gap's middle.
    """

    def __init__(
        self,
        width: float,
        thickness: float,
        pin_in: float,
        pin_out: float,
        gap: float,
        land: float,
        together: bool = False,
    ) -> None:
        self.width = width
        self.thickness = thickness
        self.pin_in = pin_in
        self.pin_out = pin_out
        self.gap = gap
        self.land = land
        self.together = together

    @property
    def reach(self) -> float:
        """From the pin to the nearest of what the door must pass."""
        if self.together:
            return self.width + self.pin_in + self.gap / 2
        return _length(self.width + self.gap + self.pin_in, self.pin_out)

    def radius(self, x: float, y: float) -> float:
        """Return how far a point of the closed door is from the pin."""
        return _length(x + self.pin_in, y + self.pin_out)

    def tight_gap(self, relief: float = 0.0) -> float:
        """Return the smallest gap of the whole swing, the far corner cut back by `relief`.

        Negative where the door would have to pass through what it meets.
        """
        far = self.radius(self.width - relief, self.thickness)
        edge = self.radius(self.width, self.land if relief else self.thickness)
        return (self.reach - max(far, edge)) * (2 if self.together else 1)

    def relief_for(self, clearance: float) -> "float | None":
        """Return how far the far corner must go back to keep a clearance; None if nothing will do.

        The land has to keep it too: see `most_land`.
        """
        kept = self.kept(clearance)
        across = self.thickness + self.pin_out
        if kept <= across:
            return None
        relief = self.width + self.pin_in - _leg(kept, across)
        return max(0.0, relief) if relief < self.width else None

    def most_land(self, clearance: float) -> float:
        """Return the widest land that keeps a clearance; negative if not even a sharp edge does."""
        kept = self.kept(clearance)
        along = self.width + self.pin_in
        return -1.0 if kept < along else _leg(kept, along) - self.pin_out

    def kept(self, clearance: float) -> float:
        """Return the radius that every point of the door must keep within."""
        return self.reach - (clearance / 2 if self.together else clearance)

    def gap_for(self, clearance: float) -> float:
        """Return the smallest gap of the closed door at which a square edge keeps a clearance."""
        far = self.radius(self.width, self.thickness)
        along = self.width + self.pin_in
        if self.together:
            return 2 * (far - along) + clearance
        return _leg(far + clearance, self.pin_out) - along

    def bevel(self, relief: float) -> float:
        """Return the angle off square, in degrees, of a bevel that takes `relief` off."""
        return degrees.atan(relief / (self.thickness - self.land))

    def relief(self, bevel: float) -> float:
        """Return what a bevel in degrees takes off the far corner."""
        return (self.thickness - self.land) * degrees.tan(bevel)

    @property
    def tight_at(self) -> float:
        """How far the door is open, in degrees, where its square far corner comes nearest."""
        far = degrees.atan((self.thickness + self.pin_out) / (self.width + self.pin_in))
        if self.together:
            return far
        return far - degrees.atan(self.pin_out / (self.width + self.gap + self.pin_in))

    def section(self, relief: float = 0.0) -> "list[Point]":
        """Return the corners of the closed door's section."""
        edge = [(self.width - relief, self.thickness)]
        if relief and self.land:
            edge = [(self.width, self.land)] + edge
        return [(0.0, 0.0), (self.width, 0.0)] + edge + [(0.0, self.thickness)]

    def turned(self, point: "Point", opening: float) -> "Point":
        """Return where a point of the closed door is once it stands open by an angle."""
        x, y = point[0] + self.pin_in, point[1] + self.pin_out
        sine, cosine = degrees.sin(opening), degrees.cos(opening)
        return (x * cosine + y * sine - self.pin_in, y * cosine - x * sine - self.pin_out)

    def gap_at(self, opening: float, relief: float = 0.0) -> float:
        """Return the gap at one opening to a jamb or to the closed other leaf; 0 where they meet.

        With both leaves opening, twice the way to the middle between them.
        """
        corners = [self.turned(point, opening) for point in self.section(relief)]
        if self.together:
            nearest = max([x for x, _ in corners])
            return max(0.0, 2 * (self.width + self.gap / 2 - nearest))
        jamb = (self.width + self.gap, 0.0)
        if _holds(corners, jamb):
            return 0.0
        gaps = [_to_corner(corner, jamb) for corner in corners]
        sides = zip(corners, corners[1:] + corners[:1])
        return min(gaps + [_to_side(jamb, start, end) for start, end in sides])


def _length(x: float, y: float) -> float:
    return math.sqrt(x * x + y * y)


def _leg(long: float, short: float) -> float:
    """Return the other leg of a right triangle; exact enough where both are nearly equal."""
    return math.sqrt(max(0.0, (long - short) * (long + short)))


def _holds(corners: "list[Point]", point: "Point") -> bool:
    """Tell whether a point lies within a convex section, its corners in clockwise order."""
    sides = zip(corners, corners[1:] + corners[:1])
    turns = [
        (end[0] - start[0]) * (point[1] - start[1]) - (end[1] - start[1]) * (point[0] - start[0])
        for start, end in sides
    ]
    return min(turns) > 0


def _to_corner(point: "Point", corner: "Point") -> float:
    """Return how far a point is from the quarter plane right of and below a corner."""
    return _length(max(0.0, corner[0] - point[0]), max(0.0, corner[1] - point[1]))


def _to_side(point: "Point", start: "Point", end: "Point") -> float:
    """Return how far a point is from a straight side."""
    along_x, along_y = end[0] - start[0], end[1] - start[1]
    off_x, off_y = point[0] - start[0], point[1] - start[1]
    share = (off_x * along_x + off_y * along_y) / (along_x * along_x + along_y * along_y)
    share = min(1.0, max(0.0, share))
    return _length(off_x - share * along_x, off_y - share * along_y)
