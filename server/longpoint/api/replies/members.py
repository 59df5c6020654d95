"""What the schemas of replies are made of: all that is described is there, and nothing else."""

from typing import Any

import marshmallow as ma
from marshmallow import fields

INPUT_KINDS = ["length", "angle", "number", "count", "choice", "flag", "text", "rows"]


class Reply(ma.Schema):
    """A JSON object of the contract; a field that is not required may be left out."""

    class Meta:
        unknown = ma.RAISE


def text(description: str = "", *, name: str | None = None, **rest: Any) -> fields.String:
    """Return a text that is always there, under `name`; `rest` adds to its description."""
    return fields.String(required=True, data_key=name, metadata=described(description, rest))


def texts(description: str = "") -> fields.List[Any]:
    """Return a list of texts that is always there."""
    return fields.List(fields.String(), required=True, metadata=described(description, {}))


def number(description: str = "", none: bool = False) -> fields.Float:
    """Return a number that is always there, perhaps as null."""
    return fields.Float(required=True, allow_none=none, metadata=described(description, {}))


def whole(description: str = "", none: bool = False) -> fields.Integer:
    """Return a whole number that is always there, perhaps as null."""
    return fields.Integer(required=True, allow_none=none, metadata=described(description, {}))


def flag(description: str = "") -> fields.Boolean:
    """Return a yes or no that is always there."""
    return fields.Boolean(required=True, metadata=described(description, {}))


def listed(schema: type[ma.Schema], description: str = "") -> fields.List[Any]:
    """Return a list of objects that is always there."""
    return fields.List(fields.Nested(schema), required=True, metadata=described(description, {}))


def maybe(schema: type[ma.Schema]) -> fields.Nested:
    """Return an object that is always there, perhaps as null."""
    return fields.Nested(schema, required=True, allow_none=True)


def described(description: str, rest: dict[str, Any]) -> dict[str, Any]:
    """Return a field's metadata."""
    return rest | ({"description": description} if description else {})
