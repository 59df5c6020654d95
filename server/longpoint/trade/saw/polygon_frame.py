"""A frame of equal sides, three to twenty-four: what is set on the saw, how long is each piece?"""

from .. import degrees
from ..cautions import SAW, TEST_CUT, warn_if_sharp
from ..frames.directions import FRAME_ENDS
from ..frames.rabbet import glass_outset, rabbet_inputs
from ..lengths import brief_angle, show_angle
from ..tool import (
    Answer,
    Choice,
    Count,
    Drawing,
    Given,
    Gives,
    Length,
    Refusal,
    Scale,
    Tool,
    miter,
)

TYPE_CHECKING = False
if TYPE_CHECKING:
    Point = tuple[float, float]

SAW_ERROR = 0.1  # Degrees: what the smallest step of a good scale hides.


class Ring:
    """A frame of `sides` equal pieces: settings in degrees, sizes in inches.

    Parameters
    ----------
    sides : int
    width : float
        Of the trim.
    size : float
        Of the outline that `edge` (outside or inside) names.
    size_is : str
        What `size` is: side, flats (the circle that fits in) or corners (the one around).

    `long` and `short` are a piece's points, so the sides of the outer and the inner outline.
    """

    def __init__(self, sides: int, width: float, size: float, size_is: str, edge: str) -> None:
        self.sides = sides
        self.width = width
        self.saw = 180 / sides
        side = self._side(size, size_is)
        both_ends = self.grown(width)
        outside = edge == "outside"
        self.long = side if outside else side + both_ends
        self.short = side - both_ends if outside else side

    def _side(self, size: float, size_is: str) -> float:
        if size_is == "side":
            return size
        return size * (degrees.tan(self.saw) if size_is == "flats" else degrees.sin(self.saw))

    def grown(self, outwards: float) -> float:
        """Return by how much a side is longer once the outline has moved outwards."""
        return 2 * outwards * degrees.tan(self.saw)

    @property
    def even(self) -> bool:
        """Tell whether flats and corners lie opposite each other."""
        return self.sides % 2 == 0

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
    size, edge = given.number("size"), given.text("edge")
    size_is = given.text("size_is")
    ring = Ring(given.count("sides"), given.number("trim_width"), size, size_is, edge)
    _refuse_swallowed(ring, scale)
    glass = 0.0
    if given.flag("rabbeted"):
        rabbet, play = given.number("rabbet"), given.number("rabbet_play")
        glass = ring.short + ring.grown(glass_outset(rabbet, play, ring.width, scale))
    answer = Answer(scale)
    _verdict(answer, ring, _measured(ring, edge, size_is, scale.length(size)), glass)
    _figures(answer, ring)
    if glass:
        answer.length("glass_side", glass)
        label = "" if ring.even else "Glass or panel, circle within"
        answer.length("glass_flats", ring.flats(glass), label=label)
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


def _measured(ring: Ring, edge: str, size_is: str, size: str) -> str:
    """Return what the size given was taken for."""
    outline = "outer edge" if edge == "outside" else "inner edge"
    if size_is == "side":
        return f"{outline} {size} a side"
    if ring.even:
        return f"{outline} {size} across {size_is}"
    return f"{outline} {size}, circle {'within' if size_is == 'flats' else 'around'}"


def _verdict(answer: Answer, ring: Ring, measured: str, glass: float) -> None:
    length = answer.scale.length
    pieces = f"{ring.sides} pieces {length(ring.long)} long point"
    saw = ", saw " + brief_angle(ring.saw)
    end = "; " + measured
    if glass:
        across = length(ring.flats(glass)) + " across" if ring.even else length(glass) + " a side"
        end += "; glass " + across
    answer.verdict(
        pieces + " to long point" + saw + end,
        pieces + saw + end,
        f"{ring.sides} pieces {length(ring.long)}{saw}{end}",
        f"{ring.sides} pieces {length(ring.long)}{saw}; {measured}",
    )


def _figures(answer: Answer, ring: Ring) -> None:
    answer.length("long", ring.long, lead=True)
    answer.angle("saw", ring.saw, lead=True)
    answer.length("short", ring.short)
    answer.angle("corner", 180 - 2 * ring.saw)
    _across(answer, ring, "outside", ring.long)
    _across(answer, ring, "inside", ring.short)
    answer.length("run", ring.sides * ring.long)


def _across(answer: Answer, ring: Ring, edge: str, side: float) -> None:
    """Add the sizes across one outline; with an odd number of sides they are circles."""
    flats, corners = ring.flats(side), ring.corners(side)
    within = around = ""
    if not ring.even:
        where = ", outer edge" if edge == "outside" else ", inner edge"
        within, around = "Circle within" + where, "Circle around" + where
    answer.length("flats_" + edge, flats, label=within)
    answer.length("corners_" + edge, corners, label=around)
    if not ring.even:
        answer.length("flat_to_corner_" + edge, (flats + corners) / 2)


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
    if ring.even:
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
        f"Errors add up around the ring: a setting {show_angle(SAW_ERROR)} off is "
        f"{show_angle(error)} at the last joint and opens it by {opens}."
    )
    if ring.even:
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
    coated="girth",
    title="Many-sided frame",
    question="A frame of equal sides: what is set on the saw, how long is each piece?",
    finds=("octagon", "hexagon", "segments", "ring", "miter", "rabbet", "glass"),
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
        Length("trim_width", "Trim width", quantity="trim width"),
    ]
    + rabbet_inputs(),
    work=work,
    gives=[
        Gives("long", "length", "Long point to long point", short="Long point"),
        Gives("saw", "angle", "Saw, both ends", short="Saw"),
        Gives("short", "length", "Short point to short point", short="Short point"),
        Gives("corner", "angle", "Corner of the frame"),
        Gives("flats_outside", "length", "Across flats, outer edge"),
        Gives("corners_outside", "length", "Across corners, outer edge"),
        Gives("flat_to_corner_outside", "length", "Flat to corner, outer edge", sometimes=True),
        Gives("flats_inside", "length", "Across flats, inner edge"),
        Gives("corners_inside", "length", "Across corners, inner edge"),
        Gives("flat_to_corner_inside", "length", "Flat to corner, inner edge", sometimes=True),
        Gives("run", "length", "All pieces, long points end to end", short="All pieces"),
        Gives("glass_side", "length", "Glass or panel, along a side", sometimes=True),
        Gives("glass_flats", "length", "Glass or panel, across flats", sometimes=True),
    ],
    example={"sides": "8", "size": "30", "size_is": "flats", "trim_width": "3 1/2"},
    cautions=[SAW, TEST_CUT],
    sources=[
        "Plane geometry: a regular polygon of n sides is cut at 180 / n; its side is its width "
        "across flats times the tangent of that, across corners times the sine.",
        "Two halves first, a dry fit, one stop for all: common practice, no source.",
    ],
)
