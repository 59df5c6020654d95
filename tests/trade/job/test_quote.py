"""The quote of a job. Expected numbers are hand work beside their check, or of `fractions`."""

import json
from collections.abc import Iterator
from decimal import ROUND_HALF_UP, Decimal
from fractions import Fraction
from random import Random
from typing import Any

import pytest

from longpoint.trade.calls import call
from longpoint.trade.money.tax import tax_within
from longpoint.trade.shelf import tool_named
from tests.trade.phone_core import Call, phone_core

from .asking import ask, blank, refused, worked

FRAME = {"fit": "inside", "opening_width": "30", "opening_height": "40", "trim_width": "3"}
"""Four pieces 3 wide: two of 40, two of 30; two sticks of 96."""
RATES = {"rate": 45, "overhead_percent": 20, "contingency_percent": 5, "profit_percent": 15}


def frame(own: str, stock: str = "s", **rest: Any) -> dict[str, Any]:
    entry = {"id": own + "-e", "letter": own.upper(), "tool": "mitered-frame", "inputs": FRAME,
             "stock": {"all": stock}}  # fmt: skip
    return {"id": own, "title": "Mirror " + own, "entries": [entry]} | rest


def bored(**rest: Any) -> dict[str, Any]:
    """Return an item of one operation alone."""
    tool = tool_named("lock-boring")
    entry = {"id": "lock", "letter": "L", "tool": tool.slug, "inputs": tool.example}
    return {"id": "b", "title": "Locks", "entries": [entry]} | rest


def job(quote: dict[str, Any], **rest: Any) -> dict[str, Any]:
    stock = {
        "id": "s",
        "title": "1x4",
        "sold": "stick",
        "lengths": [{"length": 96, "price": 12.35}],
    }
    return blank(items=[frame("a")], stock=[stock], quote=quote) | rest


def quoted(quote: dict[str, Any], **rest: Any) -> Any:
    return worked(job(quote, **rest))["quote"]


def alone(**quote: Any) -> Any:
    """Return a quote of lines of its own, on a job of no items."""
    return worked(blank(quote={"rates": RATES} | quote))["quote"]


def texts(rows: list[Any]) -> dict[str, str]:
    return {row["name"]: row["text"] for row in rows}


