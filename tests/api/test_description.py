"""The API's OpenAPI description: whole, and true.

LONGPOINT_CASES is how often Schemathesis asks each operation.
"""

import os
from functools import cache

import pytest
import schemathesis
from flask.testing import FlaskClient
from hypothesis import HealthCheck, given, settings
from schemathesis import GenerationMode
from schemathesis.checks import not_a_server_error
from schemathesis.specs.openapi.checks import (
    content_type_conformance,
    response_schema_conformance,
    status_code_conformance,
)

from longpoint.app import create_app
from longpoint.trade.shelf import SHELF, tool_named
from tests.cases import CASES_OF, Case, hold_each

TOOLS = [path.split("/")[1] for _, path in SHELF]
CHECKS = [
    not_a_server_error,
    status_code_conformance,
    content_type_conformance,
    response_schema_conformance,
]
OFTEN = int(os.environ.get("LONGPOINT_CASES", "40"))
MODES = [GenerationMode.POSITIVE, GenerationMode.NEGATIVE]


@cache
def description() -> schemathesis.schemas.BaseSchema:
    """Return the description as Schemathesis reads it: it takes longer than a test."""
    return schemathesis.openapi.from_wsgi("/api/openapi.json", create_app())


@pytest.mark.parametrize("mode", MODES, ids=lambda mode: mode.value)
@pytest.mark.parametrize("tool", TOOLS)
def test_a_tool_keeps_to_its_description(tool: str, mode: GenerationMode) -> None:
    keeps_to_it(description()[f"/api/tools/{tool}"]["POST"], mode)


def test_all_else_keeps_to_its_description() -> None:
    tools = {f"POST /api/tools/{tool}" for tool in TOOLS}
    operations = [found.ok() for found in description().get_all_operations()]
    others = [each for each in operations if each.label not in tools]
    assert len(operations) - len(others) == len(TOOLS)
    for operation in others:
        for mode in MODES if operation.body else MODES[:1]:
            keeps_to_it(operation, mode)


def keeps_to_it(operation: schemathesis.APIOperation, mode: GenerationMode) -> None:
    """Let Schemathesis ask what the description allows or forbids, and read the replies by it."""

    @given(case=operation.as_strategy(generation_mode=mode))
    @settings(
        max_examples=OFTEN,
        deadline=None,
        derandomize=True,
        database=None,
        suppress_health_check=list(HealthCheck),
    )
    def keeps(case: schemathesis.Case) -> None:
        case.call_and_validate(checks=CHECKS)

    keeps()


@pytest.mark.parametrize("tool", TOOLS)
def test_every_tool_has_an_operation_of_its_own(client: FlaskClient, tool: str) -> None:
    description = client.get("/api/openapi.json").json
    assert description["openapi"].startswith("3.")
    operation = description["paths"][f"/api/tools/{tool}"]["post"]
    body = operation["requestBody"]["content"]["application/json"]
    name = body["schema"]["$ref"].rsplit("/", 1)[1]
    properties = description["components"]["schemas"][name]["properties"]
    assert list(properties) == [asked.name for asked in tool_named(tool).inputs]
    assert all(described["description"] for described in properties.values())
    assert operation["summary"] == tool_named(tool).question


@pytest.mark.parametrize("tool", TOOLS)
def test_the_example_of_the_description_is_answered(tool: str) -> None:
    operation = description()[f"/api/tools/{tool}"]["POST"]
    example = operation.definition.raw["requestBody"]["content"]["application/json"]["example"]
    response = operation.Case(body=example, media_type="application/json").call_and_validate(
        checks=CHECKS
    )
    assert response.status_code == 200


@pytest.mark.parametrize("tool", CASES_OF)
def test_the_answers_to_the_check_cases_are_as_described(tool: str) -> None:
    """Random inputs are mostly refused: these are answered, with all that an answer can hold."""
    operation = description()[f"/api/tools/{tool}"]["POST"]

    def hold(case: Case) -> None:
        query = {"units": case.units, "step": case.step}
        asked = operation.Case(body=case.inputs, query=query, media_type="application/json")
        asked.call_and_validate(checks=CHECKS)

    hold_each(CASES_OF[tool], hold)
