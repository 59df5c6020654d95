"""What to ask for the work: cost built up, a price that keeps a margin, and how it is paid."""

from ...lengths import Scale, show_money
from ...money.build import UP_TO, Build, share
from ...money.exact import Exact, dollars
from ...money.stages import in_stages, parted, stage_words, stages_fault
from ...money.tax import tax_on_top
from ...tool import Answer, Given, Gives, Refusal, Tool
from .asked import INPUTS
from .even import break_even
from .hour import hour_cost, overhead_hour
from .percents import before_tax, held_percent, percents_of, with_tax
from .views import bar
from .words import CAUTIONS, SOURCES, bases, side_by_side, verdict


def work(given: Given, scale: Scale) -> Answer:
    """Return direct cost, cost and price in cents, and what of the price is kept."""
    hour, hours = hour_cost(given), Exact.of(given.number("hours"))
    parts = [
        Exact.of(given.number("material")) * Exact.more(given.number("waste_percent")),
        hours * hour,
        Exact.of(given.number("other")),
    ]
    direct = parts[0] + parts[1] + parts[2]
    if not direct.is_positive():
        raise Refusal("material", "Nothing to price: give material, hours or other cost.")
    carried = hours * overhead_hour(given)
    build = Build(direct, carried, percents_of(given, given.text("profit_of")))
    if not build.is_possible:
        raise Refusal(
            "overhead_percent",
            "Overhead and profit together take the whole price and leave nothing for the cost: "
            "make them less than 100 % of it.",
        )
    answer = Answer(scale)
    price = build.price_cents(given.text("round_up"), with_tax(given))
    _build_figures(answer, given, build, parts, price)
    side_by_side(answer, given, build, carried)
    total = _after(answer, given, build, price, parts[0])
    _stages(answer, given, total)
    break_even(answer, given, Exact.of_cents(price) * _left(given) / with_tax(given), direct)
    bases(answer, given, build, hour)
    return answer


def _left(given: Given) -> Exact:
    """Return the share of the price that a discount leaves."""
    return Exact.more(-given.number("discount_percent"))


def _build_figures(
    answer: Answer, given: Given, build: Build, parts: "list[Exact]", price: int
) -> None:
    """Add what the price is built of, the kept share as margin and as markup, and the verdict."""
    direct, cost = build.direct.cents(), build.cost.cents()
    own = before_tax(given, price)
    real = Exact.of_cents(price) / with_tax(given) if UP_TO[given.text("round_up")] else build.price
    kept = real - build.cost
    answer.money("price", dollars(price), lead=True)
    answer.money("cost", dollars(cost), lead=True)
    answer.money("direct", dollars(direct))
    names = [("material_cost", parts[0]), ("labor", parts[1]), ("other_cost", parts[2])]
    for (name, _), cents in zip(names, parted(direct, parts)):
        answer.money(name, dollars(cents))
    extra = parted(cost - direct, [build.overhead, build.cost - build.direct - build.overhead])
    answer.money("overhead", dollars(extra[0]))
    answer.money("contingency", dollars(extra[1]))
    answer.money("profit", dollars(own - cost))
    answer.number("margin_percent", share(kept, real), "%")
    answer.number("markup_percent", share(kept, build.cost), "%")
    answer.draw(bar([direct, extra[0], extra[1], own - cost, price - own], price))


def _after(answer: Answer, given: Given, build: Build, price: int, material: Exact) -> int:
    """Add discount and tax, and the verdict; return the cents that the customer pays in all."""
    percent = given.number("discount_percent")
    net = price - (Exact.of_cents(price) * Exact.percent(percent)).cents()
    if percent:
        answer.money("discount", dollars(price - net))
        answer.money("net_price", dollars(net))
    if percent and net > 0:
        left = Exact.of_cents(price) * _left(given) / with_tax(given)
        answer.number("margin_left_percent", share(left - build.cost, left), "%")
    own = before_tax(given, net)
    verdict(answer, percent, (net, own), build.cost.cents())
    if given.text("tax_on") == "nothing":
        return net
    if held_percent(given):
        answer.money("tax", dollars(net - own))
        answer.money("before_tax", dollars(own))
        return net
    base = Exact.of_cents(net) if given.text("tax_on") == "price" else material
    tax = tax_on_top(base, given.number("tax_percent"))
    answer.money("tax", dollars(tax))
    answer.money("total", dollars(net + tax))
    return net + tax


