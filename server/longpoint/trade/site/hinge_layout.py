"""Where do the hinges go and how deep is the mortise?

A butt hinge keeps a gap between its closed leaves. What the leaves do not stand proud of door
and jamb is let in, half on each side, until the wanted gap is left.
"""

import math

from ..cautions import FIRE_DOOR, HEAVY_DOOR, SHALLOW
from ..tool import Answer, Choice, Count, Given, Length, Refusal, Scale, Tool
from .hinge_views import edge_view, section_view

TALL_PER_HINGE = 30.0


class Layout:
    """The hinges of one door, in inches; `tops` are their top lines from the door's top.

    Raises
    ------
    Refusal
        Hinges that lie off the door, overlap, or leave no mortise.
    """

    def __init__(self, given: Given, scale: Scale) -> None:
        self.door_height = given.number("door_height")
        self.thickness = given.number("door_thickness")
        self.hinge = given.number("hinge_height")
        self.leaf = given.number("leaf_thickness")
        self.gap = given.number("gap")
        self.head_gap = given.number("head_gap")
        self.width = self.thickness - given.number("backset")
        depth = self.leaf - (self.gap - given.number("closed_gap")) / 2
        self.depth = max(0.0, depth)
        self.packing = max(0.0, -depth)
        self.count = given.maybe_count("hinges") or usual_count(self.door_height)
        if self.width <= 0:
            raise Refusal(
                "backset",
                f"A backset of {scale.length(given.number('backset'))} leaves nothing of a door "
                f"{scale.length(self.thickness)} thick for the leaf: use less.",
            )
        self.tops = self._tops(given, scale)

    def _tops(self, given: Given, scale: Scale) -> "list[float]":
        on_frame = given.text("measured_on") == "frame"
        first = given.number("top_offset") - (self.head_gap if on_frame else 0.0)
        floor = given.number("floor_gap") if on_frame else 0.0
        last = self.door_height - given.number("bottom_offset") + floor - self.hinge
        if first < 0:
            raise Refusal(
                "top_offset",
                f"The top hinge would start {scale.length(-first)} above the door: "
                f"use at least {scale.length(self.head_gap)}.",
            )
        if last + self.hinge > self.door_height:
            raise Refusal(
                "bottom_offset",
                f"The bottom hinge would end {scale.length(last + self.hinge - self.door_height)} "
                f"below the door: use at least {scale.length(floor)}.",
            )
        apart = (last - first) / (self.count - 1)
        if apart < self.hinge:
            raise Refusal(
                "hinges",
                f"{self.count} hinges {scale.length(self.hinge)} high overlap on a door "
                f"{scale.length(self.door_height)} high: use fewer, or smaller offsets.",
            )
        return [first + number * apart for number in range(self.count)]


def usual_count(door_height: float) -> int:
    """Return the usual number of hinges: 2 to 60 inches, one more for each 30 or part of it.

    >>> [usual_count(height) for height in (24, 60, 61, 90, 91, 120)]
    [2, 2, 3, 3, 4, 4]
    """
    return max(2, math.ceil(door_height / TALL_PER_HINGE))


def hinge_names(count: int) -> "list[str]":
    """Return what the hinges are called, from the top.

    >>> hinge_names(3), hinge_names(4)
    (['Top', 'Middle', 'Bottom'], ['Top', 'Second', 'Third', 'Bottom'])
    """
    if count == 3:
        return ["Top", "Middle", "Bottom"]
    ordinals = ["Second", "Third", "Fourth", "Fifth", "Sixth", "Seventh", "Eighth", "Ninth"]
    return ["Top"] + ordinals[: count - 2] + ["Bottom"]


def work(given: Given, scale: Scale) -> Answer:
    """Return mortise, marks on door and jamb, and the views."""
    layout = Layout(given, scale)
    answer = Answer(scale)
    answer.length("mortise_depth", "Mortise depth, each leaf", layout.depth, lead=True, fine=True)
    answer.length("packing", "Packing behind each leaf", layout.packing, fine=True)
    answer.length("mortise_width", "Mortise width, from the knuckle face", layout.width)
    answer.length("mortise_length", "Mortise length", layout.hinge)
    answer.count("hinge_count", "Hinges", layout.count)
    for start, shift in (("door top", 0.0), ("head", layout.head_gap)):
        _marks(answer, layout, start, shift)
    answer.draw(section_view(layout, scale))
    answer.draw(edge_view(layout, scale))
    _notes(answer, layout, scale)
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
    inputs=[
        Length("door_height", "Door height"),
        Length("door_thickness", "Door thickness"),
        Length("hinge_height", "Hinge height", help="Length of the leaf along the door."),
        Length("leaf_thickness", "Leaf thickness", help="Measure one leaf: 0.085, say."),
        Length("gap", "Gap wanted", help="Between door and jamb on the hinge side."),
        Length(
            "closed_gap",
            "Gap of the hinge",
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
    ],
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
    ],
)
