"""Where do the hinges go and how deep is the mortise?

A butt hinge keeps a gap between its closed leaves. What the leaves do not stand proud of door
and jamb is let in, half on each side, until the wanted gap is left.
"""

from ..cautions import FIRE_DOOR, HEAVY_DOOR, SHALLOW
from ..tool import Answer, Choice, Count, Given, Length, Scale, Tool
from .hinge_checks import add_doubts
from .hinge_choice import CHOICE_INPUTS, CHOICE_SOURCES, add_choice
from .hinge_places import MATCH_INPUTS, Layout, hinge_names
from .hinge_screws import SCREW_INPUTS, SCREW_SOURCES, add_screws
from .hinge_template import TEMPLATE_INPUTS, TEMPLATE_SOURCES, add_template
from .hinge_views import edge_view, section_view
from .mortise_outline import mortise_outline


def work(given: Given, scale: Scale) -> Answer:
    """Return mortise, marks on door and jamb, and the views."""
    layout = Layout(given, scale)
    answer = Answer(scale)
    answer.length(
        "mortise_depth", layout.depth, label="Mortise depth, each leaf", lead=True, fine=True
    )
    answer.length("packing", layout.packing, label="Packing behind each leaf", fine=True)
    answer.length("mortise_width", layout.width, label="Mortise width, from the knuckle face")
    answer.length("mortise_length", layout.hinge, label="Mortise length")
    answer.count("hinge_count", layout.count, label="Hinges")
    for start, shift in (("door top", 0.0), ("head", layout.head_gap)):
        _marks(answer, layout, start, shift)
    answer.draw(section_view(layout, scale))
    answer.draw(edge_view(layout, scale))
    if layout.depth:
        answer.draw(mortise_outline(layout, scale))
    for wanted, add in (
        ("choose", add_choice),
        ("screws", add_screws),
        ("template", add_template),
    ):
        if given.flag(wanted):
            add(answer, given, layout)
    _notes(answer, layout, scale)
    add_doubts(answer, given)
    return answer


def _marks(answer: Answer, layout: Layout, start: str, shift: float) -> None:
    for number, name in enumerate(hinge_names(layout.count)):
        tag, top = str(number + 1), layout.tops[number] + shift
        answer.mark(tag, f"{name} hinge, top line", start, top)
        answer.mark(tag, f"{name} hinge, bottom line", start, top + layout.hinge)


def _notes(answer: Answer, layout: Layout, scale: Scale) -> None:
    if layout.packing:
        answer.note(
            f"The hinge itself keeps more than the gap wanted: no mortise, and a shim "
            f"{scale.finer().length(layout.packing)} thick behind each leaf."
        )
    elif layout.depth > layout.leaf:
        answer.note(
            "The leaves lie below the wood: the gap wanted is less than the closed hinge keeps. "
            "Check that the knuckle still turns freely, or take a hinge that closes tighter."
        )
    if layout.matched:
        answer.note(
            "Number and places follow the old hinges, not the offsets; try a leaf in an old "
            "mortise, since its corners and depth may differ."
        )
    answer.note(
        "Marks on the door run from its top edge, marks on the jamb from the head; the jamb's "
        f"are {scale.length(layout.head_gap)} more, so the door hangs with its gap at the head."
    )
    answer.note(
        "Knife round the leaf itself, pare shallow and try the leaf; the mortise is open at the "
        "knuckle face. Where old hinges stay, transfer their lines instead of measuring."
    )


TOOL = Tool(
    slug="hinge-layout",
    place="site",
    title="Hinge layout",
    question="Where do the hinges go and how deep is the mortise?",
    finds=("butt hinge", "gain", "leaf", "hang a door"),
    inputs=[
        Length("door_height", "Door height"),
        Length("door_thickness", "Door thickness"),
        Length("hinge_height", "Hinge height", help="Length of the leaf along the door."),
        Length(
            "leaf_thickness", "Leaf thickness", help="Of one leaf alone, not of the closed pair."
        ),
        Length("gap", "Gap to the jamb", help="Between door and jamb on the hinge side."),
        Length(
            "closed_gap",
            "Gap, hinge closed",
            default="1/16",
            least=0,
            help="Between the leaves when the hinge itself is closed.",
        ),
        Length(
            "backset",
            "Backset",
            default="1/4",
            least=0,
            help="From the edge of the leaf to the far face of the door.",
        ),
        Count("hinges", "Hinges", least=2, most=10, optional=True, default_text="by height"),
        Choice(
            "measured_on",
            "Offsets from",
            [("frame", "head and floor"), ("door", "door top and bottom")],
            default="frame",
        ),
        Length(
            "top_offset",
            "Top offset",
            default=5,
            least=0,
            help="Down to the top line of the top hinge.",
        ),
        Length(
            "bottom_offset",
            "Bottom offset",
            default=10,
            least=0,
            help="Up to the bottom line of the bottom hinge.",
        ),
        Length("head_gap", "Gap at the head", default="1/8", least=0),
        Length(
            "floor_gap",
            "Gap at the floor",
            default="1/2",
            least=0,
            help="From the finished floor to the door's bottom.",
            only_when=("measured_on", "frame"),
        ),
    ]
    + CHOICE_INPUTS
    + SCREW_INPUTS
    + TEMPLATE_INPUTS
    + MATCH_INPUTS,
    work=work,
    example={
        "door_height": "79",
        "door_thickness": "1 3/8",
        "hinge_height": "3 1/2",
        "leaf_thickness": "0.085",
        "gap": "3/32",
    },
    cautions=[SHALLOW, HEAVY_DOOR, FIRE_DOOR],
    sources=[
        "Depth: the two leaves, the closed hinge's gap and the two mortises close up to the gap "
        "wanted (geometry).",
        "Number of hinges: 2 up to 60 inches of door height, one more for each further 30 or "
        "part of it, as hinge makers' tables agree.",
        "Backset of 1/4 for doors 1 3/8 and 1 3/4 thick: hollow-metal frame and door makers' "
        "tables.",
        "Offsets of 5 and 10: common practice, no source; 6 and 9 or 7 and 11 are met as well.",
        "A gap of 1/16 between closed leaves: usual swaging of butt hinges, makers' tables.",
    ]
    + CHOICE_SOURCES
    + SCREW_SOURCES
    + TEMPLATE_SOURCES,
)
