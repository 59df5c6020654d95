"""What does it weigh, and who can lift it? A door of many parts, or a load piece by piece."""

from ...lengths import Scale, show_number
from ...tables.weights import PANELS, WOODS
from ...tool import Answer, Choice, Count, Given, Gives, Length, Number, Rows, Text, Tool
from .things import ONE_PERSON, POUNDS_PER_KILOGRAM, Thing, people
from .views import one_of_each

MOST_HANDS = 4


def work(given: Given, scale: Scale) -> Answer:
    """Return the weight of all things together, and how many people lift what has to be lifted."""
    things = [_thing(row, str(at + 1)) for at, row in enumerate(given.rows("things"))]
    lifted = given.text("lifted")
    answer = Answer(scale)
    total, heaviest = _total(things), max([thing.each for thing in things])
    lift = heaviest if lifted == "pieces" else total
    _verdict(answer, things, lifted, lift)
    answer.weight("leaf_weight" if lifted == "leaf" else "weight", total, lead=True)
    if lifted == "pieces":
        answer.weight("heaviest", heaviest)
    answer.count("people", people(lift), lead=True)
    _table(answer, things)
    _notes(answer, things)
    _cautions(answer, things, lift, lifted)
    if [thing for thing in things if thing.size is not None]:
        answer.draw(one_of_each(things, scale))
    return answer


def _thing(row: Given, tag: str) -> Thing:
    made_of = row.text("made_of")
    thing = Thing(tag, row.text("name"), row.count("count"), made_of, row.text("species"))
    if made_of == "pounds":
        return thing.weighed(row.number("pounds"))
    if made_of == "kilograms":
        return thing.weighed(row.number("kilograms") * POUNDS_PER_KILOGRAM)
    size = (row.number("thickness"), row.number("width"), row.number("length"))
    return thing.measured(size, row.maybe("moisture"))


def _total(things: "list[Thing]") -> float:
    return sum([thing.weight for thing in things])


def _verdict(answer: Answer, things: "list[Thing]", lifted: str, lift: float) -> None:
    """Say what it weighs, at what moisture, and how many lift it."""
    all_of_it, each = answer.weight_words(_total(things))[0], answer.weight_words(lift)[0]
    what = f"The leaf weighs {all_of_it}" if lifted == "leaf" else f"{all_of_it} in all"
    if lifted == "pieces":
        what = f"A load of {all_of_it}, heaviest piece {each}"
    moistures = sorted({thing.moisture for thing in things if thing.moisture is not None})
    at = f" at {show_number(moistures[0], 1)} % moisture" if len(moistures) == 1 else ""
    hands = _hands(lift)
    answer.verdict(f"{what}{at}: {hands}", f"{what}: {hands}", f"{each}: {hands}")


def _hands(lift: float) -> str:
    number = people(lift)
    if number > MOST_HANDS:
        return "take a lift, a dolly or a crane"
    return "one person can lift it" if number == 1 else f"take {number} people"


def _table(answer: Answer, things: "list[Thing]") -> None:
    rows = []
    for thing in things:
        each, density = answer.weight_words(thing.each)[0], ""
        if thing.density is not None:
            density = _density_words(thing.density, answer.scale)
        all_of_them = answer.weight_words(thing.weight)[0]
        rows.append([thing.tag, thing.name, str(thing.count), density, each, all_of_them])
    answer.table("The weights", ["", "Thing", "Count", "Density", "Each", "All"], rows)


def _density_words(density: float, scale: Scale) -> str:
    if scale.units == "mm":
        return show_number(density / POUNDS_PER_KILOGRAM / 0.3048**3, 0) + " kg/m³"
    return show_number(density, 1) + " lb/ft³"


def _notes(answer: Answer, things: "list[Thing]") -> None:
    if [thing for thing in things if thing.wood is not None]:
        answer.note(
            "A board weighs its species' mean give or take a tenth, and more where it is wetter "
            "than said: leave a margin for hinges, hooks and backs."
        )
    if [thing for thing in things if thing.is_panel]:
        answer.note(
            "Panels differ by maker, plywood most: where it matters, put one on a bathroom scale."
        )
    recalled = [t.wood.label for t in things if t.wood is not None and not t.wood.seen]
    if recalled:
        answer.note("Specific gravity from memory: " + "; ".join(sorted(set(recalled))) + ".")


