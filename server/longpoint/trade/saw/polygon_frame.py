"""A frame of equal sides, three to twenty-four: what is set on the saw, how long is each piece?"""

from .. import degrees
from ..cautions import SAW, TEST_CUT, warn_if_sharp
from ..frames.directions import FRAME_ENDS
from ..lengths import show_angle
from ..tool import Answer, Choice, Count, Drawing, Given, Length, Refusal, Scale, Tool, miter

TYPE_CHECKING = False
if TYPE_CHECKING:
    Point = tuple[float, float]

SAW_ERROR = 0.1  # Degrees: what the smallest step of a good scale hides.


class Ring:
    """A frame of `sides` equal pieces: settings in degrees, sizes in inches.

    `long` and `short` are a piece's points, so the sides of the outer and the inner outline.
    """

    def __init__(self, given: Given) -> None:
        self.sides = given.count("sides")
        self.width = given.number("trim_width")
        self.saw = 180 / self.sides
        side = self._side(given.number("size"), given.text("size_is"))
        both_ends = 2 * self.width * degrees.tan(self.saw)
        outside = given.text("edge") == "outside"
        self.long = side if outside else side + both_ends
        self.short = side - both_ends if outside else side

    def _side(self, size: float, size_is: str) -> float:
        if size_is == "side":
            return size
        return size * (degrees.tan(self.saw) if size_is == "flats" else degrees.sin(self.saw))

    def flats(self, side: float) -> float:
        """Return the diameter of the circle that fits inside an outline of such sides."""
        return side / degrees.tan(self.saw)

    def corners(self, side: float) -> float:
        """Return the diameter of the circle through the corners of such an outline."""
        return side / degrees.sin(self.saw)

    def outline(self, side: float) -> "list[Point]":
        """Return the outline's corners, clockwise from the left end of the level top side."""
        radius = self.corners(side) / 2
        turns = [270 - self.saw + 2 * self.saw * at for at in range(self.sides)]
        return [(radius * degrees.cos(turn), radius * degrees.sin(turn)) for turn in turns]


def work(given: Given, scale: Scale) -> Answer:
    """Return the setting, the points of each piece and the sizes across the frame."""
    ring = Ring(given)
    _refuse_swallowed(ring, scale)
    answer = Answer(scale)
    _figures(answer, ring)
    end = miter(ring.saw)
    answer.piece(
        "1",
        "Side",
        ring.long,
        (end, end),
        short_point=ring.short,
        width=ring.width,
        count=ring.sides,
    )
    answer.draw(_drawing(ring, scale))
    _notes(answer, ring)
    warn_if_sharp(answer, ring.saw)
    return answer


def _refuse_swallowed(ring: Ring, scale: Scale) -> None:
    if ring.short > 0:
        return
    raise Refusal(
        "trim_width",
        f"Trim {scale.length(ring.width)} wide leaves no opening: {ring.sides} sides of "
        f"{scale.length(ring.long)} meet in the middle. Use trim narrower than "
        f"{scale.length(ring.flats(ring.long) / 2)}.",
    )


def _figures(answer: Answer, ring: Ring) -> None:
    answer.angle("saw", ring.saw, label="Saw, both ends", lead=True)
    answer.length("long", ring.long, label="Long point to long point", lead=True)
    answer.length("short", ring.short, label="Short point to short point")
    answer.angle("corner", 180 - 2 * ring.saw, label="Corner of the frame")
    _across(answer, ring, "outside", ring.long)
    _across(answer, ring, "inside", ring.short)
    answer.length("run", ring.sides * ring.long, label="All pieces, long points end to end")


def _across(answer: Answer, ring: Ring, edge: str, side: float) -> None:
    """Add the sizes across one outline; with an odd number of sides they are circles."""
    where = ", outer edge" if edge == "outside" else ", inner edge"
    odd = ring.sides % 2 == 1
    flats, corners = ring.flats(side), ring.corners(side)
    answer.length(
        "flats_" + edge, flats, label=("Circle within" if odd else "Across flats") + where
    )
    answer.length(
        "corners_" + edge, corners, label=("Circle around" if odd else "Across corners") + where
    )
    if odd:
        answer.length(
            "flat_to_corner_" + edge, (flats + corners) / 2, label="Flat to corner" + where
        )


def _drawing(ring: Ring, scale: Scale) -> Drawing:
    view = Drawing(
        "The frame from the front",
        f"{ring.sides} pieces {scale.length(ring.long)} long, each end mitered at "
        f"{show_angle(ring.saw)}.",
    )
    outer, inner = ring.outline(ring.long), ring.outline(ring.short)
    for at in range(ring.sides):
        after = (at + 1) % ring.sides
        view.area("stock", [outer[at], outer[after], inner[after], inner[at]])
    view.tag((0.0, (outer[0][1] + inner[0][1]) / 2), "1")
    view.dimension(outer[0], outer[1], scale.length(ring.long))
    if ring.sides < 10:
        view.dimension(inner[0], inner[1], scale.length(ring.short), -1)
    if ring.sides % 2 == 0:
        half = ring.flats(ring.long) / 2
        right = max([point[0] for point in outer])
        view.dimension((right, -half), (right, half), scale.length(2 * half))
    return view


def _notes(answer: Answer, ring: Ring) -> None:
    answer.note(FRAME_ENDS)
    answer.note("Cut all against one stop, so that every piece is alike.")
    error = 2 * SAW_ERROR * ring.sides
    joint = ring.width / degrees.cos(ring.saw)
    opens = answer.scale.finer().length(joint * degrees.tan(error))
    answer.note(
        f"Errors add up round the ring: a setting {show_angle(SAW_ERROR)} off is "
        f"{show_angle(error)} at the last joint and opens it by {opens}."
    )
    if ring.sides % 2 == 0:
        answer.note(
            "Glue two halves first, lay them together dry, and plane or saw the open faces true "
            "before the last two joints are glued."
        )
    else:
        answer.note("Lay the whole ring together dry with a band around it before any glue.")
        answer.note(
            "An odd number of sides has no two flats or corners opposite: across flats and "
            "across corners mean the circles; a tape reads from a flat to the corner facing it."
        )


TOOL = Tool(
    slug="polygon-frame",
    place="saw",
    title="Many-sided frame",
    question="A frame of equal sides: what is set on the saw, how long is each piece?",
    finds=("octagon", "hexagon", "segments", "ring"),
    inputs=[
        Count("sides", "Sides", least=3, most=24),
        Length("size", "Size"),
        Choice(
            "size_is",
            "Measured",
            [("side", "along a side"), ("flats", "across flats"), ("corners", "across corners")],
            default="side",
            help="Across flats is the circle that fits in, across corners the one around.",
        ),
        Choice(
            "edge",
            "On the edge",
            [("outside", "outer edge"), ("inside", "inner edge")],
            default="outside",
        ),
        Length("trim_width", "Trim width"),
    ],
    work=work,
    example={"sides": "8", "size": "30", "size_is": "flats", "trim_width": "3 1/2"},
    cautions=[SAW, TEST_CUT],
    sources=[
        "Plane geometry: a regular polygon of n sides is cut at 180 / n; its side is its width "
        "across flats times the tangent of that, across corners times the sine.",
        "Two halves first, a dry fit, one stop for all: common practice, no source.",
    ],
)
