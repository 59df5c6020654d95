"""What must always hold of hinges: the closed door leaves the gap, the hinges share the edge."""

import itertools
import math
from typing import Any

import pytest
import shapely
from hypothesis import assume, given
from hypothesis import strategies as st

from tests.trade.asking import answer, ask, figures

DOOR = {"leaf_height": 80, "door_thickness": 1.375, "hinge_height": 3.5}
SMALL = st.floats(min_value=0.01, max_value=0.3)


@given(SMALL, SMALL, SMALL)
def test_closed_up_the_stack_leaves_the_gap_wanted(leaf: float, gap: float, own: float) -> None:
    """Mortise, leaf, the hinge's own gap, leaf, mortise: added up face to face."""
    found = figures("hinge-layout", leaf_thickness=leaf, hinge_gap=gap, closed_gap=own, **DOOR)
    left = 2 * (leaf + found["packing"] - found["mortise_depth"]) + own
    assert math.isclose(left, gap, abs_tol=1e-12)
    assert found["mortise_depth"] == 0 or found["packing"] == 0


@given(
    st.floats(min_value=70, max_value=120),
    st.integers(min_value=2, max_value=6),
    st.floats(min_value=2, max_value=4.5),
)
def test_hinges_share_the_edge_evenly(height: float, hinges: int, size: float) -> None:
    found = answer(
        "hinge-layout",
        leaf_height=height,
        door_thickness=1.375,
        hinge_height=size,
        leaf_thickness=0.1,
        hinge_gap=0.1,
        hinges=hinges,
    )
    on_door = [mark["value"] for mark in found["marks"] if mark["from"] == "leaf top"]
    on_jamb = [mark["value"] for mark in found["marks"] if mark["from"] == "head"]
    tops, bottoms = on_door[0::2], on_door[1::2]
    centers = [(top + bottom) / 2 for top, bottom in zip(tops, bottoms, strict=True)]
    apart = [after - before for before, after in itertools.pairwise(centers)]
    assert len(tops) == hinges
    assert max(apart) - min(apart) < 1e-9
    assert math.isclose(bottoms[-1], height + 0.5 - 10)
    assert all(
        math.isclose(jamb - door, 0.125) for door, jamb in zip(on_door, on_jamb, strict=True)
    )


@pytest.mark.parametrize(
    ("thick", "wide", "high", "weight"),
    [
        (1.375, 32, 3.5, "standard"),
        (1.375, 36, 4, "standard"),
        (1.75, 36, 4.5, "standard"),
        (1.75, 40, 5, "standard"),
        (1.75, 50, 6, "standard"),
        (2.25, 42, 5, "heavy"),
        (2.25, 48, 6, "heavy"),
    ],
)
def test_hinges_by_the_published_table(thick: float, wide: float, high: float, weight: str) -> None:
    """Table of the Door and Hardware Institute, as hinge sellers reprint it."""
    door = DOOR | {"door_thickness": thick, "choose": True, "leaf_width": wide}
    found = figures("hinge-layout", leaf_thickness=0.1, hinge_gap=0.1, **door)
    assert (found["advised_height"], found["weight_class"]) == (high, weight)


@given(st.floats(min_value=1.25, max_value=2.5), st.floats(min_value=0, max_value=2))
def test_open_flat_the_door_lies_clear_of_the_trim(thick: float, throw: float) -> None:
    """Half a turn about the pin: the door's face then lies as far beyond it as before."""
    door = DOOR | {"door_thickness": thick, "choose": True, "leaf_width": 30, "throw": throw}
    found = figures("hinge-layout", leaf_thickness=0.1, hinge_gap=0.1, **door)
    half = found["hinge_width"] / 2
    pin = half - found["mortise_width"]
    assert math.isclose(2 * pin, throw, abs_tol=1e-9)
    assert found["stock_width"] >= found["hinge_width"] - 1e-6


@given(
    st.floats(min_value=0.3, max_value=1.2),
    st.floats(min_value=0.1, max_value=0.9),
    st.sampled_from(["square", "1/4", "5/8"]),
)
def test_the_bit_that_follows_the_template_cuts_the_mortise(
    bushing: float, bit: float, corners: str
) -> None:
    """Shapely moves the bushing in the opening, and the bit with it."""
    assume(bit < bushing - 0.01)
    asked = {"template": True, "bushing": bushing, "bit": bit, "corners": corners}
    found = figures("hinge-layout", leaf_thickness=0.1, hinge_gap=0.1, **DOOR, **asked)
    past = -4 * bushing
    long, wide = found["template_length"], found["template_width"]
    round_off = found.get("template_radius", 0.0)
    opening = shapely.box(past, 0, wide, long)
    opening = opening.buffer(-round_off, join_style="mitre").buffer(round_off, quad_segs=64)
    centers = opening.buffer(-bushing / 2, quad_segs=64)
    left, top, right, bottom = centers.buffer(bit / 2, quad_segs=64).bounds
    assert math.isclose(right, found["mortise_width"], abs_tol=1e-6)
    assert math.isclose(bottom - top, found["mortise_length"], abs_tol=1e-6)
    assert left < 0
    if round_off:
        radius = {"1/4": 0.25, "5/8": 0.625}[corners]
        cut = centers.buffer(bit / 2, quad_segs=64)
        corner = shapely.box(right - radius, bottom - radius, right, bottom)
        kept = corner.difference(cut).area
        assert math.isclose(kept, (1 - math.pi / 4) * radius**2, abs_tol=2e-3)


