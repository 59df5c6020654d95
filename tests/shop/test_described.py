"""The shop's part of the API keeps to its description, for who is signed in and who is not.

Schemathesis asks what the description allows and forbids, with all of its checks.
LONGPOINT_CASES is how many of each; DEVELOPERS.md tells what 10,000 came to.
"""

import os
from collections import Counter
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
import schemathesis
from flask import Flask
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from schemathesis import GenerationMode
from schemathesis.config import SchemathesisConfig

from longpoint.app import create_app
from longpoint.shop.database import Database
from tests.shop.conftest import Phone, person, said, token_of

CASES = int(os.environ.get("LONGPOINT_CASES", "10"))
DOCUMENT = "/api/documents/{name}"
OPERATIONS = [
    ("/api/me", "GET"), ("/api/changes", "GET"),
    (DOCUMENT, "GET"), (DOCUMENT, "PUT"), (DOCUMENT, "DELETE"),
]  # fmt: skip
CONFIG = SchemathesisConfig.from_dict(
    {
        "generation": {"with-security-parameters": False},
        "checks": {
            # What stands on the server, and which of two headers comes, no description can say.
            "positive_data_acceptance": {
                "expected-statuses": ["2xx", "400", "401", "404", "409", "410", "412", "422", "428"]
            },
            # In this process each request is one on its own.
            "use_after_free": {"enabled": False},
        },
    }
)


@pytest.fixture(scope="module")
def described(
    application: Flask, made_file: Path, tmp_path_factory: pytest.TempPathFactory
) -> Iterator[Any]:
    """The description as it is asked by someone who is signed in, and by nobody."""
    shop = Database(f"sqlite:///{tmp_path_factory.mktemp('described') / 'shop.db'}")
    before = application.config["SHOP"]
    application.config["SHOP"] = shop
    ada = Phone(application, token_of(shop, person(shop, "Ada", "owner")))
    ada.put("list.1", None, said("change-1", rows=[1]))
    ada.put("list.2", None, said("change-2", rows=[2]))
    ada.delete("list.2", 1, "change-3")
    cookie = ada.client.get_cookie("longpoint")
    assert cookie
    loaded = {
        asker: schemathesis.openapi.from_wsgi("/api/openapi.json", application, config=CONFIG)
        for asker in ("Ada", "nobody")
    }

    @loaded["Ada"].auth()
    class SignedIn:
        def get(self, case: schemathesis.Case, context: object) -> str:
            return cookie.value

        def set(self, case: schemathesis.Case, data: str, context: object) -> None:
            case.cookies = {"longpoint": data}

    yield loaded
    application.config["SHOP"] = before
    shop.close()


def test_these_are_all(described: Any) -> None:
    alone = create_app().test_client().get("/api/openapi.json").json["paths"]
    found = {
        (path, method.upper())
        for path, methods in described["nobody"].raw_schema["paths"].items()
        for method in methods
        if path not in alone and method in ("get", "put", "post", "delete", "patch")
    }
    assert found == set(OPERATIONS)


@pytest.mark.parametrize("mode", list(GenerationMode), ids=lambda mode: mode.value)
@pytest.mark.parametrize("asker", ["Ada", "nobody"])
@pytest.mark.parametrize(("path", "method"), OPERATIONS)
def test_the_shop_keeps_to_its_description(
    described: Any, path: str, method: str, asker: str, mode: GenerationMode
) -> None:
    operation = described[asker][path][method]
    if mode is GenerationMode.NEGATIVE and path == "/api/me":
        return  # it takes nothing that could be wrong

    @given(case=operation.as_strategy(generation_mode=mode), number=st.integers(0, 3))
    @settings(
        max_examples=CASES,
        deadline=None,
        derandomize=True,
        database=None,
        suppress_health_check=list(HealthCheck),
    )
    def keeps_to_it(case: schemathesis.Case, number: int) -> None:
        if mode is GenerationMode.POSITIVE and number and path == DOCUMENT:
            # Names that it invents meet no document.
            case.path_parameters = {"name": f"list.{number}"}
        reply = case.call_and_validate()
        statuses[reply.status_code] += 1

    statuses: Counter[int] = Counter()
    keeps_to_it()
    print(asker, method, path, mode.value, dict(statuses))
    assert asker == "Ada" or min(statuses) >= 400
