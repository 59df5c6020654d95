"""What is asked about a part and the stock it may come from."""

from ...inputs import Choice, Input, Text
from ...lumber.common import COMMON
from ...measured import Count, Length
from ...rows import Rows
from ..feet import Feet
from ..yard_list import yard_input

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

INPUTS: "list[Input]" = [
    Length("thickness", "Thickness", least=1 / 16, most=60, help="Of the finished part."),
    Length("width", "Width", least=1 / 16, most=240),
    Length("length", "Length", least=1 / 16, most=480),
    Count("count", "How many", default=1),
    Choice(
        "family",
        "Kind of stock",
        [("softwood", "softwood"), ("hardwood", "hardwood")],
        default="softwood",
    ),
    Choice(
        "condition",
        "Sold as",
        [
            ("dry", "dry", ("family", "softwood")),
            ("green", "green", ("family", "softwood")),
            ("rough", "rough", ("family", "hardwood")),
            ("s1s", "surfaced one side", ("family", "hardwood")),
            ("s2s", "surfaced two sides", ("family", "hardwood")),
        ],
    ),
    Choice(
        "sold_in",
        "Lengths sold",
        [("set", "set lengths"), ("random", "random lengths")],
        help="Set: whole sticks are bought. Random: as many feet as the parts take.",
    ),
    Rows(
        "sold_lengths",
        "The yard sells",
        [Feet("length", "Length", unit="ft", above=0, most=60, help="In feet.")],
        row="length",
        most=12,
        only_when=("sold_in", "set"),
    ),
    Text(
        "use",
        "Use this stock",
        optional=True,
        default_text="what does best",
        offers=tuple([(label, ("family", family)) for family, label in COMMON]),
        listed=("yard", "label", "family"),
        help="A label, from your list or the standard's.",
    ),
    Length(
        "face_allowance",
        "Off each face",
        default="3/32",
        least=0,
        most=6,
        help="At least this to mill it flat; 0 to use it as thick as it comes.",
    ),
    Length(
        "edge_allowance",
        "Off each edge",
        default="1/8",
        least=0,
        most=6,
        help="At least this to joint and rip it straight; 0 to use it as wide as it comes.",
    ),
    Length(
        "end_allowance",
        "Off each end",
        default=1,
        least=0,
        most=48,
        help="To square it up and trim the snipe.",
    ),
    Length("kerf", "Kerf", default="1/8", least=0, most=1, quantity="kerf"),
    Length(
        "board_width",
        "Board width",
        default=6,
        most=120,
        help="What to count on where boards come in random widths.",
        quantity="board width",
    ),
    yard_input(),
]


def of_any_length(raw: "dict[str, Any]") -> "dict[str, Any]":
    """Say what the first version took for granted: the yard sells any length."""
    kept = dict(raw)
    kept["sold_in"] = "random"
    return kept
