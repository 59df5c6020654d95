"""What a stick plan says in words and figures."""

from ...answer import FEET_FROM
from ...lengths import show_money
from ...planning.units import PER_INCH
from ...tool import Answer, Gives, Scale
from .layouts import Layout
from .order import StickOrder

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...cutting.search import StickSearch

MOST_LISTED = 3
"""Lengths of stick that a verdict names; more are only counted."""

GIVES = [
    Gives("sticks_used", "count", "Sticks"),
    Gives("cost", "money", "Cost", sometimes=True),
    Gives("bought", "length", "Length bought", sometimes=True),
    Gives("waste", "length", "Kerfs, trims and short ends", short="Waste"),
    Gives("waste_share", "number", "Waste"),
    Gives("kept", "length", "Offcuts kept, in all", short="Kept"),
    Gives("longest_offcut", "length", "Longest offcut"),
    Gives(
        "lower_bound", "count", "No plan needs fewer sticks than", short="At least", sometimes=True
    ),
    Gives("least_cost", "money", "No plan costs less than", short="At least", sometimes=True),
    Gives("least_length", "length", "No plan needs less than", short="At least", sometimes=True),
    Gives("proved", "text", "Proven optimal"),
    Gives("could_save", "text", "Could save at most", short="Could save", sometimes=True),
]


def add_verdict(
    answer: Answer, order: StickOrder, found: "StickSearch", layouts: "list[Layout]"
) -> None:
    """Say what to buy or use, at which kerf, and whether a better plan may exist."""
    hand = sum([layout.times for layout in layouts if layout.stick.on_hand])
    bought = [layout for layout in layouts if not layout.stick.on_hand]
    kerf = f", kerf {answer.scale.finer().length(order.kerf)}: " if order.kerf else ", no kerf: "
    end = kerf + _judgment(order, found, answer.scale)
    if not bought:
        answer.verdict(f"Use {_sticks(hand)} on hand{end}")
        return
    cost = f" for {_cost(order, found)}" if order.priced else ""
    beside = f", {hand} on hand" if hand else ""
    few, many = _listed(order, bought, answer.scale), _counted(order, bought)
    answer.verdict(f"Buy {few}{cost}{beside}{end}", f"Buy {many}{cost}{beside}{end}")


