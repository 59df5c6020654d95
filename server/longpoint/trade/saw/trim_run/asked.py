"""What a run of trim asks for."""

from ...runs.ends import STEEPEST
from ...tool import Angle, Choice, Count, Flag, Input, Length, Rows

WALL: "list[Input]" = [
    Length(
        "length",
        "Length",
        help="Wall to wall at the line of the trim; walls go clockwise, seen from above.",
    ),
    Choice(
        "turn",
        "At its right end",
        [
            ("inside", "inside corner"),
            ("outside", "outside corner"),
            ("casing", "casing"),
            ("open", "open end"),
        ],
        default="inside",
        help="An inside corner after which no wall is listed: the piece runs through to the wall.",
    ),
    Angle(
        "corner",
        "Corner",
        default=90,
        help="The angle to the next wall, in the room at an inside corner, over the corner at an "
        "outside one: square is 90 for both.",
        only_when=("turn", "inside", "outside"),
    ),
]

OPENING: "list[Input]" = [
    Count("wall", "In wall", help="Its number in the list above."),
    Length(
        "from_left",
        "Left corner to casing",
        least=0,
        help="Along the wall to the casing's outer edge, or to the gap.",
    ),
    Length("width", "Width over the casings", help="From outer edge to outer edge, or the gap's."),
    Choice(
        "stop",
        "Trim stops at",
        [("casing", "casing"), ("open", "free ends")],
        default="casing",
    ),
]

INPUTS: "list[Input]" = [
    Rows(
        "walls",
        "Walls, clockwise seen from above",
        WALL,
        row="wall",
        help="Facing each from the room, its right end meets the next one's left end.",
    ),
    Length(
        "trim_thickness",
        "Trim thickness",
        help="From back to face.",
        quantity="trim thickness",
        was=("thickness",),
    ),
    Rows(
        "openings",
        "Doors and gaps in a wall",
        OPENING,
        row="door or gap",
        least=0,
        help="The trim stops on both sides of it; list its wall whole.",
    ),
    Choice(
        "inside_joint",
        "Inside corners",
        [("cope", "coped"), ("miter", "mitered"), ("butt", "butted")],
        default="cope",
    ),
    Flag("closed", "Closed run", help="The last wall meets the first."),
    Choice(
        "first_end",
        "First left end",
        [("wall", "at a wall"), ("casing", "at a casing"), ("open", "open end")],
        default="wall",
        only_when=("closed", False),
    ),
    Length(
        "spring",
        "Spring",
        default=0,
        least=0,
        most=1,
        help="Extra length of a coped piece that is held at both ends, to bow it into place.",
        only_when=("inside_joint", "cope"),
    ),
    Length(
        "stick",
        "Longest stick",
        optional=True,
        default_text="any length",
        help="Usable length of the stock: a longer wall gets scarf joints.",
    ),
    Length(
        "trim_width",
        "Trim width",
        optional=True,
        default_text="not said",
        help="From edge to edge: it is only written on the pieces.",
        quantity="trim width",
    ),
    Angle("scarf", "Scarf angle", default=45, most=STEEPEST, help="Off a square cut."),
]