def _cautions(answer: Answer, things: "list[Thing]", lift: float, lifted: str) -> None:
    if lift > ONE_PERSON:
        named = {"pieces": "The heaviest piece", "leaf": "The leaf"}
        what = named.get(lifted, "All of it together")
        limit = answer.weight_words(ONE_PERSON)[0]
        answer.caution(
            f"{what} weighs {answer.weight_words(lift)[0]}, more than the {limit} that one person "
            f"should lift even close to the body and without a twist: {_hands(lift)}."
        )
    if [thing for thing in things if thing.made_of == "glass"]:
        answer.caution(
            "Glass: gloves that don't cut through, carry it on edge, never flat overhead, and "
            "never try to catch a falling pane."
        )


_SIZED = ("made_of", "wood") + tuple([value for value, _, _ in PANELS])

TOOL = Tool(
    slug="piece-weight",
    place="yard",
    title="Piece weight",
    question="What does it weigh, a door or a load, and how many does it take to lift?",
    finds=("heavy", "pounds", "slab", "lumber", "plywood", "leaf", "lift"),
    inputs=[
        Rows(
            "things",
            "Things",
            [
                Choice(
                    "made_of",
                    "Made of",
                    [("wood", "solid wood")]
                    + [(value, label) for value, label, _ in PANELS]
                    + [("pounds", "weight known, lb"), ("kilograms", "weight known, kg")],
                    default="wood",
                ),
                Choice(
                    "species",
                    "Wood",
                    [(wood.value, wood.label) for wood in WOODS],
                    only_when=("made_of", "wood"),
                ),
                Length("thickness", "Thickness", most=24, only_when=_SIZED),
                Length("width", "Width", most=240, only_when=_SIZED),
                Length("length", "Length", most=1200, only_when=_SIZED),
                Number(
                    "pounds", "Weight each", unit="lb", most=10000, only_when=("made_of", "pounds")
                ),
                Number(
                    "kilograms",
                    "Weight each",
                    unit="kg",
                    most=5000,
                    only_when=("made_of", "kilograms"),
                ),
                Count("count", "How many", default=1),
                Number(
                    "moisture",
                    "Moisture",
                    unit="%",
                    default=8,
                    most=200,
                    only_when=("made_of", "wood"),
                    help="Of the dry weight: 8 indoors, about 12 air-dried, 30 to 100 green.",
                ),
                Text("name", "Name", optional=True),
            ],
            row="piece",
            pieces=tuple(
                [
                    (name, name)
                    for name in ("made_of", "species", "thickness", "width", "length", "count")
                ]
            )
            + (("name", "tag"),),
        ),
        Choice(
            "lifted",
            "Lifted",
            [
                ("one", "all as one"),
                ("leaf", "as a door leaf"),
                ("pieces", "piece by piece, like a load"),
            ],
            default="one",
        ),
    ],
    work=work,
    gives=[
        Gives("weight", "number", "Weight", sometimes=True),
        Gives("leaf_weight", "number", "Leaf weight", quantity="leaf weight", sometimes=True),
        Gives("heaviest", "number", "Heaviest piece", short="heaviest", sometimes=True),
        Gives("people", "count", "People to lift it", short="people"),
    ],
    example={
        "things": [
            {
                "name": "Stiles",
                "species": "oak-white",
                "thickness": "1 3/4",
                "width": "5",
                "length": "80",
                "count": 2,
            },
            {
                "name": "Rails",
                "species": "oak-white",
                "thickness": "1 3/4",
                "width": "8",
                "length": "27",
                "count": 3,
            },
            {
                "name": "Glass",
                "made_of": "glass",
                "thickness": "1/4",
                "width": "26",
                "length": "54",
            },
            {"name": "Lock and hinges", "made_of": "pounds", "pounds": 6},
        ],
        "lifted": "leaf",
    },
    cautions=[
        "Lift with the legs, the load close and no twist; look where you will set it down first.",
    ],
    sources=[
        "Solid wood: Wood Handbook (USDA Forest Products Laboratory), specific gravity at 12 % "
        "moisture, seen as reprints or from memory as noted; density = 62.43 lb/ft³ x specific "
        "gravity x (1 + moisture / 100), chapter 4, as quoted by a state forestry page.",
        "Specific gravity at other moistures: G = G0 / (1 + 0.009 G0 M), the form of the National "
        "Design Specification, as reprinted in engineering tables; no swelling above 30 %.",
        "8 % moisture indoors: Wood Handbook figure 13-1, as quoted in a forum.",
        "Glass 2500 kg/m³: EN 572-1, as makers quote it.",
        "Panels: published weights of 3/4 in 4x8 sheets, 97 lb MDF, 85 lb particleboard, 60 lb "
        "veneer-core hardwood plywood; softwood and birch plywood from memory.",
        "51 lb (23 kg) for one person: load constant of the revised NIOSH lifting equation, "
        "publication 94-110, as safety agencies quote it. So much for each of several people: "
        "common practice, no source.",
    ],
)
