"""Crown at a corner: saw settings flat on the table and nested against the fence."""

from .. import degrees
from ..cautions import SAW, SHARPEST, TEST_CUT, warn_if_sharp
from ..geometry.laid_on_saw import flat, nested
from ..lengths import show_angle
from ..tool import (
    Angle,
    Answer,
    Choice,
    End,
    Given,
    Length,
    Refusal,
    Scale,
    Tool,
    miter,
    square,
)
from .crown_drawing import on_the_table, section

MOST_TILT = 45.0
"""How far many saws tilt, degrees: common practice, no source."""


class Crown:
    """The crown at its corner: settings in degrees, sizes in inches or None without a width."""

    def __init__(self, given: Given) -> None:
        self.turn = given.text("turn")
        self.spring = given.number("spring")
        self.corner = given.number("corner")
        half = self.corner / 2
        self.miter = degrees.atan(degrees.sin(self.spring) / degrees.tan(half))
        self.bevel = degrees.asin(degrees.cos(self.spring) * degrees.cos(half))
        self.nested = 90 - half
        self.width = given.maybe("width")
        self.drop = (self.width or 0.0) * degrees.cos(self.spring)
        self.projection = (self.width or 0.0) * degrees.sin(self.spring)
        self.edges = self.projection / degrees.tan(half)
        self.tilt = given.text("tilt")


def work(given: Given, scale: Scale) -> Answer:
    """Return the settings, the four ways of laying the crown, and the pieces where asked."""
    _refuse(given)
    crown = Crown(given)
    answer = Answer(scale)
    _figures(answer, crown)
    _piece(answer, crown, given, "left", "wall_a")
    _piece(answer, crown, given, "right", "wall_b")
    _tables(answer, crown)
    answer.draw(section(crown.spring, crown.width, scale))
    for side in ("left", "right"):
        cut = flat(crown.turn, side, crown.tilt)
        answer.draw(on_the_table(side, cut, crown.miter, crown.bevel, crown.width))
    _notes(answer, crown)
    warn_if_sharp(answer, crown.miter, crown.bevel, crown.nested)
    return answer


def _refuse(given: Given) -> None:
    if given.text("ceiling") == "sloped":
        raise Refusal(
            "ceiling",
            "Under a sloped ceiling the two crowns lean differently, and one spring with one "
            "setting can't fit both. Use this where the ceiling is level along both walls; a "
            "slope needs a level return piece, fitted on the spot.",
        )
    corner = given.number("corner")
    if corner == 180:
        raise Refusal("corner", "180.0° is a straight wall: there is no corner. Cut square.")
    if corner > 180:
        raise Refusal(
            "corner",
            f"{show_angle(corner)} is measured the long way round: enter what is left of 360.0°, "
            f"{show_angle(360 - corner)}, and say inside or outside.",
        )
    for wall in ("wall_a", "wall_b"):
        if given.maybe(wall) is not None and given.maybe("width") is None:
            raise Refusal(
                "width",
                "The face width is needed too: without it nobody can tell how far the top edge "
                "differs from the wall's length.",
            )


def _figures(answer: Answer, crown: Crown) -> None:
    answer.angle("flat_miter", crown.miter, label="Swing, flat on the table", lead=True)
    answer.angle("flat_bevel", crown.bevel, label="Tilt, flat on the table", lead=True)
    answer.angle("nested_miter", crown.nested, label="Swing, nested at the fence")
    if crown.width is None:
        return
    answer.length("drop", crown.drop, label="Drop, down the wall")
    answer.length("projection", crown.projection, label="Projection, out on the ceiling")
    longer = "shorter" if crown.turn == "inside" else "longer"
    answer.length("edges", crown.edges, label=f"Top edge {longer} than bottom, each end")


def _piece(answer: Answer, crown: Crown, given: Given, side: str, field: str) -> None:
    wall = given.maybe(field)
    if wall is None:
        return
    inside = crown.turn == "inside"
    top = wall - crown.edges if inside else wall + crown.edges
    if top <= 0:
        raise Refusal(
            field,
            f"A wall of {answer.scale.length(wall)} is used up by the miter: the top edge loses "
            f"{answer.scale.length(crown.edges)}. Use narrower crown, or measure again.",
        )
    tag = "1" if side == "left" else "2"
    answer.piece(
        tag,
        side[0].upper() + side[1:] + " of the joint",
        max(wall, top),
        _ends(crown, side),
        short_point=min(wall, top),
        width=crown.width,
    )


