"""What must hold of a lock's bores: they meet, they keep to the wood, the template shows them."""

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.trade.asking import answer, ask

LOCK: dict[str, Any] = {
    "backset": 2.375,
    "cross_bore": 2.125,
    "edge_bore": 1,
    "door_thickness": 1.75,
    "latch_height": 36,
}


def circles(view: dict[str, Any]) -> list[tuple[float, float, float]]:
    shapes = [shape for shape in view["shapes"] if shape["shape"] == "circle"]
    return [(*shape["center"], 2 * shape["radius"]) for shape in shapes]


@given(st.floats(1.5, 5), st.floats(0, 5), st.sampled_from(["middle", "high"]))
def test_the_template_carries_both_bores_at_full_size(
    backset: float, bevel: float, start: str
) -> None:
    asked = LOCK | {"backset": backset, "bevel": bevel, "backset_from": start}
    found = answer("lock-boring", **asked)
    (view,) = [view for view in found["details"] if view["full_size"]]
    near = next(mark["value"] for mark in found["marks"] if mark["from"] == "edge, wider face")
    bores = sorted(circles(view))
    assert (near, 0.0, 2.125) in bores
    # Unfolded, the edge lies left of the fold, its middle half the door's thickness away.
    assert (-1.75 / 2, 0.0, 1.0) in bores


@given(st.floats(0.5, 6), st.floats(0.5, 4), st.floats(0.25, 2), st.floats(0.5, 3))
def test_whatever_is_typed_answers_with_wood_left_or_says_why(
    backset: float, cross: float, edge: float, thick: float
) -> None:
    sizes = {"backset": backset, "cross_bore": cross, "edge_bore": edge, "door_thickness": thick}
    reply = ask("lock-boring", **(LOCK | sizes))
    if not reply["ok"]:
        assert {error["field"] for error in reply["errors"]} <= {"backset", "edge_bore"}
        return
    shown = {figure["name"]: figure["value"] for figure in reply["answer"]["figures"]}
    assert shown["edge_wood"] > 0
    assert shown["edge_reach"] > 0


@pytest.mark.parametrize(
    ("more", "words"),
    [
        ({"door_thickness": 1.125}, "Only 1/16 is left on both sides of the edge bore"),
        ({"stile": 3.75}, "Only 5/16 of the stile is left"),
        ({"strike_depth": 1}, "goes through a jamb 3/4 thick"),
    ],
)
def test_little_wood_is_warned_of(more: dict[str, Any], words: str) -> None:
    """Hand work: (1 1/8 - 1) / 2; 3 3/4 - 2 3/8 - 1 1/16; 1 against 3/4."""
    assert any(words in caution for caution in answer("lock-boring", **(LOCK | more))["cautions"])
    assert not any(words in caution for caution in answer("lock-boring", **LOCK)["cautions"])
