"""What a door set asks for and gives: its form, its figures, and forms kept by older versions."""

from ...gives import Gives
from ...inputs import Choice, Flag
from ...measured import Length
from ...rows import Rows
from ...tables.weights import PANELS, WOODS
from .. import gaps
from ..gaps import INSET, OVERLAY, PASSAGE
from .leaf import ASTRAGAL, BUTTED, RABBETED

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from ...inputs import Input

MOST_MIDS = 12
UNSAID = "unsaid"


def inputs() -> "list[Input]":
    """Return the form: the opening and its leaves, the frame, the panels, the fit, the stock."""
    found = _place_inputs()
    for some in (_frame_inputs(), _panel_inputs(), _fit_inputs(), _stock_inputs()):
        found += some
    return found


def _frame_inputs() -> "list[Input]":
    return [
        Length(
            "stile",
            "Stile width",
            help="The rails follow it where nothing else is given.",
            quantity="stile width",
        ),
        Length(
            "panel_thickness",
            "Panel thickness",
            help="As measured, where it sits in the groove: of a raised panel, its tongue.",
            quantity="panel thickness",
        ),
        Length("top_rail", "Top rail", optional=True, default_text="as the stiles"),
        Length("bottom_rail", "Bottom rail", optional=True, default_text="as the top rail"),
        Rows(
            "mid_rails",
            "Mid rails",
            [
                Length("center", "Center", help="Height of its middle above the leaf's bottom."),
                Length("width", "Width"),
            ],
            row="mid rail",
            least=0,
            most=MOST_MIDS,
        ),
    ]


def _extra(name: str, label: str, default: str, help: str) -> Length:
    return Length(name, label, default=default, least=0, most=24, help=help)


def _place_inputs() -> "list[Input]":
    """Return what is asked of the opening, the leaves in it and how they meet."""
    overlay, pair = ("kind", OVERLAY), ("leaves", "2")
    return [
        gaps.kind_of_door(),
        gaps.opening_width("Between the jambs, or clear inside the cupboard's frame."),
        gaps.opening_height("From the floor, or the cupboard's lower edge, to the head."),
        Length("overlap", "Overlap", help="Over the opening at each side.", only_when=overlay),
        gaps.leaves(),
        Choice(
            "meeting",
            "Meeting stiles",
            [(BUTTED, "square"), (RABBETED, "rabbeted"), (ASTRAGAL, "with astragal")],
            default=BUTTED,
            only_when=pair,
        ),
        Length("lap", "Lap", help="Of the rabbets.", only_when=("meeting", RABBETED)),
        Length(
            "stem",
            "Astragal's stem",
            least=0,
            help="Its thickness between the leaves; 0 for a flat one.",
            only_when=("meeting", ASTRAGAL),
        ),
    ]


def _fit_inputs() -> "list[Input]":
    """Return the gaps or overlaps, thickness and bevel, which follow the kind."""
    overlap = [
        Length(
            "overlap_" + end,
            "Overlap, " + end,
            least=0,
            optional=True,
            default_text="as at the sides",
            only_when=("kind", OVERLAY),
        )
        for end in ("top", "bottom")
    ]
    found: list[Input] = list(overlap)
    found += gaps.gaps_by_kind()
    found.append(
        gaps.door_thickness(
            "stock_thickness",
            default_by=("kind", gaps.BY_KIND["door_thickness"]),
            default_text="by the kind",
            help="Of the frame.",
        )
    )
    found.append(
        gaps.edge_bevel(
            default_by=("kind", gaps.BY_KIND["bevel"]),
            default_text="by the kind",
            only_when=("kind", INSET, PASSAGE),
            help="Of the strike edge, or of the edges that meet; 0 for square.",
        )
    )
    return found


