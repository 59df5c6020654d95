"""Which hinge for this door: its height, weight class and width, by the published tables."""

from collections import namedtuple

from ...door.hinge_count import usual_count
from ...tables.hinges import HEAVY_DOOR_POUNDS, SIZES, size_for, stock_width
from ...tool import Answer

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...lengths import Scale

HEAVY_FROM = 4.5

Hung = namedtuple("Hung", ("width", "height", "thickness", "pounds", "hinge", "count"))
"""A leaf's width, height, thickness and weight, its hinges' height and number; None: not known."""

ADVICE_SOURCES = [
    "Hinge height by thickness and width of the door: table of the Door and Hardware Institute as "
    "hinge sellers reprint it. Heavy weight over 150 lb: a hinge maker's cut sheets.",
    "Hinge width = 2 (thickness - backset) + projection, then the next width sold: the same, and "
    "Building Trades Pocketbook, 1899, with a backset of 1/4.",
]


def add_advice(answer: Answer, hung: Hung, hinge_width: "float | None", throw: float) -> None:
    """Add the advised height, weight and width, the table, and what to say about them.

    `hinge_width` is what of the thickness a hinge leaf covers.
    """
    if hung.thickness is None or hinge_width is None:
        answer.note("Which hinge: that goes by the door's thickness and the leaf's width.")
        return
    row = None
    if hung.width is None:
        answer.note("The table of hinge heights goes by the leaf's width as well.")
    else:
        row = size_for(hung.thickness, hung.width)
        _height(answer, hung, row)
    if hung.count is not None and hung.count < usual_count(hung.height):
        answer.note(
            f"The usual number for a leaf {answer.scale.length(hung.height)} high is "
            f"{usual_count(hung.height)}."
        )
    _width(answer, hinge_width, throw)
    _table(answer, answer.scale, row)


def _height(answer: Answer, hung: Hung, row: "int | None") -> None:
    scale = answer.scale
    if row is None:
        answer.note(
            f"The table of hinge sizes ends before a leaf {scale.length(hung.width)} wide and "
            f"{scale.length(hung.thickness)} thick: ask the hinge's maker."
        )
        return
    answer.length("advised_height", SIZES[row].height)
    answer.words("weight_class", _weight_class(answer, hung.pounds, row))
    if not _is_listed(SIZES[row].thickness, hung.thickness):
        answer.note(
            "The table has doors 1 3/8, 1 3/4 and 2 to 2 1/2 thick: for yours the next "
            "heavier line is used."
        )
    if hung.hinge is not None and abs(SIZES[row].height - hung.hinge) > 1 / 32:
        answer.note(
            f"The table gives this door hinges {scale.length(SIZES[row].height)} high; yours "
            f"are {scale.length(hung.hinge)}."
        )


def _is_listed(line: float, thickness: float) -> bool:
    """Tell whether a line of the table is made for a thickness, not just heavy enough."""
    return abs(line - thickness) < 1 / 32 or (line == 2.5 and thickness > 2 - 1 / 32)


def _weight_class(answer: Answer, pounds: "float | None", row: int) -> str:
    """Return the weight class; a leaf's own weight can only raise it."""
    if pounds is None or pounds <= HEAVY_DOOR_POUNDS:
        return str(SIZES[row].weight)
    if SIZES[row].height < HEAVY_FROM:
        answer.note(
            "Heavy-weight hinges are listed from 4 1/2 up: take those, or one standard hinge more."
        )
    return "heavy"


def _width(answer: Answer, hinge_width: float, throw: float) -> None:
    """Add how wide the open hinge must be for the leaf to lie back over the trim."""
    scale = answer.scale
    wide = 2 * hinge_width + throw
    answer.length("hinge_width", wide)
    sold = stock_width(wide)
    if sold is None:
        answer.note(
            f"No butt is sold {scale.length(wide)} wide: set the hinge leaf deeper from the far "
            "face, or let the leaf stop short of 180."
        )
        return
    answer.length("stock_width", sold)
    answer.length("pin_out", sold / 2 - hinge_width)
    answer.note(
        f"Open flat {scale.length(sold)} wide, the hinge lets the leaf lie back over trim "
        f"{scale.length(sold - 2 * hinge_width)} proud of its face."
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
    answer.table("Hinges by door", ["Door thick", "Leaf wide", "Hinge high", "Weight"], rows, row)
