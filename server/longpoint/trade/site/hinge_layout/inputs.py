"""What a hinge layout asks: the leaf, its hinges, their mortises, and four options."""

from ...door import gaps
from ...tool import Choice, Count, Flag, Length, Number, Rows
from .screws import SCREW_INPUTS
from .template import TEMPLATE_INPUTS

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...tool import Input

_BUTT = ("kind", "butt")
_CUP = ("kind", "cup")

LEAF_INPUTS: "list[Input]" = [
    Choice(
        "kind",
        "Kind",
        [("butt", "butt hinges"), ("cup", "cup hinges")],
        default="butt",
        help="Cup hinges hang cupboard doors.",
    ),
    gaps.leaf_height("door_height", optional=True, default_text="for the lines"),
    Length(
        "hinge_height",
        "Hinge height",
        optional=True,
        default_text="for the lines",
        help="Length of a hinge leaf along the door.",
        quantity="hinge height",
        only_when=_BUTT,
    ),
    gaps.door_thickness(default=None, optional=True, default_text="for the width"),
]

BUTT_INPUTS: "list[Input]" = [
    Length(
        "leaf_thickness",
        "Hinge leaf thickness",
        optional=True,
        default_text="for the depth",
        help="Of one hinge leaf alone, not of the closed pair.",
        quantity="hinge leaf thickness",
        only_when=_BUTT,
    ),
    gaps.hinge_gap(
        "gap",
        optional=True,
        above=0,
        least=None,
        default_text="for the depth",
        help="Between leaf and jamb on the hinge side.",
        only_when=_BUTT,
    ),
    Choice(
        "listed_leaf",
        "Hinge leaf, not measured",
        [
            ("none", "wait for it"),
            ("light", "listed, light"),
            ("standard", "listed, standard"),
            ("heavy", "listed, heavy"),
        ],
        default="none",
        help="By hinge height and weight. A list is a start, your own tape or caliper decides.",
        only_when=_BUTT,
    ),
    Length(
        "closed_gap",
        "Gap, hinge closed",
        default="1/16",
        least=0,
        help="Between the hinge leaves when the hinge itself is closed.",
        only_when=_BUTT,
    ),
    Length(
        "backset",
        "Hinge backset",
        default="1/4",
        least=0,
        help="From the edge of the hinge leaf to the far face of the door.",
        only_when=_BUTT,
    ),
]

CUP_INPUTS: "list[Input]" = [
    Length(
        "cup_bore",
        "Cup bore",
        default="35 mm",
        default_text="35 mm",
        help="Diameter of the cup, by the hinge's sheet.",
        only_when=_CUP,
    ),
    Length(
        "cup_distance",
        "Cup distance",
        optional=True,
        default_text="by the sheet",
        help="From the leaf's hinge edge to the rim of the bore.",
        only_when=_CUP,
    ),
    Length(
        "cup_depth",
        "Cup depth",
        optional=True,
        default_text="by the sheet",
        help="Of the bore.",
        only_when=_CUP,
    ),
    Length(
        "end_offset",
        "Center from each end",
        default="3 1/2",
        help="Of the outer cups, from the leaf's top and bottom.",
        only_when=_CUP,
    ),
    Length(
        "leaf_over",
        "Leaf above the case",
        optional=True,
        least=-12,
        most=12,
        default_text="not marked",
        help="How far its top stands above the case side's: + above, - below.",
        only_when=_CUP,
    ),
    Length(
        "plate_setback",
        "Plate line",
        optional=True,
        default_text="by the sheet",
        help="From the case's front edge to the mounting plate's holes.",
        only_when=_CUP,
    ),
]

PLACE_INPUTS: "list[Input]" = [
    Count(
        "hinge_count",
        "Hinges",
        least=2,
        most=10,
        optional=True,
        default_text="by height",
        quantity="hinge count",
        was=("hinges",),
    ),
    Choice(
        "measured_on",
        "Offsets from",
        [("frame", "head and floor"), ("door", "the leaf's top and bottom")],
        default="frame",
        only_when=_BUTT,
    ),
    Length(
        "top_offset",
        "Top offset",
        default=5,
        least=0,
        help="Down to the top line of the top hinge.",
        only_when=_BUTT,
    ),
    Length(
        "bottom_offset",
        "Bottom offset",
        default=10,
        least=0,
        help="Up to the bottom line of the bottom hinge.",
        only_when=_BUTT,
    ),
    gaps.head_gap(only_when=_BUTT),
    gaps.floor_gap(only_when=("measured_on", "frame")),
]

ADVICE_INPUTS: "list[Input]" = [
    Flag(
        "choose",
        "Which hinge?",
        help="Height, weight and width by the size of the door.",
        only_when=_BUTT,
    ),
    gaps.leaf_width(
        "door_width",
        optional=True,
        default_text="for the height",
        only_when=("choose", True),
    ),
    Number(
        "leaf_weight",
        "Leaf weight",
        unit="lb",
        optional=True,
        above=0,
        default_text="not known",
        quantity="leaf weight",
        was=("weight",),
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

MATCH_INPUTS: "list[Input]" = [
    Flag(
        "match",
        "Match old hinges",
        help="Carry the lines of an old jamb or door over.",
        only_when=_BUTT,
    ),
    Choice(
        "read_off",
        "Read off",
        [("jamb", "the jamb, from its head"), ("door", "the old leaf, from its top")],
        default="jamb",
        only_when=("match", True),
    ),
    Rows(
        "existing",
        "Old hinges",
        [Length("top_line", "Top line", least=0, help="Down to the top of the hinge leaf.")],
        row="hinge",
        least=0,
        most=10,
        only_when=("match", True),
    ),
    Length(
        "old_head_gap",
        "Old gap at the head",
        optional=True,
        least=0,
        default_text="as the new one",
        help="Of the old leaf.",
        only_when=("read_off", "door"),
    ),
]

INPUTS = (
    LEAF_INPUTS
    + BUTT_INPUTS
    + CUP_INPUTS
    + PLACE_INPUTS
    + ADVICE_INPUTS
    + SCREW_INPUTS
    + TEMPLATE_INPUTS
    + MATCH_INPUTS
)
