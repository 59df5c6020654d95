"""Slats, balusters, hooks or screws evenly between two ends: where does each one go?

Every mark is measured from the one end, so that rounding never adds up along the row.
"""

import math

from ..lengths import show_number
from ..tool import (
    Answer,
    Choice,
    Count,
    Drawing,
    FieldError,
    Given,
    Length,
    Refusal,
    Scale,
    Tool,
)

MOST = 200
DATUM = "left end"
_HAIR = 1e-9  # Inches: float noise must not add an item where the gaps come out exactly.
_END_GAPS = {"gap": 1.0, "half": 0.0, "item": -1.0}  # Gaps in all, less the number of items.


class Row:
    """Items in a row; all lengths in inches.

    Parameters
    ----------
    overall, item : float
        Length between the two ends; width of one item, 0 for a line.
    count : int
        Number of items.
    ends : str
        What stands at each end: ``gap``, ``half`` a gap, or ``item``.
    """

    def __init__(self, overall: float, item: float, count: int, ends: str) -> None:
        self.overall = overall
        self.item = item
        self.count = count
        self.gaps = count + _END_GAPS[ends]
        self.gap = (overall - count * item) / self.gaps if self.gaps else -1.0
        self.lead_in = self.gap * {"gap": 1.0, "half": 0.5, "item": 0.0}[ends]

    @property
    def centers(self) -> float:
        """Distance from one item's center to the next one's."""
        return self.gap + self.item

    def left(self, index: int) -> float:
        """Return where an item's left edge stands, items counted from 0."""
        return self.lead_in + index * self.centers

    def marked(self, where: str) -> "list[tuple[str, float]]":
        """Return tag and place of every pencil mark: ``center``, ``edge`` (left) or ``both``."""
        shifts = {"center": [self.item / 2], "edge": [0.0], "both": [0.0, self.item]}[where]
        return [
            (str(index + 1), self.left(index) + shift)
            for index in range(self.count)
            for shift in shifts
        ]


def work(given: Given, scale: Scale) -> Answer:
    """Return gap, centers and the marks of items spread evenly."""
    row = _row(given, scale)
    where = given.text("mark") if row.item else "center"
    answer = Answer(scale)
    answer.length("gap", row.gap, label="Gap", lead=True)
    answer.length("centers", row.centers, label="Center to center", lead=True)
    answer.count("items", row.count, label="How many")
    if given.text("ends") == "half":
        answer.length("end_gap", row.lead_in, label="Gap at each end")
    answer.length("first_center", row.left(0) + row.item / 2, label="First center")
    _marks(answer, row, where)
    _rounding(answer, row, where)
    answer.draw(_drawing(row, scale))
    return answer


def _row(given: Given, scale: Scale) -> Row:
    """Return the row asked for, or refuse it."""
    overall, item, ends = given.number("overall"), given.number("item_width"), given.text("ends")
    count, largest = given.maybe_count("count"), given.maybe("largest_gap")
    if count is None:
        count = _fewest(given, scale)
    if ends == "item" and count < 2:
        raise Refusal("count", "An item at each end takes two at least: 1 can't stand at both.")
    row = Row(overall, item, count, ends)
    if row.gap <= _HAIR:
        raise _no_gap(given, row, scale)
    if largest is not None and row.gap > largest + _HAIR:
        raise Refusal(
            "count",
            f"With {count} the gaps are {scale.length(row.gap)}, over the "
            f"{scale.length(largest)} allowed: use {_fewest(given, scale)} or more.",
        )
    return row


def _fewest(given: Given, scale: Scale) -> int:
    """Return the smallest count whose gaps are no larger than allowed."""
    overall, item = given.number("overall"), given.number("item_width")
    largest = given.maybe("largest_gap")
    if largest is None:
        words = "Give how many there are, or the largest gap that will do."
        raise Refusal.of([FieldError("count", words, True)])
    room = overall - _END_GAPS[given.text("ends")] * largest
    if room <= _HAIR:
        raise Refusal(
            "largest_gap",
            f"{scale.length(overall)} is no more than the largest gap as it stands: nothing is "
            f"needed between the ends. Allow less than {scale.length(overall)}.",
        )
    least = 2 if given.text("ends") == "item" else 1
    count = max(least, int(math.ceil(room / (item + largest) - _HAIR)))
    if count > MOST:
        raise Refusal(
            "largest_gap",
            f"Gaps of {scale.finer().length(largest)} take {count} items, more than the {MOST} "
            "laid out here: allow a larger gap, or lay out a part of the length.",
        )
    return count


