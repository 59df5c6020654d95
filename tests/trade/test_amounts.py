"""Amounts with two systems of units: read, shown and kept as typed, whichever is in force."""

import json
from typing import Any

import pytest

from longpoint.trade.amounts import MEASURES, from_units, in_units, read_amount
from longpoint.trade.answer import Answer
from longpoint.trade.form import Form
from longpoint.trade.lengths import Scale
from longpoint.trade.measured import Number
from longpoint.trade.reading import Unreadable
from longpoint.trade.tool import Given, Tool

# NIST Special Publication 811, appendix B.8: factors marked there as exact, or to seven digits.
FACTORS = [
    ("area", 1, 0.09290304),
    ("film", 1, 25.4),
    ("volume", 1, 3.785412),
    ("temperature", 212, 100),
    ("temperature", -40, -40),
    ("weight", 1, 0.45359237),
]


def answered(given: Given, scale: Scale) -> Answer:
    answer = Answer(scale)
    answer.verdict("done")
    return answer


TOOL = Tool(
    slug="wall",
    place="yard",
    title="Wall",
    question="How large?",
    inputs=[Number("area", "Area", measure="area", most=1000)],
    work=answered,
    example={"area": "12"},
    cautions=[],
    sources=[],
)


def field(raw: Any, scale: Scale, carried: Any = None) -> dict[str, Any]:
    told = {} if carried is None else {"area": {"value": carried, "from": "Finish area"}}
    form = Form(TOOL, {} if raw is None else {"area": raw}, scale, 1, told)
    said: dict[str, Any] = form.to_json()["fields"][0]
    return said


@pytest.mark.parametrize(("measure", "value", "metric"), FACTORS)
def test_a_unit_in_the_other_one(measure: str, value: float, metric: float) -> None:
    assert in_units(value, measure, "mm") == pytest.approx(metric, rel=1e-7, abs=1e-12)
    assert from_units(metric, measure, "mm") == pytest.approx(value, rel=1e-6)


@pytest.mark.parametrize("measure", MEASURES)
def test_each_way_of_writing_a_unit_is_read(measure: str) -> None:
    known = MEASURES[measure]
    for units, marks in (("in", known.marks), ("mm", known.metric_marks)):
        for mark in marks:
            assert read_amount(f"12 {mark}", measure, "in") == from_units(12, measure, units)
            assert read_amount(f"12{mark.upper()}", measure, "mm") == from_units(12, measure, units)


def test_a_bare_number_is_in_the_units_in_force() -> None:
    assert Number("film", "Film", measure="film").read("100", Scale("mm")) == 100 / 25.4
    assert Number("film", "Film", measure="film").read("4", Scale("in")) == 4
    assert Number("film", "Film", measure="film").read(4, Scale("mm")) == 4


def test_what_was_typed_stays_when_the_units_change() -> None:
    assert field("12", Scale("in"))["shown"] == "12"
    assert "unit" not in field("12", Scale("in"))
    foreign = field("12", Scale("mm", 16, "in"))
    assert (foreign["shown"], foreign["unit"]) == ("12 sq ft", "")
    own = field({"text": "3", "units": "mm"}, Scale("mm", 16, "in"))
    assert (own["shown"], own["unit"]) == ("3", "m²")
    marked = field({"text": "3", "units": "mm"}, Scale("in"))
    assert (marked["shown"], marked["unit"]) == ("3 m²", "")


def test_a_carried_amount_shows_in_the_units_in_force() -> None:
    carried = field(None, Scale("mm"), 100.0)
    assert (carried["shown"], carried["unit"]) == ("9.29", "m²")
    assert field("5", Scale("in"), 100.0)["carried"]["text"] == "100 sq ft"


def test_what_is_out_of_bounds_is_said_in_the_units_in_force() -> None:
    with pytest.raises(Unreadable, match=r"at most 92\.903 m²: 120 m² can't be"):
        TOOL.inputs[0].read("120", Scale("mm"))
    with pytest.raises(Unreadable, match='"wide" is not a number of sq ft'):
        TOOL.inputs[0].read("wide", Scale("in"))


def test_the_declaration_names_both_units() -> None:
    declared = json.loads(json.dumps(TOOL.declare()))["inputs"][0]
    assert (declared["unit"], declared["metric"]) == ("sq ft", "m²")
    assert "metric" not in Number("percent", "Percent", unit="%").declare()
