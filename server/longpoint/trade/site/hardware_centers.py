"""Pulls, plates, knobs and catches in stiles and rails: where is every hole?"""

from ..tool import Answer, Choice, Count, Given, Length, Scale, Tool
from .hardware_places import Places
from .hardware_views import front, template

OTHER = {"right": "left", "left": "right"}


def work(given: Given, scale: Scale) -> Answer:
    """Return the centers, every hole from two edges, and the views."""
    places = Places(given, scale)
    sides = ["right", "left"] if given.text("leaves") == "2" else [given.text("side")]
    answer = Answer(scale)
    _figures(answer, places, len(sides))
    _marks(answer, places, sides)
    answer.draw(front(places, sides, scale))
    answer.draw(template(places, scale))
    _notes(answer, places, sides)
    return answer


def _figures(answer: Answer, places: Places, leaves: int) -> None:
    x, y = places.centers[0]
    up = "Up" if places.end == "bottom" else "Down"
    answer.length("center_in", x, label="Center in from the edge", lead=True)
    answer.length("center_up", y, label=up + " to the center", lead=True)
    if len(places.centers) > 1:
        between = places.centers[1][0] - x
        answer.length("centers_apart", between, label="Center to center")
    answer.count("hole_count", len(places.holes) * leaves, label="Holes")
    answer.length("edge_wood", _left(places), label=f"{_named(places)} left at each edge")
    answer.length("widest_plate", places.room, label=f"Widest that fits the {places.part.name}")


def _named(places: Places) -> str:
    return "Stile" if places.part.name == "stile" else "Rail"


def _left(places: Places) -> float:
    """Return the wood between the hardware and the nearer edge of its part."""
    return (places.room - places.filled) / 2


def _marks(answer: Answer, places: Places, sides: "list[str]") -> None:
    """Mark every hole from the opening edge, then every hole from bottom or top, leaf by leaf."""
    for number, side in enumerate(sides):
        leaf = OTHER[side] + " leaf, " if len(sides) > 1 else ""
        first = number * len(places.holes) + 1
        for axis, datum in ((0, side + " edge"), (1, places.end)):
            for index, hole in enumerate(places.holes):
                tag = str(first + index)
                answer.mark(tag, f"Hole {tag}", leaf + datum, hole[axis])


def _notes(answer: Answer, places: Places, sides: "list[str]") -> None:
    if len(sides) > 1:
        answer.note(
            "The leaves are mirrored: turn a template over for the other one, with the same edge "
            "on the opening edge."
        )
    answer.note(
        "Measure every hole from the leaf's own edges, prick it with an awl, and drill a small "
        "hole through from the face, the back held against scrap."
    )
    if places.spacing:
        answer.note(
            f"Check the holes' {answer.scale.length(places.spacing)} on the pull itself before "
            "drilling: makers round."
        )
    if places.where == "crossing":
        answer.note(
            "A screw at the crossing goes through the joint: keep it out of the tenon's pin."
        )


TOOL = Tool(
    slug="hardware-centers",
    place="site",
    title="Hardware centers",
    question="Pulls, plates, knobs, catches in stiles and rails: where is every hole?",
    finds=("pull", "knob", "handle", "escutcheon", "drill", "bore", "backset"),
    inputs=[
        Length("leaf_width", "Leaf width"),
        Length("leaf_height", "Leaf height"),
        Length("stile", "Stile width"),
        Length("rail", "Rail width", optional=True, default_text="as the stile"),
        Choice(
            "part",
            "On the",
            [("stile", "stile"), ("rail", "rail"), ("crossing", "crossing of both")],
            default="stile",
        ),
        Choice(
            "end",
            "Measured from",
            [("bottom", "the bottom"), ("top", "the top")],
            default="bottom",
            help="Of the leaf; which rail, too.",
        ),
        Length(
            "height",
            "Height of the center",
            optional=True,
            default_text="half way",
            only_when=("part", "stile"),
        ),
        Count(
            "count",
            "How many",
            default=1,
            most=20,
            help="Spread evenly along the rail.",
            only_when=("part", "rail"),
        ),
        Length(
            "offset",
            "Offset of the center",
            optional=True,
            default_text="half way",
            help="From the opening edge, where there is one.",
            only_when=("part", "rail"),
        ),
        Length(
            "inset",
            "Set in",
            optional=True,
            default_text="centered",
            help="From the outer edge of the stile or rail: a latch's backset, say.",
            only_when=("part", "stile", "rail"),
        ),
        Length(
            "spacing",
            "Hole spacing",
            optional=True,
            default_text="one hole",
            help="Center to center.",
        ),
        Choice(
            "direction",
            "Runs",
            [("along", "along the part"), ("across", "across it")],
            default="along",
            help="Along the stile at a crossing.",
        ),
        Length("plate_width", "Plate width", optional=True, default_text="none"),
        Length("plate_length", "Plate length", optional=True, default_text="as the holes"),
        Choice("leaves", "Leaves", [("1", "one"), ("2", "a pair")], default="1"),
        Choice(
            "side",
            "Opens at the",
            [("right", "right edge"), ("left", "left edge")],
            default="right",
            only_when=("leaves", "1"),
        ),
    ],
    work=work,
    example={
        "leaf_width": "15",
        "leaf_height": "30",
        "stile": "2 1/2",
        "height": "6",
        "spacing": "3 3/4",
        "leaves": "2",
    },
    cautions=[
        "Drill with a stop or a scrap behind: a bit that breaks out tears the face that is seen.",
        "Doors that close by themselves, fire-rated ones and ways out: their label and the local "
        "code decide locks, pulls and their heights.",
    ],
    sources=[
        "Centers of stile and rail, holes half their spacing to each side, pulls spread evenly "
        "in equal fields: plane geometry.",
        "A latch's backset is 2 3/8 in houses and 2 3/4 in commerce: hardware sellers' guides.",
        "Every hole from the leaf's own edges, the pair mirrored: common practice, no source.",
    ],
)
