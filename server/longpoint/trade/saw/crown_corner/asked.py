"""What crown is asked for: the crown itself, one corner, or a run of walls."""

from ...runs.ends import STEEPEST
from ...tool import Angle, Choice, Flag, Input, Length, Rows

CORNER, RUN = ("task", "corner"), ("task", "run")

WALL: "list[Input]" = [
    Length("length", "Length", help="Corner to corner along the wall."),
    Choice(
        "turn",
        "At its right end",
        [("inside", "inside corner"), ("outside", "outside corner"), ("open", "open end")],
        default="inside",
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

_CROWN: "list[Input]" = [
    Angle(
        "spring",
        "Spring angle",
        default=38,
        below=90,
        help="Between the crown's back and the wall, not the ceiling.",
        only_when=("crown_by", "face", "drop"),
    ),
    Length(
        "width",
        "Face width",
        optional=True,
        default_text="not known",
        help="Measured flat across the crown.",
        only_when=("crown_by", "face"),
    ),
    Length("drop", "Drop", help="Down the wall.", only_when=("crown_by", "drop", "sizes")),
    Length(
        "projection",
        "Projection",
        help="Out on the ceiling.",
        only_when=("crown_by", "sizes"),
    ),
]

_RUN: "list[Input]" = [
    Rows(
        "walls",
        "Walls, clockwise seen from above",
        WALL,
        row="wall",
        help="Facing each from the room, its right end meets the next one's left end.",
        only_when=RUN,
    ),
    Choice(
        "inside_joint",
        "Inside corners",
        [("cope", "coped"), ("miter", "mitered")],
        default="cope",
        only_when=RUN,
    ),
    Flag("closed", "Closed run", help="The last wall meets the first.", only_when=RUN),
    Choice(
        "first_end",
        "First left end",
        [("wall", "at a wall"), ("open", "open end")],
        default="wall",
        only_when=("closed", False),
    ),
    Length(
        "stick",
        "Longest stick",
        optional=True,
        default_text="any length",
        help="Usable length of the stock: a longer wall gets scarf joints.",
        only_when=RUN,
    ),
    Angle(
        "scarf",
        "Scarf angle",
        default=45,
        most=STEEPEST,
        help="Off a square cut, nested at the fence.",
        only_when=RUN,
    ),
    Length("kerf", "Kerf", default="1/8", least=0, quantity="kerf", only_when=RUN),
]

_LATER: "list[Input]" = [
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
        only_when=CORNER,
    ),
    Length(
        "wall_b",
        "Right wall",
        optional=True,
        help="From this corner to the piece's far end, along the wall.",
        only_when=CORNER,
    ),
]

INPUTS: "list[Input]" = (
    [
        Choice(
            "task",
            "Crown for",
            [("corner", "one corner"), ("run", "a run of walls")],
            default="corner",
        ),
        Angle(
            "corner",
            "Corner",
            least=1,
            below=360,
            help="Between the two walls: 90 for a square corner, inside or outside.",
            only_when=CORNER,
        ),
        Choice(
            "turn",
            "Turns",
            [("inside", "inside corner"), ("outside", "outside corner")],
            default="inside",
            only_when=CORNER,
        ),
        Choice(
            "crown_by",
            "Crown known by",
            [
                ("face", "spring angle and face"),
                ("drop", "spring angle and drop"),
                ("sizes", "drop and projection"),
            ],
            default="face",
        ),
    ]
    + _CROWN
    + _RUN
    + [
        Choice(
            "tilt",
            "Blade bevels",
            [("left", "to the left"), ("right", "to the right")],
            default="left",
            help="Where the top of the blade leans.",
        )
    ]
    + _LATER
)
