"""Which hinge for this door: its height, weight class and width, by the published tables."""

from ..tables.hinges import HEAVY_DOOR_POUNDS, SIZES, size_for, stock_width
from ..tool import Answer, Flag, Given, Length, Number
from .hinge_places import Layout, usual_count

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..lengths import Scale
    from ..tool import Input

HEAVY_FROM = 4.5

CHOICE_INPUTS: "list[Input]" = [
    Flag("choose", "Which hinge?", help="Height, weight and width by the size of the door."),
    Length("door_width", "Door width", only_when=("choose", True)),
    Number(
        "weight",
        "Door weight",
        unit="lb",
        optional=True,
        above=0,
        default_text="not known",
        only_when=("choose", True),
    ),
    Length(
        "throw",
        "Trim projection",
        default="3/4",
        least=0,
        help="Of the trim beyond the door's face, to be cleared when open 180.",
        only_when=("choose", True),
    ),
]

CHOICE_SOURCES = [
    "Hinge height by thickness and width of the door: table of the Door and Hardware Institute as "
    "hinge sellers reprint it. Heavy weight over 150 lb: a hinge maker's cut sheets.",
    "Hinge width = 2 (thickness - backset) + projection, then the next width sold: the same, and "
    "Building Trades Pocketbook, 1899, with a backset of 1/4.",
]


def add_choice(answer: Answer, given: Given, layout: Layout) -> None:
    """Add the advised height, weight and width, the table, and what to say about them."""
    scale, width = answer.scale, given.number("door_width")
    row = size_for(layout.thickness, width)
    if row is None:
        answer.note(
            f"The table of hinge sizes ends before a door {scale.length(width)} wide and "
            f"{scale.length(layout.thickness)} thick: ask the hinge's maker."
        )
    else:
        answer.length("advised_height", SIZES[row].height, label="Hinge height, by table")
        answer.words("weight_class", _weight_class(answer, given, row), label="Weight, by table")
        if not _listed(SIZES[row].thickness, layout.thickness):
            answer.note(
                "The table has doors 1 3/8, 1 3/4 and 2 to 2 1/2 thick: for yours the next "
                "heavier line is used."
            )
        if abs(SIZES[row].height - layout.hinge) > 1 / 32:
            answer.note(
                f"The table gives this door hinges {scale.length(SIZES[row].height)} high; yours "
                f"are {scale.length(layout.hinge)}."
            )
    if layout.count < usual_count(layout.door_height):
        answer.note(
            f"The usual number for a door {scale.length(layout.door_height)} high is "
            f"{usual_count(layout.door_height)}."
        )
    _width(answer, layout, given.number("throw"))
    _table(answer, scale, row)


def _listed(line: float, thickness: float) -> bool:
    """Tell whether a line of the table is made for a thickness, not just heavy enough."""
    return abs(line - thickness) < 1 / 32 or (line == 2.5 and thickness > 2 - 1 / 32)


def _weight_class(answer: Answer, given: Given, row: int) -> str:
    """Return the weight class; a door's own weight can only raise it."""
    pounds = given.maybe("weight")
    if pounds is None or pounds <= HEAVY_DOOR_POUNDS:
        return str(SIZES[row].weight)
    if SIZES[row].height < HEAVY_FROM:
        answer.note(
            "Heavy-weight hinges are listed from 4 1/2 up: take those, or one standard hinge more."
        )
    return "heavy"


def _width(answer: Answer, layout: Layout, throw: float) -> None:
    """Add how wide the open hinge must be for the door to lie back over the trim."""
    scale = answer.scale
    wide = 2 * layout.width + throw
    answer.length("hinge_width", wide, label="Hinge width to clear the trim")
    sold = stock_width(wide)
    if sold is None:
        answer.note(
            f"No butt is sold {scale.length(wide)} wide: set the leaf deeper from the far face, "
            "or let the door stop short of 180."
        )
        return
    answer.length("stock_width", sold, label="Next width sold")
    answer.length("pin_out", sold / 2 - layout.width, label="Pin beyond the face")
    answer.note(
        f"Open flat {scale.length(sold)} wide, the hinge lets the door lie back over trim "
        f"{scale.length(sold - 2 * layout.width)} proud of its face."
    )


def _table(answer: Answer, scale: "Scale", row: "int | None") -> None:
    rows = [
        [
            "to " + scale.length(size.thickness),
            "wider" if size.width is None else "to " + scale.length(size.width),
            scale.length(size.height),
            size.weight,
        ]
        for size in SIZES
    ]
    answer.table("Hinges by door", ["Door thick", "Door wide", "Hinge high", "Weight"], rows, row)
