"""One yard asks by the board foot, another by the piece: which is the better buy?"""

from ...lengths import Scale, show_money, show_number
from ...tool import Answer, Choice, Drawing, Given, Gives, Length, Number, Rows, Text, Tool
from .units import NAMES, UNITS, Bid, cheapest_first, sizes_between

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

_CENT = 0.005  # Dollars: closer than this no bill tells two prices apart.
_BAR, _PITCH, _LONGEST = 1.0, 1.5, 10.0  # Inches on the drawing.


def work(given: Given, scale: Scale) -> Answer:
    """Return the offers in one unit, the better buy and by how much."""
    unit = given.text("compare")
    rows = enumerate(given.rows("offers"))
    bids = cheapest_first([_bid(row, at, unit) for at, row in rows])
    amount = given.maybe("amount")
    answer = Answer(scale)
    _verdict(answer, bids, unit)
    _figures(answer, bids, unit)
    _amount(answer, bids, amount)
    _table(answer, bids, unit, amount)
    _notes(answer, bids, unit)
    answer.draw(_bars(bids, unit))
    return answer


def _bid(row: Given, at: int, unit: str) -> Bid:
    sizes = tuple([row.maybe(name) for name in ("thickness", "width", "length")])
    name = row.text("name") or f"Offer {at + 1}"
    return Bid(at, name, row.number("price"), row.text("per"), sizes, row.number("waste"), unit)


def _verdict(answer: Answer, bids: "list[Bid]", unit: str) -> None:
    """Say which offer, at what price and how far below the next, and that waste is in it."""
    best, second = bids[0], bids[1]
    price = f"{show_money(best.usable)} a {NAMES[unit]}"
    price += ", waste counted" if [bid for bid in bids if bid.waste] else ""
    less = show_money(second.usable - best.usable) + " less than "
    if second.usable - best.usable < _CENT:
        answer.verdict(
            f"No difference: {best.name} and {second.name} come to {price}",
            f"No difference between the two best: {price}",
        )
        return
    answer.verdict(
        f"{best.name} is the better buy: {price}, {less}{second.name}",
        f"{best.name}: {price}, {less}{second.name}",
        f"{best.name}: {price}, {less}the next",
        f"The best is {price}, {less}the next",
    )


def _figures(answer: Answer, bids: "list[Bid]", unit: str) -> None:
    best, second, last = bids[0], bids[1], bids[-1]
    answer.words("best", best.name, lead=True)
    answer.money("best_price", best.usable, label="A " + NAMES[unit], lead=True)
    answer.money("difference", second.usable - best.usable)
    answer.number("difference_percent", _percent(second, best), "%", places=1)
    if len(bids) > 2:
        answer.money("spread", last.usable - best.usable)


def _percent(bid: Bid, best: Bid) -> float:
    """Return how much more of the best one's price another asks."""
    return (bid.usable / best.usable - 1) * 100


def _amount(answer: Answer, bids: "list[Bid]", amount: "float | None") -> None:
    if amount is None:
        return
    answer.money("total", amount * bids[0].usable)
    answer.money("saving", amount * (bids[1].usable - bids[0].usable))


def _table(answer: Answer, bids: "list[Bid]", unit: str, amount: "float | None") -> None:
    columns = ["Offer", "Asked", "A " + NAMES[unit], "Over the best"]
    rows = []
    for bid in bids:
        over = show_number(_percent(bid, bids[0]), 1) + " %"
        asked = f"{show_money(bid.price)} a {NAMES[bid.per]}"
        rows.append([bid.name, asked, show_money(bid.usable), over])
        if amount is not None:
            rows[-1].append(show_money(amount * bid.usable))
    answer.table("Cheapest first", columns + ([] if amount is None else ["In all"]), rows, 0)


def _notes(answer: Answer, bids: "list[Bid]", unit: str) -> None:
    best, second = bids[0], bids[1]
    if second.usable - best.usable < _CENT:
        answer.note(
            f"No difference to speak of between {best.name} and {second.name}: look at the boards."
        )
    else:
        answer.note(
            f"{best.name} at {show_money(best.usable)} against {second.name} at "
            f"{show_money(second.usable)} a {NAMES[unit]}."
        )
    if [bid for bid in bids if bid.usable != bid.asked]:
        answer.note("Waste is counted in: the prices are for what ends up in the work.")
    if [bid for bid in bids if bid.thin() and (bid.per == "board-foot") != (unit == "board-foot")]:
        answer.note("Stock thinner than an inch is counted as an inch thick, as the bill does.")
    if unit == "lineal-foot":
        answer.note(
            "The widths differ, and a lineal foot doesn't count them."
            if _differ(bids, 1)
            else "A lineal foot counts no width: compare boards of one width, or by the board foot."
        )
    if unit != "board-foot":
        answer.note(
            f"The thicknesses differ, and a {NAMES[unit]} doesn't count them."
            if _differ(bids, 0)
            else f"A {NAMES[unit]} counts no thickness: compare stock of one thickness."
        )
    answer.note(
        "Softwood and surfaced hardwood are billed by the size before surfacing: give the label's "
        "sizes, not the tape's, where a price is per board foot."
    )


