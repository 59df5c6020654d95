"""The API's OpenAPI description: whole, and true."""

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


DESCRIPTION = schemathesis.openapi.from_wsgi("/api/openapi.json", create_app())
OPERATIONS = [
    pytest.param(operation.ok(), mode, id=f"{operation.ok().label} {mode.value}")
    for operation in DESCRIPTION.get_all_operations()
    for mode in (GenerationMode.POSITIVE, GenerationMode.NEGATIVE)
    if mode is GenerationMode.POSITIVE or operation.ok().body
]


@pytest.mark.parametrize(("operation", "mode"), OPERATIONS)
def test_the_api_keeps_to_its_description(
    operation: schemathesis.APIOperation, mode: GenerationMode
) -> None:
    """Schemathesis asks what the description allows or forbids, and reads the replies by it."""

    @given(case=operation.as_strategy(generation_mode=mode))
    @settings(
        max_examples=40,
        deadline=None,
        derandomize=True,
        database=None,
        suppress_health_check=list(HealthCheck),
    )
    def keeps_to_it(case: schemathesis.Case) -> None:
        case.call_and_validate(checks=CHECKS)

    keeps_to_it()


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
    operation = DESCRIPTION[f"/api/tools/{tool}"]["POST"]
    example = operation.definition.raw["requestBody"]["content"]["application/json"]["example"]
    response = operation.Case(body=example, media_type="application/json").call_and_validate(
        checks=CHECKS
    )
    assert response.status_code == 200


@pytest.mark.parametrize("tool", CASES_OF)
def test_the_answers_to_the_check_cases_are_as_described(tool: str) -> None:
    """Random inputs are mostly refused: these are answered, with all that an answer can hold."""
    operation = DESCRIPTION[f"/api/tools/{tool}"]["POST"]

    def hold(case: Case) -> None:
        query = {"units": case.units, "step": case.step}
        asked = operation.Case(body=case.inputs, query=query, media_type="application/json")
        asked.call_and_validate(checks=CHECKS)

    hold_each(CASES_OF[tool], hold)
