"""What two people said differently is asked in the words of the screens that it was typed on.

The labels are those of the tools' declarations and of the screens; what a job's document holds is
said by the core (`trade/job/document.py`).
"""

import json
from collections.abc import Iterator
from typing import Any

import pytest

from longpoint.trade.calls import call
from longpoint.trade.job.document import ENTRY, JOB, OFFCUTS
from longpoint.trade.job.operations import LABELS
from longpoint.trade.job.shapes import ListOf, MapOf, Maybe, Shape, Thing
from tests.phone.app import TOOLS
from tests.store.modules import WEB, Module

SCREENS = "".join(
    path.read_text(encoding="utf-8")
    for path in sorted((WEB / "src").rglob("*.ts"))
    if path.parent.name != "sync"
)
NOT_TYPED = {
    "Units", "Shown to", "Began as", "Question", "Version of the question", "Its letter",
    "Numbers", "Numbers taken from elsewhere", "Made of", "Species", "For the item",
    "How many, from", "How many, times", "Signature", "Tax", "Line", "Logo", "Trim", "Profit",
    "Something came up on", "Left by the job", "Words to the photo", "Minutes each", "Not in it",
    "Minutes", "What both agreed to", "Sign-off", "Signed by", "Price", "Lines of its own", "Lines",
    "Items", "Finish plans", "Stages", "Payments",
}  # fmt: skip
"""What no field of a screen is labeled by, word for word."""
OURS = ("id", "longpoint", "schema", "letters", "ticks", "questions", "log")
"""What never collides, or is no matter of its people."""


@pytest.fixture(scope="module")
def words() -> Iterator[Module]:
    module = Module("src/sync/asked-words.ts")
    yield module
    module.end()


def asked(words: Module, body: Any, path: list[Any], one: Any, other: Any, **more: Any) -> Any:
    sides = [{"by": "Ada", "value": one}, {"by": "Ben", "value": other}]
    asking = {"kind": "job", "id": "j", "body": body, "tools": {}} | more
    extra = {"together": True} if asking.pop("together", False) else {}
    return words.call("inWords", asking, {"id": "q", "path": path, "sides": sides} | extra)


def declared(slug: str) -> Any:
    return json.loads(call(json.dumps({"do": "declare", "tool": slug})))["tool"]


def job(*entries: dict[str, Any], **more: Any) -> dict[str, Any]:
    item = {"id": "i", "title": "Cupboard doors, inset", "entries": list(entries)}
    return {"title": "Porch", "units": "in", "items": [item]} | more


def test_every_input_of_every_tool_goes_by_its_label(words: Module) -> None:
    for _, slug in TOOLS:
        tool = declared(slug)
        body = job({"id": "e", "letter": "C", "tool": slug, "inputs": {}})
        for each in tool["inputs"]:
            path = ["items", "i", "entries", "e", "inputs", each["name"]]
            said = asked(words, body, path, "1", "2", tools={slug: tool})
            assert said["what"] == each["label"], (slug, each["name"])
            assert said["within"] == ["Cupboard doors, inset", f"C {tool['title']}"]
            for column in each.get("columns", []):
                said = asked(words, body, [*path, 1, column["name"]], "1", "2", tools={slug: tool})
                assert said["what"] == column["label"], (slug, column["name"])
                row = (each["row"] or "row").capitalize()
                assert said["within"][2].lower() == f"{row} 2".lower()


def paths(shape: Shape, path: list[Any]) -> Iterator[list[Any]]:
    """Give the path of everything that a document may hold."""
    if isinstance(shape, Maybe):
        yield from paths(shape.one, path)
    elif isinstance(shape, ListOf):
        yield path
        yield from paths(shape.one, [*path, "x" if shape.by_id else 0])
    elif isinstance(shape, Thing):
        for name, value in shape.keys:
            # A tie is one value: nobody changes a part of it.
            if name not in OURS and path[-1:] not in (["from"], ["times"]):
                yield from paths(value, [*path, name])
    elif not isinstance(shape, MapOf) or path[-1] in dict(ENTRY.keys):
        yield path


