"""Where the year breaks even on jobs like this one."""

from ...money.exact import Exact
from ...tool import Answer, Given


def break_even(answer: Answer, given: Given, sold: Exact, direct: Exact) -> None:
    """Add sales, jobs and hours a year that pay the fixed costs and the profit wanted.

    Parameters
    ----------
    sold : Exact
        Dollars that a job like this is sold for, after a discount and without tax.
    direct : Exact
        Its direct cost.
    """
    over = sold - direct
    fixed = given.maybe("fixed_costs")
    if fixed is None:
        return
    if not over.is_positive():
        answer.note(
            "This price leaves nothing over the direct cost: no number of such jobs pays the "
            "year's fixed costs."
        )
        return
    wanted = Exact.of(fixed) + Exact.of(given.number("year_profit"))
    jobs, hours = wanted / over, Exact.of(given.number("hours"))
    answer.money("break_even_sales", (jobs * sold).cents() / 100)
    answer.count("break_even_jobs", jobs.whole_up())
    if hours.is_positive():
        answer.number("break_even_hours", (jobs * hours).near(), "h", places=1)
    answer.note(
        "Breaking even: what a job like this leaves over its direct cost pays the year's fixed "
        "costs and the profit wanted; overhead and fixed costs are the same money said twice."
    )