def _stages(answer: Answer, given: Given, total: int) -> None:
    rows = given.rows("stages")
    if not rows:
        return
    percents = [row.number("percent") for row in rows]
    fault = stages_fault(percents)
    if fault:
        raise Refusal("stages", fault)
    amounts = in_stages(total, percents)
    answer.money("first_stage", dollars(amounts[0]))
    answer.money("last_stage", dollars(amounts[-1]))
    table = []
    for at, row in enumerate(rows):
        name, percent = stage_words(row.text("name"), at, percents[at])
        table.append([name, percent, show_money(dollars(amounts[at]))])
    table.append(["Together", "100 %", show_money(dollars(total))])
    answer.table("Stages", ["When", "Of the total", "Amount"], table)


TOOL = Tool(
    slug="price",
    place="yard",
    title="Price",
    question="What to ask for the work: what does it cost, what is kept, how is it paid?",
    finds=("quote", "bid", "estimate", "markup", "margin", "overhead", "profit", "burden", "labor",
           "wage", "rate", "deposit", "draw", "tax", "discount", "break-even", "contingency"),
    inputs=INPUTS,
    work=work,
    gives=[
        Gives("price", "money", "Price"),
        Gives("cost", "money", "Cost"),
        Gives("direct", "money", "Direct cost", short="direct"),
        Gives("material_cost", "money", "Material with waste", short="material"),
        Gives("labor", "money", "Labor"),
        Gives("other_cost", "money", "Other direct cost", short="other"),
        Gives("overhead", "money", "Overhead"),
        Gives("contingency", "money", "Contingency"),
        Gives("profit", "money", "Profit"),
        Gives("margin_percent", "number", "Margin: percent of the price", short="margin"),
        Gives("markup_percent", "number", "Markup: percent of the cost", short="markup"),
        Gives("other_price", "money", "The same percent the other way", sometimes=True),
        Gives("discount", "money", "Discount", sometimes=True),
        Gives("net_price", "money", "Price less discount", sometimes=True),
        Gives("margin_left_percent", "number", "Margin after the discount", sometimes=True),
        Gives("tax", "money", "Tax", sometimes=True),
        Gives("total", "money", "With tax", sometimes=True),
        Gives("before_tax", "money", "Price before tax", sometimes=True),
        Gives("first_stage", "money", "First stage", sometimes=True),
        Gives("last_stage", "money", "Last stage", sometimes=True),
        Gives("hour_cost", "money", "An hour costs", sometimes=True),
        Gives("hour_times", "number", "Times the wage", sometimes=True),
        Gives("hour_overhead", "money", "Overhead an hour", sometimes=True),
        Gives("break_even_sales", "money", "Sales a year to break even", sometimes=True),
        Gives("break_even_jobs", "count", "Jobs like this a year to break even", sometimes=True),
        Gives("break_even_hours", "number", "Hours a year to break even", sometimes=True),
    ],
    example={
        "material": "640",
        "waste_percent": 15,
        "hours": 22,
        "rate": 45,
        "overhead_percent": 20,
        "contingency_percent": 5,
        "margin_percent": 15,
        "stages": [
            {"name": "Deposit", "percent": 30},
            {"name": "Delivered", "percent": 40},
            {"name": "Done", "percent": 30},
        ],
    },
    cautions=CAUTIONS,
    sources=SOURCES,
)  # fmt: skip