def _ends(crown: Crown, side: str) -> "tuple[End, End]":
    joint = miter(crown.miter, crown.turn + " corner, flat", crown.bevel)
    far = square("far end")
    return (far, joint) if side == "left" else (joint, far)


def _tables(answer: Answer, crown: Crown) -> None:
    ways = [(turn, side) for turn in ("inside", "outside") for side in ("left", "right")]
    cuts = [(turn, side, flat(turn, side, crown.tilt)) for turn, side in ways]
    columns = ["Corner", "Piece", "At the fence", "Swing", "Keep"]
    answer.table(
        f"Flat, face up, blade tilted {crown.tilt}",
        columns,
        [[turn, side, cut.edge + " edge", cut.handle, cut.keep] for turn, side, cut in cuts],
    )
    cuts = [(turn, side, nested(turn, side)) for turn, side in ways]
    answer.table(
        "Nested, upside down, no tilt",
        columns,
        [[turn, side, cut.edge + " edge", cut.handle, cut.keep] for turn, side, cut in cuts],
    )


def _notes(answer: Answer, crown: Crown) -> None:
    answer.note(
        "Left and right of the joint are as you face the corner. Swing says where the saw's "
        "handle goes, keep which side of the blade is yours."
    )
    answer.note(
        "Nested: upside down, the ceiling edge on the table and the wall edge against the fence, "
        "held at its spring by a stop."
    )
    if crown.miter > SHARPEST or crown.bevel > MOST_TILT:
        answer.note(
            f"This corner is sharp: {show_angle(crown.miter)} of swing and "
            f"{show_angle(crown.bevel)} of tilt are more than many saws reach. Nested needs "
            f"{show_angle(crown.nested)} of swing and no tilt."
        )
    if crown.turn == "inside":
        answer.note(
            "Inside corners are coped where they must stay shut: one piece square to the wall, "
            "the other cut as here and then sawn along the line of its face, slightly undercut."
        )
        answer.note("Measure walls along the bottom edge: that is the long point here.")
    else:
        answer.note("Measure walls along the bottom edge: that is the short point here.")


TOOL = Tool(
    slug="crown-corner",
    place="saw",
    title="Crown at a corner",
    question="Crown at this corner: what is set on the saw, flat or nested?",
    finds=("crown molding", "cove", "cornice", "spring angle", "compound", "ceiling"),
    inputs=[
        Angle(
            "corner",
            "Corner",
            least=1,
            below=360,
            help="Between the two walls: 90 for a square corner, inside or outside.",
        ),
        Choice(
            "turn",
            "Turns",
            [("inside", "inside corner"), ("outside", "outside corner")],
            default="inside",
        ),
        Angle(
            "spring",
            "Spring",
            default=38,
            below=90,
            help="Between the crown's back and the wall, not the ceiling.",
        ),
        Length("width", "Face width", optional=True, help="Measured flat across the crown."),
        Choice(
            "tilt",
            "Blade tilts",
            [("left", "to the left"), ("right", "to the right")],
            default="left",
            help="Where the top of the blade leans.",
        ),
        Choice(
            "ceiling",
            "Ceiling",
            [("level", "level"), ("sloped", "sloped")],
            default="level",
        ),
        Length(
            "wall_a",
            "Left wall",
            optional=True,
            help="From this corner to the piece's far end, along the wall.",
        ),
        Length(
            "wall_b",
            "Right wall",
            optional=True,
            help="From this corner to the piece's far end, along the wall.",
        ),
    ],
    work=work,
    example={"corner": "90", "width": "4 5/8", "wall_a": "48", "wall_b": "60"},
    cautions=[SAW, TEST_CUT],
    sources=[
        "Plane geometry: the joint lies in the upright plane that halves the corner. Swing is the "
        "arc tangent of sin(spring) / tan(corner / 2), tilt the arc sine of cos(spring) times "
        "cos(corner / 2); worked trigonometry in print gives 14.30638 and 17.55124 for a spring "
        "of 38 in a corner of 135.",
        "Which edge goes to the fence: manuals of compound miter saws, crown flat on the table.",
        "38 is the predominant spring: notes on the geometry of crown, seen in print.",
        "Coped inside and mitered outside corners: NAVEDTRA 14044, Builder, interior trim.",
        "Reach of saws: common practice, no source.",
    ],
)
