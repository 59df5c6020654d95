"""What is remembered changes no reply: whatever was asked before, a form says the same."""

import json
import subprocess
import sys
from itertools import product
from typing import Any

from longpoint.trade.calls import call
from longpoint.trade.lengths import Scale
from longpoint.trade.shelf import PLACES, slugs_at, tool_named

SCALES = [
    {"units": units, "step": step, "typed_in": typed_in}
    for units, step, typed_in in product(("in", "mm"), (16, 64), ("in", "mm"))
]
ASK = (
    "import json, sys\n"
    "from longpoint.trade.calls import call\n"
    "print(json.dumps([call(text) for text in json.load(sys.stdin)]))\n"
)


def requests() -> list[str]:
    """Return each tool's example, whole, by halves and carried, at several scales."""
    tools = [tool_named(slug) for place, _ in PLACES for slug in slugs_at(place)]
    found = []
    for tool in tools:
        names = list(tool.example)
        first = names[: len(names) // 2]
        values = tool.answer(tool.example, Scale())["inputs"]
        sizes = {name: value for name, value in values.items() if isinstance(value, float)}
        carried = {name: {"value": value, "from": "Door"} for name, value in sizes.items()}
        forms: tuple[dict[str, Any], ...] = (
            {"inputs": tool.example, "active": names[0]},
            {"inputs": {name: tool.example[name] for name in first}},
            {"inputs": {name: tool.example[name] for name in names[len(first) :]}},
            {"inputs": {}, "carried": carried},
            {"inputs": dict.fromkeys(names, True)},
            {"inputs": dict.fromkeys(names, "1")},
            {"inputs": dict.fromkeys(names, 1)},
        )
        for form, scale in product(forms, SCALES):
            whole = {"do": "form", "tool": tool.slug, "answer": not tool.search} | form | scale
            found += [json.dumps(whole), json.dumps(whole | {"do": "answer"})]
    return found


def without_number(reply: str) -> Any:
    """A search has the number of its turn."""
    return {**json.loads(reply), "search": None}


def test_replies_do_not_hang_on_what_was_asked_before() -> None:
    """One interpreter is asked from the first to the last, a new one from the last to the first."""
    asked = requests()
    assert len(asked) > 2000
    onward = [call(text) for text in asked]
    command = [sys.executable, "-c", ASK]
    run = subprocess.run(command, input=json.dumps(asked[::-1]), capture_output=True, text=True)
    assert run.returncode == 0, run.stderr
    backward = json.loads(run.stdout)[::-1]
    for text, one, other in zip(asked, onward, backward, strict=True):
        assert without_number(one) == without_number(other), text
