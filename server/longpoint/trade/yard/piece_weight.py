"""What does it weigh, and who can lift it? A door of many parts, or a load piece by piece."""

import math

from ..lengths import show_number
from ..tables.weights import PANELS, WOODS, panel_density, wood_density, wood_named
from ..tool import Answer, Choice, Count, Drawing, Given, Length, Number, Rows, Scale, Text, Tool

POUNDS_PER_KILOGRAM = 1 / 0.45359237
CUBIC_INCHES = 1728.0
ONE_PERSON = 51.0
"""Pounds: the most that the NIOSH lifting equation recommends for one person at an ideal lift."""
MOST_HANDS = 4
MOST_DRAWN = 8
_WEIGHED = ("pounds", "kilograms")


class Thing:
    """One row: what it is and what it weighs, in inches, pounds and pounds per cubic foot.

    `density` and `size` are None where the weight itself was given.
    """

    def __init__(self, row: Given, index: int) -> None:
        self.made_of = row.text("made_of")
        self.tag = str(index + 1)
        self.count = row.count("count")
        self.wood = wood_named(row.text("species")) if self.made_of == "wood" else None
        self.name = row.text("name") or self._material()
        self.density: float | None = None
        self.size: tuple[float, float, float] | None = None
        if self.made_of in _WEIGHED:
            unit = POUNDS_PER_KILOGRAM if self.made_of == "kilograms" else 1.0
            self.each = row.number(self.made_of) * unit
        else:
            self.size = (row.number("thickness"), row.number("width"), row.number("length"))
            self.density = self._density(row)
            thick, wide, long = self.size
            self.each = self.density * thick * wide * long / CUBIC_INCHES

    def _material(self) -> str:
        if self.wood is not None:
            return str(self.wood.label)
        return {value: label for value, label, _ in PANELS}.get(self.made_of, "Hardware")

    def _density(self, row: Given) -> float:
        if self.wood is not None:
            return wood_density(self.wood.gravity, row.number("moisture"))
        return panel_density(self.made_of)

    @property
    def weight(self) -> float:
        """Pounds of all of them."""
        return self.each * self.count


def work(given: Given, scale: Scale) -> Answer:
    """Return the weight of all things together, and how many people lift what has to be lifted."""
    things = [Thing(row, index) for index, row in enumerate(given.rows("things"))]
    total = sum([thing.weight for thing in things])
    heaviest = max([thing.each for thing in things])
    by_piece = given.text("lifted") == "pieces"
    answer = Answer(scale)
    answer.weight("weight", total, label="Weight", lead=True)
    if by_piece:
        answer.weight("heaviest", heaviest, label="Heaviest piece")
    lift = heaviest if by_piece else total
    answer.count("people", _people(lift), label="People to lift it", lead=True)
    _table(answer, things)
    _notes(answer, things)
    _cautions(answer, things, lift, by_piece)
    if [thing for thing in things if thing.size is not None]:
        answer.draw(_drawing(things, scale))
    return answer


def _people(pounds: float) -> int:
    return max(1, int(math.ceil(pounds / ONE_PERSON - 1e-9)))


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
    if [thing for thing in things if thing.made_of in [value for value, _, _ in PANELS]]:
        answer.note(
            "Panels differ by maker, plywood most: where it matters, put one on a bathroom scale."
        )
    recalled = [t.wood.label for t in things if t.wood is not None and not t.wood.seen]
    if recalled:
        answer.note("Specific gravity from memory: " + "; ".join(sorted(set(recalled))) + ".")


def _cautions(answer: Answer, things: "list[Thing]", lift: float, by_piece: bool) -> None:
    if lift > ONE_PERSON:
        what = "The heaviest piece" if by_piece else "All of it together"
        limit = answer.weight_words(ONE_PERSON)[0]
        hands = _people(lift)
        way = f"take {hands} people" if hands <= MOST_HANDS else "take a lift, a dolly or a crane"
        answer.caution(
            f"{what} weighs {answer.weight_words(lift)[0]}, more than the {limit} that one person "
            f"should lift even close to the body and without a twist: {way}."
        )
    if [thing for thing in things if thing.made_of == "glass"]:
        answer.caution(
            "Glass: gloves that don't cut through, carry it on edge, never flat overhead, and "
            "never try to catch a falling pane."
        )


def _drawing(things: "list[Thing]", scale: Scale) -> Drawing:
    """Stand one of each thing upright side by side, its face seen, to scale."""
    shown = [thing for thing in things if thing.size is not None][:MOST_DRAWN]
    highest = max([_size(thing)[2] for thing in shown])
    view = Drawing(
        "One of each, to scale",
        "; ".join([f"{thing.name}, {scale.length(_size(thing)[2])} long" for thing in shown]) + ".",
    )
    at, gap = 0.0, highest / 20
    for thing in shown:
        _, wide, long = _size(thing)
        role = {"wood": "stock", "glass": "clearance"}.get(thing.made_of, "panel")
        view.box(role, at, highest - long, at + wide, highest)
        view.tag((at + wide / 2, highest - long / 2), thing.tag)
        at += wide + gap
    view.line("wall", (-gap, highest), (at, highest))
    return view


def _size(thing: Thing) -> "tuple[float, float, float]":
    assert thing.size is not None
    return thing.size


_SIZED = ("made_of", "wood") + tuple([value for value, _, _ in PANELS])

TOOL = Tool(
    slug="piece-weight",
    place="yard",
    title="Piece weight",
    question="What does it weigh, a door or a load, and how many does it take to lift?",
    finds=("heavy", "pounds", "slab", "lumber", "plywood"),
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
                    "Species",
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
            row="thing",
        ),
        Choice(
            "lifted",
            "Lifted",
            [("one", "all as one, like a door"), ("pieces", "piece by piece, like a load")],
            default="one",
        ),
    ],
    work=work,
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
        ]
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