@given(
    st.lists(st.floats(min_value=0.5, max_value=70), min_size=1, max_size=4),
    st.floats(min_value=0, max_value=0.5),
)
def test_old_hinges_keep_their_lines_on_the_jamb(lines: list[float], gap: float) -> None:
    lines = sorted(lines)
    assume(all(after - before >= 3.5 for before, after in itertools.pairwise(lines)))
    rows = [{"top_line": line} for line in lines]
    asked = {
        "leaf_thickness": 0.1,
        "hinge_gap": 0.1,
        "head_gap": gap,
        "match": True,
        "existing": rows,
    }
    marks = answer("hinge-layout", **DOOR, **asked)["marks"]
    on_jamb = [mark["value"] for mark in marks if mark["from"] == "head"][0::2]
    on_door = [mark["value"] for mark in marks if mark["from"] == "leaf top"][0::2]
    assert all(math.isclose(a, b) for a, b in zip(on_jamb, lines, strict=True))
    assert all(math.isclose(a + gap, b) for a, b in zip(on_door, lines, strict=True))


def doubts(units: str, **inputs: object) -> list[str]:
    """Return the cautions that ask to look at the unit."""
    sizes = {"leaf_height": "80 in", "door_thickness": "1.375 in", "hinge_height": "3.5 in"}
    found = answer("hinge-layout", {"units": units}, **sizes, **inputs)
    return [words for words in found["cautions"] if "look at the unit" in words]


@pytest.mark.parametrize("leaf", ["0.085", "0.123", "0.130", "0.203", "2.2 mm"])
def test_leaves_as_they_are_sold_raise_no_doubt(leaf: str) -> None:
    """From the light 3 1/2 to the heavy 6 inch hinge, as the table's sources list them."""
    assert doubts("in", leaf_thickness=leaf, hinge_gap="1/8") == []


def test_a_slip_in_the_leaf_is_doubted_in_the_units_in_force() -> None:
    """A point misplaced, 0.85 for 0.085; inches typed where millimeters are in force."""
    (thick,) = doubts("in", leaf_thickness="0.85", hinge_gap="1/8")
    assert "0.850 thick is thicker" in thick
    assert "0.085 to 0.203" in thick
    # By hand: 0.085 x 25.4 is 2.159, 0.203 x 25.4 is 5.156.
    (thin,) = doubts("mm", leaf_thickness="0.085", hinge_gap="3")
    assert "0.09 mm thick is thinner" in thin
    assert "2.16 mm to 5.16 mm" in thin


def test_gaps_over_a_quarter_are_doubted() -> None:
    assert doubts("in", leaf_thickness="0.123", hinge_gap="1/4", closed_gap="1/4") == []
    (wide,) = doubts("in", leaf_thickness="0.123", hinge_gap="3/8")
    assert "to the jamb of 3/8" in wide
    (closed,) = doubts("mm", leaf_thickness="3", hinge_gap="3", closed_gap="7")
    assert "closed hinge of 7.0 mm" in closed


@given(st.floats(min_value=60, max_value=110), st.integers(min_value=2, max_value=6))
def test_each_top_line_is_drawn_with_its_own_number(height: float, hinges: int) -> None:
    """A line at each hinge from the leaf's edge out, its number at the line's level."""
    sizes = DOOR | {
        "leaf_height": height,
        "leaf_thickness": 0.1,
        "hinge_gap": 0.1,
        "hinges": hinges,
    }
    found = answer("hinge-layout", **sizes)
    tops = [m for m in found["marks"] if "top line" in m["label"] and m["from"] == "leaf top"]
    shapes = found["details"][0]["shapes"]
    lines = {s["from"][1] for s in shapes if s["shape"] == "line"}
    numbers = {s["text"]: s["at"][1] for s in shapes if s["shape"] == "text"}
    assert lines == {mark["value"] for mark in tops}
    assert numbers == {mark["text"]: mark["value"] for mark in tops}


KNOWN = {
    "leaf_height": 79,
    "door_thickness": 1.375,
    "hinge_height": 3.5,
    "leaf_thickness": 0.085,
    "hinge_gap": 0.09375,
}
OPTIONS = ("choose", "screws", "template", "match")


@given(st.sets(st.sampled_from(sorted(KNOWN))), st.sets(st.sampled_from(OPTIONS)))
def test_more_said_takes_nothing_away(said: set[str], options: set[str]) -> None:
    """Each input adds, each option adds: what stood without it stands with it."""
    some = {name: KNOWN[name] for name in said}
    reply = ask("hinge-layout", **some)
    before = reply["answer"] if reply["ok"] else {"figures": [], "marks": []}
    for more in (some | dict.fromkeys(options, True), KNOWN | dict.fromkeys(options, True)):
        whole = ask("hinge-layout", **more)
        assert whole["ok"] or not reply["ok"], whole
        if not whole["ok"]:
            continue
        shown = {figure["name"]: figure["value"] for figure in whole["answer"]["figures"]}
        for figure in before["figures"]:
            assert shown[figure["name"]] == figure["value"], figure["name"]
        assert before["marks"] == [] or whole["answer"]["marks"] == before["marks"]


def test_the_template_is_printed_once_it_is_switched_on() -> None:
    sizes: dict[str, Any] = DOOR | {"leaf_thickness": 0.1, "hinge_gap": 0.1}
    for on in (False, True):
        found = answer("hinge-layout", template=on, **sizes)
        printed = [view["title"] for view in found["details"] if view["full_size"]]
        assert (
            printed == ["Mortise outline"] + ["The template on the edge, knuckle face on top"] * on
        )


def test_each_listed_hinge_leaf_says_who_lists_it() -> None:
    (table,) = answer("hinge-layout", leaf_height=80, hinge_height=4.5)["tables"]
    assert table["name"] == "Common hinge leaves"
    assert [row[2] for row in table["rows"]] == ["0.134", "0.180"]
    assert all(row[3] for row in table["rows"])
