"""What the price asks for."""

from ...tool import Choice, Number, Rows, Text

_KNOWN, _WAGE = ("hour", "known"), ("hour", "wage")
_BY_PERCENT, _BY_HOUR = ("overhead_by", "direct", "price"), ("overhead_by", "hour")
_TAXED = ("tax_on", "material", "price", "included")
MOST_DOLLARS = 1e7

_DIRECT = [
    Number("material", "Material", unit="$", most=MOST_DOLLARS, help="Net: what ends up in it."),
    Number("waste_percent", "Waste", unit="%", default=0, most=300, help="Added to the material."),
    Number("other", "Other direct cost", unit="$", default=0, most=MOST_DOLLARS,
           help="Subs, delivery, rented tools: for this job alone."),
    Number("hours", "Hours", unit="h", most=100000, help="All of them: measuring and driving too."),
    Choice("hour", "An hour", [("known", "its cost is known"), ("wage", "from the wage")],
           default="known"),
    Number("rate", "Cost of an hour", unit="$", most=10000, only_when=_KNOWN,
           help="With taxes and benefits, without overhead and profit."),
]  # fmt: skip

_HOUR = [
    Number("wage", "Wage an hour", unit="$", above=0, most=10000, only_when=_WAGE),
    Number("paid_hours", "Hours paid a year", unit="h", above=0, most=10000, only_when=_WAGE,
           help="2080 for 52 weeks of 40, paid leave counted."),
    Number("billable_hours", "Hours sold a year", unit="h", above=0, most=10000, only_when=_WAGE,
           help="Those that customers pay: not leave, driving, sharpening, quoting."),
    Number("payroll_percent", "Charged on wages", unit="%", most=300, only_when=_WAGE,
           help="Employer's taxes, workers' comp, liability, retirement: by your own bills."),
    Number("extra_pay", "Extra pay a year", unit="$", default=0, most=MOST_DOLLARS, only_when=_WAGE,
           help="Overtime's extra, bonus: counted as wages."),
    Number("yearly", "Other cost of the person a year", unit="$", default=0, most=MOST_DOLLARS,
           only_when=_WAGE, help="Health insurance, taxes with a cap: not by the wage."),
]  # fmt: skip

_BUILD = [
    Choice("overhead_by", "Overhead by",
           [("direct", "percent of direct cost"), ("price", "percent of the price"),
            ("hour", "the hour, from the year")], default="direct"),
    Number("overhead_percent", "Overhead", unit="%", most=900, only_when=_BY_PERCENT,
           help="Rent, truck, insurance, phone, the office."),
    Number("overhead_year", "Overhead a year", unit="$", most=MOST_DOLLARS, only_when=_BY_HOUR),
    Number("overhead_hours", "Hours sold a year, whole shop", unit="h", above=0, most=1000000,
           only_when=_BY_HOUR),
    Number("contingency_percent", "Contingency", unit="%", default=0, most=300,
           help="For what nobody can see yet."),
    Choice("contingency_of", "Contingency of",
           [("sum", "direct cost and overhead"), ("direct", "direct cost alone")], default="sum"),
    Choice("profit_of", "Profit as",
           [("price", "margin: percent of the price"), ("cost", "markup: percent of the cost")],
           default="price"),
    Number("margin_percent", "Margin", unit="%", most=95, only_when=("profit_of", "price")),
    Number("markup_percent", "Markup", unit="%", most=900, only_when=("profit_of", "cost")),
]  # fmt: skip

_AFTER = [
    Choice("round_up", "Price rounded",
           [("cent", "to the cent"), ("one", "up to a dollar"), ("five", "up to 5 dollars"),
            ("ten", "up to 10 dollars")], default="cent"),
    Number("discount_percent", "Discount", unit="%", default=0, most=100),
    Choice("tax_on", "Sales tax on",
           [("nothing", "nothing"), ("material", "material with its waste"),
            ("price", "the whole price"), ("included", "in the price already")],
           default="nothing", help="Your state says which: ask it, not a calculator."),
    Number("tax_percent", "Tax", unit="%", most=50, only_when=_TAXED),
    Number("fixed_costs", "Fixed costs a year", unit="$", above=0, most=1e9, optional=True,
           default_text="not said", help="To tell where the year breaks even on jobs like this."),
    Number("year_profit", "Profit wanted a year", unit="$", default=0, most=1e9,
           help="Over the fixed costs."),
    Rows("stages", "Paid in stages", [
        Text("name", "When", optional=True, default_text="stage"),
        Number("percent", "Of the total", unit="%", above=0, most=100),
    ], row="stage", least=0, most=12),
]  # fmt: skip

INPUTS = _DIRECT + _HOUR + _BUILD + _AFTER