def _cost(order: StickOrder, found: "StickSearch") -> str:
    return show_money(found.plan.weight // order.problem.per_cost * order.cost_unit)


def _sticks(number: int) -> str:
    return "1 stick" if number == 1 else f"{number} sticks"


def _numbers(order: StickOrder, layouts: "list[Layout]") -> "list[tuple[int, float]]":
    """Return how many of each kind are cut, and its length."""
    numbers = [0 for _ in order.sticks]
    for layout in layouts:
        numbers[layout.kind] += layout.times
    return [(number, stick.length) for number, stick in zip(numbers, order.sticks) if number]


def _listed(order: StickOrder, layouts: "list[Layout]", scale: Scale) -> str:
    kinds = _numbers(order, layouts)
    if len(kinds) > MOST_LISTED:
        return _counted(order, layouts)
    names = [f"{number} of {_long(length, scale)}" for number, length in kinds]
    if len(names) == 1:
        return f"{_sticks(kinds[0][0])} of {_long(kinds[0][1], scale)}"
    return ", ".join(names[:-1]) + " and " + names[-1]


def _counted(order: StickOrder, layouts: "list[Layout]") -> str:
    kinds = _numbers(order, layouts)
    number = sum([number for number, _ in kinds])
    return _sticks(number) + (f" of {len(kinds)} lengths" if len(kinds) > 1 else "")


def _long(length: float, scale: Scale) -> str:
    """Return the length of a stick, in feet too as the yard says it."""
    feet = scale.units == "in" and length > FEET_FROM
    return scale.length(length) + (f" ({scale.feet(length)})" if feet else "")


def _judgment(order: StickOrder, found: "StickSearch", scale: Scale) -> str:
    return (
        "proven optimal"
        if _is_proved(order, found)
        else f"could save at most {_saving(order, found, scale)}"
    )


def _saving(order: StickOrder, found: "StickSearch", scale: Scale) -> str:
    """Return what a better plan could save at most: sticks, dollars or length."""
    cost, sticks = divmod(found.plan.weight, order.problem.per_cost)
    least, fewest = divmod(found.bound, order.problem.per_cost)
    if order.alike:
        return _sticks(sticks - _fewest(order, found))
    if cost == least:
        return _sticks(sticks - fewest)
    saved = (cost - least) * order.cost_unit
    return show_money(saved) if order.priced else f"{_long(saved, scale)} of stick"


def _is_proved(order: StickOrder, found: "StickSearch") -> bool:
    """Tell whether no plan can be better, even where the search has yet to see it."""
    used = found.plan.weight % order.problem.per_cost
    return found.proved or (order.alike and used <= _fewest(order, found))


def _fewest(order: StickOrder, found: "StickSearch") -> int:
    """Return how many sticks that cost alike no plan can do without.

    A bound need not be a weight that whole sticks have.
    """
    return -(-found.bound // order.problem.weights[0])


def add_figures(
    answer: Answer, order: StickOrder, found: "StickSearch", layouts: "list[Layout]"
) -> None:
    """Add what is used and bought, what is left over, and how good the plan is."""
    answer.count("sticks_used", sum([layout.times for layout in layouts]), lead=True)
    cost = found.plan.weight // order.problem.per_cost
    stock = sum([layout.stick.length * layout.times for layout in layouts])
    bought = sum([_all(layout) for layout in layouts if not layout.stick.on_hand])
    if order.priced:
        answer.money("cost", cost * order.cost_unit, lead=True)
    else:
        answer.length("bought", bought, lead=True)
    kept = sum([layout.offcut * layout.times for layout in layouts if layout.kept])
    pieces = sum([row.length * row.count for row in order.rows])
    # In the plan's own fine units, so that a stick filled exactly leaves nothing.
    waste = int((stock - pieces - kept) * PER_INCH + 0.5) / PER_INCH
    answer.length("waste", waste)
    answer.number("waste_share", 100 * waste / stock, "%", places=1)
    answer.length("kept", kept)
    answer.length("longest_offcut", max([layout.offcut for layout in layouts]))
    _bounds(answer, order, found)


def _all(layout: Layout) -> float:
    return layout.stick.length * layout.times


def _bounds(answer: Answer, order: StickOrder, found: "StickSearch") -> None:
    """Add what no plan can do without, and how far off this plan can be."""
    least = found.bound // order.problem.per_cost
    if order.alike:
        answer.count("lower_bound", _fewest(order, found))
    elif order.priced:
        answer.money("least_cost", least * order.cost_unit)
    else:
        answer.length("least_length", least * order.cost_unit)
    is_proved = _is_proved(order, found)
    answer.words("proved", "yes" if is_proved else "no")
    if not is_proved:
        answer.words("could_save", _saving(order, found, answer.scale))


def add_notes(
    answer: Answer, order: StickOrder, found: "StickSearch", layouts: "list[Layout]"
) -> None:
    """Say how to cut, what to check, and how sure the plan is."""
    answer.note(
        "Cut the sticks in the order of their numbers, each from its square end, longest piece "
        "first; the marks are where each piece ends, from that end, kerfs counted in. The blade "
        "goes on the far side of the mark."
    )
    if order.kerf:
        answer.note(
            f"Check the kerf with a test cut: {answer.scale.finer().length(order.kerf)} is "
            "counted for every cut, and a stick filled exactly has none to spare."
        )
    if [layout for layout in layouts if not layout.last_cut]:
        answer.note("A piece marked “as it is” is what the cut before it leaves: measure it.")
    _note_on_hand(answer, order, layouts)
    if _is_proved(order, found):
        return
    if found.progress >= 1:
        answer.note(
            "The search has ended at its limit of work: a better plan may exist, but could save no "
            "more than the figures say."
        )
    elif found.is_quick:
        answer.note(
            "A quick plan so far, one stick filled after another. The search for a better one "
            "goes on."
        )


def _note_on_hand(answer: Answer, order: StickOrder, layouts: "list[Layout]") -> None:
    there = sum([stick.count or 0 for stick in order.sticks if stick.on_hand])
    if there and [stick for stick in order.sticks if not stick.on_hand]:
        used = sum([layout.times for layout in layouts if layout.stick.on_hand])
        answer.note(
            f"Sticks on hand come first: {used} of {there}; the others would save nothing."
            if used < there
            else "All sticks on hand are used, before any is bought."
        )


def note_shown(answer: Answer, layouts: int, drawn: int, marked: int) -> None:
    """Say which ways to cut a stick are neither drawn nor marked, so that none is missed."""
    if min(drawn, marked) < layouts:
        answer.note(
            f"There are {layouts} ways to cut a stick: the first {drawn} are drawn, the first "
            f"{marked} marked cut by cut. All others stand in the list, a line each: mark each "
            "piece from the cut before it."
        )