class TestPrice:
    def test_a_job_without_a_quote_has_none(self) -> None:
        assert worked(blank())["quote"] is None

    def test_the_build_up(self) -> None:
        """Trade facts, checks 60 to 63: 736 and 22 h at 45; 1726; 2174.76; 2558.54."""
        got = alone(lines=[{"id": "x", "title": "Door", "material": 736, "hours": 22}])
        assert texts(got["build"]) == {
            "material": "$736.00", "labor": "$990.00", "direct": "$1,726.00",
            "overhead": "$345.20", "contingency": "$103.56", "cost": "$2,174.76",
            "profit": "$383.78", "price": "$2,558.54",
        }  # fmt: skip
        assert got["kept"] == "You keep $383.78, 15 % of the price."
        assert got["build"][4]["label"] == "Contingency, 5 % of direct cost and overhead"

    def test_profit_of_the_cost(self) -> None:
        """Check 63: 2174.76 x 1.15 = 2500.974."""
        rates = RATES | {"profit_of": "cost"}
        got = alone(rates=rates, lines=[{"id": "x", "material": 736, "hours": 22}])
        assert got["price"] == 2500.97

    def test_stock_things_and_hours(self) -> None:
        """2 sticks 24.70, 2 hangers 6.20, delivery 40, 2.5 h 112.50: 183.40.

        36.68 on it, 5 % of 220.08 is 11.004: cost 231.084; / 0.85 = 271.8635.
        """
        got = quoted(
            {"rates": RATES, "lines": [{"id": "d", "title": "Delivery", "material": 40}]},
            items=[frame("a", hours=2.5)],
            things=[{"id": "t", "title": "Hangers", "count": 2, "price": 3.1, "item": "a"}],
        )
        assert [line["material_text"] for line in got["lines"]] == ["$30.90", "$40.00"]
        assert texts(got["build"])["cost"] == "$231.08"
        assert got["price"] == 271.86
        assert sum(round(100 * line["price"]) for line in got["lines"]) == 27186

    def test_two_items_share_a_stock_by_their_pieces(self) -> None:
        """Alike, so each has half of four sticks, 49.40; a thing of no item is the whole job's."""
        got = quoted(
            {"rates": RATES},
            items=[frame("a", hours=1), frame("b", hours=1)],
            things=[{"id": "t", "title": "Glue", "count": 1, "price": 9}],
        )
        assert [line["material_text"] for line in got["lines"]] == ["$24.70", "$24.70", "$9.00"]

    def test_what_has_no_price_is_named(self) -> None:
        got = quoted({"rates": RATES}, things=[{"id": "t", "title": "Glue", "count": 1}])
        assert got["warnings"] == ["Glue has no price yet."]

    def test_without_rates_it_asks(self) -> None:
        got = quoted({})
        assert got["price"] is None
        assert got["due"] is None
        assert got["asks"][0] == "What does an hour cost?"
        assert len(got["asks"]) == 4

    def test_an_item_without_hours_has_no_price(self) -> None:
        """Its stock alone is no price: it asks, until its hours are said, even 0."""
        got = quoted({"rates": RATES}, items=[frame("a"), frame("b", hours=2)])
        assert got["asks"] == ["Mirror a: how many hours?"]
        assert (got["price"], got["kept"], got["build"], got["due"]) == (None, "", [], None)
        some = {"rates": RATES, "minutes": [{"id": "cut", "minutes": 6}]}
        assert quoted(some)["asks"] == ["Mirror a: how many hours?"]
        assert quoted({"rates": RATES}, items=[frame("a", hours=0)])["price"] is not None

    def test_a_profit_that_takes_the_whole_price_is_said(self) -> None:
        got = quoted({"rates": RATES | {"profit_percent": 100}}, items=[frame("a", hours=1)])
        assert got["price"] is None
        assert got["asks"] == [
            "This profit leaves nothing of the price for the cost: less than 100 %."
        ]

    def test_numbers_are_read_as_they_are_typed(self) -> None:
        """The build-up's numbers in words: 700 + 36, 21 1/2 + 1/2, 45, 20, 5 and 15."""
        typed = {"rate": "$45", "overhead_percent": "20%", "contingency_percent": "4 1/2 + 1/2 %",
                 "profit_percent": " 15 % "}  # fmt: skip
        lines = [{"id": "x", "material": "$700 + $36", "hours": "21 1/2 + 1/2"}]
        got = alone(rates=typed, lines=lines, payments=[{"id": "p", "amount": "$58.54"}])
        assert (got["price"], got["due"]["left"], got["faults"]) == (2558.54, 2500, [])

    def test_thousands_may_have_their_commas_in_money_alone(self) -> None:
        """1,250.50 as a bill writes it; hours and percents have none; cents have a point."""
        pay = [{"id": "p", "amount": "$1,250.50 + 1,000"}]
        due = alone(agreed={"price": 1234567.5}, payments=pay)["due"]
        assert (due["paid"], due["left"]) == (2250.5, 1232317)
        for amount in [
            "1,25",
            "12,50",
            "1250,5",
            ",500",
            "1,,000",
            "1,2500",
            "1000,000",
            "1.5,000",
        ]:
            got = alone(agreed={"price": 1}, payments=[{"id": "p", "amount": amount}])
            (fault,) = got["faults"]
            assert "has a comma that ends no thousands: write 1,250 or 1250" in fault["message"]
        got = alone(lines=[{"id": "x", "hours": "1,250"}])
        assert got["faults"][0]["message"].startswith('"1,250" has a comma: write decimals')

    def test_a_refused_number_makes_no_price(self) -> None:
        """It is said on its field and asked for; 99.9 would do as a markup."""
        lines = [{"id": "x", "material": 736, "hours": 22}]
        for name, text, words in (
            ("profit_percent", "99.9", "Profit of the price must be at most 95: 99.9 can't be."),
            (
                "rate",
                "many",
                '"many" can\'t be read: what is "many"? Write it like 12, 12.5 or 12 1/2.',
            ),
        ):
            got = alone(rates=RATES | {name: text}, lines=lines)
            assert got["faults"] == [{"field": "rates." + name, "message": words}]
            assert (got["price"], got["asks"]) == (None, [words])
        markup = RATES | {"profit_percent": "99.9", "profit_of": "cost"}
        assert alone(rates=markup, lines=lines)["price"] is not None
        got = quoted({"rates": RATES}, items=[frame("a", hours="99999999999")])
        assert [each["field"] for each in got["faults"]] == ["items.a.hours"]
        assert (got["price"], len(got["asks"])) == (None, 1)

    def test_a_refused_payment_is_said(self) -> None:
        got = alone(agreed={"price": 100}, payments=[{"id": "p", "amount": "1O"}])
        assert got["due"]["left"] == 100
        assert "counts as nothing until it is put right" in got["warnings"][0]

    def test_nothing_costs_nothing(self) -> None:
        got = alone(lines=[{"id": "x", "material": 0, "hours": 0}])
        assert (got["price"], got["kept"]) == (0, "")

    def test_rounded_up_to_ten(self) -> None:
        got = alone(
            rates=RATES | {"round_up": "ten"}, lines=[{"id": "x", "material": 736, "hours": 22}]
        )
        assert (got["price"], texts(got["build"])["profit"]) == (2560, "$385.24")

    def test_what_can_t_be_read_is_refused(self) -> None:
        wrong = blank(quote={"rates": {"rate": -1}, "tax_on": "labor"})
        assert len(refused(do="job", job=wrong)) == 2


