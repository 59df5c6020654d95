"""Slats, balusters, hooks or screws evenly between two ends: where does each one go?

Every mark is measured from the one end, so that rounding never adds up along the row.
"""

from ...lengths import show_number
from ...tool import (
    Answer,
    Choice,
    Count,
    Drawing,
    Given,
    Gives,
    Length,
    Scale,
    Tool,
)
from .spread import HAIR, MOST, Spread, spread_out

DATUM = "left end"
_AT_ENDS = {"gap": "a whole gap", "half": "half a gap", "item": "an item"}


def work(given: Given, scale: Scale) -> Answer:
    """Return gap, centers and the marks of items spread evenly."""
    overall, item, ends = given.number("overall"), given.number("item_width"), given.text("ends")
    spread = spread_out(
        overall, item, given.maybe_count("count"), given.maybe("largest_gap"), ends, scale
    )
    where = given.text("mark") if item else "center"
    answer = Answer(scale)
    _verdict(answer, spread, given.maybe_count("count") is None)
    _figures(answer, spread)
    _marks(answer, spread, where)
    _rounding(answer, spread, where)
    answer.draw(_drawing(spread, scale))
    return answer


def _verdict(answer: Answer, spread: Spread, is_fewest: bool) -> None:
    gap, centers = answer.scale.length(spread.gap), answer.scale.length(spread.centers)
    items = "1 item" if spread.count == 1 else f"{spread.count} items"
    items += ", the fewest" if is_fewest else ""
    said = f"{items}: gap {gap}" + (f", {centers} on center" if spread.count > 1 else "")
    at_end = _AT_ENDS[spread.ends] + " at each end"
    answer.verdict(f"{said}, {at_end}; marked from the {DATUM}", f"{said}, {at_end}")


def _figures(answer: Answer, spread: Spread) -> None:
    answer.length("gap", spread.gap, lead=True)
    answer.length("centers", spread.centers, lead=True)
    answer.count("items", spread.count)
    if spread.ends == "half":
        answer.length("end_gap", spread.lead_in)
    answer.length("first_center", spread.left(0) + spread.item / 2)


def _marks(answer: Answer, spread: Spread, where: str) -> None:
    names = {"center": ["center"], "edge": ["left edge"], "both": ["left edge", "right edge"]}
    for index, (tag, place) in enumerate(spread.marked(where)):
        side = names[where][index % len(names[where])]
        answer.mark(tag, f"Item {tag}, {side}", DATUM, place)
    if where == "edge":
        answer.note("The marks are left edges: pencil an X to the right of each, where it stands.")


def _rounding(answer: Answer, spread: Spread, where: str) -> None:
    """Say how far the worst mark lies from the truth, and what stepping off would do."""
    scale = answer.scale
    errors = [(abs(scale.shown(at) - at), tag) for tag, at in spread.marked(where)]
    worst, tag = max(errors)
    answer.length("worst_error", worst, fine=True)
    if worst <= HAIR:
        answer.note("Every mark falls on the step in force: nothing is rounded.")
    else:
        answer.note(
            f"Marked as shown, no item is more than {_inches(scale, worst)} off its true place "
            f"(item {tag}), and no distance between neighbors by more than twice that."
        )
    stepped = abs(scale.shown(spread.centers) - spread.centers) * (spread.count - 1)
    if stepped > worst + HAIR:
        answer.note(
            f"Don't step off {scale.bare(spread.centers)} from item to item: the last would be "
            f"{_inches(scale, stepped)} out. Measure every mark from the {DATUM}."
        )


def _inches(scale: Scale, inches: float) -> str:
    """Return a small difference as a decimal with its unit."""
    if scale.units == "mm":
        return scale.decimal(inches)
    return show_number(inches, 4) + " in"


def _drawing(spread: Spread, scale: Scale) -> Drawing:
    high = spread.overall / 4
    view = Drawing(
        "The row from the front",
        f"{spread.count} items between two ends {scale.length(spread.overall)} apart, gaps of "
        f"{scale.length(spread.gap)}.",
    )
    view.box("clearance", 0, high * 0.1, spread.overall, high * 0.9)
    for index in range(spread.count):
        left = spread.left(index)
        if spread.item:
            view.box("stock", left, 0, left + spread.item, high)
        else:
            view.line("mark", (left, 0), (left, high))
    view.line("wall", (0, -high * 0.1), (0, high * 1.1))
    view.line("wall", (spread.overall, -high * 0.1), (spread.overall, high * 1.1))
    view.dimension((0, -high * 0.1), (spread.overall, -high * 0.1), scale.length(spread.overall))
    _spacings(view, spread, high * 1.1, scale)
    return view


def _spacings(view: Drawing, spread: Spread, low: float, scale: Scale) -> None:
    """Draw the first center, and the last gap and center distance, below the row."""
    first, last = spread.left(0), spread.left(spread.count - 1)
    half = spread.item / 2
    view.dimension((0, low), (first + half, low), scale.length(first + half), -1)
    if spread.count > 1:
        before = spread.left(spread.count - 2)
        view.dimension((before + half, low), (last + half, low), scale.length(spread.centers), -2)
        if spread.item:
            view.dimension((before + spread.item, low), (last, low), scale.length(spread.gap), -1)


TOOL = Tool(
    slug="even-spacing",
    place="saw",
    title="Even spacing",
    question="So many things evenly between two ends: how wide is the gap, and where is each?",
    finds=("baluster", "spindle", "picket", "slat", "batten", "shelf", "screws", "on center"),
    inputs=[
        Length("overall", "Overall", help="From the one end to the other."),
        Length("item_width", "Item width", least=0, help="0 for lines, such as screws."),
        Count(
            "count",
            "How many",
            optional=True,
            default_text="or a largest gap",
            most=MOST,
            help="Leave it empty to find the fewest that keep to the largest gap.",
        ),
        Length("largest_gap", "Largest gap", optional=True, default_text="any"),
        Choice(
            "ends",
            "At each end",
            [("gap", "a whole gap"), ("half", "half a gap"), ("item", "an item")],
            default="gap",
        ),
        Choice(
            "mark",
            "Mark",
            [("center", "centers"), ("edge", "left edges"), ("both", "both edges")],
            default="center",
        ),
    ],
    work=work,
    gives=[
        Gives("gap", "length", "Gap"),
        Gives("centers", "length", "Center to center", short="on center"),
        Gives("items", "count", "How many", short="items"),
        Gives("end_gap", "length", "Gap at each end", short="at the ends", sometimes=True),
        Gives("first_center", "length", "First center"),
        Gives("worst_error", "length", "Worst rounding of a mark", short="rounding"),
    ],
    example={"overall": "48", "item_width": "3 1/2", "count": "5"},
    cautions=[
        "Balusters of a stair or a guard: the local building code limits the gap. Ask for its "
        "number before you set the largest gap.",
    ],
    sources=[
        "Arithmetic: what the items leave of the length is shared among n + 1 gaps, n, or n - 1, "
        "as a gap, half a gap or an item stands at each end.",
        "Marking every item from one datum: common practice, no source.",
    ],
)
