"""Frames kept by the first version of their forms answer as they did: inside a recess."""

from typing import Any

import pytest

from tests.trade.asking import at_the_door

KEPT: dict[str, dict[str, Any]] = {
    "mitered-frame": {"width": "27 13/16", "height": "60 1/8", "side_width": "2 1/2"},
    "odd-frame": {
        "top": "30",
        "right": "40",
        "bottom": "30",
        "left": "40",
        "diagonal": "50",
        "trim_width": "2",
    },
}


@pytest.mark.parametrize("tool", sorted(KEPT))
def test_a_form_of_version_1_is_inside_a_recess(tool: str) -> None:
    reply = at_the_door({"do": "form", "tool": tool, "inputs": KEPT[tool], "version": 1})
    assert reply["answer"]["inputs"]["fit"] == "inside"
    assert "inside" in reply["answer"]["verdict"]
    assert not reply["aside"]


@pytest.mark.parametrize("tool", sorted(KEPT))
def test_a_form_of_today_is_asked(tool: str) -> None:
    reply = at_the_door({"do": "form", "tool": tool, "inputs": KEPT[tool], "version": 2})
    assert reply["answer"] is None
    assert reply["waiting"] == {"field": "fit", "words": "Still needed: Frame goes"}