class TestHours:
    MINUTES = ({"id": "cut", "minutes": 6}, {"id": "casing", "minutes": 30})

    def test_counted_by_the_job_s_own_pieces(self) -> None:
        """Four pieces at 6 min and a frame at 30: 54 min, 0.9 h; two alike 1.8 h."""
        for count, hours in ((1, "0.9 h"), (2, "1.8 h")):
            quote = {"rates": RATES, "minutes": self.MINUTES}
            (line,) = quoted(quote, items=[frame("a", count=count)])["lines"]
            assert line["hours_text"] == hours

    def test_what_minutes_make_is_said_in_them(self) -> None:
        """Four pieces at 106.5 min and a frame at 20: 446 min; at 1 min and 0: 4 min."""
        for cut, casing, said in ((106.5, 20, "7 h 26 min"), (1, 0, "4 min")):
            minutes = [{"id": "cut", "minutes": cut}, {"id": "casing", "minutes": casing}]
            assert quoted({"rates": RATES, "minutes": minutes})["lines"][0]["hours_text"] == said

    def test_typed_hours_stand_over_counted_ones(self) -> None:
        quote = {"rates": RATES, "minutes": self.MINUTES}
        (line,) = quoted(quote, items=[frame("a", hours=3)])["lines"]
        assert (line["hours_text"], line["is_typed"]) == ("3 h", True)

    def test_minutes_nobody_said_are_none(self) -> None:
        (line,) = quoted({"rates": RATES})["lines"]
        assert {each["operation"]: each["minutes"] for each in line["operations"]} == {
            "cut": None,
            "casing": None,
        }
        assert line["hours"] is None

    def test_a_finished_item_teaches_minutes(self) -> None:
        """0.9 h quoted, 1.8 h worked: everything took twice as long."""
        quote = {"rates": RATES, "minutes": self.MINUTES}
        got = quoted(quote, items=[frame("a", actual_hours=1.8)])
        assert {each["operation"]: each["minutes"] for each in got["learned"]} == {
            "cut": 12,
            "casing": 60,
        }
        (row,) = got["compare"]["rows"]
        assert (row["hours_text"], row["actual_text"], row["over_text"]) == (
            "0.9 h", "1.8 h", "0.9 h more",
        )  # fmt: skip

    def test_a_day_for_seven_alike(self) -> None:
        """Check 78: seven doors a day of 8 h, as a carpenter tells, are 1.143 h each, 68.57 min."""
        (each,) = quoted({"rates": RATES}, items=[bored(count=7, actual_hours=8)])["learned"]
        assert each["minutes"] == pytest.approx(1.143 * 60, abs=0.06)

    def test_six_at_two_and_at_three_and_a_half_hours(self) -> None:
        """Check 79: prehung doors at 2 to 3.5 h each in a textbook: six take 12 to 21 h."""
        for minutes, hours in ((120, "12 h"), (210, "21 h")):
            quote = {"rates": RATES, "minutes": [{"id": "lock", "minutes": minutes}]}
            (line,) = quoted(quote, items=[bored(count=6)])["lines"]
            assert line["hours_text"] == hours

    def test_what_was_kept_in_the_end(self) -> None:
        """Paid 30, 3 h at 45: 165, with 20 % overhead 198; 271.86 agreed leaves 73.86, 27.2 %."""
        got = quoted(
            {"rates": RATES, "agreed": {"price": 271.86}},
            items=[frame("a", hours=2.5, actual_hours=3)],
            ticks=[{"of": "s", "state": "bought", "paid": 30}],
        )
        assert got["compare"]["words"] == "You keep $73.86, 27.2 % of the price."

    def test_what_is_not_bought_yet_counts_as_estimated(self) -> None:
        """Estimated 24.70, 3 h at 45: 159.70, with 20 % overhead 191.64; 271.86 leaves 80.22."""
        quote = {"rates": RATES, "agreed": {"price": 271.86}}
        got = quoted(quote, items=[frame("a", hours=2.5, actual_hours=3)])
        assert got["compare"]["words"] == "You keep $80.22, 29.5 % of the price."