def _no_gap(given: Given, row: Row, scale: Scale) -> Refusal:
    """Return the refusal of items that fill or overfill the length."""
    if row.item == 0:
        return Refusal("overall", f"There is no room for {row.count} lines: use a longer overall.")
    filled = f"{row.count} items {scale.length(row.item)} wide take up "
    filled += f"{scale.length(row.count * row.item)} of {scale.length(row.overall)}"
    if given.maybe_count("count") is None:
        fewer = Row(row.overall, row.item, row.count - 1, given.text("ends"))
        if row.count < 2 or fewer.gap <= 0:
            return Refusal("item_width", filled + ": use narrower items.")
        return Refusal(
            "largest_gap",
            f"{filled}, so they don't fit, and {fewer.count} leave gaps of "
            f"{scale.length(fewer.gap)}: allow that much, or change the item width.",
        )
    most = int(math.ceil(row.overall / row.item - _HAIR)) - 1
    if most < 1:
        return Refusal("item_width", filled + ": use narrower items.")
    return Refusal("count", f"{filled} and leave no gap: use {most} or fewer, or narrower items.")


def _marks(answer: Answer, row: Row, where: str) -> None:
    names = {"center": ["center"], "edge": ["left edge"], "both": ["left edge", "right edge"]}
    for index, (tag, place) in enumerate(row.marked(where)):
        side = names[where][index % len(names[where])]
        answer.mark(tag, f"Item {tag}, {side}", DATUM, place)
    if where == "edge":
        answer.note("The marks are left edges: pencil an X to the right of each, where it stands.")


def _rounding(answer: Answer, row: Row, where: str) -> None:
    """Say how far the worst mark lies from the truth, and what stepping off would do."""
    scale = answer.scale
    errors = [(abs(scale.shown(at) - at), tag) for tag, at in row.marked(where)]
    worst, tag = max(errors)
    answer.length("worst_error", worst, label="Worst rounding of a mark", fine=True)
    if worst <= _HAIR:
        answer.note("Every mark falls on the step in force: nothing is rounded.")
    else:
        answer.note(
            f"Marked as shown, no item is more than {_inches(scale, worst)} off its true place "
            f"(item {tag}), and no distance between neighbors by more than twice that."
        )
    stepped = abs(scale.shown(row.centers) - row.centers) * (row.count - 1)
    if stepped > worst + _HAIR:
        answer.note(
            f"Don't step off {scale.bare(row.centers)} from item to item: the last would be "
            f"{_inches(scale, stepped)} out. Measure every mark from the {DATUM}."
        )


def _inches(scale: Scale, inches: float) -> str:
    """Return a small difference as a decimal with its unit."""
    if scale.units == "mm":
        return scale.decimal(inches)
    return show_number(inches, 4) + " in"


def _drawing(row: Row, scale: Scale) -> Drawing:
    high = row.overall / 4
    view = Drawing(
        "The row from the front",
        f"{row.count} items between two ends {scale.length(row.overall)} apart, gaps of "
        f"{scale.length(row.gap)}.",
    )
    view.box("clearance", 0, high * 0.1, row.overall, high * 0.9)
    for index in range(row.count):
        left = row.left(index)
        if row.item:
            view.box("stock", left, 0, left + row.item, high)
        else:
            view.line("mark", (left, 0), (left, high))
    view.line("wall", (0, -high * 0.1), (0, high * 1.1))
    view.line("wall", (row.overall, -high * 0.1), (row.overall, high * 1.1))
    view.dimension((0, -high * 0.1), (row.overall, -high * 0.1), scale.length(row.overall))
    _spacings(view, row, high * 1.1, scale)
    return view


def _spacings(view: Drawing, row: Row, low: float, scale: Scale) -> None:
    """Draw the first center, and the last gap and center distance, below the row."""
    first, last = row.left(0), row.left(row.count - 1)
    half = row.item / 2
    view.dimension((0, low), (first + half, low), scale.length(first + half), -1)
    if row.count > 1:
        before = row.left(row.count - 2)
        view.dimension((before + half, low), (last + half, low), scale.length(row.centers), -2)
        if row.item:
            view.dimension((before + row.item, low), (last, low), scale.length(row.gap), -1)


TOOL = Tool(
    slug="even-spacing",
    place="saw",
    title="Even spacing",
    question="So many things evenly between two ends: how wide is the gap, and where is each?",
    finds=("baluster", "spindle", "picket", "slat", "batten", "shelf", "screws"),
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
            [("gap", "a full gap"), ("half", "half a gap"), ("item", "an item")],
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
