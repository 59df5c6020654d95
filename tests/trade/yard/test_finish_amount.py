"""A liquid timed in one cup is told in the others, inside their ranges only."""

from longpoint.trade.lengths import Scale
from longpoint.trade.shelf import tool_named


def test_a_liquid_out_of_a_cups_range_has_no_seconds_there() -> None:
    said = {"area": 1, "coats": 1, "film_by": "wet", "wet_coat": 4, "efficiency": 100}
    asked = said | {"cup": "zahn-2", "cup_seconds": 30}
    table = tool_named("finish-amount").answer(asked, Scale())["tables"][0]
    told = dict(table["rows"])
    # By hand: 56 cSt / 3.85 + 4.49 = 19.04 s in Ford 4, below the 20 s from which it tells; in
    # Ford 3 56 / 2.31 + 6.58 = 30.8 s.
    assert told["Ford 4"] == "out of its range"
    assert told["Ford 3"] == "30.8 s"
    assert told["Zahn 2"] == "30 s"
    assert table["pick"] == 1
