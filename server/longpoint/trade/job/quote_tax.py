"""Sales tax as a quote says it: on nothing, on the material, on the price, or in the price."""

from ..lengths import show_money, show_number
from ..money.exact import Exact, dollars
from ..money.tax import tax_on_top, tax_within

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

INCLUDED = "included"
_OF = {"material": "of the material", "price": "of the price"}


def held_percent(quote: "dict[str, Any]") -> float:
    """Return the percent of the tax that the price holds; 0 where it holds none."""
    return float(quote.get("tax_percent") or 0) if quote.get("tax_on") == INCLUDED else 0.0


def tax_of(quote: "dict[str, Any]", price: int, material: int) -> "tuple[int, str]":
    """Return the cents of tax and what it is called; nothing and no words for none.

    `price` and `material` are cents. Tax that the price holds is said with its sum. What both
    agreed on stands.
    """
    on, percent = quote.get("tax_on") or "nothing", quote.get("tax_percent")
    if on == "nothing" or percent is None:
        return 0, ""
    said = f"{show_number(percent, 3)} %"
    if on == INCLUDED:
        tax = tax_within(price, percent)
        return tax, f"Tax of {show_money(dollars(tax))} included, {said}"
    agreed = (quote.get("agreed") or {}).get("tax")
    base = Exact.of_cents(price if on == "price" else material)
    tax = tax_on_top(base, percent) if agreed is None else Exact.of(agreed).cents()
    return tax, f"Tax, {said} {_OF[on]}"


def asks_percent(quote: "dict[str, Any]") -> bool:
    """Tell whether tax is taken and nobody said how much."""
    return (quote.get("tax_on") or "nothing") != "nothing" and quote.get("tax_percent") is None
