"""Panels out of sheets: which part out of which sheet, and in what order to cut?

Only cuts that run right through, as a panel saw or a track saw makes them. A plan comes at once
and gets better while the search goes on.
"""

from ...cautions import SAW
from ...guillotine.search import SheetSearch
from ...planning.better import ever_better, is_needed, needs
from ...tables.weights import PANELS
from ...tool import (
    Answer,
    Choice,
    Count,
    Given,
    Length,
    Number,
    Rows,
    Scale,
    Text,
    Tool,
)
from .checks import (
    LEAST_SIDE,
    MOST_PARTS,
    refuse_sheets,
    refuse_too_large,
    refuse_too_many,
    short_of_sheets,
)
from .layouts import layouts_of
from .order import Part, Sheet, SheetOrder
from .said import Stuff, brief, whole
from .words import GIVES

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

SIZES = {"96x48": (96.0, 48.0), "97x49": (97.0, 49.0), "120x60": (120.0, 60.0)}
"""Sheets as the trade sells them, length and width in inches."""

MANY_PARTS = 40
"""Of more, what is cut takes longer to say than to plan."""

BANDS = {
    "none": (0, 0),
    "long": (1, 0),
    "longs": (2, 0),
    "short": (0, 1),
    "shorts": (0, 2),
    "front": (1, 2),
    "all": (2, 2),
}
"""Edges that are banded: how many long ones, how many short ones."""


def search(given: Given, scale: Scale) -> "Iterator[Answer | float]":
    """Give ever better plans, and between them the progress.

    Raises
    ------
    Refusal
        Where a part is larger than every sheet, or the sheets run out.
    """
    stuff = Stuff(given.text("made_of"), given.maybe("sheet_thickness"))
    order = _order(given, scale)
    found = SheetSearch(order.plan_for())
    spare = order.problem.spare
    is_long = sum([part.count for part in order.parts]) > MANY_PARTS
    brief_of = (lambda: brief(order, stuff, found, scale)) if is_long else None
    yield from ever_better(found, spare, lambda: whole(order, stuff, found, scale), brief_of)
    if needs(found.plan, spare):
        layouts = layouts_of(order, found.plan)
        raise short_of_sheets(order, layouts, is_needed(found, spare), scale)
    yield whole(order, stuff, found, scale)


def _order(given: Given, scale: Scale) -> SheetOrder:
    parts = [
        Part(
            row.text("name"),
            (row.number("length"), row.number("width")),
            row.count("count"),
            row.text("grain"),
            BANDS[row.text("band")],
        )
        for row in given.rows("parts")
    ]
    trim = given.number("edge_trim")
    sheets = [
        Sheet(_size(row), row.maybe_count("count"), row.maybe("price"), trim)
        for row in given.rows("sheets")
    ]
    refuse_too_many(parts)
    refuse_sheets(sheets, trim, scale)
    order = SheetOrder(parts, sheets, given.number("kerf"), trim, given.number("keep"))
    refuse_too_large(order, scale)
    return order


def _size(row: Given) -> "tuple[float, float]":
    if row.text("size") in SIZES:
        return SIZES[row.text("size")]
    return (row.number("length"), row.number("width"))


TOOL = Tool(
    slug="sheet-plan",
    place="yard",
    title="Sheet plan",
    question="Panels out of sheets: how many sheets, which part where, and in what order to cut?",
    finds=("plywood", "ply", "MDF", "cut list", "layout", "saw kerf", "edge band", "melamine"),
    inputs=[
        Rows(
            "parts",
            "Parts",
            [
                Length("length", "Length", least=LEAST_SIDE, most=1200),
                Length("width", "Width", least=LEAST_SIDE, most=1200),
                Count("count", "How many", default=1, most=MOST_PARTS),
                Choice(
                    "grain",
                    "Grain",
                    [
                        ("along", "grain along it"),
                        ("across", "grain across it"),
                        ("any", "grain any way"),
                    ],
                    default="along",
                ),
                Text("name", "Name", optional=True),
                Choice(
                    "band",
                    "Edge band",
                    [
                        ("none", "none"),
                        ("long", "one long edge"),
                        ("longs", "both long edges"),
                        ("short", "one short edge"),
                        ("shorts", "both short edges"),
                        ("front", "one long and both short edges"),
                        ("all", "all four edges"),
                    ],
                    default="none",
                ),
            ],
            row="part",
            help="Up to 40 rows, 200 parts in all.",
            pieces=(("length", "length"), ("width", "width"), ("count", "count"), ("name", "tag")),
        ),
        Rows(
            "sheets",
            "Sheets",
            [
                Choice(
                    "size",
                    "Size",
                    [
                        ("own", "own size"),
                        ("96x48", "96 x 48, 4 x 8 ft"),
                        ("97x49", "97 x 49, oversize"),
                        ("120x60", "120 x 60, 5 x 10 ft"),
                    ],
                    default="own",
                ),
                Length(
                    "length",
                    "Length",
                    default="96",
                    least=LEAST_SIDE,
                    most=1200,
                    help="With the grain.",
                    only_when=("size", "own"),
                ),
                Length(
                    "width",
                    "Width",
                    default="48",
                    least=LEAST_SIDE,
                    most=1200,
                    only_when=("size", "own"),
                ),
                Count(
                    "count", "How many", optional=True, default_text="as needed", most=MOST_PARTS
                ),
                Number("price", "Price", unit="$", optional=True, default_text="none", most=100000),
            ],
            row="sheet",
            most=10,
        ),
        Length("kerf", "Kerf", default="1/8", least=0, most=1, quantity="kerf"),
        Length(
            "edge_trim",
            "Trim off every edge",
            default="0",
            least=0,
            most=24,
            help="Kerf included; for edges that came dented or out of square.",
        ),
        Length("keep", "Offcuts worth keeping from", default="4", least=0, most=120),
        Choice(
            "made_of",
            "Made of",
            [("unknown", "not weighed")]
            + [(value, label) for value, label, _ in PANELS if value != "glass"],
            default="unknown",
            help="Then parts and sheets are weighed.",
        ),
        Length("sheet_thickness", "Sheet thickness", most=4, optional=True),
    ],
    search=search,
    gives=GIVES,
    example={
        "parts": [
            {"name": "Side", "length": "30", "width": "15", "count": 4},
            {"name": "Bottom", "length": "34 1/2", "width": "15", "count": 2},
            {"name": "Back", "length": "34 1/2", "width": "28", "count": 1},
            {"name": "Shelf", "length": "33", "width": "12", "count": 2, "grain": "any"},
        ],
        "sheets": [{"size": "96x48"}],
    },
    cautions=[
        SAW,
        "A full sheet is heavy and unwieldy: two people, or break it down with a track saw on "
        "foam, both sides of every cut held up.",
    ],
    sources=[
        "Geometry: cuts right through, a kerf for each; the way of cutting is common practice, "
        "no source.",
        "What no plan can do without: dual feasible functions after Fekete and Schepers, "
        "Mathematics of Operations Research 29, 2004, from memory.",
        "Few parts are planned by building up rectangles after Wang, Operations Research 31, "
        "1983, from memory: then the plan is proved best.",
        "96 x 48 and 120 x 60 sheets; MDF mostly 97 x 49: as the trade sells them.",
        "Weights: densities of panels as `piece-weight` has them, published sheet weights and "
        "memory.",
    ],
)
