"""A job's quote: lines by item, the price built on them, what is due, and what was kept of it."""

from ..lengths import show_money
from ..money.build import Build, Percents
from ..money.exact import Exact, dollars
from .quote_built import asked_cents, build_of, hours_text, kept_words, said_build
from .quote_due import due
from .quote_lines import Line, learned, lines_of, said_operations, shared
from .quote_tax import asks_percent
from .quote_typed import Read

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from .pieces import Cut
    from .working import Done

_ASKED = (
    ("rate", "What does an hour cost?"),
    ("overhead_percent", "Overhead, percent of the direct cost: 0 for none."),
    ("profit_percent", "Profit, percent: 0 for none."),
)


def quote_of(
    job: "dict[str, Any]",
    done: "dict[str, Done]",
    cuts: "list[list[Cut]]",
    bought: "list[dict[str, Any]]",
) -> "dict[str, Any] | None":
    """Return what a job's quote comes to; None where none was begun.

    `cuts` are the pieces by question, `bought` the lines of the buy list. Dollars are exact to the
    cent, every column adds up.
    """
    if job.get("quote") is None:
        return None
    read = Read(job)
    job, quote = read.job, read.job["quote"]
    rates = quote.get("rates") or {}
    lines, unpriced = lines_of(job, done, [cut for mine in cuts for cut in mine], bought)
    wrong = [each["field"] for each in read.faults]
    asks = read.asks()
    asks += [
        words for name, words in _ASKED if rates.get(name) is None and "rates." + name not in wrong
    ]
    items = [item["id"] for item in job["items"]]
    asks += [f"{line.title}: how many hours?" for line in lines if _asks_hours(line, items, wrong)]
    build = None if asks else build_of(rates, lines)
    if build is None and not asks:
        asks.append("This profit leaves nothing of the price for the cost: less than 100 %.")
    warnings = [f"{title} has no price yet." for title in unpriced] + read.warnings()
    if asks_percent(quote) and "quote.tax_percent" not in wrong:
        warnings.append("Tax: how many percent? It counts as nothing until it is said.")
    reply = {
        "asks": asks,
        "warnings": warnings,
        "faults": read.faults,
        "learned": learned(lines),
    }
    reply.update(_priced(quote, rates, lines, build))
    return reply


def _asks_hours(line: Line, items: "list[str]", wrong: "list[str]") -> bool:
    """Tell whether a line has no price without its hours: each item; 0 may be said."""
    if line.hours is not None or line.id == "":
        return False
    if f"items.{line.id}.hours" in wrong or f"lines.{line.id}.hours" in wrong:
        return False
    return line.id in items or line.material == 0


def _priced(
    quote: "dict[str, Any]", rates: "dict[str, Any]", lines: "list[Line]", build: "Build | None"
) -> "dict[str, Any]":
    """Return lines, build-up, price, what is due; without rates the lines alone."""
    agreed = (quote.get("agreed") or {}).get("price")
    computed = None if build is None else asked_cents(quote, build)
    price = computed if agreed is None else Exact.of(agreed).cents()
    material = sum([line.material for line in lines])
    reply: dict[str, Any] = {
        "lines": _said_lines(quote, lines, price),
        "build": [],
        "price": None if price is None else dollars(price),
        "price_text": "" if price is None else show_money(dollars(price)),
        "kept": "",
        "drift": _drift(computed, agreed),
    }
    if build is not None and price is not None:
        reply["build"] = said_build(quote, lines, build, price)
        reply["kept"] = kept_words(quote, price, build.cost.cents())
    reply["due"] = None if price is None else due(quote, price, material)
    reply["compare"] = _compare(quote, lines, build, price)
    return reply


def _drift(computed: "int | None", agreed: "float | None") -> str:
    """Say where the job's numbers have moved since the price was agreed."""
    if computed is None or agreed is None:
        return ""
    off = computed - Exact.of(agreed).cents()
    if off == 0:
        return ""
    now, by = show_money(dollars(computed)), show_money(dollars(abs(off)))
    return f"By today's numbers it would be {now}, {by} {'more' if off > 0 else 'less'}."


def _prices(
    quote: "dict[str, Any]", lines: "list[Line]", price: "int | None"
) -> "list[int | None]":
    """Return the cents of each line: as agreed on, else its share of the price by its cost."""
    agreed = (quote.get("agreed") or {}).get("lines")
    if agreed:
        known = {each["line"]: Exact.of(each["price"]).cents() for each in agreed}
        return [known.get(line.id) for line in lines]
    if price is None:
        return [None for _ in lines]
    rate = (quote.get("rates") or {}).get("rate") or 0
    return list(shared(price, [Exact.of_cents(line.material) + line.labor(rate) for line in lines]))


def _said_lines(
    quote: "dict[str, Any]", lines: "list[Line]", price: "int | None"
) -> "list[dict[str, Any]]":
    prices = _prices(quote, lines, price)
    return [
        {
            "id": line.id,
            "title": line.title,
            "count": line.count,
            "material_text": show_money(dollars(line.material)),
            "hours": None if line.hours is None else line.hours.near(),
            "hours_text": "" if line.hours is None else hours_text(line.hours),
            "is_typed": line.is_typed,
            "price_text": "" if cents is None else show_money(dollars(cents)),
            "price": None if cents is None else dollars(cents),
            "operations": said_operations(line),
        }
        for line, cents in zip(lines, prices)
    ]


def _compare(
    quote: "dict[str, Any]", lines: "list[Line]", build: "Build | None", price: "int | None"
) -> "dict[str, Any] | None":
    """Return estimate beside actual, item by item; None until hours worked were said."""
    worked = [line for line in lines if line.actual is not None]
    if not worked:
        return None
    rows = [_compared(line) for line in lines if line.id]
    words = ""
    if build is not None and price is not None:
        rates = quote["rates"]
        direct = Exact.of_cents(sum([line.spent for line in lines]))
        for line in lines:
            hours = line.known_hours() if line.actual is None else line.actual
            direct = direct + hours * Exact.of(rates["rate"])
        spent = Build(direct, Exact(0), Percents(rates["overhead_percent"], 0, 0))
        words = kept_words(quote, price, spent.cost.cents())
    return {"rows": rows, "words": words}


def _compared(line: Line) -> "dict[str, Any]":
    over = "" if line.actual is None else _over(line.actual - line.known_hours())
    return {
        "id": line.id,
        "title": line.title,
        "hours_text": hours_text(line.known_hours()),
        "actual_text": "" if line.actual is None else hours_text(line.actual),
        "over_text": over,
        "material_text": show_money(dollars(line.material)),
        "paid_text": show_money(dollars(line.paid)),
    }


def _over(hours: Exact) -> str:
    if hours.is_positive():
        return hours_text(hours) + " more"
    less = Exact(0) - hours
    return hours_text(less) + " less" if less.is_positive() else "as quoted"
