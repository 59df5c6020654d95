"""Sales tax as the shop says it: on top of a price, or in it already."""

from .exact import Exact


def tax_on_top(base: Exact, percent: float) -> int:
    """Return the cents of tax on dollars that don't hold it.

    >>> tax_on_top(Exact.of(30.3), 7.25)
    220
    """
    return (base * Exact.percent(percent)).cents()


def tax_within(cents: int, percent: float) -> int:
    """Return the cents of tax in a price that holds it; the rest is the price before tax.

    >>> tax_within(107250, 7.25), tax_within(100, 0)
    (7250, 0)
    """
    share = Exact.percent(percent)
    return (Exact.of_cents(cents) * share / (Exact(1) + share)).cents()
