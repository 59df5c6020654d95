"""The percents of the form."""

from ...money.build import Percents
from ...money.exact import Exact
from ...money.tax import tax_within
from ...tool import Given


def percents_of(given: Given, profit_of: str) -> Percents:
    """Return the percents of a form, its profit meant as one of the price or of the cost."""
    asked = "margin_percent" if given.text("profit_of") == "price" else "markup_percent"
    percents = Percents(
        given.maybe("overhead_percent") or 0,
        given.number("contingency_percent"),
        given.number(asked),
    )
    percents.overhead_of = given.text("overhead_by")
    percents.contingency_of = given.text("contingency_of")
    percents.profit_of = profit_of
    return percents


def held_percent(given: Given) -> float:
    """Return the percent of the tax that the price holds; 0 where it holds none."""
    return given.number("tax_percent") if given.text("tax_on") == "included" else 0.0


def with_tax(given: Given) -> Exact:
    """Return what a price before tax is taken times, so that it holds its tax."""
    return Exact.more(held_percent(given))


def before_tax(given: Given, cents: int) -> int:
    """Return the cents of a price without the tax that it holds."""
    return cents - tax_within(cents, held_percent(given))
