"""A price taken apart: what overhead and profit take of any price, and where nothing is left over.

In decimals of 60 digits. What a price leaves is a straight line, so two prices tell where it
crosses nothing; the tool builds fractions up instead. Money is rounded half up, as `decimal` does.
"""

from decimal import ROUND_CEILING, ROUND_HALF_UP, Decimal, localcontext
from random import Random
from typing import Any

from tests.trade.references.expected import Expected

SLUG = "price"
CENT = Decimal("0.01")
UP_TO = {"one": 1, "five": 5, "ten": 10}


def draw(random: Random) -> dict[str, Any]:
    inputs: dict[str, Any] = {
        "material": random.choice([0, random.randint(0, 500000) / 100]),
        "waste_percent": random.choice([0, 10, 12.5, 15]),
        "other": random.choice([0, random.randint(0, 90000) / 100]),
        "hours": random.choice([0, random.randint(0, 400) / 4]),
        "hour": random.choice(["known", "known", "wage"]),
        "overhead_by": random.choice(["direct", "price", "hour"]),
        "contingency_percent": random.choice([0, 5, 7.5]),
        "contingency_of": random.choice(["sum", "direct"]),
        "profit_of": random.choice(["price", "cost"]),
        "round_up": random.choice(["cent", "one", "five", "ten"]),
        "discount_percent": random.choice([0, 0, 5, 12.5]),
        "tax_on": random.choice(["nothing", "material", "price", "included"]),
        "tax_percent": random.choice([6, 7.25, 8.875]),
        "overhead_percent": random.randint(0, 60),
        "overhead_year": random.randint(0, 90000),
        "overhead_hours": random.randint(500, 4000),
        "rate": random.randint(2000, 9000) / 100,
        "wage": random.randint(1500, 6000) / 100,
        "paid_hours": random.randint(1500, 2300),
        "billable_hours": random.randint(800, 1700),
        "payroll_percent": random.choice([10, 20.15, 33]),
        "extra_pay": random.choice([0, 4600]),
        "yearly": random.choice([0, 4466.5]),
        "margin_percent": random.randint(0, 60),
        "markup_percent": random.randint(0, 150),
        "stages": [{"percent": each} for each in random.choice([[], [40, 40, 20], [33.3, 66.7]])],
    }
    return inputs | ({"fixed_costs": 36000, "year_profit": 500} if random.random() < 0.5 else {})


def cents(amount: Decimal) -> Decimal:
    return amount.quantize(CENT, ROUND_HALF_UP)


def hour_of(said: dict[str, Decimal], inputs: dict[str, Any]) -> Decimal:
    if inputs["hour"] == "known":
        return said["rate"]
    wages = said["wage"] * said["paid_hours"] + said["extra_pay"]
    year = wages + wages * said["payroll_percent"] / 100 + said["yearly"]
    return cents(year / said["billable_hours"])


def apart(price: Decimal, direct: Decimal, said: dict[str, Decimal], inputs: dict[str, Any]) -> Any:
    """Return the cost behind a price, and what the price leaves when its profit is taken too."""
    overhead = {
        "direct": direct * said["overhead_percent"] / 100,
        "price": price * said["overhead_percent"] / 100,
        "hour": said["hours"] * cents(said["overhead_year"] / said["overhead_hours"]),
    }[inputs["overhead_by"]]
    base = direct + (overhead if inputs["contingency_of"] == "sum" else 0)
    cost = direct + overhead + base * said["contingency_percent"] / 100
    of_price = price * said["margin_percent"] / 100
    of_cost = cost * said["markup_percent"] / 100
    return cost, price - cost - (of_price if inputs["profit_of"] == "price" else of_cost)


def expect(inputs: dict[str, Any]) -> Expected | None:
    with localcontext() as context:
        context.prec = 60
        return worked_out(inputs)


def worked_out(inputs: dict[str, Any]) -> Expected | None:
    said = {
        name: Decimal(str(value))
        for name, value in inputs.items()
        if isinstance(value, int | float)
    }
    if inputs["hour"] == "wage" and said["billable_hours"] > said["paid_hours"]:
        return None
    material = said["material"] * (100 + said["waste_percent"]) / 100
    direct = material + said["hours"] * hour_of(said, inputs) + said["other"]
    at_none, at_one = (apart(Decimal(at), direct, said, inputs)[1] for at in (0, 1))
    if direct == 0 or at_one <= at_none:
        return None
    exact = at_none / (at_none - at_one)
    held = 1 + (said["tax_percent"] / 100 if inputs["tax_on"] == "included" else 0)
    cost, price = apart(exact, direct, said, inputs)[0], cents(exact * held)
    if inputs["round_up"] in UP_TO:
        step = UP_TO[inputs["round_up"]]
        price = (exact * held / step).quantize(Decimal(1), ROUND_CEILING) * step
        exact = price / held
    figures = {
        "direct": cents(direct),
        "cost": cents(cost),
        "price": price,
        "profit": price - cents(price - price / held) - cents(cost),
        "margin_percent": (exact - cost) / exact * 100,
        "markup_percent": (exact - cost) / cost * 100,
    }
    figures |= after(inputs, said, price, material)
    if "fixed_costs" in inputs:
        figures |= even(said, price * (100 - said["discount_percent"]) / 100 / held, direct)
    return Expected(figures={name: float(value) for name, value in figures.items()})


def after(
    inputs: dict[str, Any], said: dict[str, Decimal], price: Decimal, material: Decimal
) -> dict[str, Decimal]:
    off = cents(price * said["discount_percent"] / 100)
    due, figures = price - off, {}
    if off:
        figures |= {"discount": off, "net_price": due}
    if inputs["tax_on"] == "included":
        tax = cents(due - due / (1 + said["tax_percent"] / 100))
        figures |= {"tax": tax, "before_tax": due - tax}
    elif inputs["tax_on"] != "nothing":
        base = due if inputs["tax_on"] == "price" else material
        tax = cents(base * said["tax_percent"] / 100)
        due += tax
        figures |= {"tax": tax, "total": due}
    percents = [Decimal(str(row["percent"])) for row in inputs["stages"]]
    if percents:
        rest = due - sum(cents(due * percent / 100) for percent in percents[:-1])
        figures |= {"first_stage": cents(due * percents[0] / 100), "last_stage": rest}
    return figures


def even(said: dict[str, Decimal], sold: Decimal, direct: Decimal) -> dict[str, Decimal]:
    over = sold - direct
    if over <= 0:
        return {}
    jobs = (said["fixed_costs"] + said["year_profit"]) / over
    figures = {"break_even_jobs": jobs.quantize(Decimal(1), ROUND_CEILING)}
    figures["break_even_sales"] = cents(jobs * sold)
    return figures | ({"break_even_hours": jobs * said["hours"]} if said["hours"] else {})
