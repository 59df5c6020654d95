"""Panels out of sheets: which part out of which sheet, and in what order to cut?

Only cuts that run right through, as a panel saw or a track saw makes them. A plan comes at once
and gets better while the search goes on.
"""

from ..cautions import SAW
from ..guillotine.search import Search
from ..planning.better import ever_better, needs
from ..tool import (
    Answer,
    Choice,
    Count,
    Given,
    Length,
    Number,
    Refusal,
    Rows,
    Scale,
    Text,
    Tool,
    square,
)
from .sheet_cuts import cut_sheets
from .sheet_stock import LEAST_SIDE, MOST_PARTS, SQUARE_FOOT, Order
from .sheet_views import add_tables, draw

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from .sheet_cuts import CutSheet

MOST_NAMED = 4


def search(given: Given, scale: Scale) -> "Iterator[Answer]":
    """Give ever better plans.

    Raises
    ------
    Refusal
        Where a part is larger than every sheet, or the sheets run out.
    """
    order = Order(given, scale)
    found = Search(order.problem)
    spare = order.problem.spare
    yield from ever_better(found, spare, lambda: _answer(order, found, scale))
    if needs(found.plan, spare):
        raise _short(order, found, scale)
    yield _answer(order, found, scale)


def _short(order: Order, found: Search, scale: Scale) -> Refusal:
    """Return the refusal that names the parts which found no sheet."""
    over = []
    for sheet in cut_sheets(order, found.plan):
        if sheet.kind == order.problem.spare:
            over.extend([row for row, _ in sheet.parts] * sheet.times)
    parts = [order.parts[row] for row in sorted(set(over))]
    names = [f"{p.name} ({scale.length(p.length)} x {scale.length(p.width)})" for p in parts]
    more = " and others" if len(names) > MOST_NAMED else ""
    maybe = "" if found.proved else " There may be a way that was not found."
    return Refusal(
        "sheets",
        f"The sheets run out: {len(over)} of {order.problem.parts} parts found no place, "
        f"{', '.join(names[:MOST_NAMED])}{more}. Add sheets, or leave a count empty for as many "
        f"as needed.{maybe}",
    )


def _answer(order: Order, found: Search, scale: Scale) -> Answer:
    answer = Answer(scale)
    sheets = cut_sheets(order, found.plan)
    _figures(answer, order, found, sheets)
    for part in order.parts:
        answer.piece(
            part.tag,
            part.name,
            part.length,
            (square(), square()),
            width=part.width,
            count=part.count,
            stock="sheet",
        )
    for sheet in sheets:
        answer.draw(draw(sheet, scale))
    add_tables(answer, sheets)
    _notes(answer, order, found)
    return answer


def _figures(answer: Answer, order: Order, found: Search, sheets: "list[CutSheet]") -> None:
    used = sum([sheet.times for sheet in sheets])
    stock = sum([sheet.stock.area * sheet.times for sheet in sheets])
    parts = sum([part.length * part.width * part.count for part in order.parts])
    cost = found.plan.weight // order.problem.per_cost
    answer.count("sheets_used", used, label="Sheets", lead=True)
    answer.number(
        "yield", 100 * parts / stock, "%", label="Used of the sheets", places=1, lead=True
    )
    if order.priced:
        answer.money("cost", cost * order.cost_unit, label="Cost", lead=True)
    _bounds(answer, order, found)
    answer.count(
        "cuts", sum([len(sheet.steps.steps) * sheet.times for sheet in sheets]), label="Cuts"
    )
    largest = [(long * wide, long, wide) for sheet in sheets for long, wide in _offcuts(sheet)]
    if largest:
        _, long, wide = max(largest)
        size = f"{answer.scale.length(long)} x {answer.scale.length(wide)}"
        answer.words("largest_offcut", size, label="Largest offcut")


def _offcuts(sheet: "CutSheet") -> "list[tuple[float, float]]":
    return [sheet.sides(rest) for rest in sheet.offcuts]


def _bounds(answer: Answer, order: Order, found: Search) -> None:
    """Add what no plan can do without, and whether this one is as good as that."""
    least, fewest = divmod(found.bound, order.problem.per_cost)
    if order.alike:
        answer.count("lower_bound", fewest, label="No plan needs fewer sheets than")
    elif order.priced:
        answer.money("lower_bound", least * order.cost_unit, label="No plan costs less than")
    else:
        feet = least * order.cost_unit / SQUARE_FOOT
        answer.number("lower_bound", feet, "sq ft", label="No plan needs less than")
    answer.words("proved", "yes" if found.proved else "no", label="Shown to be the best plan")


def _notes(answer: Answer, order: Order, found: Search) -> None:
    if not found.proved:
        answer.note(
            "A better plan was neither found nor ruled out: where a sheet is dear, shift a part "
            "or two by eye."
        )
    answer.note(
        "Grain runs with the sheet's length, drawn from left to right. A measure is taken from "
        "the left or upper edge of the piece in hand; the kerf falls beyond it."
    )
    answer.note(
        "After a cut the piece that comes off is called by the cut's number and a, what is left "
        "by b: write it on as you go, and the part's number on each part."
    )
    if order.trim:
        answer.note("Edges are trimmed first, kerf included, so that every part has a clean edge.")


TOOL = Tool(
    slug="sheet-plan",
    place="yard",
    title="Sheet plan",
    question="Panels out of sheets: how many sheets, which part where, and in what order to cut?",
    finds=("plywood", "MDF", "cut list", "layout", "saw kerf"),
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
            ],
            row="part",
        ),
        Rows(
            "sheets",
            "Sheets",
            [
                Length(
                    "length",
                    "Length",
                    default="96",
                    least=LEAST_SIDE,
                    most=1200,
                    help="With the grain.",
                ),
                Length("width", "Width", default="48", least=LEAST_SIDE, most=1200),
                Count(
                    "count", "How many", optional=True, default_text="as needed", most=MOST_PARTS
                ),
                Number("price", "Price", unit="$", optional=True, default_text="none", most=100000),
            ],
            row="sheet",
            most=10,
        ),
        Length("kerf", "Kerf", default="1/8", least=0, most=1),
        Length(
            "edge_trim",
            "Trim off every edge",
            default="0",
            least=0,
            most=24,
            help="Kerf included; for edges that came dented or out of square.",
        ),
        Length("keep", "Offcuts worth keeping from", default="4", least=0, most=120),
    ],
    search=search,
    example={
        "parts": [
            {"name": "Side", "length": "30", "width": "15", "count": 4},
            {"name": "Bottom", "length": "34 1/2", "width": "15", "count": 2},
            {"name": "Back", "length": "34 1/2", "width": "28", "count": 1},
            {"name": "Shelf", "length": "33", "width": "12", "count": 2, "grain": "any"},
        ],
        "sheets": [{"length": "96", "width": "48"}],
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
        "48 x 96 sheets; MDF mostly 49 x 97: as the trade sells them.",
    ],
)
