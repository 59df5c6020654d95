"""How much surface is coated: the true area that paint is bought by, and what a price counts."""

from ...cautions import LEAD_PAINT, SANDING_DUST
from ...finish.conventions import CONVENTIONS, FACTORS, RUNNING
from ...finish.surfaces import feet_of
from ...lengths import Scale, show_number
from ...refusal import Refusal
from ...tool import Answer, Given, Gives, Tool
from .asked import inputs
from .read import thing_of
from .things import DOORS, Thing
from .views import one_of_each


def work(given: Given, scale: Scale) -> Answer:
    """Return the true area of all things, and the area by which they are priced."""
    rows, way = given.rows("things"), given.text("measured")
    things = [thing_of(row, at, scale) for at, row in enumerate(rows)]
    area = sum([thing.area for thing in things])
    if area <= 0:
        raise Refusal("things", "More is left out than there is to coat.")
    priced = sum([thing.priced(way) for thing in things])
    answer = Answer(scale)
    _verdict(answer, area, priced, way)
    answer.amount("area", feet_of(area), "area", lead=True)
    answer.amount("priced_area", feet_of(priced), "area")
    _gain(answer, things)
    running = sum([thing.count * thing.running for thing in things])
    if running:
        answer.length("trim_length", running)
    _table(answer, things, way)
    _notes(answer, things, way)
    view = one_of_each(rows, scale)
    if view is not None:
        answer.draw(view)
    return answer


def _verdict(answer: Answer, area: float, priced: float, way: str) -> None:
    """Say both areas, each with what it is for."""
    true, other = [answer.both_ways(feet_of(each), "area")[0] for each in (area, priced)]
    by = dict(CONVENTIONS)[way]
    answer.verdict(
        f"Buy for {true}, all sides as they are; price {other}, {by}",
        f"Buy for {true}; price {other}, {by}",
        f"Buy for {true}; price {other}",
    )


def _gain(answer: Answer, things: "list[Thing]") -> None:
    """Say what edges and shapes add to the flat faces, where there are any."""
    flat = sum([thing.count * (thing.flat - thing.glass) for thing in things if thing.edges])
    more = sum([thing.count * (thing.edges + thing.gain) for thing in things if thing.edges])
    if flat > 0:
        answer.number("gain", 100 * more / flat, "%", places=1)


def _table(answer: Answer, things: "list[Thing]", way: str) -> None:
    rows = []
    for thing in things:
        areas = (thing.sign * thing.each, thing.area, thing.priced(way))
        said = [answer.both_ways(feet_of(each), "area")[0] for each in areas]
        rows.append([thing.name, str(thing.count)] + said)
    answer.table("Areas", ["Piece", "Count", "Each", "All", "To price"], rows)


def _notes(answer: Answer, things: "list[Thing]", way: str) -> None:
    answer.note(
        "The true area is for buying paint. The area to price is a custom of measuring, and no "
        "paint is bought by it."
    )
    if way == FACTORS and [
        each for each in things if each.kind == "trim" and each.girth <= RUNNING
    ]:
        limit = answer.scale.length(RUNNING)
        answer.note(f"Trim to {limit} wide is priced by its length, not in this area.")
    if [each for each in things if each.kind in DOORS and not each.edges]:
        answer.note(
            "A door takes every coat on both faces and all edges alike, top and bottom too: one "
            "left bare lets it cup."
        )
    if [each for each in things if each.gain]:
        share = sum([e.count * e.gain for e in things]) / sum([e.count * e.each for e in things])
        answer.note(
            f"Sticking and bevels are {show_number(100 * share, 1)} % of it, measured around "
            "their middle lines with mitered corners."
        )


TOOL = Tool(
    slug="finish-area",
    place="yard",
    title="Finish area",
    question="How much surface is coated, and by what area is it priced?",
    finds=("paint", "varnish", "lacquer", "primer", "square feet", "girth", "sticking", "coverage"),
    inputs=inputs(),
    work=work,
    gives=[
        Gives("area", "number", "Area", short="to coat", quantity="finish area"),
        Gives("priced_area", "number", "Area to price", short="to price"),
        Gives("gain", "number", "Edges and shapes, over the flat faces", sometimes=True),
        Gives("trim_length", "length", "Trim, running", short="trim", sometimes=True),
    ],
    example={
        "things": [
            {
                "name": "Doors",
                "kind": "framed",
                "width": "32",
                "length": "80",
                "thickness": "1 3/8",
                "openings": 2,
                "opening_width": "23",
                "opening_heights": "58 1/2",
                "sticking_girth": "3/4",
                "sticking_width": "3/8",
                "count": 2,
            },
            {"name": "Casing", "kind": "trim", "girth": "3 1/4", "length": "420"},
        ]
    },
    cautions=[LEAD_PAINT, SANDING_DUST],
    sources=[
        "True areas: plane geometry. Sticking and bevels by girth along their middle lines.",
        "Factors by kind of door: Indian measurement standard, as engineering pages quote it; "
        "sources differ on part glazed doors (1.00, one says 0.80).",
        "Panelled faces and edges twice, girths to 6 in as 12: Radford's cyclopedia, about 1909, "
        "one reading of it. Girths under 6 in as 6, to 12 as 12: Spon, 19th century.",
        "Flat faces without edges: common practice, no source.",
        "Lead: EPA's answers on its renovation rule, as read; state rules may go further.",
    ],
)
