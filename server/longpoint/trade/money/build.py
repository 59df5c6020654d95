"""How a price is built: direct cost, overhead, contingency, profit, each on a base that is said.

Every sum is worked out exactly and rounded once; parts are what lies between rounded sums, so that
every column adds up to the cent.
"""

from .exact import Exact

UP_TO = {"cent": 0, "one": 100, "five": 500, "ten": 1000}
"""Cents that a price is rounded up to; 0 for half up to the cent."""
_ONCE = Exact(1)


class Percents:
    """The percents of a price, and what each is taken of.

    Parameters
    ----------
    overhead : float
        Percent of `overhead_of`: ``direct`` or ``price``.
    contingency : float
        Percent of `contingency_of`: ``sum`` (direct cost and overhead) or ``direct``.
    profit : float
        Percent of `profit_of`: ``price`` (a margin) or ``cost`` (a markup).
    """

    def __init__(self, overhead: float, contingency: float, profit: float) -> None:
        self.overhead = Exact.percent(overhead)
        self.contingency = Exact.percent(contingency)
        self.profit = Exact.percent(profit)
        self.overhead_of = "direct"
        self.contingency_of = "sum"
        self.profit_of = "price"


class Build:
    """A price as it is built up.

    Parameters
    ----------
    direct : Exact
        Dollars of material, hours and what else this job alone costs.
    hourly_overhead : Exact
        Dollars of overhead that its hours carry; nothing where overhead is a percent.
    percents : Percents
        Of them.

    Attributes
    ----------
    cost, price : Exact
        Not rounded. `overhead` is a part of the cost.
    """

    def __init__(self, direct: Exact, hourly_overhead: Exact, percents: Percents) -> None:
        self.direct = direct
        one, more = Exact(1), Exact(1) + percents.contingency
        fixed = hourly_overhead
        share = percents.overhead
        if percents.overhead_of == "direct":
            fixed = fixed + direct * share
            share = Exact(0)
        on_overhead = more if percents.contingency_of == "sum" else one
        # cost = direct * more + (fixed + share * price) * on_overhead; price * kept = cost * times.
        kept = one - percents.profit if percents.profit_of == "price" else one
        times = one if percents.profit_of == "price" else one + percents.profit
        known = direct * more + fixed * on_overhead
        left = kept - share * on_overhead * times
        self.is_possible = left.is_positive()
        """Whether overhead and profit leave anything of the price for the cost."""
        self.price = known * times / left if self.is_possible else Exact(0)
        self.cost = self.price * kept / times
        self.overhead = fixed + share * self.price

    def price_cents(self, up_to: str, times: Exact = _ONCE) -> int:
        """Return the price as cents, half up or up to what `UP_TO` names.

        `times` takes the price with the tax that it shall hold.
        """
        price, whole = self.price * times, UP_TO[up_to]
        return price.cents_up_to(whole) if whole else price.cents()


def share(part: Exact, whole: Exact) -> float:
    """Return how many percent of the whole a part is.

    >>> share(Exact(1), Exact(4))
    25.0
    """
    return (part * Exact(100) / whole).near()
