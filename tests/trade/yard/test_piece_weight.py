"""What must always hold of weights, and the handbook's shrinkage as a second opinion."""

import math
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from longpoint.trade.tables.weights import WOODS, gravity_at, wood_named
from tests.trade.asking import answer, figures

SPECIES = st.sampled_from([wood.value for wood in WOODS])
MADE_OF = st.sampled_from(["plywood", "mdf", "particleboard", "glass"])
SIZES = st.integers(min_value=1, max_value=96)
MOISTURES = st.integers(min_value=0, max_value=29)

# Wood Handbook Table 4-3, volumetric shrinkage green to ovendry in percent, as reprinted.
SHRINKAGE = {
    "alder-red": 12.6, "ash-black": 15.2, "ash-white": 13.3, "aspen": 11.5, "basswood": 15.8,
    "beech": 17.2, "birch-yellow": 16.8, "butternut": 10.6, "cherry": 11.5, "chestnut": 11.6,
    "cottonwood": 13.9, "elm-american": 14.6, "hackberry": 13.8, "hickory-pecan": 13.6,
    "oak-white": 16.3, "sweetgum": 15.8, "sycamore": 14.1, "walnut": 12.8, "poplar-yellow": 12.7,
    "cedar-western-red": 6.8, "douglas-fir": 12.4,
}  # fmt: skip


def board(species: str, thick: float, wide: float, long: float, **rest: Any) -> dict[str, Any]:
    return {"species": species, "thickness": thick, "width": wide, "length": long, **rest}


@pytest.mark.parametrize("species", SHRINKAGE)
@pytest.mark.parametrize("moisture", [6, 8, 20])
def test_gravity_follows_the_tables_shrinkage(species: str, moisture: int) -> None:
    """Straight-line shrinkage from 30 percent: same mass, volume (1 - S(1 - x/30)).

    The formula knows no species, and the table's means scatter about it: to 3 percent.
    """
    whole = SHRINKAGE[species] / 100
    gravity = wood_named(species).gravity
    by_table = gravity * (1 - whole * (1 - 12 / 30)) / (1 - whole * (1 - moisture / 30))
    assert gravity_at(gravity, moisture) == pytest.approx(by_table, rel=0.03)


@given(SPECIES, SIZES, SIZES, SIZES, MOISTURES)
def test_wetter_is_heavier(species: str, thick: int, wide: int, long: int, moisture: int) -> None:
    weights = [
        figures("piece-weight", things=[board(species, thick / 4, wide, long, moisture=wet)])
        for wet in (moisture, moisture + 1)
    ]
    assert 0 < weights[0]["weight"] < weights[1]["weight"]


@given(st.lists(st.tuples(MADE_OF, SIZES, SIZES, SIZES, SIZES), min_size=1, max_size=5))
def test_a_load_weighs_what_its_things_weigh(
    load: list[tuple[str, int, int, int, int]],
) -> None:
    """Each thing weighed alone and added up; people by 51 lb each."""
    things = [
        {"made_of": made, "thickness": t / 16, "width": w, "length": long, "count": n}
        for made, t, w, long, n in load
    ]
    alone = [figures("piece-weight", things=[thing])["weight"] for thing in things]
    got = figures("piece-weight", things=things, lifted="pieces")
    assert got["weight"] == pytest.approx(sum(alone))
    heaviest = max(weight / thing["count"] for weight, thing in zip(alone, things, strict=True))
    assert got["heaviest"] == pytest.approx(heaviest)
    assert got["people"] == max(1, math.ceil(heaviest / 51 - 1e-9))


def test_kilograms_are_shown_where_millimeters_are_in_force() -> None:
    """1 lb is 0.45359237 kg exactly."""
    things = [{"made_of": "pounds", "pounds": 100}]
    shown = answer("piece-weight", {"units": "mm"}, things=things)["figures"][0]
    assert (shown["text"], shown["also"], shown["value"]) == ("45.4 kg", "100 lb", 100)


def test_more_than_one_person_should_lift_is_cautioned() -> None:
    def cautions(pounds: float, lifted: str) -> list[str]:
        things = [{"made_of": "pounds", "pounds": pounds, "count": 2}]
        found: list[str] = answer("piece-weight", things=things, lifted=lifted)["cautions"]
        return [caution for caution in found if "one person should lift" in caution]

    assert cautions(25, "one") == []
    assert len(cautions(26, "one")) == 1
    assert cautions(26, "pieces") == []
    assert "a lift, a dolly" in cautions(200, "one")[0]
