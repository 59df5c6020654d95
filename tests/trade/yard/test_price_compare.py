"""Price compare: the cheapest stays the cheapest, and volumes are those of plane geometry."""

from fractions import Fraction
from typing import Any

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from tests.trade.asking import answer, ask, at_the_door, figures

UNITS = ["board-foot", "lineal-foot", "piece", "square-foot", "square-meter"]
COMPARED = [unit for unit in UNITS if unit != "piece"]
CENTS = st.integers(100, 20000).map(lambda cents: Fraction(cents, 100))
METER = Fraction(10000, 254)  # Inches: an inch is 25.4 mm.
SIZES = st.tuples(
    st.integers(4, 16).map(lambda n: Fraction(n, 4)),
    st.integers(4, 48).map(lambda n: Fraction(n, 2)),
    st.integers(24, 192).map(Fraction),
)
Offer = tuple[Fraction, str, tuple[Fraction, Fraction, Fraction], int]
OFFERS = st.lists(
    st.tuples(CENTS, st.sampled_from(UNITS), SIZES, st.integers(0, 60)), min_size=2, max_size=6
)


def row(offer: Offer) -> dict[str, Any]:
    price, per, (thickness, width, length), waste = offer
    return {
        "price": float(price),
        "per": per,
        "thickness": float(thickness),
        "width": float(width),
        "length": float(length),
        "waste": waste,
    }


def held(unit: str, sizes: tuple[Fraction, Fraction, Fraction]) -> Fraction:
    """Return how many of a unit one piece holds: its volume, length or face, measured."""
    thickness, width, length = sizes
    return {
        "board-foot": thickness * width * length / 144,
        "lineal-foot": length / 12,
        "piece": Fraction(1),
        "square-foot": width * length / 144,
        "square-meter": width * length / METER**2,
    }[unit]


def a_unit(offer: Offer, unit: str) -> float:
    """Return the price of one unit of what can be used: what the piece costs over what it holds."""
    price, per, sizes, waste = offer
    piece = price * held(per, sizes)
    return float(piece / (held(unit, sizes) * (1 - Fraction(waste, 100))))


def assume_like(prices: list[float]) -> None:
    """Leave out prices so far apart that they are refused; a fixture has those."""
    assume(max(prices) < 9_999 * min(prices))


@given(OFFERS, st.sampled_from(COMPARED))
def test_the_best_is_the_least_for_what_a_piece_holds(offers: list[Offer], unit: str) -> None:
    prices = sorted(a_unit(offer, unit) for offer in offers)
    assume_like(prices)
    got = figures("price-compare", offers=[row(offer) for offer in offers], compare=unit)
    assert abs(got["best_price"] / prices[0] - 1) < 1e-9
    assert abs(got["difference"] - (prices[1] - prices[0])) < 1e-9 * prices[1]
    named = int(got["best"].split()[1]) - 1
    assert abs(a_unit(offers[named], unit) / prices[0] - 1) < 1e-9


@given(OFFERS, st.sampled_from(COMPARED), st.randoms(use_true_random=False))
def test_the_order_of_asking_changes_no_price(offers: list[Offer], unit: str, random: Any) -> None:
    assume_like([a_unit(offer, unit) for offer in offers])
    shuffled = list(offers)
    random.shuffle(shuffled)
    one, other = (
        [line[2] for line in table["rows"]]
        for table in (
            answer("price-compare", offers=[row(x) for x in order], compare=unit)["tables"][0]
            for order in (offers, shuffled)
        )
    )
    assert one == other


@given(SIZES, CENTS, CENTS)
def test_boards_alike_rank_alike_by_every_unit(
    sizes: tuple[Fraction, Fraction, Fraction], one: Fraction, other: Fraction
) -> None:
    """The same board twice: whatever it is compared by, the same one wins by the same percent."""
    offered: list[Offer] = [(one, "piece", sizes, 0), (other, "board-foot", sizes, 0)]
    low, high = sorted(a_unit(offer, "board-foot") for offer in offered)
    assume(high < 10_000 * low)  # beyond that the prices are taken for mistyped, and refused
    offers = [row(offer) for offer in offered]
    got = [figures("price-compare", offers=offers, compare=unit) for unit in COMPARED]
    percents = [each["difference_percent"] for each in got]
    assert max(percents) - min(percents) < 1e-6 * (1 + max(percents))
    assert len({each["best"] for each in got}) == 1 or max(percents) < 1e-6


@given(OFFERS, st.sampled_from(COMPARED))
def test_bars_are_as_long_as_prices_are_high(offers: list[Offer], unit: str) -> None:
    prices = sorted(a_unit(offer, unit) for offer in offers)
    assume_like(prices)
    drawing = answer("price-compare", offers=[row(x) for x in offers], compare=unit)["drawing"]
    bars = [shape["points"][1][0] for shape in drawing["shapes"] if shape["shape"] == "area"]
    for bar, price in zip(bars, prices, strict=True):
        assert abs(bar / bars[-1] - price / prices[-1]) < 1e-9


@given(
    st.sampled_from(UNITS),
    st.sampled_from(COMPARED),
    st.sampled_from([0.01, 10000]),
    st.sampled_from([0, 90]),
    st.sampled_from([1 / 64, 60]),
    st.sampled_from([1 / 16, 240]),
    st.sampled_from([0.5, 12000]),
)
def test_the_outermost_is_answered_or_refused(
    per: str,
    unit: str,
    price: float,
    waste: float,
    thickness: float,
    width: float,
    length: float,
) -> None:
    sizes = {"thickness": thickness, "width": width, "length": length}
    offers = [{"price": price, "per": per, "waste": waste, **sizes}, {"price": 1, **sizes}]
    reply = ask("price-compare", offers=offers, compare=unit, amount=100000)
    assert reply["ok"] or "10000 times" in reply["errors"][0]["message"]


NEEDED = {
    # By hand: what a price per (first) has to be known by to be compared by the (second).
    ("board-foot", "board-foot"): "",
    ("lineal-foot", "board-foot"): "thickness width",
    ("piece", "board-foot"): "thickness width length",
    ("square-foot", "board-foot"): "thickness",
    ("square-meter", "square-foot"): "",
    ("piece", "lineal-foot"): "length",
    ("board-foot", "square-meter"): "thickness",
    ("lineal-foot", "square-foot"): "width",
}


@pytest.mark.parametrize(("units", "sizes"), NEEDED.items())
def test_an_offer_asks_only_for_the_sizes_that_its_price_needs(
    units: tuple[str, str], sizes: str
) -> None:
    offers = [{"price": 1, "per": units[0]}, {"price": 1, "per": units[1]}]
    inputs = {"compare": units[1], "offers": offers}
    reply = at_the_door({"do": "form", "tool": "price-compare", "inputs": inputs})
    (rows,) = [field["rows"] for field in reply["fields"] if field["name"] == "offers"]
    asked = [[field["name"] for field in row["fields"]] for row in rows]
    every = ("thickness", "width", "length")
    assert [name for name in asked[0] if name in every] == sizes.split()
    assert not set(every) & set(asked[1])
