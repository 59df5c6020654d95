"""The view of a surveyed opening: its error and the gaps drawn larger, and labelled so."""

from ...drawing import Drawing
from ...lengths import TRUE
from .routes import FLOOR, STRIKE, TOP

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...lengths import Scale
    from .bays import Point
    from .routes import SquareLeaf, TaperedLeaf
    from .shape import Opening

    Leaf = SquareLeaf | TaperedLeaf

TIMES = (50, 20, 10, 5, 2, 1)
LINES = (0.08, 0.22, 0.36, 0.64)  # None at half the height, where the sides' sizes stand.
SEEN = 0.08  # Of the smaller side: how far the drawn error may reach.


class Large:
    """Draws points `times` as far from a true rectangle's corners as they are."""

    def __init__(self, opening: "Opening", leaves: "list[Leaf]") -> None:
        self.wide = (opening.widths[0] + opening.widths[-1]) / 2
        self.high = (opening.heights[0] + opening.heights[-1]) / 2
        self.at = [sum([point[axis] for point in opening.points]) / 4 for axis in (0, 1)]
        self.bases = self.rectangle(0, self.wide)
        off = [gap / 2 for leaf in leaves for gap in leaf.gaps]
        errors: list[float] = []
        for base, point in zip(self.bases, opening.points):
            errors += [abs(self._placed(point)[axis] - base[axis]) for axis in (0, 1)]
        off += errors
        self.is_true = max(errors) < TRUE
        """Whether it is a true rectangle: then only the gaps are drawn larger."""
        room = SEEN * min(self.wide, self.high)
        self.times = ([times for times in TIMES if times * max(off) <= room] or [1])[0]

    def rectangle(self, left: float, right: float) -> "list[Point]":
        """Return the corners of the true rectangle's part between two heights across."""
        return [(left, 0.0), (right, 0.0), (right, self.high), (left, self.high)]

    def drawn(self, points: "list[Point]", bases: "list[Point]") -> "list[Point]":
        """Return points as drawn, each moved away from its base."""
        times = self.times
        return [
            (base[0] + times * (point[0] - base[0]), base[1] + times * (point[1] - base[1]))
            for point, base in zip([self._placed(point) for point in points], bases)
        ]

    def _placed(self, point: "Point") -> "Point":
        return point[0] - self.at[0] + self.wide / 2, point[1] - self.at[1] + self.high / 2


def opening_view(opening: "Opening", leaves: "list[Leaf]", scale: "Scale") -> Drawing:
    """Return the opening and its leaves from the front, the waste of the tapers in place."""
    large = Large(opening, leaves)
    larger = "gaps" if large.is_true else "errors and gaps"
    words = f"{larger} drawn {large.times} times" if large.times > 1 else "to scale"
    tight = [scale.length(size) for size in opening.tight]
    view = Drawing(
        "The opening from the front, " + words,
        f"{tight[0]} by {tight[1]} at its tightest, over a plumb and level rectangle.",
    )
    outline = large.drawn(opening.points, large.bases)
    view.area("wall", outline)
    tags: list[Point] = []
    for place, leaf in enumerate(leaves):
        part = large.wide / len(leaves)
        points = large.drawn(leaf.points, large.rectangle(part * place, part * (place + 1)))
        view.area("panel", points)
        tags.insert(place, ((points[0][0] + points[2][0]) / 2, large.high * 0.78))
        tags += _tapers(view, leaf, points, large.times)
    view.area("clearance", large.bases)
    _sizes(view, opening, outline, scale)
    # Last: the other leaf's edge and a line of size run where a corner's balloon stands.
    for number, at in enumerate(tags):
        view.tag(at, str(number + 1))
    short = f"{'gaps' if large.is_true else 'errors'} × {large.times}" if large.times > 1 else words
    across = tags[0][0]
    _inner_sizes(view, opening, across, large.high, scale)
    view.text((across, large.high * 0.92), short)
    return view


def _tapers(view: Drawing, leaf: "Leaf", points: "list[Point]", times: int) -> "list[Point]":
    """Draw what comes off a leaf; return the corners where it does, in the order of its marks."""
    found = []
    away = 1.0 if leaf.bay.hinge == "left" else -1.0
    ways = {TOP: (0.0, -1.0), FLOOR: (0.0, 1.0), STRIKE: (away, 0.0)}
    for taper in leaf.tapers:
        x, y = points[taper.corner]
        way = ways[taper.edge]
        corner = x + way[0] * times * taper.off, y + way[1] * times * taper.off
        view.area("waste", [points[taper.other], (x, y), corner])
        found.append(corner)
    return found


def _sizes(view: Drawing, opening: "Opening", points: "list[Point]", scale: "Scale") -> None:
    left_top, right_top, right_low, left_low = points
    wide, high = opening.widths, opening.heights
    view.dimension(left_top, right_top, scale.length(wide[0]))
    view.dimension(right_low, left_low, scale.length(wide[-1]))
    view.dimension(left_low, left_top, scale.length(high[0]))
    view.dimension(right_top, right_low, scale.length(high[-1]))


def _inner_sizes(
    view: Drawing, opening: "Opening", across: float, high: float, scale: "Scale"
) -> None:
    """Write down diagonals and middle sizes: their lines would cross each other and the words."""
    lines = []
    first, second = opening.diagonals
    if first is not None and second is not None:
        lines = ["A " + scale.length(first), "B " + scale.length(second)]
    sizes = ((opening.widths, "wide "), (opening.heights, "high "))
    lines += [way + scale.length(read[1]) for read, way in sizes if len(read) == 3]
    for number, words in enumerate(lines):
        view.text((across, high * LINES[number]), words)
