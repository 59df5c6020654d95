"""Which piece out of which stick, so that the least is bought?

The plan comes at once and gets better while the search goes on; the bound says what no plan can
do without, and `proved` whether this plan is as good as that.
"""

from ...cautions import SAW
from ...cutting.search import StickSearch
from ...planning.better import ever_better, is_needed, needs
from ...tool import Answer, Count, Given, Length, Number, Rows, Scale, Text, Tool, square
from .checks import refuse_sticks, refuse_too_long, refuse_too_many, short_of_sticks
from .layouts import Layout, layouts_of
from .order import PieceRow, Stick, StickOrder
from .views import add_tables, draw
from .words import GIVES, add_figures, add_notes, add_verdict, note_shown

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ...tool import Input

MOST_ROWS = 300
MOST_KINDS = 12
MANY_ROWS = 60
"""Of more, what is cut takes longer to say than to plan."""


def search(given: Given, scale: Scale) -> "Iterator[Answer | float]":
    """Give ever better plans, and between them the progress.

    Raises
    ------
    Refusal
        Where a piece is longer than every stick, or the sticks run out.
    """
    order = _order(given, scale)
    found = StickSearch(order.problem)
    brief_of = (lambda: _brief(order, found, scale)) if len(order.rows) > MANY_ROWS else None
    yield from ever_better(found, order.spare, lambda: _answer(order, found, scale), brief_of)
    if needs(found.plan, order.spare):
        raise short_of_sticks(order, found.plan, is_needed(found, order.spare), scale)
    yield _answer(order, found, scale)


def _order(given: Given, scale: Scale) -> StickOrder:
    rows = [
        PieceRow(row.text("tag"), row.number("length"), row.count("count"))
        for row in given.rows("pieces")
    ]
    kerf, trim, keep = given.number("kerf"), given.number("end_trim"), given.number("keep")
    sticks = [
        Stick(row.number("length"), row.maybe_count("count"), row.maybe("price"), trim)
        for row in given.rows("sticks")
    ]
    refuse_too_many(rows)
    refuse_sticks(sticks, trim, scale)
    order = StickOrder(rows, sticks, kerf, trim, keep)
    refuse_too_long(order, scale)
    return order


def _brief(order: StickOrder, found: StickSearch, scale: Scale) -> Answer:
    answer = _decided(order, found, layouts_of(order, found.plan), scale)
    answer.is_brief = True
    return answer


def _decided(
    order: StickOrder, found: StickSearch, layouts: "list[Layout]", scale: Scale
) -> Answer:
    """Return an answer with what decides: how many sticks, and how good the plan is."""
    answer = Answer(scale)
    add_verdict(answer, order, found, layouts)
    add_figures(answer, order, found, layouts)
    return answer


def _answer(order: StickOrder, found: StickSearch, scale: Scale) -> Answer:
    layouts = layouts_of(order, found.plan)
    answer = _decided(order, found, layouts, scale)
    _pieces(answer, order, layouts)
    for layout in layouts:
        if layout.kept:
            answer.offcut(layout.offcut, count=layout.times)
    marked = add_tables(answer, order, layouts)
    drawn = draw(answer, layouts)
    add_notes(answer, order, found, layouts)
    note_shown(answer, len(layouts), drawn, marked)
    return answer


def _pieces(answer: Answer, order: StickOrder, layouts: "list[Layout]") -> None:
    """Add the pieces row by row, in the order given, with the sticks they come from."""
    sticks: list[list[str]] = [[] for _ in order.rows]
    for layout in layouts:
        numbers = str(layout.first) if layout.times == 1 else f"{layout.first} to {layout.last}"
        for place, _ in layout.runs:
            sticks[place].append(numbers)
    ends = (square(), square())
    for at, row in enumerate(order.rows):
        many = "s" if len(sticks[at]) > 1 or " " in sticks[at][0] else ""
        stock = f"Stick{many} {', '.join(sticks[at])}"
        name = row.name or "Piece"
        answer.piece(row.tag, name, row.length, ends, count=row.count, stock=stock)


PIECE: "list[Input]" = [
    Length("length", "Length"),
    Count("count", "How many", default=1, most=500),
    Text("tag", "Tag", optional=True, help="What you call it; rows that share a tag are numbered."),
]

STICK: "list[Input]" = [
    Length("length", "Length"),
    Count(
        "count",
        "How many",
        optional=True,
        default_text="as needed",
        help="Give it for offcuts and for what lies in the rack.",
    ),
    Number(
        "price",
        "Price each",
        unit="$",
        optional=True,
        help="Leave it empty for what lies in the rack: that costs nothing more.",
    ),
]

TOOL = Tool(
    slug="stick-plan",
    place="saw",
    title="Stick plan",
    question="Which piece out of which stick, so that the least has to be bought?",
    finds=("cut list", "molding", "baseboard", "buy", "waste"),
    inputs=[
        Rows(
            "pieces",
            "Pieces",
            PIECE,
            row="piece",
            most=MOST_ROWS,
            help="Up to 300 rows, 500 pieces in all.",
            pieces=(("length", "length"), ("count", "count"), ("tag", "tag")),
        ),
        Rows("sticks", "Sticks", STICK, row="stick", most=MOST_KINDS),
        Length(
            "kerf",
            "Kerf",
            default="1/8",
            least=0,
            most=1,
            help="What the blade turns to dust.",
            quantity="kerf",
        ),
        Length(
            "end_trim",
            "Trim each end",
            default="0",
            least=0,
            help="Cut off both ends of a stick before anything else, the kerf counted in.",
        ),
        Length("keep", "Offcut worth keeping", default="12", least=0),
    ],
    search=search,
    gives=GIVES,
    example={
        "pieces": [
            {"length": "40", "count": "2", "tag": "A"},
            {"length": "30", "count": "3", "tag": "B"},
            {"length": "25", "count": "2", "tag": "C"},
            {"length": "20", "count": "3", "tag": "D"},
        ],
        "sticks": [{"length": "96"}],
    },
    cautions=[SAW],
    sources=[
        "Pieces out of a stick, n = floor((L + k)/(p + k)): n pieces that fill it take n - 1 kerfs "
        "(arithmetic).",
        "Bound: Gilmore and Gomory's linear program over cutting patterns (1961), its prices "
        "rounded to whole numbers and the bound computed from those alone (from memory).",
        "A kerf of 1/8 for a full-kerf blade: as blade makers' explanations give it; keeping "
        "offcuts from 12 up: common practice, no source.",
    ],
)
