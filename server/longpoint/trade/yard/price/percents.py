"""The percents of the form."""

from ...money.build import Percents
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