class TestDue:
    def test_stages_add_up(self) -> None:
        """Trade facts, check 88."""
        stages = [{"id": str(at), "percent": each} for at, each in enumerate((40, 40, 20))]
        due = alone(agreed={"price": 3333.33}, stages=stages)["due"]
        assert [stage["amount"] for stage in due["stages"]] == [1333.33, 1333.33, 666.67]

    def test_stages_that_don_t_are_said(self) -> None:
        # Nothing typed yet is no fault.
        assert alone(agreed={"price": 100}, stages=[{"id": "x"}])["due"]["stages_fault"] == ""
        due = alone(agreed={"price": 100}, stages=[{"id": "x", "percent": 90}])["due"]
        assert due["stages"] == []
        assert due["stages_fault"].startswith("The stages come to 90 %")

    def test_tax_on_the_total(self) -> None:
        """Trade facts, check 87: 7.25 % of 30.30 is 2.20, not three times 0.73."""
        due = alone(agreed={"price": 30.3}, tax_on="price", tax_percent=7.25)["due"]
        assert (due["tax"], due["total"]) == (2.2, 32.5)

    def test_tax_on_the_material(self) -> None:
        due = alone(
            lines=[{"id": "x", "material": 736, "hours": 22}], tax_on="material", tax_percent=8
        )["due"]
        assert (due["tax_text"], due["tax_words"]) == ("$58.88", "Tax, 8 % of the material")

    def test_tax_that_the_price_holds(self) -> None:
        """Trade facts, check 89: 1,072.50 with 7.25 % in it is 1000 before tax."""
        got = alone(agreed={"price": 1072.5}, tax_on="included", tax_percent=7.25)
        due = got["due"]
        assert (due["tax"], due["total"], due["left"]) == (72.5, 1072.5, 1072.5)
        assert (due["tax_included"], due["tax_words"]) == (True, "Tax of $72.50 included, 7.25 %")

    def test_the_shop_keeps_its_share_beside_the_tax(self) -> None:
        """Hand work: 2558.5412 by check 62; 7.25 % more is 2744.0354. Of 2744.04 the tax is

        2744.04 x 7.25 / 107.25 = 185.4946: 185.49 and 2558.55 before tax, 383.79 over the cost of
        2174.76, which is 15 % of it.
        """
        lines = [{"id": "x", "title": "Door", "material": 736, "hours": 22}]
        got = alone(lines=lines, tax_on="included", tax_percent="7.25")
        assert got["price"] == 2744.04
        assert list(texts(got["build"]).items())[-4:] == [
            ("profit", "$383.79"), ("before_tax", "$2,558.55"), ("tax", "$185.49"),
            ("price", "$2,744.04"),
        ]  # fmt: skip
        assert got["build"][6]["label"] == "Profit, 15 % of the price before tax"
        assert got["kept"] == "You keep $383.79, 15 % of the price before tax."
        assert got["lines"][0]["price"] == 2744.04

    def test_tax_without_a_percent_is_asked_for(self) -> None:
        got = alone(agreed={"price": 1072.5}, tax_on="included")
        assert (got["due"]["tax"], got["due"]["tax_words"]) == (0, "")
        assert "Tax: how many percent?" in got["warnings"][0]

    def test_a_price_below_cost_with_its_tax_is_said(self) -> None:
        """Hand work: 2200 holds 148.72 of 7.25 %; 2051.28 is 123.48 under 2174.76."""
        lines = [{"id": "x", "material": 736, "hours": 22}]
        got = alone(lines=lines, agreed={"price": 2200}, tax_on="included", tax_percent=7.25)
        assert got["kept"] == "The price before tax is $123.48 under its cost."

    def test_change_orders_and_payments(self) -> None:
        """1000 + 120.50 - 20; the one only offered does not count; 400 came in."""
        extras = [
            {"id": "1", "title": "Wider casing", "price": 120.5, "days": 2, "state": "agreed"},
            {"id": "2", "title": "No sill", "price": -20, "state": "agreed"},
            {"id": "3", "title": "Gold leaf", "price": 5000, "state": "offered"},
        ]
        due = alone(agreed={"price": 1000}, extras=extras, payments=[{"id": "p", "amount": 400}])[
            "due"
        ]
        assert (due["extras_total"], due["whole"], due["left"]) == (100.5, 1100.5, 700.5)
        assert [each["price_text"] for each in due["extras"][:2]] == ["+$120.50", "-$20.00"]
        assert due["extras"][0]["days_text"] == "2 days later"

    def test_the_job_has_moved_since(self) -> None:
        """2558.54 by its numbers, 2500 agreed."""
        got = alone(lines=[{"id": "x", "material": 736, "hours": 22}], agreed={"price": 2500})
        assert (got["price"], got["drift"]) == (
            2500,
            "By today's numbers it would be $2,558.54, $58.54 more.",
        )
        assert got["kept"] == "You keep $325.24, 13 % of the price."
        # What is kept is said of the price that stands, not of the one that was asked for.
        assert [row["label"] for row in got["build"] if row["name"] == "profit"] == [
            "Profit, 13 % of the price"
        ]

    def test_what_was_signed_stands_whatever_is_worked_out_since(self) -> None:
        """Signed: 200 and 600 with 56 of tax on top, 7 % of 800. Then the first line costs more."""
        signed = {"price": 800, "tax": 56, "lines": [{"line": "a", "price": 200},
                                                     {"line": "b", "price": 600}]}  # fmt: skip
        lines = [{"id": "a", "material": 500}, {"id": "b", "material": 300},
                 {"id": "c", "material": 90}]  # fmt: skip
        got = alone(lines=lines, agreed=signed, tax_on="material", tax_percent=7)
        prices = {line["id"]: (line["price"], line["price_text"]) for line in got["lines"]}
        assert prices == {"a": (200, "$200.00"), "b": (600, "$600.00"), "c": (None, "")}
        assert (got["due"]["tax"], got["due"]["total"]) == (56, 856)


