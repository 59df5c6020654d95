"""The job document: what was said, in one JSON object; never what was computed.

The schema number rises when the meaning of a key changes; a new key alone does not change it.
"""

from ..refusal import FieldError, Refusal
from ..steps import STEPS
from .quote_shape import QUOTE
from .shapes import (
    Anything,
    EitherOf,
    ListOf,
    MapOf,
    Maybe,
    Numeral,
    OneOf,
    Shape,
    Thing,
    Typed,
    Words,
)

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

SCHEMA = 1
MOST_ITEMS = 100
MOST_ENTRIES = 500
MOST_PIECES = 5000
MOST_PHOTOS = 48
"""Of an item. A phone adds no more than 12; several phones may each have added some."""

SOLD = ("board", "stick", "sheet", "each", "volume")
STATES = ("cut", "fitted", "spoiled", "bought", "marked", "done")

LONGEST_ID = 64
NOT_CUT = "none"
"""Stands instead of a stock's id: these pieces are cut for another question, or not at all."""

_ID = Words(LONGEST_ID, least=1)
_TITLE = Words(120)
_NOTE = Words(4000)
_WHEN = Words(40)
_SIZE = Maybe(Anything())
"""A length: a number of inches, or a text as the trade writes it. Its reader judges it."""
_MONEY = Maybe(Numeral(0, 1e7))
_PERCENT = Maybe(Numeral(0, 900))

TIE = EitherOf(
    [
        ("entry", _ID),
        ("figure", Words(60)),
        ("input", Words(60)),
        ("offset", Words(60)),
        ("pieces", _ID),
    ],
    one_of=("entry", "pieces"),
)
"""To a figure or an input of another question; or to the pieces of a stock, a question or an item,
by its id, where an input takes them."""
ENTRY = Thing(
    [
        ("id", _ID),
        ("letter", Words(3, least=1)),
        ("tool", Words(60, least=1)),
        ("title", _TITLE),
        ("version", Numeral(1, 1000, whole=True)),
        ("typed_in", OneOf("in", "mm")),
        ("inputs", MapOf(Anything())),
        ("ties", MapOf(TIE)),
        ("stock", MapOf(_ID)),
        ("note", _NOTE),
    ],
    needs=("id", "letter", "tool", "inputs"),
)
ITEM = Thing(
    [
        ("id", _ID),
        ("title", _TITLE),
        ("count", Numeral(1, 200, whole=True)),
        ("entries", ListOf(ENTRY, MOST_ENTRIES, "questions", by_id=True)),
        ("note", _NOTE),
        (
            "photos",
            ListOf(Thing([("id", _ID), ("words", _NOTE)], needs=("id",)), MOST_PHOTOS, "photos"),
        ),
        ("hours", Maybe(Typed(0, 10000))),
        ("actual_hours", Maybe(Typed(0, 10000))),
        ("pattern", Words(60)),
        ("pattern_version", Numeral(1, 1000, whole=True)),
    ],
    needs=("id", "title", "entries"),
)
STOCK = Thing(
    [
        ("id", _ID),
        ("title", _TITLE),
        ("sold", OneOf(*SOLD)),
        ("thickness", _SIZE),
        ("width", _SIZE),
        ("lengths", ListOf(Thing([("length", _SIZE), ("price", _MONEY)]), 12, "lengths")),
        ("sheets", ListOf(
            Thing([("length", _SIZE), ("width", _SIZE), ("price", _MONEY)]), 12, "sheet sizes"
        )),
        ("on_hand", ListOf(
            Thing([("length", _SIZE), ("width", _SIZE), ("count", Numeral(1, 500, whole=True)),
                   ("where", Words(60))]), 40, "offcuts"
        )),
        ("made_of", Words(40)),
        ("species", Words(40)),
        ("price", _MONEY),
        ("waste", _PERCENT),
        ("kerf", _SIZE),
        ("trim", _SIZE),
        ("extra_length", _SIZE),
        ("extra_width", _SIZE),
    ],
    needs=("id", "title", "sold"),
)  # fmt: skip
THING = Thing(
    [
        ("id", _ID),
        ("title", _TITLE),
        ("count", Numeral(0, 10000)),
        ("price", _MONEY),
        ("item", _ID),
        ("from", TIE),
        ("times", TIE),
    ],
    needs=("id", "title"),
)
TICK = Thing(
    [
        ("id", _ID),
        ("of", Words(200, least=1)),
        ("state", OneOf(*STATES)),
        ("at", _WHEN),
        ("was", Thing([("length", Numeral()), ("width", Numeral()), ("thickness", Numeral())])),
        ("paid", _MONEY),
    ],
    needs=("of", "state"),
)
FINISH = Thing(
    [("starts", ListOf(Thing([("id", _ID), ("begins", Words(10))], needs=("id", "begins")), 100,
                       "plans", by_id=True))]
)  # fmt: skip
"""By the id of a finish plan's question: the date it begins on, ``2026-11-30``."""
QUESTION = Thing(
    [
        ("id", _ID),
        ("path", ListOf(Anything(), 20, "names of a path")),
        ("sides", ListOf(Thing([("by", _TITLE), ("value", Anything())]), 2, "sides")),
        ("together", Anything()),
        ("answered", _TITLE),
    ],
    needs=("id",),
)
"""What two people said differently: see `questions`."""
CUSTOMER = Thing([("name", _TITLE), ("address", _NOTE), ("phone", Words(40)), ("note", _NOTE)])