def _panel_inputs() -> "list[Input]":
    sheet = ("panel_of", "sheet")
    return [
        Choice(
            "panel_of",
            "Panel of",
            [("solid", "solid wood"), ("sheet", "sheet goods")],
            default="solid",
        ),
        Flag("glued", "Panels glued in", only_when=sheet),
        Length("groove_depth", "Groove depth", default="3/8", quantity="groove depth"),
        Length(
            "groove_width",
            "Groove width",
            optional=True,
            default_text="as the panel",
            help="As it is really cut; the tenons are as thick.",
            quantity="groove width",
        ),
        Length(
            "tenon_length",
            "Tenon length",
            optional=True,
            default_text="1/32 less than the groove",
            quantity="tenon length",
        ),
        Length(
            "panel_play",
            "Panel play",
            least=0,
            most=6,
            help="Per side, between the panel and the groove.",
            default_by=("panel_of", {"solid": "1/8", "sheet": "1/16"}),
            default_text="by the panel",
            quantity="panel play",
        ),
    ]


def _stock_inputs() -> "list[Input]":
    woods = [(UNSAID, "not chosen")] + [(wood.value, wood.label) for wood in WOODS]
    sheets = [(value, label) for value, label, _ in PANELS if value != "glass"]
    return [
        Length(
            "board_width",
            "Board width",
            optional=True,
            default_text="any",
            help="The widest there is: parts wider than that in the rough are glued up.",
            quantity="board width",
            was=("stock_width",),
        ),
        gaps.gap("joint_loss", "Lost per edge", "1/16", "Jointing each glued edge."),
        _extra("extra_thickness", "Extra thickness", "1/8", "Of rough over finished stock."),
        _extra("extra_width", "Extra width", "1/4", "Of a part before it is ripped to size."),
        _extra("extra_length", "Extra length", "1", "Of a part before it is cut to length."),
        Choice(
            "species",
            "Wood",
            woods,
            default=UNSAID,
            help="For the leaf's weight.",
            quantity="wood",
            was=("wood",),
        ),
        Choice("sheet", "Sheet", sheets, default="plywood", only_when=("panel_of", "sheet")),
    ]


def as_a_passage_door(raw: "dict[str, Any]") -> "dict[str, Any]":
    """Return a form of version 1 with what it took for granted: a passage door, no bevel, and a
    play of 1/8 for sheets too."""
    if raw.get("kind"):
        return raw
    kept: dict[str, Any] = {"kind": PASSAGE, "bevel": 0}
    if raw.get("panel_of") == "sheet":
        kept["panel_play"] = 0.125
    kept.update({name: value for name, value in raw.items() if value not in (None, "")})
    return kept


def gives() -> "list[Gives]":
    """Return the figures of the answer."""
    found = [
        Gives("leaf_width", "length", "Leaf width", short="leaf", quantity="leaf width"),
        Gives("leaf_height", "length", "Leaf height", short="high", quantity="leaf height"),
        Gives("leaf_width_right", "length", "Right leaf, width", short="right", sometimes=True),
        Gives("rail_length", "length", "Rails, tenons included", short="rails"),
        Gives("sight_width", "length", "Rails between shoulders", short="shoulders"),
        Gives("panels", "text", "Panels, width x heights", short="panels"),
        Gives("panel_width", "length", "Panel width", quantity="panel width"),
        Gives("panel_height", "length", "Panel height", quantity="panel height", sometimes=True),
    ]
    found += [
        Gives(f"panel_height_{number}", "length", f"Panel {number}, height", sometimes=True)
        for number in range(1, MOST_MIDS + 2)
    ]
    return found + [
        Gives("tenon_length", "length", "Tenon length", short="tenon", quantity="tenon length"),
        Gives("stock_thickness", "length", "Stock thickness", quantity="stock thickness"),
        Gives("rail", "length", "Rail width", short="top rail", quantity="rail width"),
        Gives("diagonal", "length", "Diagonals, glued up square", short="diagonals"),
        Gives("bevel_off", "length", "The bevel takes off", short="bevel", sometimes=True),
        Gives("board_feet", "number", "Board feet, rough", short="rough"),
        Gives(
            "leaf_weight",
            "number",
            "Leaf weight",
            short="each leaf",
            quantity="leaf weight",
            sometimes=True,
        ),
    ]
