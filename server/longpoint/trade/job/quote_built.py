"""A quote's price as it is built: its rows, each percent with its base, and what stays of it."""

from ..finish.week import lasting
from ..lengths import show_money, show_number
from ..money.build import Build, Percents
from ..money.exact import Exact, dollars
from ..money.tax import tax_within
from .quote_tax import held_percent

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from .quote_lines import Line


def percents_of(rates: "dict[str, Any]") -> Percents:
    """Return the shop's percents."""
    percents = Percents(
        rates["overhead_percent"], rates.get("contingency_percent") or 0, rates["profit_percent"]
    )
    percents.profit_of = rates.get("profit_of") or "price"
    return percents


def build_of(rates: "dict[str, Any]", lines: "list[Line]") -> "Build | None":
    """Return the price of all lines, before tax; None where profit takes all of it."""
    direct = Exact.of_cents(sum([line.material for line in lines]))
    for line in lines:
        direct = direct + line.labor(rates["rate"])
    build = Build(direct, Exact(0), percents_of(rates))
    return build if build.is_possible else None


def asked_cents(quote: "dict[str, Any]", build: Build) -> int:
    """Return the cents that the customer is asked for, rounded as the shop rounds.

    Where the price holds the tax, what the shop keeps is the share it said of what is left
    without it: the price grows by the tax.
    """
    up_to = (quote.get("rates") or {}).get("round_up") or "cent"
    return build.price_cents(up_to, Exact.more(held_percent(quote)))


def before_tax(quote: "dict[str, Any]", price: int) -> int:
    """Return the cents of a price without the tax that it holds."""
    return price - tax_within(price, held_percent(quote))


def kept_words(quote: "dict[str, Any]", price: int, cost: int) -> str:
    """Say in words what stays of the price; tax that it holds is not the shop's."""
    name = "price before tax" if held_percent(quote) else "price"
    own = before_tax(quote, price)
    if own < cost:
        return f"The {name} is {show_money(dollars(cost - own))} under its cost."
    if own == 0:
        return ""
    percent = show_number(100 * (own - cost) / own, 1)
    return f"You keep {show_money(dollars(own - cost))}, {percent} % of the {name}."


def hours_text(hours: Exact) -> str:
    """Return hours as they are said: ``2.75 h``; what minutes make of them as ``7 h 26 min``."""
    if (hours * Exact(100)).is_whole():
        return show_number(hours.near(), 2) + " h"
    return lasting((hours * Exact(60)).rounded())


def said_build(
    quote: "dict[str, Any]", lines: "list[Line]", build: Build, price: int
) -> "list[dict[str, Any]]":
    """Return the build-up as rows that add up, each percent with its base."""
    rates = quote["rates"]
    material, direct = sum([line.material for line in lines]), build.direct.cents()
    overhead, cost = (build.direct + build.overhead).cents() - direct, build.cost.cents()
    rows = [
        ("material", "Material", material),
        ("labor", f"{_all_hours(lines)} at {show_money(rates['rate'])}", direct - material),
        ("direct", "Direct cost", direct),
        ("overhead", f"Overhead, {_percent(rates, 'overhead')} of the direct cost", overhead),
        (
            "contingency",
            f"Contingency, {_percent(rates, 'contingency')} of direct cost and overhead",
            cost - direct - overhead,
        ),
        ("cost", "Cost", cost),
    ] + _on_cost(quote, cost, price)
    return [
        {"name": name, "label": label, "text": show_money(dollars(cents)), "value": dollars(cents)}
        for name, label, cents in rows
    ]


def _on_cost(quote: "dict[str, Any]", cost: int, price: int) -> "list[tuple[str, str, int]]":
    """Return the rows from the cost to the price: profit, and the tax that the price holds."""
    within, own = held_percent(quote), before_tax(quote, price)
    whole, of = cost, "of the cost"
    if percents_of(quote["rates"]).profit_of == "price":
        whole, of = own, "of the price before tax" if within else "of the price"
    # What it really is: rounding up and a price agreed on before have moved it from the shop's.
    percent = show_number(100 * (own - cost) / whole, 1) if whole else "0"
    rows = [("profit", f"Profit, {percent} % {of}", own - cost)]
    if within:
        tax = f"Tax in the price, {show_number(within, 3)} %"
        rows += [("before_tax", "Price before tax", own), ("tax", tax, price - own)]
    return rows + [("price", "Price", price)]


def _all_hours(lines: "list[Line]") -> str:
    hours = Exact(0)
    for line in lines:
        hours = hours + line.known_hours()
    return hours_text(hours)


def _percent(rates: "dict[str, Any]", name: str) -> str:
    return show_number(rates.get(name + "_percent") or 0) + " %"