def drawn(random: Random) -> dict[str, Any]:
    """Return a quote of lines of its own with random numbers."""
    cents = [random.randint(0, 400000) / 100 for _ in range(random.randint(1, 6))]
    lines = [
        {"id": str(at), "title": "Line", "material": each, "hours": random.randint(0, 160) / 4}
        for at, each in enumerate(cents)
    ]
    rates = {
        "rate": random.randint(2000, 9000) / 100,
        "overhead_percent": random.randint(0, 400) / 8,
        "contingency_percent": random.choice([0, 5, 7.5]),
        "profit_percent": random.randint(0, 60),
        "profit_of": random.choice(["price", "cost"]),
    }
    stages = [{"id": str(at), "percent": each} for at, each in enumerate((33.3, 33.3, 33.4))]
    on = random.choice(["nothing", "material", "price", "included"])
    taxed = {"tax_on": on, "tax_percent": 8.875}
    return {"rates": rates, "lines": lines, "stages": stages} | taxed


TAXED = 1 + Fraction("8.875") / 100


def rounded(amount: Fraction) -> int:
    """Return dollars as cents, half up."""
    return int(amount * 100 + Fraction(1, 2))


def check_exactly(quote: dict[str, Any], got: Any) -> None:
    """Hold a quote to exact fractions, and every column to its sum."""
    exact = {name: Fraction(str(value)) for name, value in quote["rates"].items()
             if name != "profit_of"}  # fmt: skip
    material = sum(Fraction(str(line["material"])) for line in quote["lines"])
    hours = sum(Fraction(str(line["hours"])) for line in quote["lines"])
    cost = (material + hours * exact["rate"]) * (1 + exact["overhead_percent"] / 100)
    cost *= 1 + exact["contingency_percent"] / 100
    share = exact["profit_percent"] / 100
    net = cost / (1 - share) if quote["rates"]["profit_of"] == "price" else cost * (1 + share)
    is_held = quote["tax_on"] == "included"
    price = rounded(net * TAXED if is_held else net)
    rows = {row["name"]: round(100 * row["value"]) for row in got["build"]}
    assert (rows["price"], rows["cost"]) == (price, rounded(cost))
    assert rows["direct"] == rows["material"] + rows["labor"]
    assert rows["cost"] == rows["direct"] + rows["overhead"] + rows["contingency"]
    assert rows["price"] == rows["cost"] + rows["profit"] + rows.get("tax", 0)
    assert rows.get("before_tax", price) == rows["cost"] + rows["profit"]
    base = {"nothing": Fraction(0), "material": material, "price": Fraction(price, 100),
            "included": Fraction(price, 100) / TAXED}  # fmt: skip
    tax = rounded(base[quote["tax_on"]] * (TAXED - 1))
    assert rows.get("tax", 0) == (tax if is_held else 0)
    assert ("before_tax" in rows) == is_held
    due = got["due"]
    assert round(100 * due["tax"]) == tax
    total = price if is_held else price + tax
    assert round(100 * due["total"]) == total
    assert sum(round(100 * stage["amount"]) for stage in due["stages"]) == total
    assert sum(round(100 * line["price"]) for line in got["lines"]) in (price, 0)


