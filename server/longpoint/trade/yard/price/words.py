"""The price in words: the base of every percent, margin and markup side by side, cautions."""

from ...lengths import show_money, show_number
from ...money.build import Build, share
from ...money.exact import Exact, dollars
from ...tool import Answer, Given
from .hour import overhead_hour
from .percents import held_percent, percents_of, with_tax

CAUTIONS = [
    "How much may be taken as a deposit, what a contract signed at the customer's home must say, "
    "how long it can be canceled, and whether a license number is needed differ by state: check "
    "your state.",
    "Sales tax on work that is built in differs by state and by who makes it: ask your state or "
    "your accountant. What is computed here is only what you said.",
]

SOURCES = [
    "Cost build-up, margin and markup: arithmetic; the four heads material, labor, overhead and "
    "profit stand in painters' estimating books since 1916. Break-even: fixed costs over what is "
    "left of each sale, as accounting courses teach it.",
    "Cost of an hour: as an estimating textbook of about 2010 works it out, $29 an hour becoming "
    "$41.41. Its tax rates are old: use your own bills.",
    "Sums are exact and rounded to the cent once, half up; the largest part takes the odd cent.",
]


def bases(answer: Answer, given: Given, build: Build, hour: Exact) -> None:
    """Say what every percent is taken of, and add what an hour costs where it was worked out."""
    if given.text("hour") == "wage":
        answer.money("hour_cost", hour.near())
        answer.number("hour_times", (hour / Exact.of(given.number("wage"))).near())
    carried = overhead_hour(given)
    if given.text("overhead_by") == "hour":
        answer.money("hour_overhead", carried.near())
    answer.note("Bases: " + "; ".join(_bases(given)) + ".")
    if not given.number("contingency_percent"):
        answer.note("No contingency is in it: what can't be seen yet comes out of the profit.")


def _bases(given: Given) -> "list[str]":
    overhead = {
        "direct": "overhead of the direct cost",
        "price": "overhead of the price",
        "hour": "overhead by the hour",
    }[given.text("overhead_by")]
    said = ["waste of the net material", overhead]
    if given.number("contingency_percent"):
        whole = given.text("contingency_of") == "sum"
        said.append("contingency of the direct cost" + (" and overhead" if whole else " alone"))
    margin = given.text("profit_of") == "price"
    before = " before tax" if held_percent(given) else ""
    said.append("profit of the price" + before if margin else "profit of the cost")
    if before:
        said.append("tax of the price before tax")
    elif given.text("tax_on") in ("price", "material"):
        on = "price less discount" if given.text("tax_on") == "price" else "material with waste"
        said.append("tax of the " + on)
    return said


def verdict(answer: Answer, discount: float, asks: "tuple[int, int]", cost: int) -> None:
    """Say what to ask, after the discount, and what of it is kept or lost; cents.

    `asks` are what is asked, and what it is without the tax that it holds.
    """
    asked = "Ask " + show_money(dollars(asks[0]))
    net, of = asks[1], "it" if asks[0] == asks[1] else f"{show_money(dollars(asks[1]))} before tax"
    if discount:
        asked += f", {show_number(discount)} % taken off"
    if net < cost:
        answer.verdict(f"{asked}: {show_money(dollars(cost - net))} less than it costs you")
        return
    kept = f"{asked}: you keep {show_money(dollars(net - cost))}"
    percent = show_number(100 * (net - cost) / net, 1)
    answer.verdict(
        f"{kept}, {percent} % of {of}, over a cost of {show_money(dollars(cost))}",
        f"{kept}, {percent} % of {of}",
        kept,
    )


def side_by_side(answer: Answer, given: Given, build: Build, carried: Exact) -> None:
    """Add a table of the percent as margin and as markup, and the price it makes the other way."""
    is_margin = given.text("profit_of") == "price"
    percent = show_number(given.number("margin_percent" if is_margin else "markup_percent"))
    other = Build(build.direct, carried, percents_of(given, "cost" if is_margin else "price"))
    names = (f"{percent} % margin", f"{percent} % markup")
    ways = [build, other] if is_margin else [other, build]
    times = with_tax(given)
    rows = [_row(names[at], way, times) for at, way in enumerate(ways) if way.is_possible]
    columns = ["Meant as", "Price", "Kept", "Of the price", "Of the cost"]
    answer.table("Margin against markup", columns, rows, 0 if is_margin else len(rows) - 1)
    if other.is_possible:
        label = f"{percent} % as " + ("markup" if is_margin else "margin")
        answer.money("other_price", dollars((other.price * times).cents()), label=label)


def _row(name: str, build: Build, times: Exact) -> "list[str]":
    kept = build.price - build.cost
    percents = [show_number(share(kept, whole), 1) + " %" for whole in (build.price, build.cost)]
    shown = [show_money(dollars(amount.cents())) for amount in (build.price * times, kept)]
    return [name] + shown + percents
