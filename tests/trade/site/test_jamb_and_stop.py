"""A jamb is put together again from its pieces, and the door is stood in it."""

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import box
from shapely.affinity import translate

from tests.trade.asking import answer, ask, at_the_door, figures

GAP = st.floats(0, 0.75)


USUAL: dict[str, Any] = {"head_joint": "housed", "jamb_depth": 4.625, "door_thickness": 1.375}


def pieces(found: dict[str, Any]) -> dict[str, dict[str, Any]]:
    return {piece["name"]: piece for piece in found["pieces"]}


@given(
    st.floats(18, 48),
    st.floats(60, 100),
    GAP,
    GAP,
    GAP,
    st.sampled_from(["housed", "between", "over"]),
    st.floats(0, 4),
)
def test_put_together_the_frame_leaves_the_door_its_gaps(
    wide: float, high: float, side: float, head: float, floor: float, joint: str, horn: float
) -> None:
    """Legs stand at their marks on the head; the clear space is the door and its gaps."""
    gaps: dict[str, Any] = {"side_gap": side, "head_gap": head, "floor_gap": floor}
    found = answer(
        "jamb-and-stop",
        leaf_width=wide,
        leaf_height=high,
        horn=horn,
        **gaps,
        **USUAL | {"head_joint": joint},
    )
    parts = pieces(found)
    length, thick = parts["Leg"]["length"], parts["Leg"]["thickness"]
    into = {"housed": 3 / 8, "between": 0.0, "over": thick}[joint]
    marks = [mark["value"] for mark in found["marks"] if mark["from"] == "legs' upper end"]
    under_head = length - marks[1] if marks else length
    left = box(0, 0, thick, length)
    apart = parts["Head"]["length"] - 2 * into
    right = translate(left, thick + apart)
    lintel = box(thick - into, under_head, thick + apart + into, under_head + thick)
    door = box(thick + side, floor, thick + side + wide, floor + high)
    assert door.distance(left) == pytest.approx(side, abs=1e-9)
    assert door.distance(right) == pytest.approx(side, abs=1e-9)
    assert door.distance(lintel) == pytest.approx(head, abs=1e-9)
    housed = left.intersection(lintel).area + right.intersection(lintel).area
    assert housed == pytest.approx((2 * into * thick if joint == "housed" else 0), abs=1e-9)
    whole = left.union(right).union(lintel).bounds
    shown = figures_of(found)
    assert shown["rough_needed_width"] == pytest.approx(whole[2] - whole[0] + 2 * 3 / 8)
    assert shown["rough_needed_height"] == pytest.approx(whole[3] + 3 / 8)


def figures_of(found: dict[str, Any]) -> dict[str, Any]:
    return {figure["name"]: figure["value"] for figure in found["figures"]}


@given(
    st.integers(-48, 48).map(lambda n: n / 16),
    st.floats(0, 2),
    st.sampled_from(["square", "miter"]),
)
def test_on_a_falling_floor_the_head_is_level(falls: float, below: float, joint: str) -> None:
    """Feet on the floor as it is: both legs, and both stops on the finished floor, end level."""
    found = answer(
        "jamb-and-stop",
        leaf_width=30,
        leaf_height=80,
        floor_falls=falls,
        floor_below=below,
        stop_joint=joint,
        **USUAL,
    )
    parts = pieces(found)
    if falls == 0:
        assert [piece["count"] for piece in found["pieces"]] == [1, 2, 1, 2]
        return
    for name in ("leg", "leg stop"):
        left, right = parts["Left " + name]["length"], parts["Right " + name]["length"]
        assert right - left == pytest.approx(falls, abs=1e-9)
    short = min(parts["Left leg"]["length"], parts["Right leg"]["length"])
    assert short == pytest.approx(80 + 1 / 8 + 1 / 2 + 3 / 4 + below)
    up = min(parts["Left leg stop"]["length"], parts["Right leg stop"]["length"])
    assert up == pytest.approx(80 + 5 / 8 - (3 / 8 if joint == "square" else 0))


@given(st.floats(0.5, 3), st.floats(0, 0.5), st.floats(0, 0.5), st.floats(3.6, 8))
def test_the_stop_keeps_its_gap_behind_the_door_and_stays_on_the_jamb(
    thick: float, gap: float, setback: float, depth: float
) -> None:
    asked: dict[str, Any] = {
        "leaf_width": 30,
        "leaf_height": 80,
        "stop_gap": gap,
        "setback": setback,
    }
    reply = ask("jamb-and-stop", **asked, **USUAL | {"door_thickness": thick, "jamb_depth": depth})
    door = box(setback, 0, setback + thick, 1)
    if not reply["ok"]:
        assert depth < door.bounds[2] + gap + 1.375 + 1e-6
        assert reply["errors"][0]["field"] == "stop_width"
        return
    near, far = [
        mark["value"] for mark in reply["answer"]["marks"] if mark["from"].startswith("jamb's")
    ]
    assert door.distance(box(near, 0, far, 1)) == pytest.approx(gap, abs=1e-9)
    assert far - near == pytest.approx(1.375)
    assert far <= depth + 1e-9


@given(st.floats(18, 48), st.floats(60, 100))
def test_the_handbook_rough_opening_takes_the_frame(wide: float, high: float) -> None:
    """Door width and 2 1/2, door height and 3: Navy Builder text on interior doors."""
    found = figures(
        "jamb-and-stop",
        leaf_width=wide,
        leaf_height=high,
        rough_width=wide + 2.5,
        rough_height=high + 3,
        **USUAL,
    )
    assert found["rough_needed_width"] == pytest.approx(wide + 2.5)
    assert found["rough_needed_height"] < high + 3
    assert found["shim_width"] == pytest.approx(3 / 8)


@given(st.lists(st.floats(0, 50), min_size=5, max_size=5))
def test_whatever_is_typed_answers_or_says_why(sizes: list[float]) -> None:
    names = ("leaf_width", "leaf_height", "stop_thickness", "jamb_depth", "rough_width")
    inputs: dict[str, Any] = dict(zip(names, sizes, strict=True))
    reply = ask("jamb-and-stop", **USUAL | inputs)
    if reply["ok"]:
        assert all(piece["length"] > 0 for piece in reply["answer"]["pieces"])
    else:
        assert all(len(error["message"]) > 20 for error in reply["errors"])


def test_a_form_of_version_1_answers_as_it_did() -> None:
    """Door 1 3/8, jamb 4 5/8, head housed: 32 + 1/4 + 2 x 3/8 = 33; stop line 1 3/8 + 1/16."""
    kept = {"leaf_width": "32", "leaf_height": "80"}
    asked: dict[str, Any] = {"do": "form", "tool": "jamb-and-stop", "inputs": kept}
    found = figures_of(at_the_door({**asked, "version": 1})["answer"])
    assert (found["head_length"], found["stop_line"]) == (33, 1.4375)
    assert at_the_door({**asked, "version": 2})["answer"] is None