def test_random_quotes_are_exact() -> None:
    for seed in range(200):
        quote = drawn(Random(seed))
        check_exactly(quote, worked(blank(quote=quote))["quote"])


def test_tax_in_the_price_against_decimals() -> None:
    """The tax in any price by `decimal` of the standard library, half up to the cent."""
    random, cent = Random(7), Decimal("0.01")
    for _ in range(300):
        price, percent = random.randint(0, 99999999), random.randint(0, 50000)
        before = Decimal(price) / 100 / (1 + Decimal(percent) / 100000)
        tax = (Decimal(price) / 100 - before).quantize(cent, ROUND_HALF_UP)
        assert tax_within(price, percent / 1000) == int(tax * 100)


@pytest.fixture(scope="module")
def phone() -> Iterator[Call]:
    with phone_core() as asked:
        yield asked


def test_the_phone_says_the_same(phone: Call) -> None:
    extras = [{"id": "e", "price": -12.345, "days": 1, "state": "agreed"}]
    for seed in range(20):
        quote = drawn(Random(seed)) | {"extras": extras}
        document = job(quote, items=[frame("a", actual_hours=1.25), frame("b", hours=2)])
        here = worked(document)["quote"]
        reply = phone({"do": "job", "job": document})
        while reply["work"]:
            reply = phone({"do": "continue job", "work": reply["work"]})
        assert reply["job"]["quote"] == here


def test_two_people_s_changes_are_joined() -> None:
    """One agrees a change order, the other takes down a payment: both stand."""
    base = blank(quote={"rates": RATES, "extras": [{"id": "e", "state": "offered"}]})
    mine, theirs = json.loads(json.dumps(base)), json.loads(json.dumps(base))
    mine["quote"]["extras"][0]["state"] = "agreed"
    theirs["quote"]["payments"] = [{"id": "p", "amount": 10}]
    reply = ask(do="merge jobs", base=base, mine=mine, theirs=theirs)
    assert reply["collisions"] == []
    assert reply["document"]["quote"]["extras"][0]["state"] == "agreed"
    assert reply["document"]["quote"]["payments"][0]["amount"] == 10


def test_the_quote_is_part_of_what_is_checked() -> None:
    wrong = blank(quote={"extras": [{"id": "e"}, {"id": "e"}]})
    reply = json.loads(call(json.dumps({"do": "check job", "job": wrong})))
    assert not reply["ok"]