def _differ(bids: "list[Bid]", which: int) -> bool:
    sizes = [bid.sizes[which] for bid in bids]
    known = [size for size in sizes if size is not None]
    return bool(known) and max(known) - min(known) > 1e-6


def _bars(bids: "list[Bid]", unit: str) -> Drawing:
    """Draw each price as a bar, the highest one longest; the best is drawn as stock."""
    view = Drawing(
        f"Price of a {NAMES[unit]}",
        f"{bids[0].name} is the shortest of {len(bids)} bars, at {show_money(bids[0].usable)}.",
    )
    for row, bid in enumerate(bids):
        top, long = row * _PITCH, _LONGEST * bid.usable / bids[-1].usable
        view.box("panel" if row else "stock", 0, top, long, top + _BAR)
        view.text((0.3, top + _BAR / 2), f"{show_money(bid.usable)}  {bid.name}", anchor="start")
    return view


class _SizeNeeded(Length):
    """A size of an offer, asked only where the offer's price can't be compared without it."""

    def applies(self, earlier: "dict[str, Any]") -> bool:
        units = (earlier["per"], earlier["compare"])
        return None not in units and self.name in sizes_between(units[0], units[1])

    def is_always_asked(self) -> bool:
        return False


_OFFER = [
    Text("name", "Name", optional=True, default_text="offer"),
    Number("price", "Price", unit="$", least=0.01, most=10000),
    Choice("per", "Price per", list(UNITS), default="board-foot"),
    _SizeNeeded(
        "thickness",
        "Thickness",
        least=1 / 64,
        most=60,
        help="By the label: 1 for 4/4. To or from board feet.",
    ),
    _SizeNeeded(
        "width", "Width", least=1 / 16, most=240, help="To or from lineal feet and pieces."
    ),
    _SizeNeeded("length", "Length", least=1 / 2, help="Of one piece, where it has the price."),
    Number("waste", "Waste", unit="%", default=0, most=90, help="Of it, what can't be used."),
]

TOOL = Tool(
    slug="price-compare",
    place="yard",
    title="Price compare",
    question="Prices by the board foot, the lineal foot, the piece or the sheet: which is the "
    "better buy?",
    finds=("lumber", "cost", "cheaper", "linear foot", "plywood", "ply", "bf"),
    inputs=[
        Choice(
            "compare",
            "Compare by the",
            [choice for choice in UNITS if choice[0] != "piece"],
            default="board-foot",
        ),
        Rows("offers", "Offers", _OFFER, row="offer", least=2, most=40),
        Number(
            "amount",
            "You need",
            above=0,
            most=100000,
            optional=True,
            default_text="not said",
            help="In the unit you compare by.",
        ),
    ],
    work=work,
    gives=[
        Gives("best", "text", "Better buy"),
        Gives("best_price", "money", "Best price"),
        Gives("difference", "money", "Cheaper by"),
        Gives("difference_percent", "number", "Cheaper by, percent"),
        Gives("spread", "money", "Highest over best", sometimes=True),
        Gives("total", "money", "For all you need", sometimes=True),
        Gives("saving", "money", "Saved on it", sometimes=True),
    ],
    example={
        "offers": [
            {
                "name": "Mill",
                "price": "5.40",
                "per": "board-foot",
                "waste": 25,
            },
            {
                "name": "Home center",
                "price": "38",
                "per": "piece",
                "thickness": "1",
                "width": "6",
                "length": "8'",
                "waste": 5,
            },
        ],
        "amount": 40,
    },
    cautions=[
        "The cheaper board may be the wetter, the shorter or the more crooked one: price is one "
        "thing, look at the others too."
    ],
    sources=[
        "A board foot is 144 cubic inches; a foot is exactly 0.3048 m.",
        "Thinner than an inch is billed as an inch, surfaced stock by its size before surfacing: "
        "NHLA rules as quoted by a dealer; for softwood from memory.",
    ],
)