def test_everything_that_a_job_holds_has_its_words(words: Module) -> None:
    known = [(path, "job", "j") for path in paths(JOB, [])]
    known += [(path, "list", "offcuts") for path in paths(OFFCUTS, ["rows"])]
    assert len(known) > 100
    for path, kind, own in known:
        if isinstance(path[-1], int) or path[-1] == "x" or "ties" in path or path[-1] == "letter":
            continue
        said = asked(words, {}, path, "1", "2", kind=kind, id=own)
        what = said["what"]
        is_typed = f'"{what}' in SCREENS or f">{what}<" in SCREENS
        assert is_typed or what in NOT_TYPED, (path, what)


def test_the_shops_minutes_are_called_as_the_core_calls_them(words: Module) -> None:
    for own, label in LABELS.items():
        path = ["quote", "minutes", own, "minutes"]
        body = {"quote": {"minutes": [{"id": own, "minutes": 5}]}}
        said = asked(words, body, path, 5, 7)
        assert said["within"] == ["Quote", label]


def test_what_each_said_reads_as_it_was_typed(words: Module) -> None:
    door = declared("door-set")
    entry = {"id": "e", "letter": "A", "tool": "door-set", "typed_in": "in", "inputs": {}}
    stock = [{"id": "s", "title": "1x3 poplar", "sold": "stick"}]
    body = job(entry, {"id": "f", "letter": "B", "tool": "x", "title": "Swing", "inputs": {}},
               stock=stock)  # fmt: skip
    at = ["items", "i", "entries", "e"]
    tools = {"door-set": door}

    def values(path: list[Any], one: Any, other: Any, **more: Any) -> list[str]:
        said: list[str] = asked(words, body, path, one, other, tools=tools, **more)["values"]
        return said

    inputs = [*at, "inputs"]
    assert values([*inputs, "opening_height"], "80 1/2", None) == ["80 1/2 in", "Nothing"]
    assert values([*inputs, "opening_height"], {"text": "2045", "units": "mm"}, "2m") == [
        "2045 mm", "2m",
    ]  # fmt: skip
    assert values(at, entry, None) == ["Keep it", "Delete it"]
    assert values([*at, "stock", "all"], "s", "none") == ["1x3 poplar", "not cut"]
    assert values(["items", "i", "entries"], ["e", "f"], ["f", "e"]) == [
        f"A {door['title']}, B Swing", f"B Swing, A {door['title']}",
    ]  # fmt: skip
    assert values([*at, "ties", "stile"], {"entry": "f", "figure": "x"}, None)[0] == "from B Swing"
    assert values(["stock", "s", "price"], 2, 2.5) == ["$2", "$2.50"]
    both = {"version": 1, "tool": "door-set"}
    inches = {"inputs": {"opening_height": "80", "stile": "2"}, "typed_in": "in"}
    mm = {"inputs": {"opening_height": "2032", "stile": "2"}, "typed_in": "mm"}
    said = values(inputs, inches | both, mm | both, together=True)
    assert said == [
        "In inches: Opening height 80 in", "In millimeters: Opening height 2032 mm",
    ]  # fmt: skip
    rows = [{"length": "96"}, {"length": "120", "price": 9}]
    assert values(["stock", "s", "lengths"], rows, rows[:1]) == [
        "Length sold 2: Length 120 in, Price $9", "1 of them",
    ]  # fmt: skip


def test_a_letter_given_twice_is_only_told(words: Module) -> None:
    body = job({"id": "e", "letter": "D", "tool": "x", "title": "Swing", "inputs": {}})
    said = asked(words, body, ["items", "i", "entries", "e", "letter"], "D", "C")
    assert said["isNews"]
    assert said["within"] == ["Cupboard doors, inset", "D Swing"]
    assert said["what"].startswith("C is D now")
