"""What a sheet plan says in words and figures."""

from ...lengths import show_money, show_number
from ...tool import Answer, Gives, Scale
from .order import SQUARE_FOOT

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...guillotine.search import SheetSearch
    from .layouts import SheetLayout
    from .order import SheetOrder

MOST_LISTED = 2
"""Sizes of sheet that a verdict names; more are only counted."""

GIVES = [
    Gives("sheets_used", "count", "Sheets"),
    Gives("yield", "number", "Used of the sheets", short="Used"),
    Gives("cost", "money", "Cost", sometimes=True),
    Gives(
        "lower_bound", "count", "No plan needs fewer sheets than", short="At least", sometimes=True
    ),
    Gives("least_cost", "money", "No plan costs less than", short="At least", sometimes=True),
    Gives("least_area", "number", "No plan needs less than", short="At least", sometimes=True),
    Gives("proved", "text", "Proven optimal"),
    Gives("could_save", "text", "Could save at most", short="Could save", sometimes=True),
    Gives("cuts", "count", "Cuts"),
    Gives("largest_offcut", "text", "Largest offcut", sometimes=True),
    Gives("edge_band", "length", "Edge band, net", short="Edge band", sometimes=True),
    Gives("heaviest_part", "number", "Heaviest part", short="Heaviest", sometimes=True),
    Gives("parts_weight", "number", "All parts together", short="All parts", sometimes=True),
    Gives("sheet_weight", "number", "A full sheet", short="Full sheet", sometimes=True),
]


def add_verdict(
    answer: Answer, order: "SheetOrder", found: "SheetSearch", layouts: "list[SheetLayout]"
) -> None:
    """Say what to buy or use, how grain and kerf were taken, and whether it can be bettered."""
    hand = sum([layout.times for layout in layouts if layout.sheet.on_hand])
    bought = [layout for layout in layouts if not layout.sheet.on_hand]
    kerf = f", kerf {answer.scale.finer().length(order.kerf)}: " if order.kerf else ", no kerf: "
    end = kerf + _judgment(order, found)
    if not bought:
        few = many = f"Use {_sheets(hand)} on hand"
    else:
        cost = ""
        if order.priced:
            cents = found.plan.weight // order.problem.per_cost
            cost = f" for {show_money(cents * order.cost_unit)}"
        beside = f", {hand} on hand" if hand else ""
        few = f"Buy {_listed(order, bought, answer.scale)}{cost}{beside}"
        many = f"Buy {_counted(order, bought)}{cost}{beside}"
    grain = _grain(order)
    answer.verdict(few + grain + end, many + grain + end, few + end, many + end)


def _grain(order: "SheetOrder") -> str:
    """Say how the grain runs; nothing where it may run any way."""
    grains = {part.grain for part in order.parts if part.length != part.width}
    if grains == {"along"}:
        return ", grain along each part"
    if grains == {"across"}:
        return ", grain across each part"
    return ", grain as listed" if len(grains) > 1 else ""


def _sheets(number: int) -> str:
    return "1 sheet" if number == 1 else f"{number} sheets"


def _numbers(order: "SheetOrder", layouts: "list[SheetLayout]") -> "list[tuple[int, float, float]]":
    """Return how many of each kind are cut, and its sides."""
    numbers = [
        (
            sum([layout.times for layout in layouts if layout.kind == kind]),
            sheet.length,
            sheet.width,
        )
        for kind, sheet in enumerate(order.sheets)
    ]
    return [each for each in numbers if each[0]]


def _listed(order: "SheetOrder", layouts: "list[SheetLayout]", scale: Scale) -> str:
    kinds = _numbers(order, layouts)
    if len(kinds) > MOST_LISTED:
        return _counted(order, layouts)
    names = [
        f"{number} of {scale.length(long)} x {scale.length(wide)}" for number, long, wide in kinds
    ]
    if len(names) == 1:
        number, long, wide = kinds[0]
        return f"{_sheets(number)} of {scale.length(long)} x {scale.length(wide)}"
    return " and ".join(names)


