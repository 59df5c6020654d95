"""Print the schemas that the front end's types are made from: `python -m longpoint.api.contract`.

They are those of the API's description, without the forms of the single tools.
"""

import json
from typing import Any

from longpoint.app import create_app

ROOTS = (
    "FormReply",
    "FormSaid",
    "SearchReply",
    "Refused",
    "Answer",
    "Declaration",
    "StepChoices",
    "Job",
    "Pattern",
    "Meeting",
    "DocumentQuestion",
    "Settled",
)
_REF = "#/components/schemas/"


def contract() -> dict[str, Any]:
    """Return an OpenAPI document of the schemas that `ROOTS` lead to, and no paths."""
    client = create_app().test_client()
    described: dict[str, Any] = client.get("/api/openapi.json").get_json()
    schemas = described["components"]["schemas"]
    wanted: list[str] = []
    waiting = list(ROOTS)
    while waiting:
        name = waiting.pop(0)
        if name not in wanted:
            wanted.append(name)
            waiting += _named_in(schemas[name])
    kept = {name: schemas[name] for name in sorted(wanted)}
    head = {key: described[key] for key in ("openapi", "info")}
    return head | {"paths": {}, "components": {"schemas": kept}}


def _named_in(value: object) -> list[str]:
    """Return the names of the schemas that a part of a description refers to."""
    if isinstance(value, dict):
        own = value.get("$ref")
        mine = [own.removeprefix(_REF)] if isinstance(own, str) else []
        return mine + [name for part in value.values() for name in _named_in(part)]
    if isinstance(value, list):
        return [name for part in value for name in _named_in(part)]
    return []


if __name__ == "__main__":
    print(json.dumps(contract(), indent=1))
