"""What requests about a shop's documents may carry, and how the API's description says so."""

import re

import marshmallow as ma

from longpoint.shop.documents import KINDS

from .forms import Strict

LONGEST_ID = 160
MOST_CHANGES = 500
BY_DEVICE: list[dict[str, list[str]]] = [{"device": []}]
"""What the description says of who may ask."""
_ID = rf"({'|'.join(KINDS)})\.[^\x00-\x1f\x7f/]{{1,{LONGEST_ID}}}"
ADDRESS = [
    {"in": "path", "name": "name", "required": True,
     "schema": {"type": "string", "pattern": f"^{_ID}$"},
     "description": "Its kind, a dot, and its id among its kind."}
]  # fmt: skip
CONDITIONS = [
    {"in": "header", "name": name, "schema": schema, "required": False, "description": words}
    for name, schema, words in (
        ("If-Match", {"type": "string", "pattern": '^(W/)?"[1-9][0-9]{0,8}"$'},
         "The revision that this is made to, in quotes."),
        ("If-None-Match", {"type": "string", "enum": ["*"]}, "There is no such document."),
    )
]  # fmt: skip
NAME = re.compile(_ID)
_CHANGE = "[0-9A-Za-z-]{8,64}"


def _change_id() -> ma.fields.String:
    """Return the field of a change's id."""
    # Described for ECMA's expressions, whose `$` lets no line break pass; Python's does.
    return ma.fields.String(
        required=True,
        validate=ma.validate.And(
            ma.validate.Length(8, 64),
            lambda text: bool(re.fullmatch(_CHANGE, text)) or _no_change(),
        ),
        metadata={"pattern": f"^{_CHANGE}$", "description": "Made by the phone, for ever."},
    )


def _no_change() -> bool:
    raise ma.ValidationError("8 to 64 letters, digits and dashes.")


class DocumentForm(Strict):
    """What a change says."""

    change_id = _change_id()
    units = ma.fields.String(required=True, validate=ma.validate.OneOf(["in", "mm"]))
    schema = ma.fields.Integer(required=True, strict=True, validate=ma.validate.Range(1, 10_000))
    body = ma.fields.Dict(required=True)


class EpochQuery(Strict):
    """The query of a change."""

    epoch = ma.fields.String(
        load_default="",
        validate=ma.validate.Length(max=64),
        metadata={"description": "The epoch that the phone knows; at another one nothing is done."},
    )


class DeletionQuery(EpochQuery):
    """The query of a deletion."""

    change_id = _change_id()


class FeedQuery(Strict):
    """From where the feed is told."""

    since = ma.fields.Integer(load_default=0, validate=ma.validate.Range(0, 2**53))
    last = ma.fields.String(
        load_default="",
        validate=ma.validate.Length(max=64),
        metadata={"description": "The `last` that came with `since`."},
    )
    limit = ma.fields.Integer(load_default=100, validate=ma.validate.Range(1, MOST_CHANGES))