def _counted(order: "SheetOrder", layouts: "list[SheetLayout]") -> str:
    kinds = _numbers(order, layouts)
    number = sum([each[0] for each in kinds])
    return _sheets(number) + (f" of {len(kinds)} sizes" if len(kinds) > 1 else "")


def _judgment(order: "SheetOrder", found: "SheetSearch") -> str:
    return "proven optimal" if found.proved else f"could save at most {_saving(order, found)}"


def _saving(order: "SheetOrder", found: "SheetSearch") -> str:
    """Return what a better plan could save at most: sheets, dollars or area."""
    cost, sheets = divmod(found.plan.weight, order.problem.per_cost)
    least, fewest = divmod(found.bound, order.problem.per_cost)
    if order.alike or cost == least:
        return _sheets(sheets - fewest)
    saved = (cost - least) * order.cost_unit
    return show_money(saved) if order.priced else show_number(saved / SQUARE_FOOT, 1) + " sq ft"


def add_figures(
    answer: Answer, order: "SheetOrder", found: "SheetSearch", layouts: "list[SheetLayout]"
) -> None:
    """Add what is used, what it costs, and how good the plan is."""
    stock = sum([layout.sheet.area * layout.times for layout in layouts])
    parts = sum([part.area * part.count for part in order.parts])
    answer.count("sheets_used", sum([layout.times for layout in layouts]), lead=True)
    answer.number("yield", 100 * parts / stock, "%", places=1, lead=True)
    if order.priced:
        cents = found.plan.weight // order.problem.per_cost
        answer.money("cost", cents * order.cost_unit, lead=True)
    _bounds(answer, order, found)
    answer.count("cuts", sum([len(one.steps.steps) * one.times for one in layouts]))
    largest = [
        (long * wide, long, wide)
        for layout in layouts
        for long, wide in [layout.sides(rest) for rest in layout.offcuts]
    ]
    if largest:
        _, long, wide = max(largest)
        size = f"{answer.scale.length(long)} x {answer.scale.length(wide)}"
        answer.words("largest_offcut", size)
    band = sum([part.banded * part.count for part in order.parts])
    if band:
        answer.length("edge_band", band)


def _bounds(answer: Answer, order: "SheetOrder", found: "SheetSearch") -> None:
    """Add what no plan can do without, and how far off this plan can be."""
    least, fewest = divmod(found.bound, order.problem.per_cost)
    if order.alike:
        answer.count("lower_bound", fewest)
    elif order.priced:
        answer.money("least_cost", least * order.cost_unit)
    else:
        answer.number("least_area", least * order.cost_unit / SQUARE_FOOT, "sq ft")
    answer.words("proved", "yes" if found.proved else "no")
    if not found.proved:
        answer.words("could_save", _saving(order, found))


def add_weights(answer: Answer, order: "SheetOrder", pounds: "list[float]", sheet: float) -> None:
    """Add what parts and sheets weigh, in pounds; `pounds` are those of one part of each row."""
    answer.weight("heaviest_part", max(pounds))
    counts = [part.count for part in order.parts]
    answer.weight("parts_weight", sum([each * n for each, n in zip(pounds, counts)]))
    answer.weight("sheet_weight", sheet)


def add_notes(answer: Answer, order: "SheetOrder", found: "SheetSearch", hidden: int) -> None:
    """Say how to read the plan and how sure it is; `hidden` ways to cut are not drawn."""
    if not found.proved and found.progress >= 1:
        answer.note(
            "The search has ended at its limit of work: a better plan was neither found nor ruled "
            "out. Where a sheet is dear, shift a part or two by eye."
        )
    elif not found.proved and found.is_quick:
        answer.note(
            "A quick plan so far, one part laid after another. The search for a better one goes on."
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
    if [part for part in order.parts if part.banded]:
        answer.note(
            "Edge band is counted net: add a little for each end to trim. Parts are cut to the "
            "sizes given, so take a thick band off them first."
        )
    if hidden:
        answer.note(f"{hidden} more ways to cut a sheet are not drawn; their cut lists are there.")
