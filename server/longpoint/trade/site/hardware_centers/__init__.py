"""Pulls, plates, knobs and catches in stiles and rails: where is every hole?"""

from ...tool import Answer, Choice, Count, Given, Gives, Length, Scale, Tool
from .places import Hardware, LeafSizes, Places, Plate
from .views import front, template

OTHER = {"right": "left", "left": "right"}
_WAY = {"bottom": "up", "top": "down"}


def work(given: Given, scale: Scale) -> Answer:
    """Return the centers, every hole from two edges, and the views."""
    stile = given.number("stile")
    leaf = LeafSizes(
        given.number("leaf_width"),
        given.number("leaf_height"),
        stile,
        given.maybe("rail") or stile,
    )
    places = Places(leaf, _hardware(given), scale)
    sides = ["right", "left"] if given.text("leaves") == "2" else [given.text("side")]
    answer = Answer(scale)
    _verdict(answer, places, sides)
    _figures(answer, places, len(sides))
    _marks(answer, places, sides)
    answer.draw(lambda: front(places, sides, scale))
    answer.draw(lambda: template(places, scale))
    _notes(answer, places, sides)
    return answer


def _hardware(given: Given) -> Hardware:
    where = given.text("part")
    plate = Plate(
        given.maybe("spacing") or 0.0,
        given.maybe("plate_width") or 0.0,
        given.maybe("plate_length"),
    )
    return Hardware(
        where,
        given.text("end"),
        given.text("direction") == "along",
        given.maybe_count("count") or 1,
        given.maybe("height" if where == "stile" else "offset"),
        given.maybe("inset"),
        plate,
    )


def _verdict(answer: Answer, places: Places, sides: "list[str]") -> None:
    """Say which stile or rail, and where on it the first center lies."""
    length, (x, y) = answer.scale.length, places.centers[0]
    on = {
        "stile": "On the stile",
        "rail": f"On the {places.end} rail",
        "crossing": f"Stile and {places.end} rail cross",
    }[places.where]
    edge = f"the {sides[0]} edge" if len(sides) == 1 else "the opening edge of each leaf"
    up = f"{length(y)} {_WAY[places.end]}"
    if len(places.centers) > 1:
        apart = length(places.centers[1][0] - x)
        many = f"{on}: {len(places.centers)} centers {apart} apart, the first {length(x)}"
        answer.verdict(f"{many} from {edge}, {up}", f"{many} in, {up}")
        return
    holes = f"; holes {length(places.spacing)} apart" if places.spacing else ""
    said = f"center {length(x)} from {edge}, {up}"
    answer.verdict(
        f"{on}: {said} from the {places.end}{holes}",
        f"{on}: {said}{holes}",
        f"{on}: {said}",
        f"{on}: center {length(x)} in, {up}",
    )


def _figures(answer: Answer, places: Places, leaves: int) -> None:
    x, y = places.centers[0]
    way = _WAY[places.end]
    answer.length("center_in", x, lead=True)
    label = way[0].upper() + way[1:] + " to the center"
    answer.length("center_up", y, label=label, short=way, lead=True)
    if len(places.centers) > 1:
        answer.length("centers_apart", places.centers[1][0] - x)
    answer.count("hole_count", len(places.holes) * leaves)
    answer.length("edge_wood", places.left)
    answer.length("widest_plate", places.room)


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
    finds=("pull", "knob", "handle", "escutcheon", "cupboard", "drill", "bore", "backset"),
    inputs=[
        Length("leaf_width", "Leaf width", quantity="leaf width"),
        Length("leaf_height", "Leaf height", quantity="leaf height"),
        Length("stile", "Stile width", quantity="stile width"),
        Choice(
            "part",
            "On the",
            [("stile", "stile"), ("rail", "rail"), ("crossing", "crossing of both")],
            default="stile",
        ),
        Length(
            "height",
            "Height of the center",
            optional=True,
            default_text="half way",
            only_when=("part", "stile"),
        ),
        Length(
            "spacing",
            "Hole spacing",
            optional=True,
            default_text="one hole",
            help="Center to center.",
        ),
        Choice("leaves", "Leaves", [("1", "one"), ("2", "a pair")], default="1", quantity="leaves"),
        Length(
            "rail", "Rail width", optional=True, default_text="as the stile", quantity="rail width"
        ),
        Choice(
            "end",
            "Measured from",
            [("bottom", "the bottom"), ("top", "the top")],
            default="bottom",
            help="Of the leaf; which rail, too.",
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
        Choice(
            "direction",
            "Runs",
            [("along", "along it"), ("across", "across it")],
            default="along",
            help="Along the stile at a crossing.",
        ),
        Length("plate_width", "Plate width", optional=True, default_text="none"),
        Length("plate_length", "Plate length", optional=True, default_text="as the holes"),
        Choice(
            "side",
            "Opens at the",
            [("right", "right edge"), ("left", "left edge")],
            default="right",
            only_when=("leaves", "1"),
        ),
    ],
    work=work,
    gives=[
        Gives("center_in", "length", "Center from the opening edge", short="from the edge"),
        Gives("center_up", "length", "To the center from bottom or top", short="up or down"),
        Gives("centers_apart", "length", "Center to center", short="apart", sometimes=True),
        Gives("hole_count", "count", "Holes"),
        Gives("edge_wood", "length", "Wood left at the nearer edge", short="wood left"),
        Gives("widest_plate", "length", "Widest plate on that center line", short="widest plate"),
    ],
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
