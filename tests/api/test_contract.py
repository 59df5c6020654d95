"""One declaration of the JSON: the core speaks it, and the front end's types are made from it."""

import json
import subprocess
from pathlib import Path
from typing import Any

import pytest

from longpoint.api.contract import contract
from longpoint.api.replies import FormReply, FormSaid, SearchReply, StepChoices
from longpoint.trade.calls import call
from longpoint.trade.shelf import PLACES, slugs_at, tool_named
from longpoint.trade.steps import STEPS
from tests.cases import CASES_OF, Case, hold_each

WEB = Path(__file__).parent.parent.parent / "web"
TOOLS = [slug for place, _ in PLACES for slug in slugs_at(place)]


def ask(**request: Any) -> Any:
    return json.loads(call(json.dumps(request)))


def test_the_front_end_s_types_are_those_of_the_api() -> None:
    """If this fails, `npm run contract` in web/ makes them anew."""
    made = subprocess.run(
        ["node", "build/contract.mjs"],
        cwd=WEB, input=json.dumps(contract()), capture_output=True, text=True, check=True,
    )  # fmt: skip
    assert made.stdout == (WEB / "src/contract/generated.ts").read_text(encoding="utf-8")


def test_each_step_is_one_choice_in_both_systems() -> None:
    scales = ask(do="scales")["scales"]
    assert StepChoices(many=True).validate(scales) == {}
    assert [scale["units"] for scale in scales] == ["in", "mm"]
    for scale in scales:
        steps = [step for choice in scale["choices"] for step in choice["steps"]]
        assert sorted(steps) == list(STEPS)


@pytest.mark.parametrize("tool", TOOLS)
def test_an_empty_form_is_as_declared(tool: str) -> None:
    said = ask(do="form", tool=tool, inputs={}, answer=False)
    assert FormSaid().validate(said) == {}


@pytest.mark.parametrize("tool", CASES_OF)
def test_the_form_of_each_check_case_is_as_declared(tool: str) -> None:
    first = next(iter(tool_named(tool).inputs)).name

    def hold(case: Case) -> None:
        said = ask(
            do="form", tool=tool, inputs=case.inputs, active=first,
            typed_in=case.units, units="mm", step=case.step,
        )  # fmt: skip
        if "fields" not in said:  # A brief answer comes alone.
            assert SearchReply().validate(said) == {}
            said = ask(do="continue", search=said["search"])
        assert FormReply().validate(said) == {}

    hold_each(CASES_OF[tool], hold)