JOB: Shape = Thing(
    [
        ("longpoint", OneOf("job")),
        ("schema", Numeral(1, SCHEMA, whole=True)),
        ("id", _ID),
        ("title", _TITLE),
        ("customer", CUSTOMER),
        ("units", OneOf("in", "mm")),
        ("step", OneOf(*STEPS)),
        ("letters", Numeral(0, 18000, whole=True)),
        ("items", ListOf(ITEM, MOST_ITEMS, "items", by_id=True)),
        ("stock", ListOf(STOCK, 100, "kinds of stock", by_id=True)),
        ("things", ListOf(THING, 200, "things", by_id=True)),
        ("finish", Maybe(FINISH)),
        ("quote", Maybe(QUOTE)),
        ("ticks", ListOf(TICK, 4 * MOST_PIECES, "ticks")),
        ("questions", ListOf(QUESTION, 2000, "questions to its people", by_id=True)),
        ("log", ListOf(Thing([("at", _WHEN), ("words", _NOTE)]), 5000, "lines of the log")),
    ],
    needs=("longpoint", "schema", "id", "title", "items"),
)

OFFCUTS = ListOf(
    Thing(
        [
            ("title", _TITLE),
            ("sold", OneOf(*SOLD)),
            ("length", _SIZE),
            ("width", _SIZE),
            ("count", Maybe(Numeral(1, 500, whole=True))),
            ("where", Maybe(Words(60))),
            ("job", Maybe(_TITLE)),
        ],
        needs=("title", "sold"),
    ),
    500,
    "offcuts",
)
"""Rows of the shop's own list `offcuts`: what finished jobs left, by the stock's title."""


def checked_offcuts(rows: object) -> "list[dict[str, Any]]":
    """Return the shop's offcuts that can be read; one that can't offers nothing."""
    given = rows if isinstance(rows, list) else []
    return [row if not OFFCUTS.one.faults(row, "") else {} for row in given]


def json_schema() -> "dict[str, Any]":
    """Return the JSON Schema (draft 2020-12) of a job."""
    head = {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "Longpoint job",
        "description": "What was said of one customer's job; everything else is worked out again.",
    }
    head.update(JOB.schema())
    return head


def check(document: object, known: object = None) -> None:
    """Check a job document; `known` is one found right before, whose objects it may hold.

    Raises
    ------
    Refusal
        With a sentence for each fault at its place, such as ``items.0.entries.2.inputs``.
    """
    if isinstance(document, dict):
        _check_made_for_us(document)
    faults = JOB.faults(document, "", known)
    if not faults and isinstance(document, dict):
        faults = _counted(document)
    if faults:
        raise Refusal.of([FieldError(path, words) for path, words in faults])


def _check_made_for_us(document: "dict[str, Any]") -> None:
    if document.get("longpoint") != "job":
        raise Refusal("longpoint", "This is not a job made by Longpoint.")
    schema = document.get("schema")
    if isinstance(schema, int) and not isinstance(schema, bool) and schema > SCHEMA:
        raise Refusal("schema", "A newer Longpoint made this job: update, then open it again.")


def _counted(document: "dict[str, Any]") -> "list[tuple[str, str]]":
    entries = [entry for item in document["items"] for entry in item["entries"]]
    if len(entries) > MOST_ENTRIES:
        return [("items", f"{len(entries)} questions: a job holds {MOST_ENTRIES} at most.")]
    seen: dict[str, bool] = {}
    for entry in entries:
        if entry["id"] in seen:
            return [("items", f"The id {entry['id']} stands for more than one question.")]
        seen[entry["id"]] = True
    return []
