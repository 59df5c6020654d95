"""What an hour costs its employer, and what it carries of the shop's year."""

from ...money.exact import Exact
from ...tool import Given, Refusal


def hour_cost(given: Given) -> Exact:
    """Return what an hour costs: as known, or from the wage, to the cent.

    Wages of all paid hours and what else is paid as wages, with what is charged on wages, and what
    is paid a year whatever the wages, over the hours that customers pay.

    Raises
    ------
    Refusal
        More hours are sold than paid.
    """
    if given.text("hour") == "known":
        return Exact.of(given.number("rate"))
    paid, billed = given.number("paid_hours"), given.number("billable_hours")
    if billed > paid:
        raise Refusal(
            "billable_hours",
            "More hours that customers pay than hours that are paid: count all paid hours, "
            "holidays, driving and shop time too.",
        )
    wages = Exact.of(given.number("wage")) * Exact.of(paid) + Exact.of(given.number("extra_pay"))
    year = wages * Exact.more(given.number("payroll_percent")) + Exact.of(given.number("yearly"))
    return Exact.of_cents((year / Exact.of(billed)).cents())


def overhead_hour(given: Given) -> Exact:
    """Return the overhead that an hour carries, to the cent; nothing where it is a percent."""
    if given.text("overhead_by") != "hour":
        return Exact(0)
    year = Exact.of(given.number("overhead_year"))
    return Exact.of_cents((year / Exact.of(given.number("overhead_hours"))).cents())
