"""Every tool against a program of another kind, on random inputs, in both runtimes."""

import importlib
import json
from collections.abc import Iterator
from pathlib import Path
from random import Random
from typing import Any

import pytest

from longpoint.trade.calls import call
from longpoint.trade.shelf import PLACES, slugs_at
from tests.cases import finished
from tests.trade.phone_core import Call, phone_core
from tests.trade.references.expected import check

HERE = Path(__file__).parent / "references"
MODULES = sorted(
    f"tests.trade.references.{path.parent.name}.{path.stem}"
    for path in HERE.glob("*/*.py")
    if not path.stem.startswith("_")
)
ON_THE_SERVER, ON_THE_PHONE = 500, 50


@pytest.fixture(scope="module")
def phone() -> Iterator[Call]:
    with phone_core() as ask:
        yield ask


def server(request: dict[str, Any]) -> dict[str, Any]:
    reply: dict[str, Any] = json.loads(call(json.dumps(request)))
    return reply


def test_every_tool_has_a_reference() -> None:
    compared = {importlib.import_module(module).SLUG for module in MODULES}
    assert compared == {slug for place, _ in PLACES for slug in slugs_at(place)}


def compare(module: str, ask: Call, times: int) -> None:
    reference = importlib.import_module(module)
    answered = 0
    for seed in range(times):
        inputs = reference.draw(Random(seed))
        request = {"do": "answer", "tool": reference.SLUG, "inputs": inputs}
        expected = reference.expect(inputs)
        answered += expected is not None
        try:
            check(expected, finished(ask, request))
        except AssertionError as wrong:
            pytest.fail(f"seed {seed}, {inputs}: {wrong}")
    # References that refuse nearly everything would prove nothing.
    assert answered >= times // 2


@pytest.mark.parametrize("module", MODULES)
def test_the_server_says_what_the_reference_says(module: str) -> None:
    compare(module, server, ON_THE_SERVER)


@pytest.mark.parametrize("module", MODULES)
def test_the_phone_says_what_the_reference_says(module: str, phone: Call) -> None:
    compare(module, phone, ON_THE_PHONE)
