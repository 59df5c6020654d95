"""Which piece out of which stick, so that the least is bought?

The plan comes at once and gets better while the search goes on; `lower_bound` says what no plan
can do without, and `proved` whether this plan is as good as that.
"""

from ..cautions import SAW
from ..cutting.problem import PER_INCH
from ..cutting.search import Search
from ..cutting.stages import ever_better, needs
from ..tool import (
    Answer,
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
from .stick_cuts import CutStick, cut_sticks
from .stick_stock import Order
from .stick_views import draw, tables

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..cutting.plans import Plan
    from ..tool import Input

MOST_NAMED = 6


def search(given: Given, scale: Scale) -> "Iterator[Answer]":
    """Give ever better plans.

    Raises
    ------
    Refusal
        Where a piece is longer than every stick, or the sticks run out.
    """
    order = Order(given, scale)
    found = Search(order.problem)
    yield from ever_better(found, order.spare, lambda: _answer(order, found, scale))
    if needs(found.plan, order.spare):
        raise _short(order, found.plan, scale)
    yield _answer(order, found, scale)


def _short(order: Order, plan: "Plan", scale: Scale) -> Refusal:
    """Return the refusal that names the pieces which found no stick."""
    over, longest = [], 0
    taken = [0 for _ in order.row_of_size]
    for kind, pattern in plan.single():
        if kind == order.spare:
            longest = max(longest, order.problem.rooms[kind] - plan.rest(kind, pattern))
            for size, number in pattern:
                row = order.row_of_size[size]
                taken[size] += number
                over.extend(row[len(row) - taken[size] : len(row) - taken[size] + number])
    over.sort()
    names = [f"{order.tags[at]} ({scale.length(order.lengths[at])})" for at in over[:MOST_NAMED]]
    more = f" and {len(over) - MOST_NAMED} more" if len(over) > MOST_NAMED else ""
    need = order.inches(longest - order.kerf_units) + 2 * order.trim
    return Refusal(
        "sticks",
        f"The sticks run out: of {len(order.lengths)} pieces {len(over)} found no place, "
        f"{', '.join(names)}{more}. Add {plan.used()[order.spare or 0]} of "
        f"{scale.length(need)} or longer, or leave a count empty for as many as needed.",
    )


def _answer(order: Order, found: Search, scale: Scale) -> Answer:
    answer = Answer(scale)
    sticks = cut_sticks(order, found.plan)
    _figures(answer, order, found, sticks)
    _pieces(answer, order, sticks)
    tables(answer, order, sticks)
    draw(answer, order, sticks)
    _notes(answer, order, found, sticks)
    return answer


def _figures(answer: Answer, order: Order, found: Search, sticks: "list[CutStick]") -> None:
    answer.count("sticks_used", len(sticks), label="Sticks", lead=True)
    cost = found.plan.weight // order.problem.per_cost
    stock = sum([stick.stick.length for stick in sticks])
    bought = sum([stick.stick.length for stick in sticks if not stick.stick.on_hand])
    if order.priced:
        answer.money("cost", cost * order.cost_unit, label="Cost", lead=True)
    else:
        answer.length("bought", bought, label="Length bought", lead=True)
    kept = sum([stick.offcut for stick in sticks if stick.kept])
    # In the plan's own fine units, so that a stick filled exactly leaves nothing.
    waste = int((stock - sum(order.lengths) - kept) * PER_INCH + 0.5) / PER_INCH
    answer.length("waste", waste, label="Kerfs, trims and short ends")
    answer.number("waste_share", 100 * waste / stock, "%", label="Waste", places=1)
    answer.length("kept", kept, label="Offcuts kept, in all")
    answer.length("longest_offcut", max([stick.offcut for stick in sticks]), label="Longest offcut")
    _bounds(answer, order, found)


def _bounds(answer: Answer, order: Order, found: Search) -> None:
    """Add what no plan can do without, and how far off this plan can be."""
    problem = order.problem
    cost, least = found.plan.weight // problem.per_cost, found.bound // problem.per_cost
    each = problem.costs[0]
    if order.alike:
        number = least // each if each else found.bound
        answer.count("lower_bound", number, label="No plan needs fewer sticks than")
    elif order.priced:
        answer.money("lower_bound", least * order.cost_unit, label="No plan costs less than")
    else:
        answer.length("lower_bound", least * order.cost_unit, label="No plan needs less than")
    answer.words("proved", "yes" if found.proved else "no", label="Shown to be the best plan")
    if found.proved:
        return
    if order.alike or cost == least:
        sticks = len(found.plan.single())
        fewest = found.bound % problem.per_cost
        answer.count("off_at_most", sticks - fewest, label="Better by at most, sticks")
    elif order.priced:
        answer.money("off_at_most", (cost - least) * order.cost_unit, label="Better by at most")
    else:
        answer.length("off_at_most", (cost - least) * order.cost_unit, label="Better by at most")


def _pieces(answer: Answer, order: Order, sticks: "list[CutStick]") -> None:
    """Add every piece once, in the order given."""
    stick_of = [0 for _ in order.lengths]
    for stick in sticks:
        for place in stick.pieces:
            stick_of[place] = stick.number
    ends = (square(), square())
    for place, length in enumerate(order.lengths):
        name, tag = order.names[place], order.tags[place]
        answer.piece(tag, name, length, ends, stock=f"Stick {stick_of[place]}")


def _notes(answer: Answer, order: Order, found: Search, sticks: "list[CutStick]") -> None:
    answer.note(
        "Cut the sticks in the order of their numbers, each from its square end, longest piece "
        "first; the marks are where each piece ends, from that end, kerfs counted in. The blade "
        "goes on the far side of the mark."
    )
    if order.kerf:
        answer.note(
            f"Check the kerf with a test cut: {answer.scale.finer(32).length(order.kerf)} is "
            "counted for every cut, and a stick filled exactly has none to spare."
        )
    if [stick for stick in sticks if not stick.last_cut]:
        answer.note("A piece marked “as it is” is what the cut before it leaves: measure it.")
    there = sum([stick.count or 0 for stick in order.sticks if stick.on_hand])
    if there and len([s for s in order.sticks if not s.on_hand]):
        used = len([stick for stick in sticks if stick.stick.on_hand])
        answer.note(
            f"Sticks on hand come first: {used} of {there}; the others would save nothing."
            if used < there
            else "All sticks on hand are used, before any is bought."
        )
    if not found.proved and found.progress >= 1:
        answer.note(
            "The search ended without a proof: a better plan may exist, by no more than the "
            "figures say."
        )


PIECE: "list[Input]" = [
    Length("length", "Length"),
    Count("count", "How many", default=1, most=500),
    Text(
        "tag", "Tag", optional=True, help="What you call it; pieces that share a tag are numbered."
    ),
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
        Rows("pieces", "Pieces", PIECE, row="piece", most=300),
        Rows("sticks", "Sticks", STICK, row="stick", most=12),
        Length(
            "kerf", "Kerf", default="1/8", least=0, most=1, help="What the blade turns to dust."
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
