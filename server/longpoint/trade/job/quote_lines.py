"""The lines of a quote: what each item takes of the stock bought and of the shop's hours."""

from ..money.exact import Exact
from ..money.stages import parted
from .operations import LABELS, operations_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from .pieces import Cut
    from .working import Done

_HOUR = 60


class Line:
    """One line of a quote.

    Attributes
    ----------
    material, paid, spent : int
        Cents: as estimated, as paid so far, and as it will have cost as far as is known.
    hours, actual : Exact or None
        As quoted, and as worked; None where nothing was said.
    operations : list of tuple
        Name, how many, minutes of one or None.
    """

    def __init__(self, own: str, title: str, count: int = 1) -> None:
        self.id = own
        self.title = title
        self.count = count
        self.material = 0
        self.paid = 0
        self.spent = 0
        self.hours: Exact | None = None
        self.actual: Exact | None = None
        self.is_typed = False
        self.operations: list[tuple[str, int, float | None]] = []

    def known_hours(self) -> Exact:
        """Return the hours, none where none were said."""
        return self.hours or Exact(0)

    def labor(self, rate: float) -> Exact:
        """Return the dollars that its hours cost."""
        return self.known_hours() * Exact.of(rate)


def lines_of(
    job: "dict[str, Any]",
    done: "dict[str, Done]",
    cuts: "list[Cut]",
    bought: "list[dict[str, Any]]",
) -> "tuple[list[Line], list[str]]":
    """Return a line for each item and each line of the quote's own, and what has no price.

    `bought` are the lines of the buy list. What belongs to no item stands on a line of its own.
    """
    quote = job.get("quote") or {}
    minutes = {each["id"]: each.get("minutes") for each in quote.get("minutes") or []}
    lines = [_of_item(item, done, cuts, minutes) for item in job["items"]]
    for own in quote.get("lines") or []:
        line = Line(own["id"], own.get("title") or "Other")
        line.material = line.paid = line.spent = Exact.of(own.get("material") or 0).cents()
        line.hours = None if own.get("hours") is None else Exact.of(own["hours"])
        lines.append(line)
    common = Line("", "For the whole job")
    unpriced = _share_out(job, cuts, bought, lines + [common])
    return lines + ([common] if common.material or common.paid else []), unpriced


def _of_item(
    item: "dict[str, Any]",
    done: "dict[str, Done]",
    cuts: "list[Cut]",
    minutes: "dict[str, float | None]",
) -> Line:
    line = Line(item["id"], item["title"] or "Item", int(item.get("count") or 1))
    for name, number in operations_of(item, done, cuts):
        line.operations.append((name, number, minutes.get(name)))
    known = [(number, each) for _, number, each in line.operations if each is not None]
    if item.get("hours") is not None:
        line.hours, line.is_typed = Exact.of(item["hours"]), True
    elif known and len(known) == len(line.operations):
        line.hours = Exact(0)
        for number, each in known:
            line.hours = line.hours + Exact(number, _HOUR) * Exact.of(each)
    if item.get("actual_hours") is not None:
        line.actual = Exact.of(item["actual_hours"])
    return line


def _share_out(
    job: "dict[str, Any]",
    cuts: "list[Cut]",
    bought: "list[dict[str, Any]]",
    lines: "list[Line]",
) -> "list[str]":
    """Give each line its share of what is bought; return the titles that have no price."""
    places = {line.id: at for at, line in enumerate(lines)}
    owners = {thing["id"]: thing.get("item") or "" for thing in job.get("things") or []}
    unpriced = []
    for each in bought:
        weights = _weights(each["stock"], cuts, lines)
        if each["stock"] in owners:
            weights = [Exact(0) for _ in lines]
            weights[places.get(owners[each["stock"]], len(lines) - 1)] = Exact(1)
        estimate = each["cost"] if each["cost"] is not None else each["paid"]
        if estimate is None and each["amount"] > 0:
            unpriced.append(each["title"])
        for at, cents in enumerate(shared(Exact.of(estimate or 0).cents(), weights)):
            lines[at].material += cents
        for at, cents in enumerate(shared(Exact.of(each["paid"] or 0).cents(), weights)):
            lines[at].paid += cents
        spent = estimate if each["paid"] is None else each["paid"]
        for at, cents in enumerate(shared(Exact.of(spent or 0).cents(), weights)):
            lines[at].spent += cents
    return unpriced


def _weights(stock: str, cuts: "list[Cut]", lines: "list[Line]") -> "list[Exact]":
    """Return how much of a stock each line takes, by the size of its pieces; the last, if none."""
    weights = {line.id: Exact(0) for line in lines}
    for cut in [cut for cut in cuts if cut.stock == stock]:
        piece, size = cut.piece, Exact.of(cut.piece["length"])
        for name in ("width", "thickness"):
            size = size * Exact.of(piece[name] or 1)
        weights[cut.item] = weights[cut.item] + size
    found = [weights[line.id] for line in lines]
    if not [weight for weight in found if weight.is_positive()]:
        found[-1] = Exact(1)
    return found


def shared(cents: int, weights: "list[Exact]") -> "list[int]":
    """Return cents shared out by weight so that they add up.

    >>> shared(100, [Exact(1), Exact(1), Exact(1)]), shared(7, [Exact(0), Exact(2)])
    ([34, 33, 33], [0, 7])
    """
    total = Exact(0)
    for weight in weights:
        total = total + weight
    if not total.is_positive():
        return [0 for _ in weights]
    whole = Exact.of_cents(cents)
    return parted(cents, [whole * weight / total for weight in weights])


def said_operations(line: Line) -> "list[dict[str, Any]]":
    """Return the operations of a line as the reply says them."""
    return [
        {"operation": name, "label": LABELS[name], "count": number, "minutes": minutes}
        for name, number, minutes in line.operations
    ]


def learned(lines: "list[Line]") -> "list[dict[str, Any]]":
    """Return the minutes of one of each operation as the finished items took them.

    An item's hours are shared among its operations as their minutes were before; one that has no
    minutes yet learns them where it is its item's only one.
    """
    totals: dict[str, Exact] = {}
    counts: dict[str, int] = {}
    for line in [line for line in lines if line.actual is not None]:
        for name, number, minutes in _worked(line):
            totals[name] = totals.get(name, Exact(0)) + minutes
            counts[name] = counts.get(name, 0) + number
    return [
        {
            "operation": name,
            "label": LABELS[name],
            "minutes": (totals[name] / Exact(counts[name])).cents() / 100,
        }
        for name in LABELS
        if name in totals
    ]


def _worked(line: Line) -> "list[tuple[str, int, Exact]]":
    """Return name, number and minutes in all of each operation of an item that is finished."""
    worked = (line.actual or Exact(0)) * Exact(_HOUR)
    if len(line.operations) == 1:
        name, number, _ = line.operations[0]
        return [(name, number, worked)]
    if not line.operations or [each for _, _, each in line.operations if not each]:
        return []
    before = Exact(0)
    for _, number, each in line.operations:
        before = before + Exact(number) * Exact.of(each or 0)
    return [
        (name, number, worked * Exact(number) * Exact.of(each or 0) / before)
        for name, number, each in line.operations
    ]
